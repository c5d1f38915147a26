// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.core.basis.Band;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.StringJoiner;

/**
 * The downwash gradient at a tail, by every method side by side, with the one that the design reckons with.
 *
 * <p>A wing that lifts turns the air down. With ε_α = dε/dα a tail behind it sees only the part (1 − ε_α) of a change of
 * angle of attack: the tail loses a third to a half of what it could do. No formula knows ε_α well; the band from the
 * least to the greatest of the methods is carried into the neutral point.
 */
public final class Downwash {
  private static final Formula PER_SPAN =
      Formula.named("distance over span")
          .gives("l")
          .as("x / b")
          .where("x", "distance", Length.METRE, -60, 60)
          .where("b", "wing span", Length.METRE, 0.05, 100)
          .from(Source.DEFINITION)
          .computedBy((double x, double b) -> x / b);

  private final DownwashMethod chosen;
  private final Map<DownwashMethod, Step> steps;

  private Downwash(DownwashMethod chosen, DownwashMethod.Terms terms) {
    this.chosen = chosen;
    this.steps = new EnumMap<>(DownwashMethod.class);
    for (DownwashMethod method : DownwashMethod.values()) {
      steps.put(method, method.step(terms));
    }
  }

  /**
   * The downwash of a wing at a tail.
   *
   * @param wing the wing
   * @param tail the tail, behind the wing
   * @param liftSlope lift-curve slope of the wing a_w [1/rad], positive
   * @param chosen the method that the design reckons with
   * @return the gradients of all methods
   * @throws IllegalArgumentException if the tail is not behind the wing
   */
  public static Downwash at(Wing wing, Tail tail, double liftSlope, DownwashMethod chosen) {
    Objects.requireNonNull(wing, "wing");
    Objects.requireNonNull(tail, "tail");
    Objects.requireNonNull(chosen, "chosen");
    Door.positive(liftSlope, "lift-curve slope");
    return at(wing, tail, Step.given("lift-curve slope of the wing", "a_w", liftSlope, Source.BRIEF), chosen);
  }

  static Downwash at(Wing wing, Tail tail, Step liftSlope, DownwashMethod chosen) {
    Door.positive(tail.armFrom(wing), "tail arm");
    return new Downwash(chosen, terms(wing, tail, liftSlope));
  }

  static DownwashMethod.Terms terms(Wing wing, Tail tail, Step liftSlope) {
    Planform p = wing.planform();
    Length height =
        tail.placement().z().plus(tail.planform().meanAerodynamicChordZ()).minus(wing.placement().z());
    Step span = Step.given("wing span", "b", p.span(), Sources.AIRFRAME);
    Step arm = Step.given("tail arm", "l_h", tail.armFrom(wing), Sources.AIRFRAME);
    return new DownwashMethod.Terms(
        liftSlope,
        Step.given("aspect ratio", "A", p.aspectRatio(), Sources.AIRFRAME),
        Step.given("taper ratio", "λ", p.taperRatio(), Sources.AIRFRAME),
        Step.given("sweep of the quarter-chord line", "Λ", p.sweepAt(0.25), Sources.AIRFRAME),
        Step.of("tail arm over span", "l", PER_SPAN, arm, span),
        Step.of("tail height over span", "z", PER_SPAN, Step.given("tail height", "z_h", height, Sources.AIRFRAME), span));
  }

  /**
   * The method that the design reckons with.
   *
   * @return the method
   */
  public DownwashMethod method() {
    return chosen;
  }

  /**
   * The gradient that the design reckons with.
   *
   * @return ε_α
   */
  public double gradient() {
    return gradient(chosen);
  }

  /**
   * The gradient by one method.
   *
   * @param method the method
   * @return ε_α
   */
  public double gradient(DownwashMethod method) {
    return step(method).value();
  }

  /**
   * The workings of one method.
   *
   * @param method the method
   * @return its step
   */
  public Step step(DownwashMethod method) {
    Step step = steps.get(method);
    if (step == null) {
      throw new IllegalStateException("no downwash by " + method);
    }
    return step;
  }

  /**
   * The spread over the methods that hold for this aircraft, around the chosen one.
   *
   * @return least, chosen and greatest ε_α
   */
  public Band band() {
    double low = gradient();
    double high = low;
    for (DownwashMethod method : DownwashMethod.values()) {
      if (holds(method)) {
        low = Math.min(low, gradient(method));
        high = Math.max(high, gradient(method));
      }
    }
    return new Band(low, gradient(), high);
  }

  /**
   * Whether a method is within the range for which it is stated.
   *
   * @param method the method
   * @return false if one of its inputs lies outside
   */
  public boolean holds(DownwashMethod method) {
    return step(method).findings().isEmpty();
  }

  /**
   * What to know: an input outside the chosen method's range, a spread that is wide.
   *
   * @return findings
   */
  public List<Finding> findings() {
    List<Finding> findings = new ArrayList<>(step(chosen).findings());
    Band band = band();
    double spread = (band.high() - band.low()) / band.likely();
    if (spread > 0.3) {
      findings.add(
          Finding.of(
              Severity.NOTE,
              "downwash gradient",
              String.format(
                  Locale.ROOT,
                  "The methods range from %.2f to %.2f. Keep static margin in hand for it, or compute the lattice.",
                  band.low(),
                  band.high()),
              Source.library("methods compared")));
    }
    return Finding.inOrderOfWeight(findings);
  }

  /**
   * A table: a line for each method.
   *
   * @return several lines of text
   */
  @Override
  public String toString() {
    StringJoiner lines = new StringJoiner(System.lineSeparator());
    lines.add("downwash gradient:");
    for (DownwashMethod method : DownwashMethod.values()) {
      lines.add(
          String.format(
              Locale.ROOT,
              "  %s %.4f  %s%s",
              method == chosen ? ">" : " ",
              gradient(method),
              method.words(),
              holds(method) ? "" : " (outside its range)"));
    }
    return lines.toString();
  }
}
