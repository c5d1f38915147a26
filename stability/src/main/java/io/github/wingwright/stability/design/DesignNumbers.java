// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Origins;
import io.github.wingwright.core.basis.Step;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The numbers of a design while it is reckoned: steps under the names of the sheet, steps under their symbols for those that
 * follow, and what was found on the way. Each step that is put in is first joined to those that are there.
 */
final class DesignNumbers {
  private final Origins origins = new Origins(List.of());
  private final Map<String, Step> numbers = new LinkedHashMap<>();
  private final Map<String, Step> symbols = new HashMap<>();
  private final List<Finding> findings = new ArrayList<>();

  /** Joins a step to those that are known. */
  Step trace(Step step) {
    return origins.trace(step);
  }

  /** Knows a step as the origin of what others are given. */
  void origin(Step step) {
    origins.add(step);
  }

  /** Puts a number of the sheet under its name. */
  Step add(String name, Step step) {
    Step traced = origins.add(trace(step));
    numbers.put(name, traced);
    return traced;
  }

  /** The number of a name. */
  Step at(String name) {
    return known(numbers, name);
  }

  /** Keeps a step under its symbol, for the steps that follow. */
  Step keep(String symbol, Step step) {
    Step traced = origins.add(trace(step));
    symbols.put(symbol, traced);
    return traced;
  }

  /** Keeps a number of the sheet under its symbol too. */
  void name(String symbol, Step number) {
    symbols.put(symbol, number);
  }

  /** The step of a symbol. */
  Step step(String symbol) {
    return known(symbols, symbol);
  }

  private static Step known(Map<String, Step> steps, String key) {
    Step step = steps.get(key);
    if (step == null) {
      throw new IllegalStateException("\"" + key + "\" must be reckoned first, known are " + steps.keySet());
    }
    return step;
  }

  /** What was found so far; findings are added here. */
  List<Finding> findings() {
    return findings;
  }

  /** All numbers of the sheet, in the order in which they were put in. */
  Map<String, Step> all() {
    return numbers;
  }
}
