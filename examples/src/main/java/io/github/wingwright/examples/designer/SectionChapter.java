// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import io.github.wingwright.airfoils.ComposedSection;
import io.github.wingwright.airfoils.Naca4;
import io.github.wingwright.airfoils.manufacture.SectionCandidate;
import io.github.wingwright.airfoils.manufacture.SectionCandidates;
import io.github.wingwright.core.aerodynamics.EstimatedPolar;
import io.github.wingwright.core.aerodynamics.SectionPolar;
import io.github.wingwright.core.basis.Band;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.drawing.CurvePicture;
import io.github.wingwright.core.geometry.AirfoilSection;
import io.github.wingwright.core.performance.GlidePerformance;
import io.github.wingwright.core.performance.GlidePoint;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.LinearDensity;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.report.Block;
import io.github.wingwright.core.report.Chapter;
import io.github.wingwright.stability.design.Design;
import io.github.wingwright.stability.design.DesignBrief;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The wing's section in the air of this design: its polar, where the glider flies on it, and what others would do. */
final class SectionChapter {
  private static final int POINTS = 41;

  private final Design design;
  private final GlidePerformance glide;
  private final GlidePoint best;
  private final BriefUnits units;
  private final FlownThrow thrown;

  SectionChapter(Design design, BriefUnits units, FlownThrow thrown) {
    this.design = design;
    this.units = units;
    this.thrown = thrown;
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
    List<SectionCandidate> candidates = candidates();
    if (!candidates.isEmpty()) {
      curves.add(computed("boundary layers", candidates.get(0), CurvePicture.Style.OTHER));
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
    if (!candidates.isEmpty()) {
      compare(blocks, candidates);
    } else if (!computable()) {
      blocks.add(
          new Block.Paragraph(
              "Boundary layers are computed at Reynolds numbers from 10⁴ to 5·10⁶; this wing glides at "
                  + NamedUnit.NUMBER.format(best.reynolds(), 3)
                  + ". What follows is estimated outside any measurement."));
    }
    blocks.add(new Block.Paragraph("What the design reckons with, and other ways to know it, at the lift of best glide:"));
    blocks.add(
        new Block.Table(
            List.of("section", "known by", "drag coefficient", "usable lift", "zero-lift angle", "L/D, likely", "L/D, may be"),
            rows(candidates)));
    blocks.add(
        new Block.Paragraph(
            "Mass and planform stay as they are in this table. The least drag of an estimate is that of a laminar plate, whatever the"
                + " section, because none has been measured below: so the upper ends of estimates coincide. Those of computed"
                + " polars do not."));
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

  private static CurvePicture.Curve computed(String label, SectionCandidate candidate, CurvePicture.Style style) {
    List<Double> lift = new ArrayList<>();
    List<Double> drag = new ArrayList<>();
    double greatest = candidate.greatestLift().high();
    for (int i = 0; i < POINTS; i++) {
      double cl = greatest * i / (POINTS - 1);
      lift.add(cl);
      drag.add(candidate.polar().likelyProfileDrag(cl, candidate.reynolds()));
    }
    return new CurvePicture.Curve(label, lift, drag, style);
  }

  /** The three candidates in one picture, and what they are to make. */
  private void compare(List<Block> blocks, List<SectionCandidate> candidates) {
    SectionCandidate chosen = candidates.get(0);
    List<CurvePicture.Curve> curves = new ArrayList<>();
    curves.add(computed(chosen.section().name(), chosen, CurvePicture.Style.MAIN));
    for (SectionCandidate other : candidates.subList(1, candidates.size())) {
      curves.add(computed(other.section().name(), other, CurvePicture.Style.OTHER));
    }
    CurvePicture picture =
        new CurvePicture(
            "Three sections computed at Reynolds number " + NamedUnit.NUMBER.format(best.reynolds(), 3),
            "lift coefficient of the section",
            "drag coefficient of the section",
            curves,
            List.of(
                markOn(chosen, "best glide", best),
                markOn(chosen, "least sink", glide.leastSink()),
                markOn(chosen, "1.2 × stall speed", glide.at(design.trim().liftCoefficient()))));
    blocks.add(
        new Block.Picture(
            picture.draw().element(),
            "Computed polars of the chosen section and two neighbours, with the flight on the chosen one marked."));
    String loose =
        chosen.polar().findings(best.liftCoefficient(), best.reynolds()).stream()
            .map(Finding::message)
            .collect(Collectors.joining(" "));
    blocks.add(
        new Block.Paragraph(
            (loose.isEmpty() ? "" : "At best glide: " + loose + " ")
                + "What the sections are to make, at the mean chord and with the walls of this wing, and what this glider with each of"
                + " them flies when it is launched level, masses, tails and trim reckoned anew with estimated polars:"));
    blocks.add(
        new Block.Table(
            List.of("section", "section L/D, may be", "at lift", "greatest lift", "trailing edge", "room for a spar", "mass of span", "flown level"),
            candidates.stream().map(this::making).toList()));
  }

  private List<String> making(SectionCandidate c) {
    return List.of(
        c.section().name(),
        NamedUnit.NUMBER.format(c.liftToDrag().low(), 3) + " to " + NamedUnit.NUMBER.format(c.liftToDrag().high(), 3),
        NamedUnit.NUMBER.format(c.bestLift(), 2),
        NamedUnit.NUMBER.format(c.greatestLift().high(), 3),
        Length.MILLIMETRE.format(c.trailingEdge().si(), 2),
        Length.MILLIMETRE.format(c.sparDepth().si(), 2),
        LinearDensity.GRAM_PER_METRE.format(c.massPerSpan().si(), 3),
        flown(c.section()));
  }

  /** The sheet's own number for the section as chosen. */
  private String flown(ComposedSection section) {
    boolean chosen = section.equals(design.aircraft().airframe().wing().section());
    boolean estimated = design.brief().wingPolar() instanceof EstimatedPolar;
    try {
      FlownThrow flown =
          chosen && estimated ? thrown : new FlownThrow(design.withSection(section, EstimatedPolar.of(section)), thrown.hall());
      double value = flown.flies() && flown.pitch().isPresent() ? flown.value(design.brief().goal(), false) : 0.0;
      return value > 0.0 ? units.flown(design.brief().goal(), value) : "does not fly";
    } catch (IllegalStateException unbalanced) {
      return "does not balance";
    }
  }

  private static CurvePicture.Point markOn(SectionCandidate chosen, String label, GlidePoint point) {
    double drag = chosen.polar().likelyProfileDrag(point.liftCoefficient(), chosen.reynolds());
    return new CurvePicture.Point(label, point.liftCoefficient(), drag);
  }

  private List<List<String>> rows(List<SectionCandidate> candidates) {
    List<List<String>> rows = new ArrayList<>();
    if (design.aircraft().airframe().wing().section() instanceof ComposedSection section) {
      rows.add(row(section.name(), "estimate", EstimatedPolar.of(section)));
    }
    for (SectionCandidate c : candidates) {
      rows.add(row(c.section().name(), "boundary layers", c.polar()));
    }
    SectionPolar plate = design.alternative().drag().section();
    rows.add(row(plate.name(), "plate data", plate));
    return rows;
  }

  /** Whether boundary layers can be computed: below and above, the table holds what needs no computation. */
  private boolean computable() {
    return best.reynolds() >= 1e4 && best.reynolds() <= 5e6;
  }

  private List<SectionCandidate> candidates() {
    AirfoilSection section = design.aircraft().airframe().wing().section();
    List<? extends ComposedSection> sections =
        section instanceof Naca4 chosen
            ? SectionCandidates.neighbours(chosen)
            : section instanceof ComposedSection other ? List.of(other) : List.of();
    if (sections.isEmpty() || !computable()) {
      return List.of();
    }
    DesignBrief brief = design.brief();
    Length chord = design.aircraft().airframe().wing().planform().meanAerodynamicChord();
    return SectionCandidates.of(
        sections, chord, brief.wingShell().wallThickness(), brief.material().density(), best.reynolds())
        .all();
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
