// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What products and quotients of quantities are: held against the algebra of dimensions, all of them. */
class QuantityArithmeticTest {
  private static final Set<String> PRODUCTS = Set.of("times", "weight", "moment", "work");
  private static final Set<String> QUOTIENTS = Set.of("dividedBy", "of");

  /** A method that makes a quantity or a number of two quantities. */
  record Relation(Method method, Class<?> left, Class<?> right, Class<?> result) {
    boolean isProduct() {
      return PRODUCTS.contains(method.getName());
    }

    Object apply(double a, double b) throws ReflectiveOperationException {
      Object first = Kinds.of(left).ofSi(a);
      Object second = Kinds.of(right).ofSi(b);
      return Modifier.isStatic(method.getModifiers()) ? method.invoke(null, first, second) : method.invoke(first, second);
    }

    @Override
    public String toString() {
      return left.getSimpleName() + "." + method.getName() + "(" + right.getSimpleName() + ") = " + result.getSimpleName();
    }
  }

  static Stream<Relation> relations() {
    return relationList().stream();
  }

  private static List<Relation> relationList() {
    List<Relation> relations = new ArrayList<>();
    for (Class<?> type : Kinds.types()) {
      for (Method method : type.getMethods()) {
        Class<?>[] parameters = method.getParameterTypes();
        boolean fixed = Modifier.isStatic(method.getModifiers());
        if (method.isBridge() || !PRODUCTS.contains(method.getName()) && !QUOTIENTS.contains(method.getName())) {
          continue;
        }
        Class<?> left = fixed ? parameters[0] : type;
        Class<?> right = parameters[parameters.length - 1];
        if (right == AdditiveQuantity.class) {
          right = type;
        }
        if (ScalarQuantity.class.isAssignableFrom(right)) {
          relations.add(new Relation(method, left, right, method.getReturnType()));
        }
      }
    }
    return relations;
  }

  private static Dimension dimension(Class<?> type) {
    return type == double.class ? new Dimension(0, 0, 0, 0, 0) : Kinds.of(type).dimension();
  }

  private static Dimension combine(Dimension a, Dimension b, int sign) {
    return new Dimension(
        a.kilogram() + sign * b.kilogram(),
        a.metre() + sign * b.metre(),
        a.second() + sign * b.second(),
        a.kelvin() + sign * b.kelvin(),
        a.radian() + sign * b.radian());
  }

  @Test
  void there_are_many_relations_to_test() {
    assertThat(relationList()).hasSizeGreaterThan(85);
  }

  @ParameterizedTest
  @MethodSource("relations")
  void a_result_has_the_dimension_of_its_algebra(Relation relation) {
    assertThat(dimension(relation.result()))
        .isEqualTo(combine(dimension(relation.left()), dimension(relation.right()), relation.isProduct() ? 1 : -1));
  }

  @ParameterizedTest
  @MethodSource("relations")
  void a_result_has_the_value_of_its_algebra(Relation relation) throws ReflectiveOperationException {
    Object result = relation.apply(3.7, 1.3);
    double value = result instanceof ScalarQuantity<?> quantity ? quantity.si() : (Double) result;
    assertThat(value).isEqualTo(relation.isProduct() ? 3.7 * 1.3 : 3.7 / 1.3);
  }

  @ParameterizedTest
  @MethodSource("relations")
  void nothing_is_divided_by_zero(Relation relation) throws ReflectiveOperationException {
    if (relation.isProduct()) {
      assertThat(((ScalarQuantity<?>) relation.apply(3.7, 0.0)).si()).isZero();
    } else {
      assertThatThrownBy(() -> relation.apply(3.7, 0.0))
          .hasRootCauseInstanceOf(ArithmeticException.class)
          .rootCause()
          .hasMessageStartingWith("divisor must not be zero, was 0");
    }
  }

  @ParameterizedTest
  @MethodSource("relations")
  void a_product_that_is_offered_both_ways_is_the_same_both_ways(Relation relation) throws ReflectiveOperationException {
    Optional<Relation> other =
        relationList().stream()
            .filter(r -> r.method().getName().equals("times") && relation.method().getName().equals("times"))
            .filter(r -> r.left() == relation.right() && r.right() == relation.left())
            .findFirst();
    if (other.isPresent()) {
      assertThat(other.get().apply(1.3, 3.7)).isEqualTo(relation.apply(3.7, 1.3));
    }
  }

