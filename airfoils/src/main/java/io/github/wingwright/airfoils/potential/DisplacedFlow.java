// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils.potential;

import java.util.Objects;

/**
 * How the outer flow answers to the displacement of boundary layers and wake: everything that a coupled calculation
 * needs of the potential flow, linear in the displacement and independent of the angle of attack.
 *
 * <p>Nodes 0 to n − 1 are those of the section, from the upper trailing edge round the nose to the lower one; n to
 * n + w − 1 lie on a straight wake along the bisector of the trailing edge. The displacement enters as the mass defect
 * m = V·δ* of each node: a source between two nodes blows out what the defect grows by,
 * {@code σ = (m2 − m1)/length}. Defects carry the sign of the direction of flow along the node order: minus upstream
 * of the stagnation point in that order (the upper side), plus after it and in the wake.
 */
public final class DisplacedFlow {
  private static final double WAKE_LENGTH = 1.0;

  private final PanelMethod method;
  private final int section;
  private final int total;
  private final double[] place;
  private final double[][] response;
  private final double[] cosSpeed;
  private final double[] sinSpeed;

  /**
   * Builds the response for a section's flow.
   *
   * @param method the potential flow
   * @param wakeNodes nodes in the wake, at least 5
   */
  public DisplacedFlow(PanelMethod method, int wakeNodes) {
    this.method = method;
    section = method.size();
    total = section + wakeNodes;
    place = new double[total];
    for (int i = 1; i < section; i++) {
      place[i] = place[i - 1] + method.panelLength(i - 1);
    }
    Wake wake = new Wake(method, wakeNodes);
    for (int k = 0; k < wakeNodes; k++) {
      place[section + k] = (k == 0 ? place[section - 1] : place[section + k - 1]) + wake.length[k];
    }
    double[][] source = sourceResponse(method, wake);
    response = new double[total][total];
    for (int i = 0; i < total; i++) {
      toDefects(source[i], response[i], wake.length);
    }
    double[] c = method.strengths(true);
    double[] s = method.strengths(false);
    cosSpeed = java.util.Arrays.copyOf(c, total);
    sinSpeed = java.util.Arrays.copyOf(s, total);
    double[] alongC = new double[wakeNodes];
    double[] alongS = new double[wakeNodes];
    for (int k = 0; k < wakeNodes; k++) {
      alongC[k] = wake.dirX + wake.ofVortices(method, k, c);
      alongS[k] = wake.dirY + wake.ofVortices(method, k, s);
    }
    wake.toNodes(alongC, cosSpeed, section);
    wake.toNodes(alongS, sinSpeed, section);
  }

  private double[][] sourceResponse(PanelMethod method, Wake wake) {
    int panels = total - 1;
    double[][] s = new double[total][panels];
    double[] middle = new double[wake.length.length];
    double[] column = new double[total];
    for (int j = 0; j < panels; j++) {
      double[] strength = j < section - 1
          ? method.answerToSource(method.x(j), method.y(j), method.directionX(j), method.directionY(j),
              method.panelLength(j))
          : method.answerToSource(wake.x[j - section + 1], wake.y[j - section + 1], wake.dirX, wake.dirY,
              wake.length[j - section + 1]);
      System.arraycopy(strength, 0, column, 0, section);
      for (int k = 0; k < middle.length; k++) {
        middle[k] = wake.ofVortices(method, k, strength) + wake.ofSource(method, k, j, section);
      }
      wake.toNodes(middle, column, section);
      for (int i = 0; i < total; i++) {
        s[i][j] = column[i];
      }
    }
    return s;
  }

  /** From sources on panels to defects at nodes; the wake starts with the defects of both sides. */
  private void toDefects(double[] source, double[] row, double[] wakeLength) {
    for (int j = 0; j < section - 1; j++) {
      double perDefect = source[j] / method.panelLength(j);
      row[j] -= perDefect;
      row[j + 1] += perDefect;
    }
    for (int k = 0; k < wakeLength.length; k++) {
      double perDefect = source[section - 1 + k] / wakeLength[k];
      row[section + k] += perDefect;
      if (k == 0) {
        row[section - 1] -= perDefect;
        row[0] += perDefect;
      } else {
        row[section + k - 1] -= perDefect;
      }
    }
  }

  /** The undisplaced flow. */
  public PanelMethod method() {
    return method;
  }

  /** Number of nodes on the section. */
  public int sectionNodes() {
    return section;
  }

  /** Number of all nodes. */
  public int size() {
    return total;
  }

  /** Length along the surface from node 0, and on along the wake from the lower trailing edge [chords]. */
  public double place(int node) {
    return place[node];
  }

  /** Writes the speeds without displacement at all nodes [stream speeds]. */
  public void undisplaced(double angle, double[] speed) {
    Objects.requireNonNull(speed, "speed");
    double c = Math.cos(angle);
    double s = Math.sin(angle);
    for (int i = 0; i < total; i++) {
      speed[i] = c * cosSpeed[i] + s * sinSpeed[i];
    }
  }

  /** Change of the speed at a node per mass defect at another. */
  public double response(int node, int defect) {
    return response[node][defect];
  }

