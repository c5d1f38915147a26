// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

import io.github.wingwright.core.basis.Band;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.geometry.AirfoilSection;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.NamedUnit;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A section without measured data at the Reynolds numbers of small models, 10⁴ to 3·10⁵: bands, not values.
 *
 * <p>Below about 5·10⁴ the laminar layer leaves the section aft of its thickest point and does not come back; up to some
 * 2·10⁵ it comes back late or not, depending on details that no estimate knows. Two tunnels that measured the same model at
 * 6·10⁴ differ by 30 %. So each number is a band between what the flow does at best and at worst.
 *
 * <h2>Drag</h2>
 *
 * <pre>{@code
 * least    2·C_f                          friction of a laminar plate: no section has been measured below
 * attached c_a = 2·C_f·(1 + t) + t²       Hoerner's laminar section
 * greatest c_a + 0.15·(t + m) + (c_l − c_l0)²/2π
 *                                         as if the flow left at the thickest point: base drag on the height of
 *                                         thickness and camber, and no suction at the nose
 * likely   c_a + 0.7·s·0.15·(t + m) + k·(c_l − c_l0)²,    k = (0.15 + 0.5·s)/2π
 * s        1 below 3·10⁴, falling with log Re to 0 at 1.5·10⁵: how separated the flow is
 * }</pre>
 * with C_f the friction coefficient of a laminar plate ({@link SkinFriction#laminar}), t and m the greatest thickness and camber
 * over the chord, c_l0 the lift coefficient of least drag.
 *
 * <p>On the section of 6 % camber and 9 % thickness, measured 0.028 and 0.036 at 6·10⁴, the likely value is 0.029; on the
 * symmetric one of 9 %, measured 0.0118, it is 0.025 and the least is 0.0109. That is how well one can know it.
 *
 * <h2>Zero-lift angle, moment, slope</h2>
 *
 * <p>Between thin-airfoil theory and the part of it that was measured: 0.43 of the theoretical angle at 6·10⁴, 0.58 at
 * 10⁵, 0.82 at 2·10⁵; a slope of 0.6, 0.8 and 0.87 of 2π at 4·10⁴, 6·10⁴ and 10⁵. The moment was not measured; it is
 * taken to lose what the angle loses. The likely value is the middle.
 */
public final class EstimatedPolar implements SectionPolar, ShownPolar, Serializable {
  private static final long serialVersionUID = 1L;

  /** Drag of the section with its layer attached. */
  public static final Formula ATTACHED_DRAG =
      Formula.named("drag of a laminar section")
          .gives("c_a")
          .as("2·C_f·(1 + t) + t²")
          .where("C_f", "laminar friction coefficient", 1e-3, 0.05)
          .where("t", "thickness ratio", 0, 0.2)
          .from(Sources.hoerner("ch. 6, laminar sections"))
          .computedBy(EstimatedPolar::attached);

  /** How separated the flow is. */
  public static final Formula SEPARATION =
      Formula.named("separated part")
          .gives("s")
          .as("max(0, min(1, ln(150000/Re) / ln(5)))")
          .where("Re", "Reynolds number on the chord", 1e4, 3e5)
          .from(Source.library("all separated below 3·10⁴, attached from 1.5·10⁵; fitted to two tunnels at 6·10⁴ and 10⁵"))
          .computedBy(EstimatedPolar::separation);

  /** The likely drag. */
  public static final Formula LIKELY_DRAG =
      Formula.named("likely profile drag of the section")
          .gives("c_d")
          .as("c_a + 0.7·s·0.15·(t + m) + (0.15 + 0.5·s)/(2·π)·(C_L − c_l0)²")
          .where("c_a", "drag with the layer attached", 0.003, 0.1)
          .where("s", "separated part", 0, 1)
          .where("t", "thickness ratio", 0, 0.2)
          .where("m", "camber over chord", 0, 0.1)
          .where("C_L", "lift coefficient", -1, 1.5)
          .where("c_l0", "lift coefficient of least drag", -1, 1.5)
          .from(Source.library("between laminar and separated; fitted to two tunnels at 6·10⁴ and 10⁵"))
          .computedBy(EstimatedPolar::likely);

  /** Reynolds number below which a separated laminar layer does not come back. */
  public static final double NO_REATTACHMENT_BELOW = 5e4;

  private static final double LN_5 = Math.log(5.0);
  private static final double BASE_PRESSURE = 0.15;
  private static final double NO_SUCTION = 1.0 / (2.0 * Math.PI);
  private static final Interval RANGE = Interval.between(1e4, 3e5);

  private static final LogTable ANGLE_PART =
      LogTable.of(new double[] {6.13e4, 1.016e5, 2.024e5, 9e6}, new double[] {0.43, 0.58, 0.815, 0.93});
  private static final LogTable SLOPE_PART =
      LogTable.of(new double[] {4e4, 6.1e4, 1e5, 9e6}, new double[] {0.6, 0.8, 0.87, 0.95});
  private static final LogTable GREATEST_USABLE = LogTable.of(new double[] {6e4, 2e5}, new double[] {0.9, 1.3});
  private static final LogTable LIKELY_USABLE = LogTable.of(new double[] {6e4, 2e5}, new double[] {0.8, 0.95});
  private static final double LEAST_USABLE = 0.7;

  private static final Source HOERNER = Sources.hoerner("ch. 6, laminar sections; separated end by this library");
  private static final Source CARMICHAEL = Source.fromMemory("Carmichael, NASA CR-165803, 1981", "vol. I");
  private static final Source MEASURED =
      Source.published("University of Illinois low-speed airfoil tests, vol. 1", "6 % camber, 9 % thick; 9 % symmetric");

  private final String name;
  private final double thickness;
  private final double camber;
  private final MeanLineTheory theory;

  private EstimatedPolar(String name, double thickness, double camber, MeanLineTheory theory) {
    this.name = name;
    this.thickness = thickness;
    this.camber = camber;
    this.theory = theory;
  }

  /**
   * The estimate for a section.
   *
   * @param section the section
   * @return its polar
   */
  public static EstimatedPolar of(AirfoilSection section) {
    Objects.requireNonNull(section, "section");
    return new EstimatedPolar(
        section.name() + ", estimated",
        section.maximumThickness(),
        Math.abs(section.maximumCamber()),
        MeanLineTheory.of(section));
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public Source source() {
    return HOERNER;
  }

  @Override
  public Interval reynoldsRange() {
    return RANGE;
  }

  /**
   * Drag of the section with its laminar layer attached, without lift: friction on both sides, and a pressure drag that
   * friction does not scale.
   *
   * <pre>{@code c_d = 2·C_f·(1 + t) + t²        C_f = 1.328/√Re}</pre>
   *
   * <p>Source: Hoerner, Fluid-Dynamic Drag, 1965, ch. 6 (from memory). Example: t = 0.09, Re = 6·10⁴ gives 0.0199190.
   *
   * @param thickness thickness ratio t
   * @param reynolds Reynolds number on the chord Re, positive
   * @return c_d
   */
  public static double attachedDrag(double thickness, double reynolds) {
    return attached(SkinFriction.laminar(reynolds), thickness);
  }

  /** Drag with the layer attached, from a friction coefficient. */
  static double attached(double friction, double thickness) {
    return 2.0 * friction * (1.0 + thickness) + thickness * thickness;
  }

  /** How separated the flow is: 1 where it does not come back, 0 where it comes back soon. */
  static double separation(double reynolds) {
    return Math.max(0.0, Math.min(1.0, Math.log(1.5e5 / reynolds) / LN_5));
  }

  /** The likely drag from its parts. */
  static double likely(double attached, double separated, double t, double m, double cl, double leastDragLift) {
    double offset = cl - leastDragLift;
    return attached
        + 0.7 * separated * BASE_PRESSURE * (t + m)
        + (0.15 + 0.5 * separated) * NO_SUCTION * offset * offset;
  }

  /** Lift coefficient of least drag: the design lift, less what decambering takes. */
  private double leastDragLift(double reynolds) {
    return 0.5 * (1.0 + ANGLE_PART.at(reynolds)) * theory.designLift();
  }

  @Override
  public Band profileDrag(double cl, double reynolds) {
    Door.finite(cl, "lift coefficient");
    Door.positive(reynolds, "Reynolds number");
    double offset = cl - leastDragLift(reynolds);
    double least = 2.0 * SkinFriction.laminar(reynolds);
    double greatest =
        attachedDrag(thickness, reynolds) + BASE_PRESSURE * (thickness + camber) + NO_SUCTION * offset * offset;
    return new Band(least, likelyProfileDrag(cl, reynolds), greatest);
  }

  @Override
  public double likelyProfileDrag(double cl, double reynolds) {
    return likely(
        attachedDrag(thickness, reynolds), separation(reynolds), thickness, camber, cl, leastDragLift(reynolds));
  }

  @Override
  public Step profileDragStep(Step lift, Step reynolds) {
    Objects.requireNonNull(reynolds, "reynolds");
    Source geometry = Source.taken("geometry of the section");
    Step t = Step.given("thickness ratio of the section", "t", thickness, geometry);
    Step leastDragLift =
        Step.solution(
            "lift coefficient of least drag",
            "c_l0",
            NamedUnit.NUMBER,
            "quadrature over the mean line, less what decambering takes at this Reynolds number",
            "c_l0 = (1 + k(Re))/2·c_l,design",
            v -> leastDragLift(v[0]),
            v -> leastDragLift(v[0]) - v[1],
            MEASURED,
            reynolds);
    return Step.of(
        LIKELY_DRAG,
        Step.of(ATTACHED_DRAG, Step.of(SkinFriction.LAMINAR, reynolds), t),
        Step.of(SEPARATION, reynolds),
        t,
        Step.given("camber of the section", "m", camber, geometry),
        lift,
        leastDragLift);
  }

  @Override
  public Band zeroLiftAngle(double reynolds) {
    return between(theory.zeroLiftAngle(), ANGLE_PART.at(Door.positive(reynolds, "Reynolds number")));
  }

  @Override
  public Band moment(double reynolds) {
    return between(theory.moment(), ANGLE_PART.at(Door.positive(reynolds, "Reynolds number")));
  }

  @Override
  public Band liftSlope(double reynolds) {
    return between(2.0 * Math.PI, SLOPE_PART.at(Door.positive(reynolds, "Reynolds number")));
  }

  @Override
  public Band usableLift(double reynolds) {
    Door.positive(reynolds, "Reynolds number");
    return new Band(LEAST_USABLE, LIKELY_USABLE.at(reynolds), GREATEST_USABLE.at(reynolds));
  }

  @Override
  public double likelyLiftSlope(double reynolds) {
    double theory = 2.0 * Math.PI;
    return 0.5 * (theory + SLOPE_PART.at(reynolds) * theory);
  }

  @Override
  public double likelyUsableLift(double reynolds) {
    return LIKELY_USABLE.at(reynolds);
  }

  /** From a part of a theoretical value to the whole of it. */
  private static Band between(double theory, double part) {
    double measured = part * theory;
    return new Band(Math.min(theory, measured), 0.5 * (theory + measured), Math.max(theory, measured));
  }

  @Override
  public List<Finding> findings(double cl, double reynolds) {
    List<Finding> findings = new ArrayList<>();
    if (!RANGE.contains(reynolds)) {
      findings.add(
          Finding.of(
              Severity.CAUTION,
              "Reynolds number of the section",
              "The estimate for sections without measured data is used outside its Reynolds numbers.",
              reynolds,
              RANGE,
              NamedUnit.NUMBER,
              HOERNER));
    }
    if (reynolds < NO_REATTACHMENT_BELOW) {
      findings.add(
          Finding.of(
              Severity.CAUTION,
              "section flow: separated, not reattaching",
              "Below a Reynolds number of about 50 000 a separated laminar layer does not come back: drag, zero-lift angle and "
                  + "moment are bands. A thin curved plate does better here than a thick section.",
              reynolds,
              Interval.atLeast(NO_REATTACHMENT_BELOW),
              NamedUnit.NUMBER,
              CARMICHAEL));
    } else {
      findings.add(
          Finding.of(
              Severity.NOTE,
              "section data estimated",
              "There are no measured data for this section: drag is a band from laminar friction to separated flow.",
              MEASURED));
    }
    double usable = usableLift(reynolds).likely();
    if (Math.abs(cl) > usable) {
      findings.add(
          Finding.of(
              Severity.CAUTION,
              "section lift",
              "The section is asked for more lift than a flight can use at this Reynolds number.",
              cl,
              Interval.between(-usable, usable),
              NamedUnit.NUMBER,
              Source.fromMemory("small-model practice", "usable lift 0.7 to 0.9")));
    }
    return List.copyOf(findings);
  }

  @Override
  public String toString() {
    return name;
  }
}
