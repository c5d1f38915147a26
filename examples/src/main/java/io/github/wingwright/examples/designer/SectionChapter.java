// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import io.github.wingwright.airfoils.ComposedSection;
import io.github.wingwright.airfoils.Naca4;
import io.github.wingwright.airfoils.viscous.ViscousMethod;
import io.github.wingwright.airfoils.viscous.ViscousPoint;
import io.github.wingwright.core.aerodynamics.EstimatedPolar;
import io.github.wingwright.core.aerodynamics.SectionPolar;
import io.github.wingwright.core.basis.Band;
import io.github.wingwright.core.drawing.CurvePicture;
import io.github.wingwright.core.performance.GlidePerformance;
import io.github.wingwright.core.performance.GlidePoint;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.report.Block;
import io.github.wingwright.core.report.Chapter;
import io.github.wingwright.stability.design.Design;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The wing's section in the air of this design: its polar, where the glider flies on it, and what others would do. */
final class SectionChapter {
  private static final int POINTS = 41;
  private static final Angle FROM = Angle.degrees(-4);
  private static final Angle TO = Angle.degrees(13);
  private static final Angle STEP = Angle.degrees(1);

  private final Design design;
  private final GlidePerformance glide;
  private final GlidePoint best;

  SectionChapter(Design design) {
    this.design = design;
    this.glide = design.glide();
    this.best = glide.bestGlide();
  }

  Chapter chapter() {
    List<Block> blocks = new ArrayList<>();
    List<CurvePicture.Curve> curves = new ArrayList<>();
    SectionPolar used = glide.drag().section();
    curves.add(curve("reckoned with", used, Edge.LIKELY));
    curves.add(curve("at best", used, Edge.LOW));
    curves.add(curve("at worst", used, Edge.HIGH));
    String unsolved = "";
    if (design.aircraft().airframe().wing().section() instanceof ComposedSection section) {
      List<ViscousPoint> points = ViscousMethod.of(section).polar(best.reynolds(), FROM, TO, STEP);
      List<ViscousPoint> rising = beforeTheStall(points);
      if (rising.size() > 1) {
        curves.add(
            new CurvePicture.Curve(
                "boundary layers",
                rising.stream().map(ViscousPoint::liftCoefficient).toList(),
                rising.stream().map(ViscousPoint::dragCoefficient).toList(),
                CurvePicture.Style.OTHER));
      }
      unsolved = words(points);
    }
    CurvePicture picture =
        new CurvePicture(
            "Section drag at Reynolds number " + NamedUnit.NUMBER.format(best.reynolds(), 3),
            "lift coefficient of the section",
            "drag coefficient of the section",
            curves,
            List.of(
                mark("best glide", best),
                mark("least sink", glide.leastSink()),
                mark("1.2 × stall speed", glide.at(design.trim().liftCoefficient()))));
    blocks.add(
        new Block.Picture(
            picture.draw().element(),
            "The polar that the design reckons with (" + used.name() + "), its band dashed, and the polar computed with boundary layers in grey."
                + " Marks lie at the Reynolds number of their own speed."));
    if (!unsolved.isEmpty()) {
      blocks.add(new Block.Paragraph(unsolved));
    }
    blocks.add(new Block.Paragraph("Other sections on the same glider, at the same Reynolds number and the lift of best glide:"));
    blocks.add(
        new Block.Table(
            List.of("section", "known by", "drag coefficient", "usable lift", "zero-lift angle", "L/D, likely", "L/D, may be"), rows()));
    blocks.add(
        new Block.Paragraph(
            "Mass and planform stay as they are in this table."));
    return new Chapter("Section in the air", blocks);
  }

  private enum Edge {
    LOW,
    LIKELY,
    HIGH;

    double of(Band band) {
      return switch (this) {
        case LOW -> band.low();
        case LIKELY -> band.likely();
        case HIGH -> band.high();
      };
    }
  }

