// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import io.github.wingwright.core.aerodynamics.AircraftDrag;
import io.github.wingwright.core.aerodynamics.BodyDrag;
import io.github.wingwright.core.aerodynamics.CurvedPlatePolar;
import io.github.wingwright.core.aerodynamics.DragBuildUp;
import io.github.wingwright.core.aerodynamics.SectionPolar;
import io.github.wingwright.core.aerodynamics.SurfaceDrag;
import io.github.wingwright.core.atmosphere.Air;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.performance.GlideKernel;
import io.github.wingwright.core.performance.GlidePerformance;
import io.github.wingwright.core.performance.SteadyGlide;
import io.github.wingwright.core.quantity.Acceleration;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.NamedUnit;

/** The drag of the design and how it glides. */
final class GlideNumbers {
  private static final Source POLAR_END = Source.library("a polar that ends at the usable lift");

  private final DesignBrief brief;
  private final DesignNumbers numbers;

  GlideNumbers(SizedGlider sized, DesignNumbers numbers) {
    brief = sized.brief();
    this.numbers = numbers;
  }

  AircraftDrag drag(Airframe airframe) {
    return drag(airframe, brief.wingPolar());
  }

  private static AircraftDrag drag(Airframe airframe, SectionPolar polar) {
    Planform wing = airframe.wing().planform();
    Fuselage body = airframe.fuselage();
    DragBuildUp rest =
        DragBuildUp.about(wing.area())
            .with(
                new BodyDrag(
                    "fuselage",
                    body.length().si(),
                    body.finenessRatio(),
                    body.wettedArea().si(),
                    PartGeometry.FRICTION,
                    PartGeometry.BODY_FORM,
                    1.0));
    for (Tail tail : airframe.tails()) {
      Planform p = tail.planform();
      rest =
          rest.with(
              new SurfaceDrag(
                  tail.role().words(),
                  p.meanAerodynamicChord().si(),
                  tail.section().maximumThickness(),
                  PartGeometry.TAIL_THICKEST,
                  p.sweepAt(0.25).si(),
                  tail.wettedArea().si(),
                  PartGeometry.FRICTION,
                  PartGeometry.TAIL_FORM,
                  PartGeometry.TAIL_INTERFERENCE));
    }
    return AircraftDrag.of(wing, polar, InducedLoss.of(wing), rest);
  }

  void glideSteps(GlidePerformance glide, Step mass, Step rho, Step nu) {
    Step gravity = Step.given("acceleration of gravity", "g", Acceleration.STANDARD_GRAVITY, Source.DEFINITION);
    Step pressure = numbers.keep("P", Step.of(SteadyGlide.WEIGHT_OVER_AREA, mass, gravity, numbers.step("S")));
    AircraftDrag drag = glide.drag();
    Step usable =
        numbers.add(
            "wing.lift_coefficient_usable",
            Step.solution(
                "usable lift coefficient",
                "C_L,u",
                NamedUnit.NUMBER,
                "repetition, because it depends on the Reynolds number at the stall",
                "C_L,u = usable lift of " + drag.section().name() + " at R(V(C_L,u))",
                v -> GlideKernel.usableLift(drag, v[0], v[1], v[2]),
                v -> v[3] - drag.section().usableLift(drag.reynolds(SteadyGlide.levelSpeed(v[0], v[1], v[3]), v[2])).likely(),
                drag.section().source(),
                pressure,
                rho,
                nu));
    numbers.add("stall_speed_m_per_s", Step.of("stall speed", "V_s", SteadyGlide.LEVEL_SPEED, pressure, rho, usable));
    numbers.add("launch_speed_m_per_s", LaunchSteps.speed(brief.launch(), mass));
    Step best = optimum(glide, "lift coefficient of the best glide", "C_L,g", "C_D/C_L is least", pressure, rho, nu, true);
    Step bestDrag = dragAt(glide, "drag coefficient at best glide", "C_D,g", best, pressure, rho, nu);
    Step ratio = numbers.add("glide.best_lift_to_drag", Step.of("best lift to drag", "E", SteadyGlide.LIFT_TO_DRAG, best, bestDrag));
    Step angle = numbers.add("glide.best_glide_angle_rad", Step.of("angle of the best glide", "γ_g", SteadyGlide.ANGLE, bestDrag, best));
    Step speed = numbers.add("glide.best_glide_speed_m_per_s", Step.of("speed of the best glide", "V_g", SteadyGlide.SPEED, pressure, angle, rho, best));
    numbers.add("glide.best_glide_lift_coefficient", best);
    numbers.add(
        "reynolds_number.wing",
        Step.of("Reynolds number of the wing at best glide", "R", Air.REYNOLDS_NUMBER, speed, numbers.step("c̄"), nu));
    Step sink = optimum(glide, "lift coefficient of least sink", "C_L,s", "sink rate is least", pressure, rho, nu, false);
    Step sinkDrag = dragAt(glide, "drag coefficient at least sink", "C_D,s", sink, pressure, rho, nu);
    Step sinkAngle = Step.of("angle at least sink", "γ_s", SteadyGlide.ANGLE, sinkDrag, sink);
    Step sinkSpeed = numbers.add("glide.minimum_sink_speed_m_per_s", Step.of("speed of least sink", "V_m", SteadyGlide.SPEED, pressure, sinkAngle, rho, sink));
    Step rate = numbers.add("glide.minimum_sink_rate_m_per_s", Step.of("least sink rate", "w_m", SteadyGlide.SINK_RATE, sinkSpeed, sinkAngle));
    Step height = Step.given("launch height", "h", brief.launch().height(), Source.BRIEF);
    numbers.add("glide.distance_m", Step.of("distance from the launch height in still air", "D", SteadyGlide.DISTANCE, height, ratio));
    numbers.add("glide.time_s", Step.of(DesignFormulas.DURATION, height, rate));
    numbers.add("launch.kinetic_energy_j", Step.of(DesignFormulas.KINETIC_ENERGY, mass, numbers.at("launch_speed_m_per_s")));
  }

