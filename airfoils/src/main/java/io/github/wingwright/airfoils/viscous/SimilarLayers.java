// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils.viscous;

/**
 * The family of similar laminar boundary layers (Falkner and Skan), as functions of the shape factor H = δ* / θ.
 *
 * <pre>{@code
 * f''' + f·f'' + β·(1 − f'²) = 0
 * energy shape     H*(H)      = energy thickness / θ
 * shear            S(H)       = ½·cf·Reθ
 * dissipation      D(H)       = cD·Reθ
 * }</pre>
 * The family goes through separation (H = 4.029) into reversed flow, which is what a laminar separated layer needs.
 *
 * <p>The 49 knots were solved for this library (collocation, residual 10⁻⁹) at equal steps of ln(H − 1) from H = 2.1 to
 * 25; between them a cubic keeps 10⁻⁵. Outside that range the end values are used. Sources: Falkner and Skan,
 * Phil. Mag. 12, 1931; the reversed branch: Stewartson, Proc. Camb. Phil. Soc. 50, 1954. Example: the flat plate,
 * H = 2.5911, has H* = 1.57258, S = 0.22052, D = 0.17340.
 */
public final class SimilarLayers {
  private static final double FIRST = Math.log(1.1);
  private static final double STEP = (Math.log(24) - FIRST) / 48;

  private static final double[] ENERGY = {
    1.649040, 1.633969, 1.619546, 1.605870, 1.593002, 1.580985, 1.569857, 1.559654, 1.550411, 1.542161,
    1.534941, 1.528784, 1.523723, 1.519793, 1.517027, 1.515458, 1.515118, 1.516040, 1.518256, 1.521798,
    1.526699, 1.532991, 1.540708, 1.549883, 1.560553, 1.572753, 1.586521, 1.601897, 1.618922, 1.637639,
    1.658095, 1.680337, 1.704417, 1.730389, 1.758310, 1.788242, 1.820249, 1.854399, 1.890765, 1.929424,
    1.970458, 2.013952, 2.059998, 2.108692, 2.160136, 2.214438, 2.271710, 2.332073, 2.395653
  };
  private static final double[] SHEAR = {
    0.417860, 0.380775, 0.344774, 0.309878, 0.276179, 0.243795, 0.212846, 0.183441, 0.155674, 0.129617,
    0.105323, 0.082825, 0.062134, 0.043242, 0.026124, 0.010739, -0.002969, -0.015066, -0.025631, -0.034747,
    -0.042506, -0.049003, -0.054334, -0.058597, -0.061890, -0.064306, -0.065938, -0.066874, -0.067199, -0.066990,
    -0.066322, -0.065263, -0.063876, -0.062218, -0.060340, -0.058290, -0.056109, -0.053834, -0.051496, -0.049124,
    -0.046743, -0.044373, -0.042031, -0.039732, -0.037487, -0.035308, -0.033200, -0.031170, -0.029222
  };
  private static final double[] DISSIPATION = {
    0.228148, 0.215105, 0.203578, 0.193565, 0.185024, 0.177881, 0.172036, 0.167371, 0.163758, 0.161058,
    0.159130, 0.157836, 0.157038, 0.156608, 0.156426, 0.156384, 0.156384, 0.156343, 0.156189, 0.155866,
    0.155327, 0.154539, 0.153479, 0.152134, 0.150500, 0.148580, 0.146383, 0.143924, 0.141220, 0.138294,
    0.135169, 0.131869, 0.128421, 0.124849, 0.121179, 0.117435, 0.113638, 0.109812, 0.105975, 0.102147,
    0.098342, 0.094576, 0.090862, 0.087212, 0.083634, 0.080137, 0.076728, 0.073413, 0.070195
  };

  private SimilarLayers() {}

  /**
   * Energy shape factor.
   *
   * @param shape shape factor H [1]
   * @return H* [1]; least, 1.5151, close to separation
   */
  public static double energyShape(double shape) {
    return at(ENERGY, shape);
  }

  /**
   * Wall shear, {@code ½·cf·Reθ}.
   *
   * @param shape shape factor H [1]
   * @return S [1]; zero at separation, negative in reversed flow
   */
  public static double shear(double shape) {
    return at(SHEAR, shape);
  }

  /**
   * Dissipation, {@code cD·Reθ}.
   *
   * @param shape shape factor H [1]
   * @return D [1]
   */
  public static double dissipation(double shape) {
    return at(DISSIPATION, shape);
  }

  /**
   * Writes energy shape factor, shear and dissipation at once, and then their derivatives: they share the place.
   *
   * <p>Below the first knot the values stay and the derivatives are those of that knot. Without any, an iteration that puts
   * a layer there has nothing that brings it back, and thins it to H = 1.
   */
  static void evaluate(double shape, double[] six) {
    double t = (Math.log(Math.max(shape - 1, 1.1)) - FIRST) / STEP;
    if (t >= 48) {
      six[0] = ENERGY[48];
      six[1] = SHEAR[48];
      six[2] = DISSIPATION[48];
      six[3] = six[4] = six[5] = 0;
      return;
    }
    int i = Math.min(Math.max((int) t, 1), 46);
    double perShape = 1 / (Math.max(shape - 1, 1.1) * STEP);
    cubic(ENERGY, i, t - i, perShape, six, 0);
    cubic(SHEAR, i, t - i, perShape, six, 1);
    cubic(DISSIPATION, i, t - i, perShape, six, 2);
  }

  private static void cubic(double[] v, int i, double f, double perShape, double[] six, int at) {
    double a = v[i - 1];
    double b = v[i];
    double c = v[i + 1];
    double d = v[i + 2];
    double square = 2 * a - 5 * b + 4 * c - d;
    double cube = 3 * (b - c) + d - a;
    six[at] = b + 0.5 * f * (c - a + f * (square + f * cube));
    six[at + 3] = 0.5 * (c - a + f * (2 * square + 3 * f * cube)) * perShape;
  }

  private static double at(double[] v, double shape) {
    double t = (Math.log(Math.max(shape - 1, 1.1)) - FIRST) / STEP;
    if (t >= 48) {
      return v[48];
    }
    int i = Math.min(Math.max((int) t, 1), 46);
    return cubic(v, i, t - i);
  }

  /** Cubic through four neighbouring knots. */
  private static double cubic(double[] v, int i, double f) {
    double a = v[i - 1];
    double b = v[i];
    double c = v[i + 1];
    double d = v[i + 2];
    return b + 0.5 * f * (c - a + f * (2 * a - 5 * b + 4 * c - d + f * (3 * (b - c) + d - a)));
  }
}
