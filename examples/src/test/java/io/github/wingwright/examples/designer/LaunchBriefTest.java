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
    assertThat(launch.launch().speed().si()).isCloseTo(Math.sqrt(2 * 0.7 * 2 / (0.025 + 0.004 / 3)), within(1e-9));
    assertThat(launch.launch().elastic()).isPresent();
    assertThat(read("{\"height\": \"1.5 m\", \"speed\": \"6 m/s\"}").launch().elastic()).isEmpty();
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

  private static String elastic(String inside) {
    return "{\"height\": \"1.5 m\", \"elastic\": {" + inside + ", \"glider_mass\": \"55 g\"}}";
  }

  @Test
  void a_table_of_measured_pulls_stands_instead_of_pull_and_stretch() {
    LaunchBrief launch = read(elastic("\"measured\": [[\"0.1 m\", \"3 N\"], [\"0.3 m\", \"5 N\"], [\"0.5 m\", \"8 N\"]]"));
    // Triangle to 3 N, then two trapezoids.
    assertThat(launch.launch().elastic().orElseThrow().energy().si()).isCloseTo(0.15 + 0.8 + 1.3, within(1e-12));
  }

  @Test
  void a_row_of_the_table_that_cannot_be_is_named() {
    assertThatThrownBy(() -> read(elastic("\"measured\": [[\"0.1 m\", \"3 N\"], [\"0.3 m\", \"2 N\"]]")))
        .hasMessageContaining("elastic.measured")
        .hasMessageContaining("must not fall")
        .hasMessageContaining("row 2");
    assertThatThrownBy(() -> read(elastic("\"measured\": [[\"0.3 m\", \"3 N\"], [\"0.2 m\", \"4 N\"]]")))
        .hasMessageContaining("must rise")
        .hasMessageContaining("row 2");
    assertThatThrownBy(() -> read(elastic("\"measured\": [[\"0.3 m\"]]"))).hasMessageContaining("pair of stretch and pull");
    assertThatThrownBy(() -> read(elastic("\"measured\": []"))).hasMessageContaining("at least one");
    assertThatThrownBy(() -> read(elastic("\"measured\": [[\"0.3 m\", \"3 N\"]], \"pull\": \"8 N\"")))
        .hasMessageContaining("left out");
  }
}
