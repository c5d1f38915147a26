// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.comparison;

import java.util.Set;

/** Whether a change does the glider good. */
public enum Judgement {
  /** More of what is wanted, or less of what is not. */
  BETTER("better"),
  /** The opposite. */
  WORSE("worse"),
  /** Neither by itself. */
  NEITHER("");

  private static final Set<String> MORE_IS_BETTER =
      Set.of("glide.best_lift_to_drag", "glide.distance_m", "glide.time_s", "wing.lift_coefficient_usable");
  private static final Set<String> LESS_IS_BETTER =
      Set.of(
          "mass_kg",
          "ballast_kg",
          "stall_speed_m_per_s",
          "glide.minimum_sink_rate_m_per_s",
          "launch.kinetic_energy_j",
          "drag.coefficient_without_wing");

  private final String words;

  Judgement(String words) {
    this.words = words;
  }

  /**
   * The judgement of a change.
   *
   * @param name name of the number in the design
   * @param difference after less before
   * @return neither for numbers of which neither more nor less is good by itself
   */
  static Judgement of(String name, double difference) {
    if (MORE_IS_BETTER.contains(name)) {
      return difference > 0.0 ? BETTER : WORSE;
    }
    if (LESS_IS_BETTER.contains(name)) {
      return difference < 0.0 ? BETTER : WORSE;
    }
    return NEITHER;
  }

  /**
   * The judgement in words.
   *
   * @return empty for neither
   */
  public String words() {
    return words;
  }
}
