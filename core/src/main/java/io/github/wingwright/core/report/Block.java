// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.report;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Workings;
import java.util.List;
import java.util.Objects;

/** A piece of a chapter. */
public sealed interface Block {

  /**
   * Running text.
   *
   * @param text one paragraph
   */
  record Paragraph(String text) implements Block {
    public Paragraph {
      Objects.requireNonNull(text, "text");
    }
  }

  /**
   * Points, one line each.
   *
   * @param points the points
   */
  record Points(List<String> points) implements Block {
    /** Keeps its own list. */
    public Points {
      Objects.requireNonNull(points, "points");
      points = List.copyOf(points);
    }
  }

  /**
   * A table.
   *
   * @param header column heads
   * @param rows rows, each as long as the header
   */
  record Table(List<String> header, List<List<String>> rows) implements Block {
    /** Keeps its own lists and refuses a ragged table. */
    public Table {
      Objects.requireNonNull(header, "header");
      Objects.requireNonNull(rows, "rows");
      header = List.copyOf(header);
      rows = rows.stream().map(List::copyOf).toList();
      for (List<String> row : rows) {
        if (row.size() != header.size()) {
          throw new IllegalArgumentException(
              "each row needs " + header.size() + " cells, got " + row.size() + ": " + row);
        }
      }
    }
  }

  /**
   * Numbers with their workings behind them.
   *
   * @param entries the numbers
   */
  record Sheet(List<Entry> entries) implements Block {
    /** Keeps its own list. */
    public Sheet {
      Objects.requireNonNull(entries, "entries");
      entries = List.copyOf(entries);
    }
  }

  /**
   * A picture.
   *
   * @param svg an {@code svg} element
   * @param caption what it shows
   */
  record Picture(String svg, String caption) implements Block {
    public Picture {
      Objects.requireNonNull(svg, "svg");
      Objects.requireNonNull(caption, "caption");
    }
  }

  /**
   * Findings, heaviest first.
   *
   * @param findings the findings
   */
  record Findings(List<Finding> findings) implements Block {
    /** Sorts them. */
    public Findings {
      Objects.requireNonNull(findings, "findings");
      findings = Finding.inOrderOfWeight(findings);
    }
  }

  /**
   * Symbols with what they mean, gathered from workings.
   *
   * @param workings where they stand
   */
  record Symbols(List<Workings> workings) implements Block {
    /** Keeps its own list. */
    public Symbols {
      Objects.requireNonNull(workings, "workings");
      workings = List.copyOf(workings);
    }
  }

  /**
   * Workings.
   *
   * @param workings the steps
   */
  record Steps(Workings workings) implements Block {
    public Steps {
      Objects.requireNonNull(workings, "workings");
    }
  }
}
