// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.geometry.AirfoilSection;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Door;
import java.io.Serializable;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.DoubleStream;
import org.jspecify.annotations.Nullable;

/**
 * A section composed of a mean line and a thickness form, on a chord of 1 from (0, 0) to (1, 0).
 *
 * <pre>{@code
 * perpendicular:  X = x ∓ y·sin θ,  Y = c ± y·cos θ,  tan θ = dc/dx
 * vertical:       X = x,            Y = c ± y
 * }</pre>
 * with c the mean line and y the half thickness at x; upper signs for the upper surface.
 *
 * <p>Two abscissas live here. A <em>parameter</em> is the station of the mean line at which the thickness is laid off;
 * {@link #point} takes one. A <em>station</em> is the abscissa of the surface itself, which is what published tables
 * list; {@link #ordinate} takes one and solves for the parameter.
 *
 * <p>The perpendicular construction puts the surface slightly ahead of x = 0 ({@link #noseOverhang()}), and the ends
 * of an open trailing edge not quite at x = 1.
 */
public sealed class ComposedSection implements AirfoilSection, Serializable permits Naca4 {
  private static final long serialVersionUID = 1L;
  private static final double LAST_ROOT = 1.02;

  /** More points than any use asks for; a slip in a unit or a sign is told at once instead of filling the memory. */
  private static final int MOST_POINTS = 100_001;

  private final MeanLine meanLine;
  private final ThicknessForm thicknessForm;
  private final Construction construction;
  private transient volatile @Nullable SectionProperties properties;

  ComposedSection(MeanLine meanLine, ThicknessForm thicknessForm, Construction construction) {
    this.meanLine = meanLine;
    this.thicknessForm = thicknessForm;
    this.construction = construction;
  }

  /** Any mean line with any thickness form. */
  public static ComposedSection of(MeanLine meanLine, ThicknessForm thicknessForm, Construction construction) {
    Objects.requireNonNull(meanLine, "meanLine");
    Objects.requireNonNull(thicknessForm, "thicknessForm");
    Objects.requireNonNull(construction, "construction");
    return new ComposedSection(meanLine, thicknessForm, construction);
  }

  /**
   * A thin plate bent to a circular arc, with a round nose.
   *
   * @param thickness thickness ratio [chords]
   * @param camber rise of the arc [chords]; 0 for a flat plate
   */
  public static ComposedSection plate(double thickness, double camber) {
    return new ComposedSection(
        new CircularArcMeanLine(camber), new PlateThickness(thickness), Construction.PERPENDICULAR);
  }

  /** The mean line. */
  public MeanLine meanLine() {
    return meanLine;
  }

  /** The thickness form. */
  public ThicknessForm thicknessForm() {
    return thicknessForm;
  }

  /** How the thickness is laid off. */
  public Construction construction() {
    return construction;
  }

  /** What this section is, in a few words. */
  @Override
  public String name() {
    return thicknessForm.name() + ", " + meanLine.name();
  }

  // ---- the surface ----

  /** Surface point and its derivatives at the parameter s = √x: {X, Y, dX/ds, dY/ds}. */
  double[] atRoot(Surface side, double s) {
    double x = s * s;
    double y = side.sign() * thicknessForm.halfThickness(x);
    // Below this the product 2·s·slope has its limit √(2·r) to all digits.
    double safe = Math.max(s, 1e-9);
    double dy = side.sign() * 2 * safe * thicknessForm.slope(safe * safe);
    double c = meanLine.ordinate(x);
    double slope = meanLine.slope(x);
    if (construction == Construction.VERTICAL) {
      return new double[] {x, c + y, 2 * s, 2 * s * slope + dy};
    }
    double cos = 1 / Math.sqrt(1 + slope * slope);
    double sin = slope * cos;
    double turn = meanLine.secondDerivative(x) * cos * cos * 2 * s;
    return new double[] {
      x - y * sin, c + y * cos, 2 * s - dy * sin - y * cos * turn, 2 * s * slope + dy * cos - y * sin * turn
    };
  }

  /**
   * The surface point where the thickness is laid off at a station of the mean line.
   *
   * @param side which surface
   * @param parameter station of the mean line [chords], 0 to 1
   */
  public SurfacePoint point(Surface side, double parameter) {
    Objects.requireNonNull(side, "side");
    Checks.within("parameter", parameter, 0, 1);
    double[] p = atRoot(side, Math.sqrt(parameter));
    return new SurfacePoint(p[0], p[1], Math.atan2(p[3], p[2]));
  }

  /**
   * Ordinate of the surface over a chord station, as published tables list it: the construction is solved for the
   * parameter whose surface point lies at this station.
   *
   * <p>At station 0 the published convention is followed and the nose point itself is returned. Just aft of 0 the
   * perpendicular construction has two upper points; the one further aft is returned. The end of a surface may lie
   * short of station 1 by up to 0.0004; there the surface is continued by its own equation.
   *
   * <p>Example: the 2412 with the published trailing edge at 0.3: 0.078785 above, −0.041286 below.
   *
   * @param side which surface
   * @param station abscissa of the surface [chords], 0 to 1
   * @return ordinate [chords]
   */
  public double ordinate(Surface side, double station) {
    Objects.requireNonNull(side, "side");
    return atRoot(side, rootAt(side, station))[1];
  }

