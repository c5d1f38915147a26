// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.drawing.OverlaidViews;
import io.github.wingwright.core.report.Block;
import io.github.wingwright.core.report.Chapter;
import io.github.wingwright.core.report.Entry;
import io.github.wingwright.stability.comparison.ChangedNumber;
import io.github.wingwright.stability.comparison.DesignComparison;
import io.github.wingwright.stability.comparison.Judgement;
import io.github.wingwright.stability.design.Design;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Two designs side by side: what changed, why, and whether it did any good. */
final class ComparisonChapter {
  private static final int WIDTH = 96;
  private static final int MOST_DIGITS = 6;

  private final DesignComparison comparison;
  private final String beforeName;
  private final String afterName;
  private final BriefUnits units;
  private final List<FlownComparison.Row> flown;

  ComparisonChapter(Design before, Design after, String beforeName, String afterName, BriefUnits units) {
    this(DesignComparison.of(before, after), beforeName, afterName, units, List.of());
  }

  private ComparisonChapter(
      DesignComparison comparison, String beforeName, String afterName, BriefUnits units, List<FlownComparison.Row> flown) {
    this.comparison = comparison;
    this.beforeName = beforeName;
    this.afterName = afterName;
    this.units = units;
    this.flown = flown;
  }

  /** The same with what both fly. */
  ComparisonChapter with(FlownComparison flights) {
    return new ComparisonChapter(comparison, beforeName, afterName, units, flights.rows());
  }

  /** A line of the sheet that changed. */
  private record Line(String group, Entry entry, ChangedNumber number) {}

  /** The changed numbers of the sheet, in its order. */
  private List<Line> sheetLines() {
    Map<Step, ChangedNumber> changed = new LinkedHashMap<>();
    comparison.numbers().forEach(n -> changed.put(n.change().after(), n));
    List<Line> lines = new ArrayList<>();
    for (Map.Entry<String, List<Entry>> group : new DesignSheet(comparison.after(), units).groups().entrySet()) {
      for (Entry entry : group.getValue()) {
        ChangedNumber number = changed.get(entry.step());
        if (number != null) {
          lines.add(new Line(group.getKey(), entry, number));
        }
      }
    }
    return lines;
  }

  /** Both values, with as many digits as it takes to tell them apart. */
  private static List<String> values(Line line) {
    double was = line.number().change().before().value();
    double is = line.number().change().after().value();
    int digits = line.entry().digits();
    List<String> both;
    do {
      both = List.of(line.entry().unit().format(was, digits), line.entry().unit().format(is, digits));
      digits++;
    } while (both.get(0).equals(both.get(1)) && digits <= MOST_DIGITS);
    return both;
  }

