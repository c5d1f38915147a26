// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.lattice;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Guideline;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.Angle;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * The flow about a lattice at one condition: coefficients, derivatives, strengths, span loading, induced drag.
 *
 * <p>Derivatives are exact for the lattice: forces are sums of products of basic flows, and each product is
 * differentiated by the product rule.
 */
public final class LatticeSolution {
  private static final Source RANGE = Source.library("flow condition and wake are linear in the angles");
  private static final String ADVICE = "The lattice knows no stall and keeps its wake along the axis: ask it for a smaller angle.";
  private static final Guideline SMALL_ANGLE = new Guideline("angle of attack of the lattice",
      Interval.between(-Math.PI / 18, Math.PI / 18), Angle.DEGREE, "a linear lattice", ADVICE, RANGE);
  private static final Guideline SMALL_SIDESLIP = new Guideline("sideslip of the lattice",
      Interval.between(-Math.PI / 18, Math.PI / 18), Angle.DEGREE, "a linear lattice", ADVICE, RANGE);

  private final FactoredLattice solved;
  private final LatticeCondition condition;
  private final double[] weight;

  LatticeSolution(FactoredLattice solved, LatticeCondition condition) {
    this.solved = solved;
    this.condition = condition;
    this.weight = weights(solved, condition);
  }

  private static double[] weights(FactoredLattice solved, LatticeCondition c) {
    double[] w = new double[solved.gamma.length];
    double ca = Math.cos(c.angleOfAttack());
    double sa = Math.sin(c.angleOfAttack());
    w[LatticeAssembly.ALONG] = ca * Math.cos(c.sideslip());
    w[LatticeAssembly.UPWARD] = sa * Math.cos(c.sideslip());
    w[LatticeAssembly.SIDEWAYS] = -Math.sin(c.sideslip());
    w[LatticeAssembly.PITCHING] = c.pitchRate();
    w[LatticeAssembly.ROLLING] = c.rollRate() * ca - c.yawRate() * sa;
    w[LatticeAssembly.YAWING] = c.rollRate() * sa + c.yawRate() * ca;
    for (int i = 0; i < solved.controls.size(); i++) {
      w[LatticeAssembly.FLOWS + i] = c.deflections().getOrDefault(solved.controls.get(i).name(), 0.0);
    }
    int straight = w.length - solved.skewed.length;
    for (int m = 0; m < solved.skewed.length; m++) {
      w[straight + m] = -w[LatticeAssembly.SIDEWAYS] * w[solved.skewed[m]];
    }
    return w;
  }

  /** How the weights of the basic flows change with a variable. */
  private double[] weightSlopes(Variable variable) {
    double ca = Math.cos(condition.angleOfAttack());
    double sa = Math.sin(condition.angleOfAttack());
    double cb = Math.cos(condition.sideslip());
    double sb = Math.sin(condition.sideslip());
    double[] d = new double[weight.length];
    switch (variable) {
      case ANGLE_OF_ATTACK -> {
        d[LatticeAssembly.ALONG] = -sa * cb;
        d[LatticeAssembly.UPWARD] = ca * cb;
        d[LatticeAssembly.ROLLING] = -condition.rollRate() * sa - condition.yawRate() * ca;
        d[LatticeAssembly.YAWING] = condition.rollRate() * ca - condition.yawRate() * sa;
      }
      case SIDESLIP -> {
        d[LatticeAssembly.ALONG] = -ca * sb;
        d[LatticeAssembly.UPWARD] = -sa * sb;
        d[LatticeAssembly.SIDEWAYS] = -cb;
      }
      case ROLL_RATE -> {
        d[LatticeAssembly.ROLLING] = ca;
        d[LatticeAssembly.YAWING] = sa;
      }
      case PITCH_RATE -> d[LatticeAssembly.PITCHING] = 1;
      case YAW_RATE -> {
        d[LatticeAssembly.ROLLING] = -sa;
        d[LatticeAssembly.YAWING] = ca;
      }
    }
    return withSkewedWakes(d);
  }

  /** Completes slopes of the weights by those of the skewed wakes, which are products of two weights. */
  private double[] withSkewedWakes(double[] d) {
    int straight = d.length - solved.skewed.length;
    for (int m = 0; m < solved.skewed.length; m++) {
      int k = solved.skewed[m];
      d[straight + m] = -d[LatticeAssembly.SIDEWAYS] * weight[k] - weight[LatticeAssembly.SIDEWAYS] * d[k];
    }
    return d;
  }

