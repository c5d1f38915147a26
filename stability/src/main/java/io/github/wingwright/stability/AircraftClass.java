// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import static io.github.wingwright.core.basis.Guideline.ofNumber;
import io.github.wingwright.core.basis.Guideline;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.geometry.Tail;
import java.util.Objects;

/**
 * A class of aircraft, for the ranges that good tails of that class keep to.
 *
 * <p>Full-size ranges would scold good small models, so the two model classes have ranges of their own. The handbook table
 * gives one value for each full-size class; the range is that value ±20 %.
 *
 * <pre>{@code
 * AircraftClass.SAILPLANE.tailVolume(Tail.Role.HORIZONTAL)              // 0.4 to 0.6
 * AircraftClass.HAND_LAUNCHED_GLIDER.tailVolume(Tail.Role.HORIZONTAL)   // 0.5 to 0.8
 * }</pre>
 */
public enum AircraftClass {
  /** A model of a few grams to some hundred grams, thrown by hand. */
  HAND_LAUNCHED_GLIDER("hand-launched gliders", 0.65, 0.04),
  /** A radio-controlled model, glider or powered. */
  RADIO_CONTROLLED_MODEL("radio-controlled models", 0.45, 0.035),
  /** A sailplane. */
  SAILPLANE("sailplanes", 0.5, 0.02),
  /** A light aeroplane built by its owner. */
  HOMEBUILT("homebuilt aeroplanes", 0.5, 0.04),
  /** A light aeroplane with one engine. */
  SINGLE_ENGINE("single-engine light aeroplanes", 0.7, 0.04),
  /** A light aeroplane with two engines. */
  TWIN_ENGINE("twin-engine light aeroplanes", 0.8, 0.07),
  /** An agricultural aeroplane. */
  AGRICULTURAL("agricultural aeroplanes", 0.5, 0.04),
  /** A transport with two propeller turbines. */
  TWIN_TURBOPROP("twin turboprops", 0.9, 0.08),
  /** A flying boat. */
  FLYING_BOAT("flying boats", 0.7, 0.06),
  /** A jet trainer. */
  JET_TRAINER("jet trainers", 0.7, 0.06),
  /** A jet fighter. */
  JET_FIGHTER("jet fighters", 0.4, 0.07),
  /** A military transport or bomber. */
  MILITARY_TRANSPORT("military transports and bombers", 1.0, 0.08),
  /** A jet transport. */
  JET_TRANSPORT("jet transports", 1.0, 0.09);

  private static final double SPREAD = 0.2;

  private final String words;
  private final double horizontal;
  private final double vertical;

  AircraftClass(String words, double horizontal, double vertical) {
    this.words = words;
    this.horizontal = horizontal;
    this.vertical = vertical;
  }

  /**
   * The class in words.
   *
   * @return for example {@code "hand-launched gliders"}
   */
  public String words() {
    return words;
  }

  /**
   * Whether handbook ranges for aircraft that carry people do not apply.
   *
   * @return true for the two model classes
   */
  public boolean isModel() {
    return this == HAND_LAUNCHED_GLIDER || this == RADIO_CONTROLLED_MODEL;
  }

  /**
   * The coefficient to begin with: the value of the table, or the middle of the range of a model class.
   *
   * @param role horizontal or vertical tail
   * @return V_h or V_v
   */
  public double typicalTailVolume(Tail.Role role) {
    Objects.requireNonNull(role, "role");
    TailVolume.refuseV(role);
    return role == Tail.Role.HORIZONTAL ? horizontal : vertical;
  }

  /**
   * The range of tail volume coefficients.
   *
   * @param role horizontal or vertical tail
   * @return the guideline
   */
  public Guideline tailVolume(Tail.Role role) {
    Objects.requireNonNull(role, "role");
    TailVolume.refuseV(role);
    boolean level = role == Tail.Role.HORIZONTAL;
    String advice =
        level
            ? "Below it, enlarge the tail or move it aft; above it, a smaller tail saves mass and drag."
            : "Below it, enlarge the fin or move it aft; above it, a smaller fin needs less dihedral against the spiral.";
    Interval range = tailVolumeRange(level);
    Source source =
        switch (this) {
          case HAND_LAUNCHED_GLIDER -> Source.COMMON_PRACTICE;
          case RADIO_CONTROLLED_MODEL -> Sources.SMALL_AIRCRAFT_RULES;
          default -> Sources.TAIL_VOLUMES;
        };
    return ofNumber(role.words() + " volume coefficient", range.lower(), range.upper(), words, advice, source);
  }

