// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.quantity;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * The kinematic viscosity ν = μ/ρ of a fluid.
 *
 * <p>Held as one {@code double} in m²/s. Made by the named factories, such as
 * {@code KinematicViscosity.squareMillimetresPerSecond(…)}, which refuse NaN and infinity; read by the accessors of the
 * same names.
 */
public final class KinematicViscosity extends AdditiveQuantity<KinematicViscosity> {
  private static final long serialVersionUID = 1L;

  /** Zero. */
  public static final KinematicViscosity ZERO = new KinematicViscosity(0.0);

  /** The unit m²/s. */
  public static final NamedUnit<KinematicViscosity> SQUARE_METRE_PER_SECOND =
      new NamedUnit<>("m²/s", 1.0, 1.0, 0.0, "m2/s");

  /** The unit mm²/s. */
  public static final NamedUnit<KinematicViscosity> SQUARE_MILLIMETRE_PER_SECOND =
      new NamedUnit<>("mm²/s", 1.0, 1_000_000.0, 0.0, "mm2/s", "cSt");

  /** The kind of quantity: its name, its units and its text. */
  public static final QuantityKind<KinematicViscosity> KIND =
      new QuantityKind<>(
          "kinematic viscosity",
          new Dimension(0, 2, -1, 0, 0),
          KinematicViscosity::new,
          List.of(SQUARE_METRE_PER_SECOND, SQUARE_MILLIMETRE_PER_SECOND),
          List.of(SQUARE_MILLIMETRE_PER_SECOND, SQUARE_METRE_PER_SECOND));

  private KinematicViscosity(double si) {
    super(si);
  }

  /**
   * A kinematic viscosity in square metres per second.
   *
   * @param value the number of square metres per second [m²/s], finite
   * @return the kinematic viscosity
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static KinematicViscosity squareMetresPerSecond(double value) {
    return new KinematicViscosity(Check.finite(value, value, KIND, SQUARE_METRE_PER_SECOND));
  }

  /**
   * A kinematic viscosity in square millimetres per second.
   *
   * @param value the number of square millimetres per second [mm²/s], finite
   * @return the kinematic viscosity
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static KinematicViscosity squareMillimetresPerSecond(double value) {
    return new KinematicViscosity(Check.finite(value / 1_000_000.0, value, KIND, SQUARE_MILLIMETRE_PER_SECOND));
  }

  /**
   * Reads a kinematic viscosity from text such as {@code "1.2 m²/s"}.
   *
   * @param text a number and a unit; locale-free
   * @return the kinematic viscosity
   * @throws IllegalArgumentException if the text is not a kinematic viscosity; the message lists what is accepted
   */
  public static KinematicViscosity parse(String text) {
    Objects.requireNonNull(text, "text");
    return KIND.parse(text);
  }

  /**
   * Takes a kinematic viscosity over from JSR-385.
   *
   * @param quantity a quantity of any implementation in any unit of a kinematic viscosity
   * @return the kinematic viscosity
   * @throws IllegalArgumentException if its unit is not of a kinematic viscosity, or its value is not finite
   */
  public static KinematicViscosity from(Quantity<?> quantity) {
    Objects.requireNonNull(quantity, "quantity");
    return Jsr385.from(quantity, KIND);
  }

  /**
   * Hands this kinematic viscosity to JSR-385, in m²/s.
   *
   * @return a quantity of the reference implementation
   */
  public Quantity<?> toQuantity() {
    return Jsr385.quantity(this);
  }

  /**
   * The value in any JSR-385 unit.
   *
   * @param unit a unit of a kinematic viscosity
   * @return the number of that unit
   * @throws IllegalArgumentException if the unit is not of a kinematic viscosity
   */
  public double in(Unit<?> unit) {
    return Jsr385.value(this, unit);
  }

  /**
   * This kinematic viscosity in square metres per second.
   *
   * @return the number of square metres per second [m²/s]
   */
  public double squareMetresPerSecond() {
    return si;
  }

  /**
   * This kinematic viscosity in square millimetres per second.
   *
   * @return the number of square millimetres per second [mm²/s]
   */
  public double squareMillimetresPerSecond() {
    return si * 1_000_000.0;
  }

  /**
   * This kinematic viscosity times a density.
   *
   * @param density the factor
   * @return the product, a dynamic viscosity
   */
  public DynamicViscosity times(Density density) {
    Objects.requireNonNull(density, "density");
    return DynamicViscosity.trusted(si * density.si);
  }

  /** Makes a kinematic viscosity of an SI value that comes from arithmetic and is trusted. */
  static KinematicViscosity trusted(double si) {
    return new KinematicViscosity(si);
  }

  @Override
  KinematicViscosity same(double si) {
    return new KinematicViscosity(si);
  }

  @Override
  public QuantityKind<KinematicViscosity> kind() {
    return KIND;
  }
}
