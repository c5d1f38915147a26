// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.numerics.Quadrature;
import io.github.wingwright.core.numerics.Tolerance;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.NamedUnit;
import java.io.Serializable;
import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * The outline of a nose or a tail, without a size: the radius over that of the base, r/R, against the distance from the tip
 * over the length, t = x/n. A tail is a nose turned around.
 *
 * <table>
 *   <caption>The profiles; k = n/R is twice the fineness</caption>
 *   <tr><th>profile</th><th>r/R</th><th>volume over π·R²·n</th><th>meets a cylinder</th></tr>
 *   <tr><td>{@link #hemisphere()}, {@link #halfEllipsoid()}</td><td>√(1 − (1 − t)²)</td><td>2/3</td><td>smoothly</td></tr>
 *   <tr><td>{@link #tangentOgive()}</td><td>a circular arc</td><td>0.533 if slender</td><td>smoothly</td></tr>
 *   <tr><td>{@link #cone()}</td><td>t</td><td>1/3</td><td>with an edge</td></tr>
 *   <tr><td>{@link #boatTail(double)}</td><td>β + (1 − β)·t</td><td>(1 + β + β²)/3</td><td>with an edge</td></tr>
 *   <tr><td>{@link #power(double)}</td><td>t^m</td><td>1/(2m + 1)</td><td>with an edge</td></tr>
 *   <tr><td>{@link #parabolic(double)}</td><td>(2t − K·t²)/(2 − K)</td><td>8/15 for K = 1</td><td>smoothly for K = 1</td></tr>
 *   <tr><td>{@link #haack(double)}</td><td>√((θ − ½·sin 2θ + C·sin³θ)/π), θ = acos(1 − 2t)</td><td>1/2 + 3C/16</td>
 *       <td>smoothly, if only just before it</td></tr>
 * </table>
 *
 * <p>Volumes and their centroids are closed but for the ogive; areas for the ellipsoid, the cone and the boat-tail. The rest are
 * integrals along the outline, with a relative error below {@value #QUADRATURE_ERROR}.
 *
 * <p>Any well-rounded nose of one to two diameters serves at low speed (Hoerner, Fluid-Dynamic Drag, 1965, ch. 3, from
 * memory); power and Haack series are for fast flight. A tip in a person's way is blunt whatever its profile says: clubs ask
 * for a nose radius of 5 mm and more.
 *
 * <p>Source: standard definitions of these curves, from memory; the volumes follow by integration.
 */
public abstract sealed class EndProfile implements Serializable
    permits ConeEnd, EllipsoidEnd, HaackEnd, OgiveEnd, ParabolicEnd, PowerEnd {
  private static final long serialVersionUID = 1L;

  /** Bound on the relative error of what is integrated numerically. */
  public static final double QUADRATURE_ERROR = 1e-11;

  private static final Source OUTLINE = Source.library("integral along the outline of the profile");
  private static final Source CHOICE = Source.taken("proportion of the chosen body shape");
  private static final Tolerance TOLERANCE = Tolerance.relative(1e-12);

  private final String name;
  private final double parameter;
  private final Interval fineness;

  /** The parameter tells profiles of one name apart; without one it is not a number. */
  EndProfile(String name, double parameter, double leastFineness, double greatestFineness) {
    this.name = name;
    this.parameter = parameter;
    this.fineness = Interval.between(leastFineness, greatestFineness);
  }

  /**
   * Half a sphere: its length is half its diameter.
   *
   * @return the profile
   */
  public static EndProfile hemisphere() {
    return new EllipsoidEnd("hemisphere", 0.5, 0.5);
  }

  /**
   * Half an ellipsoid.
   *
   * @return the profile
   */
  public static EndProfile halfEllipsoid() {
    return new EllipsoidEnd("half ellipsoid", 0.05, 50.0);
  }

  /**
   * A circular arc that meets the cylinder without an edge and comes to a point; at a fineness of 0.5 it is a hemisphere.
   *
   * @return the profile
   */
  public static EndProfile tangentOgive() {
    return new OgiveEnd();
  }

  /**
   * A cone.
   *
   * @return the profile
   */
  public static EndProfile cone() {
    return new ConeEnd("cone", 0.0);
  }

  /**
   * A cone that ends in a flat base: as a tail, a boat-tail; between a pod and a boom, a fairing.
   *
   * @param baseRatio radius of the flat base over that of the body β, more than 0 and less than 1
   * @return the profile
   */
  public static EndProfile boatTail(double baseRatio) {
    Door.within(baseRatio, 0.001, 0.999, "base ratio");
    return new ConeEnd("boat-tail to", baseRatio);
  }

  /**
   * A power of the distance from the tip: 1 is a cone, ½ a paraboloid.
   *
   * @param exponent m, 0.3 to 1
   * @return the profile
   */
  public static EndProfile power(double exponent) {
    return new PowerEnd(Door.within(exponent, 0.3, 1.0, "exponent of the power series"));
  }

  /**
   * A parabola with its axis across the body: K = 0 is a cone, K = 1 meets the cylinder without an edge.
   *
   * @param parameter K, 0 to 1
   * @return the profile
   */
  public static EndProfile parabolic(double parameter) {
    return new ParabolicEnd(Door.within(parameter, 0.0, 1.0, "parameter of the parabolic series"));
  }

  /**
   * The profile of least wave drag: C = 0 for given length and diameter, C = 1/3 for given length and volume.
   *
   * @param parameter C, 0 to 2/3; beyond, the body would be thicker than its base
   * @return the profile
   */
  public static EndProfile haack(double parameter) {
    return new HaackEnd(Door.within(parameter, 0.0, 2.0 / 3.0, "parameter of the Haack series"));
  }

  /**
   * The name of the profile.
   *
   * @return for example {@code "tangent ogive"}
   */
  public final String name() {
    return name;
  }

  /**
   * The fineness that the profile can have: its length over the diameter of its base.
   *
   * @return the range of n/(2R)
   */
  public final Interval finenessRange() {
    return fineness;
  }

  /**
   * Radius of the flat end.
   *
   * @return radius at t = 0 over that of the base; 0 for a profile that comes to a point or a round tip
   */
  public double tipRatio() {
    return 0.0;
  }

  /**
   * Whether it meets a cylinder without an edge.
   *
   * @return true if the slope at the base is zero
   */
  public abstract boolean isTangent();

  /**
   * Radius.
   *
   * @param t distance from the tip over the length, 0 to 1
   * @param fineness length over base diameter n/(2R)
   * @return r/R
   */
  public abstract double radius(double t, double fineness);

  /**
   * How much of the cylinder around it the profile fills.
   *
   * @param fineness length over base diameter
   * @return volume over π·R²·n
   */
  public double fullness(double fineness) {
    double k = 2.0 * fineness;
    return integral(s -> square(r(s, k)) * dt(s, k));
  }

  /**
   * Where the centroid of the volume lies.
   *
   * @param fineness length over base diameter
   * @return distance from the tip over the length
   */
  public double volumeCentroid(double fineness) {
    double k = 2.0 * fineness;
    return integral(s -> t(s, k) * square(r(s, k)) * dt(s, k)) / fullness(fineness);
  }

  /**
   * Area of the curved surface, without a base.
   *
   * @param fineness length over base diameter
   * @return area over π·R², at least 1 for a profile that closes
   */
  public double curvedArea(double fineness) {
    double k = 2.0 * fineness;
    return 2.0 * integral(s -> r(s, k) * Math.hypot(k * dt(s, k), dr(s, k)));
  }

  /**
   * Where the centroid of the curved surface lies.
   *
   * @param fineness length over base diameter
   * @return distance from the tip over the length
   */
  public double surfaceCentroid(double fineness) {
    double k = 2.0 * fineness;
    return 2.0 * integral(s -> t(s, k) * r(s, k) * Math.hypot(k * dt(s, k), dr(s, k))) / curvedArea(fineness);
  }

  /**
   * How much of the rectangle around its side view the profile fills.
   *
   * @param fineness length over base diameter
   * @return area of the side view over 2R·n
   */
  public double sideFullness(double fineness) {
    double k = 2.0 * fineness;
    return integral(s -> r(s, k) * dt(s, k));
  }

  /** How the fullness comes about. */
  Step fullnessStep(double fineness) {
    return Step.given("fullness of the " + this, "c", fullness(fineness), OUTLINE);
  }

  /** How the area ratio comes about. */
  Step areaStep(double fineness) {
    return Step.given("area ratio of the " + this, "s", curvedArea(fineness), OUTLINE);
  }

  /** A number that belongs to the profile, as an input of its formulas. */
  static Step given(String what, String symbol, double value) {
    return Step.given(what, symbol, value, CHOICE);
  }

  /** Distance from the tip over the length, against a parameter that runs from 0 at the tip to 1 at the base. */
  abstract double t(double s, double k);

  /** Radius over that of the base. */
  abstract double r(double s, double k);

  /** Derivative of {@link #t}. */
  abstract double dt(double s, double k);

  /** Derivative of {@link #r}. */
  abstract double dr(double s, double k);

  static double square(double value) {
    return value * value;
  }

  private static double integral(DoubleUnaryOperator integrand) {
    return Quadrature.integrate(integrand, 0.0, 1.0, TOLERANCE).value();
  }

  /** Refuses a fineness that the profile cannot have. */
  final double checked(double asked, String where) {
    // A fineness that was computed may miss an end by a rounding error.
    double near = fineness.clamp(asked);
    if (!(Math.abs(near - asked) <= 1e-12)) {
      String allowed =
          fineness.lower() == fineness.upper() ? "" + fineness.lower() : fineness.lower() + " to " + fineness.upper();
      throw new IllegalArgumentException(
          where + " fineness of a " + this + " must be " + allowed + ", was " + asked);
    }
    return near;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof EndProfile that
        && name.equals(that.name)
        && Double.compare(parameter, that.parameter) == 0;
  }

  @Override
  public int hashCode() {
    return name.hashCode() * 31 + Double.hashCode(parameter);
  }

  @Override
  public String toString() {
    return Double.isNaN(parameter) ? name : name + " " + NamedUnit.NUMBER.format(parameter, 4);
  }
}