  private Interval tailVolumeRange(boolean level) {
    return switch (this) {
      case HAND_LAUNCHED_GLIDER -> level ? Interval.between(0.5, 0.8) : Interval.between(0.03, 0.05);
      case RADIO_CONTROLLED_MODEL -> level ? Interval.between(0.3, 0.6) : Interval.between(0.02, 0.05);
      // The table itself gives the fighter's fin as a range.
      case JET_FIGHTER -> level ? around(horizontal) : Interval.between(0.07, 0.12);
      default -> around(level ? horizontal : vertical);
    };
  }

  private static Interval around(double value) {
    return Interval.between(value * (1.0 - SPREAD), value * (1.0 + SPREAD));
  }

  /**
   * The range of aspect ratios of a tail; of a fin, its height squared over its area.
   *
   * @param role horizontal or vertical tail
   * @return the guideline
   */
  public Guideline tailAspectRatio(Tail.Role role) {
    Objects.requireNonNull(role, "role");
    boolean level = role.isMirrored();
    Interval range =
        switch (this) {
          case HAND_LAUNCHED_GLIDER, RADIO_CONTROLLED_MODEL ->
              level ? Interval.between(3, 4) : Interval.between(1.0, 2.0);
          case JET_FIGHTER -> level ? Interval.between(3, 4) : Interval.between(0.6, 1.4);
          case SAILPLANE -> level ? Interval.between(6, 10) : Interval.between(1.5, 2.0);
          default -> level ? Interval.between(3, 5) : Interval.between(1.3, 2.0);
        };
    return ofNumber(
        role.words() + " aspect ratio",
        range.lower(),
        range.upper(),
        words,
        "A slender tail works harder for its area and stalls earlier; a stubby one is stiffer and stalls later.",
        isModel() ? Source.COMMON_PRACTICE : Sources.TAIL_SHAPES);
  }

  /**
   * The range of taper ratios of a tail.
   *
   * @param role horizontal or vertical tail
   * @return the guideline
   */
  public Guideline tailTaperRatio(Tail.Role role) {
    Objects.requireNonNull(role, "role");
    boolean level = role.isMirrored();
    Interval range =
        switch (this) {
          // On a chord of a few centimetres a strong taper only loses Reynolds number at the tip.
          case HAND_LAUNCHED_GLIDER, RADIO_CONTROLLED_MODEL -> Interval.between(0.5, 1.0);
          case JET_FIGHTER -> Interval.between(0.2, 0.4);
          case SAILPLANE -> level ? Interval.between(0.3, 0.5) : Interval.between(0.4, 0.6);
          default -> Interval.between(0.3, 0.6);
        };
    return ofNumber(
        role.words() + " taper ratio",
        range.lower(),
        range.upper(),
        words,
        "Strong taper starves the tip of Reynolds number; no taper costs structure at the root.",
        isModel() ? Source.COMMON_PRACTICE : Sources.TAIL_SHAPES);
  }

  /**
   * The range of static margins at the most aft centre of gravity.
   *
   * @return the guideline
   */
  public Guideline staticMargin() {
    Interval range =
        switch (this) {
          case HAND_LAUNCHED_GLIDER -> Interval.between(0.10, 0.20);
          case RADIO_CONTROLLED_MODEL -> Interval.between(0.05, 0.15);
          case JET_FIGHTER -> Interval.between(0.0, 0.10);
          case JET_TRANSPORT, MILITARY_TRANSPORT, TWIN_TURBOPROP -> Interval.between(0.05, 0.10);
          default -> Interval.between(0.05, 0.20);
        };
    Source source =
        switch (this) {
          case HAND_LAUNCHED_GLIDER -> Source.COMMON_PRACTICE;
          case RADIO_CONTROLLED_MODEL -> Sources.SMALL_AIRCRAFT_RULES;
          case JET_FIGHTER, JET_TRANSPORT, MILITARY_TRANSPORT, TWIN_TURBOPROP -> Sources.TRANSPORT_MARGINS;
          default -> Sources.GENERAL_MARGINS;
        };
    return ofNumber(
        "static margin",
        range.lower(),
        range.upper(),
        words,
        "Below it, move mass forward, the wing aft, or enlarge the tail; above it, do the opposite.",
        source);
  }

  /**
   * The range of tail efficiencies: dynamic pressure at the tail over that of flight.
   *
   * @return the guideline
   */
  public Guideline tailEfficiency() {
    return ofNumber(
        "tail efficiency",
        isModel() ? 0.7 : 0.85,
        isModel() ? 0.9 : 1.0,
        words,
        "A tail in the wake of body and wing feels less; a tail high above both feels nearly all.",
        isModel() ? Source.COMMON_PRACTICE : Sources.TAIL_EFFICIENCY);
  }

  /**
   * The tail efficiency to begin with.
   *
   * @return η_h, 0.8 for models and 0.9 for others
   */
  public double typicalTailEfficiency() {
    return isModel() ? 0.8 : 0.9;
  }
}
