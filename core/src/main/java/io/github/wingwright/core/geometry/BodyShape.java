// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Volume;

/**
 * A family of bodies of revolution, each fixed by its length and its greatest diameter.
 *
 * <p>Kernels run on SI {@code double}s: length L and diameter d [m]. They are exact where a closed form exists.
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
   * Area of the surface.
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
   * Radius at a station.
   *
   * @param x distance from the nose [m], 0 to L
   * @param length length L [m]
   * @param diameter greatest diameter d [m]
   * @return r [m]
   */
  double radius(double x, double length, double diameter);

  /**
   * Enclosed volume.
   *
   * @param length length
   * @param diameter greatest diameter
   * @return V
   * @throws IllegalArgumentException if the family has no such body
   */
  default Volume volume(Length length, Length diameter) {
    Door.body(this, length, diameter);
    return Volume.cubicMetres(volume(length.si(), diameter.si()));
  }

  /**
   * Area of the surface.
   *
   * @param length length
   * @param diameter greatest diameter
   * @return S_wet
   * @throws IllegalArgumentException if the family has no such body
   */
  default Area wettedArea(Length length, Length diameter) {
    Door.body(this, length, diameter);
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
   * How the area of the surface comes about.
   *
   * @param length a step that gives L
   * @param diameter a step that gives d
   * @return the formula of the family; if it has none, its own method, checked by an integral over {@link #radius}
   */
  default Step wettedAreaStep(Step length, Step diameter) {
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
