// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.fuselage;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** What the README shows and says of the worked fuselages is what the program gives. */
class FuselageReadmeTest {
  private static final Path ROOT = Path.of("..").toAbsolutePath().normalize();

  private static String picture(String name) throws Exception {
    return Files.readString(ROOT.resolve("examples/pictures").resolve(name));
  }

  @Test
  void the_pictures_in_the_readme_are_those_of_the_fuselages() throws Exception {
    assertThat(picture("tourer-side-view.svg"))
        .isEqualTo(
            new FuselagePictures(FuselageRun.study(FuselageRun.brief("two-seat-tourer")))
                .side()
                .document());
    assertThat(picture("survey-region.svg"))
        .isEqualTo(
            new FuselagePictures(FuselageRun.study(FuselageRun.brief("survey-aeroplane")))
                .region()
                .document());
  }

  @Test
  void the_readme_names_the_built_in_briefs_and_the_ways_out_of_the_impossible_one()
      throws Exception {
    String readme = Files.readString(ROOT.resolve("README.md"));
    assertThat(readme).contains(FuselageProgram.BUILT_IN).contains(FuselageProgram.class.getName());
    String advice =
        new Advice(FuselageRun.study(FuselageRun.brief("survey-aeroplane-small-printer")))
            .summary();
    for (String way : new String[] {"pieces of 227.2 mm", "454.6 mm", "contents 17.4 mm thinner"}) {
      assertThat(advice).contains(way);
      assertThat(readme).contains(way);
    }
  }
}
