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
import io.github.wingwright.core.mass.Ballast;
import io.github.wingwright.core.mass.MassItem;
import io.github.wingwright.core.mass.MassStatement;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * Where the centre of gravity may lie: not farther aft than the least static margin allows, not farther forward than the
 * tail can trim at the greatest lift.
 *
 * <pre>{@code
 * CentreOfGravityRange range = CentreOfGravityRange.of(model, 0.10, 0.8, 0.6);
 * range.check(List.of(new LoadingCase("with battery", full), new LoadingCase("without", empty)));
 * }</pre>
 *
 * <p>Forward the tail runs out of download. With a foreplane the signs turn round: it must lift, and forward it runs out of
 * lift; aft there is a second end besides the margin, since the foreplane must reach its greatest lift before the wing does.
 * If the wing stalls first, the nose rises into the stall, and nothing lowers it.
 *
 * <pre>{@code
 * h_f = h_w + (T·(h_h − h_w + C_mα,f/a_w) − C_m − C_mα,f·(C_L/a_w + α_b))/C_L
 * tail behind:  T = −η_h·s_h·C_d at the greatest C_L         the forward limit
 * foreplane:    T = +η_h·s_h·C_u at the greatest C_L         the forward limit
 *               T = +η_h·s_h·C_u at C_L = C_Lw,max + T       both stall together: the aft limit
 * }</pre>
 *
 * <p>A wing without a tail has no forward limit from a tail, but each lift coefficient has its one place of trim: see
 * {@link TaillessTrim}. A range that is empty names who clashes: the margin asks for a larger tail or the trim does.
 */
public final class CentreOfGravityRange {
  static final Formula PLACE =
      Formula.named("place of a fraction of the mean aerodynamic chord")
          .gives("x", Length.METRE)
          .as("x_c + h·c̄")
          .where("x_c", "leading edge of the mean aerodynamic chord", Length.METRE, -1, 100)
          .where("h", "fraction of c̄", -10, 10)
          .where("c̄", "mean aerodynamic chord", Length.METRE, 0.005, 20)
          .from(Source.DEFINITION)
          .computedBy((double start, double h, double chord) -> start + h * chord);

  static final Formula LEAST_TAIL_LIFT =
      Formula.named("least tail lift on the wing area")
          .gives("T")
          .as("−η_h·s_h·C_d")
          .where("η_h", "tail efficiency", 0.3, 1.2)
          .where("s_h", "tail area over wing area", 0, 1.5)
          .where("C_d", "greatest download of the tail as a positive lift coefficient", 0.1, 2)
          .from(Source.DEFINITION)
          .computedBy((double eta, double ratio, double download) -> -eta * ratio * download);

  static final Formula GREATEST_TAIL_LIFT =
      Formula.named("greatest lift of the foreplane on the wing area")
          .gives("T")
          .as("η_h·s_h·C_u")
          .where("η_h", "efficiency of the foreplane", 0.3, 1.2)
          .where("s_h", "foreplane area over wing area", 0, 1.5)
          .where("C_u", "greatest lift coefficient of the foreplane", 0.1, 2)
          .from(Source.DEFINITION)
          .computedBy((double eta, double ratio, double lift) -> eta * ratio * lift);

  private static final Formula BOTH_STALL =
      Formula.named("lift coefficient at which wing and foreplane stall together")
          .gives("C_L")
          .as("C_w + T")
          .where("C_w", "greatest lift coefficient of the wing, at the low end of what is known", 0.2, 3)
          .where("T", "greatest lift of the foreplane on the wing area", 0, 1)
          .from(Source.DEFINITION)
          .computedBy((double wing, double foreplane) -> wing + foreplane);

  private static final Source STALL_ORDER =
      Source.library("moments about the centre of gravity with wing and foreplane both at their greatest lift");

  private final FeasibleRange range;
  private final List<Step> steps;
  private final NeutralPoint neutralPoint;
  private final AircraftClass aircraftClass;

  private CentreOfGravityRange(
      FeasibleRange range, List<Step> steps, NeutralPoint neutralPoint, AircraftClass aircraftClass) {
    this.range = range;
    this.steps = List.copyOf(steps);
    this.neutralPoint = neutralPoint;
    this.aircraftClass = aircraftClass;
  }

