// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

import java.util.SplittableRandom;

/**
 * The longest bar that goes into a space: a rectangle at a slant in a rectangle, a bar with width and depth in a box.
 *
 * <p>A rectangle of length p and width w that lies at an angle θ to the side a of another touches all four of its sides if
 *
 * <pre>{@code
 * a = p·cos θ + w·sin θ        b = p·sin θ + w·cos θ
 * }</pre>
 *
 * <p>Sum and difference of the two free p of θ, because (cos θ + sin θ)² + (cos θ − sin θ)² = 2:
 *
 * <pre>{@code
 * ((a + b)/(p + w))² + ((a − b)/(p − w))² = 2        cos θ + sin θ = (a + b)/(p + w)
 * }</pre>
 *
 * <p>The left side falls with p and is convex, so Newton's method from p = a rises to the root without passing it. In a
 * square p = √2·a − w; without width p is the diagonal. The condition for a rectangle in a rectangle is W. B. Carver's,
 * American Mathematical Monthly 64 (1957), p. 114 (from memory).
 */
public final class Inscribed {
  private static final int MOST_ROUNDS = 60;
  private static final double SETTLED = 1e-15;

  /** Angles of the coarse scan of the bar's directions and rolls; finer scans find nothing longer in the tests. */
  private static final int SCAN = 13;

  private static final int ROLLS = 18;
  private static final int SEEDS = 8;
  private static final int CLIMB = 8000;
  private static final long CLIMB_SEED = 20_260_101L;

  private Inscribed() {}

  /**
   * The longest rectangle of a width in another rectangle, straight or at a slant.
   *
   * @param a one side [m], positive
   * @param b the other side [m], positive
   * @param width width of the rectangle inside w [m], not negative
   * @return its length p [m]; 0 if it is wider than the shorter side. 250 mm × 210 mm take 297.1082 mm of 30 mm width
   */
  public static double longestRectangle(double a, double b, double width) {
    double longer = Math.max(a, b);
    double shorter = Math.min(a, b);
    if (width > shorter) {
      return 0.0;
    }
    if (longer == shorter) {
      return Math.max(longer, Math.sqrt(2.0) * longer - width);
    }
    double sum = longer + shorter;
    double difference = longer - shorter;
    double p = longer;
    for (int i = 0; i < MOST_ROUNDS; i++) {
      double u = sum / (p + width);
      double v = difference / (p - width);
      double excess = u * u + v * v - 2.0;
      if (excess <= 0.0) {
        return p;
      }
      double step = 0.5 * excess / (u * u / (p + width) + v * v / (p - width));
      p += step;
      if (step <= SETTLED * p) {
        return p;
      }
    }
    return p;
  }

  /**
   * The angle at which the longest rectangle lies.
   *
   * @param a one side [m], positive
   * @param b the other side [m], positive
   * @param width width of the rectangle inside [m], not negative, at most the shorter side
   * @return angle θ from the longer side [rad], 0 if it lies straight; 38.9215° for 250 mm × 210 mm and 30 mm
   */
  public static double slant(double a, double b, double width) {
    double p = longestRectangle(a, b, width);
    if (p <= Math.max(a, b)) {
      return 0.0;
    }
    return 0.25 * Math.PI - Math.acos(Math.min(1.0, (a + b) / ((p + width) * Math.sqrt(2.0))));
  }

  /**
   * The longest bar of a width and a depth in a box, in any attitude: along the diagonal of its body if that is longest.
   *
   * <p>With the bar's directions u (along), v (across) and n (deep) as unit vectors, the bar fits if l·|u_i| + w·|v_i| +
   * d·|n_i| is at most the side of the box along each axis i. The attitude is found by a scan of all of them and a closer
   * look around the best; every bar that is returned does fit, and one longer by more than a part in 10⁴ was never found.
   *
   * @param a one side of the box [m], positive
   * @param b another side [m], positive
   * @param c the third side [m], positive
   * @param width width of the bar w [m], not negative
   * @param depth depth of the bar d [m], not negative
   * @return its length l [m]; 0 if none fits. A box of 250 mm × 210 mm × 220 mm takes 393.7004 mm of a bar without width
   */
  public static double longestBar(double a, double b, double c, double width, double depth) {
    return bar(a, b, c, width, depth).length();
  }

