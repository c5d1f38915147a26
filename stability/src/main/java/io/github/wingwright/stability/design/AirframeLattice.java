// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import io.github.wingwright.core.aircraft.Aircraft;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.stability.lattice.LatticeReference;
import io.github.wingwright.stability.lattice.LatticeSurface;
import io.github.wingwright.stability.lattice.VortexLattice;
import java.util.ArrayList;
import java.util.List;

/** Wing and tails of an aircraft as one lattice, its moments about the centre of gravity. */
final class AirframeLattice {
  private static final int WING_ROWS = 4;
  private static final int WING_STRIPS = 16;
  private static final int TAIL_ROWS = 4;
  private static final int TAIL_STRIPS = 10;

  private AirframeLattice() {}

  /**
   * The lattice of an aircraft.
   *
   * @param aircraft shape and masses
   * @param tailIncidence incidence of the horizontal tail
   */
  static VortexLattice of(Aircraft aircraft, Angle tailIncidence) {
    Wing wing = aircraft.airframe().wing();
    LatticeReference reference =
        LatticeReference.of(wing.planform(), aircraft.centreOfGravity().x(), aircraft.centreOfGravity().z());
    List<LatticeSurface> surfaces = new ArrayList<>();
    surfaces.add(LatticeSurface.of("wing", wing).panels(WING_ROWS, WING_STRIPS));
    for (Tail tail : aircraft.airframe().tails()) {
      Tail set = tail.role() == Tail.Role.HORIZONTAL ? tail.withIncidence(tailIncidence) : tail;
      surfaces.add(LatticeSurface.of(tail.role().words(), set).panels(TAIL_ROWS, TAIL_STRIPS));
    }
    return VortexLattice.of(reference, surfaces.toArray(LatticeSurface[]::new));
  }
}
