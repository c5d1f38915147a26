// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.performance;

import io.github.wingwright.core.aerodynamics.AircraftDrag;
import io.github.wingwright.core.aerodynamics.DragLaw;
import io.github.wingwright.core.atmosphere.AirState;
import io.github.wingwright.core.basis.Band;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.QuantityBand;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.Acceleration;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.core.quantity.Time;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * How an aircraft of one mass glides in one air.
 *
 * <pre>{@code
 * GlidePerformance glide = GlidePerformance.of(drag, grams(28), hall);
 * glide.bestGlide();              // L/D 7.9 at 5.6 m/s, sink 0.7 m/s, C_L 0.76
 * glide.greatestLiftToDrag();     // a band: how well the section's drag is known
 * glide.stallSpeed();             // where the polar ends
 * glide.thrownAt(speed);          // does it fly for this thrower?
 * }</pre>
 *
 * <p>The polar ends at the usable lift, and each point's drag is that of its own Reynolds numbers. The closed forms of the
 * textbook, which know neither, are in {@link ParabolicGlide}.
 */
public final class GlidePerformance implements Serializable {
  private static final long serialVersionUID = 1L;

  /** A lift within this part of the usable one counts as the end of the polar. */
  private static final double END = 1.0 - 1e-6;

  private static final Angle STEEPEST = Angle.degrees(75);

  private final AircraftDrag drag;
  private final Mass mass;
  private final AirState air;
  private final double p;
  private final double rho;
  private final double nu;
  private final double usable;
  private final GlidePoint bestGlide;
  private final GlidePoint leastSink;

  private GlidePerformance(AircraftDrag drag, Mass mass, AirState air, Acceleration gravity) {
    this.drag = drag;
    this.mass = mass;
    this.air = air;
    this.p = SteadyGlide.weightOverArea(mass.si(), gravity.si(), drag.area().si());
    this.rho = air.density().si();
    this.nu = air.kinematicViscosity().si();
    this.usable = GlideKernel.usableLift(drag, p, rho, nu);
    this.bestGlide = at(GlideKernel.bestGlideLift(drag, p, rho, nu));
    this.leastSink = at(GlideKernel.leastSinkLift(drag, p, rho, nu));
  }

  /**
   * The glide of an aircraft under standard gravity.
   *
   * @param drag its drag
   * @param mass its mass, positive
   * @param air the air
   * @return its performance
   */
  public static GlidePerformance of(AircraftDrag drag, Mass mass, AirState air) {
    Objects.requireNonNull(drag, "drag");
    Objects.requireNonNull(mass, "mass");
    Objects.requireNonNull(air, "air");
    if (!(mass.si() > 0.0 && mass.si() <= Double.MAX_VALUE)) {
      throw new IllegalArgumentException("mass must be positive, was " + mass);
    }
    return new GlidePerformance(drag, mass, air, Acceleration.STANDARD_GRAVITY);
  }

  /**
   * The glide at a lift coefficient.
   *
   * @param liftCoefficient C_L, positive, at most the usable lift
   * @return the point
   */
  public GlidePoint at(double liftCoefficient) {
    if (!(liftCoefficient > 0.0 && liftCoefficient <= usable * (1.0 + 1e-9))) {
      throw new IllegalArgumentException(
          "lift coefficient must be above 0 and at most the usable " + NamedUnit.NUMBER.format(usable, 4) + ", was "
              + liftCoefficient);
    }
    return point(liftCoefficient, 1.0);
  }

