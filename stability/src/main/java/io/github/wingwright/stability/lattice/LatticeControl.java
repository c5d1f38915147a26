// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.lattice;

import java.util.Locale;
import java.util.Objects;

/**
 * A movable part of a surface: everything behind a hinge line, over a part of its span.
 *
 * @param name name of the control, unique in the lattice
 * @param hinge hinge line as a fraction of the chord from the leading edge [-], 0 (all moving) to less than 1
 * @param from inner end as a fraction of the surface's own span from its root [-]
 * @param to outer end as a fraction of the surface's own span from its root [-]
 * @param antisymmetric false: both halves trailing edge down together (elevator, flap); true: ailerons, starboard
 *     trailing edge down when positive. On a surface in the plane of symmetry it makes no difference: trailing edge to
 *     port is positive, the sense that pushes the tail to starboard
 */
public record LatticeControl(String name, double hinge, double from, double to, boolean antisymmetric) {
  public LatticeControl {
    Objects.requireNonNull(name, "name");
    if (name.isBlank()) {
      throw new IllegalArgumentException("a control needs a name, was blank");
    }
    if (!(hinge >= 0 && hinge < 1)) {
      throw new IllegalArgumentException("hinge must lie within 0 and 1 of the chord, was " + hinge);
    }
    if (!(from >= 0 && to <= 1 && from < to)) {
      throw new IllegalArgumentException(String.format(Locale.ROOT,
          "ends of control '%s' must be in order within 0 and 1, were %s and %s", name, from, to));
    }
  }
}
