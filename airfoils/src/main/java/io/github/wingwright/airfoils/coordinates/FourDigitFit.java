// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils.coordinates;

import io.github.wingwright.airfoils.Contour;
import io.github.wingwright.airfoils.Naca4;
import io.github.wingwright.airfoils.Surface;
import java.util.Locale;
import java.util.Objects;

/**
 * The 4-digit section nearest to an outline, in the sense of least squares of the ordinates at the outline's own abscissas.
 *
 * <p>Gauss-Newton iteration with numerical derivatives, from the camber and thickness seen in the outline. The parameters
 * are camber, its position, thickness and the thickness of the trailing edge.
 *
 * @param section the nearest section
 * @param rootMeanSquare root mean square of the distances in ordinate [chords]
 * @param largest the largest distance [chords]
 */
public record FourDigitFit(Naca4 section, double rootMeanSquare, double largest) {
  public FourDigitFit {
    Objects.requireNonNull(section, "section");
  }

  /** Fits an outline on a chord of 1. */
  public static FourDigitFit to(Contour contour) {
    Objects.requireNonNull(contour, "contour");
    double[] p = firstGuess(contour);
    int n = contour.size();
    double best = squares(contour, p);
    double damping = 1e-6;
    for (int iteration = 0; iteration < 100; iteration++) {
      double[][] normal = new double[4][5];
      double[] base = residuals(contour, p);
      double[][] slopes = new double[4][];
      for (int k = 0; k < 4; k++) {
        double[] q = p.clone();
        double e = 1e-6;
        q[k] += e;
        double[] moved = residuals(contour, clamp(q));
        slopes[k] = new double[n];
        for (int i = 0; i < n; i++) {
          slopes[k][i] = (moved[i] - base[i]) / e;
        }
      }
      for (int a = 0; a < 4; a++) {
        for (int b = 0; b < 4; b++) {
          for (int i = 0; i < n; i++) {
            normal[a][b] += slopes[a][i] * slopes[b][i];
          }
        }
        for (int i = 0; i < n; i++) {
          normal[a][4] -= slopes[a][i] * base[i];
        }
        normal[a][a] = normal[a][a] * (1 + damping) + 1e-12;
      }
      double[] step = solve(normal);
      double[] q = p.clone();
      double moved = 0;
      for (int k = 0; k < 4; k++) {
        q[k] += step[k];
        moved = Math.max(moved, Math.abs(step[k]));
      }
      q = clamp(q);
      double now = squares(contour, q);
      if (now <= best) {
        p = q;
        best = now;
        damping = Math.max(damping / 10, 1e-9);
        if (moved < 1e-10) {
          break;
        }
      } else {
        damping = Math.max(damping * 10, 1e-4);
        if (damping > 1e8) {
          break;
        }
      }
    }
    double largest = 0;
    for (double r : residuals(contour, p)) {
      largest = Math.max(largest, Math.abs(r));
    }
    return new FourDigitFit(section(p), Math.sqrt(best / n), largest);
  }

  private static double[] firstGuess(Contour contour) {
    double highest = 0;
    double lowest = 0;
    for (int i = 0; i < contour.size(); i++) {
      highest = Math.max(highest, contour.y(i));
      lowest = Math.min(lowest, contour.y(i));
    }
    double camber = Math.abs(highest + lowest) / 2 > 1e-4 ? (highest + lowest) / 2 : 0;
    return clamp(new double[] {camber, 0.4, highest - lowest, contour.trailingEdgeGap()});
  }

  private static double[] clamp(double[] p) {
    double t = Math.min(Math.max(p[2], 0.005), 0.49);
    return new double[] {
      Math.min(Math.max(p[0], 0), 0.0999), Math.min(Math.max(p[1], 0.06), 0.94), t, Math.min(Math.max(p[3], 0), 0.45 * t)
    };
  }

  private static Naca4 section(double[] p) {
    return Naca4.of(p[0], p[1], p[2]).withTrailingEdgeThickness(p[3]);
  }

  private static double[] residuals(Contour contour, double[] p) {
    Naca4 section = section(p);
    int nose = contour.noseIndex();
    double[] r = new double[contour.size()];
    for (int i = 0; i < r.length; i++) {
      double x = Math.min(Math.max(contour.x(i), 0), 1);
      r[i] = section.ordinate(i <= nose ? Surface.UPPER : Surface.LOWER, x) - contour.y(i);
    }
    return r;
  }

  private static double squares(Contour contour, double[] p) {
    double sum = 0;
    for (double r : residuals(contour, p)) {
      sum += r * r;
    }
    return sum;
  }

  /** Gauss elimination of four equations with the right side as fifth column. */
  private static double[] solve(double[][] a) {
    for (int k = 0; k < 4; k++) {
      int pivot = k;
      for (int i = k + 1; i < 4; i++) {
        if (Math.abs(a[i][k]) > Math.abs(a[pivot][k])) {
          pivot = i;
        }
      }
      double[] row = a[pivot];
      a[pivot] = a[k];
      a[k] = row;
      for (int i = k + 1; i < 4; i++) {
        double f = a[i][k] / row[k];
        for (int j = k; j < 5; j++) {
          a[i][j] -= f * row[j];
        }
      }
    }
    double[] x = new double[4];
    for (int i = 3; i >= 0; i--) {
      double sum = a[i][4];
      for (int j = i + 1; j < 4; j++) {
        sum -= a[i][j] * x[j];
      }
      x[i] = sum / a[i][i];
    }
    return x;
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "camber %.2f %% at %.1f %%, thickness %.2f %%, residual %.1e",
        100 * section.nominalCamber(), 100 * section.nominalCamberPosition(), 100 * section.nominalThickness(),
        rootMeanSquare);
  }
}
