// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.flight;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.performance.Flight;
import io.github.wingwright.core.performance.FlightEnd;
import io.github.wingwright.core.performance.Throw;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;

/** By how little the tail must be turned so that what a flight found is gone, tried by flying. */
final class ShimAdvice {
  /** A shim of six degrees is the most that is advised. */
  private static final int MOST_TENTHS = 60;

  private ShimAdvice() {}

  static List<Finding> added(List<Finding> findings, PitchFlight model, Throw how) {
    return Finding.inOrderOfWeight(
        findings.stream()
            .map(
                finding ->
                    switch (finding.subject()) {
                      case "stall" -> added(finding, model, how, f -> f.firstStall().isEmpty(), "it does not stall");
                      case "ceiling" ->
                          added(finding, model, how, f -> f.end() != FlightEnd.CEILING, "it stays below the ceiling");
                      default -> finding;
                    })
            .toList());
  }

  /** The least turn of the tail, in tenths of a degree, from which this launch is mended while the glider still trims. */
  private static Finding added(Finding finding, PitchFlight model, Throw how, Predicate<Flight> mended, String what) {
    for (int tenths = 1; tenths <= MOST_TENTHS; tenths++) {
      PitchFlight other = model.shimmed(tenths);
      if (other.trimmedLift().isEmpty()) {
        return finding;
      }
      if (mended.test(other.thrown(how))) {
        return Finding.of(
            finding.severity(),
            finding.subject(),
            String.format(
                Locale.ROOT, "%s With %.1f° %s decalage %s, launched as it is.", finding.message(), 0.1 * tenths,
                model.liftsByDecalage() ? "less" : "more", what),
            finding.source());
      }
    }
    return finding;
  }
}
