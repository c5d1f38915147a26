// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

import io.github.wingwright.core.numerics.Minimum;
import io.github.wingwright.core.numerics.Quadrature;
import io.github.wingwright.core.numerics.Roots;
import io.github.wingwright.core.numerics.Tolerance;
import java.io.Serializable;
import java.util.ArrayList;
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
  private static final double PASSAGE_ERROR = 1e-6;

  private static final double ROUNDING = 1e-12;
  private static final int SAMPLES = 100;
  private static final int CROSSING_SAMPLES = 64;

  /** Ends of the pieces of a quadrant: side, corner, top; and with the corners of two boxes. */
  private static final double[] ONE_CORNER = {0.0, 1.0 / 3.0, 2.0 / 3.0, 1.0};

  private static final double[] TWO_CORNERS = {0.0, 3.0 / 12.0, 5.0 / 12.0, 7.0 / 12.0, 9.0 / 12.0, 1.0};

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
  private final double[][] joints;
  private final double greatest;

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
    joints = new double[n][];
    for (int part = 1; part < n; part++) {
      joints[part] = joints(part);
    }
    greatest = findGreatest();
  }

  /** The stations of a part with the places between them where the shorter side of a box changes, and its corner bends. */
  private double[] joints(int part) {
    double from = x[part - 1];
    double to = x[part];
    List<Double> places = new ArrayList<>(List.of(from));
    if (before(part) instanceof RoundedRectangle || after(part) instanceof RoundedRectangle) {
      DoubleUnaryOperator excess = at -> width.at(at) - height.at(at);
      double low = from;
      for (int i = 1; i <= CROSSING_SAMPLES; i++) {
        double high = from + (to - from) * i / CROSSING_SAMPLES;
        if (excess.applyAsDouble(low) * excess.applyAsDouble(high) < 0.0) {
          places.add(Roots.find(excess, low, high, Tolerance.relative(1e-14)));
        }
        low = high;
      }
    }
    places.add(to);
    return places.stream().mapToDouble(Double::doubleValue).toArray();
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

  /**
   * The skin.
   *
   * @param area wetted area [m²]
   * @param moment its moment about the nose, along x [m³]
   * @param rise its moment about the reference line, along z [m³]
   * @param error how far the area may be off, as a part of it
   */
  record Skin(double area, double moment, double rise, double error) implements Serializable {
    Skin scaled(double f) {
      return new Skin(f * f * area, f * f * f * moment, f * f * f * rise, error);
    }
  }

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
   * corner, and twelfths between the corners of two boxes: the outline is smooth within each, which is what quadrature and
   * extrapolation need.
   */
  private double angle(int part, double v, double w, double h) {
    double[] ends = ends(part);
    int piece = 0;
    while (piece < ends.length - 2 && v > ends[piece + 1]) {
      piece++;
    }
    double from = corner(part, piece, w, h);
    double to = corner(part, piece + 1, w, h);
    return from + (v - ends[piece]) / (ends[piece + 1] - ends[piece]) * (to - from);
  }

  /** Where the pieces of the quadrant end, as parts of it; all lie on facets of the meshes. */
  private double[] ends(int part) {
    return betweenBoxes(part) ? TWO_CORNERS : ONE_CORNER;
  }

  private boolean betweenBoxes(int part) {
    return before(part) instanceof RoundedRectangle one
        && after(part) instanceof RoundedRectangle other
        && !one.equals(other);
  }

  /** The angle at which a piece of the quadrant begins. */
  private double corner(int part, int piece, double w, double h) {
    double[] ends = ends(part);
    if (piece == 0 || piece == ends.length - 1) {
      return piece == 0 ? 0.0 : 0.5 * Math.PI;
    }
    boolean begins = piece < ends.length / 2;
    double fore = corner(before(part), begins, w, h);
    double aft = corner(after(part), begins, w, h);
    if (Double.isNaN(fore) || Double.isNaN(aft)) {
      double one = Double.isNaN(fore) ? aft : fore;
      return Double.isNaN(one) ? piece * Math.PI / 6.0 : one;
    }
    // Side, nearer and farther corner, top: the corners of all boxes lie about the diagonal.
    return piece % 2 == 1 ? Math.min(fore, aft) : Math.max(fore, aft);
  }

  private static double corner(CrossSection section, boolean begins, double w, double h) {
    if (section instanceof RoundedRectangle box) {
      return begins ? box.cornerBegins(w, h) : box.cornerEnds(w, h);
    }
    return Double.NaN;
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
    for (int piece = 1; piece < ends(part).length; piece++) {
      double to = corner(part, piece, w, h);
      quarter += Quadrature.onPanels(phi -> 0.5 * EndProfile.square(radial(part, at, phi, w, h)), from, to, 1);
      from = to;
    }
    return f * f * w * h * quarter;
  }

  /** Area of the greatest section. */
  double greatestArea() {
    return areaAt(greatest);
  }

  /** The first place at which the section is greatest [m]. */
  double greatest() {
    return greatest;
  }

  private double findGreatest() {
    double at = x[0];
    double best = areaAt(at);
    for (int part = 1; part < x.length; part++) {
      double step = (x[part] - x[part - 1]) / SAMPLES;
      double peak = x[part];
      for (int i = 1; i < SAMPLES; i++) {
        double place = x[part - 1] + i * step;
        peak = areaAt(place) > areaAt(peak) * (1.0 + ROUNDING) ? place : peak;
      }
      if (peak < x[part]) {
        peak = Minimum.within(s -> -areaAt(s), peak - step, peak + step, Tolerance.relative(1e-8)).argument();
      }
      if (areaAt(peak) > best * (1.0 + ROUNDING)) {
        best = areaAt(peak);
        at = peak;
      }
    }
    return at;
  }

  Solid solid() {
    int last = x.length - 1;
    double foreVolume = areaOf(0) * x[0] * nose.fullness(noseFineness);
    double v = foreVolume;
    double m = foreVolume * x[0] * nose.volumeCentroid(noseFineness);
    double s = stations.get(0).height().si() * x[0] * nose.sideFullness(noseFineness);
    double passage = 0.0;
    for (int i = 1; i <= last; i++) {
      for (int k = 1; k < joints[i].length; k++) {
        v += integral(this::areaAt, joints[i][k - 1], joints[i][k]);
        m += integral(at -> at * areaAt(at), joints[i][k - 1], joints[i][k]);
      }
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

  /** Wetted area, its moments about x = 0 and z = 0, and its error, with lengths and sections stretched. */
  Skin skin(double along, double across) {
    double[] sum = new double[4];
    int last = x.length - 1;
    add(sum, (u, v, p, k) -> {
      double s = nose.r(u, 2.0 * noseFineness);
      point(0, x[0] * nose.t(u, 2.0 * noseFineness), s, v, along, across, p, k);
    });
    for (int i = 1; i <= last; i++) {
      int part = i;
      for (int j = 1; j < joints[i].length; j++) {
        double from = joints[i][j - 1];
        double to = joints[i][j];
        add(sum, (u, v, p, k) -> point(part, from + u * (to - from), 1.0, v, along, across, p, k));
      }
    }
    EndProfile aft = tail;
    if (aft != null) {
      double n = end - x[last];
      double k2 = 2.0 * tailFineness;
      add(sum, (u, v, p, k) -> point(x.length, end - n * aft.t(u, k2), aft.r(u, k2), v, along, across, p, k));
    }
    return new Skin(sum[0], sum[1], sum[2], sum[3] / sum[0]);
  }

  private static void add(double[] sum, PatchArea.Patch patch) {
    PatchArea half = PatchArea.of(patch);
    sum[0] += 2.0 * half.area;
    sum[1] += 2.0 * half.moment;
    sum[2] += 2.0 * half.rise;
    sum[3] += 2.0 * half.error;
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
