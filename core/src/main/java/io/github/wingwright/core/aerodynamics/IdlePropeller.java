// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Door;
import java.util.Objects;

/**
 * A propeller that does not drive.
 *
 * <pre>{@code D/q = k·σ·A_disk        k = 0.1 feathered, 0.8 stopped}</pre>
 *
 * <p>σ is the solidity: the area of the blades over that of the disk they sweep, about 0.04 for each blade. A small glider
 * with a motor folds its blades instead.
 */
public enum IdlePropeller {
  /** Blades turned edge-on. */
  FEATHERED(0.1),
  /** Fixed blades, standing still. */
  STOPPED(0.8);

  private static final Source SOURCE = Sources.raymer("sec. 12.6.7");
  private static final double SOLIDITY_OF_A_BLADE = 0.04;

  private final double factor;

  IdlePropeller(double factor) {
    this.factor = factor;
  }

  /**
   * The usual solidity.
   *
   * @param blades number of blades, 1 to 8
   * @return σ; 0.08 for two blades
   */
  public static double solidity(int blades) {
    return SOLIDITY_OF_A_BLADE * Door.within(blades, 1, 8, "number of blades");
  }

  /**
   * The propeller as a component.
   *
   * <p>Example: two blades of 250 mm, stopped: σ 0.08, disk 491 cm², 31.4 cm² of drag area.
   *
   * @param name what it is
   * @param solidity solidity σ, more than 0 and at most 0.5
   * @param disk area that the blades sweep, positive
   * @return the component
   */
  public ItemDrag of(String name, double solidity, Area disk) {
    Objects.requireNonNull(name, "name");
    Door.positive(disk, "area of the disk of " + name);
    Door.within(Door.positive(solidity, "solidity of " + name), 0.0, 0.5, "solidity of " + name);
    return ItemDrag.protuberance(name, factor * solidity, disk, SOURCE);
  }

  /**
   * The drag coefficient on the area of the blades.
   *
   * @return k
   */
  public double factor() {
    return factor;
  }

  /**
   * Where it comes from.
   *
   * @return the source
   */
  public Source source() {
    return SOURCE;
  }
}
