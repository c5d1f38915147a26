// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.NamedUnit;

/**
 * The formulas for the downwash gradient ε_α = dε/dα at the tail, each with its kernel.
 *
 * <p>Symbols: lift-curve slope of the wing a_w [1/rad], aspect ratio A, taper ratio λ, sweep of the quarter-chord line Λ,
 * tail arm over span l = l_h/b, height of the tail over span z = z_h/b, positive above the wing's root chord. Kernels run
 * on {@code double}s and allocate nothing. {@link DownwashMethod} says where each holds.
 */
public final class DownwashFormulas {
  /** Twice the downwash at an elliptically loaded wing: far behind it. */
  public static final Formula FAR_ELLIPTIC =
      Formula.named("downwash gradient far behind an elliptic wing")
          .gives("ε_α")
          .as("2·a_w / (π·A)")
          .where("a_w", "lift-curve slope of the wing", NamedUnit.PER_RADIAN, 0.5, 7)
          .where("A", "aspect ratio", 1, 40)
          .from(Sources.MOMENT_EQUATION)
          .computedBy(DownwashFormulas::farElliptic);

  /** The stability handbook's fit. */
  public static final Formula HANDBOOK =
      Formula.named("downwash gradient of the handbook")
          .gives("ε_α")
          .as(
              "4.44·((1/A − 1/(1 + A^1.7))·(10 − 3·λ)/7·(1 − abs(z))/(2·l)^(1/3)·√(cos(Λ)))^1.19")
          .where("A", "aspect ratio", 2, 20)
          .where("λ", "taper ratio", 0.1, 1.2)
          .where("Λ", "sweep of the quarter-chord line", Angle.RADIAN, -0.7, 0.9)
          .where("l", "tail arm over span", 0.15, 1.5)
          .where("z", "tail height over span", -0.5, 0.5)
          .from(Sources.HANDBOOK)
          .computedBy(DownwashFormulas::handbook);

  /** A fit for straight tapered wings and tails off the wake's plane. */
  public static final Formula TORENBEEK =
      Formula.named("downwash gradient, Torenbeek")
          .gives("ε_α")
          .as("1.75·a_w / (π·A·(2·λ·l)^0.25·(1 + 2·abs(z)))")
          .where("a_w", "lift-curve slope of the wing", NamedUnit.PER_RADIAN, 0.5, 7)
          .where("A", "aspect ratio", 4, 20)
          .where("λ", "taper ratio", 0.2, 1)
          .where("l", "tail arm over span", 0.2, 1)
          .where("z", "tail height over span", -0.3, 0.3)
          .from(Sources.TORENBEEK)
          .computedBy(DownwashFormulas::torenbeek);

  /** A fit to early wind-tunnel measurements. */
  public static final Formula DIEHL =
      Formula.named("downwash gradient, Diehl")
          .gives("ε_α")
          .as("π/9·a_w·λ^0.3 / A^0.725·(3 / (A·l))^0.25")
          .where("a_w", "lift-curve slope of the wing", NamedUnit.PER_RADIAN, 0.5, 7)
          .where("A", "aspect ratio", 3, 15)
          .where("λ", "taper ratio", 0.2, 1)
          .where("l", "tail arm over span", 0.2, 1)
          .from(Sources.DIEHL)
          .computedBy(DownwashFormulas::diehl);

  /** A rule of thumb for small aircraft. */
  public static final Formula ASPECT_RATIO_ALONE =
      Formula.named("downwash gradient from aspect ratio alone")
          .gives("ε_α")
          .as("4 / (A + 2)")
          .where("A", "aspect ratio", 4, 30)
          .from(Sources.SMALL_AIRCRAFT_RULES)
          .computedBy(DownwashFormulas::aspectRatioAlone);

