// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.basis;

import io.github.wingwright.core.quantity.NamedUnit;
import java.util.Objects;

/**
 * One symbol of a formula.
 *
 * @param symbol the letter of the textbook, such as {@code "ρ"} or {@code "S_wet"}
 * @param meaning what it stands for
 * @param unit the coherent SI unit
 * @param domain where the formula is valid in it [SI], finite
 */
public record Symbol(String symbol, String meaning, NamedUnit<?> unit, Interval domain) {

  /** Refuses a domain without ends: a formula says where it is valid. */
  public Symbol {
    Objects.requireNonNull(symbol, "symbol");
    Objects.requireNonNull(meaning, "meaning");
    Objects.requireNonNull(unit, "unit");
    Objects.requireNonNull(domain, "domain");
    if (!Double.isFinite(domain.lower()) || !Double.isFinite(domain.upper()) || domain.isEmpty()) {
      throw new IllegalArgumentException("domain of " + symbol + " must be finite and not empty, was " + domain);
    }
  }

  @Override
  public String toString() {
    return symbol + " " + meaning + ", " + domain.format(unit);
  }
}
