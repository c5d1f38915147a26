// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import io.github.wingwright.core.geometry.LiftingSurface;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.quantity.Length;

/**
 * The box around a section where it stands along a surface: camber lifts it, twist tips it about its leading edge, a trailing
 * edge that the machine cannot make as thin is thickened in proportion to the distance from the nose, as {@link WingSolid}
 * does.
 */
final class SectionBox {
  private static final int OUTLINE = 201;

  private final Planform planform;
  private final double[] x = new double[OUTLINE];
  private final double[] z = new double[OUTLINE];
  private double front;
  private double rear;
  private double bottom;
  private double top;

  SectionBox(LiftingSurface surface, Length edge) {
    planform = surface.planform();
    surface.section().outline(x, z);
    double least = planform.stations().stream().mapToDouble(y -> planform.chordAt(y).si()).min().orElseThrow();
    double blunt = Math.hypot(x[0] - x[OUTLINE - 1], z[0] - z[OUTLINE - 1]);
    double missing = least > 0.0 ? Math.max(0.0, edge.si() / least - blunt) : 0.0;
    for (int i = 0; i < OUTLINE; i++) {
      z[i] += Math.signum(OUTLINE / 2 - i) * 0.5 * missing * x[i];
    }
  }

  /** Takes the section at a distance from the root. */
  void moveTo(Length out) {
    double chord = planform.chordAt(out).si();
    double twist = planform.twistAt(out).si();
    double cos = chord * Math.cos(twist);
    double sin = chord * Math.sin(twist);
    front = 0.0;
    rear = 0.0;
    bottom = 0.0;
    top = 0.0;
    for (int i = 0; i < OUTLINE; i++) {
      double aft = x[i] * cos + z[i] * sin;
      double up = z[i] * cos - x[i] * sin;
      front = Math.min(front, aft);
      rear = Math.max(rear, aft);
      bottom = Math.min(bottom, up);
      top = Math.max(top, up);
    }
  }

  /** Its foremost point aft of the leading edge [m], not positive. */
  double front() {
    return front;
  }

  /** Its rearmost point aft of the leading edge [m]. */
  double rear() {
    return rear;
  }

  /** Its lowest point over the leading edge [m], not positive. */
  double bottom() {
    return bottom;
  }

  /** Its highest point over the leading edge [m], not negative. */
  double top() {
    return top;
  }
}
