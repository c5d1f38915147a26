// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.benchmarks.stability;

import io.github.wingwright.core.aerodynamics.LiftingLine;
import io.github.wingwright.stability.lattice.Coefficient;
import io.github.wingwright.stability.lattice.FactoredLattice;
import io.github.wingwright.stability.lattice.LatticeCondition;
import io.github.wingwright.stability.lattice.LatticeReference;
import io.github.wingwright.stability.lattice.LatticeSolution;
import io.github.wingwright.stability.lattice.LatticeStation;
import io.github.wingwright.stability.lattice.LatticeSurface;
import io.github.wingwright.stability.lattice.Variable;
import io.github.wingwright.stability.lattice.VortexLattice;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Lifting line with 40 terms; lattice of one surface and of three; a further condition of each. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class FiniteWingBenchmark {
  private static final LatticeReference REFERENCE = new LatticeReference(6, 1, 6, 0.3, 0);
  private static final LatticeSurface WING = LatticeSurface.trapezoid("wing", 6, 1.2, 0.8, 0.1, 0.1).panels(8, 32);
  private static final LatticeSurface TAIL =
      LatticeSurface.trapezoid("tail", 2, 0.5, 0.4, 0.1, 0).movedBy(3, 0, 0.3).panels(6, 20);
  private static final LatticeSurface FIN = LatticeSurface.central("fin", new LatticeStation(3, 0, 0.3, 0.5, 0),
      new LatticeStation(3.1, 0, 1.1, 0.4, 0)).panels(6, 16);

  private final FactoredLattice one = VortexLattice.of(REFERENCE, WING).factor();
  private final FactoredLattice three = VortexLattice.of(REFERENCE, WING, TAIL, FIN).factor();
  private double taper = 0.5;
  private double angle = 0.05;

  @Benchmark
  public double liftingLineOfFortyTerms() {
    return LiftingLine.tapered(6, 8, taper).linearTwist(-0.03).solve().liftSlope();
  }

  @Benchmark
  public double liftingLineWithRollAndStall() {
    var wing = LiftingLine.tapered(6, 8, taper).linearTwist(-0.03).solve();
    return wing.rollDamping() + wing.firstStall(eta -> 1.2).wingLiftCoefficient();
  }

  @Benchmark
  public FactoredLattice factorOneSurface() {
    return VortexLattice.of(REFERENCE, WING.twisted(0, -angle)).factor();
  }

  @Benchmark
  public FactoredLattice factorWingTailAndFin() {
    return VortexLattice.of(REFERENCE, WING.twisted(0, -angle), TAIL, FIN).factor();
  }

  @Benchmark
  public double furtherConditionOfOneSurface() {
    LatticeSolution flow = one.solve(LatticeCondition.at(angle).sideslip(0.02));
    return flow.coefficients().lift() + flow.inducedDragCoefficient();
  }

  @Benchmark
  public double furtherConditionOfWingTailAndFin() {
    LatticeSolution flow = three.solve(LatticeCondition.at(angle).sideslip(0.02));
    return flow.coefficients().lift() + flow.inducedDragCoefficient();
  }

  @Benchmark
  public double thirtyDerivatives() {
    LatticeSolution flow = three.solve(LatticeCondition.at(angle));
    double sum = 0;
    for (Coefficient c : Coefficient.values()) {
      for (Variable v : Variable.values()) {
        sum += flow.derivative(c, v);
      }
    }
    return sum;
  }
}
