// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.performance;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.Acceleration;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Speed;
import java.io.Serializable;
import java.util.Objects;

/**
 * A steady gliding turn: a helix downwards, exact.
 *
 * <pre>{@code
 * L·cos φ = W·cos γ      D = W·sin γ      L·sin φ = m·(V·cos γ)²/R
 * tan γ = C_D/(C_L·cos φ)      V² = 2·P·cos γ/(ρ·C_L·cos φ)      R = V²·cos γ/(g·tan φ)
 * }</pre>
 *
 * @param bank bank angle φ
 * @param glide the glide along the helix
 * @param radius radius R of the helix
 */
public record GlideTurn(Angle bank, GlidePoint glide, Length radius) implements Serializable {
  public GlideTurn {
    Objects.requireNonNull(bank, "bank");
    Objects.requireNonNull(glide, "glide");
    Objects.requireNonNull(radius, "radius");
  }

  /** Radius of the helix. */
  public static final Formula RADIUS =
      Formula.named("radius of a gliding turn")
          .gives("R", Length.METRE)
          .as("V²·cos(γ) / (g·tan(φ))")
          .where("V", "speed along the path", Speed.METRE_PER_SECOND, 0.1, 300)
          .where("γ", "angle of descent", Angle.RADIAN, 0, 1.5)
          .where("g", "acceleration of gravity", Acceleration.METRE_PER_SECOND_SQUARED, 1, 30)
          .where("φ", "bank angle", Angle.RADIAN, 0.01, 1.4)
          .from(Source.restated("Raymer, Aircraft Design: A Conceptual Approach, 6th ed., AIAA 2018", "eqs 17.75 to 17.81"))
          .computedBy(GlideTurn::helixRadius);

  /**
   * Radius of the helix.
   *
   * <pre>{@code R = V²·cos γ/(g·tan φ)}</pre>
   *
   * <p>Example: 5 m/s, γ = 0, 9.80665 m/s², 30° gives 4.41550 m.
   *
   * @param speed V [m/s]
   * @param angle γ [rad]
   * @param gravity g [m/s²]
   * @param bank φ [rad], positive
   * @return R [m]
   */
  public static double helixRadius(double speed, double angle, double gravity, double bank) {
    return speed * speed * Math.cos(angle) / (gravity * Math.tan(bank));
  }

  /**
   * Lift over weight.
   *
   * @return n = cos γ/cos φ
   */
  public double loadFactor() {
    return glide.angle().cosine() / bank.cosine();
  }

  @Override
  public String toString() {
    return "turn at " + bank.format(Angle.DEGREE, 3) + ", radius " + radius.format(Length.METRE, 3) + ", sink "
        + glide.sinkRate().format(Speed.METRE_PER_SECOND, 3);
  }
}
