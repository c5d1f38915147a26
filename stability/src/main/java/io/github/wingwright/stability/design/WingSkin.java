// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import io.github.wingwright.core.geometry.AirfoilSection;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.TaperedPlanform;
import io.github.wingwright.core.mass.SkinSection;

/**
 * What a printed wing is made of: the true walls of its sections along the span, the closed ends of both halves, infill in
 * what they leave. The trailing edge is made one line thick where the section would be thinner.
 *
 * <pre>{@code
 * V = 2·∫ (A_w + φ·(A − A_w)) dy + 2·Σ (1 − φ)·(A − A_w)·w over root and tip
 * }</pre>
 *
 * <p>On plain numbers, for the quick and the full evaluation alike: nothing is allocated. The integral over a straight-tapered
 * half takes five places of Gauss and Legendre, which is good to 1 part in 10⁴; holes for pins are left out (about 0.1 g).
 */
final class WingSkin {
  private static final double[] PLACE = {
    0.046910077030668, 0.2307653449471585, 0.5, 0.7692346550528415, 0.953089922969332
  };
  private static final double[] WEIGHT = {
    0.1184634425280945, 0.2393143352496832, 0.2844444444444444, 0.2393143352496832, 0.1184634425280945
  };

  private static final int MANY = 100;

  private final SkinSection section;
  private final double wall;
  private final double line;
  private final double infill;
  private final double sharpness;

  /**
   * A way to make wings of a section.
   *
   * @param section the section
   * @param dihedral tangent of the dihedral
   * @param wall thickness of all walls together [m]
   * @param line width of a line, the least trailing edge [m]
   * @param infill φ
   */
  WingSkin(AirfoilSection section, double dihedral, double wall, double line, double infill) {
    this.section = SkinSection.of(section, dihedral);
    this.wall = wall;
    this.line = line;
    this.infill = infill;
    sharpness = section.trailingEdgeThickness();
  }

  /** The way a brief makes the wing of a planform. */
  static WingSkin of(DesignBrief brief, AirfoilSection section, Planform planform) {
    double wall = brief.wingShell().wallThickness().si();
    double dihedral = planform.panels().get(0).dihedral().tangent();
    return new WingSkin(section, dihedral, wall, brief.lineWidth().si(), brief.wingShell().infill());
  }

  /** What the trailing edge lacks over the chord, everywhere as much as at the tip. */
  private double edge(double tip) {
    return Math.max(0.0, line / tip - sharpness);
  }

  private static double tip(double root, double taper) {
    return root * Math.max(1e-3, taper);
  }

  /** Volume of the walls of both halves, without ends and infill [m³]. */
  double walls(double span, double root, double taper) {
    double tip = tip(root, taper);
    double edge = edge(tip);
    double sum = 0.0;
    for (int i = 0; i < PLACE.length; i++) {
      double c = root + PLACE[i] * (tip - root);
      sum += WEIGHT[i] * c * c * section.wallArea(wall / c, edge);
    }
    return span * sum;
  }

  /** Volume of both halves [m³]. */
  double solid(double span, double root, double taper) {
    double tip = tip(root, taper);
    return span * (root * root + root * tip + tip * tip) / 3.0 * section.solidArea(edge(tip));
  }

  /** Volume of the closed ends of both halves, inside their walls [m³]. */
  double ends(double root, double taper) {
    double tip = tip(root, taper);
    double edge = edge(tip);
    return 2.0 * (end(root, edge) + end(tip, edge));
  }

  private double end(double c, double edge) {
    return c * c * Math.max(0.0, section.solidArea(edge) - section.wallArea(wall / c, edge)) * wall;
  }

  /** Volume of what is printed [m³], in the order of the steps of the mass. */
  double volume(double span, double root, double taper) {
    double shell = walls(span, root, taper) + ends(root, taper);
    double solid = solid(span, root, taper);
    double most = Math.min(shell, solid);
    return most + infill * (solid - most);
  }

  /**
   * Where it balances, aft of the quarter-chord point of the mean aerodynamic chord [m].
   *
   * @param span b [m]
   * @param root c_r [m]
   * @param taper λ
   * @param sweep sweep of the quarter-chord line Λ [rad]
   */
  double centre(double span, double root, double taper, double sweep) {
    double tip = tip(root, taper);
    double edge = edge(tip);
    double slope = Math.tan(sweep);
    double mean = TaperedPlanform.meanAerodynamicChordPosition(span, taper);
    double volume = 0.0;
    double moment = 0.0;
    for (int i = 0; i <= PLACE.length + 1; i++) {
      boolean end = i >= PLACE.length;
      double at = end ? i - PLACE.length : PLACE[i];
      double c = root + at * (tip - root);
      double w = wall / c;
      double wallArea = section.wallArea(w, edge);
      double wallMoment = section.wallMoment(w, edge);
      double restArea = section.solidArea(edge) - wallArea;
      double restMoment = section.solidMoment(edge) - wallMoment;
      double part = end ? (1.0 - infill) * wall : 0.5 * span * WEIGHT[i];
      double area = c * c * (end ? restArea : wallArea + infill * restArea);
      double aft = 0.5 * at * span * slope - mean * slope - 0.25 * c;
      volume += part * area;
      moment += part * (area * aft + c * c * c * (end ? restMoment : wallMoment + infill * restMoment));
    }
    return moment / volume;
  }

  /** Area of what is printed of a section of a chord [m²], on a wing of a tip chord. */
  double printedArea(double c, double tip) {
    double edge = edge(tip);
    double walls = section.wallArea(wall / c, edge);
    return c * c * (walls + infill * (section.solidArea(edge) - walls));
  }

  /** The walls once more by a hundred places along the span, for the residual of the working [m³]. */
  double wallsFinely(double span, double root, double taper) {
    double tip = tip(root, taper);
    double edge = edge(tip);
    double sum = 0.0;
    for (int i = 0; i < MANY; i++) {
      double c = root + (i + 0.5) / MANY * (tip - root);
      sum += c * c * section.wallArea(wall / c, edge) / MANY;
    }
    return span * sum;
  }
}
