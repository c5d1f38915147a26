// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

import static io.github.wingwright.core.quantity.Angle.degrees;
import static io.github.wingwright.core.quantity.Length.millimetres;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class AirframeTest {
  private static final AirfoilSection PLATE = FlatPlate.thick(0.03);
  private static final Planform OUTLINE = Planform.tapered(millimetres(400), millimetres(60), millimetres(30));
  private static final Wing WING =
      Wing.of(OUTLINE, PLATE).placedAt(Placement.at(millimetres(70), millimetres(10))).withIncidence(degrees(2));
  private static final Tail TAIL =
      new Tail(
          Tail.Role.HORIZONTAL,
          Planform.tapered(millimetres(120), millimetres(30), millimetres(30)),
          PLATE,
          Placement.at(millimetres(250), Length.ZERO),
          Angle.ZERO);
  private static final Tail FIN =
      new Tail(
          Tail.Role.VERTICAL,
          Planform.taperedFin(Area.squareCentimetres(15), 1.5, 0.6),
          PLATE,
          Placement.at(millimetres(255), Length.ZERO),
          Angle.ZERO);
  private static final Fuselage BODY = new Fuselage(BodyShape.capsule(), millimetres(300), millimetres(25));

  @Test
  void places_add_up_along_the_fuselage() {
    // The quarter-chord line is straight: a quarter of the root chord behind the leading edge of the root.
    assertThat(WING.quarterChordX().millimetres()).isCloseTo(85, within(1e-12));
    assertThat(WING.meanAerodynamicChordX().millimetres()).isCloseTo(85 - 46.6666666667 / 4, within(1e-9));
    assertThat(TAIL.armFrom(WING).millimetres()).isCloseTo(257.5 - 85, within(1e-12));
    assertThat(WING.placement().withX(millimetres(60))).isEqualTo(Placement.at(millimetres(60), millimetres(10)));
  }

  @Test
  void thickness_and_skin_come_from_the_section() {
    assertThat(WING.maximumThickness().millimetres()).isCloseTo(1.8, within(1e-12));
    assertThat(WING.wettedArea().squareCentimetres()).isCloseTo(180 * 2.06, withinPercentage(1e-12));
  }

  @Test
  void tails_are_found_by_their_role() {
    Airframe plane = new Airframe(BODY, WING, List.of(FIN, TAIL));
    assertThat(plane.horizontalTail()).contains(TAIL);
    assertThat(plane.verticalTail()).contains(FIN);
    assertThat(new Airframe(BODY, WING, List.of()).horizontalTail()).isEmpty();
  }

  @Test
  void a_V_tail_is_one_tail_that_works_both_ways() {
    Planform raised = OUTLINE.withDihedral(Angle.degrees(60));
    Tail v = new Tail(Tail.Role.V, raised, PLATE, Placement.at(millimetres(250), Length.ZERO), Angle.ZERO);
    // Seen from above it is half as wide as it is: cos 60°.
    assertThat(v.areaInOwnPlane().si()).isCloseTo(2 * raised.area().si(), withinPercentage(1e-10));
    assertThat(v.wettedArea().si()).isCloseTo(2.06 * 2 * raised.area().si(), withinPercentage(1e-10));
    assertThat(TAIL.areaInOwnPlane()).isEqualTo(TAIL.planform().area());
    Airframe plane = new Airframe(BODY, WING, List.of(v));
    assertThat(plane.pitchTail()).contains(v);
    assertThat(plane.yawTails()).containsExactly(v);
    assertThat(plane.vTail()).contains(v);
    assertThat(plane.horizontalTail()).isEmpty();
    assertThat(plane.verticalTail()).isEmpty();
    Airframe usual = new Airframe(BODY, WING, List.of(FIN, TAIL));
    assertThat(usual.pitchTail()).contains(TAIL);
    assertThat(usual.yawTails()).containsExactly(FIN);
    refuses(
        () -> new Tail(Tail.Role.V, OUTLINE, PLATE, WING.placement(), Angle.ZERO),
        "dihedral of a V-tail must be 5° or more, up or down, was ");
    refuses(
        () -> new Tail(Tail.Role.V, FIN.planform(), PLATE, WING.placement(), Angle.ZERO),
        "planform of a V-tail must have two halves, was fin ");
  }

  @Test
  void an_airframe_keeps_its_own_list() {
    List<Tail> tails = new ArrayList<>(List.of(TAIL));
    Airframe plane = new Airframe(BODY, WING, tails);
    tails.clear();
    assertThat(plane.tails()).containsExactly(TAIL);
    assertThat(plane).isEqualTo(new Airframe(BODY, WING, List.of(TAIL)));
  }

  @Test
  void a_fuselage_has_the_sizes_of_its_shape() {
    assertThat(BODY.finenessRatio()).isCloseTo(12, within(1e-12));
    assertThat(BODY.volume().si()).isEqualTo(BodyShape.capsule().volume(BODY.length().si(), BODY.diameter().si()));
    assertThat(BODY.wettedArea().si()).isEqualTo(BodyShape.capsule().wettedArea(BODY.length().si(), BODY.diameter().si()));
    assertThat(BODY.frontalArea().squareMillimetres()).isCloseTo(490.8738521234, withinPercentage(1e-10));
    assertThat(BODY.radiusAt(millimetres(150))).isEqualTo(millimetres(12.5));
  }

  @Test
  void what_does_not_go_together_is_refused() {
    refuses(() -> Wing.of(FIN.planform(), PLATE), "planform of a wing must have two halves, was fin ");
    refuses(
        () -> new Tail(Tail.Role.VERTICAL, OUTLINE, PLATE, WING.placement(), Angle.ZERO),
        "planform of a vertical tail must have one half, was planform ");
    refuses(
        () -> new Tail(Tail.Role.HORIZONTAL, FIN.planform(), PLATE, WING.placement(), Angle.ZERO),
        "planform of a horizontal tail must have two halves, was fin ");
    refuses(
        () -> new Fuselage(BodyShape.capsule(), millimetres(20), millimetres(25)),
        "body length must be at least 25 mm for a capsule of diameter 25 mm, was 20 mm");
    refuses(
        () -> new Fuselage(BodyShape.capsule(), millimetres(20), Length.ZERO), "body diameter must be positive, was 0 m");
    refuses(() -> BODY.radiusAt(millimetres(301)), "station must be 0 m to 300 mm, was 301 mm");
  }

  @Test
  void each_part_is_one_line_of_text() {
    assertThat(WING).hasToString("wing 400 mm × 45 mm, flat plate");
    assertThat(TAIL).hasToString("horizontal tail 120 mm × 30 mm, flat plate");
    assertThat(BODY).hasToString("fuselage 300 mm × 25 mm, capsule");
    assertThat(new Airframe(BODY, WING, List.of(TAIL))).hasToString("airframe 400 mm span, 300 mm long, 1 tail");
  }

  private static void refuses(org.assertj.core.api.ThrowableAssert.ThrowingCallable call, String start) {
    assertThatIllegalArgumentException().isThrownBy(call).withMessageStartingWith(start);
  }
}
