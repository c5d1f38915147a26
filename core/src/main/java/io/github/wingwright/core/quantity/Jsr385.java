// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.quantity;

import javax.measure.IncommensurableException;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import javax.measure.quantity.Dimensionless;
import javax.measure.spi.ServiceProvider;
import javax.measure.spi.SystemOfUnits;

/**
 * The bridge to JSR-385. It speaks to the standard's interfaces only; which implementation answers is decided by the
 * service provider that the program carries (the reference implementation comes with this library). A program that never
 * bridges never loads one.
 */
final class Jsr385 {
  private Jsr385() {}

  static <Q extends ScalarQuantity<Q>> Q from(Quantity<?> quantity, QuantityKind<Q> kind) {
    double value = quantity.getValue().doubleValue();
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(kind.name() + " must be finite, was " + value + " " + quantity.getUnit());
    }
    return kind.ofSi(converter(quantity.getUnit(), coherentUnit(kind), kind, quantity.getUnit()).convert(value));
  }

  static <Q extends ScalarQuantity<Q>> double value(ScalarQuantity<Q> quantity, Unit<?> unit) {
    return converter(coherentUnit(quantity.kind()), unit, quantity.kind(), unit).convert(quantity.si);
  }

  /** A kind for which the standard has no interface: a product of base quantities. */
  static Quantity<?> quantity(ScalarQuantity<?> quantity) {
    Dimension d = quantity.kind().dimension();
    Quantity<?> product = one(Dimensionless.class, quantity.si + 0.0);
    product = times(product, javax.measure.quantity.Mass.class, d.kilogram());
    product = times(product, javax.measure.quantity.Length.class, d.metre());
    product = times(product, javax.measure.quantity.Time.class, d.second());
    product = times(product, javax.measure.quantity.Temperature.class, d.kelvin());
    return times(product, javax.measure.quantity.Angle.class, d.radian());
  }

  static <J extends Quantity<J>> Quantity<J> quantity(ScalarQuantity<?> quantity, Class<J> type) {
    return ServiceProvider.current()
        .getQuantityFactory(type)
        .create(quantity.si + 0.0, coherentUnit(quantity.kind()).asType(type));
  }

  private static <J extends Quantity<J>> Quantity<J> one(Class<J> type, double value) {
    return ServiceProvider.current().getQuantityFactory(type).create(value, unit(type));
  }

  private static <J extends Quantity<J>> Quantity<?> times(Quantity<?> product, Class<J> base, int exponent) {
    Quantity<?> result = product;
    for (int i = 0; i < Math.abs(exponent); i++) {
      result = exponent > 0 ? result.multiply(one(base, 1.0)) : result.divide(one(base, 1.0));
    }
    return result;
  }

  private static UnitConverter converter(Unit<?> from, Unit<?> to, QuantityKind<?> kind, Unit<?> given) {
    try {
      return from.getConverterToAny(to);
    } catch (IncommensurableException e) {
      throw new IllegalArgumentException(
          "unit must be one of " + kind.name() + ", which is measured in " + kind.siUnit().symbol() + ", was " + given, e);
    }
  }

  /** The coherent SI unit of a kind, built from its dimension. */
  private static Unit<?> coherentUnit(QuantityKind<?> kind) {
    Dimension d = kind.dimension();
    Unit<?> product = unit(Dimensionless.class);
    product = times(product, unit(javax.measure.quantity.Mass.class), d.kilogram());
    product = times(product, unit(javax.measure.quantity.Length.class), d.metre());
    product = times(product, unit(javax.measure.quantity.Time.class), d.second());
    product = times(product, unit(javax.measure.quantity.Temperature.class), d.kelvin());
    return times(product, unit(javax.measure.quantity.Angle.class), d.radian());
  }

  private static Unit<?> times(Unit<?> product, Unit<?> base, int exponent) {
    return exponent == 0 ? product : product.multiply(exponent == 1 ? base : base.pow(exponent));
  }

  private static <J extends Quantity<J>> Unit<J> unit(Class<J> type) {
    SystemOfUnits system = ServiceProvider.current().getSystemOfUnitsService().getSystemOfUnits();
    return system.getUnit(type);
  }
}
