// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import static io.github.wingwright.core.quantity.Length.millimetres;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.wingwright.core.mass.Materials;
import io.github.wingwright.core.quantity.Speed;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class DesignBriefTest {
  /** The calls that complete a brief, by what a brief without them is told to say. */
  private static Map<String, UnaryOperator<DesignBrief>> calls() {
    DesignBrief whole = TestGlider.brief();
    Map<String, UnaryOperator<DesignBrief>> calls = new LinkedHashMap<>();
    calls.put("air(…)", b -> b.air(whole.air()));
    calls.put("thrown(…)", b -> b.thrown(Speed.metresPerSecond(7), millimetres(1600)));
    calls.put("wing(…)", b -> b.wing(TestGlider.wing()));
    calls.put("wingPolar(…)", b -> b.wingPolar(whole.wingPolar()));
    calls.put("fuselage(…)", b -> b.fuselage(TestGlider.body(290)));
    calls.put("tails(…)", b -> b.tails(TestGlider.PLATE, whole.tailPolar(), TestGlider.LEVEL, TestGlider.FIN));
    calls.put("material(…)", b -> b.material(Materials.FOAMING_PLA));
    return calls;
  }

  @TestFactory
  Stream<DynamicTest> an_incomplete_brief_is_told_what_it_does_not_say() {
    return calls().keySet().stream()
        .map(
            missing ->
                DynamicTest.dynamicTest(
                    missing,
                    () -> {
                      DesignBrief brief = DesignBrief.named("half");
                      for (Map.Entry<String, UnaryOperator<DesignBrief>> call : calls().entrySet()) {
                        brief = call.getKey().equals(missing) ? brief : call.getValue().apply(brief);
                      }
                      SizingLoop loop = SizingLoop.of(brief);
                      assertThatThrownBy(loop::solve)
                          .isInstanceOf(IllegalStateException.class)
                          .hasMessageContaining("\"half\" does not say")
                          .hasMessageEndingWith(": " + missing);
                    }));
  }

  @Test
  void a_call_leaves_the_brief_it_was_made_on_as_it_was() {
    DesignBrief one = TestGlider.brief();
    DesignBrief other = one.staticMargin(0.3).wingWalls(2, 0.1).tailThickness(millimetres(1));
    assertThat(one.staticMargin()).isEqualTo(0.15);
    assertThat(other.staticMargin()).isEqualTo(0.3);
    assertThat(one.tailThickness()).isEqualTo(millimetres(0.84));
  }

  @Test
  void absurd_values_are_refused_at_their_call() {
    DesignBrief brief = TestGlider.brief();
    assertThatThrownBy(() -> brief.staticMargin(Double.NaN)).isInstanceOf(IllegalArgumentException.class).hasMessageContaining("0.01 to 0.6");
    assertThatThrownBy(() -> brief.wingWalls(0, 0)).isInstanceOf(IllegalArgumentException.class).hasMessageContaining("was 0");
    assertThatThrownBy(() -> brief.wingWalls(1, 1.5)).isInstanceOf(IllegalArgumentException.class).hasMessageContaining("was 1.5");
    assertThatThrownBy(() -> brief.lineWidth(millimetres(-0.4))).isInstanceOf(IllegalArgumentException.class).hasMessageContaining("-0.4 mm");
    assertThatThrownBy(() -> brief.tailThickness(millimetres(0))).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> brief.wingBetween(millimetres(50), millimetres(40))).isInstanceOf(IllegalArgumentException.class).hasMessageContaining("40 mm");
    assertThatThrownBy(() -> brief.tailArmAtLeast(millimetres(-1))).isInstanceOf(IllegalArgumentException.class).hasMessageContaining("-1 mm");
    assertThatThrownBy(() -> DesignBrief.named(" ")).isInstanceOf(IllegalArgumentException.class).hasMessageContaining("blank");
    assertThatThrownBy(() -> new TailBrief(0.5, 50, 0.8)).isInstanceOf(IllegalArgumentException.class).hasMessageContaining("aspect ratio");
    assertThatThrownBy(() -> brief.thrown(Speed.metresPerSecond(-1), millimetres(1))).isInstanceOf(IllegalArgumentException.class).hasMessageContaining("launch speed");
  }
}
