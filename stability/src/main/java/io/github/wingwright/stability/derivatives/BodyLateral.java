// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.derivatives;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.NamedUnit;

/**
 * What a body adds to the lateral derivatives: it pushes the nose away from the wind, and it is pushed sideways.
 */
public final class BodyLateral {
  /** Yaw due to sideslip of a slender body. */
  public static final Formula YAW_DUE_TO_SIDESLIP = Formula.named("yaw due to sideslip of a slender body")
      .gives("C_nβ,f", NamedUnit.PER_RADIAN)
      .as("−2·k·v_f")
      .where("k", "difference of the apparent-mass factors", 0, 1)
      .where("v_f", "volume of the body over S·b", 0, 0.2)
      .from(Source.fromMemory("M. M. Munk, The aerodynamic forces on airship hulls, NACA Report 184, 1924", ""))
      .computedBy(BodyLateral::yawDueToSideslip);

  /** Side force per sideslip of a body. */
  public static final Formula SIDE_FORCE = Formula.named("side force due to sideslip of a body")
      .gives("C_Yβ,f", NamedUnit.PER_RADIAN)
      .as("−2·s_f")
      .where("s_f", "greatest section of the body over wing area", 0, 0.5)
      .from(Source.fromMemory("USAF stability and control handbook (DATCOM), 1978", "section 5.2.1.1"))
      .computedBy(BodyLateral::sideForce);

  private BodyLateral() {}

  /**
   * Yaw due to sideslip of a slender body: the couple of ideal flow, half of which a boundary layer may take away.
   *
   * <pre>{@code C_nβ,f = −2·(k₂ − k₁)·Vol/(S·b)}</pre>
   *
   * @param apparentMass difference of the apparent-mass factors k₂ − k₁ [-]: 0.77 at fineness 4, 0.94 at 10
   * @param volume volume of the body over S·b [-]
   * @return C_nβ,f [1/rad], negative
   */
  public static double yawDueToSideslip(double apparentMass, double volume) {
    return -2 * apparentMass * volume;
  }

  /**
   * Side force per sideslip of a body, for a wing at mid height; a high or low wing raises it by up to a half.
   *
   * @param sectionRatio greatest section of the body over wing area [-]
   * @return C_Yβ,f [1/rad], negative
   */
  public static double sideForce(double sectionRatio) {
    return -2 * sectionRatio;
  }
}
