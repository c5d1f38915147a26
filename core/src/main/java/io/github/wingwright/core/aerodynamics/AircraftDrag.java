// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

import io.github.wingwright.core.atmosphere.Air;
import io.github.wingwright.core.basis.Band;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * The drag of a whole aircraft at any lift and speed: the wing's section at its own Reynolds number, induced drag, and the
 * rest by build-up.
 *
 * <pre>{@code
 * C_D = c_d(C_L, Re) + (1 + δ)·C_L²/(π·A) + C_D0,rest(V)        Re = V·c̄/ν
 * }</pre>
 *
 * <p>The section works at the wing's lift coefficient, as on a wing of even loading. Coefficients are on the wing's area;
 * Mach effects are left out (speeds of models). The quick methods take doubles and allocate nothing.
 */
public final class AircraftDrag implements DragLaw, Serializable {
  private static final long serialVersionUID = 1L;

  /** Drag of the whole aircraft. */
  public static final Formula TOTAL =
      Formula.named("drag coefficient")
          .gives("C_D")
          .as("c_d + (C_Di + C_D0)")
          .where("c_d", "profile drag of the wing's section", 0.003, 0.3)
          .where("C_Di", "induced drag", 0, 1)
          .where("C_D0", "drag of everything else, on the wing's area", 0, 0.5)
          .from(Source.DEFINITION)
          .computedBy(AircraftDrag::total);

  private final SectionPolar section;
  private final double area;
  private final double chord;
  private final double aspectRatio;
  private final double inducedLoss;
  private final DragBuildUp rest;

  private AircraftDrag(
      SectionPolar section, double area, double chord, double aspectRatio, double inducedLoss, DragBuildUp rest) {
    this.section = section;
    this.area = area;
    this.chord = chord;
    this.aspectRatio = aspectRatio;
    this.inducedLoss = inducedLoss;
    this.rest = rest;
  }

  /**
   * The drag of an aircraft.
   *
   * @param wing planform of the wing
   * @param section polar of its section
   * @param inducedLoss δ, the loss against elliptic loading, from the lifting line; 0 to 0.5
   * @param rest everything but the wing, about the wing's area
   * @return the drag
   * @throws IllegalArgumentException if the build-up refers to another area than the wing's
   */
  public static AircraftDrag of(Planform wing, SectionPolar section, double inducedLoss, DragBuildUp rest) {
    Objects.requireNonNull(wing, "wing");
    Objects.requireNonNull(section, "section");
    Objects.requireNonNull(rest, "rest");
    double area = wing.area().si();
    if (Math.abs(rest.referenceArea().si() - area) > 1e-9 * area) {
      throw new IllegalArgumentException(
          "drag build-up must refer to the area of the wing, " + wing.area() + ", was about " + rest.referenceArea());
    }
    Door.within(inducedLoss, 0.0, 0.5, "loss against elliptic loading");
    return new AircraftDrag(
        section, area, wing.meanAerodynamicChord().si(), wing.aspectRatio(), inducedLoss, rest);
  }

  /**
   * The same aircraft with another section.
   *
   * @param other polar of the section
   * @return the drag
   */
  public AircraftDrag withSection(SectionPolar other) {
    Objects.requireNonNull(other, "section");
    return new AircraftDrag(other, area, chord, aspectRatio, inducedLoss, rest);
  }

  @Override
  public double likelyCoefficient(double lift, double speed, double kinematicViscosity) {
    return total(
        section.likelyProfileDrag(lift, reynolds(speed, kinematicViscosity)),
        InducedDrag.coefficient(lift, inducedLoss, aspectRatio),
        rest.coefficient(speed, kinematicViscosity, 0.0));
  }

  /** C_D = c_d + (C_Di + C_D0). */
  static double total(double profile, double induced, double others) {
    return profile + (induced + others);
  }

  /**
   * The drag coefficient with the band of its section.
   *
   * @param lift lift coefficient C_L
   * @param speed airspeed [m/s], positive
   * @param kinematicViscosity ν [m²/s], positive
   * @return C_D
   */
  public Band coefficient(double lift, double speed, double kinematicViscosity) {
    Band profile = section.profileDrag(lift, reynolds(speed, kinematicViscosity));
    double others =
        InducedDrag.coefficient(lift, inducedLoss, aspectRatio) + rest.coefficient(speed, kinematicViscosity, 0.0);
    return profile.plus(Band.exactly(others));
  }

  /**
   * Where the drag goes: the wing's section, induced drag, and each component.
   *
   * @param lift lift coefficient C_L
   * @param speed airspeed [m/s], positive
   * @param kinematicViscosity ν [m²/s], positive
   * @return the parts with their shares of the whole likely drag, which add up to 1
   */
  public List<DragBreakdown.Part> shares(double lift, double speed, double kinematicViscosity) {
    double whole = likelyCoefficient(lift, speed, kinematicViscosity);
    List<DragBreakdown.Part> parts = new ArrayList<>();
    double profile = section.likelyProfileDrag(lift, reynolds(speed, kinematicViscosity));
    parts.add(share("profile of the wing", profile, whole));
    parts.add(share("induced", InducedDrag.coefficient(lift, inducedLoss, aspectRatio), whole));
    double sum = 0.0;
    for (DragComponent component : rest.components()) {
      double part = component.dragArea(speed, kinematicViscosity, 0.0) / area;
      sum += part;
      parts.add(share(component.name(), part, whole));
    }
    double leakage = rest.coefficient(speed, kinematicViscosity, 0.0) - sum;
    if (leakage > 1e-9 * whole) {
      parts.add(share("leakage and protuberances", leakage, whole));
    }
    return List.copyOf(parts);
  }

