// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.derivatives;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.NamedUnit;

/**
 * What a fin adds to the lateral derivatives: a side force at its centre, and the moments of that force.
 *
 * <p>With the side force per sideslip C_Yβ,v (negative), the arm l_g from the centre of gravity back to the fin's
 * aerodynamic centre (l_v, from the wing's quarter chord, is that of the volume coefficient), its height z_g above the
 * centre of gravity, and what the fin feels of each motion,
 * <pre>{@code
 * β_v = β + 2·(z_g/b)·p̂ − 2·(l_g/b)·r̂
 * ΔC_Y = C_Yβ,v·β_v        ΔC_l = (z_g/b)·ΔC_Y        ΔC_n = −(l_g/b)·ΔC_Y
 * }</pre>
 * all nine derivatives follow.
 */
public final class FinLateral {
  private static final Source HANDBOOK = Source.fromMemory("USAF stability and control handbook (DATCOM), 1978",
      "section 5.4.1, as quoted by R. C. Nelson, Flight Stability and Automatic Control");

  /** Sidewash and dynamic pressure at the fin. */
  public static final Formula SIDEWASH_FACTOR = Formula.named("sidewash and dynamic pressure at the fin")
      .gives("k_σ")
      .as("0.724 + 3.06·s_v/(1 + cos(Λ)) + 0.4·z_w + 0.009·A")
      .where("s_v", "fin area over wing area", 0.02, 0.3)
      .where("Λ", "sweep of the wing's quarter-chord line", Angle.RADIAN, -0.2, 0.8)
      .where("z_w", "height of the wing below the body's axis over the body's depth", -0.5, 0.5)
      .where("A", "aspect ratio of the wing", 3, 20)
      .from(HANDBOOK)
      .computedBy(FinLateral::sidewashFactor);

  /** Side force per sideslip of a fin. */
  public static final Formula SIDE_FORCE = Formula.named("side force due to sideslip of a fin")
      .gives("C_Yβ,v", NamedUnit.PER_RADIAN)
      .as("−a_v·k_σ·s_v")
      .where("a_v", "lift slope of the fin", NamedUnit.PER_RADIAN, 1, 6.3)
      .where("k_σ", "sidewash and dynamic pressure at the fin", 0.5, 1.5)
      .where("s_v", "fin area over wing area", 0.01, 0.3)
      .from(Source.DEFINITION)
      .computedBy(FinLateral::sideForce);

  /** What a fin's aspect ratio counts for on a body, as a mirror in which it is seen again. */
  public static final double BODY_REFLECTION = 1.55;

  /** Effective aspect ratio of a fin with a tailplane on its top. */
  public static final Formula END_PLATE = Formula.named("effective aspect ratio of a fin with a tailplane at its end")
      .gives("A_e")
      .as("A·(1 + 0.5·r/(r + 0.85))")
      .where("A", "aspect ratio of the fin without the tailplane", 0.8, 4)
      .where("r", "span of the tailplane over height of the fin", 0.5, 3)
      .from(Source.library("fitted to this library's converged lattice, fin of aspect ratio 1.2 and 2 with a tailplane of its"
          + " chord, within 2 %"))
      .computedBy(FinLateral::endPlateAspectRatio);

  private FinLateral() {}

  /**
   * Effective aspect ratio of a fin with a tailplane at one end: it keeps the air from flowing around that end.
   *
   * <pre>{@code A_e = A·(1 + 0.5·r/(r + 0.85))        r = b_h/b_v}</pre>
   *
   * @param aspectRatio aspect ratio of the fin without the tailplane A, height squared over area [-]
   * @param ratio span of the tailplane over height of the fin r [-]
   * @return A_e [-]: 1.62 for aspect ratio 1.2 and a tailplane of twice the height
   */
  public static double endPlateAspectRatio(double aspectRatio, double ratio) {
    return aspectRatio * (1 + 0.5 * ratio / (ratio + 0.85));
  }

