// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.quantity.NamedUnit;

/**
 * A way to reckon the downwash gradient ε_α at a tail behind a wing. They differ by ±15 % as a rule and by more for short
 * arms: {@link Downwash} shows them side by side.
 */
public enum DownwashMethod {
  /** The stability handbook's fit for straight tapered wings with the tail in or near the wake. */
  HANDBOOK("handbook fit", "straight tapered wings, tail a fifth of the span or more behind", DownwashFormulas.HANDBOOK) {
    @Override
    public double gradient(double a, double ar, double taper, double sweep, double arm, double height) {
      return DownwashFormulas.handbook(ar, taper, sweep, arm, height);
    }

    @Override
    Step step(Terms t) {
      return Step.of(formula(), t.aspectRatio(), t.taperRatio(), t.sweep(), t.arm(), t.height());
    }
  },
  /** Twice the downwash at the wing; an upper bound for very long arms, an underestimate for short ones. */
  FAR_ELLIPTIC("far wake of an elliptic wing", "more than two spans behind the wing", DownwashFormulas.FAR_ELLIPTIC) {
    @Override
    public double gradient(double a, double ar, double taper, double sweep, double arm, double height) {
      return DownwashFormulas.farElliptic(a, ar);
    }

    @Override
    Step step(Terms t) {
      return Step.of(formula(), t.liftSlope(), t.aspectRatio());
    }
  },
  /** Torenbeek's fit. */
  TORENBEEK("Torenbeek's fit", "straight tapered wings without much sweep", DownwashFormulas.TORENBEEK) {
    @Override
    public double gradient(double a, double ar, double taper, double sweep, double arm, double height) {
      return DownwashFormulas.torenbeek(a, ar, taper, arm, height);
    }

    @Override
    Step step(Terms t) {
      return Step.of(formula(), t.liftSlope(), t.aspectRatio(), t.taperRatio(), t.arm(), t.height());
    }
  },
  /** Diehl's fit to measurements, without an effect of height. */
  DIEHL("Diehl's fit", "straight wings, tail near the wake", DownwashFormulas.DIEHL) {
    @Override
    public double gradient(double a, double ar, double taper, double sweep, double arm, double height) {
      return DownwashFormulas.diehl(a, ar, taper, arm);
    }

    @Override
    Step step(Terms t) {
      return Step.of(formula(), t.liftSlope(), t.aspectRatio(), t.taperRatio(), t.arm());
    }
  },
  /** A rule of thumb. */
  ASPECT_RATIO_ALONE("aspect ratio alone", "a first guess for models", DownwashFormulas.ASPECT_RATIO_ALONE) {
    @Override
    public double gradient(double a, double ar, double taper, double sweep, double arm, double height) {
      return DownwashFormulas.aspectRatioAlone(ar);
    }

    @Override
    Step step(Terms t) {
      return Step.of(formula(), t.aspectRatio());
    }
  },
  /** The exact integral over an elliptic lifting line, on the centre line in the plane of a wake that stays flat. */
  ELLIPTIC_LIFTING_LINE(
      "elliptic lifting line", "tail in the plane of the wake", DownwashFormulas.ELLIPTIC_LIFTING_LINE) {
    @Override
    public double gradient(double a, double ar, double taper, double sweep, double arm, double height) {
      double x = 2.0 * arm;
      return DownwashFormulas.scaledFar(
          a, ar, DownwashFormulas.ellipticFactor(x, DownwashFormulas.ellipticIntegral(x)));
    }

    @Override
    Step step(Terms t) {
      Step x = Step.of(SEMISPANS, t.arm());
      Step e =
          Step.solution(
              "complete elliptic integral of the second kind",
              "E",
              NamedUnit.NUMBER,
              "arithmetic-geometric mean",
              "E = ∫√(1 − sin²θ/(1 + x²)) dθ from 0 to π/2",
              v -> DownwashFormulas.ellipticIntegral(v[0]),
              v -> v[1] - midpointIntegral(v[0]),
              Sources.ELLIPTIC_WAKE,
              x);
      return Step.of(
          formula(), t.liftSlope(), t.aspectRatio(), Step.of(DownwashFormulas.ELLIPTIC_FACTOR, x, e));
    }
  },
  /** One horseshoe vortex on the rolled-up span; it knows height, and overstates little where the tail is narrow. */
  HORSESHOE("one horseshoe vortex", "a narrow tail at any height", DownwashFormulas.HORSESHOE) {
    @Override
    public double gradient(double a, double ar, double taper, double sweep, double arm, double height) {
      return DownwashFormulas.horseshoe(a, ar, arm, height);
    }

    @Override
    Step step(Terms t) {
      return Step.of(formula(), t.liftSlope(), t.aspectRatio(), t.arm(), t.height());
    }
  };

  static final Formula SEMISPANS =
      Formula.named("tail arm over semispan")
          .gives("x")
          .as("2·l")
          .where("l", "tail arm over span", -10, 10)
          .from(Source.DEFINITION)
          .computedBy((double arm) -> 2.0 * arm);

  private final String words;
  private final String validity;
  private final Formula formula;

  DownwashMethod(String words, String validity, Formula formula) {
    this.words = words;
    this.validity = validity;
    this.formula = formula;
  }

  /**
   * The downwash gradient, without allocation.
   *
   * @param liftSlope lift-curve slope of the wing a_w [1/rad]
   * @param aspectRatio aspect ratio A
   * @param taperRatio taper ratio λ
   * @param sweep sweep of the quarter-chord line [rad]
   * @param arm tail arm over span l_h/b, positive
   * @param height height of the tail over span z_h/b
   * @return ε_α
   */
  public abstract double gradient(
      double liftSlope, double aspectRatio, double taperRatio, double sweep, double arm, double height);

  abstract Step step(Terms terms);

  /**
   * The method in words.
   *
   * @return for example {@code "handbook fit"}
   */
  public String words() {
    return words;
  }

  /**
   * Where it holds.
   *
   * @return in words; the ranges of the inputs are with the formula
   */
  public String validity() {
    return validity;
  }

  /**
   * Its formula.
   *
   * @return the formula, with the range of each input and the source
   */
  public Formula formula() {
    return formula;
  }

  /** An independent value of E to hold the mean against: the trapezoidal rule, exact for periodic functions. */
  private static double midpointIntegral(double x) {
    int n = 4000;
    double sum = 0.0;
    for (int i = 0; i < n; i++) {
      double sine = Math.sin((i + 0.5) * 0.5 * Math.PI / n);
      sum += Math.sqrt(1.0 - sine * sine / (1.0 + x * x));
    }
    return sum * 0.5 * Math.PI / n;
  }

  /** The inputs as steps. */
  record Terms(Step liftSlope, Step aspectRatio, Step taperRatio, Step sweep, Step arm, Step height) {}
}
