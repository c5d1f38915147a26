// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.benchmarks;

import io.github.wingwright.core.numerics.Minimum;
import io.github.wingwright.core.numerics.Quadrature;
import io.github.wingwright.core.numerics.Roots;
import io.github.wingwright.core.numerics.Tolerance;
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

/** What one call of a numerical tool costs on a cheap function: the tool's own overhead. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class NumericsBenchmark {
  private static final Tolerance TOLERANCE = Tolerance.relative(1e-12);

  private double two = 2;

  @Benchmark
  public double rootOfParabola() {
    return Roots.find(x -> x * x - two, 1, 2, TOLERANCE);
  }

  @Benchmark
  public double minimumOfParabola() {
    return Minimum.within(x -> (x - two) * (x - two), 0, 10, TOLERANCE).argument();
  }

  @Benchmark
  public double integralToTolerance() {
    return Quadrature.integrate(x -> x * x * two, 0, 3, TOLERANCE).value();
  }

  @Benchmark
  public double integralOnOnePanel() {
    return Quadrature.onPanels(x -> x * x * two, 0, 3, 1);
  }
}
