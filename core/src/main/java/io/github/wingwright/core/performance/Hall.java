// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.performance;

import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import java.io.Serializable;
import java.util.Optional;

/**
 * The room in which a flight takes place: a level floor, and a ceiling and walls as far as there are any.
 *
 * <p>The thrower's hand is at distance 0; distances ahead are positive. Example: {@code Hall.of(metres(27), metres(7))} has
 * its far wall 27 m ahead and the other in the thrower's back.
 */
public final class Hall implements Serializable {
  private static final long serialVersionUID = 1L;

  /** No ceiling and no walls. */
  public static final Hall OUTDOORS =
      new Hall(Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

  private final double ahead;
  private final double behind;
  private final double ceiling;

  private Hall(double ahead, double behind, double ceiling) {
    this.ahead = ahead;
    this.behind = behind;
    this.ceiling = ceiling;
  }

  /**
   * A hall with the thrower at one end of it, back to the wall.
   *
   * @param length from wall to wall, positive
   * @param height from floor to ceiling, positive
   * @return the hall
   */
  public static Hall of(Length length, Length height) {
    return new Hall(Door.positive(length, "length of the hall").si(), 0.0, Double.POSITIVE_INFINITY).withCeiling(height);
  }

  /**
   * The same hall with the thrower away from the wall behind.
   *
   * @param distance from the wall behind to the hand, not negative, less than the length of the hall
   * @return the hall
   */
  public Hall thrownFrom(Length distance) {
    double d = Door.notNegative(distance, "distance from the wall behind").si();
    if (!(behind > Double.NEGATIVE_INFINITY)) {
      throw new IllegalStateException("a place in the hall needs walls, there are none");
    }
    if (!(d < ahead - behind)) {
      throw new IllegalArgumentException(
          "distance from the wall behind must be less than the length " + Length.metres(ahead - behind) + ", was " + distance);
    }
    return new Hall(ahead - behind - d, -d, ceiling);
  }

  /**
   * The same with a ceiling.
   *
   * @param height from floor to ceiling, positive
   * @return the hall
   */
  public Hall withCeiling(Length height) {
    return new Hall(ahead, behind, Door.positive(height, "height of the hall").si());
  }

  /**
   * The wall that it is thrown towards.
   *
   * @return distance from the hand, empty outdoors
   */
  public Optional<Length> wallAhead() {
    return there(ahead);
  }

  /**
   * The wall behind the thrower.
   *
   * @return place, zero or negative, empty outdoors
   */
  public Optional<Length> wallBehind() {
    return there(behind);
  }

  /**
   * The ceiling.
   *
   * @return height above the floor, empty outdoors
   */
  public Optional<Length> ceiling() {
    return there(ceiling);
  }

  /** Refuses a hand that is not below the ceiling. */
  void holds(Length hand) {
    holds(hand.si());
  }

  /** Refuses a hand that is not below the ceiling, height in metres. */
  void holds(double hand) {
    if (!(hand < ceiling)) {
      throw new IllegalArgumentException(
          "height of the hand must be below the ceiling at " + Length.metres(ceiling) + ", was " + Length.metres(hand));
    }
  }

  private static Optional<Length> there(double value) {
    return Double.isInfinite(value) ? Optional.empty() : Optional.of(Length.metres(value));
  }

  double aheadAt() {
    return ahead;
  }

  double behindAt() {
    return behind;
  }

  double ceilingAt() {
    return ceiling;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Hall h
        && Double.compare(h.ahead, ahead) == 0
        && Double.compare(h.behind, behind) == 0
        && Double.compare(h.ceiling, ceiling) == 0;
  }

  @Override
  public int hashCode() {
    return (Double.hashCode(ahead) * 31 + Double.hashCode(behind)) * 31 + Double.hashCode(ceiling);
  }

  @Override
  public String toString() {
    String height = ceiling().map(c -> ", ceiling " + c).orElse("");
    return wallAhead().map(w -> "hall, wall ahead " + w).orElse("outdoors") + height;
  }
}
