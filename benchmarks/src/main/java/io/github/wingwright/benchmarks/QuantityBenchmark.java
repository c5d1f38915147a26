// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.benchmarks;

import io.github.wingwright.core.atmosphere.Air;
import io.github.wingwright.core.quantity.Density;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.Pressure;
import io.github.wingwright.core.quantity.Speed;
import java.util.concurrent.TimeUnit;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Acceleration;
import javax.measure.quantity.Area;
import javax.measure.quantity.Force;
import javax.measure.quantity.Time;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/**
 * What a quantity costs: dynamic pressure, a chain of five operations, a conversion, text; with the types of the library,
 * with raw doubles, and with the reference implementation of JSR-385.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 8, time = 1)
@Fork(3)
public class QuantityBenchmark {
  private static final Unit<javax.measure.quantity.Length> FOOT = Units.METRE.multiply(3048).divide(10000);

  private double rho = 1.225;
  private double v = 6;
  private double span = 0.41;
  private double chord = 0.075;
  private double pressure = 22;
  private double mass = 0.031;
  private double feet = 1.345;

  private final Density typedRho = Density.kilogramsPerCubicMetre(1.225);
  private final Speed typedV = Speed.metresPerSecond(6);
  private final Length typedSpan = Length.metres(0.41);
  private final Length typedChord = Length.metres(0.075);
  private final Pressure typedPressure = Pressure.pascals(22);
  private final Mass typedMass = Mass.kilograms(0.031);

  private final Quantity<?> standardRho =
      Quantities.getQuantity(1.225, Units.KILOGRAM.divide(Units.METRE.pow(3)));
  private final Quantity<javax.measure.quantity.Speed> standardV = Quantities.getQuantity(6.0, Units.METRE_PER_SECOND);
  private final Quantity<javax.measure.quantity.Length> standardSpan = Quantities.getQuantity(0.41, Units.METRE);
  private final Quantity<javax.measure.quantity.Length> standardChord = Quantities.getQuantity(0.075, Units.METRE);
  private final Quantity<javax.measure.quantity.Pressure> standardPressure = Quantities.getQuantity(22.0, Units.PASCAL);
  private final Quantity<javax.measure.quantity.Mass> standardMass = Quantities.getQuantity(0.031, Units.KILOGRAM);

  private final String text = "1.345 ft";

  @Benchmark
  public double dynamicPressureRaw() {
    return 0.5 * rho * v * v;
  }

  @Benchmark
  public double dynamicPressureTyped() {
    double u = typedV.metresPerSecond();
    return Pressure.pascals(0.5 * typedRho.kilogramsPerCubicMetre() * u * u).pascals();
  }

  /** Types as inputs, the double at once as the result: as the kernels of the library are called. */
  @Benchmark
  public double dynamicPressureOfTyped() {
    return Air.dynamicPressure(typedRho.kilogramsPerCubicMetre(), typedV.metresPerSecond());
  }

  @Benchmark
  public double dynamicPressureStandard() {
    return standardRho
        .multiply(standardV)
        .multiply(standardV)
        .multiply(0.5)
        .asType(javax.measure.quantity.Pressure.class)
        .to(Units.PASCAL)
        .getValue()
        .doubleValue();
  }

  /** How far it flies in the time that its own lift would take to stop it: five operations. */
  @Benchmark
  public double chainRaw() {
    double acceleration = span * chord * pressure / mass;
    return v * (v / acceleration);
  }

  @Benchmark
  public double chainTyped() {
    return typedV
        .times(typedV.dividedBy(typedSpan.times(typedChord).times(typedPressure).dividedBy(typedMass)))
        .metres();
  }

  @Benchmark
  public double chainStandard() {
    Quantity<Area> area = standardSpan.multiply(standardChord).asType(Area.class);
    Quantity<Force> force = area.multiply(standardPressure).asType(Force.class);
    Quantity<Acceleration> acceleration = force.divide(standardMass).asType(Acceleration.class);
    Quantity<Time> time = standardV.divide(acceleration).asType(Time.class);
    return standardV
        .multiply(time)
        .asType(javax.measure.quantity.Length.class)
        .to(Units.METRE)
        .getValue()
        .doubleValue();
  }

  @Benchmark
  public double feetToMetresRaw() {
    return feet * 0.3048;
  }

  @Benchmark
  public double feetToMetresTyped() {
    return Length.feet(feet).metres();
  }

  @Benchmark
  public double feetToMetresStandard() {
    return Quantities.getQuantity(feet, FOOT).to(Units.METRE).getValue().doubleValue();
  }

  @Benchmark
  public double parseRaw() {
    return Double.parseDouble("1.345") * 0.3048;
  }

  @Benchmark
  public double parseTyped() {
    return Length.parse(text).metres();
  }

  @Benchmark
  public double parseStandard() {
    return Quantities.getQuantity("1.345 m").getValue().doubleValue();
  }

  @Benchmark
  public String formatRaw() {
    return Double.toString(span);
  }

  @Benchmark
  public String formatTyped() {
    return typedSpan.toString();
  }

  @Benchmark
  public String formatStandard() {
    return standardSpan.toString();
  }
}
