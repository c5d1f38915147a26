// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.performance;

/**
 * What kind of flight it was, so that a distance is not taken for a glide that was none. Where several hold, the first that
 * stands here counts.
 */
public enum FlightManner {
  /** Upside down on the way: it looped, or tumbled. */
  TURNS_OVER("turns over"),
  /** It ended at the ceiling. */
  MEETS_CEILING("meets the ceiling"),
  /** It ended at a wall. */
  MEETS_WALL("meets a wall"),
  /** Stalled for some of its way. */
  STALLS("stalls"),
  /** It came down more steeply than {@value #DIVE_DEGREES}°, without a stall. */
  DIVES("dives"),
  /** None of these: it swung or glided down to the floor. */
  GLIDES("glides");

  /** A path that goes down more steeply at its end is a dive (choice of this library). */
  public static final double DIVE_DEGREES = 30.0;

  private final String words;

  FlightManner(String words) {
    this.words = words;
  }

  static FlightManner of(boolean overturned, FlightEnd end, boolean stalled, double landingAngle) {
    if (overturned) {
      return TURNS_OVER;
    }
    return switch (end) {
      case CEILING -> MEETS_CEILING;
      case WALL_AHEAD, WALL_BEHIND -> MEETS_WALL;
      case FLOOR, TIME -> {
        if (stalled) {
          yield STALLS;
        }
        yield landingAngle > Math.toRadians(DIVE_DEGREES) ? DIVES : GLIDES;
      }
    };
  }

  /**
   * The manner in words.
   *
   * @return for example {@code "turns over"}
   */
  public String words() {
    return words;
  }

  /**
   * The manner that a flight on plain numbers gave.
   *
   * @param number what {@link FlightModel#fly} put fourth
   * @return the manner
   */
  public static FlightManner numbered(double number) {
    if (!(number >= 0.0 && number < values().length && number == Math.rint(number))) {
      throw new IllegalArgumentException("number of a manner must be whole, 0 to " + (values().length - 1) + ", was " + number);
    }
    return values()[(int) number];
  }
}
