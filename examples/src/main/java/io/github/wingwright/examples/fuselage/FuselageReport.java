// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.fuselage;

import io.github.wingwright.core.basis.Decision;
import io.github.wingwright.core.basis.FeasibleRegion;
import io.github.wingwright.core.basis.FeasibleRegion.Side;
import io.github.wingwright.core.basis.Price;
import io.github.wingwright.core.drawing.Svg;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.quantity.Pressure;
import io.github.wingwright.core.report.Block;
import io.github.wingwright.core.report.Chapter;
import io.github.wingwright.core.report.Report;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** The report of a fuselage: what was asked, who has a say, what is left, what was chosen and at what price. */
final class FuselageReport {
  private final BodyStudy study;
  private final FuselageBrief brief;
  private final Units units;
  private final FuselagePictures pictures;
  private final Fuselage body;

  FuselageReport(BodyStudy study) {
    this.study = study;
    this.brief = study.brief();
    this.units = brief.units();
    this.pictures = new FuselagePictures(study);
    this.body = study.body();
  }

  /** The files of the folder by name. */
  Map<String, String> files() {
    Svg region = pictures.region();
    Svg side = pictures.side();
    Svg drag = pictures.drag();
    Map<String, String> files = new LinkedHashMap<>();
    files.put("report.html", report(region, side, drag).toHtml());
    files.put("region.svg", region.document());
    files.put("side-view.svg", side.document());
    files.put("drag.svg", drag.document());
    return files;
  }

  private Report report(Svg region, Svg side, Svg drag) {
    List<Chapter> chapters = new ArrayList<>();
    chapters.add(asked());
    chapters.add(new ConsiderationChapter(study).chapter());
    chapters.add(region(region));
    chapters.add(new ContentsChapter(study, pictures).chapter(side));
    chapters.add(choice());
    chapters.add(new DragChapter(study).chapter(drag));
    chapters.add(Chapter.of("Findings", new Block.Findings(study.findings())));
    chapters.add(cautions());
    chapters.add(new WorkingsChapter(study).chapter());
    return new Report(
            brief.title(), "a fuselage negotiated: every consideration, its price, its picture", chapters)
        .withSymbols();
  }

