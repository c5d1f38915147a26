// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

/** Where the tail of a body begins to close, and how far it is swept up from there. */
final class ClosingTail {
  /** The tail begins where the section has lost this part of its height. */
  private static final double CLOSING = 0.02;

  private static final int STATIONS = 40;

  private ClosingTail() {}

  /** The station from which on aft the section is lower than all but the greatest. */
  static double begins(BodyShape shape, double length, double diameter) {
    double greatest = 0.0;
    for (int i = 1; i <= STATIONS; i++) {
      greatest = Math.max(greatest, shape.height(length * i / STATIONS, length, diameter));
    }
    double height = (1.0 - CLOSING) * greatest;
    double in = length;
    while (in > 0.0 && shape.height(in, length, diameter) < height) {
      in -= length / STATIONS;
    }
    double out = Math.min(length, in + length / STATIONS);
    for (int i = 0; i < 40; i++) {
      double middle = 0.5 * (in + out);
      if (shape.height(middle, length, diameter) >= height) {
        in = middle;
      } else {
        out = middle;
      }
    }
    return in;
  }

  static double upsweep(BodyShape shape, double length, double diameter) {
    double end = shape.centreHeight(length, length, diameter);
    if (end == 0.0) {
      return 0.0;
    }
    double from = begins(shape, length, diameter);
    double rise = end - shape.centreHeight(from, length, diameter);
    return Math.atan(rise / (length - from));
  }
}
