// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.comparison;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.mass.Materials;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.stability.design.Design;
import io.github.wingwright.stability.design.DesignBrief;
import io.github.wingwright.stability.design.SizingLoop;
import io.github.wingwright.stability.design.TestGlider;
import java.util.List;
import org.junit.jupiter.api.Test;

class DesignComparisonTest {
  private static Design design(DesignBrief brief) {
    return SizingLoop.of(brief).madeTo(Length.millimetres(0.5), Mass.grams(0.1)).solve();
  }

  @Test
  void a_design_does_not_differ_from_itself() {
    Design design = design(TestGlider.brief());
    DesignComparison none = DesignComparison.of(design, design(TestGlider.brief()));
    assertThat(none.numbers()).isEmpty();
    assertThat(none.unchanged()).isEqualTo(design.numbers().size());
    assertThat(none.roots()).isEmpty();
    assertThat(none.cameFindings()).isEmpty();
    assertThat(none.wentFindings()).isEmpty();
  }

  @Test
  void every_number_that_differs_is_listed_and_has_a_cause() {
    Design before = design(TestGlider.brief());
    Design after = design(TestGlider.brief().material(Materials.PLA));
    DesignComparison changed = DesignComparison.of(before, after);
    for (String name : after.numbers().keySet()) {
      boolean listed = changed.numbers().stream().anyMatch(n -> n.name().equals(name));
      double was = before.number(name).value();
      double is = after.number(name).value();
      assertThat(listed).as(name).isEqualTo(Math.abs(is - was) > 1e-12 * Math.max(Math.abs(is), Math.abs(was)));
    }
    ChangedNumber mass =
        changed.numbers().stream().filter(n -> n.name().equals("mass_kg")).findFirst().orElseThrow();
    assertThat(mass.judgement()).isEqualTo(Judgement.WORSE);
    assertThat(mass.percent()).startsWith("+").endsWith(" %");
    assertThat(changed.decisions()).anySatisfy(d -> assertThat(d.after().name()).isEqualTo("density of PLA"));
    assertThat(changed.cameFindings()).anySatisfy(f -> assertThat(f.subject()).isEqualTo("launch speed"));
  }

  @Test
  void the_table_has_a_line_for_each_change_and_says_what_was_decided() {
    DesignComparison changed =
        DesignComparison.of(design(TestGlider.brief()), design(TestGlider.brief().staticMargin(0.1)));
    List<String> lines = changed.table().toString().lines().toList();
    assertThat(lines.get(0)).isEqualTo(changed.toString());
    assertThat(lines)
        .hasSize(
            1 + changed.decisions().size() + changed.numbers().size() + changed.cameFindings().size() + changed.wentFindings().size())
        .allSatisfy(line -> assertThat(line.length()).isLessThan(110))
        .anySatisfy(line -> assertThat(line).isEqualTo("because of wanted static margin, 0.15 to 0.1"))
        .anySatisfy(line -> assertThat(line).matches("mass_kg +\\S+ kg to \\S+ kg +[-+]\\S+ %  (better|worse)"));
  }

  /** The range of the decalage then begins below zero: the same finding with another figure. */
  @Test
  void a_finding_whose_figure_changes_its_sign_neither_came_nor_went() {
    Design before = design(TestGlider.brief());
    Design after = design(TestGlider.brief().staticMargin(0.05));
    assertThat(decalage(before)).contains("known only from ").doesNotContain("from -");
    assertThat(decalage(after)).contains("known only from -");
    DesignComparison changed = DesignComparison.of(before, after);
    assertThat(changed.cameFindings()).noneMatch(f -> f.message().startsWith("It is known only"));
    assertThat(changed.wentFindings()).noneMatch(f -> f.message().startsWith("It is known only"));
  }

  private static String decalage(Design design) {
    return design.findings().stream().map(Finding::message).filter(m -> m.startsWith("It is known only")).findFirst().orElseThrow();
  }

  @Test
  void backwards_what_was_better_is_worse() {
    Design light = design(TestGlider.brief());
    Design heavy = design(TestGlider.brief().bodyWalls(4));
    DesignComparison there = DesignComparison.of(light, heavy);
    DesignComparison back = DesignComparison.of(heavy, light);
    assertThat(there.count(Judgement.BETTER)).isEqualTo(back.count(Judgement.WORSE));
    assertThat(there.count(Judgement.WORSE)).isEqualTo(back.count(Judgement.BETTER)).isPositive();
    assertThat(there.cameFindings()).isEqualTo(back.wentFindings());
  }
}
