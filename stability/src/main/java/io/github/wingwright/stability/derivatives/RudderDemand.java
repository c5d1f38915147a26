// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.derivatives;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Guideline;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Force;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.quantity.Pressure;

/**
 * How much rudder holds the nose in a crosswind, or against the engine that still runs.
 *
 * <p>Rudder is positive with its trailing edge to port; it pushes the tail to starboard and the nose to port, so its
 * derivative C_nδ is negative.
 */
public final class RudderDemand {
  private static final Source COURSE_BOOK =
      Source.published("L. Leifsson, AAE 451 course book, Purdue University", "directional stability and control");

  /** Yaw per rudder. */
  public static final Formula RUDDER_POWER = Formula.named("yaw due to rudder")
      .gives("C_nδ", NamedUnit.PER_RADIAN)
      .as("−0.9·a_v·V_v·τ")
      .where("a_v", "lift slope of the fin", NamedUnit.PER_RADIAN, 1, 6.3)
      .where("V_v", "fin volume coefficient", 0.01, 0.15)
      .where("τ", "flap effectiveness of the rudder", 0, 1)
      .from(COURSE_BOOK)
      .computedBy(RudderDemand::rudderPower);

  /** Rudder in a crosswind. */
  public static final Formula CROSSWIND = Formula.named("rudder that holds the nose in a crosswind")
      .gives("δ_r", Angle.RADIAN)
      .as("−C_nβ·β/C_nδ")
      .where("C_nβ", "directional stability", NamedUnit.PER_RADIAN, -0.1, 0.5)
      .where("β", "sideslip", Angle.RADIAN, 0, 0.35)
      .where("C_nδ", "yaw due to rudder", NamedUnit.PER_RADIAN, -0.5, -0.005)
      .from(Source.DEFINITION)
      .computedBy(RudderDemand::crosswind);

  /** Rudder with one engine out. */
  public static final Formula ENGINE_OUT = Formula.named("rudder against the engine that still runs")
      .gives("δ_r", Angle.RADIAN)
      .as("T·y/(q·S·b·C_nδ)")
      .where("T", "thrust of the running engine", Force.NEWTON, 0, 1e5)
      .where("y", "its distance to starboard of the plane of symmetry", Length.METRE, -20, 20)
      .where("q", "dynamic pressure", Pressure.PASCAL, 1, 2e4)
      .where("S", "wing area", Area.SQUARE_METRE, 0.01, 500)
      .where("b", "span", Length.METRE, 0.1, 80)
      .where("C_nδ", "yaw due to rudder", NamedUnit.PER_RADIAN, -0.5, -0.005)
      .from(Source.DEFINITION)
      .computedBy(RudderDemand::engineOut);

  /** Rudder that may be asked for in either case. */
  public static final Guideline GREATEST = new Guideline("rudder angle", Interval.between(-Math.PI / 9, Math.PI / 9),
      Angle.DEGREE, "crosswind and one engine out, light twin",
      "Enlarge the rudder or the fin.",
      Source.restated("L. M. Nicolai and G. E. Carichner, Fundamentals of Aircraft and Airship Design", "21.6"));

  /** Sideslip of the usual crosswind, a fifth of the take-off speed [rad]: 11.5°. */
  public static final double USUAL_CROSSWIND = Math.toRadians(11.5);

  private RudderDemand() {}

  /**
   * Yaw per rudder.
   *
   * <pre>{@code C_nδ = −0.9·a_v·V_v·τ}</pre>
   *
   * @param finSlope lift slope of the fin a_v [1/rad]
   * @param volume fin volume coefficient V_v = S_v·l_v/(S·b) [-]
   * @param effectiveness flap effectiveness τ [-]: about 0.6 with a rudder of 0.4 of the chord
   * @return C_nδ [1/rad], negative: −0.073 for 3.0, 0.045 and 0.6
   */
  public static double rudderPower(double finSlope, double volume, double effectiveness) {
    return -0.9 * finSlope * volume * effectiveness;
  }

  /**
   * Rudder that holds the nose in a crosswind.
   *
   * @param weathercock directional stability C_nβ [1/rad]
   * @param sideslip sideslip β [rad], wind from starboard positive
   * @param rudderPower C_nδ [1/rad], negative
   * @return δ_r [rad], trailing edge to port positive: a stable aircraft in wind from starboard needs left rudder
   */
  public static double crosswind(double weathercock, double sideslip, double rudderPower) {
    return -weathercock * sideslip / rudderPower;
  }

  /**
   * Rudder against the engine that still runs: its thrust, to starboard, turns the nose to port.
   *
   * @param thrust thrust T [N]
   * @param distance distance y of the running engine to starboard [m]
   * @param pressure dynamic pressure q [Pa]
   * @param area wing area S [m²]
   * @param span span b [m]
   * @param rudderPower C_nδ [1/rad], negative
   * @return δ_r [rad], negative (trailing edge to starboard) when the starboard engine runs
   */
  public static double engineOut(double thrust, double distance, double pressure, double area, double span,
      double rudderPower) {
    return thrust * distance / (pressure * area * span * rudderPower);
  }
}
