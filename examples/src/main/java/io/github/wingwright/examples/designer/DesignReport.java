// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import io.github.wingwright.core.ConvergenceException;
import io.github.wingwright.core.aerodynamics.DragBreakdown;
import io.github.wingwright.core.drawing.CurvePicture;
import io.github.wingwright.core.drawing.SectionPicture;
import io.github.wingwright.core.drawing.Svg;
import io.github.wingwright.core.drawing.ThreeView;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.mass.MassItem;
import io.github.wingwright.core.performance.GlidePoint;
import io.github.wingwright.core.performance.ThrowCheck;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.report.Block;
import io.github.wingwright.core.report.Chapter;
import io.github.wingwright.core.report.Entry;
import io.github.wingwright.core.report.Report;
import io.github.wingwright.stability.design.Design;
import io.github.wingwright.stability.design.DesignBrief;
import io.github.wingwright.stability.production.Cautions;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.function.Supplier;

/** The report of a design: what was asked, what came out, why, and what to watch. */
final class DesignReport {
  private final Design design;
  private final GliderBrief brief;
  private final BriefUnits units;
  private final ForkJoinTask<FuselageChapter> fuselage;
  private final FlightChapter flight;
  private final List<Supplier<Chapter>> further;

  DesignReport(Design design, GliderBrief brief) {
    this(design, brief, List.of(), new FlightChapter(design, brief));
  }

  /** With chapters that stand before the workings, and the throw, which others tell of as well. */
  DesignReport(Design design, GliderBrief brief, List<Supplier<Chapter>> further, FlightChapter flight) {
    this.design = design;
    this.brief = brief;
    this.units = brief.units();
    // Looking for the best body takes longest of what several parts of the report share.
    this.fuselage = ForkJoinPool.commonPool().submit(() -> GliderFuselage.of(design, brief, flight.thrown()));
    this.flight = flight;
    this.further = List.copyOf(further);
  }

  Report report() {
    List<Supplier<Chapter>> works = new ArrayList<>();
    works.add(this::asked);
    works.add(this::sheet);
    works.add(this::drawing);
    works.add(this::cautions);
    works.add(() -> Chapter.of("Findings", new Block.Findings(design.findings())));
    works.add(() -> fuselage.join().chapter());
    works.add(new WingChapter(design, units)::chapter);
    works.add(this::section);
    works.add(new SectionChapter(design, units, flight.thrown())::chapter);
    works.add(this::masses);
    works.addAll(stabilityWorks());
    works.add(this::drag);
    works.add(this::glide);
    works.add(flight::chapter);
    works.add(new PartsChapter(design, units)::chapter);
    works.addAll(further);
    works.add(() -> Chapter.of("Workings", new Block.Steps(design.workings())));
    return new Report(brief.title(), "conceptual design, every number with its workings", Together.all(works)).withSymbols();
  }

  /** Balance, finite wing, trim and motion: a lecture of its own. */
  List<Chapter> stability() {
    return Together.all(stabilityWorks());
  }

  private List<Supplier<Chapter>> stabilityWorks() {
    return List.of(
        () -> new BalanceChapter(design, units).chapter(),
        () -> new DownwashChapter(design).chapter(),
        () -> new FiniteWingChapter(design, units).chapter(),
        () -> reckoned("Trim, and what it costs", () -> new TrimChapter(design, units).chapter()),
        () -> reckoned("Across the plane of symmetry", () -> new LateralChapter(design).chapter()),
        () -> reckoned("Natural motions", () -> new ModesChapter(design, units).chapter()),
        () -> reckoned("After a disturbance", () -> new ResponseChapter(design, units).chapter()));
  }

  /** A chapter, or why there is none: a glider that cannot be trimmed has no flight that could be disturbed. */
  private static Chapter reckoned(String title, Supplier<Chapter> chapter) {
    try {
      return chapter.get();
    } catch (IllegalStateException | ConvergenceException e) {
      return Chapter.of(title, new Block.Paragraph("This cannot be reckoned for this glider: " + e.getMessage()));
    }
  }

  Svg threeView() {
    return ThreeView.draw(
        design.aircraft().airframe(),
        brief.title(),
        units.length(),
        List.of(
            new ThreeView.Mark(design.aircraft().centreOfGravity().x(), "CG", true),
            new ThreeView.Mark(design.neutralPoint().x(), "NP", false)));
  }

  Svg sectionPicture() {
    Wing wing = design.aircraft().airframe().wing();
    return SectionPicture.draw(wing.section(), wing.planform().rootChord(), units.length());
  }

  Svg fuselageRange() {
    return fuselage.join().rangePicture();
  }

  Svg fuselageRegion() {
    return fuselage.join().regionPicture();
  }

  Svg flightPicture() {
    return flight.picture();
  }

