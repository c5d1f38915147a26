// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.basis;

import java.util.List;

/** What the kinds of step share: their values as an array, and their one line of text. */
final class Line {
  private static final int WIDTH = 75;

  private Line() {}

  static double[] values(List<Step> steps) {
    double[] values = new double[steps.size()];
    for (int i = 0; i < values.length; i++) {
      values[i] = steps.get(i).value();
    }
    return values;
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
