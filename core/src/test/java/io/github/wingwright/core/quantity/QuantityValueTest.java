// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for a quantity as a value: its factories and accessors, equality, order and serialization. */
class QuantityValueTest {
  static Stream<Class<? extends ScalarQuantity<?>>> types() {
    return Kinds.types().stream();
  }

  static Stream<QuantityKind<?>> kinds() {
    return Kinds.all();
  }

  private static List<Method> factories(Class<?> type) {
    return Arrays.stream(type.getMethods())
        .filter(m -> Modifier.isStatic(m.getModifiers()) && m.getReturnType() == type)
        .filter(m -> Arrays.equals(m.getParameterTypes(), new Class<?>[] {double.class}))
        .toList();
  }

  @ParameterizedTest
  @MethodSource("types")
  void each_unit_has_a_factory_and_an_accessor_of_one_name(Class<?> type) throws ReflectiveOperationException {
    QuantityKind<?> kind = Kinds.of(type);
    List<Method> factories = factories(type);
    assertThat(factories).hasSameSizeAs(kind.units());
    for (Method factory : factories) {
      NamedUnit<?> unit = unitOf(factory, kind);
      Method accessor = type.getMethod(factory.getName());
      for (double value : Kinds.values(kind, 21, 200)) {
        ScalarQuantity<?> quantity = (ScalarQuantity<?>) factory.invoke(null, value);
        assertThat(quantity.si()).as("%s(%s)", factory.getName(), value).isEqualTo(unit.toSi(value));
        assertThat((Double) accessor.invoke(quantity)).as(accessor.getName()).isEqualTo(unit.fromSi(quantity.si()));
      }
    }
  }

  private static NamedUnit<?> unitOf(Method factory, QuantityKind<?> kind) throws ReflectiveOperationException {
    double si = ((ScalarQuantity<?>) factory.invoke(null, 7.25)).si();
    List<? extends NamedUnit<?>> units = kind.units().stream().filter(u -> u.toSi(7.25) == si).toList();
    assertThat(units).as("units that convert as %s does", factory.getName()).hasSize(1);
    return units.get(0);
  }

  @ParameterizedTest
  @MethodSource("types")
  void no_factory_takes_what_is_not_a_finite_number(Class<?> type) {
    for (Method factory : factories(type)) {
      for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
        assertThatThrownBy(() -> factory.invoke(null, bad))
            .rootCause()
            .isInstanceOf(IllegalArgumentException.class)
            .hasMessageMatching(Kinds.of(type).name() + " must be a finite number of .+, was " + bad);
      }
    }
    assertThatThrownBy(() -> Kinds.of(type).ofSi(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void a_number_that_overflows_in_conversion_is_refused_as_it_was_given() {
    assertThatThrownBy(() -> Length.kilometres(1e306))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("length must be a finite number of km, was 1.0E306");
  }

  @ParameterizedTest
  @MethodSource("types")
  void nobody_outside_makes_a_quantity_of_a_bare_number(Class<?> type) {
    assertThat(type.getConstructors()).isEmpty();
    assertThat(Modifier.isFinal(type.getModifiers())).isTrue();
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void minus_zero_is_zero(QuantityKind<?> kind) {
    ScalarQuantity<?> plus = kind.ofSi(0.0);
    ScalarQuantity<?> minus = kind.ofSi(-0.0);
    assertThat(minus).isEqualTo(plus).hasSameHashCodeAs(plus).hasToString(plus.toString());
    assertThat(minus.toExactText()).isEqualTo(plus.toExactText());
    assertThat(compare(minus, plus)).isZero();
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void equality_hash_and_order_agree(QuantityKind<?> kind) {
    double[] values = Kinds.values(kind, 22, 60);
    for (double a : values) {
      for (double b : values) {
        ScalarQuantity<?> one = kind.ofSi(a);
        ScalarQuantity<?> other = kind.ofSi(b);
        assertThat(one.equals(other)).isEqualTo(a == b).isEqualTo(compare(one, other) == 0);
        assertThat(compare(one, other)).isEqualTo(Double.compare(a, b)).isEqualTo(-compare(other, one));
        if (a == b) {
          assertThat(one).hasSameHashCodeAs(other);
        }
      }
    }
    assertThat(kind.ofSi(1.0)).isNotEqualTo(null).isNotEqualTo(1.0).isNotEqualTo(kind.ofSi(Math.nextUp(1.0)));
  }

  @SuppressWarnings("unchecked")
  private static <Q extends ScalarQuantity<Q>> int compare(ScalarQuantity<?> one, ScalarQuantity<?> other) {
    return ((Q) one).compareTo((Q) other);
  }

  @Test
  void quantities_of_two_kinds_are_never_equal() {
    assertThat((Object) Moment.newtonMetres(1)).isNotEqualTo(Energy.joules(1));
    assertThat((Object) WingLoading.kilogramsPerSquareMetre(1)).isNotEqualTo(ArealDensity.kilogramsPerSquareMetre(1));
    List<QuantityKind<?>> kinds = Kinds.all().toList();
    for (QuantityKind<?> one : kinds) {
      for (QuantityKind<?> other : kinds) {
        assertThat(one.ofSi(1).equals(other.ofSi(1))).isEqualTo(one == other);
      }
    }
    assertThat(kinds.stream().map(QuantityKind::name).distinct()).hasSameSizeAs(kinds);
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void serialization_gives_an_equal_value(QuantityKind<?> kind) throws Exception {
    for (double si : Kinds.values(kind, 23, 20)) {
      ScalarQuantity<?> quantity = kind.ofSi(si);
      ScalarQuantity<?> copy = (ScalarQuantity<?>) copy(quantity);
      assertThat((Object) copy).isEqualTo(quantity).isNotSameAs(quantity);
      assertThat((Object) copy.kind()).isSameAs(kind);
    }
    for (NamedUnit<?> unit : kind.units()) {
      NamedUnit<?> copy = (NamedUnit<?>) copy(unit);
      assertThat((Object) copy).isEqualTo(unit).hasSameHashCodeAs(unit);
      assertThat(copy.toSi(3.5)).isEqualTo(unit.toSi(3.5));
    }
  }

  private static Object copy(Object original) throws IOException, ClassNotFoundException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(original);
    }
    try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      return in.readObject();
    }
  }
}
