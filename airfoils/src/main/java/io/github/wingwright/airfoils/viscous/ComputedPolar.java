// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils.viscous;

import io.github.wingwright.core.ConvergenceException;
import io.github.wingwright.core.aerodynamics.SectionPolar;
import io.github.wingwright.core.basis.Band;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.NamedUnit;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * A section polar computed with boundary layers on a grid of Reynolds numbers, and interpolated: straight in lift, and in
 * the logarithm of the Reynolds number.
 *
 * <pre>{@code
 * SectionPolar polar = ComputedPolar.of(ViscousMethod.of(Naca4.parse("4406")), Interval.between(3e4, 1e5));
 * double drag = polar.likelyProfileDrag(0.6, 5e4);
 * }</pre>
 *
 * <p>The bands are what the comparison with wind tunnels justifies: drag from 10 % below to 20 % above where the layers
 * come back to the surface, to 50 % above where they do not; the zero-lift angle from the computed one to two thirds of the
 * way to zero at 6·10⁴ (a third at 2·10⁵), because tunnels find it nearer to zero than computed; the lift slope down to 80 %.
 *
 * <p>The grid is made at angles of attack in steps of 1°, up and down to where the section stalls; a computation takes some
 * tens of milliseconds on each Reynolds number.
 */
public final class ComputedPolar implements SectionPolar, Serializable {
  private static final long serialVersionUID = 1L;
  private static final Source SOURCE =
      Source.library("computed with coupled boundary layers; compared with wind tunnels on the validation page");
  private static final double RATIO = 1.42;

  private final String name;
  private final double[] reynolds;
  private final Curve[] curves;

  private ComputedPolar(String name, double[] reynolds, Curve[] curves) {
    this.name = name;
    this.reynolds = reynolds;
    this.curves = curves;
  }

  /** One polar: lift rising, with drag and whether the layers are attached. */
  private static final class Curve implements Serializable {
    private static final long serialVersionUID = 1L;

    final double[] lift;
    final double[] drag;
    final boolean[] attached;
    final double zeroLift;
    final double slope;
    final double moment;

    Curve(double[] lift, double[] drag, boolean[] attached, double zeroLift, double slope, double moment) {
      this.lift = lift;
      this.drag = drag;
      this.attached = attached;
      this.zeroLift = zeroLift;
      this.slope = slope;
      this.moment = moment;
    }

    private int cell(double cl) {
      int i = 0;
      while (i < lift.length - 2 && lift[i + 1] <= cl) {
        i++;
      }
      return i;
    }

    double drag(double cl) {
      int i = cell(cl);
      double part = Math.min(Math.max((cl - lift[i]) / (lift[i + 1] - lift[i]), 0), 1);
      return drag[i] + part * (drag[i + 1] - drag[i]);
    }

    boolean attached(double cl) {
      int i = cell(cl);
      return attached[i] && attached[i + 1];
    }

    double greatest() {
      return lift[lift.length - 1];
    }
  }

  /**
   * Computes the polar.
   *
   * @param method the section and its air
   * @param range Reynolds numbers on the chord, within 5000 and 10⁷
   * @throws ConvergenceException if a Reynolds number yields fewer than four points
   */
  public static ComputedPolar of(ViscousMethod method, Interval range) {
    Objects.requireNonNull(range, "range");
    if (!(range.lower() >= 5e3 && range.upper() <= 1e7 && range.lower() <= range.upper())) {
      throw new IllegalArgumentException("Reynolds numbers must lie within 5000 and 10⁷, were " + range);
    }
    int cells = Math.max(1, (int) Math.ceil(Math.log(range.upper() / range.lower()) / Math.log(RATIO)));
    double[] reynolds = new double[cells + 1];
    Curve[] curves = new Curve[cells + 1];
    for (int i = 0; i <= cells; i++) {
      reynolds[i] = range.lower() * Math.pow(range.upper() / range.lower(), (double) i / cells);
      // The two ends of an interval of one value are one curve.
      curves[i] = i > 0 && reynolds[i] == reynolds[i - 1] ? curves[i - 1] : curve(method, reynolds[i]);
    }
    return new ComputedPolar(method.name(), reynolds, curves);
  }

