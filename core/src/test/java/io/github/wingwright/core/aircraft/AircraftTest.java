// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aircraft;

import static io.github.wingwright.core.quantity.Length.millimetres;
import static io.github.wingwright.core.quantity.Mass.grams;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.FlatPlate;
import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.mass.MassItem;
import io.github.wingwright.core.mass.MassStatement;
import io.github.wingwright.core.quantity.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

class AircraftTest {
  private static final Airframe SHAPE =
      new Airframe(
          new Fuselage(BodyShape.capsule(), millimetres(300), millimetres(25)),
          Wing.of(Planform.tapered(millimetres(400), millimetres(60), millimetres(30)), FlatPlate.thick(0.03))
              .placedAt(Placement.at(millimetres(70), Length.ZERO)),
          List.of());
  private static final MassStatement MASSES =
      MassStatement.of(MassItem.of("all", grams(42), Placement.at(millimetres(90), Length.ZERO)));

  @Test
  void the_documented_example_holds() {
    Aircraft glider = new Aircraft(SHAPE, MASSES);
    assertThat(glider.wingLoading().kilogramsPerSquareMetre()).isCloseTo(2.333, within(5e-4));
    assertThat(glider.centreOfGravityOnMeanChord()).isCloseTo(0.357, within(5e-4));
    assertThat(glider.mass()).isEqualTo(MASSES.mass());
    assertThat(glider.centreOfGravity()).isEqualTo(Placement.at(millimetres(90), Length.ZERO));
    assertThat(glider.inertia()).isEqualTo(MASSES.inertia());
    assertThat(glider).hasToString("aircraft 42 g, 400 mm span, 2.33333 kg/m²");
  }

  @Test
  void a_change_makes_another_aircraft() {
    Aircraft glider = new Aircraft(SHAPE, MASSES);
    MassStatement heavier = MASSES.with(MassItem.of("ballast", grams(4), Placement.at(millimetres(10), Length.ZERO)));
    assertThat(glider.withMasses(heavier).mass().grams()).isCloseTo(46, within(1e-12));
    assertThat(glider.mass()).isEqualTo(MASSES.mass());
    assertThat(glider.withMasses(heavier).withMasses(MASSES)).isEqualTo(glider);
    assertThat(glider.withAirframe(SHAPE)).isEqualTo(glider);
  }
}