  /** How much of the far downwash is there at a distance behind an elliptic lifting line. */
  public static final Formula ELLIPTIC_FACTOR =
      Formula.named("downwash at a distance over far downwash")
          .gives("F")
          .as("½ + √(1 + x²)·E / (π·x)")
          .where("x", "distance behind the lifting line over semispan", -20, 20)
          .where("E", "complete elliptic integral of the second kind, k² = 1/(1 + x²)", 1, 1.5708)
          .from(Sources.ELLIPTIC_WAKE)
          .computedBy(DownwashFormulas::ellipticFactor);

  /** Exact downwash of an elliptic lifting line in the plane of its wake. */
  public static final Formula ELLIPTIC_LIFTING_LINE =
      Formula.named("downwash gradient of an elliptic lifting line")
          .gives("ε_α")
          .as("2·a_w·F / (π·A)")
          .where("a_w", "lift-curve slope of the wing", NamedUnit.PER_RADIAN, 0.5, 7)
          .where("A", "aspect ratio", 3, 40)
          .where("F", "downwash at a distance over far downwash", -6, 6)
          .from(Sources.ELLIPTIC_WAKE)
          .computedBy(DownwashFormulas::scaledFar);

  /** One horseshoe vortex of the rolled-up span. */
  public static final Formula HORSESHOE =
      Formula.named("downwash gradient of one horseshoe vortex")
          .gives("ε_α")
          .as(
              "8·a_w / (π³·A)·((1 + l/√(l² + (π/8)² + z²))·(π/8)² / ((π/8)² + z²)"
                  + " + (π/8)²·l / ((l² + z²)·√(l² + (π/8)² + z²)))")
          .where("a_w", "lift-curve slope of the wing", NamedUnit.PER_RADIAN, 0.5, 7)
          .where("A", "aspect ratio", 3, 40)
          .where("l", "tail arm over span", 0.2, 2)
          .where("z", "tail height over span", -0.5, 0.5)
          .from(Sources.HORSESHOE)
          .computedBy(DownwashFormulas::horseshoe);

  private DownwashFormulas() {}

  /**
   * Far behind an elliptically loaded wing.
   *
   * <p>Example: a_w = 4.529 and A = 6 give 0.4805.
   *
   * @param liftSlope a_w [1/rad]
   * @param aspectRatio A
   * @return ε_α
   */
  public static double farElliptic(double liftSlope, double aspectRatio) {
    return 2.0 * liftSlope / (Math.PI * aspectRatio);
  }

  /**
   * The handbook's fit.
   *
   * <p>Example: A = 6, λ = 1, no sweep, l = 0.45 in the plane of the wing give 0.3760.
   *
   * @param aspectRatio A
   * @param taperRatio λ
   * @param sweep Λ of the quarter-chord line [rad]
   * @param arm l_h/b, positive
   * @param height z_h/b
   * @return ε_α
   */
  public static double handbook(double aspectRatio, double taperRatio, double sweep, double arm, double height) {
    double ka = 1.0 / aspectRatio - 1.0 / (1.0 + Math.pow(aspectRatio, 1.7));
    double kl = (10.0 - 3.0 * taperRatio) / 7.0;
    double kh = (1.0 - Math.abs(height)) / Math.cbrt(2.0 * arm);
    return 4.44 * Math.pow(ka * kl * kh * Math.sqrt(Math.cos(sweep)), 1.19);
  }

  /**
   * Torenbeek's fit.
   *
   * <p>Example: a_w = 4.529, A = 6, λ = 1, l = 0.45, z = 0 give 0.4317.
   *
   * @param liftSlope a_w [1/rad]
   * @param aspectRatio A
   * @param taperRatio λ, positive
   * @param arm l_h/b, positive
   * @param height z_h/b
   * @return ε_α
   */
  public static double torenbeek(double liftSlope, double aspectRatio, double taperRatio, double arm, double height) {
    double near = Math.sqrt(Math.sqrt(2.0 * taperRatio * arm));
    return 1.75 * liftSlope / (Math.PI * aspectRatio * near * (1.0 + 2.0 * Math.abs(height)));
  }

