// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.quantity;

import static javax.measure.MetricPrefix.CENTI;
import static javax.measure.MetricPrefix.DECI;
import static javax.measure.MetricPrefix.GIGA;
import static javax.measure.MetricPrefix.HECTO;
import static javax.measure.MetricPrefix.KILO;
import static javax.measure.MetricPrefix.MEGA;
import static javax.measure.MetricPrefix.MICRO;
import static javax.measure.MetricPrefix.MILLI;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tech.units.indriya.unit.Units.CELSIUS;
import static tech.units.indriya.unit.Units.CUBIC_METRE;
import static tech.units.indriya.unit.Units.GRAM;
import static tech.units.indriya.unit.Units.HERTZ;
import static tech.units.indriya.unit.Units.HOUR;
import static tech.units.indriya.unit.Units.JOULE;
import static tech.units.indriya.unit.Units.KELVIN;
import static tech.units.indriya.unit.Units.KILOGRAM;
import static tech.units.indriya.unit.Units.KILOMETRE_PER_HOUR;
import static tech.units.indriya.unit.Units.LITRE;
import static tech.units.indriya.unit.Units.METRE;
import static tech.units.indriya.unit.Units.METRE_PER_SECOND;
import static tech.units.indriya.unit.Units.METRE_PER_SQUARE_SECOND;
import static tech.units.indriya.unit.Units.MINUTE;
import static tech.units.indriya.unit.Units.NEWTON;
import static tech.units.indriya.unit.Units.PASCAL;
import static tech.units.indriya.unit.Units.RADIAN;
import static tech.units.indriya.unit.Units.SECOND;
import static tech.units.indriya.unit.Units.SQUARE_METRE;
import static tech.units.indriya.unit.Units.WATT;

import io.github.wingwright.testing.PublishedValues;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.Stream;
import javax.measure.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import si.uom.NonSI;
import systems.uom.common.USCustomary;

/** Every unit factor against two outside witnesses: the converters of the reference implementation, and NIST SP 811. */
class UnitFactorTest {
  /** Two roundings of a product and a quotient each, here and there. */
  private static final double ROUNDING = 1e-15;

  private static final Unit<?> POUND_FORCE =
      USCustomary.POUND.multiply(METRE_PER_SQUARE_SECOND).multiply(980_665).divide(100_000);
  private static final Unit<?> SLUG = POUND_FORCE.divide(USCustomary.FOOT).multiply(SECOND.pow(2));
  private static final Unit<?> KILOGRAM_FORCE = NEWTON.multiply(980_665).divide(100_000);

  /** The same unit in the reference implementation, by kind and symbol; customary ones from systems-common. */
  private static final Map<String, Unit<?>> WITNESS = new HashMap<>();

  private static void unit(QuantityKind<?> kind, String symbol, Unit<?> unit) {
    WITNESS.put(kind.name() + " " + symbol, unit);
  }

