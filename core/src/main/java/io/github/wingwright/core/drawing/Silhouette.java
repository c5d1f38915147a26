// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import io.github.wingwright.core.geometry.AirfoilSection;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.LiftingSurface;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.quantity.Length;
import java.util.List;

/** Outlines of the parts of an airframe on paper, each in the coordinates of its view: x to the right, y down. */
final class Silhouette {
  private static final int BODY_POINTS = 97;
  private static final int SECTION_POINTS = 61;
  private static final Pen SURFACE = new Pen(Pen.INK, 0.35, Pen.ACCENT_TINT, "");

  private final SheetScale scale;
  private final Sketch sketch;

  Silhouette(SheetScale scale, Sketch sketch) {
    this.scale = scale;
    this.sketch = sketch;
  }

  /** Where a surface ends, aft of the leading edge of its root. */
  static double trailingEdge(Planform planform, Length station) {
    return planform.leadingEdgeAt(station).si() + planform.chordAt(station).si();
  }

  static Length tipStation(Planform planform) {
    List<Length> stations = planform.stations();
    return stations.get(stations.size() - 1);
  }

  /** The fuselage from above or from the side. */
  void body(Fuselage body) {
    double[] x = new double[2 * BODY_POINTS];
    double[] y = new double[2 * BODY_POINTS];
    for (int i = 0; i < BODY_POINTS; i++) {
      // Drawn together towards both ends, where the outline bends most.
      double station = body.length().si() * 0.5 * (1.0 - Math.cos(Math.PI * i / (BODY_POINTS - 1)));
      double radius = body.shape().radius(station, body.length().si(), body.diameter().si());
      int mirror = 2 * BODY_POINTS - 1 - i;
      x[i] = scale.paper(station);
      x[mirror] = x[i];
      y[i] = -scale.paper(radius);
      y[mirror] = -y[i];
    }
    sketch.polygon(x, y, Pen.OUTLINE);
  }

  /** A mirrored surface from above, starboard towards the top of the sheet. */
  void surfaceFromAbove(LiftingSurface surface) {
    Planform planform = surface.planform();
    List<Length> stations = planform.stations();
    int n = stations.size();
    double[] x = new double[4 * n];
    double[] y = new double[4 * n];
    double middle = -scale.paper(surface.placement().y());
    for (int i = 0; i < n; i++) {
      Length station = stations.get(i);
      double leading = scale.paper(surface.placement().x().plus(planform.leadingEdgeAt(station)));
      double trailing = scale.paper(surface.placement().x().si() + trailingEdge(planform, station));
      double out = scale.paper(station);
      // Around: the leading edge from the starboard tip to the port one, and back along the trailing edge.
      set(x, y, n - 1 - i, leading, middle - out);
      set(x, y, n + i, leading, middle + out);
      set(x, y, 3 * n - 1 - i, trailing, middle + out);
      set(x, y, 3 * n + i, trailing, middle - out);
    }
    sketch.polygon(x, y, SURFACE);
  }

  /** A fin or half of a V-tail from the side; tells the room it takes. */
  Box finFromSide(LiftingSurface fin) {
    Planform planform = fin.planform();
    List<Length> stations = planform.stations();
    int n = stations.size();
    double[] x = new double[2 * n];
    double[] y = new double[2 * n];
    for (int i = 0; i < n; i++) {
      Length station = stations.get(i);
      Length up = planform.isMirrored() ? planform.heightAt(station) : station;
      double z = -scale.paper(fin.placement().z().plus(up));
      set(x, y, i, scale.paper(fin.placement().x().plus(planform.leadingEdgeAt(station))), z);
      set(x, y, 2 * n - 1 - i, scale.paper(fin.placement().x().si() + trailingEdge(planform, station)), z);
    }
    return sketch.polygon(x, y, SURFACE);
  }

  /** The section of a surface from the side, at one of its stations; tells the room it takes. */
  Box sectionFromSide(LiftingSurface surface, Length station, Pen pen) {
    Planform planform = surface.planform();
    double[] x = new double[SECTION_POINTS];
    double[] y = new double[SECTION_POINTS];
    surface.section().outline(x, y);
    double chord = planform.chordAt(station).si();
    double angle = surface.incidence().si() + planform.twistAt(station).si();
    double edgeX = surface.placement().x().si() + planform.leadingEdgeAt(station).si();
    double edgeZ = surface.placement().z().si() + planform.heightAt(station).si();
    for (int i = 0; i < SECTION_POINTS; i++) {
      double along = x[i] * chord;
      double up = y[i] * chord;
      x[i] = scale.paper(edgeX + along * Math.cos(angle) + up * Math.sin(angle));
      y[i] = -scale.paper(edgeZ + up * Math.cos(angle) - along * Math.sin(angle));
    }
    return sketch.polygon(x, y, pen);
  }

  void rootSectionFromSide(LiftingSurface surface) {
    sectionFromSide(surface, Length.ZERO, SURFACE);
  }

  /** A mirrored surface from the front: as thick as its section, at the height of its dihedral. */
  void surfaceFromFront(LiftingSurface surface) {
    Planform planform = surface.planform();
    AirfoilSection section = surface.section();
    List<Length> stations = planform.stations();
    int n = stations.size();
    double[] x = new double[4 * n];
    double[] y = new double[4 * n];
    for (int i = 0; i < n; i++) {
      Length station = stations.get(i);
      double half = Math.max(0.2, 0.5 * scale.paper(planform.chordAt(station).times(section.maximumThickness())));
      double z = -scale.paper(surface.placement().z().plus(planform.heightAt(station)));
      double out = scale.paper(station);
      // Around: the upper edge from the left tip to the right one, and back along the lower edge.
      set(x, y, n - 1 - i, -out, z - half);
      set(x, y, n + i, out, z - half);
      set(x, y, 3 * n - 1 - i, out, z + half);
      set(x, y, 3 * n + i, -out, z + half);
    }
    sketch.polygon(x, y, SURFACE);
  }

  private static void set(double[] x, double[] y, int i, double atX, double atY) {
    x[i] = atX;
    y[i] = atY;
  }

  /** A fin from the front. */
  void finFromFront(LiftingSurface fin) {
    double half = Math.max(0.2, 0.5 * scale.paper(fin.maximumThickness()));
    double foot = -scale.paper(fin.placement().z());
    double top = foot - scale.paper(fin.planform().span());
    double middle = scale.paper(fin.placement().y());
    sketch.rectangle(middle - half, top, 2.0 * half, foot - top, SURFACE);
  }
}
