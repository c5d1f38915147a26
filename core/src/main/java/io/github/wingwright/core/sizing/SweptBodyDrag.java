// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.aerodynamics.AfterbodyDrag;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.quantity.Angle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The drag of a body with that of its own upsweep, at each length and diameter.
 *
 * @param straight the drag without upsweep
 */
record SweptBodyDrag(DragArea straight) implements DragArea {
  private static final Source GEOMETRY = Source.library("geometry of the body");

  @Override
  public double dragArea(BodyShape shape, double length, double diameter) {
    double u = shape.upsweep(length, diameter);
    double body = straight.dragArea(shape, length, diameter);
    return u > 0.0 ? body + AfterbodyDrag.upsweep(u, FuselageFormulas.frontalArea(diameter)) : body;
  }

  @Override
  public Interval fit() {
    return straight.fit();
  }

  @Override
  public List<Finding> findings(Fuselage body) {
    List<Finding> findings = new ArrayList<>(straight.findings(body));
    double u = body.upsweep().si();
    if (u > 0.0) {
      findings.addAll(AfterbodyDrag.UPSWEEP.outsideDomain(u, body.frontalArea().si()));
    }
    return findings;
  }

  @Override
  public Optional<Step> step(BodySteps body) {
    double u = body.shape().upsweep(body.length().value(), body.diameter().value());
    if (!(u > 0.0)) {
      return straight.step(body);
    }
    Step angle = Step.given("upsweep of the middle line", "u", Angle.radians(u), GEOMETRY);
    Step swept = Step.of(AfterbodyDrag.UPSWEEP, angle, body.frontalArea());
    return straight.step(body).map(s -> Step.sum("drag area of the upswept body", "F", List.of(s, swept)));
  }
}
