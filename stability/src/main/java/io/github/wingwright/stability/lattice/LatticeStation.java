// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.lattice;

import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import java.util.Locale;
import java.util.Objects;

/**
 * One section of a lifting surface. Between two of them leading edge, chord and twist change linearly.
 *
 * @param x leading edge, aft of the datum [m]
 * @param y leading edge, to starboard of the plane of symmetry [m]
 * @param z leading edge, above the datum [m]
 * @param chord chord [m], laid along the x axis, positive, or zero at a pointed tip
 * @param twist angle of the chord line [rad], nose up positive, small: it enters the flow condition, not the shape
 */
public record LatticeStation(double x, double y, double z, double chord, double twist) {
  public LatticeStation {
    if (!Double.isFinite(x) || !Double.isFinite(y) || !Double.isFinite(z)) {
      throw new IllegalArgumentException(String.format(Locale.ROOT,
          "leading edge must be finite, was (%s, %s, %s) m", x, y, z));
    }
    if (!(chord >= 0) || chord == Double.POSITIVE_INFINITY) {
      throw new IllegalArgumentException(
          String.format(Locale.ROOT, "chord must not be negative, was %.6g m", chord));
    }
    if (!(Math.abs(twist) <= Math.PI / 4)) {
      throw new IllegalArgumentException(String.format(Locale.ROOT,
          "twist must lie within -45° and 45°, was %.4g°", Math.toDegrees(twist)));
    }
  }

  /**
   * From quantities.
   *
   * @param x leading edge aft of the datum
   * @param y leading edge to starboard of the plane of symmetry
   * @param z leading edge above the datum
   * @param chord chord
   * @param twist angle of the chord line, nose up positive
   */
  public static LatticeStation of(Length x, Length y, Length z, Length chord, Angle twist) {
    Objects.requireNonNull(x, "x");
    Objects.requireNonNull(y, "y");
    Objects.requireNonNull(z, "z");
    Objects.requireNonNull(chord, "chord");
    Objects.requireNonNull(twist, "twist");
    return new LatticeStation(x.si(), y.si(), z.si(), chord.si(), twist.si());
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "section at (%.4g, %.4g, %.4g) m, chord %.4g m, twist %.2f°", x, y, z, chord,
        Math.toDegrees(twist));
  }
}
