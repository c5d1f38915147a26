// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the README shows is what the program gives. */
class ReadmeTest {
  private static final Path ROOT = Path.of("..").toAbsolutePath().normalize();

  @TempDir Path folder;

  @Test
  void the_sheet_in_the_readme_is_what_the_program_prints() throws Exception {
    Matcher block = Pattern.compile("```text\n(.*?)```", Pattern.DOTALL).matcher(readme());
    assertThat(block.find()).isTrue();
    String printed = ProgramRun.of(folder).out().replace("\r\n", "\n");
    // The last line but one names the folder, which is another one here.
    assertThat(block.group(1).replaceAll("(?m)^.*hall-glider:$", "")).isEqualTo(printed.replaceAll("(?m)^.*hall-glider:$", ""));
  }

  @Test
  void the_pictures_in_the_readme_are_those_of_the_design() throws Exception {
    ProgramRun.of(folder);
    for (String picture : new String[] {"three-view.svg", "fuselage-range.svg"}) {
      assertThat(readme()).contains("examples/pictures/" + picture);
      assertThat(ROOT.resolve("examples/pictures").resolve(picture))
          .hasSameTextualContentAs(folder.resolve("hall-glider").resolve(picture));
    }
  }

  @Test
  void every_file_that_the_readme_links_to_is_there() throws Exception {
    Matcher link = Pattern.compile("\\]\\(([^)#:]+)\\)").matcher(readme());
    int links = 0;
    while (link.find()) {
      assertThat(ROOT.resolve(link.group(1))).exists();
      links++;
    }
    assertThat(links).isGreaterThan(5);
  }

  private static String readme() throws Exception {
    return Files.readString(ROOT.resolve("README.md"));
  }
}