  static {
    unit(Length.KIND, "m", METRE);
    unit(Length.KIND, "mm", MILLI(METRE));
    unit(Length.KIND, "cm", CENTI(METRE));
    unit(Length.KIND, "µm", MICRO(METRE));
    unit(Length.KIND, "km", KILO(METRE));
    unit(Length.KIND, "in", USCustomary.INCH);
    unit(Length.KIND, "ft", USCustomary.FOOT);
    unit(Length.KIND, "yd", USCustomary.YARD);
    unit(Length.KIND, "mi", USCustomary.MILE);
    unit(Length.KIND, "NM", USCustomary.NAUTICAL_MILE);
    unit(Area.KIND, "m²", SQUARE_METRE);
    unit(Area.KIND, "mm²", MILLI(METRE).pow(2));
    unit(Area.KIND, "cm²", CENTI(METRE).pow(2));
    unit(Area.KIND, "dm²", DECI(METRE).pow(2));
    unit(Area.KIND, "in²", USCustomary.INCH.pow(2));
    unit(Area.KIND, "ft²", USCustomary.SQUARE_FOOT);
    unit(Volume.KIND, "m³", CUBIC_METRE);
    unit(Volume.KIND, "mm³", MILLI(METRE).pow(3));
    unit(Volume.KIND, "cm³", CENTI(METRE).pow(3));
    unit(Volume.KIND, "L", LITRE);
    unit(Volume.KIND, "in³", USCustomary.CUBIC_INCH);
    unit(Volume.KIND, "ft³", USCustomary.CUBIC_FOOT);
    unit(Mass.KIND, "kg", KILOGRAM);
    unit(Mass.KIND, "g", GRAM);
    unit(Mass.KIND, "mg", MILLI(GRAM));
    unit(Mass.KIND, "t", NonSI.TONNE);
    unit(Mass.KIND, "lb", USCustomary.POUND);
    unit(Mass.KIND, "oz", USCustomary.OUNCE);
    unit(Mass.KIND, "slug", SLUG);
    unit(Time.KIND, "s", SECOND);
    unit(Time.KIND, "ms", MILLI(SECOND));
    unit(Time.KIND, "min", MINUTE);
    unit(Time.KIND, "h", HOUR);
    unit(Speed.KIND, "m/s", METRE_PER_SECOND);
    unit(Speed.KIND, "km/h", KILOMETRE_PER_HOUR);
    unit(Speed.KIND, "kt", USCustomary.KNOT);
    unit(Speed.KIND, "ft/s", USCustomary.FOOT_PER_SECOND);
    unit(Speed.KIND, "mi/h", USCustomary.MILE_PER_HOUR);
    unit(Speed.KIND, "ft/min", USCustomary.FOOT.divide(MINUTE));
    unit(Speed.KIND, "cm/s", CENTI(METRE).divide(SECOND));
    unit(Acceleration.KIND, "m/s²", METRE_PER_SQUARE_SECOND);
    unit(Acceleration.KIND, "ft/s²", USCustomary.FOOT.divide(SECOND.pow(2)));
    unit(Acceleration.KIND, "g₀", METRE_PER_SQUARE_SECOND.multiply(980_665).divide(100_000));
    unit(Angle.KIND, "rad", RADIAN);
    unit(Angle.KIND, "°", USCustomary.DEGREE_ANGLE);
    unit(Angle.KIND, "arcmin", USCustomary.MINUTE_ANGLE);
    unit(Angle.KIND, "rev", USCustomary.REVOLUTION);
    unit(AngularRate.KIND, "rad/s", RADIAN.divide(SECOND));
    unit(AngularRate.KIND, "°/s", USCustomary.DEGREE_ANGLE.divide(SECOND));
    unit(AngularRate.KIND, "rpm", USCustomary.REVOLUTION.divide(MINUTE));
    unit(Frequency.KIND, "Hz", HERTZ);
    unit(Frequency.KIND, "kHz", KILO(HERTZ));
    unit(Force.KIND, "N", NEWTON);
    unit(Force.KIND, "mN", MILLI(NEWTON));
    unit(Force.KIND, "kN", KILO(NEWTON));
    unit(Force.KIND, "lbf", POUND_FORCE);
    unit(Force.KIND, "kgf", KILOGRAM_FORCE);
    unit(Force.KIND, "gf", KILOGRAM_FORCE.divide(1000));
    unit(Pressure.KIND, "Pa", PASCAL);
    unit(Pressure.KIND, "hPa", HECTO(PASCAL));
    unit(Pressure.KIND, "kPa", KILO(PASCAL));
    unit(Pressure.KIND, "MPa", MEGA(PASCAL));
    unit(Pressure.KIND, "GPa", GIGA(PASCAL));
    unit(Pressure.KIND, "bar", PASCAL.multiply(100_000));
    unit(Pressure.KIND, "atm", PASCAL.multiply(101_325));
    unit(Pressure.KIND, "psi", POUND_FORCE.divide(USCustomary.INCH.pow(2)));
    unit(Pressure.KIND, "psf", POUND_FORCE.divide(USCustomary.SQUARE_FOOT));
    unit(WingLoading.KIND, "kg/m²", KILOGRAM.divide(SQUARE_METRE));
    unit(WingLoading.KIND, "g/dm²", GRAM.divide(DECI(METRE).pow(2)));
    unit(WingLoading.KIND, "lb/ft²", USCustomary.POUND.divide(USCustomary.SQUARE_FOOT));
    unit(WingLoading.KIND, "oz/ft²", USCustomary.OUNCE.divide(USCustomary.SQUARE_FOOT));
    unit(ArealDensity.KIND, "kg/m²", KILOGRAM.divide(SQUARE_METRE));
    unit(ArealDensity.KIND, "g/m²", GRAM.divide(SQUARE_METRE));
    unit(ArealDensity.KIND, "oz/yd²", USCustomary.OUNCE.divide(USCustomary.YARD.pow(2)));
    unit(LinearDensity.KIND, "kg/m", KILOGRAM.divide(METRE));
    unit(LinearDensity.KIND, "g/m", GRAM.divide(METRE));
    unit(LinearDensity.KIND, "g/cm", GRAM.divide(CENTI(METRE)));
    unit(Density.KIND, "kg/m³", KILOGRAM.divide(CUBIC_METRE));
    unit(Density.KIND, "g/cm³", GRAM.divide(CENTI(METRE).pow(3)));
    unit(Density.KIND, "lb/ft³", USCustomary.POUND.divide(USCustomary.FOOT.pow(3)));
    unit(Density.KIND, "slug/ft³", SLUG.divide(USCustomary.FOOT.pow(3)));
    unit(DynamicViscosity.KIND, "Pa·s", PASCAL.multiply(SECOND));
    unit(DynamicViscosity.KIND, "mPa·s", MILLI(PASCAL).multiply(SECOND));
    unit(DynamicViscosity.KIND, "µPa·s", MICRO(PASCAL).multiply(SECOND));
    unit(KinematicViscosity.KIND, "m²/s", SQUARE_METRE.divide(SECOND));
    unit(KinematicViscosity.KIND, "mm²/s", MILLI(METRE).pow(2).divide(SECOND));
    unit(Temperature.KIND, "K", KELVIN);
    unit(Temperature.KIND, "°C", CELSIUS);
    unit(Temperature.KIND, "°F", USCustomary.FAHRENHEIT);
    unit(TemperatureDifference.KIND, "K", KELVIN);
    unit(TemperatureDifference.KIND, "Δ°F", USCustomary.RANKINE);
    unit(Moment.KIND, "N·m", NEWTON.multiply(METRE));
    unit(Moment.KIND, "N·mm", NEWTON.multiply(MILLI(METRE)));
    unit(Moment.KIND, "kgf·cm", KILOGRAM_FORCE.multiply(CENTI(METRE)));
    unit(Moment.KIND, "lbf·ft", POUND_FORCE.multiply(USCustomary.FOOT));
    unit(Energy.KIND, "J", JOULE);
    unit(Energy.KIND, "mJ", MILLI(JOULE));
    unit(Energy.KIND, "kJ", KILO(JOULE));
    unit(Energy.KIND, "W·h", WATT.multiply(HOUR));
    unit(Energy.KIND, "ft·lbf", POUND_FORCE.multiply(USCustomary.FOOT));
    unit(Power.KIND, "W", WATT);
    unit(Power.KIND, "mW", MILLI(WATT));
    unit(Power.KIND, "kW", KILO(WATT));
    unit(Power.KIND, "hp", POUND_FORCE.multiply(USCustomary.FOOT).multiply(550).divide(SECOND));
    unit(Power.KIND, "PS", KILOGRAM_FORCE.multiply(METRE).multiply(75).divide(SECOND));
    unit(MomentOfInertia.KIND, "kg·m²", KILOGRAM.multiply(SQUARE_METRE));
    unit(MomentOfInertia.KIND, "g·cm²", GRAM.multiply(CENTI(METRE).pow(2)));
    unit(MomentOfInertia.KIND, "slug·ft²", SLUG.multiply(USCustomary.FOOT.pow(2)));
    unit(SecondMomentOfArea.KIND, "m⁴", METRE.pow(4));
    unit(SecondMomentOfArea.KIND, "mm⁴", MILLI(METRE).pow(4));
    unit(SecondMomentOfArea.KIND, "cm⁴", CENTI(METRE).pow(4));
    unit(FlexuralRigidity.KIND, "N·m²", NEWTON.multiply(SQUARE_METRE));
    unit(FlexuralRigidity.KIND, "N·mm²", NEWTON.multiply(MILLI(METRE).pow(2)));
    unit(FlexuralRigidity.KIND, "kN·m²", NEWTON.multiply(1000).multiply(SQUARE_METRE));
    unit(FlexuralRigidity.KIND, "lbf·in²", POUND_FORCE.multiply(USCustomary.INCH.pow(2)));
    unit(FlexuralRigidity.KIND, "lbf·ft²", POUND_FORCE.multiply(USCustomary.FOOT.pow(2)));
  }

