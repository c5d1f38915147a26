// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Moment;
import io.github.wingwright.core.quantity.Pressure;

/**
 * The bending moments that thin shells, tubes and dowels carry, from σ = M/Z with the section modulus Z.
 *
 * <p>A thin shell of the height h and the width b of an ellipse has, to first order in its wall t,
 *
 * <pre>{@code Z = ¼·π·t·(½·h)·(3·½·b + ½·h)}</pre>
 *
 * <p>which is π·t·r² for a ring and a stand-in for an aerofoil, whose skins lie closer to its middle towards the edges: a
 * section of the same height and chord has some two thirds of it.
 */
public final class JointStrength {
  /**
   * Strength across the printed layers over that along the line. Published ranges of printed specimens give 0.69 for PLA, 0.52
   * to 0.67 for PA (public data page on materials of additive manufacturing) and 0.53 for a filled PLA (a maker's data sheet,
   * ISO 527: 12.2 MPa over 23.2 MPa).
   */
  public static final double ACROSS_LAYERS = 0.5;

  private static final Source BENDING = Source.fromMemory("Timoshenko, Strength of Materials, part I", "bending stress");

  /** Moment that a thin elliptic shell carries. */
  public static final Formula SHELL =
      Formula.named("bending moment that a thin elliptic shell carries")
          .gives("M_s", Moment.NEWTON_METRE)
          .as("σ·0.25·π·t·(0.5·h)·(1.5·b + 0.5·h)")
          .where("σ", "strength", Pressure.PASCAL, 1e4, 1e10)
          .where("t", "wall", Length.METRE, 1e-5, 1e-2)
          .where("h", "height across the bending axis", Length.METRE, 1e-4, 1)
          .where("b", "width along the bending axis", Length.METRE, 1e-4, 2)
          .from(BENDING)
          .computedBy(JointStrength::shellMoment);

  /** Moment that a tube or a rod carries. */
  public static final Formula TUBE =
      Formula.named("bending moment that a tube carries")
          .gives("M_t", Moment.NEWTON_METRE)
          .as("σ·π/32·(D^4 − d^4)/D")
          .where("σ", "strength", Pressure.PASCAL, 1e4, 1e10)
          .where("D", "outer diameter", Length.METRE, 1e-4, 0.2)
          .where("d", "inner diameter, 0 for a rod", Length.METRE, 0, 1e-4)
          .from(BENDING)
          .computedBy(JointStrength::tubeMoment);

  private JointStrength() {}

  /**
   * Bending moment that a thin elliptic shell carries.
   *
   * <pre>{@code M = σ·¼·π·t·(½h)·(3·½b + ½h)}</pre>
   *
   * @param strength stress that it stands σ [Pa]
   * @param wall wall t [m], thin against the height
   * @param height height h across the bending axis [m]
   * @param width width b along the bending axis [m]
   * @return M [N·m]; a ring of 20 mm with a wall of 1 mm at 10 MPa carries 3.1416 N·m
   */
  public static double shellMoment(double strength, double wall, double height, double width) {
    return strength * 0.25 * Math.PI * wall * (0.5 * height) * (1.5 * width + 0.5 * height);
  }

  /**
   * Bending moment that a tube or a rod carries.
   *
   * <pre>{@code M = σ·π/32·(D⁴ − d⁴)/D}</pre>
   *
   * @param strength stress that it stands σ [Pa]
   * @param outer outer diameter D [m]
   * @param inner inner diameter d [m], 0 for a rod
   * @return M [N·m]; 4 mm over 3 mm at 900 MPa carries 3.8656 N·m
   */
  public static double tubeMoment(double strength, double outer, double inner) {
    return strength * Math.PI / 32.0 * (outer * outer * outer * outer - inner * inner * inner * inner) / outer;
  }
}
