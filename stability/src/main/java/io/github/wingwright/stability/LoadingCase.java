// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.core.mass.MassStatement;
import java.io.Serializable;

/**
 * One way in which an aircraft is loaded.
 *
 * @param name in words, such as {@code "battery empty"}
 * @param masses what is aboard
 */
public record LoadingCase(String name, MassStatement masses) implements Serializable {
  /** Refuses a case without a name. */
  public LoadingCase {
    if (name.isBlank()) {
      throw new IllegalArgumentException("name of a loading case must say what is aboard, was empty");
    }
  }

  @Override
  public String toString() {
    return name + ": " + masses.mass() + " at " + masses.centreOfGravity().x();
  }
}
