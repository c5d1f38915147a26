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

/**
 * Balances an aircraft for a wanted static margin: the wing's place on the fuselage first, ballast second.
 *
 * <pre>{@code
 * WingStation.Balance balance = WingStation.of(model)
 *     .massOnWing(grams(24), millimetres(118))
 *     .massElsewhere(grams(16), millimetres(105))
 *     .travel(millimetres(60), millimetres(110))
 *     .ballast(millimetres(8), grams(12))
 *     .forMargin(0.15);
 * }</pre>
 *
 * <p>Moving the wing aft takes its own mass along and the neutral point with it. The neutral point moves by nearly the
 * whole way, the centre of gravity only by the wing's share of the mass, so the margin grows. The tail stays where it is:
 * its arm and its downwash change with the wing's place, and are reckoned anew at each. Where the travel does not reach,
 * the wing goes to the end that comes nearest, and ballast does the rest as far as it may.
 */
public final class WingStation {
  /** Centre of gravity of two masses. */
  public static final Formula TWO_MASSES =
      Formula.named("centre of gravity")
          .gives("x", Length.METRE)
          .as("(m_1·x_1 + m_2·x_2) / (m_1 + m_2)")
          .where("m_1", "first mass", Mass.KILOGRAM, 0, 1e5)
          .where("x_1", "its place", Length.METRE, -1, 100)
          .where("m_2", "second mass", Mass.KILOGRAM, 1e-6, 1e5)
          .where("x_2", "its place", Length.METRE, -1, 100)
          .from(Source.DEFINITION)
          .computedBy(WingStation::centre);

  static final Formula TARGET =
      Formula.named("centre of gravity for the static margin wanted")
          .gives("x_t", Length.METRE)
          .as("x_c + (h_n − K_n)·c̄")
          .where("x_c", "leading edge of the mean aerodynamic chord", Length.METRE, -1, 100)
          .where("h_n", "neutral point, fraction of c̄", -1, 3)
          .where("K_n", "static margin wanted", -0.2, 1)
          .where("c̄", "mean aerodynamic chord", Length.METRE, 0.005, 20)
          .from(Source.DEFINITION)
          .computedBy((double x, double h, double k, double c) -> x + (h - k) * c);

  static final Formula SHIFTED =
      Formula.named("mass on the wing, where the wing is now")
          .gives("x_2", Length.METRE)
          .as("x_m + x_s − x_0")
          .where("x_m", "its place with the wing where it was", Length.METRE, -1, 100)
          .where("x_s", "root leading edge of the wing", Length.METRE, -1, 100)
          .where("x_0", "root leading edge of the wing where it was", Length.METRE, -1, 100)
          .from(Source.DEFINITION)
          .computedBy((double mass, double station, double was) -> mass + station - was);

  static final Formula TOTAL =
      Formula.named("mass without ballast")
          .gives("m", Mass.KILOGRAM)
          .as("m_1 + m_2")
          .where("m_1", "mass elsewhere", Mass.KILOGRAM, 0, 1e5)
          .where("m_2", "mass on the wing", Mass.KILOGRAM, 1e-6, 1e5)
          .from(Source.DEFINITION)
          .computedBy((double a, double b) -> a + b);

  private static final Source MOMENTS = Source.library("the wing's station that gives the margin, tail fixed");
  private static final Tolerance TIGHT = Tolerance.relative(1e-12);

  private final PitchModel model;
  private final Mass wingMass;
  private final Length wingMassX;
  private final Mass otherMass;
  private final Length otherMassX;
  private final Length foremost;
  private final Length aftmost;
  private final Length ballastX;
  private final Mass mostBallast;

  private WingStation(
      PitchModel model,
      Mass wingMass,
      Length wingMassX,
      Mass otherMass,
      Length otherMassX,
      Length foremost,
      Length aftmost,
      Length ballastX,
      Mass mostBallast) {
    this.model = model;
    this.wingMass = wingMass;
    this.wingMassX = wingMassX;
    this.otherMass = otherMass;
    this.otherMassX = otherMassX;
    this.foremost = foremost;
    this.aftmost = aftmost;
    this.ballastX = ballastX;
    this.mostBallast = mostBallast;
  }

  /**
   * Begins: the wing may not move yet, and there is no ballast.
   *
   * @param model the aircraft, its wing where the masses are given for
   * @return the specification
   */
  public static WingStation of(PitchModel model) {
    Length here = model.airframe().wing().placement().x();
    return new WingStation(
        model, Mass.ZERO, Length.ZERO, Mass.ZERO, Length.ZERO, here, here, Length.ZERO, Mass.ZERO);
  }

  /**
   * The mass that moves with the wing.
   *
   * @param mass its mass, positive
   * @param x its centre, aft of the nose tip, with the wing where the airframe has it
   * @return the specification with it
   */
  public WingStation massOnWing(Mass mass, Length x) {
    Door.positive(mass, "mass on the wing");
    Door.finite(x, "centre of the mass on the wing");
    return new WingStation(model, mass, x, otherMass, otherMassX, foremost, aftmost, ballastX, mostBallast);
  }

