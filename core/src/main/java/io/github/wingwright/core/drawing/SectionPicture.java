// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import io.github.wingwright.core.drawing.DimensionLine.Direction;
import io.github.wingwright.core.drawing.DimensionLine.FigurePlace;
import io.github.wingwright.core.geometry.AirfoilSection;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.Objects;

/**
 * The outline of a wing section with its chord, mean line, greatest thickness and trailing edge, the figures for the chord
 * that it is made at.
 */
public final class SectionPicture {
  private static final double WIDTH = 180.0;
  private static final double CHORD = 160.0;
  private static final double LEFT = 10.0;
  private static final double MARGIN = 6.0;
  private static final int POINTS = 201;
  private static final int MEAN_LINE_POINTS = 61;

  private final AirfoilSection section;
  private final Length chord;
  private final NamedUnit<Length> unit;
  private final Sketch sketch = new Sketch();

  private SectionPicture(AirfoilSection section, Length chord, NamedUnit<Length> unit) {
    this.section = section;
    this.chord = chord;
    this.unit = unit;
  }

  /**
   * Draws a section.
   *
   * @param section the section
   * @param chord the chord it is made at
   * @param unit unit of the dimensions
   * @return the picture
   */
  public static Svg draw(AirfoilSection section, Length chord, NamedUnit<Length> unit) {
    Objects.requireNonNull(section, "section");
    Objects.requireNonNull(chord, "chord");
    Objects.requireNonNull(unit, "unit");
    SectionPicture picture = new SectionPicture(section, chord, unit);
    picture.outline();
    picture.thickness();
    picture.chordDimension();
    return picture.sheet();
  }

  private void outline() {
    double[] x = new double[POINTS];
    double[] y = new double[POINTS];
    section.outline(x, y);
    for (int i = 0; i < POINTS; i++) {
      x[i] = LEFT + x[i] * CHORD;
      y[i] = -y[i] * CHORD;
    }
    sketch.polygon(x, y, new Pen(Pen.INK, 0.4, Pen.ACCENT_TINT, ""));
    sketch.line(LEFT - 4.0, 0.0, LEFT + CHORD + 4.0, 0.0, Pen.CENTRE);
    double[] meanX = new double[MEAN_LINE_POINTS];
    double[] meanY = new double[MEAN_LINE_POINTS];
    for (int i = 0; i < MEAN_LINE_POINTS; i++) {
      double station = i / (MEAN_LINE_POINTS - 1.0);
      meanX[i] = LEFT + station * CHORD;
      meanY[i] = -section.camber(station) * CHORD;
    }
    sketch.polyline(meanX, meanY, Pen.stroke(Pen.ACCENT, 0.3).dashed("2 1"));
  }

  /** The greatest thickness where it is, its figure above the section on the same line. */
  private void thickness() {
    double at = section.maximumThicknessPosition();
    double half = 0.5 * section.maximumThickness();
    double x = LEFT + at * CHORD;
    double upper = -(section.camber(at) + half) * CHORD;
    double lower = -(section.camber(at) - half) * CHORD;
    double top = sketch.bounds().top() - 5.0;
    sketch.line(x, top, x, lower, Pen.stroke(Pen.WARM, 0.25));
    sketch.circle(x, upper, 0.7, Pen.fill(Pen.WARM));
    sketch.circle(x, lower, 0.7, Pen.fill(Pen.WARM));
    String figure =
        "thickness " + both(section.maximumThickness()) + " at " + percent(at) + " of the chord";
    sketch.text(x + 1.5, top + 2.6, figure, Lettering.start(Lettering.NOTE).in(Pen.WARM));
  }

  private void chordDimension() {
    DimensionLine dimension = new DimensionLine(LEFT, LEFT + CHORD, 0.0, 0.0, "chord " + unit.format(chord.si(), 4));
    double at = sketch.bounds().bottom() + 9.0;
    dimension.draw(sketch, Direction.HORIZONTAL, at, FigurePlace.INSIDE);
    double camber = section.maximumCamber();
    String mean = camber == 0.0 ? "symmetric" : "camber " + both(camber);
    double edge = section.trailingEdgeThickness();
    String trailing = edge == 0.0 ? "sharp trailing edge" : "trailing edge " + both(edge);
    sketch.text(LEFT, at + 7.0, mean, Lettering.start(Lettering.NOTE).in(Pen.ACCENT));
    sketch.text(LEFT + CHORD, at + 7.0, trailing, Lettering.end(Lettering.NOTE));
  }

  /** As it is made and in percent of the chord. */
  private String both(double overChord) {
    return unit.format(overChord * chord.si(), 3) + " (" + percent(overChord) + ")";
  }

  private static String percent(double ratio) {
    return NamedUnit.NUMBER.format(100.0 * ratio, 3) + " %";
  }

  private Svg sheet() {
    Lettering large = Lettering.start(Lettering.TITLE).heavy();
    double titleHeight = MARGIN + 6.0;
    Svg svg = Sheet.blank(WIDTH, titleHeight + sketch.bounds().height() + MARGIN, "Section " + section.name());
    svg.text(MARGIN, MARGIN + 3.0, TextWidth.cut(section.name(), WIDTH - 2.0 * MARGIN, large), large);
    sketch.onto(svg, 0.0, titleHeight - sketch.bounds().top());
    return svg;
  }
}
