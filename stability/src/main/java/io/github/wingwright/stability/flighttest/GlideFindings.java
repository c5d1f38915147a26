// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.flighttest;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.stability.design.Design;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What to know about the steady glides among test flights: whether they agree, and whether they were steady. */
final class GlideFindings {
  private static final Source TESTS = Source.library("flight tests against the design");

  /** A launch that is off the speed of the flight by this part of it makes a swing that errs by 2 % (choice of this library). */
  private static final double OFF_THE_GLIDE = 0.04;

  private final Design design;
  private final List<GlideResult> results;
  private final GlideMeans means;
  private final List<Finding> findings = new ArrayList<>();

  GlideFindings(Design design, List<GlideResult> results, GlideMeans means) {
    this.design = design;
    this.results = results;
    this.means = means;
  }

  /**
   * The findings.
   *
   * @param flights how many flights there were, steady or not
   * @return findings, in no order
   */
  List<Finding> among(int flights) {
    if (results.isEmpty()) {
      findings.add(
          Finding.of(
              Severity.NOTE,
              "flight tests",
              "None of the " + flights + " flights is a steady glide with its time: they say how to trim, but not the drag.",
              TESTS));
      return List.copyOf(findings);
    }
    scatter();
    Measured more = means.meanExcess().orElseThrow();
    if (more.distanceTo(0.0) < 2.0) {
      findings.add(
          Finding.of(
              Severity.NOTE,
              "drag as flown",
              "It differs from what was reckoned by less than twice its uncertainty: "
                  + results.size()
                  + " flights do not yet tell it from none. Four times as many halve the uncertainty; a better clock does more.",
              TESTS));
    }
    if (results.stream().anyMatch(r -> r.flight().launchSpeed().isEmpty())) {
      findings.add(
          Finding.of(
              Severity.NOTE,
              "launch speed",
              "It was not measured in every flight and counts as the speed of the flight there, to "
                  + Speed.METRE_PER_SECOND.format(GlideReading.UNMEASURED_LAUNCH, 2)
                  + "; 1 m/s more of it is worth some 0.7 m of height, so measure it from a film.",
              TESTS));
    }
    launches();
    double half = design.glide().usableLift();
    for (GlideResult r : results) {
      if (r.liftCoefficient().value() > half + 2.0 * r.liftCoefficient().uncertainty()) {
        findings.add(
            Finding.of(
                Severity.CAUTION,
                "flight " + r.flight().name(),
                "Its lift coefficient is beyond the usable one: check its time and its distance.",
                r.liftCoefficient().value(),
                Interval.atMost(half),
                NamedUnit.NUMBER,
                TESTS));
      }
    }
    return List.copyOf(findings);
  }

  private void scatter() {
    if (results.size() > 1) {
      List<Measured> excess = means.excess();
      Measured mean = Measured.mean(excess);
      double chi = 0.0;
      for (Measured e : excess) {
        chi += e.distanceTo(mean.value()) * e.distanceTo(mean.value());
      }
      double ratio = Math.sqrt(chi / (excess.size() - 1));
      if (ratio > 2.0) {
        findings.add(
            Finding.of(
                Severity.CAUTION,
                "scatter of the flights",
                "They scatter more than their uncertainties allow; something changed between them: launch, trim or wind.",
                ratio,
                Interval.atMost(2.0),
                NamedUnit.NUMBER,
                TESTS));
      }
    }
  }

  /** Launches off the speed of the flight by more than the clock, the tape and the film err. */
  private void launches() {
    double squares = 0.0;
    double read = 0.0;
    double speed = 0.0;
    int n = 0;
    for (GlideResult r : results) {
      Optional<Measured> launch = r.flight().launchSpeed();
      if (launch.isPresent()) {
        double off = launch.get().value() - r.speed().value();
        squares += off * off;
        read += Math.pow(Math.hypot(launch.get().uncertainty(), r.speed().uncertainty()), 2);
        speed += r.speed().value();
        n++;
      }
    }
    if (n == 0) {
      return;
    }
    double off = Math.sqrt(Math.max(0.0, squares - read) / n);
    // Of n normal errors the sum of squares itself errs by the root of 2/n.
    boolean beyondReading = squares > read * (1.0 + 2.0 * Math.sqrt(2.0 / n));
    if (beyondReading && off > OFF_THE_GLIDE * speed / n) {
      findings.add(
          Finding.of(
              Severity.CAUTION,
              "launches off the glide",
              "They left the hand at another speed than they flew at, by so much more than was misread. They swing and land fast or"
                  + " slow, and the drag that they tell comes out too high, by some 3 % at a twentieth of the speed. Launch at the"
                  + " speed of the glide, or note bounces for those that swing.",
              off,
              Interval.atMost(OFF_THE_GLIDE * speed / n),
              Speed.METRE_PER_SECOND,
              TESTS));
    }
  }
}
