// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.wingwright.testing.NullDoors;
import org.junit.jupiter.api.Test;

class NullIsRefusedTest {
  @Test
  void nothing_is_refused_by_name_in_pictures_and_reports() {
    NullDoors doors = NullDoors.of("io.github.wingwright.core.drawing", "io.github.wingwright.core.report");
    assertThat(doors.tried()).isGreaterThan(10);
    assertThat(doors.open()).isEmpty();
  }

  /**
   * Where a message is the virtual machine's own it names the variable, which is enough for a length or a speed. Left out is
   * {@code Door}, whose names are those of the library's own arguments.
   */
  @Test
  void nothing_is_taken_quietly_anywhere_in_core() {
    NullDoors doors = NullDoors.of("io.github.wingwright.core");
    assertThat(doors.tried()).isGreaterThan(300);
    assertThat(doors.open()).filteredOn(one -> !one.startsWith("core.quantity.Door.")).isEmpty();
  }
}
