// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.basis;

import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.quantity.ScalarQuantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Words with quantities in them, which are written out only when it is known in which units the reader thinks.
 *
 * <pre>{@code
 * Wording at = Wording.of("length at most ").and(Length.millimetres(228.6));
 * at.toString()        length at most 228.6 mm
 * at.in(Length.INCH)   length at most 9 in
 * }</pre>
 */
public final class Wording {
  private static final int DIGITS = 4;

  private final List<Function<List<NamedUnit<?>>, String>> parts;
  private final String usual;

  private Wording(List<Function<List<NamedUnit<?>>, String>> parts) {
    this.parts = List.copyOf(parts);
    this.usual = in();
  }

  /**
   * Begins with plain words.
   *
   * @param words the words, taken as they are
   * @return the wording
   */
  public static Wording of(String words) {
    Objects.requireNonNull(words, "words");
    return new Wording(List.of(units -> words));
  }

  /**
   * Goes on with plain words.
   *
   * @param words the words, taken as they are
   * @return the new wording
   */
  public Wording and(String words) {
    Objects.requireNonNull(words, "words");
    return with(units -> words);
  }

  /**
   * Goes on with a quantity, to be shown with four significant digits.
   *
   * @param quantity the quantity
   * @param <Q> its kind
   * @return the new wording
   */
  public <Q extends ScalarQuantity<Q>> Wording and(Q quantity) {
    return and(quantity, DIGITS);
  }

  /**
   * Goes on with a quantity.
   *
   * @param quantity the quantity
   * @param digits significant digits to show it with
   * @param <Q> its kind
   * @return the new wording
   */
  public <Q extends ScalarQuantity<Q>> Wording and(Q quantity, int digits) {
    Objects.requireNonNull(quantity, "quantity");
    return with(units -> show(quantity, digits, units));
  }

  private Wording with(Function<List<NamedUnit<?>>, String> part) {
    List<Function<List<NamedUnit<?>>, String>> all = new ArrayList<>(parts);
    all.add(part);
    return new Wording(all);
  }

  private static <Q extends ScalarQuantity<Q>> String show(Q quantity, int digits, List<NamedUnit<?>> units) {
    for (NamedUnit<Q> own : quantity.kind().units()) {
      if (units.contains(own)) {
        return Length.show(quantity.si(), own, digits);
      }
    }
    return quantity.format(digits);
  }

  /**
   * The words in units of choice.
   *
   * @param units at most one for each kind of quantity, such as {@code Length.INCH}; the others are shown in the unit that
   *     suits their size
   * @return the text
   */
  public String in(NamedUnit<?>... units) {
    Objects.requireNonNull(units, "units");
    List<NamedUnit<?>> asked = List.of(units);
    return parts.stream().map(part -> part.apply(asked)).collect(Collectors.joining());
  }

  /** The words with every quantity in the unit that suits its size. */
  @Override
  public String toString() {
    return usual;
  }
}
