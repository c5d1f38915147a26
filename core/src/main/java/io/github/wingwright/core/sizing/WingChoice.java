// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.basis.Bound;
import io.github.wingwright.core.basis.Decision;
import io.github.wingwright.core.basis.FeasibleRange;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Price;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Sized;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Strength;
import io.github.wingwright.core.basis.Workings;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.TaperedPlanform;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.ArrayList;
import java.util.List;

/** Closes a wing specification: builds the wing, and everything that is said about it. */
final class WingChoice {
  private static final double ROUNDING = 1e-9;

  private WingChoice() {}

  static FeasibleRange range(WingFrame frame, List<WingSizing.WeighedWing> weighed, NamedUnit<Length> unit) {
    List<Bound> bounds = new ArrayList<>(weighed.size());
    for (WingSizing.WeighedWing one : weighed) {
      WingConsideration c = one.consideration();
      bounds.add(
          new Bound(c.nameIn(unit), c.strength(), c.source(), c.meanChords(frame), Double.NaN, one.decision()));
    }
    return FeasibleRange.of("mean chord of the wing", unit, bounds);
  }

  static Sized<Wing> of(
      WingSize size,
      WingSizing.Shape shape,
      WingFrame frame,
      List<WingSizing.WeighedWing> weighed,
      NamedUnit<Length> unit) {
    Step taper = Step.given("taper ratio", "λ", shape.taperRatio(), Source.BRIEF);
    Step root = Step.of(TaperedPlanform.ROOT_CHORD, size.area(), size.span(), taper);
    Step tip = Step.of(TaperedPlanform.TIP_CHORD, taper, root);
    Step mean = Step.of(WingFormulas.MEAN_CHORD, size.area(), size.span());
    Step thickness =
        Step.given(
            "thickness over chord of " + frame.section().name(),
            "τ",
            frame.section().maximumThickness(),
            WingConsiderations.SECTION);
    Workings workings =
        Workings.of(
            List.of(
                size.span(),
                size.area(),
                size.aspectRatio(),
                root,
                tip,
                mean,
                Step.of(TaperedPlanform.MEAN_AERODYNAMIC_CHORD, root, taper),
                Step.of(TaperedPlanform.MEAN_AERODYNAMIC_CHORD_POSITION, size.span(), taper),
                Step.of(WingFormulas.MAXIMUM_THICKNESS, thickness, root)));
    Planform planform =
        Planform.tapered(
                Length.metres(size.span().value()), Length.metres(root.value()), Length.metres(tip.value()))
            .withSweep(0.25, shape.sweep())
            .withDihedral(shape.dihedral())
            .withWashout(shape.washout());
    FeasibleRange range = range(frame, weighed, unit);
    List<Finding> findings = new ArrayList<>(size.findings());
    findings.addAll(workings.findings());
    List<Finding> broken = broken(range, mean.value());
    findings.addAll(broken);
    findings.addAll(said(range));
    List<Price> prices =
        broken.stream().anyMatch(f -> f.severity() == Severity.CAUTION) && !range.isEmpty()
            ? prices(frame, range.interval().clamp(mean.value()), mean.value())
            : List.of();
    return new Sized<>(Wing.of(planform, frame.section()), range, workings, findings, prices);
  }

  private static List<Finding> broken(FeasibleRange range, double chord) {
    List<Finding> findings = new ArrayList<>();
    for (Bound bound : range.bounds()) {
      Interval allowed = bound.interval();
      boolean holds = chord >= allowed.lower() * (1.0 - ROUNDING) && chord <= allowed.upper() * (1.0 + ROUNDING);
      if (bound.binds() && !holds) {
        boolean limit = bound.strength() == Strength.LIMIT;
        Severity severity = limit ? Severity.SERIOUS : Severity.CAUTION;
        String rule = (limit ? "The limit \"" : "The guideline \"") + bound.name() + "\" ";
        findings.add(
            allowed.isEmpty()
                ? Finding.of(severity, "wing", rule + "holds for no chord at this span.", bound.source())
                : Finding.of(
                    severity,
                    range.variable(),
                    rule + "does not hold. It would with " + allowed.format(range.unit()) + ".",
                    chord,
                    allowed,
                    range.unit(),
                    bound.source()));
      }
    }
    return findings;
  }

  private static List<Finding> said(FeasibleRange range) {
    List<Finding> findings = new ArrayList<>();
    range.clashes().stream()
        .limit(1)
        .forEach(
            clash ->
                findings.add(
                    Finding.of(
                        range.limits().isEmpty() ? Severity.SERIOUS : Severity.CAUTION,
                        "wing, considerations that clash",
                        clash.describe(range.unit()),
                        Source.library("intervals of the mean chord at the given span"))));
    for (Bound bound : range.bounds()) {
      if (bound.decision().kind() != Decision.Kind.CHOSEN) {
        findings.add(
            Finding.of(
                Severity.NOTE, bound.name(), "The consideration is " + bound.decision() + ".", Source.BRIEF));
      }
    }
    return findings;
  }

  /** Against the nearest chord that satisfies everything, at the same span. */
  private static List<Price> prices(WingFrame frame, double reference, double chord) {
    double wet = frame.span() * frame.section().perimeter();
    double thick = frame.rootChordRatio() * frame.section().maximumThickness();
    return List.of(
        new Price("wetted area", wet * reference, wet * chord, Area.SQUARE_CENTIMETRE, false),
        new Price("aspect ratio", frame.span() / reference, frame.span() / chord, NamedUnit.NUMBER, true),
        new Price("thickness at the root", thick * reference, thick * chord, Length.MILLIMETRE, true));
  }
}
