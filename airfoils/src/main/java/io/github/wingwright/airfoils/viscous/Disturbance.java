// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils.viscous;

import java.util.Locale;

/**
 * How disturbed the flow is: what makes laminar layers turn turbulent.
 *
 * @param criticalAmplification exponent N of the growth of waves at which transition happens [1], 1 to 15: about 9 in a
 *     quiet wind tunnel, 11 to 13 in still air, 4 to 7 in rough air (common practice, no source)
 * @param upperTrip chord station at which the upper layer is forced to be turbulent [chords]; infinite for none
 * @param lowerTrip the same for the lower layer [chords]
 */
public record Disturbance(double criticalAmplification, double upperTrip, double lowerTrip) {
  /** A quiet wind tunnel, no trips: N = 9. */
  public static final Disturbance QUIET = new Disturbance(9, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);

  /** Refuses values without meaning. */
  public Disturbance {
    if (!(criticalAmplification >= 1 && criticalAmplification <= 15)) {
      throw new IllegalArgumentException(
          "critical amplification must be from 1 to 15, was " + criticalAmplification);
    }
    if (!(upperTrip >= 0.01 && lowerTrip >= 0.01)) {
      throw new IllegalArgumentException("a trip must lie at 0.01 chord or further aft (infinite for none), was "
          + Math.min(upperTrip, lowerTrip));
    }
  }

  /** The same air with other background disturbances. */
  public Disturbance withCriticalAmplification(double exponent) {
    return new Disturbance(exponent, upperTrip, lowerTrip);
  }

  /** The same air with trips at these stations [chords]; infinite for none. */
  public Disturbance withTrips(double upper, double lower) {
    return new Disturbance(criticalAmplification, upper, lower);
  }

  private static String trip(double station) {
    return Double.isInfinite(station) ? "none" : String.format(Locale.ROOT, "%.4g chord", station);
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "N = %.4g, trips: upper %s, lower %s",
        criticalAmplification, trip(upperTrip), trip(lowerTrip));
  }
}
