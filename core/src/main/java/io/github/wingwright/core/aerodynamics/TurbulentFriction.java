// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.List;

/** The laws for turbulent skin friction, to be chosen by name. */
public enum TurbulentFriction {
  /** 0.455/(log₁₀ Re)^2.58, for 10⁵ to 10⁹: the usual choice. */
  PRANDTL_SCHLICHTING,
  /** 0.074/Re^0.2, for 10⁵ to 10⁷: simple enough to differentiate by hand. */
  FIFTH_ROOT,
  /** 0.242/√C_f = log₁₀(Re·C_f), for 10⁵ to 10⁹: implicit, the naval architects' line. */
  KARMAN_SCHOENHERR;

  /** Reynolds number below which no turbulent law is asked: friction is held there, and a finding has said so long before. */
  static final double LEAST_REYNOLDS = 1e3;

  private static final Source HELD = Source.library("friction is held below it");
  private static final Source SCHOENHERR =
      Source.fromMemory("Schoenherr, Trans. SNAME 40, 1932", "mean line of resistance");

  /**
   * Mean friction of one side.
   *
   * @param reynolds Reynolds number on the length, at least 1000
   * @return C_f
   */
  public double coefficient(double reynolds) {
    return switch (this) {
      case PRANDTL_SCHLICHTING -> SkinFriction.prandtlSchlichting(reynolds);
      case FIFTH_ROOT -> SkinFriction.fifthRoot(reynolds);
      case KARMAN_SCHOENHERR -> SkinFriction.karmanSchoenherr(reynolds);
    };
  }

  /** The friction, held below the least Reynolds number that the laws are asked at. */
  double held(double reynolds) {
    return coefficient(Math.max(LEAST_REYNOLDS, reynolds));
  }

  /**
   * The law in words.
   *
   * @return for example {@code "Prandtl and Schlichting"}
   */
  public String words() {
    return switch (this) {
      case PRANDTL_SCHLICHTING -> "Prandtl and Schlichting";
      case FIFTH_ROOT -> "fifth-root law";
      case KARMAN_SCHOENHERR -> "von Kármán and Schoenherr";
    };
  }

  /**
   * Where it comes from.
   *
   * @return the source
   */
  public Source source() {
    return switch (this) {
      case PRANDTL_SCHLICHTING -> SkinFriction.PRANDTL_SCHLICHTING.source();
      case FIFTH_ROOT -> SkinFriction.FIFTH_ROOT.source();
      case KARMAN_SCHOENHERR -> SCHOENHERR;
    };
  }

  /**
   * Where the law was fitted.
   *
   * @return Reynolds numbers
   */
  public Interval domain() {
    return this == FIFTH_ROOT
        ? SkinFriction.FIFTH_ROOT.inputs().get(0).domain()
        : SkinFriction.PRANDTL_SCHLICHTING.inputs().get(0).domain();
  }

  /**
   * What to know about the law at a Reynolds number.
   *
   * @param reynolds Reynolds number on the length
   * @return a finding outside its domain
   */
  List<Finding> findings(double reynolds) {
    return domain().contains(reynolds)
        ? List.of()
        : List.of(
            Finding.of(
                Severity.CAUTION,
                "turbulent skin friction",
                "The law (" + words() + ") is used outside the Reynolds numbers that it was fitted to.",
                reynolds,
                domain(),
                NamedUnit.NUMBER,
                source()));
  }

  /** The Reynolds number of {@link #reynoldsForFrictionLength} as a line of the workings. */
  Step startStep(Step frictionLength) {
    return Step.solution(
        "Reynolds number at which the turbulent layer would be as thick",
        "Re_0",
        NamedUnit.NUMBER,
        "repetition",
        "Re_0·C_t(Re_0) = Λ_t, C_t by " + words(),
        v -> reynoldsForFrictionLength(v[0]),
        v -> v[1] * held(v[1]) - v[0],
        source(),
        frictionLength);
  }

  /**
   * The law as a line of the workings.
   *
   * @param symbol symbol of the result
   * @param asked step of the Reynolds number
   * @return the step of C_f
   */
  Step step(String symbol, Step asked) {
    Step reynolds =
        asked.value() < LEAST_REYNOLDS
            ? Step.given("least Reynolds number that turbulent laws are asked at", "Re", LEAST_REYNOLDS, HELD)
            : asked;
    return switch (this) {
      case PRANDTL_SCHLICHTING ->
          Step.of(SkinFriction.PRANDTL_SCHLICHTING.name(), symbol, SkinFriction.PRANDTL_SCHLICHTING, reynolds);
      case FIFTH_ROOT -> Step.of(SkinFriction.FIFTH_ROOT.name(), symbol, SkinFriction.FIFTH_ROOT, reynolds);
      case KARMAN_SCHOENHERR ->
          Step.solution(
              "turbulent skin friction, von Kármán and Schoenherr",
              symbol,
              NamedUnit.NUMBER,
              "Newton's method",
              "0.242/√(C_f) = log10(Re·C_f)",
              v -> SkinFriction.karmanSchoenherr(v[0]),
              v -> SkinFriction.karmanSchoenherrResidual(v[1], v[0]),
              SCHOENHERR,
              reynolds);
    };
  }

  /**
   * The Reynolds number at which Re·C_f(Re) reaches a value: where a turbulent layer of that momentum thickness began.
   *
   * @param frictionLength Re·C_f, positive
   * @return R
   */
  double reynoldsForFrictionLength(double frictionLength) {
    // Re·C_f grows almost as Re^0.8, so this contracts by a factor of five or more in each round.
    double reynolds = Math.pow(frictionLength / 0.074, 1.25);
    for (int i = 0; i < 60; i++) {
      double next = reynolds * Math.pow(frictionLength / (reynolds * held(reynolds)), 1.25);
      if (Math.abs(next - reynolds) <= 1e-14 * reynolds) {
        return next;
      }
      reynolds = next;
    }
    return reynolds;
  }
}
