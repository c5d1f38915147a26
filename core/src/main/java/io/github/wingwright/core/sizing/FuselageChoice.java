// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.basis.Decision;
import io.github.wingwright.core.basis.FeasibleRange;
import io.github.wingwright.core.basis.FeasibleRegion;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Price;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Sized;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Weighed;
import io.github.wingwright.core.basis.Workings;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.numerics.Minimum;
import io.github.wingwright.core.numerics.Tolerance;
import io.github.wingwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.StringJoiner;
import java.util.function.DoubleSupplier;
import java.util.function.DoubleUnaryOperator;

/** Closes a fuselage specification: finds the body, and everything that is said about it. */
final class FuselageChoice {
  /** No body drags so much more than another that is worth looking at. */
  private static final double OUTSIDE_THE_FIT = 1e6;

  private static final Tolerance FINE = Tolerance.relative(1e-9);
  private static final int SCAN = 48;

  /** Rounding in a closed form must not turn a body on the very boundary into one outside it. */
  private static final double ROUNDING = 1e-9;

  private static final Source RULE = Source.library("the rule of choice stated with FuselageSizing");

  private final FuselageSizing sizing;
  private final BodyShape shape;
  private final Negotiation negotiation;

  private FuselageChoice(FuselageSizing sizing) {
    this.sizing = sizing;
    this.shape = sizing.shape();
    this.negotiation = sizing.negotiation();
    if (!sizing.pricing().figures().isEmpty() && sizing.pricing().drag().isEmpty()) {
      throw new IllegalStateException("a figure of merit needs the drag of a body, has none: give draggingAs(…)");
    }
  }

  static Sized<Fuselage> of(FuselageSizing sizing, Length diameter) {
    FuselageChoice choice = new FuselageChoice(sizing);
    Step d = Step.given("diameter, as chosen", "d", diameter, Source.BRIEF);
    return choice.sized(choice.lengthStep(), d);
  }

  static Sized<Fuselage> nearestToTargets(FuselageSizing sizing) {
    FuselageChoice choice = new FuselageChoice(sizing);
    if (choice.negotiation.all().stream().noneMatch(w -> w.isTarget() && w.decision().applies())) {
      throw new IllegalStateException("targets must be given, such as diameterNear(…), was none");
    }
    return choice.solved(choice.lengthStep(), "diameter nearest to the targets, by ratio", choice::nearestToTargets);
  }

  /** Bodies that the method was made for come first: a form factor held at the end of its fit would praise a ball. */
  static Sized<Fuselage> leastDrag(FuselageSizing sizing, DragArea drag) {
    Interval fit = drag.fit();
    DragArea ranked =
        (shape, l, d) ->
            drag.dragArea(shape, l, d) * (l <= fit.upper() * d && l >= fit.lower() * d ? 1.0 : OUTSIDE_THE_FIT);
    return least(sizing, "least drag area D/q in the feasible range", fit.equals(Interval.ALL) ? drag : ranked);
  }

  static Sized<Fuselage> least(FuselageSizing sizing, String closing, DragArea cost) {
    FuselageChoice choice = new FuselageChoice(sizing);
    Step length =
        sizing.fixedLength().isPresent()
            ? choice.lengthStep()
            : choice.lengthStep(closing, () -> choice.lengthOfLeast((l, d) -> cost.dragArea(choice.shape, l, d)));
    return choice.solved(length, closing, l -> choice.least(l, d -> cost.dragArea(choice.shape, l, d)));
  }

  private interface OfBoth {
    double at(double length, double diameter);
  }

  private Step lengthStep() {
    if (sizing.fixedLength().isPresent()) {
      return Step.given("length, as fixed", "L", sizing.fixedLength().get(), Source.BRIEF);
    }
    return lengthStep(
        "L = the longest at which some diameter satisfies all considerations", () -> sizing.lengthOf());
  }

