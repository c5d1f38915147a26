// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import static io.github.wingwright.core.quantity.Length.millimetres;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.atmosphere.Atmosphere;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.stability.derivatives.LateralGuidelines;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** A finding says what to change and by how much: done by that much, it is gone. */
class AmountsTest {
  private static final PitchModel MODEL =
      PitchModel.of(Models.glider())
          .withWingSection(Models.exact(5.5, -0.05, -0.08, 0.9), 3e4)
          .withTailSection(Models.symmetric(), 2e4);

  private static double number(String message, String before, String after) {
    Matcher m = Pattern.compile(Pattern.quote(before) + "([0-9.]+)" + Pattern.quote(after)).matcher(message);
    assertThat(m.find()).as(message).isTrue();
    return Double.parseDouble(m.group(1));
  }

  private static Length behind(double margin) {
    NeutralPoint np = MODEL.neutralPoint();
    return np.x().minus(np.meanAerodynamicChord().times(margin));
  }

  @Test
  void too_little_margin_says_how_far_forward() {
    for (double margin : new double[] {-0.05, 0.02, 0.06}) {
      Finding finding = MODEL.staticMargin(behind(margin)).findings().get(0);
      double move = margin > 0.03
          ? number(finding.message(), "That is ", " mm forward")
          : number(finding.message(), "forward by ", " mm");
      StaticMargin mended = MODEL.staticMargin(behind(margin).minus(millimetres(move + 0.06)));
      assertThat(mended.findings()).as("margin %s, moved %s mm", margin, move).isEmpty();
    }
  }

  @Test
  void too_much_margin_says_how_far_aft() {
    Finding finding = MODEL.staticMargin(behind(0.3)).findings().get(0);
    double move = number(finding.message(), "That is ", " mm aft");
    assertThat(MODEL.staticMargin(behind(0.3).plus(millimetres(move + 0.06))).findings()).isEmpty();
  }

  @Test
  void a_tail_that_stalls_in_trim_says_how_far_aft() {
    Length forward = behind(1.8);
    Trim trim = MODEL.trim(forward, 0.85);
    Finding finding = trim.findings().stream().filter(f -> f.subject().equals("tail lift")).findFirst().orElseThrow();
    double move = number(finding.message(), "aft by ", " mm");
    assertThat(MODEL.trim(forward.plus(millimetres(move)), 0.85).tailLiftCoefficient()).isCloseTo(-0.8, within(0.02));
  }

  @Test
  void a_wing_that_stalls_in_trim_says_for_how_much_to_trim() {
    Trim trim = MODEL.trim(behind(0.15), 1.1);
    assertThat(trim.findings()).anyMatch(f -> f.message().endsWith("Trim for 0.90 or less."));
  }

  @Test
  void an_elevator_that_does_not_reach_says_how_much_travel() {
    ControlSurface elevator = new ControlSurface(ControlSurface.Kind.ELEVATOR, 0.3, 0, 1);
    var air = Atmosphere.standard().at(Length.ZERO);
    ElevatorRange little = ElevatorRange.of(MODEL, behind(0.15), elevator, Angle.degrees(0.5), Angle.degrees(1),
        Mass.grams(20), air);
    Finding finding = little.findings().stream().filter(f -> f.message().contains("of travel up")).findFirst().orElseThrow();
    double travel = number(finding.message(), "chord: ", "° of travel");
    ElevatorRange enough = ElevatorRange.of(MODEL, behind(0.15), elevator, Angle.degrees(travel + 0.06), Angle.degrees(1),
        Mass.grams(20), air);
    assertThat(enough.findings()).noneMatch(f -> f.message().contains("of travel up"));
  }

  private static AirframeDerivatives derivatives(Airframe airframe) {
    return AirframeDerivatives.of(MODEL.withAirframe(airframe), Placement.at(behind(0.15), Length.ZERO), 0.6, 0.04);
  }

  @Test
  void a_small_fin_says_how_large_it_must_be() {
    Airframe glider = Models.glider();
    Tail fin = TailScale.toArea(glider.verticalTail().orElseThrow(), 5e-4);
    Tail level = glider.horizontalTail().orElseThrow();
    LateralGuidelines ranges = LateralGuidelines.handLaunchedModel();
    Finding finding =
        derivatives(new Airframe(glider.fuselage(), glider.wing(), List.of(level, fin))).findings(ranges).get(0);
    double area = number(finding.message(), "to ", " cm² of fin") * 1e-4;
    Airframe mended =
        new Airframe(glider.fuselage(), glider.wing(), List.of(level, TailScale.toArea(fin, 1.01 * area)));
    assertThat(derivatives(mended).findings(ranges)).noneMatch(f -> f.subject().startsWith("directional"));
  }

  @Test
  void too_little_dihedral_says_how_much_more() {
    Airframe flat = Models.glider(1.0);
    LateralGuidelines ranges = LateralGuidelines.handLaunchedModel();
    Finding finding = derivatives(flat).findings(ranges).stream()
        .filter(f -> f.subject().startsWith("dihedral")).findFirst().orElseThrow();
    double more = number(finding.message(), " ", "° more dihedral");
    Wing wing = flat.wing();
    Wing raised = new Wing(wing.planform().withDihedral(Angle.degrees(1.0 + more + 0.06)), wing.section(),
        wing.placement(), wing.incidence());
    assertThat(derivatives(new Airframe(flat.fuselage(), raised, flat.tails())).findings(ranges))
        .noneMatch(f -> f.subject().startsWith("dihedral"));
  }

  @Test
  void too_little_dihedral_against_the_spiral_says_how_much_it_takes() {
    LateralStability flat = LateralStability.of(Models.glider(3.0), 0.7, AircraftClass.HAND_LAUNCHED_GLIDER);
    double needed = number(flat.findings().get(0).message(), "Add dihedral, to ", "° at least");
    assertThat(LateralStability.of(Models.glider(needed + 0.06), 0.7, AircraftClass.HAND_LAUNCHED_GLIDER)
        .isSpirallyStable()).isTrue();
  }
}
