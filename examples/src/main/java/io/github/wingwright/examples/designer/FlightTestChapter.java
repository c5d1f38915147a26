// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.performance.GlidePoint;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.quantity.Time;
import io.github.wingwright.core.report.Block;
import io.github.wingwright.core.report.Chapter;
import io.github.wingwright.stability.design.Design;
import io.github.wingwright.stability.design.SizingLoop;
import io.github.wingwright.stability.flighttest.Behaviour;
import io.github.wingwright.stability.flighttest.FlightEvaluation;
import io.github.wingwright.stability.flighttest.FlightTest;
import io.github.wingwright.stability.flighttest.GlideResult;
import io.github.wingwright.stability.flighttest.Measured;
import io.github.wingwright.stability.flighttest.TrimAdvice;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What test flights say: drag, trim, and the next print. */
final class FlightTestChapter {
  private final Design design;
  private final GliderBrief brief;
  private final FlightTests tests;
  private final FlightEvaluation tested;

  FlightTestChapter(Design design, GliderBrief brief, FlightTests tests) {
    this.design = design;
    this.brief = brief;
    this.tests = tests;
    this.tested = tests.evaluate(design);
  }

  Chapter chapter() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Paragraph(tests.note()));
    blocks.add(flights());
    blocks.add(new Block.Points(summary()));
    if (!tested.advice().isEmpty()) {
      blocks.add(new Block.Paragraph("What to change, each amount alone, from the derivatives of the design:"));
      blocks.add(new Block.Points(tested.advice().stream().map(TrimAdvice::words).toList()));
    }
    List<Finding> findings = tested.findings();
    if (!findings.isEmpty()) {
      blocks.add(new Block.Findings(findings));
    }
    blocks.add(
        new Block.Paragraph(
            "The next print, sized anew with the material as weighed ("
                + tested.materialAsWeighed()
                + ") and the polar as flown, against this one:"));
    Design next = SizingLoop.of(tested.nextBrief()).madeTo(brief.making().length(), brief.making().mass()).solve();
    blocks.addAll(new ComparisonChapter(design, next, "this print", "the next print", brief.units()).tables());
    return new Chapter("Test flights", blocks);
  }

  private Block.Table flights() {
    BriefUnits units = brief.units();
    List<List<String>> rows = new ArrayList<>();
    for (FlightTest flight : tests.flights()) {
      Optional<GlideResult> result = tested.results().stream().filter(r -> r.flight() == flight).findFirst();
      String did =
          flight.behaviours().isEmpty()
              ? "straight and steady"
              : flight.behaviours().stream().sorted().map(Behaviour::words).collect(Collectors.joining(", "));
      rows.add(
          List.of(
              flight.name(),
              flight.distance().format(Length.METRE),
              flight.time().map(t -> t.format(Time.SECOND)).orElse("not taken"),
              did,
              result.map(r -> r.liftToDrag().toString()).orElse(""),
              result.map(r -> r.sinkRate().format(units.speed())).orElse(""),
              result.map(r -> r.liftCoefficient().toString()).orElse(""),
              result.map(r -> r.dragCoefficient().toString()).orElse("")));
    }
    return new Block.Table(
        List.of("flight", "distance", "time", "what it did", "lift to drag", "sink rate", "C_L", "C_D"), rows);
  }

  private List<String> summary() {
    BriefUnits units = brief.units();
    List<String> points = new ArrayList<>();
    points.add(
        "It weighs " + tested.mass().format(units.mass()) + ", reckoned " + design.aircraft().mass().format(units.mass(), 3)
            + "; its printed parts are " + factor(tested.materialFactor()) + ".");
    tested.liftToDrag().ifPresent(e -> points.add("Lift to drag of the steady flights: " + e + reckoned() + "."));
    tested.sinkRate().ifPresent(w -> points.add("Sink rate: " + w.format(units.speed()) + "."));
    tested.excessDrag()
        .ifPresent(
            d ->
                points.add(
                    "Drag coefficient beyond what the design reckons at the same lift and speed: "
                        + NamedUnit.NUMBER.format(d.value(), 2)
                        + " ± "
                        + NamedUnit.NUMBER.format(d.uncertainty(), 1)
                        + ". An uncertainty is one within which two out of three measurements lie."));
    return points;
  }

  private static String factor(Measured factor) {
    double part = 100.0 * (factor.value() - 1.0);
    String size = NamedUnit.NUMBER.format(Math.abs(part), 2) + " %";
    return part >= 0.0 ? size + " heavier than reckoned" : size + " lighter than reckoned";
  }

  /** What the design expected at the lift of the flights. */
  private String reckoned() {
    double lift =
        tested.results().stream().mapToDouble(r -> r.liftCoefficient().value()).average().orElse(Double.NaN);
    if (!(lift > 0.0 && lift <= design.glide().usableLift())) {
      return "";
    }
    GlidePoint at = design.glide().at(lift);
    return "; reckoned at their lift coefficient " + NamedUnit.NUMBER.format(at.liftToDrag(), 2);
  }
}