  /**
   * Parameter of the surface point over a chord station.
   *
   * @param side which surface
   * @param station abscissa of the surface [chords], 0 to 1
   * @return station of the mean line [chords]; may exceed 1 a little for a station at the very end
   */
  public double parameterAt(Surface side, double station) {
    Objects.requireNonNull(side, "side");
    double s = rootAt(side, station);
    return s * s;
  }

  private double rootAt(Surface side, double station) {
    Checks.within("station", station, 0, 1);
    if (station == 0) {
      return 0;
    }
    return Search.increasingRoot(s -> atRoot(side, s)[0] - station, foremostRoot(side), LAST_ROOT);
  }

  /** √parameter of the most forward point of a side. */
  private double foremostRoot(Surface side) {
    if (atRoot(side, 0)[2] >= 0) {
      return 0;
    }
    return Search.increasingRoot(s -> atRoot(side, s)[2], 0, 0.5);
  }

  /**
   * Curvature of the surface at a parameter, positive where the surface bulges outward.
   *
   * @param side which surface
   * @param parameter station of the mean line [chords], 0 to 1, not at a break of the mean line
   * @return curvature [1/chord]; the nose of the 12 % section has 63.02
   */
  public double curvature(Surface side, double parameter) {
    Objects.requireNonNull(side, "side");
    Checks.within("parameter", parameter, 0, 1);
    double s = Math.sqrt(parameter);
    double h = 1e-5;
    // One-sided at the ends, where a central difference would leave the surface.
    double low = Math.max(s - h, 0);
    double high = Math.min(s + h, 1);
    double[] a = atRoot(side, low);
    double[] b = atRoot(side, high);
    double[] m = atRoot(side, 0.5 * (low + high));
    double turned = Math.atan2(a[2] * b[3] - a[3] * b[2], a[2] * b[2] + a[3] * b[3]);
    return -side.sign() * turned / (high - low) / Math.hypot(m[2], m[3]);
  }

  // ---- leading figures ----

  /** Nose radius of the thickness form [chords]. */
  public double noseRadius() {
    return thicknessForm.noseRadius();
  }

  /** How far the surface reaches ahead of the chord's end [chords], zero or more; 7.793·10⁻⁵ for the 2412. */
  public double noseOverhang() {
    double upper = atRoot(Surface.UPPER, foremostRoot(Surface.UPPER))[0];
    double lower = atRoot(Surface.LOWER, foremostRoot(Surface.LOWER))[0];
    return Math.max(0, -Math.min(upper, lower));
  }

  /** Angle between the two surfaces at the trailing edge; 16.5° for the closed 2412. */
  public Angle trailingEdgeAngle() {
    return Angle.radians(point(Surface.LOWER, 1).slopeAngle() - point(Surface.UPPER, 1).slopeAngle());
  }

  /** Full thickness of the trailing edge [chords]. */
  @Override
  public double trailingEdgeThickness() {
    return thicknessForm.trailingEdgeThickness();
  }

  /** Full thickness at a station of the mean line [chords]. */
  @Override
  public double thickness(double parameter) {
    Checks.within("parameter", parameter, 0, 1);
    return 2 * thicknessForm.halfThickness(parameter);
  }

  /** Camber at a station [chords]. */
  @Override
  public double camber(double station) {
    Checks.within("station", station, 0, 1);
    return meanLine.ordinate(station);
  }

  /** Slope of the mean line at a station [1]. */
  @Override
  public double camberSlope(double station) {
    Checks.within("station", station, 0, 1);
    return meanLine.slope(station);
  }

  /** Station of the true greatest thickness [chords]; 0.299828 for the published 4-digit form, not 0.3. */
  @Override
  public double maximumThicknessPosition() {
    return Search.maximum(thicknessForm::halfThickness, thicknessForm::slope, edges(thicknessForm.breaks()));
  }

  /** The true greatest thickness [chords]; 1.000288 times the nominal one for the published 4-digit form. */
  @Override
  public double maximumThickness() {
    return thickness(maximumThicknessPosition());
  }

  /** Station of the greatest camber [chords]; 0.5 for a straight mean line. */
  public double maximumCamberPosition() {
    return Search.maximum(x -> Math.abs(meanLine.ordinate(x)),
        x -> Math.signum(meanLine.ordinate(x)) * meanLine.slope(x), edges(meanLine.breaks()));
  }

  /** The greatest camber [chords], negative for a line that hangs below the chord. */
  @Override
  public double maximumCamber() {
    return meanLine.ordinate(maximumCamberPosition());
  }

  /** Area, centroid, second moments and lengths, to ten digits. */
  public SectionProperties properties() {
    SectionProperties known = properties;
    if (known == null) {
      // Two threads may both compute it; they get the same value.
      known = SectionProperties.of(this);
      properties = known;
    }
    return known;
  }

