// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.report;

import java.util.List;
import java.util.Objects;

/**
 * A heading and what stands under it.
 *
 * @param title the heading
 * @param blocks the pieces in order
 */
public record Chapter(String title, List<Block> blocks) {
  /** Keeps its own list. */
  public Chapter {
    Objects.requireNonNull(blocks, "blocks");
    Objects.requireNonNull(title, "title");
    blocks = List.copyOf(blocks);
  }

  /**
   * A chapter.
   *
   * @param title the heading
   * @param blocks the pieces in order
   * @return the chapter
   */
  public static Chapter of(String title, Block... blocks) {
    Objects.requireNonNull(blocks, "blocks");
    Objects.requireNonNull(title, "title");
    return new Chapter(title, List.of(blocks));
  }

  @Override
  public String toString() {
    return "chapter " + title + ", " + blocks.size() + (blocks.size() == 1 ? " block" : " blocks");
  }
}
