// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.basis.Consideration;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Strength;
import java.util.function.DoubleBinaryOperator;

/** A guideline as an embedder might write it: nothing but a name and a margin. */
record OwnMargin(String name, DoubleBinaryOperator ofBody) implements Consideration {
  @Override
  public Strength strength() {
    return Strength.GUIDELINE;
  }

  @Override
  public Source source() {
    return Source.BRIEF;
  }

  @Override
  public double margin(double length, double diameter) {
    return ofBody.applyAsDouble(length, diameter);
  }
}
