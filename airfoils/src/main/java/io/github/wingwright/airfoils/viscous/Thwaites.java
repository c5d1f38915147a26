// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils.viscous;

import java.util.Objects;

/**
 * The laminar boundary layer in a given speed distribution, by Thwaites's quadrature.
 *
 * <pre>{@code
 * θ² = 0.45·ν/V⁶·∫V⁵ dx,   λ = θ²/ν·dV/dx,   separation at λ = −0.09
 * S(λ) = (λ + 0.09)^0.62,   H(λ) = 2 + 4.14·z − 83.5·z² + 854·z³ − 3337·z⁴ + 4576·z⁵,   z = 0.25 − λ
 * cf = 2·S/Reθ
 * }</pre>
 *
 * <p>Valid up to separation, within 3 to 5 %. Source: Thwaites, Aeronautical Quarterly 1, 1949; the fits S and H: White,
 * Viscous Fluid Flow, section 4-6 (from memory). Example: Howarth's flow V = 1 − x separates at 0.123 (exact 0.1199).
 */
public final class Thwaites {
  /** λ at separation. */
  public static final double SEPARATION = -0.09;

  private Thwaites() {}

  /**
   * Writes the momentum thickness along the surface.
   *
   * @param x distance from the stagnation point or leading edge [m], ascending from 0 or more
   * @param speed edge speed [m/s], positive except that the first may be 0
   * @param viscosity kinematic viscosity [m²/s], positive
   * @param theta receives the momentum thickness [m]
   */
  public static void momentumThickness(double[] x, double[] speed, double viscosity, double[] theta) {
    Objects.requireNonNull(x, "x");
    Objects.requireNonNull(speed, "speed");
    Objects.requireNonNull(theta, "theta");
    double integral = 0;
    for (int i = 0; i < x.length; i++) {
      double v = speed[i];
      if (i == 0) {
        // From the leading edge to the first station at this speed; zero if it is the edge itself.
        integral = Math.pow(v, 5) * x[0];
      } else {
        integral += fifthPower(speed[i - 1], v) * (x[i] - x[i - 1]);
      }
      theta[i] = v > 0 ? Math.sqrt(0.45 * viscosity * integral / Math.pow(v, 6)) : 0;
    }
    if (speed[0] == 0 && x.length > 1) {
      // Stagnation point: θ² = 0.075·ν/(dV/dx).
      theta[0] = Math.sqrt(0.075 * viscosity * (x[1] - x[0]) / speed[1]);
    }
  }

  /** Mean of the fifth power of a speed that runs linearly from a to b. */
  private static double fifthPower(double a, double b) {
    return (a + b) * (a * a + a * b + b * b) * (a * a - a * b + b * b) / 6;
  }

  /**
   * Shear function.
   *
   * @param lambda λ [1], −0.09 or more
   * @return S = ½·cf·Reθ [1]; 0.225 on a flat plate
   */
  public static double shear(double lambda) {
    return Math.pow(Math.max(lambda - SEPARATION, 0), 0.62);
  }

  /**
   * Shape factor.
   *
   * @param lambda λ [1], −0.09 to 0.25
   * @return H [1]; 2.61 on a flat plate
   */
  public static double shape(double lambda) {
    double z = 0.25 - lambda;
    return 2 + z * (4.14 + z * (-83.5 + z * (854 + z * (-3337 + z * 4576))));
  }

  /**
   * Distance at which the layer separates.
   *
   * @param x distances [m], ascending
   * @param speed edge speeds [m/s]
   * @param viscosity kinematic viscosity [m²/s]; the result does not depend on it
   * @return distance where λ passes −0.09, between stations; NaN if it does not
   */
  public static double separation(double[] x, double[] speed, double viscosity) {
    Objects.requireNonNull(x, "x");
    Objects.requireNonNull(speed, "speed");
    double[] theta = new double[x.length];
    momentumThickness(x, speed, viscosity, theta);
    double before = Double.NaN;
    for (int i = 1; i < x.length - 1; i++) {
      double slope = (speed[i + 1] - speed[i - 1]) / (x[i + 1] - x[i - 1]);
      double lambda = theta[i] * theta[i] / viscosity * slope;
      if (lambda < SEPARATION) {
        double part = Double.isNaN(before) ? 1 : (before - SEPARATION) / (before - lambda);
        return x[i - 1] + part * (x[i] - x[i - 1]);
      }
      before = lambda;
    }
    return Double.NaN;
  }
}