  /**
   * Diehl's fit, 20° of downwash per unit lift coefficient written per radian.
   *
   * <p>Example: a_w = 5.501, A = 15, λ = 0.5, l = 0.25 give 0.2071.
   *
   * @param liftSlope a_w [1/rad]
   * @param aspectRatio A
   * @param taperRatio λ, positive
   * @param arm l_h/b, positive
   * @return ε_α
   */
  public static double diehl(double liftSlope, double aspectRatio, double taperRatio, double arm) {
    double near = Math.sqrt(Math.sqrt(3.0 / (aspectRatio * arm)));
    return Math.PI / 9.0 * liftSlope * Math.pow(taperRatio, 0.3) / Math.pow(aspectRatio, 0.725) * near;
  }

  /**
   * From aspect ratio alone.
   *
   * @param aspectRatio A
   * @return ε_α = 4/(A + 2)
   */
  public static double aspectRatioAlone(double aspectRatio) {
    return 4.0 / (aspectRatio + 2.0);
  }

  /**
   * The part of the far downwash that is there at a distance: on the centre line, in the plane of a straight wake.
   *
   * <p>The integral of Biot and Savart over bound and trailing vortices of an elliptic load reduces to
   *
   * <pre>{@code F(x) = ½ + √(1 + x²)·E(k)/(π·x)        k² = 1/(1 + x²)}</pre>
   *
   * <p>so F(x) + F(−x) = 1 exactly: what is downwash behind is upwash ahead. Example: F(1) = 1.10800.
   *
   * @param distance x, semispans behind the lifting line; negative ahead, not zero
   * @param ellipticIntegral E(k) from {@link #ellipticIntegral}
   * @return F
   */
  public static double ellipticFactor(double distance, double ellipticIntegral) {
    return 0.5 + Math.sqrt(1.0 + distance * distance) * ellipticIntegral / (Math.PI * distance);
  }

  /**
   * The complete elliptic integral of the second kind for the elliptic lifting line, by the arithmetic-geometric mean.
   *
   * @param distance x, semispans from the lifting line, not zero
   * @return E(k) with k² = 1/(1 + x²), between 1 and π/2
   */
  public static double ellipticIntegral(double distance) {
    double square = distance * distance;
    double a = 1.0;
    double b = Math.sqrt(square / (1.0 + square));
    double sum = 0.5 / (1.0 + square);
    // The mean converges quadratically: eight rounds suffice for every x from 1e-8 upwards.
    double power = 1.0;
    for (int i = 0; i < 8 && a - b > 1e-16 * a; i++) {
      double c = 0.5 * (a - b);
      double mean = Math.sqrt(a * b);
      a = 0.5 * (a + b);
      b = mean;
      sum += power * c * c;
      power *= 2.0;
    }
    return Math.PI / (2.0 * a) * (1.0 - sum);
  }

  /**
   * A part of the far downwash.
   *
   * @param liftSlope a_w [1/rad]
   * @param aspectRatio A
   * @param factor F from {@link #ellipticFactor}
   * @return ε_α
   */
  public static double scaledFar(double liftSlope, double aspectRatio, double factor) {
    return 2.0 * liftSlope * factor / (Math.PI * aspectRatio);
  }

  /**
   * One horseshoe vortex that carries the wing's lift on the span π·b/4 to which an elliptic wake rolls up.
   *
   * <p>Example: a_w = 4.529, A = 6, l = 0.45, z = 0 give 0.4532.
   *
   * @param liftSlope a_w [1/rad]
   * @param aspectRatio A
   * @param arm l_h/b; negative ahead of the wing
   * @param height z_h/b
   * @return ε_α
   */
  public static double horseshoe(double liftSlope, double aspectRatio, double arm, double height) {
    double half = Math.PI / 8.0;
    double s2 = half * half;
    double h2 = height * height;
    double r = Math.sqrt(arm * arm + s2 + h2);
    double trailing = (1.0 + arm / r) * s2 / (s2 + h2);
    double bound = s2 * arm / ((arm * arm + h2) * r);
    return 8.0 * liftSlope / (Math.PI * Math.PI * Math.PI * aspectRatio) * (trailing + bound);
  }
}
