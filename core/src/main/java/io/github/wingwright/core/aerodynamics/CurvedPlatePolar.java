// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

import io.github.wingwright.core.basis.Band;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.NamedUnit;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;

/**
 * A thin plate bent to a circular arc, one or two printed walls thick, at Reynolds numbers of 10⁴ to 10⁵.
 *
 * <p>Below 7·10⁴ it is the best section that was tested: Laitone found the highest lift and the highest ratio of lift to
 * drag on a plate of 5 % camber at every Reynolds number he tried, and little change with Reynolds number or turbulence.
 * Of curved plates only such conclusions could be read, no numbers. The likely drag is that of the flat plate, 2 % thick,
 * measured at 10⁵ and 3·10⁵ (Selig, Donovan and Fraser, Airfoils at Low Speeds, 1989), moved to the lift at which the flow
 * meets the curved nose head on:
 *
 * <pre>{@code
 * least    2·C_f                                                    laminar friction of both sides
 * likely   c_d0 + k·1.8·π·a²                                        a part k of the suction of the nose is lost
 *          c_d0 = max(2·C_f, 0.0143·(10⁵/Re)^0.1)                   0.0143 at 10⁵; some 0.013 at 3·10⁵
 *          k = min(1, 1.3·a/(a + 0.067))                            little while the bubble at the nose is short
 *          a = |c_l − c_l0|/(1.8·π)                                 angle off the ideal one; slope 0.9 of 2π
 * greatest 1.7·2·C_f + 0.15·(t + m) + (c_l − c_l0)²/1.8π            separated from the crest, no suction at the nose
 * c_l0 = 4π·m·0.8        α₀ = −2·m        c_m = −π·m                the angle and the moment 0.6 to 1 of theory
 * }</pre>
 *
 * <p>The measured plate is met within a tenth up to a lift of 0.4 and within a fifth to 0.67. The usable lift of 0.8 to 1.2
 * and the parts of theory are from memory of small-model practice. Example: a flat plate at 10⁵ and lift 0.417 has a likely
 * drag of 0.0352, measured 0.0365.
 */
public final class CurvedPlatePolar implements SectionPolar, ShownPolar, Serializable {
  private static final long serialVersionUID = 1L;

  private static final Source MEASURED_PLATE =
      Source.published("Selig, Donovan and Fraser, Airfoils at Low Speeds, 1989", "flat plate 2 % thick, 10⁵ and 3·10⁵");

  /** Angle between the flow and the one that meets the nose head on. */
  public static final Formula OFF_ANGLE =
      Formula.named("angle off the ideal angle of a curved plate")
          .gives("a")
          .as("max(C_L − 4·π·m·0.8, 4·π·m·0.8 − C_L)/(1.8·π)")
          .where("C_L", "lift coefficient", -1, 1.5)
          .where("m", "camber over chord", 0, 0.1)
          .from(MEASURED_PLATE)
          .computedBy(CurvedPlatePolar::offAngle);

  /** The likely drag. */
  public static final Formula LIKELY_DRAG =
      Formula.named("likely profile drag of a curved plate")
          .gives("c_d")
          .as("max(2·C_f, 0.0143·(100000/Re)^0.1) + min(1, 1.3·a/(a + 0.067))·1.8·π·a^2")
          .where("C_f", "laminar friction coefficient", 1e-3, 0.05)
          .where("Re", "Reynolds number on the chord", 1e4, 3e5)
          .where("a", "angle off the ideal one [rad]", 0, 0.3)
          .from(MEASURED_PLATE)
          .computedBy(CurvedPlatePolar::likely);

  private static final Interval RANGE = Interval.between(1e4, 1e5);
  private static final double PLATE_OVER_FRICTION = 1.7;
  private static final double BASE_PRESSURE = 0.15;
  private static final double PLATE_DRAG = 0.0143;
  private static final double SLOPE = 1.8 * Math.PI;
  private static final double LEAST_PART = 0.6;
  private static final double LIKELY_PART = 0.8;
  private static final Band USABLE = new Band(0.8, 1.0, 1.2);

  private static final Source LAITONE =
      Source.published("Laitone, Experiments in Fluids 23 (1997) 405-409", "abstract: the ranking; bands by this library");

  private final double camber;
  private final double thickness;

  private CurvedPlatePolar(double camber, double thickness) {
    this.camber = camber;
    this.thickness = thickness;
  }

  /**
   * A curved plate.
   *
   * @param camber height of the arc over the chord, 0 to 0.1; 0.05 is the camber that was found best
   * @param thickness thickness over chord, positive, at most 0.05
   * @return its polar
   */
  public static CurvedPlatePolar of(double camber, double thickness) {
    Door.within(camber, 0.0, 0.1, "camber of a curved plate");
    Door.positive(thickness, "thickness of a curved plate over its chord");
    Door.within(thickness, 0.0, 0.05, "thickness of a curved plate over its chord");
    return new CurvedPlatePolar(camber, thickness);
  }

