// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils;

import java.util.Locale;

/**
 * What a section is as a solid, for a chord of 1. Multiply lengths by the chord, the area by its square, the second
 * moments by its fourth power.
 *
 * @param area enclosed area [chord²]
 * @param centroidX abscissa of the centroid [chords]
 * @param centroidY ordinate of the centroid [chords]
 * @param secondMomentX ∫y² dA about the centroid [chord⁴]: bending up and down
 * @param secondMomentY ∫x² dA about the centroid [chord⁴]: bending fore and aft
 * @param productOfInertia ∫x·y dA about the centroid [chord⁴]
 * @param upperLength length of the upper surface from nose to trailing edge [chords]
 * @param lowerLength length of the lower surface from nose to trailing edge [chords]
 * @param baseLength length of the blunt base [chords]
 */
public record SectionProperties(
    double area,
    double centroidX,
    double centroidY,
    double secondMomentX,
    double secondMomentY,
    double productOfInertia,
    double upperLength,
    double lowerLength,
    double baseLength) {
  /** Length of the whole outline, base included [chords]. */
  public double perimeter() {
    return upperLength + lowerLength + baseLength;
  }

  /**
   * Properties of a section, by Green's theorem round its outline.
   *
   * <pre>{@code
   * A = ½·∮(x·dy − y·dx),  ∫x dA = ½·∮x²·dy,  ∫y dA = −½·∮y²·dx
   * ∫x² dA = ⅓·∮x³·dy,  ∫y² dA = −⅓·∮y³·dx,  ∫x·y dA = ½·∮x²·y·dy
   * }</pre>
   * The variable of integration is √x, in which a round nose is smooth, and the pieces end where a derivative jumps.
   */
  static SectionProperties of(ComposedSection section) {
    double[] sum = new double[6];
    double upper = addSide(section, Surface.UPPER, sum);
    double lower = addSide(section, Surface.LOWER, sum);
    SurfacePoint from = section.point(Surface.LOWER, 1);
    SurfacePoint to = section.point(Surface.UPPER, 1);
    double dx = to.x() - from.x();
    double dy = to.y() - from.y();
    for (int i = 0; i < 6; i++) {
      int k = i;
      sum[i] += GaussLegendre.integrate(
          u -> integrand(k, from.x() + u * dx, from.y() + u * dy, dx, dy), 0, 1);
    }
    double area = sum[0];
    double cx = sum[1] / area;
    double cy = sum[2] / area;
    return new SectionProperties(area, cx, cy, sum[4] - area * cy * cy, sum[3] - area * cx * cx,
        sum[5] - area * cx * cy, upper, lower, Math.hypot(dx, dy));
  }

  private static double addSide(ComposedSection section, Surface side, double[] sum) {
    double[] edges = section.rootBreaks();
    int parts = 4;
    for (int i = 0; i < 6; i++) {
      int k = i;
      // The outline runs counterclockwise: the upper side from the trailing edge to the nose, so its sign turns.
      sum[i] -= side.sign() * GaussLegendre.integrate(s -> {
        double[] p = section.atRoot(side, s);
        return integrand(k, p[0], p[1], p[2], p[3]);
      }, edges, parts);
    }
    return GaussLegendre.integrate(s -> {
      double[] p = section.atRoot(side, s);
      return Math.hypot(p[2], p[3]);
    }, edges, parts);
  }

  private static double integrand(int k, double x, double y, double dx, double dy) {
    return switch (k) {
      case 0 -> 0.5 * (x * dy - y * dx);
      case 1 -> 0.5 * x * x * dy;
      case 2 -> -0.5 * y * y * dx;
      case 3 -> x * x * x * dy / 3;
      case 4 -> -y * y * y * dx / 3;
      default -> 0.5 * x * x * y * dy;
    };
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "area %.4f chord², centroid at %.4f, %.4f, outline %.4f chords",
        area, centroidX, Math.rint(1e4 * centroidY) / 1e4 + 0.0, perimeter());
  }
}
