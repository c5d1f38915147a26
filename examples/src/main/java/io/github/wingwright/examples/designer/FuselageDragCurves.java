// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.drawing.CurvePicture;
import io.github.wingwright.core.drawing.DragCurvePicture;
import io.github.wingwright.core.drawing.Svg;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.report.Block;
import io.github.wingwright.core.sizing.DragArea;
import io.github.wingwright.core.sizing.DragSurvey;
import io.github.wingwright.core.sizing.FlightDrag;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** How the drag of a body goes with its diameter and its fineness ratio while length, volume or section stay. */
public final class FuselageDragCurves {
  private static final double STOUTEST = 2.0;

  /** Bodies that drag more than this many times the choice are not shown: they would squeeze the rest. */
  private static final double MOST_DRAG = 2.5;

  private final FlightDrag method;
  private final DragArea drag;
  private final Fuselage body;
  private final NamedUnit<Length> unit;
  private final NamedUnit<Area> areaUnit;
  private final DragSurvey atLength;
  private final DragSurvey atVolume;
  private final DragSurvey atSection;

  FuselageDragCurves(
      FlightDrag method,
      DragArea drag,
      Fuselage body,
      NamedUnit<Length> unit,
      NamedUnit<Area> areaUnit) {
    this.method = method;
    this.drag = drag;
    this.body = body;
    this.unit = unit;
    this.areaUnit = areaUnit;
    Interval fineness = fineness();
    this.atLength = DragSurvey.atFixedLength(body.shape(), drag, body.length(), fineness);
    this.atVolume = DragSurvey.atFixedVolume(body.shape(), drag, body.volume(), fineness);
    this.atSection = DragSurvey.atFixedSection(body.shape(), drag, body.diameter(), fineness);
  }

  /** Where the form factor's fit holds, for beyond it the end of the fit would make a least; the choice included. */
  private Interval fineness() {
    Interval fit = method.form().domain();
    double chosen = body.finenessRatio();
    double stoutest = Math.max(STOUTEST, 1.001 * body.shape().leastFinenessRatio());
    double from = Math.max(stoutest, chosen < fit.lower() ? 0.9 * chosen : fit.lower());
    return Interval.between(
        from, Math.max(chosen > fit.upper() ? 1.1 * chosen : fit.upper(), 1.2 * from));
  }

  void addTo(List<Block> blocks) {
    blocks.add(
        new Block.Picture(
            overDiameter().element(),
            "Drag of the body against its diameter. Broad: within one per cent of the least."
                + " All curves meet in the choice."));
    blocks.add(
        new Block.Picture(
            overFineness().element(),
            "The same against the fineness ratio, and with the section as it is."
                + " The curves end where the fit of the form factor does, at "
                + FuselageChapter.number(method.form().domain().lower(), 3)
                + " and "
                + FuselageChapter.number(method.form().domain().upper(), 3)
                + ", or leave the picture upwards."));
    blocks.add(new Block.Points(words()));
  }

  /**
   * Drag against diameter, at the length and at the volume of the choice.
   *
   * @return the picture
   */
  public Svg overDiameter() {
    List<DragCurvePicture.Curve> curves =
        List.of(curve(atLength, this::diameter), curve(atVolume, this::diameter));
    return draw(
        "Drag and diameter",
        "diameter in " + unit.symbol(),
        curves,
        unit.fromSi(body.diameter().si()));
  }

  /**
   * Drag against fineness ratio, at the length, at the volume and at the section of the choice.
   *
   * @return the picture
   */
  public Svg overFineness() {
    List<DragCurvePicture.Curve> curves =
        List.of(
            curve(atLength, DragSurvey.Point::fineness),
            curve(atVolume, DragSurvey.Point::fineness),
            curve(atSection, DragSurvey.Point::fineness));
    return draw("Drag and fineness ratio", "fineness ratio", curves, body.finenessRatio());
  }

  private double diameter(DragSurvey.Point point) {
    return unit.fromSi(point.diameter());
  }

  private Svg draw(
      String title, String xLabel, List<DragCurvePicture.Curve> curves, double chosen) {
    double area = drag.dragArea(body.shape(), body.length().si(), body.diameter().si());
    CurvePicture.Point choice =
        new CurvePicture.Point(
            "chosen: " + body.diameter().format(unit, 3), chosen, areaUnit.fromSi(area));
    return new DragCurvePicture(
            title,
            methodInWords(),
            xLabel,
            "drag area D/q in " + areaUnit.symbol(),
            curves,
            List.of(choice))
        .draw();
  }

  private String methodInWords() {
    return "at "
        + method.flight().airspeed().format(3)
        + "; layer: "
        + method.friction()
        + "; form factor: "
        + method.form();
  }

  private DragCurvePicture.Curve curve(
      DragSurvey survey, ToDoubleFunction<DragSurvey.Point> abscissa) {
    List<Double> x = new ArrayList<>();
    List<Double> y = new ArrayList<>();
    for (DragSurvey.Point point : shown(survey)) {
      x.add(abscissa.applyAsDouble(point));
      y.add(areaUnit.fromSi(point.dragArea()));
    }
    double least = abscissa.applyAsDouble(survey.best());
    DragCurvePicture.Shape shape =
        survey.atEnd()
            ? DragCurvePicture.Shape.AT_END
            : survey.isFlat() ? DragCurvePicture.Shape.FLAT : DragCurvePicture.Shape.SHARP;
    Interval within = within(survey, abscissa, least);
    return new DragCurvePicture.Curve(
        survey.held(),
        x,
        y,
        new DragCurvePicture.Least(
            least, areaUnit.fromSi(survey.best().dragArea()), within, shape));
  }

  private List<DragSurvey.Point> shown(DragSurvey survey) {
    double most = MOST_DRAG * drag.dragArea(body.shape(), body.length().si(), body.diameter().si());
    List<DragSurvey.Point> shown =
        survey.points().stream().filter(p -> p.dragArea() <= most).toList();
    return shown.size() > 1 ? shown : survey.points();
  }

  /** The bodies within one per cent, on the axis of the picture: between the neighbours of the ends in the survey. */
  private static Interval within(
      DragSurvey survey, ToDoubleFunction<DragSurvey.Point> abscissa, double least) {
    double a = at(survey, survey.withinOnePercent().lower(), abscissa);
    double b = at(survey, survey.withinOnePercent().upper(), abscissa);
    return Interval.between(Math.min(Math.min(a, b), least), Math.max(Math.max(a, b), least));
  }

  private static double at(
      DragSurvey survey, double fineness, ToDoubleFunction<DragSurvey.Point> abscissa) {
    List<DragSurvey.Point> points = survey.points();
    for (int i = 1; i < points.size(); i++) {
      DragSurvey.Point from = points.get(i - 1);
      DragSurvey.Point to = points.get(i);
      if (fineness <= to.fineness()) {
        double part =
            Math.max(0.0, (fineness - from.fineness()) / (to.fineness() - from.fineness()));
        return abscissa.applyAsDouble(from)
            + part * (abscissa.applyAsDouble(to) - abscissa.applyAsDouble(from));
      }
    }
    return abscissa.applyAsDouble(points.get(points.size() - 1));
  }

  /** One line for each thing that may stay, the form factor named, for the place of the least depends on it. */
  private List<String> words() {
    List<String> lines = new ArrayList<>();
    for (DragSurvey survey : List.of(atLength, atVolume, atSection)) {
      String shape = survey.atEnd() ? "" : survey.isFlat() ? ": a flat least" : ": a sharp least";
      lines.add("At a fixed " + survey + shape + ", by the form factor of " + method.form() + ".");
    }
    return lines;
  }
}
