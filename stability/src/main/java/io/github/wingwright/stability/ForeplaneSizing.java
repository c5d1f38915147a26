// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.core.basis.Bound;
import io.github.wingwright.core.basis.FeasibleRange;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Sized;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Strength;
import io.github.wingwright.core.basis.Workings;
import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.numerics.Roots;
import io.github.wingwright.core.numerics.Tolerance;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.function.DoubleUnaryOperator;

/**
 * The area of a foreplane, between what it must lift and what stability allows.
 *
 * <p>A tail behind the wing is sized from below: more of it is more margin. A foreplane takes margin away, so the static
 * margin is a bound from above, and so is the order of stalling: it must reach its greatest lift before the wing does. From
 * below there is trim at the greatest lift.
 *
 * <pre>{@code
 * Sized<Tail> foreplane = ForeplaneSizing.of(model)          // its airframe has a first guess, whose shape is kept
 *     .staticMargin(0.10, mostAft)
 *     .trimAt(0.7, 1.0, mostForward, mostAft)
 *     .solve();
 * }</pre>
 *
 * <p>The least area that trims is taken: what a foreplane lifts beyond that costs margin.
 */
public final class ForeplaneSizing {
  private static final Source MARGIN = Source.library("neutral point with the foreplane's area varied, shape and arm kept");
  private static final Source STALL = Source.library("trim with wing and foreplane both at their greatest lift");
  private static final Tolerance FINE = Tolerance.relative(1e-10);

  /** Least and greatest area looked at, as parts of the wing's. */
  private static final double SMALLEST = 0.005;

  private static final double LARGEST = 0.9;

  private final PitchModel model;
  private final List<Requirement> requirements;

  private ForeplaneSizing(PitchModel model, List<Requirement> requirements) {
    this.model = model;
    this.requirements = List.copyOf(requirements);
  }

  /** A bound on the area, found from a model of an area. */
  private record Requirement(String name, Source source, Interval areas, Step step) {}

  /**
   * Begins.
   *
   * @param model the aircraft with section data of its wing and a foreplane of some area
   * @return the specification
   * @throws IllegalStateException if the horizontal tail is not ahead of the wing
   */
  public static ForeplaneSizing of(PitchModel model) {
    Objects.requireNonNull(model, "model");
    if (!model.terms().hasForeplane) {
      throw new IllegalStateException(
          "a foreplane must stand ahead of the wing, the airframe has "
              + (model.terms().hasTail ? "its tail behind it: use TailSizing" : "no horizontal tail"));
    }
    return new ForeplaneSizing(model, List.of());
  }

  private ForeplaneSizing with(Requirement more) {
    List<Requirement> all = new ArrayList<>(requirements);
    all.add(more);
    return new ForeplaneSizing(model, all);
  }

  /**
   * No larger than leaves this margin.
   *
   * @param margin static margin, fraction of c̄
   * @param mostAft most aft centre of gravity, aft of the nose tip
   * @return the specification with it
   * @throws IllegalStateException if even a foreplane of no size leaves less
   */
  public ForeplaneSizing staticMargin(double margin, Length mostAft) {
    Door.finite(margin, "static margin");
    Door.finite(mostAft, "most aft centre of gravity");
    double wing = model.airframe().wing().planform().area().si();
    DoubleUnaryOperator excess = a -> ofArea(a).staticMargin(mostAft).value() - margin;
    double low = SMALLEST * wing;
    double high = LARGEST * wing;
    if (excess.applyAsDouble(low) < 0.0) {
      throw new IllegalStateException(
          String.format(
              Locale.ROOT,
              "no foreplane leaves a static margin of %.0f %%: with hardly any it is %.1f %%. Move the centre of gravity"
                  + " forward, from %s",
              100.0 * margin,
              100.0 * (margin + excess.applyAsDouble(low)),
              mostAft));
    }
    double most = excess.applyAsDouble(high) > 0.0 ? high : Roots.find(excess, low, high, FINE);
    Step step = Step.given("greatest foreplane area for the static margin", "S_h", Area.squareMetres(most), MARGIN);
    return with(
        new Requirement(
            String.format(Locale.ROOT, "static margin of %.0f %% at the most aft centre of gravity", 100.0 * margin),
            MARGIN,
            Interval.atMost(most),
            step));
  }

