// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.fuselage;

import io.github.wingwright.core.aerodynamics.AfterbodyDrag;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.sizing.BodySteps;
import io.github.wingwright.core.sizing.DragArea;
import java.util.List;
import java.util.Optional;

/**
 * The drag of a body with that of its own upsweep: the angle of the middle line from where the tail begins to close to
 * its end, at each length and diameter.
 *
 * @param straight the drag without upsweep
 */
record SweptBodyDrag(DragArea straight) implements DragArea {
  /** The tail begins where the section has lost this part of its height. */
  private static final double CLOSING = 0.02;

  private static final int STATIONS = 40;

  @Override
  public double dragArea(BodyShape shape, double length, double diameter) {
    double u = upsweep(shape, length, diameter);
    double body = straight.dragArea(shape, length, diameter);
    return u > 0.0 ? body + AfterbodyDrag.upsweep(u, 0.25 * Math.PI * diameter * diameter) : body;
  }

  /** Where the tail begins to close [m]. */
  static double tailBegins(BodyShape shape, double length, double diameter) {
    double greatest = 0.0;
    for (int i = 1; i <= STATIONS; i++) {
      greatest = Math.max(greatest, shape.height(length * i / STATIONS, length, diameter));
    }
    double height = (1.0 - CLOSING) * greatest;
    double in = length;
    while (in > 0.0 && shape.height(in, length, diameter) < height) {
      in -= length / STATIONS;
    }
    double out = Math.min(length, in + length / STATIONS);
    for (int i = 0; i < 40; i++) {
      double middle = 0.5 * (in + out);
      if (shape.height(middle, length, diameter) >= height) {
        in = middle;
      } else {
        out = middle;
      }
    }
    return in;
  }

  /** Angle of the middle line over the tail [rad], zero for one that is straight or droops. */
  static double upsweep(BodyShape shape, double length, double diameter) {
    double end = shape.centreHeight(length, length, diameter);
    if (end == 0.0) {
      return 0.0;
    }
    double from = tailBegins(shape, length, diameter);
    double rise = end - shape.centreHeight(from, length, diameter);
    return rise > 0.0 ? Math.atan(rise / (length - from)) : 0.0;
  }

  static Angle upsweepOf(Fuselage body) {
    return Angle.radians(upsweep(body.shape(), body.length().si(), body.diameter().si()));
  }

  @Override
  public Interval fit() {
    return straight.fit();
  }

  @Override
  public List<Finding> findings(Fuselage body) {
    return straight.findings(body);
  }

  @Override
  public Optional<Step> step(BodySteps body) {
    double u = upsweep(body.shape(), body.length().value(), body.diameter().value());
    if (!(u > 0.0)) {
      return straight.step(body);
    }
    Source outline = Source.taken("middle line of the drawn body, from where the tail begins to close to its end");
    Step angle = Step.given("upsweep of the middle line", "u", Angle.radians(u), outline);
    Step swept = Step.of(AfterbodyDrag.UPSWEEP, angle, body.frontalArea());
    return straight
        .step(body)
        .map(s -> Step.sum("drag area of the upswept body", "F", List.of(s, swept)));
  }
}
