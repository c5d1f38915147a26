// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils.viscous;

/**
 * The lag of the rate of entrainment behind its equilibrium, {@link Entrainment}, split into what depends on the layer and
 * what depends on the rate itself, with derivatives.
 *
 * <pre>{@code
 * θ·dCE/dx = s(CE)·(base − weight·√τ(CE))
 * weight   = scale·2.8/(H + H1)
 * base     = 2.8/(H + H1)·√τ_wanted + (θ/V·dV/dx)_eq − θ/V·dV/dx
 * }</pre>
 */
final class EntrainmentLag {
  private static final double LEAST_SHEAR = 1e-6;

  double base;
  double weight;
  double baseByH;
  double baseByFriction;
  double basePlate;
  double weightByH;

  /** Evaluates base and weight, with derivatives if wanted. */
  void at(double shape, double friction, double plate, double gradient, double scale, boolean differentiate) {
    double q = shape - 1;
    double massShape = Entrainment.massShape(shape);
    double g = q / (6.432 * shape);
    double wall = friction / 2 - g * g;
    double balanced = 1.25 / shape * wall;
    double inside = friction / 2 - (shape + 1) * balanced;
    double equilibrium = massShape * inside;
    double stress = Entrainment.shear(equilibrium, plate);
    double wanted = Math.max(stress, LEAST_SHEAR);
    double excess = wanted - 0.32 * plate;
    double free = Math.max(excess, -0.00011);
    double root = Math.sqrt(free / 1.2 + 0.0001);
    double far = root - 0.01;
    double farGradient = (friction / 2 - far / massShape) / (shape + 1);
    double k = 2.8 / (shape + massShape);
    double w = Math.sqrt(wanted);
    base = k * w + farGradient - gradient;
    weight = scale * k;
    if (!differentiate) {
      return;
    }
    double massByH = -1.72 / (q * q) - 0.02 * q;
    double kByH = -k * (1 + massByH) / (shape + massShape);
    weightByH = scale * kByH;
    double balancedByH = -balanced / shape - 2.5 / shape * g / (6.432 * shape * shape);
    double balancedByF = 0.625 / shape;
    double equilibriumByH = massByH * inside - massShape * (balanced + (shape + 1) * balancedByH);
    double equilibriumByF = massShape * (0.5 - (shape + 1) * balancedByF);
    boolean live = stress > LEAST_SHEAR;
    double stressByE = live ? 0.024 + 2.4 * equilibrium : 0;
    double stressByPlate = live ? 0.32 : 0;
    boolean above = excess > -0.00011;
    double farByStress = above ? 1 / (2.4 * root) : 0;
    double farByE = farByStress * stressByE;
    double farByPlate = farByStress * (stressByPlate - 0.32);
    double byE = k * stressByE / (2 * w) - farByE / massShape / (shape + 1);
    baseByH = kByH * w + byE * equilibriumByH + far * massByH / (massShape * massShape * (shape + 1))
        - farGradient / (shape + 1);
    baseByFriction = byE * equilibriumByF + 0.5 / (shape + 1);
    basePlate = k * stressByPlate / (2 * w) - farByPlate / massShape / (shape + 1);
  }

  /** Change of the rate of entrainment, {@code θ·dCE/dx}. */
  double rate(double entrainment, double base, double weight, double plate) {
    double speed = (0.02 * entrainment + entrainment * entrainment + 0.8 * plate / 3) / (0.01 + entrainment);
    return speed * (base - weight * Math.sqrt(Math.max(Entrainment.shear(entrainment, plate), LEAST_SHEAR)));
  }
}
