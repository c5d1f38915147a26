// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import io.github.wingwright.core.drawing.DimensionLine.Direction;
import io.github.wingwright.core.drawing.DimensionLine.FigurePlace;
import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.LiftingSurface;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.quantity.Length;
import java.util.Optional;

/** The airframe from above, nose to the left: chords at the tips, span of the tail, tail arm. */
final class PlanView {
  private static final double CLEAR = 7.0;
  private static final Pen CHORD_LINE = Pen.stroke(Pen.ACCENT, 0.25).dashed("1.6 1");

  private final Airframe airframe;
  private final SheetScale scale;
  private final Sketch sketch = new Sketch();

  private PlanView(Airframe airframe, SheetScale scale) {
    this.airframe = airframe;
    this.scale = scale;
  }

  static Sketch of(Airframe airframe, SheetScale scale) {
    PlanView view = new PlanView(airframe, scale);
    view.shapes();
    view.chordsAtTips();
    airframe.pitchTail().ifPresent(view::tailDimensions);
    return view.sketch;
  }

  private void shapes() {
    Silhouette silhouette = new Silhouette(scale, sketch);
    Wing wing = airframe.wing();
    boolean wingAbove = wing.placement().z().si() > 0.0;
    if (!wingAbove) {
      silhouette.surfaceFromAbove(wing);
    }
    airframe.tails().stream().filter(t -> t.role().isMirrored()).forEach(silhouette::surfaceFromAbove);
    silhouette.body(airframe.fuselage());
    if (wingAbove) {
      silhouette.surfaceFromAbove(wing);
    }
    airframe.tails().stream().filter(t -> t.role() == Tail.Role.VERTICAL).forEach(this::finFromAbove);
    Box box = sketch.bounds();
    sketch.line(box.left() - 4.0, 0.0, box.right() + 4.0, 0.0, Pen.CENTRE);
  }

  /** A fin is seen edge on: its root, as thick as its section. */
  private void finFromAbove(Tail fin) {
    double half = Math.max(0.15, 0.5 * scale.paper(fin.maximumThickness()));
    double start = scale.paper(fin.placement().x());
    double y = -scale.paper(fin.placement().y());
    sketch.rectangle(start, y - half, scale.paper(fin.planform().rootChord()), 2.0 * half, Pen.OUTLINE);
  }

  private void chordsAtTips() {
    DimensionStack overWing = new DimensionStack(Direction.HORIZONTAL, wingTipY(), -1.0);
    addTipChord(overWing, airframe.wing());
    Optional<Tail> tail = airframe.pitchTail();
    if (tail.isPresent() && standsFreeOfWing(tail.get())) {
      DimensionStack overTail = new DimensionStack(Direction.HORIZONTAL, tipY(tail.get()), -1.0);
      addTipChord(overTail, tail.get());
      overTail.draw(sketch);
    } else {
      tail.ifPresent(t -> addTipChord(overWing, t));
    }
    overWing.draw(sketch);
  }

  private void addTipChord(DimensionStack stack, LiftingSurface surface) {
    Planform planform = surface.planform();
    Length tip = Silhouette.tipStation(planform);
    double leading = scale.paper(surface.placement().x().plus(planform.leadingEdgeAt(tip)));
    double y = tipY(surface);
    stack.add(leading, leading + scale.paper(planform.tipChord()), y, y, scale.figure(planform.tipChord()));
  }

  private double tipY(LiftingSurface surface) {
    return -scale.paper(surface.placement().y().plus(Silhouette.tipStation(surface.planform())));
  }

  private double wingTipY() {
    return Math.min(tipY(airframe.wing()), airframe.pitchTail().map(this::tipY).orElse(0.0));
  }

  /** Whether a dimension over the tail keeps clear of the wing and of the dimension over it. */
  private boolean standsFreeOfWing(Tail tail) {
    double wingEnd = 0.0;
    for (Length station : airframe.wing().planform().stations()) {
      wingEnd = Math.max(wingEnd, Silhouette.trailingEdge(airframe.wing().planform(), station));
    }
    double end = scale.paper(airframe.wing().placement().x().si() + wingEnd);
    double start = scale.paper(tail.placement().x());
    return start > end + 8.0 && tipY(tail) >= wingTipY() + 4.0;
  }

  private void tailDimensions(Tail tail) {
    Planform planform = tail.planform();
    Length tip = Silhouette.tipStation(planform);
    double x = scale.paper(tail.placement().x().si() + Silhouette.trailingEdge(planform, tip));
    double half = scale.paper(tip);
    double middle = -scale.paper(tail.placement().y());
    double at = sketchRight() + CLEAR;
    DimensionLine span = new DimensionLine(middle - half, middle + half, x, x, scale.figure(planform.span()));
    span.draw(sketch, Direction.VERTICAL, at, span.figureFitsInside() ? FigurePlace.INSIDE : FigurePlace.AFTER);
    meanChord(airframe.wing());
    meanChord(tail);
    double foot = Math.max(scale.paper(Silhouette.tipStation(airframe.wing().planform())), middle + half);
    new DimensionStack(Direction.HORIZONTAL, foot, 1.0)
        .add(
            scale.paper(airframe.wing().quarterChordX()),
            scale.paper(tail.quarterChordX()),
            meanChordY(airframe.wing()),
            meanChordY(tail),
            scale.figure(tail.armFrom(airframe.wing())))
        .draw(sketch);
  }

  private double sketchRight() {
    double right = scale.paper(airframe.fuselage().length());
    for (Tail tail : airframe.tails()) {
      for (Length station : tail.planform().stations()) {
        double trailing = Silhouette.trailingEdge(tail.planform(), station);
        right = Math.max(right, scale.paper(tail.placement().x().si() + trailing));
      }
    }
    return right;
  }

  private double meanChordY(LiftingSurface surface) {
    return scale.paper(surface.planform().meanAerodynamicChordY().minus(surface.placement().y()));
  }

  /** The mean aerodynamic chord and its quarter point, between which the tail arm is measured. */
  private void meanChord(LiftingSurface surface) {
    double y = meanChordY(surface);
    double start = scale.paper(surface.meanAerodynamicChordX());
    double chord = scale.paper(surface.planform().meanAerodynamicChord());
    sketch.line(start, y, start + chord, y, CHORD_LINE);
    sketch.circle(start + 0.25 * chord, y, 0.6, Pen.fill(Pen.ACCENT));
  }
}
