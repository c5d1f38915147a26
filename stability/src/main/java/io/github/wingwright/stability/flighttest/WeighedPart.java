// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.flighttest;

import io.github.wingwright.core.quantity.Door;
import java.io.Serializable;
import java.util.Objects;

/**
 * A part on the scales.
 *
 * @param name its name in the mass statement of the design
 * @param mass what it weighs [kg]
 */
public record WeighedPart(String name, Measured mass) implements Serializable {
  /** Refuses a part without a mass. */
  public WeighedPart {
    Objects.requireNonNull(mass, "mass");
    Door.said(name, "name of the part");
    Door.notNegative(mass.value(), "mass of " + name);
  }
}
