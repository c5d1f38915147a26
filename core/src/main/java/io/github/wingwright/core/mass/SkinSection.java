// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.mass;

import io.github.wingwright.core.geometry.AirfoilSection;
import java.util.Objects;

/**
 * A wing section cut into strips once, for the wall inside it at any thickness in a loop: nothing is allocated.
 *
 * <p>Of a strip at x the two sides take what {@link SkinVolume} says of the height, or all of it. The section may be made with
 * a thicker trailing edge: e·x is added to its height, e being what the edge lacks. On a panel with dihedral Γ the section
 * stands upright while the skin leans, so that the wall takes more of the height:
 *
 * <pre>{@code
 * A_w/c² = ∫ min(t + e·x, w/c·(√(1 + z_u′² + tan²Γ) + √(1 + z_l′² + tan²Γ))) dx        A/c² = ∫ (t + e·x) dx
 * }</pre>
 *
 * <p>Source: geometry.
 */
public final class SkinSection {
  private static final int STRIPS = 64;

  private final double[] x = new double[STRIPS];
  private final double[] width = new double[STRIPS];
  private final double[] height = new double[STRIPS];
  private final double[] lean = new double[STRIPS];
  private final double solid;
  private final double solidMoment;

  private SkinSection(AirfoilSection section, double tangent) {
    double area = 0.0;
    double moment = 0.0;
    for (int i = 0; i < STRIPS; i++) {
      // Drawn together at the nose, where the walls are steep.
      double from = 1.0 - Math.cos(0.5 * Math.PI * i / STRIPS);
      double to = 1.0 - Math.cos(0.5 * Math.PI * (i + 1) / STRIPS);
      x[i] = 0.5 * (from + to);
      width[i] = to - from;
      double ahead = section.thickness(from);
      double behind = section.thickness(to);
      // Simpson's rule, for the nose is round.
      height[i] = (ahead + 4.0 * section.thickness(x[i]) + behind) / 6.0;
      double half = 0.5 * (behind - ahead) / width[i];
      double camber = section.camberSlope(x[i]);
      double square = 1.0 + tangent * tangent;
      lean[i] =
          Math.sqrt(square + (camber + half) * (camber + half)) + Math.sqrt(square + (camber - half) * (camber - half));
      area += height[i] * width[i];
      moment += height[i] * width[i] * x[i];
    }
    // The strips give the shape of the moment, the section itself its area.
    solid = section.area();
    solidMoment = moment * solid / area;
  }

  /**
   * The strips of a section.
   *
   * @param section the section
   * @param tangent tangent of the dihedral tan Γ of the panel
   * @return the strips
   */
  public static SkinSection of(AirfoilSection section, double tangent) {
    Objects.requireNonNull(section, "section");
    return new SkinSection(section, tangent);
  }

  /**
   * Area of the wall.
   *
   * @param wall thickness of the wall over the chord w/c
   * @param edge what the trailing edge lacks over the chord e
   * @return A_w/c²
   */
  public double wallArea(double wall, double edge) {
    double sum = 0.0;
    for (int i = 0; i < STRIPS; i++) {
      sum += Math.min(height[i] + edge * x[i], wall * lean[i]) * width[i];
    }
    return sum;
  }

  /**
   * First moment of the wall about the nose.
   *
   * @param wall thickness of the wall over the chord w/c
   * @param edge what the trailing edge lacks over the chord e
   * @return ∫ x dA_w/c³
   */
  public double wallMoment(double wall, double edge) {
    double sum = 0.0;
    for (int i = 0; i < STRIPS; i++) {
      sum += Math.min(height[i] + edge * x[i], wall * lean[i]) * width[i] * x[i];
    }
    return sum;
  }

  /**
   * Area of the whole section.
   *
   * @param edge what the trailing edge lacks over the chord e
   * @return A/c²
   */
  public double solidArea(double edge) {
    return solid + 0.5 * edge;
  }

  /**
   * First moment of the whole section about the nose.
   *
   * @param edge what the trailing edge lacks over the chord e
   * @return ∫ x dA/c³
   */
  public double solidMoment(double edge) {
    return solidMoment + edge / 3.0;
  }

  @Override
  public String toString() {
    return "section of area " + solid + " in " + STRIPS + " strips";
  }
}
