// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils.manufacture;

import io.github.wingwright.airfoils.ComposedSection;
import io.github.wingwright.airfoils.Surface;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Density;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.LinearDensity;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * A section at its real size, hollowed by walls of constant thickness.
 *
 * <p>The inner outline is the outer one moved inward along its normal. Near the nose it ends where the walls of both
 * surfaces meet; towards the trailing edge likewise, and the rest is solid: a shell is never heavier than the solid. What
 * remains is a hollow between two stations, or none at all, with a finding.
 *
 * <pre>{@code
 * SectionShell shell = SectionShell.of(Naca4.parse("2412"), millimetres(50), millimetres(0.8));
 * LinearDensity perSpan = shell.massPerSpan(density);
 * }</pre>
 */
public final class SectionShell {
  private static final Source GEOMETRY = Source.taken("geometry of the walls");
  private static final int STATIONS = 400;

  private final ComposedSection section;
  private final double chord;
  private final double wall;
  /** Inner ordinates at equal steps of a cosine between the ends of the hollow, in chords. */
  private final double[] x;

  private final double[] upper;
  private final double[] lower;

  private SectionShell(
      ComposedSection section, double chord, double wall, double[] x, double[] upper, double[] lower) {
    this.section = section;
    this.chord = chord;
    this.wall = wall;
    this.x = x;
    this.upper = upper;
    this.lower = lower;
  }

  /**
   * Hollows a section.
   *
   * @param section the section
   * @param chord its chord, positive
   * @param wall thickness of the walls, positive, below half of the chord
   */
  public static SectionShell of(ComposedSection section, Length chord, Length wall) {
    Objects.requireNonNull(chord, "chord");
    Objects.requireNonNull(wall, "wall");
    double c = chord.metres();
    double w = wall.metres() / c;
    if (!(c > 0)) {
      throw new IllegalArgumentException("chord must be positive, was " + chord);
    }
    if (!(w > 0 && w < 0.5)) {
      throw new IllegalArgumentException("wall must be positive and below half of the chord, was " + wall);
    }
    Curve up = Curve.inside(section, Surface.UPPER, w);
    Curve down = Curve.inside(section, Surface.LOWER, w);
    double from = Math.max(up.first(), down.first());
    // A blunt base has a wall of its own.
    double to = Math.min(Math.min(up.last(), down.last()), 1 - w);
    // The hollow is the longest stretch in which the upper inner wall lies above the lower one.
    int n = 2000;
    double start = Double.NaN;
    double bestStart = Double.NaN;
    double bestEnd = Double.NaN;
    for (int i = 0; i <= n; i++) {
      double s = from + (to - from) * i / n;
      boolean open = to > from && height(up, down, s) > 0;
      if (open && Double.isNaN(start)) {
        start = s;
      }
      if (!Double.isNaN(start) && (!open || i == n)) {
        if (Double.isNaN(bestStart) || s - start > bestEnd - bestStart) {
          bestStart = start;
          bestEnd = s;
        }
        start = Double.NaN;
      }
    }
    if (Double.isNaN(bestStart)) {
      return new SectionShell(section, c, w, new double[0], new double[0], new double[0]);
    }
    double step = (to - from) / n;
    bestStart = edge(up, down, bestStart, Math.max(bestStart - step, from));
    bestEnd = edge(up, down, Math.max(bestEnd - step, bestStart), bestEnd);
    double[] x = new double[STATIONS + 1];
    double[] yu = new double[STATIONS + 1];
    double[] yl = new double[STATIONS + 1];
    for (int i = 0; i <= STATIONS; i++) {
      x[i] = bestStart + (bestEnd - bestStart) * 0.5 * (1 - Math.cos(Math.PI * i / STATIONS));
      yu[i] = Math.max(up.at(x[i]), down.at(x[i]));
      yl[i] = Math.min(down.at(x[i]), yu[i]);
    }
    return new SectionShell(section, c, w, x, yu, yl);
  }

