// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.lattice;

import java.util.function.DoubleUnaryOperator;

/**
 * What a surface has along its whole span: mean line, lift slope of the section, and the angle at which it is set.
 *
 * @param meanLine slope dz/dx of the mean line at x/c [-]
 * @param slope lift slope a₀ of the section [1/rad]
 * @param incidence about the y axis [rad]
 */
record LatticeSection(DoubleUnaryOperator meanLine, double slope, double incidence) {
  /** A flat plate in potential flow. */
  static final LatticeSection PLATE = new LatticeSection(x -> 0, 2 * Math.PI, 0);

  LatticeSection meanLine(DoubleUnaryOperator other) {
    return new LatticeSection(other, slope, incidence);
  }

  LatticeSection slope(double other) {
    return new LatticeSection(meanLine, other, incidence);
  }

  LatticeSection incidence(double other) {
    return new LatticeSection(meanLine, slope, other);
  }

  /** What the section loses against potential flow: 1/a₀ − 1/(2π). */
  double loss() {
    return 1 / slope - 1 / (2 * Math.PI);
  }
}