  private Chapter asked() {
    DesignBrief asked = design.brief();
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("judged by", asked.goal().words()));
    rows.add(List.of("air", asked.air().toString()));
    rows.add(
        List.of(
            "launch",
            new LaunchWords(design, units).asked()));
    rows.add(List.of("material", asked.material().toString()));
    rows.add(List.of("wanted static margin", NamedUnit.NUMBER.format(asked.staticMargin(), 3)));
    rows.add(List.of("made to", brief.making().length().format(units.length(), 3)));
    List<Block> blocks = new ArrayList<>();
    if (!brief.purpose().isEmpty()) {
      blocks.add(new Block.Paragraph(brief.purpose()));
    }
    blocks.add(new Block.Table(List.of("asked", "answer of the brief"), rows));
    return new Chapter("The brief", blocks);
  }

  private Chapter drawing() {
    return Chapter.of(
        "Three views",
        new Block.Picture(
            threeView().element(),
            "Plan, side and front view. CG: centre of gravity, NP: neutral point. Printed smaller than its sheet the"
                + " drawing has the scale of its bar."));
  }

  private Chapter sheet() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Block.Paragraph(
            "Lengths are rounded to what can be made; all that depends on them is reckoned again from the rounded values."));
    for (Map.Entry<String, List<Entry>> group : new DesignSheet(design, units).groups().entrySet()) {
      blocks.add(new Block.Paragraph(group.getKey()));
      blocks.add(new Block.Sheet(group.getValue()));
    }
    blocks.add(new Block.Paragraph("Flown, launched as the brief says; above is the steady glide from the launch height:"));
    blocks.add(new Block.Points(flight.lines()));
    blocks.add(new Block.Paragraph("Ranges, where a number is known only between two ends:"));
    blocks.add(new Block.Points(new DesignSheet(design, units).ranges()));
    return new Chapter("Sheet of dimensions", blocks);
  }

  private Chapter section() {
    return Chapter.of(
        "Wing section",
        new Block.Picture(sectionPicture().element(), "The section at the root; the mean line is dashed."),
        new Block.Paragraph("In the air it is known by: " + design.brief().wingPolar().name() + "."));
  }

  private Chapter masses() {
    List<List<String>> rows = new ArrayList<>();
    for (MassItem item : design.aircraft().masses().items()) {
      rows.add(
          List.of(
              item.name(),
              item.mass().format(units.mass(), 3),
              item.massBand().format(units.mass(), 3),
              item.centreOfGravity().x().format(units.length(), 3)));
    }
    rows.add(
        List.of(
            "total",
            design.aircraft().mass().format(units.mass(), 3),
            design.aircraft().masses().massBand().format(units.mass(), 3),
            design.aircraft().centreOfGravity().x().format(units.length(), 3)));
    return Chapter.of(
        "Mass statement", new Block.Table(List.of("part", "likely mass", "may be", "behind the nose"), rows));
  }

  private Chapter drag() {
    GlidePoint best = design.glide().bestGlide();
    double area = design.aircraft().airframe().wing().planform().area().si();
    double total = best.dragCoefficient() * area;
    List<List<String>> rows = new ArrayList<>();
    double known = 0.0;
    for (DragBreakdown.Part line : design.drag().lines()) {
      known += line.dragArea().si();
      rows.add(row(line.name(), line.dragArea().si(), total));
    }
    double induced = (1.0 + design.glide().drag().inducedLoss()) * best.liftCoefficient() * best.liftCoefficient()
        / (Math.PI * design.aircraft().airframe().wing().planform().aspectRatio()) * area;
    rows.add(row("induced by lift", induced, total));
    rows.add(row("profile of the wing", total - known - induced, total));
    rows.add(row("all", total, total));
    return Chapter.of(
        "Drag build-up at best glide", new Block.Table(List.of("part", "drag area", "share"), rows));
  }

  private static List<String> row(String name, double area, double total) {
    return List.of(
        name, Area.SQUARE_CENTIMETRE.format(area, 3), NamedUnit.NUMBER.format(100.0 * area / total, 3) + " %");
  }

  private Chapter glide() {
    List<Double> speed = new ArrayList<>();
    List<Double> sink = new ArrayList<>();
    for (GlidePoint point : design.glide().polar(41)) {
      speed.add(point.speed().in(units.speed()));
      sink.add(-point.sinkRate().in(units.speed()));
    }
    List<Double> otherSpeed = new ArrayList<>();
    List<Double> otherSink = new ArrayList<>();
    for (GlidePoint point : design.alternative().polar(41)) {
      otherSpeed.add(point.speed().in(units.speed()));
      otherSink.add(-point.sinkRate().in(units.speed()));
    }
    GlidePoint best = design.glide().bestGlide();
    GlidePoint least = design.glide().leastSink();
    CurvePicture picture =
        new CurvePicture(
            "Glide polar",
            "airspeed in " + units.speed().symbol(),
            "vertical speed in " + units.speed().symbol(),
            List.of(
                new CurvePicture.Curve("this wing", speed, sink, CurvePicture.Style.MAIN),
                new CurvePicture.Curve("plate wing", otherSpeed, otherSink, CurvePicture.Style.OTHER)),
            List.of(
                new CurvePicture.Point("best glide", best.speed().in(units.speed()), -best.sinkRate().in(units.speed())),
                new CurvePicture.Point("least sink", least.speed().in(units.speed()), -least.sinkRate().in(units.speed()))));
    return Chapter.of(
        "Glide",
        new Block.Picture(picture.draw().element(), "Likely values; the polar ends at the usable lift, at the stall."),
        new Block.Points(
            List.of(
                launch(design.throwCheck()),
                "with a curved plate of the wing's own walls instead: " + new DesignSheet(design, units).alternative())));
  }

  private String launch(ThrowCheck check) {
    return new LaunchWords(design, units).verdict(check) + ": launch " + check.throwSpeed().format(units.speed(), 3) + ", stall "
        + check.stallSpeed().format(units.speed(), 3);
  }

  private Chapter cautions() {
    return Chapter.of("Cautions", new Block.Points(Cautions.of(design).lines()));
  }
}
