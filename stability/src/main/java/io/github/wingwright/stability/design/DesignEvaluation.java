// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import io.github.wingwright.core.aerodynamics.DragBreakdown;
import io.github.wingwright.core.aircraft.Aircraft;
import io.github.wingwright.core.atmosphere.FlightCondition;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Workings;
import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.mass.MassStatement;
import io.github.wingwright.core.performance.GlidePerformance;
import io.github.wingwright.core.performance.ThrowCheck;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.stability.DownwashMethod;
import io.github.wingwright.stability.FuselageMethod;
import io.github.wingwright.stability.LateralStability;
import io.github.wingwright.stability.NeutralPoint;
import io.github.wingwright.stability.PitchModel;
import io.github.wingwright.stability.StaticMargin;
import io.github.wingwright.stability.Trim;
import java.util.List;

/**
 * Reckons a design forward from its dimensions as they are made, and keeps a step for every number.
 *
 * <p>The order is that of the design: air, wing, fuselage, station, tails, masses, neutral point, glide, trim. Each part of
 * it is a class of its own that puts its numbers into the {@link DesignNumbers}.
 */
final class DesignEvaluation {
  private final DesignBrief brief;
  private final SizedGlider sized;
  private final DesignNumbers numbers = new DesignNumbers();

  DesignEvaluation(SizedGlider sized) {
    this.brief = sized.brief();
    this.sized = sized;
  }

  Design design() {
    Step rho = numbers.add("air.density_kg_per_m3", brief.air().densityStep(Source.BRIEF));
    Step nu = numbers.add("air.kinematic_viscosity_m2_per_s", brief.air().kinematicViscosityStep(Source.BRIEF));
    WingAndBody shape = new WingAndBody(sized, numbers);
    TailPlates plates = new TailPlates(sized, numbers);
    GlideNumbers gliding = new GlideNumbers(sized, numbers);
    Planform wingPlanform = shape.wing();
    Fuselage fuselage = shape.fuselage();
    Wing placed = shape.station(wingPlanform, fuselage);
    Tail horizontal = plates.horizontalTail(fuselage);
    Tail vertical = plates.verticalTail(fuselage, horizontal.placement().z());
    Airframe airframe = new Airframe(fuselage, placed, List.of(horizontal, vertical));
    MassStatement masses = new PartMasses(sized, numbers).masses(airframe);
    Step mass = numbers.at("mass_kg");
    double trimReynolds = sized.quick().trimReynolds(mass.value());
    PitchModel pitch = pitchModel(airframe, trimReynolds);
    NeutralPoint neutralPoint = pitch.neutralPoint();
    Step np =
        numbers.add(
            "neutral_point.x_m",
            Step.of("neutral point", "x_np", DesignFormulas.PLACE, numbers.step("x_w"), numbers.trace(neutralPoint.step()), numbers.step("c̄")));
    Step fraction = numbers.trace(Step.of(DesignFormulas.FRACTION, numbers.at("centre_of_gravity.x_m"), numbers.step("x_w"), numbers.step("c̄")));
    numbers.add("static_margin", Step.of(StaticMargin.MARGIN, numbers.trace(neutralPoint.step()), fraction));
    StaticMargin margin = StaticMargin.of(neutralPoint, masses.centreOfGravity().x(), brief.aircraftClass());
    numbers.findings().addAll(neutralPoint.findings());
    for (Finding finding : margin.findings()) {
      numbers.findings().add(NoseAmount.added(finding, margin, new Aircraft(airframe, masses)));
    }
    GlidePerformance glide = GlidePerformance.of(gliding.drag(airframe), Mass.kilograms(mass.value()), brief.air());
    gliding.glideSteps(glide, mass, rho, nu);
    ThrowCheck throwCheck = glide.thrownAt(brief.launch().speed(masses.mass()));
    numbers.findings().addAll(glide.findings());
    numbers.findings().addAll(throwCheck.findings());
    numbers.findings().addAll(brief.launch().findings(masses.mass()));
    double trimLift = trimLift().value();
    Trim trim = pitch.trim(masses.centreOfGravity().x(), trimLift);
    numbers.add("decalage_rad", trim.step());
    numbers.findings().addAll(trim.findings());
    LateralStability lateral = LateralStability.of(airframe, trimLift, brief.aircraftClass());
    numbers.add("spiral_parameter_rad", lateral.step());
    numbers.findings().addAll(lateral.findings());
    DragBreakdown build =
        glide.drag().rest().at(FlightCondition.of(brief.air(), glide.bestGlide().speed()));
    numbers.add("drag.coefficient_without_wing", build.coefficient());
    GlidePerformance alternative = gliding.alternative(airframe, mass.value(), masses.item("wing").orElseThrow().mass().si());
    numbers.findings().addAll(sized.wing().findings());
    numbers.findings().addAll(sized.fuselage().findings());
    numbers.findings().addAll(Workings.of(List.copyOf(numbers.all().values())).findings());
    balanceFindings(np);
    return new Design(
        brief,
        sized.wing(),
        sized.fuselage(),
        new Aircraft(airframe, masses),
        pitch,
        neutralPoint,
        margin,
        glide,
        alternative,
        throwCheck,
        trim,
        lateral,
        build,
        numbers.all(),
        numbers.findings());
  }

  private Step trimLift() {
    Step ratio =
        Step.given(
            "speed in trim over stall speed", "r", QuickDesign.TRIM_SPEED_RATIO, Source.library("trimmed well above the stall"));
    return numbers.keep("C_L", Step.of(DesignFormulas.TRIM_LIFT, numbers.at("wing.lift_coefficient_usable"), ratio));
  }

  private PitchModel pitchModel(Airframe airframe, double wingReynolds) {
    double ratio =
        airframe.tails().get(0).planform().meanAerodynamicChord().dividedBy(airframe.wing().planform().meanAerodynamicChord());
    return PitchModel.of(airframe)
        .forClass(brief.aircraftClass())
        .withDownwash(DownwashMethod.HANDBOOK)
        .withFuselageMoment(FuselageMethod.MUNK)
        .withTailEfficiency(PartGeometry.TAIL_EFFICIENCY)
        .withWingSection(brief.wingPolar(), wingReynolds)
        .withTailSection(brief.tailPolar(), wingReynolds * ratio);
  }

  private void balanceFindings(Step neutralPoint) {
    double station = numbers.at("wing.leading_edge_x_m").value();
    Interval travel = sized.quick().travel();
    if (sized.balance().ballast() > 0.0) {
      numbers.findings().add(
          Finding.of(
              Severity.NOTE,
              "ballast",
              "No station of the wing balances it; the nose carries ballast. A longer nose or lighter tails save some of it.",
              numbers.at("ballast_kg").value(),
              Interval.atMost(0.1 * numbers.at("mass_kg").value()),
              Mass.GRAM,
              Source.COMMON_PRACTICE));
    } else if (sized.balance().station() <= travel.lower()) {
      numbers.findings().add(
          Finding.of(
              Severity.CAUTION,
              "wing station",
              "The wing sits as far forward as it may and the margin is still more than was asked: the neutral point is at "
                  + neutralPoint.unit().format(neutralPoint.value(), 4)
                  + ". Let it sit further forward, or make the tail smaller.",
              station,
              travel,
              Length.MILLIMETRE,
              Source.library("wing station first, ballast second")));
    }
  }
}
