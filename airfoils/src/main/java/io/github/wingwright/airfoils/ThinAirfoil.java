// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.Angle;
import java.util.Locale;
import java.util.Objects;

/**
 * Thin-airfoil theory: what the mean line alone says about lift and moment in potential flow.
 *
 * <pre>{@code
 * x = ½·(1 − cos θ),  dc/dx = B0 − Σ An·cos(nθ),  A0 = α − B0   (B0: mean of the slope over θ)
 * cl = 2π·(A0 + A1/2),   αL0 = B0 − A1/2,   cm(¼ chord) = π/4·(A2 − A1)
 * ideal angle = B0 (A0 = 0),   design lift = π·A1
 * }</pre>
 *
 * <p>Valid for thin sections at small angles in attached flow; a 12 % section has about 10 % more lift slope in exact
 * potential flow, and viscosity takes it away again. Below a chord Reynolds number of 10⁵ the measured zero-lift angle
 * of cambered sections is two to four degrees nearer zero than this theory says.
 *
 * <p>Source: Glauert, The Elements of Aerofoil and Airscrew Theory, 1926, chapter VII; sign conventions of Abbott and
 * von Doenhoff. Example, the 2412: αL0 = −2.07724°, ideal angle 0.25742°, design lift 0.256025,
 * moment −0.0531195.
 *
 * @param meanSlope B0, which is also the ideal angle of attack [rad]
 * @param a1 first Fourier coefficient [1]
 * @param a2 second Fourier coefficient [1]
 */
public record ThinAirfoil(double meanSlope, double a1, double a2) {
  private static final Source GLAUERT = Source.fromMemory(
      "Glauert, The Elements of Aerofoil and Airscrew Theory, 1926", "chapter VII");

  /** Lift coefficient from the angle of attack. */
  public static final Formula LIFT = Formula.named("lift of a thin section")
      .gives("c_l")
      .as("2·π·(α − α_0)")
      .where("α", "angle of attack", Angle.RADIAN, -0.3, 0.3)
      .where("α_0", "angle of attack without lift", Angle.RADIAN, -0.3, 0.3)
      .from(GLAUERT)
      .computedBy(ThinAirfoil::lift);

  /** Moment from the Fourier coefficients of the mean line. */
  public static final Formula MOMENT = Formula.named("moment of a thin section about its quarter chord")
      .gives("c_m")
      .as("π/4·(A_2 − A_1)")
      .where("A_1", "first Fourier coefficient of the mean line's slope", -0.5, 0.5)
      .where("A_2", "second Fourier coefficient of the mean line's slope", -0.5, 0.5)
      .from(GLAUERT)
      .computedBy(ThinAirfoil::moment);

  /** Effectiveness of a plain flap. */
  public static final Formula FLAP = Formula.named("effectiveness of a plain flap")
      .gives("τ")
      .as("1 − (acos(1 − 2·x_h) − sin(acos(1 − 2·x_h)))/π")
      .where("x_h", "hinge station over chord", 0, 1)
      .from(GLAUERT)
      .computedBy(ThinAirfoil::flapEffectiveness);

  /**
   * Lift coefficient of thin-airfoil theory.
   *
   * @param angle angle of attack [rad]
   * @param zeroLift angle of attack without lift [rad]
   * @return cl [1]
   */
  public static double lift(double angle, double zeroLift) {
    return 2 * Math.PI * (angle - zeroLift);
  }

  /**
   * Moment coefficient about the quarter chord, nose-up positive.
   *
   * @param a1 first Fourier coefficient [1]
   * @param a2 second Fourier coefficient [1]
   * @return cm [1]
   */
  public static double moment(double a1, double a2) {
    return Math.PI / 4 * (a2 - a1);
  }

  /** The theory for a section's mean line: in closed form for the 4-digit line, by quadrature for any other. */
  public static ThinAirfoil of(ComposedSection section) {
    Objects.requireNonNull(section, "section");
    return of(section.meanLine());
  }

  /** The theory for a mean line: in closed form for the 4-digit line, by quadrature for any other. */
  public static ThinAirfoil of(MeanLine line) {
    Objects.requireNonNull(line, "line");
    return line instanceof FourDigitMeanLine four
        ? fourDigit(four.maximumCamber(), four.position())
        : byQuadrature(line);
  }

