// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.fuselage;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.NamedUnit;

/** Moments of mass about the nose, in kg·m, shown without a unit of their own. */
final class Balance {
  static final Formula MOMENT =
      Formula.named("moment of mass about the nose, in kg·m")
          .gives("M", NamedUnit.NUMBER)
          .as("m·x")
          .where("m", "mass", Mass.KILOGRAM, 0, 1e5)
          .where("x", "distance of its middle from the nose tip", Length.METRE, 0, 100)
          .from(Source.DEFINITION)
          .computedBy(Balance::moment);

  static final Formula CENTRE =
      Formula.named("centre of gravity of the contents")
          .gives("x_c", Length.METRE)
          .as("M_c / m_c")
          .where("M_c", "moment about the nose in kg·m", -1e7, 1e7)
          .where("m_c", "mass", Mass.KILOGRAM, 1e-6, 1e5)
          .from(Source.DEFINITION)
          .computedBy(Balance::centre);

  private Balance() {}

  static double moment(double mass, double distance) {
    return mass * distance;
  }

  static double centre(double moment, double mass) {
    return moment / mass;
  }
}
