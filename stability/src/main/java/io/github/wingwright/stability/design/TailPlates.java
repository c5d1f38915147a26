// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Guideline;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.geometry.TaperedPlanform;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.stability.TailVolume;

/** The tails as they are made: plates that end with the fuselage. */
final class TailPlates {
  /** An arm that went through arithmetic may miss the least one by this [m]. */
  private static final double ROUNDING = 1e-9;

  private static final Source STRAIGHT = Source.library("tails with a straight quarter-chord line");

  private final DesignBrief brief;
  private final Making making;
  private final DesignNumbers numbers;

  TailPlates(SizedGlider sized, DesignNumbers numbers) {
    brief = sized.brief();
    making = sized.making();
    this.numbers = numbers;
  }

  Tail horizontalTail(Fuselage fuselage) {
    TailBrief asked = brief.horizontalTail();
    Step volume = Step.given("horizontal tail volume coefficient, as asked", "V_h", asked.volumeCoefficient(), Source.BRIEF);
    Step arm = armOf("horizontal tail arm, as sized", "l_h", volume, numbers.step("c̄"), asked);
    Step area = Step.of(TailVolume.HORIZONTAL_AREA, volume, arm, numbers.step("S"), numbers.step("c̄"));
    Planform planform = tail("horizontal_tail", "h", asked, area, true);
    Step madeArm = numbers.add("horizontal_tail.arm_m", Step.of("horizontal tail arm", "l_h", DesignFormulas.TAIL_ARM, numbers.step("L"), numbers.step("c_r,h"), numbers.step("x_w")));
    Step made =
        numbers.add(
            "horizontal_tail.volume_coefficient",
            Step.of(TailVolume.HORIZONTAL, numbers.at("horizontal_tail.area_m2"), madeArm, numbers.step("S"), numbers.step("c̄")));
    leastArm(madeArm);
    check(brief.aircraftClass().tailVolume(Tail.Role.HORIZONTAL), made);
    check(brief.aircraftClass().tailAspectRatio(Tail.Role.HORIZONTAL), numbers.at("horizontal_tail.aspect_ratio"));
    Length x = fuselage.length().minus(planform.rootChord());
    double z =
        PartGeometry.tailHeight(
            fuselage.shape(), fuselage.length().si(), fuselage.diameter().si(), planform.rootChord().si());
    return new Tail(Tail.Role.HORIZONTAL, planform, brief.tailSection(), Placement.at(x, Length.metres(z)), Angle.ZERO);
  }

  /** The fin, which stands on the tailplane. */
  Tail verticalTail(Fuselage fuselage, Length height) {
    TailBrief asked = brief.verticalTail();
    Step volume = Step.given("vertical tail volume coefficient, as asked", "V_v", asked.volumeCoefficient(), Source.BRIEF);
    Step arm = armOf("vertical tail arm, as sized", "l_v", volume, numbers.step("b"), asked);
    Step area = Step.of(TailVolume.VERTICAL_AREA, volume, arm, numbers.step("S"), numbers.step("b"));
    Planform planform = tail("vertical_tail", "v", asked, area, false);
    Step madeArm = numbers.add("vertical_tail.arm_m", Step.of("vertical tail arm", "l_v", DesignFormulas.TAIL_ARM, numbers.step("L"), numbers.step("c_r,v"), numbers.step("x_w")));
    Step made =
        numbers.add(
            "vertical_tail.volume_coefficient",
            Step.of(TailVolume.VERTICAL, numbers.at("vertical_tail.area_m2"), madeArm, numbers.step("S"), numbers.step("b")));
    check(brief.aircraftClass().tailVolume(Tail.Role.VERTICAL), made);
    check(brief.aircraftClass().tailAspectRatio(Tail.Role.VERTICAL), numbers.at("vertical_tail.aspect_ratio"));
    Length x = fuselage.length().minus(planform.rootChord());
    return new Tail(Tail.Role.VERTICAL, planform, brief.tailSection(), Placement.at(x, height), Angle.ZERO);
  }