  private DragBreakdown.Part share(String name, double coefficient, double whole) {
    return new DragBreakdown.Part(name, Area.squareMetres(coefficient * area), coefficient / whole);
  }

  /**
   * The likely drag coefficient as a line of the workings.
   *
   * @param lift step of C_L
   * @param speed step of the airspeed
   * @param kinematicViscosity step of ν
   * @return the step of C_D, equal to {@link #likelyCoefficient} to the bit
   */
  public Step step(Step lift, Step speed, Step kinematicViscosity) {
    Objects.requireNonNull(speed, "speed");
    Objects.requireNonNull(kinematicViscosity, "kinematic viscosity");
    Source geometry = Source.taken("geometry of the wing");
    Step chordStep = Step.given("mean aerodynamic chord", "c̄", meanAerodynamicChord(), geometry);
    Step reynolds = Step.of("Reynolds number of the wing", "Re", Air.REYNOLDS_NUMBER, speed, chordStep, kinematicViscosity);
    Step induced =
        Step.of(
            InducedDrag.COEFFICIENT,
            lift,
            Step.given("loss against elliptic loading", "δ", inducedLoss, Source.taken("lifting line of the wing")),
            Step.given("aspect ratio", "A", aspectRatio, geometry));
    Step mach = Step.given("Mach number, left out at the speeds of models", "M", 0.0, Source.library("incompressible"));
    return Step.of(TOTAL, profileDragStep(lift, reynolds), induced, rest.step(speed, kinematicViscosity, mach));
  }

  private Step profileDragStep(Step lift, Step reynolds) {
    if (section instanceof ShownPolar shown) {
      return shown.profileDragStep(lift, reynolds);
    }
    return Step.solution(
        "profile drag of the section, " + section.name(),
        "c_d",
        NamedUnit.NUMBER,
        "the section's polar",
        "c_d = c_d(C_L, Re)",
        v -> section.likelyProfileDrag(v[0], v[1]),
        v -> section.likelyProfileDrag(v[0], v[1]) - v[2],
        section.source(),
        lift,
        reynolds);
  }

  /**
   * The polar along the line on which Re·√C_L is constant: that of a steady glide at one mass.
   *
   * @param reynoldsAtUnitLift Reynolds number on the mean aerodynamic chord at C_L = 1, positive
   * @param kinematicViscosity ν [m²/s], positive
   * @param lowestLift first lift coefficient, positive
   * @param points number of points, at least 3
   * @return a table from the lowest to the usable lift
   */
  public TabulatedPolar alongGlide(
      double reynoldsAtUnitLift, double kinematicViscosity, double lowestLift, int points) {
    double unitSpeed = Door.positive(reynoldsAtUnitLift, "Reynolds number at unit lift") * kinematicViscosity / chord;
    double greatest = usableLift(unitSpeed, kinematicViscosity);
    Door.within(lowestLift, 1e-3, 0.99 * greatest, "lowest lift coefficient");
    Door.within(points, 3, 10_000, "number of points");
    double[] lift = new double[points];
    double[] drag = new double[points];
    for (int i = 0; i < points; i++) {
      lift[i] = lowestLift + (greatest - lowestLift) * i / (points - 1);
      drag[i] = likelyCoefficient(lift[i], unitSpeed / Math.sqrt(lift[i]), kinematicViscosity);
    }
    return TabulatedPolar.of(lift, drag);
  }

  @Override
  public double usableLift(double unitSpeed, double kinematicViscosity) {
    return DragLaw.usableLift(section, reynolds(unitSpeed, kinematicViscosity));
  }

  /**
   * The range of the usable lift.
   *
   * @param speed airspeed [m/s], positive
   * @param kinematicViscosity ν [m²/s], positive
   * @return C_L
   */
  public Band usableLiftBand(double speed, double kinematicViscosity) {
    return section.usableLift(reynolds(speed, kinematicViscosity));
  }

  /**
   * Reynolds number on the mean aerodynamic chord.
   *
   * @param speed airspeed [m/s], positive
   * @param kinematicViscosity ν [m²/s], positive
   * @return R
   */
  public double reynolds(double speed, double kinematicViscosity) {
    return Air.reynoldsNumber(speed, chord, kinematicViscosity);
  }

  /**
   * What to know about the drag at one point.
   *
   * @param lift lift coefficient
   * @param speed airspeed [m/s]
   * @param kinematicViscosity ν [m²/s]
   * @return findings of the section and of the components, heaviest first
   */
  public List<Finding> findings(double lift, double speed, double kinematicViscosity) {
    List<Finding> findings = new ArrayList<>(section.findings(lift, reynolds(speed, kinematicViscosity)));
    for (DragComponent component : rest.components()) {
      findings.addAll(component.findings(speed, kinematicViscosity, 0.0));
    }
    return Finding.inOrderOfWeight(findings);
  }

  /**
   * Polar of the wing's section.
   *
   * @return the polar
   */
  public SectionPolar section() {
    return section;
  }

  /**
   * Everything but the wing.
   *
   * @return the build-up
   */
  public DragBuildUp rest() {
    return rest;
  }

  /**
   * Wing area.
   *
   * @return S
   */
  public Area area() {
    return Area.squareMetres(area);
  }

  /**
   * Mean aerodynamic chord.
   *
   * @return c̄
   */
  public Length meanAerodynamicChord() {
    return Length.metres(chord);
  }

  /**
   * Aspect ratio.
   *
   * @return A
   */
  public double aspectRatio() {
    return aspectRatio;
  }

  /**
   * Loss against elliptic loading.
   *
   * @return δ
   */
  public double inducedLoss() {
    return inducedLoss;
  }

  @Override
  public String toString() {
    return "aircraft drag, " + area() + ", A " + NamedUnit.NUMBER.format(aspectRatio, 3) + ", " + section.name();
  }
}
