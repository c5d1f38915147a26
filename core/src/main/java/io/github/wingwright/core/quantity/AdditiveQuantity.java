// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.quantity;

import java.util.Objects;

/**
 * A quantity that can be added, scaled and divided: all but {@link Temperature}.
 *
 * <p>Arithmetic trusts its operands, because the factories already refused what is not finite; a result that overflows
 * is refused where it next enters a public method of the library. Division by zero is refused at once.
 *
 * @param <Q> the kind of quantity itself
 */
public abstract sealed class AdditiveQuantity<Q extends AdditiveQuantity<Q>> extends ScalarQuantity<Q>
    permits Acceleration,
        Angle,
        AngularRate,
        Area,
        ArealDensity,
        Density,
        DynamicViscosity,
        Energy,
        FlexuralRigidity,
        Force,
        Frequency,
        KinematicViscosity,
        Length,
        LinearDensity,
        Mass,
        Moment,
        MomentOfInertia,
        Power,
        Pressure,
        SecondMomentOfArea,
        Speed,
        TemperatureDifference,
        Time,
        Volume,
        WingLoading {
  private static final long serialVersionUID = 1L;

  AdditiveQuantity(double si) {
    super(si);
  }

  /** Makes a quantity of the same kind from an SI value that is trusted. */
  abstract Q same(double si);

  /**
   * The sum.
   *
   * @param other what to add
   * @return this + other
   */
  public final Q plus(Q other) {
    Objects.requireNonNull(other, "other");
    return same(si + other.si);
  }

  /**
   * The difference.
   *
   * @param other what to take away
   * @return this − other
   */
  public final Q minus(Q other) {
    Objects.requireNonNull(other, "other");
    return same(si - other.si);
  }

  /**
   * A multiple.
   *
   * @param factor a plain number
   * @return this · factor
   */
  public final Q times(double factor) {
    return same(si * factor);
  }

  /**
   * A fraction.
   *
   * @param divisor a plain number, not zero
   * @return this / divisor
   * @throws ArithmeticException if the divisor is zero
   */
  public final Q dividedBy(double divisor) {
    return same(si / Check.divisor(divisor, divisor));
  }

  /**
   * The ratio of two quantities of one kind.
   *
   * @param other the divisor, not zero
   * @return this / other, a plain number
   * @throws ArithmeticException if the divisor is zero
   */
  public final double dividedBy(Q other) {
    Objects.requireNonNull(other, "other");
    return si / Check.divisor(other.si, other);
  }

  /**
   * The opposite.
   *
   * @return −this
   */
  public final Q negated() {
    return same(-si);
  }

  /**
   * The magnitude.
   *
   * @return |this|
   */
  public final Q magnitude() {
    return same(Math.abs(si));
  }

  /**
   * The smaller of two.
   *
   * @param other the other quantity
   * @return min(this, other)
   */
  public final Q atMost(Q other) {
    Objects.requireNonNull(other, "other");
    return same(Math.min(si, other.si));
  }

  /**
   * The larger of two.
   *
   * @param other the other quantity
   * @return max(this, other)
   */
  public final Q atLeast(Q other) {
    Objects.requireNonNull(other, "other");
    return same(Math.max(si, other.si));
  }

  /**
   * Whether this is more than nothing.
   *
   * @return whether the value is above zero
   */
  public final boolean isPositive() {
    return si > 0.0;
  }

  /**
   * Whether this is less than nothing.
   *
   * @return whether the value is below zero
   */
  public final boolean isNegative() {
    return si < 0.0;
  }

  /**
   * Whether two quantities agree.
   *
   * @param other the quantity to compare with
   * @param tolerance the greatest difference allowed, not negative
   * @return |this − other| ≤ tolerance
   * @throws IllegalArgumentException if the tolerance is negative
   */
  public final boolean isCloseTo(Q other, Q tolerance) {
    Objects.requireNonNull(other, "other");
    Objects.requireNonNull(tolerance, "tolerance");
    if (!(tolerance.si >= 0.0)) {
      throw new IllegalArgumentException("tolerance must not be negative, was " + tolerance);
    }
    return Math.abs(si - other.si) <= tolerance.si;
  }
}
