// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.flight;

import io.github.wingwright.core.aerodynamics.AircraftDrag;
import io.github.wingwright.core.aircraft.Aircraft;
import io.github.wingwright.core.atmosphere.AirState;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.performance.Flight;
import io.github.wingwright.core.performance.FlightEquations;
import io.github.wingwright.core.performance.FlightModel;
import io.github.wingwright.core.performance.GlideGoal;
import io.github.wingwright.core.performance.Hall;
import io.github.wingwright.core.performance.RangeMap;
import io.github.wingwright.core.performance.SteadyGlide;
import io.github.wingwright.core.performance.Throw;
import io.github.wingwright.core.quantity.Acceleration;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.stability.PitchModel;
import io.github.wingwright.stability.PitchParts;
import io.github.wingwright.stability.TaillessTrim;
import io.github.wingwright.stability.Trim;
import io.github.wingwright.stability.TrimmedPolar;
import io.github.wingwright.stability.design.Design;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The flight of a design with pitch: it nods, it swings, and it stalls when it must.
 *
 * <pre>{@code
 * PitchFlight model = PitchFlight.of(design).in(Hall.of(metres(27), metres(7)));
 * Flight flight = model.thrown(Throw.level(metresPerSecond(6.5), metres(1.5)));
 * flight.firstStall();
 * model.withDecalage(degrees(3)).bestAngles(GlideGoal.DISTANCE, speed, height);
 * }</pre>
 *
 * <p>It is a specification: each call gives a new one. Lift, moment, drag, inertia and apparent mass are the design's own.
 * The elevator is the decalage, as on a glider whose tail is set by shims; without a tail it is the moment of the wing.
 */
public final class PitchFlight implements FlightModel {
  private final Glider glider;
  private final double setting;
  private final double wind;
  private final double heldAt;
  private final Hall hall;
  private final PitchDynamics equations;

  /** What does not change with the setting. */
  private record Glider(
      PitchParts parts,
      GliderCoefficients.Drag polar,
      PitchDynamics.Body body,
      double axis,
      double glideSpeed,
      double viscosity) {}

  private PitchFlight(Glider glider, double setting, double wind, double heldAt, Hall hall, PitchDynamics equations) {
    this.glider = glider;
    this.setting = setting;
    this.wind = wind;
    this.heldAt = heldAt;
    this.hall = hall;
    this.equations = equations;
  }

  private static PitchFlight of(Glider glider, double setting, double wind, double heldAt, Hall hall) {
    PitchParts parts = glider.parts.hasTail() ? glider.parts : glider.parts.withWingMoment(setting);
    double tail = parts.hasTail() ? parts.wingIncidence() - setting : 0.0;
    CoefficientTable table =
        new CoefficientTable(
            new GliderCoefficients(parts, glider.polar, tail, glider.axis, glider.glideSpeed, glider.viscosity));
    double upright = PitchStall.angle(parts, tail, true) - glider.axis;
    double inverted = PitchStall.angle(parts, tail, false) - glider.axis;
    PitchDynamics equations = new PitchDynamics(glider.body.stallingAt(upright, inverted), table, wind);
    return new PitchFlight(glider, setting, wind, heldAt, hall, equations);
  }

  /**
   * The flight of a design as it is trimmed, outdoors in still air.
   *
   * @param design the design
   * @return its flight
   * @throws IllegalStateException if its tail cannot trim it
   */
  public static PitchFlight of(Design design) {
    Objects.requireNonNull(design, "design");
    return of(
        design.pitchModel(),
        design.aircraft(),
        design.glide().drag(),
        design.brief().air(),
        design.trim().liftCoefficient(),
        new Setting(design.trim().decalage().si(), design.trim().angleOfAttack().si()));
  }

  /**
   * The flight of an aircraft in any layout, trimmed for a lift coefficient, outdoors in still air.
   *
   * <p>A tail behind the wing, a V-tail or a foreplane is set to the decalage that trims it. Without a tail the wing's own
   * moment is made what trim needs, as reflex or elevons make it; the lift that elevons cost is left out.
   *
   * <pre>{@code
   * PitchFlight canard = PitchFlight.of(model, aircraft, drag, air, 0.6);
   * canard.decalage();
   * canard.in(hall).thrown(Throw.level(metresPerSecond(6), metres(1.5))).findings();
   * }</pre>
   *
   * @param model the pitch model with section data of all surfaces; its airframe is replaced by the aircraft's
   * @param aircraft shape and masses
   * @param drag drag without trim
   * @param air the air
   * @param liftCoefficient lift coefficient to trim for, 0.01 to 3
   * @return its flight
   * @throws IllegalStateException if section data are missing, or the tail cannot trim any useful lift
   */
  public static PitchFlight of(
      PitchModel model, Aircraft aircraft, AircraftDrag drag, AirState air, double liftCoefficient) {
    Objects.requireNonNull(model, "model");
    Objects.requireNonNull(aircraft, "aircraft");
    Objects.requireNonNull(drag, "drag");
    Objects.requireNonNull(air, "air");
    Door.within(liftCoefficient, 0.01, 3.0, "lift coefficient");
    PitchModel own = model.withAirframe(aircraft.airframe());
    Length centreOfGravity = aircraft.centreOfGravity().x();
    return of(own, aircraft, drag, air, liftCoefficient, Setting.of(own, centreOfGravity, liftCoefficient));
  }

