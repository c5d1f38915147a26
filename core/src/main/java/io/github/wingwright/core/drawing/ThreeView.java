// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.LiftingSurface;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.List;

/**
 * The three-view drawing of an airframe with its main dimensions: plan above, side below, front at the right of the side
 * view. The scale is one of the standard scales of ISO 5455, the largest that fits the sheet.
 */
public final class ThreeView {
  private static final double MARGIN = 12.0;
  private static final double DIMENSION_STEP = 8.0;
  private static final double TITLE_HEIGHT = 12.0;

  /** Standard reductions and enlargements (ISO 5455): paper per real length. */
  private static final double[] SCALES = {
    10, 5, 2, 1, 1.0 / 2, 1.0 / 5, 1.0 / 10, 1.0 / 20, 1.0 / 50, 1.0 / 100, 1.0 / 200, 1.0 / 500, 1.0 / 1000
  };

  private static final int BODY_POINTS = 81;
  private static final int SECTION_POINTS = 61;

  private final Airframe airframe;
  private final NamedUnit<Length> unit;
  private final Svg svg;
  private final double scale;
  private final double originX;
  private final double planY;
  private final double sideY;
  private final double frontX;

  private ThreeView(Airframe airframe, String title, NamedUnit<Length> unit, List<Mark> marks) {
    this.airframe = airframe;
    this.unit = unit;
    double sheetWidth = 297.0;
    double sheetHeight = 210.0;
    double length = realLength();
    double span = realSpan();
    double top = realTop();
    double bottom = realBottom();
    double paddingX = 2.0 * MARGIN + 4.0 * DIMENSION_STEP;
    double paddingY = 2.0 * MARGIN + TITLE_HEIGHT + 5.5 * DIMENSION_STEP;
    double chosen = SCALES[SCALES.length - 1];
    for (double candidate : SCALES) {
      boolean wide = (length + span) * candidate * 1000.0 + paddingX <= sheetWidth;
      boolean tall = (span + top - bottom) * candidate * 1000.0 + paddingY <= sheetHeight;
      if (wide && tall) {
        chosen = candidate;
        break;
      }
    }
    scale = chosen * 1000.0;
    double height = Math.max(150.0, (span + top - bottom) * scale + paddingY);
    double width = Math.max(sheetWidth, (length + span) * scale + paddingX);
    svg = new Svg(width, height, "Three-view drawing of " + title);
    originX = MARGIN + 2.0 * DIMENSION_STEP;
    planY = MARGIN + 1.5 * DIMENSION_STEP + 0.5 * span * scale;
    sideY = planY + 0.5 * span * scale + 2.2 * DIMENSION_STEP + top * scale;
    frontX = width - MARGIN - 0.5 * span * scale - DIMENSION_STEP;
    svg.rectangle(0, 0, width, height, Pen.fill("#ffffff"));
    drawPlan();
    drawSide(marks);
    drawFront();
    drawTitle(title, chosen);
  }

  /**
   * Draws an airframe.
   *
   * @param airframe the airframe
   * @param title name of the design
   * @param unit unit of the dimensions
   * @param marks stations to mark in the side view, such as the centre of gravity
   * @return the picture
   */
  public static Svg draw(Airframe airframe, String title, NamedUnit<Length> unit, List<Mark> marks) {
    return new ThreeView(airframe, title, unit, marks).svg;
  }

  /**
   * A station to mark in the side view.
   *
   * @param x distance aft of the nose tip
   * @param label short label, such as {@code "CG"}
   * @param above whether the label stands above the fuselage
   */
  public record Mark(Length x, String label, boolean above) {}

  private double realLength() {
    double aft = airframe.fuselage().length().si();
    for (Tail tail : airframe.tails()) {
      for (Length station : tail.planform().stations()) {
        aft = Math.max(aft, tail.placement().x().si() + trailingEdge(tail.planform(), station));
      }
    }
    return aft;
  }

  private static double trailingEdge(Planform p, Length station) {
    return p.leadingEdgeAt(station).si() + p.chordAt(station).si();
  }

