// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.mass.Inertia;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import org.junit.jupiter.api.Test;

class PartInertiaTest {
  @Test
  void a_rectangular_wing_is_a_plank_without_thickness() {
    Planform wing = Planform.tapered(Length.metres(0.6), Length.metres(0.08), Length.metres(0.08));
    Inertia own = PartInertia.surface(wing, 0.02);
    Inertia plank = Inertia.ofBox(Mass.grams(20), Length.metres(0.08), Length.metres(0.6), Length.ZERO);
    assertThat(own.roll().si()).isCloseTo(plank.roll().si(), within(1e-4 * plank.roll().si()));
    assertThat(own.pitch().si()).isCloseTo(plank.pitch().si(), within(1e-4 * plank.pitch().si()));
    assertThat(own.yaw().si()).isCloseTo(plank.yaw().si(), within(1e-4 * plank.yaw().si()));
  }

  @Test
  void dihedral_lifts_the_tips_from_the_centre_and_adds_to_roll_and_pitch() {
    Planform flat = Planform.tapered(Length.metres(0.6), Length.metres(0.08), Length.metres(0.08));
    double tangent = Math.tan(Math.toRadians(12));
    Inertia bent = PartInertia.surface(flat.withDihedral(Angle.degrees(12)), 0.02);
    // a thin rod of half the span, 0.3·tan 12° high, about its middle
    double added = 0.02 * 0.3 * 0.3 * tangent * tangent / 12.0;
    assertThat(bent.roll().si() - PartInertia.surface(flat, 0.02).roll().si()).isCloseTo(added, within(1e-3 * added));
    assertThat(bent.pitch().si() - PartInertia.surface(flat, 0.02).pitch().si()).isCloseTo(added, within(1e-3 * added));
  }

  @Test
  void a_rectangular_fin_is_an_upright_plate() {
    Planform fin = Planform.taperedFin(Area.squareCentimetres(80), 1.25, 1.0);
    Inertia own = PartInertia.surface(fin, 0.003);
    Inertia plate = Inertia.ofBox(Mass.grams(3), Length.metres(0.08), Length.ZERO, Length.metres(0.1));
    assertThat(own.roll().si()).isCloseTo(plate.roll().si(), within(1e-3 * plate.roll().si()));
    assertThat(own.pitch().si()).isCloseTo(plate.pitch().si(), within(1e-3 * plate.pitch().si()));
    assertThat(own.yaw().si()).isCloseTo(plate.yaw().si(), within(1e-3 * plate.yaw().si()));
  }

  @Test
  void a_long_capsule_is_nearly_a_tube() {
    Fuselage body = new Fuselage(BodyShape.capsule(), Length.metres(0.4), Length.metres(0.01));
    Inertia own = PartInertia.shell(body, 0.01, 0.0);
    Inertia tube = Inertia.ofTube(Mass.grams(10), Length.metres(0.4), Length.metres(0.01));
    assertThat(own.pitch().si()).isCloseTo(tube.pitch().si(), within(0.03 * tube.pitch().si()));
    assertThat(own.roll().si()).isCloseTo(tube.roll().si(), within(0.03 * tube.roll().si()));
  }
}
