// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

import java.util.Objects;

/**
 * The collocation solution of the lifting-line equation on plain doubles.
 *
 * <p>The circulation is a sine series in the angle θ, where the station is
 * <pre>{@code
 * y = (b/2)·cos θ            θ = 0 at the starboard tip, π/2 at the root
 * Γ(θ) = 2·b·V·Σ Aₙ·sin nθ
 * }</pre>
 * and at every station the section must carry what the circulation says it carries:
 * <pre>{@code
 * Σ Aₙ·sin nθ·(sin θ + n·μ) = μ·sin θ·α        μ(θ) = a₀·c/(4·b)
 * }</pre>
 * with α the local angle from zero lift, a₀ the section lift slope and c the chord.
 *
 * <p>The stations are θ = iπ/(2N), i = 1…N. On them the problem of a wing with equal halves falls apart into two
 * small ones: odd n for symmetric loading (N stations, root included) and even n for antisymmetric loading
 * (N − 1 stations, because at the root every even term is zero). The sines are all entries of one table.
 *
 * <p>Source: H. Glauert, <i>The Elements of Aerofoil and Airscrew Theory</i>, ch. XI (equation as set out in the
 * finite-wing notes of the University of Sydney).
 */
public final class LiftingLineKernel {
  private LiftingLineKernel() {}

  /**
   * Number of stations, and of terms, for one kind of symmetry.
   *
   * @param terms number of odd terms N
   * @param antisymmetric whether the even terms are meant
   * @return N for odd terms, N − 1 for even terms
   */
  public static int stations(int terms, boolean antisymmetric) {
    return antisymmetric ? terms - 1 : terms;
  }

  /**
   * Solves for the coefficients of one or more distributions of angle at once.
   *
   * @param terms number of odd terms N, at least 2
   * @param antisymmetric false for the odd terms n = 1, 3, …, 2N−1; true for the even terms n = 2, 4, …, 2N−2
   * @param mu μ = a₀·c/(4b) at the stations θ = iπ/(2N), i = 1…N [-], positive; the root value is ignored when
   *     antisymmetric
   * @param angles one array of local angles from zero lift [rad] per case, at the same stations
   * @return one array of coefficients per case: entry k holds A₂ₖ₊₁ when symmetric, A₂ₖ₊₂ when antisymmetric
   */
  public static double[][] coefficients(int terms, boolean antisymmetric, double[] mu, double[]... angles) {
    Objects.requireNonNull(mu, "mu");
    Objects.requireNonNull(angles, "angles");
    int size = stations(terms, antisymmetric);
    int cases = angles.length;
    double[] sine = sines(terms);
    double[][] row = new double[size][size + cases];
    for (int i = 0; i < size; i++) {
      double sinTheta = sine[i + 1];
      double[] r = row[i];
      for (int k = 0; k < size; k++) {
        int n = antisymmetric ? 2 * k + 2 : 2 * k + 1;
        r[k] = sine[n * (i + 1) % sine.length] * (sinTheta + n * mu[i]);
      }
      for (int j = 0; j < cases; j++) {
        r[size + j] = mu[i] * sinTheta * angles[j][i];
      }
    }
    eliminate(row, size, cases);
    double[][] result = new double[cases][size];
    for (int j = 0; j < cases; j++) {
      for (int k = size - 1; k >= 0; k--) {
        double sum = row[k][size + j];
        for (int m = k + 1; m < size; m++) {
          sum -= row[k][m] * result[j][m];
        }
        result[j][k] = sum / row[k][k];
      }
    }
    return result;
  }

  /** sin(kπ/(2N)) for one whole turn, k = 0…4N−1. */
  private static double[] sines(int terms) {
    double[] sine = new double[4 * terms];
    for (int k = 0; k <= terms; k++) {
      double s = Math.sin(k * Math.PI / (2 * terms));
      sine[k] = s;
      sine[2 * terms - k] = s;
      sine[(2 * terms + k) % sine.length] = -s;
      sine[(4 * terms - k) % sine.length] = -s;
    }
    sine[0] = 0;
    sine[2 * terms] = 0;
    return sine;
  }

  private static void eliminate(double[][] row, int size, int cases) {
    int width = size + cases;
    for (int k = 0; k < size; k++) {
      int best = k;
      for (int i = k + 1; i < size; i++) {
        if (Math.abs(row[i][k]) > Math.abs(row[best][k])) {
          best = i;
        }
      }
      double[] pivotRow = row[best];
      row[best] = row[k];
      row[k] = pivotRow;
      double inverse = 1 / pivotRow[k];
      for (int i = k + 1; i < size; i++) {
        double[] target = row[i];
        double factor = target[k] * inverse;
        for (int m = k + 1; m < width; m++) {
          target[m] -= factor * pivotRow[m];
        }
      }
    }
  }
}