  private Step lengthStep(String closing, DoubleSupplier length) {
    return Step.solution(
        "length",
        "L",
        Length.METRE,
        "scan and refinement on the feasible range",
        closing,
        none -> length.getAsDouble(),
        closed -> closed[0] / length.getAsDouble() - 1.0,
        RULE);
  }

  private Sized<Fuselage> solved(Step length, String closing, DoubleUnaryOperator diameterAt) {
    Step diameter =
        Step.solution(
            "diameter",
            "d",
            Length.METRE,
            "scan and refinement on the feasible range",
            closing,
            in -> diameterAt.applyAsDouble(in[0]),
            closed -> closed[1] / diameterAt.applyAsDouble(closed[0]) - 1.0,
            RULE,
            length);
    return sized(length, diameter);
  }

  private double nearestToTargets(double length) {
    double sum = 0.0;
    int count = 0;
    for (Weighed one : negotiation.all()) {
      if (one.isTarget() && one.decision().applies()) {
        double preferred = one.consideration().preferredDiameter(length).orElse(Double.NaN);
        if (preferred > 0.0) {
          sum += Math.log(preferred);
          count++;
        }
      }
    }
    Interval feasible = negotiation.workableDiameters(length);
    if (feasible.isEmpty() || count == 0) {
      return negotiation.leastBadDiameter(length);
    }
    // One target stays exact: exp(log d) is not always d.
    double wanted = count == 1 ? onlyTarget(length) : Math.exp(sum / count);
    return feasible.clamp(wanted);
  }

  private double onlyTarget(double length) {
    return negotiation.all().stream()
        .filter(w -> w.isTarget() && w.decision().applies())
        .mapToDouble(w -> w.consideration().preferredDiameter(length).orElse(Double.NaN))
        .filter(d -> d > 0.0)
        .findFirst()
        .orElseThrow();
  }

  /** The diameter of least cost at a length, or the least bad one if nothing is feasible. */
  private double least(double length, DoubleUnaryOperator cost) {
    Interval feasible = negotiation.workableDiameters(length).intersect(negotiation.diameterSearch(length));
    if (feasible.isEmpty()) {
      return negotiation.leastBadDiameter(length);
    }
    if (feasible.width() <= 1e-12 * feasible.upper()) {
      return feasible.lower();
    }
    double least = Minimum.amongSeveral(cost, feasible.lower(), feasible.upper(), SCAN, FINE).argument();
    return feasible.clamp(least);
  }

  private double lengthOfLeast(OfBoth cost) {
    Interval lengths = negotiation.workableLengths();
    if (lengths.isEmpty()) {
      return negotiation.leastBadLength();
    }
    double longest = Negotiation.bounded(lengths).upper();
    double shortest = Math.max(lengths.lower(), 1e-3 * longest);
    if (longest - shortest <= 1e-12 * longest) {
      return longest;
    }
    DoubleUnaryOperator atBest = l -> cost.at(l, least(l, d -> cost.at(l, d)));
    return Minimum.amongSeveral(atBest, shortest, longest, SCAN, Tolerance.relative(1e-8)).argument();
  }

  private Sized<Fuselage> sized(Step length, Step diameter) {
    double l = length.value();
    Fuselage body = Pricing.body(shape, l, diameter.value());
    FeasibleRange range = negotiation.diameterRange(l);
    List<Finding> findings = new ArrayList<>(broken(body));
    boolean guidelineLeft = findings.stream().anyMatch(f -> f.severity() == Severity.CAUTION);
    findings.addAll(clash(range));
    findings.addAll(decisions());
    Workings workings = workings(length, diameter);
    sizing.pricing().drag().ifPresent(drag -> findings.addAll(drag.findings(body)));
    findings.addAll(workings.findings());
    List<Price> prices = guidelineLeft ? prices(body) : List.of();
    return new Sized<>(body, range, workings, findings, prices);
  }

  private List<Price> prices(Fuselage body) {
    double l = body.length().si();
    double best = least(l, d -> sizing.pricing().badness(shape, l, d));
    return sizing.pricing().prices(Pricing.body(shape, l, best), body, sizing.unit());
  }

