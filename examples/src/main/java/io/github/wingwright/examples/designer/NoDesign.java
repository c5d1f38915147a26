// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import io.github.wingwright.core.ConvergenceException;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.examples.brief.BriefException;
import io.github.wingwright.examples.brief.Field;
import io.github.wingwright.stability.design.Design;
import io.github.wingwright.stability.design.NoArrangementException;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Why no design follows from a brief that can be read, at the entry that has to change. */
final class NoDesign {
  private static final String WHY = "no design satisfies this brief: ";

  private NoDesign() {}

  static BriefException of(Field top, RuntimeException refusal) {
    BriefException told = told(top, refusal);
    told.initCause(refusal);
    return told;
  }

  /** A glider that its tail cannot trim: by far too heavy a thing carried, or else by the margin that is asked for. */
  static BriefException unbalanced(Field top, Design design, String why) {
    double half = 0.5 * design.aircraft().masses().mass().si();
    return heaviest(top)
        .filter(item -> mass(item) > half)
        .map(item -> item.required("mass"))
        .orElseGet(() -> top.required("balance").required("static_margin"))
        .error(WHY + why);
  }

  private static Optional<Field> heaviest(Field top) {
    List<Field> carried = top.optional("carried").map(Field::items).orElse(List.of());
    return carried.stream().max(Comparator.comparingDouble(NoDesign::mass));
  }

  private static double mass(Field item) {
    return Mass.parse(item.required("mass").text()).si();
  }

  private static BriefException told(Field top, RuntimeException refusal) {
    if (refusal instanceof BriefException placed) {
      return new BriefException(String.valueOf(placed.getMessage()));
    }
    if (refusal instanceof ConvergenceException unsettled) {
      Field wing = top.required("wing");
      Field asks = wing.optional("loading").or(() -> wing.optional("target_speed")).orElse(wing);
      return asks.error(WHY + unsettled(unsettled));
    }
    if (refusal instanceof NoArrangementException none) {
      return switch (none.matter()) {
        case LENGTH -> tooShort(top).error(WHY + none.getMessage() + bound(top));
        case BALANCE -> top.required("balance").required("static_margin").error(WHY + none.getMessage());
        case ROUNDING -> rounding(top).error(WHY + none.getMessage());
      };
    }
    return top.error(WHY + refusal.getMessage());
  }

  /** A fixed length is to blame; where it is left open the body is as long as may be, and the tails ask for too much. */
  private static Field tooShort(Field top) {
    return top.required("fuselage").optional("length").orElseGet(() -> top.required("tails"));
  }

  private static String bound(Field top) {
    return top.required("fuselage").optional("length").isPresent()
        ? ""
        : "; how long it may be is said by \"machine.longest_straight_part\" and \"fuselage\"";
  }

  private static Field rounding(Field top) {
    Field machine = top.required("machine");
    return machine.optional("rounding").orElse(machine);
  }

  /** The last round in grams instead of a residual: a mass that was begun with, and the one that came of it. */
  private static String unsettled(ConvergenceException unsettled) {
    String what = String.valueOf(unsettled.getMessage()).replaceFirst(" \\(kg.*", "");
    double[] last = unsettled.lastValues();
    String rounds = "; after " + unsettled.iterations() + " rounds ";
    return last.length < 2
        ? what
        : what + rounds + "a wing made for " + shown(last[0]) + " came out at " + shown(last[1]);
  }

  private static String shown(double mass) {
    return Double.isFinite(mass) ? Mass.kilograms(mass).format(4) : "no mass at all";
  }
}
