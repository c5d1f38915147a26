// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.mass;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Guideline;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.ArealDensity;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Mass;
import java.util.Objects;
import java.util.Optional;

/**
 * A first empty mass of an aircraft that carries people, part by part: so many kilograms for each square metre of its exposed
 * planform or wetted surface, so much of its take-off mass for gear and equipment.
 *
 * <pre>{@code
 * wing, tails: m = w·S_exposed      fuselage: m = w·S_wet      gear, all else: m = f·m_TO      engine: m = f·m_engine
 * }</pre>
 *
 * <p>Fits to the masses of full-size aircraft: on a model of a few grams they mislead by factors, and {@link #validity} says so.
 * A printed part weighs what {@link PrintedShell} says of its geometry.
 *
 * <pre>{@code
 * ArealMasses.GENERAL_AVIATION.wing(squareMetres(15))        // 180 kg
 * }</pre>
 *
 * <p>Source: D. P. Raymer, Aircraft Design: A Conceptual Approach, 6th ed. 2018, table 15.2, in kilograms and square metres (read
 * in study notes, not in the book). Surfaces balance at about 40 % of their mean chord, fuselage and equipment at 40 to 50 % of
 * the length, 15 % of the gear at the nose wheel (there as well).
 */
public enum ArealMasses {
  /** Fighters. */
  FIGHTER(44, 20, 26, 23, 0.033, 1.3, 0.17),
  /** Transports and bombers. */
  TRANSPORT_OR_BOMBER(49, 27, 27, 24, 0.043, 1.3, 0.17),
  /** Light aeroplanes. */
  GENERAL_AVIATION(12, 10, 10, 7, 0.057, 1.4, 0.10);

  private static final Source TABLE =
      Source.published("D. P. Raymer, Aircraft Design, 6th ed. 2018, read in study notes, not in the book", "table 15.2");

  /** Where a surface balances, as a part of its mean aerodynamic chord. */
  public static final double SURFACE_CENTRE = 0.4;

  /** Where a fuselage and what is in it balance, as a part of its length. */
  public static final Interval BODY_CENTRE = Interval.between(0.4, 0.5);

  /** Mass of a part by its area. */
  public static final Formula MASS =
      Formula.named("mass of a part by its area")
          .gives("m", Mass.KILOGRAM)
          .as("w·S")
          .where("w", "mass over area", ArealDensity.KILOGRAM_PER_SQUARE_METRE, 0, 100)
          .where("S", "exposed planform or wetted surface", Area.SQUARE_METRE, 0, 2000)
          .from(TABLE)
          .computedBy(ArealMasses::mass);

  /** The aircraft that the table was made from. */
  private static final Guideline TAKE_OFF_MASS =
      new Guideline(
          "take-off mass",
          Interval.atLeast(400.0),
          Mass.KILOGRAM,
          "masses by area of aircraft that carry people",
          "Reckon the parts from their geometry.",
          Source.library("lightest aircraft for two"));

  private final double wing;
  private final double horizontalTail;
  private final double verticalTail;
  private final double fuselage;
  private final double landingGear;
  private final double installation;
  private final double allElse;

  ArealMasses(
      double wing,
      double horizontalTail,
      double verticalTail,
      double fuselage,
      double landingGear,
      double installation,
      double allElse) {
    this.wing = wing;
    this.horizontalTail = horizontalTail;
    this.verticalTail = verticalTail;
    this.fuselage = fuselage;
    this.landingGear = landingGear;
    this.installation = installation;
    this.allElse = allElse;
  }

  /**
   * Mass of a part by its area.
   *
   * <pre>{@code m = w·S}</pre>
   *
   * @param arealMass mass over area w [kg/m²]
   * @param area exposed planform or wetted surface S [m²]
   * @return m [kg]; 12 kg/m² on 15 m² are 180 kg
   */
  public static double mass(double arealMass, double area) {
    return arealMass * area;
  }

  /**
   * Mass of the wing.
   *
   * @param exposed its planform outside the fuselage, not negative
   * @return its mass
   */
  public Mass wing(Area exposed) {
    return by(wing, exposed);
  }

  /**
   * Mass of the horizontal tail.
   *
   * @param exposed its planform outside the fuselage, not negative
   * @return its mass
   */
  public Mass horizontalTail(Area exposed) {
    return by(horizontalTail, exposed);
  }

  /**
   * Mass of the vertical tail.
   *
   * @param exposed its planform outside the fuselage, not negative
   * @return its mass
   */
  public Mass verticalTail(Area exposed) {
    return by(verticalTail, exposed);
  }

  /**
   * Mass of the fuselage.
   *
   * @param wetted its wetted surface, not negative
   * @return its mass
   */
  public Mass fuselage(Area wetted) {
    return by(fuselage, wetted);
  }

  private static Mass by(double arealMass, Area area) {
    return Mass.kilograms(mass(arealMass, Door.notNegative(area, "area of the part").si()));
  }

  /**
   * Mass of the landing gear, which can be drawn in.
   *
   * @param takeOff take-off mass, positive
   * @return its mass; a fixed gear is lighter by 1.4 % of the take-off mass
   */
  public Mass landingGear(Mass takeOff) {
    return Door.positive(takeOff, "take-off mass").times(landingGear);
  }

  /**
   * Mass of the engine with what it is installed with.
   *
   * @param bare the engine alone, not negative
   * @return its installed mass
   */
  public Mass installedEngine(Mass bare) {
    return Door.notNegative(bare, "mass of the engine").times(installation);
  }

  /**
   * Mass of all else that stays on board empty: systems, furnishings.
   *
   * @param takeOff take-off mass, positive
   * @return its mass
   */
  public Mass allElse(Mass takeOff) {
    return Door.positive(takeOff, "take-off mass").times(allElse);
  }

  /**
   * How the mass of a wing comes about.
   *
   * @param exposed a step that gives its planform outside the fuselage
   * @return the step, equal to {@link #wing(Area)} bit for bit
   */
  public Step wingStep(Step exposed) {
    Objects.requireNonNull(exposed, "exposed");
    return step("mass of the wing", wing, exposed);
  }

  /**
   * How the mass of a fuselage comes about.
   *
   * @param wetted a step that gives its wetted surface
   * @return the step, equal to {@link #fuselage(Area)} bit for bit
   */
  public Step fuselageStep(Step wetted) {
    Objects.requireNonNull(wetted, "wetted");
    return step("mass of the fuselage", fuselage, wetted);
  }

  private static Step step(String name, double arealMass, Step area) {
    ArealDensity w = ArealDensity.kilogramsPerSquareMetre(arealMass);
    return Step.of(name, "m", MASS, Step.given("mass over area", "w", w, TABLE), area);
  }

  /**
   * A part as an item of a mass statement.
   *
   * @param name what it is
   * @param mass its mass, from one of the methods above
   * @param centreOfGravity where it balances
   * @return the item, with the table as its source
   */
  public static MassItem item(String name, Mass mass, Placement centreOfGravity) {
    return MassItem.of(name, mass, centreOfGravity).withSource(TABLE);
  }

  /**
   * Whether such fits hold for an aircraft.
   *
   * @param takeOff its take-off mass, positive
   * @return a caution for what is lighter than aircraft that carry people
   */
  public static Optional<Finding> validity(Mass takeOff) {
    return TAKE_OFF_MASS.check(Door.positive(takeOff, "take-off mass").si());
  }
}
