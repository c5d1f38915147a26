// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils.viscous;

import io.github.wingwright.airfoils.potential.DisplacedFlow;
import io.github.wingwright.airfoils.potential.PanelMethod;
import io.github.wingwright.core.numerics.TriangularFactors;

/**
 * The layers of a section and its wake as numbers: thicknesses, speeds and defects at all nodes, where the flow stagnates and
 * where the layers turn turbulent.
 */
class LayerState {
  /** Transition moves at most this far in one step [chords]. */
  static final double LONGEST_STEP = 0.04;
  /** A layer that stays laminar has its transition this far behind the trailing edge [chords]. */
  static final double FURTHEST = 0.01;
  /** Nodes next to a moved stagnation point that are not extrapolated. */
  private static final int NOSE = 4;

  final DisplacedFlow flow;
  final PanelMethod method;
  final int section;
  final int total;
  /** Stations with an unknown defect: all nodes but the two at the trailing edge. */
  final int unknowns;

  final double[] place;
  /** Change of speed at a node for the defect at another. */
  final double[][] response;
  final double[] undisplaced;
  final double[] outer;
  final double[] signed;
  final double[] defect;
  final double[] theta;
  final double[] speed;
  final double[] carried;
  final boolean[] turbulent;
  /** Distance of transition from the stagnation point, upper and lower. */
  final double[] transition = new double[2];

  int stagnation = -1;
  double stagnationPlace;
  LayerEquations equations = new LayerEquations(1e5, 9);

  private final double[] rememberedTheta;
  private final double[] rememberedSpeed;
  private final double[] rememberedDefect;
  private final double[] rememberedTransition = new double[2];
  private final boolean[] rememberedInside = new boolean[2];
  private int rememberedStagnation = -1;

  LayerState(DisplacedFlow flow) {
    this.flow = flow;
    method = flow.method();
    section = flow.sectionNodes();
    total = flow.size();
    unknowns = total - 2;
    place = new double[total];
    for (int i = 0; i < total; i++) {
      place[i] = flow.place(i);
    }
    response = new double[total][total];
    for (int i = 0; i < total; i++) {
      for (int k = 0; k < total; k++) {
        response[i][k] = flow.response(i, k);
      }
      // The two nodes at the trailing edge share the defects of their neighbours.
      response[i][1] += response[i][0];
      response[i][section - 2] += response[i][section - 1];
      response[i][0] = response[i][section - 1] = 0;
    }
    undisplaced = new double[total];
    outer = new double[total];
    signed = new double[total];
    defect = new double[total];
    theta = new double[total];
    speed = new double[total];
    carried = new double[total];
    turbulent = new boolean[total];
    rememberedTheta = new double[total];
    rememberedSpeed = new double[total];
    rememberedDefect = new double[total];
  }

  /** Takes over the state of another calculation of the same section. */
  void take(LayerState other) {
    System.arraycopy(other.outer, 0, outer, 0, total);
    System.arraycopy(other.defect, 0, defect, 0, total);
    System.arraycopy(other.theta, 0, theta, 0, total);
    System.arraycopy(other.speed, 0, speed, 0, total);
    System.arraycopy(other.carried, 0, carried, 0, total);
    System.arraycopy(other.turbulent, 0, turbulent, 0, total);
    System.arraycopy(other.transition, 0, transition, 0, 2);
    stagnation = other.stagnation;
    stagnationPlace = other.stagnationPlace;
    equations = other.equations;
  }

  double shape(int i) {
    return defect[i] / (theta[i] * speed[i]);
  }

  /** Distance from the stagnation point. */
  double distance(int i) {
    return Math.max(Math.abs(place[i] - stagnationPlace), 1e-7);
  }

  double end(int side) {
    return distance(side == 0 ? 1 : section - 2);
  }

  /** Starts afresh from the undisplaced flow with thin layers. */
  void start(double angle, double reynolds) {
    rememberedStagnation = -1;
    flow.undisplaced(angle, undisplaced);
    System.arraycopy(undisplaced, 0, outer, 0, total);
    stagnation = -1;
    locateStagnation();
    for (int i = 0; i < total; i++) {
      double s = Math.max(i < section ? distance(i) : place[section - 1] - stagnationPlace, 1e-6);
      speed[i] = Math.max(Math.abs(undisplaced[i]), 1e-3);
      theta[i] = 0.5 * Math.sqrt(s / (reynolds * speed[i])) * (i < section ? 1 : 2);
      defect[i] = (i < section ? 2.3 : 1.5) * theta[i] * speed[i];
      carried[i] = 0;
    }
    for (int side = 0; side < 2; side++) {
      transition[side] = Math.min(laminarSeparation(side) + 0.02, end(side) + FURTHEST);
    }
    sign();
  }

