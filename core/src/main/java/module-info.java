// SPDX-License-Identifier: Apache-2.0

/**
 * The core of Wingwright: conceptual sizing of small aircraft.
 *
 * <p>A new package adds its {@code exports} line here with its first class; a test compares this list with the classes.
 */
@SuppressWarnings({"module", "requires-automatic", "requires-transitive-automatic"})
module io.github.wingwright.core {
  requires transitive java.measure;
  requires static transitive org.jspecify;
  requires commons.math3;

  exports io.github.wingwright.core;
  exports io.github.wingwright.core.aerodynamics;
  exports io.github.wingwright.core.aircraft;
  exports io.github.wingwright.core.atmosphere;
  exports io.github.wingwright.core.basis;
  exports io.github.wingwright.core.drawing;
  exports io.github.wingwright.core.geometry;
  exports io.github.wingwright.core.manufacture;
  exports io.github.wingwright.core.mass;
  exports io.github.wingwright.core.performance;
  exports io.github.wingwright.core.quantity;
  exports io.github.wingwright.core.report;
  exports io.github.wingwright.core.sizing;
  exports io.github.wingwright.core.numerics to
      io.github.wingwright.airfoils,
      io.github.wingwright.stability;
}
