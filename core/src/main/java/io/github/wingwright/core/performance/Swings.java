// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.performance;

import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Time;
import java.io.Serializable;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How the airspeed swings about that of the glide in one flight: the phugoid as a stopwatch would see it.
 *
 * <p>A turn is a greatest or least airspeed between throw and landing; two of them in a row are half a phugoid apart. A
 * change of less than half a per cent of the speed at the throw does not count.
 *
 * <pre>{@code
 * T = 2·(t_n − t_1)/(n − 1)        δ = ln(|ΔV_1|/|ΔV_m|)/(m − 1)        ζ = δ/√(π² + δ²)
 * }</pre>
 *
 * @param turns number n of greatest and least airspeeds
 * @param firstTurn time of the first, 0 if there is none
 * @param lastTurn time of the last, 0 if there is none
 * @param decrement δ, the natural logarithm by which a half swing is smaller than the one before; NaN never: 0 if unknown
 */
public record Swings(int turns, Time firstTurn, Time lastTurn, double decrement) implements Serializable {
  /** Refuses numbers that are none. */
  public Swings {
    Door.within(turns, 0, Integer.MAX_VALUE, "number of turns");
    Door.finite(firstTurn, "time of the first turn");
    Door.finite(lastTurn, "time of the last turn");
    Door.finite(decrement, "decrement");
  }

  /**
   * Whole phugoids seen between the first and the last turn.
   *
   * @return their number, halves included
   */
  public double phugoids() {
    return turns < 2 ? 0.0 : 0.5 * (turns - 1);
  }

  /**
   * Period of the phugoid.
   *
   * @return T, empty if there are fewer than two turns
   */
  public Optional<Time> period() {
    return turns < 2 ? Optional.empty() : Optional.of(lastTurn.minus(firstTurn).times(2.0 / (turns - 1)));
  }

  /**
   * Damping ratio.
   *
   * @return ζ, empty if there are fewer than three turns
   */
  public OptionalDouble dampingRatio() {
    return turns < 3 ? OptionalDouble.empty() : OptionalDouble.of(decrement / Math.hypot(Math.PI, decrement));
  }

  @Override
  public String toString() {
    if (turns < 2) {
      return "no phugoid seen";
    }
    String damping = turns < 3 ? "" : String.format(Locale.ROOT, ", damping %.2f", dampingRatio().orElseThrow());
    return String.format(Locale.ROOT, "%.1f phugoids of %.2f s%s", phugoids(), period().orElseThrow().seconds(), damping);
  }
}