  /**
   * The range of an aircraft.
   *
   * @param model the aircraft, with data of its wing's section if it has a tail
   * @param leastMargin least static margin, fraction of c̄
   * @param greatestLift greatest lift coefficient to be trimmed, positive
   * @param tailDownload greatest download of the tail as a lift coefficient on its own area, positive; of a foreplane its
   *     greatest lift coefficient
   * @return the range
   */
  public static CentreOfGravityRange of(
      PitchModel model, double leastMargin, double greatestLift, double tailDownload) {
    Objects.requireNonNull(model, "model");
    Door.finite(leastMargin, "least static margin");
    Door.positive(greatestLift, "greatest lift coefficient");
    Door.positive(tailDownload, "greatest download coefficient of the tail, or greatest lift coefficient of a foreplane");
    PitchTerms t = model.terms();
    NeutralPoint np = t.neutralPoint();
    Step start =
        Step.given("leading edge of the mean aerodynamic chord", "x_c", np.leadingEdge(), Sources.AIRFRAME);
    Step aft =
        Step.of(
            WingStation.TARGET,
            start,
            np.step(),
            Step.given("least static margin", "K_n", leastMargin, Source.BRIEF),
            t.chord);
    List<Step> steps = new ArrayList<>(List.of(aft));
    List<Bound> bounds = new ArrayList<>();
    bounds.add(
        Bound.of(
            String.format(Locale.ROOT, "static margin of %.0f %%", 100.0 * leastMargin),
            Strength.LIMIT,
            Source.BRIEF,
            Interval.atMost(aft.value())));
    if (t.hasTail) {
      Step most = t.hasForeplane ? lift(t, tailDownload) : download(t, tailDownload);
      Step wanted = Step.given("greatest lift coefficient", "C_L", greatestLift, Source.BRIEF);
      Step forward = Step.of(PLACE, start, forwardFraction(model, t, wanted, most), t.chord);
      steps.add(forward);
      bounds.add(
          Bound.of(
              String.format(Locale.ROOT, "trim at a lift coefficient of %.2f", greatestLift),
              Strength.LIMIT,
              Sources.MOMENT_EQUATION,
              Interval.atLeast(forward.value())));
    }
    if (t.hasForeplane) {
      Step most = lift(t, tailDownload);
      Step together = Step.of(BOTH_STALL, wingStall(model), most);
      Step order =
          Step.of(
              "aftmost place at which the foreplane stalls before the wing",
              "x",
              PLACE,
              start,
              forwardFraction(model, t, together, most),
              t.chord);
      steps.add(order);
      bounds.add(
          Bound.of(
              "the foreplane stalls before the wing", Strength.LIMIT, STALL_ORDER, Interval.atMost(order.value())));
    }
    Interval margins = model.aircraftClass().staticMargin().range();
    double chord = t.chord.value();
    double x = np.x().si();
    bounds.add(
        Bound.of(
            "static margin for " + model.aircraftClass().words(),
            Strength.GUIDELINE,
            model.aircraftClass().staticMargin().source(),
            Interval.between(x - margins.upper() * chord, x - margins.lower() * chord)));
    return new CentreOfGravityRange(
        FeasibleRange.of("centre of gravity", Length.MILLIMETRE, bounds), steps, np, model.aircraftClass());
  }

  private static Step download(PitchTerms t, double coefficient) {
    return Step.of(
        LEAST_TAIL_LIFT,
        t.efficiency,
        t.areaRatio,
        Step.given("greatest download coefficient of the tail", "C_d", coefficient, Source.BRIEF));
  }

  private static Step lift(PitchTerms t, double coefficient) {
    return Step.of(
        GREATEST_TAIL_LIFT,
        t.efficiency,
        t.areaRatio,
        Step.given("greatest lift coefficient of the foreplane", "C_u", coefficient, Source.BRIEF));
  }

  private static Step wingStall(PitchModel model) {
    PitchChoices.Section wing = model.choices.neededWingSection();
    return Step.given(
        "greatest lift coefficient of the wing, at the low end of what is known",
        "C_w",
        wing.polar().usableLift(wing.reynolds()).low(),
        wing.polar().source());
  }

  private static Step forwardFraction(PitchModel model, PitchTerms t, Step greatestLift, Step tailLift) {
    TrimInputs inputs = new TrimInputs(model, t);
    return Step.of(
        TrimFormulas.FORWARD_LIMIT,
        tailLift,
        inputs.moment,
        greatestLift,
        t.wingCentre,
        t.fuselageSlope,
        t.wingAlone,
        inputs.bodyAngle,
        t.trimCentre);
  }

  /**
   * The range with who binds each end, or who clashes.
   *
   * @return places aft of the nose tip
   */
  public FeasibleRange range() {
    return range;
  }

  /**
   * The neutral point that it hangs on.
   *
   * @return the neutral point
   */
  public NeutralPoint neutralPoint() {
    return neutralPoint;
  }

  /**
   * The workings of both ends.
   *
   * @return all steps
   */
  public Workings workings() {
    return Workings.of(steps);
  }

  /**
   * Holds loading cases against the range.
   *
   * @param cases the ways in which the aircraft is loaded, at least one
   * @return each case with its margin and findings, and how far the centre of gravity travels
   */
  public Loadings check(List<LoadingCase> cases) {
    Objects.requireNonNull(cases, "cases");
    if (cases.isEmpty()) {
      throw new IllegalArgumentException("loading cases must be at least one, were none");
    }
    List<Loaded> loaded = new ArrayList<>();
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (LoadingCase one : cases) {
      Length x = one.masses().centreOfGravity().x();
      low = Math.min(low, x.si());
      high = Math.max(high, x.si());
      loaded.add(new Loaded(one, x, StaticMargin.of(neutralPoint, x, aircraftClass), findings(one, x)));
    }
    return new Loadings(loaded, Interval.between(low, high));
  }

