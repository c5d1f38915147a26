// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class FuselageMomentTest {
  @Test
  void the_strip_sum_of_the_textbook_gives_its_slope() {
    // Nelson, Flight Stability and Automatic Control (strip sum from memory): 85.1 ft³, S = 184 ft², c̄ = 5.7 ft; the book
    // rounds .1274 to .12.
    double slope = FuselageMoment.strips(85.1, 184, 5.7);
    assertThat(slope).isCloseTo(0.1275, within(1e-4));
    double perDegree = 85.1 / (36.5 * 184 * 5.7);
    assertThat(Math.toRadians(slope)).isCloseTo(perDegree, within(2e-6));
  }

  @Test
  void the_light_twin_gets_its_fuselage_by_the_factor() {
    // Leifsson, AAE 451 course book, Purdue: 1.1783 per radian, printed to five figures.
    double slope = FuselageMoment.byFactor(Math.toDegrees(0.015), 5, 31.6, 134, 4.3);
    assertThat(slope).isCloseTo(1.17833, within(1e-5));
  }

  /** NACA Report 711 (from memory): per radian; the last place of the table, 0.7, is held beyond it. */
  @ParameterizedTest
  @CsvSource({"0.1, 0.115", "0.3, 0.344", "0.45, 0.5875", "0.7, 1.146", "0.9, 1.146", "0.02, 0.115"})
  void the_factor_is_read_off_between_its_points(double place, double expected) {
    assertThat(FuselageMoment.factor(place)).isCloseTo(expected, within(1e-12));
  }

  @Test
  void the_documented_example_of_Munk_holds() {
    double factor = ApparentMass.munkFactor(6);
    assertThat(FuselageMoment.munk(factor, 100e-6, 200e-4, 50e-3)).isCloseTo(0.1744, within(5e-5));
  }

  @ParameterizedTest
  @EnumSource(FuselageMethod.class)
  void a_fuselage_destabilises(FuselageMethod method) {
    // Sign: a body that pitches up is pitched up further, C_mα,f > 0, and the neutral point goes forward.
    NeutralPoint with = PitchModel.of(Models.glider()).withFuselageMoment(method).neutralPoint();
    double shift = with.contributions().get(2).value();
    assertThat(shift).as(method.words()).isBetween(-0.2, -0.001);
  }

  @Test
  void Munk_alone_is_the_most_careful_because_the_wing_shelters_the_rear_of_the_body() {
    // Munk's body flies without a wing. With the wing far forward most of the body lies in downwash, and the methods that
    // know the wing give a part of his couple.
    double munk = shift(FuselageMethod.MUNK);
    assertThat(shift(FuselageMethod.STRIPS) / munk).isBetween(0.3, 1.0);
    assertThat(shift(FuselageMethod.FACTOR) / munk).isBetween(0.15, 1.0);
  }

  private static double shift(FuselageMethod method) {
    return PitchModel.of(Models.glider()).withFuselageMoment(method).neutralPoint().contributions().get(2).value();
  }

  @Test
  void strips_in_undisturbed_flow_are_Munks_couple_of_an_endless_body() {
    // Without lift there is no upwash: ∫w² dx = 4·V/π, and ½·π·I = 2·V, which is Munk with k₂ − k₁ = 1.
    Fuselage body = new Fuselage(BodyShape.prolateSpheroid(), Length.metres(1), Length.metres(0.1));
    double integral =
        FuselageMoment.stripIntegral(body.shape(), 1, 0.1, 1.0, 0.0001, 0.5, 0.0, 1.0, 1.0, 4000);
    double strips = FuselageMoment.strips(integral, 0.3, 0.2);
    double munk = FuselageMoment.munk(1.0, body.volume().si(), 0.3, 0.2);
    assertThat(strips).isCloseTo(munk, within(1e-6 * munk));
  }

  @Test
  void more_body_ahead_of_the_wing_destabilises_more() {
    double before = strips(0.2);
    double after = strips(0.4);
    assertThat(after).isGreaterThan(before);
  }

  private static double strips(double rootLeadingEdge) {
    BodyShape capsule = BodyShape.capsule();
    return FuselageMoment.stripIntegral(capsule, 1, 0.1, rootLeadingEdge, 0.15, 0.5, 0.4, 0.6, 0.5, 60);
  }

  @Test
  void strips_are_between_one_and_a_million() {
    BodyShape capsule = BodyShape.capsule();
    for (int strips : new int[] {0, Integer.MAX_VALUE}) {
      assertThatIllegalArgumentException()
          .isThrownBy(() -> FuselageMoment.stripIntegral(capsule, 1, 0.1, 0.3, 0.15, 0.5, 0.4, 0.6, 0.5, strips))
          .withMessage("number of strips must be 1 to 1000000, was " + strips);
    }
  }
}
