// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.geometry.TaperedPlanform;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Density;
import io.github.wingwright.core.quantity.Energy;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.core.quantity.Time;
import io.github.wingwright.core.quantity.Volume;
import io.github.wingwright.core.quantity.WingLoading;

/** The formulas that put the parts of a design together; each is geometry or a definition. */
final class DesignFormulas {
  /** Area of a tapered planform from its chords. */
  public static final Formula AREA_FROM_CHORDS =
      Formula.named("area from span and chords")
          .gives("S", Area.SQUARE_METRE)
          .as("b·(c_r + c_t) / 2")
          .where("b", "span, or height of a fin", Length.METRE, 0.005, 100)
          .where("c_r", "root chord", Length.METRE, 0.001, 20)
          .where("c_t", "tip chord", Length.METRE, 0, 20)
          .computedBy(DesignFormulas::areaFromChords);

  /** Taper ratio from the chords. */
  public static final Formula TAPER_RATIO =
      Formula.named("taper ratio")
          .gives("λ")
          .as("c_t / c_r")
          .where("c_t", "tip chord", Length.METRE, 0, 20)
          .where("c_r", "root chord", Length.METRE, 0.001, 20)
          .computedBy(DesignFormulas::taperRatio);

  /** Quarter point of the mean aerodynamic chord. */
  public static final Formula QUARTER_CHORD =
      Formula.named("quarter mean aerodynamic chord of the wing, behind the nose")
          .gives("x_w", Length.METRE)
          .as("x_r + ¼·c_r + ȳ·tan(Λ)")
          .where("x_r", "leading edge of the root", Length.METRE, -1, 100)
          .where("c_r", "root chord", Length.METRE, 0.001, 20)
          .where("ȳ", "spanwise place of the mean aerodynamic chord", Length.METRE, 0, 50)
          .where("Λ", "sweep of the quarter-chord line", Angle.RADIAN, -1, 1)
          .computedBy(DesignFormulas::quarterChord);

  /** Leading edge of the mean aerodynamic chord. */
  public static final Formula LEADING_EDGE =
      Formula.named("leading edge of the mean aerodynamic chord, behind the nose")
          .gives("x_c", Length.METRE)
          .as("x_w − ¼·c̄")
          .where("x_w", "quarter mean aerodynamic chord of the wing", Length.METRE, -1, 100)
          .where("c̄", "mean aerodynamic chord", Length.METRE, 0.001, 20)
          .computedBy(DesignFormulas::leadingEdge);

  /** Sweep of the half-chord line of straight panels. */
  public static final Formula HALF_CHORD_SWEEP =
      Formula.named("sweep of the half-chord line")
          .gives("Λ_½", Angle.RADIAN)
          .as("atan(tan(Λ) − (1 − c_t/c_r) / (A·(1 + c_t/c_r)))")
          .where("Λ", "sweep of the quarter-chord line", Angle.RADIAN, -1, 1)
          .where("A", "aspect ratio", 0.1, 60)
          .where("c_r", "root chord", Length.METRE, 0.001, 20)
          .where("c_t", "tip chord", Length.METRE, 0, 20)
          .computedBy(DesignFormulas::halfChordSweep);

  /** Lift coefficient of the trimmed flight. */
  public static final Formula TRIM_LIFT =
      Formula.named("lift coefficient in trim")
          .gives("C_L")
          .as("C_L,u / r²")
          .where("C_L,u", "usable lift coefficient", 0.05, 3)
          .where("r", "speed in trim over stall speed", 1, 5)
          .computedBy(DesignFormulas::trimLift);

  /** Arm of a tail whose trailing edge ends with the fuselage. */
  public static final Formula TAIL_ARM =
      Formula.named("tail arm")
          .gives("l", Length.METRE)
          .as("L − ¾·c_r − x_w")
          .where("L", "length of the fuselage", Length.METRE, 0.01, 100)
          .where("c_r", "root chord of the tail", Length.METRE, 0.001, 20)
          .where("x_w", "quarter mean aerodynamic chord of the wing", Length.METRE, -1, 100)
          .computedBy(DesignFormulas::tailArm);

