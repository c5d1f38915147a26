// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils.potential;

import io.github.wingwright.airfoils.Contour;

/**
 * The straight panels of a panel method: nodes, lengths, directions.
 *
 * <p>A polygon through points of a curve lies inside it, and this alone costs more accuracy than everything else in
 * the method. The nodes therefore stand out from the given points along the normal, by a twelfth of the second
 * difference: then the polygon has the area of the curve. Measured on the 4-digit sections at 200 panels, this
 * divides the error of lift by four (2412 at 4°: from 5.4·10⁻⁵ to 1.5·10⁻⁵).
 */
final class Outline {
  /** A trailing edge thinner than this [chords] is sharp. */
  static final double SHARP = 1e-6;

  final int nodes;
  final double[] x;
  final double[] y;
  final double[] length;
  final double[] dirX;
  final double[] dirY;
  final boolean blunt;

  Outline(Contour contour) {
    nodes = contour.size();
    double[] px = contour.xs();
    double[] py = contour.ys();
    x = contour.xs();
    y = contour.ys();
    for (int i = 1; i < nodes - 1; i++) {
      double tx = px[i + 1] - px[i - 1];
      double ty = py[i + 1] - py[i - 1];
      double bx = (px[i - 1] - 2 * px[i] + px[i + 1]) / 12;
      double by = (py[i - 1] - 2 * py[i] + py[i + 1]) / 12;
      double along = (bx * tx + by * ty) / (tx * tx + ty * ty);
      x[i] -= bx - along * tx;
      y[i] -= by - along * ty;
    }
    blunt = contour.trailingEdgeGap() > SHARP;
    if (!blunt) {
      x[0] = 0.5 * (x[0] + x[nodes - 1]);
      y[0] = 0.5 * (y[0] + y[nodes - 1]);
      x[nodes - 1] = x[0];
      y[nodes - 1] = y[0];
    }
    length = new double[nodes - 1];
    dirX = new double[nodes - 1];
    dirY = new double[nodes - 1];
    for (int j = 0; j < nodes - 1; j++) {
      double ex = x[j + 1] - x[j];
      double ey = y[j + 1] - y[j];
      length[j] = Math.hypot(ex, ey);
      if (!(length[j] > 0)) {
        throw new IllegalArgumentException("the points of an outline must differ, point " + (j + 1)
            + " repeats the one before it at (" + x[j] + ", " + y[j] + ")");
      }
      dirX[j] = ex / length[j];
      dirY[j] = ey / length[j];
    }
  }
}
