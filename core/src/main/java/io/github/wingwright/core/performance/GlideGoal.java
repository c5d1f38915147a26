// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.performance;

import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.quantity.Time;
import java.util.Objects;

/** What a glider is built to do best, and in whose unit choices are priced. */
public enum GlideGoal {
  /** How far it glides from its launch height in still air. */
  DISTANCE("distance"),
  /** How long it stays up from its launch height. */
  DURATION("duration");

  private final String words;

  GlideGoal(String words) {
    this.words = words;
  }

  /**
   * The figure of a glide.
   *
   * @param glide the glide
   * @param launchHeight height of the launch above the landing
   * @return metres or seconds
   */
  public double of(GlidePerformance glide, Length launchHeight) {
    Objects.requireNonNull(glide, "glide");
    Objects.requireNonNull(launchHeight, "launch height");
    return switch (this) {
      case DISTANCE -> launchHeight.si() * glide.bestGlide().liftToDrag();
      case DURATION -> glide.durationFrom(launchHeight).si();
    };
  }

  /**
   * Its unit.
   *
   * @return metre or second
   */
  public NamedUnit<?> unit() {
    return this == DISTANCE ? Length.METRE : Time.SECOND;
  }

  /**
   * Its name.
   *
   * @return {@code "distance"} or {@code "duration"}
   */
  public String words() {
    return words;
  }
}
