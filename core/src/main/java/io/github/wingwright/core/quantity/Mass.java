// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.quantity;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * A mass. A weight is a {@link Force}: see {@link #weight(Acceleration)}.
 *
 * <p>Held as one {@code double} in kg. Made by the named factories, such as
 * {@code Mass.grams(…)}, which refuse NaN and infinity; read by the accessors of the
 * same names.
 */
public final class Mass extends AdditiveQuantity<Mass> {
  private static final long serialVersionUID = 1L;

  /** Zero. */
  public static final Mass ZERO = new Mass(0.0);

  /** The unit kg. */
  public static final NamedUnit<Mass> KILOGRAM =
      new NamedUnit<>("kg", 1.0, 1.0, 0.0);

  /** The unit g. */
  public static final NamedUnit<Mass> GRAM =
      new NamedUnit<>("g", 1.0, 1_000.0, 0.0);

  /** The unit mg. */
  public static final NamedUnit<Mass> MILLIGRAM =
      new NamedUnit<>("mg", 1.0, 1_000_000.0, 0.0);

  /** The unit t. */
  public static final NamedUnit<Mass> TONNE =
      new NamedUnit<>("t", 1_000.0, 1.0, 0.0);

  /** The unit lb. */
  public static final NamedUnit<Mass> POUND =
      new NamedUnit<>("lb", 45_359_237.0, 100_000_000.0, 0.0, "lbm", "lbs");

  /** The unit oz. */
  public static final NamedUnit<Mass> OUNCE =
      new NamedUnit<>("oz", 28_349_523_125.0, 1_000_000_000_000.0, 0.0);

  /** The unit slug. */
  public static final NamedUnit<Mass> SLUG =
      new NamedUnit<>("slug", 0.45359237 * 9.80665, 0.3048, 0.0);

  /** The kind of quantity: its name, its units and its text. */
  public static final QuantityKind<Mass> KIND =
      new QuantityKind<>(
          "mass",
          new Dimension(1, 0, 0, 0, 0),
          Mass::new,
          List.of(KILOGRAM, GRAM, MILLIGRAM, TONNE, POUND, OUNCE, SLUG),
          List.of(MILLIGRAM, GRAM, KILOGRAM, TONNE));

  private Mass(double si) {
    super(si);
  }

  /**
   * A mass in kilograms.
   *
   * @param value the number of kilograms [kg], finite
   * @return the mass
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Mass kilograms(double value) {
    return new Mass(Check.finite(value, value, KIND, KILOGRAM));
  }

  /**
   * A mass in grams.
   *
   * @param value the number of grams [g], finite
   * @return the mass
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Mass grams(double value) {
    return new Mass(Check.finite(value / 1_000.0, value, KIND, GRAM));
  }

  /**
   * A mass in milligrams.
   *
   * @param value the number of milligrams [mg], finite
   * @return the mass
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Mass milligrams(double value) {
    return new Mass(Check.finite(value / 1_000_000.0, value, KIND, MILLIGRAM));
  }

  /**
   * A mass in tonnes.
   *
   * @param value the number of tonnes [t], finite
   * @return the mass
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Mass tonnes(double value) {
    return new Mass(Check.finite(value * 1_000.0, value, KIND, TONNE));
  }

  /**
   * A mass in pounds.
   *
   * @param value the number of pounds [lb], finite
   * @return the mass
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Mass pounds(double value) {
    return new Mass(Check.finite(value * 45_359_237.0 / 100_000_000.0, value, KIND, POUND));
  }

  /**
   * A mass in ounces.
   *
   * @param value the number of ounces [oz], finite
   * @return the mass
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Mass ounces(double value) {
    return new Mass(Check.finite(value * 28_349_523_125.0 / 1_000_000_000_000.0, value, KIND, OUNCE));
  }

  /**
   * A mass in slugs.
   *
   * @param value the number of slugs [slug], finite
   * @return the mass
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Mass slugs(double value) {
    return new Mass(Check.finite(value * (0.45359237 * 9.80665) / 0.3048, value, KIND, SLUG));
  }

  /**
   * Reads a mass from text such as {@code "1.2 kg"}.
   *
   * @param text a number and a unit; locale-free
   * @return the mass
   * @throws IllegalArgumentException if the text is not a mass; the message lists what is accepted
   */
  public static Mass parse(String text) {
    Objects.requireNonNull(text, "text");
    return KIND.parse(text);
  }

  /**
   * Takes a mass over from JSR-385.
   *
   * @param quantity a quantity of any implementation in any unit of a mass
   * @return the mass
   * @throws IllegalArgumentException if its unit is not of a mass, or its value is not finite
   */
  public static Mass from(Quantity<javax.measure.quantity.Mass> quantity) {
    Objects.requireNonNull(quantity, "quantity");
    return Jsr385.from(quantity, KIND);
  }

  /**
   * Hands this mass to JSR-385, in kg.
   *
   * @return a quantity of the reference implementation
   */
  public Quantity<javax.measure.quantity.Mass> toQuantity() {
    return Jsr385.quantity(this, javax.measure.quantity.Mass.class);
  }

