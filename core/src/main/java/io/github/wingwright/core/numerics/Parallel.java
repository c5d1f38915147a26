// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.numerics;

import java.util.Objects;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Works that need nothing of each other, on all cores. A failure is thrown as the work threw it: a pool of threads throws a copy
 * of it, whose message is changed or lost, and of several the first by the clock.
 */
public final class Parallel {
  private Parallel() {}

  /**
   * Does all works; of those that fail, the first in order is thrown when all have ended.
   *
   * @param count how many, not negative
   * @param work does the work of a number, from 0 to count − 1; called from several threads
   */
  public static void each(int count, IntConsumer work) {
    Objects.requireNonNull(work, "work");
    if (count < 0) {
      throw new IllegalArgumentException("count must not be negative, was " + count);
    }
    @Nullable RuntimeException[] failures = new RuntimeException[count];
    IntStream.range(0, count)
        .parallel()
        .forEach(
            i -> {
              try {
                work.accept(i);
              } catch (RuntimeException e) {
                failures[i] = e;
              }
            });
    for (RuntimeException failure : failures) {
      if (failure != null) {
        throw failure;
      }
    }
  }
}
