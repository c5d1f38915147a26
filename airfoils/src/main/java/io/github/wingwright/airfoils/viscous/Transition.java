// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils.viscous;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;

/**
 * Where a laminar layer turns turbulent: two criteria.
 *
 * <p><b>Amplification.</b> Small waves grow in the layer once Reθ passes a critical value; when their envelope has grown by
 * e^N, with N about 9 in a quiet tunnel, transition follows. The rate depends on the shape factor, and in a separated
 * layer (H above 4) it is so high that this criterion also ends laminar separation bubbles. The coupled method uses it.
 *
 * <pre>{@code
 * log10 Reθ0 = (1.415/(H − 1) − 0.489)·tanh(20/(H − 1) − 12.9) + 3.295/(H − 1) + 0.44
 * dN/dReθ    = 0.01·√((2.4·H − 3.7 + 2.5·tanh(1.5·H − 4.65))² + 0.25)
 * }</pre>
 * Source: envelope fit to similar profiles, Drela and Giles, AIAA Journal 25, 1987 (from memory).
 *
 * <p><b>Michel's criterion</b>, for attached layers: transition where
 * <pre>{@code Reθ = 1.174·(1 + 22400/Rex)·Rex^0.46}</pre>
 * Source: Michel, ONERA report 1/1578-A, 1951, in the form of Cebeci and Smith, 1974 (from memory).
 * Example: on a flat plate it is met at Rex = 2.02 million, Reθ = 944.
 */
public final class Transition {
  private Transition() {}

  /** Michel's criterion of transition. */
  public static final Formula MICHEL = Formula.named("momentum Reynolds number at transition")
      .gives("R_θ")
      .as("1.174·(1 + 22400/R_x)·R_x^0.46")
      .where("R_x", "Reynolds number on the length of run", 1e5, 6e7)
      .from(Source.fromMemory("Michel, ONERA 1/1578-A, 1951, as put by Cebeci and Smith, 1974", ""))
      .computedBy(Transition::michel);

  /**
   * Momentum Reynolds number at which waves begin to grow.
   *
   * @param shape shape factor H [1], above 1
   * @return log10 of Reθ0 [1]; 2.38 for a flat plate
   */
  public static double logCriticalReynolds(double shape) {
    double q = 1 / (shape - 1);
    return (1.415 * q - 0.489) * Math.tanh(20 * q - 12.9) + 3.295 * q + 0.44;
  }

  /**
   * Growth of the amplification exponent per momentum Reynolds number.
   *
   * @param shape shape factor H [1]
   * @return dN/dReθ [1]
   */
  public static double growthPerReynolds(double shape) {
    double b = 2.4 * shape - 3.7 + 2.5 * Math.tanh(1.5 * shape - 4.65);
    return 0.01 * Math.sqrt(b * b + 0.25);
  }

  /**
   * Growth of the amplification exponent per length, in a layer of similar profiles.
   *
   * @param shape shape factor H [1]
   * @param theta momentum thickness [m, or chords]
   * @param momentumReynolds Reθ [1]
   * @return dN/dx [1/m, or 1/chord]; 0 below the critical Reynolds number, brought in smoothly over ±20 %
   */
  public static double growth(double shape, double theta, double momentumReynolds) {
    double[] four = new double[4];
    growth(shape, theta, momentumReynolds, four);
    return four[0];
  }

  /** Writes the growth, and its derivatives with respect to shape factor, thickness and Reynolds number. */
  static void growth(double shape, double theta, double momentumReynolds, double[] four) {
    four[0] = four[1] = four[2] = four[3] = 0;
    double q = 1 / (shape - 1);
    double step = tanh(20 * q - 12.9);
    double critical = (1.415 * q - 0.489) * step + 3.295 * q + 0.44;
    double above = Math.log10(momentumReynolds) - critical;
    if (above <= -0.08) {
      return;
    }
    double r = Math.min((above + 0.08) / 0.16, 1);
    double begun = r * r * (3 - 2 * r);
    double bend = tanh(1.5 * shape - 4.65);
    double b = 2.4 * shape - 3.7 + 2.5 * bend;
    double root = Math.sqrt(b * b + 0.25);
    // dReθ/dx of the similar layer: ½·(m + 1)·l/θ with fits for l and m·l.
    double l = (6.54 * shape - 14.07) / (shape * shape);
    double ml = 0.058 * (shape - 4) * (shape - 4) * q - 0.068;
    double sum = ml + l;
    if (!(begun * sum > 0)) {
      return;
    }
    double rate = 0.01 * root * sum / (2 * theta);
    four[0] = begun * rate;
    double begunByAbove = r < 1 ? 6 * r * (1 - r) / 0.16 : 0;
    double criticalByShape = -q * q * (1.415 * step + (1.415 * q - 0.489) * 20 * (1 - step * step) + 3.295);
    double rootByShape = b * (2.4 + 3.75 * (1 - bend * bend)) / root;
    double sumByShape = 6.54 / (shape * shape) - 2 * l / shape + 0.116 * (shape - 4) * q
        - 0.058 * (shape - 4) * (shape - 4) * q * q;
    four[1] = -begunByAbove * criticalByShape * rate + begun * rate * (rootByShape / root + sumByShape / sum);
    four[2] = -four[0] / theta;
    four[3] = begunByAbove * rate / (momentumReynolds * Math.log(10));
  }

  /** Hyperbolic tangent by the exponential, several times as fast as the library's and good to 10⁻¹⁵. */
  private static double tanh(double x) {
    return x > 20 ? 1 : 1 - 2 / (Math.exp(2 * x) + 1);
  }

  /**
   * Michel's criterion.
   *
   * @param lengthReynolds Reynolds number on the length of run and the local speed [1], positive
   * @return Reθ at transition [1]
   */
  public static double michel(double lengthReynolds) {
    return 1.174 * (1 + 22400 / lengthReynolds) * Math.pow(lengthReynolds, 0.46);
  }
}
