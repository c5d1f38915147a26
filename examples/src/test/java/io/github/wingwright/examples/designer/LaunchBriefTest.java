// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.examples.brief.BriefFile;
import org.junit.jupiter.api.Test;

class LaunchBriefTest {
  private static LaunchBrief read(String text) {
    return LaunchBrief.from(BriefFile.parse("brief.json", text));
  }

  @Test
  void an_elastic_stands_instead_of_a_speed() {
    LaunchBrief launch =
        read("{\"height\": \"1.5 m\", \"elastic\": {\"pull\": \"8 N\", \"stretch\": \"0.5 m\", \"mass\": \"4 g\","
            + " \"glider_mass\": \"25 g\"}}");
    assertThat(launch.speed().value().si()).isCloseTo(Math.sqrt(2 * 0.7 * 2 / (0.025 + 0.004 / 3)), within(1e-9));
    assertThat(launch.elastic()).isPresent();
    assertThat(read("{\"height\": \"1.5 m\", \"speed\": \"6 m/s\"}").elastic()).isEmpty();
  }

  @Test
  void what_cannot_be_is_refused_with_its_place() {
    assertThatThrownBy(() -> read("{\"height\": \"1.5 m\"}")).hasMessageContaining("speed");
    assertThatThrownBy(
            () -> read("{\"height\": \"1.5 m\", \"speed\": \"6 m/s\", \"elastic\": {\"pull\": \"8 N\"}}"))
        .hasMessageContaining("speed");
    assertThatThrownBy(
            () ->
                read("{\"height\": \"1.5 m\", \"elastic\": {\"pull\": \"400 N\", \"stretch\": \"5 m\","
                    + " \"glider_mass\": \"5 g\"}}"))
        .hasMessageContaining("elastic")
        .hasMessageContaining("1 to 40 m/s");
  }
}
