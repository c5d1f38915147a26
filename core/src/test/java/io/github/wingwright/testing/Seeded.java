// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.testing;

import java.util.Random;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * Points for property tests: the same seed gives the same points, on every machine ({@link Random} is specified to the
 * bit). Both ends of a range come first, because that is where properties break.
 */
public final class Seeded {
  private Seeded() {
  }

  /**
   * Numbers spread evenly: the two ends, then random ones between.
   *
   * @param seed  the seed
   * @param count how many, at least 2
   * @param lower the lower end, finite
   * @param upper the upper end, finite, above the lower
   * @return the numbers, all from lower to upper
   */
  public static DoubleStream doubles(long seed, int count, double lower, double upper) {
    check(count, lower, upper);
    Random random = new Random(seed);
    return DoubleStream.concat(
        DoubleStream.of(lower, upper),
        DoubleStream.generate(() -> clamp(lower + (upper - lower) * random.nextDouble(), lower, upper))
            .limit(count - 2));
  }

  /**
   * Positive numbers spread evenly over the orders of magnitude: the two ends, then random ones between.
   *
   * @param seed  the seed
   * @param count how many, at least 2
   * @param lower the lower end, positive
   * @param upper the upper end, finite, above the lower
   * @return the numbers, all from lower to upper
   */
  public static DoubleStream logUniform(long seed, int count, double lower, double upper) {
    check(count, lower, upper);
    if (!(lower > 0)) {
      throw new IllegalArgumentException("lower end must be positive, was " + lower);
    }
    Random random = new Random(seed);
    double start = Math.log(lower);
    double stretch = Math.log(upper) - start;
    return DoubleStream.concat(
        DoubleStream.of(lower, upper),
        DoubleStream.generate(() -> clamp(Math.exp(start + stretch * random.nextDouble()), lower, upper))
            .limit(count - 2));
  }

  /**
   * Points with several coordinates, each spread evenly over its own range: first the corner of all lower ends, then
   * that of all upper ends, then random ones between.
   *
   * @param seed   the seed
   * @param count  how many, at least 2
   * @param ranges for each coordinate its lower and upper end
   * @return the points, each a new array with one value for each range
   */
  public static Stream<double[]> points(long seed, int count, double[]... ranges) {
    for (double[] range : ranges) {
      if (range.length != 2) {
        throw new IllegalArgumentException("a range must have two ends, had " + range.length);
      }
      check(count, range[0], range[1]);
    }
    Random random = new Random(seed);
    return Stream.iterate(0, i -> i + 1).limit(count).map(i -> {
      double[] point = new double[ranges.length];
      for (int k = 0; k < point.length; k++) {
        double part = i == 0 ? 0 : i == 1 ? 1 : random.nextDouble();
        point[k] = clamp(ranges[k][0] + (ranges[k][1] - ranges[k][0]) * part, ranges[k][0], ranges[k][1]);
      }
      return point;
    });
  }

  private static void check(int count, double lower, double upper) {
    if (count < 2) {
      throw new IllegalArgumentException("count must be at least 2, was " + count);
    }
    if (!(Double.isFinite(lower) && Double.isFinite(upper) && lower < upper)) {
      throw new IllegalArgumentException("range must be finite and rising, was " + lower + " to " + upper);
    }
  }

  private static double clamp(double value, double lower, double upper) {
    return Math.max(lower, Math.min(upper, value));
  }
}
