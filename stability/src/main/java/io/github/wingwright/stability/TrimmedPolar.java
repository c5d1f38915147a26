// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.core.aerodynamics.AircraftDrag;
import io.github.wingwright.core.aerodynamics.DragLaw;
import io.github.wingwright.core.atmosphere.AirState;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Price;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.numerics.Minimum;
import io.github.wingwright.core.numerics.Tolerance;
import io.github.wingwright.core.performance.SteadyGlide;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.quantity.Speed;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * Drag against lift of an aircraft that is held in trim at every lift coefficient, in a glide at one mass.
 *
 * <p>At each lift coefficient the tail lifts what trim asks of it, the wing the rest; the wing's drag is taken at its own
 * lift, and {@link TrimDrag} is added with what the tail's section drags more for its lift. The polar ends where the wing
 * or the tail reaches its usable lift.
 *
 * <pre>{@code
 * TrimmedPolar polar = TrimmedPolar.of(model, centreOfGravity, drag, mass, air);
 * polar.bestGlide().liftToDrag();
 * polar.price();                     // what trim costs in glide ratio
 * }</pre>
 */
public final class TrimmedPolar implements DragLaw {
  private static final double GRAVITY = 9.80665;
  private static final double LOWEST_LIFT = 0.05;
  private static final Tolerance FINE = Tolerance.relative(1e-9);
  private static final int SCAN = 60;

  private final AircraftDrag drag;
  private final PitchTerms terms;
  private final double momentCoefficient;
  private final double bodyAngle;
  private final double centreOfGravity;
  private final double tailAspectRatio;
  private final PitchChoices.Section tailSection;
  private final double tailAtNoLift;
  private final double unitSpeed;
  private final double viscosity;
  private final Interval lifts;
  private final List<Finding> findings;

  private TrimmedPolar(PitchModel model, Length centreOfGravity, AircraftDrag drag, Mass mass, AirState air) {
    this.drag = drag;
    terms = model.terms();
    TrimInputs inputs = new TrimInputs(model, terms);
    momentCoefficient = inputs.moment.value();
    bodyAngle = inputs.bodyAngle.value();
    this.centreOfGravity = terms.fraction("centre of gravity", centreOfGravity).value();
    tailAspectRatio =
        model.airframe().pitchTail().map(TrimmedPolar::aspectRatio).orElse(Double.POSITIVE_INFINITY);
    tailSection = model.choices.neededTailSection();
    tailAtNoLift = tailSection.polar().likelyProfileDrag(0.0, tailSection.reynolds());
    double pressure = SteadyGlide.weightOverArea(mass.si(), GRAVITY, terms.area.value());
    unitSpeed = SteadyGlide.levelSpeed(pressure, air.density().si(), 1.0);
    viscosity = air.kinematicViscosity().si();
    findings = new ArrayList<>();
    lifts = trimmable();
  }

  /**
   * The trimmed polar of an aircraft.
   *
   * @param model wing, tail and fuselage with section data of wing and tail
   * @param centreOfGravity centre of gravity, aft of the nose tip
   * @param drag drag without trim: the friction of the tail is in it, its induced drag is not
   * @param mass mass, positive
   * @param air the air it flies in
   * @return the polar
   * @throws IllegalStateException if there is no horizontal tail, or section data are missing
   */
  public static TrimmedPolar of(
      PitchModel model, Length centreOfGravity, AircraftDrag drag, Mass mass, AirState air) {
    Objects.requireNonNull(model, "model");
    Objects.requireNonNull(drag, "drag");
    Objects.requireNonNull(air, "air");
    Door.positive(mass, "mass");
    Door.finite(centreOfGravity, "centre of gravity");
    if (model.airframe().pitchTail().isEmpty()) {
      throw new IllegalStateException("a trimmed polar needs a horizontal tail, the airframe has none");
    }
    return new TrimmedPolar(model, centreOfGravity, drag, mass, air);
  }

  /** Span seen from above over the area that the tail's lift coefficient is made with. */
  private static double aspectRatio(Tail tail) {
    return tail.planform().aspectRatio() * tail.planform().area().si() / tail.areaInOwnPlane().si();
  }

