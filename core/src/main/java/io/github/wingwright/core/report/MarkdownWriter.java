// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.report;

import io.github.wingwright.core.basis.Workings;
import java.util.Collections;
import java.util.List;
import java.util.Locale;

/** Writes a report as Markdown: all but the pictures, of which the captions stay. */
final class MarkdownWriter {
  private MarkdownWriter() {}

  static String write(Report report) {
    StringBuilder out = new StringBuilder("# " + report.title() + "\n");
    if (!report.subtitle().isEmpty()) {
      out.append('\n').append(report.subtitle()).append('\n');
    }
    for (Chapter chapter : report.chapters()) {
      out.append("\n## ").append(chapter.title()).append('\n');
      chapter.blocks().forEach(block -> block(out, block));
    }
    return out.toString();
  }

  private static void block(StringBuilder out, Block block) {
    out.append('\n');
    if (block instanceof Block.Paragraph paragraph) {
      out.append(paragraph.text()).append('\n');
    } else if (block instanceof Block.Points points) {
      points.points().forEach(p -> out.append("- ").append(p).append('\n'));
    } else if (block instanceof Block.Table table) {
      row(out, table.header());
      row(out, Collections.nCopies(table.header().size(), "---"));
      table.rows().forEach(r -> row(out, r));
    } else if (block instanceof Block.Sheet sheet) {
      row(out, List.of("what", "symbol", "value"));
      row(out, List.of("---", "---", "---"));
      sheet.entries().forEach(e -> row(out, List.of(e.label(), e.step().symbol(), e.text())));
    } else if (block instanceof Block.Picture picture) {
      out.append('*').append(picture.caption()).append("*\n");
    } else if (block instanceof Block.Findings findings) {
      findings
          .findings()
          .forEach(
              f ->
                  out.append("- **")
                      .append(f.severity().name().toLowerCase(Locale.ROOT))
                      .append("** ")
                      .append(f.subject())
                      .append(f.measure().isEmpty() ? "" : ": " + f.measure())
                      .append(". ")
                      .append(f.message())
                      .append(" (")
                      .append(f.source().cite())
                      .append(")\n"));
    } else if (block instanceof Block.Steps steps) {
      row(out, List.of("symbol", "value", "what it is", "how it comes about"));
      row(out, List.of("---", "---", "---", "---"));
      steps
          .workings()
          .steps()
          .forEach(s -> row(out, List.of(s.symbol(), Workings.result(s), s.name(), Workings.explain(s))));
    }
  }

  private static void row(StringBuilder out, List<String> cells) {
    out.append("| ");
    out.append(String.join(" | ", cells.stream().map(c -> c.replace("|", "\\|")).toList()));
    out.append(" |\n");
  }
}
