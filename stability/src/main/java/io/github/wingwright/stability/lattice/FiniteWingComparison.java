// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.lattice;

import io.github.wingwright.core.aerodynamics.LiftSlope;
import io.github.wingwright.core.aerodynamics.LiftingLine;
import io.github.wingwright.core.aerodynamics.LiftingLineSolution;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * What handbook, lifting line and lattice say about the same wing, beside each other.
 *
 * <p>They agree where all three hold: unswept, aspect ratio above about 6. The handbook knows slope only; the lifting line
 * loading and drag, without sweep; the lattice sweep, low aspect ratio and where the lift acts. A difference of more than a
 * few per cent says which of them is out of its range.
 *
 * @param methods one row per method
 * @param findings where a method leaves its range
 */
public record FiniteWingComparison(List<Row> methods, List<Finding> findings) {
  /**
   * One method's answers; what it does not know is empty.
   *
   * @param method name of the method
   * @param liftSlope C_Lα of the wing alone [1/rad]
   * @param inducedDragFactor δ at lift coefficient 0.5, twist included [-]
   * @param neutralPoint distance of the neutral point behind the leading edge of the mean aerodynamic chord over that
   *     chord [-]
   * @param rollDamping C_lp [-]
   */
  public record Row(String method, double liftSlope, OptionalDouble inducedDragFactor, OptionalDouble neutralPoint,
      OptionalDouble rollDamping) {
    @Override
    public String toString() {
      return String.format(Locale.ROOT, "%-13s slope %.3f, δ %s, neutral point %s, C_lp %s", method, liftSlope,
          text(inducedDragFactor, "%.4f"), text(neutralPoint, "%.4f"), text(rollDamping, "%.3f"));
    }

    private static String text(OptionalDouble value, String format) {
      return value.isPresent() ? String.format(Locale.ROOT, format, value.getAsDouble()) : "–";
    }
  }

  /** Lift coefficient at which induced drag is compared. */
  private static final double LIFT = 0.5;

  public FiniteWingComparison {
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
   * @param sectionSlope section lift slope a₀ [1/rad], for handbook and lifting line; the lattice has 2π by nature
   */
  public static FiniteWingComparison of(Wing wing, double sectionSlope) {
    if (!(sectionSlope > 0) || sectionSlope == Double.POSITIVE_INFINITY) {
      throw new IllegalArgumentException(
          "section lift slope must be positive, was " + sectionSlope + " per rad");
    }
    Planform planform = wing.planform();
    double aspectRatio = planform.aspectRatio();
    List<Row> rows = new ArrayList<>();
    rows.add(new Row("handbook", LiftSlope.handbook(aspectRatio, 1, sectionSlope / (2 * Math.PI),
        planform.sweepAt(0.5).radians()), OptionalDouble.empty(), OptionalDouble.empty(),
        OptionalDouble.empty()));
    LiftingLineSolution line = LiftingLine.of(planform).sectionLiftSlope(sectionSlope).solve();
    rows.add(new Row("lifting line", line.liftSlope(),
        OptionalDouble.of(line.at(LIFT).inducedDragFactor()), OptionalDouble.empty(),
        OptionalDouble.of(line.rollDamping())));
    LatticeReference reference = LatticeReference.of(planform, wing.quarterChordX(), wing.placement().z());
    FactoredLattice lattice = VortexLattice.of(reference, LatticeSurface.of("wing", wing)).factor();
    double slope = lattice.liftSlope();
    double zero = lattice.solve(LatticeCondition.at(0)).coefficients().lift();
    LatticeSolution lifting = lattice.solve(LatticeCondition.at((LIFT - zero) / slope));
    double lift = lifting.coefficients().lift();
    Length front = wing.meanAerodynamicChordX();
    rows.add(new Row("lattice", slope,
        OptionalDouble.of(lifting.inducedDragCoefficient() * Math.PI * aspectRatio / (lift * lift) - 1),
        OptionalDouble.of((lattice.neutralPoint() - front.metres()) / reference.chord()),
        OptionalDouble.of(lifting.derivative(Coefficient.ROLLING_MOMENT, Variable.ROLL_RATE))));
    List<Finding> findings = new ArrayList<>(line.findings());
    findings.addAll(LiftSlope.HANDBOOK.outsideDomain(aspectRatio, 1, sectionSlope / (2 * Math.PI),
        planform.sweepAt(0.5).radians()));
    findings.addAll(lifting.findings());
    return new FiniteWingComparison(rows, Finding.inOrderOfWeight(findings));
  }

  @Override
  public String toString() {
    return methods.stream().map(Row::toString).collect(Collectors.joining("\n"));
  }
}
