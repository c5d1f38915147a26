// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.report;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Workings;
import io.github.wingwright.core.quantity.MinusSign;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.StringJoiner;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Writes a report as one page of HTML, pictures inside, nothing outside. */
final class HtmlWriter {
  private static final Pattern NUMBER = Pattern.compile("\\s*|[-+−±<>≤≥≈]?\\s*[0-9][^A-Za-z]*( ?[^ ]{1,5})?");

  /** One letter with an index of up to three. */
  private static final Pattern INDEXED =
      Pattern.compile("(?<![\\p{L}\\p{N}_.])(\\p{L})_((?:[\\p{L}\\p{N}]\\p{M}?){1,3})(?![\\p{L}\\p{N}_])");

  /** The blank between a number and the unit behind it; what may be a word as well, as "in", is none. */
  private static final Pattern BEFORE_UNIT =
      Pattern.compile(
          "(?<=[0-9]) (?=(?:%|°C?|[µmck]?m[²³⁴]?|L|[mk]?g|[mk]?[NWJ]|[hkMG]?Pa|lb|rad|Hz|kt|ft|min|[shK])(?![\\p{L}\\p{N}]))");

  private static final Pattern VIEW_BOX = Pattern.compile("viewBox=\"[-0-9.]+ [-0-9.]+ ([0-9.]+) ([0-9.]+)\"");
  private static final double TALL = 0.92;

  private static final char OPENING = '\uE000';
  private static final char CLOSING = '\uE001';
  private static final Pattern REFERENCE = Pattern.compile(" " + OPENING + "([0-9]+)" + CLOSING);
  private static final String LINK = " <a class=\"reference\" href=\"#step-$1\">[$1]</a>";

  private final IdentityHashMap<Step, Integer> anchors = new IdentityHashMap<>();
  private final Map<String, Integer> byNumber = new HashMap<>();
  private final Set<Integer> written = new HashSet<>();

  String write(Report report) {
    report.chapters().forEach(c -> c.blocks().forEach(this::collectAnchors));
    StringBuilder out = new StringBuilder();
    head(out, report.title());
    out.append("<h1>").append(escape(report.title())).append("</h1>\n");
    if (!report.subtitle().isEmpty()) {
      out.append("<p class=\"subtitle\">").append(escape(report.subtitle())).append("</p>\n");
    }
    contents(out, report.chapters());
    for (int i = 0; i < report.chapters().size(); i++) {
      Chapter chapter = report.chapters().get(i);
      out.append("<h2 id=\"chapter-").append(i + 1).append("\">").append(escape(chapter.title())).append("</h2>\n");
      chapter.blocks().forEach(block -> block(out, block));
      out.append("<p class=\"top\"><a href=\"#top\">back to the top</a></p>\n");
    }
    return out.append("</main>\n</body>\n</html>\n").toString();
  }

  private static void head(StringBuilder out, String title) {
    out.append("<!DOCTYPE html>\n<html lang=\"en\" xmlns=\"http://www.w3.org/1999/xhtml\">\n<head>\n");
    out.append("<meta charset=\"utf-8\"/>\n");
    out.append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n");
    out.append("<title>").append(escape(title)).append("</title>\n");
    out.append("<style>\n").append(HtmlStyle.SHEET).append("</style>\n");
    out.append("</head>\n<body id=\"top\">\n<main>\n");
  }

  private static void contents(StringBuilder out, List<Chapter> chapters) {
    out.append("<nav>\n");
    for (int i = 0; i < chapters.size(); i++) {
      out.append("<a href=\"#chapter-").append(i + 1).append("\">").append(escape(chapters.get(i).title()));
      out.append("</a>\n");
    }
    out.append("</nav>\n");
  }

  /** Steps that stand in the workings can be linked to from a sheet. */
  private void collectAnchors(Block block) {
    if (block instanceof Block.Steps steps) {
      for (Step step : steps.workings().steps()) {
        anchors.putIfAbsent(step, anchors.size() + 1);
        byNumber.putIfAbsent(number(step), anchors.get(step));
      }
    }
  }

