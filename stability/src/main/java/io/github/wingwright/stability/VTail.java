// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Workings;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.List;

/**
 * A V-tail that does what a horizontal and a vertical tail do together.
 *
 * <pre>{@code
 * S_V = S_h + S_v        tan²Γ = S_v/S_h
 * S_h = S_V·cos²Γ        S_v = S_V·sin²Γ
 * }</pre>
 *
 * <p>Γ is the dihedral of each half and S_V the area of both, measured in their own planes. A V-tail saves no area: its
 * panels meet a change of angle of attack only with cos Γ, and their lift counts only with cos Γ again. In sideslip the two
 * halves lift against each other, and each loses some of what it would do alone, K ≈ 0.7 at usual aspect ratios; tests
 * found that a V-tail of equal stability will probably need no less area.
 *
 * <pre>{@code
 * pitch:  a_h = a_N·cos²Γ            elevators, both down:      dC_L/dδ = τ·a_N·cos Γ
 * yaw:    −C_Yβ = K·a_N·sin²Γ        rudders, against another:  dC_Y/dδ = K·τ·a_N·sin Γ
 * }</pre>
 *
 * <p>on S_V, with a_N the lift-curve slope in the panel's own plane.
 */
public final class VTail {
  private static final Source PURSER =
      Source.fromMemory(
          "Purser and Campbell, Experimental Verification of a Simplified Vee-Tail Theory, NACA Report 823, 1945", "");

  /** What a half keeps in sideslip of what it would do alone. */
  public static final double ANTISYMMETRIC_FACTOR = 0.7;

  /** Dihedral of a V-tail. */
  public static final Formula DIHEDRAL =
      Formula.named("dihedral of a V-tail")
          .gives("Γ", Angle.RADIAN)
          .as("atan(√(S_v / S_h))")
          .where("S_v", "vertical tail area that it replaces", Area.SQUARE_METRE, 1e-5, 100)
          .where("S_h", "horizontal tail area that it replaces", Area.SQUARE_METRE, 1e-5, 200)
          .from(PURSER)
          .computedBy(VTail::dihedralFor);

  /** Area of a V-tail. */
  public static final Formula AREA =
      Formula.named("area of a V-tail, both halves in their own planes")
          .gives("S_V", Area.SQUARE_METRE)
          .as("S_h + S_v")
          .where("S_h", "horizontal tail area that it replaces", Area.SQUARE_METRE, 1e-5, 200)
          .where("S_v", "vertical tail area that it replaces", Area.SQUARE_METRE, 1e-5, 100)
          .from(PURSER)
          .computedBy((double level, double upright) -> level + upright);

  /** Lift slope in pitch. */
  public static final Formula PITCH_SLOPE =
      Formula.named("lift-curve slope of a V-tail in pitch")
          .gives("a_h", NamedUnit.PER_RADIAN)
          .as("a_N·cos(Γ)²")
          .where("a_N", "lift-curve slope in the panel's own plane", NamedUnit.PER_RADIAN, 0.5, 7)
          .where("Γ", "dihedral of each half", Angle.RADIAN, 0, 1.5)
          .from(PURSER)
          .computedBy(VTail::pitchSlope);

  /** Side-force slope in sideslip. */
  public static final Formula SIDE_FORCE_SLOPE =
      Formula.named("side-force slope of a V-tail")
          .gives("C_Yβ", NamedUnit.PER_RADIAN)
          .as("−K·a_N·sin(Γ)²")
          .where("K", "what a half keeps in sideslip", 0.4, 1)
          .where("a_N", "lift-curve slope in the panel's own plane", NamedUnit.PER_RADIAN, 0.5, 7)
          .where("Γ", "dihedral of each half", Angle.RADIAN, 0, 1.5)
          .from(PURSER)
          .computedBy(VTail::sideForceSlope);

  private final Step area;
  private final Step dihedral;

  private VTail(Step area, Step dihedral) {
    this.area = area;
    this.dihedral = dihedral;
  }

  /**
   * The V-tail that replaces two tails.
   *
   * @param horizontal area of the horizontal tail, positive
   * @param vertical area of the vertical tail, positive
   * @return the V-tail
   */
  public static VTail replacing(Area horizontal, Area vertical) {
    Door.positive(horizontal, "horizontal tail area");
    Door.positive(vertical, "vertical tail area");
    Step level = Step.given("horizontal tail area", "S_h", horizontal, Source.BRIEF);
    Step upright = Step.given("vertical tail area", "S_v", vertical, Source.BRIEF);
    return new VTail(Step.of(AREA, level, upright), Step.of(DIHEDRAL, upright, level));
  }

  /**
   * Dihedral.
   *
   * @param vertical S_v [m²]
   * @param horizontal S_h [m²], positive
   * @return Γ [rad]; equal areas give 45°
   */
  public static double dihedralFor(double vertical, double horizontal) {
    return Math.atan(Math.sqrt(vertical / horizontal));
  }

  /**
   * Lift slope in pitch, on the area of both halves.
   *
   * @param slope a_N in the panel's own plane [1/rad]
   * @param dihedral Γ [rad]
   * @return a_h [1/rad]
   */
  public static double pitchSlope(double slope, double dihedral) {
    double c = Math.cos(dihedral);
    return slope * c * c;
  }

  /**
   * Side-force slope in sideslip, on the area of both halves.
   *
   * @param factor K, see {@link #ANTISYMMETRIC_FACTOR}
   * @param slope a_N in the panel's own plane [1/rad]
   * @param dihedral Γ [rad]
   * @return C_Yβ [1/rad], negative: the wind from starboard pushes to port
   */
  public static double sideForceSlope(double factor, double slope, double dihedral) {
    double s = Math.sin(dihedral);
    return -factor * slope * s * s;
  }

  /**
   * Area of both halves in their own planes.
   *
   * @return S_V
   */
  public Area area() {
    return Area.squareMetres(area.value());
  }

  /**
   * Dihedral of each half.
   *
   * @return Γ
   */
  public Angle dihedral() {
    return Angle.radians(dihedral.value());
  }

  /**
   * Area as seen from above: what a planform with dihedral takes, since planforms are projected.
   *
   * @return S_V·cos Γ
   */
  public Area projectedArea() {
    return Area.squareMetres(area.value() * Math.cos(dihedral.value()));
  }

  /**
   * The horizontal tail that it stands for.
   *
   * @return S_V·cos²Γ
   */
  public Area equivalentHorizontal() {
    double c = Math.cos(dihedral.value());
    return Area.squareMetres(area.value() * c * c);
  }

  /**
   * The vertical tail that it stands for, by projection; in sideslip only about K of it works.
   *
   * @return S_V·sin²Γ
   */
  public Area equivalentVertical() {
    double s = Math.sin(dihedral.value());
    return Area.squareMetres(area.value() * s * s);
  }

  /**
   * The workings.
   *
   * @return area and dihedral
   */
  public Workings workings() {
    return Workings.of(List.of(area, dihedral));
  }

  @Override
  public String toString() {
    return "V-tail of " + area() + " at " + dihedral().format(Angle.DEGREE, 4);
  }
}