  /**
   * A steady turn at a lift coefficient: in a hall, what the walls ask for.
   *
   * @param liftCoefficient C_L, positive, at most the usable lift
   * @param bank bank angle, above 0, at most 75°
   * @return the turn
   */
  public GlideTurn turning(double liftCoefficient, Angle bank) {
    Objects.requireNonNull(bank, "bank");
    GlidePoint straight = at(liftCoefficient);
    if (!(bank.si() > 0.0 && bank.si() <= STEEPEST.si())) {
      throw new IllegalArgumentException("bank must be above 0° and at most 75°, was " + bank);
    }
    GlidePoint turn = point(straight.liftCoefficient(), bank.cosine());
    double radius =
        GlideTurn.helixRadius(
            turn.speed().si(), turn.angle().si(), Acceleration.STANDARD_GRAVITY.si(), bank.si());
    return new GlideTurn(bank, turn, Length.metres(radius));
  }

  private GlidePoint point(double liftCoefficient, double cosineOfBank) {
    double speed = GlideKernel.turningSpeed(drag, liftCoefficient, cosineOfBank, p, rho, nu);
    double cd = drag.likelyCoefficient(liftCoefficient, speed, nu);
    double angle = SteadyGlide.angle(cd, liftCoefficient * cosineOfBank);
    return new GlidePoint(
        liftCoefficient,
        cd,
        Speed.metresPerSecond(speed),
        Angle.radians(angle),
        Speed.metresPerSecond(SteadyGlide.sinkRate(speed, angle)),
        drag.reynolds(speed, nu));
  }

  /**
   * The glide that goes farthest in still air.
   *
   * @return the point with the greatest L/D on the polar as it ends
   */
  public GlidePoint bestGlide() {
    return bestGlide;
  }

  /**
   * The glide that lasts longest.
   *
   * @return the point with the least sink rate on the polar as it ends
   */
  public GlidePoint leastSink() {
    return leastSink;
  }

  /**
   * Usable lift: where the polar ends.
   *
   * @return C_L
   */
  public double usableLift() {
    return usable;
  }

  /**
   * Stall speed: the speed at which the usable lift carries the weight in level flight.
   *
   * @return V_s
   */
  public Speed stallSpeed() {
    return Speed.metresPerSecond(SteadyGlide.levelSpeed(p, rho, usable));
  }

  /**
   * The stall speed with the range of the usable lift.
   *
   * @return V_s
   */
  public QuantityBand<Speed> stallSpeedBand() {
    Band lift = drag.usableLiftBand(stallSpeed().si(), nu);
    return new QuantityBand<>(
        Speed.metresPerSecond(SteadyGlide.levelSpeed(p, rho, lift.high())),
        Speed.metresPerSecond(SteadyGlide.levelSpeed(p, rho, lift.likely())),
        Speed.metresPerSecond(SteadyGlide.levelSpeed(p, rho, lift.low())));
  }

  /**
   * The greatest ratio of lift to drag with the range in which the section's drag is known.
   *
   * @return L/D: with the greatest, the likely and the least drag of the section, each at its own best lift
   */
  public Band greatestLiftToDrag() {
    double likely = bestGlide.liftToDrag();
    double low = greatest(true);
    double high = greatest(false);
    return new Band(Math.min(low, likely), likely, Math.max(high, likely));
  }

  private double greatest(boolean mostDrag) {
    DragLaw end = new BandEnd(drag, mostDrag);
    double lift = GlideKernel.bestGlideLift(end, p, rho, nu);
    return lift / GlideKernel.dragCoefficient(end, lift, p, rho, nu);
  }

  /** The drag with one end of what is known of the section. */
  private record BandEnd(AircraftDrag drag, boolean most) implements DragLaw {
    @Override
    public double likelyCoefficient(double lift, double speed, double kinematicViscosity) {
      Band band = drag.coefficient(lift, speed, kinematicViscosity);
      return most ? band.high() : band.low();
    }

    @Override
    public double usableLift(double unitSpeed, double kinematicViscosity) {
      return drag.usableLift(unitSpeed, kinematicViscosity);
    }
  }

