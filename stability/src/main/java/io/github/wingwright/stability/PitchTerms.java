// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.core.aerodynamics.LiftSlope;
import io.github.wingwright.core.basis.Band;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.LiftingSurface;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** The numbers of a pitch model, each as a step: slopes, places, downwash and the moment of the bodies. */
final class PitchTerms {
  static final Formula AREA_RATIO =
      Formula.named("tail area over wing area")
          .gives("s_h")
          .as("S_h / S")
          .where("S_h", "horizontal tail area", Area.SQUARE_METRE, 1e-5, 200)
          .where("S", "wing reference area", Area.SQUARE_METRE, 1e-4, 1000)
          .from(Source.DEFINITION)
          .computedBy((double tail, double wing) -> tail / wing);
  static final Formula TAIL_CENTRE =
      Formula.named("aerodynamic centre of the tail, fraction of c̄")
          .gives("h_h")
          .as("h_w + l_h/c̄")
          .where("h_w", "aerodynamic centre of the wing", 0.1, 0.6)
          .where("l_h", "tail arm", Length.METRE, -60, 60)
          .where("c̄", "mean aerodynamic chord", Length.METRE, 0.005, 20)
          .from(Source.DEFINITION)
          .computedBy((double centre, double arm, double chord) -> centre + arm / chord);
  static final Formula FREE_SLOPE =
      Formula.named("lift-curve slope of the tail with a floating elevator")
          .gives("a_h", NamedUnit.PER_RADIAN)
          .as("F·a")
          .where("F", "floating factor", 0, 1.5)
          .where("a", "lift-curve slope of the tail", NamedUnit.PER_RADIAN, 0, 7)
          .from(Sources.MOMENT_EQUATION)
          .computedBy((double factor, double slope) -> factor * slope);

  static final Formula SECTION_FACTOR =
      Formula.named("section slope over 2π")
          .gives("κ")
          .as("a_0 / (2·π)")
          .where("a_0", "lift-curve slope of the section", NamedUnit.PER_RADIAN, 2, 8)
          .from(Source.DEFINITION)
          .computedBy((double slope) -> slope / (2.0 * Math.PI));

  static final Formula PROPELLER =
      Formula.named("neutral point with a propeller ahead")
          .gives("h_n")
          .as("h_u·(1 − 0.02·l_p/c̄)")
          .where("h_u", "neutral point without the propeller", -2, 3)
          .where("l_p", "distance of the propeller ahead of the centre of gravity", Length.METRE, -20, 20)
          .where("c̄", "mean aerodynamic chord", Length.METRE, 0.005, 20)
          .from(Sources.NEUTRAL_POINT)
          .computedBy((double h, double ahead, double chord) -> h * (1.0 - 0.02 * ahead / chord));
  static final Formula PROPELLER_SHIFT =
      Formula.named("shift of the neutral point by the propeller")
          .gives("Δh_p")
          .as("−0.02·l_p/c̄·h_u")
          .where("l_p", "distance of the propeller ahead of the centre of gravity", Length.METRE, -20, 20)
          .where("c̄", "mean aerodynamic chord", Length.METRE, 0.005, 20)
          .where("h_u", "neutral point without the propeller", -2, 3)
          .from(Sources.NEUTRAL_POINT)
          .computedBy((double ahead, double chord, double h) -> -0.02 * ahead / chord * h);

  private static final double POTENTIAL_SLOPE = 2.0 * Math.PI;
  private static final Source POTENTIAL = Source.library("2π, potential flow: no section data were given");
  private static final Source QUARTER_CHORD = Source.library("the quarter chord of thin sections in potential flow");
  private static final Source NO_TAIL = Source.library("the airframe has no horizontal tail");

  private final PitchChoices choices;
  final Step area;
  final Step chord;
  final Step aspectRatio;
  /** Slope of the wing as it lifts on the aircraft, behind a foreplane if there is one. */
  final Step wingSlope;

  /** Slope of the wing against the flow that it sees. */
  final Step wingAlone;

  final Step wingCentre;
  final Step fuselageSlope;
  final Step efficiency;

  /** Tail efficiency without a slipstream. */
  private final Step unpowered;

  /** The terms of a propeller; null without one. */
  final @Nullable PowerTerms power;

  final Step areaRatio;
  final Step tailSlope;
  final Step downwash;
  final Step tailCentre;

