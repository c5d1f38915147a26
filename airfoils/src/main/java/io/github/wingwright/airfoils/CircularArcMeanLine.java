// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils;

/**
 * A mean line that is an arc of a circle: the thin cambered plate, the best known section at the Reynolds numbers of
 * the smallest gliders (Laitone, Experiments in Fluids 23, 1997: 5 % camber).
 *
 * <pre>{@code
 * R = (¼ + m²)/(2·m),   y = √(R² − (x − ½)²) − (R − m)
 * }</pre>
 *
 * @param maximumCamber rise m of the arc at half chord [chords], 0 to 0.25
 */
public record CircularArcMeanLine(double maximumCamber) implements MeanLine {
  public CircularArcMeanLine {
    Checks.within("maximum camber", maximumCamber, 0, 0.25);
  }

  @Override
  public String name() {
    return maximumCamber == 0 ? "straight mean line" : "circular arc, camber " + Text.percent(maximumCamber);
  }

  private double radius() {
    return (0.25 + maximumCamber * maximumCamber) / (2 * maximumCamber);
  }

  @Override
  public double ordinate(double x) {
    if (maximumCamber == 0) {
      return 0;
    }
    double r = radius();
    double d = x - 0.5;
    double rise = Math.sqrt(r * r - d * d);
    // x·(1 − x) over the sum of the two heights: no cancellation for flat arcs.
    return x * (1 - x) / (rise + r - maximumCamber);
  }

  @Override
  public double slope(double x) {
    if (maximumCamber == 0) {
      return 0;
    }
    double r = radius();
    double d = x - 0.5;
    return -d / Math.sqrt(r * r - d * d);
  }

  @Override
  public double secondDerivative(double x) {
    if (maximumCamber == 0) {
      return 0;
    }
    double r = radius();
    double d = x - 0.5;
    return -r * r / Math.pow(r * r - d * d, 1.5);
  }
}