  /** A place given as a fraction of the mean aerodynamic chord. */
  public static final Formula PLACE =
      Formula.named("place behind the nose")
          .gives("x", Length.METRE)
          .as("x_w + (h − ¼)·c̄")
          .where("x_w", "quarter mean aerodynamic chord of the wing", Length.METRE, -1, 100)
          .where("h", "fraction of the mean aerodynamic chord", -5, 10)
          .where("c̄", "mean aerodynamic chord", Length.METRE, 0.001, 20)
          .computedBy(DesignFormulas::place);

  /** The fraction of the mean aerodynamic chord at a place. */
  public static final Formula FRACTION =
      Formula.named("centre of gravity as a fraction of the mean aerodynamic chord")
          .gives("h")
          .as("¼ + (x_cg − x_w) / c̄")
          .where("x_cg", "centre of gravity", Length.METRE, -1, 100)
          .where("x_w", "quarter mean aerodynamic chord of the wing", Length.METRE, -1, 100)
          .where("c̄", "mean aerodynamic chord", Length.METRE, 0.001, 20)
          .computedBy(DesignFormulas::fraction);

  /** Volume of a wing of one section. */
  public static final Formula WING_VOLUME =
      Formula.named("volume of the wing")
          .gives("V_w", Volume.CUBIC_METRE)
          .as("(k + ½·e)·S·c̄")
          .where("k", "area of the section over its chord squared", 0.001, 0.5)
          .where("e", "what the trailing edge lacks over the chord", 0, 0.2)
          .where("S", "reference area", Area.SQUARE_METRE, 1e-4, 1000)
          .where("c̄", "mean aerodynamic chord", Length.METRE, 0.001, 20)
          .computedBy(DesignFormulas::wingVolume);

  /** What is added to the trailing edge, so that it is a line thick at the tip. */
  public static final Formula TRAILING_EDGE =
      Formula.named("what the trailing edge lacks over the chord")
          .gives("e")
          .as("max(0, w_l/c_t − t_e)")
          .where("w_l", "line width", Length.METRE, 1e-4, 2e-3)
          .where("c_t", "tip chord", Length.METRE, 0.001, 20)
          .where("t_e", "thickness of the trailing edge over the chord", 0, 0.1)
          .computedBy(DesignFormulas::trailingEdge);

  /** Walls of a wing and its closed ends. */
  public static final Formula WING_SHELL =
      Formula.named("volume of the walls of the wing, ends closed")
          .gives("V_s", Volume.CUBIC_METRE)
          .as("V_f + V_e")
          .where("V_f", "volume of the walls of the sections", Volume.CUBIC_METRE, 0, 1)
          .where("V_e", "volume of the closed ends", Volume.CUBIC_METRE, 0, 1)
          .computedBy(DesignFormulas::sum);

  /** Surface of a body with its flat end. */
  public static final Formula BODY_SURFACE =
      Formula.named("surface of the body, flat end counted")
          .gives("S_b", Area.SQUARE_METRE)
          .as("S_wet + S_e")
          .where("S_wet", "wetted area", Area.SQUARE_METRE, 1e-5, 100)
          .where("S_e", "area of the flat end", Area.SQUARE_METRE, 0, 10)
          .computedBy(DesignFormulas::sum);

  /** Mass of a body: its walls, never more than the whole, and what its fittings add. */
  public static final Formula BODY_MASS =
      Formula.named("mass of the fuselage")
          .gives("m", Mass.KILOGRAM)
          .as("ρ_m·(min(V_w, V) + V_t + V_h + V_v)")
          .where("ρ_m", "density of the material", Density.KILOGRAM_PER_CUBIC_METRE, 5, 25_000)
          .where("V_w", "volume of the walls", Volume.CUBIC_METRE, 0, 1)
          .where("V", "volume of the body", Volume.CUBIC_METRE, 1e-9, 1)
          .where("V_t", "what the seat of the wing adds", Volume.CUBIC_METRE, -1e-6, 1e-4)
          .where("V_h", "what the slot of the tailplane adds", Volume.CUBIC_METRE, 0, 1e-4)
          .where("V_v", "what the slot of the fin adds", Volume.CUBIC_METRE, 0, 1e-4)
          .computedBy(DesignFormulas::bodyMass);

