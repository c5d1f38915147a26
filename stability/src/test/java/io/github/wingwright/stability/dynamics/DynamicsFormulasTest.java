// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.dynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.testing.FormulaCheck;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class DynamicsFormulasTest {
    @TestFactory
    Stream<DynamicTest> every_formula_computes_what_it_prints() {
        return FormulaCheck.ofFormulasIn("io.github.wingwright.stability.dynamics");
    }

    @Test
    void documented_examples_hold() {
        assertThat(ModeApproximations.lanchesterPeriod(5, 9.80665)).isCloseTo(2.27, within(0.005));
        assertThat(ModeApproximations.lanchesterDamping(8)).isCloseTo(0.088, within(5e-4));
    }
}
