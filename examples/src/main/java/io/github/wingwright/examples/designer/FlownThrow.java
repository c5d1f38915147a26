// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import io.github.wingwright.core.performance.Flight;
import io.github.wingwright.core.performance.FlightModel;
import io.github.wingwright.core.performance.GlideGoal;
import io.github.wingwright.core.performance.Hall;
import io.github.wingwright.core.performance.LaunchTrajectory;
import io.github.wingwright.core.performance.Throw;
import io.github.wingwright.core.performance.ThrowAngles;
import io.github.wingwright.core.performance.ThrowCheck;
import io.github.wingwright.stability.design.Design;
import io.github.wingwright.stability.flight.PitchFlight;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The throw of a brief, flown with a design: with pitch if its tail trims it, else as a point. Sheet, report and the price of a
 * body tell of the same one.
 */
final class FlownThrow {
  /** A flight that is longer than this is mostly steady glide [s]. */
  private static final double LONG = 20.0;

  private final Design design;
  private final Hall hall;
  private final Throw level;
  private final Optional<PitchFlight> pitch;
  private final String withoutPitch;
  private final FlightModel model;
  private final Flight flight;
  private @Nullable ThrowAngles found;

  FlownThrow(Design design, Hall hall) {
    this.design = design;
    this.hall = hall;
    level = design.launch();
    Optional<PitchFlight> trimmed = Optional.empty();
    String why = "";
    try {
      trimmed = Optional.of(PitchFlight.of(design).in(hall));
    } catch (IllegalStateException none) {
      why = String.valueOf(none.getMessage());
    }
    pitch = trimmed;
    withoutPitch = why;
    model = trimmed.isPresent() ? trimmed.get() : asPoint();
    flight = model.thrown(level);
  }

  LaunchTrajectory asPoint() {
    return LaunchTrajectory.of(design.glide()).in(hall);
  }

  Hall hall() {
    return hall;
  }

  Throw level() {
    return level;
  }

  /** The flight with pitch; empty if the tail cannot trim it. */
  Optional<PitchFlight> pitch() {
    return pitch;
  }

  /** Why it is not flown with pitch. */
  String withoutPitch() {
    return withoutPitch;
  }

  FlightModel model() {
    return model;
  }

  /** Thrown level. */
  Flight flight() {
    return flight;
  }

  /** Whether it flies so long that the throw matters little. */
  boolean lasts() {
    return flight.time().si() > LONG;
  }

  boolean flies() {
    return design.throwCheck().verdict() != ThrowCheck.Verdict.DOES_NOT_FLY;
  }

  /** The best angles, looked for once. */
  synchronized ThrowAngles angles() {
    if (found == null) {
      found = model.bestAngles(goal(), level.speed(), level.height());
    }
    return found;
  }

  /** Distance [m] or time [s] of the throw that the sheet tells of: level, or at the best angle for a hand. */
  double value(boolean bestAngle) {
    return value(goal(), bestAngle);
  }

  /** The same for what another brief counts. */
  double value(GlideGoal counts, boolean bestAngle) {
    if (!bestAngle) {
      return model.value(counts, level.speed().si(), level.angle().si(), level.height().si());
    }
    return (counts == goal() ? angles() : model.bestAngles(counts, level.speed(), level.height())).careful().value();
  }

  private GlideGoal goal() {
    return design.brief().goal();
  }
}
