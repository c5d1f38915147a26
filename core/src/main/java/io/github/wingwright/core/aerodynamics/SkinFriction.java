// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

import io.github.wingwright.core.ConvergenceException;
import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.ConvergenceException;
import io.github.wingwright.core.quantity.KinematicViscosity;
import io.github.wingwright.core.quantity.Length;
import java.util.Objects;

/**
 * Mean skin friction of one side of a smooth flat plate.
 *
 * <pre>{@code
 * C_f = D_f / (½·ρ·V²·S_wet)        Re = V·L/ν
 * }</pre>
 *
 * <p>A laminar layer has a law that follows from theory; a turbulent one has several that were fitted to measurements and
 * agree within 3 % from 10⁵ to 10⁷. Which one to use is the caller's choice: {@link TurbulentFriction}. Where the layer is
 * laminar in front and turbulent behind, {@link #mixed} takes off the turbulent friction of the front part and puts the
 * laminar one in its place, with the same turbulent law on both sides of the sum. (The constants that are usually printed
 * for that sum, 1050, 1700, 3300 and 8700, mix two laws and jump at transition.)
 *
 * <p>Below a Reynolds number of about 5·10⁴ a plate at no angle of attack is laminar throughout; a section with thickness
 * or lift separates and does not reattach, and no friction law describes it: see {@link EstimatedPolar}.
 */
public final class SkinFriction {

  /** Laminar friction. */
  public static final Formula LAMINAR =
      Formula.named("laminar skin friction")
          .gives("C_f")
          .as("1.328 / √(Re)")
          .where("Re", "Reynolds number", 1e3, 3e6)
          .from(Sources.BLASIUS)
          .computedBy(SkinFriction::laminar);

  /** Turbulent friction after Prandtl and Schlichting. */
  public static final Formula PRANDTL_SCHLICHTING =
      Formula.named("turbulent skin friction, Prandtl and Schlichting")
          .gives("C_f")
          .as("0.455 / log10(Re)^2.58")
          .where("Re", "Reynolds number", 1e5, 1e9)
          .from(Sources.FRICTION_LIST)
          .computedBy(SkinFriction::prandtlSchlichting);

  /** Turbulent friction by the fifth root. */
  public static final Formula FIFTH_ROOT =
      Formula.named("turbulent skin friction, fifth-root law")
          .gives("C_f")
          .as("0.074 / Re^0.2")
          .where("Re", "Reynolds number", 1e5, 1e7)
          .from(Sources.FIFTH_ROOT)
          .computedBy(SkinFriction::fifthRoot);

  /** Friction of a layer that is laminar in front and turbulent behind. */
  public static final Formula MIXED =
      Formula.named("skin friction, laminar to transition")
          .gives("C_f")
          .as("C_t − Re_t/Re·(C_tt − C_lt)")
          .where("C_t", "turbulent friction at Re", 1e-4, 0.05)
          .where("Re_t", "Reynolds number of transition", 1e4, 1e7)
          .where("Re", "Reynolds number, above Re_t", 1e4, 1e9)
          .where("C_tt", "turbulent friction at Re_t", 1e-4, 0.05)
          .where("C_lt", "laminar friction at Re_t", 1e-4, 0.05)
          .from(Source.library("Prandtl's substitution of the front part, with one turbulent law throughout"))
          .computedBy(SkinFriction::substituted);

  /** Friction length of the laminar part, as a turbulent layer must have it at transition. */
  public static final Formula FRICTION_LENGTH =
      Formula.named("friction length of the laminar part")
          .gives("Λ_t")
          .as("Re_t·C_lt·k_M")
          .where("Re_t", "Reynolds number of transition", 1e4, 1e7)
          .where("C_lt", "laminar friction at Re_t", 1e-4, 0.05)
          .where("k_M", "divisor for compressibility", 1, 3)
          .from(Source.library("momentum thickness continuous at transition"))
          .computedBy(SkinFriction::frictionLength);

  /** Reynolds number on the length of a turbulent layer that began ahead of transition. */
  public static final Formula TURBULENT_LENGTH =
      Formula.named("Reynolds number of the turbulent layer")
          .gives("Re_e")
          .as("Re − Re_t + Re_0")
          .where("Re", "Reynolds number, above Re_t", 1e4, 1e9)
          .where("Re_t", "Reynolds number of transition", 1e4, 1e7)
          .where("Re_0", "Reynolds number at which the turbulent layer would be as thick as the laminar one", 1e2, 1e7)
          .from(Source.library("momentum thickness continuous at transition"))
          .computedBy(SkinFriction::turbulentLength);

  /** Friction of a turbulent layer over its length, spread over the length of the surface. */
  public static final Formula SPREAD =
      Formula.named("skin friction, thickness continuous at transition")
          .gives("C_f")
          .as("C_t·Re_e / Re")
          .where("C_t", "turbulent friction at Re_e", 1e-4, 0.05)
          .where("Re_e", "Reynolds number of the turbulent layer", 1e4, 1e9)
          .where("Re", "Reynolds number", 1e4, 1e9)
          .from(Source.library("momentum thickness continuous at transition"))
          .computedBy(SkinFriction::spread);

