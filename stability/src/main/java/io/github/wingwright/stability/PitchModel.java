// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.core.aerodynamics.SectionPolar;
import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import java.util.Locale;
import java.util.Objects;
import java.util.function.Consumer;

/**
 * Lift and pitching moment of an airframe as straight lines over the angle of attack: what the neutral point and trim are
 * made of.
 *
 * <pre>{@code
 * NeutralPoint np = PitchModel.of(airframe).forClass(HAND_LAUNCHED_GLIDER).neutralPoint();
 * Trim trim = PitchModel.of(airframe)
 *     .withWingSection(wingPolar, 35_000)
 *     .withTailSection(tailPolar, 25_000)
 *     .trim(centreOfGravity, 0.6);
 * }</pre>
 *
 * <p>It is a specification: each {@code with…} gives a new one. Without section data the sections lift as in potential
 * flow, 2π per radian; trim needs section data, because a zero-lift angle cannot be guessed.
 *
 * <p>The layout is read from the airframe. The horizontal tail may stand ahead of the wing, as a foreplane: then it feels
 * the wing's upwash, and the wing its downwash ({@link Foreplane}). It may stand on the fin: then its height takes it out of
 * the downwash, and its air is clean ({@link TailArrangement#T_TAIL}). A V-tail works in pitch with cos²Γ of its own slope
 * ({@link VTail}). Without any of them the model is that of wing and fuselage.
 */
public final class PitchModel {
  final PitchChoices choices;

  private PitchModel(PitchChoices choices) {
    this.choices = choices;
  }

  /**
   * The model of an airframe, with the usual methods: handbook downwash, Munk's fuselage, the tail efficiency of a
   * hand-launched glider.
   *
   * @param airframe the airframe
   * @return the model
   */
  public static PitchModel of(Airframe airframe) {
    Objects.requireNonNull(airframe, "airframe");
    return new PitchModel(new PitchChoices(airframe));
  }

  private PitchModel with(Consumer<PitchChoices> change) {
    PitchChoices copy = new PitchChoices(choices);
    change.accept(copy);
    return new PitchModel(copy);
  }

  /**
   * For a class of aircraft: its tail efficiency, and the ranges that results are held against.
   *
   * @param other the class
   * @return the model for it
   */
  public PitchModel forClass(AircraftClass other) {
    Objects.requireNonNull(other, "other");
    return with(
        c -> {
          c.aircraftClass = other;
          c.givenEfficiency = null;
        });
  }

  /**
   * With another airframe and all else the same.
   *
   * @param other the airframe
   * @return the model of it
   */
  public PitchModel withAirframe(Airframe other) {
    Objects.requireNonNull(other, "other");
    return with(c -> c.airframe = other);
  }

  /**
   * With another way to reckon the downwash.
   *
   * @param method the method
   * @return the model with it
   */
  public PitchModel withDownwash(DownwashMethod method) {
    Objects.requireNonNull(method, "method");
    return with(c -> c.downwashMethod = method);
  }

  /**
   * With another way to reckon the moment of the fuselage.
   *
   * @param method the method
   * @return the model with it
   */
  public PitchModel withFuselageMoment(FuselageMethod method) {
    Objects.requireNonNull(method, "method");
    return with(c -> c.fuselageMethod = method);
  }

  /**
   * With another tail efficiency.
   *
   * @param efficiency dynamic pressure at the tail over that of flight, 0.3 to 1.2
   * @return the model with it
   */
  public PitchModel withTailEfficiency(double efficiency) {
    Door.within(efficiency, 0.3, 1.2, "tail efficiency");
    return with(c -> c.givenEfficiency = efficiency);
  }

  /**
   * Stick free: with an elevator that floats.
   *
   * @param factor how much of the tail's slope is left, 0 to 1.5, from {@link NeutralPoint#floatingFactor}; 1 is stick
   *     fixed
   * @return the model with it
   */
  public PitchModel withFloatingFactor(double factor) {
    Door.within(factor, 0.0, 1.5, "floating factor");
    return with(c -> c.floatingFactor = factor);
  }

  /**
   * With a nacelle, a pod or an external load: one more body that destabilises by Munk's couple. Of two, call it twice.
   *
   * @param nacelle its shape and size
   * @return the model with it
   */
  public PitchModel withNacelle(Fuselage nacelle) {
    Objects.requireNonNull(nacelle, "nacelle");
    return with(c -> c.nacelles.add(nacelle));
  }

