// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.derivatives;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.NamedUnit;

/**
 * What a wing adds to the lateral derivatives, by strips: each section works as if alone, with the dynamic pressure and
 * the angle of attack it meets.
 *
 * <p>Two integrals of a straight-tapered wing appear again and again:
 * <pre>{@code
 * ∫|y|·c dy = S·b·(1 + 2λ)/(6·(1 + λ))          ∫y²·c dy = S·b²·(1 + 3λ)/(24·(1 + λ))
 * }</pre>
 * Strips overrate the outer wing, because the lift there falls towards the tip; the lifting line and the lattice of this
 * library do not. Signs: C_l starboard wing down, C_n nose to starboard, β wind from starboard positive.
 */
public final class WingLateral {
  private static final Source STRIPS = new Source(Source.Standing.DEFINITION, "strip integral", "");

  /** Roll due to sideslip of dihedral. */
  public static final Formula DIHEDRAL_EFFECT = Formula.named("roll due to sideslip of dihedral")
      .gives("C_lβ", NamedUnit.PER_RADIAN)
      .as("−a·Γ/4·(2·(1 + 2·λ)/(3·(1 + λ)))")
      .where("a", "lift slope of the wing", NamedUnit.PER_RADIAN, 2, 6.3)
      .where("Γ", "equivalent dihedral", Angle.RADIAN, -0.35, 0.35)
      .where("λ", "taper ratio", 0, 1)
      .from(Source.published("L. Leifsson, AAE 451 course book, Purdue University", "lateral stability"))
      .computedBy(WingLateral::dihedralEffect);

  /** Roll due to sideslip of sweep. */
  public static final Formula SWEEP_EFFECT = Formula.named("roll due to sideslip of sweep")
      .gives("C_lβ", NamedUnit.PER_RADIAN)
      .as("−C_L·tan(Λ)·(1 + 2·λ)/(3·(1 + λ))")
      .where("C_L", "lift coefficient", -0.5, 2)
      .where("Λ", "sweep of the quarter-chord line", Angle.RADIAN, -0.7, 0.8)
      .where("λ", "taper ratio", 0, 1)
      .from(STRIPS)
      .computedBy(WingLateral::sweepEffect);

  /** Roll due to sideslip of the wing's height on the body. */
  public static final Formula POSITION_EFFECT = Formula.named("roll due to sideslip of the wing's height on the body")
      .gives("C_lβ", NamedUnit.PER_RADIAN)
      .as("−1.2·√(A)·z_b·(d_b + w_b)")
      .where("A", "aspect ratio", 3, 20)
      .where("z_b", "height of the wing above the body's axis over span", -0.2, 0.2)
      .where("d_b", "depth of the body over span", 0, 0.3)
      .where("w_b", "width of the body over span", 0, 0.3)
      .from(Source.published("L. Leifsson, AAE 451 course book, Purdue University", "lateral stability"))
      .computedBy(WingLateral::positionEffect);

  /** Yaw due to sideslip of the lift of an unswept wing. */
  public static final Formula YAW_DUE_TO_SIDESLIP = Formula.named("yaw due to sideslip of an unswept wing")
      .gives("C_nβ", NamedUnit.PER_RADIAN)
      .as("C_L²/(4·π·A)")
      .where("C_L", "lift coefficient", -0.5, 2)
      .where("A", "aspect ratio", 3, 20)
      .from(Source.published("L. Leifsson, AAE 451 course book, Purdue University", "directional stability"))
      .computedBy(WingLateral::yawDueToSideslip);

  /** Roll damping by strips. */
  public static final Formula ROLL_DAMPING = Formula.named("roll damping of a wing by strips")
      .gives("C_lp")
      .as("−a/12·(1 + 3·λ)/(1 + λ)")
      .where("a", "lift slope of the wing", NamedUnit.PER_RADIAN, 2, 6.3)
      .where("λ", "taper ratio", 0, 1)
      .from(STRIPS)
      .computedBy(WingLateral::rollDamping);

