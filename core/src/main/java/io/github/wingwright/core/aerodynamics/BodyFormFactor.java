// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.ArrayList;
import java.util.List;

/**
 * The form factors of bodies: by how much the drag of a body exceeds the friction of a plate of the same wetted area.
 *
 * <pre>{@code
 * FF = C_D,wet / C_f        f = L/d        d = √(4·A_max/π)
 * }</pre>
 *
 * <p>They are fits to different collections of bodies and differ by a few per cent between f = 5 and 10, and by much more
 * outside; the spread is part of the answer. All assume that the flow stays attached to the tail: a blunt end adds its
 * base drag (see {@link AfterbodyDrag}). One of them, {@link #HOERNER_LAMINAR}, is for bodies so small that their layer is
 * laminar: it also needs the friction coefficient, because its pressure drag does not scale with friction.
 */
public enum BodyFormFactor {
  /** Streamline bodies: 1 + 1.5/f^1.5 + 7/f³. */
  HOERNER("Hoerner", 2, 20),
  /** Fuselages: 1 + 2.2/f^1.5 + 3.8/f³. */
  TORENBEEK("Torenbeek", 2.5, 20),
  /** The handbook's, and Raymer's up to the 5th edition: 1 + 60/f³ + f/400. Far too steep below f = 5. */
  DATCOM("DATCOM handbook, earlier Raymer", 5, 20),
  /** Raymer's 6th edition: 0.9 + 5/f^1.5 + f/400. */
  RAYMER_6("Raymer, 6th edition", 3, 20),
  /** Transport fuselages: 1 + 2.2/f^1.5 − 0.9/f³. */
  JENKINSON("Jenkinson", 4, 16),
  /** Nacelles and stores: 1 + 0.35/f. */
  NACELLE("nacelle, Raymer", 1, 6),
  /** A polynomial of fourth degree, refused outside f = 4 to 10: at f = 30 it would give 75. */
  SHEVELL("polynomial, Shevell", 4, 10),
  /** Small bodies with a laminar layer: 1 + 1/f^1.5 + 0.11/(f²·C_f). */
  HOERNER_LAMINAR("Hoerner, laminar", 2, 12);

  /** Hoerner's form. */
  public static final Formula HOERNER_FORMULA =
      form("Hoerner", "1 + 1.5 / f^1.5 + 7 / f³", 2, 20, Sources.gudmundsson("eq. 16-133, after Hoerner ch. 6"))
          .computedBy(BodyFormFactor::hoerner);

  /** Torenbeek's form. */
  public static final Formula TORENBEEK_FORMULA =
      form("Torenbeek", "1 + 2.2 / f^1.5 + 3.8 / f³", 2.5, 20, Sources.gudmundsson("eq. 16-134, after Torenbeek app. F"))
          .computedBy(BodyFormFactor::torenbeek);

  /** The handbook's form. */
  public static final Formula DATCOM_FORMULA =
      form("DATCOM handbook, earlier Raymer", "1 + 60 / f³ + f / 400", 5, 20, Sources.gudmundsson("eq. 16-135, after DATCOM"))
          .computedBy(BodyFormFactor::datcom);

  /** The form of Raymer's 6th edition. */
  public static final Formula RAYMER_6_FORMULA =
      form("Raymer, 6th edition", "0.9 + 5 / f^1.5 + f / 400", 3, 20, Source.published("Leifsson, AAE 451 course book, Purdue", "after Raymer, 6th ed."))
          .computedBy(BodyFormFactor::raymer6);

  /** Jenkinson's form. */
  public static final Formula JENKINSON_FORMULA =
      form("Jenkinson", "1 + 2.2 / f^1.5 − 0.9 / f³", 4, 16, Sources.gudmundsson("eq. 16-137, after Jenkinson"))
          .computedBy(BodyFormFactor::jenkinson);

  /** The form of nacelles. */
  public static final Formula NACELLE_FORMULA =
      form("nacelle, Raymer", "1 + 0.35 / f", 1, 6, Sources.raymer("eq. 12.32"))
          .computedBy(BodyFormFactor::nacelle);

