// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.concurrent.atomic.AtomicIntegerArray;
import org.junit.jupiter.api.Test;

class ParallelTest {
  @Test
  void each_work_is_done_once() {
    AtomicIntegerArray done = new AtomicIntegerArray(1000);
    Parallel.each(1000, done::incrementAndGet);
    for (int i = 0; i < 1000; i++) {
      assertThat(done.get(i)).isEqualTo(1);
    }
    Parallel.each(0, i -> done.incrementAndGet(5000));
  }

  /** Through a stream, works of other threads come back as copies: "java.lang.IllegalArgumentException: work 3" or no words at all. */
  @Test
  void of_several_failures_the_first_in_order_is_thrown_in_its_own_words() {
    for (int again = 0; again < 100; again++) {
      assertThatThrownBy(() -> Parallel.each(64, ParallelTest::failFrom3))
          .isInstanceOf(NullPointerException.class)
          .hasMessage("work 3")
          .hasNoCause();
    }
  }

  private static void failFrom3(int work) {
    if (work >= 3) {
      throw new NullPointerException("work " + work);
    }
  }

  @Test
  void nonsense_is_refused_by_name() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Parallel.each(-1, i -> { }))
        .withMessage("count must not be negative, was -1");
  }
}
