// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.aerodynamics.AfterbodyDrag;
import io.github.wingwright.core.aerodynamics.BodyDrag;
import io.github.wingwright.core.aerodynamics.BodyFormFactor;
import io.github.wingwright.core.aerodynamics.FrictionModel;
import io.github.wingwright.core.aerodynamics.TurbulentFriction;
import io.github.wingwright.core.atmosphere.Air;
import io.github.wingwright.core.atmosphere.FlightCondition;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Drag of a body in flight by friction, form factor and wetted area.
 *
 * <pre>{@code D/q = C_f(V·L/ν, M)·FF(L/d)·S_wet}</pre>
 *
 * <p>A flat base adds its own drag, less behind a thick layer. The form factor is held at the nearest end of its fit outside of it, and a finding says so.
 *
 * @param flight air and speed
 * @param friction how the layer is reckoned
 * @param form form factor
 */
public record FlightDrag(FlightCondition flight, FrictionModel friction, BodyFormFactor form) implements DragArea {
  /** Where the layer on a smooth body turns turbulent, on the length. */
  public static final double TRANSITION = 5e5;

  private static final Source FLIGHT = Source.taken("air and speed of the flight");

  /**
   * The estimate for a body of about a length: laminar up to a Reynolds number of 500,000 and mixed from there on. While the
   * layer of the whole body is laminar the laminar form factor is used, which gives the tail its pressure drag; above,
   * that of streamline bodies.
   *
   * @param flight air and speed
   * @param length length of the body, roughly, positive
   * @return the estimate
   */
  public static FlightDrag of(FlightCondition flight, Length length) {
    Objects.requireNonNull(flight, "flight");
    Objects.requireNonNull(length, "length");
    boolean laminar = flight.reynoldsNumber(length) < TRANSITION;
    return new FlightDrag(
        flight,
        FrictionModel.mixed(TRANSITION, TurbulentFriction.PRANDTL_SCHLICHTING),
        laminar ? BodyFormFactor.HOERNER_LAMINAR : BodyFormFactor.HOERNER);
  }

  /** Refuses air at rest. */
  public FlightDrag {
    Objects.requireNonNull(flight, "flight");
    Objects.requireNonNull(friction, "friction");
    Objects.requireNonNull(form, "form");
    Door.positive(flight.airspeed(), "airspeed");
  }

  @Override
  public double dragArea(BodyShape shape, double length, double diameter) {
    Objects.requireNonNull(shape, "shape");
    double speed = flight.airspeed().si();
    double reynolds = Air.reynoldsNumber(speed, length, viscosity());
    double cf = friction.coefficient(reynolds, length, flight.machNumber());
    double body = cf * form.factor(form.domain().clamp(length / diameter), cf) * shape.wettedArea(length, diameter);
    double base = shape.baseArea(length, diameter);
    return base > 0.0 ? body + AfterbodyDrag.shieldedBase(body, base) : body;
  }

  @Override
  public Interval fit() {
    return form.domain();
  }

  private double viscosity() {
    return flight.air().kinematicViscosity().si();
  }

  private BodyDrag component(double length, double fineness, double wettedArea) {
    return new BodyDrag("fuselage", length, form.domain().clamp(fineness), wettedArea, friction, form, 1.0);
  }

  @Override
  public List<Finding> findings(Fuselage body) {
    Objects.requireNonNull(body, "body");
    List<Finding> findings =
        new ArrayList<>(
            component(body.length().si(), body.finenessRatio(), body.wettedArea().si())
                .findings(flight.airspeed().si(), viscosity(), flight.machNumber()));
    findings.addAll(form.findings(body.finenessRatio()));
    return findings;
  }

  @Override
  public Optional<Step> step(BodySteps body) {
    Objects.requireNonNull(body, "body");
    Step speed = Step.given("airspeed", "V", flight.airspeed(), FLIGHT);
    Step viscosity = flight.air().kinematicViscosityStep(FLIGHT);
    Step mach = flight.machNumberStep(speed, FLIGHT);
    BodyDrag component = component(body.length().value(), body.fineness().value(), body.wettedArea().value());
    Step fineness =
        component.fineness() == body.fineness().value()
            ? body.fineness()
            : Step.given("fineness ratio, at the end of the fit", "f_e", component.fineness(), form.formula().source());
    Step attached = component.step(speed, viscosity, mach, new BodyDrag.Shape(body.length(), fineness, body.wettedArea()));
    double blunt = body.shape().baseArea(body.length().value(), body.diameter().value());
    if (!(blunt > 0.0)) {
      return Optional.of(attached);
    }
    Step area = Step.given("area of the base", "A_b", Area.squareMetres(blunt), Source.taken("geometry of the body"));
    Step base = Step.of(AfterbodyDrag.SHIELDED_BASE, attached, area);
    return Optional.of(Step.sum("drag area of fuselage and base", "F", List.of(attached, base)));
  }

  @Override
  public String toString() {
    return "body drag at " + flight.airspeed() + ", " + form;
  }
}