  /** Shevell's polynomial. */
  public static final Formula SHEVELL_FORMULA =
      form("polynomial, Shevell", "2.939 − 0.7666·f + 0.1328·f² − 0.01074·f³ + 0.0003275·f^4", 4, 10, Source.fromMemory("Shevell, Fundamentals of Flight, 2nd ed., 1989", "ch. 11"))
          .computedBy(BodyFormFactor::shevell);

  /** Hoerner's laminar form. */
  public static final Formula HOERNER_LAMINAR_FORMULA =
      form("Hoerner, laminar", "1 + 1 / f^1.5 + 0.11 / (f²·C_f)", 2, 12, Sources.hoerner("ch. 6, with S_wet = 3·f·A"))
          .where("C_f", "laminar friction coefficient", 1e-3, 0.05)
          .computedBy(BodyFormFactor::hoernerLaminar);

  private final String label;
  private final double lower;
  private final double upper;

  BodyFormFactor(String label, double lower, double upper) {
    this.label = label;
    this.lower = lower;
    this.upper = upper;
  }

  private static Formula.Definition form(String label, String text, double lower, double upper, Source source) {
    return Formula.named("form factor of a body, " + label)
        .gives("FF")
        .as(text)
        .where("f", "fineness ratio", lower, upper)
        .from(source);
  }

  /**
   * The form factor.
   *
   * @param fineness fineness ratio f, positive
   * @param friction friction coefficient C_f of the body; only {@link #HOERNER_LAMINAR} looks at it
   * @return FF
   * @throws IllegalArgumentException for {@link #SHEVELL} outside its fit
   */
  public double factor(double fineness, double friction) {
    return switch (this) {
      case HOERNER -> hoerner(fineness);
      case TORENBEEK -> torenbeek(fineness);
      case DATCOM -> datcom(fineness);
      case RAYMER_6 -> raymer6(fineness);
      case JENKINSON -> jenkinson(fineness);
      case NACELLE -> nacelle(fineness);
      case SHEVELL -> shevell(Door.within(fineness, 4.0, 10.0, "fineness ratio for the polynomial of Shevell"));
      case HOERNER_LAMINAR -> hoernerLaminar(fineness, friction);
    };
  }

  /**
   * Where the fit holds.
   *
   * @return fineness ratios
   */
  public Interval domain() {
    return Interval.between(lower, upper);
  }

  /**
   * The formula with its source.
   *
   * @return the formula
   */
  public Formula formula() {
    return switch (this) {
      case HOERNER -> HOERNER_FORMULA;
      case TORENBEEK -> TORENBEEK_FORMULA;
      case DATCOM -> DATCOM_FORMULA;
      case RAYMER_6 -> RAYMER_6_FORMULA;
      case JENKINSON -> JENKINSON_FORMULA;
      case NACELLE -> NACELLE_FORMULA;
      case SHEVELL -> SHEVELL_FORMULA;
      case HOERNER_LAMINAR -> HOERNER_LAMINAR_FORMULA;
    };
  }

  /**
   * Whether the form can be evaluated at a fineness ratio: polynomials are refused outside their fit.
   *
   * @param fineness fineness ratio f
   * @return false only for {@link #SHEVELL} outside its domain
   */
  public boolean isDefinedAt(double fineness) {
    return this != SHEVELL || domain().contains(fineness);
  }

  /**
   * What to know about the form factor at a fineness ratio.
   *
   * @param fineness fineness ratio f
   * @return a finding where the fit does not hold
   */
  public List<Finding> findings(double fineness) {
    List<Finding> findings = new ArrayList<>();
    if (!domain().contains(fineness)) {
      findings.add(
          Finding.of(
              Severity.CAUTION,
              "form factor of the body",
              "The form factor of " + label + " is used outside its fit; compare it with the others.",
              fineness,
              domain(),
              NamedUnit.NUMBER,
              formula().source()));
    }
    return findings;
  }

