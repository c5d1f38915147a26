// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils;

import io.github.wingwright.testing.FormulaCheck;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Every formula constant of airfoils: its printed text gives what its method gives. */
class FormulasTest {
  @TestFactory
  Stream<DynamicTest> every_formula_computes_what_it_prints() {
    return FormulaCheck.ofFormulasIn("io.github.wingwright.airfoils");
  }
}