  /** Σ aₖ·bₗ over the table of forces: Fx, Fy, Fz, Mx, My, Mz over ρ·V². */
  private static double[] product(double[][][] table, double[] strengths, double[] velocities) {
    double[] sum = new double[6];
    for (int k = 0; k < strengths.length; k++) {
      for (int l = 0; l < velocities.length; l++) {
        double f = strengths[k] * velocities[l];
        if (f != 0) {
          double[] pair = table[k][l];
          for (int c = 0; c < 6; c++) {
            sum[c] += f * pair[c];
          }
        }
      }
    }
    return sum;
  }

  /** Turns forces over ρ·V² in the axes of the lattice into coefficients in stability axes, drag along the wind. */
  private LatticeCoefficients coefficients(double[] f, double ca, double sa, double cb, double sb) {
    LatticeReference ref = solved.lattice.reference();
    double scale = 2 / ref.area();
    double roll = -f[3] / ref.span();
    double yaw = -f[5] / ref.span();
    return new LatticeCoefficients(scale * (f[2] * ca - f[0] * sa), scale * f[1],
        scale * ((f[0] * ca + f[2] * sa) * cb - f[1] * sb), scale * (roll * ca + yaw * sa),
        scale * f[4] / ref.chord(), scale * (yaw * ca - roll * sa));
  }

  private LatticeCoefficients inAxes(double[] f) {
    return coefficients(f, Math.cos(condition.angleOfAttack()), Math.sin(condition.angleOfAttack()),
        Math.cos(condition.sideslip()), Math.sin(condition.sideslip()));
  }

  /** The condition. */
  public LatticeCondition condition() {
    return condition;
  }

  /** Coefficients of the whole. */
  public LatticeCoefficients coefficients() {
    return coefficients(solved.total);
  }

  /**
   * Share of one surface in the coefficients, both halves together, on the same references.
   *
   * @param surface name of the surface
   */
  public LatticeCoefficients coefficients(String surface) {
    return coefficients(solved.forces[index(surface)]);
  }

  private LatticeCoefficients coefficients(double[][][] table) {
    return inAxes(product(table, weight, weight));
  }

  /**
   * Derivative of a coefficient at this condition.
   *
   * @param coefficient what changes
   * @param variable with what; angles in radians, rates nondimensional
   */
  public double derivative(Coefficient coefficient, Variable variable) {
    return derivative(solved.total, coefficient, variable);
  }

  /** Share of one surface in a derivative. */
  public double derivative(String surface, Coefficient coefficient, Variable variable) {
    return derivative(solved.forces[index(surface)], coefficient, variable);
  }

  private double derivative(double[][][] table, Coefficient coefficient, Variable variable) {
    double slope = inAxes(changed(table, weightSlopes(variable))).of(coefficient);
    return slope + turning(product(table, weight, weight), variable).of(coefficient);
  }

  /** What changes because the axes turn with the angles: nothing in the pitching moment and the side force. */
  private LatticeCoefficients turning(double[] f, Variable variable) {
    double ca = Math.cos(condition.angleOfAttack());
    double sa = Math.sin(condition.angleOfAttack());
    double cb = Math.cos(condition.sideslip());
    double sb = Math.sin(condition.sideslip());
    return switch (variable) {
      case ANGLE_OF_ATTACK -> {
        LatticeCoefficients turned = coefficients(f, -sa, ca, cb, 0);
        yield new LatticeCoefficients(turned.lift(), 0, turned.nearFieldDrag(), turned.rollingMoment(), 0,
            turned.yawingMoment());
      }
      case SIDESLIP -> new LatticeCoefficients(0, 0, coefficients(f, ca, sa, -sb, cb).nearFieldDrag(), 0, 0, 0);
      case ROLL_RATE, PITCH_RATE, YAW_RATE -> new LatticeCoefficients(0, 0, 0, 0, 0, 0);
    };
  }

  /** Slope of the force along the lattice's z axis with the angle of attack, as a coefficient. */
  double normalForceSlope() {
    return 2 / solved.lattice.reference().area() * changed(solved.total, weightSlopes(Variable.ANGLE_OF_ATTACK))[2];
  }

  private double[] changed(double[][][] table, double[] slopes) {
    double[] change = product(table, slopes, weight);
    double[] second = product(table, weight, slopes);
    for (int c = 0; c < 6; c++) {
      change[c] += second[c];
    }
    return change;
  }

