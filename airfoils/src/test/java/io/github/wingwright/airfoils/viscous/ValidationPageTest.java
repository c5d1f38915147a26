// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils.viscous;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class ValidationPageTest {
  private static final Path PAGE = Path.of("VALIDATION.md");

  @Test
  void the_page_says_what_is_computed() throws IOException {
    if ("write".equals(System.getProperty("wingwright.validation"))) {
      ValidationPage.main(new String[] {PAGE.toString()});
    }
    String[] written = Files.readString(PAGE).split("\\s+");
    String[] computed = ValidationPage.text().split("\\s+");
    assertThat(written).hasSameSizeAs(computed);
    for (int i = 0; i < written.length; i++) {
      if (!written[i].equals(computed[i])) {
        // Another machine may round differently: a hundredth of the value, or one unit of an error in percent,
        // or errors of the panel method that are themselves rounding.
        double a = Double.parseDouble(written[i]);
        double b = Double.parseDouble(computed[i]);
        assertThat(b).as("word %d of the page", i).isCloseTo(a, within(Math.max(Math.abs(a) * 0.02, Math.abs(a) >= 1 ? 1 : 1e-7)));
      }
    }
  }
}
