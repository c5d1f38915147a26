// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import java.io.Serializable;
import java.util.Arrays;
import java.util.List;

/**
 * One half of a planform as numbers [SI]: what lies at the stations where its panels begin and end, and the integrals over
 * the panels between them, which are exact because everything is linear along a panel.
 */
final class PanelStations implements Serializable {
  private static final long serialVersionUID = 1L;

  private final double[] y;
  private final double[] chord;
  private final double[] leadingEdge;
  private final double[] height;
  private final double[] twist;
  private final double area;
  private final double meanChord;
  private final double meanChordX;
  private final double meanChordY;
  private final double meanChordZ;

  PanelStations(Length rootChord, List<Panel> panels) {
    int n = panels.size() + 1;
    y = new double[n];
    chord = new double[n];
    leadingEdge = new double[n];
    height = new double[n];
    twist = new double[n];
    chord[0] = rootChord.si();
    double halfArea = 0.0;
    double square = 0.0;
    double momentX = 0.0;
    double momentY = 0.0;
    double momentZ = 0.0;
    for (int i = 1; i < n; i++) {
      Panel panel = panels.get(i - 1);
      double dy = panel.extent().si();
      y[i] = y[i - 1] + dy;
      chord[i] = panel.tipChord().si();
      leadingEdge[i] = leadingEdge[i - 1] + dy * panel.leadingEdgeSweep().tangent();
      height[i] = height[i - 1] + dy * panel.dihedral().tangent();
      twist[i] = twist[i - 1] - panel.washout().si();
      double inner = chord[i - 1];
      double outer = chord[i];
      halfArea += 0.5 * dy * (inner + outer);
      square += dy * (inner * inner + inner * outer + outer * outer) / 3.0;
      momentX += moment(dy, inner, outer, leadingEdge[i - 1], leadingEdge[i]);
      momentY += moment(dy, inner, outer, y[i - 1], y[i]);
      momentZ += moment(dy, inner, outer, height[i - 1], height[i]);
    }
    area = halfArea;
    meanChord = square / halfArea;
    meanChordX = momentX / halfArea;
    meanChordY = momentY / halfArea;
    meanChordZ = momentZ / halfArea;
  }

  /** ∫ c·v dy over a panel on which chord and v are linear. */
  private static double moment(double dy, double c1, double c2, double v1, double v2) {
    return dy / 6.0 * (2.0 * c1 * v1 + c1 * v2 + c2 * v1 + 2.0 * c2 * v2);
  }

  double semispan() {
    return y[y.length - 1];
  }

  double chord(int station) {
    return chord[station];
  }

  double area() {
    return area;
  }

  double meanChord() {
    return meanChord;
  }

  double meanChordX() {
    return meanChordX;
  }

  double meanChordY() {
    return meanChordY;
  }

  double meanChordZ() {
    return meanChordZ;
  }

  /** Tangent of the sweep of the straight line from root to tip at a fraction of the chord. */
  double sweepTangent(double chordFraction) {
    int tip = y.length - 1;
    double aft = leadingEdge[tip] + chordFraction * chord[tip] - chordFraction * chord[0];
    return aft / y[tip];
  }

  /** ∫ Γ·c·y dy / ∫ c·y dy. */
  double equivalentDihedral(List<Panel> panels) {
    double weighted = 0.0;
    double weight = 0.0;
    for (int i = 1; i < y.length; i++) {
      double dy = y[i] - y[i - 1];
      double arm = moment(dy, chord[i - 1], chord[i], y[i - 1], y[i]);
      weighted += panels.get(i - 1).dihedral().si() * arm;
      weight += arm;
    }
    return weighted / weight;
  }

  double chordAt(Length station) {
    return interpolate(chord, station);
  }

  double leadingEdgeAt(Length station) {
    return interpolate(leadingEdge, station);
  }

  double heightAt(Length station) {
    return interpolate(height, station);
  }

  double twistAt(Length station) {
    return interpolate(twist, station);
  }

  List<Length> stations() {
    return Arrays.stream(y).mapToObj(Length::metres).toList();
  }

  private double interpolate(double[] values, Length station) {
    double at = station.si();
    int tip = y.length - 1;
    // A station that went through arithmetic may miss the tip by a rounding error.
    Door.within(station, Length.ZERO, Length.metres(y[tip] * (1.0 + 1e-12)), "station");
    int i = 1;
    while (i < tip && y[i] < at) {
      i++;
    }
    double t = Math.min(1.0, (at - y[i - 1]) / (y[i] - y[i - 1]));
    return values[i - 1] + t * (values[i] - values[i - 1]);
  }
}