  /**
   * Closed form for the 4-digit mean line. With θp = acos(1 − 2·p), k1 = m/p², k2 = m/(1 − p)², q = 2·p − 1 and
   * Sn = sin(n·θp):
   *
   * <pre>{@code
   * B0 = [k1·(q·θp + S1) + k2·(q·(π − θp) − S1)]/π
   * A1 = 2/π·[k1·(q·S1 + θp/2 + S2/4) + k2·(−q·S1 + (π − θp)/2 − S2/4)]
   * A2 = 2/π·(k1 − k2)·(q·S2/2 + S1/2 + S3/6)
   * }</pre>
   *
   * @param m greatest camber [chords]
   * @param p its position [chords], between 0 and 1
   */
  public static ThinAirfoil fourDigit(double m, double p) {
    double tp = Math.acos(1 - 2 * p);
    double k1 = m / (p * p);
    double k2 = m / ((1 - p) * (1 - p));
    double q = 2 * p - 1;
    double s1 = Math.sin(tp);
    double s2 = Math.sin(2 * tp);
    double s3 = Math.sin(3 * tp);
    double b0 = (k1 * (q * tp + s1) + k2 * (q * (Math.PI - tp) - s1)) / Math.PI;
    double a1 = 2 / Math.PI
        * (k1 * (q * s1 + tp / 2 + s2 / 4) + k2 * (-q * s1 + (Math.PI - tp) / 2 - s2 / 4));
    double a2 = 2 / Math.PI * (k1 - k2) * (q * s2 / 2 + s1 / 2 + s3 / 6);
    return new ThinAirfoil(b0, a1, a2);
  }

  /** The theory for any mean line, by Gauss quadrature over θ between its breaks. */
  public static ThinAirfoil byQuadrature(MeanLine line) {
    return new ThinAirfoil(fourier(line, 0) / 2, fourier(line, 1), fourier(line, 2));
  }

  /** The n-th Fourier coefficient of the slope, {@code 2/π·∫ dc/dx·cos(nθ) dθ}. */
  public static double fourier(MeanLine line, int n) {
    Objects.requireNonNull(line, "line");
    double[] breaks = line.breaks();
    double[] edges = new double[breaks.length + 2];
    edges[edges.length - 1] = Math.PI;
    for (int i = 0; i < breaks.length; i++) {
      edges[i + 1] = Math.acos(1 - 2 * breaks[i]);
    }
    return 2 / Math.PI
        * GaussLegendre.integrate(
            t -> line.slope(0.5 * (1 - Math.cos(t))) * Math.cos(n * t), edges, 8);
  }

  /** Angle of attack without lift. */
  public Angle zeroLiftAngle() {
    return Angle.radians(zeroLift());
  }

  private double zeroLift() {
    return meanSlope - a1 / 2;
  }

  /** Ideal angle of attack: the flow enters along the mean line, without a suction peak. */
  public Angle idealAngle() {
    return Angle.radians(meanSlope);
  }

  /** Design lift coefficient: the lift at the ideal angle [1]. */
  public double designLiftCoefficient() {
    return Math.PI * a1;
  }

  /** Moment coefficient about the quarter chord, nose-up positive [1]; it does not change with the angle. */
  public double momentAboutQuarterChord() {
    return Math.PI / 4 * (a2 - a1);
  }

  /** Moment coefficient about the nose [1]. */
  public double momentAboutNose(Angle angleOfAttack) {
    Objects.requireNonNull(angleOfAttack, "angle of attack");
    return momentAboutQuarterChord() - liftCoefficient(angleOfAttack) / 4;
  }

  /**
   * Lift coefficient, {@code 2π·(α − αL0)}.
   *
   * @param angleOfAttack angle of attack from the chord line
   */
  public double liftCoefficient(Angle angleOfAttack) {
    Objects.requireNonNull(angleOfAttack, "angle of attack");
    return lift(angleOfAttack.radians(), zeroLift());
  }

  /**
   * Effectiveness of a plain flap: the change of zero-lift angle per angle of flap, {@code (π − θh + sin θh)/π} with
   * θh = acos(1 − 2·xh). A flap of 20 % chord gives 0.5498. Real flaps reach 60 to 80 % of it (common practice, no
   * source).
   *
   * @param hinge hinge station xh [chords], 0 to 1
   */
  public static double flapEffectiveness(double hinge) {
    Checks.within("hinge station", hinge, 0, 1);
    double t = Math.acos(1 - 2 * hinge);
    return (Math.PI - t + Math.sin(t)) / Math.PI;
  }

  /**
   * Change of the moment coefficient about the quarter chord per radian of a plain flap, trailing edge down:
   * {@code −½·sin θh·(1 − cos θh)}.
   *
   * @param hinge hinge station xh [chords], 0 to 1
   */
  public static double flapMoment(double hinge) {
    Checks.within("hinge station", hinge, 0, 1);
    double t = Math.acos(1 - 2 * hinge);
    return -0.5 * Math.sin(t) * (1 - Math.cos(t));
  }

  @Override
  public String toString() {
    return String.format(
        Locale.ROOT,
        "zero lift at %.3f°, C_m,¼ %.4f, design lift %.4f at %.3f°",
        zeroLiftAngle().degrees(),
        momentAboutQuarterChord(),
        designLiftCoefficient(),
        idealAngle().degrees());
  }
}
