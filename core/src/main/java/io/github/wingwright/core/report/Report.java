// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.report;

import io.github.wingwright.core.basis.Workings;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A report.
 *
 * @param title its title
 * @param subtitle one line under the title; may be empty
 * @param chapters the chapters in order
 */
public record Report(String title, String subtitle, List<Chapter> chapters) {
  /** Keeps its own list. */
  public Report {
    Objects.requireNonNull(chapters, "chapters");
    Objects.requireNonNull(title, "title");
    Objects.requireNonNull(subtitle, "subtitle");
    chapters = List.copyOf(chapters);
  }

  /**
   * One self-contained page.
   *
   * @return an HTML document that needs nothing from anywhere
   */
  public String toHtml() {
    return new HtmlWriter().write(this);
  }

  /**
   * Markdown, without the pictures.
   *
   * @return text
   */
  public String toMarkdown() {
    return MarkdownWriter.write(this);
  }

  /**
   * The same report with the list of its symbols as the last chapter.
   *
   * @return a report in which a reader can look up every letter of the workings
   */
  public Report withSymbols() {
    List<Workings> workings = new ArrayList<>();
    for (Chapter chapter : chapters) {
      for (Block block : chapter.blocks()) {
        if (block instanceof Block.Steps steps) {
          workings.add(steps.workings());
        }
      }
    }
    List<Chapter> all = new ArrayList<>(chapters);
    all.add(
        Chapter.of(
            "Symbols",
            new Block.Paragraph(
                "The symbols of the workings, with the line at which each stands first in each of its meanings. An index"
                    + " says of what: C_L is the lift coefficient. Units are those of the SI."),
            new Block.Symbols(workings)));
    return new Report(title, subtitle, all);
  }

  @Override
  public String toString() {
    return "report " + title + ", " + chapters.size() + (chapters.size() == 1 ? " chapter" : " chapters");
  }
}
