// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import java.io.Serializable;

/**
 * A round spigot by which the aft end of one piece of a body reaches into the next; as a pair of sockets, the place of a tube
 * or a dowel that reaches into both.
 *
 * @param diameter its diameter, positive
 * @param length how far it reaches, positive
 * @param play how much wider the socket is all around, not negative
 */
public record Spigot(Length diameter, Length length, Length play) implements Serializable {

  /** Refuses a spigot without size. */
  public Spigot {
    Door.positive(diameter, "diameter of a spigot");
    Door.positive(length, "length of a spigot");
    Door.notNegative(play, "play of a spigot");
  }
}
