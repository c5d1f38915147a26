// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.Fuselage;
import java.util.Objects;

/**
 * The geometry of a body as lines of the workings, each once, so that all that is reckoned from it stands in one
 * graph.
 *
 * @param shape family of the body
 * @param length step of the length L
 * @param diameter step of the diameter d
 * @param fineness step of L/d
 * @param frontalArea step of π/4·d²
 * @param volume step of the volume
 * @param wettedArea step of the wetted area
 */
public record BodySteps(
    BodyShape shape,
    Step length,
    Step diameter,
    Step fineness,
    Step frontalArea,
    Step volume,
    Step wettedArea) {

  /** Refuses null. */
  public BodySteps {
    Objects.requireNonNull(shape, "shape");
    Objects.requireNonNull(length, "length");
    Objects.requireNonNull(diameter, "diameter");
    Objects.requireNonNull(fineness, "fineness");
    Objects.requireNonNull(frontalArea, "frontal area");
    Objects.requireNonNull(volume, "volume");
    Objects.requireNonNull(wettedArea, "wetted area");
  }


  /**
   * From length and diameter.
   *
   * @param shape family of the body
   * @param length step of the length L
   * @param diameter step of the diameter d
   * @return the lines
   */
  public static BodySteps of(BodyShape shape, Step length, Step diameter) {
    Objects.requireNonNull(shape, "shape");
    Objects.requireNonNull(length, "length");
    Objects.requireNonNull(diameter, "diameter");
    return new BodySteps(
        shape,
        length,
        diameter,
        Step.of(FuselageFormulas.FINENESS_RATIO, length, diameter),
        Step.of(FuselageFormulas.FRONTAL_AREA, diameter),
        shape.volumeStep(length, diameter),
        shape.wettedAreaStep(length, diameter));
  }

  /**
   * Of a body whose dimensions are given.
   *
   * @param body the body
   * @param source who gave them
   * @return the lines
   */
  public static BodySteps of(Fuselage body, Source source) {
    Objects.requireNonNull(body, "body");
    return of(
        body.shape(),
        Step.given("length", "L", body.length(), source),
        Step.given("diameter", "d", body.diameter(), source));
  }

  @Override
  public String toString() {
    return "workings of a " + shape.name();
  }
}