  /**
   * The longest bar with its attitude.
   *
   * @param a one side of the box [m], positive
   * @param b another side [m], positive
   * @param c the third side [m], positive
   * @param width width of the bar w [m], not negative
   * @param depth depth of the bar d [m], not negative
   * @return the bar; of length 0 if none fits
   */
  public static Bar bar(double a, double b, double c, double width, double depth) {
    double[] box = {a, b, c};
    double[][] seeds = new double[SEEDS][4];
    for (double[] seed : seeds) {
      seed[3] = Double.NEGATIVE_INFINITY;
    }
    double quarter = 0.5 * Math.PI;
    for (int i = 0; i < SCAN; i++) {
      for (int j = 0; j < SCAN; j++) {
        for (int k = 0; k < ROLLS; k++) {
          keep(seeds, box, width, depth, quarter * i / (SCAN - 1), quarter * j / (SCAN - 1), Math.PI * k / ROLLS);
        }
      }
    }
    Bar longest = new Bar(0.0, 0.0, 0.0, 0.0);
    for (double[] seed : seeds) {
      double[] found = climbed(box, width, depth, seed);
      if (found[3] > longest.length()) {
        longest = new Bar(found[3], folded(found[0]), folded(found[1]), found[2]);
      }
    }
    return longest;
  }

  /** The same direction in the first octant: the box is symmetric. */
  private static double folded(double angle) {
    double positive = Math.abs(angle);
    return positive > 0.5 * Math.PI ? Math.PI - positive : positive;
  }

  /**
   * A bar in a box.
   *
   * @param length its length [m]
   * @param azimuth angle of its projection on the plane of a and b, from a [rad]
   * @param elevation angle from that plane [rad]
   * @param roll angle of its width from that plane, about its length [rad]; mirrored with the direction
   */
  public record Bar(double length, double azimuth, double elevation, double roll) {}

  /** Keeps an attitude in the place of the worst seed, or of the one that it is a neighbour of. */
  private static void keep(
      double[][] seeds, double[] box, double width, double depth, double azimuth, double elevation, double roll) {
    double length = lengthAt(box, width, depth, azimuth, elevation, roll);
    double[] place = seeds[0];
    for (double[] seed : seeds) {
      boolean near =
          Math.abs(seed[0] - azimuth) < 0.2 && Math.abs(seed[1] - elevation) < 0.2 && Math.abs(seed[2] - roll) < 0.27;
      if (near && seed[3] > Double.NEGATIVE_INFINITY) {
        place = seed;
        break;
      }
      if (seed[3] < place[3]) {
        place = seed;
      }
    }
    if (length > place[3]) {
      place[0] = azimuth;
      place[1] = elevation;
      place[2] = roll;
      place[3] = length;
    }
  }

  /**
   * Climbs from a seed by random turns that narrow slowly: the best attitude lies on a ridge
   * where all three sides bind, which a search along fixed axes would not follow. The same numbers in every run.
   */
  private static double[] climbed(double[] box, double width, double depth, double[] seed) {
    double[] best = seed.clone();
    SplittableRandom random = new SplittableRandom(CLIMB_SEED);
    double step = 0.2;
    for (int i = 0; i < CLIMB && step > 1e-10; i++) {
      double azimuth = best[0] + step * random.nextGaussian();
      double elevation = best[1] + step * random.nextGaussian();
      double roll = best[2] + step * random.nextGaussian();
      double length = lengthAt(box, width, depth, azimuth, elevation, roll);
      if (length > best[3]) {
        best[0] = azimuth;
        best[1] = elevation;
        best[2] = roll;
        best[3] = length;
        step = Math.min(0.3, 1.2 * step);
      } else {
        step *= 0.997;
      }
    }
    return best;
  }

  /** The longest bar in one attitude; negative or zero if its section alone does not fit. */
  private static double lengthAt(
      double[] box, double width, double depth, double azimuth, double elevation, double roll) {
    double ca = Math.cos(azimuth);
    double sa = Math.sin(azimuth);
    double ce = Math.cos(elevation);
    double se = Math.sin(elevation);
    double cr = Math.cos(roll);
    double sr = Math.sin(roll);
    double x = along(box[0], ce * ca, width * (-cr * sa - sr * se * ca), depth * (sr * sa - cr * se * ca));
    double y = along(box[1], ce * sa, width * (cr * ca - sr * se * sa), depth * (-sr * ca - cr * se * sa));
    double z = along(box[2], se, width * sr * ce, depth * cr * ce);
    return Math.min(x, Math.min(y, z));
  }

  private static double along(double side, double direction, double across, double deep) {
    double room = side - Math.abs(across) - Math.abs(deep);
    double share = Math.abs(direction);
    if (room < 0.0) {
      return room;
    }
    return share < 1e-12 ? Double.POSITIVE_INFINITY : room / share;
  }
}