  private List<Finding> broken(Fuselage body) {
    double l = body.length().si();
    double d = body.diameter().si();
    List<Finding> findings = new ArrayList<>();
    for (Weighed one : negotiation.all()) {
      if (one.binds() && one.consideration().margin(l, d) < -ROUNDING) {
        findings.add(broken(one, l, d));
      }
    }
    return findings;
  }

  private Finding broken(Weighed one, double length, double diameter) {
    Interval diameters = one.consideration().diametersAt(length, negotiation.diameterSearch(length));
    boolean aboutLength = diameters.isEmpty();
    // Shorter than the family's stoutest body of this diameter there is none.
    Interval exists = Interval.atLeast(shape.leastFinenessRatio() * diameter);
    Interval lengths = one.consideration().lengthsAt(diameter, Interval.between(1e-3, 1e3));
    boolean atNoLength = lengths.intersect(exists).isEmpty();
    String message =
        (one.isLimit() ? "The limit \"" : "The guideline \"")
            + one.consideration().nameIn(sizing.unit())
            + "\" does not hold for this choice. "
            + (aboutLength && atNoLength
                ? "It holds neither with another length nor with another diameter alone."
                : aboutLength
                    ? "It would with a length of " + lengths.format(sizing.unit()) + "."
                    : "It would with a diameter of " + diameters.format(sizing.unit()) + ".");
    return Finding.of(
        one.isLimit() ? Severity.SERIOUS : Severity.CAUTION,
        aboutLength ? "fuselage length" : "fuselage diameter",
        message,
        aboutLength ? length : diameter,
        aboutLength ? lengths : diameters,
        sizing.unit(),
        one.consideration().source());
  }

  private List<Finding> clash(FeasibleRange range) {
    if (!range.isEmpty()) {
      return List.of();
    }
    FeasibleRegion region = sizing.region();
    StringJoiner advice = new StringJoiner(" ");
    if (sizing.fixedLength().isEmpty() && region.conflict().isPresent()) {
      advice.add(sentence(region.conflict().get().describe(sizing.unit())));
    } else {
      range.clashes().stream().limit(1).forEach(worst -> advice.add(worst.describe(sizing.unit())));
      if (!region.isEmpty()) {
        advice.add(
            "With the length free they agree: lengths of "
                + region.lengths().format(sizing.unit())
                + ", diameters of "
                + region.diameters().format(sizing.unit())
                + ".");
      }
    }
    advice.add("The body shown is the least bad one.");
    return List.of(
        Finding.of(
            range.limits().isEmpty() ? Severity.SERIOUS : Severity.CAUTION,
            "fuselage, considerations that clash",
            advice.toString(),
            RULE));
  }

  private static String sentence(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  private List<Finding> decisions() {
    List<Finding> findings = new ArrayList<>();
    for (Weighed one : negotiation.all()) {
      if (one.decision().kind() != Decision.Kind.CHOSEN) {
        findings.add(
            Finding.of(
                Severity.NOTE,
                one.consideration().nameIn(sizing.unit()),
                "The consideration is " + one.decision() + ".",
                Source.BRIEF));
      }
    }
    return findings;
  }

  private Workings workings(Step length, Step diameter) {
    List<Step> results = new ArrayList<>();
    BodySteps body = BodySteps.of(shape, length, diameter);
    results.addAll(List.of(body.fineness(), body.frontalArea(), body.volume(), body.wettedArea()));
    sizing
        .pricing()
        .shell()
        .ifPresent(
            shell -> {
              Step ring = Step.of(BodyShell.SECOND_MOMENT, diameter, shell.wallStep());
              results.add(Step.of(BodyShell.BENDING_STIFFNESS, shell.modulusStep(), ring));
            });
    sizing.pricing().drag().flatMap(drag -> drag.step(body)).ifPresent(results::add);
    return Workings.of(results);
  }
}