  private void block(StringBuilder out, Block block) {
    if (block instanceof Block.Paragraph paragraph) {
      out.append("<p>").append(prose(paragraph.text())).append("</p>\n");
    } else if (block instanceof Block.Points points) {
      out.append("<ul>\n");
      points.points().forEach(p -> out.append("<li>").append(prose(p)).append("</li>\n"));
      out.append("</ul>\n");
    } else if (block instanceof Block.Table table) {
      table(out, table);
    } else if (block instanceof Block.Sheet sheet) {
      sheet(out, sheet.entries());
    } else if (block instanceof Block.Picture picture) {
      out.append(isTall(picture.svg()) ? "<figure class=\"tall\">\n" : "<figure>\n").append(picture.svg());
      out.append("<figcaption>");
      out.append(prose(picture.caption())).append("</figcaption>\n</figure>\n");
    } else if (block instanceof Block.Findings findings) {
      findings(out, findings.findings());
    } else if (block instanceof Block.Steps steps) {
      steps(out, steps.workings());
    } else if (block instanceof Block.Symbols symbols) {
      symbols(out, SymbolList.of(symbols.workings()));
    }
  }

  /** About as high as wide or higher: half a page would make its lettering too small to read. */
  private static boolean isTall(String svg) {
    Matcher box = VIEW_BOX.matcher(svg);
    return box.find() && Double.parseDouble(box.group(2)) > TALL * Double.parseDouble(box.group(1));
  }

  private static void table(StringBuilder out, Block.Table table) {
    List<Boolean> numeric = numericColumns(table);
    out.append("<div class=\"wide\"><table>\n<thead><tr>");
    for (int i = 0; i < numeric.size(); i++) {
      cell(out, "th", numeric.get(i), table.header().get(i));
    }
    out.append("</tr></thead>\n<tbody>\n");
    for (List<String> row : table.rows()) {
      out.append("<tr>");
      for (int i = 0; i < numeric.size(); i++) {
        cell(out, "td", numeric.get(i), row.get(i));
      }
      out.append("</tr>\n");
    }
    out.append("</tbody>\n</table></div>\n");
  }

  private static void cell(StringBuilder out, String element, boolean number, String text) {
    out.append('<').append(element).append(number ? " class=\"number\">" : ">");
    out.append(BEFORE_UNIT.matcher(prose(text)).replaceAll("\u00a0")).append("</").append(element).append('>');
  }

  /** Columns in which every cell that is not empty begins as a number does, set to the right. */
  private static List<Boolean> numericColumns(Block.Table table) {
    List<Boolean> numeric = new ArrayList<>();
    for (int i = 0; i < table.header().size(); i++) {
      int column = i;
      boolean some = table.rows().stream().anyMatch(row -> !row.get(column).isBlank());
      numeric.add(some && table.rows().stream().allMatch(row -> NUMBER.matcher(row.get(column)).matches()));
    }
    return numeric;
  }

  private void sheet(StringBuilder out, List<Entry> entries) {
    out.append("<div class=\"wide\"><table>\n<thead><tr><th>quantity</th><th>symbol</th>");
    out.append("<th class=\"number\">value</th></tr></thead>\n<tbody>\n");
    for (Entry entry : entries) {
      Integer anchor = anchors.get(entry.step());
      String symbol = symbol(entry.step().symbol());
      String linked = anchor == null ? symbol : "<a href=\"#step-" + anchor + "\">" + symbol + "</a>";
      out.append("<tr><td>").append(escape(entry.label())).append("</td><td class=\"symbol\">").append(linked);
      out.append("</td><td class=\"number\">").append(escape(entry.text())).append("</td></tr>\n");
    }
    out.append("</tbody>\n</table></div>\n");
  }

  private static void findings(StringBuilder out, List<Finding> findings) {
    if (findings.isEmpty()) {
      out.append("<p>Nothing to report.</p>\n");
    }
    for (Finding finding : findings) {
      String weight = name(finding.severity());
      out.append("<div class=\"finding ").append(weight).append("\"><p><span class=\"weight\">").append(weight);
      out.append("</span><strong>").append(escape(finding.subject())).append("</strong>");
      if (!finding.measure().isEmpty()) {
        out.append(": ").append(escape(finding.measure()));
      }
      out.append("</p><p>").append(prose(finding.message())).append("</p><p class=\"source\">");
      out.append(escape(finding.source().cite())).append("</p></div>\n");
    }
  }

  private static String name(Severity severity) {
    return severity.name().toLowerCase(Locale.ROOT);
  }

