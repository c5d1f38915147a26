// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

import io.github.wingwright.core.atmosphere.Air;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * How the friction of a surface is reckoned: laminar, turbulent, mixed, or a laminar part; smooth or rough.
 *
 * <p>Roughness acts on the turbulent law alone, through its cut-off Reynolds number, and so does compressibility. Whether
 * it trips the laminar layer is a finding, not a change: the place of transition is the caller's. Above the cut-off a rough
 * surface is reckoned as a smooth one at Re_cut, with transition at the same part of the length:
 *
 * <pre>{@code C_f = C_t(Re_cut) − Re_t/Re·(C_t(Re_t·Re_cut/Re) − C_l(Re_t))}</pre>
 *
 * <p>So the turbulent friction that is taken off in front is that of a front as rough as the rest. It is continuous at
 * transition and at the cut-off, and roughness never lessens it. Example: Re = 4·10⁶ on 1 m, transition at 10⁶, k = 50 µm
 * gives 0.00320291; smooth, 0.00270763.
 */
public final class FrictionModel implements Serializable {
  private static final long serialVersionUID = 1L;

  private enum Kind {
    FIXED,
    LAMINAR,
    TURBULENT,
    MIXED,
    CONTINUOUS,
    PARTLY_LAMINAR
  }

  private static final Source CHOSEN = Source.library("choice of the friction model");

  private final Kind kind;
  private final TurbulentFriction law;
  private final double parameter;
  private final double roughness;

  private FrictionModel(Kind kind, TurbulentFriction law, double parameter, double roughness) {
    this.kind = kind;
    this.law = law;
    this.parameter = parameter;
    this.roughness = roughness;
  }

  /**
   * A friction coefficient that does not depend on the flow: for comparing shapes alone.
   *
   * @param coefficient C_f, positive
   * @return the model
   */
  public static FrictionModel fixed(double coefficient) {
    return new FrictionModel(
        Kind.FIXED,
        TurbulentFriction.PRANDTL_SCHLICHTING,
        Door.positive(coefficient, "friction coefficient"),
        0.0);
  }

  /**
   * A layer that is laminar throughout.
   *
   * @return the model
   */
  public static FrictionModel laminar() {
    return new FrictionModel(Kind.LAMINAR, TurbulentFriction.PRANDTL_SCHLICHTING, 0.0, 0.0);
  }

  /**
   * A layer that is turbulent throughout.
   *
   * @param law turbulent law
   * @return the model
   */
  public static FrictionModel turbulent(TurbulentFriction law) {
    Objects.requireNonNull(law, "law");
    return new FrictionModel(Kind.TURBULENT, law, 0.0, 0.0);
  }

  /**
   * A layer that turns turbulent at a Reynolds number; below it, laminar throughout.
   *
   * @param transitionReynolds Reynolds number of transition on the distance run, positive; 5·10⁵ on a smooth plate
   * @param law turbulent law
   * @return the model
   */
  public static FrictionModel mixed(double transitionReynolds, TurbulentFriction law) {
    Objects.requireNonNull(law, "law");
    return new FrictionModel(
        Kind.MIXED, law, Door.positive(transitionReynolds, "Reynolds number of transition"), 0.0);
  }

  /**
   * A layer that turns turbulent at a Reynolds number and is just as thick behind transition as in front of it; below it,
   * laminar throughout. See {@link SkinFriction#mixedWithContinuousThickness}.
   *
   * @param transitionReynolds Reynolds number of transition on the distance run, positive
   * @param law turbulent law
   * @return the model
   */
  public static FrictionModel mixedWithContinuousThickness(double transitionReynolds, TurbulentFriction law) {
    Objects.requireNonNull(law, "law");
    return new FrictionModel(
        Kind.CONTINUOUS, law, Door.positive(transitionReynolds, "Reynolds number of transition"), 0.0);
  }

  /**
   * A surface of which a part is laminar, reckoned as handbooks do; {@link AttainableLaminar} has what aircraft keep.
   *
   * @param laminarPart laminar part of the wetted area, 0 to 1
   * @param law turbulent law
   * @return the model
   */
  public static FrictionModel partlyLaminar(double laminarPart, TurbulentFriction law) {
    Objects.requireNonNull(law, "law");
    return new FrictionModel(
        Kind.PARTLY_LAMINAR, law, Door.within(laminarPart, 0.0, 1.0, "laminar part"), 0.0);
  }

  /**
   * The same model on a rough surface.
   *
   * @param height height of the roughness k, not negative; zero for smooth
   * @return the model
   */
  public FrictionModel withRoughness(Length height) {
    Objects.requireNonNull(height, "height of the roughness");
    return new FrictionModel(kind, law, parameter, Door.notNegative(height, "height of the roughness").si());
  }

  /**
   * The same model with another turbulent law.
   *
   * @param other turbulent law
   * @return the model
   */
  public FrictionModel by(TurbulentFriction other) {
    Objects.requireNonNull(other, "law");
    return new FrictionModel(kind, other, parameter, roughness);
  }

