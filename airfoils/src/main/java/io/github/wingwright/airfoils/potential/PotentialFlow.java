// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils.potential;

import io.github.wingwright.core.quantity.Angle;

/** Potential flow about a section at one angle of attack, for a chord of 1 and a stream of speed 1. */
public final class PotentialFlow {
  private final PanelMethod method;
  private final double angle;
  private final double[] speed;

  PotentialFlow(PanelMethod method, double angle, double[] speed) {
    this.method = method;
    this.angle = angle;
    this.speed = speed;
  }

  /** Angle of attack from the chord line. */
  public Angle angleOfAttack() {
    return Angle.radians(angle);
  }

  /** Number of nodes, from the upper trailing edge round the nose to the lower one. */
  public int size() {
    return speed.length;
  }

  /** Abscissa of a node [chords]. */
  public double x(int node) {
    return method.x(node);
  }

  /** Ordinate of a node [chords]. */
  public double y(int node) {
    return method.y(node);
  }

  /** Speed at a node [stream speeds], positive against the order of the nodes. */
  public double speed(int node) {
    return speed[node];
  }

  /** Pressure coefficient at a node, {@code 1 − V²}. */
  public double pressureCoefficient(int node) {
    return 1 - speed[node] * speed[node];
  }

  /** The lowest pressure coefficient. */
  public double suctionPeak() {
    double least = 1;
    for (int i = 0; i < speed.length; i++) {
      least = Math.min(least, pressureCoefficient(i));
    }
    return least;
  }

  /** Lift coefficient from the circulation. */
  public double liftCoefficient() {
    return method.liftCoefficient(angle);
  }

  /** Moment coefficient about the quarter chord, nose-up positive. */
  public double momentAboutQuarterChord() {
    return method.momentAboutQuarterChord(angle);
  }

  /**
   * Drag coefficient from the integrated pressure. Potential flow has none: what is found here is the error of the
   * grid (below 2·10⁻⁴ at 200 panels), or the suction missing on a blunt base.
   */
  public double pressureDrag() {
    double fx = 0;
    double fy = 0;
    for (int j = 0; j < speed.length - 1; j++) {
      double a = speed[j];
      double b = speed[j + 1];
      double pressure = 1 - (a * a + a * b + b * b) / 3;
      fx -= pressure * (method.y(j + 1) - method.y(j));
      fy += pressure * (method.x(j + 1) - method.x(j));
    }
    int last = speed.length - 1;
    double base = 1 - speed[0] * speed[0];
    fx -= base * (method.y(0) - method.y(last));
    fy += base * (method.x(0) - method.x(last));
    return fx * Math.cos(angle) + fy * Math.sin(angle);
  }

  /**
   * Place of the front stagnation point as a fractional node number: 100.25 lies a quarter of the way from node 100
   * to node 101.
   */
  public double stagnationNode() {
    int nose = 0;
    for (int i = 1; i < speed.length - 2; i++) {
      // The crossing furthest forward: near the trailing edge small speeds may change sign on coarse grids.
      if (speed[i] > 0 && speed[i + 1] <= 0 && (nose == 0 || method.x(i) < method.x(nose))) {
        nose = i;
      }
    }
    if (nose == 0) {
      throw new IllegalStateException("no front stagnation point at this angle of attack");
    }
    return nose + speed[nose] / (speed[nose] - speed[nose + 1]);
  }

  /** Abscissa of the front stagnation point [chords]. */
  public double stagnationX() {
    double place = stagnationNode();
    int i = (int) place;
    return method.x(i) + (place - i) * (method.x(i + 1) - method.x(i));
  }

  @Override
  public String toString() {
    return String.format(java.util.Locale.ROOT, "potential flow at %.2f°: cl %.5f, cm %.5f",
        Math.toDegrees(angle), liftCoefficient(), momentAboutQuarterChord());
  }
}
