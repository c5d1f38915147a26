// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.basis;

import io.github.wingwright.core.quantity.NamedUnit;
import java.util.List;
import java.util.Objects;

/** What every {@link Step} knows that is reckoned from other steps: its name, its number, and what it comes from. */
abstract class Reckoned {
  private final String name;
  private final String symbol;
  private final NamedUnit<?> unit;
  private final Source source;
  private final List<Step> inputs;
  private final double value;

  Reckoned(String name, String symbol, NamedUnit<?> unit, Source source, List<Step> inputs, double value) {
    this.name = Objects.requireNonNull(name, "name");
    this.symbol = Objects.requireNonNull(symbol, "symbol");
    this.unit = unit;
    this.source = source;
    this.inputs = inputs;
    this.value = value;
  }

  /**
   * What the number is, in words.
   *
   * @return its name
   */
  public final String name() {
    return name;
  }

  /**
   * Its symbol.
   *
   * @return the symbol
   */
  public final String symbol() {
    return symbol;
  }

  /**
   * Its coherent SI unit.
   *
   * @return the unit
   */
  public final NamedUnit<?> unit() {
    return unit;
  }

  /**
   * The number.
   *
   * @return the value [SI]
   */
  public final double value() {
    return value;
  }

  /**
   * The steps that it comes from.
   *
   * @return the inputs
   */
  public final List<Step> inputs() {
    return inputs;
  }

  /**
   * Where the formula or the method comes from.
   *
   * @return the source
   */
  public final Source source() {
    return source;
  }
}