  /** Mass of a plate. */
  public static final Formula PLATE_MASS =
      Formula.named("mass of a plate")
          .gives("m", Mass.KILOGRAM)
          .as("ρ_m·t·S")
          .where("ρ_m", "density of the material", Density.KILOGRAM_PER_CUBIC_METRE, 5, 25_000)
          .where("t", "thickness", Length.METRE, 1e-5, 0.1)
          .where("S", "area", Area.SQUARE_METRE, 1e-5, 200)
          .computedBy(DesignFormulas::plateMass);

  /** Wing loading. */
  public static final Formula LOADING =
      Formula.named("wing loading")
          .gives("w", WingLoading.KILOGRAM_PER_SQUARE_METRE)
          .as("m / S")
          .where("m", "mass", Mass.KILOGRAM, 1e-4, 1e5)
          .where("S", "reference area", Area.SQUARE_METRE, 1e-4, 1000)
          .computedBy(DesignFormulas::loading);

  /** Time from a height. */
  public static final Formula DURATION =
      Formula.named("time from the launch height in still air")
          .gives("T", Time.SECOND)
          .as("h / w")
          .where("h", "launch height", Length.METRE, 0, 10_000)
          .where("w", "least sink rate", Speed.METRE_PER_SECOND, 0.01, 100)
          .computedBy(DesignFormulas::duration);

  /** Kinetic energy of the throw. */
  public static final Formula KINETIC_ENERGY =
      Formula.named("kinetic energy at launch")
          .gives("E", Energy.JOULE)
          .as("½·m·V²")
          .where("m", "mass", Mass.KILOGRAM, 1e-4, 1e5)
          .where("V", "launch speed", Speed.METRE_PER_SECOND, 0.1, 100)
          .from(Source.DEFINITION)
          .computedBy(DesignFormulas::kineticEnergy);

  private DesignFormulas() {}

  static double areaFromChords(double span, double rootChord, double tipChord) {
    return span * (rootChord + tipChord) / 2.0;
  }

  static double taperRatio(double tipChord, double rootChord) {
    return tipChord / rootChord;
  }

  static double quarterChord(double rootLeadingEdge, double rootChord, double meanChordY, double sweep) {
    return rootLeadingEdge + 0.25 * rootChord + meanChordY * Math.tan(sweep);
  }

  static double leadingEdge(double wingQuarterChord, double chord) {
    return wingQuarterChord - 0.25 * chord;
  }

  static double halfChordSweep(double sweep, double aspectRatio, double rootChord, double tipChord) {
    return Math.atan(TaperedPlanform.sweepTangent(Math.tan(sweep), 0.25, 0.5, aspectRatio, tipChord / rootChord));
  }

  static double trimLift(double usableLift, double speedRatio) {
    return usableLift / (speedRatio * speedRatio);
  }

  static double tailArm(double length, double rootChord, double wingQuarterChord) {
    return length - 0.75 * rootChord - wingQuarterChord;
  }

  static double place(double wingQuarterChord, double fraction, double chord) {
    return wingQuarterChord + (fraction - 0.25) * chord;
  }

  static double fraction(double place, double wingQuarterChord, double chord) {
    return 0.25 + (place - wingQuarterChord) / chord;
  }

  static double wingVolume(double sectionArea, double edge, double area, double chord) {
    return (sectionArea + 0.5 * edge) * area * chord;
  }

  static double trailingEdge(double line, double tipChord, double thickness) {
    return Math.max(0.0, line / tipChord - thickness);
  }

  static double sum(double first, double second) {
    return first + second;
  }

  static double bodyMass(double density, double walls, double volume, double seat, double tailSlot, double finSlot) {
    return density * (Math.min(walls, volume) + seat + tailSlot + finSlot);
  }

  static double plateMass(double density, double thickness, double area) {
    return density * thickness * area;
  }

  static double loading(double mass, double area) {
    return mass / area;
  }

  static double duration(double height, double sinkRate) {
    return height / sinkRate;
  }

  static double kineticEnergy(double mass, double speed) {
    return 0.5 * mass * speed * speed;
  }
}
