// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.production;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.performance.ElasticLaunch;
import io.github.wingwright.core.quantity.Force;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.stability.design.Design;
import io.github.wingwright.stability.design.Launch;
import io.github.wingwright.stability.design.SizingLoop;
import io.github.wingwright.stability.design.TestGlider;
import org.junit.jupiter.api.Test;

class ElasticLoadsTest {
  private static final ElasticLaunch LOOP = ElasticLaunch.pulling(Force.newtons(8), Length.metres(0.5));

  private static Design pulled(double grams) {
    Launch launch = Launch.by(LOOP, Mass.grams(grams), Length.metres(1.5));
    return SizingLoop.of(TestGlider.brief().launched(launch)).solve();
  }

  @Test
  void the_documented_examples() {
    assertThat(ElasticLoads.acceleration(8, 0.025)).isCloseTo(320, within(1e-9));
    assertThat(ElasticLoads.dragged(0.004, 320)).isCloseTo(1.28, within(1e-12));
    assertThat(ElasticLoads.backward(0.006, 320, 0.1)).isCloseTo(0.192, within(1e-12));
    assertThat(ElasticLoads.below(8, 0.022)).isCloseTo(0.088, within(1e-12));
  }

  @Test
  void what_lags_before_and_behind_the_hook_makes_up_the_pull() {
    ElasticLoads loads = new ElasticLoads(pulled(40), LOOP);
    double sum =
        loads.loads().stream()
            .filter(l -> l.place().equals("nose ahead of the hook") || l.place().equals("fuselage behind the hook"))
            .mapToDouble(LaunchLoads.Load::value)
            .sum();
    assertThat(sum).isCloseTo(8.0, within(1e-9));
  }

  @Test
  void the_boom_drags_the_tails_and_what_of_the_body_is_behind_the_wing_but_not_the_wing() {
    Design design = pulled(40);
    double boom =
        new ElasticLoads(design, LOOP).loads().stream()
            .filter(l -> l.place().equals("boom behind the wing"))
            .mapToDouble(LaunchLoads.Load::value)
            .sum();
    double trailingEdge = design.number("wing.leading_edge_x_m").value() + design.aircraft().airframe().wing().planform().rootChord().si();
    double behind =
        design.aircraft().masses().items().stream()
            .filter(i -> i.name().endsWith("tail"))
            .mapToDouble(i -> i.mass().si())
            .sum();
    double fuselage = design.aircraft().masses().item("fuselage").orElseThrow().mass().si();
    behind += fuselage * (1.0 - trailingEdge / design.aircraft().airframe().fuselage().length().si());
    assertThat(boom).isCloseTo(8.0 * behind / design.aircraft().mass().si(), within(1e-6));
  }

  @Test
  void a_mass_that_was_not_assumed_is_a_finding_with_the_amount_and_goes_with_the_right_one() {
    Design design = pulled(20);
    assertThat(design.findings()).anyMatch(f -> f.subject().equals("mass of the glider on the elastic") && f.message().contains("heavier"));
    double real = design.aircraft().mass().grams();
    assertThat(Launch.by(LOOP, Mass.grams(real), Length.metres(1.5)).findings(Mass.grams(real)))
        .noneMatch(f -> f.subject().equals("mass of the glider on the elastic"));
  }

  @Test
  void the_cautions_and_the_loads_speak_of_the_elastic_only_where_there_is_one() {
    Design design = pulled(40);
    assertThat(Cautions.of(design).lines()).anyMatch(l -> l.contains("8 N") && l.contains("eye protection"));
    assertThat(LaunchLoads.of(design).elasticWorkings()).isNotEmpty();
    Design thrown = SizingLoop.of(TestGlider.brief()).solve();
    assertThat(LaunchLoads.of(thrown).elasticWorkings()).isEmpty();
    assertThat(LaunchLoads.of(thrown).loads()).noneMatch(l -> l.cause().startsWith(ElasticLoads.CAUSE));
  }
}