  private double realSpan() {
    double span = Math.max(airframe.wing().planform().span().si(), airframe.fuselage().diameter().si());
    return airframe.horizontalTail().map(t -> Math.max(span, t.planform().span().si())).orElse(span);
  }

  private double realTop() {
    double top = 0.5 * airframe.fuselage().diameter().si();
    top = Math.max(top, tipHeight(airframe.wing()));
    for (Tail tail : airframe.tails()) {
      top = Math.max(top, tail.role() == Tail.Role.VERTICAL ? finTop(tail) : tipHeight(tail));
    }
    return top;
  }

  private double realBottom() {
    return Math.min(-0.5 * airframe.fuselage().diameter().si(), tipHeight(airframe.wing()));
  }

  private static double finTop(Tail fin) {
    return fin.placement().z().si() + fin.planform().span().si();
  }

  private static double tipHeight(LiftingSurface surface) {
    Planform p = surface.planform();
    List<Length> stations = p.stations();
    return surface.placement().z().si() + p.heightAt(stations.get(stations.size() - 1)).si();
  }

  private double px(double x) {
    return originX + x * scale;
  }

  private void drawPlan() {
    Fuselage body = airframe.fuselage();
    svg.line(px(0) - 5, planY, px(realLength()) + 5, planY, Pen.CENTRE);
    airframe.horizontalTail().ifPresent(this::planSurface);
    bodyOutline(body, planY);
    planSurface(airframe.wing());
    Planform p = airframe.wing().planform();
    double half = 0.5 * p.span().si();
    double leading = airframe.wing().placement().x().si();
    List<Length> stations = p.stations();
    Length tip = stations.get(stations.size() - 1);
    double tipLeading = leading + p.leadingEdgeAt(tip).si();
    DimensionLine.vertical(
        svg,
        planY - half * scale,
        planY + half * scale,
        px(tipLeading),
        px(tipLeading),
        originX - DIMENSION_STEP,
        figure(p.span()));
    DimensionLine.horizontal(
        svg,
        px(tipLeading),
        px(tipLeading + p.tipChord().si()),
        planY - half * scale,
        planY - half * scale,
        planY - half * scale - 0.8 * DIMENSION_STEP,
        figure(p.tipChord()));
    airframe
        .horizontalTail()
        .ifPresent(
            tail -> {
              double x = px(tail.placement().x().si() + trailingEdge(tail.planform(), tail.planform().stations().get(0)));
              double t = 0.5 * tail.planform().span().si() * scale;
              DimensionLine.vertical(
                  svg, planY - t, planY + t, x, x, x + DIMENSION_STEP, figure(tail.planform().span()));
              double wingQuarter = px(airframe.wing().quarterChordX().si());
              double tailQuarter = px(tail.quarterChordX().si());
              double at = planY + half * scale + 0.9 * DIMENSION_STEP;
              DimensionLine.horizontal(
                  svg, wingQuarter, tailQuarter, planY, planY, at, figure(tail.armFrom(airframe.wing())) + " tail arm");
            });
  }

  private void planSurface(LiftingSurface surface) {
    Planform p = surface.planform();
    List<Length> stations = p.stations();
    int n = stations.size();
    double[] x = new double[4 * n];
    double[] y = new double[4 * n];
    double root = surface.placement().x().si();
    for (int i = 0; i < n; i++) {
      Length s = stations.get(i);
      double lead = px(root + p.leadingEdgeAt(s).si());
      double trail = px(root + trailingEdge(p, s));
      // Around the outline: port leading edge inwards, starboard outwards, and back along the trailing edges.
      x[n - 1 - i] = lead;
      y[n - 1 - i] = planY - s.si() * scale;
      x[n + i] = lead;
      y[n + i] = planY + s.si() * scale;
      x[3 * n - 1 - i] = trail;
      y[3 * n - 1 - i] = planY + s.si() * scale;
      x[3 * n + i] = trail;
      y[3 * n + i] = planY - s.si() * scale;
    }
    svg.polygon(x, y, new Pen(Pen.INK, 0.35, Pen.ACCENT_TINT, ""));
  }

