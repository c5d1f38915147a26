// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.Objects;

/**
 * What the mission is judged by, so that a price can be told in its own currency: metres of flight, seconds in the air.
 *
 * @param name what is counted, such as {@code "distance down the hall"}
 * @param unit the unit to show it in
 * @param moreIsBetter whether a greater value is a gain
 * @param value what a body leads to
 */
public record FigureOfMerit(String name, NamedUnit<?> unit, boolean moreIsBetter, Value value) {

  /** Refuses a figure without a name. */
  public FigureOfMerit {
    Objects.requireNonNull(unit, "unit");
    Objects.requireNonNull(value, "value");
    Door.said(name, "name of the figure of merit");
  }

  /** How a body shows in the figure of merit. */
  @FunctionalInterface
  public interface Value {
    /**
     * The figure that a body leads to.
     *
     * @param body the body
     * @param dragArea its drag area D/q [m²]
     * @return the figure [SI], finite
     */
    double of(Fuselage body, double dragArea);
  }

  @Override
  public String toString() {
    return name + (moreIsBetter ? ", more is better" : ", less is better");
  }
}
