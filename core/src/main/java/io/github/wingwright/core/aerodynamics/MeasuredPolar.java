// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

import io.github.wingwright.core.basis.Band;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.NamedUnit;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;

/**
 * A section polar from measured points: yours.
 *
 * <p>Between the points it is straight against lift and against the logarithm of the Reynolds number. Beyond them it keeps
 * the value at the edge and says so in a finding: measured data are never extended quietly. What was not measured (angle,
 * moment) comes from an estimate, with a finding.
 *
 * <p>Points that share a Reynolds number form a run. Only the part of a run up to its greatest lift is kept: behind the
 * stall one lift has two drags. Every drag is a band of ±{@value #SPREAD} of itself, because that is how far two tunnels
 * differ on one model (5 to 12 % at 10⁵ and above, 20 to 30 % at 6·10⁴).
 */
public final class MeasuredPolar implements SectionPolar, Serializable {
  private static final long serialVersionUID = 1L;

  /** How far measured drag may be off, as a part of itself. */
  public static final double SPREAD = 0.15;

  /** Part of a section's greatest lift that a flight can use. */
  private static final double USABLE_PART = 0.9;

  private static final Source USABLE = Sources.raymer("p. 125: 0.9 of the section's greatest lift");

  /**
   * One measured point.
   *
   * @param reynolds Reynolds number on the chord, positive
   * @param lift c_l
   * @param drag c_d, positive
   * @param angle angle of attack from the chord line [rad], NaN if not measured
   * @param moment c_m about the quarter chord, nose-up positive, NaN if not measured
   */
  public record Point(double reynolds, double lift, double drag, double angle, double moment) implements Serializable {
    /** Refuses what cannot have been measured. */
    public Point {
      Door.positive(reynolds, "Reynolds number");
      Door.finite(lift, "lift coefficient");
      Door.positive(drag, "drag coefficient");
    }

    /**
     * Lift and drag.
     *
     * @param reynolds Reynolds number on the chord, positive
     * @param lift c_l
     * @param drag c_d, positive
     * @return the point
     */
    public static Point of(double reynolds, double lift, double drag) {
      return new Point(reynolds, lift, drag, Double.NaN, Double.NaN);
    }

    /**
     * The same point with its angle of attack.
     *
     * @param measured angle of attack from the chord line
     * @return the point
     */
    public Point at(Angle measured) {
      Objects.requireNonNull(measured, "measured");
      return new Point(reynolds, lift, drag, measured.si(), moment);
    }

    /**
     * The same point with its moment.
     *
     * @param measured c_m about the quarter chord
     * @return the point
     */
    public Point withMoment(double measured) {
      return new Point(reynolds, lift, drag, angle, Door.finite(measured, "moment coefficient"));
    }
  }

  private final String name;
  private final Source source;
  private final SectionPolar estimate;
  private final double[] reynolds;
  private final MeasuredRun[] runs;

  private MeasuredPolar(String name, Source source, SectionPolar estimate, double[] reynolds, MeasuredRun[] runs) {
    this.name = name;
    this.source = source;
    this.estimate = estimate;
    this.reynolds = reynolds;
    this.runs = runs;
  }