  @Override
  public double area() {
    return properties().area();
  }

  @Override
  public double perimeter() {
    return properties().perimeter();
  }

  /**
   * Vertical distance between the surfaces over a chord station [chords]: what fits inside, before walls.
   *
   * @param station abscissa [chords], 0 to 1
   */
  public double depth(double station) {
    return ordinate(Surface.UPPER, station) - ordinate(Surface.LOWER, station);
  }

  /**
   * Whether the perpendicular construction folds over itself: the half thickness exceeds the radius of the mean
   * line on its hollow side. Such a section cannot be drawn as it is defined.
   */
  public boolean folds() {
    if (construction == Construction.VERTICAL) {
      return false;
    }
    for (Surface side : Surface.values()) {
      double from = foremostRoot(side);
      double before = atRoot(side, from)[0];
      for (int i = 1; i <= 500; i++) {
        double x = atRoot(side, from + (1 - from) * i / 500.0)[0];
        if (x < before) {
          return true;
        }
        before = x;
      }
    }
    return false;
  }

  /** What to know before drawing or making this section: whether it can be drawn at all. */
  public List<Finding> findings() {
    return folds()
        ? List.of(Finding.of(Severity.SERIOUS, "section shape",
            "The thickness laid off perpendicular to the mean line folds over itself near the nose: less thickness,"
                + " less camber, or camber further aft.",
            Source.taken("geometry of the construction")))
        : List.of();
  }

  /**
   * Writes the outline into the caller's arrays, from the upper trailing edge round the nose to the lower one, with
   * parameters spaced as {@code ½·(1 + cos β)} at equal steps of β from 0 to 2π. Allocates nothing per point for
   * a {@link Naca4}.
   *
   * @param x receives the abscissas [chords]; its length is the number of points, at least 5
   * @param y receives the ordinates [chords]; as long as {@code x}
   */
  @Override
  public void outline(double[] x, double[] y) {
    Objects.requireNonNull(x, "x");
    Objects.requireNonNull(y, "y");
    int n = Contour.sizeOf(x, y);
    for (int i = 0; i < n; i++) {
      Surface side = 2 * i < n ? Surface.UPPER : Surface.LOWER;
      // s = cos(β/2) keeps its digits near the nose, where √(½·(1 + cos β)) would not.
      double s = Math.abs(Math.cos(Math.PI * i / (n - 1)));
      double[] p = atRoot(side, 2 * i == n - 1 ? 0 : s);
      x[i] = p[0];
      y[i] = p[1];
    }
  }

  /**
   * The outline as a value.
   *
   * @param points number of points, 5 to 100,001
   */
  public Contour contour(int points) {
    Door.within(points, 5, MOST_POINTS, "number of points");
    double[] x = new double[points];
    double[] y = new double[points];
    outline(x, y);
    return Contour.of(x, y);
  }

  /**
   * The outline with points that crowd less at the trailing edge, as boundary layers need it: their thickness there
   * is a hundred times a cosine-spaced panel.
   *
   * <pre>{@code √x = (1 − w)·cos(π·u/2) + w·(1 − u)}</pre>
   * at equal steps of u from the trailing edge (0) to the nose (1) on each side.
   *
   * @param points number of points, odd, 21 to 100,001
   * @param linearShare w, 0 (cosine spacing) to 1
   */
  public Contour contour(int points, double linearShare) {
    Checks.within("linear share", linearShare, 0, 1);
    Door.within(points, 21, MOST_POINTS, "number of points");
    if (points % 2 == 0) {
      throw new IllegalArgumentException("number of points of this spacing must be odd, was " + points);
    }
    double[] x = new double[points];
    double[] y = new double[points];
    int half = points / 2;
    for (int i = 0; i <= half; i++) {
      double u = (double) i / half;
      double s = i == half ? 0 : (1 - linearShare) * Math.cos(0.5 * Math.PI * u) + linearShare * (1 - u);
      double[] upper = atRoot(Surface.UPPER, s);
      double[] lower = atRoot(Surface.LOWER, s);
      x[i] = upper[0];
      y[i] = upper[1];
      x[points - 1 - i] = lower[0];
      y[points - 1 - i] = lower[1];
    }
    return Contour.of(x, y);
  }

  /** Ends of the smooth pieces in √x, nose and trailing edge included. */
  double[] rootBreaks() {
    double[] all = edges(meanLine.breaks(), thicknessForm.breaks());
    return Arrays.stream(all).map(Math::sqrt).toArray();
  }

  private static double[] edges(double[]... inner) {
    return DoubleStream.concat(
            Arrays.stream(inner).flatMapToDouble(Arrays::stream), DoubleStream.of(0, 1))
        .filter(x -> x >= 0 && x <= 1)
        .sorted()
        .distinct()
        .toArray();
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof ComposedSection section
        && meanLine.equals(section.meanLine)
        && thicknessForm.equals(section.thicknessForm)
        && construction == section.construction;
  }

  @Override
  public int hashCode() {
    return Objects.hash(meanLine, thicknessForm, construction);
  }

  @Override
  public String toString() {
    return name();
  }
}
