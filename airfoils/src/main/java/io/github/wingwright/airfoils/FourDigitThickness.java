// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;
import java.util.Objects;

/**
 * The thickness form of the NACA 4-digit sections.
 *
 * <pre>{@code
 * y = 5·t·(0.2969·√x − 0.1260·x − 0.3516·x² + 0.2843·x³ − k·x⁴)
 * }</pre>
 * with k = 0.1015 as published (a trailing edge of 0.021·t) or 0.1036 (closed). Any other trailing edge is made the
 * same way, by its own k. The nose radius is 1.1019·t². The thickest point is nominally at 0.3; exactly it is at
 * 0.299828 and 1.000288·t thick (0.299528 and 1.000119·t when closed).
 *
 * <p>Source: the coefficients as printed in NACA Report 460 (1933) and its public copies; they reproduce the 66
 * public coordinates of the 12 % section to 6.5·10⁻⁸. Example: t = 0.12, open, x = 0.3 gives 0.0600172664.
 *
 * @param thickness thickness ratio t [chords], above 0, to 0.5
 * @param coefficient the coefficient k of x⁴
 */
public record FourDigitThickness(double thickness, double coefficient) implements ThicknessForm {
  /** Coefficient of √x. */
  static final double A0 = 0.2969;
  /** Coefficient of x. */
  static final double A1 = -0.1260;
  /** Coefficient of x². */
  static final double A2 = -0.3516;
  /** Coefficient of x³. */
  static final double A3 = 0.2843;

  private static final Source REPORT = Source.published("Jacobs, Ward and Pinkerton, NACA Report 460, 1933",
      "coefficients as printed in public copies");

  /** Half thickness at a chord station. */
  public static final Formula HALF_THICKNESS = Formula.named("half thickness of the 4-digit form")
      .gives("y")
      .as("5·t·(0.2969·√(x) − 0.1260·x − 0.3516·x^2 + 0.2843·x^3 − k·x^4)")
      .where("t", "thickness ratio", 0.01, 0.5)
      .where("k", "coefficient of the fourth power: 0.1015 as published, 0.1036 closed", 0.05, 0.1036)
      .where("x", "chord station", 0, 1)
      .from(REPORT)
      .computedBy((t, k, x) -> halfThickness(t, k, x));

  /** Nose radius. */
  public static final Formula NOSE_RADIUS = Formula.named("nose radius of the 4-digit form")
      .gives("r")
      .as("½·(5·0.2969·t)^2")
      .where("t", "thickness ratio", 0.01, 0.5)
      .from(REPORT)
      .computedBy((double t) -> noseRadius(t));

  public FourDigitThickness {
    Checks.within("thickness ratio", Checks.positive("thickness ratio", thickness), 0, 0.5);
    Checks.within("coefficient of x⁴", coefficient, -0.4, 0.1036);
  }

  /** The form with one of the two published trailing edges. */
  public static FourDigitThickness of(double thickness, TrailingEdge trailingEdge) {
    Objects.requireNonNull(trailingEdge, "trailingEdge");
    return new FourDigitThickness(thickness, trailingEdge.coefficient());
  }

  /**
   * The same form with a trailing edge that can be made.
   *
   * <pre>{@code k = 0.1036 − h/(10·t)}</pre>
   *
   * @param trailingEdge full thickness h of the trailing edge [chords], zero to half of the thickness ratio
   */
  public FourDigitThickness withTrailingEdgeThickness(double trailingEdge) {
    Checks.within("trailing-edge thickness", trailingEdge, 0, thickness / 2);
    return new FourDigitThickness(thickness, 0.1036 - trailingEdge / (10 * thickness));
  }

  @Override
  public String name() {
    return "4-digit thickness " + Text.percent(thickness);
  }

  @Override
  public double halfThickness(double x) {
    return halfThickness(thickness, coefficient, x);
  }

  /**
   * Half thickness of the 4-digit form.
   *
   * @param t thickness ratio [chords]
   * @param k coefficient of x⁴, 0.1015 (published) or 0.1036 (closed)
   * @param x chord station [chords], 0 to 1
   * @return half thickness [chords]
   */
  public static double halfThickness(double t, double k, double x) {
    return 5 * t * (A0 * Math.sqrt(x) + x * (A1 + x * (A2 + x * (A3 - k * x))));
  }

  @Override
  public double slope(double x) {
    return 5 * thickness
        * (A0 / (2 * Math.sqrt(x)) + A1 + x * (2 * A2 + x * (3 * A3 - 4 * coefficient * x)));
  }

  @Override
  public double noseRadius() {
    return noseRadius(thickness);
  }

  /**
   * Nose radius of the 4-digit form, {@code ½·(5·0.2969·t)²}.
   *
   * @param t thickness ratio [chords]
   * @return nose radius [chords]; 0.0158669298 for t = 0.12
   */
  public static double noseRadius(double t) {
    return 0.5 * (5 * A0 * t) * (5 * A0 * t);
  }

  @Override
  public double trailingEdgeThickness() {
    return coefficient == 0.1036 ? 0 : 10 * thickness * (0.1036 - coefficient);
  }
}
