// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core;

import java.io.Serial;
import java.util.Arrays;
import java.util.Objects;

/**
 * A numerical method that did not reach its goal, with what is needed to see why.
 *
 * <p>It carries how many iterations (or evaluations) were spent, what was left of the closing equation, and the last
 * values: for a bracketing method the two ends of the bracket, for an iteration the values of its unknowns. The message
 * is made from these, for example
 * <pre>{@code no root within tolerance after 100 evaluations: residual 0.02, bracket 1.0 to 1.5}</pre>
 *
 * <p>The residual is in the unit of the equation that was to be closed, and NaN where the method ended before it had one.
 */
public final class ConvergenceException extends RuntimeException {
  @Serial
  private static final long serialVersionUID = 1L;

  private final int iterations;
  private final double residual;
  private final boolean bracketed;
  private final double[] lastValues;

  private ConvergenceException(String message, int iterations, double residual, boolean bracketed, double[] lastValues) {
    super(message);
    this.iterations = iterations;
    this.residual = residual;
    this.bracketed = bracketed;
    this.lastValues = lastValues;
  }

  /**
   * A bracketing method that failed.
   *
   * @param what       what was not reached, as the start of a sentence: "no root within tolerance"
   * @param iterations the iterations or evaluations spent
   * @param residual   what was left of the equation; NaN if unknown
   * @param lower      the lower end of the bracket
   * @param upper      the upper end of the bracket
   * @return the exception, to be thrown
   */
  public static ConvergenceException inBracket(String what, int iterations, double residual, double lower, double upper) {
    String message = opening(what, iterations, "evaluations", residual) + ", bracket " + lower + " to " + upper;
    return new ConvergenceException(message, iterations, residual, true, new double[] {lower, upper});
  }

  /**
   * An iteration that failed.
   *
   * @param what       what was not reached, as the start of a sentence: "masses and balance did not settle"
   * @param iterations the iterations spent
   * @param residual   what was left of the equation; NaN if unknown
   * @param lastValues the unknowns as the last iteration left them
   * @return the exception, to be thrown
   */
  public static ConvergenceException atValues(String what, int iterations, double residual, double... lastValues) {
    Objects.requireNonNull(lastValues, "last values");
    double[] values = lastValues.clone();
    String message = opening(what, iterations, "iterations", residual) + ", last values " + Arrays.toString(values);
    return new ConvergenceException(message, iterations, residual, false, values);
  }

  private static String opening(String what, int count, String counted, double residual) {
    return what + " after " + count + " " + counted + ": residual " + residual;
  }

  /**
   * The iterations or evaluations spent.
   *
   * @return the count
   */
  public int iterations() {
    return iterations;
  }

  /**
   * What was left of the closing equation, in its own unit.
   *
   * @return the residual; NaN if the method ended before it had one
   */
  public double residual() {
    return residual;
  }

  /**
   * Whether the last values are the two ends of a bracket, the lower one first.
   *
   * @return true for a bracketing method
   */
  public boolean isBracketed() {
    return bracketed;
  }

  /**
   * The last values: the ends of the bracket, or the unknowns of the iteration.
   *
   * @return a new array
   */
  public double[] lastValues() {
    return lastValues.clone();
  }
}
