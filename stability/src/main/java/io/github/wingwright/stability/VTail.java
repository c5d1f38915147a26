// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.core.aerodynamics.LiftSlope;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Guideline;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Workings;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.stability.derivatives.FinLateral;
import java.util.List;
import java.util.Objects;

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
 * halves lift against each other, and each loses some of what it would do alone, K ≈ 0.7 at usual aspect ratios (this
 * library's lattice has 0.6 for aspect ratio 4.4, and a_h up to a tenth above the law at 45°). Tests found that a V-tail of
 * equal stability will probably need no less area.
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

  /** Elevator effectiveness of a V-tail, per angle of incidence. */
  public static final Formula ELEVATOR_EFFECTIVENESS =
      Formula.named("elevator effectiveness of a V-tail, both halves together")
          .gives("τ_V")
          .as("τ / cos(Γ)")
          .where("τ", "effectiveness of the hinged flap", 0, 1)
          .where("Γ", "dihedral of each half", Angle.RADIAN, 0, 1.3)
          .from(PURSER)
          .computedBy((double flap, double dihedral) -> flap / Math.cos(dihedral));

  /** Area that a V-tail must have for yaw to be as stable as with a fin. */
  public static final Formula STIFF_FIN =
      Formula.named("area of a V-tail that stands for a fin")
          .gives("S_e", Area.SQUARE_METRE)
          .as("S_v·a_v/(K·a_N)")
          .where("S_v", "vertical tail area", Area.SQUARE_METRE, 1e-5, 100)
          .where("a_v", "lift-curve slope of the fin", NamedUnit.PER_RADIAN, 0.5, 7)
          .where("K", "what a half keeps in sideslip", 0.4, 1)
          .where("a_N", "lift-curve slope in the panel's own plane", NamedUnit.PER_RADIAN, 0.5, 7)
          .from(PURSER)
          .computedBy((double area, double fin, double factor, double panel) -> area * fin / (factor * panel));

  private static final Guideline USUAL_DIHEDRAL =
      new Guideline(
          "dihedral of a V-tail",
          Interval.between(Math.toRadians(30), Math.toRadians(50)),
          Angle.DEGREE,
          "V-tails",
          "Flatter, it lacks fin: enlarge it and raise the dihedral; steeper, it lacks tailplane.",
          Source.COMMON_PRACTICE);

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
   * The V-tail as stable as two tails are: its panels have the aspect ratio of the horizontal tail, so that only the fin's
   * share changes, by the slopes and by the loss of the halves in sideslip.
   *
   * <pre>{@code S_V = S_h + S_e        tan²Γ = S_e/S_h        S_e = S_v·a_v/(K·a_N)}</pre>
   *
   * @param horizontal the horizontal tail
   * @param fin the fin, on a body
   * @return the V-tail, with sections that lift as in potential flow
   */
  public static VTail asStableAs(Tail horizontal, Tail fin) {
    Objects.requireNonNull(horizontal, "horizontal");
    Objects.requireNonNull(fin, "fin");
    if (horizontal.role() != Tail.Role.HORIZONTAL || fin.role() != Tail.Role.VERTICAL) {
      throw new IllegalArgumentException(
          "a V-tail stands for a horizontal and a vertical tail, was given a " + horizontal.role().words() + " and a "
              + fin.role().words());
    }
    Step level = Step.given("horizontal tail area", "S_h", horizontal.planform().area(), Sources.AIRFRAME);
    Step upright =
        Step.of(
            STIFF_FIN,
            Step.given("vertical tail area", "S_v", fin.planform().area(), Sources.AIRFRAME),
            slope("lift-curve slope of the fin", "a_v", FinLateral.BODY_REFLECTION * fin.planform().aspectRatio()),
            Step.given("what a half keeps in sideslip", "K", ANTISYMMETRIC_FACTOR, PURSER),
            slope("lift-curve slope in the panel's own plane", "a_N", horizontal.planform().aspectRatio()));
    return new VTail(Step.of(AREA, level, upright), Step.of(DIHEDRAL, upright, level));
  }

  private static Step slope(String name, String symbol, double aspectRatio) {
    return Step.of(
        name,
        symbol,
        LiftSlope.HELMBOLD,
        new Step.Given(
            "lift-curve slope of the section", "a_0", NamedUnit.PER_RADIAN, 2.0 * Math.PI, Source.library("2π")),
        Step.given("aspect ratio", "A", aspectRatio, Sources.AIRFRAME));
  }

  /**
   * The V-tail as a tail of an airframe, in the place of a horizontal tail: its panels have the same aspect and taper ratio,
   * its quarter chord lies where that of the other does, and its halves rise from the same height.
   *
   * @param horizontal the horizontal tail that it replaces
   * @return the tail
   */
  public Tail inPlaceOf(Tail horizontal) {
    Objects.requireNonNull(horizontal, "horizontal");
    if (horizontal.role() != Tail.Role.HORIZONTAL) {
      throw new IllegalArgumentException(
          "a V-tail takes the place of a horizontal tail, was given a " + horizontal.role().words());
    }
    Planform old = horizontal.planform();
    Planform planform =
        Planform.tapered(projectedArea(), old.aspectRatio() * Math.cos(dihedral.value()), old.taperRatio())
            .withSweep(0.25, old.sweepAt(0.25))
            .withDihedral(dihedral());
    Length x = horizontal.quarterChordX().minus(planform.quarterMeanAerodynamicChordX());
    return new Tail(
        Tail.Role.V, planform, horizontal.section(), horizontal.placement().withX(x), horizontal.incidence());
  }

  /**
   * What to know about it.
   *
   * @return a note where its dihedral is unusual
   */
  public List<Finding> findings() {
    return USUAL_DIHEDRAL.check(dihedral.value(), Severity.NOTE).map(List::of).orElse(List.of());
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
