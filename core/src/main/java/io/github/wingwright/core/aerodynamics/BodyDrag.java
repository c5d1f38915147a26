// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

import io.github.wingwright.core.atmosphere.Air;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Guideline;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

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
 * @param excess factor of the form factor's excess over 1: 1 for a round body, 1.3 to 1.4 for a square-sided one
 * @param baseArea area of a blunt end [m²], 0 for none
 */
public record BodyDrag(
    String name,
    double length,
    double fineness,
    double wettedArea,
    FrictionModel friction,
    BodyFormFactor formFactor,
    double interference,
    double excess,
    double baseArea)
    implements DragComponent {

  private static final Source GEOMETRY = Source.taken("geometry of the body");
  private static final Source CHOICE = Source.library("choice of the build-up");
  private static final double ROUNDING = 1e-9;

  /** By how much flat sides and hulls raise the excess of the form factor. */
  private static final Guideline SQUARE_SIDED =
      Guideline.ofNumber(
          "factor of the excess of the form factor",
          1.3,
          1.5,
          "square-sided bodies and hulls",
          "Another factor needs a measurement of its own.",
          Sources.raymer("p. 422"));

  /** Refuses what is not a body. */
  public BodyDrag {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(friction, "friction");
    Objects.requireNonNull(formFactor, "form factor");
    Door.positive(length, "length of " + name + " in metres");
    Door.positive(fineness, "fineness ratio of " + name);
    Door.positive(wettedArea, "wetted area of " + name + " in square metres");
    Door.within(interference, 0.9, 3.0, "interference factor of " + name);
    Door.within(excess, 1.0, 2.0, "factor of the excess of the form factor of " + name);
    Door.notNegative(baseArea, "base area of " + name + " in square metres");
    if (!formFactor.isDefinedAt(fineness)) {
      formFactor.factor(fineness, 0.01);
    }
  }

  /**
   * A round body without a base.
   *
   * @param name what it is
   * @param length length L [m]
   * @param fineness fineness ratio f
   * @param wettedArea wetted area S_wet [m²]
   * @param friction friction model
   * @param formFactor form factor
   * @param interference interference factor Q
   */
  public BodyDrag(
      String name,
      double length,
      double fineness,
      double wettedArea,
      FrictionModel friction,
      BodyFormFactor formFactor,
      double interference) {
    this(name, length, fineness, wettedArea, friction, formFactor, interference, 1.0, 0.0);
  }

  /**
   * The same body with interference.
   *
   * @param factor interference factor Q, 0.9 to 3
   * @return the component
   */
  public BodyDrag withInterference(double factor) {
    return new BodyDrag(name, length, fineness, wettedArea, friction, formFactor, factor, excess, baseArea);
  }

  /**
   * The same body by another form factor.
   *
   * @param other form factor
   * @return the component
   */
  public BodyDrag by(BodyFormFactor other) {
    return new BodyDrag(name, length, fineness, wettedArea, friction, other, interference, excess, baseArea);
  }

  /**
   * The same body by another turbulent law.
   *
   * @param law turbulent law
   * @return the component
   */
  public BodyDrag by(TurbulentFriction law) {
    return new BodyDrag(
        name, length, fineness, wettedArea, friction.by(law), formFactor, interference, excess, baseArea);
  }

  BodyDrag by(FrictionModel other) {
    return new BodyDrag(name, length, fineness, wettedArea, other, formFactor, interference, excess, baseArea);
  }

  /**
   * The same body with flat sides: the excess of its form factor is raised by 35 %, the middle of 30 to 40 %.
   *
   * @return the component
   */
  public BodyDrag squareSided() {
    return new BodyDrag(name, length, fineness, wettedArea, friction, formFactor, interference, 1.35, baseArea);
  }

  /**
   * The same body with a blunt end, whose drag the body's own layer lessens. To reckon the base by the formula of large
   * aircraft, give the body none and add {@link DragComponent#base}.
   *
   * @param area area of the base, zero for none, not negative
   * @return the component
   */
  public BodyDrag withBase(Area area) {
    Door.notNegative(Objects.requireNonNull(area, "area of the base"), "base area of " + name);
    return new BodyDrag(
        name, length, fineness, wettedArea, friction, formFactor, interference, excess, area.si());
  }

  @Override
  public double dragArea(double speed, double kinematicViscosity, double mach) {
    double reynolds = Air.reynoldsNumber(speed, length, kinematicViscosity);
    double cf = friction.coefficient(reynolds, length, mach);
    double clean = formFactor.factor(fineness, cf);
    double form = excess > 1.0 ? DragBuildUp.raisedFormFactor(excess, clean) : clean;
    double forebody = DragBuildUp.frictionDragArea(cf, form, interference, wettedArea);
    return baseArea > 0.0 ? forebody + AfterbodyDrag.shieldedBase(forebody, baseArea) : forebody;
  }

  @Override
  public Step step(Step speed, Step kinematicViscosity, Step mach) {
    return step(
        speed,
        kinematicViscosity,
        mach,
        new Shape(
            Step.given("length of " + name, "L", Length.metres(length), GEOMETRY),
            Step.given("fineness ratio of " + name, "f", fineness, GEOMETRY),
            Step.given("wetted area of " + name, "S_wet", Area.squareMetres(wettedArea), GEOMETRY)));
  }

  /**
   * The geometry of a body as lines of the workings, so that its drag stands in one graph with what made it.
   *
   * @param length step of L
   * @param fineness step of f
   * @param wettedArea step of S_wet
   */
  public record Shape(Step length, Step fineness, Step wettedArea) {

    /** Refuses null. */
    public Shape {
      Objects.requireNonNull(length, "length");
      Objects.requireNonNull(fineness, "fineness");
      Objects.requireNonNull(wettedArea, "wetted area");
    }
}

  /**
   * The drag area as a line of the workings that goes on from those of the geometry.
   *
   * @param speed step of the airspeed
   * @param kinematicViscosity step of ν
   * @param mach step of the Mach number
   * @param shape steps of the geometry
   * @return the step of D/q, its value the same as that of {@link #dragArea} to the bit
   * @throws IllegalArgumentException if the geometry is that of another body
   */
  public Step step(Step speed, Step kinematicViscosity, Step mach, Shape shape) {
    same(shape.length(), length, "length");
    same(shape.fineness(), fineness, "fineness ratio");
    same(shape.wettedArea(), wettedArea, "wetted area");
    Step along = shape.length();
    Step reynolds = Step.of("Reynolds number of " + name, "Re", Air.REYNOLDS_NUMBER, speed, along, kinematicViscosity);
    Step cf = friction.step(reynolds, along, mach);
    Step form = formFactor.step(shape.fineness(), cf);
    if (excess > 1.0) {
      form = Step.of(DragBuildUp.RAISED_FORM_FACTOR, Step.given("factor of the excess", "k", excess, CHOICE), form);
    }
    Step forebody =
        Step.of(
            "drag area of " + name,
            "F",
            DragBuildUp.FRICTION_DRAG_AREA,
            cf,
            form,
            Step.given("interference factor of " + name, "Q", interference, CHOICE),
            shape.wettedArea());
    if (!(baseArea > 0.0)) {
      return forebody;
    }
    Step base = Step.given("area of the base of " + name, "A_b", Area.squareMetres(baseArea), GEOMETRY);
    return Step.sum(
        "drag area of " + name + " and its base",
        "F",
        List.of(forebody, Step.of("drag area of the base of " + name, "F_b", AfterbodyDrag.SHIELDED_BASE, forebody, base)));
  }

  private void same(Step step, double own, String what) {
    if (step.value() != own) {
      throw new IllegalArgumentException(
          what + " in the workings of " + name + " must be " + step.unit().format(own, 6) + " as in the component, was "
              + step.unit().format(step.value(), 6));
    }
  }

  @Override
  public List<Finding> findings(double speed, double kinematicViscosity, double mach) {
    List<Finding> findings = new ArrayList<>(formFactor.findings(fineness));
    findings.addAll(friction.findings(speed, length, kinematicViscosity, mach));
    double reynolds = Air.reynoldsNumber(speed, length, kinematicViscosity);
    ofLayer(reynolds).ifPresent(findings::add);
    AttainableLaminar.checkBody(friction.givenLaminarPart(), reynolds).ifPresent(findings::add);
    Interference.PRINTED.check(interference, Severity.NOTE).ifPresent(findings::add);
    if (excess > 1.0) {
      SQUARE_SIDED.check(excess, Severity.NOTE).ifPresent(findings::add);
    }
    double section = 0.25 * Math.PI * (length / fineness) * (length / fineness);
    if (baseArea > section * (1.0 + ROUNDING)) {
      findings.add(
          Finding.of(
              Severity.CAUTION,
              "base of " + name,
              "The base is larger than the greatest section of a round body of this length and fineness ratio.",
              baseArea,
              Interval.between(0.0, section),
              Area.SQUARE_CENTIMETRE,
              GEOMETRY));
    }
    return findings;
  }

  /** Whether the form factor was made for the layer that the body has. */
  private Optional<Finding> ofLayer(double reynolds) {
    boolean laminarForm = formFactor == BodyFormFactor.HOERNER_LAMINAR;
    if (laminarForm ? !friction.isTurbulentAt(reynolds) : !friction.isLaminarAt(reynolds)) {
      return Optional.empty();
    }
    return Optional.of(
        Finding.of(
            laminarForm ? Severity.CAUTION : Severity.NOTE,
            "form factor and layer of " + name,
            laminarForm
                ? "The laminar form factor is used on a layer that turns turbulent; take one of streamline bodies."
                : "The form factor was fitted to turbulent layers; a laminar one drags more. Compare "
                    + BodyFormFactor.HOERNER_LAMINAR + ".",
            BodyFormFactor.HOERNER_LAMINAR.formula().source()));
  }

  @Override
  public String toString() {
    return name + ", " + friction + ", " + formFactor;
  }
}
