// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.testing.FormulaCheck;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

class FormulasOfStabilityTest {
  @TestFactory
  Stream<DynamicTest> every_formula_computes_what_it_prints() {
    return FormulaCheck.ofFormulasIn("io.github.wingwright.stability");
  }
}
