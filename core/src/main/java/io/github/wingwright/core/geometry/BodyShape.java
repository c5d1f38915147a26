// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Volume;
import java.util.Objects;

/**
 * A family of bodies, each fixed by its length and its greatest diameter; where sections are not round, the diameter is
 * that of the circle of equal area.
 *
 * <p>Kernels run on SI {@code double}s: length L and diameter d [m]. They are exact where a closed form exists;
 * {@link #relativeError()} says how good they are where not. Further families may be written: eight methods are needed.
 */
public interface BodyShape {

  /**
   * A cylinder with a hemisphere at each end.
   *
   * @return the shape
   */
  static BodyShape capsule() {
    return Capsule.INSTANCE;
  }

  /**
   * An ellipse turned about its long axis.
   *
   * @return the shape
   */
  static BodyShape prolateSpheroid() {
    return ProlateSpheroid.INSTANCE;
  }

  /**
   * A half ellipsoid as nose, a cylinder, and a cone as tail.
   *
   * @param noseFineness length of the nose over the diameter, at least 0.5
   * @param tailFineness length of the cone over the diameter, positive
   * @return the shape
   */
  static BodyShape noseCylinderCone(double noseFineness, double tailFineness) {
    return new NoseCylinderCone(noseFineness, tailFineness);
  }

  /**
   * A nose, a cylinder and a tail.
   *
   * <pre>{@code
   * BodyShape.of(EndProfile.tangentOgive(), 2.0, EndProfile.boatTail(0.4), 1.5)
   * }</pre>
   *
   * @param nose profile of the nose
   * @param noseFineness its length over the diameter
   * @param tail profile of the tail, turned around
   * @param tailFineness its length over the diameter
   * @return the shape
   */
  static BodyShape of(EndProfile nose, double noseFineness, EndProfile tail, double tailFineness) {
    return AssembledBody.of(nose, noseFineness, tail, tailFineness);
  }

  /**
   * A pod that carries everything, and a thin boom that carries the tail. The pod keeps its proportions, the boom takes up
   * the length; its aft end is flat.
   *
   * @param nose profile of the nose
   * @param noseFineness length of the nose over the diameter of the pod
   * @param podFineness length of the pod over its diameter, nose and fairing included
   * @param fairingFineness length of the conical fairing from pod to boom over the diameter of the pod
   * @param boomRatio diameter of the boom over that of the pod, more than 0 and less than 1
   * @return the shape
   */
  static BodyShape podAndBoom(
      EndProfile nose, double noseFineness, double podFineness, double fairingFineness, double boomRatio) {
    return AssembledBody.podAndBoom(nose, noseFineness, podFineness, fairingFineness, boomRatio);
  }

  /**
   * The closed body of least wave drag for its length and volume.
   *
   * @return the shape
   */
  static BodyShape searsHaack() {
    return SearsHaack.INSTANCE;
  }

  /**
   * The name of the family.
   *
   * @return for example {@code "capsule"}
   */
  String name();

  /**
   * The least fineness ratio that a body of this family can have.
   *
   * @return L/d
   */
  double leastFinenessRatio();

  /**
   * Enclosed volume.
   *
   * @param length length L [m]
   * @param diameter greatest diameter d [m]
   * @return V [m³]
   */
  double volume(double length, double diameter);

  /**
   * Area of the surface that the air washes, without a flat base.
   *
   * @param length length L [m]
   * @param diameter greatest diameter d [m]
   * @return S_wet [m²]
   */
  double wettedArea(double length, double diameter);

  /**
   * Area of the side view.
   *
   * @param length length L [m]
   * @param diameter greatest diameter d [m]
   * @return S_side [m²]
   */
  double sideArea(double length, double diameter);

  /**
   * Where the centroid of the volume lies.
   *
   * @param length length L [m]
   * @param diameter greatest diameter d [m]
   * @return x from the nose [m]
   */
  double volumeCentroid(double length, double diameter);

  /**
   * Where the centroid of the surface lies: the centre of gravity of a shell of even thickness.
   *
   * @param length length L [m]
   * @param diameter greatest diameter d [m]
   * @return x from the nose [m]
   */
  double surfaceCentroid(double length, double diameter);