  /** Height inside, less what rounding makes of walls that touch. */
  private static double height(Curve up, Curve down, double s) {
    return up.at(s) - down.at(s) - 1e-9;
  }

  /** Where the hollow ends between a station inside it and one at its edge. */
  private static double edge(Curve up, Curve down, double inside, double outside) {
    double a = inside;
    double b = outside;
    for (int i = 0; i < 40; i++) {
      double m = 0.5 * (a + b);
      if (height(up, down, m) > 0) {
        a = m;
      } else {
        b = m;
      }
    }
    return a;
  }

  /** A surface moved inward, as points with rising abscissa; loops that the offset makes at a sharp nose are cut off. */
  private record Curve(List<double[]> points) {
    static Curve inside(ComposedSection section, Surface side, double wall) {
      List<double[]> kept = new ArrayList<>();
      for (int i = 0; i <= 3 * STATIONS; i++) {
        double s = (double) i / (3 * STATIONS);
        var point = section.point(side, s * s);
        double nx = Math.sin(point.slopeAngle()) * side.sign();
        double ny = -Math.cos(point.slopeAngle()) * side.sign();
        double px = point.x() + wall * nx;
        double py = point.y() + wall * ny;
        if (kept.isEmpty() || px > kept.get(kept.size() - 1)[0]) {
          kept.add(new double[] {px, py});
        }
      }
      return new Curve(kept);
    }

    double first() {
      return points.get(0)[0];
    }

    double last() {
      return points.get(points.size() - 1)[0];
    }

    double at(double x) {
      int low = 0;
      int high = points.size() - 1;
      while (high - low > 1) {
        int middle = (low + high) >>> 1;
        if (points.get(middle)[0] <= x) {
          low = middle;
        } else {
          high = middle;
        }
      }
      double[] a = points.get(low);
      double[] b = points.get(high);
      return a[1] + (x - a[0]) / (b[0] - a[0]) * (b[1] - a[1]);
    }
  }

  /** Whether there is a hollow at all. */
  public boolean isHollow() {
    return x.length > 0;
  }

  /** Chord stations between which the section is hollow [chords]; empty if it is solid. */
  public Optional<Interval> hollow() {
    return isHollow() ? Optional.of(Interval.between(x[0], x[x.length - 1])) : Optional.empty();
  }

  /** Area of the hollow. */
  public Area hollowArea() {
    double sum = 0;
    for (int i = 1; i < x.length; i++) {
      sum += 0.5 * (x[i] - x[i - 1]) * (upper[i] - lower[i] + upper[i - 1] - lower[i - 1]);
    }
    return Area.squareMetres(sum * chord * chord);
  }

  /** Area of the walls and of what is solid; at most the area of the section. */
  public Area wallArea() {
    return Area.squareMetres(section.area() * chord * chord - hollowArea().squareMetres());
  }

  /** Mass of a length of span. */
  public LinearDensity massPerSpan(Density material) {
    Objects.requireNonNull(material, "material");
    return LinearDensity.kilogramsPerMetre(wallArea().squareMetres() * material.kilogramsPerCubicMetre());
  }

  /**
   * Clear height inside at a chord station; zero where the section is solid.
   *
   * @param station chord station [chords], 0 to 1
   */
  public Length clearHeight(double station) {
    if (!(station >= 0 && station <= 1)) {
      throw new IllegalArgumentException("station must be from 0 to 1, was " + station);
    }
    double[] walls = wallsAt(station);
    return Length.metres((walls[1] - walls[0]) * chord);
  }

  /**
   * Whether a round hole for a spar fits between the walls; the finding says how much is missing.
   *
   * @param station chord station of its centre [chords]
   * @param diameter diameter of the hole
   * @return nothing if it fits
   */
  public Optional<Finding> spar(double station, Length diameter) {
    Objects.requireNonNull(diameter, "diameter");
    if (!(diameter.metres() > 0)) {
      throw new IllegalArgumentException("diameter must be positive, was " + diameter);
    }
    double radius = 0.5 * diameter.metres() / chord;
    return fits("spar hole", station, radius, radius,
        offset -> Math.sqrt(Math.max(radius * radius - offset * offset, 0)));
  }

