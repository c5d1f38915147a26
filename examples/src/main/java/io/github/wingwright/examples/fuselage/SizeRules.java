// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.fuselage;

import io.github.wingwright.core.basis.Consideration;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Volume;
import io.github.wingwright.core.sizing.BuildSpace;
import io.github.wingwright.core.sizing.Considerations;
import io.github.wingwright.core.sizing.FinenessContext;
import io.github.wingwright.core.sizing.PackingFraction;
import io.github.wingwright.examples.brief.Field;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Reads the considerations that speak of length, diameter and their ratio: the machine, a guideline, room inside. */
final class SizeRules {
  private final FuselageBrief.WingPlace wing;
  private final Optional<Inside> inside;

  private final List<Step> known;

  SizeRules(FuselageBrief.WingPlace wing, Optional<Inside> inside, List<Step> known) {
    this.wing = wing;
    this.inside = inside;
    this.known = known;
  }

  Rule longestPart(Field field) {
    Length longest = Rule.positiveLength(field, "length");
    int segments = segments(field);
    return Rule.of(
        Considerations.lengthAtMost(longest, segments, joint(field)),
        "L ≤ n·p − (n − 1)·j, n pieces of length p that overlap by j");
  }

  Rule machine(Field field) {
    List<Field> bed = field.required("bed").items();
    if (bed.size() != 2) {
      throw field.required("bed").error("must be a list of two sides, had " + bed.size());
    }
    Length a = bed.get(0).quantity(Length.KIND, "10 mm", "50 m");
    Length b = bed.get(1).quantity(Length.KIND, "10 mm", "50 m");
    Length height = Rule.positiveLength(field, "height");
    int segments = segments(field);
    return Rule.of(
        BuildSpace.fitsInto(a, b, height, segments, joint(field)),
        "L ≤ n·p(d) − (n − 1)·j, p the longest tube of width d that stands in the space or lies in"
            + " it at a slant");
  }

  Rule length(Field field) {
    return end(field, "100 m", Considerations::lengthAtLeast, "L ≥ L_min", Considerations::lengthAtMost, "L ≤ L_max");
  }

  Rule diameter(Field field) {
    return end(field, "20 m", Considerations::diameterAtLeast, "d ≥ d_min", Considerations::diameterAtMost, "d ≤ d_max");
  }

  /** One end, below or above. */
  private static Rule end(
      Field field,
      String greatest,
      Function<Length, Consideration> atLeast,
      String above,
      Function<Length, Consideration> atMost,
      String below) {
    Optional<Length> least = field.optional("least").map(f -> f.quantity(Length.KIND, "1 mm", greatest));
    Optional<Length> most = field.optional("most").map(f -> f.quantity(Length.KIND, "1 mm", greatest));
    if (least.isPresent() == most.isPresent()) {
      throw field.error("needs either a \"least\" or a \"most\", has " + (least.isPresent() ? "both" : "neither"));
    }
    return least.isPresent() ? Rule.of(atLeast.apply(least.get()), above) : Rule.of(atMost.apply(most.get()), below);
  }

  Rule fineness(Field field) {
    Optional<Field> range = field.optional("range");
    Optional<Field> context = field.optional("context");
    if (range.isPresent() == context.isPresent()) {
      throw field.error("needs either a \"range\" or a \"context\", has " + (range.isPresent() ? "both" : "neither"));
    }
    String rule = "f₁ ≤ L/d ≤ f₂";
    if (context.isPresent()) {
      FinenessContext c = context.get().choice(FinenessContext.class);
      return Rule.of(Considerations.finenessFor(c), rule);
    }
    List<Field> ends = range.get().items();
    if (ends.size() != 2) {
      throw range
          .get()
          .error("must be a list of two numbers, least and greatest, had " + ends.size());
    }
    double least = ends.get(0).number(Interval.between(1.0, 40.0));
    double most = ends.get(1).number(Interval.between(least, 60.0));
    return Rule.of(Considerations.finenessWithin(least, most), rule);
  }

  Rule contents(Field field) {
    Inside in = Rule.inside(inside, field);
    return new Rule(
        in.contents().asConsideration(),
        "each thing w × h in the section W × H inside wall and clearance: (w/W)² + (h/H)² ≤ 1, one"
            + " behind the other");
  }

  Rule volume(Field field) {
    Volume volume = field.required("volume").quantity(Volume.KIND, "0.1 cm³", "1000 m³");
    PackingFraction packing =
        new PackingFraction(field.required("packing_fraction").number(Interval.between(0.05, 1.0)));
    return new Rule(
        Considerations.enclosing(volume, packing),
        "V(L, d) ≥ V_c/p, the contents over the packing fraction");
  }

  Rule wingThickness(Field field) {
    double multiple = field.required("multiple").number(Interval.between(0.5, 30.0));
    return Rule.of(
        Considerations.diameterNear(multiple, wing.thickness()),
        "d near n·t, t the thickness of the wing: the eye's rule");
  }

  private int segments(Field field) {
    Optional<Integer> asked = field.optional("segments").map(f -> f.whole(1, 100));
    if (asked.isEmpty()) {
      known.add(Step.given("pieces", "n", 1.0, Source.taken("one piece, as nothing else is asked for")));
    }
    return asked.orElse(1);
  }

  private Length joint(Field field) {
    Optional<Length> asked = field.optional("joint").map(f -> f.quantity(Length.KIND, "0 mm", "1 m"));
    if (asked.isEmpty()) {
      known.add(Step.given("overlap of a joint", "j", Length.ZERO, Source.taken("none, as none is asked for")));
    }
    return asked.orElse(Length.ZERO);
  }
}