  private static Step optimum(
      GlidePerformance glide, String name, String symbol, String what, Step pressure, Step rho, Step nu, boolean range) {
    AircraftDrag drag = glide.drag();
    return Step.solution(
        name,
        symbol,
        NamedUnit.NUMBER,
        "a scan of the whole polar, then refinement",
        what + ", up to the usable lift; residual: by what part a dense scan finds less",
        v ->
            range
                ? GlideKernel.bestGlideLift(drag, v[0], v[1], v[2])
                : GlideKernel.leastSinkLift(drag, v[0], v[1], v[2]),
        v -> excess(drag, v, range),
        POLAR_END,
        pressure,
        rho,
        nu);
  }

  /** By what part the best of a dense scan is better than the solution; not positive for a true optimum. */
  private static double excess(AircraftDrag drag, double[] v, boolean range) {
    double usable = GlideKernel.usableLift(drag, v[0], v[1], v[2]);
    double found = cost(drag, v[3], v, range);
    double least = found;
    for (int i = 1; i <= 400; i++) {
      least = Math.min(least, cost(drag, usable * i / 400.0, v, range));
    }
    return found / least - 1.0;
  }

  private static double cost(AircraftDrag drag, double lift, double[] v, boolean range) {
    double cd = GlideKernel.dragCoefficient(drag, lift, v[0], v[1], v[2]);
    return range ? cd / lift : GlideKernel.sinkRate(lift, cd, v[0], v[1]);
  }

  private static Step dragAt(
      GlidePerformance glide, String name, String symbol, Step lift, Step pressure, Step rho, Step nu) {
    AircraftDrag drag = glide.drag();
    return Step.solution(
        name,
        symbol,
        NamedUnit.NUMBER,
        "repetition, because the drag depends on the speed and the speed on the glide angle",
        "C_D = c_d(C_L, R) + (1 + δ)·C_L²/(π·A) + C_D0,rest at V(C_L, C_D)",
        v -> GlideKernel.dragCoefficient(drag, v[0], v[1], v[2], v[3]),
        v -> drag.likelyCoefficient(v[0], SteadyGlide.speed(v[1], SteadyGlide.angle(v[4], v[0]), v[2], v[0]), v[3]) - v[4],
        Source.library("drag of section, lift, tails and fuselage added"),
        lift,
        pressure,
        rho,
        nu);
  }

  /** The same glider with a curved plate of one or two walls for a wing. */
  GlidePerformance alternative(Airframe airframe, double mass, double wingMass) {
    Wing wing = airframe.wing();
    double wall = brief.wingShell().wallThickness().si();
    double chord = wing.planform().meanAerodynamicChord().si();
    double plate = brief.material().density().si() * wall * wing.planform().area().si();
    double thickness = Math.min(0.05, Math.max(0.005, wall / chord));
    CurvedPlatePolar polar = CurvedPlatePolar.of(0.05, thickness);
    return GlidePerformance.of(drag(airframe, polar), Mass.kilograms(mass - wingMass + plate), brief.air());
  }
}
