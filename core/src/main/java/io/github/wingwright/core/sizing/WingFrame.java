// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.geometry.AirfoilSection;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import java.util.Objects;

/**
 * What of a wing stays while its chord is negotiated.
 *
 * @param span span b [m], positive
 * @param taperRatio taper ratio λ, 0 to 1.5
 * @param section the section, the same along the span
 */
public record WingFrame(double span, double taperRatio, AirfoilSection section) {

  /** Refuses what is no wing. */
  public WingFrame {
    Objects.requireNonNull(section, "section");
    Door.positive(span, "span");
    Door.within(taperRatio, 0.0, 1.5, "taper ratio");
  }

  @Override
  public String toString() {
    return "span " + Length.metres(span) + ", λ " + Considerations.number(taperRatio) + ", " + section.name();
  }

  /**
   * Root chord over mean geometric chord.
   *
   * @return 2/(1 + λ)
   */
  public double rootChordRatio() {
    return 2.0 / (1.0 + taperRatio);
  }

  /**
   * The smallest chord over the mean geometric chord: at the tip, or at the root of a wing that widens.
   *
   * @return 2·min(1, λ)/(1 + λ)
   */
  public double leastChordRatio() {
    return Math.min(1.0, taperRatio) * rootChordRatio();
  }

  /**
   * Mean of the squared chord over the square of the mean chord: what a solid wing weighs by.
   *
   * @return 4/3·(1 + λ + λ²)/(1 + λ)²
   */
  public double meanSquareRatio() {
    double sum = 1.0 + taperRatio;
    return 4.0 / 3.0 * (1.0 + taperRatio + taperRatio * taperRatio) / (sum * sum);
  }
}
