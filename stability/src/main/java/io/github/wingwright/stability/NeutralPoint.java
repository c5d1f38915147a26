// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.core.basis.Band;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Workings;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.List;
import java.util.Locale;

/**
 * The neutral point: where the centre of gravity may lie at most before the aircraft no longer returns to its angle of
 * attack by itself.
 *
 * <p>Lift and moment about the centre of gravity at h, all places as fractions of c̄ behind its leading edge:
 *
 * <pre>{@code
 * C_m,α = a_w·(h − h_w) + C_mα,f − η_h·(S_h/S)·a_h·(1 − ε_α)·(h_h − h)
 * }</pre>
 *
 * <p>C_m,α is negative for a stable aircraft. It vanishes at
 *
 * <pre>{@code
 *        a_w·h_w − C_mα,f + η_h·(S_h/S)·a_h·(1 − ε_α)·h_h
 * h_n = ────────────────────────────────────────────────
 *               a_w + η_h·(S_h/S)·a_h·(1 − ε_α)
 * }</pre>
 *
 * <p>This form keeps every arm from one origin. The form with a tail volume coefficient, h_n = h_w + η_h·V_h·(a_h/a)·(1 −
 * ε_α), says the same only if its V_h is taken about the neutral point itself, or if a is the slope of the whole aircraft
 * and V_h is measured from the wing's quarter chord.
 *
 * <p>The result names what each part moves: wing, horizontal tail, fuselage; their sum is the neutral point.
 */
public final class NeutralPoint {
  /** Neutral point in fractions of the mean aerodynamic chord. */
  public static final Formula POSITION =
      Formula.named("neutral point behind the leading edge of the mean aerodynamic chord")
          .gives("h_n")
          .as("(a_w·h_w − C_f + η_h·s_h·a_h·(1 − ε_α)·h_h) / (a_w + η_h·s_h·a_h·(1 − ε_α))")
          .where("a_w", "lift-curve slope of the wing", NamedUnit.PER_RADIAN, 0.5, 7)
          .where("h_w", "aerodynamic centre of the wing", 0.1, 0.6)
          .where("C_f", "moment slope of the fuselage C_mα,f", NamedUnit.PER_RADIAN, -1, 3)
          .where("η_h", "tail efficiency", 0.3, 1.2)
          .where("s_h", "tail area over wing area", 0, 1.5)
          .where("a_h", "lift-curve slope of the tail", NamedUnit.PER_RADIAN, 0, 7)
          .where("ε_α", "downwash gradient at the tail", -1, 0.95)
          .where("h_h", "aerodynamic centre of the tail", -15, 20)
          .from(Sources.NEUTRAL_POINT)
          .computedBy(NeutralPoint::position);

  /** What the tail moves. */
  public static final Formula TAIL_SHIFT =
      Formula.named("shift of the neutral point by the tail")
          .gives("Δh_h")
          .as("t·(h_h − h_w) / (a_w + t)")
          .where("t", "lift slope of the tail on the wing area", NamedUnit.PER_RADIAN, 0, 7)
          .where("h_h", "aerodynamic centre of the tail", -15, 20)
          .where("h_w", "aerodynamic centre of the wing", 0.1, 0.6)
          .where("a_w", "lift-curve slope of the wing", NamedUnit.PER_RADIAN, 0.5, 7)
          .from(Sources.NEUTRAL_POINT)
          .computedBy(NeutralPoint::tailShift);

  /** What the fuselage moves. */
  public static final Formula FUSELAGE_SHIFT =
      Formula.named("shift of the neutral point by the fuselage")
          .gives("Δh_f")
          .as("−C_f / (a_w + t)")
          .where("C_f", "moment slope of the fuselage C_mα,f", NamedUnit.PER_RADIAN, -1, 3)
          .where("a_w", "lift-curve slope of the wing", NamedUnit.PER_RADIAN, 0.5, 7)
          .where("t", "lift slope of the tail on the wing area", NamedUnit.PER_RADIAN, 0, 7)
          .from(Sources.NEUTRAL_POINT)
          .computedBy(NeutralPoint::fuselageShift);