  /**
   * How high the centroid of the volume lies.
   *
   * @param length length L [m]
   * @param diameter greatest diameter d [m]
   * @return z above the reference line [m], zero for a straight body
   */
  default double volumeCentroidHeight(double length, double diameter) {
    return Revolution.volumeCentroidHeight(this, length, diameter);
  }

  /**
   * How high the centroid of the surface lies.
   *
   * @param length length L [m]
   * @param diameter greatest diameter d [m]
   * @return z above the reference line [m], zero for a straight body
   */
  default double surfaceCentroidHeight(double length, double diameter) {
    return Revolution.surfaceCentroidHeight(this, length, diameter);
  }

  /**
   * Radius at a station; of a section that is not round, that of the circle of equal area.
   *
   * @param x distance from the nose [m], 0 to L
   * @param length length L [m]
   * @param diameter greatest diameter d [m]
   * @return r [m]
   */
  double radius(double x, double length, double diameter);

  /**
   * Area of the section at a station: the longitudinal area curve.
   *
   * @param x distance from the nose [m], 0 to L
   * @param length length L [m]
   * @param diameter greatest diameter d [m]
   * @return A [m²]
   */
  default double sectionArea(double x, double length, double diameter) {
    double r = radius(x, length, diameter);
    return Math.PI * r * r;
  }

  /**
   * Width at a station.
   *
   * @param x distance from the nose [m], 0 to L
   * @param length length L [m]
   * @param diameter greatest diameter d [m]
   * @return w [m]
   */
  default double width(double x, double length, double diameter) {
    return 2.0 * radius(x, length, diameter);
  }

  /**
   * Height at a station.
   *
   * @param x distance from the nose [m], 0 to L
   * @param length length L [m]
   * @param diameter greatest diameter d [m]
   * @return h [m]
   */
  default double height(double x, double length, double diameter) {
    return 2.0 * radius(x, length, diameter);
  }

  /**
   * The outline of the section at a station, as {@link CrossSection#radial} describes it: y = ½·w·ρ·cos φ and
   * z = z_c + ½·h·ρ·sin φ.
   *
   * @param angle φ [rad], from starboard upwards
   * @param x distance from the nose [m], 0 to L
   * @param length length L [m]
   * @param diameter greatest diameter d [m]
   * @return ρ, 1 all around for a round or elliptic section
   */
  default double sectionRadial(double angle, double x, double length, double diameter) {
    return 1.0;
  }

  /**
   * How high the middle of the section lies above the reference line: the camber line of the body.
   *
   * @param x distance from the nose [m], 0 to L
   * @param length length L [m]
   * @param diameter greatest diameter d [m]
   * @return z [m], positive up
   */
  default double centreHeight(double x, double length, double diameter) {
    return 0.0;
  }

  /**
   * Where the section is greatest: the first such place where it is greatest along a straight piece.
   *
   * @param length length L [m]
   * @param diameter greatest diameter d [m]
   * @return x from the nose [m], exact for the families of this library; else to about 1 part in 10⁴ of the length
   */
  default double greatestSection(double length, double diameter) {
    return Revolution.greatestSection(this, length, diameter);
  }

  /**
   * How far the body is swept up: the angle of the straight line between the middles of two sections, where the tail begins
   * to close (its height is 2 % less than the greatest) and the aft end.
   *
   * @param length length L [m]
   * @param diameter greatest diameter d [m]
   * @return υ [rad], positive up, zero for a straight body
   */
  default double upsweep(double length, double diameter) {
    return ClosingTail.upsweep(this, length, diameter);
  }

  /**
   * Area of the flat base at the aft end, which the wetted area does not count.
   *
   * @param length length L [m]
   * @param diameter greatest diameter d [m]
   * @return S_base [m²], zero for a body that closes
   */
  default double baseArea(double length, double diameter) {
    return sectionArea(length, length, diameter);
  }

  /**
   * The same body with its afterbody bent up: each section moves up as a whole, upright. A body whose sections are not round,
   * or whose camber line is bent already, is bent from how it is.
   *
   * @param afterbody length of the part that is bent over the diameter, 0.1 to 50
   * @param upsweep angle of its camber line at the aft end, −45° to 45°, positive up
   * @param bend part of that length over which the camber line curves, 0.01 to 1; the rest is straight
   * @return the upswept shape
   * @throws IllegalArgumentException if a number is out of its range
   */
  default BodyShape upswept(double afterbody, Angle upsweep, double bend) {
    return new UpsweptBody(this, afterbody, upsweep, bend);
  }