  @Test
  void powers_and_roots_belong_together() {
    assertThat(Area.squareCentimetres(9).squareRoot()).isEqualTo(Length.centimetres(3));
    assertThat(Volume.cubicMetres(27).cubeRoot()).isEqualTo(Length.metres(3));
    assertThatThrownBy(() -> Area.squareMetres(-4).squareRoot())
        .isInstanceOf(ArithmeticException.class)
        .hasMessage("a square root needs a value that is not negative, was -4 m²");
  }

  @Test
  void a_wing_is_sized_in_its_own_words() {
    Length span = Length.millimetres(400);
    Area area = Area.squareCentimetres(200);
    double aspectRatio = span.times(span).dividedBy(area);
    assertThat(aspectRatio).isCloseTo(8.0, within(1e-14));
    WingLoading loading = WingLoading.of(Mass.grams(30), area);
    assertThat(loading.toString()).isEqualTo("1.5 kg/m²");
    assertThat(Mass.grams(30).dividedBy(loading)).isEqualTo(area);
    assertThat(loading.weight(Acceleration.STANDARD_GRAVITY).toString()).isEqualTo("14.71 Pa");
    assertThat(Force.newtons(2).moment(Length.millimetres(50)).toString()).isEqualTo("100 N·mm");
    assertThat(Force.newtons(2).work(Length.millimetres(50)).toString()).isEqualTo("100 mJ");
  }

  @Test
  void sums_are_compared_with_a_tolerance() {
    Length sum = Length.metres(0.1).plus(Length.metres(0.2));
    assertThat(sum).isNotEqualTo(Length.metres(0.3));
    assertThat(sum.isCloseTo(Length.metres(0.3), Length.micrometres(1))).isTrue();
    assertThat(sum.isCloseTo(Length.metres(0.31), Length.micrometres(1))).isFalse();
    assertThat(sum.isCloseTo(sum, Length.ZERO)).isTrue();
    assertThatThrownBy(() -> sum.isCloseTo(sum, Length.millimetres(-1)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("tolerance must not be negative, was -1 mm");
  }

  @Test
  void one_quantity_is_changed_into_another_of_its_kind() {
    Length length = Length.millimetres(-12);
    assertThat(length.negated()).isEqualTo(Length.millimetres(12));
    assertThat(length.magnitude()).isEqualTo(Length.millimetres(12));
    assertThat(length.times(-2)).isEqualTo(Length.millimetres(24));
    assertThat(length.dividedBy(4)).isEqualTo(Length.millimetres(-3));
    assertThat(length.atLeast(Length.ZERO)).isEqualTo(Length.ZERO);
    assertThat(length.atMost(Length.ZERO)).isEqualTo(length);
    assertThat(length.minus(length)).isEqualTo(Length.ZERO);
    assertThat(length.isNegative()).isTrue();
    assertThat(length.isPositive()).isFalse();
    assertThat(Length.ZERO.isNegative() || Length.ZERO.isPositive()).isFalse();
    assertThatThrownBy(() -> length.dividedBy(0.0)).isInstanceOf(ArithmeticException.class);
    assertThatThrownBy(() -> length.dividedBy(-0.0)).isInstanceOf(ArithmeticException.class);
  }

  @Test
  void temperatures_differ_and_do_not_add() {
    Temperature hall = Temperature.degreesCelsius(20);
    TemperatureDifference rise = hall.minus(Temperature.degreesCelsius(15));
    assertThat(rise).isEqualTo(TemperatureDifference.kelvins(5));
    assertThat(hall.plus(rise)).isEqualTo(Temperature.degreesCelsius(25));
    assertThat(hall.minus(rise)).isEqualTo(Temperature.degreesCelsius(15));
    assertThat(Temperature.class.getMethods()).extracting(Method::getName).doesNotContain("times", "negated");
    assertThatThrownBy(() -> Temperature.degreesCelsius(-300))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("temperature must be at least 0 K (−273.15 °C), was -300 °C");
    assertThatThrownBy(() -> Temperature.KIND.ofSi(-1e-9)).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void an_angle_knows_its_functions() {
    assertThat(Angle.degrees(30).sine()).isEqualTo(Math.sin(Math.PI / 6));
    assertThat(Angle.degrees(60).cosine()).isEqualTo(Math.cos(Math.PI / 3));
    assertThat(Angle.degrees(45).tangent()).isEqualTo(Math.tan(Math.PI / 4));
    assertThat(Angle.turns(1)).isEqualTo(Angle.degrees(360));
  }
}