  /** The laminar part of the wetted area where it was given, else 0. */
  double givenLaminarPart() {
    return kind == Kind.PARTLY_LAMINAR ? parameter : 0.0;
  }

  /** The two ways to reckon transition at the same place; only this model for one without a transition. */
  List<FrictionModel> byEachTransition() {
    return kind == Kind.MIXED || kind == Kind.CONTINUOUS
        ? List.of(
            new FrictionModel(Kind.MIXED, law, parameter, roughness),
            new FrictionModel(Kind.CONTINUOUS, law, parameter, roughness))
        : List.of(this);
  }

  /** Where the way to reckon transition comes from. */
  Source transitionSource() {
    return kind == Kind.CONTINUOUS ? SkinFriction.SPREAD.source() : SkinFriction.MIXED.source();
  }

  /** How transition is reckoned, in words. */
  String transitionWords() {
    return kind == Kind.CONTINUOUS ? "transition, thickness continuous" : "transition, friction substituted";
  }

  /**
   * Whether the layer is laminar throughout at a Reynolds number.
   *
   * @param reynolds Reynolds number on the length
   * @return false where a turbulent law has a say, or friction is fixed
   */
  public boolean isLaminarAt(double reynolds) {
    return kind != Kind.FIXED && !isTurbulentAt(reynolds);
  }

  /**
   * Whether a turbulent law has a say at a Reynolds number.
   *
   * @param reynolds Reynolds number on the length
   * @return false where the layer is laminar throughout, or friction is fixed
   */
  public boolean isTurbulentAt(double reynolds) {
    return switch (kind) {
      case FIXED, LAMINAR -> false;
      case TURBULENT -> true;
      case MIXED, CONTINUOUS -> reynolds > parameter;
      case PARTLY_LAMINAR -> parameter < 1.0;
    };
  }

  /**
   * Mean friction coefficient of one side.
   *
   * @param reynolds Reynolds number on the length, positive
   * @param length length along the flow [m], positive; matters on a rough surface only
   * @param mach Mach number, not negative
   * @return C_f
   */
  public double coefficient(double reynolds, double length, double mach) {
    return switch (kind) {
      case FIXED -> parameter;
      case LAMINAR -> SkinFriction.laminar(reynolds);
      case TURBULENT -> turbulent(reynolds, length, mach);
      case MIXED, CONTINUOUS ->
          reynolds <= parameter ? SkinFriction.laminar(reynolds) : withTransition(reynolds, length, mach);
      case PARTLY_LAMINAR ->
          SkinFriction.weighted(parameter, SkinFriction.laminar(reynolds), turbulent(reynolds, length, mach));
    };
  }

  private double withTransition(double reynolds, double length, double mach) {
    double effective = effective(reynolds, length);
    double transition =
        effective < reynolds ? Roughness.transitionAtCutOff(parameter, effective, reynolds) : parameter;
    double laminar = SkinFriction.laminar(parameter);
    if (kind == Kind.MIXED) {
      return SkinFriction.substituted(
          smooth(effective, mach), parameter, reynolds, smooth(transition, mach), laminar);
    }
    double divisor = SkinFriction.compressibilityDivisor(mach);
    double start = law.reynoldsForFrictionLength(SkinFriction.frictionLength(transition, laminar, divisor));
    double behind = SkinFriction.turbulentLength(effective, transition, start);
    return SkinFriction.spread(smooth(behind, mach), behind, effective);
  }

  private double turbulent(double reynolds, double length, double mach) {
    return smooth(effective(reynolds, length), mach);
  }

  /** The Reynolds number that counts in the turbulent law: the cut-off, where that is less. */
  private double effective(double reynolds, double length) {
    return roughness > 0.0 ? Roughness.effectiveReynolds(reynolds, Roughness.cutOffReynolds(length, roughness)) : reynolds;
  }

  private double smooth(double reynolds, double mach) {
    double friction = law.held(reynolds);
    return mach > 0.0 ? friction / SkinFriction.compressibilityDivisor(mach) : friction;
  }

  /** The friction coefficient as lines of the workings. */
  Step step(Step reynolds, Step length, Step mach) {
    return switch (kind) {
      case FIXED -> Step.given("skin friction", "C_f", parameter, CHOSEN);
      case LAMINAR -> Step.of(SkinFriction.LAMINAR, reynolds);
      case TURBULENT -> turbulentStep("C_f", effectiveStep(reynolds, length), mach);
      case MIXED, CONTINUOUS -> reynolds.value() <= parameter
          ? Step.of(SkinFriction.LAMINAR, reynolds)
          : transitionStep(reynolds, length, mach);
      case PARTLY_LAMINAR ->
          Step.of(
              SkinFriction.PARTLY_LAMINAR,
              Step.given("laminar part of the wetted area", "k_l", parameter, CHOSEN),
              Step.of("laminar skin friction", "C_l", SkinFriction.LAMINAR, reynolds),
              turbulentStep("C_t", effectiveStep(reynolds, length), mach));
    };
  }

