// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.flight;

import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.performance.FlightEquations;
import io.github.wingwright.core.performance.FlightModel;
import io.github.wingwright.core.performance.GlideGoal;
import io.github.wingwright.core.performance.Hall;
import io.github.wingwright.core.performance.RangeMap;
import io.github.wingwright.core.performance.SteadyGlide;
import io.github.wingwright.core.quantity.Acceleration;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.stability.PitchParts;
import io.github.wingwright.stability.TrimmedPolar;
import io.github.wingwright.stability.derivatives.TailPitchRate;
import io.github.wingwright.stability.design.Design;
import io.github.wingwright.stability.dynamics.WingApparentMass;
import java.util.Locale;
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
 * The elevator is the decalage, as on a glider whose tail is set by shims.
 */
public final class PitchFlight implements FlightModel {
  /** What the wing adds to the pitch damping of the tail (Nelson, from memory). */
  private static final double WING_DAMPING = 1.1;

  private final Glider glider;
  private final double decalage;
  private final double wind;
  private final double heldAt;
  private final Hall hall;
  private final PitchDynamics equations;

  /** What does not change with the setting. */
  private record Glider(
      PitchParts parts, TrimmedPolar polar, PitchDynamics.Body body, double axis, double glideSpeed, double viscosity) {}

  private PitchFlight(Glider glider, double decalage, double wind, double heldAt, Hall hall, PitchDynamics equations) {
    this.glider = glider;
    this.decalage = decalage;
    this.wind = wind;
    this.heldAt = heldAt;
    this.hall = hall;
    this.equations = equations;
  }

  private static PitchFlight of(Glider glider, double decalage, double wind, double heldAt, Hall hall) {
    double tail = glider.parts.wingIncidence() - decalage;
    CoefficientTable table =
        new CoefficientTable(
            new GliderCoefficients(
                glider.parts, glider.polar, tail, glider.axis, glider.glideSpeed, glider.viscosity));
    return new PitchFlight(glider, decalage, wind, heldAt, hall, new PitchDynamics(glider.body, table, wind));
  }

  /**
   * The flight of a design as it is trimmed, outdoors in still air.
   *
   * @param design the design, with a tail behind the wing
   * @return its flight
   * @throws IllegalStateException if there is no such tail
   */
  public static PitchFlight of(Design design) {
    Length centreOfGravity = design.aircraft().centreOfGravity().x();
    PitchParts parts = PitchParts.of(design.pitchModel(), centreOfGravity);
    Planform wing = design.aircraft().airframe().wing().planform();
    double density = design.brief().air().density().si();
    double viscosity = design.brief().air().kinematicViscosity().si();
    TrimmedPolar polar =
        TrimmedPolar.of(
            design.pitchModel(), centreOfGravity, design.glide().drag(), design.aircraft().mass(), design.brief().air());
    WingApparentMass apparent =
        WingApparentMass.of(design.brief().air().density(), design.aircraft().airframe().wing(), centreOfGravity);
    double axis = design.trim().angleOfAttack().si();
    double g = Acceleration.STANDARD_GRAVITY.si();
    double pressure = SteadyGlide.weightOverArea(design.aircraft().mass().si(), g, wing.area().si());
    double speed = SteadyGlide.levelSpeed(pressure, density, design.trim().liftCoefficient());
    double efficiencyAndVolume = parts.tailShare() * parts.tailArm();
    LiftCurve curve = GliderCoefficients.wing(parts);
    double offset = axis + parts.wingIncidence();
    PitchDynamics.Body body =
        new PitchDynamics.Body(
            design.aircraft().mass(),
            design.aircraft().inertia().pitch().si() + apparent.pitchInertia(),
            apparent,
            density,
            wing.area().si(),
            wing.meanAerodynamicChord().si(),
            g,
            TailPitchRate.liftDueToPitchRate(1.0, efficiencyAndVolume, parts.tailSlope()),
            WING_DAMPING * TailPitchRate.pitchDamping(1.0, efficiencyAndVolume, parts.tailSlope(), parts.tailArm()),
            TailPitchRate.liftDueToAngleRate(1.0, efficiencyAndVolume, parts.tailSlope(), parts.downwash()),
            TailPitchRate.downwashLag(1.0, efficiencyAndVolume, parts.tailSlope(), parts.tailArm(), parts.downwash()),
            parts.liftSlope(),
            parts.momentSlope(),
            curve.stallAngle(true) - offset,
            -curve.stallAngle(false) - offset);
    Glider glider = new Glider(parts, polar, body, axis, speed, viscosity);
    return of(glider, design.trim().decalage().si(), 0.0, Double.NaN, Hall.OUTDOORS);
  }

  /**
   * With another decalage: its elevator setting.
   *
   * @param other incidence of the wing less that of the tail, within −30° and 30°; more trims for more lift
   * @return the flight with it
   */
  public PitchFlight withDecalage(Angle other) {
    Door.within(other, Angle.degrees(-30), Angle.degrees(30), "decalage");
    return of(glider, other.si(), wind, heldAt, hall);
  }

  /**
   * In a hall.
   *
   * @param other the hall
   * @return the flight in it
   */
  public PitchFlight in(Hall other) {
    return new PitchFlight(glider, decalage, wind, heldAt, other, equations);
  }

  /**
   * In a steady wind.
   *
   * @param other speed of the wind over the ground, positive in the direction of the throw
   * @return the flight in it
   */
  public PitchFlight inWind(Speed other) {
    return of(glider, decalage, Door.finite(other, "wind").si(), heldAt, hall);
  }

  /**
   * Held at another angle to its path when it is thrown. By itself it is taken as held at the angle of attack of its glide.
   *
   * @param angleOfAttack angle of the fuselage reference line above the path of the throw, within −45° and 45°
   * @return the flight thrown so
   */
  public PitchFlight heldAt(Angle angleOfAttack) {
    Door.within(angleOfAttack, Angle.degrees(-45), Angle.degrees(45), "angle of attack at the throw");
    return new PitchFlight(glider, decalage, wind, angleOfAttack.si() - glider.axis, hall, equations);
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

  @Override
  public Hall hall() {
    return hall;
  }

  /**
   * Decalage.
   *
   * @return incidence of the wing less that of the tail
   */
  public Angle decalage() {
    return Angle.radians(decalage);
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
    return RangeMap.of(speeds, decalages, setting -> {
      PitchFlight row = withDecalage(Angle.radians(setting));
      return speed -> row.value(goal, speed, angle, height);
    });
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "flight with pitch, decalage %.1f°, %s", Math.toDegrees(decalage), hall);
  }
}
