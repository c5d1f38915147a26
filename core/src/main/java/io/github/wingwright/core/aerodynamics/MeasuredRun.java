// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

import io.github.wingwright.core.basis.Interval;
import java.io.Serializable;
import java.util.List;

/** The points of one Reynolds number, in order of lift. */
final class MeasuredRun implements Serializable {
  private static final long serialVersionUID = 1L;

  private final double[] lift;
  private final double[] drag;
  private final double zeroLiftAngle;
  private final double liftSlope;
  private final double moment;

  private MeasuredRun(double[] lift, double[] drag, double zeroLiftAngle, double liftSlope, double moment) {
    this.lift = lift;
    this.drag = drag;
    this.zeroLiftAngle = zeroLiftAngle;
    this.liftSlope = liftSlope;
    this.moment = moment;
  }

  /** A run from points in order of lift. */
  static MeasuredRun of(List<MeasuredPolar.Point> sorted) {
    List<MeasuredPolar.Point> points = beforeStall(sorted);
    double[] lift = points.stream().mapToDouble(MeasuredPolar.Point::lift).toArray();
    double[] drag = points.stream().mapToDouble(MeasuredPolar.Point::drag).toArray();
    double re = sorted.get(0).reynolds();
    if (lift.length < 2) {
      throw new IllegalArgumentException(
          "a run needs at least two points before the stall, has " + lift.length + " at Reynolds number " + re);
    }
    for (int i = 1; i < lift.length; i++) {
      if (lift[i] == lift[i - 1]) {
        throw new IllegalArgumentException(
            "lifts of a run must differ, were " + lift[i] + " twice at Reynolds number " + re);
      }
    }
    double[] line = liftLine(points);
    double moment = points.stream().mapToDouble(MeasuredPolar.Point::moment).average().orElse(Double.NaN);
    return new MeasuredRun(lift, drag, line[0], line[1], moment);
  }

  /** With angles known, what lies beyond the angle of greatest lift goes; without them all points stay. */
  private static List<MeasuredPolar.Point> beforeStall(List<MeasuredPolar.Point> sorted) {
    double stall = sorted.get(sorted.size() - 1).angle();
    return Double.isNaN(stall) ? sorted : sorted.stream().filter(p -> !(p.angle() > stall)).toList();
  }

  /** Least squares of lift against angle for lifts up to half the greatest: zero-lift angle and slope. */
  private static double[] liftLine(List<MeasuredPolar.Point> points) {
    double half = 0.5 * points.get(points.size() - 1).lift();
    int n = 0;
    double sa = 0.0;
    double sl = 0.0;
    double saa = 0.0;
    double sal = 0.0;
    for (MeasuredPolar.Point p : points) {
      if (!Double.isNaN(p.angle()) && (Math.abs(p.lift()) <= half || points.size() < 4)) {
        n++;
        sa += p.angle();
        sl += p.lift();
        saa += p.angle() * p.angle();
        sal += p.angle() * p.lift();
      }
    }
    double spread = n * saa - sa * sa;
    if (n < 2 || !(spread > 0.0)) {
      return new double[] {Double.NaN, Double.NaN};
    }
    double slope = (n * sal - sa * sl) / spread;
    return new double[] {(sa - sl / slope) / n, slope};
  }

  double drag(double cl) {
    int last = lift.length - 1;
    if (cl <= lift[0]) {
      return drag[0];
    }
    if (cl >= lift[last]) {
      return drag[last];
    }
    int i = 1;
    while (lift[i] < cl) {
      i++;
    }
    double t = (cl - lift[i - 1]) / (lift[i] - lift[i - 1]);
    return drag[i - 1] + t * (drag[i] - drag[i - 1]);
  }

  double zeroLiftAngle() {
    return zeroLiftAngle;
  }

  double liftSlope() {
    return liftSlope;
  }

  double moment() {
    return moment;
  }

  double greatestLift() {
    return lift[lift.length - 1];
  }

  Interval lifts() {
    return Interval.between(lift[0], greatestLift());
  }
}
