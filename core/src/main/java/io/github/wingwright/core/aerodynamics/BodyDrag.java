// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

import io.github.wingwright.core.atmosphere.Air;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * The drag of a body: friction times form factor.
 *
 * @param name what it is
 * @param length length L [m]
 * @param fineness fineness ratio f
 * @param wettedArea wetted area S_wet [m²]
 * @param friction friction model
 * @param formFactor form factor
 * @param interference interference factor Q
 */
public record BodyDrag(
    String name,
    double length,
    double fineness,
    double wettedArea,
    FrictionModel friction,
    BodyFormFactor formFactor,
    double interference)
    implements DragComponent {

  private static final Source GEOMETRY = Source.library("geometry of the body");

  /** Refuses what is not a body. */
  public BodyDrag {
    Arguments.positive(length, "length of " + name + " in metres");
    Arguments.positive(fineness, "fineness ratio of " + name);
    Arguments.positive(wettedArea, "wetted area of " + name + " in square metres");
    Arguments.within(interference, 0.9, 3.0, "interference factor of " + name);
    if (!formFactor.isDefinedAt(fineness)) {
      formFactor.factor(fineness, 0.01);
    }
  }

  /**
   * The same body with interference.
   *
   * @param factor interference factor Q, 0.9 to 3
   * @return the component
   */
  public BodyDrag withInterference(double factor) {
    return new BodyDrag(name, length, fineness, wettedArea, friction, formFactor, factor);
  }

  /**
   * The same body by another form factor.
   *
   * @param other form factor
   * @return the component
   */
  public BodyDrag by(BodyFormFactor other) {
    return new BodyDrag(name, length, fineness, wettedArea, friction, other, interference);
  }

  @Override
  public double dragArea(double speed, double kinematicViscosity, double mach) {
    double reynolds = Air.reynoldsNumber(speed, length, kinematicViscosity);
    double cf = friction.coefficient(reynolds, length, mach);
    return DragBuildUp.frictionDragArea(cf, formFactor.factor(fineness, cf), interference, wettedArea);
  }

  @Override
  public Step step(Step speed, Step kinematicViscosity, Step mach) {
    Step along = Step.given("length of " + name, "L", Length.metres(length), GEOMETRY);
    Step reynolds = Step.of("Reynolds number of " + name, "Re", Air.REYNOLDS_NUMBER, speed, along, kinematicViscosity);
    Step cf = friction.step(reynolds, along, mach);
    return Step.of(
        "drag area of " + name,
        "F",
        DragBuildUp.FRICTION_DRAG_AREA,
        cf,
        formFactor.step(Step.given("fineness ratio of " + name, "f", fineness, GEOMETRY), cf),
        Step.given("interference factor of " + name, "Q", interference, Source.library("placement of " + name)),
        Step.given("wetted area of " + name, "S_wet", Area.squareMetres(wettedArea), GEOMETRY));
  }

  @Override
  public List<Finding> findings(double speed, double kinematicViscosity, double mach) {
    List<Finding> findings = new ArrayList<>(formFactor.findings(fineness));
    findings.addAll(friction.findings(speed, length, kinematicViscosity));
    return findings;
  }

  @Override
  public String toString() {
    return name + ", " + friction + ", " + formFactor;
  }
}
