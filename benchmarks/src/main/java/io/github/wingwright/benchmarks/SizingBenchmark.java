// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.benchmarks;

import static io.github.wingwright.core.sizing.Considerations.bendingStiffnessAtLeast;
import static io.github.wingwright.core.sizing.Considerations.diameterAtLeast;
import static io.github.wingwright.core.sizing.Considerations.diameterAtMost;
import static io.github.wingwright.core.sizing.Considerations.diameterNear;
import static io.github.wingwright.core.sizing.Considerations.enclosing;
import static io.github.wingwright.core.sizing.Considerations.finenessWithin;
import static io.github.wingwright.core.sizing.Considerations.lengthAtMost;
import static io.github.wingwright.core.sizing.Considerations.packingFraction;
import static io.github.wingwright.core.sizing.Considerations.tailArmAtLeast;

import io.github.wingwright.core.basis.FeasibleRange;
import io.github.wingwright.core.basis.FeasibleRegion;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.mass.Materials;
import io.github.wingwright.core.quantity.FlexuralRigidity;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Volume;
import io.github.wingwright.core.sizing.BodyShell;
import io.github.wingwright.core.sizing.FuselageSizing;
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

/** What it costs to weigh eight closed-form considerations: at one length, and over the plane of length and diameter. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class SizingBenchmark {
  private double length = 0.28;

  private final BodyShell shell = BodyShell.of(Materials.PLA, Length.millimetres(0.8));

  private final FuselageSizing eight = FuselageSizing.of(BodyShape.capsule())
      .considering(
          lengthAtMost(Length.millimetres(300)),
          finenessWithin(6, 14),
          diameterNear(2.5, Length.millimetres(4)),
          tailArmAtLeast(Length.millimetres(130), 0.4),
          bendingStiffnessAtLeast(FlexuralRigidity.newtonSquareMetres(12), shell),
          diameterAtLeast(Length.millimetres(14)),
          diameterAtMost(Length.millimetres(40)))
      .considering(enclosing(Volume.cubicCentimetres(60), packingFraction(0.6)));

  private final FuselageSizing clashing =
      eight.considering(enclosing(Volume.cubicCentimetres(400), packingFraction(0.6)));

  @Benchmark
  public double feasibleInterval() {
    return eight.feasibleDiameters(length).lower();
  }

  @Benchmark
  public FeasibleRange feasibleRange() {
    return eight.diameterRange(Length.metres(length));
  }

  @Benchmark
  public FeasibleRegion feasibleRegion() {
    return eight.region();
  }

  @Benchmark
  public FeasibleRegion emptyRegionExplained() {
    return clashing.region();
  }
}