  /**
   * A polar from points.
   *
   * @param name the section and the tunnel, such as {@code "NACA 4406, own tunnel"}
   * @param source where the points come from
   * @param points the points, in any order, at least two different lifts at each Reynolds number
   * @param estimate where angle or moment come from if they were not measured
   * @return the polar
   */
  public static MeasuredPolar of(String name, Source source, List<Point> points, SectionPolar estimate) {
    Objects.requireNonNull(points, "points");
    if (points.isEmpty()) {
      throw new IllegalArgumentException("a measured polar needs points, got none");
    }
    Map<Double, List<Point>> byReynolds = new TreeMap<>();
    points.forEach(p -> byReynolds.computeIfAbsent(p.reynolds(), r -> new ArrayList<>()).add(p));
    double[] reynolds = byReynolds.keySet().stream().mapToDouble(Double::doubleValue).toArray();
    MeasuredRun[] runs =
        byReynolds.values().stream()
            .map(run -> MeasuredRun.of(run.stream().sorted(Comparator.comparingDouble(Point::lift)).toList()))
            .toArray(MeasuredRun[]::new);
    return new MeasuredPolar(name, source, estimate, reynolds, runs);
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public Source source() {
    return source;
  }

  @Override
  public Interval reynoldsRange() {
    return Interval.between(reynolds[0], reynolds[reynolds.length - 1]);
  }

  @Override
  public Band profileDrag(double cl, double re) {
    double likely = likelyProfileDrag(cl, re);
    return Band.around(likely, SPREAD * likely);
  }

  @Override
  public double likelyProfileDrag(double cl, double re) {
    int i = upperRun(re);
    double below = runs[i == 0 ? 0 : i - 1].drag(cl);
    return mix(below, runs[i].drag(cl), part(i, re));
  }

  @Override
  public Band zeroLiftAngle(double re) {
    int i = upperRun(re);
    double angle = mix(runs[i == 0 ? 0 : i - 1].zeroLiftAngle(), runs[i].zeroLiftAngle(), part(i, re));
    return Double.isNaN(angle) ? estimate.zeroLiftAngle(re) : Band.around(angle, ANGLE_ERROR);
  }

  /** Half a degree: flow angularity and reading error of small tunnels (common practice). */
  private static final double ANGLE_ERROR = 0.5 * Math.PI / 180.0;

  @Override
  public Band liftSlope(double re) {
    int i = upperRun(re);
    double slope = mix(runs[i == 0 ? 0 : i - 1].liftSlope(), runs[i].liftSlope(), part(i, re));
    return Double.isNaN(slope) ? estimate.liftSlope(re) : Band.around(slope, 0.05 * slope);
  }

  @Override
  public Band moment(double re) {
    int i = upperRun(re);
    double moment = mix(runs[i == 0 ? 0 : i - 1].moment(), runs[i].moment(), part(i, re));
    return Double.isNaN(moment) ? estimate.moment(re) : Band.exactly(moment);
  }

  @Override
  public Band usableLift(double re) {
    int i = upperRun(re);
    double greatest = mix(runs[i == 0 ? 0 : i - 1].greatestLift(), runs[i].greatestLift(), part(i, re));
    return new Band(Math.min(0.8 * greatest, greatest), USABLE_PART * greatest, greatest);
  }

  /** The first run at or above a Reynolds number, or the last. */
  private int upperRun(double re) {
    int i = 0;
    while (i < reynolds.length - 1 && reynolds[i] < re) {
      i++;
    }
    return i;
  }

  /** How far a Reynolds number lies between the run before and run i; held at the ends. */
  private double part(int i, double re) {
    if (i == 0) {
      return 1.0;
    }
    double part = Math.log(re / reynolds[i - 1]) / Math.log(reynolds[i] / reynolds[i - 1]);
    return Math.max(0.0, Math.min(1.0, part));
  }

  private static double mix(double below, double above, double part) {
    return part >= 1.0 ? above : part <= 0.0 ? below : below + part * (above - below);
  }

  @Override
  public List<Finding> findings(double cl, double re) {
    List<Finding> findings = new ArrayList<>();
    if (!reynoldsRange().contains(re)) {
      findings.add(
          Finding.of(
              Severity.CAUTION,
              "measured section data",
              "The section was not measured at this Reynolds number; the nearest run is used.",
              re,
              reynoldsRange(),
              NamedUnit.NUMBER,
              source));
    }
    int i = upperRun(re);
    Interval measured = runs[i == 0 ? 0 : i - 1].lifts().intersect(runs[i].lifts());
    if (!measured.contains(cl)) {
      findings.add(
          Finding.of(
              Severity.CAUTION,
              "measured section data",
              "The section was not measured at this lift; the drag at the edge of the data is used.",
              cl,
              measured,
              NamedUnit.NUMBER,
              source));
    }
    double usable = usableLift(re).likely();
    if (cl > usable) {
      findings.add(
          Finding.of(
              Severity.CAUTION,
              "section lift",
              "The section is asked for more lift than a wing can use of what was measured.",
              cl,
              Interval.atMost(usable),
              NamedUnit.NUMBER,
              USABLE));
    }
    if (Double.isNaN(runs[i].zeroLiftAngle()) || Double.isNaN(runs[i].moment())) {
      findings.add(
          Finding.of(
              Severity.NOTE,
              "measured section data",
              "Angle or moment were not measured; they come from an estimate: " + estimate.name() + ".",
              estimate.source()));
    }
    return List.copyOf(findings);
  }

  @Override
  public String toString() {
    return name + ", " + runs.length + " runs, Re " + reynoldsRange();
  }
}
