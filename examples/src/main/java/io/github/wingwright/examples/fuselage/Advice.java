// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.fuselage;

import io.github.wingwright.core.basis.Conflict;
import io.github.wingwright.core.basis.Conflict.GivingWay;
import io.github.wingwright.core.basis.Strength;
import io.github.wingwright.core.basis.Weighed;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.report.Block;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What a good colleague would say about considerations that leave nothing: who clashes, what would end it and what that
 * does to the aeroplane, which way costs least, and what to do next.
 */
final class Advice {
  private static final int MOST_WAYS = 4;

  private final BodyStudy study;
  private final Units units;
  private final Optional<Conflict> conflict;
  private final List<Way> ways;

  Advice(BodyStudy study) {
    this.study = study;
    this.units = study.brief().units();
    this.conflict = study.region().conflict();
    this.ways =
        conflict.stream().flatMap(c -> c.waysOut().stream()).flatMap(w -> way(w).stream()).limit(MOST_WAYS).toList();
  }

  /** A way out with the body that follows from it and what the aeroplane is judged by. */
  private record Way(List<GivingWay> steps, Fuselage body, double figure) {
    double miss() {
      return steps.stream().mapToDouble(GivingWay::miss).sum();
    }

    long limits() {
      return steps.stream().filter(s -> s.by().consideration().strength() == Strength.LIMIT).count();
    }
  }

  private Optional<Way> way(List<GivingWay> steps) {
    BodyShape shape = study.brief().shape();
    double length = steps.get(0).body().length();
    double diameter = steps.get(0).body().diameter();
    if (length / diameter < shape.leastFinenessRatio()) {
      return Optional.empty();
    }
    Fuselage body = new Fuselage(shape, Length.metres(length), Length.metres(diameter));
    return Optional.of(new Way(steps, body, study.figureOf(body)));
  }

  /** All of it as running text. */
  String summary() {
    return String.join(" ", lines());
  }

  /** One entry for each thing to say, empty if nothing clashes. */
  List<String> lines() {
    List<String> lines = new ArrayList<>();
    conflict.ifPresent(
        c -> {
          lines.add(who(c));
          if (!ways.isEmpty()) {
            lines.add(enough(c));
            int number = 1;
            for (Way way : ways) {
              lines.add(number++ + ". " + what(way) + ". " + body(way) + "; " + study.brief().mission().name() + ": " + figure(way.figure()) + ".");
            }
          }
          lines.add(cost());
          lines.add(next(c));
          lines.removeIf(String::isEmpty);
        });
    return lines;
  }

