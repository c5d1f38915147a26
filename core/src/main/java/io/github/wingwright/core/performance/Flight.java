// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.performance;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Energy;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.core.quantity.Time;
import java.io.Serializable;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One flight from the hand to its end.
 *
 * <p>It ends at the floor, at the ceiling or at a wall, whichever comes first; distance and time are those of the end. A
 * flight that hits the ceiling is not followed down again.
 */
public final class Flight implements Serializable {
  private static final long serialVersionUID = 1L;

  private final FlightEnd end;
  private final FlightManner manner;
  private final List<TrackPoint> track;
  private final double endSpeed;
  private final double startSpeed;
  private final Mass mass;
  private final double gravity;
  private final TrackPoint highest;
  private final @Nullable TrackPoint firstStall;
  private final double stalledTime;
  private final double slowest;
  private final Swings swings;
  private final double glideSpeed;
  private final double glideAngle;

  private Flight(FlightRun run, FlightEquations equations, double startSpeed) {
    end = run.end;
    manner = run.manner();
    track = List.copyOf(run.track());
    endSpeed = run.groundSpeed();
    this.startSpeed = startSpeed;
    mass = equations.mass();
    gravity = equations.gravity();
    highest = nearest(run.timeOfGreatestHeight, run.distanceOfGreatestHeight, run.greatestHeight);
    firstStall =
        Double.isNaN(run.firstStall)
            ? null
            : nearest(run.firstStall, run.firstStallDistance, run.firstStallHeight);
    stalledTime = run.stalledTime;
    slowest = run.slowest;
    swings = run.swings();
    glideSpeed = equations.glideSpeed();
    glideAngle = equations.glideAngle();
  }

  static Flight of(FlightEquations equations, double[] start, Hall hall) {
    double[] rates = new double[equations.size()];
    equations.rates(start, rates);
    FlightRun run = new FlightRun(equations, true);
    run.fly(start, hall, 0);
    return new Flight(run, equations, Math.hypot(rates[0], rates[1]));
  }

  /** The track point at a time, moved to the place that was found between the steps. */
  private TrackPoint nearest(double seconds, double x, double h) {
    TrackPoint best = track.get(0);
    for (TrackPoint point : track) {
      if (Math.abs(point.seconds() - seconds) < Math.abs(best.seconds() - seconds)) {
        best = point;
      }
    }
    return new TrackPoint(seconds, x, h, best.v(), best.gamma(), best.stalled());
  }

  /**
   * What ended it.
   *
   * @return floor, ceiling, a wall, or the time
   */
  public FlightEnd end() {
    return end;
  }

  /**
   * What kind of flight it was.
   *
   * @return whether it glided, stalled, dived, turned over, or met something
   */
  public FlightManner manner() {
    return manner;
  }

  private TrackPoint last() {
    return track.get(track.size() - 1);
  }

  /**
   * How far it flew.
   *
   * @return distance from the hand to its end
   */
  public Length distance() {
    return last().distance();
  }

  /**
   * How long it flew.
   *
   * @return time from the hand to its end
   */
  public Time time() {
    return last().time();
  }

  /**
   * Its highest point.
   *
   * @return when, where and how high
   */
  public TrackPoint highest() {
    return highest;
  }

  /**
   * The least airspeed on the way.
   *
   * @return V
   */
  public Speed slowest() {
    return Speed.metresPerSecond(slowest);
  }

  /**
   * Speed over the ground at its end.
   *
   * @return speed
   */
  public Speed landingSpeed() {
    return Speed.metresPerSecond(endSpeed);
  }

  /**
   * How steeply it comes down at its end.
   *
   * @return angle of descent over the ground, positive down
   */
  public Angle landingAngle() {
    return Angle.radians(-last().gamma());
  }

  /**
   * Where it stalls first.
   *
   * @return when and where, empty if it does not stall
   */
  public Optional<TrackPoint> firstStall() {
    return Optional.ofNullable(firstStall);
  }

  /**
   * How long it is stalled, all stalls together.
   *
   * @return time
   */
  public Time stalledTime() {
    return Time.seconds(stalledTime);
  }

  /**
   * How the airspeed swings.
   *
   * @return the phugoid as it is seen
   */
  public Swings swings() {
    return swings;
  }

  /**
   * Whether it has settled to its glide when it lands: its airspeed within a tenth of that of the glide, its path within 5°.
   *
   * @return true if so
   */
  public boolean settles() {
    return Math.abs(last().v() - glideSpeed) <= 0.1 * glideSpeed
        && Math.abs(last().gamma() + glideAngle) <= Math.toRadians(5.0);
  }

  /**
   * The steady glide that it would settle to.
   *
   * @return airspeed [m/s], NaN if it has none
   */
  double glideSpeed() {
    return glideSpeed;
  }

  /** Speed over the ground at the throw [m/s]. */
  double startSpeed() {
    return startSpeed;
  }

  /**
   * Energy at the throw: of motion over the ground, and of height above the floor.
   *
   * @return ½·m·V² + m·g·h
   */
  public Energy energyAtThrow() {
    return energy(startSpeed, track.get(0).h());
  }

  /**
   * Energy at the end.
   *
   * @return ½·m·V² + m·g·h
   */
  public Energy energyAtEnd() {
    return energy(endSpeed, last().h());
  }

  /**
   * What the air took on the way; a following wind may give instead.
   *
   * @return energy at the throw less that at the end
   */
  public Energy energyLost() {
    return energyAtThrow().minus(energyAtEnd());
  }

  private Energy energy(double speed, double height) {
    return Energy.joules(mass.si() * (0.5 * speed * speed + gravity * height));
  }

  /**
   * The flight, instant by instant: at every step of the calculation.
   *
   * @return points from the hand to the end
   */
  public List<TrackPoint> track() {
    return track;
  }

  /**
   * What a thrower should know.
   *
   * @return findings, heaviest first
   */
  public List<Finding> findings() {
    return FlightFindings.of(this);
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "%.2f m in %.2f s, %s%s", last().x(), last().seconds(), end.words(),
        firstStall == null ? "" : String.format(Locale.ROOT, ", stalls at %.2f s", firstStall.seconds()));
  }
}
