// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Guideline;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.function.DoubleUnaryOperator;

/**
 * What the lifting line says about a wing.
 *
 * <p>Every loading of the wing is the sum of two: the <em>additional</em> loading, that of the untwisted wing, in
 * proportion to the lift, and the <em>basic</em> loading, that of twist and camber at zero lift.
 * <pre>{@code
 * a = a₀/(1 + (a₀/(π·A))·(1 + τ))           lift slope of the wing, defines τ
 * C_Di = (1 + δ)·C_L²/(π·A)                  defines δ, for the untwisted wing
 * α_L0 = J·ε                                 zero-lift angle of the wing for a twist ε of the tip, defines J
 * C_Di = C_L²·(1 + δ)/(π·A) + C_L·ε·a₀·v + (ε·a₀)²·w      defines v and w
 * }</pre>
 * Where the section slope varies, a₀ here is its mean over the area.
 *
 * <p>Sources: H. Glauert, <i>The Elements of Aerofoil and Airscrew Theory</i>, ch. XI (τ, δ); R. F. Anderson,
 * NACA Report 572 (J, v, w; there for wings with rounded tips).
 */
public final class LiftingLineSolution {
  /** Stations at which a stall is looked for, evenly spaced in θ on the half wing. */
  private static final int STALL_STATIONS = 120;

  private static final Guideline ASPECT_RATIO = new Guideline("aspect ratio of a lifting line", Interval.atLeast(4),
      NamedUnit.NUMBER, "the lifting line",
      "Its lift slope is too high here: by 12 % at aspect ratio 4, 23 % at 2. Use the vortex lattice.",
      Source.library("compared with lifting-surface theory for rectangular wings"));

  private static final SpanQuadrature QUADRATURE = new SpanQuadrature(256);

  private final double span;
  private final DoubleUnaryOperator chord;
  private final int terms;
  private final double[] mu;
  private final double area;
  private final double meanSlope;
  private final LiftingLineLoading unit;
  private final LiftingLineLoading atRootZero;
  private final double tipTwist;
  private final double rootAngle;

  LiftingLineSolution(double span, DoubleUnaryOperator chord, DoubleUnaryOperator slope, int terms, double[] mu,
      double[] unitTerms, double[] fixedTerms, double rootAngle, double tipTwist) {
    this.span = span;
    this.chord = chord;
    this.terms = terms;
    this.mu = mu;
    this.rootAngle = rootAngle;
    this.tipTwist = tipTwist;
    double meanChord = QUADRATURE.integrate(chord);
    this.area = span * meanChord;
    this.meanSlope = QUADRATURE.integrate(eta -> chord.applyAsDouble(eta) * slope.applyAsDouble(eta))
        / meanChord;
    this.unit = loading(LiftingLineLoading.spread(unitTerms, false));
    this.atRootZero = loading(LiftingLineLoading.spread(fixedTerms, false));
  }

  private LiftingLineLoading loading(double[] coefficient) {
    return new LiftingLineLoading(span, aspectRatio(), chord, coefficient);
  }

  /** Wing area S [m²], the chord integrated over the span. */
  public double area() {
    return area;
  }

  /** Aspect ratio A = b²/S [-]. */
  public double aspectRatio() {
    return span * span / area;
  }

  /** Lift slope of the wing C_Lα [1/rad]. */
  public double liftSlope() {
    return unit.liftCoefficient();
  }

  /** Angle of the wing's reference line at zero lift [rad]; negative for a cambered wing without twist. */
  public double zeroLiftAngle() {
    return -atRootZero.liftCoefficient() / unit.liftCoefficient();
  }

  /** Mean section lift slope a₀ over the area [1/rad]. */
  public double meanSectionLiftSlope() {
    return meanSlope;
  }

  /** Factor τ of the lift slope [-]: zero for an elliptic wing. */
  public double liftSlopeFactor() {
    return (meanSlope / liftSlope() - 1) * Math.PI * aspectRatio() / meanSlope - 1;
  }

  /** Factor δ of the induced drag of the untwisted wing [-]: zero for an elliptic wing. */
  public double inducedDragFactor() {
    return unit.inducedDragFactor();
  }

  /** Loading of the untwisted wing at lift coefficient one: the additional loading. */
  public LiftingLineLoading additional() {
    double[] scaled = new double[2 * terms];
    for (int n = 1; n < scaled.length; n++) {
      scaled[n] = unit.coefficient(n) / unit.liftCoefficient();
    }
    return loading(scaled);
  }

  /** Loading of twist and camber at zero lift of the wing: the basic loading. */
  public LiftingLineLoading basic() {
    return atAngle(zeroLiftAngle());
  }

  /**
   * Loading at an angle of attack.
   *
   * @param angleOfAttack angle of the wing's reference line [rad]
   */
  public LiftingLineLoading atAngle(double angleOfAttack) {
    return atRootZero.plus(unit, angleOfAttack);
  }

  /**
   * Loading at a lift coefficient.
   *
   * @param liftCoefficient C_L of the wing [-]
   */
  public LiftingLineLoading at(double liftCoefficient) {
    return atAngle(zeroLiftAngle() + liftCoefficient / liftSlope());
  }

  /**
   * Twist factor J: angle of zero lift of the wing, from the root's zero-lift line, per unit of tip twist.
   *
   * @throws IllegalStateException if tip and root have the same angle from zero lift
   */
  public double zeroLiftTwistFactor() {
    return (zeroLiftAngle() + rootAngle) / twist();
  }

