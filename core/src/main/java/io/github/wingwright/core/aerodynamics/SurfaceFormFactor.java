// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.ArrayList;
import java.util.List;

/**
 * The form factors of wings and tails: by how much their profile drag exceeds the friction of a plate.
 *
 * <pre>{@code FF = C_D,wet / C_f}</pre>
 *
 * <p>Fits to sections at Reynolds numbers of millions. Below 3·10⁵ they understate: two tunnels measured more than twice
 * the product of friction and form factor on a cambered section at 6·10⁴. There use a {@link SectionPolar}.
 */
public enum SurfaceFormFactor {
  /** Thickness alone, thickest point near 30 % of the chord: 1 + 2t + 60t⁴. */
  HOERNER("Hoerner", 0.21),
  /** Thickness alone, thickest point at 40 to 50 %: 1 + 1.2t + 70t⁴. */
  HOERNER_AFT("Hoerner, thickest point aft", 0.21),
  /** Thickness alone: 1 + 2.7t + 100t⁴. */
  TORENBEEK("Torenbeek", 0.21),
  /** Thickness, its place, Mach number and sweep. Its Mach bracket is held at 1 or more. */
  RAYMER("Raymer", 0.25),
  /** Wings of transports: 1 + (3.3t − 0.008t² + 27t³)·cos²Λ. */
  JENKINSON_WING("Jenkinson, wing", 0.25),
  /** Tails of transports: 1 + 3.52t·cos²Λ. */
  JENKINSON_TAIL("Jenkinson, tail", 0.25);

  /** Hoerner's form for sections that are thickest near 30 % of the chord. */
  public static final Formula HOERNER_FORMULA =
      thicknessOnly("Hoerner", "1 + 2·t + 60·t^4", 0.21, "eq. 16-123, after Hoerner")
          .computedBy(SurfaceFormFactor::hoerner);

  /** Hoerner's form for sections that are thickest at 40 to 50 % of the chord. */
  public static final Formula HOERNER_AFT_FORMULA =
      thicknessOnly("Hoerner, thickest point aft", "1 + 1.2·t + 70·t^4", 0.21, "eq. 16-124, after Hoerner")
          .computedBy(SurfaceFormFactor::hoernerAft);

  /** Torenbeek's form. */
  public static final Formula TORENBEEK_FORMULA =
      thicknessOnly("Torenbeek", "1 + 2.7·t + 100·t^4", 0.21, "eq. 16-125, after Torenbeek")
          .computedBy(SurfaceFormFactor::torenbeek);

  /** Raymer's form. */
  public static final Formula RAYMER_FORMULA =
      Formula.named("form factor of a lifting surface, Raymer")
          .gives("FF")
          .as("(1 + 0.6/x_m·t + 100·t^4)·max(1, 1.34·M^0.18)·cos(Λ_m)^0.28")
          .where("t", "thickness ratio", 0, 0.25)
          .where("x_m", "place of greatest thickness over chord", 0.2, 0.6)
          .where("M", "Mach number", 0, 0.9)
          .where("Λ_m", "sweep of the line of greatest thickness", Angle.RADIAN, -0.9, 0.9)
          .from(Sources.raymer("eq. 12.30; bracket held at 1 or more by this library"))
          .computedBy(SurfaceFormFactor::raymer);

  /** Jenkinson's form for wings. */
  public static final Formula JENKINSON_WING_FORMULA =
      Formula.named("form factor of a wing, Jenkinson")
          .gives("FF")
          .as("1 + (3.3·t − 0.008·t² + 27·t³)·cos(Λ)²")
          .where("t", "thickness ratio", 0, 0.25)
          .where("Λ", "sweep", Angle.RADIAN, -0.9, 0.9)
          .from(Sources.gudmundsson("eq. 16-128, after Jenkinson"))
          .computedBy(SurfaceFormFactor::jenkinsonWing);

  /** Jenkinson's form for tails. */
  public static final Formula JENKINSON_TAIL_FORMULA =
      Formula.named("form factor of a tail, Jenkinson")
          .gives("FF")
          .as("1 + 3.52·t·cos(Λ)²")
          .where("t", "thickness ratio", 0, 0.25)
          .where("Λ", "sweep", Angle.RADIAN, -0.9, 0.9)
          .from(Sources.gudmundsson("eq. 16-129, after Jenkinson"))
          .computedBy(SurfaceFormFactor::jenkinsonTail);

