// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.basis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** What comes in is refused at the door if it is nothing, and what goes out reads in one line. */
class DoorsTest {
  private static final Bound LOW = Bound.of("room", Strength.LIMIT, Source.BRIEF, Interval.atLeast(0.02));
  private static final Bound HIGH = Bound.of("machine", Strength.LIMIT, Source.BRIEF, Interval.atMost(0.01));
  private static final Consideration ANY =
      new Consideration() {
        @Override
        public String name() {
          return "any";
        }

        @Override
        public Strength strength() {
          return Strength.LIMIT;
        }

        @Override
        public Source source() {
          return Source.BRIEF;
        }

        @Override
        public double margin(double length, double diameter) {
          return 1.0;
        }
      };
  private static final Weighed WEIGHED = new Weighed(ANY, Decision.chosen());

  /** Every record of the package with arguments that it takes. */
  private static Stream<Record> records() {
    return Stream.of(
        LOW,
        Decision.notApplicable("it does not fly"),
        new Guideline("fineness", Interval.between(6.0, 10.0), NamedUnit.NUMBER, "gliders", "stay inside", Source.BRIEF),
        new Price("drag", 1.0, 2.0, NamedUnit.NUMBER, false),
        Source.published("A book", "p. 1"),
        new Symbol("m", "mass", NamedUnit.NUMBER, Interval.between(0.0, 1.0)),
        WEIGHED,
        new Conflict.GivingWay(WEIGHED, new FeasibleRegion.Point(0.3, 0.03), 0.1),
        new FeasibleRange.Relaxation(LOW, 0.02, 0.01),
        new FeasibleRange.Clash(LOW, HIGH),
        new FeasibleRegion.Side(Optional.of(WEIGHED), List.of()),
        new FeasibleRegion.Boundary(WEIGHED, List.of()));
  }

  @TestFactory
  Stream<DynamicTest> null_is_refused_in_every_place_of() {
    return records().map(r -> DynamicTest.dynamicTest(r.getClass().getSimpleName(), () -> refusesNull(r)));
  }

  private static void refusesNull(Record record) throws ReflectiveOperationException {
    var components = record.getClass().getRecordComponents();
    Class<?>[] types = Stream.of(components).map(c -> c.getType()).toArray(Class<?>[]::new);
    Constructor<?> constructor = record.getClass().getDeclaredConstructor(types);
    for (int nothing = 0; nothing < types.length; nothing++) {
      if (types[nothing].isPrimitive()) {
        continue;
      }
      Object[] arguments = new Object[types.length];
      for (int i = 0; i < types.length; i++) {
        arguments[i] = i == nothing ? null : components[i].getAccessor().invoke(record);
      }
      assertThatNullPointerException()
          .as(components[nothing].getName())
          .isThrownBy(() -> make(constructor, arguments));
    }
  }

  private static void make(Constructor<?> constructor, Object[] arguments) throws Throwable {
    try {
      constructor.newInstance(arguments);
    } catch (InvocationTargetException e) {
      throw e.getCause();
    }
  }

  @Test
  void null_is_refused_by_factories_too() {
    assertThatNullPointerException()
        .isThrownBy(() -> Finding.of(Severity.NOTE, "wing", nothing(), Source.BRIEF))
        .withMessage("message");
    assertThatNullPointerException().isThrownBy(() -> Step.given("mass", "m", 1.0, nothing())).withMessage("source");
    assertThatNullPointerException().isThrownBy(() -> FeasibleRange.of(nothing(), NamedUnit.NUMBER, List.of(LOW)));
  }

  @SuppressWarnings({"NullAway", "TypeParameterUnusedInFormals"})
  private static <T> T nothing() {
    return null;
  }

  @Test
  void a_target_without_a_number_is_refused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Bound.target("pull", Source.BRIEF, Double.NaN))
        .withMessage("preferred value of \"pull\" must be finite, was NaN");
    assertThatIllegalArgumentException().isThrownBy(() -> new FeasibleRegion.Point(Double.NaN, 0.1));
    assertThatIllegalArgumentException().isThrownBy(() -> new FeasibleRange.Relaxation(LOW, Double.NaN, 0.1));
  }

  @Test
  void each_reads_in_one_line() {
    assertThat(LOW).hasToString("limit room: at least 0.02");
    assertThat(Bound.target("eye", Source.BRIEF, 0.013)).hasToString("target eye: near 0.013");
    assertThat(LOW.under(Decision.provisional("it is weighed")))
        .hasToString("limit room: at least 0.02, provisional until it is weighed");
    assertThat(new FeasibleRange.Clash(LOW, HIGH)).hasToString("\"room\" against \"machine\"");
    assertThat(new FeasibleRange.Relaxation(LOW, 0.02, 0.01)).hasToString("\"room\" at 0.01 instead of 0.02");
    assertThat(new FeasibleRegion.Point(0.3, 0.03)).hasToString("300 mm × 30 mm");
    assertThat(new Band(8.2, 9.2, 13.0)).hasToString("9.2 (8.2 to 13)");
    assertThat(Band.exactly(2.0)).hasToString("2");
    assertThat(new Symbol("b", "span", Length.METRE, Interval.between(0.1, 1.0))).hasToString("b span, 0.1 to 1 m");
  }
}
