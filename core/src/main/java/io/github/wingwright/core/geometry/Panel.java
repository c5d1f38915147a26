// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import java.io.Serializable;

/**
 * One straight-tapered panel of a planform, from its inner to its outer chord.
 *
 * @param extent spanwise extent, projected on the horizontal (of a fin: on the vertical); positive
 * @param tipChord chord at the outer end; positive, or zero for a point
 * @param leadingEdgeSweep sweep of the leading edge, positive aft; between −80° and 80°
 * @param dihedral dihedral of the panel, positive up; between −80° and 80°
 * @param washout how much less incidence the outer end has than the inner, positive for washout
 */
public record Panel(Length extent, Length tipChord, Angle leadingEdgeSweep, Angle dihedral, Angle washout)
    implements Serializable {
  private static final Angle STEEPEST = Angle.degrees(80);

  /** Refuses a panel without extent or with a negative chord. */
  public Panel {
    Door.positive(extent, "panel extent");
    Door.notNegative(tipChord, "tip chord");
    Door.within(leadingEdgeSweep, STEEPEST.negated(), STEEPEST, "leading-edge sweep");
    Door.within(dihedral, STEEPEST.negated(), STEEPEST, "dihedral");
    Door.finite(washout, "washout");
  }
}
