// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The shape of the whole aircraft.
 *
 * @param fuselage the fuselage
 * @param wing the wing
 * @param tails the tail surfaces, none for a tailless aircraft
 */
public record Airframe(Fuselage fuselage, Wing wing, List<Tail> tails) implements Serializable {

  /** Keeps its own list. */
  public Airframe {
    Objects.requireNonNull(tails, "tails");
    Objects.requireNonNull(fuselage, "fuselage");
    Objects.requireNonNull(wing, "wing");
    tails = List.copyOf(tails);
  }

  /**
   * The horizontal tail.
   *
   * @return the first tail of that role, empty if there is none
   */
  public Optional<Tail> horizontalTail() {
    return tail(Tail.Role.HORIZONTAL);
  }

  /**
   * The vertical tail.
   *
   * @return the first tail of that role, empty if there is none
   */
  public Optional<Tail> verticalTail() {
    return tail(Tail.Role.VERTICAL);
  }

  /**
   * The V-tail.
   *
   * @return the first tail of that role, empty if there is none
   */
  public Optional<Tail> vTail() {
    return tail(Tail.Role.V);
  }

  /**
   * The tail that works in pitch: the horizontal tail, or else the V-tail.
   *
   * @return empty for a tailless aircraft
   */
  public Optional<Tail> pitchTail() {
    return horizontalTail().or(this::vTail);
  }

  /**
   * The tails that work in yaw: every fin, and a V-tail.
   *
   * @return in the order of the tails, none for a flying wing without fins
   */
  public List<Tail> yawTails() {
    return tails.stream().filter(t -> t.role() != Tail.Role.HORIZONTAL).toList();
  }

  private Optional<Tail> tail(Tail.Role role) {
    return tails.stream().filter(t -> t.role() == role).findFirst();
  }

  @Override
  public String toString() {
    return "airframe " + wing.planform().span() + " span, " + fuselage.length() + " long, " + tails.size() + (tails.size() == 1 ? " tail" : " tails");
  }
}
