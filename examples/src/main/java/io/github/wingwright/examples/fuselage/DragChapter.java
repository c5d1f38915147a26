// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.fuselage;

import io.github.wingwright.core.aerodynamics.BodyFormFactor;
import io.github.wingwright.core.aerodynamics.MethodComparison;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.drawing.Svg;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.report.Block;
import io.github.wingwright.core.report.Chapter;
import io.github.wingwright.core.sizing.DragArea;
import io.github.wingwright.core.sizing.DragSurvey;
import io.github.wingwright.core.sizing.FlightDrag;
import java.util.ArrayList;
import java.util.List;

/** What slenderness is worth, and how far the methods agree. */
final class DragChapter {
  /** From here on a least is called flat: fineness ratios within 1 % of it span this ratio. */
  private static final double FLAT_FROM = 1.3;

  private final BodyStudy study;
  private final FuselageBrief brief;
  private final Units units;

  DragChapter(BodyStudy study) {
    this.study = study;
    this.brief = study.brief();
    this.units = brief.units();
  }

  Chapter chapter(Svg picture) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Paragraph("What is held fixed decides which slenderness is best:"));
    blocks.add(new Block.Points(study.dragSurveys().stream().map(this::words).toList()));
    blocks.add(
        new Block.Picture(
            picture.element(),
            "The broad part of a curve costs no more than 1 % more than its least. The axis of drag"
                + " begins at zero."
                + (fitted() ? " The curves end where the fit of the form factor does, at f = " + ends() + "." : "")));
    Angle up = study.body().upsweep();
    if (up.si() > 0.0) {
      double all = study.dragArea().value();
      double without =
          new FlightDrag(brief.flight(), brief.flow().friction(), brief.flow().form())
              .dragArea(brief.shape(), study.body().length().si(), study.body().diameter().si());
      blocks.add(
          new Block.Paragraph(
              "The middle line of the tail is swept up by "
                  + up.format(Angle.DEGREE, 2)
                  + ": "
                  + units.dragArea().format(all - without, 2)
                  + " of drag area, "
                  + NamedUnit.NUMBER.format(100.0 * (all - without) / all, 2)
                  + " % of the body's."));
    }
    methods(blocks);
    return new Chapter("Drag against diameter, and the methods behind it", blocks);
  }

  /** Whether the pictures leave out what the surveys hold beyond the fit. */
  private boolean fitted() {
    Interval fit = brief.drag().fit();
    return fit.contains(study.body().finenessRatio())
        && study.dragSurveys().stream().flatMap(s -> s.points().stream()).anyMatch(p -> !fit.contains(p.fineness()));
  }

  private String ends() {
    Interval fit = brief.drag().fit();
    return NamedUnit.NUMBER.format(fit.lower(), 3) + " and " + NamedUnit.NUMBER.format(fit.upper(), 3);
  }

  private String words(DragSurvey s) {
    String f = NamedUnit.NUMBER.format(s.best().fineness(), 3);
    String range =
        NamedUnit.NUMBER.format(s.withinOnePercent().lower(), 3)
            + " to "
            + NamedUnit.NUMBER.format(s.withinOnePercent().upper(), 3);
    String held = held(s.held());
    boolean stout = s.best().fineness() < s.withinOnePercent().lower() * (1.0 + 1e-6);
    return s.atEnd()
        ? held
            + ": the drag falls all the way to the "
            + (stout ? "stoutest" : "most slender")
            + " body looked at, f = "
            + f
            + (isEndOfFit(s, brief.flow().form()) ? ", where the fit of the form factor ends" : "")
            + "; something else must say stop."
        : held
            + ": least at f = "
            + f
            + (isFlat(s) ? ", a flat least" : ", a sharp least")
            + ", within 1 % from "
            + range
            + ".";
  }

  static boolean isFlat(DragSurvey s) {
    return s.withinOnePercent().upper() >= FLAT_FROM * s.withinOnePercent().lower();
  }

  /** Beyond the end of its fit a form factor says nothing, so a least there is none of the body. */
  private static boolean isEndOfFit(DragSurvey s, BodyFormFactor form) {
    double f = s.best().fineness();
    Interval fit = form.domain();
    return s.atEnd() && (Math.abs(f / fit.upper() - 1.0) < 1e-6 || Math.abs(f / fit.lower() - 1.0) < 1e-6);
  }

  private String held(String held) {
    return held.startsWith("length")
        ? "length " + units.show(study.body().length()) + " held"
        : held.startsWith("volume")
            ? "volume " + study.body().volume().format(units.volume(), 3) + " held"
            : "diameter " + units.show(study.body().diameter()) + " held";
  }

  private void methods(List<Block> blocks) {
    MethodComparison methods = study.methods();
    List<List<String>> rows = new ArrayList<>();
    for (MethodComparison.Row row : methods.rows()) {
      rows.add(
          List.of(
              row.method(),
              units.dragArea().format(row.dragArea(), 3),
              row.chosen() ? "chosen" : row.applies() ? "" : "not made for this body",
              row.source().cite()));
    }
    blocks.add(
        new Block.Paragraph(
            "The same body by every method that is known, without upsweep, each in place of the chosen one of"
                + " its kind. "
                + (methods.rows().stream().allMatch(MethodComparison.Row::applies) ? "They" : "Those made for it")
                + " spread by "
                + NamedUnit.NUMBER.format(100.0 * methods.spread(), 2)
                + " % of the chosen value: the drag is known no better than that."));
    blocks.add(new Block.Table(List.of("method", "drag area", "", "source"), rows));
    List<List<String>> optima = new ArrayList<>();
    for (BodyFormFactor form : BodyFormFactor.values()) {
      if (isOfThisLayer(form)) {
        optima.add(optimum(form));
      }
    }
    blocks.add(
        new Block.Paragraph(
            "Where the least lies at this volume depends on the form factor, as published optima"
                + " do:"));
    blocks.add(
        new Block.Table(
            List.of("form factor", "least at f", "within 1 % from", "drag area there"), optima));
  }

  /** A nacelle is no fuselage, a polynomial has no least of its own, and the laminar form is for laminar layers. */
  private boolean isOfThisLayer(BodyFormFactor form) {
    double reynolds = brief.flight().reynoldsNumber(study.body().length());
    return switch (form) {
      case NACELLE, SHEVELL -> false;
      case HOERNER_LAMINAR -> brief.flow().form() == form || !brief.flow().friction().isTurbulentAt(reynolds);
      default -> true;
    };
  }

  private List<String> optimum(BodyFormFactor form) {
    double least = Math.max(2.0, 1.02 * brief.shape().leastFinenessRatio());
    DragArea drag =
        new FlightDrag(brief.flight(), brief.flow().friction(), form).withUpsweepOfBody();
    DragSurvey s =
        DragSurvey.atFixedVolume(
            brief.shape(),
            drag,
            study.body().volume(),
            Interval.between(least, Math.max(20.0, 2.0 * least)));
    return List.of(
        form.toString(),
        s.atEnd()
            ? (isEndOfFit(s, form) ? "the end of its fit, " : "the end, ") + NamedUnit.NUMBER.format(s.best().fineness(), 3)
            : NamedUnit.NUMBER.format(s.best().fineness(), 3),
        NamedUnit.NUMBER.format(s.withinOnePercent().lower(), 3)
            + " to "
            + NamedUnit.NUMBER.format(s.withinOnePercent().upper(), 3),
        units.dragArea().format(s.best().dragArea(), 3));
  }
}
