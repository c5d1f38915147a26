// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.basis;

import io.github.wingwright.core.quantity.NamedUnit;
import java.util.List;
import java.util.Set;
import java.util.StringJoiner;

/** What the kinds of step share: their values as an array, and their one line of text. */
final class Line {
  private static final int WIDTH = 75;

  /** Units that the textbooks write or leave out as they please: a slope per radian is a number. */
  private static final Set<String> NUMBERS = Set.of("", "rad", "1/rad");

  private Line() {}

  static double[] values(List<Step> steps) {
    double[] values = new double[steps.size()];
    for (int i = 0; i < values.length; i++) {
      values[i] = steps.get(i).value();
    }
    return values;
  }

  /** Passes a result on if it is finite; the message names the inputs that gave it. */
  static double finite(String name, double value, String how, List<Step> inputs) {
    if (Double.isFinite(value)) {
      return value;
    }
    StringJoiner from = new StringJoiner(", ");
    inputs.forEach(input -> from.add(input.symbol() + " = " + input.unit().format(input.value(), 6)));
    throw new IllegalArgumentException(name + " must be finite, was " + value + " from " + how + " with " + from);
  }

  /** Refuses inputs in the wrong order or of the wrong kind. */
  static void checkUnits(Formula formula, List<Step> inputs) {
    for (int i = 0; i < inputs.size(); i++) {
      Symbol wanted = formula.inputs().get(i);
      Step given = inputs.get(i);
      if (!sameUnit(wanted.unit(), given.unit())) {
        throw new IllegalArgumentException(
            formula.name() + " needs " + wanted.symbol() + " in " + words(wanted.unit())
                + ", got " + given.symbol() + " in " + words(given.unit()));
      }
    }
  }

  private static boolean sameUnit(NamedUnit<?> one, NamedUnit<?> other) {
    return one.symbol().equals(other.symbol())
        || (NUMBERS.contains(one.symbol()) && NUMBERS.contains(other.symbol()));
  }

  private static String words(NamedUnit<?> unit) {
    return unit.symbol().isEmpty() ? "plain numbers" : unit.symbol();
  }

  static String of(Step step) {
    String number = step.unit().format(step.value(), 6);
    String middle = step instanceof Step.Evaluated evaluated ? evaluated.formula().text() + " = " : "";
    String line = step.symbol() + " = " + middle + number + "  " + step.name();
    if (line.length() > WIDTH) {
      line = step.symbol() + " = " + number + "  " + step.name();
    }
    return line.length() <= WIDTH ? line : line.substring(0, WIDTH - 1) + "…";
  }
}
