// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

import io.github.wingwright.core.atmosphere.Air;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * The profile drag of a wing or tail: friction times form factor.
 *
 * @param name what it is
 * @param chord mean aerodynamic chord c̄ [m]
 * @param thickness thickness ratio t
 * @param thicknessPosition where the section is thickest, over chord
 * @param sweep sweep of the line of greatest thickness [rad]
 * @param wettedArea wetted area S_wet [m²]
 * @param friction friction model
 * @param formFactor form factor
 * @param interference interference factor Q
 * @param excess factor of the form factor's excess over 1: 1 for a fixed surface, 1.1 for one with hinges and their gaps
 */
public record SurfaceDrag(
    String name,
    double chord,
    double thickness,
    double thicknessPosition,
    double sweep,
    double wettedArea,
    FrictionModel friction,
    SurfaceFormFactor formFactor,
    double interference,
    double excess)
    implements DragComponent {

  private static final Source GEOMETRY = Source.taken("geometry of the surface");
  private static final Source CHOICE = Source.library("choice of the build-up");

  /** Refuses what is not a surface. */
  public SurfaceDrag {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(friction, "friction");
    Objects.requireNonNull(formFactor, "form factor");
    Door.positive(chord, "mean chord of " + name + " in metres");
    Door.within(thickness, 0.0, 0.5, "thickness ratio of " + name);
    Door.within(thicknessPosition, 0.05, 0.95, "place of greatest thickness of " + name);
    Door.within(sweep, -1.4, 1.4, "sweep of " + name + " in radians");
    Door.positive(wettedArea, "wetted area of " + name + " in square metres");
    Door.within(interference, 0.9, 3.0, "interference factor of " + name);
    Door.within(excess, 1.0, 2.0, "factor of the excess of the form factor of " + name);
  }

  /**
   * A surface without hinges.
   *
   * @param name what it is
   * @param chord mean aerodynamic chord c̄ [m]
   * @param thickness thickness ratio t
   * @param thicknessPosition where the section is thickest, over chord
   * @param sweep sweep of the line of greatest thickness [rad]
   * @param wettedArea wetted area S_wet [m²]
   * @param friction friction model
   * @param formFactor form factor
   * @param interference interference factor Q
   */
  public SurfaceDrag(
      String name,
      double chord,
      double thickness,
      double thicknessPosition,
      double sweep,
      double wettedArea,
      FrictionModel friction,
      SurfaceFormFactor formFactor,
      double interference) {
    this(name, chord, thickness, thicknessPosition, sweep, wettedArea, friction, formFactor, interference, 1.0);
  }

  /**
   * The same surface with interference.
   *
   * @param factor interference factor Q, 0.9 to 3; 1.04 to 1.05 for a conventional tail
   * @return the component
   */
  public SurfaceDrag withInterference(double factor) {
    return new SurfaceDrag(
        name, chord, thickness, thicknessPosition, sweep, wettedArea, friction, formFactor, factor, excess);
  }

  /**
   * The same surface by another form factor.
   *
   * @param other form factor
   * @return the component
   */
  public SurfaceDrag by(SurfaceFormFactor other) {
    return new SurfaceDrag(
        name, chord, thickness, thicknessPosition, sweep, wettedArea, friction, other, interference, excess);
  }

  /**
   * The same surface by another turbulent law.
   *
   * @param law turbulent law
   * @return the component
   */
  public SurfaceDrag by(TurbulentFriction law) {
    return new SurfaceDrag(
        name,
        chord,
        thickness,
        thicknessPosition,
        sweep,
        wettedArea,
        friction.by(law),
        formFactor,
        interference,
        excess);
  }

  SurfaceDrag by(FrictionModel other) {
    return new SurfaceDrag(
        name, chord, thickness, thicknessPosition, sweep, wettedArea, other, formFactor, interference, excess);
  }

  /**
   * The same surface with hinges: their gaps raise the excess of its form factor by a tenth.
   *
   * @return the component
   */
  public SurfaceDrag hinged() {
    return new SurfaceDrag(
        name, chord, thickness, thicknessPosition, sweep, wettedArea, friction, formFactor, interference, 1.1);
  }

  @Override
  public double dragArea(double speed, double kinematicViscosity, double mach) {
    double reynolds = Air.reynoldsNumber(speed, chord, kinematicViscosity);
    double cf = friction.coefficient(reynolds, chord, mach);
    double clean = formFactor.factor(thickness, thicknessPosition, mach, sweep);
    double form = excess > 1.0 ? DragBuildUp.raisedFormFactor(excess, clean) : clean;
    return DragBuildUp.frictionDragArea(cf, form, interference, wettedArea);
  }

  @Override
  public Step step(Step speed, Step kinematicViscosity, Step mach) {
    Step along = Step.given("mean chord of " + name, "c̄", Length.metres(chord), GEOMETRY);
    Step reynolds = Step.of("Reynolds number of " + name, "Re", Air.REYNOLDS_NUMBER, speed, along, kinematicViscosity);
    Step form =
        formFactor.step(
            Step.given("thickness ratio of " + name, "t", thickness, GEOMETRY),
            Step.given("place of greatest thickness of " + name, "x_m", thicknessPosition, GEOMETRY),
            mach,
            Step.given("sweep of " + name, "Λ", Angle.radians(sweep), GEOMETRY));
    if (excess > 1.0) {
      form = Step.of(DragBuildUp.RAISED_FORM_FACTOR, Step.given("factor of the excess", "k", excess, CHOICE), form);
    }
    return Step.of(
        "drag area of " + name,
        "F",
        DragBuildUp.FRICTION_DRAG_AREA,
        friction.step(reynolds, along, mach),
        form,
        Step.given("interference factor of " + name, "Q", interference, CHOICE),
        Step.given("wetted area of " + name, "S_wet", Area.squareMetres(wettedArea), GEOMETRY));
  }

  @Override
  public List<Finding> findings(double speed, double kinematicViscosity, double mach) {
    double reynolds = Air.reynoldsNumber(speed, chord, kinematicViscosity);
    List<Finding> findings = new ArrayList<>(formFactor.findings(thickness, thicknessPosition, mach, sweep, reynolds));
    findings.addAll(friction.findings(speed, chord, kinematicViscosity, mach));
    AttainableLaminar.checkSurface(friction.givenLaminarPart(), reynolds).ifPresent(findings::add);
    Interference.PRINTED.check(interference, Severity.NOTE).ifPresent(findings::add);
    return findings;
  }

  @Override
  public String toString() {
    return name + ", " + friction + ", " + formFactor;
  }
}