  /**
   * Large enough to trim at the greatest lift, and not so large that the wing stalls first.
   *
   * @param liftCoefficient greatest lift coefficient of the aircraft, positive
   * @param foreplaneLift greatest lift coefficient of the foreplane on its own area, positive
   * @param mostForward most forward centre of gravity
   * @param mostAft most aft centre of gravity, where the wing comes nearest to stalling first
   * @return the specification with both
   */
  public ForeplaneSizing trimAt(double liftCoefficient, double foreplaneLift, Length mostForward, Length mostAft) {
    Door.positive(liftCoefficient, "greatest lift coefficient");
    Door.positive(foreplaneLift, "greatest lift coefficient of the foreplane");
    PitchChoices.Section wing = model.choices.neededWingSection();
    double stall = wing.polar().usableLift(wing.reynolds()).low();
    double perArea = model.terms().efficiency.value() * foreplaneLift / model.airframe().wing().planform().area().si();
    double least = tailLift(liftCoefficient, mostForward) / perArea;
    double none = tailLift(0.0, mostAft);
    double slope = tailLift(1.0, mostAft) - none;
    double most = (none + slope * stall) / (1.0 - slope) / perArea;
    return with(
            new Requirement(
                String.format(
                    Locale.ROOT, "trim at a lift coefficient of %.2f at the most forward centre of gravity", liftCoefficient),
                Sources.MOMENT_EQUATION,
                Interval.atLeast(least),
                Step.given("least foreplane area for trim", "S_h", Area.squareMetres(Math.max(least, 0.0)),
                    Sources.MOMENT_EQUATION)))
        .with(
            new Requirement(
                "the foreplane stalls before the wing at the most aft centre of gravity",
                STALL,
                Interval.atMost(most),
                Step.given("greatest foreplane area that stalls before the wing", "S_h",
                    Area.squareMetres(Math.max(most, 0.0)), STALL)));
  }

  private double tailLift(double lift, Length centreOfGravity) {
    PitchTerms t = model.terms();
    TrimInputs inputs = new TrimInputs(model, t);
    return TrimFormulas.tailLift(
        inputs.moment.value(),
        lift,
        t.fraction("centre of gravity", centreOfGravity).value(),
        t.wingCentre.value(),
        t.fuselageSlope.value(),
        t.wingAlone.value(),
        inputs.bodyAngle.value(),
        t.trimCentre.value());
  }

  /** The model with a foreplane of another area, its shape and its quarter chord kept. */
  private PitchModel ofArea(double area) {
    return model.withAirframe(withForeplane(scaled(area)));
  }

  private Tail scaled(double area) {
    Tail old = model.airframe().pitchTail().orElseThrow();
    return TailScale.toArea(old, area);
  }

  private Airframe withForeplane(Tail foreplane) {
    Airframe a = model.airframe();
    List<Tail> tails = new ArrayList<>();
    tails.add(foreplane);
    a.tails().stream().filter(t -> t.role() == Tail.Role.VERTICAL).forEach(tails::add);
    return new Airframe(a.fuselage(), a.wing(), tails);
  }

  /**
   * The foreplane.
   *
   * @return the least that trims, or the most that is allowed if trim asks for nothing; its range names who binds, and where
   *     the bounds clash by how much
   * @throws IllegalStateException if nothing was required
   */
  public Sized<Tail> solve() {
    if (requirements.isEmpty()) {
      throw new IllegalStateException("a foreplane needs a static margin or trim to satisfy, none was given");
    }
    List<Bound> bounds = new ArrayList<>();
    double least = 0.0;
    double most = LARGEST * model.airframe().wing().planform().area().si();
    for (Requirement r : requirements) {
      bounds.add(Bound.of(r.name(), Strength.LIMIT, r.source(), r.areas()));
      least = Math.max(least, r.areas().lower());
      most = Math.min(most, r.areas().upper());
    }
    double area = least > 0.0 ? least : most;
    FeasibleRange range = FeasibleRange.of("foreplane area", Area.SQUARE_CENTIMETRE, bounds);
    List<Finding> findings = new ArrayList<>(range.check(area));
    return new Sized<>(
        scaled(area),
        range,
        Workings.of(requirements.stream().map(Requirement::step).toList()),
        Finding.inOrderOfWeight(findings),
        List.of());
  }

  @Override
  public String toString() {
    return "sizing of a foreplane, " + requirements.size() + " requirements";
  }
}
