// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.quantity;

import java.util.ArrayList;
import java.util.List;
import javax.measure.IncommensurableException;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import javax.measure.quantity.Dimensionless;
import javax.measure.spi.ServiceProvider;
import javax.measure.spi.SystemOfUnits;

/**
 * The bridge to JSR-385. It speaks to the standard's interfaces only; which implementation answers is decided by the
 * service providers that the program carries (the reference implementation comes with this library). A program that
 * never bridges never loads one.
 */
final class Jsr385 {
  private Jsr385() {}

  static <Q extends ScalarQuantity<Q>> Q from(Quantity<?> quantity, QuantityKind<Q> kind) {
    double value = finite(quantity, kind);
    UnitConverter converter = converter(quantity.getUnit(), coherentUnit(kind), kind, quantity.getUnit());
    return kind.ofSi(converter.convert(value));
  }

  /** A temperature is a point on a scale: a quantity that the standard marks as a difference is not one. */
  static Temperature temperature(Quantity<javax.measure.quantity.Temperature> quantity) {
    if (quantity.getScale() == Quantity.Scale.RELATIVE) {
      throw new IllegalArgumentException(
          "temperature must be on the absolute scale, was the difference " + quantity);
    }
    return from(quantity, Temperature.KIND);
  }

  /**
   * A difference has no zero point: only the size of the unit's step counts. A value of a unit whose zero is elsewhere
   * is taken for a difference only if it says so, because 20 °C may as well be a temperature.
   */
  static TemperatureDifference temperatureDifference(Quantity<javax.measure.quantity.Temperature> quantity) {
    QuantityKind<TemperatureDifference> kind = TemperatureDifference.KIND;
    double value = finite(quantity, kind);
    UnitConverter converter = converter(quantity.getUnit(), coherentUnit(kind), kind, quantity.getUnit());
    double zero = converter.convert(0.0);
    if (zero != 0.0 && quantity.getScale() != Quantity.Scale.RELATIVE) {
      throw new IllegalArgumentException(
          "temperature difference must be in kelvins or on the relative scale, was the temperature " + quantity);
    }
    return kind.ofSi(zero == 0.0 ? converter.convert(value) : value * (converter.convert(1.0) - zero));
  }

  static <Q extends ScalarQuantity<Q>> double value(ScalarQuantity<Q> quantity, Unit<?> unit) {
    return converter(coherentUnit(quantity.kind()), unit, quantity.kind(), unit).convert(quantity.si);
  }

  /** The number of steps of a unit in a difference: the unit's zero takes no part. */
  static double steps(TemperatureDifference difference, Unit<?> unit) {
    UnitConverter toSi = converter(unit, coherentUnit(difference.kind()), difference.kind(), unit);
    return difference.si / (toSi.convert(1.0) - toSi.convert(0.0));
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
    return quantity(quantity, type, Quantity.Scale.ABSOLUTE);
  }

  static <J extends Quantity<J>> Quantity<J> quantity(
      ScalarQuantity<?> quantity, Class<J> type, Quantity.Scale scale) {
    return Si.PROVIDER.getQuantityFactory(type).create(quantity.si + 0.0, Si.unit(type), scale);
  }

  private static <Q extends ScalarQuantity<Q>> double finite(Quantity<?> quantity, QuantityKind<Q> kind) {
    double value = quantity.getValue().doubleValue();
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(kind.name() + " must be finite, was " + value + " " + quantity.getUnit());
    }
    return value;
  }

  private static <J extends Quantity<J>> Quantity<J> one(Class<J> type, double value) {
    return Si.PROVIDER.getQuantityFactory(type).create(value, Si.unit(type));
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
          "unit must be one of " + kind.name() + ", which is measured in " + kind.siUnit().symbol() + ", was " + given,
          e);
    }
  }

  /** The coherent SI unit of a kind, built from its dimension. */
  private static Unit<?> coherentUnit(QuantityKind<?> kind) {
    Dimension d = kind.dimension();
    Unit<?> product = Si.unit(Dimensionless.class);
    product = times(product, Si.unit(javax.measure.quantity.Mass.class), d.kilogram());
    product = times(product, Si.unit(javax.measure.quantity.Length.class), d.metre());
    product = times(product, Si.unit(javax.measure.quantity.Time.class), d.second());
    product = times(product, Si.unit(javax.measure.quantity.Temperature.class), d.kelvin());
    return times(product, Si.unit(javax.measure.quantity.Angle.class), d.radian());
  }

  private static Unit<?> times(Unit<?> product, Unit<?> base, int exponent) {
    return exponent == 0 ? product : product.multiply(exponent == 1 ? base : base.pow(exponent));
  }

  /**
   * The provider and the system of units whose base units are those of SI. The provider that the standard calls current
   * may be one of customary units that knows neither metre nor second, so it is asked first and not alone.
   */
  private static final class Si {
    static final ServiceProvider PROVIDER;
    static final SystemOfUnits SYSTEM;

    static {
      List<ServiceProvider> providers = new ArrayList<>();
      providers.add(ServiceProvider.current());
      providers.addAll(ServiceProvider.available());
      ServiceProvider provider = null;
      SystemOfUnits system = null;
      for (ServiceProvider candidate : providers) {
        for (SystemOfUnits units : candidate.getSystemOfUnitsService().getAvailableSystemsOfUnits()) {
          if (system == null && isSi(units)) {
            provider = candidate;
            system = units;
          }
        }
      }
      if (provider == null || system == null) {
        throw new IllegalStateException("JSR-385 needs a provider with metre, kilogram, second and kelvin, has " + providers);
      }
      PROVIDER = provider;
      SYSTEM = system;
    }

    private static boolean isSi(SystemOfUnits units) {
      return has(units, javax.measure.quantity.Length.class, "m")
          && has(units, javax.measure.quantity.Mass.class, "kg")
          && has(units, javax.measure.quantity.Time.class, "s")
          && has(units, javax.measure.quantity.Temperature.class, "K")
          && has(units, javax.measure.quantity.Angle.class, "rad");
    }

    private static <J extends Quantity<J>> boolean has(SystemOfUnits units, Class<J> type, String text) {
      return text.equals(String.valueOf((Object) units.getUnit(type)));
    }

    static <J extends Quantity<J>> Unit<J> unit(Class<J> type) {
      return SYSTEM.getUnit(type);
    }
  }
}
