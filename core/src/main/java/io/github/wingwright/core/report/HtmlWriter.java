// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.report;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Workings;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;

/** Writes a report as one page of HTML, pictures inside, nothing outside. */
final class HtmlWriter {
  private static final String STYLE =
      """
      :root { --ink: #1d2b36; --soft: #5b6b76; --rule: #d5dbdf; --accent: #00695f; --warm: #b5451b; }
      body { font: 16px/1.5 Georgia, 'Times New Roman', serif; color: var(--ink); background: #f4f5f3; margin: 0; }
      main { max-width: 62rem; margin: 0 auto; padding: 2rem 2.5rem 4rem; background: #fff; }
      h1 { font-size: 2rem; margin: 0 0 .2rem; }
      h2 { font-size: 1.3rem; margin: 2.4rem 0 .6rem; border-bottom: 2px solid var(--accent); padding-bottom: .2rem; }
      .subtitle { color: var(--soft); margin: 0 0 1.5rem; }
      nav { columns: 3; font-size: .9rem; padding: .8rem 0; border-top: 1px solid var(--rule); border-bottom: 1px solid var(--rule); }
      nav a { color: var(--accent); text-decoration: none; display: block; }
      table { border-collapse: collapse; width: 100%; font: 14px/1.4 Helvetica, Arial, sans-serif; margin: .6rem 0 1rem; }
      th { text-align: left; border-bottom: 1px solid var(--ink); padding: .25rem .6rem .25rem 0; }
      td { border-bottom: 1px solid var(--rule); padding: .25rem .6rem .25rem 0; vertical-align: top; }
      td.number { text-align: right; white-space: nowrap; font-variant-numeric: tabular-nums; }
      td.quiet, .source { color: var(--soft); font-size: .85em; }
      td a { color: inherit; }
      figure { margin: 1rem 0; overflow-x: auto; }
      figure svg { max-width: 100%; height: auto; border: 1px solid var(--rule); }
      figcaption { color: var(--soft); font-size: .9rem; }
      .finding { border-left: 5px solid var(--rule); padding: .3rem .9rem; margin: .6rem 0; }
      .finding.serious { border-color: var(--warm); background: #fbeee7; }
      .finding.caution { border-color: #c79a2b; }
      .finding p { margin: .1rem 0; }
      .steps { font: 13px/1.45 'DejaVu Sans Mono', Menlo, Consolas, monospace; }
      .steps td { padding-top: .35rem; }
      @media print { body { background: #fff; } main { padding: 0; } }
      """;

  private final IdentityHashMap<Step, Integer> anchors = new IdentityHashMap<>();

  String write(Report report) {
    report.chapters().forEach(c -> c.blocks().forEach(this::collectAnchors));
    StringBuilder out = new StringBuilder();
    out.append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n");
    out.append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>");
    out.append(escape(report.title())).append("</title>\n<style>\n").append(STYLE).append("</style>\n</head>\n<body>\n<main>\n<h1>");
    out.append(escape(report.title())).append("</h1>\n");
    if (!report.subtitle().isEmpty()) {
      out.append("<p class=\"subtitle\">").append(escape(report.subtitle())).append("</p>\n");
    }
    out.append("<nav>\n");
    for (int i = 0; i < report.chapters().size(); i++) {
      out.append("<a href=\"#chapter-").append(i + 1).append("\">").append(escape(report.chapters().get(i).title())).append("</a>\n");
    }
    out.append("</nav>\n");
    for (int i = 0; i < report.chapters().size(); i++) {
      Chapter chapter = report.chapters().get(i);
      out.append("<h2 id=\"chapter-").append(i + 1).append("\">").append(escape(chapter.title())).append("</h2>\n");
      chapter.blocks().forEach(block -> block(out, block));
    }
    return out.append("</main>\n</body>\n</html>\n").toString();
  }

