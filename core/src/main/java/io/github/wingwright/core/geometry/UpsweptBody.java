// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Door;
import java.io.Serializable;
import java.util.function.ToDoubleFunction;

/**
 * A body whose afterbody is bent up: each section moves up as a whole, upright, along a camber line that starts with a
 * parabola and goes on straight at the angle of upsweep υ. What camber the body had before is kept, and bent with it.
 *
 * <pre>{@code
 * ξ = x − (L − a·d)     z = tan υ·ξ²/(2ℓ) for 0 < ξ < ℓ     z = tan υ·(ξ − ℓ/2) beyond,   ℓ = b·a·d
 * }</pre>
 *
 * <p>Moving sections up leaves volume, side view and the place of the volume along x as they are (Cavalieri's principle). The
 * skin grows a little: the difference between the bent and the straight afterbody is taken from meshes of one kind, so that
 * what the mesh misses cancels.
 *
 * @param straight the body before it is bent
 * @param afterbody length of the part that is bent over the diameter a
 * @param upsweep angle υ, positive up
 * @param bend part of that length over which the camber line curves b
 */
record UpsweptBody(BodyShape straight, double afterbody, Angle upsweep, double bend) implements BodyShape, Serializable {

  UpsweptBody {
    Door.within(afterbody, 0.1, 50.0, "length of the upswept afterbody over the diameter");
    Door.within(upsweep, Angle.degrees(-45), Angle.degrees(45), "upsweep");
    Door.within(bend, 0.01, 1.0, "part of the afterbody that bends");
  }

  @Override
  public String name() {
    return straight.name() + ", upswept " + upsweep;
  }

  @Override
  public double leastFinenessRatio() {
    return Math.max(straight.leastFinenessRatio(), afterbody);
  }

  @Override
  public double volume(double length, double diameter) {
    return straight.volume(length, diameter);
  }

  @Override
  public double sideArea(double length, double diameter) {
    return straight.sideArea(length, diameter);
  }

  @Override
  public double volumeCentroid(double length, double diameter) {
    return straight.volumeCentroid(length, diameter);
  }

  @Override
  public double wettedArea(double length, double diameter) {
    return straight.wettedArea(length, diameter)
        + mesh(length, diameter, true).area
        - mesh(length, diameter, false).area;
  }

  @Override
  public double surfaceCentroid(double length, double diameter) {
    return moved(straight.surfaceCentroid(length, diameter), skin -> skin.moment, length, diameter);
  }

  @Override
  public double surfaceCentroidHeight(double length, double diameter) {
    return moved(straight.surfaceCentroidHeight(length, diameter), skin -> skin.rise, length, diameter);
  }

  /** A centroid of the skin from that before bending, by what bending does to area and moment. */
  private double moved(double before, ToDoubleFunction<PatchArea> moment, double length, double diameter) {
    PatchArea bent = mesh(length, diameter, true);
    PatchArea flat = mesh(length, diameter, false);
    double area = straight.wettedArea(length, diameter);
    double sum = area * before + moment.applyAsDouble(bent) - moment.applyAsDouble(flat);
    return sum / (area + bent.area - flat.area);
  }

  @Override
  public Step volumeStep(Step length, Step diameter) {
    return straight.volumeStep(length, diameter);
  }

  @Override
  public Step wettedAreaStep(Step length, Step diameter) {
    return Step.solution(
        "wetted area",
        "S_wet",
        Area.SQUARE_METRE,
        "meshes of the bent and the straight afterbody, extrapolated",
        "S_wet = ∫∫ |∂P/∂x × ∂P/∂φ| dφ dx",
        v -> wettedArea(v[0], v[1]),
        v -> v[2] - straight.wettedArea(v[0], v[1]) - strips(v[0], v[1]),
        Source.library("sections moved up as a whole, upright"),
        length,
        diameter);
  }

  /** What bending adds to the skin once more, by strips between sections, their slopes from differences. */
  private double strips(double length, double diameter) {
    int along = 500;
    int around = 72;
    double whole = Math.min(length, afterbody * diameter);
    double sum = 0.0;
    for (int i = 0; i < along; i++) {
      double fore = length - whole * (1.0 - Math.sin(0.5 * Math.PI * i / along));
      double aft = length - whole * (1.0 - Math.sin(0.5 * Math.PI * (i + 1) / along));
      double rise = bendHeight(aft, length, diameter) - bendHeight(fore, length, diameter);
      for (int j = 0; j < around; j++) {
        double from = Math.PI * (2.0 * j / around - 1.0);
        double to = from + 2.0 * Math.PI / around;
        double[] a = point(fore, from, length, diameter);
        double[] b = point(fore, to, length, diameter);
        double[] c = point(aft, from, length, diameter);
        double[] d = point(aft, to, length, diameter);
        double y = 0.5 * (b[0] - a[0] + d[0] - c[0]);
        double z = 0.5 * (b[1] - a[1] + d[1] - c[1]);
        double out = 0.5 * (c[0] - a[0] + d[0] - b[0]);
        double up = 0.5 * (c[1] - a[1] + d[1] - b[1]);
        double skin = (aft - fore) * Math.hypot(y, z);
        sum += Math.hypot(skin, y * (up + rise) - z * out) - Math.hypot(skin, y * up - z * out);
      }
    }
    return sum;
  }

  /** A point of the outline of the body before it is bent, y and z. */
  private double[] point(double x, double angle, double length, double diameter) {
    double rho = straight.sectionRadial(angle, x, length, diameter);
    return new double[] {
      0.5 * straight.width(x, length, diameter) * rho * Math.cos(angle),
      straight.centreHeight(x, length, diameter)
          + 0.5 * straight.height(x, length, diameter) * rho * Math.sin(angle)
    };
  }

  private PatchArea mesh(double length, double diameter, boolean bent) {
    double start = Math.max(0.0, length - afterbody * diameter);
    BodyShape shape = bent ? this : straight;
    return PatchArea.aftOf(straight, start, length, diameter, x -> shape.centreHeight(x, length, diameter)).twice();
  }

  @Override
  public double greatestSection(double length, double diameter) {
    return straight.greatestSection(length, diameter);
  }

  @Override
  public double radius(double x, double length, double diameter) {
    return straight.radius(x, length, diameter);
  }

  @Override
  public double sectionArea(double x, double length, double diameter) {
    return straight.sectionArea(x, length, diameter);
  }

  @Override
  public double width(double x, double length, double diameter) {
    return straight.width(x, length, diameter);
  }

  @Override
  public double height(double x, double length, double diameter) {
    return straight.height(x, length, diameter);
  }

  @Override
  public double sectionRadial(double angle, double x, double length, double diameter) {
    return straight.sectionRadial(angle, x, length, diameter);
  }

  @Override
  public double centreHeight(double x, double length, double diameter) {
    return straight.centreHeight(x, length, diameter) + bendHeight(x, length, diameter);
  }

  private double bendHeight(double x, double length, double diameter) {
    double along = x - (length - afterbody * diameter);
    if (along <= 0.0) {
      return 0.0;
    }
    double curved = bend * afterbody * diameter;
    double slope = upsweep.tangent();
    return along < curved ? slope * along * along / (2.0 * curved) : slope * (along - 0.5 * curved);
  }

  @Override
  public double relativeError() {
    return Math.max(straight.relativeError(), 1e-6);
  }

  @Override
  public String toString() {
    return name();
  }
}
