// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.performance;

import io.github.wingwright.core.aerodynamics.AircraftDrag;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Workings;
import io.github.wingwright.core.quantity.Acceleration;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.quantity.Speed;
import java.util.List;
import java.util.Objects;
import java.util.function.ToDoubleFunction;

/**
 * How the numbers of a glide come about, as steps; their values are those of {@link GlidePerformance} to the bit.
 *
 * @param stallSpeed V_s
 * @param bestGlideSpeed V of the best glide
 * @param bestLiftToDrag L/D of the best glide
 * @param leastSinkRate w of the slowest descent
 */
public record GlideWorkings(Step stallSpeed, Step bestGlideSpeed, Step bestLiftToDrag, Step leastSinkRate) {
  public GlideWorkings {
    Objects.requireNonNull(stallSpeed, "stallSpeed");
    Objects.requireNonNull(bestGlideSpeed, "bestGlideSpeed");
    Objects.requireNonNull(bestLiftToDrag, "bestLiftToDrag");
    Objects.requireNonNull(leastSinkRate, "leastSinkRate");
  }

  private static final Source SEARCH = Source.library("search over the polar as it ends");

  static GlideWorkings of(GlidePerformance glide) {
    Source air = Source.taken("state of the air");
    Step weight =
        Step.of(
            SteadyGlide.WEIGHT_OVER_AREA,
            Step.given("mass", "m", glide.mass(), Source.taken("mass statement")),
            Step.given("acceleration of gravity", "g", Acceleration.STANDARD_GRAVITY, Source.DEFINITION),
            Step.given("wing area", "S", glide.drag().area(), Source.taken("geometry of the wing")));
    Step density = glide.air().densityStep(air);
    Step viscosity = glide.air().kinematicViscosityStep(air);
    AircraftDrag drag = glide.drag();
    Step usable =
        lift("usable lift coefficient", "C_L,max", "usable lift of the section at its Reynolds number",
            "C_L,max = c_l,usable(Re(C_L,max))", v -> GlideKernel.usableLift(drag, v[0], v[1], v[2]),
            weight, density, viscosity);
    Step best =
        lift("lift coefficient of the best glide", "C_L,bg", "scan over the polar, then where its slope vanishes",
            "C_D/C_L least, C_L ≤ C_L,max", v -> GlideKernel.bestGlideLift(drag, v[0], v[1], v[2]),
            weight, density, viscosity);
    Step slow =
        lift("lift coefficient of least sink", "C_L,ms", "scan over the polar, then where its slope vanishes",
            "V·sin γ least, C_L ≤ C_L,max", v -> GlideKernel.leastSinkLift(drag, v[0], v[1], v[2]),
            weight, density, viscosity);
    Step bestSpeed = speed(drag, "speed of the best glide", "V_bg", best, weight, density, viscosity);
    Step slowSpeed = speed(drag, "speed of least sink", "V_ms", slow, weight, density, viscosity);
    return new GlideWorkings(
        Step.of("stall speed", "V_s", SteadyGlide.LEVEL_SPEED, weight, density, usable),
        bestSpeed,
        Step.of(
            "ratio of lift to drag of the best glide",
            "L/D",
            SteadyGlide.LIFT_TO_DRAG,
            best,
            drag.step(best, bestSpeed, viscosity)),
        Step.of(
            "least sink rate",
            "w",
            SteadyGlide.SINK_RATE,
            slowSpeed,
            Step.of(SteadyGlide.ANGLE, drag.step(slow, slowSpeed, viscosity), slow)));
  }

  private static Step lift(
      String name,
      String symbol,
      String method,
      String closing,
      ToDoubleFunction<double[]> solve,
      Step... inputs) {
    // nothing but a second search could check a search: the residual is that the same inputs give the same lift
    return Step.solution(
        name, symbol, NamedUnit.NUMBER, method, closing, solve, v -> solve.applyAsDouble(v) - v[3], SEARCH, inputs);
  }

  private static Step speed(
      AircraftDrag drag, String name, String symbol, Step lift, Step weight, Step density, Step viscosity) {
    return Step.solution(
        name,
        symbol,
        Speed.METRE_PER_SECOND,
        "repeated substitution",
        "V = √(2·P·cos γ/(ρ·C_L)), γ = atan(C_D(C_L, V)/C_L)",
        v -> GlideKernel.speed(drag, v[0], v[1], v[2], v[3]),
        v ->
            v[4]
                - SteadyGlide.speed(v[1], SteadyGlide.angle(drag.likelyCoefficient(v[0], v[4], v[3]), v[0]), v[2], v[0]),
        SteadyGlide.SPEED.source(),
        lift,
        weight,
        density,
        viscosity);
  }

  /**
   * All steps in order.
   *
   * @return the workings
   */
  public Workings all() {
    return Workings.of(List.of(stallSpeed, bestGlideSpeed, bestLiftToDrag, leastSinkRate));
  }

  /** The workings, as a table. */
  @Override
  public String toString() {
    return all().toString();
  }
}