  private void steps(StringBuilder out, Workings workings) {
    out.append("<div class=\"wide\"><table class=\"steps\">\n");
    out.append("<thead><tr><th>no.</th><th>symbol</th><th class=\"number\">value</th>");
    out.append("<th>what it is, and how it comes about</th></tr></thead>\n<tbody>\n");
    for (Step step : workings.steps()) {
      out.append("<tr");
      Integer anchor = anchors.get(step);
      // A step that stands in two chapters is linked to where it stands first.
      if (anchor != null && written.add(anchor)) {
        out.append(" id=\"step-").append(anchor).append('"');
      }
      out.append("><td class=\"step\">").append(anchor == null ? "" : anchor).append("</td><td class=\"symbol\">");
      out.append(symbol(step.symbol())).append("</td><td class=\"number\">");
      out.append(escape(Workings.result(step))).append("</td><td>").append(escape(step.name()));
      String how = REFERENCE.matcher(escape(Workings.explain(step, input -> reference(input, anchor)))).replaceAll(LINK);
      out.append("<div class=\"formula\">= ").append(how).append("</div>");
      if (!(step instanceof Step.Given) && !(step instanceof Step.Sum)) {
        out.append("<div class=\"source\">").append(escape(step.source().cite())).append("</div>");
      }
      out.append("</td></tr>\n");
    }
    out.append("</tbody>\n</table></div>\n");
  }

  /**
   * What two lines have in common that tell the same number, though parts of the library that do not know each other made
   * them. Of whole numbers there are many alike: these must be called alike as well.
   */
  private static String number(Step step) {
    boolean whole = step.value() == Math.rint(step.value());
    String value = String.format(Locale.ROOT, "%.11e", step.value());
    return step.symbol() + ' ' + step.unit().symbol() + ' ' + value + (whole ? step.name() : "");
  }

  /** Where an input stands in this report, between marks that no text holds. */
  private String reference(Step input, @Nullable Integer own) {
    Integer anchor = anchors.getOrDefault(input, byNumber.get(number(input)));
    return anchor == null || anchor.equals(own) ? "" : " " + OPENING + anchor + CLOSING;
  }

  private void symbols(StringBuilder out, List<SymbolList.Meanings> symbols) {
    out.append("<ul class=\"symbols\">\n");
    for (SymbolList.Meanings one : symbols) {
      out.append("<li><i>").append(symbol(one.symbol())).append("</i> ");
      out.append(one.unit().isEmpty() ? "" : "in " + escape(one.unit()) + " ").append("&#8211; ");
      StringJoiner meanings = new StringJoiner("; ");
      one.firsts().forEach(s -> meanings.add(REFERENCE.matcher(escape(s.name() + reference(s, null))).replaceAll(LINK)));
      out.append(meanings).append("</li>\n");
    }
    out.append("</ul>\n");
  }

  /** What follows the first underscore of a symbol is its index: {@code c_r}. */
  private static String symbol(String symbol) {
    int mark = symbol.indexOf('_');
    boolean indexed = mark > 0 && mark < symbol.length() - 1;
    return indexed
        ? escape(symbol.substring(0, mark)) + "<sub>" + escape(symbol.substring(mark + 1)) + "</sub>"
        : escape(symbol);
  }

  /** Text with its symbols set as such: {@code C_L} with an index, but no name of a file or of a number. */
  private static String prose(String text) {
    return INDEXED.matcher(escape(text)).replaceAll("<i>$1</i><sub>$2</sub>");
  }

  /** Text as it may stand in an element or an attribute; characters that no document may hold are replaced. */
  private static String escape(String text) {
    StringBuilder out = new StringBuilder(text.length());
    MinusSign.in(text).codePoints().forEach(c -> escape(out, c));
    return out.toString();
  }

  private static void escape(StringBuilder out, int c) {
    switch (c) {
      case '&' -> out.append("&amp;");
      case '<' -> out.append("&lt;");
      case '>' -> out.append("&gt;");
      case '"' -> out.append("&quot;");
      default -> out.appendCodePoint(isLegal(c) ? c : 0xFFFD);
    }
  }

  private static boolean isLegal(int c) {
    boolean control = c < ' ' && c != '\t' && c != '\n' && c != '\r';
    return !control && (c < 0xD800 || c > 0xDFFF) && c != 0xFFFE && c != 0xFFFF;
  }
}
