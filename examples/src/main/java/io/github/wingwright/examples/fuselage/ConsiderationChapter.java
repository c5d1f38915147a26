// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.fuselage;

import io.github.wingwright.core.basis.Consideration;
import io.github.wingwright.core.basis.FeasibleRegion;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.MarginWords;
import io.github.wingwright.core.basis.Weighed;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.report.Block;
import io.github.wingwright.core.report.Chapter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/** The table of all considerations: how strict, who says so, what each leaves, how the choice stands to it. */
final class ConsiderationChapter {
  private static final double MOST_SLENDER = 500.0;

  private final BodyStudy study;
  private final Units units;
  private final Fuselage body;

  ConsiderationChapter(BodyStudy study) {
    this.study = study;
    this.units = study.brief().units();
    this.body = study.body();
  }

  Chapter chapter() {
    FeasibleRegion region = study.region();
    Set<String> binding =
        region.outlines().stream()
            .flatMap(o -> o.sides().stream())
            .flatMap(s -> s.boundBy().stream())
            .map(w -> w.consideration().name())
            .collect(Collectors.toSet());
    Set<String> clashing =
        region.conflict().stream()
            .flatMap(c -> c.clashing().stream())
            .map(w -> w.consideration().name())
            .collect(Collectors.toSet());
    List<List<String>> rows = new ArrayList<>();
    List<String> rules = new ArrayList<>();
    for (Weighed one : region.considerations()) {
      Consideration c = one.consideration();
      String name = c.nameIn(units.all());
      String part =
          clashing.contains(c.name()) ? "clashes" : binding.contains(c.name()) ? "binds" : "";
      rows.add(
          List.of(
              name,
              strength(one),
              c.source().cite(),
              one.decision().applies() ? diameters(c) : "",
              one.decision().applies() ? lengths(c) : "",
              MarginWords.of(one, body.length().si(), body.diameter().si(), units.all()),
              part));
      String rule = study.brief().asked().rules().get(c.name());
      rules.add(
          name
              + ": "
              + (rule == null ? "L/d ≥ f_min: a stouter body of this family does not exist" : rule)
              + attained(one));
    }
    return Chapter.of(
        "Who has a say",
        new Block.Paragraph(
            "Each consideration is a margin over length and diameter, satisfied where it is not"
                + " negative. A limit cannot be otherwise; a guideline may be left at a price; a"
                + " target merely pulls. The margin is relative: what is missed by 10 % is a"
                + " tenth short, or a tenth too much."),
        new Block.Table(
            List.of(
                "consideration",
                "strength",
                "who says so",
                "diameters at L = " + units.show(body.length()),
                "lengths at d = " + units.show(body.diameter()),
                study.region().isEmpty() ? "margin of the body shown" : "margin of the choice",
                "region"),
            rows),
        new Block.Paragraph("As rules, with length L and diameter d, and what this body comes to:"),
        new Block.Points(rules));
  }

  /** What the body shown comes to in the consideration's own measure, if that has one. */
  private String attained(Weighed one) {
    Consideration c = one.consideration();
    String words =
        c.givingWayTo(body.length().si(), body.diameter().si(), units.length())
            .replace("\"" + c.nameIn(units.length()) + "\" with ", "");
    boolean measured =
        !words.startsWith("\"") && !words.contains("contents") && one.decision().applies();
    int other = words.indexOf(", or ");
    return measured ? ". This body: " + (other < 0 ? words : words.substring(0, other)) : "";
  }

  private static String strength(Weighed one) {
    String strength = one.consideration().strength().name().toLowerCase(Locale.ROOT);
    return switch (one.decision().kind()) {
      case CHOSEN -> strength;
      case PROVISIONAL -> strength + ", provisional";
      case NOT_APPLICABLE -> strength + ", set aside";
    };
  }

  private String diameters(Consideration c) {
    double length = body.length().si();
    if (c.preferredDiameter(length).isPresent()) {
      return "near " + Length.show(c.preferredDiameter(length).getAsDouble(), units.length(), 4);
    }
    double stoutest = length / body.shape().leastFinenessRatio();
    return words(c.diametersAt(length, Interval.between(length / MOST_SLENDER, stoutest)));
  }

  private String lengths(Consideration c) {
    double diameter = body.diameter().si();
    if (c.preferredDiameter(body.length().si()).isPresent()) {
      return "";
    }
    Interval exists =
        Interval.between(body.shape().leastFinenessRatio() * diameter, 100.0 * diameter);
    return words(c.lengthsAt(diameter, exists));
  }

  private String words(Interval interval) {
    if (interval.isEmpty()) {
      return "none";
    }
    Interval shown = interval.lower() <= 0.0 ? Interval.atMost(interval.upper()) : interval;
    return Double.isInfinite(shown.lower()) && Double.isInfinite(shown.upper())
        ? "any"
        : shown.format(units.length());
  }
}
