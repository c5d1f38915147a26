// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import java.io.Serializable;

/**
 * The part of a space that things of awkward shape really fill.
 *
 * <p>For comparison, the exact fractions of the largest single thing: a box in an ellipsoid 2/(π·√3) = 0.368, a cylinder in
 * an ellipsoid 1/√3 = 0.577, a square prism in a cylinder 2/π = 0.637. Equipment of several pieces is usually packed to
 * about 0.7 of the space at best (common practice, no source).
 *
 * @param value the fraction, above 0 and at most 1
 */
public record PackingFraction(double value) implements Serializable {

  /** The fraction of common practice. */
  public static final PackingFraction USUAL = new PackingFraction(0.7);

  /** Refuses what is no fraction. */
  public PackingFraction {
    if (!(value > 0.0 && value <= 1.0)) {
      throw new IllegalArgumentException("packing fraction must be above 0 and at most 1, was " + value);
    }
  }

  @Override
  public String toString() {
    return "packed to " + Considerations.number(value);
  }
}