  /** Where the lift of the tail acts in trim: a foreplane's wake turns the fuselage as well. */
  final Step trimCentre;

  final Step tailOnWing;

  /** The methods of downwash; null without a tail behind the wing. */
  final @Nullable Downwash methods;

  /** What of the lift of its panels a tail has upwards: cos Γ of a V-tail, else 1. */
  final double tailUpright;

  final boolean hasTail;
  final boolean hasForeplane;

  PitchTerms(PitchChoices choices) {
    this.choices = choices;
    Wing wing = choices.airframe.wing();
    Planform p = wing.planform();
    area = Step.given("wing reference area", "S", p.area(), Sources.AIRFRAME);
    chord = Step.given("mean aerodynamic chord", "c̄", p.meanAerodynamicChord(), Sources.AIRFRAME);
    aspectRatio = Step.given("aspect ratio", "A", p.aspectRatio(), Sources.AIRFRAME);
    wingCentre = Step.given("aerodynamic centre of the wing, fraction of c̄", "h_w", 0.25, QUARTER_CHORD);
    power =
        choices.propeller == null ? null : new PowerTerms(choices.propeller, choices.centreOfGravityHeight, area);
    unpowered =
        Step.given(
            "tail efficiency",
            "η_h",
            choices.tailEfficiency(),
            choices.arrangement().tailEfficiency(choices.aircraftClass).source());
    efficiency = power == null ? unpowered : power.efficiency(unpowered);
    Step alone = slope("lift-curve slope of the wing", "a_w", wing, choices.wingSection);
    wingAlone = alone;
    @Nullable Tail tail = choices.airframe.pitchTail().orElse(null);
    hasTail = tail != null;
    tailUpright = tail != null && tail.role() == Tail.Role.V ? Math.cos(dihedral(tail).si()) : 1.0;
    double arm = tail == null ? 0.0 : tail.armFrom(wing).si();
    hasForeplane = arm < 0.0;
    if (tail == null) {
      methods = null;
      downwash = Step.given("downwash gradient", "ε_α", 0.0, NO_TAIL);
      areaRatio = Step.given("tail area over wing area", "s_h", 0.0, NO_TAIL);
      tailSlope = new Step.Given("lift-curve slope of the tail", "a_h", NamedUnit.PER_RADIAN, 0.0, NO_TAIL);
      tailCentre = Step.given("aerodynamic centre of the tail", "h_h", 0.25, NO_TAIL);
    } else {
      Step armStep = Step.given("tail arm", "l_h", tail.armFrom(wing), Sources.AIRFRAME);
      areaRatio =
          Step.of(AREA_RATIO, Step.given(area(tail), "S_h", tail.areaInOwnPlane(), Sources.AIRFRAME), area);
      Step slope = tailSlope(tail);
      tailSlope =
          choices.floatingFactor == 1.0
              ? slope
              : Step.of(
                  FREE_SLOPE, Step.given("floating factor", "F", choices.floatingFactor, Source.BRIEF), slope);
      tailCentre = Step.of(TAIL_CENTRE, wingCentre, armStep, chord);
      if (hasForeplane) {
        methods = null;
        downwash = DownwashMethod.ELLIPTIC_LIFTING_LINE.step(Downwash.terms(wing, tail, alone));
      } else {
        methods = Downwash.at(wing, tail, alone, choices.downwashMethod);
        downwash = methods.step(choices.downwashMethod);
      }
    }
    tailOnWing = Step.of(NeutralPoint.TAIL_SLOPE, efficiency, areaRatio, tailSlope, downwash);
    wingSlope = hasForeplane ? Step.of(Foreplane.WING_SLOPE, alone, tailOnWing, aspectRatio) : alone;
    fuselageSlope = bodies(wing, arm);
    trimCentre = hasForeplane ? Step.of(Foreplane.TRIM_CENTRE, tailCentre, fuselageSlope, aspectRatio) : tailCentre;
  }

