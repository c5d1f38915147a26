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
import io.github.wingwright.core.quantity.Door;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The drag of a body as the area that, times dynamic pressure, gives the force: D = q·(D/q).
 *
 * <p>Sizing needs no more of aerodynamics than this. {@link FlightDrag} is the estimate that comes with the library.
 */
@FunctionalInterface
public interface DragArea {

  /**
   * The drag area. It is called in loops and must not allocate.
   *
   * @param shape family of the body
   * @param length length L [m]
   * @param diameter greatest diameter d [m]
   * @return D/q [m²], positive and finite
   */
  double dragArea(BodyShape shape, double length, double diameter);

  /**
   * The drag with that of an upswept afterbody on top.
   *
   * @param upsweep upsweep of the afterbody's centre line, 0° to 25°
   * @return D/q + 3.83·u^2.5·A_max
   */
  default DragArea withUpsweep(Angle upsweep) {
    Objects.requireNonNull(upsweep, "upsweep");
    Door.within(upsweep.degrees(), 0.0, 25.0, "upsweep in degrees");
    double u = upsweep.radians();
    DragArea straight = this;
    return new DragArea() {
      @Override
      public double dragArea(BodyShape shape, double length, double diameter) {
        double section = FuselageFormulas.frontalArea(diameter);
        return straight.dragArea(shape, length, diameter) + AfterbodyDrag.upsweep(u, section);
      }

      @Override
      public Interval fit() {
        return straight.fit();
      }

      @Override
      public List<Finding> findings(Fuselage body) {
        Objects.requireNonNull(body, "body");
        return straight.findings(body);
      }

      @Override
      public Optional<Step> step(BodySteps body) {
        Objects.requireNonNull(body, "body");
        Step swept = Step.of(AfterbodyDrag.UPSWEEP, Step.given("upsweep", "u", upsweep, Source.BRIEF), body.frontalArea());
        return straight.step(body).map(s -> Step.sum("drag area of the upswept body", "F", List.of(s, swept)));
      }
    };
  }

  /**
   * The drag with that of the upsweep that each body has itself, see {@link BodyShape#upsweep}: for families that are bent
   * up or lofted along a rising middle line. A straight body drags as before, and so does one that droops, for which there is
   * no formula.
   *
   * @return D/q + 3.83·u^2.5·A_max with u of the body
   */
  default DragArea withUpsweepOfBody() {
    return new SweptBodyDrag(this);
  }

  /**
   * Fineness ratios that the method was made for. A least of the drag outside would be one of the method, not of the body.
   *
   * @return the range, all if the method knows no end
   */
  default Interval fit() {
    return Interval.ALL;
  }

  /**
   * What is remarkable about the drag of a body.
   *
   * @param body the body
   * @return findings, usually none
   */
  default List<Finding> findings(Fuselage body) {
    Objects.requireNonNull(body, "body");
    return List.of();
  }

  /**
   * The drag of a body with its workings, which go on from those of its dimensions.
   *
   * @param body lines of the body's geometry
   * @return the step, empty if there are no workings
   */
  default Optional<Step> step(BodySteps body) {
    Objects.requireNonNull(body, "body");
    return Optional.empty();
  }

  /**
   * The drag of a body of given dimensions with its workings.
   *
   * @param body the body
   * @return the step, empty if there are no workings
   */
  default Optional<Step> step(Fuselage body) {
    return step(BodySteps.of(body, Source.taken("geometry of the body")));
  }
}
