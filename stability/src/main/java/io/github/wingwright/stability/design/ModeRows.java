// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import io.github.wingwright.stability.dynamics.Mode;
import io.github.wingwright.stability.dynamics.ModeApproximations;
import io.github.wingwright.stability.dynamics.ModeKind;
import io.github.wingwright.stability.dynamics.Modes;
import io.github.wingwright.stability.dynamics.StateMatrix;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Motions with what stands beside them: the classical short formula, and the same motion without the air carried along. */
final class ModeRows {
  private final StateMatrix longitudinal;
  private final StateMatrix lateral;
  private final List<Mode> without;
  private final double g;

  ModeRows(StateMatrix longitudinal, StateMatrix lateral, List<Mode> without, double gravity) {
    this.longitudinal = longitudinal;
    this.lateral = lateral;
    this.without = without;
    this.g = gravity;
  }

  List<FlightModes.Row> all(Modes first, Modes second) {
    return Stream.concat(first.all().stream(), second.all().stream()).map(this::row).toList();
  }

  private FlightModes.Row row(Mode mode) {
    return new FlightModes.Row(
        mode,
        approximation(mode.kind()),
        without.stream()
            .filter(m -> m.kind() == mode.kind() && m.isOscillatory() == mode.isOscillatory())
            .min(
                (a, b) ->
                    Double.compare(
                        Math.abs(a.real() - mode.real()), Math.abs(b.real() - mode.real()))));
  }

  private Optional<Mode> approximation(ModeKind kind) {
    return switch (kind) {
      case PHUGOID -> Optional.of(ModeApproximations.phugoid(longitudinal, g));
      case SHORT_PERIOD -> Optional.of(ModeApproximations.shortPeriod(longitudinal));
      case ROLL -> Optional.of(ModeApproximations.roll(lateral));
      case SPIRAL -> Optional.of(ModeApproximations.spiral(lateral, g));
      case DUTCH_ROLL -> Optional.of(ModeApproximations.dutchRoll(lateral));
      case SHORT_PERIOD_SUBSIDENCE,
          PITCH_DIVERGENCE,
          PHUGOID_SUBSIDENCE,
          SPEED_DIVERGENCE,
          THIRD_OSCILLATION,
          YAW_SUBSIDENCE,
          YAW_DIVERGENCE,
          ROLL_SPIRAL_OSCILLATION ->
          Optional.empty();
    };
  }
}