  private static final double LEAST_REYNOLDS = 3e5;
  private static final double PARTING = 0.375;

  private final String label;
  private final double thickest;

  SurfaceFormFactor(String label, double thickest) {
    this.label = label;
    this.thickest = thickest;
  }

  private static Formula.Definition thicknessOnly(String label, String text, double thickest, String place) {
    return Formula.named("form factor of a lifting surface, " + label)
        .gives("FF")
        .as(text)
        .where("t", "thickness ratio", 0, thickest)
        .from(Sources.gudmundsson(place));
  }

  /**
   * The form factor.
   *
   * @param thickness thickness ratio t
   * @param thicknessPosition where the section is thickest, over chord; only {@link #RAYMER} looks at it
   * @param mach Mach number; only {@link #RAYMER} looks at it
   * @param sweep sweep of the line of greatest thickness [rad]
   * @return FF
   */
  public double factor(double thickness, double thicknessPosition, double mach, double sweep) {
    return switch (this) {
      case HOERNER -> hoerner(thickness);
      case HOERNER_AFT -> hoernerAft(thickness);
      case TORENBEEK -> torenbeek(thickness);
      case RAYMER -> raymer(thickness, thicknessPosition, mach, sweep);
      case JENKINSON_WING -> jenkinsonWing(thickness, sweep);
      case JENKINSON_TAIL -> jenkinsonTail(thickness, sweep);
    };
  }

  /**
   * The formula with its source.
   *
   * @return the formula
   */
  public Formula formula() {
    return switch (this) {
      case HOERNER -> HOERNER_FORMULA;
      case HOERNER_AFT -> HOERNER_AFT_FORMULA;
      case TORENBEEK -> TORENBEEK_FORMULA;
      case RAYMER -> RAYMER_FORMULA;
      case JENKINSON_WING -> JENKINSON_WING_FORMULA;
      case JENKINSON_TAIL -> JENKINSON_TAIL_FORMULA;
    };
  }

  /**
   * Whether a section lies within the fit.
   *
   * @param thickness thickness ratio t
   * @return whether the form factor was made for such a thickness
   */
  public boolean applies(double thickness) {
    return thickness >= 0.0 && thickness <= thickest;
  }

  /**
   * Where the sections behind the form factor are thickest: Hoerner has two forms, for 30 % and for 40 to 50 % of the chord,
   * which part half-way.
   *
   * @return places over chord
   */
  public Interval thickestAt() {
    return switch (this) {
      case HOERNER -> Interval.between(0.2, PARTING);
      case HOERNER_AFT -> Interval.between(PARTING, 0.6);
      case RAYMER -> RAYMER_FORMULA.inputs().get(1).domain();
      default -> Interval.between(0.0, 1.0);
    };
  }

  /**
   * What to know about the form factor.
   *
   * @param thickness thickness ratio t
   * @param thicknessPosition where the section is thickest, over chord
   * @param mach Mach number
   * @param sweep sweep of the line of greatest thickness [rad]
   * @param reynolds Reynolds number on the chord
   * @return findings where the fit does not hold
   */
  public List<Finding> findings(
      double thickness, double thicknessPosition, double mach, double sweep, double reynolds) {
    List<Finding> findings = new ArrayList<>();
    if (!thickestAt().contains(thicknessPosition)) {
      findings.add(
          Finding.of(
              Severity.CAUTION,
              "place of greatest thickness",
              "The form factor of " + label + " is for sections that are thickest elsewhere.",
              thicknessPosition,
              thickestAt(),
              NamedUnit.NUMBER,
              formula().source()));
    }
    double fitted = Math.min(thickness, thickest);
    switch (this) {
      case RAYMER ->
          findings.addAll(
              formula().outsideDomain(fitted, thickestAt().clamp(thicknessPosition), mach, sweep));
      case JENKINSON_WING, JENKINSON_TAIL -> findings.addAll(formula().outsideDomain(fitted, sweep));
      default -> {}
    }
    if (!applies(thickness)) {
      findings.add(
          Finding.of(
              Severity.CAUTION,
              "form factor of a lifting surface",
              "The section is thicker than the sections behind the form factor of " + label + ".",
              thickness,
              Interval.between(0.0, thickest),
              NamedUnit.NUMBER,
              formula().source()));
    }
    if (reynolds < LEAST_REYNOLDS && thickness > 0.03) {
      findings.add(
          Finding.of(
              Severity.CAUTION,
              "friction times form factor",
              "Below a Reynolds number of 300 000 friction times form factor understates the drag of a section, by half at "
                  + "60 000; use a section polar.",
              reynolds,
              Interval.atLeast(LEAST_REYNOLDS),
              NamedUnit.NUMBER,
              Source.published(
                  "University of Illinois and Princeton low-speed tunnels", "6 % camber, 9 % thick, 60 000")));
    }
    return findings;
  }

