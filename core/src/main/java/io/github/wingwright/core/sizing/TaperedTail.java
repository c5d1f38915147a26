// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.numerics.Quadrature;
import io.github.wingwright.core.quantity.Force;
import io.github.wingwright.core.quantity.NamedUnit;

/**
 * Bending of a body that gets thinner towards its tail: a cantilever held at the wing, with the load at the tail.
 *
 * <pre>{@code
 * δ = F/E·∫ (x_t − x)²/I(x) dx      from the wing x_w to the tail x_t,      I(x) of the ring at x
 * }</pre>
 *
 * <p>A section that is not round counts as the ring inside it. Where the body keeps its diameter this is F·a³/(3·EI); a
 * solid cone from d₀ at the wing to d₁ at the tail bends by (d₀/d₁) times that with I of the thick end (Gere and
 * Timoshenko, Mechanics of Materials, tapered cantilever; from memory).
 */
final class TaperedTail {
  private static final int INTERVALS = 48;

  private TaperedTail() {}

  /**
   * How far the tail moves over the free length.
   *
   * @param shape family of the body
   * @param length length L [m]
   * @param diameter diameter d [m]
   * @param from where the body is held, as a share of the length
   * @param to where the load acts, as a share of the length
   * @param load load F [N]
   * @param wall wall thickness w [m]
   * @param modulus modulus of elasticity E [Pa]
   * @return δ/(x_t − x_w)
   */
  static double movement(
      BodyShape shape,
      double length,
      double diameter,
      double from,
      double to,
      double load,
      double wall,
      double modulus) {
    double free = (to - from) * length;
    // Simpson's rule; at the tail itself the lever is zero, so the thin end there is not asked.
    double sum = integrand(shape, length, diameter, to, free, 1.0, wall);
    for (int i = 1; i < 2 * INTERVALS; i++) {
      double weight = i % 2 == 0 ? 2.0 : 4.0;
      sum += weight * integrand(shape, length, diameter, to, free, 1.0 - 0.5 * i / INTERVALS, wall);
    }
    return load / modulus * free * free * sum / (6.0 * INTERVALS);
  }

  /** The margin of the movement as a line of the workings. */
  static Step marginStep(
      BodyShape shape,
      Step length,
      Step diameter,
      Force load,
      double from,
      double to,
      double allowed,
      BodyShell shell) {
    Step movement =
        Step.solution(
            "movement of the tail over its arm",
            "δ",
            NamedUnit.NUMBER,
            "Simpson's rule on " + 2 * INTERVALS + " strips",
            "δ·a = F/E·∫ (x_t − x)²/I dx from the wing to the tail, a = x_t − x_w",
            v -> movement(shape, v[0], v[1], v[2], v[3], v[4], v[5], v[6]),
            v -> v[7] - onPanels(shape, v),
            Source.DEFINITION,
            length,
            diameter,
            Step.given("place of the wing over the length", "s_w", from, Source.BRIEF),
            Step.given("place of the tail over the length", "s_t", to, Source.BRIEF),
            Step.given("load at the tail", "F", load, Source.BRIEF),
            shell.wallStep(),
            shell.modulusStep());
    return Step.of(
        MarginFormulas.MOVEMENT_MARGIN,
        Step.given("movement that is allowed, over the arm", "δ_max", allowed, Source.BRIEF),
        movement);
  }

  /** The same integral by another rule, from the same values. */
  private static double onPanels(BodyShape shape, double[] v) {
    double free = (v[3] - v[2]) * v[0];
    double sum = Quadrature.onPanels(part -> integrand(shape, v[0], v[1], v[3], free, part, v[5]), 0.0, 1.0, 2 * INTERVALS);
    return v[4] / v[6] * free * free * sum;
  }

  /** (s/a)²/I at the part s/a of the free length ahead of the tail. */
  private static double integrand(
      BodyShape shape, double length, double diameter, double to, double free, double part, double wall) {
    double across = 2.0 * Stowage.room(shape, to * length - part * free, length, diameter);
    return part * part / BodyShell.secondMoment(across, wall);
  }
}
