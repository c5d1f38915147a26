// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.report;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Workings;
import io.github.wingwright.core.quantity.MinusSign;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** Writes a report as Markdown: all but the pictures, of which the captions stay. */
final class MarkdownWriter {
  /** Characters that begin markup; an underscore inside a word, as in {@code c_r}, does not. */
  private static final Pattern MARKUP =
      Pattern.compile("[\\\\`*\\[\\]<>#]|(?<![\\p{L}\\p{N}])_|_(?![\\p{L}\\p{N}])");

  private MarkdownWriter() {}

  static String write(Report report) {
    StringBuilder out = new StringBuilder("# " + inline(report.title()) + "\n");
    if (!report.subtitle().isEmpty()) {
      out.append('\n').append(inline(report.subtitle())).append('\n');
    }
    for (Chapter chapter : report.chapters()) {
      out.append("\n## ").append(inline(chapter.title())).append('\n');
      chapter.blocks().forEach(block -> block(out, block));
    }
    return out.toString();
  }

  private static void block(StringBuilder out, Block block) {
    out.append('\n');
    if (block instanceof Block.Paragraph paragraph) {
      out.append(inline(paragraph.text())).append('\n');
    } else if (block instanceof Block.Points points) {
      points.points().forEach(p -> out.append("- ").append(inline(p)).append('\n'));
    } else if (block instanceof Block.Table table) {
      row(out, table.header());
      row(out, Collections.nCopies(table.header().size(), "---"));
      table.rows().forEach(r -> row(out, r));
    } else if (block instanceof Block.Sheet sheet) {
      row(out, List.of("what", "symbol", "value"));
      row(out, List.of("---", "---", "---"));
      sheet.entries().forEach(e -> row(out, List.of(e.label(), e.step().symbol(), e.text())));
    } else if (block instanceof Block.Picture picture) {
      out.append('*').append(inline(picture.caption())).append("*\n");
    } else if (block instanceof Block.Findings findings) {
      if (findings.findings().isEmpty()) {
        out.append("Nothing to report.\n");
      }
      findings.findings().forEach(f -> finding(out, f));
    } else if (block instanceof Block.Steps steps) {
      steps(out, steps.workings());
    } else if (block instanceof Block.Symbols symbols) {
      for (SymbolList.Meanings one : SymbolList.of(symbols.workings())) {
        String unit = one.unit().isEmpty() ? "" : " [" + inline(one.unit()) + "]";
        out.append("- ").append(inline(one.symbol())).append(unit).append(": ");
        out.append(String.join("; ", one.firsts().stream().map(step -> inline(step.name())).toList())).append('\n');
      }
    }
  }

  private static void finding(StringBuilder out, Finding f) {
    out.append("- **").append(f.severity().name().toLowerCase(Locale.ROOT)).append("** ").append(inline(f.subject()));
    out.append(f.measure().isEmpty() ? "" : ": " + inline(f.measure())).append(". ").append(inline(f.message()));
    out.append(" (").append(inline(f.source().cite())).append(")\n");
  }

  private static void steps(StringBuilder out, Workings workings) {
    row(out, List.of("symbol", "value", "what it is", "how it comes about"));
    row(out, Collections.nCopies(4, "---"));
    workings
        .steps()
        .forEach(s -> row(out, List.of(s.symbol(), Workings.result(s), s.name(), Workings.explain(s))));
  }

  private static void row(StringBuilder out, List<String> cells) {
    out.append("| ").append(String.join(" | ", cells.stream().map(MarkdownWriter::cell).toList())).append(" |\n");
  }

  /** A bar would end the cell and a line break the table. */
  private static String cell(String text) {
    return inline(text).replace("|", "\\|");
  }

  /** One line, in which the characters that begin markup stand for themselves. */
  private static String inline(String text) {
    return MARKUP.matcher(MinusSign.in(text).replaceAll("\\R", " ")).replaceAll("\\\\$0");
  }
}
