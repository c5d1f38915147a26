// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

import io.github.wingwright.core.geometry.AirfoilSection;
import io.github.wingwright.core.numerics.Quadrature;
import io.github.wingwright.core.numerics.Tolerance;
import java.io.Serializable;
import java.util.function.DoubleUnaryOperator;

/**
 * What potential flow says of a thin section, from the slope of its mean line alone.
 *
 * <pre>{@code
 * x = (1 − cos θ)/2        B = (1/π)·∫ dy/dx dθ        A_n = (2/π)·∫ (dy/dx)·cos nθ dθ        over θ from 0 to π
 * α₀ = B − A_1/2           c_l,design = π·A_1          c_m = (π/4)·(A_2 − A_1)
 * }</pre>
 *
 * <p>Source: Glauert, The Elements of Aerofoil and Airscrew Theory, 2nd ed., 1947, ch. VII (from memory). Example: a
 * circular arc of 5 % camber has α₀ = −0.1 rad, design lift 0.628319 and moment −0.157080.
 *
 * @param zeroLiftAngle angle of attack without lift α₀ [rad]
 * @param designLift lift coefficient at which the flow meets the nose smoothly
 * @param moment moment about the quarter chord, nose-up positive
 */
record MeanLineTheory(double zeroLiftAngle, double designLift, double moment) implements Serializable {
  private static final Tolerance TOLERANCE = new Tolerance(1e-10, 1e-10);

  /** Integrates the slope of a mean line. */
  static MeanLineTheory of(AirfoilSection section) {
    return of(section::camberSlope);
  }

  static MeanLineTheory of(DoubleUnaryOperator slope) {
    double angle = integral(slope, 0) / Math.PI;
    double a1 = 2.0 / Math.PI * integral(slope, 1);
    double a2 = 2.0 / Math.PI * integral(slope, 2);
    return new MeanLineTheory(angle - 0.5 * a1, Math.PI * a1, 0.25 * Math.PI * (a2 - a1));
  }

  private static double integral(DoubleUnaryOperator slope, int n) {
    return Quadrature.integrate(
            theta -> slope.applyAsDouble(0.5 * (1.0 - Math.cos(theta))) * Math.cos(n * theta), 0.0, Math.PI, TOLERANCE)
        .value();
  }
}
