// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Door;
import java.io.Serializable;

/**
 * A straight body whose afterbody is bent up: each section moves up as a whole, upright, along a camber line that starts with
 * a parabola and goes on straight at the angle of upsweep υ.
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
    PatchArea bent = mesh(length, diameter, true);
    PatchArea flat = mesh(length, diameter, false);
    double area = straight.wettedArea(length, diameter);
    double moment = area * straight.surfaceCentroid(length, diameter);
    return (moment + bent.moment - flat.moment) / (area + bent.area - flat.area);
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
        "S_wet = ∫∫ r·√(1 + (r′ + z′·sin θ)²) dθ dx",
        v -> wettedArea(v[0], v[1]),
        v -> v[2] - straight.wettedArea(v[0], v[1]) - strips(v[0], v[1]),
        Source.library("sections moved up as a whole, upright"),
        length,
        diameter);
  }

  /** What bending adds to the skin once more, by strips and slopes from differences. */
  private double strips(double length, double diameter) {
    int along = 500;
    int around = 36;
    double whole = Math.min(length, afterbody * diameter);
    double sum = 0.0;
    for (int i = 0; i < along; i++) {
      double x1 = length - whole * (1.0 - Math.sin(0.5 * Math.PI * i / along));
      double x2 = length - whole * (1.0 - Math.sin(0.5 * Math.PI * (i + 1) / along));
      double r1 = radius(x1, length, diameter);
      double r2 = radius(x2, length, diameter);
      double rise = centreHeight(x2, length, diameter) - centreHeight(x1, length, diameter);
      for (int j = 0; j < around; j++) {
        double up = Math.sin(2.0 * Math.PI * (j + 0.5) / around);
        double bent = Math.hypot(x2 - x1, r2 - r1 + rise * up);
        sum += 0.5 * (r1 + r2) * (bent - Math.hypot(x2 - x1, r2 - r1));
      }
    }
    return sum * 2.0 * Math.PI / around;
  }

  private PatchArea mesh(double length, double diameter, boolean bent) {
    double start = length - afterbody * diameter;
    PatchArea half =
        PatchArea.of(
            (u, v, points, place) -> {
              // Points crowd towards the aft end, where a blunt tail turns.
              double x = start + (length - start) * Math.sin(0.5 * Math.PI * u);
              double r = radius(Math.min(x, length), length, diameter);
              double angle = Math.PI * (v - 0.5);
              points[place] = x;
              points[place + 1] = r * Math.cos(angle);
              points[place + 2] = r * Math.sin(angle) + (bent ? centreHeight(x, length, diameter) : 0.0);
            });
    return half.twice();
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
  public double centreHeight(double x, double length, double diameter) {
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