  /**
   * The value in any JSR-385 unit.
   *
   * @param unit a unit of a mass
   * @return the number of that unit
   * @throws IllegalArgumentException if the unit is not of a mass
   */
  public double in(Unit<javax.measure.quantity.Mass> unit) {
    return Jsr385.value(this, unit);
  }

  /**
   * This mass in kilograms.
   *
   * @return the number of kilograms [kg]
   */
  public double kilograms() {
    return si;
  }

  /**
   * This mass in grams.
   *
   * @return the number of grams [g]
   */
  public double grams() {
    return si * 1_000.0;
  }

  /**
   * This mass in milligrams.
   *
   * @return the number of milligrams [mg]
   */
  public double milligrams() {
    return si * 1_000_000.0;
  }

  /**
   * This mass in tonnes.
   *
   * @return the number of tonnes [t]
   */
  public double tonnes() {
    return si / 1_000.0;
  }

  /**
   * This mass in pounds.
   *
   * @return the number of pounds [lb]
   */
  public double pounds() {
    return si * 100_000_000.0 / 45_359_237.0;
  }

  /**
   * This mass in ounces.
   *
   * @return the number of ounces [oz]
   */
  public double ounces() {
    return si * 1_000_000_000_000.0 / 28_349_523_125.0;
  }

  /**
   * This mass in slugs.
   *
   * @return the number of slugs [slug]
   */
  public double slugs() {
    return si * 0.3048 / (0.45359237 * 9.80665);
  }

  /**
   * This mass times an acceleration.
   *
   * @param acceleration the factor
   * @return the product, a force
   */
  public Force times(Acceleration acceleration) {
    Objects.requireNonNull(acceleration, "acceleration");
    return Force.trusted(si * acceleration.si);
  }

  /**
   * This mass times an area.
   *
   * @param area the factor
   * @return the product, a moment of inertia
   */
  public MomentOfInertia times(Area area) {
    Objects.requireNonNull(area, "area");
    return MomentOfInertia.trusted(si * area.si);
  }

  /**
   * This mass over a volume.
   *
   * @param volume the divisor, not zero
   * @return the quotient, a density
   * @throws ArithmeticException if the divisor is zero
   */
  public Density dividedBy(Volume volume) {
    Objects.requireNonNull(volume, "volume");
    return Density.trusted(si / Check.divisor(volume.si, volume));
  }

  /**
   * This mass over a density.
   *
   * @param density the divisor, not zero
   * @return the quotient, a volume
   * @throws ArithmeticException if the divisor is zero
   */
  public Volume dividedBy(Density density) {
    Objects.requireNonNull(density, "density");
    return Volume.trusted(si / Check.divisor(density.si, density));
  }

  /**
   * This mass over an area.
   *
   * @param area the divisor, not zero
   * @return the quotient, an areal density
   * @throws ArithmeticException if the divisor is zero
   */
  public ArealDensity dividedBy(Area area) {
    Objects.requireNonNull(area, "area");
    return ArealDensity.trusted(si / Check.divisor(area.si, area));
  }

  /**
   * This mass over an areal density.
   *
   * @param arealDensity the divisor, not zero
   * @return the quotient, an area
   * @throws ArithmeticException if the divisor is zero
   */
  public Area dividedBy(ArealDensity arealDensity) {
    Objects.requireNonNull(arealDensity, "areal density");
    return Area.trusted(si / Check.divisor(arealDensity.si, arealDensity));
  }

  /**
   * This mass over a wing loading.
   *
   * @param wingLoading the divisor, not zero
   * @return the quotient, the wing reference area
   * @throws ArithmeticException if the divisor is zero
   */
  public Area dividedBy(WingLoading wingLoading) {
    Objects.requireNonNull(wingLoading, "wing loading");
    return Area.trusted(si / Check.divisor(wingLoading.si, wingLoading));
  }

  /**
   * This mass over a length.
   *
   * @param length the divisor, not zero
   * @return the quotient, a linear density
   * @throws ArithmeticException if the divisor is zero
   */
  public LinearDensity dividedBy(Length length) {
    Objects.requireNonNull(length, "length");
    return LinearDensity.trusted(si / Check.divisor(length.si, length));
  }

  /**
   * This mass over a linear density.
   *
   * @param linearDensity the divisor, not zero
   * @return the quotient, a length
   * @throws ArithmeticException if the divisor is zero
   */
  public Length dividedBy(LinearDensity linearDensity) {
    Objects.requireNonNull(linearDensity, "linear density");
    return Length.trusted(si / Check.divisor(linearDensity.si, linearDensity));
  }

  /**
   * The force by which gravity pulls this mass.
   *
   * @param gravity acceleration of free fall, such as {@link Acceleration#STANDARD_GRAVITY}
   * @return m·g
   */
  public Force weight(Acceleration gravity) {
    Objects.requireNonNull(gravity, "gravity");
    return times(gravity);
  }

  /** Makes a mass of an SI value that comes from arithmetic and is trusted. */
  static Mass trusted(double si) {
    return new Mass(si);
  }

  @Override
  Mass same(double si) {
    return new Mass(si);
  }

  @Override
  public QuantityKind<Mass> kind() {
    return KIND;
  }
}
