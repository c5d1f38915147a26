// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.lattice;

import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.quantity.Length;
import java.util.Locale;
import java.util.Objects;

/**
 * What the coefficients of a lattice are referred to, and the point moments are taken about.
 *
 * @param area reference area S [m²], positive
 * @param chord mean aerodynamic chord c̄, for pitch [m], positive
 * @param span span b, for roll and yaw [m], positive
 * @param x moment reference (centre of gravity) aft of the datum [m]
 * @param z moment reference above the datum [m]
 */
public record LatticeReference(double area, double chord, double span, double x, double z) {
  public LatticeReference {
    positive("reference area", area, "m²");
    positive("reference chord", chord, "m");
    positive("reference span", span, "m");
    if (!Double.isFinite(x) || !Double.isFinite(z)) {
      throw new IllegalArgumentException(String.format(Locale.ROOT,
          "moment reference must be finite, was (%s, %s) m", x, z));
    }
  }

  private static void positive(String name, double value, String unit) {
    if (!(value > 0) || value == Double.POSITIVE_INFINITY) {
      throw new IllegalArgumentException(String.format(Locale.ROOT, "%s must be positive, was %.6g %s", name,
          value, unit));
    }
  }

  /**
   * The references of a wing: its projected area, mean aerodynamic chord and span.
   *
   * @param planform outline of the wing
   * @param x moment reference (centre of gravity) aft of the datum
   * @param z moment reference above the datum
   */
  public static LatticeReference of(Planform planform, Length x, Length z) {
    Objects.requireNonNull(planform, "planform");
    Objects.requireNonNull(x, "x");
    Objects.requireNonNull(z, "z");
    return new LatticeReference(planform.area().si(), planform.meanAerodynamicChord().si(), planform.span().si(),
        x.si(), z.si());
  }

  /** The same with moments about another point. */
  public LatticeReference about(double newX, double newZ) {
    return new LatticeReference(area, chord, span, newX, newZ);
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "S %.4g m², c %.4g m, b %.4g m about (%.4g, %.4g) m", area, chord, span, x, z);
  }
}
