// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.numerics.Minimum;
import io.github.wingwright.core.numerics.Quadrature;
import io.github.wingwright.core.numerics.Tolerance;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import java.io.Serializable;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * A body through sections of any shape at some stations, with a nose ahead of the first and a tail behind the last.
 *
 * <p>Width, height and the height of the middle run through the stations as smooth curves that do not overshoot. Where two
 * neighbouring sections differ in kind, the outline passes from one to the other. Nose and tail shrink the section at their
 * base along an {@link EndProfile}; the nose tip is the origin, and the middle line is smooth from there to the tail's end.
 *
 * <p>As a {@link BodyShape} it is a family: its length is stretched to L, its sections are scaled so that the circle equal to
 * the greatest has the diameter d. {@link #length()} and {@link #diameter()} are those of the body as it was given. Volume and
 * centroid follow from the area curve, which the middle line does not change. The wetted area comes from meshes of the
 * surface; of a body that is stretched to a fifth or five times it is interpolated between two dozen of them, which are made
 * when the first is asked for.
 */
public final class LoftedBody implements BodyShape, Serializable {
  private static final long serialVersionUID = 1L;

  /** What the passage between sections of two kinds may cost in accuracy. */
  private static final double PASSAGE_ERROR = 1e-7;

  /** Stretches up to e to this power, and down to its inverse, are interpolated: 1/5 to 5. */
  private static final double STRETCH = Math.log(5.0);

  private static final int NODES = 24;

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
  private final double diameter;
  private final double volume;
  private final double volumeMoment;
  private final double side;
  private final double area;
  private final double areaMoment;
  private final double error;
  private transient volatile double @Nullable [] stretched;

  private LoftedBody(
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

    double[] sums = solid();
    volume = sums[0];
    volumeMoment = sums[1];
    side = sums[2];
    diameter = equivalent(greatestArea());
    double[] skin = skin(1.0, 1.0);
    area = skin[0];
    areaMoment = skin[1];
    error = Math.max(1e-9, Math.max(skin[2] / skin[0], sums[3]));
  }

  /**
   * A body that closes at both ends.
   *
   * @param nose profile of the nose, from the origin to the first station
   * @param stations at least one section, from nose to tail
   * @param tail profile of the tail, from the last station to the end
   * @param length length of the body, behind the last station
   * @param tailHeight how high the tail's end lies above the reference line
   * @return the body
   */
  public static LoftedBody of(
      EndProfile nose, List<BodyStation> stations, EndProfile tail, Length length, Length tailHeight) {
    check(nose, stations);
    Door.finite(tailHeight, "height of the tail's end");
    Length last = stations.get(stations.size() - 1).x();
    if (!(length.si() > last.si()) || Double.isInfinite(length.si())) {
      throw new IllegalArgumentException("length must be more than the last station's " + last + ", was " + length);
    }
    return new LoftedBody(nose, stations, tail, length.si(), tailHeight.si());
  }

  /**
   * A body that ends with its last section as a flat base.
   *
   * @param nose profile of the nose, from the origin to the first station
   * @param stations at least two sections, from nose to base
   * @return the body
   */
  public static LoftedBody withBase(EndProfile nose, List<BodyStation> stations) {
    check(nose, stations);
    if (stations.size() < 2) {
      throw new IllegalArgumentException("a body with a base needs at least two stations, got one");
    }
    return new LoftedBody(nose, stations, null, stations.get(stations.size() - 1).x().si(), 0.0);
  }

  private static void check(EndProfile nose, List<BodyStation> stations) {
    if (nose.tipRatio() > 0.0) {
      throw new IllegalArgumentException("a nose must come to a point or a round tip, was " + nose);
    }
    if (stations.isEmpty()) {
      throw new IllegalArgumentException("a lofted body needs at least one station, got none");
    }
    for (int i = 1; i < stations.size(); i++) {
      Length before = stations.get(i - 1).x();
      if (stations.get(i).x().si() <= before.si()) {
        throw new IllegalArgumentException(
            "stations must run aft: after " + before + " must come more, was " + stations.get(i).x());
      }
    }
  }

  /**
   * The stations as they were given.
   *
   * @return the sections from nose to tail
   */
  public List<BodyStation> stations() {
    return stations;
  }

  /**
   * The length as it was given.
   *
   * @return L
   */
  public Length length() {
    return Length.metres(end);
  }

  /**
   * The diameter of the circle equal to the greatest section, as it was given.
   *
   * @return √(4·A_max/π)
   */
  public Length diameter() {
    return Length.metres(diameter);
  }

  /**
   * The body as it was given, as a fuselage.
   *
   * @return the fuselage
   */
  public Fuselage fuselage() {
    return new Fuselage(this, length(), diameter());
  }

  private static double equivalent(double area) {
    return Math.sqrt(4.0 / Math.PI * area);
  }

  private double areaOf(int i) {
    BodyStation station = stations.get(i);
    return station.section().area(station.width().si(), station.height().si());
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
  private double areaAt(double at) {
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

  private double greatestArea() {
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

  /** Volume, its moment, the side view, and the relative error. */
  private double[] solid() {
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
    return new double[] {v, m, s, passage};
  }

  private static double integral(DoubleUnaryOperator integrand, double from, double to) {
    return Quadrature.onPanels(integrand, from, to, 8);
  }

  /** Wetted area, its moment and its error, with lengths and sections stretched. */
  private double[] skin(double along, double across) {
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

  private double across(double given) {
    return given / diameter;
  }

  private double place(double at, double length) {
    return at / length * end;
  }

  @Override
  public String name() {
    return "lofted body";
  }

  @Override
  public double leastFinenessRatio() {
    return 0.05;
  }

  @Override
  public double volume(double length, double diameter) {
    return volume * (length / end) * across(diameter) * across(diameter);
  }

  @Override
  public double volumeCentroid(double length, double diameter) {
    return volumeMoment / volume * (length / end);
  }

  @Override
  public double sideArea(double length, double diameter) {
    return side * (length / end) * across(diameter);
  }

  @Override
  public double wettedArea(double length, double diameter) {
    double f = across(diameter);
    if (asGiven(length, f)) {
      return area * f * f;
    }
    // Bodies of one stretch are similar, so the area over the square of the diameter depends on the stretch alone.
    double stretch = Math.log(length / end / f) / STRETCH;
    return Math.abs(stretch) <= 1.0 ? f * f * interpolated(stretch) : skin(length / end, f)[0];
  }

  /** Area at a stretch of sections as given, by barycentric interpolation between Chebyshev points (Berrut and Trefethen). */
  private double interpolated(double stretch) {
    double[] values = stretched;
    if (values == null) {
      values = new double[NODES];
      for (int i = 0; i < NODES; i++) {
        values[i] = skin(Math.exp(STRETCH * node(i)), 1.0)[0];
      }
      // Whoever comes second finds the same numbers.
      stretched = values;
    }
    double above = 0.0;
    double below = 0.0;
    for (int i = 0; i < NODES; i++) {
      double distance = stretch - node(i);
      if (distance == 0.0) {
        return values[i];
      }
      double angle = (2 * i + 1) * Math.PI / (2 * NODES);
      double weight = (i % 2 == 0 ? 1.0 : -1.0) * Math.sin(angle) / distance;
      above += weight * values[i];
      below += weight;
    }
    return above / below;
  }

  private static double node(int i) {
    return Math.cos((2 * i + 1) * Math.PI / (2 * NODES));
  }


  @Override
  public double surfaceCentroid(double length, double diameter) {
    double f = across(diameter);
    if (asGiven(length, f)) {
      return areaMoment / area * (length / end);
    }
    double[] skin = skin(length / end, f);
    return skin[1] / skin[0];
  }

  /** Whether the proportion is the one that was given. */
  private boolean asGiven(double length, double across) {
    return Math.abs(length / end - across) <= 1e-12 * across;
  }

  @Override
  public Step wettedAreaStep(Step length, Step diameter) {
    return Step.solution(
        "wetted area",
        "S_wet",
        Area.SQUARE_METRE,
        "meshes of the surface, extrapolated; the residual is the estimated error",
        "S_wet = ∫∫ |∂P/∂u × ∂P/∂v| du dv over nose, stations and tail",
        v -> wettedArea(v[0], v[1]),
        v -> error * v[2],
        Source.library("smooth curves through the stations"),
        length,
        diameter);
  }

  @Override
  public double radius(double at, double length, double diameter) {
    return 0.5 * across(diameter) * equivalent(areaAt(place(at, length)));
  }

  @Override
  public double width(double at, double length, double diameter) {
    double place = place(at, length);
    return across(diameter) * shrink(place) * width.at(place);
  }

  @Override
  public double height(double at, double length, double diameter) {
    double place = place(at, length);
    return across(diameter) * shrink(place) * height.at(place);
  }

  @Override
  public double centreHeight(double at, double length, double diameter) {
    return across(diameter) * centre.at(place(at, length));
  }

  @Override
  public double relativeError() {
    return error;
  }

  @Override
  public String toString() {
    return "lofted body " + length() + " × " + diameter() + ", " + stations.size() + " stations";
  }
}
