// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.core.basis.Bound;
import io.github.wingwright.core.basis.FeasibleRange;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Strength;
import io.github.wingwright.core.basis.Workings;
import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.mass.Ballast;
import io.github.wingwright.core.numerics.Roots;
import io.github.wingwright.core.numerics.Tolerance;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/** Finds where the wing goes and how much ballast it takes: what {@link WingStation} asks for. */
final class BalanceSolver {
  private static final Formula SHIFTED =
      Formula.named("mass on the wing, where the wing is now")
          .gives("x_2", Length.METRE)
          .as("x_m + x_s − x_0")
          .where("x_m", "its place with the wing where it was", Length.METRE, -1, 100)
          .where("x_s", "root leading edge of the wing", Length.METRE, -1, 100)
          .where("x_0", "root leading edge of the wing where it was", Length.METRE, -1, 100)
          .from(Source.DEFINITION)
          .computedBy((double mass, double station, double was) -> mass + station - was);

  private static final Formula TOTAL =
      Formula.named("mass without ballast")
          .gives("m", Mass.KILOGRAM)
          .as("m_1 + m_2")
          .where("m_1", "mass elsewhere", Mass.KILOGRAM, 0, 1e5)
          .where("m_2", "mass on the wing", Mass.KILOGRAM, 1e-6, 1e5)
          .from(Source.DEFINITION)
          .computedBy((double a, double b) -> a + b);

  private static final Source MOMENTS = Source.library("the wing's station that gives the margin, tail fixed");
  private static final Tolerance TIGHT = Tolerance.relative(1e-12);

  private final BalanceChoices choices;

  BalanceSolver(BalanceChoices choices) {
    this.choices = choices;
  }

  WingStation.Balance solve(double margin) {
    DoubleUnaryOperator excess = station -> marginAt(station) - margin;
    double low = choices.foremost.si();
    double high = choices.aftmost.si();
    double atLow = excess.applyAsDouble(low);
    double atHigh = excess.applyAsDouble(high);
    boolean reached = atLow == 0.0 || atHigh == 0.0 || atLow > 0.0 != atHigh > 0.0;
    double nearest = Math.abs(atLow) <= Math.abs(atHigh) ? low : high;
    Step wanted = Step.given("static margin wanted", "K_n", margin, Source.BRIEF);
    Step station =
        reached
            ? Step.solution(
                "root leading edge of the wing",
                "x_s",
                Length.METRE,
                "Brent's method over the travel of the wing",
                "K_n(x_s) = K_n wanted",
                v -> Roots.find(s -> marginAt(s) - v[0], v[1], v[2], TIGHT),
                v -> marginAt(v[3]) - v[0],
                MOMENTS,
                wanted,
                Step.given("foremost wing station", "x_f", choices.foremost, Source.BRIEF),
                Step.given("aftmost wing station", "x_a", choices.aftmost, Source.BRIEF))
            : Step.given("root leading edge of the wing, at the end of its travel", "x_s", Length.metres(nearest), MOMENTS);
    PitchModel moved = modelAt(station.value());
    NeutralPoint np = moved.neutralPoint();
    Step centre = centreStep(station);
    Step target =
        Step.of(
            WingStation.TARGET,
            Step.given("leading edge of the mean aerodynamic chord", "x_c", np.leadingEdge(), Source.DEFINITION),
            np.step(),
            wanted,
            Step.given("mean aerodynamic chord", "c̄", np.meanAerodynamicChord(), Sources.AIRFRAME));
    List<Finding> findings = new ArrayList<>();
    double ballast = 0.0;
    List<Step> results = new ArrayList<>(List.of(station, np.step()));
    Length cg = Length.metres(centre.value());
    results.add(centre);
    if (!reached) {
      Length ballastX = choices.ballastPlace(centre.value(), target.value());
      Step needed =
          Step.of(
              Ballast.MASS,
              totalStep(),
              centre,
              target,
              Step.given("place of the ballast", "x_b", ballastX, Source.BRIEF));
      ballast = Math.min(Math.max(needed.value(), 0.0), choices.mostBallast.si());
      if (ballast > 0.0) {
        Step added = ballast == needed.value() ? needed : Step.given("ballast", "m_b", choices.mostBallast, Source.BRIEF);
        Step withBallast =
            Step.of(
                "centre of gravity with ballast",
                "x",
                WingStation.TWO_MASSES,
                added,
                Step.given("place of the ballast", "x_b", ballastX, Source.BRIEF),
                totalStep(),
                centre);
        results.add(withBallast);
        cg = Length.metres(withBallast.value());
      }
      findings.add(unreached(needed.value(), ballast, margin, nearest == high, target.value(), ballastX));
    }
    StaticMargin got = StaticMargin.of(np, cg, choices.model.aircraftClass());
    findings.addAll(got.findings());
    return new WingStation.Balance(
        moved.airframe(),
        Length.metres(station.value()),
        Mass.kilograms(ballast),
        choices.wingMass.plus(choices.otherMass).plus(Mass.kilograms(ballast)),
        cg,
        got,
        range(margin, station.value()),
        Workings.of(results),
        Finding.inOrderOfWeight(findings));
  }