  /** Keeps a solution, and moves on to what the next equal step of angle will probably give: saves iterations. */
  void extrapolate() {
    boolean known = rememberedStagnation >= 0;
    boolean still = rememberedStagnation == stagnation;
    // Nodes that change sides, and their neighbours, have no history.
    int first = still ? total : Math.min(rememberedStagnation, stagnation) - NOSE;
    int last = still ? -1 : Math.max(rememberedStagnation, stagnation) + 1 + NOSE;
    for (int i = 0; i < total; i++) {
      boolean move = known && (i < first || i > last);
      theta[i] = step(theta, rememberedTheta, i, move);
      speed[i] = step(speed, rememberedSpeed, i, move);
      defect[i] = step(defect, rememberedDefect, i, move);
    }
    for (int side = 0; side < 2; side++) {
      double now = transition[side];
      double end = end(side);
      int direction = side == 0 ? -1 : 1;
      double at = stagnationPlace + direction * now;
      boolean inside = now < end;
      if (known && inside && rememberedInside[side]) {
        double gap = direction * (at - rememberedTransition[side]);
        double next = now + Math.max(-LONGEST_STEP, Math.min(LONGEST_STEP, gap));
        transition[side] = Math.min(Math.max(next, 0.5 * now), end);
      }
      rememberedTransition[side] = at;
      rememberedInside[side] = inside;
    }
    rememberedStagnation = stagnation;
  }

  private static double step(double[] now, double[] before, int i, boolean move) {
    double value = now[i];
    double next = move ? value * Math.min(Math.max(value / before[i], 0.8), 1.25) : value;
    before[i] = value;
    return next;
  }

  private double laminarSeparation(int side) {
    int step = side == 0 ? -1 : 1;
    int first = side == 0 ? stagnation : stagnation + 1;
    int count = side == 0 ? stagnation : section - 2 - stagnation;
    double[] x = new double[count];
    double[] v = new double[count];
    for (int k = 0; k < count; k++) {
      x[k] = distance(first + step * k);
      v[k] = Math.max(Math.abs(undisplaced[first + step * k]), 1e-6);
    }
    double at = Thwaites.separation(x, v, 1e-5);
    return Double.isNaN(at) ? x[count - 1] : at;
  }

  void sign() {
    for (int i = 0; i < total; i++) {
      signed[i] = i <= stagnation ? -defect[i] : defect[i];
    }
  }

  void outerSpeeds() {
    for (int i = 0; i < total; i++) {
      outer[i] = undisplaced[i] + TriangularFactors.product(response[i], signed, total);
    }
  }

  void locateStagnation() {
    int found = -1;
    for (int i = 1; i < section - 2; i++) {
      if (outer[i] > 0 && outer[i + 1] <= 0 && (found < 0 || method.x(i) < method.x(found))) {
        found = i;
      }
    }
    if (found < 0) {
      found = Math.max(stagnation, section / 2);
    }
    int before = stagnation;
    if (before >= 0 && Math.abs(found - before) == 1 && Math.abs(outer[Math.max(found, before)]) < 0.06) {
      // A node that is nearly at rest keeps its side: no flutter from one iteration to the next.
      found = before;
    }
    stagnation = found;
    double drop = outer[found] - outer[found + 1];
    double part = drop > 1e-9 ? outer[found] / drop : 0.5;
    stagnationPlace = place[found] + Math.min(Math.max(part, -1), 2) * (place[found + 1] - place[found]);
    if (before >= 0 && before != found) {
      changeSides(before, found);
    }
  }

  private void changeSides(int before, int found) {
    int from = found > before ? before + 1 : found + 1;
    int to = Math.max(found, before);
    int model = found > before ? Math.max(before - 1, 1) : Math.min(before + 2, section - 2);
    for (int i = from; i <= to; i++) {
      double s = distance(i);
      speed[i] = Math.max(speed[model] / distance(model) * s, 1e-3);
      theta[i] = equations.stagnationThickness(s, speed[i]);
      defect[i] = LayerEquations.STAGNATION_SHAPE * theta[i] * speed[i];
    }
    sign();
  }
}
