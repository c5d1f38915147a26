// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import java.util.Locale;
import java.util.Objects;
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;

/**
 * Prandtl's lifting line for any unswept planform: a specification that {@link #solve()} turns into lift slope, span
 * loading, induced drag and roll damping.
 *
 * <p>The wing is told as functions of the station η = |2y/b|, 0 at the root and 1 at the tip, the same on both halves:
 * the chord, the section lift slope, the section's angle of zero lift, the geometric twist. What the line sees is
 * <pre>{@code
 * α(η) = α_root + twist(η) − zeroLiftAngle(η)
 * }</pre>
 * with α_root measured from the same line as the twist.
 *
 * <p>How many terms: with 40 odd terms δ and τ of straight-tapered wings up to aspect ratio 10 are within 10⁻³ of the
 * converged values. A jump in twist or chord converges slowly and rings near the jump; its integrals are good all the
 * same.
 *
 * <p>Validity: incompressible, attached, unswept (sweep of the quarter chord below about 10°), aspect ratio above about
 * 4. The lift slope of a rectangle is too high against lifting-surface theory: by 5 % at aspect ratio 8, 12 % at 4, 23 %
 * at 2. Use the vortex lattice of the stability module there.
 *
 * <p>Example: a rectangular wing of aspect ratio 6 with section slope 2π has lift slope 4.530 per radian, τ 0.161 and
 * δ 0.0483.
 */
public final class LiftingLine {
  /** Terms that {@link #solve()} uses when none are asked for: δ and τ to 10⁻³ up to aspect ratio 10. */
  public static final int USUAL_TERMS = 40;

  private final double span;
  private final DoubleUnaryOperator chord;
  private final DoubleUnaryOperator slope;
  private final DoubleUnaryOperator zeroLift;
  private final DoubleUnaryOperator twist;
  private final int terms;

  private LiftingLine(double span, DoubleUnaryOperator chord, DoubleUnaryOperator slope,
      DoubleUnaryOperator zeroLift, DoubleUnaryOperator twist, int terms) {
    this.span = span;
    this.chord = chord;
    this.slope = slope;
    this.zeroLift = zeroLift;
    this.twist = twist;
    this.terms = terms;
  }

  /**
   * A wing without twist, its sections with slope 2π and zero lift at zero angle.
   *
   * @param span span b [m], positive
   * @param chord chord [m] at the station η = |2y/b|, positive for 0 ≤ η &lt; 1
   */
  public static LiftingLine of(double span, DoubleUnaryOperator chord) {
    if (!(span > 0) || span == Double.POSITIVE_INFINITY) {
      throw new IllegalArgumentException(String.format(Locale.ROOT, "span must be positive, was %.6g m", span));
    }
    Objects.requireNonNull(chord, "chord");
    return new LiftingLine(span, chord, eta -> 2 * Math.PI, eta -> 0, eta -> 0, USUAL_TERMS);
  }

  /**
   * The wing of a planform, with its washout; sections with slope 2π and zero lift at zero angle.
   *
   * @param planform outline of a wing; its sweep is not seen by the line
   */
  public static LiftingLine of(Planform planform) {
    Objects.requireNonNull(planform, "planform");
    if (!planform.isMirrored()) {
      throw new IllegalArgumentException("planform of a lifting line must have two halves, was " + planform);
    }
    Length half = planform.span().times(0.5);
    return of(planform.span().si(), eta -> planform.chordAt(half.times(eta)).si())
        .twist(eta -> planform.twistAt(half.times(eta)).si());
  }

  /**
   * A wing without twist, its sections with slope 2π and zero lift at zero angle.
   *
   * @param span span b
   * @param chord chord at the station η = |2y/b|, positive for 0 ≤ η &lt; 1
   */
  public static LiftingLine of(Length span, DoubleFunction<Length> chord) {
    Objects.requireNonNull(span, "span");
    Objects.requireNonNull(chord, "chord");
    return of(span.si(), eta -> chord.apply(eta).si());
  }

  /**
   * A straight-tapered wing.
   *
   * @param span span b [m], positive
   * @param aspectRatio aspect ratio b²/S [-], positive
   * @param taperRatio tip chord over root chord [-], 0 or more
   */
  public static LiftingLine tapered(double span, double aspectRatio, double taperRatio) {
    if (!(aspectRatio > 0) || aspectRatio == Double.POSITIVE_INFINITY) {
      throw new IllegalArgumentException("aspect ratio must be positive, was " + aspectRatio);
    }
    if (!(taperRatio >= 0) || taperRatio == Double.POSITIVE_INFINITY) {
      throw new IllegalArgumentException("taper ratio must not be negative, was " + taperRatio);
    }
    double root = 2 * span / (aspectRatio * (1 + taperRatio));
    return of(span, eta -> root * (1 - (1 - taperRatio) * eta));
  }