  private Finding unreached(
      double needed, double used, double margin, boolean atAftEnd, double target, Length ballastX) {
    String end = atAftEnd ? "aft" : "forward";
    if (used > 0.0 && used >= needed) {
      return Finding.of(
          Severity.NOTE,
          "wing station",
          "The wing stands at the " + end + " end of its travel, and ballast does the rest. More travel would save it.",
          MOMENTS);
    }
    if (needed > 0.0) {
      return Finding.of(
          Severity.SERIOUS,
          "wing station",
          String.format(
              Locale.ROOT,
              "A margin of %.0f %% takes %s of ballast at %s, and there is room for %s. Give the wing more travel %s,"
                  + " place the ballast farther from %s, lengthen the nose, or enlarge the tail.",
              100.0 * margin,
              Mass.kilograms(needed),
              ballastX,
              choices.mostBallast,
              end,
              Length.metres(target)),
          MOMENTS);
    }
    boolean wantsAft = target > centreAt(atAftEnd ? choices.aftmost.si() : choices.foremost.si());
    return Finding.of(
        Severity.CAUTION,
        "wing station",
        String.format(
            Locale.ROOT,
            "With the wing at the %s end of its travel the centre of gravity should still move %s, and ballast at %s"
                + " would move it the other way. Move mass %s, %s in all, or give the wing more travel.",
            end,
            wantsAft ? "aft" : "forward",
            ballastX,
            wantsAft ? "aft" : "forward",
            moment(Math.abs(target - centreAt(atAftEnd ? choices.aftmost.si() : choices.foremost.si())))),
        MOMENTS);
  }

  /** A mass times a distance, as a builder moves it. */
  private String moment(double distance) {
    double total = choices.wingMass.plus(choices.otherMass).si();
    return String.format(Locale.ROOT, "10 g by %s", Length.metres(total * distance / 0.010).format(Length.MILLIMETRE, 3));
  }

  private FeasibleRange range(double margin, double station) {
    List<Bound> bounds = new ArrayList<>();
    bounds.add(
        Bound.of(
            "travel of the wing", Strength.LIMIT, Source.BRIEF, Interval.between(choices.foremost.si(), choices.aftmost.si())));
    var guideline = choices.model.aircraftClass().staticMargin();
    OptionalDouble least = stationFor(guideline.range().lower());
    OptionalDouble most = stationFor(guideline.range().upper());
    if (least.isPresent() || most.isPresent()) {
      double a = least.orElse(Double.NEGATIVE_INFINITY);
      double b = most.orElse(Double.POSITIVE_INFINITY);
      bounds.add(
          Bound.of(
              "static margin for " + guideline.appliesTo() + ", without ballast",
              Strength.GUIDELINE,
              guideline.source(),
              Interval.between(Math.min(a, b), Math.max(a, b))));
    }
    bounds.add(
        Bound.target(
            String.format(Locale.ROOT, "static margin of %.0f %%", 100.0 * margin), Source.BRIEF, station));
    return FeasibleRange.of("wing station", Length.MILLIMETRE, bounds);
  }

  private OptionalDouble stationFor(double margin) {
    double low = marginAt(choices.foremost.si()) - margin;
    double high = marginAt(choices.aftmost.si()) - margin;
    if (choices.foremost.equals(choices.aftmost) || low > 0.0 == high > 0.0) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(
        Roots.find(s -> marginAt(s) - margin, choices.foremost.si(), choices.aftmost.si(), Tolerance.relative(1e-9)));
  }

  private Step totalStep() {
    return Step.of(TOTAL, Step.given("mass elsewhere", "m_1", choices.otherMass, Source.BRIEF),
        Step.given("mass on the wing", "m_2", choices.wingMass, Source.BRIEF));
  }

  private Step centreStep(Step station) {
    Step shifted =
        Step.of(
            SHIFTED,
            Step.given("centre of the mass on the wing", "x_m", choices.wingMassX, Source.BRIEF),
            station,
            Step.given(
                "root leading edge of the wing where it was",
                "x_0",
                choices.model.airframe().wing().placement().x(),
                Source.BRIEF));
    return Step.of(
        WingStation.TWO_MASSES,
        Step.given("mass elsewhere", "m_1", choices.otherMass, Source.BRIEF),
        Step.given("its centre", "x_1", choices.otherMassX, Source.BRIEF),
        Step.given("mass on the wing", "m_2", choices.wingMass, Source.BRIEF),
        shifted);
  }

  private double centreAt(double station) {
    double wing = choices.wingMassX.si() + station - choices.model.airframe().wing().placement().x().si();
    return WingStation.centre(choices.otherMass.si(), choices.otherMassX.si(), choices.wingMass.si(), wing);
  }

  private double marginAt(double station) {
    NeutralPoint np = modelAt(station).neutralPoint();
    return (np.x().si() - centreAt(station)) / np.meanAerodynamicChord().si();
  }

  private PitchModel modelAt(double station) {
    Airframe a = choices.model.airframe();
    Placement place = a.wing().placement().withX(Length.metres(station));
    Wing wing = a.wing().placedAt(place);
    return choices.model.withAirframe(choices.refit.apply(new Airframe(a.fuselage(), wing, a.tails())));
  }
}
