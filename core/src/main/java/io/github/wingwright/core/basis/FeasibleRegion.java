// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.basis;

import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.StringJoiner;
import java.util.function.Consumer;

/**
 * What a set of considerations leaves of the plane of length and diameter: its outline with who binds each side, or who
 * clashes and what would end it.
 *
 * <p>At each length every consideration leaves an interval of diameters, so the region lies between two curves: the
 * greatest of the lower ends and the least of the upper ones. Corners, where the binding consideration changes, are found
 * to twelve digits; between them a side is a chain of straight pieces that leaves the true curve by less than one part in
 * 4,000 of the diameter. A region that falls apart has several outlines. A piece narrower in length than 1.5 % of the
 * window can be missed unless a consideration on the length alone makes it so narrow.
 */
public final class FeasibleRegion {
  private final List<Weighed> considerations;
  private final Interval lengthWindow;
  private final Interval diameterWindow;
  private final double leastFineness;
  private final NamedUnit<Length> unit;
  private final List<Outline> outlines;
  private final Optional<Conflict> conflict;

  private FeasibleRegion(
      List<Weighed> considerations,
      Interval lengthWindow,
      Interval diameterWindow,
      double leastFineness,
      NamedUnit<Length> unit) {
    this.considerations = List.copyOf(considerations);
    this.leastFineness = leastFineness;
    this.lengthWindow = window(lengthWindow, "lengths");
    this.diameterWindow = window(diameterWindow, "diameters");
    this.unit = unit;
    RegionTracer tracer = new RegionTracer(this.considerations, new PlaneWindow(lengthWindow, diameterWindow, leastFineness));
    this.outlines = tracer.outlines();
    this.conflict = outlines.isEmpty() ? Optional.of(new ConflictSearch(tracer).find()) : Optional.empty();
  }

  /**
   * The region that some considerations leave inside a window.
   *
   * @param considerations what is considered, with what was decided about each
   * @param lengths the lengths to look at [m], positive and finite
   * @param diameters the diameters to look at [m], positive and finite
   * @param unit the unit to show both in
   * @return the region
   */
  public static FeasibleRegion of(
      List<Weighed> considerations, Interval lengths, Interval diameters, NamedUnit<Length> unit) {
    Objects.requireNonNull(unit, "unit");
    Objects.requireNonNull(lengths, "lengths");
    Objects.requireNonNull(diameters, "diameters");
    Objects.requireNonNull(considerations, "considerations");
    return new FeasibleRegion(considerations, lengths, diameters, 0.0, unit);
  }

  /**
   * The region that some considerations leave inside a window, of a family of bodies that has a stoutest one. Beyond it no
   * margin is asked for, because there is no body; that nothing is left there must stand among the considerations.
   *
   * @param considerations what is considered, with what was decided about each
   * @param lengths the lengths to look at [m], positive and finite
   * @param diameters the diameters to look at [m], positive and finite
   * @param leastFineness length over diameter of the stoutest body, positive
   * @param unit the unit to show both in
   * @return the region
   */
  public static FeasibleRegion of(
      List<Weighed> considerations,
      Interval lengths,
      Interval diameters,
      double leastFineness,
      NamedUnit<Length> unit) {
    Objects.requireNonNull(unit, "unit");
    Objects.requireNonNull(lengths, "lengths");
    Objects.requireNonNull(diameters, "diameters");
    Objects.requireNonNull(considerations, "considerations");
    Door.positive(leastFineness, "least fineness ratio");
    return new FeasibleRegion(considerations, lengths, diameters, leastFineness, unit);
  }

  private static Interval window(Interval window, String name) {
    if (!(window.lower() > 0.0) || !(window.upper() > window.lower()) || Double.isInfinite(window.upper())) {
      throw new IllegalArgumentException(
          "window of " + name + " must be positive, finite and not empty, was " + window.lower() + " to " + window.upper());
    }
    return window;
  }

  /**
   * A body, as a point of the plane.
   *
   * @param length its length [m]
   * @param diameter its diameter [m]
   */
  public record Point(double length, double diameter) {
    /** Refuses what is not a number. */
    public Point {
      if (Double.isNaN(length) || Double.isNaN(diameter)) {
        throw new IllegalArgumentException("length and diameter must be numbers, were " + length + " and " + diameter);
      }
    }

    @Override
    public String toString() {
      return format(Length.MILLIMETRE);
    }

    /**
     * The body in words.
     *
     * @param unit unit of length
     * @return for example {@code "300 mm × 30 mm"}
     */
    public String format(NamedUnit<Length> unit) {
      Objects.requireNonNull(unit, "unit");
      return Length.show(length, unit, 4) + " × " + Length.show(diameter, unit, 4);
    }
  }

  /**
   * One side of an outline.
   *
   * @param boundBy who binds it; empty where the window ends
   * @param points from corner to corner, counter-clockwise around the region
   */
  public record Side(Optional<Weighed> boundBy, List<Point> points) {
    /** Keeps a copy. */
    public Side {
      Objects.requireNonNull(points, "points");
      Objects.requireNonNull(boundBy, "boundBy");
      points = List.copyOf(points);
    }

    @Override
    public String toString() {
      return "side of " + points.size() + " points, bound by " + boundBy.map(Weighed::toString).orElse("the window");
    }
  }

  /**
   * A closed outline.
   *
   * @param sides its sides, counter-clockwise, from the lower left corner
   */
  public record Outline(List<Side> sides) {
    /** Keeps a copy. */
    public Outline {
      Objects.requireNonNull(sides, "sides");
      sides = List.copyOf(sides);
    }

