// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.lattice;

import java.util.Arrays;
import java.util.List;

/**
 * The panels of one surface in plain arrays: edges of the strips, rows of bound vortices, control points.
 *
 * <p>Chords lie along x, so an edge has one (y, z) for all rows, and every trailing vortex of that edge runs down the
 * same line. Panel (row k, strip j) has index k·strips + j.
 */
final class LatticePanels {
  final LatticeSurface surface;
  final int rows;
  final int strips;
  /** Edge positions, strips + 1 of each. */
  final double[] edgeY;
  final double[] edgeZ;
  final double[] edgeTrailing;
  /** Fourth power of the core of the trailing vortex of each edge, as other surfaces feel it. */
  final double[] core4;
  /** x of the bound vortex of each row at each edge: [row][edge]. */
  final double[][] boundX;
  /** Strip values at the control station: unit normal (0, ny, nz), position, chord, twist. */
  final double[] stripY;
  final double[] stripZ;
  final double[] stripLeading;
  final double[] stripChord;
  final double[] normalY;
  final double[] normalZ;
  /** Length of the strip across the stream, between its edges. */
  final double[] stripWidth;
  /** Place of the control station on the half, 0 at the root and 1 at the tip, by arc length. */
  final double[] stripPlace;
  /** Per panel: control point x and slope of the cambered, twisted surface there. */
  final double[] controlX;
  final double[] slope;

  LatticePanels(LatticeSurface surface) {
    this.surface = surface;
    rows = surface.chordwisePanels();
    strips = surface.spanwisePanels();
    List<LatticeStation> stations = surface.stations();
    double[] arc = new double[stations.size()];
    for (int i = 1; i < arc.length; i++) {
      LatticeStation a = stations.get(i - 1);
      LatticeStation b = stations.get(i);
      arc[i] = arc[i - 1] + Math.hypot(b.y() - a.y(), b.z() - a.z());
    }
    double length = arc[arc.length - 1];
    boolean freeRoot = surface.isCentral() || stations.get(0).y() > 1e-9 * length;
    double[] edge = new double[strips + 1];
    double[] middle = new double[strips];
    int[] segment = new int[strips];
    place(arc, freeRoot, edge, middle, segment);

    edgeY = new double[strips + 1];
    edgeZ = new double[strips + 1];
    edgeTrailing = new double[strips + 1];
    boundX = new double[rows][strips + 1];
    for (int e = 0; e <= strips; e++) {
      LatticeStation s = at(stations, arc, segment[Math.min(e, strips - 1)], edge[e]);
      edgeY[e] = s.y();
      edgeZ[e] = s.z();
      edgeTrailing[e] = s.x() + s.chord();
      for (int k = 0; k < rows; k++) {
        boundX[k][e] = s.x() + s.chord() * vortexPlace(k);
      }
    }
    core4 = new double[strips + 1];
    for (int e = 0; e <= strips; e++) {
      double inner = e == 0 ? 0 : Math.hypot(edgeY[e] - edgeY[e - 1], edgeZ[e] - edgeZ[e - 1]);
      double outer = e == strips ? 0 : Math.hypot(edgeY[e + 1] - edgeY[e], edgeZ[e + 1] - edgeZ[e]);
      double core = Math.max(inner, outer) / 2;
      core4[e] = core * core * core * core;
    }
    stripY = new double[strips];
    stripZ = new double[strips];
    stripLeading = new double[strips];
    stripChord = new double[strips];
    normalY = new double[strips];
    normalZ = new double[strips];
    stripWidth = new double[strips];
    stripPlace = new double[strips];
    controlX = new double[rows * strips];
    slope = new double[rows * strips];
    for (int j = 0; j < strips; j++) {
      LatticeStation s = at(stations, arc, segment[j], middle[j]);
      stripY[j] = s.y();
      stripZ[j] = s.z();
      stripLeading[j] = s.x();
      stripChord[j] = s.chord();
      double ty = edgeY[j + 1] - edgeY[j];
      double tz = edgeZ[j + 1] - edgeZ[j];
      stripWidth[j] = Math.hypot(ty, tz);
      normalY[j] = -tz / stripWidth[j];
      normalZ[j] = ty / stripWidth[j];
      stripPlace[j] = middle[j] / length;
      for (int k = 0; k < rows; k++) {
        double fraction = controlPlace(k);
        controlX[k * strips + j] = s.x() + s.chord() * fraction;
        double camber = surface.meanLineSlope(fraction);
        if (!Double.isFinite(camber)) {
          throw new IllegalArgumentException("mean line of surface '" + surface.name()
              + "' must have a finite slope, was " + camber + " at x/c " + fraction);
        }
        slope[k * strips + j] = camber - Math.tan(s.twist()) - Math.tan(surface.incidence()) * normalZ[j];
      }
    }
  }

