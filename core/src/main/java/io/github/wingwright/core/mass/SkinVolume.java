// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.mass;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.geometry.AirfoilSection;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.LiftingSurface;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Volume;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/**
 * The true volume of a wall inside an outline: what lies between the surface and the surface moved inwards by the wall, all
 * of it where the two sides meet. Area times wall is larger: by the corners at an edge, by w/(2r) on a round body.
 *
 * <p>Of a section the wall of each side takes w·√(1 + z′²) of the height, or all of it:
 *
 * <pre>{@code A_w = ∫ min(t(x), w·√(1 + z_u′²) + w·√(1 + z_l′²)) dx}</pre>
 *
 * <p>Of a body of revolution the inner surface is each point moved by w along its normal,
 *
 * <pre>{@code x_i = x + w·r′/√(1 + r′²)     r_i = r − w/√(1 + r′²)     V_w = V − ∫ π·r_i² dx_i}</pre>
 */
public final class SkinVolume {
  /** Volume of the wall of a body whose shape is smooth, by its area and the integral of its mean curvature. */
  public static final Formula BODY_WALL =
      Formula.named("volume of the wall of a body")
          .gives("V_w", Volume.CUBIC_METRE)
          .as("S·w − M·w² + 4/3·π·w³")
          .where("S", "surface of the body", Area.SQUARE_METRE, 1e-5, 100)
          .where("M", "integral of the mean curvature of the body", Length.METRE, 0.01, 500)
          .where("w", "wall", Length.METRE, 1e-4, 0.05)
          .from(Source.library("Steiner's formula for the parallel body of a convex body, inwards"))
          .computedBy(SkinVolume::ofSmoothBody);

  private static final int STRIPS = 2000;
  private static final int SPAN_STEPS = 16;

  private SkinVolume() {}

  /**
   * Volume of the wall of a body by Steiner's formula, for loops.
   *
   * <pre>{@code V_w = S·w − M·w² + 4/3·π·w³        M = ∫ ½·(κ₁ + κ₂) dS}</pre>
   *
   * <p>Exact while the wall is nowhere thicker than the least radius of curvature, so for a sphere, a capsule or a torus. At
   * the point of a cone of half angle α it lacks π/3·(cos²α/sin α − 2 + 2·sin α)·w³: 0.5·w³ at 30°, 3.4·w³ at 11.3°.
   * {@code BodyShape.curvatureIntegral} gives M.
   *
   * @param surface surface of the body S [m²]
   * @param curvature integral of its mean curvature M [m]
   * @param wall wall w [m], less than the radius of the body
   * @return V_w [m³]; a sphere of 20 mm (S 1256.6 mm², M 125.66 mm) with a wall of 1 mm gives 1135.2 mm³
   */
  public static double ofSmoothBody(double surface, double curvature, double wall) {
    return surface * wall - curvature * wall * wall + 4.0 / 3.0 * Math.PI * wall * wall * wall;
  }

  /**
   * Area of the wall of a section.
   *
   * @param section the section
   * @param chord chord [m], positive
   * @param wall wall w [m], positive
   * @return A_w [m²], at most the area of the section
   */
  public static double ofSection(AirfoilSection section, double chord, double wall) {
    Objects.requireNonNull(section, "section");
    double w = wall / chord;
    double sum = 0.0;
    // Strips drawn together at the nose, where the walls are steep.
    for (int i = 0; i < STRIPS; i++) {
      double from = 0.5 * (1.0 - Math.cos(Math.PI * i / STRIPS));
      double to = 0.5 * (1.0 - Math.cos(Math.PI * (i + 1) / STRIPS));
      double middle = 0.5 * (from + to);
      double thickness = section.thickness(middle);
      double half = 0.5 * (section.thickness(to) - section.thickness(from)) / (to - from);
      double camber = section.camberSlope(middle);
      double upper = Math.hypot(1.0, camber + half);
      double lower = Math.hypot(1.0, camber - half);
      sum += Math.min(thickness, w * (upper + lower)) * (to - from);
    }
    return sum * chord * chord;
  }

  /**
   * Volume of the wall of a wing or a tail, without closed ends.
   *
   * @param surface the surface
   * @param wall thickness of the wall, positive
   * @return the volume
   */
  public static Volume ofSurface(LiftingSurface surface, Length wall) {
    Objects.requireNonNull(surface, "surface");
    double w = Door.positive(wall, "wall").si();
    Planform planform = surface.planform();
    List<Length> stations = planform.stations();
    double volume = 0.0;
    for (int k = 1; k < stations.size(); k++) {
      double from = stations.get(k - 1).si();
      double to = stations.get(k).si();
      // The area of the wall over the chord is smooth: Simpson's rule over each panel.
      double step = (to - from) / SPAN_STEPS;
      for (int i = 0; i <= SPAN_STEPS; i++) {
        double weight = i == 0 || i == SPAN_STEPS ? 1.0 : i % 2 == 1 ? 4.0 : 2.0;
        double chord = planform.chordAt(Length.metres(from + i * step)).si();
        volume += weight * step / 3.0 * (chord > 0.0 ? ofSection(surface.section(), chord, w) : 0.0);
      }
    }
    return Volume.cubicMetres(planform.isMirrored() ? 2.0 * volume : volume);
  }

  /**
   * Volume of the wall of a body of revolution, with the true corner inside a rim.
   *
   * @param body the body, round
   * @param wall thickness of the wall, positive
   * @return the volume, at most that of the body
   */
  public static Volume ofBody(Fuselage body, Length wall) {
    Objects.requireNonNull(body, "body");
    double w = Door.positive(wall, "wall").si();
    double length = body.length().si();
    double[] inside = new double[STRIPS + 1];
    Arrays.fill(inside, Double.POSITIVE_INFINITY);
    double lastX = Double.NaN;
    double lastR = 0.0;
    for (int i = 0; i < STRIPS; i++) {
      // Points between the ends, so that the slope is finite.
      double x = length * 0.5 * (1.0 - Math.cos(Math.PI * (i + 0.5) / STRIPS));
      double r = radius(body, x);
      double h = 1e-6 * length;
      double slope = (radius(body, Math.min(length, x + h)) - radius(body, Math.max(0.0, x - h)))
          / (Math.min(length, x + h) - Math.max(0.0, x - h));
      double steep = Math.hypot(1.0, slope);
      double xi = x + w * slope / steep;
      double ri = Math.max(0.0, r - w / steep);
      // Inside a rim the points run over those of the other side: what is farther in counts.
      for (int k = (int) Math.ceil(lastX / length * STRIPS); lastX < xi && k <= STRIPS && k * length / STRIPS <= xi; k++) {
        double here = lastR + (ri - lastR) * (k * length / STRIPS - lastX) / (xi - lastX);
        inside[Math.max(0, k)] = Math.min(inside[Math.max(0, k)], here);
      }
      lastX = xi;
      lastR = ri;
    }
    double inner = 0.0;
    for (double r : inside) {
      inner += r < Double.POSITIVE_INFINITY ? Math.PI * r * r * length / STRIPS : 0.0;
    }
    return Volume.cubicMetres(Math.max(0.0, body.volume().si() - inner));
  }

  private static double radius(Fuselage body, double x) {
    return body.radiusAt(Length.metres(x)).si();
  }
}