  /**
   * Derivative of a coefficient with the deflection of a control.
   *
   * @param coefficient what changes
   * @param control name of the control
   * @return change per radian
   */
  public double controlDerivative(Coefficient coefficient, String control) {
    double[] slopes = new double[weight.length];
    int found = -1;
    for (int i = 0; i < solved.controls.size(); i++) {
      if (solved.controls.get(i).name().equals(control)) {
        found = i;
      }
    }
    if (found < 0) {
      throw new IllegalArgumentException("control must be one of "
          + solved.controls.stream().map(LatticeControl::name).toList() + ", was '" + control + "'");
    }
    slopes[LatticeAssembly.FLOWS + found] = 1;
    return inAxes(changed(solved.total, withSkewedWakes(slopes))).of(coefficient);
  }

  /**
   * Strengths of the panels of one half of a surface.
   *
   * @param surface name of the surface
   * @param port whether the port half is meant
   * @return Γ/V [m] of panel (row k, strip j) at k·strips + j, rows from the leading edge, strips from the root
   */
  public double[] strengths(String surface, boolean port) {
    int s = index(surface);
    if (port && solved.panels[s].surface.isCentral()) {
      throw new IllegalArgumentException(
          "surface '" + surface + "' lies in the plane of symmetry, it has no port half");
    }
    double[] sum = new double[solved.panels[s].size()];
    for (int k = 0; k < weight.length; k++) {
      double w = port && solved.odd[k] ? -weight[k] : weight[k];
      for (int i = 0; i < sum.length; i++) {
        sum[i] += w * solved.gamma[k][solved.offset[s] + i];
      }
    }
    return sum;
  }

  /** Induced drag coefficient from the far wake, on the reference area. */
  public double inducedDragCoefficient() {
    double[] circulation = new double[solved.wake.size()];
    int at = 0;
    for (int side = 0; side <= 1; side++) {
      for (LatticePanels p : solved.panels) {
        if (side == 0 || !p.surface.isCentral()) {
          double[] strip = stripCirculation(p, side == 1);
          System.arraycopy(strip, 0, circulation, at, strip.length);
          at += strip.length;
        }
      }
    }
    return TrefftzPlane.inducedDragArea(solved.wake, circulation) / solved.lattice.reference().area();
  }

  private double[] stripCirculation(LatticePanels p, boolean port) {
    double[] strengths = strengths(p.surface.name(), port);
    double[] sum = new double[p.strips];
    for (int i = 0; i < strengths.length; i++) {
      sum[i % p.strips] += strengths[i];
    }
    return sum;
  }

  /**
   * Loading along the span of one half of a surface, from root to tip.
   *
   * @param surface name of the surface
   * @param port whether the port half is meant
   */
  public List<StripLoad> spanLoading(String surface, boolean port) {
    LatticePanels p = solved.panels[index(surface)];
    double[] circulation = stripCirculation(p, port);
    List<StripLoad> loads = new ArrayList<>();
    for (int j = 0; j < p.strips; j++) {
      loads.add(new StripLoad(p.stripPlace[j], port ? -p.stripY[j] : p.stripY[j], p.stripZ[j], p.stripChord[j],
          circulation[j], 2 * circulation[j] / p.stripChord[j]));
    }
    return List.copyOf(loads);
  }

  private int index(String surface) {
    for (int s = 0; s < solved.panels.length; s++) {
      if (solved.panels[s].surface.name().equals(surface)) {
        return s;
      }
    }
    throw new IllegalArgumentException("surface must be one of "
        + Arrays.stream(solved.panels).map(p -> p.surface.name()).toList() + ", was '" + surface + "'");
  }

  /** Where the condition leaves the range of a linear lattice with a straight wake. */
  public List<Finding> findings() {
    List<Finding> findings = new ArrayList<>();
    SMALL_ANGLE.check(condition.angleOfAttack()).ifPresent(findings::add);
    SMALL_SIDESLIP.check(condition.sideslip()).ifPresent(findings::add);
    return findings;
  }

  @Override
  public String toString() {
    LatticeCoefficients c = coefficients();
    return String.format(Locale.ROOT, "lattice at α %.2f°, β %.2f°: C_L %.4f, C_m %.4f",
        Math.toDegrees(condition.angleOfAttack()), Math.toDegrees(condition.sideslip()), c.lift(),
        c.pitchingMoment());
  }
}
