// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.quantity.QuantityKind;
import io.github.wingwright.examples.brief.Field;
import io.github.wingwright.stability.design.Making;

/**
 * What the machine that prints a glider can do, as far as sizing it goes.
 *
 * @param longest the longest straight part
 * @param unit the unit in which the brief gives that
 * @param lineWidth width of a line
 * @param thinnest the thinnest edge
 * @param making what dimensions are rounded to
 */
record PrinterBrief(Length longest, NamedUnit<Length> unit, Length lineWidth, Length thinnest, Making making) {
  static PrinterBrief from(Field field) {
    QuantityKind.Written<Length> longest =
        field.required("longest_straight_part").written(Length.KIND, "20 mm", "10 m");
    Length line = field.required("line_width").quantity(Length.KIND, "0.1 mm", "2 mm");
    Length thinnest = field.required("thinnest_edge").quantity(Length.KIND, "0.1 mm", "10 mm");
    Length rounding = field.optional("rounding").map(f -> f.quantity(Length.KIND, "0.01 mm", "20 mm")).orElse(Length.millimetres(0.5));
    field.refuseTheRest();
    return new PrinterBrief(longest.value(), longest.unit(), line, thinnest, new Making(rounding, Mass.grams(0.1)));
  }

  /** Lengths are shown in the unit of the span; a wing without a given span in that of the machine. */
  NamedUnit<Length> unitFor(Field wing) {
    return wing.optional("span").map(f -> f.written(Length.KIND, "50 mm", "20 m").unit()).orElse(unit);
  }
}
