// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;

/** Quantities that do not leave a method cost no memory once the method is compiled. */
class QuantityAllocationTest {
  private static final int OPERATIONS = 1_000_000;

  /** Rounds until the compiler has settled; the best counts, because compiling takes its own time. */
  private static final int ROUNDS = 40;

  @Test
  void dynamic_pressure_through_the_types_allocates_nothing() {
    assertThat(bytesPerOperation(QuantityAllocationTest::dynamicPressure)).isLessThan(1.0);
  }

  @Test
  void a_chain_through_five_types_allocates_nothing() {
    assertThat(bytesPerOperation(QuantityAllocationTest::rootBendingMoment)).isLessThan(1.0);
  }

  @Test
  void the_measurement_sees_an_object_that_is_kept() {
    Length[] kept = new Length[1];
    assertThat(
            bytesPerOperation(
                i -> {
                  kept[0] = Length.millimetres(i);
                  return kept[0].metres();
                }))
        .isGreaterThan(8.0);
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

  private static double bytesPerOperation(IntToDoubleFunction operation) {
    ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    double least = Double.POSITIVE_INFINITY;
    double sum = 0.0;
    for (int round = 0; round < ROUNDS; round++) {
      long before = threads.getCurrentThreadAllocatedBytes();
      sum += run(operation);
      long after = threads.getCurrentThreadAllocatedBytes();
      least = Math.min(least, (after - before) / (double) OPERATIONS);
    }
    assertThat(sum).isFinite();
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
