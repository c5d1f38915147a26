// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A brief may be odd and still legal: then there is a report, with findings, and no exception out of a chapter. */
class OddBriefTest {
  @TempDir
  Path temporary;

  private String report(String from, String to) throws IOException {
    String brief = ProgramRun.write(temporary, ProgramRun.changed(from, to));
    ProgramRun run = ProgramRun.of(temporary.resolve("designs"), brief);
    assertThat(run.err()).isEmpty();
    assertThat(run.status()).isZero();
    return Files.readString(temporary.resolve("designs/hall-glider/report.html"));
  }

  @Test
  void a_wing_too_slender_for_boundary_layers_is_told_so() throws IOException {
    assertThat(report("\"aspect_ratio\": 6.2", "\"aspect_ratio\": 40"))
        .contains("Boundary layers are computed at Reynolds numbers from 10⁴ to 5·10⁶; this wing glides at 5");
  }

  @Test
  void a_small_static_margin_gives_a_report() throws IOException {
    assertThat(report("\"static_margin\": 0.15", "\"static_margin\": 0.02")).contains("Downwash at the tail");
  }

  @Test
  void a_body_may_go_without_a_range_of_fineness() throws IOException {
    assertThat(report("\"fineness_range\": [6, 10],", "")).doesNotContain("fineness 6 to 10");
  }
}