  private void bodyOutline(Fuselage body, double axis) {
    double[] x = new double[2 * BODY_POINTS];
    double[] y = new double[2 * BODY_POINTS];
    for (int i = 0; i < BODY_POINTS; i++) {
      double station = body.length().si() * 0.5 * (1.0 - Math.cos(Math.PI * i / (BODY_POINTS - 1)));
      double r = body.shape().radius(station, body.length().si(), body.diameter().si());
      x[i] = px(station);
      y[i] = axis - r * scale;
      x[2 * BODY_POINTS - 1 - i] = x[i];
      y[2 * BODY_POINTS - 1 - i] = axis + r * scale;
    }
    svg.polygon(x, y, Pen.OUTLINE);
  }

  private void drawSide(List<Mark> marks) {
    Fuselage body = airframe.fuselage();
    svg.line(px(0) - 5, sideY, px(realLength()) + 5, sideY, Pen.CENTRE);
    airframe.verticalTail().ifPresent(this::fin);
    bodyOutline(body, sideY);
    sideSection(airframe.wing());
    airframe.horizontalTail().ifPresent(this::sideSection);
    double bottom = sideY - realBottom() * scale;
    double below = bottom + 2.6 * DIMENSION_STEP;
    DimensionLine.horizontal(
        svg, px(0), px(body.length().si()), sideY, sideY, below, figure(body.length()));
    double wingX = airframe.wing().placement().x().si();
    double root = airframe.wing().planform().rootChord().si();
    double at = bottom + 1.5 * DIMENSION_STEP;
    double wingY = sideY - airframe.wing().placement().z().si() * scale;
    DimensionLine.horizontal(
        svg, px(wingX), px(wingX + root), wingY, wingY, at, figure(airframe.wing().planform().rootChord()));
    DimensionLine.horizontal(svg, px(0), px(wingX), sideY, wingY, at, figure(airframe.wing().placement().x()));
    double radius = 0.5 * body.diameter().si() * scale;
    DimensionLine.vertical(
        svg,
        sideY - radius,
        sideY + radius,
        px(0.0) + radius,
        px(0.0) + radius,
        originX - DIMENSION_STEP,
        "⌀ " + figure(body.diameter()));
    marks.forEach(mark -> mark(mark, radius));
  }

  private void mark(Mark mark, double radius) {
    double x = px(mark.x().si());
    svg.circle(x, sideY, 1.3, new Pen(Pen.WARM, 0.3, "#ffffff", ""));
    double[] quarterX = {x, x, x + 1.3, x};
    double[] quarterY = {sideY, sideY - 1.3, sideY, sideY};
    svg.polygon(quarterX, quarterY, Pen.fill(Pen.WARM));
    svg.polygon(
        new double[] {x, x, x - 1.3, x}, new double[] {sideY, sideY + 1.3, sideY, sideY}, Pen.fill(Pen.WARM));
    double textY = mark.above() ? sideY - radius - 7.0 : sideY + radius + 5.5;
    svg.line(x, mark.above() ? sideY - 1.3 : sideY + 1.3, x, mark.above() ? textY + 0.8 : textY - 2.8, Pen.stroke(Pen.WARM, 0.18));
    svg.text(x, textY, mark.label(), Lettering.middle(2.8).in(Pen.WARM).heavy());
  }

  private void fin(Tail tail) {
    Planform p = tail.planform();
    List<Length> stations = p.stations();
    int n = stations.size();
    double[] x = new double[2 * n];
    double[] y = new double[2 * n];
    double root = tail.placement().x().si();
    for (int i = 0; i < n; i++) {
      Length s = stations.get(i);
      x[i] = px(root + p.leadingEdgeAt(s).si());
      x[2 * n - 1 - i] = px(root + trailingEdge(p, s));
      y[i] = sideY - (tail.placement().z().si() + s.si()) * scale;
      y[2 * n - 1 - i] = y[i];
    }
    svg.polygon(x, y, new Pen(Pen.INK, 0.35, Pen.ACCENT_TINT, ""));
    double right = px(realLength());
    DimensionLine.vertical(
        svg, y[0], y[n - 1], x[2 * n - 1], x[n], right + DIMENSION_STEP, figure(p.span()));
  }

