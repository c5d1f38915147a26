// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.benchmarks.stability;

import io.github.wingwright.stability.derivatives.LateralEstimate;
import io.github.wingwright.stability.dynamics.BodyInertia;
import io.github.wingwright.stability.dynamics.LateralDerivatives;
import io.github.wingwright.stability.dynamics.LateralForces;
import io.github.wingwright.stability.dynamics.LongitudinalDerivatives;
import io.github.wingwright.stability.dynamics.LongitudinalForces;
import io.github.wingwright.stability.dynamics.Modes;
import io.github.wingwright.stability.dynamics.SteadyFlight;
import io.github.wingwright.stability.dynamics.TimeResponse;
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

/** From nondimensional derivatives to named motions; the lateral handbook estimate; a time response. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class MotionBenchmark {
  private final SteadyFlight glide = new SteadyFlight(6, 1.2, -0.1, 0.0213, 0.0545, 0.4, 9.81);
  private final BodyInertia body = new BodyInertia(0.025, 1.2e-4, 1.0e-4, 2.1e-4, 0);
  private final LongitudinalDerivatives along =
      LongitudinalDerivatives.ofLiftAndDrag(0.53, 0.06, 0, 4.3, 0.2, -0.6, 4, -9, 1.5, -3.5);
  private final LateralDerivatives across =
      new LateralDerivatives(-0.4, -0.1, 0.08, 0, -0.45, -0.03, 0.1, 0.13, -0.1);

  @Benchmark
  public Modes longitudinalModes() {
    return LongitudinalForces.of(glide, body.mass(), along).stateMatrix(glide, body).modes();
  }

  @Benchmark
  public Modes lateralModes() {
    return LateralForces.of(glide, across).stateMatrix(glide, body).modes();
  }

  @Benchmark
  public TimeResponse responseOfTwoHundredSteps() {
    return LongitudinalForces.of(glide, body.mass(), along).stateMatrix(glide, body)
        .response(new double[] {0, 0.5, 0, 0}, 5, 200);
  }

  @Benchmark
  public LateralEstimate.Result lateralEstimate() {
    return LateralEstimate.of(new LateralEstimate.WingShape(4.5, 6.28, 7, 0.6, 0.1, 0.05, 0.5, 0.03, 0.04))
        .fin(new LateralEstimate.FinShape(2.8, 0.08, 0.45, 0.06, 0.9))
        .body(new LateralEstimate.Body(0.01, 0.9, 0.03, 0.06, 0.06)).solve();
  }
}