  /** Change of the speed at a node by all mass defects together. */
  public double change(int node, double[] defect) {
    Objects.requireNonNull(defect, "defect");
    double[] row = response[node];
    double sum = 0;
    for (int k = 0; k < total; k++) {
      sum += row[k] * defect[k];
    }
    return sum;
  }

  /** A straight wake of panels that grow downstream. */
  private static final class Wake {
    final double[] x;
    final double[] y;
    final double[] length;
    final double dirX;
    final double dirY;
    private static final int NUMBERS = 6;
    private final int panels;
    private final double[] panel;

    Wake(PanelMethod method, int nodes) {
      int n = method.size();
      double tx = method.directionX(n - 2) - method.directionX(0);
      double ty = method.directionY(n - 2) - method.directionY(0);
      double t = Math.hypot(tx, ty);
      dirX = tx / t;
      dirY = ty / t;
      length = new double[nodes];
      x = new double[nodes + 1];
      y = new double[nodes + 1];
      x[0] = 0.5 * (method.x(0) + method.x(n - 1));
      y[0] = 0.5 * (method.y(0) + method.y(n - 1));
      double first = Math.max(method.panelLength(0), 1e-3);
      double ratio = growth(WAKE_LENGTH / first, nodes);
      double step = first;
      for (int k = 0; k < nodes; k++) {
        length[k] = step;
        x[k + 1] = x[k] + step * dirX;
        y[k + 1] = y[k] + step * dirY;
        step *= ratio;
      }
      panels = n - 1;
      panel = new double[nodes * panels * NUMBERS];
      prepare(method);
    }

    /** Ratio q with 1 + q + … + q^(n−1) equal to the sum. */
    private static double growth(double sum, int n) {
      double low = 1;
      double high = 5;
      for (int i = 0; i < 60; i++) {
        double q = 0.5 * (low + high);
        if ((Math.pow(q, n) - 1) / (q - 1) > sum) {
          high = q;
        } else {
          low = q;
        }
      }
      return 0.5 * (low + high);
    }

    private double middleX(int k) {
      return 0.5 * (x[k] + x[k + 1]);
    }

    private double middleY(int k) {
      return 0.5 * (y[k] + y[k + 1]);
    }

    /** What a section panel does at the middle of a wake panel, which many distributions of vortices share. */
    private void prepare(PanelMethod method) {
      for (int k = 0; k < length.length; k++) {
        for (int j = 0; j < panels; j++) {
          double dx = method.directionX(j);
          double dy = method.directionY(j);
          double ex = middleX(k) - method.x(j);
          double ey = middleY(k) - method.y(j);
          double l = method.panelLength(j);
          double x1 = ex * dx + ey * dy;
          double x2 = x1 - l;
          double yy = ey * dx - ex * dy;
          double logs = 0.5 * Math.log((x1 * x1 + yy * yy) / (x2 * x2 + yy * yy));
          double angle = angle(x1, x2, yy);
          int at = (k * panels + j) * NUMBERS;
          panel[at] = angle;
          panel[at + 1] = x1 * angle - yy * logs;
          panel[at + 2] = logs;
          panel[at + 3] = x1 * logs - (l - yy * angle);
          panel[at + 4] = dx * dirX + dy * dirY;
          panel[at + 5] = -dy * dirX + dx * dirY;
        }
      }
    }

    /** Speed along the wake at the middle of a wake panel, from the vortices of the section. */
    double ofVortices(PanelMethod method, int k, double[] strength) {
      double sum = 0;
      int at = k * panels * NUMBERS;
      for (int j = 0; j < panels; j++, at += NUMBERS) {
        double a = strength[j];
        double b = (strength[j + 1] - strength[j]) / method.panelLength(j);
        double u = a * panel[at] + b * panel[at + 1];
        double v = -a * panel[at + 2] - b * panel[at + 3];
        sum += u * panel[at + 4] + v * panel[at + 5];
      }
      return sum / (2 * Math.PI);
    }

    /** Speed along the wake at the middle of a wake panel, from a unit source on a panel. */
    double ofSource(PanelMethod method, int k, int j, int section) {
      boolean own = j >= section - 1;
      int w = j - section + 1;
      double dx = own ? dirX : method.directionX(j);
      double dy = own ? dirY : method.directionY(j);
      double ex = middleX(k) - (own ? x[w] : method.x(j));
      double ey = middleY(k) - (own ? y[w] : method.y(j));
      double x1 = ex * dx + ey * dy;
      double x2 = x1 - (own ? length[w] : method.panelLength(j));
      double yy = own ? 0 : ey * dx - ex * dy;
      double logs = 0.5 * Math.log((x1 * x1 + yy * yy) / (x2 * x2 + yy * yy));
      double angle = angle(x1, x2, yy);
      return (logs * (dx * dirX + dy * dirY) + angle * (-dy * dirX + dx * dirY)) / (2 * Math.PI);
    }

    private static double angle(double x1, double x2, double yy) {
      double h = Math.abs(yy);
      return Math.signum(yy) * (Math.atan2(x1, h) - Math.atan2(x2, h));
    }

    /** From the middles of wake panels to their downstream nodes. */
    void toNodes(double[] middle, double[] node, int first) {
      for (int k = 0; k < middle.length; k++) {
        node[first + k] = k + 1 < middle.length ? 0.5 * (middle[k] + middle[k + 1]) : middle[k];
      }
    }
  }
}
