// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

import io.github.wingwright.core.numerics.Minimum;
import io.github.wingwright.core.numerics.Quadrature;
import io.github.wingwright.core.numerics.Tolerance;
import java.io.Serializable;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * The surface of a {@link LoftedBody} in the size it was given in [m], and what it encloses: smooth curves of width, height
 * and middle through the stations, the passage from one kind of section to the next, nose and tail.
 */
final class LoftedSurface implements Serializable {
  private static final long serialVersionUID = 1L;

  /** What the passage between sections of two kinds may cost in accuracy. */
  private static final double PASSAGE_ERROR = 1e-7;

  private final EndProfile nose;
  private final double noseFineness;
  private final @Nullable EndProfile tail;
  private final double tailFineness;
  private final List<BodyStation> stations;
  private final double[] x;
  private final double end;
  private final MonotoneCurve width;
  private final MonotoneCurve height;
  private final MonotoneCurve centre;

  LoftedSurface(
      EndProfile nose, List<BodyStation> stations, @Nullable EndProfile tail, double length, double tailHeight) {
    this.nose = nose;
    this.tail = tail;
    this.stations = List.copyOf(stations);
    int n = stations.size();
    x = new double[n];
    double[] w = new double[n];
    double[] h = new double[n];
    double[] lineX = new double[tail == null ? n + 1 : n + 2];
    double[] lineZ = new double[lineX.length];
    for (int i = 0; i < n; i++) {
      BodyStation station = stations.get(i);
      x[i] = station.x().si();
      w[i] = station.width().si();
      h[i] = station.height().si();
      lineX[i + 1] = x[i];
      lineZ[i + 1] = station.centreHeight().si();
    }
    end = length;
    if (tail != null) {
      lineX[n + 1] = length;
      lineZ[n + 1] = tailHeight;
    }
    boolean tailLevel = tail != null && tail.isTangent();
    width = MonotoneCurve.through(x, w, nose.isTangent(), tailLevel);
    height = MonotoneCurve.through(x, h, nose.isTangent(), tailLevel);
    centre = MonotoneCurve.through(lineX, lineZ, false, false);
    noseFineness = nose.checked(x[0] / equivalent(areaOf(0)), "nose");
    tailFineness = tail == null ? 0.0 : tail.checked((length - x[n - 1]) / equivalent(areaOf(n - 1)), "tail");
  }

  /** Diameter of the circle of an area. */
  static double equivalent(double area) {
    return Math.sqrt(4.0 / Math.PI * area);
  }

  private double areaOf(int i) {
    BodyStation station = stations.get(i);
    return station.section().area(station.width().si(), station.height().si());
  }

  double width(double at) {
    return shrink(at) * width.at(at);
  }

  double height(double at) {
    return shrink(at) * height.at(at);
  }

  /** Height of the middle of the section. */
  double centre(double at) {
    return centre.at(at);
  }

  /** The outline of the section at a station, as {@link CrossSection#radial} describes it. */
  double radial(double at, double angle) {
    return radial(part(at), at, angle, width.at(at), height.at(at));
  }

  /**
   * What the surface encloses.
   *
   * @param volume volume [m³]
   * @param moment its moment about the nose [m⁴]
   * @param side area of the side view [m²]
   * @param error how far they may be off, as a part of the value
   */
  record Solid(double volume, double moment, double side, double error) implements Serializable {}

  /** How much smaller than its base the section is, at a station of the body as given: less than 1 in nose and tail. */
  private double shrink(double at) {
    int last = x.length - 1;
    if (at < x[0]) {
      return nose.radius(Math.max(0.0, at / x[0]), noseFineness);
    }
    if (tail != null && at > x[last]) {
      return tail.radius(Math.max(0.0, (end - at) / (end - x[last])), tailFineness);
    }
    return 1.0;
  }

  /** The part of the body at a station: 0 is the nose, then one between any two stations, the last is the tail. */
  private int part(double at) {
    int part = 0;
    while (part < x.length && x[part] <= at) {
      part++;
    }
    return part;
  }

  private CrossSection before(int part) {
    return stations.get(Math.max(0, part - 1)).section();
  }

  private CrossSection after(int part) {
    return stations.get(Math.min(x.length - 1, part)).section();
  }

  /** The outline at a station of the body as given. */
  private double radial(int part, double at, double angle, double w, double h) {
    CrossSection before = before(part);
    CrossSection after = after(part);
    if (before.equals(after)) {
      return before.radial(angle, w, h);
    }
    double t = (at - x[part - 1]) / (x[part] - x[part - 1]);
    double share = t * t * (3.0 - 2.0 * t);
    return (1.0 - share) * before.radial(angle, w, h) + share * after.radial(angle, w, h);
  }

