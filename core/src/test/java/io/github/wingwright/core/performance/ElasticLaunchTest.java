// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.performance;

import static io.github.wingwright.core.quantity.Force.newtons;
import static io.github.wingwright.core.quantity.Length.metres;
import static io.github.wingwright.core.quantity.Mass.grams;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.quantity.Force;
import io.github.wingwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class ElasticLaunchTest {
  private static final ElasticLaunch LOOP = ElasticLaunch.pulling(newtons(8), metres(0.5)).withElasticMass(grams(4));

  @Test
  void the_example_of_the_documentation() {
    assertThat(LOOP.energy().si()).isEqualTo(2.0);
    assertThat(LOOP.speed(grams(25)).si()).isCloseTo(10.3, within(0.05));
    assertThat(LOOP.loadFactor(grams(25))).isCloseTo(8 / (0.025 * 9.80665), within(1e-12));
    assertThat(LOOP.greatestAcceleration(grams(25)).si()).isCloseTo(8 / (0.025 + 0.004 / 3), within(1e-9));
    assertThat(LOOP.thrown(grams(25), metres(1.5)).speed()).isEqualTo(LOOP.speed(grams(25)));
  }

  @Test
  void what_moves_has_the_energy_that_was_given() {
    double v = LOOP.speed(grams(25)).si();
    assertThat(0.5 * (0.025 + 0.004 / 3) * v * v).isCloseTo(0.7 * 2.0, within(1e-12));
  }

  /** Without loss the motion under a force that falls with the stretch is a quarter of a swing: V = x·√(k/m). */
  @Test
  void without_loss_it_is_a_quarter_of_a_swing() {
    ElasticLaunch spring = ElasticLaunch.ofStiffness(16, metres(0.5), metres(1.0)).withEfficiency(1);
    assertThat(spring.speed(grams(25)).si()).isCloseTo(0.5 * Math.sqrt(16 / 0.025), within(1e-12));
  }

  @Test
  void a_measured_straight_line_is_the_straight_line_and_a_curve_its_area() {
    List<Length> x = new ArrayList<>();
    List<Force> line = new ArrayList<>();
    List<Force> root = new ArrayList<>();
    for (int i = 1; i <= 200; i++) {
      x.add(metres(0.0025 * i));
      line.add(newtons(8.0 * i / 200));
      root.add(newtons(8.0 * Math.sqrt(i / 200.0)));
    }
    assertThat(ElasticLaunch.measured(x, line).energy().si()).isCloseTo(2.0, within(1e-12));
    // The integral of F·√(x/X) is 2/3·F·X.
    assertThat(ElasticLaunch.measured(x, root).energy().si()).isCloseTo(8.0 / 3.0, within(1e-3));
  }

  @Test
  void everyone_is_told_of_eye_protection_and_rubber_that_would_break_says_how_much_more_of_it() {
    assertThat(LOOP.findings(grams(25))).anyMatch(f -> f.message().contains("eye protection"));
    assertThat(LOOP.findings(grams(25))).noneMatch(f -> f.subject().equals("energy of the elastic"));
    ElasticLaunch thin = LOOP.withElasticMass(grams(0.1));
    Finding finding =
        thin.findings(grams(25)).stream().filter(f -> f.subject().equals("energy of the elastic")).findFirst().orElseThrow();
    Matcher m = Pattern.compile("at least ([0-9.]+) g").matcher(finding.message());
    assertThat(m.find()).as(finding.message()).isTrue();
    assertThat(thin.withElasticMass(grams(Double.parseDouble(m.group(1)))).findings(grams(25)))
        .noneMatch(f -> f.subject().equals("energy of the elastic"));
  }

  @Test
  void a_row_that_cannot_be_is_named() {
    assertThatThrownBy(() -> ElasticLaunch.measured(List.of(metres(0.1), metres(0.2), metres(0.3)), List.of(newtons(2), newtons(3), newtons(2.5))))
        .hasMessageContaining("must not fall")
        .hasMessageContaining("row 3");
    assertThatThrownBy(() -> ElasticLaunch.measured(List.of(metres(0.1), metres(0.1)), List.of(newtons(1), newtons(2))))
        .hasMessageContaining("row 2");
    assertThatThrownBy(() -> ElasticLaunch.measured(List.of(metres(0), metres(0.1)), List.of(newtons(1), newtons(2))))
        .hasMessageContaining("row 1");
    assertThatThrownBy(() -> ElasticLaunch.measured(List.of(metres(0.1), metres(0.2)), List.of(newtons(1), newtons(-2))))
        .hasMessageContaining("row 2");
    assertThat(ElasticLaunch.measured(List.of(metres(0), metres(0.5)), List.of(newtons(0), newtons(8))).energy())
        .isEqualTo(LOOP.energy());
  }

  @Test
  void what_cannot_be_is_refused() {
    assertThatThrownBy(() -> ElasticLaunch.pulling(newtons(0), metres(1))).hasMessageContaining("pull of the elastic");
    assertThatThrownBy(() -> ElasticLaunch.pulling(newtons(1), metres(-1))).hasMessageContaining("stretch of the elastic");
    assertThatThrownBy(() -> ElasticLaunch.ofStiffness(Double.NaN, metres(1), metres(2))).hasMessageContaining("stiffness");
    assertThatThrownBy(() -> ElasticLaunch.ofStiffness(5, metres(2), metres(1)))
        .hasMessageContaining("more than the length at rest");
    assertThatThrownBy(() -> LOOP.withEfficiency(1.2)).hasMessageContaining("efficiency");
    assertThatThrownBy(() -> LOOP.speed(grams(0))).hasMessageContaining("mass");
    assertThatThrownBy(() -> ElasticLaunch.measured(List.of(metres(1)), List.of())).hasMessageContaining("as many");
    assertThatThrownBy(() -> ElasticLaunch.measured(List.of(metres(1), metres(1)), List.of(newtons(1), newtons(2))))
        .hasMessageContaining("must rise");
  }
}
