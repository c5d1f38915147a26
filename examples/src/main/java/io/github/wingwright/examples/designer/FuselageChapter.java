// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import io.github.wingwright.core.basis.Bound;
import io.github.wingwright.core.basis.Conflict;
import io.github.wingwright.core.basis.Consideration;
import io.github.wingwright.core.basis.FeasibleRange;
import io.github.wingwright.core.basis.FeasibleRegion;
import io.github.wingwright.core.basis.MarginWords;
import io.github.wingwright.core.basis.Origins;
import io.github.wingwright.core.basis.Price;
import io.github.wingwright.core.basis.Sized;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Weighed;
import io.github.wingwright.core.basis.Workings;
import io.github.wingwright.core.drawing.RangePicture;
import io.github.wingwright.core.drawing.RegionPicture;
import io.github.wingwright.core.drawing.Svg;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.report.Block;
import io.github.wingwright.core.report.Chapter;
import io.github.wingwright.core.report.ConsiderationWorkings;
import io.github.wingwright.core.sizing.BodySteps;
import io.github.wingwright.core.sizing.DragArea;
import io.github.wingwright.core.sizing.DragSurvey;
import io.github.wingwright.core.sizing.FlightDrag;
import io.github.wingwright.core.sizing.FuselageSizing;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The choice of a fuselage as a lecture handout: what was considered, what that leaves, what was chosen, what the
 * choice
 * costs against the best one, how the drag goes with the diameter, how well it is known, and every step of the
 * workings.
 *
 * <p>An immutable value: each call that adds something returns a new one.
 */
public final class FuselageChapter {
  private final FuselageSizing sizing;
  private final Sized<Fuselage> sized;
  private final FlightDrag method;
  private final DragArea drag;
  private final Fuselage made;
  private final NamedUnit<Length> unit;
  private final NamedUnit<Area> areaUnit;
  private final Optional<Whole> whole;
  private final FeasibleRegion region;
  private final Optional<Fuselage> best;
  private final Known known;

  /** Where given values come from, and lines that the report tells elsewhere. */
  private record Known(List<Step> origins, List<Step> elsewhere) {}

  /** The aircraft that the body belongs to: its drag area, and at what. */
  private record Whole(Area dragArea, String at) {}

  private FuselageChapter(
      FuselageSizing sizing,
      Sized<Fuselage> sized,
      FlightDrag method,
      DragArea drag,
      Fuselage made,
      NamedUnit<Length> unit,
      NamedUnit<Area> areaUnit,
      Optional<Whole> whole,
      FeasibleRegion region,
      Optional<Fuselage> best,
      Known known) {
    this.known = known;
    this.sizing = sizing;
    this.sized = sized;
    this.method = method;
    this.drag = drag;
    this.made = made;
    this.unit = unit;
    this.areaUnit = areaUnit;
    this.whole = whole;
    this.region = region;
    this.best = best;
  }

  /**
   * The chapter of a choice.
   *
   * @param sizing what was considered, with what it is judged by
   * @param sized the choice
   * @param drag how the drag of the body is reckoned
   * @return the chapter, in millimetres and square centimetres
   */
  public static FuselageChapter of(FuselageSizing sizing, Sized<Fuselage> sized, FlightDrag drag) {
    return of(sizing, sized, drag, drag);
  }

  /**
   * The chapter of a choice whose drag is more than friction and form: an upsweep, a wheel.
   *
   * @param sizing what was considered, with what it is judged by
   * @param sized the choice
   * @param method how friction and form are reckoned
   * @param drag all of the drag of the body
   * @return the chapter, in millimetres and square centimetres
   */
  public static FuselageChapter of(
      FuselageSizing sizing, Sized<Fuselage> sized, FlightDrag method, DragArea drag) {
    FuselageSizing priced = sizing.draggingAs(drag);
    FeasibleRegion region = priced.region();
    Optional<Fuselage> best =
        region.isEmpty() ? Optional.empty() : Optional.of(priced.freeLength().best().value());
    return new FuselageChapter(
        priced,
        sized,
        method,
        drag,
        sized.value(),
        Length.MILLIMETRE,
        Area.SQUARE_CENTIMETRE,
        Optional.empty(),
        region,
        best,
        new Known(List.of(), List.of()));
  }

