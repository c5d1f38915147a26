// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.basis;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * Joins workings that were made apart: a value that one part of the library was given becomes the step by which another
 * part computed it.
 *
 * <p>A part of the library that is handed a finished shape reads its area from it and starts its own workings with
 * "S, given". Where the whole design is known, the step that computed that area is known too. This puts it in its place: a
 * given value is replaced by an origin of the same symbol, the same unit and the same value, to a few units in the last
 * place, one of the same name first. Steps that stand on a replaced one are made again from the same formula, so a traced
 * step is again the value of its own workings. Two given values, or two steps of one formula, with the same name, symbol
 * and inputs are one step: the first.
 */
public final class Origins {
  /** Two ways to one length differ by rounding in their last places. */
  private static final double ROUNDING = 1e-12;

  private final Map<String, List<Step>> bySymbol = new HashMap<>();
  private final IdentityHashMap<Step, Step> traced = new IdentityHashMap<>();
  private final Map<List<?>, Step> unique = new HashMap<>();

  /**
   * Knows some steps.
   *
   * @param known steps that compute what others are given
   */
  public Origins(List<? extends Step> known) {
    known.forEach(this::add);
  }

  /**
   * Knows one more step.
   *
   * @param step a step that computes what others are given
   * @return the same step, for chaining
   */
  public Step add(Step step) {
    Objects.requireNonNull(step, "step");
    bySymbol.computeIfAbsent(step.symbol(), s -> new ArrayList<>()).add(step);
    return step;
  }

  /**
   * The step with every given value that has an origin replaced by it.
   *
   * @param step a step
   * @return the traced step, the same object where nothing was replaced
   */
  public Step trace(Step step) {
    Objects.requireNonNull(step, "step");
    Step done = traced.get(step);
    if (done == null) {
      done = first(make(step));
      traced.put(step, done);
      traced.put(done, done);
    }
    return done;
  }

  /** A formula applied twice to the same inputs is one step; sums and solutions hold tables and methods of their own. */
  private Step first(Step step) {
    if (step instanceof Step.Given) {
      return unique.computeIfAbsent(List.of(step), key -> step);
    }
    if (step instanceof Step.Evaluated evaluated) {
      return unique.computeIfAbsent(
          List.of(evaluated.name(), evaluated.symbol(), evaluated.formula().text(), evaluated.inputs()), key -> step);
    }
    return step;
  }

  private Step make(Step step) {
    if (step instanceof Step.Given given) {
      return origin(given).orElse(given);
    }
    List<Step> inputs = step.inputs().stream().map(this::trace).toList();
    boolean same = true;
    for (int i = 0; i < inputs.size(); i++) {
      same &= inputs.get(i) == step.inputs().get(i);
    }
    if (same) {
      return step;
    }
    if (step instanceof Step.Evaluated evaluated) {
      return evaluated.from(inputs);
    }
    if (step instanceof Step.Sum sum) {
      return sum.from(inputs);
    }
    return ((Step.Solution) step).from(inputs);
  }

  private Optional<Step> origin(Step.Given given) {
    List<Step> known =
        bySymbol.getOrDefault(given.symbol(), List.of()).stream()
            .filter(step -> step != given && step.unit().symbol().equals(given.unit().symbol()))
            .filter(step -> Math.abs(step.value() - given.value()) <= ROUNDING * Math.abs(given.value()))
            .toList();
    return known.stream().filter(step -> step.name().equals(given.name())).findFirst().or(() -> known.stream().findFirst());
  }
}