  Step step(Step thickness, Step thicknessPosition, Step mach, Step sweep) {
    return switch (this) {
      case HOERNER, HOERNER_AFT, TORENBEEK -> Step.of(formula(), thickness);
      case RAYMER -> Step.of(formula(), thickness, thicknessPosition, mach, sweep);
      case JENKINSON_WING, JENKINSON_TAIL -> Step.of(formula(), thickness, sweep);
    };
  }

  /**
   * Hoerner's form factor for sections that are thickest near 30 % of the chord.
   *
   * <pre>{@code FF = 1 + 2·t + 60·t⁴}</pre>
   *
   * <p>Example: t = 0.12 gives 1.252442.
   *
   * @param t thickness ratio
   * @return FF
   */
  public static double hoerner(double t) {
    return 1.0 + 2.0 * t + 60.0 * t * t * t * t;
  }

  /**
   * Hoerner's form factor for sections that are thickest at 40 to 50 % of the chord.
   *
   * <pre>{@code FF = 1 + 1.2·t + 70·t⁴}</pre>
   *
   * <p>Example: t = 0.12 gives 1.158515.
   *
   * @param t thickness ratio
   * @return FF
   */
  public static double hoernerAft(double t) {
    return 1.0 + 1.2 * t + 70.0 * t * t * t * t;
  }

  /**
   * Torenbeek's form factor.
   *
   * <pre>{@code FF = 1 + 2.7·t + 100·t⁴}</pre>
   *
   * <p>Valid to t = 0.21. Example: t = 0.12 gives 1.344736.
   *
   * @param t thickness ratio
   * @return FF
   */
  public static double torenbeek(double t) {
    return 1.0 + 2.7 * t + 100.0 * t * t * t * t;
  }

  /**
   * Raymer's form factor. The bracket with the Mach number falls below 1 under M = 0.19673, which no flow does: it is held
   * at 1 there.
   *
   * <pre>{@code FF = [1 + (0.6/x_m)·t + 100·t⁴]·max(1, 1.34·M^0.18)·(cos Λ_m)^0.28}</pre>
   *
   * <p>Example: t = 0.18, x_m = 0.3, M = 0.3, no sweep gives 1.580582.
   *
   * @param t thickness ratio
   * @param xm where the section is thickest, over chord
   * @param mach Mach number M
   * @param sweep sweep of the line of greatest thickness Λ_m [rad]
   * @return FF
   */
  public static double raymer(double t, double xm, double mach, double sweep) {
    double bracket = Math.max(1.0, 1.34 * Math.pow(mach, 0.18));
    return (1.0 + 0.6 / xm * t + 100.0 * t * t * t * t) * bracket * Math.pow(Math.cos(sweep), 0.28);
  }

  /**
   * Jenkinson's form factor of wings.
   *
   * <pre>{@code FF = 1 + (3.3·t − 0.008·t² + 27·t³)·cos²Λ}</pre>
   *
   * <p>Example: t = 0.12 without sweep gives 1.442541.
   *
   * @param t thickness ratio
   * @param sweep sweep Λ [rad]
   * @return FF
   */
  public static double jenkinsonWing(double t, double sweep) {
    double cosine = Math.cos(sweep);
    return 1.0 + t * (3.3 + t * (-0.008 + 27.0 * t)) * cosine * cosine;
  }

  /**
   * Jenkinson's form factor of tails.
   *
   * <pre>{@code FF = 1 + 3.52·t·cos²Λ}</pre>
   *
   * <p>Example: t = 0.12 without sweep gives 1.422400.
   *
   * @param t thickness ratio
   * @param sweep sweep Λ [rad]
   * @return FF
   */
  public static double jenkinsonTail(double t, double sweep) {
    double cosine = Math.cos(sweep);
    return 1.0 + 3.52 * t * cosine * cosine;
  }

  @Override
  public String toString() {
    return label;
  }
}
