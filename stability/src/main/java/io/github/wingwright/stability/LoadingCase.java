// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.core.mass.MassStatement;
import java.io.Serializable;
import java.util.Objects;

/**
 * One way in which an aircraft is loaded.
 *
 * @param name in words, such as {@code "battery empty"}
 * @param masses what is aboard
 */
public record LoadingCase(String name, MassStatement masses) implements Serializable {
  /** Refuses a case without a name. */
  public LoadingCase {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(masses, "masses");
    if (name.isBlank()) {
      throw new IllegalArgumentException("name of a loading case must say what is aboard, was empty");
    }
  }

  @Override
  public String toString() {
    return name + ": " + masses.mass() + " at " + masses.centreOfGravity().x();
  }
}
