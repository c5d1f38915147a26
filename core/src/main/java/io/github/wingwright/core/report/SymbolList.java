// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.report;

import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Workings;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The list of symbols of some workings: a letter means several things in a long report, so each meaning is told. */
final class SymbolList {
  private SymbolList() {}

  /**
   * A symbol in one unit.
   *
   * @param symbol the symbol
   * @param unit symbol of its unit, empty for a number
   * @param firsts for each meaning the step at which it stands first
   */
  record Meanings(String symbol, String unit, List<Step> firsts) {}

  static List<Meanings> of(List<Workings> workings) {
    Map<List<String>, Map<String, Step>> found = new LinkedHashMap<>();
    for (Workings some : workings) {
      for (Step step : some.steps()) {
        found
            .computeIfAbsent(List.of(step.symbol(), step.unit().symbol()), key -> new LinkedHashMap<>())
            .putIfAbsent(step.name(), step);
      }
    }
    List<Meanings> all = new ArrayList<>();
    found.forEach((key, firsts) -> all.add(new Meanings(key.get(0), key.get(1), List.copyOf(firsts.values()))));
    all.sort(Comparator.comparing(SymbolList::place).thenComparing(Meanings::symbol));
    return all;
  }

  /** As in a dictionary, small letters among the capitals, Greek after Latin. */
  private static String place(Meanings one) {
    StringBuilder place = new StringBuilder();
    one.symbol().codePoints().filter(Character::isLetterOrDigit).map(Character::toLowerCase).forEach(place::appendCodePoint);
    return place.toString();
  }
}
