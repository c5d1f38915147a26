// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import io.github.wingwright.core.aerodynamics.LiftSlope;
import io.github.wingwright.core.aircraft.Aircraft;
import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.stability.ApparentMass;
import io.github.wingwright.stability.derivatives.BodyLateral;
import io.github.wingwright.stability.derivatives.FinLateral;
import io.github.wingwright.stability.derivatives.LateralEstimate;
import io.github.wingwright.stability.derivatives.WingLateral;
import java.util.ArrayList;
import java.util.List;

/** The lateral derivatives of an aircraft by the handbook, each term of the sums with its step. */
final class LateralTerms {
  private static final Source SHAPE = Source.library("shape of the aircraft");
  private static final Source FLIGHT = Source.library("the flight that is disturbed");
  private static final Source REFLECTED =
      Source.fromMemory("Raymer, Aircraft Design: A Conceptual Approach", "chapter 16: 1.55 times its own");
  private static final double FIN_REFLECTION = 1.55;

  final LateralEstimate.Result result;
  private final List<Step> steps = new ArrayList<>();

  /**
   * The terms of an aircraft in a flight.
   *
   * @param wingSlope step of the wing's lift slope
   * @param sectionSlope of the wing's section [1/rad]
   * @param finSectionSlope of the fin's section [1/rad]
   * @param lift lift coefficient of the wing
   * @param profileDrag profile drag coefficient of the wing
   */
  LateralTerms(Aircraft aircraft, Step wingSlope, double sectionSlope, double finSectionSlope, double lift, double profileDrag) {
    Wing wing = aircraft.airframe().wing();
    Planform p = wing.planform();
    Fuselage body = aircraft.airframe().fuselage();
    double span = p.span().si();
    double area = p.area().si();
    Length middle = clamp(wing.quarterChordX(), body.length());
    LateralEstimate.WingShape w =
        new LateralEstimate.WingShape(
            wingSlope.value(),
            sectionSlope,
            p.aspectRatio(),
            p.taperRatio(),
            p.equivalentDihedral().si(),
            p.sweepAt(0.25).si(),
            lift,
            profileDrag,
            (wing.placement().z().si() - body.centreHeightAt(middle).si()) / span);
    LateralEstimate.Body b =
        new LateralEstimate.Body(
            body.volume().si() / (area * span),
            ApparentMass.munkFactor(Math.max(1.0, body.finenessRatio())),
            body.frontalArea().si() / area,
            body.heightAt(middle).si() / span,
            body.widthAt(middle).si() / span);
    wingSteps(wingSlope, w, b);
    LateralEstimate estimate = LateralEstimate.of(w).body(b);
    if (aircraft.airframe().verticalTail().isPresent()) {
      Tail fin = aircraft.airframe().verticalTail().get();
      double depth = Math.max(1e-6, body.heightAt(middle).si());
      Step slope = finSlope(fin, finSectionSlope);
      Step ratio = given("fin area over wing area", "s_v", fin.planform().area().si() / area);
      Step sidewash =
          Step.of(
              FinLateral.SIDEWASH_FACTOR,
              ratio,
              Step.given("sweep of the wing's quarter-chord line", "Λ", p.sweepAt(0.25), SHAPE),
              given("height of the wing below the body's axis over the body's depth", "z_w", -w.height() * span / depth),
              given("aspect ratio of the wing", "A", p.aspectRatio()));
      steps.add(Step.of(FinLateral.SIDE_FORCE, slope, sidewash, ratio));
      estimate =
          estimate.fin(
              new LateralEstimate.FinShape(
                  slope.value(),
                  ratio.value(),
                  (fin.quarterChordX().si() - aircraft.centreOfGravity().x().si()) / span,
                  (fin.placement().z().si() + fin.planform().meanAerodynamicChordY().si() - aircraft.centreOfGravity().z().si()) / span,
                  sidewash.value()));
    }
    result = estimate.solve();
  }

  private static Length clamp(Length x, Length most) {
    return x.compareTo(most) > 0 ? most : x.compareTo(Length.ZERO) < 0 ? Length.ZERO : x;
  }

  private static Step given(String name, String symbol, double value) {
    return Step.given(name, symbol, value, SHAPE);
  }

  private static Step slope(String name, double value, Source source) {
    return new Step.Given(name, "a_0", NamedUnit.PER_RADIAN, value, source);
  }

  private static Step finSlope(Tail fin, double sectionSlope) {
    return Step.of(
        "lift slope of the fin",
        "a_v",
        LiftSlope.HANDBOOK,
        Step.given("effective aspect ratio of the fin", "A", FIN_REFLECTION * fin.planform().aspectRatio(), REFLECTED),
        Step.given("compressibility factor", "β", 1.0, Source.library("slow flight, no compressibility")),
        Step.given("section slope over 2π", "κ", sectionSlope / (2.0 * Math.PI), Source.library("polar of the fin's section")),
        Step.given("sweep of the half-chord line", "Λ", fin.planform().sweepAt(0.5), SHAPE));
  }

  private void wingSteps(Step wingSlope, LateralEstimate.WingShape w, LateralEstimate.Body b) {
    Step lift = Step.given("lift coefficient of the wing", "C_L", w.lift(), FLIGHT);
    Step aspect = given("aspect ratio of the wing", "A", w.aspectRatio());
    Step taper = given("taper ratio", "λ", w.taper());
    Step section = slope("lift-curve slope of the wing's section", w.sectionSlope(), Source.library("polar of the wing's section"));
    add(WingLateral.DIHEDRAL_EFFECT, wingSlope, angle("equivalent dihedral", "Γ", w.dihedral()), taper);
    add(
        WingLateral.POSITION_EFFECT,
        aspect,
        given("height of the wing above the body's axis over span", "z_b", w.height()),
        given("depth of the body over span", "d_b", b.depth()),
        given("width of the body over span", "w_b", b.width()));
    add(WingLateral.YAW_DUE_TO_SIDESLIP, lift, aspect);
    add(WingLateral.ROLL_DAMPING_WITH_LOSS, section, aspect, taper);
    add(WingLateral.ROLL_DUE_TO_YAW_RATE, lift, taper);
    add(WingLateral.YAW_DUE_TO_ROLL_RATE, lift, aspect);
    add(WingLateral.YAW_DAMPING, Step.given("profile drag coefficient of the wing", "C_D0", w.profileDrag(), FLIGHT), taper);
    add(
        BodyLateral.YAW_DUE_TO_SIDESLIP,
        given("difference of the apparent-mass factors", "k", b.apparentMass()),
        given("volume of the body over S·b", "v_f", b.volume()));
    add(BodyLateral.SIDE_FORCE, given("greatest section of the body over wing area", "s_f", b.sectionRatio()));
  }

  private static Step angle(String name, String symbol, double radians) {
    return Step.given(name, symbol, Angle.radians(radians), SHAPE);
  }

  private void add(Formula formula, Step... inputs) {
    steps.add(Step.of(formula, inputs));
  }

  List<Step> steps() {
    return List.copyOf(steps);
  }
}