  int size() {
    return rows * strips;
  }

  /** Where between the edges of a strip its control station lies, 0 at the inner edge and 1 at the outer. */
  double share(int strip) {
    double dy = stripY[strip] - edgeY[strip];
    double dz = stripZ[strip] - edgeZ[strip];
    return Math.hypot(dy, dz) / stripWidth[strip];
  }

  double vortexPlace(int row) {
    return surface.spacing() == Spacing.UNIFORM
        ? (row + 0.25) / rows
        : (1 - Math.cos((2 * row + 1) * Math.PI / (2 * rows))) / 2;
  }

  double controlPlace(int row) {
    return surface.spacing() == Spacing.UNIFORM
        ? (row + 0.75) / rows
        : (1 - Math.cos((row + 1) * Math.PI / rows)) / 2;
  }

  /** Part of the panel around a vortex that a control with this hinge moves, 0 to 1: the panels share the chord. */
  double movedShare(int row, double hinge) {
    double from = row == 0 ? 0 : (controlPlace(row - 1) + vortexPlace(row)) / 2;
    double to = row == rows - 1 ? 1 : (controlPlace(row) + vortexPlace(row + 1)) / 2;
    return Math.min(1, Math.max(0, (to - hinge) / (to - from)));
  }

  /** Fills edges and middles of the strips by arc length, and which pair of sections each strip belongs to. */
  private void place(double[] arc, boolean freeRoot, double[] edge, double[] middle, int[] segment) {
    int segments = arc.length - 1;
    double length = arc[segments];
    boolean circle = surface.spacing() == Spacing.SEMICIRCLE;
    double[] phase = new double[segments + 1];
    for (int i = 0; i <= segments; i++) {
      double s = arc[i] / length;
      phase[i] = !circle ? s : freeRoot ? Math.acos(1 - 2 * s) : Math.asin(Math.min(1, s));
    }
    int[] count = share(phase);
    int j = 0;
    for (int i = 0; i < segments; i++) {
      boolean freeStart = circle && freeRoot && i == 0;
      boolean freeEnd = circle && i == segments - 1;
      double step = (phase[i + 1] - phase[i]) / (count[i] + (freeStart ? 0.5 : 0) + (freeEnd ? 0.5 : 0));
      double start = phase[i] + (freeStart ? step / 2 : 0);
      for (int k = 0; k < count[i]; k++, j++) {
        segment[j] = i;
        edge[j] = length * alongSpan(circle, freeRoot, start + k * step);
        middle[j] = length * alongSpan(circle, freeRoot, start + (k + 0.5) * step);
        edge[j + 1] = length * alongSpan(circle, freeRoot, start + (k + 1) * step);
      }
    }
  }

  private static double alongSpan(boolean circle, boolean freeRoot, double phase) {
    return !circle ? phase : freeRoot ? (1 - Math.cos(phase)) / 2 : Math.sin(phase);
  }

  /** Strips per pair of sections, in proportion to its share of the phase, each at least one. */
  private int[] share(double[] phase) {
    int segments = phase.length - 1;
    double total = phase[segments] - phase[0];
    int[] count = new int[segments];
    Arrays.fill(count, 1);
    for (int given = segments; given < strips; given++) {
      int neediest = 0;
      double most = -1;
      for (int i = 0; i < segments; i++) {
        double need = (phase[i + 1] - phase[i]) / total / (count[i] + 0.5);
        if (need > most * (1 + 1e-12)) {
          most = need;
          neediest = i;
        }
      }
      count[neediest]++;
    }
    return count;
  }

  private static LatticeStation at(List<LatticeStation> stations, double[] arc, int segment, double place) {
    LatticeStation a = stations.get(segment);
    LatticeStation b = stations.get(segment + 1);
    double f = (place - arc[segment]) / (arc[segment + 1] - arc[segment]);
    return new LatticeStation(a.x() + f * (b.x() - a.x()), a.y() + f * (b.y() - a.y()),
        a.z() + f * (b.z() - a.z()), a.chord() + f * (b.chord() - a.chord()),
        a.twist() + f * (b.twist() - a.twist()));
  }
}
