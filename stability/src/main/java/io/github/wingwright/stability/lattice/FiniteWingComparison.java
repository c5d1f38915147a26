// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.lattice;

import io.github.wingwright.core.aerodynamics.LiftSlope;
import io.github.wingwright.core.aerodynamics.LiftingLine;
import io.github.wingwright.core.aerodynamics.LiftingLineSolution;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * What handbook, lifting line and lattice say about the same wing, beside each other, and what differs between them.
 *
 * <p>Three things make two methods disagree, and only the first is a difference of method:
 * <ul>
 * <li>A lifting line puts the whole chord on one line. A lattice has a chord, lifts less at the tips, and so gives a lower
 * slope and a lower δ; for straight wings the slopes differ by at most half of 1/A, {@link #AGREEMENT}.
 * <li>The section's own lift slope: 2π in a lattice left to itself, less at small Reynolds numbers. Here every method has
 * the same one.
 * <li>Dihedral. Handbook and lifting line are flat. δ and slope are referred to the projected span and area, and a wing bent
 * up drags a longer wake through the same projected span: its δ is lower, and may be negative, without any error. So
 * the lattice has a row without dihedral, to compare, and one as built.
 * </ul>
 *
 * <p>Where the lattice still differs from the lifting line by more than the bound, the wing is swept or its aspect ratio too
 * low for a line: trust the lattice.
 *
 * @param methods one row per method
 * @param findings where a method leaves its range, and why rows differ
 */
public record FiniteWingComparison(List<Row> methods, List<Finding> findings) {
  /** By how much slopes of lattice and lifting line of a straight wing differ at most, as a part of them, times A. */
  public static final double AGREEMENT = 0.5;

  /** Name of the row to hold against the lifting line, where the wing has dihedral. */
  public static final String FLAT_LATTICE = "flat lattice";

  /** Name of the row of the wing as it is built; of a wing without dihedral it is the only one. */
  public static final String LATTICE = "lattice";

  /** Lift coefficient at which induced drag is compared. */
  private static final double LIFT = 0.5;

  private static final double FLAT = 1e-4;
  private static final Source OWN = Source.library("lattice and lifting line of the same wing");

  /**
   * One method's answers; what it does not know is empty.
   *
   * @param method name of the method
   * @param liftSlope C_Lα of the wing alone, on its projected area [1/rad]
   * @param inducedDragFactor δ at lift coefficient 0.5, on the projected span, twist included [-]
   * @param neutralPoint distance of the neutral point behind the leading edge of the mean aerodynamic chord over that
   *     chord [-]
   * @param rollDamping C_lp [-]
   * @param assumes what the row takes for granted, such as {@code "section slope 5.20 per rad, no dihedral"}
   */
  public record Row(String method, double liftSlope, OptionalDouble inducedDragFactor, OptionalDouble neutralPoint,
      OptionalDouble rollDamping, String assumes) {
    public Row {
      Objects.requireNonNull(method, "method");
      Objects.requireNonNull(inducedDragFactor, "inducedDragFactor");
      Objects.requireNonNull(neutralPoint, "neutralPoint");
      Objects.requireNonNull(rollDamping, "rollDamping");
      Objects.requireNonNull(assumes, "assumes");
    }

    @Override
    public String toString() {
      return String.format(Locale.ROOT, "%-13s slope %.3f, δ %s, neutral point %s, C_lp %s", method, liftSlope,
          text(inducedDragFactor, "%.4f"), text(neutralPoint, "%.4f"), text(rollDamping, "%.3f"));
    }

    private static String text(OptionalDouble value, String format) {
      return value.isPresent() ? String.format(Locale.ROOT, format, value.getAsDouble()) : "–";
    }
  }

  public FiniteWingComparison {
    Objects.requireNonNull(methods, "methods");
    Objects.requireNonNull(findings, "findings");
    methods = List.copyOf(methods);
    findings = List.copyOf(findings);
  }

  /**
   * Compares the methods on a wing whose sections have the ideal lift slope.
   *
   * @param wing the wing; its mean line is the lattice's, its washout both the line's and the lattice's
   */
  public static FiniteWingComparison of(Wing wing) {
    return of(wing, 2 * Math.PI);
  }

  /**
   * Compares the methods on a wing.
   *
   * @param wing the wing; its mean line is the lattice's, its washout both the line's and the lattice's
   * @param sectionSlope section lift slope a₀ of all methods [1/rad], positive and at most 8
   */
  public static FiniteWingComparison of(Wing wing, double sectionSlope) {
    Objects.requireNonNull(wing, "wing");
    if (!(sectionSlope > 0) || sectionSlope > 8) {
      throw new IllegalArgumentException(
          "section lift slope must lie within 0 and 8 per rad, was " + sectionSlope + " per rad");
    }
    Planform planform = wing.planform();
    double aspectRatio = planform.aspectRatio();
    double halfChordSweep = planform.sweepAt(0.5).radians();
    double dihedral = planform.equivalentDihedral().radians();
    boolean flat = planform.panels().stream().allMatch(p -> Math.abs(p.dihedral().si()) < FLAT);
    String sections = String.format(Locale.ROOT, "section slope %.2f per rad", sectionSlope);
    List<Row> rows = new ArrayList<>();
    rows.add(new Row("handbook", LiftSlope.handbook(aspectRatio, 1, sectionSlope / (2 * Math.PI), halfChordSweep),
        OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), sections + ", no dihedral, no twist"));
    LiftingLineSolution line = LiftingLine.of(planform).sectionLiftSlope(sectionSlope).solve();
    rows.add(new Row("lifting line", line.liftSlope(),
        OptionalDouble.of(line.at(LIFT).inducedDragFactor()), OptionalDouble.empty(),
        OptionalDouble.of(line.rollDamping()), sections + ", no dihedral, no sweep"));
    List<Finding> findings = new ArrayList<>(line.findings());
    findings.addAll(
        LiftSlope.HANDBOOK.outsideDomain(aspectRatio, 1, sectionSlope / (2 * Math.PI), halfChordSweep));
    Wing level = new Wing(planform.withDihedral(Angle.ZERO), wing.section(), wing.placement(), wing.incidence());
    Row comparable = lattice(flat ? LATTICE : FLAT_LATTICE, level, sectionSlope, sections + ", no dihedral", findings);
    rows.add(comparable);
    if (!flat) {
      Row built = lattice(LATTICE, wing, sectionSlope,
          String.format(Locale.ROOT, "%s, %.1f° of dihedral", sections, Math.toDegrees(dihedral)), findings);
      rows.add(built);
      findings.add(Finding.of(Severity.NOTE, "induced drag of a wing with dihedral", String.format(Locale.ROOT,
          "δ is on the projected span: the dihedral of %.1f° changes it from %.3f to %.3f. Hold the row without dihedral"
              + " against the lifting line.", Math.toDegrees(dihedral),
          comparable.inducedDragFactor().orElse(0), built.inducedDragFactor().orElse(0)), OWN));
    }
    double apart = Math.abs(comparable.liftSlope() / line.liftSlope() - 1);
    if (apart > AGREEMENT / aspectRatio) {
      findings.add(Finding.of(Severity.NOTE, "lift slope by two methods", String.format(Locale.ROOT,
          "Lattice and lifting line differ by %.0f %%, more than straight wings of this aspect ratio do (%.0f %%):"
              + " sweep or a low aspect ratio. Use the lattice.", 100 * apart, 100 * AGREEMENT / aspectRatio), OWN));
    }
    return new FiniteWingComparison(rows, Finding.inOrderOfWeight(findings));
  }

  private static Row lattice(String name, Wing wing, double sectionSlope, String assumes, List<Finding> findings) {
    LatticeReference reference = LatticeReference.of(wing.planform(), wing.quarterChordX(), wing.placement().z());
    LatticeSurface surface = LatticeSurface.of("wing", wing).panels(4, 32).sectionLiftSlope(sectionSlope);
    FactoredLattice lattice = VortexLattice.of(reference, surface).factor();
    double slope = lattice.liftSlope();
    double zero = lattice.solve(LatticeCondition.at(0)).coefficients().lift();
    LatticeSolution lifting = lattice.solve(LatticeCondition.at((LIFT - zero) / slope));
    findings.addAll(lifting.findings());
    double lift = lifting.coefficients().lift();
    Length front = wing.meanAerodynamicChordX();
    double aspectRatio = wing.planform().aspectRatio();
    return new Row(name, slope,
        OptionalDouble.of(lifting.inducedDragCoefficient() * Math.PI * aspectRatio / (lift * lift) - 1),
        OptionalDouble.of((lattice.neutralPoint() - front.metres()) / reference.chord()),
        OptionalDouble.of(lifting.derivative(Coefficient.ROLLING_MOMENT, Variable.ROLL_RATE)), assumes);
  }

  @Override
  public String toString() {
    return methods.stream().map(Row::toString).collect(Collectors.joining("\n"));
  }
}
