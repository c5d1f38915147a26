// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.LiftingSurface;
import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;

/**
 * Two airframes on each other in three views, nose on nose and at one scale, to see what changed: the first in dashes, the
 * second in full lines. Third-angle projection as in {@link ThreeView}; the picture carries no dimensions.
 */
public final class OverlaidViews {
  private static final double MOST_WIDTH = 250.0;
  private static final double MOST_HEIGHT = 200.0;
  private static final double MARGIN = 8.0;
  private static final double GAP = 10.0;
  private static final int BODY_POINTS = 97;
  private static final Pen BEFORE = new Pen(Pen.WARM, 0.35, "none", "2.2 1.1");
  private static final Pen AFTER = new Pen(Pen.INK, 0.4, "none", "");

  /** A view: what of a point goes to the right on paper, and what goes down. */
  private enum View {
    PLAN,
    SIDE,
    FRONT;

    double right(double[] p) {
      return this == FRONT ? p[1] : p[0];
    }

    double down(double[] p) {
      return this == PLAN ? -p[1] : -p[2];
    }
  }

  private final SheetScale scale;
  private final Sketch plan = new Sketch();
  private final Sketch side = new Sketch();
  private final Sketch front = new Sketch();

  private OverlaidViews(Airframe before, Airframe after, SheetScale scale) {
    this.scale = scale;
    draw(before, BEFORE);
    draw(after, AFTER);
  }

  /**
   * Draws two airframes on each other.
   *
   * @param before the first, in dashes
   * @param after the second, in full lines
   * @param beforeName what the first is called
   * @param afterName what the second is called
   * @param unit unit of the bar that shows the scale
   * @return the picture
   */
  public static Svg draw(Airframe before, Airframe after, String beforeName, String afterName, NamedUnit<Length> unit) {
    Objects.requireNonNull(after, "after");
    Objects.requireNonNull(unit, "unit");
    Objects.requireNonNull(before, "before");
    OverlaidViews views = null;
    for (double ratio : SheetScale.standardRatios()) {
      views = new OverlaidViews(before, after, new SheetScale(ratio, unit));
      if (views.width() <= MOST_WIDTH && views.height() <= MOST_HEIGHT) {
        break;
      }
    }
    return Objects.requireNonNull(views).assemble(beforeName, afterName);
  }

  private double width() {
    return Math.max(plan.bounds().right(), side.bounds().right())
        - Math.min(plan.bounds().left(), side.bounds().left())
        + front.bounds().width()
        + GAP
        + 2.0 * MARGIN;
  }

  private double height() {
    double lower = Math.max(side.bounds().height(), front.bounds().height());
    return plan.bounds().height() + GAP + lower + 2.0 * MARGIN;
  }

  private Svg assemble(String beforeName, String afterName) {
    double left = Math.min(plan.bounds().left(), side.bounds().left());
    double lowerTop = Math.min(side.bounds().top(), front.bounds().top());
    double lowerBottom = Math.max(side.bounds().bottom(), front.bounds().bottom());
    double noseX = MARGIN + front.bounds().width() + GAP - left;
    double axisY = MARGIN + plan.bounds().height() + GAP - lowerTop;
    double drawn = axisY + lowerBottom + GAP;
    Sketch foot = foot(beforeName, afterName, width() - 2.0 * MARGIN);
    double height = drawn + foot.bounds().height() + MARGIN;
    Svg svg = Sheet.blank(width(), height, "Three views of " + beforeName + " and " + afterName);
    plan.onto(svg, noseX, MARGIN - plan.bounds().top());
    side.onto(svg, noseX, axisY);
    front.onto(svg, MARGIN - front.bounds().left(), axisY);
    foot.onto(svg, MARGIN, drawn);
    return svg;
  }

  /** A sample of each line with its name, and the strip of the scale. */
  private Sketch foot(String beforeName, String afterName, double width) {
    Sketch foot = TitleStrip.of(beforeName + " and " + afterName, scale, width);
    double y = foot.bounds().bottom() + 6.0;
    Lettering note = Lettering.start(Lettering.NOTE);
    foot.line(0.0, y - 1.2, 14.0, y - 1.2, BEFORE);
    foot.text(17.0, y, beforeName, note);
    foot.line(0.0, y + 4.8, 14.0, y + 4.8, AFTER);
    foot.text(17.0, y + 6.0, afterName, note);
    return foot;
  }

