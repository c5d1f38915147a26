// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import io.github.wingwright.core.drawing.DimensionLine.Direction;
import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.LiftingSurface;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.quantity.Length;
import java.util.List;

/** The airframe from port, nose to the left: stations, chords at the root, length and diameter, height of the fin. */
final class SideView {
  private static final Pen TIP = new Pen(Pen.INK, 0.18, "none", "");

  private final Airframe airframe;
  private final SheetScale scale;
  private final Sketch sketch = new Sketch();

  private SideView(Airframe airframe, SheetScale scale) {
    this.airframe = airframe;
    this.scale = scale;
  }

  static Sketch of(Airframe airframe, SheetScale scale, List<ThreeView.Mark> marks) {
    SideView view = new SideView(airframe, scale);
    view.shapes();
    Box shapes = view.sketch.bounds();
    StationMarks.draw(view.sketch, scale, view.halfDiameter(), marks);
    view.diameter(shapes);
    airframe.verticalTail().ifPresent(fin -> view.finDimensions(fin, shapes));
    view.lengthwise(Math.max(shapes.bottom(), view.sketch.bounds().bottom() - 3.0));
    return view.sketch;
  }

  private double halfDiameter() {
    return 0.5 * scale.paper(airframe.fuselage().diameter());
  }

  private void shapes() {
    Silhouette silhouette = new Silhouette(scale, sketch);
    airframe.tails().stream()
        .filter(t -> t.role() != Tail.Role.HORIZONTAL)
        .forEach(fin -> sketch.reserve(silhouette.finFromSide(fin)));
    silhouette.body(airframe.fuselage());
    airframe.tails().stream().filter(t -> t.role() == Tail.Role.HORIZONTAL).forEach(silhouette::rootSectionFromSide);
    Wing wing = airframe.wing();
    silhouette.rootSectionFromSide(wing);
    Length tip = Silhouette.tipStation(wing.planform());
    if (wing.planform().chordAt(tip).si() > 0.0) {
      sketch.reserve(silhouette.sectionFromSide(wing, tip, TIP).grownBy(0.3));
    }
    Box box = sketch.bounds();
    sketch.line(box.left() - 4.0, 0.0, box.right() + 4.0, 0.0, Pen.CENTRE);
  }

  private void diameter(Box shapes) {
    double widest = widestStation();
    new DimensionStack(Direction.VERTICAL, shapes.left(), -1.0)
        .add(-halfDiameter(), halfDiameter(), widest, widest, "Ø " + scale.figure(airframe.fuselage().diameter()))
        .draw(sketch);
  }

  /** The first station at which the body has its full diameter. */
  private double widestStation() {
    Fuselage body = airframe.fuselage();
    double length = body.length().si();
    double full = 0.5 * body.diameter().si() * (1.0 - 1e-6);
    int steps = 200;
    for (int i = 0; i <= steps; i++) {
      double x = length * i / steps;
      if (body.shape().radius(x, length, body.diameter().si()) >= full) {
        return scale.paper(x);
      }
    }
    return scale.paper(0.5 * length);
  }

  private void finDimensions(Tail fin, Box shapes) {
    Planform planform = fin.planform();
    double root = -scale.paper(fin.placement().z());
    double top = root - scale.paper(planform.span());
    double start = scale.paper(fin.placement().x());
    Length tip = Silhouette.tipStation(planform);
    double tipStart = start + scale.paper(planform.leadingEdgeAt(tip));
    double rootEnd = start + scale.paper(planform.rootChord());
    double tipEnd = tipStart + scale.paper(planform.tipChord());
    new DimensionStack(Direction.VERTICAL, shapes.right(), 1.0)
        .add(root, top, rootEnd, tipEnd, scale.figure(planform.span()))
        .draw(sketch);
    double base = clearAbove(start - 8.0, rootEnd + 20.0, top);
    DimensionStack over = new DimensionStack(Direction.HORIZONTAL, base, -1.0);
    over.add(tipStart, tipEnd, top, top, scale.figure(planform.tipChord()));
    if (!planform.rootChord().equals(planform.tipChord())) {
      over.add(start, rootEnd, root, root, scale.figure(planform.rootChord()));
    }
    over.draw(sketch);
  }

  /** The height above which nothing stands between two stations. */
  private double clearAbove(double from, double to, double top) {
    double base = top;
    while (base > sketch.bounds().top() && !sketch.isFree(new Box(from, base - 18.0, to, base - 0.1))) {
      base -= 1.0;
    }
    return base;
  }

  private void lengthwise(double base) {
    Fuselage body = airframe.fuselage();
    Wing wing = airframe.wing();
    DimensionStack under = new DimensionStack(Direction.HORIZONTAL, base, 1.0);
    double wingStart = scale.paper(wing.placement().x());
    double wingY = -scale.paper(wing.placement().z());
    if (wing.placement().x().si() != 0.0) {
      under.add(0.0, wingStart, 0.0, wingY, scale.figure(wing.placement().x()));
    }
    addRootChord(under, wing);
    airframe
        .pitchTail()
        .filter(tail -> !tail.planform().rootChord().equals(tail.planform().tipChord()))
        .ifPresent(tail -> addRootChord(under, tail));
    under.add(0.0, scale.paper(body.length()), 0.0, 0.0, scale.figure(body.length()));
    under.draw(sketch);
  }

  private void addRootChord(DimensionStack stack, LiftingSurface surface) {
    Length chord = surface.planform().rootChord();
    double start = scale.paper(surface.placement().x());
    double y = -scale.paper(surface.placement().z());
    stack.add(start, start + scale.paper(chord), y, y, scale.figure(chord));
  }
}
