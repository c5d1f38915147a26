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
 * His numbers could not be read, only his conclusions; so the bands are wide, and are built from what could be sourced:
 *
 * <pre>{@code
 * least    2·C_f                                                    laminar friction of both sides
 * likely   1.7·2·C_f + 0.08·(c_l − c_l0)²                           1.7: a flat plate 2 % thick, measured at 10⁵
 * greatest 1.7·2·C_f + 0.15·(t + m) + (c_l − c_l0)²/2π              separated from the crest, no suction at the nose
 * c_l0 = 4π·m·0.8        α₀ = −2·m        c_m = −π·m                the angle and the moment 0.6 to 1 of theory
 * }</pre>
 *
 * <p>The likely growth with lift, the usable lift of 0.8 to 1.2 and the parts of theory are from memory of small-model
 * practice.
 */
public final class CurvedPlatePolar implements SectionPolar, ShownPolar, Serializable {
  private static final long serialVersionUID = 1L;

  /** The likely drag. */
  public static final Formula LIKELY_DRAG =
      Formula.named("likely profile drag of a curved plate")
          .gives("c_d", NamedUnit.NUMBER)
          .as("1.7·2·C_f + 0.08·(C_L − 4·π·m·0.8)²")
          .where("C_f", "laminar friction coefficient", 1e-3, 0.05)
          .where("C_L", "lift coefficient", -1, 1.5)
          .where("m", "camber over chord", 0, 0.1)
          .from(
              Source.library("1.7 from a flat plate 2 % thick, measured in the Princeton tests at 10⁵; growth from memory"))
          .computedBy(CurvedPlatePolar::likely);

  private static final Interval RANGE = Interval.between(1e4, 1e5);
  private static final double PLATE_OVER_FRICTION = 1.7;
  private static final double BASE_PRESSURE = 0.15;
  private static final double LIKELY_GROWTH = 0.08;
  private static final double GREATEST_GROWTH = 1.0 / (2.0 * Math.PI);
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

  /** c_d = 1.7·2·C_f + 0.08·(C_L − 4π·m·0.8)². */
  static double likely(double friction, double cl, double camber) {
    double offset = cl - leastDragLift(camber);
    return PLATE_OVER_FRICTION * 2.0 * friction + LIKELY_GROWTH * offset * offset;
  }

  private static double leastDragLift(double camber) {
    return 4.0 * Math.PI * camber * LIKELY_PART;
  }

  @Override
  public Band profileDrag(double cl, double reynolds) {
    double offset = cl - leastDragLift(camber);
    double friction = 2.0 * SkinFriction.laminar(reynolds);
    double greatest =
        PLATE_OVER_FRICTION * friction + BASE_PRESSURE * (thickness + camber) + GREATEST_GROWTH * offset * offset;
    return new Band(friction, likelyProfileDrag(cl, reynolds), greatest);
  }

  @Override
  public double likelyProfileDrag(double cl, double reynolds) {
    return likely(SkinFriction.laminar(reynolds), cl, camber);
  }

  @Override
  public Step profileDragStep(Step lift, Step reynolds) {
    return Step.of(
        LIKELY_DRAG,
        Step.of(SkinFriction.LAMINAR, reynolds),
        lift,
        Step.given("camber of the plate", "m", camber, Source.library("geometry of the section")));
  }

  @Override
  public Band zeroLiftAngle(double reynolds) {
    return parts(-2.0 * camber);
  }

  @Override
  public Band liftSlope(double reynolds) {
    return new Band(1.4 * Math.PI, 1.7 * Math.PI, 2.0 * Math.PI);
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
