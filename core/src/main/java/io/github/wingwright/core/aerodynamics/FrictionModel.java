// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

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
 * it trips the laminar layer is a finding, not a change: the place of transition is the caller's.
 */
public final class FrictionModel implements Serializable {
  private static final long serialVersionUID = 1L;

  private enum Kind {
    FIXED,
    LAMINAR,
    TURBULENT,
    MIXED,
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
   * A surface of which a part is laminar, reckoned as handbooks do.
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
    Objects.requireNonNull(height, "height");
    return new FrictionModel(kind, law, parameter, Door.notNegative(height.si(), "height of the roughness in metres"));
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
      case MIXED -> reynolds > parameter;
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
      case MIXED ->
          reynolds <= parameter
              ? SkinFriction.laminar(reynolds)
              : SkinFriction.substituted(
                  turbulent(reynolds, length, mach),
                  parameter,
                  reynolds,
                  turbulent(parameter, length, mach),
                  SkinFriction.laminar(parameter));
      case PARTLY_LAMINAR ->
          SkinFriction.weighted(parameter, SkinFriction.laminar(reynolds), turbulent(reynolds, length, mach));
    };
  }

  private double turbulent(double reynolds, double length, double mach) {
    double effective = roughness > 0.0 ? Math.min(reynolds, Roughness.cutOffReynolds(length, roughness)) : reynolds;
    double friction = law.coefficient(effective);
    return mach > 0.0 ? friction / SkinFriction.compressibilityDivisor(mach) : friction;
  }

  /** The friction coefficient as lines of the workings. */
  Step step(Step reynolds, Step length, Step mach) {
    return switch (kind) {
      case FIXED -> Step.given("skin friction", "C_f", parameter, CHOSEN);
      case LAMINAR -> Step.of(SkinFriction.LAMINAR, reynolds);
      case TURBULENT -> turbulentStep("C_f", reynolds, length, mach);
      case MIXED -> mixedStep(reynolds, length, mach);
      case PARTLY_LAMINAR ->
          Step.of(
              SkinFriction.PARTLY_LAMINAR,
              Step.given("laminar part of the wetted area", "k_l", parameter, CHOSEN),
              Step.of("laminar skin friction", "C_l", SkinFriction.LAMINAR, reynolds),
              turbulentStep("C_t", reynolds, length, mach));
    };
  }

  private Step mixedStep(Step reynolds, Step length, Step mach) {
    if (reynolds.value() <= parameter) {
      return Step.of(SkinFriction.LAMINAR, reynolds);
    }
    Step transition = Step.given("Reynolds number of transition", "Re_t", parameter, CHOSEN);
    return Step.of(
        SkinFriction.MIXED,
        turbulentStep("C_t", reynolds, length, mach),
        transition,
        reynolds,
        turbulentStep("C_tt", transition, length, mach),
        Step.of("laminar friction at transition", "C_lt", SkinFriction.LAMINAR, transition));
  }

  private Step turbulentStep(String symbol, Step reynolds, Step length, Step mach) {
    Step effective = reynolds;
    if (roughness > 0.0) {
      Step height = Step.given("height of the roughness", "k", Length.metres(roughness), CHOSEN);
      Step cutOff = Step.of(Roughness.CUT_OFF, length, height);
      effective = cutOff.value() < reynolds.value() ? cutOff : reynolds;
    }
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

  /** What to know about the friction at a speed. */
  List<Finding> findings(double speed, double length, double kinematicViscosity) {
    List<Finding> findings = new ArrayList<>();
    boolean laminarInFront = kind != Kind.TURBULENT && kind != Kind.FIXED;
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
      case PARTLY_LAMINAR -> "laminar on " + Math.round(100.0 * parameter) + " %" + rough;
    };
  }
}
