// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.benchmarks.stability;

import static io.github.wingwright.core.quantity.Length.metres;
import static io.github.wingwright.core.quantity.Length.millimetres;

import io.github.wingwright.airfoils.ComposedSection;
import io.github.wingwright.airfoils.Naca4;
import io.github.wingwright.core.aerodynamics.EstimatedPolar;
import io.github.wingwright.core.atmosphere.Atmosphere;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.mass.Materials;
import io.github.wingwright.core.performance.Flight;
import io.github.wingwright.core.performance.GlideGoal;
import io.github.wingwright.core.performance.Hall;
import io.github.wingwright.core.performance.LaunchTrajectory;
import io.github.wingwright.core.performance.RangeMap;
import io.github.wingwright.core.performance.Throw;
import io.github.wingwright.core.performance.ThrowAngles;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.core.sizing.Considerations;
import io.github.wingwright.core.sizing.FuselageSizing;
import io.github.wingwright.core.sizing.WingSizing;
import io.github.wingwright.stability.design.Design;
import io.github.wingwright.stability.design.DesignBrief;
import io.github.wingwright.stability.design.SizingLoop;
import io.github.wingwright.stability.design.TailBrief;
import io.github.wingwright.stability.flight.PitchFlight;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** One flight, the best angle, and a map of 10,000 flights, of a glider thrown from 1.6 m, as a point and with pitch. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
@SuppressWarnings("NullAway.Init") // JMH calls setUp before anything else
public class FlightBenchmark {
  private static final double HEIGHT = 1.6;
  private static final double[] SPEEDS = RangeMap.evenly(4, 12, 100);

  private LaunchTrajectory point;
  private PitchFlight pitch;
  private double[] lifts;
  private double[] decalages;
  private double angle;

  @Setup
  public void setUp() {
    Naca4 section = Naca4.parse("4406");
    ComposedSection plate = ComposedSection.plate(0.02, 0.0);
    DesignBrief brief =
        DesignBrief.named("benchmark")
            .air(Atmosphere.standard().at(metres(100)))
            .thrown(Speed.metresPerSecond(7), metres(HEIGHT))
            .wing(
                WingSizing.forSpan(millimetres(480))
                    .aspectRatio(6.2)
                    .taperRatio(0.75)
                    .section(section)
                    .dihedral(Angle.degrees(12)))
            .wingPolar(EstimatedPolar.of(section))
            .fuselage(
                wing ->
                    FuselageSizing.of(BodyShape.capsule())
                        .considering(Considerations.lengthAtMost(millimetres(256)))
                        .diameter(millimetres(22)))
            .tails(plate, EstimatedPolar.of(plate), new TailBrief(0.52, 3.5, 0.8), new TailBrief(0.035, 1.5, 0.7))
            .material(Materials.FOAMING_PLA);
    Design design = SizingLoop.of(brief).solve();
    Hall hall = Hall.of(metres(45), metres(7));
    point = LaunchTrajectory.of(design.glide()).in(hall);
    pitch = PitchFlight.of(design).in(hall);
    lifts = RangeMap.evenly(0.25, 0.95 * design.glide().usableLift(), 100);
    double set = pitch.decalage().si();
    decalages = RangeMap.evenly(set - 0.08, set + 0.08, 100);
  }

  /** Another angle each time, so that nothing can be kept. */
  private double next() {
    angle = angle > 0.1 ? -0.1 : angle + 1e-4;
    return angle;
  }

  @Benchmark
  public double pointFlight() {
    return point.value(GlideGoal.DISTANCE, 7.0, next(), HEIGHT);
  }

  @Benchmark
  public double pitchFlight() {
    return pitch.value(GlideGoal.DISTANCE, 7.0, next(), HEIGHT);
  }

  @Benchmark
  public Flight pitchFlightWithItsTrack() {
    return pitch.thrown(new Throw(Speed.metresPerSecond(7), Angle.radians(next()), metres(HEIGHT)));
  }

  @Benchmark
  public PitchFlight anotherDecalage() {
    return pitch.withDecalage(Angle.radians(0.05 + 0.1 * next()));
  }

  @Benchmark
  public ThrowAngles bestAnglesWithPitch() {
    return pitch.bestAngles(GlideGoal.DISTANCE, Speed.metresPerSecond(7 + next()), metres(HEIGHT));
  }

  @Benchmark
  @OutputTimeUnit(TimeUnit.MILLISECONDS)
  public RangeMap pointMapOfTenThousand() {
    return point.map(GlideGoal.DISTANCE, SPEEDS, lifts, next(), HEIGHT);
  }

  @Benchmark
  @OutputTimeUnit(TimeUnit.MILLISECONDS)
  public RangeMap pitchMapOfTenThousand() {
    return pitch.map(GlideGoal.DISTANCE, SPEEDS, decalages, next(), HEIGHT);
  }
}
