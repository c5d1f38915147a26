// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import java.io.File;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.function.IntToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Quantities that do not leave a method cost no memory once the method is compiled.
 *
 * <p>Each operation is measured in a virtual machine of its own: what the compiler inlines depends on what ran before, and
 * after the other tests of this package it now and then left objects in place.
 */
class QuantityAllocationTest {
  private static final int OPERATIONS = 1_000_000;

  /** Rounds at most: the best counts, because the compiler takes its own time, and on a busy machine a long one. */
  private static final int ROUNDS = 200;

  private static Length kept = Length.ZERO;

  @ParameterizedTest
  @EnumSource(names = {"DYNAMIC_PRESSURE", "CHAIN_THROUGH_FIVE_TYPES"})
  void arithmetic_through_the_types_allocates_nothing(Operation operation) throws Exception {
    assertThat(measured(operation)).isLessThan(1.0);
  }

  @Test
  void the_measurement_sees_an_object_that_is_kept() throws Exception {
    assertThat(measured(Operation.KEPT)).isGreaterThan(8.0);
  }

  /** What is measured. */
  enum Operation {
    DYNAMIC_PRESSURE(QuantityAllocationTest::dynamicPressure),
    CHAIN_THROUGH_FIVE_TYPES(QuantityAllocationTest::rootBendingMoment),
    KEPT(QuantityAllocationTest::kept);

    private final IntToDoubleFunction operation;

    Operation(IntToDoubleFunction operation) {
      this.operation = operation;
    }
  }

  private static double measured(Operation operation) throws IOException {
    Process process = new ProcessBuilder(
        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
        "-cp",
        classPath(QuantityAllocationTest.class, Length.class, Unit.class),
        QuantityAllocationTest.class.getName(),
        operation.name())
        .redirectError(ProcessBuilder.Redirect.INHERIT)
        .start();
    return Double.parseDouble(new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip());
  }

  private static String classPath(Class<?>... types) {
    return Stream.of(types)
        .map(type -> Path.of(URI.create(type.getProtectionDomain().getCodeSource().getLocation().toString())).toString())
        .collect(Collectors.joining(File.pathSeparator));
  }

  /** Prints the bytes that an operation allocates each time. */
  public static void main(String... names) {
    System.out.println(bytesPerOperation(Operation.valueOf(names[0]).operation));
  }

  private static double dynamicPressure(int i) {
    Density density = Density.kilogramsPerCubicMetre(1.225);
    Speed speed = Speed.kilometresPerHour(20.0 + 1e-6 * i);
    double v = speed.metresPerSecond();
    return Pressure.pascals(0.5 * density.kilogramsPerCubicMetre() * v * v).pascals();
  }

  private static double rootBendingMoment(int i) {
    Length span = Length.millimetres(400.0 + 1e-6 * i);
    Area area = span.times(span).dividedBy(8.0);
    Force lift = Pressure.pascals(22.05).times(area).times(0.5);
    return lift.moment(span.times(0.2)).plus(Moment.newtonMillimetres(1.0)).newtonMetres();
  }

  private static double kept(int i) {
    kept = Length.millimetres(i);
    return kept.metres();
  }

  private static double bytesPerOperation(IntToDoubleFunction operation) {
    ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    double least = Double.POSITIVE_INFINITY;
    double sum = 0.0;
    for (int round = 0; round < ROUNDS && least >= 1.0; round++) {
      long before = threads.getCurrentThreadAllocatedBytes();
      sum += run(operation);
      long after = threads.getCurrentThreadAllocatedBytes();
      least = Math.min(least, (after - before) / (double) OPERATIONS);
    }
    if (!Double.isFinite(sum)) {
      throw new IllegalStateException("sum of the results must be finite, was " + sum);
    }
    return least;
  }

  private static double run(IntToDoubleFunction operation) {
    double sum = 0.0;
    for (int i = 0; i < OPERATIONS; i++) {
      sum += operation.applyAsDouble(i);
    }
    return sum;
  }
}
