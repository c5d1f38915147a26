// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.derivatives;

import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.quantity.Length;
import java.util.List;
import java.util.Objects;
import java.util.function.DoubleBinaryOperator;

/**
 * What a wing does while the nose goes up: by strips, each a thin aerofoil in steady rotation.
 *
 * <p>A strip lifts at its quarter chord with the angle that its three-quarter chord meets, and the rotation bends the flow
 * over it like camber does, which gives a couple of its own (thin-aerofoil theory: A₀ + ½·A₁ and −π/4·A₁ of the rotation).
 * With distances from the centre of gravity, aft positive, x̄_¾ the mean of the three-quarter chords over the area, and
 * q̂ = q·c̄/(2V):
 *
 * <pre>{@code
 * C_Lq = 2·a·x̄_¾/c̄
 * C_mq = −(2/(S·c̄²))·∫ ((a·x̄_¾ + a_3·(x_¾ − x̄_¾))·x_¼ + π/8·c²)·c dy        a_3 = a/(1 + 2·a/(π·A))
 * }</pre>
 *
 * <p>The mean angle lifts with the slope a of the wing, what differs from strip to strip with less, as twist does: with the
 * slope a_3 of the third harmonic of an elliptic wing. Small beside a tail, this is all the damping that a tailless aircraft
 * has; sweep makes it much larger.
 */
public final class WingPitchRate {
  private static final int POINTS = 40;

  private WingPitchRate() {}

  /**
   * Lift due to pitch rate.
   *
   * @param planform outline of the wing
   * @param liftSlope lift slope of the wing a [1/rad]
   * @param behindRoot distance of the centre of gravity behind the leading edge of the root [m]
   * @return C_Lq [-]: 2·a·(¾ − h) for a rectangular wing, 4.5 at slope 4.5 and h ¼
   */
  public static double lift(Planform planform, double liftSlope, double behindRoot) {
    Objects.requireNonNull(planform, "planform");
    return integral(planform, liftSlope, behindRoot, false);
  }

  /**
   * Pitching moment due to pitch rate.
   *
   * @param planform outline of the wing
   * @param liftSlope lift slope of the wing a [1/rad]
   * @param behindRoot distance of the centre of gravity behind the leading edge of the root [m]
   * @return C_mq [-], negative: −π/4 for a rectangular wing with the centre of gravity at its quarter chord
   */
  public static double moment(Planform planform, double liftSlope, double behindRoot) {
    Objects.requireNonNull(planform, "planform");
    return integral(planform, liftSlope, behindRoot, true);
  }

  private static double integral(Planform planform, double slope, double behindRoot, boolean moment) {
    double mean = planform.meanAerodynamicChord().si();
    double half = 0.5 * planform.area().si();
    double middle = strips(planform, behindRoot, (c, leading) -> leading + 0.75 * c) / half;
    if (!moment) {
      return 2 * slope * middle / mean;
    }
    double third = slope / (1 + 2 * slope / (Math.PI * planform.aspectRatio()));
    double sum = strips(planform, behindRoot, (c, leading) -> {
      double follows = slope * middle + third * (leading + 0.75 * c - middle);
      return follows * (leading + 0.25 * c) + Math.PI / 8 * c * c;
    });
    return -2 * sum / (half * mean * mean);
  }

  /** Integral over the area of one half of what a strip has, given its chord and its leading edge. */
  private static double strips(Planform planform, double behindRoot, DoubleBinaryOperator strip) {
    List<Length> stations = planform.stations();
    double sum = 0;
    for (int i = 1; i < stations.size(); i++) {
      double from = stations.get(i - 1).si();
      double width = (stations.get(i).si() - from) / POINTS;
      for (int k = 0; k < POINTS; k++) {
        Length at = Length.metres(from + (k + 0.5) * width);
        double c = planform.chordAt(at).si();
        sum += width * c * strip.applyAsDouble(c, planform.leadingEdgeAt(at).si() - behindRoot);
      }
    }
    return sum;
  }
}
