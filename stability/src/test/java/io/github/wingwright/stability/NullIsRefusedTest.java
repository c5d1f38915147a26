// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.stability.design.Design;
import io.github.wingwright.stability.design.SizingLoop;
import io.github.wingwright.stability.design.TestGlider;
import io.github.wingwright.stability.flight.PitchFlight;
import io.github.wingwright.stability.production.LaunchLoads;
import io.github.wingwright.testing.NullDoors;
import java.util.List;
import org.junit.jupiter.api.Test;

class NullIsRefusedTest {
  /** What samples of plain numbers cannot make. */
  private static List<Object> samples() {
    Design design = SizingLoop.of(TestGlider.brief()).madeTo(Length.millimetres(0.5), Mass.grams(0.1)).solve();
    return List.of(
        design,
        design.brief(),
        design.aircraft(),
        design.aircraft().airframe(),
        design.aircraft().masses(),
        design.pitchModel(),
        design.neutralPoint(),
        design.glide(),
        design.modes(),
        design.lattice(),
        design.finiteWing(),
        LaunchLoads.of(design),
        PitchFlight.of(design));
  }

  @Test
  void nothing_is_refused_by_name_where_it_is_given() {
    NullDoors doors = NullDoors.of(samples(), "io.github.wingwright.stability");
    assertThat(doors.tried()).isGreaterThan(300);
    assertThat(doors.open()).isEmpty();
  }
}