  private Step transitionStep(Step reynolds, Step length, Step mach) {
    Step given = Step.given("Reynolds number of transition", "Re_t", parameter, CHOSEN);
    Step laminar = Step.of("laminar friction at transition", "C_lt", SkinFriction.LAMINAR, given);
    Step effective = effectiveStep(reynolds, length);
    Step transition =
        effective.value() < reynolds.value() ? Step.of(Roughness.TRANSITION_AT_CUT_OFF, given, effective, reynolds) : given;
    if (kind == Kind.MIXED) {
      return Step.of(
          SkinFriction.MIXED,
          turbulentStep("C_t", effective, mach),
          given,
          reynolds,
          turbulentStep("C_tt", transition, mach),
          laminar);
    }
    Step frictionLength =
        Step.of(SkinFriction.FRICTION_LENGTH, transition, laminar, Step.of(SkinFriction.COMPRESSIBILITY, mach));
    Step behind =
        Step.of(SkinFriction.TURBULENT_LENGTH, effective, transition, law.startStep(frictionLength));
    return Step.of(SkinFriction.SPREAD, turbulentStep("C_t", behind, mach), behind, effective);
  }

  private Step effectiveStep(Step reynolds, Step length) {
    if (!(roughness > 0.0)) {
      return reynolds;
    }
    Step height = Step.given("height of the roughness", "k", Length.metres(roughness), CHOSEN);
    return Step.of(Roughness.EFFECTIVE, reynolds, Step.of(Roughness.CUT_OFF, length, height));
  }

  private Step turbulentStep(String symbol, Step effective, Step mach) {
    Step friction = law.step(symbol, effective);
    return mach.value() > 0.0
        ? Step.of(
            "turbulent skin friction at the Mach number",
            symbol,
            SkinFriction.COMPRESSIBLE,
            friction,
            Step.of(SkinFriction.COMPRESSIBILITY, mach))
        : friction;
  }

  /** What to know about the friction at a speed: laws that are used outside of what they were stated for, and tripping. */
  List<Finding> findings(double speed, double length, double kinematicViscosity, double mach) {
    double reynolds = Air.reynoldsNumber(speed, length, kinematicViscosity);
    boolean atTransition = kind == Kind.MIXED || kind == Kind.CONTINUOUS;
    List<Finding> findings = new ArrayList<>();
    boolean laminarInFront =
        kind == Kind.LAMINAR || atTransition || (kind == Kind.PARTLY_LAMINAR && parameter > 0.0);
    // handbooks take the laminar law over the whole length of a partly laminar surface, however long: that is their method
    if (laminarInFront && !(kind == Kind.PARTLY_LAMINAR && parameter < 1.0)) {
      findings.addAll(SkinFriction.LAMINAR.outsideDomain(atTransition ? Math.min(reynolds, parameter) : reynolds));
    }
    if (isTurbulentAt(reynolds)) {
      double effective = effective(reynolds, length);
      List<Finding> ofLaw = law.findings(effective);
      findings.addAll(ofLaw.isEmpty() && atTransition ? law.findings(parameter * effective / reynolds) : ofLaw);
      if (roughness > 0.0) {
        findings.addAll(Roughness.CUT_OFF.outsideDomain(length, roughness));
      }
      findings.addAll(SkinFriction.COMPRESSIBILITY.outsideDomain(mach));
    }
    if (roughness > 0.0 && laminarInFront) {
      // the layer is thinnest, and a grain most exposed, at the front: a twentieth of the length is taken
      double grain = Roughness.grainReynoldsInLayer(speed, roughness, 0.05 * length, kinematicViscosity);
      Roughness.TRIPS.check(grain).ifPresent(findings::add);
    }
    return findings;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof FrictionModel that
        && kind == that.kind
        && law == that.law
        && Double.compare(parameter, that.parameter) == 0
        && Double.compare(roughness, that.roughness) == 0;
  }

  @Override
  public int hashCode() {
    return (kind.hashCode() * 31 + law.hashCode()) * 31 + Double.hashCode(parameter);
  }

  @Override
  public String toString() {
    String rough = roughness > 0.0 ? ", roughness " + Length.metres(roughness) : "";
    return switch (kind) {
      case FIXED -> "friction " + parameter;
      case LAMINAR -> "laminar" + rough;
      case TURBULENT -> "turbulent" + rough;
      case MIXED -> "laminar to Re " + Math.round(parameter) + ", then turbulent" + rough;
      case CONTINUOUS -> "laminar to Re " + Math.round(parameter) + ", then turbulent and as thick" + rough;
      case PARTLY_LAMINAR -> "laminar on " + Math.round(100.0 * parameter) + " %" + rough;
    };
  }
}
