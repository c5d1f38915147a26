// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.mass.MassItem;
import io.github.wingwright.examples.brief.BriefFile;
import org.junit.jupiter.api.Test;

class CarriedItemTest {
  private static MassItem read(String rest) {
    return CarriedItem.from(BriefFile.parse("brief.json", "{ \"name\": \"thing\", \"at\": \"95 mm\"" + rest + " }"));
  }

  @Test
  void what_is_weighed_keeps_its_mass_and_what_is_made_follows_from_its_size() {
    assertThat(read(", \"mass\": \"8.5 g\"").mass().grams()).isCloseTo(8.5, within(1e-12));
    MassItem spar = read(
        ", \"tube\": {\"material\": \"carbon tube\", \"outer\": \"3 mm\", \"inner\": \"2 mm\", \"length\": \"300 mm\", \"lies\": \"across\"}");
    // 1550 kg/m³ · π/4 · (9 − 4) mm² · 300 mm
    assertThat(spar.mass().grams()).isCloseTo(1.55e-3 * Math.PI / 4 * 5 * 300, within(1e-9));
    assertThat(spar.ownInertia().roll()).isGreaterThan(spar.ownInertia().pitch().times(1000));
    assertThat(spar.massBand().high().dividedBy(spar.massBand().low())).isCloseTo(1.6 / 1.5, within(1e-12));
    assertThat(spar.source()).isEqualTo(Source.BRIEF);
    MassItem rod = read(", \"tube\": {\"material\": \"carbon tube\", \"outer\": \"2 mm\", \"length\": \"100 mm\"}");
    assertThat(rod.mass().grams()).isCloseTo(1.55e-3 * Math.PI * 100, within(1e-9));
    assertThat(rod.ownInertia().pitch()).isGreaterThan(rod.ownInertia().roll().times(100));
    MassItem floor = read(", \"sheet\": {\"material\": \"birch plywood\", \"area\": \"12 cm²\", \"thickness\": \"1 mm\"}");
    assertThat(floor.mass().grams()).isCloseTo(0.816, within(1e-9));
  }

  @Test
  void what_is_said_twice_not_at_all_or_cannot_be_is_refused_in_words() {
    assertThatThrownBy(() -> read("")).hasMessageContaining("needs one of \"mass\", \"tube\" and \"sheet\", has none");
    assertThatThrownBy(() -> read(", \"mass\": \"1 g\", \"sheet\": {\"material\": \"PLA\", \"area\": \"1 cm²\", \"thickness\": \"1 mm\"}"))
        .hasMessageContaining("has 2");
    assertThatThrownBy(() -> read(", \"tube\": {\"material\": \"carbon tube\", \"outer\": \"2 mm\", \"inner\": \"3 mm\", \"length\": \"1 m\"}"))
        .hasMessageContaining("must be less than the outer diameter of 2 mm, was 3 mm");
    assertThatThrownBy(() -> read(", \"tube\": {\"material\": \"unobtainium\", \"outer\": \"2 mm\", \"length\": \"1 m\"}"))
        .hasMessageContaining("must be one of the materials of the library").hasMessageContaining("was \"unobtainium\"");
  }
}
