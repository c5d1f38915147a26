// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.basis.Consideration;
import io.github.wingwright.core.basis.Wording;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;

/** A consideration whose name keeps its quantities, so that it can be read in any unit. */
interface Worded extends Consideration {
  /** What is considered. */
  Wording wording();

  @Override
  default String name() {
    return wording().toString();
  }

  @Override
  default String nameIn(NamedUnit<?>... units) {
    return wording().in(units);
  }

  /** The name in quotation marks, as what gives way is told. */
  default String quoted(NamedUnit<Length> unit) {
    return "\"" + nameIn(unit) + "\"";
  }
}