  Chapter chapter(Map<String, String> wishes) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Paragraph("Against "
                + beforeName
                + ": "
                + comparison.numbers().size()
                + " of the numbers in design.json changed, "
                + comparison.unchanged()
                + " stayed. Of those below "
                + count(Judgement.BETTER)
                + " are better, "
                + count(Judgement.WORSE)
                + " worse."));
    if (!wishes.isEmpty()) {
      blocks.add(new Block.Paragraph("Changed in the brief:"));
      blocks.add(new Block.Points(wishes.entrySet().stream().map(e -> e.getKey() + ": " + e.getValue()).toList()));
    }
    blocks.add(picture());
    blocks.addAll(tables());
    return new Chapter("What changed", blocks);
  }

  Block.Picture picture() {
    return new Block.Picture(
        OverlaidViews.draw(
                comparison.before().aircraft().airframe(),
                comparison.after().aircraft().airframe(),
                beforeName,
                afterName,
                units.length())
            .element(),
        "Both on each other, nose on nose: " + beforeName + " in dashes, " + afterName + " in full lines.");
  }

  List<Block> tables() {
    List<Block> blocks = new ArrayList<>();
    List<List<String>> rows = new ArrayList<>();
    for (Line line : sheetLines()) {
      rows.add(
          List.of(
              line.group() + ", " + line.entry().label(),
              values(line).get(0),
              values(line).get(1),
              line.number().percent(),
              line.number().judgement().words(),
              line.number().change().words(units::shown)));
    }
    for (FlownComparison.Row row : flown) {
      rows.add(List.of("Flown, " + row.label(), row.before(), row.after(), row.percent(), row.judgement().words(), "all of these"));
    }
    blocks.add(new Block.Table(List.of("number", "before", "after", "change", "", "what passed it on"), rows));
    blocks.addAll(findings("Findings that came:", comparison.cameFindings()));
    blocks.addAll(findings("Findings that went:", comparison.wentFindings()));
    return blocks;
  }

  private static List<Block> findings(String head, List<Finding> findings) {
    return findings.isEmpty() ? List.of() : List.of(new Block.Paragraph(head), new Block.Findings(findings));
  }

  /** The difference for a terminal. */
  List<String> lines(Map<String, String> wishes) {
    List<String> lines = new ArrayList<>();
    lines.add("Changed from " + beforeName + " to " + afterName);
    wishes.forEach((path, values) -> lines.add("  in the brief   " + path + ": " + values));
    for (Line line : sheetLines()) {
      lines.add(row(line.group(), line.entry().label(), values(line), line.number().percent(), line.number().judgement()));
      lines.add("  " + " ".repeat(15) + "  by " + line.number().change().briefly(units::shown));
    }
    for (FlownComparison.Row row : flown) {
      lines.add(row("Flown", row.label(), List.of(row.before(), row.after()), row.percent(), row.judgement()));
    }
    comparison.cameFindings().forEach(f -> lines.addAll(told("came", f)));
    comparison.wentFindings().forEach(f -> lines.addAll(told("went", f)));
    lines.add("  Of these " + count(Judgement.BETTER) + " better, " + count(Judgement.WORSE) + " worse");
    return lines.stream().map(String::stripTrailing).toList();
  }

  /** How many of the lines that are shown, so that a reader who counts them finds as many. */
  private long count(Judgement judgement) {
    return sheetLines().stream().filter(line -> line.number().judgement() == judgement).count()
        + flown.stream().filter(row -> row.judgement() == judgement).count();
  }

  private static String row(String group, String label, List<String> values, String percent, Judgement judgement) {
    return "  " + pad(group, 15) + pad(label, 34) + pad(values.get(0) + " to " + values.get(1), 24) + pad(percent, 9) + judgement.words();
  }

  /** A finding whole, in lines of a terminal. */
  private static List<String> told(String head, Finding finding) {
    List<String> lines = new ArrayList<>();
    String said = finding.severity().name().toLowerCase(Locale.ROOT) + " on " + finding.subject() + ": " + finding.message();
    StringBuilder line = new StringBuilder("  " + pad(head, 15));
    int begun = line.length();
    for (String word : said.split(" ")) {
      if (line.length() > begun && line.length() + word.length() > WIDTH) {
        lines.add(line.toString());
        line = new StringBuilder(" ".repeat(begun));
      }
      line.append(word).append(' ');
    }
    lines.add(line.toString());
    return lines;
  }

  private static String pad(String text, int width) {
    return text.length() >= width ? text + " " : text + " ".repeat(width - text.length());
  }

  /** What stands otherwise in the second brief: paths with both values. */
  static Map<String, String> wishes(Map<String, String> before, Map<String, String> after) {
    Map<String, String> wishes = new LinkedHashMap<>();
    after.forEach(
        (path, value) -> {
          String was = before.get(path);
          if (was == null) {
            wishes.put(path, "new, " + value);
          } else if (!was.equals(value)) {
            wishes.put(path, was + " to " + value);
          }
        });
    before.keySet().stream().filter(path -> !after.containsKey(path)).forEach(path -> wishes.put(path, "left out"));
    return wishes;
  }
}
