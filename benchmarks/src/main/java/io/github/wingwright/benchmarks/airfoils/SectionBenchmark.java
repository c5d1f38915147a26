// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.benchmarks.airfoils;

import io.github.wingwright.airfoils.Naca4;
import io.github.wingwright.airfoils.TrailingEdge;
import io.github.wingwright.airfoils.potential.PanelMethod;
import io.github.wingwright.airfoils.viscous.ViscousMethod;
import io.github.wingwright.airfoils.viscous.ViscousPoint;
import io.github.wingwright.core.quantity.Angle;
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

/**
 * Sections. Goals: a contour of 200 points within 1.1 times a loop written by hand; the first angle at 200 panels under
 * 5 ms, each further one under 5 µs for lift and under 20 µs with pressures; a polar of 21 points under 30 ms.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class SectionBenchmark {
  private final Naca4 section = Naca4.parse("2412").withTrailingEdge(TrailingEdge.CLOSED);
  private final double[] x = new double[200];
  private final double[] y = new double[200];
  private final PanelMethod flow = PanelMethod.of(section, 200);
  private final ViscousMethod layers = ViscousMethod.of(section);
  private final double[] pressure = new double[201];
  private double angle = 0.07;

  @Benchmark
  public double[] contour() {
    section.outline(x, y);
    return y;
  }

  /** The loop that somebody in a hurry writes: cosine spacing, each surface on its own. */
  @Benchmark
  public double[] contourByHand() {
    double m = 0.02;
    double p = 0.4;
    double t = 0.12;
    for (int i = 0; i < 100; i++) {
      double u = 0.5 * (1 + Math.cos(2 * Math.PI * i / 199));
      double yt = 5 * t * (0.2969 * Math.sqrt(u) - 0.1260 * u - 0.3516 * u * u + 0.2843 * u * u * u
          - 0.1036 * u * u * u * u);
      double yc = u < p ? m / (p * p) * (2 * p * u - u * u) : m / ((1 - p) * (1 - p)) * (1 - 2 * p + 2 * p * u - u * u);
      double slope = u < p ? 2 * m / (p * p) * (p - u) : 2 * m / ((1 - p) * (1 - p)) * (p - u);
      double cos = 1 / Math.sqrt(1 + slope * slope);
      double sin = slope * cos;
      x[i] = u - yt * sin;
      y[i] = yc + yt * cos;
      x[199 - i] = u + yt * sin;
      y[199 - i] = yc - yt * cos;
    }
    return y;
  }

  @Benchmark
  public double firstAngle() {
    return PanelMethod.of(section, 200).liftCoefficient(angle);
  }

  @Benchmark
  public double furtherAngleLift() {
    angle += 1e-9;
    return flow.liftCoefficient(angle);
  }

  @Benchmark
  public double[] furtherAnglePressures() {
    angle += 1e-9;
    flow.pressures(angle, pressure);
    return pressure;
  }

  @Benchmark
  public List<ViscousPoint> polarOf21Points() {
    return layers.polar(1e5, Angle.degrees(-2), Angle.degrees(8), Angle.degrees(0.5));
  }
}
