// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import java.io.Serializable;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A body through sections of any shape at some stations, with a nose ahead of the first and a tail behind the last.
 *
 * <p>Width, height and the height of the middle run through the stations as smooth curves that do not overshoot. Where two
 * neighbouring sections differ in kind, the outline passes from one to the other. Nose and tail shrink the section at their
 * base along an {@link EndProfile}; the nose tip is the origin, and the middle line is smooth from there to the tail's end.
 *
 * <p>As a {@link BodyShape} it is a family: its length is stretched to L, its sections are scaled so that the circle equal to
 * the greatest has the diameter d. {@link #length()} and {@link #diameter()} are those of the body as it was given. Volume and
 * centroid follow from the area curve, which the middle line does not change. The wetted area comes from meshes of the
 * surface; of a body that is stretched to a fifth or five times it is interpolated between two dozen of them, which are made
 * when the first is asked for.
 */
public final class LoftedBody implements BodyShape, Serializable {
  private static final long serialVersionUID = 1L;
  private static final double HAIR = 1e-9;

  private final LoftedSurface surface;
  private final List<BodyStation> stations;
  private final double end;
  private final double diameter;
  private final LoftedSurface.Solid solid;
  private final LoftedSurface.Skin skin;
  private final double error;
  private final StretchedArea stretched = new StretchedArea();

  private LoftedBody(
      EndProfile nose, List<BodyStation> stations, @Nullable EndProfile tail, double length, double tailHeight) {
    this.surface = new LoftedSurface(nose, stations, tail, length, tailHeight);
    this.stations = List.copyOf(stations);
    this.end = length;
    this.solid = surface.solid();
    this.diameter = LoftedSurface.equivalent(surface.greatestArea());
    this.skin = surface.skin(1.0, 1.0);
    this.error = Math.max(1e-9, Math.max(skin.error(), solid.error()));
  }

  /**
   * A body that closes at both ends.
   *
   * @param nose profile of the nose, from the origin to the first station
   * @param stations at least one section, from nose to tail
   * @param tail profile of the tail, from the last station to the end
   * @param length length of the body, behind the last station
   * @param tailHeight how high the tail's end lies above the reference line
   * @return the body
   */
  public static LoftedBody of(
      EndProfile nose, List<BodyStation> stations, EndProfile tail, Length length, Length tailHeight) {
    check(nose, stations);
    Door.finite(tailHeight, "height of the tail's end");
    Length last = stations.get(stations.size() - 1).x();
    if (!(length.si() > last.si()) || Double.isInfinite(length.si())) {
      throw new IllegalArgumentException("length must be more than the last station's " + last + ", was " + length);
    }
    return new LoftedBody(nose, stations, tail, length.si(), tailHeight.si());
  }

  /**
   * A body that ends with its last section as a flat base.
   *
   * @param nose profile of the nose, from the origin to the first station
   * @param stations at least two sections, from nose to base
   * @return the body
   */
  public static LoftedBody withBase(EndProfile nose, List<BodyStation> stations) {
    check(nose, stations);
    if (stations.size() < 2) {
      throw new IllegalArgumentException("a body with a base needs at least two stations, got one");
    }
    return new LoftedBody(nose, stations, null, stations.get(stations.size() - 1).x().si(), 0.0);
  }

  private static void check(EndProfile nose, List<BodyStation> stations) {
    AssembledBody.checkNose(nose);
    if (stations.isEmpty()) {
      throw new IllegalArgumentException("a lofted body needs at least one station, got none");
    }
    for (int i = 1; i < stations.size(); i++) {
      Length before = stations.get(i - 1).x();
      if (stations.get(i).x().si() <= before.si()) {
        throw new IllegalArgumentException(
            "stations must run aft: after " + before + " must come more, was " + stations.get(i).x());
      }
    }
  }

  /**
   * The stations as they were given.
   *
   * @return the sections from nose to tail
   */
  public List<BodyStation> stations() {
    return stations;
  }

  /**
   * The length as it was given.
   *
   * @return L
   */
  public Length length() {
    return Length.metres(end);
  }

  /**
   * The diameter of the circle equal to the greatest section, as it was given.
   *
   * @return √(4·A_max/π)
   */
  public Length diameter() {
    return Length.metres(diameter);
  }

  /**
   * The body as it was given, as a fuselage.
   *
   * @return the fuselage
   */
  public Fuselage fuselage() {
    return new Fuselage(this, length(), diameter());
  }

  private double across(double given) {
    return given / diameter;
  }

  /** The station of the body as given; a hair outside, as rounding leaves it, counts as the end. */
  private double place(double at, double length) {
    double part = at / length;
    if (!(part >= -HAIR && part <= 1.0 + HAIR)) {
      throw new IllegalArgumentException(
          "station must lie from nose to end, 0 m to " + length + " m, was " + at + " m");
    }
    return Math.max(0.0, Math.min(1.0, part)) * end;
  }

  @Override
  public String name() {
    return "lofted body";
  }

  @Override
  public double leastFinenessRatio() {
    return 0.05;
  }

  @Override
  public double volume(double length, double diameter) {
    return solid.volume() * (length / end) * across(diameter) * across(diameter);
  }

  @Override
  public double volumeCentroid(double length, double diameter) {
    return solid.moment() / solid.volume() * (length / end);
  }

  @Override
  public double sideArea(double length, double diameter) {
    return solid.side() * (length / end) * across(diameter);
  }

  @Override
  public double wettedArea(double length, double diameter) {
    double f = across(diameter);
    if (asGiven(length, f)) {
      return skin.area() * f * f;
    }
    // Bodies of one stretch are similar, so the area over the square of the diameter depends on the stretch alone.
    double stretch = length / end / f;
    return StretchedArea.covers(stretch)
        ? f * f * stretched.at(stretch, ratio -> surface.skin(ratio, 1.0).area())
        : surface.skin(length / end, f).area();
  }

  @Override
  public double surfaceCentroid(double length, double diameter) {
    LoftedSurface.Skin stretchedSkin = skin(length, diameter);
    return stretchedSkin.moment() / stretchedSkin.area();
  }

  @Override
  public double surfaceCentroidHeight(double length, double diameter) {
    LoftedSurface.Skin stretchedSkin = skin(length, diameter);
    return stretchedSkin.rise() / stretchedSkin.area();
  }

  private LoftedSurface.Skin skin(double length, double diameter) {
    double f = across(diameter);
    return asGiven(length, f) ? skin.scaled(f) : surface.skin(length / end, f);
  }

  /** Whether the proportion is the one that was given. */
  private boolean asGiven(double length, double across) {
    return Math.abs(length / end - across) <= 1e-12 * across;
  }

  @Override
  public Step wettedAreaStep(Step length, Step diameter) {
    return Step.solution(
        "wetted area",
        "S_wet",
        Area.SQUARE_METRE,
        "meshes of the surface, extrapolated; the residual is the estimated error",
        "S_wet = ∫∫ |∂P/∂u × ∂P/∂v| du dv over nose, stations and tail",
        v -> wettedArea(v[0], v[1]),
        v -> error * v[2],
        Source.library("smooth curves through the stations"),
        length,
        diameter);
  }

  @Override
  public double greatestSection(double length, double diameter) {
    return surface.greatest() * (length / end);
  }

  @Override
  public double radius(double at, double length, double diameter) {
    return 0.5 * across(diameter) * LoftedSurface.equivalent(surface.areaAt(place(at, length)));
  }

  @Override
  public double width(double at, double length, double diameter) {
    return across(diameter) * surface.width(place(at, length));
  }

  @Override
  public double height(double at, double length, double diameter) {
    return across(diameter) * surface.height(place(at, length));
  }

  @Override
  public double sectionRadial(double angle, double at, double length, double diameter) {
    return surface.radial(place(at, length), angle);
  }

  @Override
  public double centreHeight(double at, double length, double diameter) {
    return across(diameter) * surface.centre(place(at, length));
  }

  @Override
  public double relativeError() {
    return error;
  }

  @Override
  public String toString() {
    return "lofted body " + length() + " × " + diameter() + ", " + stations.size() + " stations";
  }
}
