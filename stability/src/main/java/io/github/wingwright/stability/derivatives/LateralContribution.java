// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.derivatives;

import io.github.wingwright.stability.dynamics.LateralDerivatives;
import java.util.Locale;
import java.util.Objects;

/**
 * Share of one part of the aircraft in the lateral derivatives.
 *
 * @param part which part and which effect of it, such as {@code "wing, dihedral"}
 * @param values its share in each of the nine derivatives
 */
public record LateralContribution(String part, LateralDerivatives values) {
  public LateralContribution {
    Objects.requireNonNull(part, "part");
    Objects.requireNonNull(values, "values");
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "%s: C_Yβ %.3f, C_lβ %.4f, C_nβ %.4f", part, values.sideSideslip(),
        values.rollSideslip(), values.yawSideslip());
  }
}
