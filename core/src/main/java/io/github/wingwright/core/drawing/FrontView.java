// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import io.github.wingwright.core.drawing.DimensionLine.Direction;
import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.Panel;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.List;
import java.util.stream.Collectors;

/** The airframe from the front: span and dihedral. */
final class FrontView {
  private static final int ARC_POINTS = 13;

  /** Angles below this cannot be drawn [rad]. */
  private static final double FLAT = 1e-3;

  private final Airframe airframe;
  private final SheetScale scale;
  private final Sketch sketch = new Sketch();

  private FrontView(Airframe airframe, SheetScale scale) {
    this.airframe = airframe;
    this.scale = scale;
  }

  static Sketch of(Airframe airframe, SheetScale scale) {
    FrontView view = new FrontView(airframe, scale);
    view.shapes();
    view.span();
    view.dihedral();
    return view.sketch;
  }

  /** An angle as a figure, such as {@code "8.5°"}. */
  static String figure(Angle angle) {
    double degrees = Math.abs(angle.degrees()) < 1e-9 ? 0.0 : angle.degrees();
    return NamedUnit.NUMBER.format(degrees, 3) + "°";
  }

  private void shapes() {
    Silhouette silhouette = new Silhouette(scale, sketch);
    airframe.tails().stream().filter(t -> t.role() == Tail.Role.VERTICAL).forEach(silhouette::finFromFront);
    airframe.tails().stream().filter(t -> t.role().isMirrored()).forEach(silhouette::surfaceFromFront);
    Wing wing = airframe.wing();
    silhouette.surfaceFromFront(wing);
    sketch.circle(0.0, 0.0, 0.5 * scale.paper(airframe.fuselage().diameter()), Pen.OUTLINE);
    Box box = sketch.bounds();
    sketch.line(0.0, box.top() - 4.0, 0.0, box.bottom() + 4.0, Pen.CENTRE);
  }

  private double heightAt(Length station) {
    Wing wing = airframe.wing();
    return -scale.paper(wing.placement().z().plus(wing.planform().heightAt(station)));
  }

  private void span() {
    Planform planform = airframe.wing().planform();
    Length tip = Silhouette.tipStation(planform);
    double half = scale.paper(tip);
    double y = heightAt(tip);
    new DimensionStack(Direction.HORIZONTAL, sketch.bounds().bottom() - 3.0, 1.0)
        .add(-half, half, y, y, scale.figure(planform.span()))
        .draw(sketch);
  }

  private void dihedral() {
    Planform planform = airframe.wing().planform();
    List<Panel> panels = planform.panels();
    boolean one = panels.stream().allMatch(p -> p.dihedral().equals(panels.get(0).dihedral()));
    double angle = planform.equivalentDihedral().si();
    if (one && Math.abs(angle) >= FLAT && Math.abs(angle) < 0.7) {
      angleDimension(planform, angle);
      return;
    }
    String words =
        one
            ? "dihedral " + figure(panels.get(0).dihedral())
            : "dihedral "
                + panels.stream().map(p -> figure(p.dihedral())).collect(Collectors.joining(", "))
                + "; equivalent "
                + figure(planform.equivalentDihedral());
    sketch.text(0.0, sketch.bounds().bottom() + 5.5, words, Lettering.middle(Lettering.NOTE));
  }

  /** The angle between the level through the root and the wing, on the right beyond the tip (ISO 129-1). */
  private void angleDimension(Planform planform, double angle) {
    double half = scale.paper(Silhouette.tipStation(planform));
    double root = heightAt(Length.ZERO);
    double radius = half / Math.cos(angle) + 4.0;
    double reach = radius + 2.0;
    double body = 0.5 * scale.paper(airframe.fuselage().diameter());
    sketch.line(Math.min(body + 0.8, half), root, reach, root, Pen.THIN);
    double start = half + 0.8;
    double endX = reach * Math.cos(angle);
    double endY = root - reach * Math.sin(angle);
    sketch.line(start, root - start * Math.tan(angle), endX, endY, Pen.THIN);
    double[] x = new double[ARC_POINTS];
    double[] y = new double[ARC_POINTS];
    for (int i = 0; i < ARC_POINTS; i++) {
      double a = angle * i / (ARC_POINTS - 1);
      x[i] = radius * Math.cos(a);
      y[i] = root - radius * Math.sin(a);
    }
    sketch.polyline(x, y, Pen.THIN);
    double middle = root - radius * Math.sin(0.5 * angle);
    sketch.text(reach + 1.5, middle + 1.2, figure(planform.equivalentDihedral()), Lettering.start(Lettering.NOTE));
  }
}
