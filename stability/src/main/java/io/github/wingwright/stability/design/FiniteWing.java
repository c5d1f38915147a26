// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import io.github.wingwright.core.aerodynamics.LiftingLine;
import io.github.wingwright.core.aerodynamics.LiftingLineLoading;
import io.github.wingwright.core.aerodynamics.LiftingLineSolution;
import io.github.wingwright.core.aerodynamics.LiftingLineStall;
import io.github.wingwright.core.aerodynamics.SectionPolar;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.stability.lattice.FiniteWingComparison;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * A wing of finite span with the section that it has at its Reynolds number: slope, loading and induced drag by handbook,
 * lifting line and lattice beside each other, and the lift along the span against what each section can carry.
 *
 * <p>The limit of a section falls towards a narrow tip, because the Reynolds number does.
 */
public final class FiniteWing {
  /** A stall that begins farther out than this drops a wing. */
  private static final double OUTER = 0.7;

  private final Wing wing;
  private final SectionPolar section;
  private final double reynolds;
  private final double sectionSlope;
  private final FiniteWingComparison comparison;
  private final LiftingLineSolution line;
  private final LiftingLineStall stall;
  private final List<Finding> findings;

  private FiniteWing(Wing wing, SectionPolar section, double reynolds) {
    this.wing = wing;
    this.section = section;
    this.reynolds = reynolds;
    sectionSlope = section.likelyLiftSlope(reynolds);
    double zeroLift = section.zeroLiftAngle(reynolds).likely();
    comparison = FiniteWingComparison.of(wing, sectionSlope);
    line =
        LiftingLine.of(wing.planform())
            .sectionLiftSlope(sectionSlope)
            .zeroLiftAngle(eta -> zeroLift)
            .solve();
    stall = line.firstStall(this::limit);
    List<Finding> found = new ArrayList<>(comparison.findings());
    if (stall.station() > OUTER) {
      found.add(
          Finding.of(
              Severity.CAUTION,
              "stall of the wing",
              String.format(
                  Locale.ROOT,
                  "It begins at %.0f %% of the half span, where it drops a wing. Give the tip more chord or 2° of"
                      + " washout.",
                  100.0 * stall.station()),
              section.source()));
    }
    findings = Finding.inOrderOfWeight(found);
  }

  /**
   * A wing with its section.
   *
   * @param wing the wing
   * @param section polar of its section
   * @param reynolds Reynolds number on the mean aerodynamic chord, near the stall, positive
   * @return the finite wing
   */
  public static FiniteWing of(Wing wing, SectionPolar section, double reynolds) {
    Objects.requireNonNull(wing, "wing");
    Objects.requireNonNull(section, "section");
    Door.positive(reynolds, "Reynolds number");
    return new FiniteWing(wing, section, reynolds);
  }

  /**
   * Handbook, lifting line and lattice.
   *
   * @return a row for each
   */
  public FiniteWingComparison comparison() {
    return comparison;
  }

  /**
   * The lifting line with the section's slope and zero-lift angle.
   *
   * @return its solution
   */
  public LiftingLineSolution liftingLine() {
    return line;
  }

  /**
   * Lift slope of the section.
   *
   * @return a₀ [1/rad]
   */
  public double sectionSlope() {
    return sectionSlope;
  }

  /**
   * Where the wing stalls first.
   *
   * @return station, and the lift coefficient of the wing then
   */
  public LiftingLineStall stall() {
    return stall;
  }

  /**
   * What the section can carry at a station, at the Reynolds number of its chord.
   *
   * @param station η = |2y/b|, 0 to 1
   * @return usable lift coefficient
   */
  public double limit(double station) {
    Planform p = wing.planform();
    Length chord = p.chordAt(p.span().times(0.5 * Door.within(station, 0.0, 1.0, "station")));
    return section.likelyUsableLift(reynolds * chord.dividedBy(p.meanAerodynamicChord()));
  }

  /**
   * The lift along the span.
   *
   * @param liftCoefficient lift coefficient of the wing
   * @param points how many stations from root to tip, 2 to 100,000
   * @return the stations
   */
  public List<Station> loading(double liftCoefficient, int points) {
    Door.within(points, 2, 100_000, "number of points");
    Planform p = wing.planform();
    LiftingLineLoading loading = line.at(Door.finite(liftCoefficient, "lift coefficient"));
    List<Station> stations = new ArrayList<>();
    for (int i = 0; i < points; i++) {
      // closer towards the tip, where the load falls off; the tip itself has no lift and is left to
      // the last point
      double eta = i == points - 1 ? 1.0 : Math.sin(0.5 * Math.PI * i / (points - 1));
      double local = eta == 1.0 ? 0.0 : loading.sectionLiftCoefficient(eta);
      double chord = p.chordAt(p.span().times(0.5 * eta)).dividedBy(p.meanGeometricChord());
      stations.add(new Station(eta, local, limit(eta), local * chord));
    }
    return List.copyOf(stations);
  }

  /**
   * One station of the span.
   *
   * @param place η = |2y/b|
   * @param lift lift coefficient of the section
   * @param limit what the section can carry
   * @param load c_l·c over the mean chord: lift per span
   */
  public record Station(double place, double lift, double limit, double load) {}

  /**
   * What a builder should know.
   *
   * @return findings, heaviest first
   */
  public List<Finding> findings() {
    return findings;
  }

  /**
   * A table: a line for each method, and where it stalls.
   *
   * @return several lines of text
   */
  @Override
  public String toString() {
    return comparison
        + "\n"
        + String.format(
            Locale.ROOT,
            "stalls first at %.0f %% of the half span, at C_L %.2f",
            100.0 * stall.station(),
            stall.wingLiftCoefficient());
  }
}
