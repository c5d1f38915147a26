// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.basis;

import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.quantity.ScalarQuantity;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.function.ToDoubleFunction;

/**
 * One line of the workings: a number, and how it comes from other numbers.
 *
 * <p>A step is made from inputs only, never from a result. It computes its value itself, with the same method that the
 * library computes with, so a number that is shown is the number that was used. Its inputs are steps again; together
 * they form a graph without cycles, from the brief to the last number of the sheet.
 *
 * <p>There are four kinds: a {@link Given} value, an {@link Evaluated} formula, a {@link Sum} of lines (a table), and a
 * {@link Solution} found by a numerical method, with its closing equation and residual.
 */
public sealed interface Step permits Step.Given, Step.Evaluated, Step.Sum, Step.Solution {

  /**
   * What the number is, in words.
   *
   * @return for example {@code "wing reference area"}
   */
  String name();

  /**
   * Its symbol.
   *
   * @return for example {@code "S"}
   */
  String symbol();

  /**
   * Its coherent SI unit.
   *
   * @return the unit
   */
  NamedUnit<?> unit();

  /**
   * The number.
   *
   * @return the value [SI]
   */
  double value();

  /**
   * The steps that it comes from.
   *
   * @return the inputs, none for a given value
   */
  List<Step> inputs();

  /**
   * Where the formula or the value comes from.
   *
   * @return the source
   */
  Source source();

  /**
   * What is remarkable about it: inputs outside the domain of the formula.
   *
   * @return findings, usually none
   */
  default List<Finding> findings() {
    return List.of();
  }

  /**
   * A given quantity.
   *
   * @param name what it is
   * @param symbol its symbol
   * @param quantity its value
   * @param origin who gave it: the brief, a guideline, a measurement
   * @param <Q> kind of quantity
   * @return the step
   */
  static <Q extends ScalarQuantity<Q>> Step given(String name, String symbol, Q quantity, Source origin) {
    Objects.requireNonNull(quantity, "quantity");
    return new Given(name, symbol, quantity.kind().siUnit(), quantity.si(), origin);
  }

  /**
   * A given number.
   *
   * @param name what it is
   * @param symbol its symbol
   * @param value its value
   * @param origin who gave it
   * @return the step
   */
  static Step given(String name, String symbol, double value, Source origin) {
    return new Given(name, symbol, NamedUnit.NUMBER, value, origin);
  }

  /**
   * A formula applied to earlier steps.
   *
   * @param formula the formula
   * @param inputs one step for each input of the formula, in its order
   * @return the step, named as the formula
   * @throws IllegalArgumentException if an input is missing or of another unit, or the result is not finite
   */
  static Step of(Formula formula, Step... inputs) {
    return new Evaluated(formula.name(), formula.symbol(), formula, List.of(inputs));
  }

  /**
   * A formula applied to earlier steps, under a name of its own: the same formula serves wing and tail.
   *
   * @param name what the number is here
   * @param symbol its symbol here
   * @param formula the formula
   * @param inputs one step for each input of the formula, in its order
   * @return the step
   * @throws IllegalArgumentException if an input is missing or of another unit, or the result is not finite
   */
  static Step of(String name, String symbol, Formula formula, Step... inputs) {
    return new Evaluated(name, symbol, formula, List.of(inputs));
  }

  /**
   * A sum, shown as a table.
   *
   * @param name what the number is
   * @param symbol its symbol
   * @param terms the lines, of one unit, at least one
   * @return the step
   */
  static Step sum(String name, String symbol, List<Step> terms) {
    Objects.requireNonNull(terms, "terms");
    return new Sum(name, symbol, terms);
  }

  /**
   * A number found by a numerical method.
   *
   * @param name what the number is
   * @param symbol its symbol
   * @param unit its coherent SI unit
   * @param method the method in words, such as {@code "Brent's method on [0.1, 0.9]"}
   * @param closingEquation the equation it satisfies, as text
   * @param solve finds the number from the values of the inputs
   * @param residual what is left of the closing equation, from the inputs followed by the solution
   * @param source where the method comes from
   * @param inputs the steps it starts from
   * @return the step
   */
  static Step solution(
      String name,
      String symbol,
      NamedUnit<?> unit,
      String method,
      String closingEquation,
      ToDoubleFunction<double[]> solve,
      ToDoubleFunction<double[]> residual,
      Source source,
      Step... inputs) {
    Objects.requireNonNull(unit, "unit");
    Objects.requireNonNull(method, "method");
    Objects.requireNonNull(closingEquation, "closing equation");
    Objects.requireNonNull(solve, "solve");
    Objects.requireNonNull(residual, "residual");
    Objects.requireNonNull(source, "source");
    Objects.requireNonNull(inputs, "inputs");
    return new Solution(name, symbol, unit, method, closingEquation, solve, residual, source, List.of(inputs));
  }