  /**
   * With a propeller that turns ahead of the centre of gravity: its side force in pitch moves the neutral point forward by
   * 2 % of its place for each mean aerodynamic chord of distance. A rule of thumb; {@link #withPropeller} has the terms.
   *
   * @param distance from the centre of gravity to the propeller, positive ahead
   * @return the model with it
   */
  public PitchModel withPropellerAhead(Length distance) {
    Door.finite(distance, "distance of the propeller ahead of the centre of gravity");
    return with(c -> c.propellerAhead = distance);
  }

  /**
   * With a running propeller: the offset of its thrust line, its normal force, and its slipstream on the tail, each named in
   * the neutral point. The moment of the thrust enters trim as well.
   *
   * @param propeller the propeller
   * @param centreOfGravityHeight height of the centre of gravity above the fuselage reference line
   * @return the model with it, instead of one given before
   */
  public PitchModel withPropeller(Propeller propeller, Length centreOfGravityHeight) {
    Objects.requireNonNull(propeller, "propeller");
    Door.finite(centreOfGravityHeight, "height of the centre of gravity");
    return with(
        c -> {
          c.propeller = propeller;
          c.centreOfGravityHeight = centreOfGravityHeight;
        });
  }

  /**
   * With data of the wing's section.
   *
   * @param polar the data
   * @param reynolds Reynolds number on the mean aerodynamic chord, positive
   * @return the model with it
   */
  public PitchModel withWingSection(SectionPolar polar, double reynolds) {
    Objects.requireNonNull(polar, "polar");
    return with(c -> c.wingSection = new PitchChoices.Section(polar, reynolds));
  }

  /**
   * With data of the tail's section.
   *
   * @param polar the data
   * @param reynolds Reynolds number on the tail's mean aerodynamic chord, positive
   * @return the model with it
   */
  public PitchModel withTailSection(SectionPolar polar, double reynolds) {
    Objects.requireNonNull(polar, "polar");
    return with(c -> c.tailSection = new PitchChoices.Section(polar, reynolds));
  }

  /**
   * The airframe.
   *
   * @return the airframe
   */
  public Airframe airframe() {
    return choices.airframe;
  }

  /**
   * The class of aircraft.
   *
   * @return the class whose ranges apply
   */
  public AircraftClass aircraftClass() {
    return choices.aircraftClass;
  }

  /**
   * The neutral point: stick fixed, or stick free if a floating factor was given.
   *
   * @return the neutral point with the contribution of each part
   */
  public NeutralPoint neutralPoint() {
    return terms().neutralPoint();
  }

  /**
   * The static margin.
   *
   * @param centreOfGravity aft of the nose tip
   * @return the margin with its findings
   */
  public StaticMargin staticMargin(Length centreOfGravity) {
    Objects.requireNonNull(centreOfGravity, "centre of gravity");
    return StaticMargin.of(neutralPoint(), centreOfGravity, aircraftClass());
  }

  /**
   * The downwash at the horizontal tail, by every method.
   *
   * @return the downwash
   * @throws IllegalStateException if there is no horizontal tail
   */
  public Downwash downwash() {
    if (choices.airframe.pitchTail().isEmpty()) {
      throw new IllegalStateException("downwash needs a horizontal tail, the airframe has none: without one use slopes() and TaillessTrim");
    }
    Downwash methods = terms().methods;
    if (methods == null) {
      throw new IllegalStateException("downwash needs a tail behind the wing, the airframe has a foreplane: use slopes() and Foreplane");
    }
    return methods;
  }

  /**
   * The slopes of wing, tail and bodies.
   *
   * @return the slopes, each with its workings
   */
  public PitchSlopes slopes() {
    return new PitchSlopes(terms());
  }

  /**
   * How tail and wing must be set for trim.
   *
   * @param centreOfGravity aft of the nose tip
   * @param liftCoefficient lift coefficient to trim at
   * @return the trim, with the decalage as a range
   * @throws IllegalStateException if there is no horizontal tail, or section data are missing
   */
  public Trim trim(Length centreOfGravity, double liftCoefficient) {
    return Trim.of(this, centreOfGravity, liftCoefficient);
  }

  /** The numbers of the model, as steps. */
  PitchTerms terms() {
    return new PitchTerms(choices);
  }

  @Override
  public String toString() {
    return String.format(
        Locale.ROOT, "pitch model, %s, η %.2f", choices.downwashMethod.words(), choices.tailEfficiency());
  }
}
