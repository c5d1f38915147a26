// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.flighttest;

import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.stability.design.Design;
import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What to change after a flight, and by how much: either of the amounts alone does it.
 */
public final class TrimAdvice implements Serializable {
  private static final long serialVersionUID = 1L;

  private final Behaviour behaviour;
  private final @Nullable Mass noseMass;
  private final @Nullable Angle tailAngle;
  private final @Nullable Angle finAngle;
  private final String words;

  TrimAdvice(
      Behaviour behaviour, @Nullable Mass noseMass, @Nullable Angle tailAngle, @Nullable Angle finAngle, String words) {
    this.behaviour = behaviour;
    this.noseMass = noseMass;
    this.tailAngle = tailAngle;
    this.finAngle = finAngle;
    this.words = words;
  }

  /**
   * What to do about a behaviour of a design that was built as it was designed, before anything is measured.
   *
   * @param design the design
   * @param behaviour what is seen
   * @return the advice, with the amounts for a usual case
   */
  public static TrimAdvice of(Design design, Behaviour behaviour) {
    Objects.requireNonNull(design, "design");
    Objects.requireNonNull(behaviour, "behaviour");
    double place = design.aircraft().centreOfGravity().x().si();
    FlightTest unmeasured = FlightTest.named("to come", new Measured(1.0, 0.0), new Measured(1.0, 0.0));
    return new Trimming(design, place, design.aircraft().mass().si()).advice(behaviour, unmeasured, Optional.empty());
  }

  /**
   * What was seen.
   *
   * @return the behaviour that this is to end
   */
  public Behaviour behaviour() {
    return behaviour;
  }

  /**
   * Mass to add to the nose.
   *
   * @return the mass, negative if it is to be taken out; empty if the nose is not the place
   */
  public Optional<Mass> noseMass() {
    return Optional.ofNullable(noseMass);
  }

  /**
   * By how much to turn the tailplane.
   *
   * @return the angle, positive for its leading edge up, which puts the nose of the glider down
   */
  public Optional<Angle> tailAngle() {
    return Optional.ofNullable(tailAngle);
  }

  /**
   * By how much to turn the fin.
   *
   * @return the angle, positive for its trailing edge to the right, which turns the glider to the right
   */
  public Optional<Angle> finAngle() {
    return Optional.ofNullable(finAngle);
  }

  /**
   * The advice in words.
   *
   * @return a sentence or two with the amounts
   */
  public String words() {
    return words;
  }

  @Override
  public String toString() {
    return words.length() <= 75 ? words : words.substring(0, 74) + "…";
  }
}
