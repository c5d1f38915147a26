// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.brief;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** The word that was probably meant: the one that takes the fewest letters put in, left out or changed. */
final class NearMiss {
  /** Longer words than any that a brief knows are not looked at. */
  private static final int LONGEST = 60;

  private NearMiss() {}

  /**
   * Finds the nearest word.
   *
   * @param written what stands there
   * @param words what could have been meant
   * @return the nearest, the first in the alphabet of equals; empty if a third or more of its letters differ
   */
  static Optional<String> of(String written, Collection<String> words) {
    if (written.length() > LONGEST) {
      return Optional.empty();
    }
    String plain = plain(written);
    return words.stream()
        .filter(word -> 3 * changes(plain, plain(word)) <= Math.max(plain.length(), word.length()))
        .min(Comparator.<String>comparingInt(word -> changes(plain, plain(word))).thenComparing(Comparator.naturalOrder()));
  }

  private static String plain(String word) {
    return word.toLowerCase(Locale.ROOT).replace('-', '_').replace(' ', '_');
  }

  /** Edit distance, row by row. */
  private static int changes(String a, String b) {
    int[] above = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      above[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int[] row = new int[b.length() + 1];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int changed = above[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        row[j] = Math.min(changed, 1 + Math.min(above[j], row[j - 1]));
      }
      above = row;
    }
    return above[b.length()];
  }
}