  /**
   * Integral of the mean curvature over the surface, flat ends counted with their edge: how fast the surface shrinks when a
   * wall is taken off inside. Of a body of revolution with the slope θ of its outline
   *
   * <pre>{@code M = ∫ ½·(κ₁ + κ₂) dS = π·(L + ∫ θ dr)}</pre>
   *
   * @param length length L [m]
   * @param diameter greatest diameter d [m]
   * @return M [m]; of a sphere 2π·d
   */
  default double curvatureIntegral(double length, double diameter) {
    return Revolution.curvatureIntegral(this, length, diameter, 64);
  }

  /**
   * How far volume, areas and centroids may be off, as a part of the value.
   *
   * @return zero where all are closed forms, which leaves rounding; else the bound on the quadrature
   */
  default double relativeError() {
    return 0.0;
  }

  /**
   * Enclosed volume.
   *
   * @param length length
   * @param diameter greatest diameter
   * @return V
   * @throws IllegalArgumentException if the family has no such body
   */
  default Volume volume(Length length, Length diameter) {
    Objects.requireNonNull(length, "length");
    Objects.requireNonNull(diameter, "diameter");
    BodyFit.check(this, length, diameter);
    return Volume.cubicMetres(volume(length.si(), diameter.si()));
  }

  /**
   * Area of the surface that the air washes, without a flat base.
   *
   * @param length length
   * @param diameter greatest diameter
   * @return S_wet
   * @throws IllegalArgumentException if the family has no such body
   */
  default Area wettedArea(Length length, Length diameter) {
    Objects.requireNonNull(length, "length");
    Objects.requireNonNull(diameter, "diameter");
    BodyFit.check(this, length, diameter);
    return Area.squareMetres(wettedArea(length.si(), diameter.si()));
  }

  /**
   * How the volume comes about.
   *
   * @param length a step that gives L
   * @param diameter a step that gives d
   * @return the formula of the family; if it has none, its own method, checked by an integral over {@link #radius}
   */
  default Step volumeStep(Step length, Step diameter) {
    Objects.requireNonNull(length, "length");
    Objects.requireNonNull(diameter, "diameter");
    return Step.solution(
        "volume",
        "V",
        Volume.CUBIC_METRE,
        "the method of the " + name(),
        "V = ∫ π·r² dx over the length",
        v -> volume(v[0], v[1]),
        v -> v[2] - Revolution.volume(this, v[0], v[1]),
        Source.DEFINITION,
        length,
        diameter);
  }

  /**
   * How the integral of the mean curvature comes about.
   *
   * @param length a step that gives L
   * @param diameter a step that gives d
   * @return the method of the family, checked by an integral over {@link #radius} with more points
   */
  default Step curvatureIntegralStep(Step length, Step diameter) {
    Objects.requireNonNull(length, "length");
    Objects.requireNonNull(diameter, "diameter");
    return Step.solution(
        "integral of the mean curvature of the body",
        "M",
        Length.METRE,
        "the method of the " + name(),
        "M = π·(L + ∫ θ dr) along the outline",
        v -> curvatureIntegral(v[0], v[1]),
        v -> v[2] - Revolution.curvatureIntegral(this, v[0], v[1], 2000),
        Source.DEFINITION,
        length,
        diameter);
  }

  /**
   * How the area of the surface comes about.
   *
   * @param length a step that gives L
   * @param diameter a step that gives d
   * @return the formula of the family; if it has none, its own method, checked by an integral over {@link #radius}
   */
  default Step wettedAreaStep(Step length, Step diameter) {
    Objects.requireNonNull(length, "length");
    Objects.requireNonNull(diameter, "diameter");
    return Step.solution(
        "wetted area",
        "S_wet",
        Area.SQUARE_METRE,
        "the method of the " + name(),
        "S_wet = ∫ 2π·r ds along the outline",
        v -> wettedArea(v[0], v[1]),
        v -> v[2] - Revolution.wettedArea(this, v[0], v[1]),
        Source.DEFINITION,
        length,
        diameter);
  }
}