  /**
   * A value that comes from outside the workings.
   *
   * @param name what it is
   * @param symbol its symbol
   * @param unit its coherent SI unit
   * @param value the value [SI], finite
   * @param source who gave it
   */
  record Given(String name, String symbol, NamedUnit<?> unit, double value, Source source) implements Step {
    /** Refuses a value that is not finite. */
    public Given {
      Objects.requireNonNull(name, "name");
      Objects.requireNonNull(symbol, "symbol");
      Objects.requireNonNull(unit, "unit");
      Objects.requireNonNull(source, "source");
      if (!Double.isFinite(value)) {
        throw new IllegalArgumentException(name + " must be finite, was " + value);
      }
    }

    @Override
    public List<Step> inputs() {
      return List.of();
    }

    @Override
    public String toString() {
      return Line.of(this);
    }
  }

  /** A formula applied to steps. */
  final class Evaluated extends Reckoned implements Step {
    private final Formula formula;

    private Evaluated(String name, String symbol, Formula formula, List<Step> inputs) {
      super(name, symbol, formula.unit(), formula.source(), inputs, value(name, formula, inputs));
      this.formula = formula;
    }

    private static double value(String name, Formula formula, List<Step> inputs) {
      double result = formula.evaluate(Line.values(inputs));
      Line.checkUnits(formula, inputs);
      return Line.finite(name, result, formula.toString(), inputs);
    }

    Evaluated from(List<Step> others) {
      return new Evaluated(name(), symbol(), formula, others);
    }

    /**
     * The formula.
     *
     * @return the formula that gives the value
     */
    public Formula formula() {
      return formula;
    }

    @Override
    public List<Finding> findings() {
      return formula.outsideDomain(Line.values(inputs()));
    }

    @Override
    public String toString() {
      return Line.of(this);
    }
  }

  /** A sum of steps of one unit. */
  final class Sum extends Reckoned implements Step {

    private Sum(String name, String symbol, List<Step> terms) {
      super(name, symbol, unit(name, terms), Source.DEFINITION, List.copyOf(terms), value(name, terms));
    }

    private static NamedUnit<?> unit(String name, List<Step> terms) {
      if (terms.isEmpty()) {
        throw new IllegalArgumentException(name + " needs at least one term, got none");
      }
      return terms.get(0).unit();
    }

    private static double value(String name, List<Step> terms) {
      NamedUnit<?> unit = terms.get(0).unit();
      double total = 0.0;
      for (Step term : terms) {
        if (!term.unit().symbol().equals(unit.symbol())) {
          throw new IllegalArgumentException(name + " needs terms of one unit, got " + unit + " and " + term.unit());
        }
        total += term.value();
      }
      return Line.finite(name, total, "a sum", terms);
    }

    Sum from(List<Step> others) {
      return new Sum(name(), symbol(), others);
    }

    @Override
    public String toString() {
      return Line.of(this);
    }
  }

  /** A number found by a numerical method. */
  final class Solution extends Reckoned implements Step {
    private final String method;
    private final String closingEquation;
    private final ToDoubleFunction<double[]> solve;
    private final ToDoubleFunction<double[]> close;
    private final double residual;

    private Solution(
        String name,
        String symbol,
        NamedUnit<?> unit,
        String method,
        String closingEquation,
        ToDoubleFunction<double[]> solve,
        ToDoubleFunction<double[]> residual,
        Source source,
        List<Step> inputs) {
      super(
          name,
          symbol,
          unit,
          source,
          inputs,
          Line.finite(name, solve.applyAsDouble(Line.values(inputs)), closingEquation, inputs));
      this.method = method;
      this.closingEquation = closingEquation;
      this.solve = solve;
      this.close = residual;
      double[] values = Line.values(inputs);
      double[] closed = Arrays.copyOf(values, values.length + 1);
      closed[values.length] = value();
      this.residual = Line.finite("residual of " + name, residual.applyAsDouble(closed), closingEquation, inputs);
    }

    /** What the method gives for other inputs, without its residual. */
    double solvedWith(double[] values) {
      return solve.applyAsDouble(values.clone());
    }

    Solution from(List<Step> others) {
      return new Solution(name(), symbol(), unit(), method, closingEquation, solve, close, source(), others);
    }

    /**
     * The method in words.
     *
     * @return the method
     */
    public String method() {
      return method;
    }

    /**
     * The equation that the number satisfies.
     *
     * @return the equation as text
     */
    public String closingEquation() {
      return closingEquation;
    }

    /**
     * What is left of the closing equation at the number.
     *
     * @return the residual
     */
    public double residual() {
      return residual;
    }

    @Override
    public String toString() {
      return Line.of(this);
    }
  }
}
