// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ForkJoinTask;
import java.util.concurrent.RecursiveAction;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Works that need nothing of each other, done at the same time. What comes out is the same on any number of cores: each
 * answer has its place, and of several failures the first in order is thrown.
 */
final class Together {
  private Together() {}

  /** The answers in the order of the works. */
  static <T> List<T> all(List<? extends Supplier<? extends T>> works) {
    List<Work<T>> tasks = new ArrayList<>();
    for (Supplier<? extends T> work : works) {
      tasks.add(new Work<>(work));
    }
    ForkJoinTask.invokeAll(tasks);
    List<T> answers = new ArrayList<>();
    for (Work<T> task : tasks) {
      answers.add(task.answer());
    }
    return answers;
  }

  /** Keeps its failure to itself: the pool would throw a copy of it, and of whichever work failed first by the clock. */
  private static final class Work<T> extends RecursiveAction {
    private static final long serialVersionUID = 1L;

    private final transient Supplier<? extends T> work;
    private transient @Nullable T answer;
    private transient @Nullable RuntimeException failure;

    Work(Supplier<? extends T> work) {
      this.work = work;
    }

    @Override
    protected void compute() {
      try {
        answer = work.get();
      } catch (RuntimeException e) {
        failure = e;
      }
    }

    T answer() {
      if (failure != null) {
        throw failure;
      }
      if (answer == null) {
        throw new IllegalStateException("a work must have an answer");
      }
      return answer;
    }
  }
}