  private Interval trimmable() {
    double tailUsable = terms.tailUpright * tailSection.polar().usableLift(tailSection.reynolds()).likely();
    double wingUsable = drag.usableLift(unitSpeed, viscosity);
    // Tail lift is linear in the lift coefficient: T = T₀ + T₁·C_L.
    double t0 = tailLift(0.0);
    double t1 = tailLift(1.0) - t0;
    double highest = (wingUsable + t0) / (1.0 - t1);
    double own = terms.efficiency.value() * terms.areaRatio.value() * tailUsable;
    double stalls = t1 > 0.0 ? (own - t0) / t1 : t1 < 0.0 ? (-own - t0) / t1 : Double.POSITIVE_INFINITY;
    if (stalls < highest) {
      findings.add(
          Finding.of(
              Severity.CAUTION,
              "trimmed polar",
              String.format(
                  Locale.ROOT,
                  "The tail stalls at a lift coefficient of %.2f, before the wing does at %.2f. Enlarge the tail by %.0f %%,"
                      + " or move the centre of gravity %s by %s.",
                  stalls,
                  highest,
                  100.0 * (Math.abs(tailLift(highest)) / own - 1.0),
                  (t1 > 0.0) == terms.hasForeplane ? "aft" : "forward",
                  terms.relief(
                          Math.abs(tailLift(highest)) / (terms.efficiency.value() * terms.areaRatio.value()),
                          tailUsable,
                          highest)
                      .format(Length.MILLIMETRE, 2)),
              tailSection.polar().source()));
    }
    double end = Math.min(highest, stalls);
    if (!(end > 2.0 * LOWEST_LIFT)) {
      throw new IllegalStateException(
          String.format(
              Locale.ROOT,
              "the tail cannot trim any useful lift: it stalls at a lift coefficient of %.3f. Move the centre of gravity"
                  + " aft, enlarge the tail, or check the section data",
              end));
    }
    return Interval.between(LOWEST_LIFT, end);
  }

  private double tailLift(double lift) {
    return TrimFormulas.tailLift(
        momentCoefficient,
        lift,
        centreOfGravity,
        terms.wingCentre.value(),
        terms.fuselageSlope.value(),
        terms.wingAlone.value(),
        bodyAngle,
        terms.trimCentre.value());
  }

  /**
   * The drag coefficient in trim, without allocation.
   *
   * @param lift lift coefficient, within {@link #lifts()}
   * @return C_D at the speed of the glide
   */
  public double dragCoefficient(double lift) {
    double t = tailLift(lift);
    double wing = lift - t;
    return drag.likelyCoefficient(wing, unitSpeed / Math.sqrt(lift), viscosity) + trimDrag(t, wing);
  }

  /**
   * The drag coefficient in trim at another speed than that of the glide, without allocation.
   *
   * @param lift lift coefficient C_L
   * @param speed airspeed [m/s], positive
   * @param kinematicViscosity ν [m²/s], positive
   * @return C_D
   */
  @Override
  public double likelyCoefficient(double lift, double speed, double kinematicViscosity) {
    double t = tailLift(lift);
    return dragCoefficient(lift - t, t, speed, kinematicViscosity);
  }

  /**
   * The drag coefficient with any share of lift between wing and tail, as in a manoeuvre, without allocation.
   *
   * @param wingLift lift coefficient of the wing
   * @param tailLift what the tail lifts, on the wing area, positive up
   * @param speed airspeed [m/s], positive
   * @param kinematicViscosity ν [m²/s], positive
   * @return C_D
   */
  public double dragCoefficient(double wingLift, double tailLift, double speed, double kinematicViscosity) {
    return drag.likelyCoefficient(wingLift, speed, kinematicViscosity) + trimDrag(tailLift, wingLift);
  }

  /** The greatest lift that can be trimmed; it is that of the glide for which the polar was made. */
  @Override
  public double usableLift(double otherUnitSpeed, double kinematicViscosity) {
    return lifts.upper();
  }

  private double trimDrag(double t, double wing) {
    double share = terms.efficiency.value() * terms.areaRatio.value();
    double profile = tailSection.polar().likelyProfileDrag(t / share, tailSection.reynolds()) - tailAtNoLift;
    return share * profile
        + TrimDrag.mutualInduced(t, wing, terms.aspectRatio.value())
        + TrimDrag.tailInduced(
            t, TrimDrag.TAIL_LOSS, tailAspectRatio, terms.efficiency.value(), terms.areaRatio.value());
  }

  /**
   * The lift coefficients that can be trimmed.
   *
   * @return from a low one to where wing or tail reaches its usable lift
   */
  public Interval lifts() {
    return lifts;
  }

