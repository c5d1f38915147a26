// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import io.github.wingwright.core.geometry.AirfoilSection;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import java.util.Objects;

/**
 * How stiff and strong the skin of a wing section is: the section modulus of a thin wall that follows the outline.
 *
 * <pre>{@code
 * I = t·∮ (z − z̄)² ds        Z = I/max|z − z̄|        M = σ·Z
 * }</pre>
 *
 * <p>z is the height over the chord for bending up, and the place along the chord for bending in the plane of the wing. The
 * wall must be thin against the section; where the walls of both surfaces meet, near the edges, a part is counted twice and
 * the modulus is a few per cent too large.
 */
public final class SectionStrength {
  private static final int POINTS = 241;

  private SectionStrength() {}

  /**
   * Section modulus of a skin for bending up and down.
   *
   * @param section the section
   * @param chord its chord, positive
   * @param wall thickness of the skin, positive
   * @return Z [m³]
   */
  public static double acrossChord(AirfoilSection section, Length chord, Length wall) {
    Objects.requireNonNull(section, "section");
    return modulus(section, chord, wall, false);
  }

  /**
   * Section modulus of a skin for bending in the plane of the wing.
   *
   * @param section the section
   * @param chord its chord, positive
   * @param wall thickness of the skin, positive
   * @return Z [m³]
   */
  public static double alongChord(AirfoilSection section, Length chord, Length wall) {
    Objects.requireNonNull(section, "section");
    return modulus(section, chord, wall, true);
  }

  private static double modulus(AirfoilSection section, Length chord, Length wall, boolean inPlane) {
    double c = Door.positive(chord, "chord").si();
    double t = Door.positive(wall, "wall").si();
    double[] x = new double[POINTS];
    double[] y = new double[POINTS];
    section.outline(x, y);
    double[] height = inPlane ? x : y;
    double around = 0.0;
    double moment = 0.0;
    for (int i = 1; i < POINTS; i++) {
      double ds = Math.hypot(x[i] - x[i - 1], y[i] - y[i - 1]);
      around += ds;
      moment += 0.5 * (height[i] + height[i - 1]) * ds;
    }
    double middle = moment / around;
    double second = 0.0;
    double reach = 0.0;
    for (int i = 1; i < POINTS; i++) {
      double ds = Math.hypot(x[i] - x[i - 1], y[i] - y[i - 1]);
      double from = height[i - 1] - middle;
      double to = height[i] - middle;
      // Exact over a straight piece.
      second += ds * (from * from + from * to + to * to) / 3.0;
      reach = Math.max(reach, Math.max(Math.abs(from), Math.abs(to)));
    }
    return t * c * c * second / reach;
  }
}
