// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.basis.Source;

/**
 * What is held fixed while a body is made more slender. The best fineness ratio depends on it, which is why published
 * advice seems to disagree: with the section fixed a longer body only adds skin, with the volume fixed it also gets
 * thinner.
 */
public enum FinenessContext {
  /** Subsonic, the section given by what is inside. */
  FIXED_SECTION(
      2.4,
      5.0,
      "subsonic, section fixed by the contents",
      "p. 157: about 3; 2.4 to 5.0 is where the optima of four form factors lie"),
  /** Subsonic, the volume given. */
  FIXED_VOLUME(
      6.0,
      8.0,
      "subsonic, volume fixed",
      "p. 157: 6 to 8"),
  /** Whatever flies well below the speed of sound. */
  SUBSONIC_PRACTICE(3.0, 14.0, "subsonic practice", ""),
  /** Supersonic. */
  SUPERSONIC(
      10.0,
      15.0,
      "supersonic",
      "p. 157: about 14");

  private static final String BOOK = "Raymer, Aircraft Design: A Conceptual Approach, 6th ed., 2018";

  private final double least;
  private final double most;
  private final String words;
  private final String place;

  FinenessContext(double least, double most, String words, String place) {
    this.least = least;
    this.most = most;
    this.words = words;
    this.place = place;
  }

  /**
   * Least fineness ratio.
   *
   * @return L/d
   */
  public double least() {
    return least;
  }

  /**
   * Greatest fineness ratio.
   *
   * @return L/d
   */
  public double most() {
    return most;
  }

  /**
   * The context in words.
   *
   * @return for example {@code "subsonic, volume fixed"}
   */
  public String words() {
    return words;
  }

  /**
   * Who says so.
   *
   * @return the source
   */
  public Source source() {
    return place.isEmpty() ? Source.COMMON_PRACTICE : Source.restated(BOOK, place);
  }
}