  /**
   * One point of the polar.
   *
   * @param lift lift coefficient, within {@link #lifts()}
   * @return the point
   */
  public Point at(double lift) {
    Door.within(lift, lifts.lower(), lifts.upper() * (1.0 + 1e-12), "lift coefficient");
    double t = tailLift(lift);
    double cd = dragCoefficient(lift);
    double angle = SteadyGlide.angle(cd, lift);
    double speed = unitSpeed * Math.sqrt(Math.cos(angle) / lift);
    return new Point(
        lift,
        cd,
        trimDrag(t, lift - t),
        t,
        TrimFormulas.tailLiftCoefficient(t, terms.efficiency.value(), terms.areaRatio.value()),
        Speed.metresPerSecond(speed),
        Angle.radians(angle));
  }

  /**
   * Points spread evenly over the lift coefficients.
   *
   * @param points how many, 2 to 100,000
   * @return the points
   */
  public List<Point> points(int points) {
    Door.within(points, 2, 100_000, "number of points");
    List<Point> all = new ArrayList<>();
    for (int i = 0; i < points; i++) {
      all.add(at(lifts.lower() + lifts.width() * i / (points - 1)));
    }
    return List.copyOf(all);
  }

  /**
   * The best glide in trim.
   *
   * @return the point of the greatest ratio of lift to drag
   */
  public Point bestGlide() {
    return at(
        Minimum.amongSeveral(cl -> dragCoefficient(cl) / cl, lifts.lower(), lifts.upper(), SCAN, FINE).argument());
  }

  /**
   * The least sink rate in trim.
   *
   * @return the point of the least sink rate
   */
  public Point leastSink() {
    return at(
        Minimum.amongSeveral(
                cl -> {
                  double angle = SteadyGlide.angle(dragCoefficient(cl), cl);
                  return unitSpeed * Math.sqrt(Math.cos(angle) / cl) * Math.sin(angle);
                },
                lifts.lower(),
                lifts.upper(),
                SCAN,
                FINE)
            .argument());
  }

  /**
   * What trim costs in glide ratio, against a wing that carries everything with a tail that only rubs.
   *
   * @return the price, negative change for a cost
   */
  public Price price() {
    double end = Math.max(2.0 * LOWEST_LIFT, drag.usableLift(unitSpeed, viscosity));
    double untrimmed =
        -Minimum.amongSeveral(
                cl -> -cl / drag.likelyCoefficient(cl, unitSpeed / Math.sqrt(cl), viscosity),
                LOWEST_LIFT,
                end,
                SCAN,
                FINE)
            .value();
    return new Price("best glide ratio, trimmed", untrimmed, bestGlide().liftToDrag(), NamedUnit.NUMBER, true);
  }

  /**
   * What to know about it.
   *
   * @return findings
   */
  public List<Finding> findings() {
    return Finding.inOrderOfWeight(findings);
  }


  /**
   * One trimmed glide.
   *
   * @param liftCoefficient C_L
   * @param dragCoefficient C_D with trim
   * @param trimDrag what trim adds to the drag of wing and friction
   * @param tailLift T on the wing area, positive up
   * @param tailLiftCoefficient C_Lh on the tail's own area
   * @param speed airspeed
   * @param angle angle of descent, positive down
   */
  public record Point(
      double liftCoefficient,
      double dragCoefficient,
      double trimDrag,
      double tailLift,
      double tailLiftCoefficient,
      Speed speed,
      Angle angle) {
    public Point {
      Objects.requireNonNull(speed, "speed");
      Objects.requireNonNull(angle, "angle");
    }

    /**
     * Ratio of lift to drag.
     *
     * @return C_L/C_D
     */
    public double liftToDrag() {
      return liftCoefficient / dragCoefficient;
    }

    /**
     * Sink rate.
     *
     * @return w, positive down
     */
    public Speed sinkRate() {
      return Speed.metresPerSecond(SteadyGlide.sinkRate(speed.si(), angle.si()));
    }

    @Override
    public String toString() {
      return String.format(
          Locale.ROOT, "C_L %.2f, L/D %.1f at %s, tail C_L %.2f", liftCoefficient, liftToDrag(), speed, tailLiftCoefficient);
    }
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "trimmed polar for lift coefficients %.2f to %.2f", lifts.lower(), lifts.upper());
  }
}