  /**
   * The glide polar: points from fast to slow.
   *
   * @param points number of points, 2 to 100,000
   * @return points from a fifth of the usable lift to all of it
   */
  public List<GlidePoint> polar(int points) {
    Door.within(points, 2, 100_000, "number of points");
    List<GlidePoint> polar = new ArrayList<>();
    for (int i = 0; i < points; i++) {
      // even in speed, which goes as 1/√C_L, so that the picture is even
      double part = 1.0 / Math.sqrt(0.2) + (1.0 - 1.0 / Math.sqrt(0.2)) * i / (points - 1);
      polar.add(at(Math.min(usable, usable / (part * part))));
    }
    return List.copyOf(polar);
  }

  /**
   * Distance of a steady glide from a height in still air, at the best glide.
   *
   * @param height height above the landing, not negative
   * @return the distance, as uncertain as the ratio of lift to drag
   */
  public QuantityBand<Length> distanceFrom(Length height) {
    Objects.requireNonNull(height, "height");
    return QuantityBand.of(greatestLiftToDrag().times(notNegative(height).si()), Length::metres);
  }

  /**
   * Duration of a steady glide from a height, at least sink.
   *
   * @param height height above the landing, not negative
   * @return the likely time
   */
  public Time durationFrom(Length height) {
    Objects.requireNonNull(height, "height");
    return Time.seconds(notNegative(height).si() / leastSink.sinkRate().si());
  }

  private static Length notNegative(Length height) {
    if (!(height.si() >= 0.0 && height.si() <= Double.MAX_VALUE)) {
      throw new IllegalArgumentException("height must not be negative, was " + height);
    }
    return height;
  }

  /**
   * Whether it flies for a thrower.
   *
   * @param throwSpeed speed at which it leaves the hand, positive
   * @return the answer with its margins and findings
   */
  public ThrowCheck thrownAt(Speed throwSpeed) {
    Objects.requireNonNull(throwSpeed, "throw speed");
    return ThrowCheck.of(throwSpeed, stallSpeed(), bestGlide.speed());
  }

  /**
   * The workings of the stall speed, the best glide and the least sink.
   *
   * @return the last line of each: stall speed, ratio of lift to drag and speed of the best glide, least sink rate
   */
  public GlideWorkings workings() {
    return GlideWorkings.of(this);
  }

  /**
   * What to know about the glide.
   *
   * @return findings of the drag at the best glide, and whether an optimum lies at the end of the polar
   */
  public List<Finding> findings() {
    List<Finding> findings =
        new ArrayList<>(drag.findings(bestGlide.liftCoefficient(), bestGlide.speed().si(), nu));
    atEnd(bestGlide, "best glide", findings);
    atEnd(leastSink, "least sink", findings);
    return Finding.inOrderOfWeight(findings);
  }

  private void atEnd(GlidePoint point, String what, List<Finding> findings) {
    if (point.liftCoefficient() > END * usable) {
      findings.add(
          Finding.of(
              Severity.NOTE,
              what,
              "The " + what + " lies at the usable lift, C_L " + NamedUnit.NUMBER.format(usable, 3)
                  + ", where the polar ends, next to the stall: trim for somewhat more speed.",
              Source.library("a polar that ends at the usable lift")));
    }
  }

  double weightOverArea() {
    return p;
  }

  /**
   * Drag of the aircraft.
   *
   * @return the drag
   */
  public AircraftDrag drag() {
    return drag;
  }

  /**
   * Mass.
   *
   * @return m
   */
  public Mass mass() {
    return mass;
  }

  /**
   * The air.
   *
   * @return its state
   */
  public AirState air() {
    return air;
  }

  /**
   * The best glide in a unit of choice.
   *
   * @param unit unit of speed and sink rate
   * @return for example {@code "glide: L/D 9.3 at 22 ft/s, sink 2.1 ft/s, C_L 0.53"}
   */
  public String format(NamedUnit<Speed> unit) {
    return "glide: " + bestGlide.format(unit);
  }

  @Override
  public String toString() {
    return "glide: " + bestGlide;
  }
}
