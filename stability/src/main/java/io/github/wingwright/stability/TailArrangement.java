// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.core.basis.Guideline;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.Objects;

/**
 * How the tails stand together. Some arrangements do the same work with a little less tail volume: a handbook takes 5 to
 * 15 % off the coefficient.
 */
public enum TailArrangement {
  /** Horizontal tail on the fuselage, one fin. */
  CONVENTIONAL("conventional tail", 1.0, 1.0),
  /** Horizontal tail on top of the fin: in clean air, and an end plate for the fin. */
  T_TAIL("T-tail", 0.95, 0.95),
  /** Two fins at the tips of the horizontal tail: out of the wake of the fuselage. */
  TWIN_FINS("twin fins", 1.0, 0.95),
  /** One tail of two halves that rise to a V, for both. */
  V_TAIL("V-tail", 1.0, 1.0),
  /** A horizontal tail ahead of the wing: the volume coefficients of the classes are not for it. */
  CANARD("foreplane", 1.0, 1.0),
  /** A horizontal tail that turns as a whole: more control for its area. */
  ALL_MOVING("all-moving horizontal tail", 0.875, 1.0);

  private static final Source REDUCTIONS =
      Source.fromMemory("Raymer, Aircraft Design: A Conceptual Approach", "section 6.4, beside table 6.4");

  private static final Guideline CLEAN_AIR =
      new Guideline(
          "tail efficiency",
          Interval.between(0.95, 1.0),
          NamedUnit.NUMBER,
          "horizontal tail on top of the fin",
          "It stands in clean air, above the wake of wing and fuselage; lower, take the range of the class.",
          Source.fromMemory("Raymer, Aircraft Design: A Conceptual Approach", "chapter 16: about 1 for a T-tail"));

  private static final Guideline UNDISTURBED =
      new Guideline(
          "tail efficiency",
          Interval.between(0.95, 1.0),
          NamedUnit.NUMBER,
          "foreplanes",
          "It stands ahead of wing and fuselage, in air that nothing has slowed down: take 1.",
          Source.DEFINITION);

  private final String words;
  private final double level;
  private final double upright;

  TailArrangement(String words, double level, double upright) {
    this.words = words;
    this.level = level;
    this.upright = upright;
  }

  /**
   * The arrangement in words.
   *
   * @return for example {@code "T-tail"}
   */
  public String words() {
    return words;
  }

  /**
   * How the tails of an airframe stand, as far as their places tell.
   *
   * @param airframe the airframe
   * @return foreplane; V-tail; T-tail where the horizontal tail stands on the upper fifth of the fin; twin fins; else conventional
   */
  public static TailArrangement of(Airframe airframe) {
    Objects.requireNonNull(airframe, "airframe");
    if (airframe.pitchTail().filter(t -> t.armFrom(airframe.wing()).si() < 0.0).isPresent()) {
      return CANARD;
    }
    if (airframe.horizontalTail().isEmpty() && airframe.vTail().isPresent()) {
      return V_TAIL;
    }
    if (airframe.yawTails().stream().filter(t -> t.placement().y().si() != 0.0).count() == 2) {
      return TWIN_FINS;
    }
    boolean onTop =
        airframe
            .horizontalTail()
            .flatMap(level -> airframe.verticalTail().filter(fin -> stands(level, fin)))
            .isPresent();
    return onTop ? T_TAIL : CONVENTIONAL;
  }

  private static boolean stands(Tail level, Tail fin) {
    double height = fin.planform().span().si();
    double up = level.placement().z().minus(fin.placement().z()).si();
    boolean meets = Math.abs(level.quarterChordX().minus(fin.quarterChordX()).si())
        < level.planform().rootChord().plus(fin.planform().rootChord()).si();
    return fin.placement().y().si() == 0.0 && meets && up > 0.8 * height && up < 1.2 * height;
  }

  /**
   * What the tail keeps of the dynamic pressure of flight in this arrangement.
   *
   * @param aircraftClass the class
   * @return the range of the class, or of clean air for a T-tail and a foreplane
   */
  public Guideline tailEfficiency(AircraftClass aircraftClass) {
    Objects.requireNonNull(aircraftClass, "aircraft class");
    return switch (this) {
      case T_TAIL -> CLEAN_AIR;
      case CANARD -> UNDISTURBED;
      default -> aircraftClass.tailEfficiency();
    };
  }

  /**
   * The tail efficiency to begin with.
   *
   * @param aircraftClass the class
   * @return that of the class, or the middle of the range in clean air
   */
  public double typicalTailEfficiency(AircraftClass aircraftClass) {
    Objects.requireNonNull(aircraftClass, "aircraft class");
    return switch (this) {
      case T_TAIL -> 0.5 * (CLEAN_AIR.range().lower() + CLEAN_AIR.range().upper());
      case CANARD -> 1.0;
      default -> aircraftClass.typicalTailEfficiency();
    };
  }

  /**
   * What part of the usual tail volume coefficient is enough.
   *
   * @param role horizontal or vertical tail
   * @return 0.875 to 1
   */
  public double factor(Tail.Role role) {
    Objects.requireNonNull(role, "role");
    return role == Tail.Role.HORIZONTAL ? level : upright;
  }

  /**
   * The range of tail volume coefficients of a class in this arrangement.
   *
   * @param aircraftClass the class
   * @param role horizontal or vertical tail
   * @return the range of the class, lowered by the factor
   */
  public Guideline tailVolume(AircraftClass aircraftClass, Tail.Role role) {
    Objects.requireNonNull(aircraftClass, "aircraft class");
    Objects.requireNonNull(role, "role");
    Guideline usual = aircraftClass.tailVolume(role);
    double factor = factor(role);
    if (factor == 1.0) {
      return usual;
    }
    return new Guideline(
        usual.name(),
        Interval.between(factor * usual.range().lower(), factor * usual.range().upper()),
        usual.unit(),
        usual.appliesTo() + " with a " + words,
        usual.advice(),
        REDUCTIONS);
  }
}
