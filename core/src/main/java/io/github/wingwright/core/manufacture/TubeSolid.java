// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;

/** A straight round tube or rod along x, which joins two pieces. */
public final class TubeSolid implements Solid {
  private final double length;
  private final double outer;
  private final double inner;

  private TubeSolid(double length, double outer, double inner) {
    this.length = length;
    this.outer = outer;
    this.inner = inner;
  }

  /**
   * A tube.
   *
   * @param length its length, positive
   * @param outside its outer diameter, positive
   * @param inside its inner diameter, less than the outer; zero for a rod
   * @return the tube
   */
  public static TubeSolid of(Length length, Length outside, Length inside) {
    Door.positive(length, "length of a tube");
    Door.positive(outside, "outer diameter of a tube");
    Door.within(inside, Length.ZERO, outside.times(0.98), "inner diameter of a tube");
    return new TubeSolid(length.si(), 0.5 * outside.si(), 0.5 * inside.si());
  }

  @Override
  public TriangleMesh mesh(Length tolerance) {
    double tol = Curves.tolerance(tolerance);
    int n = Math.max(8, (int) Math.ceil(Math.PI / Math.acos(Math.max(0.0, 1.0 - tol / outer))));
    int[] outside = new int[n];
    int[] inside = new int[n];
    for (int i = 0; i < n; i++) {
      outside[i] = i;
      inside[i] = 2 * n - 1 - i;
    }
    List<int[]> loops = new ArrayList<>(List.of(outside));
    if (inner > 0.0) {
      loops.add(inside);
    }
    return SlabStack.mesh(
        0,
        List.of(new SlabStack.Slab(new double[] {0.0, length}, loops)),
        false,
        false,
        (key, x, p) -> {
          double r = key < n ? outer : inner;
          p[0] = x;
          p[1] = r * Math.cos(2.0 * Math.PI * key / n);
          p[2] = r * Math.sin(2.0 * Math.PI * key / n);
        });
  }

  @Override
  public String toString() {
    return "tube " + Length.metres(2.0 * outer) + " × " + Length.metres(2.0 * inner) + ", " + Length.metres(length) + " long";
  }
}
