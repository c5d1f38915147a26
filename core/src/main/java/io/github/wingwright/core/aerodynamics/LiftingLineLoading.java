// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

import java.util.Locale;
import java.util.function.DoubleUnaryOperator;

/**
 * One distribution of circulation along the span: the sine series of the lifting line and what follows from it.
 *
 * <pre>{@code
 * Γ = 2·b·V·Σ Aₙ·sin nθ              η = 2y/b = cos θ, −1 at the port tip, +1 at the starboard tip
 * c_l = 4·(b/c)·Σ Aₙ·sin nθ          local lift coefficient, on the local chord
 * C_L = π·A·A₁
 * C_Di = π·A·Σ n·Aₙ²                 induced drag
 * δ = Σ n·(Aₙ/A₁)², n ≥ 2            so that C_Di = (1 + δ)·C_L²/(π·A)
 * C_l = −π·A·A₂/4                    rolling moment on span, starboard wing down positive
 * C_n = (π·A/4)·Σ (2n+1)·Aₙ·Aₙ₊₁     yawing moment of the induced drag on span, nose to starboard positive
 * }</pre>
 *
 * <p>Loadings add and scale, which is how the loading at a given lift is made from the basic and the additional one.
 *
 * <p>Source: H. Glauert, <i>The Elements of Aerofoil and Airscrew Theory</i>, ch. XI; the two moments follow from the
 * same integrals.
 */
public final class LiftingLineLoading {
  private final double span;
  private final double aspectRatio;
  private final DoubleUnaryOperator chord;
  /** Aₙ at index n; index 0 is unused and zero. */
  private final double[] coefficient;

  LiftingLineLoading(double span, double aspectRatio, DoubleUnaryOperator chord, double[] coefficient) {
    this.span = span;
    this.aspectRatio = aspectRatio;
    this.chord = chord;
    this.coefficient = coefficient;
  }

  /** Puts the odd (first) or even (second) terms of the kernel in their places. */
  static double[] spread(double[] terms, boolean even) {
    double[] full = new double[2 * terms.length + (even ? 2 : 1)];
    for (int k = 0; k < terms.length; k++) {
      full[2 * k + (even ? 2 : 1)] = terms[k];
    }
    return full;
  }

  /**
   * Coefficient of the sine series.
   *
   * @param n index of the term, 1 or more
   * @return Aₙ [-], zero beyond the last term
   */
  public double coefficient(int n) {
    if (n < 1) {
      throw new IllegalArgumentException("index of a term must be at least 1, was " + n);
    }
    return n < coefficient.length ? coefficient[n] : 0;
  }

  /** Lift coefficient C_L on the wing area. */
  public double liftCoefficient() {
    return Math.PI * aspectRatio * coefficient[1];
  }

  /** Induced drag coefficient C_Di on the wing area. */
  public double inducedDragCoefficient() {
    double sum = 0;
    for (int n = 1; n < coefficient.length; n++) {
      sum += n * coefficient[n] * coefficient[n];
    }
    return Math.PI * aspectRatio * sum;
  }

  /**
   * Induced-drag factor δ of this loading: zero when elliptic, never negative.
   *
   * @return δ in C_Di = (1 + δ)·C_L²/(π·A)
   * @throws IllegalStateException if the loading has no lift, so that there is nothing to compare with
   */
  public double inducedDragFactor() {
    if (coefficient[1] == 0) {
      throw new IllegalStateException("an induced-drag factor needs a loading with lift, this one has none");
    }
    double sum = 0;
    for (int n = 2; n < coefficient.length; n++) {
      double ratio = coefficient[n] / coefficient[1];
      sum += n * ratio * ratio;
    }
    return sum;
  }

  /** Rolling moment coefficient C_l on wing area and span, starboard wing down positive. */
  public double rollingMomentCoefficient() {
    return -Math.PI * aspectRatio * coefficient(2) / 4;
  }

  /** Yawing moment coefficient C_n of the induced drag on wing area and span, nose to starboard positive. */
  public double inducedYawingMomentCoefficient() {
    double sum = 0;
    for (int n = 1; n + 1 < coefficient.length; n++) {
      sum += (2 * n + 1) * coefficient[n] * coefficient[n + 1];
    }
    return Math.PI * aspectRatio * sum / 4;
  }

  /**
   * Circulation at a station.
   *
   * @param eta station 2y/b [-], −1 to 1
   * @return Γ/(b·V) [-]
   */
  public double circulation(double eta) {
    return 2 * series(eta);
  }

  /**
   * Local lift coefficient at a station, on the local chord.
   *
   * @param eta station 2y/b [-], strictly between −1 and 1
   * @return c_l [-]
   */
  public double sectionLiftCoefficient(double eta) {
    return 4 * span * series(eta) / chord.applyAsDouble(Math.abs(eta));
  }

  /**
   * Centre of the load of one half wing: where its resultant lift acts.
   *
   * @return ∫Γ·η dη / ∫Γ dη over the starboard half [-]; 4/(3π) when elliptic
   * @throws IllegalStateException if the half wing carries no lift
   */
  public double spanwiseCentre() {
    double moment = 0;
    double lift = 0;
    for (int n = 1; n < coefficient.length; n++) {
      lift += coefficient[n] * halfRangeSine(n - 1, n + 1);
      moment += coefficient[n] * (halfRangeSine(n - 2, n + 2) / 2);
    }
    if (Math.abs(lift) < 1e-12 * Math.abs(coefficient[1]) || lift == 0) {
      throw new IllegalStateException("a spanwise centre needs a half wing with lift, this one has none");
    }
    return moment / lift;
  }

  /** ∫ ½(cos mθ − cos kθ) dθ from 0 to π/2, which is the integral of sin·sin with difference m and sum k. */
  private static double halfRangeSine(int m, int k) {
    return (quarterCosine(m) - quarterCosine(k)) / 2;
  }

  private static double quarterCosine(int m) {
    return m == 0 ? Math.PI / 2 : Math.sin(m * Math.PI / 2) / m;
  }

  /**
   * The sum of this loading and another one of the same wing.
   *
   * @param other a loading of the same wing
   * @param factor what the other is multiplied with first [-]
   * @return this + factor · other
   */
  public LiftingLineLoading plus(LiftingLineLoading other, double factor) {
    if (other.span != span || other.aspectRatio != aspectRatio) {
      throw new IllegalArgumentException(String.format(Locale.ROOT,
          "loadings must be of the same wing, were of span %.4g m and %.4g m", span, other.span));
    }
    if (!Double.isFinite(factor)) {
      throw new IllegalArgumentException("factor must be finite, was " + factor);
    }
    double[] sum = new double[Math.max(coefficient.length, other.coefficient.length)];
    for (int n = 1; n < sum.length; n++) {
      sum[n] = coefficient(n) + factor * other.coefficient(n);
    }
    return new LiftingLineLoading(span, aspectRatio, chord, sum);
  }

  /** Σ Aₙ·sin nθ at cos θ = η, by Clenshaw's recurrence. */
  private double series(double eta) {
    if (!(eta >= -1 && eta <= 1)) {
      throw new IllegalArgumentException("station must lie within -1 and 1, was " + eta);
    }
    double next = 0;
    double afterNext = 0;
    for (int n = coefficient.length - 1; n >= 1; n--) {
      double current = coefficient[n] + 2 * eta * next - afterNext;
      afterNext = next;
      next = current;
    }
    return next * Math.sqrt(1 - eta * eta);
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "loading of a wing of aspect ratio %.3g: C_L %.4f, C_Di %.5f",
        aspectRatio, liftCoefficient(), inducedDragCoefficient());
  }
}
