// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.report;

import io.github.wingwright.core.basis.Consideration;
import io.github.wingwright.core.basis.MarginWords;
import io.github.wingwright.core.basis.Origins;
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
    Objects.requireNonNull(considerations, "considerations");
    Objects.requireNonNull(units, "units");
    return of(considerations, length, diameter, new Origins(List.of()), List.of(), units);
  }

  /**
   * The same as part of a longer handout: what is given to a consideration is traced to the line that made it, and a line
   * that stands before is referred to instead of told again.
   *
   * @param considerations what is weighed; what is set aside is left out
   * @param length a step that gives the length of the body
   * @param diameter a step that gives its diameter
   * @param origins what is known of where given values come from
   * @param before steps that stand before in the same report
   * @param units units to name the considerations in, at most one for each kind of quantity
   * @return a line of words and the workings for each that has workings; the names of the others at the end
   */
  public static List<Block> of(
      List<Weighed> considerations,
      Step length,
      Step diameter,
      Origins origins,
      List<Step> before,
      NamedUnit<?>... units) {
    Objects.requireNonNull(units, "units");
    Objects.requireNonNull(origins, "origins");
    Objects.requireNonNull(considerations, "considerations");
    Objects.requireNonNull(before, "before");
    Objects.requireNonNull(length, "length");
    Objects.requireNonNull(diameter, "diameter");
    List<Step> told = new ArrayList<>(before);
    List<Block> blocks = new ArrayList<>();
    StringJoiner others = new StringJoiner("; ", "Weighed by a margin without workings of its own: ", ".");
    others.setEmptyValue("");
    for (Weighed one : considerations) {
      if (!one.decision().applies()) {
        continue;
      }
      Consideration consideration = one.consideration();
      String standing = MarginWords.of(one, length.value(), diameter.value(), units);
      Optional<Step> workings = consideration.workings(length, diameter);
      if (workings.isPresent()) {
        blocks.add(new Block.Paragraph(consideration.nameIn(units) + ": " + standing + "."));
        Workings fresh = Workings.of(List.of(origins.trace(workings.get()))).beyond(told);
        told.addAll(fresh.steps());
        blocks.add(new Block.Steps(fresh));
      } else {
        others.add(consideration.nameIn(units) + ", " + standing);
      }
    }
    if (others.length() > 0) {
      blocks.add(new Block.Paragraph(others.toString()));
    }
    return blocks;
  }
}
