// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import io.github.wingwright.core.aerodynamics.SkinFriction;
import io.github.wingwright.core.basis.Consideration;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.mass.Material;
import io.github.wingwright.core.quantity.Density;
import io.github.wingwright.core.quantity.Length;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.api.Test;

/** Nothing where something is asked for is refused where it is given, by name, and not where it would be used. */
class NothingGivenTest {
  private static final Planform RECTANGLE =
      Planform.tapered(Length.metres(1.0), Length.metres(0.1), Length.metres(0.1));

  @SuppressWarnings("NullAway")
  static Stream<ThrowingCallable> doors() {
    return Stream.of(
        () -> Placement.at(null, Length.ZERO),
        () -> Wing.of(RECTANGLE, null),
        () -> SkinFriction.mixed(1e4, 5e5, null),
        () -> Material.of("board", Density.kilogramsPerCubicMetre(100), null),
        () -> Considerations.finenessWithin(3, 14, (Source) null),
        () -> WingConsiderations.aspectRatioWithin(5, 8, null),
        () -> new WingFrame(0.4, 0.6, null),
        () -> WingSizing.open().showing(null),
        () -> WingSizing.open().considering((WingConsideration) null),
        () -> WingSizing.open().considering((WingConsideration[]) null),
        () -> FuselageSizing.of(BodyShape.capsule()).considering((Consideration) null),
        () -> FuselageSizing.of(BodyShape.capsule()).considering((ShapeConsideration[]) null),
        () -> FuselageSizing.of(BodyShape.capsule()).settingAside((Consideration) null, "no tail"),
        () -> new FigureOfMerit("flight", null, true, (body, drag) -> 1));
  }

  @ParameterizedTest
  @MethodSource("doors")
  void nothing_is_refused_at_the_door(ThrowingCallable door) {
    assertThatNullPointerException().isThrownBy(door).withMessageNotContaining("because");
  }

  @Test
  void a_drag_that_is_no_number_is_refused_by_name() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new DragSurvey.Point(8, 0.24, 0.03, Double.NaN))
        .withMessage("drag area must be finite, was NaN");
  }
}
