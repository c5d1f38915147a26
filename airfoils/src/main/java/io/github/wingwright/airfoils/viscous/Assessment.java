// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils.viscous;

import io.github.wingwright.airfoils.potential.PanelMethod;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** From a solution to forces, regimes and findings. */
final class Assessment {
  private static final Source CARMICHAEL = Source.fromMemory("Carmichael, NASA CR-165803, 1981", "");
  private static final Source LIMITS = Source.library("compared with wind tunnels in the validation page of airfoils");
  /** Separation this far aft is a thin dead-air region at the edge, which the drag formula bears. */
  private static final double AT_EDGE = 0.9;

  private static final double LARGEST_SHAPE = 2.5;

  private Assessment() {}

  static ViscousPoint of(CoupledSolver s, PanelMethod method, double angle, double reynolds) {
    double fx = 0;
    double fy = 0;
    double moment = 0;
    for (int j = 0; j < s.section - 1; j++) {
      double a = s.outer[j];
      double b = s.outer[j + 1];
      double pressure = 1 - (a * a + a * b + b * b) / 3;
      double px = -pressure * (method.y(j + 1) - method.y(j));
      double py = pressure * (method.x(j + 1) - method.x(j));
      fx += px;
      fy += py;
      moment -= (0.5 * (method.x(j) + method.x(j + 1)) - 0.25) * py - 0.5 * (method.y(j) + method.y(j + 1)) * px;
    }
    double lift = fy * Math.cos(angle) - fx * Math.sin(angle);
    double friction = sideDrag(s, 0) + sideDrag(s, s.section - 1);
    int last = s.section - 1;
    double edge = Math.hypot(method.x(0) - method.x(last), method.y(0) - method.y(last));
    double drag = friction + ProfileDrag.base(edge, friction);
    SurfaceLayer upper = layer(s, method, 0, reynolds);
    SurfaceLayer lower = layer(s, method, 1, reynolds);
    return new ViscousPoint(Angle.radians(angle), reynolds, lift, drag, moment, upper, lower,
        findings(upper, lower, reynolds));
  }

  private static double sideDrag(CoupledSolver s, int end) {
    return ProfileDrag.squireYoung(s.theta[end], s.speed[end], Math.min(s.shape(end), LARGEST_SHAPE));
  }

  private static SurfaceLayer layer(CoupledSolver s, PanelMethod method, int side, double reynolds) {
    int step = side == 0 ? -1 : 1;
    int end = side == 0 ? 0 : s.section - 1;
    List<LayerStation> stations = new ArrayList<>();
    double separation = Double.NaN;
    double reattachment = Double.NaN;
    boolean laminarSeparation = false;
    for (int k = side == 0 ? s.stagnation : s.stagnation + 1; k != end; k += step) {
      double h = s.shape(k);
      double r = Math.max(s.speed[k] * s.theta[k] * reynolds, 1);
      double cf = s.turbulent[k] ? Entrainment.friction(h, r) : 2 * SimilarLayers.shear(h) / r;
      stations.add(new LayerStation(
          method.x(k), s.speed[k], s.theta[k], s.defect[k] / s.speed[k], cf, s.turbulent[k]));
      if (cf < 0) {
        if (Double.isNaN(separation)) {
          separation = method.x(k);
          laminarSeparation = !s.turbulent[k];
        }
        reattachment = Double.NaN;
      } else if (!Double.isNaN(separation) && Double.isNaN(reattachment)) {
        reattachment = method.x(k);
      }
    }
    Regime regime;
    if (Double.isNaN(separation) || separation > AT_EDGE) {
      regime = Regime.ATTACHED;
    } else if (Double.isNaN(reattachment)) {
      regime = laminarSeparation ? Regime.OPEN : Regime.STALLING;
    } else {
      regime = Regime.BUBBLE;
    }
    double transition = s.transition[side] > s.end(side) ? 1 : station(s, method, side);
    return new SurfaceLayer(regime, separation, reattachment, transition, stations);
  }

  private static double station(CoupledSolver s, PanelMethod method, int side) {
    int step = side == 0 ? -1 : 1;
    int k = side == 0 ? s.stagnation : s.stagnation + 1;
    double before = 0;
    double x = method.x(k);
    while (s.distance(k) < s.transition[side]) {
      before = s.distance(k);
      x = method.x(k);
      k += step;
    }
    double part = (s.transition[side] - before) / (s.distance(k) - before);
    return x + part * (method.x(k) - x);
  }

  private static List<Finding> findings(SurfaceLayer upper, SurfaceLayer lower, double reynolds) {
    List<Finding> findings = new ArrayList<>();
    if (reynolds < 5e4) {
      findings.add(Finding.of(Severity.CAUTION, "section drag",
          "Below this Reynolds number a separated laminar layer hardly ever comes back; use a thin plate or measure.",
          reynolds, Interval.atLeast(5e4), NamedUnit.NUMBER, CARMICHAEL));
    }
    addLayer(findings, "The upper layer ", upper);
    addLayer(findings, "The lower layer ", lower);
    return findings;
  }

  /** A point with the finding that there is another solution at its angle. */
  static ViscousPoint withSecond(ViscousPoint point, ViscousPoint other) {
    List<Finding> findings = new ArrayList<>(point.findings());
    findings.add(Finding.of(Severity.CAUTION, "section drag",
        String.format(Locale.ROOT, "Two solutions: besides this one there is another with lift %.2f and drag %.4f."
            + " Which one a wing finds depends on what it did before (hysteresis).",
            other.liftCoefficient(), other.dragCoefficient()),
        LIMITS));
    return new ViscousPoint(point.angleOfAttack(), point.reynolds(), point.liftCoefficient(), point.dragCoefficient(),
        point.momentAboutQuarterChord(), point.upper(), point.lower(), findings);
  }

  private static void addLayer(List<Finding> findings, String side, SurfaceLayer layer) {
    if (layer.regime() == Regime.OPEN) {
      findings.add(Finding.of(Severity.CAUTION, "section drag",
          side + "separates while laminar and does not come back: drag may be 40 % higher, lift lower;"
              + " tunnels find hysteresis here.",
          LIMITS));
    } else if (layer.regime() == Regime.STALLING) {
      findings.add(Finding.of(Severity.CAUTION, "section lift",
          side + "separates ahead of the trailing edge: close to stall, where lift is overestimated.",
          LIMITS));
    }
  }
}