  /**
   * Camber.
   *
   * @return height of the arc over the chord
   */
  public double camber() {
    return camber;
  }

  /**
   * Thickness.
   *
   * @return over the chord
   */
  public double thickness() {
    return thickness;
  }

  @Override
  public String name() {
    return "curved plate, " + NamedUnit.NUMBER.format(100.0 * camber, 3) + " % camber, "
        + NamedUnit.NUMBER.format(100.0 * thickness, 3) + " % thick";
  }

  @Override
  public Source source() {
    return LAITONE;
  }

  @Override
  public Interval reynoldsRange() {
    return RANGE;
  }

  /**
   * Angle between the flow and the one that meets the nose of a curved plate head on.
   *
   * @param cl lift coefficient [1]
   * @param camber height of the arc over the chord [1]
   * @return angle, not negative [rad]
   */
  public static double offAngle(double cl, double camber) {
    return Math.abs(cl - leastDragLift(camber)) / SLOPE;
  }

  /**
   * Likely drag of a thin plate, from the measured flat one.
   *
   * @param friction laminar friction coefficient at this Reynolds number [1]
   * @param reynolds Reynolds number on the chord [1], 10⁴ to 3·10⁵
   * @param offAngle angle off the ideal one, not negative [rad]
   * @return c_d [1]; 0.0143 at 10⁵ and the ideal angle
   */
  public static double likely(double friction, double reynolds, double offAngle) {
    double least = Math.max(2.0 * friction, PLATE_DRAG * Math.pow(1e5 / reynolds, 0.1));
    return least + Math.min(1.0, 1.3 * offAngle / (offAngle + 0.067)) * SLOPE * offAngle * offAngle;
  }

  private static double leastDragLift(double camber) {
    return 4.0 * Math.PI * camber * LIKELY_PART;
  }

  @Override
  public Band profileDrag(double cl, double reynolds) {
    double offset = cl - leastDragLift(camber);
    double friction = 2.0 * SkinFriction.laminar(reynolds);
    double likely = likelyProfileDrag(cl, reynolds);
    double greatest = PLATE_OVER_FRICTION * friction + BASE_PRESSURE * (thickness + camber) + offset * offset / SLOPE;
    return new Band(friction, likely, Math.max(likely, greatest));
  }

  @Override
  public double likelyProfileDrag(double cl, double reynolds) {
    return likely(SkinFriction.laminar(reynolds), reynolds, offAngle(cl, camber));
  }

  @Override
  public Step profileDragStep(Step lift, Step reynolds) {
    return Step.of(
        LIKELY_DRAG,
        Step.of(SkinFriction.LAMINAR, reynolds),
        reynolds,
        Step.of(
            OFF_ANGLE,
            lift,
            Step.given("camber of the plate", "m", camber, Source.taken("geometry of the section"))));
  }

  @Override
  public Band zeroLiftAngle(double reynolds) {
    return parts(-2.0 * camber);
  }

  @Override
  public Band liftSlope(double reynolds) {
    return new Band(1.4 * Math.PI, SLOPE, 2.0 * Math.PI);
  }

  @Override
  public Band moment(double reynolds) {
    return parts(-Math.PI * camber);
  }

  @Override
  public Band usableLift(double reynolds) {
    return USABLE;
  }

  @Override
  public double likelyUsableLift(double reynolds) {
    return USABLE.likely();
  }

  /** A negative theoretical value and the parts of it that a real plate reaches. */
  private static Band parts(double theory) {
    return new Band(theory, LIKELY_PART * theory, LEAST_PART * theory);
  }

  @Override
  public List<Finding> findings(double cl, double reynolds) {
    List<Finding> findings = new ArrayList<>();
    findings.add(
        Finding.of(
            Severity.NOTE,
            "curved plate estimated",
            "No table of measured drag of thin curved plates could be read: the drag is a wide band, the ranking against "
                + "thick sections is sourced.",
            LAITONE));
    if (!RANGE.contains(reynolds)) {
      findings.add(
          Finding.of(
              Severity.CAUTION,
              "curved plate",
              "The curved plate is used outside the Reynolds numbers at which such plates were tested.",
              reynolds,
              RANGE,
              NamedUnit.NUMBER,
              LAITONE));
    }
    if (Math.abs(cl) > USABLE.likely()) {
      findings.add(
          Finding.of(
              Severity.CAUTION,
              "section lift",
              "The plate is asked for more lift than a flight can use.",
              cl,
              Interval.between(-USABLE.likely(), USABLE.likely()),
              NamedUnit.NUMBER,
              Source.fromMemory("small-model practice", "curved plates")));
    }
    return List.copyOf(findings);
  }

  @Override
  public String toString() {
    return name();
  }
}
