// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aircraft;

import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.mass.Inertia;
import io.github.wingwright.core.mass.MassStatement;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.WingLoading;
import java.io.Serializable;
import java.util.Objects;

/**
 * An aircraft: a shape with its masses.
 *
 * @param airframe its shape
 * @param masses what it weighs and where, in the axes of the airframe
 */
public record Aircraft(Airframe airframe, MassStatement masses) implements Serializable {

  /** Refuses null. */
  public Aircraft {
    Objects.requireNonNull(airframe, "airframe");
    Objects.requireNonNull(masses, "masses");
  }

  /**
   * Its mass.
   *
   * @return m
   */
  public Mass mass() {
    return masses.mass();
  }

  /**
   * Its centre of gravity.
   *
   * @return the place, in the axes of the airframe
   */
  public Placement centreOfGravity() {
    return masses.centreOfGravity();
  }

  /**
   * Its moments of inertia about the centre of gravity.
   *
   * @return the inertia
   */
  public Inertia inertia() {
    return masses.inertia();
  }

  /**
   * Its wing loading.
   *
   * @return mass over reference area of the wing
   */
  public WingLoading wingLoading() {
    return WingLoading.of(mass(), airframe.wing().planform().area());
  }

  /**
   * Where the centre of gravity lies on the mean aerodynamic chord of the wing.
   *
   * @return distance behind the leading edge of that chord, over the chord: 0.35 is at 35 %
   */
  public double centreOfGravityOnMeanChord() {
    return centreOfGravity()
        .x()
        .minus(airframe.wing().meanAerodynamicChordX())
        .dividedBy(airframe.wing().planform().meanAerodynamicChord());
  }

  /**
   * The same shape with other masses.
   *
   * @param other what it weighs and where
   * @return the aircraft
   */
  public Aircraft withMasses(MassStatement other) {
    return new Aircraft(airframe, other);
  }

  /**
   * The same masses in another shape.
   *
   * @param other its shape
   * @return the aircraft
   */
  public Aircraft withAirframe(Airframe other) {
    return new Aircraft(other, masses);
  }

  @Override
  public String toString() {
    return "aircraft " + mass() + ", " + airframe.wing().planform().span() + " span, " + wingLoading();
  }
}
