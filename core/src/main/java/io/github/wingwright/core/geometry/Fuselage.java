// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.quantity.Volume;
import java.io.Serializable;
import java.util.Objects;
import java.util.function.DoubleUnaryOperator;

/**
 * The fuselage, its nose tip at the origin.
 *
 * @param shape its family
 * @param length its length
 * @param diameter its greatest diameter
 */
public record Fuselage(BodyShape shape, Length length, Length diameter) implements Serializable {

  /** Refuses a body that its family cannot form. */
  public Fuselage {
    Objects.requireNonNull(shape, "shape");
    BodyFit.check(shape, length, diameter);
  }

  /**
   * Fineness ratio.
   *
   * @return length over diameter
   */
  public double finenessRatio() {
    return length.dividedBy(diameter);
  }

  /**
   * Enclosed volume.
   *
   * @return V
   */
  public Volume volume() {
    return shape.volume(length, diameter);
  }

  /**
   * Area of the surface that the air washes, without a flat base.
   *
   * @return S_wet
   */
  public Area wettedArea() {
    return shape.wettedArea(length, diameter);
  }

  /**
   * Area of the greatest cross-section.
   *
   * @return π·d²/4
   */
  public Area frontalArea() {
    return diameter.times(diameter).times(0.25 * Math.PI);
  }

  /**
   * Radius at a station; of a section that is not round, that of the circle of equal area.
   *
   * @param x distance from the nose tip, 0 to the length
   * @return the radius
   */
  public Length radiusAt(Length x) {
    return Length.metres(shape.radius(station(x), length.si(), diameter.si()));
  }

  /**
   * Width at a station.
   *
   * @param x distance from the nose tip, 0 to the length
   * @return the width
   */
  public Length widthAt(Length x) {
    return Length.metres(shape.width(station(x), length.si(), diameter.si()));
  }

  /**
   * Height at a station.
   *
   * @param x distance from the nose tip, 0 to the length
   * @return the height
   */
  public Length heightAt(Length x) {
    return Length.metres(shape.height(station(x), length.si(), diameter.si()));
  }

  /**
   * How high the middle of the section lies at a station.
   *
   * @param x distance from the nose tip, 0 to the length
   * @return height above the reference line, zero for a straight body
   */
  public Length centreHeightAt(Length x) {
    return Length.metres(shape.centreHeight(station(x), length.si(), diameter.si()));
  }

  /**
   * Area of the section at a station: the longitudinal area curve.
   *
   * @param x distance from the nose tip, 0 to the length
   * @return the area
   */
  public Area sectionAreaAt(Length x) {
    return Area.squareMetres(shape.sectionArea(station(x), length.si(), diameter.si()));
  }

  /**
   * Where the section is greatest.
   *
   * @return x aft of the nose tip, the first such place where it is greatest along a straight piece
   */
  public Length greatestSectionX() {
    return Length.metres(shape.greatestSection(length.si(), diameter.si()));
  }

  /**
   * How far it is swept up: the angle between the reference line and the line from the middle of the section at which the
   * tail begins to close (2 % lower than the greatest) to that at the aft end.
   *
   * @return the angle, positive up, zero for a straight body
   */
  public Angle upsweep() {
    return Angle.radians(shape.upsweep(length.si(), diameter.si()));
  }

  /**
   * Area of the flat base at the aft end.
   *
   * @return S_base, zero for a body that closes
   */
  public Area baseArea() {
    return Area.squareMetres(shape.baseArea(length.si(), diameter.si()));
  }

  /**
   * Where the centroid of the volume lies: contents of even density balance there.
   *
   * @return x aft of the nose tip
   */
  public Length volumeCentroid() {
    return Length.metres(shape.volumeCentroid(length.si(), diameter.si()));
  }

  /**
   * Where the centroid of the surface lies: a thin shell balances there.
   *
   * @return x aft of the nose tip
   */
  public Length surfaceCentroid() {
    return Length.metres(shape.surfaceCentroid(length.si(), diameter.si()));
  }

  /**
   * How high the centroid of the volume lies.
   *
   * @return z above the reference line, zero for a straight body
   */
  public Length volumeCentroidHeight() {
    return Length.metres(shape.volumeCentroidHeight(length.si(), diameter.si()));
  }

  /**
   * How high the centroid of the surface lies: that of a thin shell.
   *
   * @return z above the reference line, zero for a straight body
   */
  public Length surfaceCentroidHeight() {
    return Length.metres(shape.surfaceCentroidHeight(length.si(), diameter.si()));
  }

  /**
   * Area of the side view.
   *
   * @return S_side
   */
  public Area sideArea() {
    return Area.squareMetres(shape.sideArea(length.si(), diameter.si()));
  }

  /**
   * How fast the top line closes in at a station: the angle against separation on the afterbody.
   *
   * @param x distance from the nose tip, 0 to the length
   * @return angle between the top line and the reference line, positive where the body narrows aft
   */
  public Angle topClosureAngleAt(Length x) {
    return closure(at -> -top(at), station(x));
  }

  /**
   * How fast the underside closes in at a station; upsweep adds to it.
   *
   * @param x distance from the nose tip, 0 to the length
   * @return angle between the underside and the reference line, positive where the body narrows aft
   */
  public Angle bottomClosureAngleAt(Length x) {
    return closure(at -> top(at) - shape.height(at, length.si(), diameter.si()), station(x));
  }

  /**
   * How fast the sides close in at a station.
   *
   * @param x distance from the nose tip, 0 to the length
   * @return angle between one side and the plane of symmetry, positive where the body narrows aft
   */
  public Angle sideClosureAngleAt(Length x) {
    return closure(at -> -0.5 * shape.width(at, length.si(), diameter.si()), station(x));
  }

  private double top(double x) {
    return shape.centreHeight(x, length.si(), diameter.si()) + 0.5 * shape.height(x, length.si(), diameter.si());
  }

  /** Angle of a line by differences over a hundred-thousandth of the length, to one side at an end. */
  private Angle closure(DoubleUnaryOperator line, double x) {
    double from = Math.max(0.0, x - 1e-5 * length.si());
    double to = Math.min(length.si(), x + 1e-5 * length.si());
    return Angle.radians(Math.atan((line.applyAsDouble(to) - line.applyAsDouble(from)) / (to - from)));
  }

  private double station(Length x) {
    // A station that went through arithmetic may miss the aft end by a rounding error.
    Door.within(x, Length.ZERO, length.times(1.0 + 1e-12), "station");
    return Math.min(x.si(), length.si());
  }

  /**
   * The body in a unit of choice.
   *
   * @param unit unit of length and diameter
   * @return for example {@code "fuselage 21.98 ft × 4.331 ft, capsule"}
   */
  public String format(NamedUnit<Length> unit) {
    return "fuselage " + length.format(unit, 4) + " × " + diameter.format(unit, 4) + ", " + shape.name();
  }

  @Override
  public String toString() {
    return "fuselage " + length + " × " + diameter + ", " + shape.name();
  }
}
