// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.fuselage;

import io.github.wingwright.core.basis.Consideration;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.sizing.ShapeConsideration;
import io.github.wingwright.examples.brief.Field;
import java.util.Optional;

/**
 * One consideration of a brief: what it asks, and the same as a formula in words.
 *
 * @param consideration what it asks, once the family of the body is known
 * @param formula what it asks, as a reader would write it down
 */
record Rule(ShapeConsideration consideration, String formula) {
  private static final Interval SHARE = Interval.between(0.0, 1.0);

  static Rule of(Consideration consideration, String formula) {
    return new Rule(shape -> consideration, formula);
  }

  static Length length(Field field, String name) {
    return field.required(name).quantity(Length.KIND, "0 mm", "100 m");
  }

  static Length positiveLength(Field field, String name) {
    return field.required(name).quantity(Length.KIND, "0.1 mm", "100 m");
  }

  static double share(Field field, String name) {
    return field.required(name).number(SHARE);
  }

  static String number(double value) {
    return NamedUnit.NUMBER.format(value, 4);
  }

  static String percent(double share) {
    return NamedUnit.NUMBER.format(100.0 * share, 3) + " %";
  }

  /** The things inside, on which some considerations lean. */
  static Inside inside(Optional<Inside> inside, Field field) {
    return inside.orElseThrow(
        () -> field.error("needs the brief to have \"contents\" with things, has none"));
  }
}