  /**
   * The mass that stays.
   *
   * @param mass its mass, positive
   * @param x its centre, aft of the nose tip
   * @return the specification with it
   */
  public WingStation massElsewhere(Mass mass, Length x) {
    Door.positive(mass, "mass elsewhere");
    Door.finite(x, "centre of the mass elsewhere");
    return new WingStation(model, wingMass, wingMassX, mass, x, foremost, aftmost, ballastX, mostBallast);
  }

  /**
   * How far the wing may move.
   *
   * @param from foremost place of its root leading edge, aft of the nose tip
   * @param to aftmost place, not ahead of the first
   * @return the specification with it
   */
  public WingStation travel(Length from, Length to) {
    Door.finite(from, "foremost wing station");
    Door.finite(to, "aftmost wing station");
    if (from.compareTo(to) > 0) {
      throw new IllegalArgumentException("aftmost wing station must not be ahead of " + from + ", was " + to);
    }
    return new WingStation(model, wingMass, wingMassX, otherMass, otherMassX, from, to, ballastX, mostBallast);
  }

  /**
   * Where ballast can go, and how much.
   *
   * @param x its place, aft of the nose tip
   * @param most the most that there is room for, not negative
   * @return the specification with it
   */
  public WingStation ballast(Length x, Mass most) {
    Door.finite(x, "place of the ballast");
    if (!(most.si() >= 0.0) || Double.isInfinite(most.si())) {
      throw new IllegalArgumentException("most ballast must not be negative, was " + most);
    }
    return new WingStation(model, wingMass, wingMassX, otherMass, otherMassX, foremost, aftmost, x, most);
  }

  /**
   * Centre of gravity of two masses.
   *
   * @param mass1 first mass [kg]
   * @param x1 its place [m]
   * @param mass2 second mass [kg]
   * @param x2 its place [m]
   * @return x [m]
   */
  public static double centre(double mass1, double x1, double mass2, double x2) {
    return (mass1 * x1 + mass2 * x2) / (mass1 + mass2);
  }

  /**
   * How far the wing must move where the downwash does not change with it: the closed form, for quick studies.
   *
   * <pre>{@code Δ = (K_n,wanted − K_n)·c̄/(a_w/(a_w + t) − m_w/m)}</pre>
   *
   * <p>The neutral point follows the wing by its share a_w/(a_w + t) of the lift slope, the centre of gravity by the
   * share m_w/m of the mass.
   *
   * @param missing margin wanted less margin now, fraction of c̄
   * @param chord c̄ [m]
   * @param liftShare a_w/(a_w + t), the wing's share of the lift slope
   * @param massShare m_w/m, the wing's share of the mass
   * @return Δ [m], aft positive
   */
  public static double shift(double missing, double chord, double liftShare, double massShare) {
    return missing * chord / (liftShare - massShare);
  }

