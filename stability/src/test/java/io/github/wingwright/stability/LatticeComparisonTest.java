// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import static io.github.wingwright.core.quantity.Length.millimetres;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.stability.lattice.Coefficient;
import io.github.wingwright.stability.lattice.LatticeCondition;
import io.github.wingwright.stability.lattice.LatticeReference;
import io.github.wingwright.stability.lattice.LatticeSolution;
import io.github.wingwright.stability.lattice.LatticeSurface;
import io.github.wingwright.stability.lattice.Variable;
import io.github.wingwright.stability.lattice.VortexLattice;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The quick methods beside the vortex lattice: two independent ways to the same number. */
class LatticeComparisonTest {
  private static final double SMALL = 0.01;

  private static LatticeSolution solve(Wing wing, List<Tail> tails) {
    LatticeReference reference = LatticeReference.of(wing.planform(), wing.quarterChordX(), Length.ZERO);
    LatticeSurface[] surfaces = new LatticeSurface[1 + tails.size()];
    surfaces[0] = LatticeSurface.of("wing", wing).panels(6, 16);
    for (int i = 0; i < tails.size(); i++) {
      surfaces[i + 1] = LatticeSurface.of("tail " + i, tails.get(i)).panels(4, 12);
    }
    return VortexLattice.of(reference, surfaces).factor().solve(LatticeCondition.at(SMALL));
  }

  /** Without a fuselage to speak of, since the lattice has none. */
  private static Airframe thin(Wing wing, Tail tail) {
    Fuselage thread = new Fuselage(Models.glider().fuselage().shape(), millimetres(320), millimetres(0.1));
    return new Airframe(thread, wing, List.of(tail));
  }

  private static double latticeNeutralPoint(Wing wing, Tail tail) {
    LatticeSolution solution = solve(wing, List.of(tail));
    double lift = solution.derivative(Coefficient.LIFT, Variable.ANGLE_OF_ATTACK);
    double moment = solution.derivative(Coefficient.PITCHING_MOMENT, Variable.ANGLE_OF_ATTACK);
    return 0.25 - moment / lift;
  }

  @Test
  void the_neutral_point_of_a_glider_agrees_within_the_spread_of_the_downwash() {
    Airframe glider = Models.glider(0);
    Tail tail = glider.horizontalTail().orElseThrow();
    double lattice = latticeNeutralPoint(glider.wing(), tail);
    NeutralPoint quick =
        PitchModel.of(thin(glider.wing(), tail)).withTailEfficiency(1.0).neutralPoint();
    assertThat(quick.fraction()).as("lattice " + lattice + ", quick " + quick.band()).isCloseTo(lattice, within(0.08));
    assertThat(lattice).isBetween(quick.band().low() - 0.03, quick.band().high() + 0.03);
  }

  @Test
  void the_neutral_point_with_a_foreplane_agrees() {
    Airframe glider = Models.glider(0);
    Wing wing = glider.wing().placedAt(Placement.at(millimetres(220), Length.ZERO));
    Tail foreplane =
        new Tail(
            Tail.Role.HORIZONTAL,
            Planform.tapered(Area.squareCentimetres(35), 5, 0.8),
            Models.PLATE,
            Placement.at(millimetres(20), Length.ZERO),
            Angle.ZERO);
    double lattice = latticeNeutralPoint(wing, foreplane);
    double quick = PitchModel.of(thin(wing, foreplane)).withTailEfficiency(1.0).neutralPoint().fraction();
    assertThat(quick).as("lattice " + lattice).isCloseTo(lattice, within(0.08));
    assertThat(lattice).isLessThan(0.25);
  }

  @Test
  void the_moment_of_washout_on_a_swept_wing_is_of_the_right_sign_and_somewhat_large() {
    Planform plain = Planform.tapered(millimetres(500), millimetres(60), millimetres(50)).withSweep(0.25, Angle.degrees(25));
    Planform washed = plain.withWashout(Angle.degrees(4));
    LatticeSolution solution = solve(Wing.of(washed, Models.PLATE), List.of());
    double lift = solution.coefficients().lift();
    double moment = solution.coefficients().pitchingMoment();
    double liftSlope = solution.derivative(Coefficient.LIFT, Variable.ANGLE_OF_ATTACK);
    double momentSlope = solution.derivative(Coefficient.PITCHING_MOMENT, Variable.ANGLE_OF_ATTACK);
    double atZeroLift = moment - momentSlope / liftSlope * lift;
    double strips = SweptTwist.moment(washed, liftSlope);
    assertThat(atZeroLift).as("lattice " + atZeroLift + ", strips " + strips).isPositive();
    assertThat(strips / atZeroLift).isBetween(1.0, 1.3);
  }
}