  /**
   * How the centre of gravity travels while one item is used up, from full to gone.
   *
   * @param masses what is aboard at first
   * @param item name of the item, such as {@code "fuel"}
   * @param points how many points, at least 2
   * @return loading cases from full to empty
   */
  public static List<LoadingCase> travel(MassStatement masses, String item, int points) {
    Objects.requireNonNull(masses, "masses");
    if (points < 2) {
      throw new IllegalArgumentException("number of points must be at least 2, was " + points);
    }
    MassItem full =
        masses
            .item(item)
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        "item must be one of " + masses.items().stream().map(MassItem::name).toList() + ", was " + item));
    List<LoadingCase> cases = new ArrayList<>();
    for (int i = 0; i < points; i++) {
      double left = 1.0 - (double) i / (points - 1);
      MassItem rest =
          MassItem.of(item, Mass.kilograms(left * full.mass().si()), full.centreOfGravity());
      cases.add(
          new LoadingCase(
              String.format(Locale.ROOT, "%s %.0f %%", item, 100.0 * left), masses.without(item).with(rest)));
    }
    return List.copyOf(cases);
  }

  private List<Finding> findings(LoadingCase one, Length x) {
    List<Finding> findings = new ArrayList<>();
    for (Bound bound : range.bounds()) {
      if (!bound.binds() || bound.interval().contains(x.si())) {
        continue;
      }
      boolean tooFarAft = x.si() > bound.interval().upper();
      double target = bound.interval().clamp(x.si());
      MassItem mover = mover(one.masses());
      double move = Ballast.move(one.masses().mass().si(), target, x.si(), mover.mass().si());
      findings.add(
          Finding.of(
              bound.strength() == Strength.LIMIT ? Severity.SERIOUS : Severity.CAUTION,
              "centre of gravity, " + one.name(),
              String.format(
                  Locale.ROOT,
                  "It lies %s of what \"%s\" allows. Move %s %s by %s, or other mass %s.",
                  tooFarAft ? "aft" : "forward",
                  bound.name(),
                  mover.name(),
                  tooFarAft ? "forward" : "aft",
                  Length.metres(Math.abs(move)).format(Length.MILLIMETRE, 3),
                  tooFarAft ? "forward" : "aft"),
              x.si(),
              bound.interval(),
              Length.MILLIMETRE,
              bound.source()));
    }
    return Finding.inOrderOfWeight(findings);
  }

  /** What is easiest to move: a battery or ballast if there is one, else the heaviest item that is no part of the shell. */
  private static MassItem mover(MassStatement masses) {
    MassItem best = masses.items().get(0);
    for (MassItem item : masses.items()) {
      boolean heavier = item.mass().compareTo(best.mass()) > 0;
      if (rank(item) > rank(best) || (rank(item) == rank(best) && heavier)) {
        best = item;
      }
    }
    return best;
  }

  private static int rank(MassItem item) {
    String name = item.name().toLowerCase(Locale.ROOT);
    if (name.contains("battery") || name.contains("ballast")) {
      return 2;
    }
    return name.contains("wing") || name.contains("tail") || name.contains("fin") || name.contains("fuselage") ? 0 : 1;
  }

  /**
   * One loading case held against the range.
   *
   * @param loading the case
   * @param centreOfGravity where its centre of gravity lies
   * @param staticMargin its static margin
   * @param findings what to move if it lies outside
   */
  public record Loaded(
      LoadingCase loading, Length centreOfGravity, StaticMargin staticMargin, List<Finding> findings) {
    public Loaded {
      Objects.requireNonNull(loading, "loading");
      Objects.requireNonNull(centreOfGravity, "centreOfGravity");
      Objects.requireNonNull(staticMargin, "staticMargin");
      Objects.requireNonNull(findings, "findings");
    }
  }

  /**
   * All loading cases.
   *
   * @param cases each case
   * @param travel the foremost and the aftmost centre of gravity [m]
   */
  public record Loadings(List<Loaded> cases, Interval travel) {
    /** Keeps its own list. */
    public Loadings {
      Objects.requireNonNull(cases, "cases");
      Objects.requireNonNull(travel, "travel");
      cases = List.copyOf(cases);
    }

    /**
     * What to know about all of them.
     *
     * @return findings, heaviest first
     */
    public List<Finding> findings() {
      return Finding.inOrderOfWeight(cases.stream().flatMap(c -> c.findings().stream()).toList());
    }
  }

  @Override
  public String toString() {
    return "centre of gravity " + range.interval().format(Length.MILLIMETRE);
  }
}