  /**
   * Whether a slot for a flat spar fits between the walls; the finding says how much is missing.
   *
   * @param station chord station of its middle [chords]
   * @param width its width along the chord
   * @param height its height
   * @return nothing if it fits
   */
  public Optional<Finding> slot(double station, Length width, Length height) {
    Objects.requireNonNull(width, "width");
    Objects.requireNonNull(height, "height");
    if (!(width.metres() > 0 && height.metres() > 0)) {
      throw new IllegalArgumentException(
          "width and height of a slot must be positive, were " + width + " and " + height);
    }
    double half = 0.5 * height.metres() / chord;
    return fits("spar slot", station, 0.5 * width.metres() / chord, half, offset -> half);
  }

  /** Looks for a height of the middle at which the shape clears both walls at every station. */
  private Optional<Finding> fits(
      String what, double station, double halfWidth, double halfHeight, DoubleUnaryOperator extent) {
    double lowest = Double.NEGATIVE_INFINITY;
    double highest = Double.POSITIVE_INFINITY;
    for (int k = -20; k <= 20; k++) {
      double offset = halfWidth * k / 20;
      double[] walls = wallsAt(station + offset);
      lowest = Math.max(lowest, walls[0] + extent.applyAsDouble(offset));
      highest = Math.min(highest, walls[1] - extent.applyAsDouble(offset));
    }
    if (highest >= lowest) {
      return Optional.empty();
    }
    double needed = 2 * halfHeight * chord;
    double room = Math.max(needed - (lowest - highest) * chord, 0);
    return Optional.of(Finding.of(Severity.SERIOUS, what,
        "It does not fit between the walls: move it, make it smaller, or thin the walls.", needed,
        Interval.between(0, room), Length.METRE, GEOMETRY));
  }

  /** Inner ordinates at a station, lower and upper; a closed gap outside the hollow. */
  private double[] wallsAt(double station) {
    if (!isHollow() || station <= x[0] || station >= x[x.length - 1]) {
      return new double[] {0, 0};
    }
    int i = 1;
    while (x[i] < station) {
      i++;
    }
    double part = (station - x[i - 1]) / (x[i] - x[i - 1]);
    return new double[] {
      lower[i - 1] + part * (lower[i] - lower[i - 1]), upper[i - 1] + part * (upper[i] - upper[i - 1])
    };
  }

  /** What a maker should know: walls that meet, a trailing edge that cannot be made. */
  public List<Finding> findings() {
    List<Finding> findings = new ArrayList<>();
    if (!isHollow()) {
      findings.add(Finding.of(Severity.CAUTION, "walls",
          "The walls of both surfaces meet everywhere: the section is solid.", wall * chord,
          Interval.atMost(0.5 * section.maximumThickness() * chord), Length.METRE, GEOMETRY));
    } else {
      double solid = 1 - x[x.length - 1];
      if (solid > 0.15) {
        findings.add(Finding.of(Severity.NOTE, "walls",
            "The walls meet well ahead of the trailing edge, which is solid from there.", solid,
            Interval.atMost(0.15), NamedUnit.NUMBER, GEOMETRY));
      }
    }
    double edge = section.trailingEdgeThickness() * chord;
    if (edge < wall * chord) {
      findings.add(Finding.of(Severity.CAUTION, "trailing edge",
          "The trailing edge is thinner than one wall and may not be made as drawn.", edge,
          Interval.atLeast(wall * chord), Length.METRE, GEOMETRY));
    }
    return findings;
  }

  @Override
  public String toString() {
    return section.name() + ", wall " + Length.metres(wall * chord) + ", "
        + (isHollow() ? "hollow " + Math.round(100 * x[0]) + " to " + Math.round(100 * x[x.length - 1]) + " %"
            : "solid");
  }
}
