// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.wingwright.airfoils.manufacture.SectionShell;
import io.github.wingwright.airfoils.potential.PanelMethod;
import io.github.wingwright.airfoils.viscous.ViscousMethod;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.testing.NullDoors;
import java.util.List;
import org.junit.jupiter.api.Test;

class NullIsRefusedTest {
  /** What samples of plain numbers cannot make. */
  private static List<Object> samples() {
    Naca4 section = Naca4.parse("4406");
    return List.of(
        section,
        section.contour(60),
        SectionShell.of(section, Length.millimetres(80), Length.millimetres(0.8)),
        PanelMethod.of(section, 40),
        ViscousMethod.of(section));
  }

  @Test
  void nothing_is_refused_by_name_where_it_is_given() {
    NullDoors doors = NullDoors.of(samples(), "io.github.wingwright.airfoils");
    assertThat(doors.tried()).isGreaterThan(80);
    assertThat(doors.open()).isEmpty();
  }
}
