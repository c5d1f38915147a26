// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils.viscous;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;

class ProspectTest {
  private static final int MOST = 100;

  /** The iteration that is given up, or {@link #MOST} if none is; transition moves all the time. */
  private static int givenUp(Prospect prospect, IntToDoubleFunction change, IntToDoubleFunction residual, double taken) {
    return givenUp(prospect, change, residual, i -> taken, 0.04);
  }

  private static int givenUp(Prospect prospect, IntToDoubleFunction change, IntToDoubleFunction residual,
      IntToDoubleFunction taken, double moved) {
    for (int i = 0; i < MOST; i++) {
      if (prospect.isHopeless(change.applyAsDouble(i), residual.applyAsDouble(i), taken.applyAsDouble(i), moved)) {
        return i;
      }
    }
    return MOST;
  }

  @Test
  void goes_on_as_long_as_the_residual_falls() {
    assertThat(givenUp(new Prospect(MOST), i -> Math.pow(0.9, i), i -> 0.4 * Math.pow(0.9, i), 1)).isEqualTo(MOST);
  }

  @Test
  void gives_up_two_states_that_alternate() {
    assertThat(givenUp(new Prospect(MOST), i -> i % 2 == 0 ? 0.16 : 0.14, i -> 0.14, 1)).isBetween(8, 12);
  }

  @Test
  void gives_up_a_round_of_twelve_states_but_not_one_of_thirteen() {
    assertThat(givenUp(new Prospect(MOST), i -> 0.1 + i % 12, i -> 0.2, 1)).isBetween(24, 30);
    assertThat(givenUp(new Prospect(MOST), i -> 0.1 + i % 13, i -> 0.2, 1)).isEqualTo(MOST);
  }

  @Test
  void gives_up_after_twenty_short_steps_far_from_a_solution() {
    assertThat(givenUp(new Prospect(MOST), i -> 2 + i, i -> 0.9, 0.1)).isEqualTo(19);
    assertThat(givenUp(new Prospect(MOST), i -> 2 + i, i -> 0.9, 0.5)).isEqualTo(MOST);
    assertThat(givenUp(new Prospect(MOST), i -> 2 + i, i -> 0.3, 0.1)).isEqualTo(MOST);
  }

  @Test
  void gives_up_after_four_tiny_steps_in_a_row_but_not_while_transition_moves() {
    assertThat(givenUp(new Prospect(MOST), i -> 2 + i, i -> 0.3, i -> 0.01, 0)).isEqualTo(3);
    assertThat(givenUp(new Prospect(MOST), i -> 2 + i, i -> 0.3, i -> i % 4 == 3 ? 1 : 0.01, 0)).isEqualTo(MOST);
    assertThat(givenUp(new Prospect(MOST), i -> 2 + i, i -> 0.3, i -> 0.01, 0.014)).isEqualTo(MOST);
  }

  @Test
  void forgets_when_a_start_begins() {
    Prospect prospect = new Prospect(MOST);
    for (int i = 0; i < 19; i++) {
      assertThat(prospect.isHopeless(2 + i, 0.9, 0.1, 0.04)).isFalse();
    }
    prospect.startAgain();
    assertThat(givenUp(prospect, i -> 2 + i, i -> 0.9, 0.1)).isEqualTo(19);
  }
}
