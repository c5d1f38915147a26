// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.performance;

/** What ends a flight. */
public enum FlightEnd {
  /** It lands on the floor. */
  FLOOR("lands on the floor"),
  /** It hits the ceiling. */
  CEILING("hits the ceiling"),
  /** It hits the wall that it was thrown towards. */
  WALL_AHEAD("hits the wall ahead"),
  /** It hits the wall behind the thrower. */
  WALL_BEHIND("hits the wall behind"),
  /** It still flies when the time that was allowed is over. */
  TIME("still flies when the time is over");

  private final String words;

  FlightEnd(String words) {
    this.words = words;
  }

  /**
   * The end in words.
   *
   * @return for example {@code "lands on the floor"}
   */
  public String words() {
    return words;
  }
}