  private Step bodies(Wing wing, double arm) {
    Step far = Step.of(DownwashFormulas.FAR_ELLIPTIC, wingSlope, aspectRatio);
    // Ahead of the wing there is no tail whose downwash could be reached: the flow behind the wing is that far away.
    double behind = hasForeplane ? 0.0 : arm;
    Step gradient = hasForeplane ? far : downwash;
    Step fuselage =
        choices.fuselageMethod.step(
            new FuselageMethod.Context(choices.airframe.fuselage(), wing, area, chord, far, gradient, behind));
    if (choices.nacelles.isEmpty()) {
      return fuselage;
    }
    List<Step> all = new ArrayList<>();
    all.add(fuselage);
    for (Fuselage nacelle : choices.nacelles) {
      all.add(
          FuselageMethod.MUNK.step(
              new FuselageMethod.Context(nacelle, wing, area, chord, far, gradient, behind)));
    }
    return Step.sum("moment slope of fuselage and nacelles", "C_mα,f", all);
  }

  private static String area(Tail tail) {
    return tail.role() == Tail.Role.V ? "V-tail area in its own planes" : "horizontal tail area";
  }

  /** Slope in pitch: of a V-tail what its dihedral leaves of the slope of its panels. */
  private Step tailSlope(Tail tail) {
    if (tail.role() != Tail.Role.V) {
      return slope("lift-curve slope of the tail", "a_h", tail, choices.tailSection);
    }
    return Step.of(
        VTail.PITCH_SLOPE, panelSlope(tail), Step.given("dihedral of each half", "Γ", dihedral(tail), Sources.AIRFRAME));
  }

  /** Slope of the panels of a V-tail in their own plane. */
  Step panelSlope(Tail tail) {
    return slope("lift-curve slope in the panel's own plane", "a_N", tail, choices.tailSection);
  }

  static Angle dihedral(Tail tail) {
    return Angle.radians(Math.abs(tail.planform().equivalentDihedral().si()));
  }

  private static Step slope(
      String name, String symbol, LiftingSurface surface, PitchChoices.@Nullable Section section) {
    Planform p = surface.planform();
    double sectionSlope = section == null ? POTENTIAL_SLOPE : section.polar().liftSlope(section.reynolds()).likely();
    Source source = section == null ? POTENTIAL : section.polar().source();
    return Step.of(
        name,
        symbol,
        LiftSlope.HANDBOOK,
        surface instanceof Tail
            ? Step.given("aspect ratio of the tail", "A_h", ownAspectRatio(surface), Sources.AIRFRAME)
            : Step.given("aspect ratio", "A", ownAspectRatio(surface), Sources.AIRFRAME),
        Step.given("compressibility factor", "β", 1.0, Source.library("slow flight, no compressibility")),
        Step.of(
            SECTION_FACTOR,
            new Step.Given("lift-curve slope of the section", "a_0", NamedUnit.PER_RADIAN, sectionSlope, source)),
        Step.given("sweep of the half-chord line", "Λ_½", p.sweepAt(0.5), Sources.AIRFRAME));
  }

  /** Aspect ratio of a surface; of a V-tail that of its panels in their own planes. */
  private static double ownAspectRatio(LiftingSurface surface) {
    double projected = surface.planform().aspectRatio();
    return surface instanceof Tail tail && tail.role() == Tail.Role.V
        ? projected / Math.cos(dihedral(tail).si())
        : projected;
  }

  /** How far the centre of gravity must move for the tail to lift only what it can, from the moment equation. */
  Length relief(double tailLift, double usable, double lift) {
    double arm = Math.abs(trimCentre.value() - wingCentre.value() + fuselageSlope.value() / wingAlone.value());
    double excess = (Math.abs(tailLift) - usable) * efficiency.value() * areaRatio.value();
    return Length.metres(excess * arm / Math.max(Math.abs(lift), 1e-3) * chord.value());
  }

  /** A place as a fraction of the mean aerodynamic chord. */
  Step fraction(String name, Length x) {
    return Step.of(
        StaticMargin.FRACTION,
        Step.given(name, "x_cg", x, Sources.ASKED),
        Step.given(
            "leading edge of the mean aerodynamic chord",
            "x_c",
            choices.airframe.wing().meanAerodynamicChordX(),
            Sources.AIRFRAME),
        chord);
  }

  private Step position(Step tailEfficiency) {
    return Step.of(
        NeutralPoint.POSITION,
        wingSlope,
        wingCentre,
        fuselageSlope,
        tailEfficiency,
        areaRatio,
        tailSlope,
        downwash,
        tailCentre);
  }