  static Stream<QuantityKind<?>> kinds() {
    return Kinds.all();
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void every_factor_is_that_of_the_reference_implementation(QuantityKind<?> kind) throws Exception {
    for (NamedUnit<?> unit : kind.units()) {
      Unit<?> witness = WITNESS.get(kind.name() + " " + unit.symbol());
      assertThat(witness).as("no unit to compare %s of %s with", unit, kind).isNotNull();
      Unit<?> coherent = WITNESS.get(kind.name() + " " + kind.siUnit().symbol());
      for (double value : new double[] {1.0, 0.0, 37.5, 1234.5678}) {
        double expected = witness.getConverterToAny(coherent).convert(value);
        assertThat(unit.toSi(value))
            .as("%s %s to SI", value, unit)
            .isCloseTo(expected, within(ROUNDING * Math.max(Math.abs(expected), unit.toSi(0.0))));
        assertThat(unit.fromSi(unit.toSi(value)))
            .as("%s %s and back", value, unit)
            .isCloseTo(value, within(ROUNDING * Math.max(Math.abs(value), 500.0 * unit.toSi(0.0))));
      }
    }
  }

  static Stream<PublishedValues.Row> published() {
    return PublishedValues.beside(UnitFactorTest.class, "nist-sp-811-factors.csv").rows();
  }

  @ParameterizedTest
  @MethodSource("published")
  void a_factor_is_that_of_the_published_table(PublishedValues.Row row) {
    NamedUnit<?> unit =
        Kinds.all()
            .filter(kind -> kind.name().equals(row.text("kind")))
            .flatMap(kind -> kind.units().stream())
            .filter(candidate -> candidate.symbol().equals(row.text("unit")))
            .findFirst()
            .orElseThrow(() -> new AssertionError("no such unit: " + row));
    double expected = row.number("si");
    assertThat(unit.toSi(row.number("value")))
        .as(row.toString())
        .isCloseTo(expected, within(row.number("relative_tolerance") * Math.abs(expected)));
  }

  @Test
  void twelve_inches_are_one_foot_to_the_last_bit() {
    assertThat(Length.inches(12)).isEqualTo(Length.feet(1));
    assertThat(Length.inches(36)).isEqualTo(Length.yards(1));
    assertThat(Length.feet(5280)).isEqualTo(Length.statuteMiles(1));
    assertThat(Length.feet(1).metres()).isEqualTo(0.3048);
    assertThat(Length.millimetres(25.4)).isEqualTo(Length.inches(1));
    assertThat(Mass.ounces(16)).isEqualTo(Mass.pounds(1));
    assertThat(Length.nauticalMiles(1).dividedBy(Time.hours(1))).isEqualTo(Speed.knots(1));
    assertThat(Mass.pounds(1).weight(Acceleration.STANDARD_GRAVITY)).isEqualTo(Force.poundsForce(1));
  }

  @Test
  void the_scales_of_temperature_meet_where_they_must() {
    assertThat(Temperature.degreesFahrenheit(-40).degreesCelsius()).isCloseTo(-40, within(1e-12));
    assertThat(Temperature.degreesFahrenheit(32).degreesCelsius()).isCloseTo(0, within(1e-12));
    assertThat(Temperature.degreesFahrenheit(212).degreesCelsius()).isCloseTo(100, within(1e-12));
    assertThat(Temperature.degreesCelsius(-273.15)).isEqualTo(Temperature.ZERO);
    assertThat(Temperature.degreesFahrenheit(-459.67)).isEqualTo(Temperature.ZERO);
  }
}
