// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.NamedUnit;

/**
 * The parabola through a drag polar, with its least drag where it belongs: not at no lift, on a cambered wing.
 *
 * <pre>{@code C_D = C_Dmin + K·(C_L − C_L0)²}</pre>
 *
 * @param leastDrag C_Dmin
 * @param factor K
 * @param leastDragLift C_L0
 * @param greatestLift lift coefficient at which the polar ends
 */
public record ParabolicPolar(double leastDrag, double factor, double leastDragLift, double greatestLift)
    implements DragPolar {
  /** The parabola. */
  public static final Formula DRAG =
      Formula.named("drag coefficient, parabolic polar")
          .gives("C_D")
          .as("C_Dmin + K·(C_L − C_L0)²")
          .where("C_Dmin", "least drag coefficient", 0.001, 1)
          .where("K", "factor of drag due to lift", 0.005, 1)
          .where("C_L", "lift coefficient", -2, 3)
          .where("C_L0", "lift coefficient of least drag", -1, 1.5)
          .from(Source.DEFINITION)
          .computedBy(ParabolicPolar::drag);

  /** Refuses a parabola that is none. */
  public ParabolicPolar {
    Door.positive(leastDrag, "least drag coefficient");
    Door.positive(factor, "factor of drag due to lift");
    Door.finite(leastDragLift, "lift coefficient of least drag");
    Door.positive(greatestLift, "greatest lift coefficient");
  }

  /**
   * Drag coefficient.
   *
   * <pre>{@code C_D = C_Dmin + K·(C_L − C_L0)²}</pre>
   *
   * <p>Example: 0.03, 0.06, C_L = 0.7, C_L0 = 0.2 gives 0.045.
   *
   * @param leastDrag C_Dmin
   * @param factor K
   * @param lift C_L
   * @param leastDragLift C_L0
   * @return C_D
   */
  public static double drag(double leastDrag, double factor, double lift, double leastDragLift) {
    double offset = lift - leastDragLift;
    return leastDrag + factor * offset * offset;
  }

  @Override
  public double dragCoefficient(double lift) {
    return drag(leastDrag, factor, lift, leastDragLift);
  }

  @Override
  public Interval lifts() {
    return Interval.atMost(greatestLift);
  }

  @Override
  public String toString() {
    return "C_D = " + NamedUnit.NUMBER.format(leastDrag, 4) + " + " + NamedUnit.NUMBER.format(factor, 4) + "·(C_L − "
        + NamedUnit.NUMBER.format(leastDragLift, 3) + ")² to C_L " + NamedUnit.NUMBER.format(greatestLift, 3);
  }
}