  /**
   * The same with the dimensions that the body is made to.
   *
   * @param rounded the body as it is made
   * @return the chapter
   */
  public FuselageChapter madeTo(Fuselage rounded) {
    return new FuselageChapter(
        sizing, sized, method, drag, rounded, unit, areaUnit, whole, region, best, known);
  }

  /**
   * The same in other units.
   *
   * @param lengths unit of lengths
   * @param areas unit of areas
   * @return the chapter
   */
  public FuselageChapter showing(NamedUnit<Length> lengths, NamedUnit<Area> areas) {
    return new FuselageChapter(
        sizing, sized, method, drag, made, lengths, areas, whole, region, best, known);
  }

  /**
   * The same with where given values come from: a handout says "the brief" only of what a brief holds.
   *
   * @param origins steps that give or make what the considerations and the drag were handed
   * @param elsewhere steps that the same report tells elsewhere, so that a line refers to them instead
   * @return the chapter
   */
  public FuselageChapter knowing(List<Step> origins, List<Step> elsewhere) {
    return new FuselageChapter(
        sizing,
        sized,
        method,
        drag,
        made,
        unit,
        areaUnit,
        whole,
        region,
        best,
        new Known(List.copyOf(origins), List.copyOf(elsewhere)));
  }

  /**
   * The same with the share of the body in the drag of the aircraft.
   *
   * @param all drag area of the whole aircraft, positive
   * @param at the state of flight, such as {@code "best glide"}
   * @return the chapter
   */
  public FuselageChapter partOf(Area all, String at) {
    return new FuselageChapter(
        sizing,
        sized,
        method,
        drag,
        made,
        unit,
        areaUnit,
        Optional.of(new Whole(all, at)),
        region,
        best,
        known);
  }

  /**
   * The picture of the region over length and diameter.
   *
   * @return the picture
   */
  public Svg regionPicture() {
    List<RegionPicture.Mark> marks = new ArrayList<>();
    String chosen = (region.isEmpty() ? "the least bad: " : "chosen: ") + words(made);
    marks.add(RegionPicture.Mark.choice(chosen, made.length().si(), made.diameter().si()));
    best.ifPresent(
        body ->
            marks.add(
                RegionPicture.Mark.best(
                    "the best inside: " + words(body), body.length().si(), body.diameter().si())));
    return new RegionPicture("Length and diameter of the fuselage", region, marks).draw();
  }

  /**
   * The picture of the range of diameters at the chosen length.
   *
   * @return the picture
   */
  public Svg rangePicture() {
    return RangePicture.draw(
        sized.range(), made.diameter().si(), "chosen: " + made.diameter().format(unit, 3));
  }

  /**
   * The drag curves of the body.
   *
   * @return pictures and words about them
   */
  public FuselageDragCurves dragCurves() {
    return new FuselageDragCurves(method, drag, made, unit, areaUnit);
  }

  /**
   * The chapter.
   *
   * @return the chapter of a report
   */
  public Chapter chapter() {
    List<Block> blocks = new ArrayList<>();
    considered(blocks);
    ranges(blocks);
    price(blocks);
    dragCurves().addTo(blocks);
    FuselageMethods.addTo(blocks, made, method, areaUnit);
    share(blocks);
    handout(blocks);
    return new Chapter("The fuselage, negotiated", blocks);
  }

  private String words(Fuselage body) {
    return body.length().format(unit, 4) + " × " + body.diameter().format(unit, 4);
  }

  private void considered(List<Block> blocks) {
    blocks.add(
        new Block.Paragraph(
            "A "
                + made.shape().name()
                + " of "
                + words(made)
                + ", fineness ratio "
                + number(made.finenessRatio(), 3)
                + ". What was considered, and by how much the choice keeps clear of it:"));
    List<List<String>> rows = new ArrayList<>();
    for (Weighed one : region.considerations()) {
      Consideration c = one.consideration();
      rows.add(
          List.of(
              c.nameIn(unit),
              c.strength().name().toLowerCase(Locale.ROOT),
              MarginWords.of(one, made.length().si(), made.diameter().si(), unit),
              c.source().cite()));
    }
    blocks.add(
        new Block.Table(
            List.of("consideration", "strength", "margin of the choice", "source"), rows));
  }