  /**
   * An elliptic wing.
   *
   * @param span span b [m], positive
   * @param aspectRatio aspect ratio b²/S [-], positive
   */
  public static LiftingLine elliptic(double span, double aspectRatio) {
    if (!(aspectRatio > 0) || aspectRatio == Double.POSITIVE_INFINITY) {
      throw new IllegalArgumentException("aspect ratio must be positive, was " + aspectRatio);
    }
    double root = 4 * span / (Math.PI * aspectRatio);
    return of(span, eta -> root * Math.sqrt(1 - eta * eta));
  }

  /**
   * With this section lift slope.
   *
   * @param slopeAt section lift slope a₀ [1/rad] at the station η, positive
   */
  public LiftingLine sectionLiftSlope(DoubleUnaryOperator slopeAt) {
    return new LiftingLine(span, chord, Objects.requireNonNull(slopeAt, "section lift slope"), zeroLift, twist,
        terms);
  }

  /**
   * With this section lift slope all along the span.
   *
   * @param perRadian section lift slope a₀ [1/rad], positive
   */
  public LiftingLine sectionLiftSlope(double perRadian) {
    return sectionLiftSlope(eta -> perRadian);
  }

  /**
   * With this angle of zero lift of the sections.
   *
   * @param angleAt angle of zero lift [rad] from the chord line at the station η; negative for a cambered section
   */
  public LiftingLine zeroLiftAngle(DoubleUnaryOperator angleAt) {
    return new LiftingLine(span, chord, slope, Objects.requireNonNull(angleAt, "zero-lift angle"), twist, terms);
  }

  /**
   * With this geometric twist.
   *
   * @param angleAt angle of the chord line [rad] from the wing's reference line at the station η, nose up positive:
   *     washout is negative towards the tip
   */
  public LiftingLine twist(DoubleUnaryOperator angleAt) {
    return new LiftingLine(span, chord, slope, zeroLift, Objects.requireNonNull(angleAt, "twist"), terms);
  }

  /**
   * With twist growing linearly from zero at the root.
   *
   * @param tipAngle twist of the tip [rad], nose up positive
   */
  public LiftingLine linearTwist(double tipAngle) {
    return twist(eta -> tipAngle * eta);
  }

  /**
   * With twist growing linearly from zero at the root.
   *
   * @param tipAngle twist of the tip, nose up positive
   */
  public LiftingLine linearTwist(Angle tipAngle) {
    Objects.requireNonNull(tipAngle, "tip angle");
    return linearTwist(tipAngle.si());
  }

  /**
   * With this number of terms.
   *
   * @param count number of odd terms N, 2 to 500
   */
  public LiftingLine terms(int count) {
    if (count < 2 || count > 500) {
      throw new IllegalArgumentException("number of terms must lie within 2 and 500, was " + count);
    }
    return new LiftingLine(span, chord, slope, zeroLift, twist, count);
  }

  /**
   * Solves the lifting line for the additional loading (unit angle) and the basic loading (twist and camber).
   *
   * @throws IllegalArgumentException if a chord or a slope is not positive, or an angle not finite, at a station
   */
  public LiftingLineSolution solve() {
    double[] mu = new double[terms];
    double[] one = new double[terms];
    double[] fixed = new double[terms];
    for (int i = 0; i < terms; i++) {
      double eta = Math.cos((i + 1) * Math.PI / (2 * terms));
      if (i == terms - 1) {
        eta = 0;
      }
      double c = positive("chord", chord.applyAsDouble(eta), "m", eta);
      double a0 = positive("section lift slope", slope.applyAsDouble(eta), "per rad", eta);
      mu[i] = a0 * c / (4 * span);
      one[i] = 1;
      fixed[i] = twist.applyAsDouble(eta) - zeroLift.applyAsDouble(eta);
      if (!Double.isFinite(fixed[i])) {
        throw new IllegalArgumentException(String.format(Locale.ROOT,
            "twist and zero-lift angle must be finite, gave %s rad at station %.4f", fixed[i], eta));
      }
    }
    double[][] a = LiftingLineKernel.coefficients(terms, false, mu, one, fixed);
    double root = fixed[terms - 1];
    double tip = twist.applyAsDouble(1) - zeroLift.applyAsDouble(1);
    return new LiftingLineSolution(span, chord, slope, terms, mu, a[0], a[1], root, tip - root);
  }

  private static double positive(String name, double value, String unit, double eta) {
    if (!(value > 0) || value == Double.POSITIVE_INFINITY) {
      throw new IllegalArgumentException(String.format(Locale.ROOT,
          "%s must be positive, was %.6g %s at station %.4f", name, value, unit, eta));
    }
    return value;
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "lifting line, span %.4g m, root chord %.4g m, %d terms", span,
        chord.applyAsDouble(0), terms);
  }
}