  private static Curve curve(ViscousMethod method, double reynolds) {
    List<ViscousPoint> kept = new ArrayList<>();
    double step = Math.toRadians(1);
    // From the middle, where the layers are thin, up and down to where the section stalls.
    List<ViscousPoint> points = new ArrayList<>(method.sweep(reynolds, -step, -step, 5, true));
    Collections.reverse(points);
    points.addAll(method.sweep(reynolds, 0, step, 13, true));
    for (ViscousPoint point : points) {
      if (kept.isEmpty() || point.liftCoefficient() > kept.get(kept.size() - 1).liftCoefficient() + 0.01) {
        kept.add(point);
      } else if (point.angleOfAttack().degrees() > 3) {
        break;
      }
    }
    if (kept.size() < 4) {
      throw ConvergenceException.atValues(
          method.name() + ": too few points have a solution", kept.size(), Double.NaN, reynolds);
    }
    int n = kept.size();
    double[] lift = new double[n];
    double[] drag = new double[n];
    boolean[] attached = new boolean[n];
    double angle = 0;
    double cl = 0;
    double squares = 0;
    double products = 0;
    double moment = 0;
    int used = 0;
    for (int i = 0; i < n; i++) {
      ViscousPoint p = kept.get(i);
      lift[i] = p.liftCoefficient();
      drag[i] = p.dragCoefficient();
      attached[i] = p.attached();
      double a = p.angleOfAttack().degrees();
      if (a >= -1.5 && a <= 5.5) {
        angle += p.angleOfAttack().radians();
        cl += lift[i];
        squares += p.angleOfAttack().radians() * p.angleOfAttack().radians();
        products += p.angleOfAttack().radians() * lift[i];
        moment += p.momentAboutQuarterChord();
        used++;
      }
    }
    if (used < 3) {
      throw ConvergenceException.atValues(
          method.name() + ": too few points between −1° and 5° have a solution", used, Double.NaN, reynolds);
    }
    double slope = (used * products - angle * cl) / (used * squares - angle * angle);
    return new Curve(lift, drag, attached, angle / used - cl / used / slope, slope, moment / used);
  }

  private int below(double re) {
    int i = 0;
    while (i < reynolds.length - 2 && reynolds[i + 1] <= re) {
      i++;
    }
    return i;
  }

  private double part(double re, int i) {
    double p = Math.log(re / reynolds[i]) / Math.log(reynolds[i + 1] / reynolds[i]);
    return Double.isFinite(p) ? Math.min(Math.max(p, 0), 1) : 0;
  }

  @Override
  public String name() {
    return name + ", computed with boundary layers";
  }

  @Override
  public Source source() {
    return SOURCE;
  }

  @Override
  public Interval reynoldsRange() {
    return Interval.between(reynolds[0], reynolds[reynolds.length - 1]);
  }

  @Override
  public double likelyProfileDrag(double cl, double re) {
    int i = below(re);
    double p = part(re, i);
    return curves[i].drag(cl) * (1 - p) + curves[i + 1].drag(cl) * p;
  }

  private boolean attached(double cl, double re) {
    int i = below(re);
    return curves[i].attached(cl) && curves[i + 1].attached(cl);
  }

  @Override
  public Band profileDrag(double cl, double re) {
    double likely = likelyProfileDrag(cl, re);
    return new Band(0.9 * likely, likely, (attached(cl, re) ? 1.2 : 1.5) * likely);
  }

  @Override
  public Band zeroLiftAngle(double re) {
    int i = below(re);
    double p = part(re, i);
    double likely = curves[i].zeroLift * (1 - p) + curves[i + 1].zeroLift * p;
    // Two thirds of the way to zero at 6·10⁴ and below, one third at 2·10⁵ and above.
    double share = Math.min(Math.max((Math.log(2e5) - Math.log(re)) / Math.log(2e5 / 6e4), 0), 1);
    double towardsZero = likely * (1 - (1 + share) / 3);
    return new Band(Math.min(likely, towardsZero), likely, Math.max(likely, towardsZero));
  }

  @Override
  public Band liftSlope(double re) {
    int i = below(re);
    double p = part(re, i);
    double likely = curves[i].slope * (1 - p) + curves[i + 1].slope * p;
    return new Band(0.8 * likely, likely, 1.05 * likely);
  }

  @Override
  public Band moment(double re) {
    int i = below(re);
    double p = part(re, i);
    double likely = curves[i].moment * (1 - p) + curves[i + 1].moment * p;
    return Band.around(likely, 0.25 * Math.abs(likely) + 0.005);
  }

  @Override
  public Band usableLift(double re) {
    int i = below(re);
    double p = part(re, i);
    double greatest = curves[i].greatest() * (1 - p) + curves[i + 1].greatest() * p;
    return new Band(0.65 * greatest, 0.8 * greatest, greatest);
  }

  @Override
  public List<Finding> findings(double cl, double re) {
    List<Finding> findings = new ArrayList<>();
    if (!reynoldsRange().contains(re)) {
      findings.add(Finding.of(Severity.CAUTION, "section polar",
          "The polar was computed for other Reynolds numbers; the nearest is used.", re, reynoldsRange(),
          NamedUnit.NUMBER, SOURCE));
    }
    int i = below(re);
    double low = Math.max(curves[i].lift[0], curves[i + 1].lift[0]);
    double high = Math.min(curves[i].greatest(), curves[i + 1].greatest());
    if (!(cl >= low && cl <= high)) {
      findings.add(Finding.of(Severity.CAUTION, "section polar",
          "The lift lies beyond the computed polar; the drag of its end is used.", cl,
          Interval.between(low, high), NamedUnit.NUMBER, SOURCE));
    } else if (!attached(cl, re)) {
      findings.add(Finding.of(Severity.CAUTION, "section drag",
          "A laminar layer separates and does not come back, or the flow is close to stall: the drag is less certain.",
          SOURCE));
    }
    return findings;
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "%s, Re %.0f to %.0f", name, reynolds[0], reynolds[reynolds.length - 1]);
  }
}
