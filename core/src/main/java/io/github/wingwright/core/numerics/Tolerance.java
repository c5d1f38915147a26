// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.numerics;

/**
 * How close is close enough: an absolute and a relative part, of which the larger counts.
 * <pre>{@code allowance(x) = max(absolute, relative·|x|)}</pre>
 *
 * <p>The absolute part is in the unit of what is compared and matters near zero; the relative part is a plain number.
 * A relative part of 0 is allowed if the absolute part is not 0, and the other way round. Example: with
 * {@code new Tolerance(1e-9, 1e-6)} the allowance at 2 is 2e-6, at 0 it is 1e-9.
 *
 * @param absolute the absolute part, in the unit of what is compared, zero or more
 * @param relative the relative part, zero, or from {@value #LEAST_RELATIVE} to less than 1
 */
public record Tolerance(double absolute, double relative) {
  /** The smallest relative part that double arithmetic can honour: a few units in the last place. */
  public static final double LEAST_RELATIVE = 1e-15;

  /** Checks the two parts. */
  public Tolerance {
    if (!(absolute >= 0 && Double.isFinite(absolute))) {
      throw new IllegalArgumentException("absolute tolerance must be finite and not negative, was " + absolute);
    }
    if (relative != 0 && !(relative >= LEAST_RELATIVE && relative < 1)) {
      throw new IllegalArgumentException(
          "relative tolerance must be 0 or from " + LEAST_RELATIVE + " to less than 1, was " + relative);
    }
    if (absolute == 0 && relative == 0) {
      throw new IllegalArgumentException("a tolerance must not be zero in both parts");
    }
  }

  /**
   * A tolerance without an absolute part. Where the answer may be zero it can ask for more than is possible.
   *
   * @param relative the relative part, from {@value #LEAST_RELATIVE} to less than 1
   * @return the tolerance
   */
  public static Tolerance relative(double relative) {
    return new Tolerance(0, relative);
  }

  /**
   * A tolerance without a relative part.
   *
   * @param absolute the absolute part, in the unit of what is compared, positive
   * @return the tolerance
   */
  public static Tolerance absolute(double absolute) {
    return new Tolerance(absolute, 0);
  }

  /**
   * What a value of this size may be off by.
   *
   * @param value the value
   * @return the allowance, in the unit of the value
   */
  public double allowance(double value) {
    return Math.max(absolute, relative * Math.abs(value));
  }
}
