// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.lattice;

import java.util.Locale;

/**
 * One section of a lifting surface. Between two of them leading edge, chord and twist change linearly.
 *
 * @param x leading edge, aft of the datum [m]
 * @param y leading edge, to starboard of the plane of symmetry [m]
 * @param z leading edge, above the datum [m]
 * @param chord chord [m], positive, laid along the x axis
 * @param twist angle of the chord line [rad], nose up positive, small: it enters the flow condition, not the shape
 */
public record LatticeStation(double x, double y, double z, double chord, double twist) {
    public LatticeStation {
        if (!Double.isFinite(x) || !Double.isFinite(y) || !Double.isFinite(z)) {
            throw new IllegalArgumentException(String.format(Locale.ROOT,
                    "leading edge must be finite, was (%s, %s, %s) m", x, y, z));
        }
        if (!(chord > 0) || chord == Double.POSITIVE_INFINITY) {
            throw new IllegalArgumentException(String.format(Locale.ROOT, "chord must be positive, was %.6g m", chord));
        }
        if (!(Math.abs(twist) <= Math.PI / 4)) {
            throw new IllegalArgumentException(String.format(Locale.ROOT,
                    "twist must lie within -45° and 45°, was %.4g°", Math.toDegrees(twist)));
        }
    }

    @Override
    public String toString() {
        return String.format(Locale.ROOT, "section at (%.4g, %.4g, %.4g) m, chord %.4g m, twist %.2f°", x, y, z, chord,
                Math.toDegrees(twist));
    }
}
