// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;

/** Turns a mesh from the axes in which it was made to how it lies in the machine. */
final class Laying {
  private static final Angle RIGHT = Angle.degrees(90);

  /** What belongs to a flat end: triangles this near to it [m]. */
  private static final double FLAT = 1e-7;

  /** An end that is flat over less of the box around the section is no better to stand on than a round one. */
  private static final double LEAST_FOOT = 0.02;

  private Laying() {}

  /** The mesh as it lies, the least corner of its box at the origin. */
  static TriangleMesh of(TriangleMesh mesh, int lengthAxis, Orientation lying) {
    TriangleMesh along =
        switch (lengthAxis) {
          case 0 -> mesh;
          case 1 -> mesh.turned(2, RIGHT.negated());
          default -> mesh.turned(1, RIGHT);
        };
    TriangleMesh rolled = along.turned(0, lying.rolled());
    Angle raised = lying.lay() == Lay.UPRIGHT && standsOnItsLastEnd(rolled) ? RIGHT : lying.raised().negated();
    TriangleMesh turned = rolled.turned(1, raised).turned(2, lying.turned());
    Placement least = turned.box().least();
    return turned.moved(new Placement(least.x().negated(), least.y().negated(), least.z().negated()));
  }

  /** A part stands on its flatter end, on its first if neither is flat. */
  private static boolean standsOnItsLastEnd(TriangleMesh mesh) {
    MeshBox box = mesh.box();
    double last = flat(mesh, box.most().x());
    return last > flat(mesh, box.least().x()) && last > LEAST_FOOT * box.width().si() * box.height().si();
  }

  private static double flat(TriangleMesh mesh, Length end) {
    double area = 0.0;
    for (int t = 0; t < mesh.triangles(); t++) {
      boolean there = true;
      for (int k = 0; k < 3; k++) {
        there &= Math.abs(mesh.coordinate(mesh.corner(t, k), 0) - end.si()) < FLAT;
      }
      area += there ? MeshCheck.area(mesh, t) : 0.0;
    }
    return area;
  }
}