  /** Roll damping with the loss of an elliptic wing. */
  public static final Formula ROLL_DAMPING_WITH_LOSS = Formula.named("roll damping of a wing, with loss of lift to the wake")
      .gives("C_lp")
      .as("−a_0·A/(A + 4)/12·(1 + 3·λ)/(1 + λ)")
      .where("a_0", "section lift slope", NamedUnit.PER_RADIAN, 3, 6.6)
      .where("A", "aspect ratio", 4, 20)
      .where("λ", "taper ratio", 0, 1)
      .from(Source.library("strip integral with the loss that an elliptic wing has in roll by the lifting line"))
      .computedBy(WingLateral::rollDampingWithLoss);

  /** Roll due to yaw rate by strips. */
  public static final Formula ROLL_DUE_TO_YAW_RATE = Formula.named("roll due to yaw rate of a wing by strips")
      .gives("C_lr")
      .as("C_L/6·(1 + 3·λ)/(1 + λ)")
      .where("C_L", "lift coefficient", -0.5, 2)
      .where("λ", "taper ratio", 0, 1)
      .from(STRIPS)
      .computedBy(WingLateral::rollDueToYawRate);

  /** Yaw due to roll rate of an elliptic wing. */
  public static final Formula YAW_DUE_TO_ROLL_RATE = Formula.named("yaw due to roll rate of a wing")
      .gives("C_np")
      .as("−C_L/8·(A − 2)/(A + 4)")
      .where("C_L", "lift coefficient", -0.5, 2)
      .where("A", "aspect ratio", 4, 20)
      .from(new Source(Source.Standing.DEFINITION, "lifting line of an elliptic wing, section slope 2π", ""))
      .computedBy(WingLateral::yawDueToRollRate);

  /** Yaw damping of profile drag by strips. */
  public static final Formula YAW_DAMPING = Formula.named("yaw damping of the wing's profile drag by strips")
      .gives("C_nr")
      .as("−C_D0/6·(1 + 3·λ)/(1 + λ)")
      .where("C_D0", "profile drag coefficient of the wing", 0, 0.2)
      .where("λ", "taper ratio", 0, 1)
      .from(STRIPS)
      .computedBy(WingLateral::yawDamping);

  private WingLateral() {}

  /**
   * Roll due to sideslip of dihedral: the wing to windward meets β·Γ more angle of attack, and lifts.
   *
   * <pre>{@code C_lβ = −(a·Γ/4)·2·(1 + 2λ)/(3·(1 + λ))}</pre>
   *
   * <p>A rectangular wing of slope 4.5 with 5° has −0.098 per radian.
   *
   * @param liftSlope lift slope of the wing a [1/rad]
   * @param dihedral equivalent dihedral Γ [rad]
   * @param taper taper ratio λ [-]
   * @return C_lβ [1/rad], negative for dihedral
   */
  public static double dihedralEffect(double liftSlope, double dihedral, double taper) {
    return -liftSlope * dihedral / 4 * (2 * (1 + 2 * taper) / (3 * (1 + taper)));
  }

  /**
   * Roll due to sideslip of sweep: the wing to windward is less swept to the wind. In proportion to lift.
   *
   * <pre>{@code C_lβ = −C_L·tan Λ·(1 + 2λ)/(3·(1 + λ))}</pre>
   *
   * <p>At C_L 0.5 and 20° a rectangular wing has −0.091 per radian.
   *
   * @param lift lift coefficient C_L [-]
   * @param sweep sweep of the quarter-chord line Λ [rad], aft positive
   * @param taper taper ratio λ [-]
   * @return C_lβ [1/rad], negative for sweep aft at positive lift
   */
  public static double sweepEffect(double lift, double sweep, double taper) {
    return -lift * Math.tan(sweep) * (1 + 2 * taper) / (3 * (1 + taper));
  }

  /**
   * Roll due to sideslip of the wing's height on the body: the flow round the body lifts the windward root of a high
   * wing and presses that of a low one.
   *
   * <pre>{@code C_lβ = −1.2·√A·(z/b)·(d + w)/b}</pre>
   *
   * <p>Aspect ratio 7, wing 0.05 spans above the axis of a body 0.1 spans deep and wide: −0.032 per radian, about
   * 1.6° of dihedral.
   *
   * @param aspectRatio aspect ratio A [-]
   * @param height height of the wing above the body's axis over span [-], low wing negative
   * @param depth depth of the body over span [-]
   * @param width width of the body over span [-]
   * @return C_lβ [1/rad], negative for a high wing
   */
  public static double positionEffect(double aspectRatio, double height, double depth, double width) {
    return -1.2 * Math.sqrt(aspectRatio) * height * (depth + width);
  }

