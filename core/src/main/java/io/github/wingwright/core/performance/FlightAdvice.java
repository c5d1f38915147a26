// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.performance;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Speed;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** How much slower or lower a throw must be so that what was found is gone. */
final class FlightAdvice {
  /** Throw speeds from a tenth to the whole of that asked for are looked at in this many steps. */
  private static final int STEPS = 90;

  private static final double LEAST = 0.1;
  private static final int LOWEST = -60;

  private FlightAdvice() {}

  static List<Finding> of(FlightModel model, Throw how) {
    List<Finding> all = new ArrayList<>();
    for (Finding finding : model.thrown(how).findings()) {
      all.add(
          switch (finding.subject()) {
            case "stall" -> slower(model, how, finding, flight -> flight.firstStall().isEmpty(), "it does not stall");
            case "ceiling" ->
                slower(model, how, finding, flight -> flight.end() != FlightEnd.CEILING, "it stays below the ceiling");
            case "turning over" ->
                slower(model, how, finding, flight -> flight.manner() != FlightManner.TURNS_OVER, "it stays upright");
            case "wall" ->
                slower(model, how, finding, flight -> flight.end() == FlightEnd.FLOOR, "it lands before the wall");
            default -> finding;
          });
    }
    return Finding.inOrderOfWeight(all);
  }

  /** The fastest throw at this angle from which what was found is gone, in the three digits that are shown. */
  private static Finding slower(FlightModel model, Throw how, Finding finding, Predicate<Flight> mended, String what) {
    for (int i = STEPS - 1; i >= 0; i--) {
      double part = LEAST + (1.0 - LEAST) * i / STEPS;
      double speed = rounded(part * how.speed().si());
      Throw slow = new Throw(Speed.metresPerSecond(speed), how.angle(), how.height());
      if (mended.test(model.thrown(slow))) {
        return Finding.of(
            finding.severity(),
            finding.subject(),
            finding.message() + " At " + Speed.METRE_PER_SECOND.format(speed, 3) + " and this angle " + what + ".",
            finding.source());
      }
    }
    return lower(model, how, finding, mended, what);
  }

  /** If no speed mends it, the angle: a throw that points up is as slow on top however it began. */
  private static Finding lower(FlightModel model, Throw how, Finding finding, Predicate<Flight> mended, String what) {
    for (int degrees = (int) Math.floor(how.angle().degrees()) - 1; degrees >= LOWEST; degrees--) {
      if (mended.test(model.thrown(how.at(Angle.degrees(degrees))))) {
        return Finding.of(
            finding.severity(),
            finding.subject(),
            finding.message() + " At this speed and " + Math.abs(degrees) + "° " + (degrees < 0 ? "down " : "up ") + what + ".",
            finding.source());
      }
    }
    return finding;
  }

  /** Down to hundredths below 10 m/s, to tenths below 100 m/s, else to whole metres per second. */
  private static double rounded(double speed) {
    double unit = speed < 10.0 ? 100.0 : speed < 100.0 ? 10.0 : 1.0;
    return Math.max(1.0, Math.floor(speed * unit)) / unit;
  }
}
