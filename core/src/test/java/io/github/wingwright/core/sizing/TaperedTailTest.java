// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.basis.Consideration;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.EndProfile;
import io.github.wingwright.core.quantity.Density;
import io.github.wingwright.core.quantity.Force;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Pressure;
import org.junit.jupiter.api.Test;

class TaperedTailTest {
  private static final double E = 2.3e9;

  @Test
  void a_tube_bends_by_the_formula_of_the_even_cantilever() {
    double wall = 0.8e-3;
    double ring = Math.PI / 64 * (Math.pow(0.03, 4) - Math.pow(0.03 - 2 * wall, 4));
    double expected = 0.5 * 0.2 * 0.2 / (3 * E * ring);
    assertThat(TaperedTail.movement(new Tube(), 0.4, 0.03, 0.4, 0.9, 0.5, wall, E)).isCloseTo(expected, within(1e-12 * expected));
    Consideration even =
        Considerations.tailDeflectionAtMost(Force.newtons(0.5), 0.5, 0.02, ConsiderationsTest.PLA);
    Consideration along =
        Considerations.tailMovesAtMost(Force.newtons(0.5), 0.4, 0.9, 0.02, ConsiderationsTest.PLA).on(new Tube());
    assertThat(along.margin(0.4, 0.03)).isCloseTo(even.margin(0.4, 0.03), within(1e-9));
  }

  @Test
  void a_solid_cone_bends_by_the_textbooks_ratio_of_its_ends() {
    // Gere and Timoshenko, Mechanics of Materials, tapered cantilever of solid circular section (from memory):
    // δ = F·a³/(3·E·I₀)·d₀/d₁ with I₀ of the thick end.
    BodyShape cone = BodyShape.of(EndProfile.hemisphere(), 0.5, EndProfile.boatTail(0.4), 5);
    double d0 = 0.04;
    double d1 = 0.4 * d0;
    double length = 10 * d0;
    double a = 5 * d0;
    double solid = Math.PI / 64 * Math.pow(d0, 4);
    double expected = 3.0 * a * a / (3 * E * solid) * d0 / d1;
    assertThat(TaperedTail.movement(cone, length, d0, 0.5, 1.0, 3.0, d0, E)).isCloseTo(expected, within(1e-6 * expected));
  }

  @Test
  void the_thin_end_bends_more_than_the_greatest_section_would() {
    BodyShape pointed = BodyShape.noseCylinderCone(1, 4);
    BodyShell shell = BodyShell.of(Length.millimetres(0.8), Density.kilogramsPerCubicMetre(1240), Pressure.gigapascals(2.3));
    double tapered =
        Considerations.tailMovesAtMost(Force.newtons(2), 0.4, 0.9, 0.02, shell).on(pointed).margin(0.5, 0.05);
    double even = Considerations.tailDeflectionAtMost(Force.newtons(2), 0.5, 0.02, shell).margin(0.5, 0.05);
    assertThat(tapered).isLessThan(0.8 * even);
  }

  @Test
  void a_tail_ahead_of_the_wing_is_refused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Considerations.tailMovesAtMost(Force.newtons(1), 0.9, 0.4, 0.02, ConsiderationsTest.PLA))
        .withMessage("wing must hold the body ahead of the tail, was at 0.9 of the length");
  }
}