  /**
   * The angle at a part v of the first quadrant. A third of the points lies in each of side, corner and top where there is a
   * corner: the outline is smooth within each, which is what quadrature and extrapolation need.
   */
  private double angle(int part, double v, double w, double h) {
    double begins = Math.PI / 6.0;
    double ends = Math.PI / 3.0;
    if (before(part) instanceof RoundedRectangle box) {
      begins = box.cornerBegins(w, h);
      ends = box.cornerEnds(w, h);
    } else if (after(part) instanceof RoundedRectangle box) {
      begins = box.cornerBegins(w, h);
      ends = box.cornerEnds(w, h);
    }
    if (v <= 1.0 / 3.0) {
      return 3.0 * v * begins;
    }
    return v <= 2.0 / 3.0
        ? begins + (3.0 * v - 1.0) * (ends - begins)
        : ends + (3.0 * v - 2.0) * (0.5 * Math.PI - ends);
  }

  /** Area of the section, with width and height scaled alike. */
  double areaAt(double at) {
    double f = shrink(at);
    double w = width.at(at);
    double h = height.at(at);
    int part = part(at);
    if (before(part).equals(after(part))) {
      return f * f * before(part).area(w, h);
    }
    double quarter = 0.0;
    double from = 0.0;
    for (int third = 1; third <= 3; third++) {
      double to = angle(part, third / 3.0, w, h);
      quarter += Quadrature.onPanels(phi -> 0.5 * EndProfile.square(radial(part, at, phi, w, h)), from, to, 1);
      from = to;
    }
    return f * f * w * h * quarter;
  }

  /** Area of the greatest section. */
  double greatestArea() {
    double best = 0.0;
    double at = x[0];
    int samples = 400;
    for (int i = 0; i <= samples; i++) {
      double place = x[0] + (x[x.length - 1] - x[0]) * i / samples;
      if (areaAt(place) > best) {
        best = areaAt(place);
        at = place;
      }
    }
    double step = (x[x.length - 1] - x[0]) / samples;
    if (step > 0.0) {
      double from = Math.max(x[0], at - step);
      double to = Math.min(x[x.length - 1], at + step);
      double place = Minimum.within(s -> -areaAt(s), from, to, Tolerance.relative(1e-8)).argument();
      best = Math.max(best, areaAt(place));
    }
    return best;
  }

  Solid solid() {
    int last = x.length - 1;
    double foreVolume = areaOf(0) * x[0] * nose.fullness(noseFineness);
    double v = foreVolume;
    double m = foreVolume * x[0] * nose.volumeCentroid(noseFineness);
    double s = stations.get(0).height().si() * x[0] * nose.sideFullness(noseFineness);
    double passage = 0.0;
    for (int i = 1; i <= last; i++) {
      v += integral(this::areaAt, x[i - 1], x[i]);
      m += integral(at -> at * areaAt(at), x[i - 1], x[i]);
      s += integral(height::at, x[i - 1], x[i]);
      if (!stations.get(i - 1).section().equals(stations.get(i).section())) {
        passage = PASSAGE_ERROR;
      }
    }
    if (tail != null) {
      double n = end - x[last];
      double aft = areaOf(last) * n * tail.fullness(tailFineness);
      v += aft;
      m += aft * (end - n * tail.volumeCentroid(tailFineness));
      s += stations.get(last).height().si() * n * tail.sideFullness(tailFineness);
    }
    return new Solid(v, m, s, passage);
  }

  private static double integral(DoubleUnaryOperator integrand, double from, double to) {
    return Quadrature.onPanels(integrand, from, to, 8);
  }

  /** Wetted area, its moment and its error, with lengths and sections stretched. */
  double[] skin(double along, double across) {
    double[] sum = new double[3];
    int last = x.length - 1;
    add(sum, (u, v, p, k) -> {
      double s = nose.r(u, 2.0 * noseFineness);
      point(0, x[0] * nose.t(u, 2.0 * noseFineness), s, v, along, across, p, k);
    });
    for (int i = 1; i <= last; i++) {
      int part = i;
      double from = x[i - 1];
      double to = x[i];
      add(sum, (u, v, p, k) -> point(part, from + u * (to - from), 1.0, v, along, across, p, k));
    }
    EndProfile aft = tail;
    if (aft != null) {
      double n = end - x[last];
      double k2 = 2.0 * tailFineness;
      add(sum, (u, v, p, k) -> point(x.length, end - n * aft.t(u, k2), aft.r(u, k2), v, along, across, p, k));
    }
    return sum;
  }

  private static void add(double[] sum, PatchArea.Patch patch) {
    PatchArea half = PatchArea.of(patch);
    sum[0] += 2.0 * half.area;
    sum[1] += 2.0 * half.moment;
    sum[2] += 2.0 * half.error;
  }

  private void point(int part, double at, double f, double v, double along, double across, double[] p, int k) {
    double w = width.at(at);
    double h = height.at(at);
    double quarter = angle(part, Math.abs(2.0 * v - 1.0), w, h);
    double angle = v < 0.5 ? -quarter : quarter;
    double rho = f * radial(part, at, angle, w, h);
    p[k] = along * at;
    p[k + 1] = across * 0.5 * w * rho * Math.cos(angle);
    p[k + 2] = across * (centre.at(at) + 0.5 * h * rho * Math.sin(angle));
  }
}
