// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import org.junit.jupiter.api.Test;

class ConvergenceExceptionTest {
  @Test
  void the_message_is_made_from_what_it_carries() {
    ConvergenceException failure = ConvergenceException.inBracket("no root within tolerance", 100, 0.02, 1, 1.5);
    assertThat(failure)
        .hasMessage("no root within tolerance after 100 evaluations: residual 0.02, bracket 1.0 to 1.5");
    assertThat(failure.isBracketed()).isTrue();
    assertThat(failure.lastValues()).containsExactly(1, 1.5);
    assertThat(ConvergenceException.atValues("masses did not settle", 50, 1e-3, 0.02, 0.1))
        .hasMessage("masses did not settle after 50 iterations: residual 0.001, last values [0.02, 0.1]");
  }

  @Test
  void what_it_carries_cannot_be_changed_from_outside() {
    double[] values = {1, 2};
    ConvergenceException failure = ConvergenceException.atValues("not settled", 3, 0.1, values);
    values[0] = 9;
    failure.lastValues()[1] = 9;
    assertThat(failure.lastValues()).containsExactly(1, 2);
  }

  @Test
  void it_survives_serialisation() throws IOException, ClassNotFoundException {
    ConvergenceException failure = ConvergenceException.atValues("not settled", 3, 0.1, 4, 5);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(failure);
    }
    try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      ConvergenceException copy = (ConvergenceException) in.readObject();
      assertThat(copy).hasMessage(failure.getMessage());
      assertThat(copy.iterations()).isEqualTo(3);
      assertThat(copy.residual()).isEqualTo(0.1);
      assertThat(copy.isBracketed()).isFalse();
      assertThat(copy.lastValues()).containsExactly(4, 5);
    }
  }
}