    /**
     * All its points, without repetition.
     *
     * @return the polygon, counter-clockwise
     */
    public List<Point> polygon() {
      List<Point> polygon = new ArrayList<>();
      for (Side side : sides) {
        polygon.addAll(side.points().subList(0, side.points().size() - 1));
      }
      return List.copyOf(polygon);
    }

    @Override
    public String toString() {
      return "outline of " + sides.size() + " sides";
    }

    /**
     * Its area by the polygon's formula.
     *
     * @return ½·Σ(L_i·d_(i+1) − L_(i+1)·d_i) [m²], positive
     */
    public double area() {
      List<Point> p = polygon();
      double twice = 0.0;
      for (int i = 0; i < p.size(); i++) {
        Point a = p.get(i);
        Point b = p.get((i + 1) % p.size());
        twice += a.length() * b.diameter() - b.length() * a.diameter();
      }
      return 0.5 * twice;
    }
  }

  /**
   * The boundary of one consideration inside the window, whether or not it binds the region: for a picture.
   *
   * @param consideration the consideration
   * @param lines its lines
   */
  public record Boundary(Weighed consideration, List<List<Point>> lines) {
    /** Keeps a copy. */
    public Boundary {
      Objects.requireNonNull(lines, "lines");
      Objects.requireNonNull(consideration, "consideration");
      lines = lines.stream().map(List::copyOf).toList();
    }

    @Override
    public String toString() {
      return "boundary of " + consideration + " in " + lines.size() + " lines";
    }
  }

  /**
   * All considerations, set aside or not.
   *
   * @return the considerations in the order they were given
   */
  public List<Weighed> considerations() {
    return considerations;
  }

  /**
   * The lengths that were looked at.
   *
   * @return the window [m]
   */
  public Interval lengthWindow() {
    return lengthWindow;
  }

  /**
   * The diameters that were looked at.
   *
   * @return the window [m]
   */
  public Interval diameterWindow() {
    return diameterWindow;
  }

  /**
   * The unit to show lengths in.
   *
   * @return the unit
   */
  public NamedUnit<Length> unit() {
    return unit;
  }

  /**
   * Whether nothing is left.
   *
   * @return true if considerations clash
   */
  public boolean isEmpty() {
    return outlines.isEmpty();
  }

  /**
   * The outlines of the region, from short bodies to long ones.
   *
   * @return usually one; none if the region is empty
   */
  public List<Outline> outlines() {
    return outlines;
  }

  /**
   * Why the region is empty.
   *
   * @return the smallest set of considerations that clash, empty if there is no clash
   */
  public Optional<Conflict> conflict() {
    return conflict;
  }

  /**
   * Whether a body satisfies all limits and guidelines.
   *
   * @param length its length [m]
   * @param diameter its diameter [m]
   * @return true inside the region
   */
  public boolean contains(double length, double diameter) {
    return considerations.stream().allMatch(w -> !w.binds() || w.consideration().margin(length, diameter) >= 0.0);
  }

  /**
   * The lengths that occur in the region.
   *
   * @return the interval [m], empty if the region is
   */
  public Interval lengths() {
    double[] ends = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};
    everyPoint(p -> widen(ends, p.length()));
    return new Interval(ends[0], ends[1]);
  }

  /**
   * The diameters that occur in the region.
   *
   * @return the interval [m], empty if the region is
   */
  public Interval diameters() {
    double[] ends = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};
    everyPoint(p -> widen(ends, p.diameter()));
    return new Interval(ends[0], ends[1]);
  }

  private void everyPoint(Consumer<Point> each) {
    outlines.forEach(o -> o.sides().forEach(s -> s.points().forEach(each)));
  }

  private static void widen(double[] ends, double value) {
    ends[0] = Math.min(ends[0], value);
    ends[1] = Math.max(ends[1], value);
  }

  /**
   * The area of the region.
   *
   * @return the sum over its outlines [m²]
   */
  public double area() {
    return outlines.stream().mapToDouble(Outline::area).sum();
  }

  /**
   * The boundary of every consideration inside the window, for a picture. Of a target it is the line that it prefers.
   *
   * @return one entry for each consideration, in their order
   */
  public List<Boundary> boundaries() {
    return boundaries(lengthWindow, diameterWindow);
  }

  /**
   * The boundary of every consideration inside another window, for a picture of a part.
   *
   * @param lengths the lengths to look at [m], positive and finite
   * @param diameters the diameters to look at [m], positive and finite
   * @return one entry for each consideration, in their order
   */
  public List<Boundary> boundaries(Interval lengths, Interval diameters) {
    Objects.requireNonNull(lengths, "lengths");
    Objects.requireNonNull(diameters, "diameters");
    return new BoundaryTracer(
            new PlaneWindow(window(lengths, "lengths"), window(diameters, "diameters"), leastFineness))
        .trace(considerations);
  }

  /**
   * A table: the considerations, then what is left and who binds it, or who clashes.
   *
   * @return several lines of text
   */
  @Override
  public String toString() {
    StringJoiner lines = new StringJoiner(System.lineSeparator());
    lines.add("length and diameter:");
    for (Weighed one : considerations) {
      String strength = one.consideration().strength().name().toLowerCase(Locale.ROOT);
      lines.add("  " + strength + "  " + one.nameIn(unit));
    }
    conflict.ifPresent(c -> lines.add("  " + c.describe(unit)));
    for (Outline outline : outlines) {
      lines.add("  feasible: lengths of " + lengths().format(unit) + ", diameters of " + diameters().format(unit));
      for (Side side : outline.sides()) {
        Point from = side.points().get(0);
        Point to = side.points().get(side.points().size() - 1);
        String who = side.boundBy().map(w -> w.consideration().nameIn(unit)).orElse("the end of the window");
        lines.add("  from " + from.format(unit) + " to " + to.format(unit) + ": " + who);
      }
    }
    return lines.toString();
  }
}
