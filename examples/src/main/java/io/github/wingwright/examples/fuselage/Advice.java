// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.fuselage;

import io.github.wingwright.core.basis.Conflict;
import io.github.wingwright.core.basis.Strength;
import io.github.wingwright.core.basis.Weighed;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.report.Block;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** What a good colleague would say about considerations that leave nothing. */
final class Advice {
  private final BodyStudy study;
  private final Units units;
  private final Optional<Conflict> conflict;

  Advice(BodyStudy study) {
    this.study = study;
    this.units = study.brief().units();
    this.conflict = study.region().conflict();
  }

  /** One or two sentences. */
  String summary() {
    return conflict.map(c -> sentence(c.describe(units.length()))).orElse("");
  }

  /** Paragraphs and a table, empty if nothing clashes. */
  List<Block> blocks() {
    if (conflict.isEmpty()) {
      return List.of();
    }
    Conflict c = conflict.get();
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Paragraph(who(c)));
    if (c.givingWay().isEmpty()) {
      blocks.add(new Block.Paragraph(summary()));
      return blocks;
    }
    blocks.add(
        new Block.Paragraph(
            c.givingWay().size() == 1
                ? "Only one of them can end the clash alone:"
                : "Any one of these steps alone would be enough; the smallest comes first:"));
    List<List<String>> rows = new ArrayList<>();
    c.givingWay().forEach(way -> body(way).ifPresent(b -> rows.add(row(way, b))));
    blocks.add(
        new Block.Table(
            List.of(
                "give way",
                "body that follows",
                "wall",
                "drag area",
                study.brief().mission().name()),
            rows));
    blocks.add(new Block.Paragraph(closing(c)));
    return blocks;
  }

  private static String who(Conflict c) {
    String names =
        c.clashing().stream()
            .map(w -> "“" + w.consideration().name() + "”")
            .collect(Collectors.joining(", "));
    long others = c.clashing().size();
    return others == 1
        ? "No body meets "
            + names
            + ", whatever else is asked; the rest of the brief is not to blame."
        : "The brief cannot be met as it stands. The clash is between "
            + names
            + ": leave any one of these out and the others agree. What else the brief asks is not"
            + " the trouble.";
  }

  private Optional<Fuselage> body(Conflict.GivingWay way) {
    BodyShape shape = study.brief().shape();
    double length = way.body().length();
    double diameter = way.body().diameter();
    return length / diameter >= shape.leastFinenessRatio()
        ? Optional.of(new Fuselage(shape, Length.metres(length), Length.metres(diameter)))
        : Optional.empty();
  }

  private List<String> row(Conflict.GivingWay way, Fuselage body) {
    String words =
        way.by()
            .consideration()
            .givingWayTo(body.length().si(), body.diameter().si(), units.length());
    return List.of(
        sentence(words.replace("\"", "")),
        units.show(body.length()) + " × " + units.show(body.diameter()),
        study.brief().mission().massOfShell(body).format(units.mass(), 3),
        units.dragArea().format(study.dragAreaOf(body), 3),
        study.brief().mission().unit().format(study.figureOf(body), 3));
  }

  private static String closing(Conflict c) {
    List<Weighed> soft =
        c.clashing().stream()
            .filter(w -> w.consideration().strength() == Strength.GUIDELINE)
            .toList();
    Weighed least = c.givingWay().get(0).by();
    String first =
        "The smallest step, by "
            + NamedUnit.NUMBER.format(100.0 * c.givingWay().get(0).miss(), 2)
            + " %, is asked of “"
            + least.consideration().name()
            + "”. ";
    return soft.isEmpty()
        ? first + "All that clash are limits: ask first which of them is truly fixed."
        : first
            + "Of those that clash, "
            + soft.stream()
                .map(w -> "“" + w.consideration().name() + "”")
                .collect(Collectors.joining(" and "))
            + (soft.size() == 1
                ? " is a guideline and not a limit"
                : " are guidelines and not limits")
            + ": it may be left, at a price, without any machine or law objecting.";
  }

  private static String sentence(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }
}