  /** Lift slope that the tail adds, on the wing area. */
  public static final Formula TAIL_SLOPE =
      Formula.named("lift slope of the tail on the wing area")
          .gives("t", NamedUnit.PER_RADIAN)
          .as("η_h·s_h·a_h·(1 − ε_α)")
          .where("η_h", "tail efficiency", 0.3, 1.2)
          .where("s_h", "tail area over wing area", 0, 1.5)
          .where("a_h", "lift-curve slope of the tail", NamedUnit.PER_RADIAN, 0, 7)
          .where("ε_α", "downwash gradient at the tail", -1, 0.95)
          .from(Sources.NEUTRAL_POINT)
          .computedBy(NeutralPoint::tailSlope);

  /** Moment slope about the centre of gravity. */
  public static final Formula MOMENT_SLOPE =
      Formula.named("moment slope about the centre of gravity")
          .gives("C_mα", NamedUnit.PER_RADIAN)
          .as("a_w·(h − h_w) + C_f − t·(h_h − h)")
          .where("a_w", "lift-curve slope of the wing", NamedUnit.PER_RADIAN, 0.5, 7)
          .where("h", "centre of gravity, fraction of c̄", -1, 2)
          .where("h_w", "aerodynamic centre of the wing", 0.1, 0.6)
          .where("C_f", "moment slope of the fuselage C_mα,f", NamedUnit.PER_RADIAN, -1, 3)
          .where("t", "lift slope of the tail on the wing area", NamedUnit.PER_RADIAN, 0, 7)
          .where("h_h", "aerodynamic centre of the tail", -15, 20)
          .from(Sources.MOMENT_EQUATION)
          .computedBy(NeutralPoint::momentSlope);

  private final Step position;
  private final Length leadingEdge;
  private final Length chord;
  private final List<Step> contributions;
  private final Band band;
  private final List<Finding> findings;

  NeutralPoint(
      Step position,
      Length leadingEdge,
      Length chord,
      List<Step> contributions,
      Band band,
      List<Finding> findings) {
    this.position = position;
    this.leadingEdge = leadingEdge;
    this.chord = chord;
    this.contributions = List.copyOf(contributions);
    this.band = band;
    this.findings = Finding.inOrderOfWeight(findings);
  }

  /**
   * Neutral point, stick fixed, in fractions of c̄.
   *
   * <p>Example: the light twin of the checks, a_w = 5, h_w = 0.25, C_f = 1.17833, η_h = 0.9, S_h/S = 31/134, a_h =
   * 4.47469, ε_α = 0.381203, h_h = 3.73837, has h_n = 0.39934.
   *
   * @param wingSlope a_w [1/rad], positive
   * @param wingCentre h_w, aerodynamic centre of the wing
   * @param fuselageSlope C_mα,f [1/rad], positive destabilises
   * @param tailEfficiency η_h
   * @param areaRatio S_h/S, 0 without a tail
   * @param tailSlope a_h [1/rad] on the tail's own area
   * @param downwash ε_α
   * @param tailCentre h_h, aerodynamic centre of the tail
   * @return h_n
   */
  public static double position(
      double wingSlope,
      double wingCentre,
      double fuselageSlope,
      double tailEfficiency,
      double areaRatio,
      double tailSlope,
      double downwash,
      double tailCentre) {
    double t = tailEfficiency * areaRatio * tailSlope * (1.0 - downwash);
    return (wingSlope * wingCentre - fuselageSlope + t * tailCentre) / (wingSlope + t);
  }

  /**
   * Moment slope about the centre of gravity, negative for a stable aircraft.
   *
   * <p>Example: a wind-tunnel model with a_w = 0.08 and t = 0.013 per degree, h = 0.35, h_w = 0.24, h_h = 2.05 and no
   * fuselage has −0.0133 per degree.
   *
   * @param wingSlope a_w [1/rad]
   * @param centreOfGravity h
   * @param wingCentre h_w
   * @param fuselageSlope C_mα,f [1/rad]
   * @param tailSlope t [1/rad] on the wing area
   * @param tailCentre h_h
   * @return C_mα [1/rad]
   */
  public static double momentSlope(
      double wingSlope,
      double centreOfGravity,
      double wingCentre,
      double fuselageSlope,
      double tailSlope,
      double tailCentre) {
    return wingSlope * (centreOfGravity - wingCentre) + fuselageSlope - tailSlope * (tailCentre - centreOfGravity);
  }

