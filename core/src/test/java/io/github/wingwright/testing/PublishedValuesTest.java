// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.junit.jupiter.api.Test;

class PublishedValuesTest {
  private static final PublishedValues TABLE =
      PublishedValues.beside(PublishedValuesTest.class, "published-values.csv");

  @Test
  void rows_are_read_by_the_name_of_a_column() {
    assertThat(TABLE.rows().mapToDouble(row -> row.number("density"))).containsExactly(1.225, -0.5e-3);
    assertThat(TABLE).extracting(row -> row.text("reason")).containsExactly("rounded, as printed", "a \"low\" value");
  }

  @Test
  void an_empty_field_is_told_apart() {
    assertThat(TABLE.rows().map(row -> row.has("note"))).containsExactly(true, false);
  }

  @Test
  void a_row_says_where_it_is() {
    assertThat(TABLE.iterator().next()).hasToString(
        "published-values.csv line 5 [1.225, rounded, as printed, sea level]");
  }

  @Test
  void an_unknown_column_is_refused_with_the_known_ones() {
    assertThatIllegalArgumentException().isThrownBy(() -> TABLE.iterator().next().number("pressure"))
        .withMessage("published-values.csv line 5: column must be one of [density, reason, note], was pressure");
  }

  @Test
  void what_is_not_a_finite_number_is_refused() {
    PublishedValues table = PublishedValues.parse("t.csv", List.of("a,b", "1 m,NaN"));
    PublishedValues.Row row = table.iterator().next();
    assertThatIllegalArgumentException().isThrownBy(() -> row.number("a"))
        .withMessage("t.csv line 2, column a: must be a finite number, was \"1 m\"");
    assertThatIllegalArgumentException().isThrownBy(() -> row.number("b")).withMessageContaining("was \"NaN\"");
  }

  @Test
  void a_malformed_table_is_refused() {
    assertThatIllegalArgumentException().isThrownBy(() -> PublishedValues.parse("t.csv", List.of("a,b", "1")))
        .withMessage("t.csv line 2: must have 2 fields, one for each of [a, b], had 1");
    assertThatIllegalArgumentException().isThrownBy(() -> PublishedValues.parse("t.csv", List.of("a,a", "1,2")))
        .withMessageContaining("must differ");
    assertThatIllegalArgumentException().isThrownBy(() -> PublishedValues.parse("t.csv", List.of("a", "\"1")))
        .withMessageContaining("must end on its line");
    assertThatIllegalArgumentException().isThrownBy(() -> PublishedValues.parse("t.csv", List.of("# none", "a")))
        .withMessageContaining("at least one row");
  }

  @Test
  void a_missing_resource_is_named() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> PublishedValues.beside(PublishedValuesTest.class, "absent.csv"))
        .withMessage("resource must lie in package io.github.wingwright.testing, was not there: absent.csv");
  }
}
