// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.mass;

import io.github.wingwright.core.basis.QuantityBand;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import java.io.Serializable;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Something that has a mass and a place: a part, a payload, ballast.
 *
 * <pre>{@code
 * MassItem battery =
 *     MassItem.of("battery", grams(8.5), Placement.at(millimetres(40), Length.ZERO)).withMassBetween(grams(8), grams(9));
 * }</pre>
 */
public final class MassItem implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String name;
  private final QuantityBand<Mass> mass;
  private final Placement centreOfGravity;
  private final Inertia ownInertia;
  private final Source source;

  private MassItem(String name, QuantityBand<Mass> mass, Placement centreOfGravity, Inertia ownInertia, Source source) {
    Objects.requireNonNull(centreOfGravity, "centre of gravity");
    Objects.requireNonNull(ownInertia, "own inertia");
    Objects.requireNonNull(source, "source");
    this.name = Door.said(name, "name of a mass item");
    Door.notNegative(mass.low(), "mass of " + name);
    Door.finite(centreOfGravity.x(), "x of " + name);
    Door.finite(centreOfGravity.y(), "y of " + name);
    Door.finite(centreOfGravity.z(), "z of " + name);
    this.mass = mass;
    this.centreOfGravity = centreOfGravity;
    this.ownInertia = ownInertia;
    this.source = source;
  }

  /**
   * An item whose mass is known, as a point.
   *
   * @param name what it is
   * @param mass its mass, not negative
   * @param centreOfGravity where its centre of gravity sits
   * @return the item
   */
  public static MassItem of(String name, Mass mass, Placement centreOfGravity) {
    return of(name, QuantityBand.exactly(Door.notNegative(mass, "mass of " + name)), centreOfGravity);
  }

  /**
   * An item whose mass is known within a range, as a point.
   *
   * @param name what it is
   * @param mass its mass, not negative
   * @param centreOfGravity where its centre of gravity sits
   * @return the item
   */
  public static MassItem of(String name, QuantityBand<Mass> mass, Placement centreOfGravity) {
    Objects.requireNonNull(mass, "mass");
    return new MassItem(name, mass, centreOfGravity, Inertia.NONE, Source.BRIEF);
  }

  /**
   * The same item with a range of its mass around the likely one.
   *
   * @param low least mass, not negative
   * @param high greatest mass
   * @return the item
   */
  public MassItem withMassBetween(Mass low, Mass high) {
    Objects.requireNonNull(low, "low");
    Objects.requireNonNull(high, "high");
    return new MassItem(name, new QuantityBand<>(low, mass.likely(), high), centreOfGravity, ownInertia, source);
  }

  /**
   * The same item somewhere else.
   *
   * @param place where its centre of gravity sits
   * @return the item
   */
  public MassItem placedAt(Placement place) {
    return new MassItem(name, mass, place, ownInertia, source);
  }

  /**
   * The same item moved along the fuselage.
   *
   * @param distance how far, positive aft
   * @return the item
   */
  public MassItem movedAft(Length distance) {
    Objects.requireNonNull(distance, "distance");
    return placedAt(centreOfGravity.withX(centreOfGravity.x().plus(distance)));
  }

  /**
   * The same item with an extent: its moments of inertia about its own centre of gravity.
   *
   * @param inertia for example {@link Inertia#ofBox}
   * @return the item
   */
  public MassItem withOwnInertia(Inertia inertia) {
    return new MassItem(name, mass, centreOfGravity, inertia, source);
  }

  /**
   * The same item with the origin of its mass.
   *
   * @param from who says so: the brief, unless stated
   * @return the item
   */
  public MassItem withSource(Source from) {
    return new MassItem(name, mass, centreOfGravity, ownInertia, from);
  }

  /**
   * What it is.
   *
   * @return the name
   */
  public String name() {
    return name;
  }

  /**
   * The mass to reckon with.
   *
   * @return the likely mass
   */
  public Mass mass() {
    return mass.likely();
  }

  /**
   * The mass with its range.
   *
   * @return the band
   */
  public QuantityBand<Mass> massBand() {
    return mass;
  }

  /**
   * Where its centre of gravity sits.
   *
   * @return the place
   */
  public Placement centreOfGravity() {
    return centreOfGravity;
  }

  /**
   * Its moments of inertia about its own centre of gravity.
   *
   * @return the inertia, none for a point
   */
  public Inertia ownInertia() {
    return ownInertia;
  }

  /**
   * Where its mass comes from.
   *
   * @return the source
   */
  public Source source() {
    return source;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof MassItem that
        && name.equals(that.name)
        && mass.equals(that.mass)
        && centreOfGravity.equals(that.centreOfGravity)
        && ownInertia.equals(that.ownInertia)
        && source.equals(that.source);
  }

  @Override
  public int hashCode() {
    return name.hashCode() * 31 + mass.hashCode();
  }

  @Override
  public String toString() {
    return name + " " + mass() + " at x " + centreOfGravity.x();
  }
}