  /** Decalage, or the wing's own moment without a tail, and the angle of attack in trim. */
  private record Setting(double value, double angle) {
    static Setting of(PitchModel model, Length centreOfGravity, double lift) {
      if (model.airframe().pitchTail().isPresent()) {
        Trim trim = model.trim(centreOfGravity, lift);
        return new Setting(trim.decalage().si(), trim.angleOfAttack().si());
      }
      PitchParts parts = PitchParts.of(model, centreOfGravity);
      return new Setting(
          TaillessTrim.of(model, centreOfGravity, lift).neededMoment(),
          lift / parts.wingSlope() + parts.wingZeroLift() - parts.wingIncidence());
    }
  }

  private static PitchFlight of(
      PitchModel model, Aircraft aircraft, AircraftDrag drag, AirState air, double lift, Setting setting) {
    Length centreOfGravity = aircraft.centreOfGravity().x();
    PitchParts parts = PitchParts.of(model, centreOfGravity);
    double density = air.density().si();
    GliderCoefficients.Drag polar =
        parts.hasTail()
            ? TrimmedPolar.of(model, centreOfGravity, drag, aircraft.mass(), air)::dragCoefficient
            : (wing, tail, v, nu) -> drag.likelyCoefficient(wing, v, nu);
    double g = Acceleration.STANDARD_GRAVITY.si();
    double area = aircraft.airframe().wing().planform().area().si();
    double pressure = SteadyGlide.weightOverArea(aircraft.mass().si(), g, area);
    double speed = SteadyGlide.levelSpeed(pressure, density, lift);
    PitchDynamics.Body body = PitchBody.of(parts, aircraft, density, area, g);
    Glider glider = new Glider(parts, polar, body, setting.angle, speed, air.kinematicViscosity().si());
    return of(glider, setting.value, 0.0, Double.NaN, Hall.OUTDOORS);
  }

  /**
   * With another decalage: its elevator setting.
   *
   * @param other incidence of the wing less that of the tail or foreplane, within −30° and 30°; with a tail behind more of it
   *     trims for more lift, with a foreplane less
   * @return the flight with it
   * @throws IllegalStateException without a tail
   */
  public PitchFlight withDecalage(Angle other) {
    Door.within(other, Angle.degrees(-30), Angle.degrees(30), "decalage");
    if (!glider.parts.hasTail()) {
      throw new IllegalStateException(
          "a decalage needs a tail or a foreplane, the airframe has none: without one use withWingMoment");
    }
    return of(glider, other.si(), wind, heldAt, hall);
  }

  /**
   * With another moment of a wing without a tail: reflex, or elevons.
   *
   * @param moment C_m about the wing's aerodynamic centre, −0.5 to 0.5; more trims for more lift
   * @return the flight with it
   * @throws IllegalStateException with a tail
   */
  public PitchFlight withWingMoment(double moment) {
    Door.within(moment, -0.5, 0.5, "moment of the wing");
    if (glider.parts.hasTail()) {
      throw new IllegalStateException("the moment of the wing is set on an airframe without a tail, this one has one");
    }
    return of(glider, moment, wind, heldAt, hall);
  }

  /**
   * In a hall.
   *
   * @param other the hall
   * @return the flight in it
   */
  public PitchFlight in(Hall other) {
    Objects.requireNonNull(other, "other");
    return new PitchFlight(glider, setting, wind, heldAt, other, equations);
  }

  /**
   * In a steady wind.
   *
   * @param other speed of the wind over the ground, positive in the direction of the throw
   * @return the flight in it
   */
  public PitchFlight inWind(Speed other) {
    return of(glider, setting, Door.finite(other, "wind").si(), heldAt, hall);
  }

