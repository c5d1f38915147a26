// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.basis;

import io.github.wingwright.core.quantity.NamedUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.StringJoiner;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * The steps behind some results, each after the steps that it comes from.
 *
 * <p>As text, every formula stands with its inputs written to just as many digits as it takes for the printed inputs to
 * give the printed result.
 */
public final class Workings {
  private static final int RESULT_DIGITS = 5;
  private static final int FEWEST_INPUT_DIGITS = 4;
  private static final int MOST_DIGITS = 17;
  private static final int MOST_GIVEN_DIGITS = 7;
  private static final int LONG_GIVEN_DIGITS = 6;

  /** The reader's own arithmetic rounds differently; a result so near the middle of two printed ones is not safe. */
  private static final double READER = 1e-12;

  private final List<Step> steps;

  private Workings(List<Step> steps) {
    this.steps = steps;
  }

  /**
   * The workings of some results.
   *
   * @param results the results
   * @return all steps that lead to them, inputs first, each once
   */
  public static Workings of(List<? extends Step> results) {
    Objects.requireNonNull(results, "results");
    List<Step> ordered = new ArrayList<>();
    Set<Step> seen = Collections.newSetFromMap(new IdentityHashMap<>());
    results.forEach(step -> collect(step, seen, ordered));
    return new Workings(List.copyOf(ordered));
  }

  private static void collect(Step step, Set<Step> seen, List<Step> ordered) {
    if (seen.add(step)) {
      step.inputs().forEach(input -> collect(input, seen, ordered));
      ordered.add(step);
    }
  }

  /**
   * All steps, inputs before what is made of them.
   *
   * @return the steps
   */
  public List<Step> steps() {
    return steps;
  }

  /**
   * The same without the given values, which the lines that use them print anyway, and without a line that is printed
   * already: short enough to stand below a chapter.
   *
   * @return the computed steps, in their order
   */
  public Workings computed() {
    return fresh(new HashSet<>());
  }

  /**
   * The computed steps that are not printed in other workings, for a chapter that adds to what is shown elsewhere.
   *
   * @param known the other workings
   * @return the steps, in their order, each line once
   */
  public Workings computedBeyond(Workings known) {
    Objects.requireNonNull(known, "known");
    Set<String> printed = new HashSet<>();
    known.steps.forEach(step -> printed.add(line(step)));
    return fresh(printed);
  }

  /**
   * The same without steps that stand elsewhere already, for a handout that tells each line once and refers back to it.
   *
   * @param others steps that stand elsewhere
   * @return the steps that do not, in their order
   */
  public Workings beyond(Collection<? extends Step> others) {
    Set<Step> known = Collections.newSetFromMap(new IdentityHashMap<>());
    known.addAll(others);
    return new Workings(steps.stream().filter(step -> !known.contains(step)).toList());
  }

  private Workings fresh(Set<String> printed) {
    return new Workings(
        steps.stream().filter(step -> !(step instanceof Step.Given)).filter(step -> printed.add(line(step))).toList());
  }

  private static String line(Step step) {
    return step.name() + " " + step.symbol() + " " + result(step) + " " + explain(step);
  }

  /**
   * What is remarkable in the steps.
   *
   * @return the findings of all steps, heaviest first
   */
  public List<Finding> findings() {
    return Finding.inOrderOfWeight(steps.stream().flatMap(s -> s.findings().stream()).toList());
  }

  /**
   * The right-hand side of a step: the given value's origin, the formula with its inputs, the table, or the method.
   *
   * @param step a step
   * @return one line of text
   */
  public static String explain(Step step) {
    Objects.requireNonNull(step, "step");
    return explain(step, input -> "");
  }

  /**
   * The right-hand side of a step, with a mark behind each of its inputs: where the reader finds it.
   *
   * @param step a step
   * @param mark what stands behind an input, such as {@code " [12]"}; empty where there is nothing to refer to
   * @return one line of text
   */
  public static String explain(Step step, Function<? super Step, String> mark) {
    Objects.requireNonNull(step, "step");
    Objects.requireNonNull(mark, "mark");
    if (step instanceof Step.Given given) {
      return "given: " + given.source().cite();
    }
    if (step instanceof Step.Evaluated evaluated) {
      return evaluated.formula().text() + explainInputs(evaluated, mark);
    }
    if (step instanceof Step.Sum sum) {
      int digits = inputDigits(sum, Workings::total);
      StringJoiner terms = new StringJoiner(" + ");
      sum.inputs().forEach(term -> terms.add(printed(term.value(), digits(term, digits)) + mark.apply(term)));
      return terms.toString();
    }
    Step.Solution solution = (Step.Solution) step;
    return solution.closingEquation()
        + ", by "
        + solution.method()
        + ", residual "
        + NamedUnit.NUMBER.format(solution.residual(), 2)
        + explainStart(solution, mark);
  }

