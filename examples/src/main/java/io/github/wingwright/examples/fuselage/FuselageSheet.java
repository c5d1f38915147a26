// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.fuselage;

import io.github.wingwright.core.basis.Bound;
import io.github.wingwright.core.basis.FeasibleRange;
import io.github.wingwright.core.basis.FeasibleRegion;
import io.github.wingwright.core.basis.Price;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.report.Entry;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** The short sheet for a terminal. */
final class FuselageSheet {
  private static final int HEAD = 15;
  private static final int NAME = 64;
  private static final int WIDTH = 100;

  private final BodyStudy study;
  private final Units units;

  FuselageSheet(BodyStudy study) {
    this.study = study;
    this.units = study.brief().units();
  }

  List<String> lines() {
    List<String> lines = new ArrayList<>();
    Fuselage body = study.body();
    put(
        lines,
        "Body",
        body.shape().name() + ", " + size(body) + ", fineness " + number(body.finenessRatio(), 3));
    put(
        lines,
        "",
        "volume "
            + body.volume().format(units.volume(), 3)
            + ", wetted area "
            + body.wettedArea().format(units.area(), 3)
            + ", wall "
            + study.brief().mission().massOfShell(body).format(units.mass(), 3));
    FeasibleRange range = study.sized().range();
    String head = "Diameter at " + units.show(body.length());
    for (Bound bound : range.bounds()) {
      if (bound.source().standing() != Source.Standing.DEFINITION || bound.binds()) {
        lines.add(row(head, bound));
        head = "";
      }
    }
    lines.add(
        pad("", HEAD)
            + "  all together: "
            + (range.isEmpty() ? "nothing is left" : range.interval().format(units.length())));
    String regionHead = "Region";
    for (String words : region()) {
      put(lines, regionHead, words);
      regionHead = "";
    }
    String priceHead = "Price";
    for (Price price : study.region().isEmpty() ? List.<Price>of() : study.sized().prices()) {
      put(lines, priceHead, price.toString());
      priceHead = "";
    }
    study
        .placing()
        .ifPresent(
            p ->
                put(
                    lines,
                    "Inside",
                    p.places().size()
                        + " things, "
                        + units.show(p.mass())
                        + ", centre of gravity "
                        + Length.show(p.centreOfGravity().si(), units.length(), 3)
                        + " behind the nose"));
    Entry figure =
        new Entry(
            study.brief().mission().name(), study.figure(), study.brief().mission().unit(), 3);
    put(lines, "Drag", units.dragArea().format(study.dragArea().value(), 3) + ", " + spread());
    put(lines, "Judged by", figure.label() + ": " + figure.text());
    put(lines, "Findings", counts());
    return lines;
  }

  private String row(String head, Bound bound) {
    String strength = bound.strength().name().toLowerCase(Locale.ROOT);
    String what =
        !bound.decision().applies()
            ? "set aside"
            : bound.preference().isPresent()
                ? "near " + Length.show(bound.preferred(), units.length(), 3)
                : bound.interval().isEmpty()
                    ? "no diameter"
                    : bound.interval().format(units.length());
    String first =
        head.isEmpty() ? pad("", HEAD) : pad(head.length() <= HEAD - 1 ? head : "Diameter", HEAD);
    String name =
        bound.name().length() > NAME ? bound.name().substring(0, NAME - 1) + "…" : bound.name();
    return first + pad(strength, 10) + pad(name, NAME) + " " + what;
  }

  private List<String> region() {
    FeasibleRegion region = study.region();
    if (region.conflict().isPresent()) {
      List<String> words = new ArrayList<>(new Advice(study).lines());
      words.set(0, "empty. " + words.get(0));
      return words;
    }
    String sides =
        region.outlines().stream()
            .flatMap(o -> o.sides().stream())
            .map(
                s -> s.boundBy().map(w -> w.consideration().name()).orElse("the end of the window"))
            .distinct()
            .collect(Collectors.joining("; "));
    return List.of(
        "lengths "
        + region.lengths().format(units.length())
        + ", diameters "
        + region.diameters().format(units.length())
        + "; bound by "
        + sides);
  }

  private String spread() {
    var band = study.methods().coefficient();
    double part = study.dragArea().value() / band.likely();
    return "by all methods "
        + number(units.dragArea().fromSi(band.low() * part), 3)
        + " to "
        + units.dragArea().format(band.high() * part, 3)
        + "; bending stiffness "
        + units.stiffness().format(
            study.brief().shell().bendingStiffness(study.body().diameter()).si(), 3);
  }

  private String counts() {
    long serious = study.findings().stream().filter(f -> f.severity() == Severity.SERIOUS).count();
    long caution = study.findings().stream().filter(f -> f.severity() == Severity.CAUTION).count();
    long note = study.findings().size() - serious - caution;
    return serious
        + " serious, "
        + caution
        + (caution == 1 ? " caution, " : " cautions, ")
        + note
        + (note == 1 ? " note" : " notes")
        + ": see the report";
  }

  private String size(Fuselage body) {
    return units.show(body.length()) + " × " + units.show(body.diameter());
  }

  private static String number(double value, int digits) {
    return NamedUnit.NUMBER.format(value, digits);
  }

  /** A head and words, broken at blanks. */
  private static void put(List<String> lines, String head, String words) {
    String line = pad(head, HEAD);
    boolean empty = true;
    for (String word : words.split(" ")) {
      if (!empty && line.length() + 1 + word.length() > WIDTH) {
        lines.add(line);
        line = pad("", HEAD);
        empty = true;
      }
      line = empty ? line + word : line + " " + word;
      empty = false;
    }
    lines.add(line);
  }

  private static String pad(String text, int width) {
    return text.length() >= width ? text : text + " ".repeat(width - text.length());
  }
}