  private void draw(Airframe airframe, Pen pen) {
    body(airframe.fuselage(), pen);
    surface(airframe.wing(), pen);
    for (Tail tail : airframe.tails()) {
      surface(tail, pen);
    }
  }

  private Sketch sketch(View view) {
    return switch (view) {
      case PLAN -> plan;
      case SIDE -> side;
      case FRONT -> front;
    };
  }

  private void polygon(List<double[]> points, View view, Pen pen) {
    double[] x = new double[points.size()];
    double[] y = new double[points.size()];
    for (int i = 0; i < x.length; i++) {
      x[i] = scale.paper(view.right(points.get(i)));
      y[i] = scale.paper(view.down(points.get(i)));
    }
    sketch(view).polygon(x, y, pen);
  }

  private void body(Fuselage body, Pen pen) {
    List<double[]> above = new ArrayList<>();
    List<double[]> beside = new ArrayList<>();
    for (int k = 0; k < 2 * BODY_POINTS; k++) {
      int i = k < BODY_POINTS ? k : 2 * BODY_POINTS - 1 - k;
      double sign = k < BODY_POINTS ? 1.0 : -1.0;
      // Drawn together towards both ends, where the outline bends most.
      double x = body.length().si() * 0.5 * (1.0 - Math.cos(Math.PI * i / (BODY_POINTS - 1)));
      Length at = Length.metres(x);
      above.add(new double[] {x, sign * 0.5 * body.widthAt(at).si(), 0.0});
      beside.add(new double[] {x, 0.0, body.centreHeightAt(at).si() + sign * 0.5 * body.heightAt(at).si()});
    }
    polygon(above, View.PLAN, pen);
    polygon(beside, View.SIDE, pen);
    Length greatest = body.greatestSectionX();
    double middle = body.centreHeightAt(greatest).si();
    List<double[]> round = new ArrayList<>();
    for (int i = 0; i < 72; i++) {
      double angle = 2.0 * Math.PI * i / 72;
      round.add(
          new double[] {
            0.0,
            0.5 * body.widthAt(greatest).si() * Math.cos(angle),
            middle + 0.5 * body.heightAt(greatest).si() * Math.sin(angle)
          });
    }
    polygon(round, View.FRONT, pen);
  }

  /** The outline of each half: along the leading edge outward, back along the trailing edge. */
  private void surface(LiftingSurface surface, Pen pen) {
    boolean mirrored = surface.planform().isMirrored();
    List<double[]> starboard = outline(surface, mirrored, 1.0);
    for (View view : View.values()) {
      if (mirrored && view == View.PLAN) {
        // One outline from tip to tip: the root is no edge.
        List<double[]> both = new ArrayList<>(starboard);
        List<double[]> port = outline(surface, true, -1.0);
        Collections.reverse(port);
        both.addAll(port);
        polygon(both, view, pen);
      } else {
        polygon(starboard, view, pen);
        if (mirrored && view == View.FRONT) {
          polygon(outline(surface, true, -1.0), view, pen);
        }
      }
    }
  }

  private static List<double[]> outline(LiftingSurface surface, boolean mirrored, double sign) {
    Planform planform = surface.planform();
    List<double[]> points = new ArrayList<>();
    List<Length> stations = planform.stations();
    for (Length station : stations) {
      points.add(point(surface, station, 0.0, mirrored, sign));
    }
    for (int i = stations.size() - 1; i >= 0; i--) {
      Length station = stations.get(i);
      points.add(point(surface, station, planform.chordAt(station).si(), mirrored, sign));
    }
    return points;
  }

  private static double[] point(LiftingSurface surface, Length station, double behind, boolean mirrored, double sign) {
    Planform planform = surface.planform();
    Placement at = surface.placement();
    double angle = surface.incidence().si() + (mirrored ? planform.twistAt(station).si() : 0.0);
    double x = at.x().si() + planform.leadingEdgeAt(station).si() + behind * Math.cos(angle);
    if (!mirrored) {
      return new double[] {x, at.y().si(), at.z().si() + station.si()};
    }
    double z = at.z().si() + planform.heightAt(station).si() - behind * Math.sin(angle);
    return new double[] {x, at.y().si() + sign * station.si(), z};
  }
}