  /**
   * Twist factor v: the induced drag in proportion to lift and twist.
   *
   * @throws IllegalStateException if tip and root have the same angle from zero lift
   */
  public double linearTwistDragFactor() {
    LiftingLineLoading basic = basic();
    LiftingLineLoading additional = additional();
    double sum = 0;
    for (int n = 1; n < 2 * terms; n++) {
      sum += n * basic.coefficient(n) * additional.coefficient(n);
    }
    return 2 * Math.PI * aspectRatio() * sum / (twist() * meanSlope);
  }

  /**
   * Twist factor w: the induced drag of twist alone, at zero lift.
   *
   * @throws IllegalStateException if tip and root have the same angle from zero lift
   */
  public double quadraticTwistDragFactor() {
    double scale = twist() * meanSlope;
    return basic().inducedDragCoefficient() / (scale * scale);
  }

  private double twist() {
    if (tipTwist == 0) {
      throw new IllegalStateException("twist factors need a tip twist other than 0 rad");
    }
    return tipTwist;
  }

  /**
   * Loading of an antisymmetric distribution of angle, such as ailerons or a rate of roll.
   *
   * @param starboardAngle added angle of attack of the starboard sections [rad] at the station η from 0 to 1; the
   *     port wing has the opposite
   */
  public LiftingLineLoading antisymmetric(DoubleUnaryOperator starboardAngle) {
    Objects.requireNonNull(starboardAngle, "starboard angle");
    double[] angle = new double[terms - 1];
    for (int i = 0; i < angle.length; i++) {
      double eta = Math.cos((i + 1) * Math.PI / (2 * terms));
      angle[i] = starboardAngle.applyAsDouble(eta);
      if (!Double.isFinite(angle[i])) {
        throw new IllegalArgumentException(String.format(Locale.ROOT,
            "starboard angle must be finite, was %s rad at station %.4f", angle[i], eta));
      }
    }
    double[][] a = LiftingLineKernel.coefficients(terms, true, mu, angle);
    return loading(LiftingLineLoading.spread(a[0], true));
  }

  /**
   * Loading of a rate of roll p·b/(2V) of one, starboard wing going down.
   */
  public LiftingLineLoading rolling() {
    return antisymmetric(eta -> eta);
  }

  /**
   * Roll damping.
   *
   * @return C_lp, rolling moment per p·b/(2V) [-]; negative, it opposes the roll. An elliptic wing with section slope
   *     2π has −(π/4)·A/(A + 4)
   */
  public double rollDamping() {
    return rolling().rollingMomentCoefficient();
  }

  /**
   * Yawing moment of a rate of roll, per unit of lift coefficient: the lift of the wing that goes down leans forward,
   * and its induced drag grows.
   *
   * @return C_np/C_L, yawing moment per p·b/(2V) and C_L [-]; negative: rolling to starboard yaws to port. An
   *     elliptic wing with section slope 2π has −(A − 2)/(8·(A + 4))
   */
  public double yawDueToRollPerLift() {
    LiftingLineLoading symmetric = additional();
    double induced = symmetric.plus(rolling(), 1).inducedYawingMomentCoefficient();
    double lean = -aspectRatio() * Math.PI / 8 * (symmetric.coefficient(1) + symmetric.coefficient(3));
    return induced + lean;
  }

  /**
   * The first section to reach its limit as the angle of attack grows.
   *
   * @param sectionLimit greatest lift coefficient of the section [-] at the station η = |2y/b|
   * @return where, and the lift coefficient of the wing then
   */
  public LiftingLineStall firstStall(DoubleUnaryOperator sectionLimit) {
    Objects.requireNonNull(sectionLimit, "section limit");
    LiftingLineLoading basic = basic();
    LiftingLineLoading additional = additional();
    double lowest = Double.POSITIVE_INFINITY;
    double where = 0;
    for (int i = 1; i <= STALL_STATIONS; i++) {
      double eta = i == STALL_STATIONS ? 0 : Math.cos(i * Math.PI / (2 * STALL_STATIONS));
      double perLift = additional.sectionLiftCoefficient(eta);
      double limit = sectionLimit.applyAsDouble(eta);
      if (!Double.isFinite(limit)) {
        throw new IllegalArgumentException(String.format(Locale.ROOT,
            "section limit must be finite, was %s at station %.4f", limit, eta));
      }
      double reached = (limit - basic.sectionLiftCoefficient(eta)) / perLift;
      if (perLift > 0 && reached < lowest) {
        lowest = reached;
        where = eta;
      }
    }
    return new LiftingLineStall(where, lowest, sectionLimit.applyAsDouble(where));
  }

  /** Where the wing leaves the range of the lifting line. */
  public List<Finding> findings() {
    return ASPECT_RATIO.check(aspectRatio()).map(List::of).orElse(List.of());
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "wing, A %.3g: slope %.4f per rad, δ %.4f, zero lift %.2f°",
        aspectRatio(), liftSlope(), inducedDragFactor(), Math.toDegrees(zeroLiftAngle()) + 0.0);
  }

  /** Simpson's rule in θ, where η = cos θ: exact to 10⁻⁹ for smooth and for elliptic chords. */
  private static final class SpanQuadrature {
    private final double[] station;
    private final double[] weight;

    SpanQuadrature(int intervals) {
      station = new double[intervals + 1];
      weight = new double[intervals + 1];
      double step = Math.PI / (2 * intervals);
      for (int i = 0; i <= intervals; i++) {
        station[i] = i == intervals ? 0 : Math.cos(i * step);
        double simpson = i == 0 || i == intervals ? 1 : i % 2 == 1 ? 4 : 2;
        weight[i] = simpson * step / 3 * Math.sin(i * step);
      }
    }

    double integrate(DoubleUnaryOperator f) {
      double sum = 0;
      for (int i = 1; i < station.length; i++) {
        sum += weight[i] * f.applyAsDouble(station[i]);
      }
      return sum;
    }
  }
}
