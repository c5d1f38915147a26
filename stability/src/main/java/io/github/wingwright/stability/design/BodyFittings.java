// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.mass.SkinVolume;

/**
 * What the fittings of a body add to the walls of its plain shape, on plain numbers: the walls along the slots of the tails
 * less the skin that the slots take, and the trough of the wing less the skin above it.
 *
 * <p>A slot h wide between walls w leaves the hollow of radius r_i = r − w without a strip of half width a = h/2 + w. A level
 * slot goes across the whole body, an upright one from the axis up:
 *
 * <pre>{@code
 * A_h = 4·(a·r_i − h/2·r)        A_v = 2·(a·(r_i − a) − h/2·(r − h/2))        V = ∫ A dx over the root chord, + front
 * }</pre>
 *
 * <p>The trough, of floor f over the axis and two sides of slope Γ, takes from a circle of radius R what lies above it; the
 * hollow is cut by its floor w lower down:
 *
 * <pre>{@code
 * A_c(R, f) = R²·(½π − φ) − f·y_s,   y_s = (√(R²·(1 + tan²Γ) − f²) − f·tan Γ)·cos²Γ,   φ = acos(y_s/R)
 * A_s = A_c(R − w, f − w/cos Γ) − A_c(R, f)
 * }</pre>
 *
 * <p>Source: geometry. Slots are reckoned with the wall straight ahead, which leaves out the rounding of the last few
 * millimetres; the joints of a divided body, the rib of the mark and the corners of the trough are left out (under 0.05 g).
 */
final class BodyFittings {
  /** Gap to each side of a plate in its slot [m], as the parts are made. */
  static final double PLAY = 0.1e-3;

  /** Travel of the wing in its seat either way, over the mean chord, as the parts are made. */
  static final double TRAVEL = 0.06;

  // Gauss and Legendre of three places, on the square root of the distance from the end: bodies end round
  private static final double[] PLACE = {0.1127016653792583, 0.5, 0.8872983346207417};
  private static final double[] WEIGHT = {0.2777777777777778, 0.4444444444444444, 0.2777777777777778};

  private static final int MANY = 400;

  private BodyFittings() {}

  /**
   * The walls of the plain body, by Steiner's formula; the whole body where they meet in its middle.
   *
   * @param shape the family of bodies
   * @param length L [m]
   * @param diameter d [m]
   * @param wall w [m]
   * @return V [m³]
   */
  static double walls(BodyShape shape, double length, double diameter, double wall) {
    double volume = shape.volume(length, diameter);
    if (2.0 * wall >= diameter) {
      return volume;
    }
    double surface = shape.wettedArea(length, diameter) + shape.baseArea(length, diameter);
    return Math.min(
        volume, SkinVolume.ofSmoothBody(surface, shape.curvatureIntegral(length, diameter), wall));
  }

  /**
   * What a slot adds to the walls.
   *
   * @param shape the family of bodies
   * @param length L [m]
   * @param diameter d [m]
   * @param chord length of the slot from the aft end, at most L [m]
   * @param width h [m]
   * @param wall w [m]
   * @param level whether it is the level one across the body, else the upright one above the axis
   * @return V [m³], not negative
   */
  static double slot(
      BodyShape shape, double length, double diameter, double chord, double width, double wall, boolean level) {
    double sum = 0.0;
    for (int i = 0; i < PLACE.length; i++) {
      double s = PLACE[i];
      double r = shape.radius(Math.max(0.0, length - chord * s * s), length, diameter);
      sum += WEIGHT[i] * 2.0 * s * area(r, width, wall, level);
    }
    return Math.max(0.0, chord * sum + front(shape, length, diameter, chord, width, wall, level));
  }

  /** The same by many places, for the residual of the working. */
  static double slotFinely(
      BodyShape shape, double length, double diameter, double chord, double width, double wall, boolean level) {
    double sum = 0.0;
    for (int i = 0; i < MANY; i++) {
      double r = shape.radius(Math.max(0.0, length - chord * (i + 0.5) / MANY), length, diameter);
      sum += area(r, width, wall, level) / MANY;
    }
    return Math.max(0.0, chord * sum + front(shape, length, diameter, chord, width, wall, level));
  }

  private static double area(double r, double width, double wall, boolean level) {
    double a = 0.5 * width + wall;
    double inside = Math.max(a, r - wall);
    return level
        ? 4.0 * (a * inside - 0.5 * width * r)
        : 2.0 * (a * (inside - a) - 0.5 * width * Math.max(0.0, r - 0.5 * width));
  }

  /** The wall across the forward end of a slot. */
  private static double front(
      BodyShape shape, double length, double diameter, double chord, double width, double wall, boolean level) {
    double r = shape.radius(Math.max(0.0, length - chord), length, diameter);
    double ahead = Math.max(0.0, r - wall) * wall * (width + 0.5 * Math.PI * wall);
    return (level ? 2.0 : 1.0) * ahead;
  }

  /**
   * What the trough adds.
   *
   * @param radius R [m]
   * @param floor f [m]
   * @param slope tangent of the dihedral
   * @param wall w [m]
   * @param run its length [m]
   * @return V [m³], ends counted; negative where the skin above weighed more
   */
  static double seat(double radius, double floor, double slope, double wall, double run) {
    if (floor >= radius || slope < 0.0) {
      return 0.0;
    }
    double inner = radius - wall;
    double lower = floor - wall * Math.sqrt(1.0 + slope * slope);
    double face = Math.max(0.0, above(inner, floor, slope));
    return run * (above(inner, lower, slope) - above(radius, floor, slope)) + 2.0 * wall * face;
  }

  /** The same by strips, for the residual of the working. */
  static double seatFinely(double radius, double floor, double slope, double wall, double run) {
    if (floor >= radius || slope < 0.0) {
      return 0.0;
    }
    double sum = 0.0;
    double inner = radius - wall;
    double lower = floor - wall * Math.sqrt(1.0 + slope * slope);
    for (int i = 0; i < MANY; i++) {
      double y = (i + 0.5) / MANY * radius;
      double up = slope * y;
      double skin = Math.max(0.0, Math.sqrt(radius * radius - y * y) - floor - up);
      double half = Math.sqrt(Math.max(0.0, inner * inner - y * y));
      sum += run * (Math.max(0.0, half - lower - up) - skin) + 2.0 * wall * Math.max(0.0, half - floor - up);
    }
    return 2.0 * sum * radius / MANY;
  }

  /** Area of a circle above two lines that rise from its middle at a height to both sides [m²]. */
  static double above(double radius, double floor, double slope) {
    if (floor >= radius || radius <= 0.0) {
      return 0.0;
    }
    double square = 1.0 + slope * slope;
    double y = (Math.sqrt(Math.max(0.0, radius * radius * square - floor * floor)) - floor * slope) / square;
    double angle = Math.acos(Math.min(1.0, y / radius));
    double up = floor + slope * y < 0.0 ? -angle : angle;
    return radius * radius * (0.5 * Math.PI - up) - floor * y;
  }
}