  /**
   * Yaw due to sideslip of the lift of an unswept wing: small.
   *
   * <pre>{@code C_nβ = C_L²/(4·π·A)}</pre>
   *
   * @param lift lift coefficient C_L [-]
   * @param aspectRatio aspect ratio A [-]
   * @return C_nβ [1/rad], positive: 0.0057 at C_L 0.6 and aspect ratio 5
   */
  public static double yawDueToSideslip(double lift, double aspectRatio) {
    return lift * lift / (4 * Math.PI * aspectRatio);
  }

  /**
   * Roll damping by strips: the wing that goes down meets more angle of attack.
   *
   * <pre>{@code C_lp = −(a/12)·(1 + 3λ)/(1 + λ)}</pre>
   *
   * @param liftSlope lift slope of the wing a [1/rad]
   * @param taper taper ratio λ [-]
   * @return C_lp [-], negative: −0.75 for a rectangular wing of slope 4.5, where lifting line gives about −0.5
   */
  public static double rollDamping(double liftSlope, double taper) {
    return -liftSlope / 12 * (1 + 3 * taper) / (1 + taper);
  }

  /**
   * Roll damping by strips, with the loss that an elliptic wing has: in roll each half works like a wing of its own.
   *
   * <pre>{@code C_lp = −(a₀·A/(A + 4)/12)·(1 + 3λ)/(1 + λ)}</pre>
   *
   * <p>Against the lifting line it is 7 % high at aspect ratio 8 and taper 0.5, 18 % high for a rectangle.
   *
   * @param sectionSlope section lift slope a₀ [1/rad]
   * @param aspectRatio aspect ratio A [-]
   * @param taper taper ratio λ [-]
   * @return C_lp [-], negative: −0.582 for 2π, 8 and 0.5
   */
  public static double rollDampingWithLoss(double sectionSlope, double aspectRatio, double taper) {
    return -sectionSlope * aspectRatio / (aspectRatio + 4) / 12 * (1 + 3 * taper) / (1 + taper);
  }

  /**
   * Roll due to yaw rate by strips: the outer wing of a turn is faster and lifts more.
   *
   * <pre>{@code C_lr = (C_L/6)·(1 + 3λ)/(1 + λ)}</pre>
   *
   * @param lift lift coefficient C_L [-]
   * @param taper taper ratio λ [-]
   * @return C_lr [-], positive at positive lift: C_L/3 for a rectangular wing; C_L/4 for an elliptic one
   */
  public static double rollDueToYawRate(double lift, double taper) {
    return lift / 6 * (1 + 3 * taper) / (1 + taper);
  }

  /**
   * Yaw due to roll rate: the lift of the wing that goes down leans forward, and its induced drag grows.
   *
   * <pre>{@code C_np = −(C_L/8)·(A − 2)/(A + 4)}</pre>
   *
   * @param lift lift coefficient C_L [-]
   * @param aspectRatio aspect ratio A [-]
   * @return C_np [-], negative at positive lift: −0.05·C_L at aspect ratio 6
   */
  public static double yawDueToRollRate(double lift, double aspectRatio) {
    return -lift / 8 * (aspectRatio - 2) / (aspectRatio + 4);
  }

  /**
   * Yaw damping of profile drag by strips.
   *
   * <pre>{@code C_nr = −(C_D0/6)·(1 + 3λ)/(1 + λ)}</pre>
   *
   * @param profileDrag profile drag coefficient of the wing C_D0 [-]
   * @param taper taper ratio λ [-]
   * @return C_nr [-], negative
   */
  public static double yawDamping(double profileDrag, double taper) {
    return -profileDrag / 6 * (1 + 3 * taper) / (1 + taper);
  }
}