  private Chapter asked() {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("family of bodies", brief.shape().name()));
    rows.add(
        List.of(
            "flight",
            units.show(brief.flight().airspeed())
                + " in air of "
                + brief.flight().air().pressure().format(Pressure.HECTOPASCAL, 4)
                + ", "
                + brief.flight().air().density()));
    rows.add(
        List.of(
            "flow",
            "Reynolds number on the body "
                + NamedUnit.NUMBER.format(brief.flight().reynoldsNumber(body.length()), 3)
                + "; "
                + brief.flow().friction()
                + "; form factor of "
                + brief.flow().form()));
    rows.add(List.of("wall", brief.shell().toString()));
    rows.add(List.of("judged by", brief.mission().name()));
    rows.add(
        List.of(
            "the rest of the aeroplane",
            "mass without the wall "
                + units.show(brief.mission().massWithoutShell())
                + ", wing "
                + brief.mission().wingArea().format(units.area(), 3)
                + " of aspect ratio "
                + NamedUnit.NUMBER.format(brief.mission().aspectRatio(), 3)
                + ", drag area without the body "
                + brief.mission().otherDragArea().format(units.dragArea(), 3)));
    return Chapter.of(
        "The brief",
        new Block.Paragraph(brief.purpose()),
        new Block.Paragraph(brief.data()),
        new Block.Table(List.of("asked", "answer of the brief"), rows));
  }

  private Chapter region(Svg picture) {
    List<Block> blocks = new ArrayList<>();
    FeasibleRegion region = study.region();
    blocks.addAll(new Advice(study).blocks());
    for (FeasibleRegion.Outline outline : region.outlines()) {
      blocks.add(
          new Block.Paragraph(
              "What is left: lengths of "
                  + region.lengths().format(units.length())
                  + ", diameters of "
                  + region.diameters().format(units.length())
                  + ". Around it:"));
      List<List<String>> rows = new ArrayList<>();
      for (Side side : outline.sides()) {
        FeasibleRegion.Point from = side.points().get(0);
        FeasibleRegion.Point to = side.points().get(side.points().size() - 1);
        rows.add(
            List.of(
                side.boundBy().map(w -> w.consideration().name()).orElse("the end of the picture"),
                from.format(units.length()),
                to.format(units.length())));
      }
      blocks.add(new Block.Table(List.of("side bound by", "from length × diameter", "to"), rows));
    }
    blocks.add(
        new Block.Picture(
            picture.element(),
            region.isEmpty()
                ? "Nothing is left. The lines that clash are heavy; the marks are bodies at which"
                      + " one of them would give way."
                : "What all limits and guidelines leave together is tinted; each line is the edge"
                      + " of one of them, hatched on the side it refuses."));
    return new Chapter("What is left", blocks);
  }

  private Chapter choice() {
    List<Block> blocks = new ArrayList<>();
    List<String> head = new ArrayList<>(List.of("body"));
    study.all().forEach(one -> head.add(one.label()));
    blocks.add(new Block.Table(head, compared()));
    double share =
        study.dragArea().value()
            / (study.dragArea().value() + brief.mission().otherDragArea().si());
    blocks.add(
        new Block.Paragraph(
            "The body is "
                + NamedUnit.NUMBER.format(100.0 * share, 2)
                + " % of the aeroplane's drag area (drag due to lift apart): a tenth off the body"
                + " is "
                + NamedUnit.NUMBER.format(10.0 * share, 2)
                + " % off the whole."));
    if (!study.sized().prices().isEmpty() && !study.region().isEmpty()) {
      blocks.add(
          new Block.Paragraph(
              "The choice leaves a guideline. That is allowed, and this is its price against the"
                  + " best body inside at the same length, with its sign:"));
      blocks.add(new Block.Points(study.sized().prices().stream().map(Price::toString).toList()));
    }
    List<String> decisions =
        study.region().considerations().stream()
            .filter(w -> w.decision().kind() != Decision.Kind.CHOSEN)
            .map(w -> w.consideration().name() + ": " + w.decision())
            .toList();
    if (!decisions.isEmpty()) {
      blocks.add(new Block.Paragraph("Set aside, or kept for the time being:"));
      blocks.add(new Block.Points(decisions));
    }
    return new Chapter("The choice and its price", blocks);
  }

  /** A row for each respect, a column for each body. */
  private List<List<String>> compared() {
    List<List<String>> rows = new ArrayList<>();
    rows.add(row("length", f -> units.show(f.length())));
    rows.add(row("diameter", f -> units.show(f.diameter())));
    rows.add(row("fineness", f -> NamedUnit.NUMBER.format(f.finenessRatio(), 3)));
    rows.add(row("volume", f -> f.volume().format(units.volume(), 3)));
    rows.add(row("wetted area", f -> f.wettedArea().format(units.area(), 3)));
    rows.add(row("mass of the wall", f -> brief.mission().massOfShell(f).format(units.mass(), 3)));
    rows.add(
        row(
            "bending stiffness of the greatest section",
            f ->
                units.stiffness().format(
                    brief.shell().bendingStiffness(f.diameter()).si(), 3)));
    rows.add(row("drag area", f -> units.dragArea().format(study.dragAreaOf(f), 3)));
    rows.add(row(brief.mission().name(), f -> brief.mission().unit().format(study.figureOf(f), 4)));
    return rows;
  }

  private List<String> row(String what, Function<Fuselage, String> of) {
    List<String> row = new ArrayList<>(List.of(what));
    study.all().forEach(one -> row.add(of.apply(one.body())));
    return row;
  }

  private Chapter cautions() {
    List<String> points = new ArrayList<>();
    if (brief.carriesPeople()) {
      points.add(
          "This aeroplane would carry people. Everything here is a first estimate to begin a"
              + " drawing with: structure, loads, vision, escape, balance and flight are for"
              + " licensed practice, by the rules of the country.");
      points.add(
          "The people are taken as the smallest circle around them. Real bodies, doors, harnesses"
              + " and structure need more room; build a mock-up and sit in it.");
    } else {
      points.add(
          "Follow the rules of the club and the country for flying models; do not fly over people,"
              + " and give the nose a soft tip.");
      points.add(
          "Stiffness and strength of printed plastic differ with machine, direction of the layers"
              + " and heat: break a test piece before you trust a wall.");
    }
    points.add(
        "The bending stiffness counts a plain closed ring. Hatches, joints between segments and"
            + " cut-outs for the wing take from it; add doublers there.");
    points.add("Drag is known no better than the methods agree: see the table of methods.");
    return Chapter.of("Cautions", new Block.Points(points));
  }
}