  /** Steps that stand in the workings can be linked to from a sheet. */
  private void collectAnchors(Block block) {
    if (block instanceof Block.Steps steps) {
      steps.workings().steps().forEach(step -> anchors.putIfAbsent(step, anchors.size() + 1));
    }
  }

  private void block(StringBuilder out, Block block) {
    if (block instanceof Block.Paragraph paragraph) {
      out.append("<p>").append(escape(paragraph.text())).append("</p>\n");
    } else if (block instanceof Block.Points points) {
      out.append("<ul>\n");
      points.points().forEach(p -> out.append("<li>").append(escape(p)).append("</li>\n"));
      out.append("</ul>\n");
    } else if (block instanceof Block.Table table) {
      table(out, table);
    } else if (block instanceof Block.Sheet sheet) {
      sheet(out, sheet.entries());
    } else if (block instanceof Block.Picture picture) {
      out.append("<figure>\n").append(picture.svg()).append("<figcaption>");
      out.append(escape(picture.caption())).append("</figcaption>\n</figure>\n");
    } else if (block instanceof Block.Findings findings) {
      findings(out, findings.findings());
    } else if (block instanceof Block.Steps steps) {
      steps(out, steps.workings());
    }
  }

  private static void table(StringBuilder out, Block.Table table) {
    out.append("<table>\n<tr>");
    table.header().forEach(h -> out.append("<th>").append(escape(h)).append("</th>"));
    out.append("</tr>\n");
    for (List<String> row : table.rows()) {
      out.append("<tr>");
      row.forEach(cell -> out.append("<td>").append(escape(cell)).append("</td>"));
      out.append("</tr>\n");
    }
    out.append("</table>\n");
  }

  private void sheet(StringBuilder out, List<Entry> entries) {
    out.append("<table>\n");
    for (Entry entry : entries) {
      Integer anchor = anchors.get(entry.step());
      String symbol = escape(entry.step().symbol());
      String linked = anchor == null ? symbol : "<a href=\"#step-" + anchor + "\">" + symbol + "</a>";
      out.append("<tr><td>").append(escape(entry.label())).append("</td><td>").append(linked).append("</td><td class=\"number\">");
      out.append(escape(entry.text())).append("</td></tr>\n");
    }
    out.append("</table>\n");
  }

  private static void findings(StringBuilder out, List<Finding> findings) {
    if (findings.isEmpty()) {
      out.append("<p>Nothing to report.</p>\n");
    }
    for (Finding finding : findings) {
      out.append("<div class=\"finding ").append(name(finding.severity())).append("\"><p><strong>");
      out.append(escape(finding.subject())).append("</strong> (").append(name(finding.severity())).append(")");
      if (!finding.measure().isEmpty()) {
        out.append(": ").append(escape(finding.measure()));
      }
      out.append("</p><p>").append(escape(finding.message())).append("</p><p class=\"source\">");
      out.append(escape(finding.source().cite())).append("</p></div>\n");
    }
  }

  private static String name(Severity severity) {
    return severity.name().toLowerCase(Locale.ROOT);
  }

  private void steps(StringBuilder out, Workings workings) {
    out.append("<table class=\"steps\">\n<tr><th>symbol</th><th>value</th><th>what it is, and how it comes about</th></tr>\n");
    for (Step step : workings.steps()) {
      out.append("<tr id=\"step-").append(anchors.get(step)).append("\"><td>").append(escape(step.symbol()));
      out.append("</td><td class=\"number\">").append(escape(Workings.result(step))).append("</td><td>");
      out.append(escape(step.name())).append("<br>= ").append(escape(Workings.explain(step)));
      if (!(step instanceof Step.Given) && !(step instanceof Step.Sum)) {
        out.append("<br><span class=\"source\">").append(escape(step.source().cite())).append("</span>");
      }
      out.append("</td></tr>\n");
    }
    out.append("</table>\n");
  }

  private static String escape(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;");
  }
}