  /** The arm between the wing as made and the end of the fuselage as made. */
  private Step armOf(String name, String symbol, Step volume, Step reference, TailBrief asked) {
    return Step.solution(
        name,
        symbol,
        Length.METRE,
        "Newton's method",
        "l + ¾·c_r(V·S·r/l) + x_w = L, with r = " + reference.symbol(),
        v -> arm(name, v, asked),
        v -> {
          double root = TailGeometry.rootChord(v[0] * v[1] * v[2] / v[5], asked.aspectRatio(), asked.taperRatio());
          return v[5] + 0.75 * root + v[4] - v[3];
        },
        Source.library("a tail that ends with the fuselage"),
        volume,
        numbers.step("S"),
        reference,
        numbers.step("L"),
        numbers.step("x_w"));
  }

  private static double arm(String name, double[] v, TailBrief asked) {
    double arm = TailGeometry.arm(v[3] - v[4], v[0] * v[1] * v[2], asked.aspectRatio(), asked.taperRatio());
    if (Double.isNaN(arm)) {
      throw new NoArrangementException(
          NoArrangementException.Matter.ROUNDING,
          name + " must exist after rounding, but rounded to what can be made the tail no longer fits: make the steps"
              + " smaller, or the least tail arm greater");
    }
    return arm;
  }

  private Planform tail(String key, String index, TailBrief asked, Step area, boolean mirrored) {
    Step ratio = Step.given("aspect ratio of the tail, as asked", "A_" + index, asked.aspectRatio(), Source.BRIEF);
    Step taper = Step.given("taper ratio of the tail, as asked", "λ_" + index, asked.taperRatio(), Source.BRIEF);
    String what = mirrored ? "horizontal tail " : "fin ";
    Step b = making.made(Step.of(what + (mirrored ? "span" : "height"), "b_" + index, TaperedPlanform.SPAN, area, ratio));
    Step rootSized = Step.of(what + "root chord", "c_r," + index, TailGeometry.ROOT_CHORD, area, ratio, taper);
    Step root = numbers.keep("c_r," + index, making.made(rootSized));
    Step tip = making.made(Step.of(what + "tip chord", "c_t," + index, TaperedPlanform.TIP_CHORD, taper, rootSized));
    numbers.add(key + ".span_m", b);
    Step made = numbers.add(key + ".area_m2", Step.of(what + "area", "S_" + index, DesignFormulas.AREA_FROM_CHORDS, b, root, tip));
    Step madeRatio =
        numbers.add(key + ".aspect_ratio", Step.of(what + "aspect ratio", "A_" + index, TaperedPlanform.ASPECT_RATIO, b, made));
    if (mirrored) {
      Step straight = Step.given("sweep of the quarter-chord line of the tail", "Λ", Angle.ZERO, STRAIGHT);
      numbers.origin(
          Step.of(
              "sweep of the half-chord line of the tail", "Λ_½", DesignFormulas.HALF_CHORD_SWEEP, straight, madeRatio, root, tip));
    }
    numbers.add(key + ".root_chord_m", root);
    numbers.add(key + ".tip_chord_m", tip);
    Length span = Length.metres(b.value());
    Length rootChord = Length.metres(root.value());
    Length tipChord = Length.metres(tip.value());
    return mirrored ? Planform.tapered(span, rootChord, tipChord) : PartGeometry.fin(span, rootChord, tipChord);
  }

  /** The travel of the wing leaves the least arm; rounding to what can be made may take a little of it again. */
  private void leastArm(Step made) {
    double least = brief.leastTailArm().si();
    if (made.value() < least - ROUNDING) {
      numbers
          .findings()
          .add(
              Finding.of(
                  Severity.NOTE,
                  "tail arm",
                  "Rounding to what can be made leaves the tail arm a little short of what the brief asks for.",
                  made.value(),
                  Interval.atLeast(least),
                  Length.MILLIMETRE,
                  Source.BRIEF));
    }
  }

  private void check(Guideline guideline, Step value) {
    guideline.check(value.value()).ifPresent(numbers.findings()::add);
  }
}