  /**
   * Held at another angle to its path when it is thrown. By itself it is taken as held at the angle of attack of its glide.
   *
   * @param angleOfAttack angle of the fuselage reference line above the path of the throw, within −45° and 45°
   * @return the flight thrown so
   */
  public PitchFlight heldAt(Angle angleOfAttack) {
    Door.within(angleOfAttack, Angle.degrees(-45), Angle.degrees(45), "angle of attack at the throw");
    return new PitchFlight(glider, setting, wind, angleOfAttack.si() - glider.axis, hall, equations);
  }

  @Override
  public FlightEquations equations() {
    return equations;
  }

  @Override
  public double[] start(double speed, double angle, double height) {
    double sine = equations.trim().sine();
    double alpha = !Double.isNaN(heldAt) ? heldAt : Double.isNaN(sine) ? 0.0 : Math.asin(sine);
    double theta = angle + alpha;
    double forward = speed * Math.cos(angle) - wind;
    double up = speed * Math.sin(angle);
    double cos = Math.cos(theta);
    double sin = Math.sin(theta);
    return new double[] {0.0, height, forward * cos + up * sin, forward * sin - up * cos, 0.0, theta};
  }

  /**
   * What a thrower should know, with amounts: the speed or angle at which a stall or the ceiling is gone, and the decalage.
   *
   * @param how how it leaves the hand, below the ceiling
   * @return findings, heaviest first
   */
  @Override
  public List<Finding> advice(Throw how) {
    List<Finding> findings = FlightModel.super.advice(how);
    return glider.parts.hasTail() ? ShimAdvice.added(findings, this, how) : findings;
  }

  /** With less lift by a shim of some tenths of a degree. */
  PitchFlight shimmed(int tenths) {
    double sign = glider.parts.hasForeplane() ? 1.0 : -1.0;
    return of(glider, setting + sign * Math.toRadians(0.1 * tenths), wind, heldAt, hall);
  }

  /** Whether less decalage makes less lift, as with a tail behind the wing. */
  boolean liftsByDecalage() {
    return !glider.parts.hasForeplane();
  }

  @Override
  public Hall hall() {
    return hall;
  }

  /**
   * Decalage.
   *
   * @return incidence of the wing less that of the tail or foreplane
   * @throws IllegalStateException without a tail
   */
  public Angle decalage() {
    if (!glider.parts.hasTail()) {
      throw new IllegalStateException("a decalage needs a tail or a foreplane, the airframe has none");
    }
    return Angle.radians(setting);
  }

  /**
   * Moment of the wing about its aerodynamic centre: what trims an airframe without a tail.
   *
   * @return C_m, nose-up positive
   */
  public double wingMoment() {
    return glider.parts.hasTail() ? glider.parts.wingMoment() : setting;
  }

  /**
   * Lift coefficient of the steady glide.
   *
   * @return C_L, empty if it does not trim before the stall
   */
  public OptionalDouble trimmedLift() {
    double lift = equations.trim().lift();
    return Double.isNaN(lift) ? OptionalDouble.empty() : OptionalDouble.of(lift);
  }

  /**
   * Speed of the steady glide.
   *
   * @return V, empty if it does not trim before the stall
   */
  public Optional<Speed> glideSpeed() {
    double speed = equations.glideSpeed();
    return Double.isNaN(speed) ? Optional.empty() : Optional.of(Speed.metresPerSecond(speed));
  }

  /**
   * Angle of the steady glide.
   *
   * @return γ, positive down, empty if it does not trim before the stall
   */
  public Optional<Angle> glideAngle() {
    double angle = equations.glideAngle();
    return Double.isNaN(angle) ? Optional.empty() : Optional.of(Angle.radians(angle));
  }

  /**
   * Flies a map over throw speed and decalage.
   *
   * @param goal what counts
   * @param speeds throw speeds [m/s], rising
   * @param decalages decalages [rad], rising
   * @param angle angle of all throws above the horizon [rad]
   * @param height height of the hand [m]
   * @return the map
   */
  public RangeMap map(GlideGoal goal, double[] speeds, double[] decalages, double angle, double height) {
    Objects.requireNonNull(goal, "goal");
    return RangeMap.of(speeds, decalages, setting -> {
      PitchFlight row = withDecalage(Angle.radians(setting));
      return speed -> row.value(goal, speed, angle, height);
    });
  }

  @Override
  public String toString() {
    return glider.parts.hasTail()
        ? String.format(Locale.ROOT, "flight with pitch, decalage %.1f°, %s", Math.toDegrees(setting), hall)
        : String.format(Locale.ROOT, "flight with pitch, without a tail, wing C_m %.3f, %s", setting, hall);
  }
}