  private CurvePicture.Curve curve(String label, SectionPolar polar, Edge edge) {
    List<Double> lift = new ArrayList<>();
    List<Double> drag = new ArrayList<>();
    double greatest = polar.usableLift(best.reynolds()).high();
    for (int i = 0; i < POINTS; i++) {
      double cl = greatest * i / (POINTS - 1);
      lift.add(cl);
      drag.add(edge.of(polar.profileDrag(cl, best.reynolds())));
    }
    return new CurvePicture.Curve(label, lift, drag, edge == Edge.LIKELY ? CurvePicture.Style.MAIN : CurvePicture.Style.EDGE);
  }

  private CurvePicture.Point mark(String label, GlidePoint point) {
    double drag = glide.drag().section().likelyProfileDrag(point.liftCoefficient(), point.reynolds());
    return new CurvePicture.Point(label, point.liftCoefficient(), drag);
  }

  /** The points up to the greatest lift: behind it the section has stalled, and the computation says little. */
  private static List<ViscousPoint> beforeTheStall(List<ViscousPoint> points) {
    List<ViscousPoint> rising = new ArrayList<>();
    for (ViscousPoint point : points) {
      if (!rising.isEmpty() && point.liftCoefficient() < rising.get(rising.size() - 1).liftCoefficient()) {
        break;
      }
      rising.add(point);
    }
    return rising;
  }

  /** What the computation could not say, angle by angle. */
  private static String words(List<ViscousPoint> points) {
    List<String> missing = new ArrayList<>();
    for (int a = (int) Math.rint(FROM.degrees()); a <= TO.degrees(); a++) {
      double angle = a;
      if (points.stream().noneMatch(p -> Math.abs(p.angleOfAttack().degrees() - angle) < 0.5 * STEP.degrees())) {
        missing.add(a + "°");
      }
    }
    List<String> loose =
        points.stream()
            .filter(p -> !p.attached())
            .map(p -> String.format(Locale.ROOT, "%.0f°", p.angleOfAttack().degrees()))
            .toList();
    String text =
        missing.isEmpty() ? "" : "The computation with boundary layers did not converge at an angle of attack of " + String.join(", ", missing) + ". ";
    return loose.isEmpty()
        ? text
        : text + "It finds flow that does not stay with the surface, so that its drag is less certain, at " + String.join(", ", loose) + ".";
  }

  private List<List<String>> rows() {
    List<List<String>> rows = new ArrayList<>();
    List<ComposedSection> candidates = candidates();
    for (ComposedSection section : candidates) {
      rows.add(row(section.name(), "estimate", EstimatedPolar.of(section)));
    }
    SectionPolar plate = design.alternative().drag().section();
    rows.add(row(plate.name(), "plate data", plate));
    return rows;
  }

  /** The chosen section, one with less camber and a thinner one. */
  private List<ComposedSection> candidates() {
    if (!(design.aircraft().airframe().wing().section() instanceof Naca4 chosen)) {
      return List.of();
    }
    double camber = chosen.nominalCamber();
    double thickness = chosen.nominalThickness();
    return List.of(
        chosen,
        chosen.withCamber(camber >= 0.03 ? camber - 0.02 : camber + 0.02),
        chosen.withThickness(thickness > 0.05 ? thickness - 0.02 : thickness + 0.02));
  }

  private List<String> row(String name, String knownBy, SectionPolar polar) {
    GlidePerformance with = GlidePerformance.of(glide.drag().withSection(polar), glide.mass(), glide.air());
    Band drag = polar.profileDrag(best.liftCoefficient(), best.reynolds());
    Band ratio = with.greatestLiftToDrag();
    boolean beyond = best.liftCoefficient() > polar.usableLift(best.reynolds()).high();
    return List.of(
        name,
        knownBy,
        beyond ? "beyond its lift" : NamedUnit.NUMBER.format(drag.likely(), 3),
        NamedUnit.NUMBER.format(polar.likelyUsableLift(best.reynolds()), 3),
        Angle.DEGREE.format(polar.zeroLiftAngle(best.reynolds()).likely(), 2),
        NamedUnit.NUMBER.format(with.bestGlide().liftToDrag(), 3),
        NamedUnit.NUMBER.format(ratio.low(), 3) + " to " + NamedUnit.NUMBER.format(ratio.high(), 3));
  }
}
