// SPDX-License-Identifier: Apache-2.0

/** Aerofoil sections: their shape, the flow about them and their drag. */
@SuppressWarnings({"module", "requires-automatic", "requires-transitive-automatic"})
module io.github.wingwright.airfoils {
  requires transitive io.github.wingwright.core;
  requires static transitive org.jspecify;

  exports io.github.wingwright.airfoils;
  exports io.github.wingwright.airfoils.coordinates;
  exports io.github.wingwright.airfoils.manufacture;
  exports io.github.wingwright.airfoils.potential;
  exports io.github.wingwright.airfoils.viscous;
}
