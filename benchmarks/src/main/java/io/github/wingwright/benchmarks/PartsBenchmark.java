// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.benchmarks;

import io.github.wingwright.airfoils.Naca4;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.Panel;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.manufacture.BodySolid;
import io.github.wingwright.core.manufacture.Bore;
import io.github.wingwright.core.manufacture.Part;
import io.github.wingwright.core.manufacture.PlateSolid;
import io.github.wingwright.core.manufacture.ShimSolid;
import io.github.wingwright.core.manufacture.TailSlots;
import io.github.wingwright.core.manufacture.ThreeMfFile;
import io.github.wingwright.core.manufacture.TriangleMesh;
import io.github.wingwright.core.manufacture.WingSeat;
import io.github.wingwright.core.manufacture.WingSolid;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import java.util.List;
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

/** Meshes of a whole glider of the size of the hall glider at 0.05 mm, checked, and the package of all of them. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class PartsBenchmark {
  private static final Length TOLERANCE = mm(0.05);

  private final WingSolid half =
      WingSolid.half(Planform.tapered(mm(480), mm(88.5), mm(66.5)).withDihedral(Angle.degrees(12)), Naca4.parse("4406"))
          .trailingEdgeAtLeast(mm(0.42))
          .with(Bore.acrossRoot(0.3, mm(2.2), mm(6)));

  private final BodySolid body =
      BodySolid.of(new Fuselage(BodyShape.capsule(), mm(256), mm(22)))
          .with(new WingSeat(mm(63), mm(161), mm(8), Angle.degrees(12)))
          .with(new TailSlots(mm(188), mm(184), Length.ZERO, mm(1.04)))
          .markedAt(mm(89));

  private final PlateSolid tailplane = PlateSolid.of(Planform.tapered(mm(214.5), mm(68), mm(54.5)), mm(0.84));

  private final PlateSolid fin =
      PlateSolid.of(
          Planform.fin(mm(72), List.of(new Panel(mm(91.5), mm(49.5), Angle.degrees(3.5), Angle.ZERO, Angle.ZERO))), mm(0.84));

  private final ShimSolid shim = ShimSolid.of(mm(88.5), mm(11), mm(0.42), Angle.degrees(4.5), Angle.degrees(12));

  private final ThreeMfFile file = ThreeMfFile.titled("glider").with(parts());

  private static Length mm(double value) {
    return Length.millimetres(value);
  }

  private List<Part> parts() {
    TriangleMesh wing = half.mesh(TOLERANCE);
    return List.of(
        Part.of("starboard", wing),
        Part.of("port", wing.mirrored()),
        Part.of("body", body.mesh(TOLERANCE)),
        Part.of("tailplane", tailplane.mesh(TOLERANCE)),
        Part.of("fin", fin.mesh(TOLERANCE)),
        Part.of("shim", shim.mesh(TOLERANCE)));
  }

  @Benchmark
  public List<Part> meshesOfTheGlider() {
    return parts();
  }

  @Benchmark
  public TriangleMesh bodyWithSeatSlotsAndMark() {
    return body.mesh(TOLERANCE);
  }

  @Benchmark
  public TriangleMesh halfWing() {
    return half.mesh(TOLERANCE);
  }

  @Benchmark
  public byte[] packageOfTheGlider() {
    return file.bytes();
  }
}