  /**
   * Balances.
   *
   * @param margin static margin wanted, fraction of c̄
   * @return where the wing goes, how much ballast, and what it leads to; with a serious finding if it cannot be reached
   * @throws IllegalStateException if no mass was given
   */
  public Balance forMargin(double margin) {
    Door.finite(margin, "static margin");
    if (!wingMass.isPositive() || !otherMass.isPositive()) {
      throw new IllegalStateException(
          "balance needs the mass on the wing and the mass elsewhere, were " + wingMass + " and " + otherMass);
    }
    DoubleUnaryOperator excess = station -> marginAt(station) - margin;
    double low = foremost.si();
    double high = aftmost.si();
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
                Step.given("foremost wing station", "x_f", foremost, Source.BRIEF),
                Step.given("aftmost wing station", "x_a", aftmost, Source.BRIEF))
            : Step.given("root leading edge of the wing, at the end of its travel", "x_s", Length.metres(nearest), MOMENTS);
    PitchModel moved = modelAt(station.value());
    NeutralPoint np = moved.neutralPoint();
    Step centre = centreStep(station);
    Step target =
        Step.of(
            TARGET,
            Step.given("leading edge of the mean aerodynamic chord", "x_c", np.leadingEdge(), Source.DEFINITION),
            np.step(),
            wanted,
            Step.given("mean aerodynamic chord", "c̄", np.meanAerodynamicChord(), Source.BRIEF));
    List<Finding> findings = new ArrayList<>();
    double ballast = 0.0;
    List<Step> results = new ArrayList<>(List.of(station, np.step()));
    Length cg = Length.metres(centre.value());
    results.add(centre);
    if (!reached) {
      Step needed =
          Step.of(
              Ballast.MASS,
              totalStep(),
              centre,
              target,
              Step.given("place of the ballast", "x_b", ballastX, Source.BRIEF));
      ballast = Math.min(Math.max(needed.value(), 0.0), mostBallast.si());
      if (ballast > 0.0) {
        Step added = ballast == needed.value() ? needed : Step.given("ballast", "m_b", mostBallast, Source.BRIEF);
        Step withBallast =
            Step.of(
                "centre of gravity with ballast",
                "x",
                TWO_MASSES,
                added,
                Step.given("place of the ballast", "x_b", ballastX, Source.BRIEF),
                totalStep(),
                centre);
        results.add(withBallast);
        cg = Length.metres(withBallast.value());
      }
      findings.add(unreached(needed.value(), ballast, margin, nearest == high, target.value()));
    }
    StaticMargin got = StaticMargin.of(np, cg, model.aircraftClass());
    findings.addAll(got.findings());
    return new Balance(
        moved.airframe(),
        Length.metres(station.value()),
        Mass.kilograms(ballast),
        wingMass.plus(otherMass).plus(Mass.kilograms(ballast)),
        cg,
        got,
        range(margin, station.value()),
        Workings.of(results),
        Finding.inOrderOfWeight(findings));
  }

  private Finding unreached(double needed, double used, double margin, boolean atAftEnd, double target) {
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
              mostBallast,
              end,
              Length.metres(target)),
          MOMENTS);
    }
    boolean wantsAft = target > centreAt(atAftEnd ? aftmost.si() : foremost.si());
    return Finding.of(
        Severity.CAUTION,
        "wing station",
        String.format(
            Locale.ROOT,
            "With the wing at the %s end of its travel the centre of gravity should still move %s, and ballast at %s"
                + " would move it the other way. Move mass %s, or give the wing more travel.",
            end,
            wantsAft ? "aft" : "forward",
            ballastX,
            wantsAft ? "aft" : "forward"),
        MOMENTS);
  }

  private FeasibleRange range(double margin, double station) {
    List<Bound> bounds = new ArrayList<>();
    bounds.add(
        Bound.of(
            "travel of the wing", Strength.LIMIT, Source.BRIEF, Interval.between(foremost.si(), aftmost.si())));
    var guideline = model.aircraftClass().staticMargin();
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
    double low = marginAt(foremost.si()) - margin;
    double high = marginAt(aftmost.si()) - margin;
    if (foremost.equals(aftmost) || low > 0.0 == high > 0.0) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(
        Roots.find(s -> marginAt(s) - margin, foremost.si(), aftmost.si(), Tolerance.relative(1e-9)));
  }

  private Step totalStep() {
    return Step.of(TOTAL, Step.given("mass elsewhere", "m_1", otherMass, Source.BRIEF),
        Step.given("mass on the wing", "m_2", wingMass, Source.BRIEF));
  }

  private Step centreStep(Step station) {
    Step shifted =
        Step.of(
            SHIFTED,
            Step.given("centre of the mass on the wing", "x_m", wingMassX, Source.BRIEF),
            station,
            Step.given(
                "root leading edge of the wing where it was",
                "x_0",
                model.airframe().wing().placement().x(),
                Source.BRIEF));
    return Step.of(
        TWO_MASSES,
        Step.given("mass elsewhere", "m_1", otherMass, Source.BRIEF),
        Step.given("its centre", "x_1", otherMassX, Source.BRIEF),
        Step.given("mass on the wing", "m_2", wingMass, Source.BRIEF),
        shifted);
  }

  private double centreAt(double station) {
    double wing = wingMassX.si() + station - model.airframe().wing().placement().x().si();
    return centre(otherMass.si(), otherMassX.si(), wingMass.si(), wing);
  }

  private double marginAt(double station) {
    NeutralPoint np = modelAt(station).neutralPoint();
    return (np.x().si() - centreAt(station)) / np.meanAerodynamicChord().si();
  }

  private PitchModel modelAt(double station) {
    Airframe a = model.airframe();
    Placement place = a.wing().placement().withX(Length.metres(station));
    Wing wing = a.wing().placedAt(place);
    return model.withAirframe(new Airframe(a.fuselage(), wing, a.tails()));
  }

  /**
   * An aircraft in balance, or as near as it gets.
   *
   * @param airframe the airframe with the wing in its place
   * @param station root leading edge of the wing, aft of the nose tip
   * @param ballast ballast, zero if none
   * @param mass mass with ballast
   * @param centreOfGravity centre of gravity with ballast, aft of the nose tip
   * @param staticMargin the margin that is reached
   * @param range where the wing may stand
   * @param workings the steps
   * @param findings what to know, heaviest first; serious if the margin is not reached
   */
  public record Balance(
      Airframe airframe,
      Length station,
      Mass ballast,
      Mass mass,
      Length centreOfGravity,
      StaticMargin staticMargin,
      FeasibleRange range,
      Workings workings,
      List<Finding> findings) {
    @Override
    public String toString() {
      return String.format(
          Locale.ROOT,
          "wing at %s, ballast %s, centre of gravity %s, margin %.1f %%",
          station,
          ballast,
          centreOfGravity,
          100.0 * staticMargin.value());
    }
  }
}
