// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.wingwright.core.aerodynamics.EstimatedPolar;
import io.github.wingwright.core.aircraft.Aircraft;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.mass.MassItem;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.stability.AircraftClass;
import io.github.wingwright.stability.PitchModel;
import io.github.wingwright.stability.TailScale;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** A finding about a motion says how much of one change mends it: done by that much, it is gone. */
class ModeAmountsTest {
  private static final Pattern AMOUNT =
      Pattern.compile("(vertical tail at its arm|horizontal tail at its arm|dihedral|ballast in the nose) from \\S+?(?: cm²| g|°) to (\\S+?)(?: cm²| g|°)(?: \\(then look at: ([^)]*)\\))?");

  private static Design design(double dihedral, double fin, double tail) {
    return SizingLoop.of(
            TestGlider.brief()
                .wing(TestGlider.wing().dihedral(Angle.degrees(dihedral)))
                .tails(
                    TestGlider.PLATE,
                    EstimatedPolar.of(TestGlider.PLATE),
                    new TailBrief(tail, 3.5, 0.8),
                    new TailBrief(fin, 1.5, 0.7)))
        .solve();
  }

  private static FlightModes modes(Design design, PitchModel model, Aircraft aircraft) {
    return FlightModes.of(model, aircraft, design.glide(), design.trim().liftCoefficient());
  }

  private static FlightModes done(Design design, PitchModel model, Aircraft aircraft, String what, double amount) {
    Airframe frame = aircraft.airframe();
    if (what.startsWith("ballast")) {
      Placement nose = Placement.at(frame.fuselage().diameter().times(0.25), Length.ZERO);
      MassItem item = MassItem.of("ballast", Mass.grams(amount), nose);
      return modes(design, model, aircraft.withMasses(aircraft.masses().with(item)));
    }
    Wing wing = frame.wing();
    Wing raised =
        what.equals("dihedral")
            ? new Wing(wing.planform().withDihedral(Angle.degrees(amount)), wing.section(), wing.placement(), wing.incidence())
            : wing;
    List<Tail> tails =
        frame.tails().stream()
            .map(t -> what.startsWith(t.role().words()) ? TailScale.toArea(t, 1e-4 * amount) : t)
            .toList();
    Airframe other = new Airframe(frame.fuselage(), raised, tails);
    return modes(design, model.withAirframe(other), aircraft.withAirframe(other));
  }

  /** Applies every amount of the finding of a subject, each alone, and returns how many there were. */
  private static int applied(Design design, PitchModel model, Aircraft aircraft, String subject) {
    FlightModes before = modes(design, model, aircraft);
    List<Finding> all = before.findings();
    Finding finding = all.stream().filter(f -> f.subject().equals(subject)).findFirst().orElseThrow(() -> new AssertionError(all));
    Matcher amounts = AMOUNT.matcher(finding.message());
    int count = 0;
    while (amounts.find()) {
      FlightModes after = done(design, model, aircraft, amounts.group(1), Double.parseDouble(amounts.group(2)));
      assertThat(after.findings()).as(finding.message() + " / " + amounts.group()).noneMatch(f -> f.subject().equals(subject));
      String price = amounts.group(3) == null ? "" : amounts.group(3);
      assertThat(after.findings())
          .extracting(Finding::subject)
          .allMatch(s -> price.contains(s) || all.stream().anyMatch(f -> f.subject().equals(s)));
      count++;
    }
    return count;
  }

  private static int applied(Design design, String subject) {
    return applied(design, design.pitchModel(), design.aircraft(), subject);
  }

  @Test
  void a_wagging_tail_says_how_large_the_fin_or_how_little_the_dihedral() {
    assertThat(applied(design(11, 0.01, 0.5), "damping ratio of the Dutch roll")).isPositive();
    assertThat(applied(design(20, 0.02, 0.5), "damping ratio of the Dutch roll")).isPositive();
  }

  @Test
  void a_phugoid_that_grows_says_how_large_the_tailplane_or_how_much_ballast() {
    assertThat(applied(design(11, 0.035, 0.15), "phugoid")).isPositive();
    assertThat(applied(design(11, 0.035, 0.15), "damping ratio of the phugoid")).isPositive();
  }

  @Test
  void a_nose_that_runs_away_says_how_much_ballast_or_tailplane_brings_it_back() {
    Design design = design(11, 0.035, 0.5);
    double light = 0.3 * ModeAmounts.ballast(design.aircraft().masses());
    Aircraft tailHeavy = design.aircraft().withMasses(ModeAmounts.ballasted(design.aircraft(), light));
    assertThat(applied(design, design.pitchModel(), tailHeavy, "pitch divergence")).isGreaterThan(1);
  }

  @Test
  void a_quick_spiral_of_a_piloted_aeroplane_says_how_much_dihedral_or_fin() {
    Design design = design(1, 0.06, 0.5);
    PitchModel piloted = design.pitchModel().forClass(AircraftClass.SINGLE_ENGINE);
    assertThat(applied(design, piloted, design.aircraft(), "time to double of the spiral")).isPositive();
  }

  @Test
  void where_no_amount_of_one_thing_helps_it_says_why() {
    Design design = design(11, 0.035, 0.5);
    ModeAmounts amounts =
        new ModeAmounts(
            design.pitchModel(), design.aircraft(), design.glide(), design.trim().liftCoefficient(), design.modes().plainFindings());
    Finding roll = Finding.of(Severity.CAUTION, "time constant of the roll", "It rolls slowly.", Source.COMMON_PRACTICE);
    assertThat(amounts.withAmounts(roll).message()).isEqualTo(
        "It rolls slowly. No amount: span, inertia and speed change all else as well; size it again with another span.");
  }

  private static Finding ofMargin(List<Finding> findings) {
    return findings.stream().filter(f -> f.subject().startsWith("static margin")).findFirst().orElseThrow();
  }

  @Test
  void a_static_margin_outside_its_range_says_how_many_grams_in_the_nose() {
    for (double margin : new double[] {0.02, 0.04, 0.4}) {
      Design design = SizingLoop.of(TestGlider.brief().staticMargin(margin)).solve();
      Finding finding = ofMargin(design.findings());
      Matcher amount = Pattern.compile("In the nose it takes (\\S+) g (more|less)\\.").matcher(finding.message());
      assertThat(amount.find()).as(finding.message()).isTrue();
      assertThat(amount.group(2)).isEqualTo(margin < 0.1 ? "more" : "less");
      double change = 1e-3 * Double.parseDouble(amount.group(1)) * (margin < 0.1 ? 1.0 : -1.0);
      double ballast = ModeAmounts.ballast(design.aircraft().masses()) + change;
      Aircraft mended = design.aircraft().withMasses(ModeAmounts.ballasted(design.aircraft(), ballast));
      assertThat(design.pitchModel().staticMargin(mended.centreOfGravity().x()).findings()).as(finding.message()).isEmpty();
    }
  }
}
