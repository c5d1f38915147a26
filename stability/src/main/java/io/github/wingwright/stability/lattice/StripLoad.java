// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.lattice;

import java.util.Locale;

/**
 * Load of one strip of a surface.
 *
 * @param place place along the half, 0 at the root and 1 at the tip, by arc length [-]
 * @param y to starboard [m]
 * @param z up [m]
 * @param chord local chord [m]
 * @param circulation Γ/V [m]
 * @param sectionLiftCoefficient c_l on the local chord [-], along the surface's own normal
 */
public record StripLoad(double place, double y, double z, double chord, double circulation,
    double sectionLiftCoefficient) {
  @Override
  public String toString() {
    return String.format(Locale.ROOT, "strip at %.3f: y %.4g m, chord %.4g m, c_l %.4f", place, y, chord,
        sectionLiftCoefficient);
  }
}
