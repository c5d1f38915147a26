// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.Quantity.Scale;
import javax.measure.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import systems.uom.common.USCustomary;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/**
 * The bridge to JSR-385, both ways. On the test class path the provider that the standard calls current is one of
 * customary units, which knows no metre; the bridge must find SI all the same.
 */
class Jsr385Test {
  private static final double ROUNDING = 2e-15;

  static Stream<Class<? extends ScalarQuantity<?>>> types() {
    return Kinds.types().stream();
  }

  @ParameterizedTest
  @MethodSource("types")
  void there_and_back_is_the_same_value(Class<?> type) throws ReflectiveOperationException {
    for (double si : Kinds.values(Kinds.of(type), 31, 100)) {
      ScalarQuantity<?> quantity = Kinds.of(type).ofSi(si);
      Object bridged = type.getMethod("toQuantity").invoke(quantity);
      ScalarQuantity<?> back = (ScalarQuantity<?>) type.getMethod("from", Quantity.class).invoke(null, bridged);
      assertThat(back.si()).isCloseTo(si, within(ROUNDING * Math.abs(si)));
      double number = (Double) type.getMethod("in", Unit.class).invoke(quantity, ((Quantity<?>) bridged).getUnit());
      assertThat(number).isCloseTo(si, within(ROUNDING * Math.abs(si)));
    }
  }

  @ParameterizedTest
  @MethodSource("types")
  void another_dimension_is_refused_by_name(Class<?> type) throws ReflectiveOperationException {
    Quantity<?> ampere = Quantities.getQuantity(1, Units.AMPERE);
    String message = "unit must be one of " + Kinds.of(type).name() + ", which is measured in "
        + Kinds.of(type).siUnit() + ", was A";
    assertThatThrownBy(() -> type.getMethod("from", Quantity.class).invoke(null, ampere))
        .isInstanceOf(InvocationTargetException.class)
        .cause()
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(message);
    assertThatThrownBy(() -> type.getMethod("in", Unit.class).invoke(Kinds.of(type).ofSi(1), Units.AMPERE))
        .cause()
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(message);
  }

  @ParameterizedTest
  @MethodSource("types")
  void a_value_that_is_not_finite_is_refused_whoever_made_it(Class<?> type) throws ReflectiveOperationException {
    Object bridged = type.getMethod("toQuantity").invoke(Kinds.of(type).ofSi(1));
    for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY}) {
      Quantity<?> quantity = ofAnotherImplementation(bad, ((Quantity<?>) bridged).getUnit());
      assertThatThrownBy(() -> type.getMethod("from", Quantity.class).invoke(null, quantity))
          .cause()
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageStartingWith(Kinds.of(type).name() + " must be finite, was " + bad);
    }
  }

  private static Quantity<?> ofAnotherImplementation(double value, Unit<?> unit) {
    return (Quantity<?>) Proxy.newProxyInstance(
        Jsr385Test.class.getClassLoader(),
        new Class<?>[] {Quantity.class},
        (proxy, method, arguments) -> switch (method.getName()) {
          case "getValue" -> value;
          case "getUnit" -> unit;
          case "getScale" -> Scale.ABSOLUTE;
          default -> throw new UnsupportedOperationException(method.getName());
        });
  }

  @Test
  void customary_units_come_over() {
    assertThat(Length.from(Quantities.getQuantity(12, USCustomary.INCH)).metres()).isCloseTo(0.3048, within(1e-16));
    assertThat(Length.feet(3).in(USCustomary.YARD)).isCloseTo(1.0, within(1e-15));
    assertThat(Mass.from(Quantities.getQuantity(16, USCustomary.OUNCE)).pounds()).isCloseTo(1.0, within(1e-15));
    assertThat(Speed.from(Quantities.getQuantity(36, Units.KILOMETRE_PER_HOUR))).isEqualTo(Speed.metresPerSecond(10));
    assertThat(Angle.from(Quantities.getQuantity(180, USCustomary.DEGREE_ANGLE)).radians())
        .isCloseTo(Math.PI, within(1e-15));
    assertThat(WingLoading.from(Quantities.getQuantity(1, USCustomary.OUNCE.divide(USCustomary.SQUARE_FOOT)))
            .ouncesPerSquareFoot())
        .isCloseTo(1.0, within(1e-15));
  }

  @Test
  void a_quantity_goes_over_in_si() {
    assertThat(Length.millimetres(300).toQuantity().getUnit()).isEqualTo(Units.METRE);
    assertThat(Force.newtons(2).toQuantity().getUnit()).isEqualTo(Units.NEWTON);
    assertThat(Force.newtons(2).toQuantity().getValue().doubleValue()).isEqualTo(2.0);
    assertThat(Mass.grams(30).toQuantity()).isEqualTo(Quantities.getQuantity(0.03, Units.KILOGRAM));
    assertThat(Length.metres(-0.0).toQuantity().getValue().doubleValue()).isEqualTo(0.0);
  }

  @Test
  void temperatures_keep_their_zero() {
    assertThat(Temperature.from(Quantities.getQuantity(20, Units.CELSIUS))).isEqualTo(Temperature.degreesCelsius(20));
    assertThat(Temperature.from(Quantities.getQuantity(68, USCustomary.FAHRENHEIT)).kelvins())
        .isCloseTo(293.15, within(1e-12));
    assertThat(Temperature.degreesCelsius(20).in(Units.CELSIUS)).isCloseTo(20, within(1e-12));
    assertThat(Temperature.degreesCelsius(20).in(USCustomary.FAHRENHEIT)).isCloseTo(68, within(1e-12));
    assertThat(Temperature.degreesCelsius(20).toQuantity().getScale()).isEqualTo(Scale.ABSOLUTE);
    assertThatThrownBy(() -> Temperature.from(Quantities.getQuantity(20, Units.CELSIUS, Scale.RELATIVE)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageStartingWith("temperature must be on the absolute scale, was the difference 20");
    assertThatThrownBy(() -> Temperature.from(Quantities.getQuantity(-300, Units.CELSIUS)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("at least 0 K");
  }

  @Test
  void differences_of_temperature_have_none() {
    assertThat(TemperatureDifference.from(Quantities.getQuantity(10, Units.CELSIUS, Scale.RELATIVE)).kelvins())
        .isCloseTo(10, within(1e-12));
    assertThat(TemperatureDifference.from(Quantities.getQuantity(9, USCustomary.FAHRENHEIT, Scale.RELATIVE)).kelvins())
        .isCloseTo(5, within(1e-12));
    assertThat(TemperatureDifference.from(Quantities.getQuantity(10, Units.KELVIN)).kelvins()).isEqualTo(10);
    assertThat(TemperatureDifference.kelvins(5).in(Units.CELSIUS)).isCloseTo(5, within(1e-12));
    assertThat(TemperatureDifference.kelvins(5).in(USCustomary.FAHRENHEIT)).isCloseTo(9, within(1e-12));
    assertThat(TemperatureDifference.kelvins(5).toQuantity().getScale()).isEqualTo(Scale.RELATIVE);
    assertThatThrownBy(() -> TemperatureDifference.from(Quantities.getQuantity(10, Units.CELSIUS)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageStartingWith("temperature difference must be in kelvins or on the relative scale, was the temperature");
  }
}
