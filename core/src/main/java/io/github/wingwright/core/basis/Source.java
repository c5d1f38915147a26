// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.basis;

import java.io.Serializable;
import java.util.Objects;

/**
 * Where a formula, a range or a value comes from, and how well that was verified.
 *
 * @param standing how it was verified
 * @param work authors, title, edition, year
 * @param place equation, table, section or page; may be empty
 */
public record Source(Standing standing, String work, String place) implements Serializable {

  /** Refuses null. */
  public Source {
    Objects.requireNonNull(standing, "standing");
    Objects.requireNonNull(work, "work");
    Objects.requireNonNull(place, "place");
  }

  /** How far a citation can be trusted. */
  public enum Standing {
    /** Follows from definitions or mathematics alone. */
    DEFINITION("by definition"),
    /** Read in the source that is named, or in a public copy of it. */
    PUBLISHED("published"),
    /** Read in a restatement of the source, such as course or study notes, not in the source itself. */
    RESTATED("as restated in study notes"),
    /** Cited from memory; the numbers were not compared with a copy. */
    FROM_MEMORY("from memory"),
    /** Known in the trade, with no source. */
    COMMON_PRACTICE("common practice, no source"),
    /** Asked for by the designer. */
    BRIEF("from the brief"),
    /** A choice of this library, explained where it is made. */
    LIBRARY("choice of this library"),
    /** Found or given in another part of the same study: nobody's claim, only where to look. */
    TAKEN("from another part of the study");

    private final String words;

    Standing(String words) {
      this.words = words;
    }

    /**
     * The standing in words.
     *
     * @return for example {@code "from memory"}
     */
    public String words() {
      return words;
    }
  }

  /** The designer's brief. */
  public static final Source BRIEF = new Source(Standing.BRIEF, "the brief", "");

  /** Common practice without a source. */
  public static final Source COMMON_PRACTICE = new Source(Standing.COMMON_PRACTICE, "", "");

  /** A definition. */
  public static final Source DEFINITION = new Source(Standing.DEFINITION, "", "");

  /**
   * A work that was read.
   *
   * @param work authors, title, edition, year
   * @param place equation, table, section or page
   * @return the source
   */
  public static Source published(String work, String place) {
    return new Source(Standing.PUBLISHED, work, place);
  }

  /**
   * A work that was read in a restatement.
   *
   * @param work authors, title, edition, year
   * @param place equation, table, section or page
   * @return the source
   */
  public static Source restated(String work, String place) {
    return new Source(Standing.RESTATED, work, place);
  }

  /**
   * A work that is cited from memory.
   *
   * @param work authors, title, edition, year
   * @param place equation, table, section or page
   * @return the source
   */
  public static Source fromMemory(String work, String place) {
    return new Source(Standing.FROM_MEMORY, work, place);
  }

  /**
   * A choice of this library.
   *
   * @param reason why it was made
   * @return the source
   */
  public static Source library(String reason) {
    return new Source(Standing.LIBRARY, reason, "");
  }

  /**
   * Another part of the same study.
   *
   * @param part where the value was found or given, such as {@code "geometry of the body"}
   * @return the source
   */
  public static Source taken(String part) {
    return new Source(Standing.TAKEN, part, "");
  }

  /**
   * The citation as a reader sees it.
   *
   * @return for example {@code "Hoerner, Fluid-Dynamic Drag, 1965, ch. 6 (from memory)"}
   */
  public String cite() {
    if (work.isEmpty()) {
      return standing.words();
    }
    String where = place.isEmpty() ? work : work + ", " + place;
    return switch (standing) {
      case PUBLISHED, BRIEF, TAKEN -> where;
      default -> where + " (" + standing.words() + ")";
    };
  }

  @Override
  public String toString() {
    return cite();
  }
}
