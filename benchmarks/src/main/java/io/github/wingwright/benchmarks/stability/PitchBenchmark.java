// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.benchmarks.stability;

import io.github.wingwright.stability.ApparentMass;
import io.github.wingwright.stability.DownwashMethod;
import io.github.wingwright.stability.FuselageMoment;
import io.github.wingwright.stability.QuickPitch;
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

/** The quick path of the pitch model: a neutral point and a trim from the dimensions of a glider, by handbook methods. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class PitchBenchmark {
  private double aspectRatio = 8;
  private double taperRatio = 0.667;
  private double areaRatio = 0.225;
  private double arm = 0.475;
  private double fineness = 16;
  private double volumeRatio = 0.09;

  @Benchmark
  public double neutralPoint() {
    double wing = QuickPitch.slope(aspectRatio, 5.5, 0.0);
    double tail = QuickPitch.slope(3.5, 6.0, 0.0);
    double body = FuselageMoment.munk(ApparentMass.munkFactor(fineness), volumeRatio, 1.0, 1.0);
    return QuickPitch.neutralPoint(wing, aspectRatio, taperRatio, 0.0, body, 0.8, areaRatio, tail, arm, -0.02);
  }

  @Benchmark
  public double neutralPointAndTrim() {
    double wing = QuickPitch.slope(aspectRatio, 5.5, 0.0);
    double tail = QuickPitch.slope(3.5, 6.0, 0.0);
    double body = FuselageMoment.munk(ApparentMass.munkFactor(fineness), volumeRatio, 1.0, 1.0);
    double neutral =
        QuickPitch.neutralPoint(wing, aspectRatio, taperRatio, 0.0, body, 0.8, areaRatio, tail, arm, -0.02);
    double downwash = DownwashMethod.HANDBOOK.gradient(wing, aspectRatio, taperRatio, 0.0, arm, -0.02);
    double centre = 0.25 + arm / QuickPitch.chordOverSpan(aspectRatio, taperRatio);
    return QuickPitch.decalage(
        0.6, neutral - 0.12, -0.08, -0.05, 0.0, 0.02, wing, body, 0.8, areaRatio, tail, downwash, centre);
  }

  @Benchmark
  public double downwashByAllMethods() {
    double sum = 0;
    for (DownwashMethod method : DownwashMethod.values()) {
      sum += method.gradient(4.7, aspectRatio, taperRatio, 0.0, arm, -0.02);
    }
    return sum;
  }
}