  private void sideSection(LiftingSurface surface) {
    double[] x = new double[SECTION_POINTS];
    double[] y = new double[SECTION_POINTS];
    surface.section().outline(x, y);
    double chord = surface.planform().rootChord().si();
    double sine = surface.incidence().sine();
    double cosine = surface.incidence().cosine();
    for (int i = 0; i < SECTION_POINTS; i++) {
      double along = x[i] * chord;
      double up = y[i] * chord;
      x[i] = px(surface.placement().x().si() + along * cosine + up * sine);
      y[i] = sideY - (surface.placement().z().si() + up * cosine - along * sine) * scale;
    }
    svg.polygon(x, y, new Pen(Pen.INK, 0.35, Pen.ACCENT_TINT, ""));
  }

  private void drawFront() {
    svg.line(frontX, sideY - realTop() * scale - 3, frontX, sideY - realBottom() * scale + 3, Pen.CENTRE);
    airframe
        .verticalTail()
        .ifPresent(
            fin -> {
              double halfThickness = Math.max(0.2, 0.5 * fin.maximumThickness().si() * scale);
              double low = sideY - fin.placement().z().si() * scale;
              double high = sideY - finTop(fin) * scale;
              svg.rectangle(frontX - halfThickness, high, 2.0 * halfThickness, low - high, Pen.OUTLINE);
            });
    airframe.horizontalTail().ifPresent(this::frontSurface);
    frontSurface(airframe.wing());
    svg.circle(frontX, sideY, 0.5 * airframe.fuselage().diameter().si() * scale, Pen.OUTLINE);
    double degrees = airframe.wing().planform().equivalentDihedral().degrees();
    if (Math.abs(degrees) >= 0.05) {
      double half = 0.5 * airframe.wing().planform().span().si() * scale;
      String text = Math.round(degrees * 10.0) / 10.0 + "° dihedral";
      svg.text(frontX + half, sideY + DIMENSION_STEP, text, Lettering.end(3.0));
    }
  }

  private void frontSurface(LiftingSurface surface) {
    Planform p = surface.planform();
    List<Length> stations = p.stations();
    int n = stations.size();
    for (int side = -1; side <= 1; side += 2) {
      double[] x = new double[2 * n];
      double[] y = new double[2 * n];
      for (int i = 0; i < n; i++) {
        Length s = stations.get(i);
        double half = Math.max(0.15, 0.5 * surface.section().maximumThickness() * p.chordAt(s).si() * scale);
        double z = sideY - (surface.placement().z().si() + p.heightAt(s).si()) * scale;
        x[i] = frontX + side * s.si() * scale;
        y[i] = z - half;
        x[2 * n - 1 - i] = x[i];
        y[2 * n - 1 - i] = z + half;
      }
      svg.polygon(x, y, new Pen(Pen.INK, 0.3, Pen.ACCENT_TINT, ""));
    }
  }

  private void drawTitle(String title, double chosen) {
    double baseline = svg.height() - 6.0;
    svg.line(MARGIN, baseline - 6.5, svg.width() - MARGIN, baseline - 6.5, Pen.THIN);
    svg.text(MARGIN, baseline, title, Lettering.start(4.0).heavy());
    String ratio = chosen >= 1.0 ? Math.round(chosen) + " : 1" : "1 : " + Math.round(1.0 / chosen);
    svg.text(
        svg.width() - MARGIN,
        baseline,
        "scale " + ratio + " at full size, dimensions in " + unit.symbol(),
        Lettering.end(3.2));
  }

  private String figure(Length length) {
    return NamedUnit.NUMBER.format(unit.fromSi(length.si()), 4);
  }
}
