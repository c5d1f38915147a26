// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * The static margin: how far the centre of gravity lies ahead of the neutral point.
 *
 * <pre>{@code K_n = h_n − h = −dC_m/dC_L}</pre>
 *
 * <p>Positive is stable. Below about 0.03 models were seen to fly unsteadily even where theory still calls them stable
 * (free-flight-tunnel tests of the 1940s); a first flight deserves 0.10 to 0.20 (common practice, no source).
 */
public final class StaticMargin {
  /** The static margin. */
  public static final Formula MARGIN =
      Formula.named("static margin")
          .gives("K_n")
          .as("h_n − h")
          .where("h_n", "neutral point, fraction of c̄", -5, 10)
          .where("h", "centre of gravity, fraction of c̄", -5, 10)
          .from(Source.DEFINITION)
          .computedBy(StaticMargin::margin);

  static final Formula FRACTION =
      Formula.named("centre of gravity as a fraction of the mean aerodynamic chord")
          .gives("h")
          .as("(x − x_c) / c̄")
          .where("x", "centre of gravity", Length.METRE, -1, 100)
          .where("x_c", "leading edge of the mean aerodynamic chord", Length.METRE, -1, 100)
          .where("c̄", "mean aerodynamic chord", Length.METRE, 0.005, 20)
          .from(Source.DEFINITION)
          .computedBy(StaticMargin::fraction);

  private static final Source UNSTEADY =
      Source.published(
          "Campbell and Paulson, NACA wartime report on static margin in the free-flight tunnel", "abstract");
  private static final double UNSTEADY_BELOW = 0.03;

  private final NeutralPoint neutralPoint;
  private final Step step;
  private final List<Finding> findings;

  private StaticMargin(NeutralPoint neutralPoint, Step step, List<Finding> findings) {
    this.neutralPoint = neutralPoint;
    this.step = step;
    this.findings = Finding.inOrderOfWeight(findings);
  }

  /**
   * Static margin.
   *
   * @param neutralPoint h_n
   * @param centreOfGravity h
   * @return K_n; with h_n = 0.516 and h = 0.35 it is 0.166
   */
  public static double margin(double neutralPoint, double centreOfGravity) {
    return neutralPoint - centreOfGravity;
  }

  /**
   * A place as a fraction of the mean aerodynamic chord.
   *
   * @param x place [m] aft of the nose tip
   * @param leadingEdge leading edge of the mean aerodynamic chord [m] aft of the nose tip
   * @param chord c̄ [m], positive
   * @return h
   */
  public static double fraction(double x, double leadingEdge, double chord) {
    return (x - leadingEdge) / chord;
  }

  /**
   * The static margin of an aircraft.
   *
   * @param neutralPoint its neutral point
   * @param centreOfGravity its centre of gravity, aft of the nose tip
   * @param aircraftClass the class whose range it is held against
   * @return the margin with its findings
   */
  public static StaticMargin of(NeutralPoint neutralPoint, Length centreOfGravity, AircraftClass aircraftClass) {
    Objects.requireNonNull(neutralPoint, "neutral point");
    Objects.requireNonNull(aircraftClass, "aircraft class");
    Door.finite(centreOfGravity, "centre of gravity");
    Step h =
        Step.of(
            FRACTION,
            Step.given("centre of gravity", "x_cg", centreOfGravity, Sources.ASKED),
            Step.given("leading edge of the mean aerodynamic chord", "x_c", neutralPoint.leadingEdge(), Sources.AIRFRAME),
            Step.given("mean aerodynamic chord", "c̄", neutralPoint.meanAerodynamicChord(), Sources.AIRFRAME));
    Step margin = Step.of(MARGIN, neutralPoint.step(), h);
    List<Finding> findings = new ArrayList<>();
    double value = margin.value();
    if (value <= UNSTEADY_BELOW) {
      findings.add(
          Finding.of(
              Severity.SERIOUS,
              "static margin",
              (value <= 0.0 ? "It does not return by itself: " : "It will fly unsteadily: ")
                  + "move mass forward (battery, nose ballast) until the centre of gravity has come forward by "
                  + distance(aircraftClass.staticMargin().range().lower() - value, neutralPoint)
                  + ", or move the wing aft, or enlarge the horizontal tail.",
              value,
              aircraftClass.staticMargin().range(),
              NamedUnit.NUMBER,
              UNSTEADY));
    } else {
      aircraftClass.staticMargin().check(value).map(f -> withAmount(f, value, neutralPoint)).ifPresent(findings::add);
    }
    return new StaticMargin(neutralPoint, margin, findings);
  }

  private static String distance(double margin, NeutralPoint neutralPoint) {
    return neutralPoint.meanAerodynamicChord().times(margin).format(Length.MILLIMETRE, 2);
  }

  /** How far the centre of gravity must move to the nearer end of the range. */
  private static Finding withAmount(Finding finding, double value, NeutralPoint neutralPoint) {
    return finding
        .range()
        .map(
            range -> {
              boolean less = value < range.lower();
              double missing = less ? range.lower() - value : value - range.upper();
              return Finding.of(
                  finding.severity(),
                  finding.subject(),
                  finding.message() + " That is " + distance(missing, neutralPoint) + (less ? " forward." : " aft."),
                  value,
                  range,
                  NamedUnit.NUMBER,
                  finding.source());
            })
        .orElse(finding);
  }

  /**
   * The margin.
   *
   * @return K_n, fraction of c̄, positive if stable
   */
  public double value() {
    return step.value();
  }

  /**
   * The neutral point it is measured from.
   *
   * @return the neutral point
   */
  public NeutralPoint neutralPoint() {
    return neutralPoint;
  }

  /**
   * How the number came about.
   *
   * @return the step of K_n
   */
  public Step step() {
    return step;
  }

  /**
   * What to know about it.
   *
   * @return findings, heaviest first
   */
  public List<Finding> findings() {
    return findings;
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "static margin %.1f %% of c̄", 100.0 * value());
  }
}
