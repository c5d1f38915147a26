// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.flighttest;

import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Time;
import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * One test flight, as it was measured.
 *
 * <pre>{@code
 * FlightTest first =
 *     FlightTest.named("1", Measured.of(metres(11.9), metres(0.2)), Measured.of(metres(1.5), metres(0.03)))
 *         .in(Measured.of(seconds(1.9), seconds(0.1)))
 *         .thrownAt(Measured.of(metresPerSecond(6.4), metresPerSecond(0.3)));
 * }</pre>
 */
public final class FlightTest implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String name;
  private final Measured distance;
  private final Measured height;
  private final @Nullable Measured time;
  private final @Nullable Measured launchSpeed;
  private final @Nullable Measured turnRadius;
  private final Set<Behaviour> seen;

  private FlightTest(
      String name,
      Measured distance,
      Measured height,
      @Nullable Measured time,
      @Nullable Measured launchSpeed,
      @Nullable Measured turnRadius,
      Set<Behaviour> seen) {
    this.name = Door.said(name, "name of the flight");
    this.distance = distance;
    this.height = height;
    this.time = time;
    this.launchSpeed = launchSpeed;
    this.turnRadius = turnRadius;
    this.seen = Set.copyOf(seen);
  }

  /**
   * A flight from the hand to the floor.
   *
   * @param name what it is called
   * @param distance how far along the floor [m], positive
   * @param height how far down, from the hand to the floor [m], positive
   * @return the flight
   */
  public static FlightTest named(String name, Measured distance, Measured height) {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(distance, "distance");
    Objects.requireNonNull(height, "height");
    Door.positive(distance.value(), "distance of flight " + name);
    Door.positive(height.value(), "height of flight " + name);
    return new FlightTest(name, distance, height, null, null, null, Set.of());
  }

  /**
   * With its time.
   *
   * @param duration from the hand to the floor [s], positive
   * @return the flight
   */
  public FlightTest in(Measured duration) {
    Objects.requireNonNull(duration, "duration");
    Door.positive(duration.value(), "time of flight " + name);
    return new FlightTest(name, distance, height, duration, launchSpeed, turnRadius, seen);
  }

  /**
   * With the speed of the hand.
   *
   * @param speed speed at which it left the hand [m/s], not negative
   * @return the flight
   */
  public FlightTest thrownAt(Measured speed) {
    Objects.requireNonNull(speed, "speed");
    Door.notNegative(speed.value(), "launch speed of flight " + name);
    return new FlightTest(name, distance, height, time, speed, turnRadius, seen);
  }

  /**
   * With what was seen.
   *
   * @param what what it did; nothing for a straight and steady glide
   * @return the flight
   */
  public FlightTest seen(Set<Behaviour> what) {
    Objects.requireNonNull(what, "what");
    return new FlightTest(name, distance, height, time, launchSpeed, turnRadius, what);
  }

  /**
   * With the radius of its turn.
   *
   * @param radius the radius [m], positive
   * @return the flight
   */
  public FlightTest turningAt(Measured radius) {
    Objects.requireNonNull(radius, "radius");
    Door.positive(radius.value(), "turn radius of flight " + name);
    return new FlightTest(name, distance, height, time, launchSpeed, radius, seen);
  }

  /**
   * What it is called.
   *
   * @return the name
   */
  public String name() {
    return name;
  }

  /**
   * How far it flew.
   *
   * @return along the floor [m]
   */
  public Measured distance() {
    return distance;
  }

  /**
   * How far down it flew.
   *
   * @return height [m]
   */
  public Measured height() {
    return height;
  }

  /**
   * How long it flew.
   *
   * @return time [s], empty if it was not taken
   */
  public Optional<Measured> time() {
    return Optional.ofNullable(time);
  }

  /**
   * Speed of the hand.
   *
   * @return speed [m/s], empty if it was not measured
   */
  public Optional<Measured> launchSpeed() {
    return Optional.ofNullable(launchSpeed);
  }

  /**
   * Radius of its turn.
   *
   * @return radius [m], empty if it flew straight or nobody measured
   */
  public Optional<Measured> turnRadius() {
    return Optional.ofNullable(turnRadius);
  }

  /**
   * What was seen.
   *
   * @return nothing for a straight and steady glide
   */
  public Set<Behaviour> behaviours() {
    return seen;
  }

  /**
   * Whether it was a straight and steady glide, timed, from which drag can be reckoned.
   *
   * @return true if nothing else was seen
   */
  public boolean isSteady() {
    return seen.isEmpty() && time != null;
  }

  @Override
  public String toString() {
    String did =
        seen.isEmpty() ? "straight" : seen.stream().sorted().map(Behaviour::words).collect(Collectors.joining(", "));
    String in = time == null ? "" : " in " + Time.SECOND.format(time.value(), 2);
    return Length.METRE.format(distance.value(), 3) + " from " + Length.METRE.format(height.value(), 3) + in + ", " + did;
  }
}
