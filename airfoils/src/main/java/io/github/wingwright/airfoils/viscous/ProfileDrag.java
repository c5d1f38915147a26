// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils.viscous;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;

/** Closed formulas of section drag. */
public final class ProfileDrag {
  private ProfileDrag() {}

  /** Squire and Young's drag of one side of a section. */
  public static final Formula SQUIRE_YOUNG = Formula.named("drag of one side from its trailing edge")
      .gives("c_d")
      .as("2·θ·v^((H + 5)/2)")
      .where("θ", "momentum thickness at the trailing edge over chord", 0, 0.1)
      .where("v", "speed at the trailing edge over stream speed", 0.5, 1.5)
      .where("H", "shape factor at the trailing edge", 1.2, 2.5)
      .from(Source.fromMemory("Squire and Young, ARC R&M 1838, 1937", ""))
      .computedBy(ProfileDrag::squireYoung);

  /** Laminar friction drag of a flat plate, both sides. */
  public static final Formula LAMINAR_PLATE = Formula.named("laminar drag of a flat plate, both sides")
      .gives("c_d")
      .as("2.656458689722/√(R) + 5.336/R^0.875")
      .where("R", "Reynolds number on the chord", 1e3, 1e6)
      .from(Source.fromMemory("Blasius, 1908, with the trailing-edge term of Jobe and Burggraf,"
          + " Proc. Roy. Soc. A 340, 1974", ""))
      .computedBy(ProfileDrag::laminarPlate);

  /** Drag of a blunt trailing edge. */
  public static final Formula BASE = Formula.named("drag of a blunt trailing edge")
      .gives("c_d,b")
      .as("0.135·h^(4/3)/c_df^(1/3)")
      .where("h", "thickness of the trailing edge over chord", 0, 0.05)
      .where("c_df", "drag coefficient without the base", 0.004, 0.1)
      .from(Source.fromMemory("Hoerner, Fluid-Dynamic Drag, 1965, chapter 3", "two-dimensional base, 0.135/∛C_fB"))
      .computedBy(ProfileDrag::base);

  /**
   * Drag of a blunt trailing edge: the suction on its base, less the more the boundary layer shields it.
   *
   * @param thickness thickness of the trailing edge [chords]
   * @param forebody drag coefficient without the base [1], positive
   * @return drag coefficient [1]; 0.00127 for a printed edge of 1 % on a section with 0.012
   */
  public static double base(double thickness, double forebody) {
    return 0.135 * Math.pow(thickness, 4.0 / 3) / Math.cbrt(forebody);
  }

  /**
   * Drag of one side of a section from its layer at the trailing edge.
   *
   * @param theta momentum thickness at the trailing edge [chords]
   * @param speed speed there [stream speeds]
   * @param shape shape factor there [1], up to 2.5
   * @return drag coefficient [1]
   */
  public static double squireYoung(double theta, double speed, double shape) {
    return 2 * theta * Math.pow(speed, (shape + 5) / 2);
  }

  /**
   * Laminar friction drag of a flat plate, both sides, with the second-order term of its trailing edge.
   *
   * @param reynolds Reynolds number on the chord [1], positive
   * @return drag coefficient [1]; 0.0282520 at 10⁴
   */
  public static double laminarPlate(double reynolds) {
    return 2.656458689722 / Math.sqrt(reynolds) + 5.336 / Math.pow(reynolds, 0.875);
  }
}