  /**
   * Sidewash and dynamic pressure at the fin.
   *
   * <pre>{@code (1 + ∂σ/∂β)·η_v = 0.724 + 3.06·(S_v/S)/(1 + cos Λ) + 0.4·z_w/d + 0.009·A}</pre>
   *
   * <p>Fitted to full-size shapes with the fin on the body; a fin on a thin boom is nearer to one.
   *
   * @param areaRatio fin area over wing area S_v/S [-]
   * @param sweep sweep of the wing's quarter-chord line Λ [rad]
   * @param wingBelowAxis height of the body's axis above the wing over the body's depth z_w/d [-], positive for a low
   *     wing
   * @param aspectRatio aspect ratio of the wing A [-]
   * @return factor [-]: 0.93 for S_v/S 0.1, unswept, mid wing, aspect ratio 6
   */
  public static double sidewashFactor(double areaRatio, double sweep, double wingBelowAxis, double aspectRatio) {
    return 0.724 + 3.06 * areaRatio / (1 + Math.cos(sweep)) + 0.4 * wingBelowAxis + 0.009 * aspectRatio;
  }

  /**
   * Side force per sideslip of a fin.
   *
   * <pre>{@code C_Yβ,v = −a_v·(1 + ∂σ/∂β)·η_v·S_v/S}</pre>
   *
   * @param liftSlope lift slope of the fin a_v [1/rad], on its effective aspect ratio
   * @param sidewash factor of sidewash and dynamic pressure [-]
   * @param areaRatio fin area over wing area S_v/S [-]
   * @return C_Yβ,v [1/rad], negative
   */
  public static double sideForce(double liftSlope, double sidewash, double areaRatio) {
    return -liftSlope * sidewash * areaRatio;
  }

  /**
   * Yaw due to sideslip: the fin turns the nose into the wind.
   *
   * @param sideForce C_Yβ,v [1/rad]
   * @param arm arm over span l_g/b [-], fin behind the centre of gravity positive
   * @return C_nβ,v [1/rad], positive for a fin behind
   */
  public static double yawDueToSideslip(double sideForce, double arm) {
    return -arm * sideForce;
  }

  /**
   * Roll due to sideslip: a high fin acts like dihedral.
   *
   * @param sideForce C_Yβ,v [1/rad]
   * @param height height over span z_g/b [-], above the centre of gravity positive
   * @return C_lβ,v [1/rad], negative for a high fin
   */
  public static double rollDueToSideslip(double sideForce, double height) {
    return height * sideForce;
  }

  /**
   * Yaw damping.
   *
   * <pre>{@code C_nr,v = 2·(l_g/b)²·C_Yβ,v}</pre>
   *
   * @param sideForce C_Yβ,v [1/rad]
   * @param arm arm over span l_g/b [-]
   * @return C_nr,v [-], negative
   */
  public static double yawDamping(double sideForce, double arm) {
    return 2 * arm * arm * sideForce;
  }

  /**
   * Roll due to yaw rate.
   *
   * <pre>{@code C_lr,v = −2·(l_g/b)·(z_g/b)·C_Yβ,v}</pre>
   *
   * @param sideForce C_Yβ,v [1/rad]
   * @param arm arm over span l_g/b [-]
   * @param height height over span z_g/b [-]
   * @return C_lr,v [-], positive for a high fin behind
   */
  public static double rollDueToYawRate(double sideForce, double arm, double height) {
    return -2 * arm * height * sideForce;
  }

  /**
   * Yaw due to roll rate; the same product as roll due to yaw rate.
   *
   * @param sideForce C_Yβ,v [1/rad]
   * @param arm arm over span l_g/b [-]
   * @param height height over span z_g/b [-]
   * @return C_np,v [-], positive for a high fin behind
   */
  public static double yawDueToRollRate(double sideForce, double arm, double height) {
    return -2 * arm * height * sideForce;
  }

  /**
   * Roll damping.
   *
   * @param sideForce C_Yβ,v [1/rad]
   * @param height height over span z_g/b [-]
   * @return C_lp,v [-], negative
   */
  public static double rollDamping(double sideForce, double height) {
    return 2 * height * height * sideForce;
  }

  /**
   * Side force due to yaw rate.
   *
   * @param sideForce C_Yβ,v [1/rad]
   * @param arm arm over span l_g/b [-]
   * @return C_Yr,v [-], positive for a fin behind
   */
  public static double sideForceDueToYawRate(double sideForce, double arm) {
    return -2 * arm * sideForce;
  }

  /**
   * Side force due to roll rate.
   *
   * @param sideForce C_Yβ,v [1/rad]
   * @param height height over span z_g/b [-]
   * @return C_Yp,v [-], negative for a high fin
   */
  public static double sideForceDueToRollRate(double sideForce, double height) {
    return 2 * height * sideForce;
  }
}