  /** Friction as a weighted mean of the two laws. */
  public static final Formula PARTLY_LAMINAR =
      Formula.named("skin friction, part of the surface laminar")
          .gives("C_f")
          .as("k_l·C_l + (1 − k_l)·C_t")
          .where("k_l", "laminar part of the wetted area", 0, 1)
          .where("C_l", "laminar friction", 1e-4, 0.05)
          .where("C_t", "turbulent friction", 1e-4, 0.05)
          .from(Sources.raymer("sec. 12.5.3"))
          .computedBy(SkinFriction::weighted);

  /** Divisor of turbulent friction for the speed of sound. */
  public static final Formula COMPRESSIBILITY =
      Formula.named("divisor of turbulent friction for compressibility")
          .gives("k_M")
          .as("(1 + 0.144·M²)^0.65")
          .where("M", "Mach number", 0, 3)
          .from(Sources.raymer("eq. 12.27"))
          .computedBy(SkinFriction::compressibilityDivisor);

  /** Turbulent friction at a Mach number. */
  public static final Formula COMPRESSIBLE =
      Formula.named("turbulent skin friction at a Mach number")
          .gives("C_f")
          .as("C_fi / k_M")
          .where("C_fi", "turbulent friction without compressibility", 1e-4, 0.05)
          .where("k_M", "divisor for compressibility", 1, 3)
          .from(Sources.raymer("eq. 12.27"))
          .computedBy(SkinFriction::compressible);

  private static final double LN_10 = Math.log(10.0);

  private SkinFriction() {}

  /**
   * Laminar friction, after Blasius.
   *
   * <pre>{@code C_f = 1.328/√Re}</pre>
   *
   * <p>Valid while the layer stays laminar, at most to about 3·10⁶. Example: Re = 10⁶ gives 0.001328.
   *
   * @param reynolds Reynolds number Re on the length, positive
   * @return mean C_f of one side
   */
  public static double laminar(double reynolds) {
    return 1.328 / Math.sqrt(reynolds);
  }

  /**
   * Turbulent friction, after Prandtl and Schlichting.
   *
   * <pre>{@code C_f = 0.455/(log₁₀ Re)^2.58}</pre>
   *
   * <p>Valid from 10⁵ to 10⁹. Example: Re = 10⁷ gives 0.00300371.
   *
   * @param reynolds Reynolds number Re on the length, above 1
   * @return mean C_f of one side
   */
  public static double prandtlSchlichting(double reynolds) {
    return 0.455 / Math.pow(Math.log10(reynolds), 2.58);
  }

  /**
   * Turbulent friction by the fifth-root law.
   *
   * <pre>{@code C_f = 0.074/Re^0.2}</pre>
   *
   * <p>Valid from 10⁵ to 10⁷. Example: Re = 10⁵ gives 0.0074.
   *
   * @param reynolds Reynolds number Re on the length, positive
   * @return mean C_f of one side
   */
  public static double fifthRoot(double reynolds) {
    return 0.074 / Math.pow(reynolds, 0.2);
  }

  /**
   * Turbulent friction, after von Kármán and Schoenherr: the solution of
   *
   * <pre>{@code 0.242/√C_f = log₁₀(Re·C_f)}</pre>
   *
   * <p>Valid from 10⁵ to 10⁹. Source: Schoenherr 1932 (from memory). Example: Re = 10⁶ gives 0.00440943.
   *
   * @param reynolds Reynolds number Re on the length, at least 1000
   * @return mean C_f of one side
   */
  public static double karmanSchoenherr(double reynolds) {
    double cf = prandtlSchlichting(reynolds);
    for (int i = 0; i < 30; i++) {
      double root = Math.sqrt(cf);
      double residual = 0.242 / root - Math.log10(reynolds * cf);
      double step = residual / (-0.121 / (cf * root) - 1.0 / (LN_10 * cf));
      cf = cf > step ? cf - step : 0.5 * cf;
      if (Math.abs(step) <= 1e-14 * cf) {
        return cf;
      }
    }
    throw ConvergenceException.atValues(
        "friction after Schoenherr did not settle", 30, karmanSchoenherrResidual(cf, reynolds), cf);
  }

  /**
   * What is left of the equation of {@link #karmanSchoenherr}.
   *
   * @param friction a friction coefficient, positive
   * @param reynolds Reynolds number, positive
   * @return {@code 0.242/√C_f − log₁₀(Re·C_f)}
   */
  public static double karmanSchoenherrResidual(double friction, double reynolds) {
    return 0.242 / Math.sqrt(friction) - Math.log10(reynolds * friction);
  }

