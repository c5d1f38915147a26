// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import io.github.wingwright.core.geometry.AirfoilSection;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;

/** The outline of a wing section at its chord, with the mean line, the greatest thickness and the trailing edge. */
public final class SectionPicture {
  private static final double WIDTH = 190.0;
  private static final double CHORD = 150.0;
  private static final double LEFT = 20.0;
  private static final int POINTS = 161;
  private static final int MEAN_LINE_POINTS = 61;

  private SectionPicture() {}

  /**
   * Draws a section.
   *
   * @param section the section
   * @param chord the chord it is made at
   * @param unit unit of the dimensions
   * @return the picture
   */
  public static Svg draw(AirfoilSection section, Length chord, NamedUnit<Length> unit) {
    double[] x = new double[POINTS];
    double[] y = new double[POINTS];
    section.outline(x, y);
    double low = 0.0;
    double high = 0.0;
    for (double value : y) {
      low = Math.min(low, value);
      high = Math.max(high, value);
    }
    double base = 20.0 + high * CHORD;
    double height = base - low * CHORD + 24.0;
    Svg svg = new Svg(WIDTH, height, "Section " + section.name());
    svg.rectangle(0, 0, WIDTH, height, Pen.fill("#ffffff"));
    svg.text(6.0, 7.0, section.name(), Lettering.start(4.0).heavy());
    for (int i = 0; i < POINTS; i++) {
      x[i] = LEFT + x[i] * CHORD;
      y[i] = base - y[i] * CHORD;
    }
    svg.polygon(x, y, new Pen(Pen.INK, 0.4, Pen.ACCENT_TINT, ""));
    svg.line(LEFT - 4.0, base, LEFT + CHORD + 4.0, base, Pen.CENTRE);
    meanLine(svg, section, base);
    double bottom = base - low * CHORD;
    String chordFigure = unit.format(chord.si(), 4) + " chord";
    DimensionLine.horizontal(svg, LEFT, LEFT + CHORD, base, base, bottom + 12.0, chordFigure);
    double at = section.maximumThicknessPosition();
    double half = 0.5 * section.maximumThickness();
    double top = base - (section.camber(at) + half) * CHORD;
    double foot = base - (section.camber(at) - half) * CHORD;
    svg.line(LEFT + at * CHORD, top, LEFT + at * CHORD, foot, Pen.stroke(Pen.WARM, 0.25));
    String thickness =
        unit.format(section.maximumThickness() * chord.si(), 3)
            + " thick ("
            + NamedUnit.NUMBER.format(100.0 * section.maximumThickness(), 3)
            + " %) at "
            + NamedUnit.NUMBER.format(100.0 * at, 3)
            + " % chord";
    svg.text(LEFT + at * CHORD, top - 3.0, thickness, Lettering.middle(2.9).in(Pen.WARM));
    double edge = section.trailingEdgeThickness() * chord.si();
    String edgeText = edge == 0.0 ? "sharp trailing edge" : "trailing edge " + unit.format(edge, 3);
    svg.text(WIDTH - 6.0, 7.0, edgeText, Lettering.end(2.9));
    return svg;
  }

  private static void meanLine(Svg svg, AirfoilSection section, double base) {
    double[] x = new double[MEAN_LINE_POINTS];
    double[] y = new double[MEAN_LINE_POINTS];
    for (int i = 0; i < MEAN_LINE_POINTS; i++) {
      double station = i / (MEAN_LINE_POINTS - 1.0);
      x[i] = LEFT + station * CHORD;
      y[i] = base - section.camber(station) * CHORD;
    }
    svg.polyline(x, y, Pen.stroke(Pen.ACCENT, 0.25).dashed("2 1"));
  }
}
