// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.flighttest;

/** What was seen in a flight. */
public enum Behaviour {
  /** It rises, stops, drops its nose, and does so again. */
  STALLS("it stalls"),
  /** It goes down steeply and fast. */
  DIVES("it dives"),
  /** It goes up and down without stalling. */
  BOUNCES("it bounces without stalling"),
  /** It turns to the left all the way. */
  TURNS_LEFT("it turns to the left"),
  /** It turns to the right all the way. */
  TURNS_RIGHT("it turns to the right"),
  /** It turns tighter and tighter. */
  SPIRALS("its turn tightens to a spiral");

  private final String words;

  Behaviour(String words) {
    this.words = words;
  }

  /**
   * What was seen, in words.
   *
   * @return for example {@code "it stalls"}
   */
  public String words() {
    return words;
  }
}
