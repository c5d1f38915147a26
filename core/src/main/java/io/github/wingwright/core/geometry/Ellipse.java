// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

/** What bodies of elliptic outline share. */
final class Ellipse {
  /** Below this eccentricity asin e / e is taken from its series, which is exact to 1e-16 there. */
  private static final double SMALL = 1e-4;

  private Ellipse() {}

  /**
   * asin(e)/(k·e) with e² = 1 − k², for a half axis ratio k = R/a; for a flat ellipse (k > 1) the analytic continuation
   * asinh(w)/(k·w) with w² = k² − 1.
   */
  static double arcFactor(double k) {
    double square = 1.0 - k * k;
    double e = Math.sqrt(Math.abs(square));
    if (e < SMALL) {
      return (1.0 + square / 6.0) / k;
    }
    return square > 0.0 ? Math.asin(e) / (k * e) : Math.log(e + k) / (k * e);
  }
}
