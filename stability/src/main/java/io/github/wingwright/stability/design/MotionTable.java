// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.stability.TrimmedPolar;
import io.github.wingwright.stability.dynamics.Mode;
import java.util.List;
import java.util.Locale;
import java.util.StringJoiner;

/** The natural motions as a table of text, a line for each. */
final class MotionTable {
  private MotionTable() {}

  static String of(TrimmedPolar.Point point, List<FlightModes.Row> rows) {
    StringJoiner lines = new StringJoiner("\n");
    lines.add(
        String.format(
            Locale.ROOT,
            "motions at C_L %.2f, %s:",
            point.liftCoefficient(),
            point.speed().format(Speed.METRE_PER_SECOND, 3)));
    lines.add("  motion                  ω_n, rad/s     ζ  period, s  t_½ or t_2, s");
    for (FlightModes.Row row : rows) {
      Mode m = row.mode();
      lines.add(
          String.format(
              Locale.ROOT,
              "  %-23s %10.3g %5.2f %10s  %s",
              m.kind().words(),
              m.naturalFrequency().radiansPerSecond(),
              m.dampingRatio(),
              m.period().map(t -> String.format(Locale.ROOT, "%.3g", t.seconds())).orElse("–"),
              m.timeToHalf()
                  .map(t -> String.format(Locale.ROOT, "halves in %.3g", t.seconds()))
                  .or(
                      () ->
                          m.timeToDouble()
                              .map(t -> String.format(Locale.ROOT, "doubles in %.3g", t.seconds())))
                  .orElse("stays")));
    }
    return lines.toString();
  }
}
