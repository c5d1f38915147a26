// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import static io.github.wingwright.core.quantity.Length.millimetres;
import static io.github.wingwright.core.quantity.Mass.grams;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.stability.lattice.AirframeLattice;
import io.github.wingwright.stability.lattice.LatticeReference;
import io.github.wingwright.stability.lattice.LatticeStation;
import io.github.wingwright.stability.lattice.LatticeSurface;
import io.github.wingwright.stability.lattice.VortexLattice;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What cannot be done is an explained result, or an error that names the cause and what would help. */
class BadInputTest {
  private static final Airframe GLIDER = Models.glider();
  private static final Airframe BARE = new Airframe(GLIDER.fuselage(), GLIDER.wing(), List.of());
  private static final PitchModel MODEL =
      PitchModel.of(GLIDER)
          .withWingSection(Models.exact(5.5, -0.05, -0.08, 0.9), 3e4)
          .withTailSection(Models.symmetric(), 2e4);
  private static final LatticeReference REFERENCE = new LatticeReference(6, 1, 6, 0.3, 0);

  @Test
  void a_layout_without_a_tail_has_a_neutral_point_with_a_note() {
    NeutralPoint point = PitchModel.of(BARE).neutralPoint();
    assertThat(point.fraction()).isBetween(0.0, 0.25);
    Finding note = point.findings().get(0);
    assertThat(note.severity()).isEqualTo(Severity.NOTE);
    assertThat(note.message()).contains("the wing alone must balance").contains("section with reflex");
  }

  @Test
  void a_layout_without_a_tail_is_refused_where_a_tail_is_needed() {
    PitchModel bare = MODEL.withAirframe(BARE);
    Length cg = millimetres(90);
    assertThatThrownBy(() -> bare.trim(cg, 0.5)).isInstanceOf(IllegalStateException.class)
        .hasMessage("trim by decalage needs a horizontal tail, the airframe has none: without one use TaillessTrim");
    assertThatThrownBy(bare::downwash).isInstanceOf(IllegalStateException.class)
        .hasMessage("downwash needs a horizontal tail, the airframe has none: without one use slopes() and TaillessTrim");
    assertThatThrownBy(() -> LateralStability.of(BARE, 0.5, AircraftClass.HAND_LAUNCHED_GLIDER))
        .isInstanceOf(IllegalStateException.class)
        .hasMessage("spiral parameter needs a vertical tail, the airframe has none");
    assertThatThrownBy(() -> TaillessTrim.of(MODEL, cg, 0.5)).isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("this one has one");
  }

  @Test
  void a_margin_that_no_ballast_can_give_says_how_much_it_would_take() {
    WingStation.Balance balance =
        WingStation.of(MODEL)
            .massOnWing(grams(20), millimetres(110))
            .massElsewhere(grams(14), millimetres(180))
            .travel(millimetres(78), millimetres(80))
            .ballast(millimetres(20), grams(1))
            .forMargin(0.6);
    Finding finding =
        balance.findings().stream().filter(f -> f.subject().equals("wing station")).findFirst().orElseThrow();
    assertThat(finding.severity()).isEqualTo(Severity.SERIOUS);
    assertThat(finding.message()).startsWith("A margin of 60 % takes ").contains("there is room for 1 g")
        .contains("lengthen the nose, or enlarge the tail");
    assertThat(balance.ballast()).isEqualTo(grams(1));
  }

  @Test
  void a_margin_that_no_tail_can_give_says_why() {
    assertThatThrownBy(() -> TailSizing.horizontal(GLIDER.wing()).section(Models.PLATE).arm(millimetres(60))
        .staticMargin(2.5, millimetres(90), MODEL).solve()).isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("no tail area gives a static margin of 250 %")
        .hasMessageContaining("Move the centre of gravity forward or the tail aft");
  }

  @Test
  void a_singular_lattice_names_the_strip_and_the_surface() {
    LatticeSurface wing = LatticeSurface.trapezoid("wing", 6, 1, 1, 0, 0).panels(2, 6);
    for (double chord : new double[] {1e-10, 1e-17, 1e-200}) {
      LatticeSurface needle = LatticeSurface.mirrored("needle", new LatticeStation(3, 0, 1, chord, 0),
          new LatticeStation(3, 2, 1, chord, 0)).panels(1, 3);
      assertThatThrownBy(() -> VortexLattice.of(REFERENCE, wing, needle).factor())
          .isInstanceOf(IllegalStateException.class)
          .hasMessageStartingWith("lattice is singular: strip 1 of surface 'needle' has hardly any chord");
    }
  }

  @Test
  void surfaces_that_coincide_are_named() {
    List<io.github.wingwright.core.geometry.Tail> twice = new ArrayList<>(GLIDER.tails());
    twice.add(GLIDER.horizontalTail().orElseThrow());
    Airframe doubled = new Airframe(GLIDER.fuselage(), GLIDER.wing(), twice);
    Placement centre = Placement.at(millimetres(90), Length.ZERO);
    assertThatThrownBy(() -> AirframeLattice.of(doubled).about(centre.x(), centre.z()).factor())
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("surfaces must not coincide: 'horizontal tail' and 'horizontal tail 2' lie in one another");
  }
}
