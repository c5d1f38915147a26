// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

import io.github.wingwright.core.atmosphere.FlightCondition;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Guideline;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Door;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * The drag that does not come with lift, part by part.
 *
 * <pre>{@code
 * F = C_f·FF·Q·S_wet        C_D0 = (1 + k_lp)·Σ F / S
 * }</pre>
 *
 * <p>F is the drag area D/q of a part. An immutable value: each {@code with} returns a new one.
 *
 * <pre>{@code
 * DragBuildUp drag = DragBuildUp.about(wing.planform().area())
 *     .with(
 *         DragComponent.body("fuselage", fuselage, FrictionModel.laminar(), BodyFormFactor.HOERNER_LAMINAR),
 *         DragComponent.surface("tail", tail, FrictionModel.laminar(), SurfaceFormFactor.HOERNER).withInterference(1.05));
 * drag.coefficient(6.0, 1.5e-5, 0.0);                        // quick: no objects
 * drag.at(FlightCondition.of(air, metresPerSecond(6)));      // with workings and findings
 * }</pre>
 */
public final class DragBuildUp implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Drag area from friction. */
  public static final Formula FRICTION_DRAG_AREA =
      Formula.named("drag area by friction and form")
          .gives("F", Area.SQUARE_METRE)
          .as("C_f·FF·Q·S_wet")
          .where("C_f", "skin friction coefficient", 1e-4, 0.05)
          .where("FF", "form factor", 0.9, 5)
          .where("Q", "interference factor", 0.9, 3)
          .where("S_wet", "wetted area", Area.SQUARE_METRE, 1e-6, 2000)
          .from(Sources.raymer("eq. 12.24"))
          .computedBy(DragBuildUp::frictionDragArea);

  /** A form factor whose excess over friction is raised. */
  public static final Formula RAISED_FORM_FACTOR =
      Formula.named("form factor with its excess raised")
          .gives("FF")
          .as("1 + k·(FF_0 − 1)")
          .where("k", "factor of the excess", 1, 2)
          .where("FF_0", "form factor of the clean shape", 0.9, 5)
          .from(Sources.raymer("p. 422: hinged tail +10 %, square-sided body +30 to 40 %, hull +50 %"))
          .computedBy(DragBuildUp::raisedFormFactor);

  /** Coefficient from the sum of drag areas. */
  public static final Formula COEFFICIENT =
      Formula.named("drag coefficient without lift")
          .gives("C_D0")
          .as("(1 + k_lp)·F / S")
          .where("F", "sum of drag areas", Area.SQUARE_METRE, 1e-7, 100)
          .where("S", "reference area", Area.SQUARE_METRE, 1e-4, 1000)
          .where("k_lp", "leakage and protuberances", 0, 0.3)
          .from(Sources.raymer("eq. 12.24"))
          .computedBy(DragBuildUp::coefficientOf);

  /** Speeds below which bodies and wings drag by friction and form alone. */
  private static final Guideline SUBSONIC =
      Guideline.ofNumber(
          "Mach number of a drag build-up",
          0,
          0.8,
          "friction times form factor",
          "Drag of compressibility is not counted; near the speed of sound it rules.",
          Source.COMMON_PRACTICE);

  /** What tables hold for leakage, gaps and small protuberances: jet transports to propeller aircraft. */
  private static final Guideline LEAKAGE =
      Guideline.ofNumber(
          "part for leakage and protuberances",
          0.02,
          0.10,
          "complete aircraft",
          "2 to 5 % are counted on jet transports, 5 to 10 % on propeller aircraft; another part needs a reason.",
          Sources.raymer("sec. 12.6.8"));

  private final double referenceArea;
  private final double leakage;
  private final List<DragComponent> components;

  private DragBuildUp(double referenceArea, double leakage, List<DragComponent> components) {
    this.referenceArea = referenceArea;
    this.leakage = leakage;
    this.components = List.copyOf(components);
  }

  /**
   * An empty build-up.
   *
   * @param referenceArea area that the coefficient refers to, positive
   * @return a build-up without components
   */
  public static DragBuildUp about(Area referenceArea) {
    return new DragBuildUp(Door.positive(referenceArea, "reference area").si(), 0.0, List.of());
  }

  /**
   * Adds components.
   *
   * @param added the components; none adds nothing
   * @return the longer build-up
   */
  public DragBuildUp with(DragComponent... added) {
    Objects.requireNonNull(added, "components");
    List<DragComponent> longer = new ArrayList<>(components);
    for (DragComponent component : added) {
      longer.add(Objects.requireNonNull(component, "component"));
    }
    return new DragBuildUp(referenceArea, leakage, longer);
  }

  /**
   * Adds a part of the whole for leakage, gaps and small protuberances.
   *
   * @param part part of the sum, 0 to 0.3; 0.05 to 0.10 for propeller aircraft, 0.02 to 0.05 for jet transports
   * @return the build-up
   */
  public DragBuildUp withLeakageAndProtuberances(double part) {
    return new DragBuildUp(referenceArea, Door.within(part, 0.0, 0.3, "part for leakage"), components);
  }

  /**
   * The components in the order in which they were added.
   *
   * @return the components
   */
  public List<DragComponent> components() {
    return components;
  }

  /**
   * Reference area.
   *
   * @return S
   */
  public Area referenceArea() {
    return Area.squareMetres(referenceArea);
  }

  /**
   * The coefficient, without allocation.
   *
   * @param speed airspeed [m/s], positive
   * @param kinematicViscosity ν [m²/s], positive
   * @param mach Mach number, not negative
   * @return C_D0
   */
  public double coefficient(double speed, double kinematicViscosity, double mach) {
    double sum = 0.0;
    for (int i = 0; i < components.size(); i++) {
      sum += components.get(i).dragArea(speed, kinematicViscosity, mach);
    }
    return coefficientOf(sum, referenceArea, leakage);
  }

  /**
   * The build-up in flight, with workings and findings.
   *
   * @param flight air and airspeed, not zero
   * @return the breakdown
   */
  public DragBreakdown at(FlightCondition flight) {
    if (components.isEmpty()) {
      throw new IllegalStateException("a drag build-up needs at least one component, has none");
    }
    Door.positive(flight.airspeed(), "airspeed");
    return DragBreakdown.of(this, flight);
  }

  /** What to know about the build-up as a whole. */
  List<Finding> findings(double mach) {
    List<Finding> findings = new ArrayList<>();
    SUBSONIC.check(mach).ifPresent(findings::add);
    if (leakage > 0.0) {
      LEAKAGE.check(leakage, Severity.NOTE).ifPresent(findings::add);
    }
    return findings;
  }

  /**
   * The coefficient as a line of the workings, for a flight whose speed and air are lines themselves.
   *
   * @param speed step of the airspeed
   * @param kinematicViscosity step of ν
   * @param mach step of the Mach number
   * @return the step of C_D0, equal to {@link #coefficient} to the bit
   */
  public Step step(Step speed, Step kinematicViscosity, Step mach) {
    List<Step> areas = new ArrayList<>();
    components.forEach(c -> areas.add(c.step(speed, kinematicViscosity, mach)));
    return Step.of(
        COEFFICIENT,
        Step.sum("sum of drag areas", "F", areas),
        Step.given("reference area", "S", referenceArea(), Source.taken("geometry of the wing")),
        Step.given("leakage and protuberances", "k_lp", leakage, Source.library("choice of the build-up")));
  }

  /**
   * Drag area from friction.
   *
   * <pre>{@code F = C_f·FF·Q·S_wet}</pre>
   *
   * <p>Example: C_f = 0.004, FF = 1.2, Q = 1.05, S_wet = 0.05 m² gives 2.52 cm².
   *
   * @param friction C_f
   * @param formFactor FF
   * @param interference Q
   * @param wettedArea S_wet [m²]
   * @return F [m²]
   */
  public static double frictionDragArea(double friction, double formFactor, double interference, double wettedArea) {
    return friction * formFactor * interference * wettedArea;
  }

  /**
   * A form factor whose excess over friction alone is raised: by a tenth for a tail with hinges and their gaps, by 30 to 40 %
   * for a square-sided body.
   *
   * <pre>{@code FF = 1 + k·(FF₀ − 1)}</pre>
   *
   * <p>Example: k = 1.1, FF₀ = 1.2 gives 1.22.
   *
   * @param excess factor k of the excess, 1 or more
   * @param clean form factor FF₀ of the clean shape
   * @return FF
   */
  public static double raisedFormFactor(double excess, double clean) {
    return 1.0 + excess * (clean - 1.0);
  }

  /** C_D0 = (1 + k_lp)·F/S. */
  static double coefficientOf(double dragArea, double referenceArea, double leakage) {
    return (1.0 + leakage) * dragArea / referenceArea;
  }

  @Override
  public String toString() {
    return "drag build-up of " + components.size() + " components about " + referenceArea();
  }
}
