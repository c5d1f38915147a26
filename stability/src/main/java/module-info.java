// SPDX-License-Identifier: Apache-2.0

/** Tails, balance, trim, static and dynamic stability, and the loop that closes a design. */
@SuppressWarnings({"module", "requires-automatic", "requires-transitive-automatic"})
module io.github.wingwright.stability {
  requires transitive io.github.wingwright.core;
  requires static transitive org.jspecify;
  requires commons.math3;

  exports io.github.wingwright.stability;
  exports io.github.wingwright.stability.comparison;
  exports io.github.wingwright.stability.design;
  exports io.github.wingwright.stability.derivatives;
  exports io.github.wingwright.stability.dynamics;
  exports io.github.wingwright.stability.flighttest;
  exports io.github.wingwright.stability.lattice;
  exports io.github.wingwright.stability.production;
}