  /** Paragraphs and a table, empty if nothing clashes. */
  List<Block> blocks() {
    if (conflict.isEmpty()) {
      return List.of();
    }
    Conflict c = conflict.get();
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Paragraph(who(c)));
    if (!ways.isEmpty()) {
      blocks.add(new Block.Paragraph(enough(c)));
      blocks.add(
          new Block.Table(
              List.of("way", "give way", "body that follows", "wall", "drag area", study.brief().mission().name()),
              ways.stream().map(this::row).toList()));
      blocks.add(new Block.Paragraph(cost()));
    }
    blocks.add(new Block.Paragraph(next(c)));
    return blocks;
  }

  private static String who(Conflict c) {
    if (c.clashing().size() == 1 && c.further().isEmpty()) {
      return "No body meets " + quoted(c.clashing().get(0)) + ", whatever else is asked; the rest of the brief is not to blame.";
    }
    String first = "The brief cannot be met as it stands. " + sentence(clash(c.clashing()));
    if (!c.givingWay().isEmpty()) {
      return first
          + (c.clashing().size() > 2 ? ", though they could with any one of them left out" : "")
          + "; at best they miss each other by "
          + percent(c.givingWay().get(0).miss())
          + ". Nothing else in the brief stands in the way.";
    }
    return c.further().isEmpty()
        ? first + ", and leaving out one of them is not enough: others clash with the rest."
        : first
            + c.further().stream().limit(MOST_WAYS).map(Advice::clash).collect(Collectors.joining("; ", "; ", ""))
            + (c.further().size() > MOST_WAYS ? "; and more." : ".");
  }

  private static String clash(List<Weighed> set) {
    return switch (set.size()) {
      case 1 -> quoted(set.get(0)) + " is met by no body";
      case 2 -> listed(set.stream().map(Advice::quoted).toList()) + " cannot both hold";
      default -> listed(set.stream().map(Advice::quoted).toList()) + " cannot all hold";
    };
  }

  private String enough(Conflict c) {
    if (c.givingWay().isEmpty()) {
      return "No single step is enough. "
          + (ways.size() == 1 ? "These steps together are:" : "Any one of these ways is, with all of its steps; the mildest comes first:");
    }
    return ways.size() == 1
        ? "Only one of them can end the clash alone:"
        : "Any one of these ways alone is enough; the smallest step comes first:";
  }

  /** The steps of a way in words, each with the part by which it goes beyond what was asked. */
  private String what(Way way) {
    List<String> steps = new ArrayList<>();
    for (GivingWay step : way.steps()) {
      String words =
          step.by().consideration().givingWayTo(way.body().length().si(), way.body().diameter().si(), units.length());
      steps.add(words.replaceFirst("\"", "“").replaceFirst("\"", "”") + " (by " + percent(step.miss()) + ")");
    }
    return sentence(listed(steps));
  }

  private String body(Way way) {
    return "Body " + units.show(way.body().length()) + " × " + units.show(way.body().diameter());
  }

  private String figure(double figure) {
    return study.brief().mission().unit().format(figure, 3);
  }

  private List<String> row(Way way) {
    return List.of(
        String.valueOf(number(way)),
        what(way),
        units.show(way.body().length()) + " × " + units.show(way.body().diameter()),
        study.brief().mission().massOfShell(way.body()).format(units.mass(), 3),
        units.dragArea().format(study.dragAreaOf(way.body()), 3),
        figure(way.figure()));
  }

  /** Least in the wishes themselves, and least in what the aeroplane is judged by. */
  private String cost() {
    if (ways.size() < 2) {
      return "";
    }
    Way best = ways.stream().max(Comparator.comparingDouble(Way::figure)).orElseThrow();
    Way worst = ways.stream().min(Comparator.comparingDouble(Way::figure)).orElseThrow();
    String least = "Way 1 asks the least of your wishes, " + percent(ways.get(0).miss()) + (ways.get(0).steps().size() > 1 ? " in all. " : ". ");
    String judged = sentence(study.brief().mission().name());
    return figure(best.figure()).equals(figure(worst.figure()))
        ? least + judged + ": " + figure(best.figure()) + " with each of them."
        : least
            + judged
            + ": best with way "
            + number(best)
            + ", "
            + figure(best.figure())
            + ", worst with way "
            + number(worst)
            + ", "
            + figure(worst.figure())
            + ".";
  }

  private int number(Way way) {
    return ways.indexOf(way) + 1;
  }

  private String next(Conflict c) {
    if (ways.isEmpty()) {
      return "What to do next: "
          + (c.clashing().size() == 1 && c.further().isEmpty()
              ? "change it, or choose another family of bodies."
              : "more than three of these wishes would have to give way at once. Set aside those you can do without, with a"
                  + " reason, and run the brief again: the clash that is left is then told by itself.");
    }
    Way first = ways.stream().min(Comparator.comparingLong(Way::limits)).orElseThrow();
    List<String> soft =
        first.steps().stream()
            .map(GivingWay::by)
            .filter(w -> w.consideration().strength() == Strength.GUIDELINE)
            .map(Advice::quoted)
            .toList();
    String why =
        soft.isEmpty()
            ? "all that could give way are limits, so ask first which of them is truly fixed. If way 1 can be had, "
            : "try way "
                + number(first)
                + " first. "
                + listed(soft)
                + (soft.size() == 1 ? " is a guideline and not a limit: it" : " are guidelines and not limits: they")
                + " may be left, at a price, without any machine or part objecting. To go that way, ";
    return "What to do next: "
        + why
        + "change the brief to what that way says and run it again"
        + (ways.size() == 1 ? "." : "; else take another.");
  }

  private static String quoted(Weighed one) {
    return "“" + one.consideration().name() + "”";
  }

  private static String listed(List<String> all) {
    int last = all.size() - 1;
    return last == 0 ? all.get(0) : String.join(", ", all.subList(0, last)) + " and " + all.get(last);
  }

  private static String percent(double part) {
    return NamedUnit.NUMBER.format(100.0 * part, 2) + " %";
  }

  private static String sentence(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }
}
