// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;

/** How a consideration would have to give way to be satisfied with a body. */
@FunctionalInterface
interface Concession {
  /** What follows the name, such as "with 8.5° instead"; its number is enough as it is read. */
  String words(double length, double diameter, NamedUnit<Length> unit);
}
