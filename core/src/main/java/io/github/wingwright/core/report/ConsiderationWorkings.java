// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.report;

import io.github.wingwright.core.basis.Consideration;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Weighed;
import io.github.wingwright.core.basis.Workings;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Objects;
import java.util.StringJoiner;

/** Considerations on a body as a handout: for each what is given, the formulas, what the body attains, and the margin. */
public final class ConsiderationWorkings {
  private ConsiderationWorkings() {}

  /**
   * The handout of some considerations at one body.
   *
   * @param considerations what is weighed; what is set aside is left out
   * @param length a step that gives the length of the body
   * @param diameter a step that gives its diameter
   * @param units units to name the considerations in, at most one for each kind of quantity
   * @return a line of words and the workings for each that has workings; the names of the others at the end
   */
  public static List<Block> of(List<Weighed> considerations, Step length, Step diameter, NamedUnit<?>... units) {
    Objects.requireNonNull(length, "length");
    Objects.requireNonNull(diameter, "diameter");
    List<Block> blocks = new ArrayList<>();
    StringJoiner others = new StringJoiner("; ", "Weighed by a margin without workings of its own: ", ".");
    others.setEmptyValue("");
    for (Weighed one : considerations) {
      if (!one.decision().applies()) {
        continue;
      }
      Consideration consideration = one.consideration();
      Optional<Step> workings = consideration.workings(length, diameter);
      if (workings.isPresent()) {
        blocks.add(new Block.Paragraph(consideration.nameIn(units) + ": " + standing(one, workings.get().value()) + "."));
        blocks.add(new Block.Steps(Workings.of(List.of(workings.get()))));
      } else {
        double margin = consideration.margin(length.value(), diameter.value());
        others.add(consideration.nameIn(units) + ", " + standing(one, margin));
      }
    }
    if (others.length() > 0) {
      blocks.add(new Block.Paragraph(others.toString()));
    }
    return blocks;
  }

  private static String standing(Weighed one, double margin) {
    String percent = NamedUnit.NUMBER.format(100.0 * Math.abs(margin), 2) + " %";
    if (Math.abs(margin) < 5e-7) {
      return one.isTarget() ? "met" : "at the edge";
    }
    if (one.isTarget()) {
      return "a target, off by " + percent;
    }
    return margin > 0.0 ? "kept with a margin of " + percent : "missed by " + percent;
  }
}
