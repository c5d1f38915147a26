// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.basis.Consideration;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Strength;
import java.util.function.DoubleUnaryOperator;

/** A guideline as an embedder might write it: nothing but a name and a margin on the diameter. */
record OwnMargin(String name, DoubleUnaryOperator ofDiameter) implements Consideration {
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
    return ofDiameter.applyAsDouble(diameter);
  }
}