  /**
   * Lift slope that the tail adds, on the wing area.
   *
   * @param tailEfficiency η_h
   * @param areaRatio S_h/S
   * @param tailSlope a_h [1/rad]
   * @param downwash ε_α
   * @return t [1/rad]
   */
  public static double tailSlope(double tailEfficiency, double areaRatio, double tailSlope, double downwash) {
    return tailEfficiency * areaRatio * tailSlope * (1.0 - downwash);
  }

  /**
   * What the tail moves, aft positive.
   *
   * @param tailSlope t [1/rad] on the wing area
   * @param tailCentre h_h
   * @param wingCentre h_w
   * @param wingSlope a_w [1/rad]
   * @return Δh_h
   */
  public static double tailShift(double tailSlope, double tailCentre, double wingCentre, double wingSlope) {
    return tailSlope * (tailCentre - wingCentre) / (wingSlope + tailSlope);
  }

  /**
   * What the fuselage moves: forward, so negative, for a fuselage that destabilises.
   *
   * @param fuselageSlope C_mα,f [1/rad]
   * @param wingSlope a_w [1/rad]
   * @param tailSlope t [1/rad] on the wing area
   * @return Δh_f
   */
  public static double fuselageShift(double fuselageSlope, double wingSlope, double tailSlope) {
    return -fuselageSlope / (wingSlope + tailSlope);
  }

  /**
   * How much of the tail's slope is left when the elevator floats free.
   *
   * <pre>{@code F = 1 − τ·C_hα/C_hδ}</pre>
   *
   * <p>C_hα and C_hδ are the slopes of the hinge moment against the tail's angle of attack and the elevator's deflection.
   * An elevator that floats up with the flow (both negative) loses some of the tail.
   *
   * @param effectiveness τ = dα_h/dδ, 0 to 1
   * @param hingeMomentByAngle C_hα [1/rad]
   * @param hingeMomentByDeflection C_hδ [1/rad], not zero
   * @return F; with τ = 0.5, C_hα = −0.2, C_hδ = −0.4 it is 0.75
   */
  public static double floatingFactor(
      double effectiveness, double hingeMomentByAngle, double hingeMomentByDeflection) {
    return 1.0 - effectiveness * hingeMomentByAngle / hingeMomentByDeflection;
  }

  /**
   * The neutral point as a fraction of the mean aerodynamic chord behind its leading edge.
   *
   * @return h_n
   */
  public double fraction() {
    return position.value();
  }

  /**
   * Its range over what is not well known: the downwash by all methods that hold.
   *
   * @return h_n, least, likely, greatest
   */
  public Band band() {
    return band;
  }

  /**
   * The neutral point from the nose.
   *
   * @return x aft of the nose tip
   */
  public Length x() {
    return leadingEdge.plus(chord.times(fraction()));
  }

  /**
   * What each part moves: the wing's aerodynamic centre, then the shifts by tail, fuselage and whatever else was reckoned.
   *
   * @return steps whose values sum to {@link #fraction()}
   */
  public List<Step> contributions() {
    return contributions;
  }

  /**
   * The mean aerodynamic chord that the fractions refer to.
   *
   * @return c̄
   */
  public Length meanAerodynamicChord() {
    return chord;
  }

  /**
   * Where that chord begins.
   *
   * @return x of its leading edge, aft of the nose tip
   */
  public Length leadingEdge() {
    return leadingEdge;
  }

  /**
   * How the number came about.
   *
   * @return the step of h_n
   */
  public Step step() {
    return position;
  }

  /**
   * The workings, contributions included.
   *
   * @return all steps
   */
  public Workings workings() {
    java.util.ArrayList<Step> all = new java.util.ArrayList<>(contributions);
    all.add(position);
    return Workings.of(all);
  }

  /**
   * What to know about it.
   *
   * @return findings, heaviest first
   */
  public List<Finding> findings() {
    return findings;
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "neutral point %s aft of the nose, %.1f %% of c̄", x(), 100.0 * fraction());
  }
}
