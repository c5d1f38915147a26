// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class TogetherTest {
  @Test
  void answers_stand_in_the_order_of_the_works() {
    List<Supplier<Integer>> works = new ArrayList<>();
    IntStream.range(0, 200).forEach(i -> works.add(() -> i * i));
    assertThat(Together.all(works)).isEqualTo(IntStream.range(0, 200).mapToObj(i -> i * i).toList());
  }

  @Test
  void of_several_failures_the_first_in_order_is_thrown_itself() {
    IllegalStateException first = new IllegalStateException("first");
    List<Supplier<String>> works = List.of(() -> "fine", () -> {
      throw first;
    }, () -> {
      throw new IllegalArgumentException("second");
    });
    assertThatThrownBy(() -> Together.all(works)).isSameAs(first);
  }
}