  NeutralPoint neutralPoint() {
    Step without = position(unpowered);
    Step position = without;
    Step tail = power == null ? tailOnWing : Step.of(NeutralPoint.TAIL_SLOPE, unpowered, areaRatio, tailSlope, downwash);
    List<Step> contributions = new ArrayList<>();
    contributions.add(wingCentre);
    if (hasTail) {
      contributions.add(Step.of(NeutralPoint.TAIL_SHIFT, tail, tailCentre, wingCentre, wingSlope));
    }
    contributions.add(Step.of(NeutralPoint.FUSELAGE_SHIFT, fuselageSlope, wingSlope, tail));
    List<Finding> found = findings();
    if (power != null) {
      List<Step> shifts = shifts(power, without);
      contributions.addAll(shifts);
      List<Step> parts = new ArrayList<>(List.of(without));
      parts.addAll(shifts);
      position = Step.sum("neutral point with power", "h_n", parts);
      found.addAll(
          Objects.requireNonNull(choices.propeller)
              .findings(
                  position.value() - without.value(),
                  choices.airframe.wing().planform().meanAerodynamicChord(),
                  power.discThrust.value()));
    }
    if (choices.propellerAhead.si() != 0.0) {
      Step ahead =
          Step.given(
              "distance of the propeller ahead of the centre of gravity", "l_p", choices.propellerAhead, Source.BRIEF);
      contributions.add(Step.of(PROPELLER_SHIFT, ahead, chord, position));
      position = Step.of(PROPELLER, position, ahead, chord);
    }
    Band band =
        methods == null
            ? Band.exactly(position.value())
            : band(methods.band(), position.value(), power == null ? 0.0 : position.value() - without.value());
    Wing wing = choices.airframe.wing();
    return new NeutralPoint(
        position,
        wing.meanAerodynamicChordX(),
        wing.planform().meanAerodynamicChord(),
        contributions,
        band,
        found);
  }

  /** What a propeller moves: slipstream on the tail, then thrust line and normal force about the point that this leaves. */
  private List<Step> shifts(PowerTerms terms, Step without) {
    if (choices.propellerAhead.si() != 0.0) {
      throw new IllegalStateException(
          "a propeller (" + choices.propeller + ") and the rule for a propeller ahead (" + choices.propellerAhead
              + ") conflict: give one");
    }
    Step inSlipstream = position(efficiency);
    List<Step> shifts = new ArrayList<>();
    if (hasTail) {
      shifts.add(Step.of(PropellerFormulas.SLIPSTREAM_SHIFT, inSlipstream, without));
    }
    shifts.add(terms.thrustShift(chord));
    shifts.add(terms.normalShift(choices.airframe.wing(), this, inSlipstream));
    return shifts;
  }

  private List<Finding> findings() {
    List<Finding> findings = new ArrayList<>();
    if (!hasTail) {
      findings.add(
          Finding.of(
              Severity.NOTE,
              "horizontal tail",
              "There is none: the neutral point is that of wing and fuselage, and the wing alone must balance."
                  + " Use sweep with washout or a section with reflex.",
              Source.library("a layout without a tail")));
      return findings;
    }
    if (methods != null) {
      findings.addAll(methods.findings());
    }
    TailArrangement arrangement = choices.arrangement();
    arrangement.tailEfficiency(choices.aircraftClass).check(unpowered.value()).ifPresent(findings::add);
    if (arrangement == TailArrangement.T_TAIL) {
      findings.add(
          Finding.of(
              Severity.NOTE,
              "T-tail",
              "Far above the stall the wake of the wing reaches the tail and elevator and margin fade. Keep the wing from"
                  + " being stalled deeply: forward centre of gravity, little up elevator.",
              Source.COMMON_PRACTICE));
    }
    return findings;
  }

  private Band band(Band epsilon, double likely, double powerShift) {
    double atLeast = fraction(epsilon.high()) + powerShift;
    double atMost = fraction(epsilon.low()) + powerShift;
    return new Band(Math.min(likely, Math.min(atLeast, atMost)), likely, Math.max(likely, Math.max(atLeast, atMost)));
  }

  private double fraction(double epsilon) {
    double h =
        NeutralPoint.position(
            wingSlope.value(),
            wingCentre.value(),
            fuselageSlope.value(),
            unpowered.value(),
            areaRatio.value(),
            tailSlope.value(),
            epsilon,
            tailCentre.value());
    return h * (1.0 - 0.02 * choices.propellerAhead.si() / chord.value());
  }
}
