// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils.viscous;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;

/**
 * The turbulent boundary layer by entrainment: Head's idea, with the lag of Green, Weeks and Brooman.
 *
 * <p>A turbulent layer grows by swallowing outer flow. Head made the rate CE of swallowing a function of the shape
 * factor; Green let it follow its equilibrium value with a lag, because turbulence remembers its past. That memory is
 * what a layer needs just behind a laminar separation bubble.
 *
 * <pre>{@code
 * dθ/dx      = ½·cf − (H + 2)·θ/V·dV/dx
 * θ·dH1/dx   = CE − H1·(½·cf − (H + 1)·θ/V·dV/dx)
 * H1         = 3.15 + 1.72/(H − 1) − 0.01·(H − 1)²
 * cf0        = 0.01013/(log10(Reθ) − 1.02) − 0.00075
 * 1 − 1/H0   = 6.55·√(½·cf0)
 * cf         = cf0·(0.9/(H/H0 − 0.4) − 0.5)
 * (θ/V·dV/dx)eq = 1.25/H·(½·cf − ((H − 1)/(6.432·H))²)
 * }</pre>
 *
 * <p>Validity: attached layers and short separated stretches, Reθ from about 100; below 50 the friction of 50 is used.
 * Sources: Head, ARC R&amp;M 3152, 1958; Green, Weeks and Brooman, ARC R&amp;M 3791, 1973 (both from memory). Example:
 * H = 1.4 at Reθ = 2000 has cf = 0.00364 and H1 = 7.4484.
 */
public final class Entrainment {
  /** Below this momentum Reynolds number the friction law is kept constant. */
  private static final double LEAST_REYNOLDS = 50;
  /** Fuller than a plate's by more than a third does not occur; the guard keeps the friction law off its pole. */
  private static final double LEAST_SHAPE = 0.7;

  private Entrainment() {}

  private static final Source GREEN =
      Source.fromMemory("Green, Weeks and Brooman, ARC R&M 3791, 1973", "");

  /** Head's shape factor of the mass flow. */
  public static final Formula MASS_SHAPE = Formula.named("mass-flow shape factor of a turbulent layer")
      .gives("H_1")
      .as("3.15 + 1.72/(H − 1) − 0.01·(H − 1)^2")
      .where("H", "shape factor", 1.1, 4)
      .from(GREEN)
      .computedBy(Entrainment::massShape);

  /** Friction of a turbulent flat plate. */
  public static final Formula PLATE_FRICTION = Formula.named("turbulent friction on a flat plate")
      .gives("c_f0")
      .as("0.01013/(log10(R) − 1.02) − 0.00075")
      .where("R", "Reynolds number on the momentum thickness", 100, 1e5)
      .from(GREEN)
      .computedBy(Entrainment::flatPlateFriction);

  /**
   * Head's shape factor of the mass flow, {@code (δ − δ*)/θ}.
   *
   * @param shape shape factor H [1], above 1
   * @return H1 [1]
   */
  public static double massShape(double shape) {
    double t = shape - 1;
    return 3.15 + 1.72 / t - 0.01 * t * t;
  }

  /**
   * Friction of a flat plate at the same momentum Reynolds number.
   *
   * @param momentumReynolds Reθ [1]
   * @return cf0 [1]
   */
  public static double flatPlateFriction(double momentumReynolds) {
    return 0.01013 / (Math.log10(Math.max(momentumReynolds, LEAST_REYNOLDS)) - 1.02) - 0.00075;
  }

  /**
   * Friction coefficient.
   *
   * @param shape shape factor H [1]
   * @param momentumReynolds Reθ [1]
   * @return cf [1]; negative in reversed flow
   */
  public static double friction(double shape, double momentumReynolds) {
    double plate = flatPlateFriction(momentumReynolds);
    double perPlateShape = 1 - 6.55 * Math.sqrt(plate / 2);
    return plate * (0.9 / (Math.max(shape * perPlateShape, LEAST_SHAPE) - 0.4) - 0.5);
  }

  /** Slope of the friction of a flat plate over the momentum Reynolds number. */
  static double flatPlateFrictionSlope(double momentumReynolds) {
    if (momentumReynolds <= LEAST_REYNOLDS) {
      return 0;
    }
    double d = Math.log10(momentumReynolds) - 1.02;
    return -0.01013 / (d * d * momentumReynolds * Math.log(10));
  }

  /** Writes the friction and its derivatives with respect to shape factor and momentum Reynolds number. */
  static void friction(double shape, double momentumReynolds, double[] three) {
    double plate = flatPlateFriction(momentumReynolds);
    friction(shape, plate, flatPlateFrictionSlope(momentumReynolds), three);
  }

  /** The same for known values of a flat plate at this momentum Reynolds number. */
  static void friction(double shape, double plate, double plateSlope, double[] three) {
    double root = Math.sqrt(plate / 2);
    double perPlateShape = 1 - 6.55 * root;
    double ratio = shape * perPlateShape;
    double gap = Math.max(ratio, LEAST_SHAPE) - 0.4;
    double factor = 0.9 / gap - 0.5;
    double byRatio = ratio > LEAST_SHAPE ? -0.9 * plate / (gap * gap) : 0;
    three[0] = plate * factor;
    three[1] = byRatio * perPlateShape;
    three[2] = plateSlope * (factor - byRatio * shape * 1.6375 / root);
  }

  /**
   * Rate of entrainment of a layer in equilibrium.
   *
   * @param shape shape factor H [1]
   * @param friction cf [1]
   * @return CE [1]
   */
  public static double equilibrium(double shape, double friction) {
    double g = (shape - 1) / (6.432 * shape);
    double gradient = 1.25 / shape * (friction / 2 - g * g);
    return massShape(shape) * (friction / 2 - (shape + 1) * gradient);
  }

  /** Shear stress coefficient that belongs to a rate of entrainment. */
  static double shear(double entrainment, double plateFriction) {
    return 0.024 * entrainment + 1.2 * entrainment * entrainment + 0.32 * plateFriction;
  }

  /**
   * Change of the rate of entrainment, {@code θ·dCE/dx}.
   *
   * @param entrainment CE [1]
   * @param shape shape factor H [1]
   * @param friction cf [1]; 0 in a wake
   * @param plateFriction cf0 [1]; 0 in a wake
   * @param gradient θ/V·dV/dx [1]
   * @param scale dissipation length against that of a layer on a wall: 1, or ½ in a wake
   * @return θ·dCE/dx [1]
   */
  static double lag(double entrainment, double shape, double friction, double plateFriction, double gradient,
      double scale) {
    EntrainmentLag lag = new EntrainmentLag();
    lag.at(shape, friction, plateFriction, gradient, scale, false);
    return lag.rate(entrainment, lag.base, lag.weight, plateFriction);
  }
}
