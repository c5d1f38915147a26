// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;

/**
 * How much of the induced drag is left near the ground, at the same lift.
 *
 * <p>The ground acts as a second wing of opposite lift, as far below it as the wing flies above. Its upwash takes from the
 * downwash of the wing:
 *
 * <pre>{@code φ = K_ground/K        C_Di = φ·(1 + δ)·C_L²/(π·A)}</pre>
 *
 * <p>For elliptic loading the image is Prandtl's biplane with a gap of 2·h, and φ = 1 − σ(2·h/b). The handbook's fit is
 * handier, holds to any height, and lies a fifth lower at a twentieth of the span and 5 % higher at a fifth. A glider in a hall
 * flies most of its way between a half and twice its span above the floor, where φ is 0.92 to 0.99: little to gain until it
 * lands. Profile drag and usable lift change too; neither is reckoned with here.
 */
public final class GroundEffect {
  /** What is left of the induced drag, a fit for all heights. */
  public static final Formula HANDBOOK =
      Formula.named("share of induced drag near the ground")
          .gives("φ")
          .as("33·h^1.5 / (1 + 33·h^1.5)")
          .where("h", "height of the wing over its span", 0.02, 10)
          .from(Sources.raymer("sec. 12.6, ground effect"))
          .computedBy(GroundEffect::handbook);

  /** What is left of the induced drag, by the image of an elliptically loaded wing. */
  public static final Formula IMAGE =
      Formula.named("share of induced drag near the ground, by the image of the wing")
          .gives("φ")
          .as("1 − (1 − 1.32·h) / (1.05 + 7.4·h)")
          .where("h", "height of the wing over its span", 0.034, 0.25)
          .from(Source.fromMemory("Prandtl, Induced Drag of Multiplanes, NACA TN 182, 1924", "fit for equal spans"))
          .computedBy(GroundEffect::image);

  private GroundEffect() {}

  /**
   * What is left of the induced drag near the ground, a fit for all heights.
   *
   * <pre>{@code φ = 33·h^1.5/(1 + 33·h^1.5)}</pre>
   *
   * <p>Example: h = 4/33 gives 0.582048; a span of 480 mm, 0.24 m above the floor, gives 0.921056.
   *
   * @param height height of the wing above the ground over its span, positive
   * @return φ, 0 to 1
   */
  public static double handbook(double height) {
    double fit = 33.0 * height * Math.sqrt(height);
    return fit / (1.0 + fit);
  }

  /**
   * What is left of the induced drag near the ground, by the image of an elliptically loaded wing.
   *
   * <pre>{@code φ = 1 − (1 − 1.32·h)/(1.05 + 7.4·h)        Prandtl's σ = (1 − 0.66·g)/(1.05 + 3.7·g) with g = 2·h}</pre>
   *
   * <p>Example: h = 0.1 gives 0.515084.
   *
   * @param height height of the wing above the ground over its span, 1/30 to 1/4
   * @return φ
   */
  public static double image(double height) {
    return 1.0 - (1.0 - 1.32 * height) / (1.05 + 7.4 * height);
  }
}
