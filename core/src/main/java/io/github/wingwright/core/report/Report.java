// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.report;

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

  @Override
  public String toString() {
    return "report " + title + ", " + chapters.size() + (chapters.size() == 1 ? " chapter" : " chapters");
  }
}
