// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import java.util.List;

/** Parts laid out in rows along y, one row behind the other along x, each as deep as the longest part in it. */
final class PartRows {
  /** Free space between parts and between rows [m]. */
  static final double GAP = 5e-3;

  /** What a row may be beyond its limit, over the limit: the rounding of sums. */
  private static final double SLACK = 1e-9;

  private final List<Part> parts;
  private final double longest;

  /**
   * The rows of some parts.
   *
   * @param parts the parts, in the order in which they are laid
   * @param bed longest row [m]; where it is not a number, rows make up about a square
   */
  PartRows(List<Part> parts, double bed) {
    this.parts = parts;
    longest = Double.isNaN(bed) ? side(parts) : bed;
  }

  /** Side of a square as large as the boxes with their gaps together, at least as wide as the widest. */
  private static double side(List<Part> parts) {
    double area = 0.0;
    double widest = 0.0;
    for (Part part : parts) {
      area += (length(part) + GAP) * (width(part) + GAP);
      widest = Math.max(widest, width(part));
    }
    return Math.max(widest, Math.sqrt(area));
  }

  private static double length(Part part) {
    return part.check().box().length().si();
  }

  private static double width(Part part) {
    return part.check().box().width().si();
  }

  /** Where the least corner of the box of each part lies: x and y [m]. */
  double[][] places() {
    double[][] places = new double[parts.size()][2];
    double x = 0.0;
    double y = 0.0;
    double deepest = 0.0;
    for (int i = 0; i < places.length; i++) {
      Part part = parts.get(i);
      if (y > 0.0 && y + width(part) > longest * (1.0 + SLACK)) {
        x += deepest + GAP;
        y = 0.0;
        deepest = 0.0;
      }
      places[i][0] = x;
      places[i][1] = y;
      y += width(part) + GAP;
      deepest = Math.max(deepest, length(part));
    }
    return places;
  }
}