  /** A method prints no values of its inputs; where they stand it says from which it starts. */
  private static String explainStart(Step.Solution solution, Function<? super Step, String> mark) {
    StringJoiner from = new StringJoiner(", ", ", from ", "");
    from.setEmptyValue("");
    for (Step input : solution.inputs()) {
      String where = mark.apply(input);
      if (!where.isEmpty()) {
        from.add(input.symbol() + where);
      }
    }
    return from.toString();
  }

  /**
   * The value of a step as the workings print it.
   *
   * @param step a step
   * @return for example {@code "23.528 Pa"}
   */
  public static String result(Step step) {
    Objects.requireNonNull(step, "step");
    return step instanceof Step.Given
        ? step.unit().format(step.value(), shownDigits(step.value()))
        : step.unit().format(step.value(), resultDigits(step.value()));
  }

  /** A result in the middle between two printed ones takes a digit more: which way it rounds is nobody's business. */
  private static int resultDigits(double value) {
    return printed(value * (1.0 - READER), RESULT_DIGITS).equals(printed(value * (1.0 + READER), RESULT_DIGITS))
        ? RESULT_DIGITS
        : RESULT_DIGITS + 1;
  }

  private static String printed(double value, int digits) {
    return NamedUnit.NUMBER.format(value, digits);
  }

  private static String explainInputs(Step.Evaluated step, Function<? super Step, String> mark) {
    int digits = inputDigits(step, step.formula()::evaluate);
    StringJoiner with = new StringJoiner(", ", " with ", "");
    List<Symbol> symbols = step.formula().inputs();
    for (int i = 0; i < symbols.size(); i++) {
      Step input = step.inputs().get(i);
      with.add(symbols.get(i).symbol() + " = " + input.unit().format(input.value(), digits(input, digits)) + mark.apply(input));
    }
    return symbols.isEmpty() ? "" : with.toString();
  }

  private static double total(double[] terms) {
    double total = 0.0;
    for (double term : terms) {
      total += term;
    }
    return total;
  }

  /** A given value of few digits is not rounded among the inputs either: nobody expects 9.80665 to become 9.8066. */
  private static int digits(Step input, int digits) {
    int given = input instanceof Step.Given ? givenDigits(input.value()) : digits;
    return given <= MOST_GIVEN_DIGITS ? Math.max(given, digits) : digits;
  }

  /** The fewest digits of the inputs that reproduce the printed result. */
  static int inputDigits(Step step, ToDoubleFunction<double[]> kernel) {
    int shown = resultDigits(step.value());
    String printed = printed(step.value(), shown);
    double[] exact = Line.values(step.inputs());
    double[] rounded = new double[exact.length];
    for (int digits = FEWEST_INPUT_DIGITS; digits < MOST_DIGITS; digits++) {
      for (int i = 0; i < exact.length; i++) {
        rounded[i] = Double.parseDouble(printed(exact[i], digits(step.inputs().get(i), digits)));
      }
      double result = kernel.applyAsDouble(rounded);
      boolean safe =
          printed(result * (1.0 - READER), shown).equals(printed) && printed(result * (1.0 + READER), shown).equals(printed);
      if (safe) {
        return digits;
      }
    }
    return MOST_DIGITS;
  }

  /** The digits that a given value takes to be printed as it was given, at most ten. */
  private static int givenDigits(double value) {
    for (int digits = FEWEST_INPUT_DIGITS; digits < 10; digits++) {
      double read = Double.parseDouble(NamedUnit.NUMBER.format(value, digits));
      if (read == value) {
        return digits;
      }
    }
    return 10;
  }

  /** A given value is printed as it was given, unless that takes more digits than anybody gives. */
  private static int shownDigits(double value) {
    int given = givenDigits(value);
    return given <= MOST_GIVEN_DIGITS ? given : LONG_GIVEN_DIGITS;
  }

  @Override
  public String toString() {
    StringJoiner lines = new StringJoiner("\n");
    for (Step step : steps) {
      lines.add(step.symbol() + " = " + result(step) + "  " + step.name());
      lines.add("    = " + explain(step));
    }
    return lines.toString();
  }
}
