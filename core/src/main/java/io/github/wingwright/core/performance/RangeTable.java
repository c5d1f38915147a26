// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.performance;

import java.util.Locale;
import java.util.StringJoiner;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/** A {@link RangeMap} as text: a line for each setting, a column for each throw speed. No line is longer than 75 characters. */
public final class RangeTable {
  private static final int MOST = 10;

  private final RangeMap map;
  private final String setting;
  private final double perSetting;

  RangeTable(RangeMap map, String setting, double perSetting) {
    this.map = map;
    this.setting = setting;
    this.perSetting = perSetting;
  }

  @Override
  public String toString() {
    int[] columns = taken(map.speeds().size());
    int[] rows = taken(map.settings().size());
    StringJoiner lines = new StringJoiner("\n");
    lines.add(setting + " down, launch speed in m/s across");
    lines.add(line("", columns, i -> map.speeds().get(i)));
    for (int row : rows) {
      String head = String.format(Locale.ROOT, "%.3g", perSetting * map.settings().get(row));
      lines.add(line(head, columns, i -> map.value(row, i)));
    }
    return lines.toString();
  }

  private static String line(String head, int[] columns, IntToDoubleFunction values) {
    StringBuilder line = new StringBuilder(String.format(Locale.ROOT, "%9s", head));
    for (int i : columns) {
      line.append(String.format(Locale.ROOT, "%6.3g", values.applyAsDouble(i)));
    }
    return line.toString();
  }

  private static int[] taken(int count) {
    int shown = Math.min(count, MOST);
    return IntStream.range(0, shown).map(i -> (int) Math.rint((double) i * (count - 1) / (shown - 1))).toArray();
  }
}