  Step step(Step fineness, Step friction) {
    return this == HOERNER_LAMINAR ? Step.of(formula(), fineness, friction) : Step.of(formula(), fineness);
  }

  /**
   * Hoerner's form factor of streamline bodies.
   *
   * <pre>{@code FF = 1 + 1.5/f^1.5 + 7/f³}</pre>
   *
   * <p>Example: f = 6 gives 1.134469.
   *
   * @param f fineness ratio
   * @return FF
   */
  public static double hoerner(double f) {
    return 1.0 + 1.5 / (f * Math.sqrt(f)) + 7.0 / (f * f * f);
  }

  /**
   * Torenbeek's form factor of fuselages.
   *
   * <pre>{@code FF = 1 + 2.2/f^1.5 + 3.8/f³}</pre>
   *
   * <p>Example: f = 6 gives 1.167284.
   *
   * @param f fineness ratio
   * @return FF
   */
  public static double torenbeek(double f) {
    return 1.0 + 2.2 / (f * Math.sqrt(f)) + 3.8 / (f * f * f);
  }

  /**
   * The handbook's form factor.
   *
   * <pre>{@code FF = 1 + 60/f³ + f/400}</pre>
   *
   * <p>Example: f = 6 gives 1.292778.
   *
   * @param f fineness ratio
   * @return FF
   */
  public static double datcom(double f) {
    return 1.0 + 60.0 / (f * f * f) + f / 400.0;
  }

  /**
   * The form factor of Raymer's 6th edition.
   *
   * <pre>{@code FF = 0.9 + 5/f^1.5 + f/400}</pre>
   *
   * <p>Example: f = 5.5 gives 1.301388.
   *
   * @param f fineness ratio
   * @return FF
   */
  public static double raymer6(double f) {
    return 0.9 + 5.0 / (f * Math.sqrt(f)) + f / 400.0;
  }

  /**
   * Jenkinson's form factor of transport fuselages.
   *
   * <pre>{@code FF = 1 + 2.2/f^1.5 − 0.9/f³}</pre>
   *
   * <p>Example: f = 6 gives 1.145524.
   *
   * @param f fineness ratio
   * @return FF
   */
  public static double jenkinson(double f) {
    return 1.0 + 2.2 / (f * Math.sqrt(f)) - 0.9 / (f * f * f);
  }

  /**
   * The form factor of nacelles and smooth stores.
   *
   * <pre>{@code FF = 1 + 0.35/f}</pre>
   *
   * <p>Example: f = 3.5 gives 1.1.
   *
   * @param f fineness ratio
   * @return FF
   */
  public static double nacelle(double f) {
    return 1.0 + 0.35 / f;
  }

  /**
   * Shevell's polynomial, valid only from f = 4 to 10.
   *
   * <pre>{@code FF = 2.939 − 0.7666·f + 0.1328·f² − 0.01074·f³ + 3.275·10⁻⁴·f⁴}</pre>
   *
   * <p>Example: f = 6 gives 1.224800.
   *
   * @param f fineness ratio
   * @return FF
   */
  public static double shevell(double f) {
    return 2.939 + f * (-0.7666 + f * (0.1328 + f * (-0.01074 + f * 3.275e-4)));
  }

  /**
   * Hoerner's laminar form, on the wetted area.
   *
   * <pre>{@code
   * C_D,front = 0.33/f + C_f·(3·f + 3/√f)        S_wet = 3·f·A_front        FF = 1 + 1/f^1.5 + 0.11/(f²·C_f)
   * }</pre>
   *
   * <p>The pressure drag of a laminar layer on a tail does not fall with friction. Example: f = 6, C_f = 0.01 gives
   * 1.373597.
   *
   * @param f fineness ratio
   * @param friction laminar friction coefficient C_f
   * @return FF
   */
  public static double hoernerLaminar(double f, double friction) {
    return 1.0 + 1.0 / (f * Math.sqrt(f)) + 0.11 / (f * f * friction);
  }

  @Override
  public String toString() {
    return label;
  }
}
