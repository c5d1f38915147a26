// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.lattice;

import java.util.Locale;

/** Finds surfaces that lie in one another, before they make nonsense of the lattice. */
final class LatticeOverlap {
  /** Two surfaces closer than this part of the chord, one above the other, are the same surface twice. */
  private static final double TOO_CLOSE = 1e-3;

  private LatticeOverlap() {}

  static void refuse(LatticePanels[] panels) {
    for (LatticePanels a : panels) {
      if (!a.surface.isCentral() && overlap(a, a, -1)) {
        throw new IllegalArgumentException(String.format(Locale.ROOT,
            "surfaces must not coincide: '%s' lies in its own mirror image", a.surface.name()));
      }
      for (LatticePanels b : panels) {
        if (a != b && (overlap(a, b, 1) || overlap(a, b, -1))) {
          throw new IllegalArgumentException(String.format(Locale.ROOT,
              "surfaces must not coincide: '%s' and '%s' lie in one another",
              a.surface.name(), b.surface.name()));
        }
      }
    }
  }

  /** Whether a strip's middle of one surface, mirrored if the side is −1, lies on the other, chords overlapping. */
  private static boolean overlap(LatticePanels a, LatticePanels b, double side) {
    for (int i = 0; i < a.strips; i++) {
      for (int j = 0; j < b.strips; j++) {
        double dy = side * a.stripY[i] - b.stripY[j];
        double dz = a.stripZ[i] - b.stripZ[j];
        double across = dy * b.normalZ[j] - dz * b.normalY[j];
        double apart = dy * b.normalY[j] + dz * b.normalZ[j];
        double parallel = side * a.normalY[i] * b.normalY[j] + a.normalZ[i] * b.normalZ[j];
        double chord = Math.min(a.stripChord[i], b.stripChord[j]);
        double ahead = Math.max(a.stripLeading[i], b.stripLeading[j]);
        double behind = Math.min(a.stripLeading[i] + a.stripChord[i], b.stripLeading[j] + b.stripChord[j]);
        if (Math.abs(across) < 0.499 * b.stripWidth[j] && Math.abs(apart) < TOO_CLOSE * chord
            && Math.abs(parallel) > 0.9 && behind - ahead > TOO_CLOSE * chord) {
          return true;
        }
      }
    }
    return false;
  }
}