  private void ranges(List<Block> blocks) {
    FeasibleRange range = sized.range();
    blocks.add(
        new Block.Picture(
            rangePicture().element(),
            "At the chosen length: each bar is what one consideration leaves of the diameter;"
                + " the tinted part is what all of them leave."));
    if (range.isEmpty()) {
      blocks.add(new Block.Paragraph("At this length the considerations clash:"));
      blocks.add(new Block.Points(range.clashes().stream().map(c -> c.describe(unit)).toList()));
    } else {
      blocks.add(new Block.Paragraph(binding(range)));
    }
    blocks.add(
        new Block.Picture(
            regionPicture().element(),
            "Length and diameter together: every line is the boundary of a consideration,"
                + " hatched on the side that it refuses."));
    region.conflict().map(this::advice).ifPresent(text -> blocks.add(new Block.Paragraph(text)));
  }

  private String advice(Conflict conflict) {
    return "With both free they clash as well: " + conflict.describe(unit);
  }

  private String binding(FeasibleRange range) {
    String least =
        range.lowerBinding().map(FuselageChapter::quoted).orElse("nothing that was considered");
    String most =
        range.upperBinding().map(FuselageChapter::quoted).orElse("nothing that was considered");
    return "The diameter may be "
        + range.interval().format(unit)
        + ". A thinner body is refused by "
        + least
        + ", a thicker one by "
        + most
        + ".";
  }

  private static String quoted(Bound bound) {
    return "\"" + bound.name() + "\"";
  }

  private void price(List<Block> blocks) {
    if (best.isEmpty()) {
      blocks.add(
          new Block.Paragraph(
              "There is no body inside all considerations that the choice could be priced against."));
      return;
    }
    blocks.add(
        new Block.Paragraph(
            "The price of the choice, against the best body inside, " + words(best.get()) + ":"));
    List<List<String>> rows = new ArrayList<>();
    for (Price price : sizing.prices(best.get(), made)) {
      rows.add(
          List.of(
              price.what(),
              price.unit().format(price.reference(), 4),
              price.unit().format(price.value(), 4),
              signed(price.relativeChange()),
              Math.abs(price.relativeChange()) < 5e-5
                  ? "the same"
                  : price.isGain() ? "a gain" : "a cost"));
    }
    blocks.add(new Block.Table(List.of("in", "best inside", "chosen", "change", ""), rows));
  }

  static String signed(double part) {
    String text = number(100.0 * Math.abs(part), 2) + " %";
    return Math.abs(part) < 5e-5 ? "0 %" : (part > 0.0 ? "+" : "−") + text;
  }

  private void share(List<Block> blocks) {
    whole.ifPresent(
        all ->
            blocks.add(
                new Block.Paragraph(
                    "The body is "
                        + number(100.0 * DragSurvey.shareOf(drag, made, all.dragArea()), 3)
                        + " % of the drag of the aircraft at "
                        + all.at()
                        + ".")));
  }

  private void handout(List<Block> blocks) {
    blocks.add(
        new Block.Paragraph("The workings of the choice, before its dimensions were rounded:"));
    Workings choice = FuselageWorkings.of(sized, drag);
    Origins origins = new Origins(known.origins());
    choice.steps().stream().filter(step -> List.of("L", "d").contains(step.symbol())).forEach(origins::add);
    List<Step> told = new ArrayList<>(Workings.of(choice.steps().stream().map(origins::trace).toList()).steps());
    blocks.add(new Block.Steps(Workings.of(told)));
    blocks.add(
        new Block.Paragraph(
            "The workings of each consideration, for the body as it is made: what is given, the"
                + " formulas, and last the margin m, which is kept where it is not negative:"));
    BodySteps steps = BodySteps.of(made, Source.taken("the choice as it is made"));
    told.addAll(known.elsewhere());
    blocks.addAll(
        ConsiderationWorkings.of(
            region.considerations(),
            origins.trace(steps.length()),
            origins.trace(steps.diameter()),
            origins,
            told,
            unit));
  }

  static String number(double value, int digits) {
    return NamedUnit.NUMBER.format(value, digits);
  }
}
