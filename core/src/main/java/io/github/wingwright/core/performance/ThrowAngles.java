// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.performance;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * The best angles of a throw at one speed.
 *
 * @param optima every angle that is better than those beside it, best first
 * @param careful the angle whose worst case within {@value ThrowOptimum#CARE_DEGREES}° is best: the one to tell a thrower
 */
public record ThrowAngles(List<ThrowOptimum> optima, ThrowOptimum careful) implements Serializable {
  /** Keeps its own list. */
  public ThrowAngles {
    Objects.requireNonNull(optima, "optima");
    Objects.requireNonNull(careful, "careful");
    optima = List.copyOf(optima);
  }

  /**
   * The best of them.
   *
   * @return the first optimum
   */
  public ThrowOptimum best() {
    return optima.get(0);
  }

  @Override
  public String toString() {
    return "best " + best() + ", with care " + careful;
  }
}