  /**
   * Friction of a layer that turns turbulent at a Reynolds number.
   *
   * <pre>{@code
   * C_f = C_t(Re) − (Re_t/Re)·(C_t(Re_t) − C_l(Re_t))    for Re > Re_t,    C_l(Re) below
   * }</pre>
   *
   * <p>Continuous at Re_t. Example: Re = 10⁶, Re_t = 5·10⁵ with {@link TurbulentFriction#PRANDTL_SCHLICHTING} gives
   * 0.00285694.
   *
   * @param reynolds Reynolds number Re on the length, positive
   * @param transitionReynolds Reynolds number Re_t at which the layer turns turbulent, positive
   * @param law turbulent law
   * @return mean C_f of one side
   */
  public static double mixed(double reynolds, double transitionReynolds, TurbulentFriction law) {
    Objects.requireNonNull(law, "law");
    if (reynolds <= transitionReynolds) {
      return laminar(reynolds);
    }
    return substituted(
        law.coefficient(reynolds),
        transitionReynolds,
        reynolds,
        law.coefficient(transitionReynolds),
        laminar(transitionReynolds));
  }

  /** The sum behind {@link #mixed}: C_t − Re_t/Re·(C_tt − C_lt). */
  static double substituted(double ct, double rt, double r, double ctt, double clt) {
    return ct - rt / r * (ctt - clt);
  }

  /**
   * Friction of a layer whose momentum thickness is the same just before and just after transition: the turbulent layer
   * starts where it would have begun to be as thick.
   *
   * <pre>{@code
   * Re_0·C_t(Re_0) = Re_t·C_l(Re_t)        Re_e = Re − Re_t + Re_0        C_f = C_t(Re_e)·Re_e/Re
   * }</pre>
   *
   * <p>The physical alternative to {@link #mixed}, which substitutes friction and lets the thickness jump; it gives
   * some 10 % more friction. Example: Re = 10⁶, Re_t = 5·10⁵ with the fifth-root law gives 0.00324547.
   *
   * @param reynolds Reynolds number Re on the length, positive
   * @param transitionReynolds Reynolds number Re_t at which the layer turns turbulent, positive
   * @param law turbulent law
   * @return mean C_f of one side
   */
  public static double mixedWithContinuousThickness(double reynolds, double transitionReynolds, TurbulentFriction law) {
    Objects.requireNonNull(law, "law");
    if (reynolds <= transitionReynolds) {
      return laminar(reynolds);
    }
    double thickness = frictionLength(transitionReynolds, laminar(transitionReynolds), 1.0);
    double effective = turbulentLength(reynolds, transitionReynolds, law.reynoldsForFrictionLength(thickness));
    return spread(law.coefficient(effective), effective, reynolds);
  }

  /** Λ_t = Re_t·C_lt·k_M. */
  static double frictionLength(double transition, double laminar, double divisor) {
    return transition * laminar * divisor;
  }

  /** Re_e = Re − Re_t + Re_0. */
  static double turbulentLength(double reynolds, double transition, double start) {
    return reynolds - transition + start;
  }

  /** C_f = C_t·Re_e/Re. */
  static double spread(double friction, double layer, double reynolds) {
    return friction * layer / reynolds;
  }

  /**
   * The weighted mean of laminar and turbulent friction that handbooks use for a given laminar part of the area.
   *
   * <pre>{@code C_f = k_l·C_l(Re) + (1 − k_l)·C_t(Re)}</pre>
   *
   * <p>Simple, and not consistent: both laws are taken over the whole length. Example: Re = 5.50966·10⁷, a tenth laminar,
   * with {@link TurbulentFriction#PRANDTL_SCHLICHTING} gives 0.00210305.
   *
   * @param reynolds Reynolds number Re on the length, positive
   * @param laminarPart laminar part of the wetted area k_l, 0 to 1
   * @param law turbulent law
   * @return mean C_f of one side
   */
  public static double partlyLaminar(double reynolds, double laminarPart, TurbulentFriction law) {
    Objects.requireNonNull(law, "law");
    return weighted(laminarPart, laminar(reynolds), law.coefficient(reynolds));
  }

  /** The sum behind {@link #partlyLaminar}. */
  static double weighted(double part, double cl, double ct) {
    return part * cl + (1.0 - part) * ct;
  }

  /**
   * The divisor by which turbulent friction falls with Mach number.
   *
   * <pre>{@code (1 + 0.144·M²)^0.65}</pre>
   *
   * <p>Example: M = 0.3 gives 1.00840.
   *
   * @param mach Mach number M, not negative
   * @return the divisor, 1 at M = 0
   */
  public static double compressibilityDivisor(double mach) {
    return Math.pow(1.0 + 0.144 * mach * mach, 0.65);
  }

  /** Turbulent friction divided by what compressibility takes. */
  static double compressible(double incompressible, double divisor) {
    return incompressible / divisor;
  }
}
