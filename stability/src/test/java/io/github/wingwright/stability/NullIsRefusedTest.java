// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.wingwright.testing.NullDoors;
import org.junit.jupiter.api.Test;

class NullIsRefusedTest {
  @Test
  void nothing_is_refused_by_name_where_it_is_given() {
    NullDoors doors = NullDoors.of("io.github.wingwright.stability");
    assertThat(doors.tried()).isGreaterThan(100);
    assertThat(doors.open()).isEmpty();
  }
}
