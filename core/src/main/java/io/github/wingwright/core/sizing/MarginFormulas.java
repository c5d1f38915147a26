// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.FlexuralRigidity;
import io.github.wingwright.core.quantity.Force;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.quantity.Pressure;
import io.github.wingwright.core.quantity.Volume;

/**
 * The formulas by which considerations on a fuselage come to their margins: what is attained over what is asked, less one,
 * or the other way round where less is asked. They are what {@code Consideration.workings} prints.
 *
 * <p>Here m is a margin unless it is explained as a mass; zero or more means satisfied.
 */
public final class MarginFormulas {
  private static final Source EULER =
      Source.fromMemory("Timoshenko and Gere, Theory of Elastic Stability, 2nd ed., 1961", "Euler's strut");

  /** Margin above the least length. */
  public static final Formula LENGTH_ABOVE =
      Formula.named("margin above the least length")
          .gives("m")
          .as("L / L_min − 1")
          .where("L", "length", Length.METRE, 0.001, 100)
          .where("L_min", "least length", Length.METRE, 0.001, 100)
          .from(Source.DEFINITION)
          .computedBy(MarginFormulas::above);

  /** Margin below the greatest length. */
  public static final Formula LENGTH_BELOW =
      Formula.named("margin below the greatest length")
          .gives("m")
          .as("1 − L / L_max")
          .where("L", "length", Length.METRE, 0.001, 100)
          .where("L_max", "greatest length", Length.METRE, 0.001, 100)
          .from(Source.DEFINITION)
          .computedBy(MarginFormulas::below);

  /** Margin above the least diameter. */
  public static final Formula DIAMETER_ABOVE =
      Formula.named("margin above the least diameter")
          .gives("m")
          .as("d / d_min − 1")
          .where("d", "diameter", Length.METRE, 0.0001, 20)
          .where("d_min", "least diameter", Length.METRE, 0.0001, 20)
          .from(Source.DEFINITION)
          .computedBy(MarginFormulas::above);

  /** Margin below the greatest diameter. */
  public static final Formula DIAMETER_BELOW =
      Formula.named("margin below the greatest diameter")
          .gives("m")
          .as("1 − d / d_max")
          .where("d", "diameter", Length.METRE, 0.0001, 20)
          .where("d_max", "greatest diameter", Length.METRE, 0.0001, 20)
          .from(Source.DEFINITION)
          .computedBy(MarginFormulas::below);

  /** Distance from the diameter that is wanted. */
  public static final Formula DIAMETER_NEAR =
      Formula.named("distance from the diameter that is wanted")
          .gives("m")
          .as("0 − |d / d_0 − 1|")
          .where("d", "diameter", Length.METRE, 0.0001, 20)
          .where("d_0", "diameter that is wanted", Length.METRE, 0.0001, 20)
          .from(Source.DEFINITION)
          .computedBy(MarginFormulas::near);

  /** Diameter that goes with the wing. */
  public static final Formula WANTED_DIAMETER =
      Formula.named("diameter that goes with the wing")
          .gives("d_0", Length.METRE)
          .as("n·t")
          .where("n", "multiple of the thickness", NamedUnit.NUMBER, 0.1, 100)
          .where("t", "thickness of the wing", Length.METRE, 0.0001, 5)
          .from(Source.COMMON_PRACTICE)
          .computedBy(MarginFormulas::multiple);

  /** Greatest length in segments. */
  public static final Formula SEGMENTED_LENGTH =
      Formula.named("greatest length in segments")
          .gives("L_max", Length.METRE)
          .as("n·p − (n − 1)·j")
          .where("n", "pieces", NamedUnit.NUMBER, 1, 50)
          .where("p", "longest part", Length.METRE, 0.01, 10)
          .where("j", "overlap of a joint", Length.METRE, 0, 1)
          .from(Source.DEFINITION)
          .computedBy(MarginFormulas::segmented);

  /** Least length for the tail arm. */
  public static final Formula LENGTH_FOR_ARM =
      Formula.named("least length for the tail arm")
          .gives("L_min", Length.METRE)
          .as("a / (1 − k)")
          .where("a", "tail arm", Length.METRE, 0.001, 50)
          .where("k", "share of the length outside the arm", NamedUnit.NUMBER, 0, 0.95)
          .from(Source.DEFINITION)
          .computedBy(MarginFormulas::lengthForArm);

  /** Moment of the ballast about the wanted centre of gravity. */
  public static final Formula BALLAST_MOMENT =
      Formula.named("moment of the ballast about the wanted centre of gravity")
          .gives("M_b", NamedUnit.KILOGRAM_METRE)
          .as("m_b·(s_t·L − x_b)")
          .where("m_b", "most ballast", Mass.KILOGRAM, 0.0001, 1000)
          .where("s_t", "wanted centre of gravity over the length", NamedUnit.NUMBER, 0, 1)
          .where("L", "length", Length.METRE, 0.001, 100)
          .where("x_b", "distance of the ballast from the nose", Length.METRE, 0.0001, 10)
          .from(Source.DEFINITION)
          .computedBy(MarginFormulas::ballastMoment);

  /** Moment that the ballast has to balance. */
  public static final Formula MOMENT_TO_BALANCE =
      Formula.named("moment of the rest about the wanted centre of gravity")
          .gives("M_r", NamedUnit.KILOGRAM_METRE)
          .as("m·(s_s − s_t)·L")
          .where("m", "mass without ballast", Mass.KILOGRAM, 0.0001, 10_000)
          .where("s_s", "centre of gravity without ballast over the length", NamedUnit.NUMBER, 0, 1)
          .where("s_t", "wanted centre of gravity over the length", NamedUnit.NUMBER, 0, 1)
          .where("L", "length", Length.METRE, 0.001, 100)
          .from(Source.DEFINITION)
          .computedBy(MarginFormulas::momentToBalance);

  /** Margin of the ballast. */
  public static final Formula BALLAST_MARGIN =
      Formula.named("margin of the ballast")
          .gives("m")
          .as("M_b / M_r − 1")
          .where("M_b", "moment of the ballast", NamedUnit.KILOGRAM_METRE, -1000, 100_000)
          .where("M_r", "moment of the rest", NamedUnit.KILOGRAM_METRE, 1e-9, 100_000)
          .from(Source.DEFINITION)
          .computedBy(MarginFormulas::above);

  /** Least diameter around the wing. */
  public static final Formula DIAMETER_FOR_WING =
      Formula.named("least diameter around the wing")
          .gives("d_min", Length.METRE)
          .as("(t + 2·w) / (1 − k)")
          .where("t", "thickness of the wing", Length.METRE, 0.0001, 5)
          .where("w", "wall that remains", Length.METRE, 0, 0.1)
          .where("k", "height of the wing over the radius", NamedUnit.NUMBER, 0, 0.95)
          .from(Source.DEFINITION)
          .computedBy(MarginFormulas::diameterForWing);

  /** Margin of the fineness ratio. */
  public static final Formula FINENESS_MARGIN =
      Formula.named("margin of the fineness ratio")
          .gives("m")
          .as("min(f / f_min − 1, 1 − f / f_max)")
          .where("f", "fineness ratio", NamedUnit.NUMBER, 0.5, 100)
          .where("f_min", "least fineness ratio", NamedUnit.NUMBER, 0.5, 100)
          .where("f_max", "greatest fineness ratio", NamedUnit.NUMBER, 0.5, 100)
          .from(Source.DEFINITION)
          .computedBy(MarginFormulas::finenessMargin);

  /** Margin above the least fineness ratio. */
  public static final Formula FINENESS_ABOVE =
      Formula.named("margin above the least fineness ratio")
          .gives("m")
          .as("f / f_min − 1")
          .where("f", "fineness ratio", NamedUnit.NUMBER, 0.5, 100)
          .where("f_min", "least fineness ratio", NamedUnit.NUMBER, 0.5, 100)
          .from(Source.DEFINITION)
          .computedBy(MarginFormulas::above);

  /** Volume that the contents need. */
  public static final Formula VOLUME_NEEDED =
      Formula.named("volume that the contents need")
          .gives("V_min", Volume.CUBIC_METRE)
          .as("V_c / φ")
          .where("V_c", "volume of the contents", Volume.CUBIC_METRE, 1e-9, 1000.0)
          .where("φ", "packing fraction", NamedUnit.NUMBER, 0.05, 1)
          .from(Source.DEFINITION)
          .computedBy(MarginFormulas::volumeNeeded);

  /** Diameter that the family can form. */
  public static final Formula STOUTEST_DIAMETER =
      Formula.named("diameter that the family can form")
          .gives("d_s", Length.METRE)
          .as("min(d, L / f_s)")
          .where("d", "diameter", Length.METRE, 0.0001, 20)
          .where("L", "length", Length.METRE, 0.001, 100)
          .where("f_s", "least fineness ratio of the family", NamedUnit.NUMBER, 0.1, 20)
          .from(Source.DEFINITION)
          .computedBy(MarginFormulas::stoutest);

  /** Margin of the volume. */
  public static final Formula VOLUME_MARGIN =
      Formula.named("margin of the volume")
          .gives("m")
          .as("V / V_min − 1")
          .where("V", "volume", Volume.CUBIC_METRE, 1e-9, 1000.0)
          .where("V_min", "volume that the contents need", Volume.CUBIC_METRE, 1e-9, 1000.0)
          .from(Source.DEFINITION)
          .computedBy(MarginFormulas::above);

  /** Margin of the bending stiffness. */
  public static final Formula STIFFNESS_MARGIN =
      Formula.named("margin of the bending stiffness")
          .gives("m")
          .as("EI / EI_min − 1")
          .where("EI", "bending stiffness", FlexuralRigidity.NEWTON_SQUARE_METRE, 1e-6, 1000000000.0)
          .where("EI_min", "bending stiffness that is needed", FlexuralRigidity.NEWTON_SQUARE_METRE, 1e-6, 1000000000.0)
          .from(Source.DEFINITION)
          .computedBy(MarginFormulas::above);

  /** Place or part along the body. */
  public static final Formula SHARE_OF_LENGTH =
      Formula.named("place or part along the body")
          .gives("x", Length.METRE)
          .as("k·L")
          .where("k", "share of the length", NamedUnit.NUMBER, 0, 1)
          .where("L", "length", Length.METRE, 0.001, 100)
          .from(Source.DEFINITION)
          .computedBy(MarginFormulas::multiple);

  /** Load that the section carries in compression. */
  public static final Formula COMPRESSIVE_LOAD =
      Formula.named("load that the section carries in compression")
          .gives("F_c", Force.NEWTON)
          .as("σ·π·min(w, d/2)·max(d − w, d/2)")
          .where("σ", "compressive strength", Pressure.PASCAL, 1000.0, 10000000000.0)
          .where("w", "wall thickness", Length.METRE, 1e-5, 0.1)
          .where("d", "diameter", Length.METRE, 0.0001, 20)
          .from(Source.DEFINITION)
          .computedBy(MarginFormulas::compressiveLoad);

  /** Load at which the body buckles as a whole. */
  public static final Formula BUCKLING_LOAD =
      Formula.named("load at which the body buckles as a whole")
          .gives("F_b", Force.NEWTON)
          .as("π²·EI / L²")
          .where("EI", "bending stiffness", FlexuralRigidity.NEWTON_SQUARE_METRE, 1e-6, 1000000000.0)
          .where("L", "length", Length.METRE, 0.001, 100)
          .from(EULER)
          .computedBy(MarginFormulas::bucklingLoad);

  /** Margin of the body as a strut. */
  public static final Formula STRUT_MARGIN =
      Formula.named("margin of the body as a strut")
          .gives("m")
          .as("min(F_c, F_b) / F − 1")
          .where("F_c", "load in compression", Force.NEWTON, 0.01, 1000000000.0)
          .where("F_b", "load in buckling", Force.NEWTON, 0.01, 1000000000.0)
          .where("F", "force of the impact", Force.NEWTON, 0.01, 10000000.0)
          .from(Source.DEFINITION)
          .computedBy(MarginFormulas::strutMargin);

  /** Height of the eye above the axis. */
  public static final Formula EYE_HEIGHT =
      Formula.named("height of the eye above the axis")
          .gives("z_e", Length.METRE)
          .as("b·d − e")
          .where("b", "top of the greatest section over the diameter", NamedUnit.NUMBER, 0, 2)
          .where("d", "diameter", Length.METRE, 0.001, 20)
          .where("e", "eye below the top", Length.METRE, -1, 1)
          .from(Source.DEFINITION)
          .computedBy(MarginFormulas::eyeHeight);

  /** Clearance as a part of a length. */
  public static final Formula CLEARANCE =
      Formula.named("clearance as a part of a length")
          .gives("m")
          .as("c / x")
          .where("c", "least clearance", Length.METRE, -10, 10)
          .where("x", "length that it is measured by", Length.METRE, 0.001, 100)
          .from(Source.DEFINITION)
          .computedBy(MarginFormulas::clearance);

  /** Height of the centre of gravity above the ground. */
  public static final Formula GRAVITY_HEIGHT =
      Formula.named("height of the centre of gravity above the ground")
          .gives("h", Length.METRE)
          .as("max(h_s + b·d + z_g, 0.000000001)")
          .where("h_s", "height of the belly above the ground", Length.METRE, 0.001, 5)
          .where("b", "belly below the axis over the diameter", NamedUnit.NUMBER, 0, 2)
          .where("d", "diameter", Length.METRE, 0.001, 20)
          .where("z_g", "centre of gravity above the axis", Length.METRE, -1, 1)
          .from(Source.DEFINITION)
          .computedBy(MarginFormulas::gravityHeight);

  /** Margin against falling on the tail. */
  public static final Formula TIP_BACK_MARGIN =
      Formula.named("margin against falling on the tail")
          .gives("m")
          .as("(s_w − s_g)·L / (h·tan(β)) − 1")
          .where("s_w", "wheels over the length", NamedUnit.NUMBER, 0.4, 1)
          .where("s_g", "centre of gravity over the length", NamedUnit.NUMBER, 0, 0.4)
          .where("L", "length", Length.METRE, 0.001, 100)
          .where("h", "height of the centre of gravity", Length.METRE, 0.001, 20)
          .where("β", "tip-back angle", Angle.RADIAN, 0.01, 1.2)
          .from(Source.DEFINITION)
          .computedBy(MarginFormulas::tipBackMargin);

  /** Margin of the closure angle. */
  public static final Formula CLOSURE_MARGIN =
      Formula.named("margin of the closure angle")
          .gives("m")
          .as("1 − k / tan(β)")
          .where("k", "slope of the contour", NamedUnit.NUMBER, 0, 10)
          .where("β", "greatest angle of closure", Angle.RADIAN, 0.01, 1.2)
          .from(Source.DEFINITION)
          .computedBy(MarginFormulas::closureMargin);

  /** Margin of the tail's movement. */
  public static final Formula MOVEMENT_MARGIN =
      Formula.named("margin of the tail's movement")
          .gives("m")
          .as("δ_max / δ − 1")
          .where("δ_max", "movement that is allowed, over the arm", NamedUnit.NUMBER, 0.0001, 0.5)
          .where("δ", "movement over the arm", NamedUnit.NUMBER, 1e-6, 10)
          .from(Source.DEFINITION)
          .computedBy(MarginFormulas::above);

  /** Margin of the saddle. */
  public static final Formula SADDLE_MARGIN =
      Formula.named("margin of the saddle")
          .gives("m")
          .as("l / (c + t) − 1")
          .where("l", "length of the thick part", Length.METRE, 0.001, 100)
          .where("c", "root chord", Length.METRE, 0.001, 20)
          .where("t", "travel of the wing", Length.METRE, 0, 10)
          .from(Source.DEFINITION)
          .computedBy(MarginFormulas::saddleMargin);

  /** Moment of mass about the nose. */
  public static final Formula MASS_MOMENT =
      Formula.named("moment of mass about the nose")
          .gives("M", NamedUnit.KILOGRAM_METRE)
          .as("m·x")
          .where("m", "mass", Mass.KILOGRAM, 0, 100000.0)
          .where("x", "distance from the nose tip", Length.METRE, 0, 100)
          .from(Source.DEFINITION)
          .computedBy(MarginFormulas::multiple);

  /** Centre of gravity. */
  public static final Formula CENTRE_OF_GRAVITY =
      Formula.named("centre of gravity")
          .gives("x_g", Length.METRE)
          .as("M / m")
          .where("M", "moment about the nose", NamedUnit.KILOGRAM_METRE, -1000000.0, 1000000.0)
          .where("m", "mass", Mass.KILOGRAM, 1e-6, 100000.0)
          .from(Source.DEFINITION)
          .computedBy(MarginFormulas::centre);

  /** Margin of the balance. */
  public static final Formula BALANCE_MARGIN =
      Formula.named("margin of the balance")
          .gives("m")
          .as("s − x_g / L")
          .where("s", "wanted centre of gravity over the length", NamedUnit.NUMBER, 0, 1)
          .where("x_g", "centre of gravity", Length.METRE, 0, 100)
          .where("L", "length", Length.METRE, 0.001, 100)
          .from(Source.DEFINITION)
          .computedBy(MarginFormulas::balanceMargin);

  private MarginFormulas() {}

  /**
   * Margin above the least.
   *
   * @param value what is attained
   * @param least what is asked, of the same unit, positive
   * @return its part above what is asked; 12 for 10 is 0.2
   */
  public static double above(double value, double least) {
    return value / least - 1.0;
  }

  /**
   * Margin below the greatest.
   *
   * @param value what is attained
   * @param most what is allowed, of the same unit, positive
   * @return its part below what is allowed; 8 for 10 is 0.2
   */
  public static double below(double value, double most) {
    return 1.0 - value / most;
  }

  /**
   * Distance from the diameter that is wanted.
   *
   * @param diameter diameter d [m]
   * @param wanted diameter that is wanted d_0 [m]
   * @return m = 0 − |d / d_0 − 1|
   */
  public static double near(double diameter, double wanted) {
    return -Math.abs(diameter / wanted - 1.0);
  }

  /**
   * A multiple.
   *
   * @param factor a factor
   * @param value what is multiplied [SI]
   * @return their product [SI]
   */
  public static double multiple(double factor, double value) {
    return factor * value;
  }

  /**
   * Greatest length in segments.
   *
   * @param pieces pieces n
   * @param part longest part p [m]
   * @param joint overlap of a joint j [m]
   * @return L_max = n·p − (n − 1)·j [m]
   */
  public static double segmented(double pieces, double part, double joint) {
    return pieces * part - (pieces - 1.0) * joint;
  }

  /**
   * Least length for the tail arm.
   *
   * @param arm tail arm a [m]
   * @param outside share of the length outside the arm k
   * @return L_min = a / (1 − k) [m]
   */
  public static double lengthForArm(double arm, double outside) {
    return arm / (1.0 - outside);
  }

  /**
   * Moment of the ballast about the wanted centre of gravity.
   *
   * @param ballast most ballast m_b [kg]
   * @param wanted wanted centre of gravity over the length s_t
   * @param length length L [m]
   * @param place distance of the ballast from the nose x_b [m]
   * @return M_b = m_b·(s_t·L − x_b) [kg·m]; negative where the ballast lies behind the wanted centre of gravity
   */
  public static double ballastMoment(double ballast, double wanted, double length, double place) {
    return ballast * (wanted * length - place);
  }

  /**
   * Moment that the ballast has to balance.
   *
   * @param empty mass without ballast m [kg]
   * @param found centre of gravity without ballast over the length s_s
   * @param wanted wanted centre of gravity over the length s_t
   * @param length length L [m]
   * @return M_r = m·(s_s − s_t)·L [kg·m]
   */
  public static double momentToBalance(double empty, double found, double wanted, double length) {
    return empty * (found - wanted) * length;
  }

  /**
   * Least diameter around the wing.
   *
   * @param thickness thickness of the wing t [m]
   * @param wall wall that remains w [m]
   * @param height height of the wing over the radius k
   * @return d_min = (t + 2·w) / (1 − k) [m]
   */
  public static double diameterForWing(double thickness, double wall, double height) {
    return (thickness + 2.0 * wall) / (1.0 - height);
  }

  /**
   * Margin of the fineness ratio.
   *
   * @param fineness fineness ratio f
   * @param least least fineness ratio f_min
   * @param most greatest fineness ratio f_max
   * @return m = min(f / f_min − 1, 1 − f / f_max)
   */
  public static double finenessMargin(double fineness, double least, double most) {
    return Math.min(fineness / least - 1.0, 1.0 - fineness / most);
  }

  /**
   * Volume that the contents need.
   *
   * @param contents volume of the contents V_c [m³]
   * @param packing packing fraction φ
   * @return V_min = V_c / φ [m³]
   */
  public static double volumeNeeded(double contents, double packing) {
    return contents / packing;
  }

  /**
   * Diameter that the family can form.
   *
   * @param diameter diameter d [m]
   * @param length length L [m]
   * @param least least fineness ratio of the family f_s
   * @return d_s = min(d, L / f_s) [m]
   */
  public static double stoutest(double diameter, double length, double least) {
    return Math.min(diameter, length / least);
  }

  /**
   * Load that the section carries in compression.
   *
   * @param stress compressive strength σ [Pa]
   * @param wall wall thickness w [m]
   * @param diameter diameter d [m]
   * @return F_c = σ·π·min(w, d/2)·max(d − w, d/2) [N]
   */
  public static double compressiveLoad(double stress, double wall, double diameter) {
    return stress * Math.PI * Math.min(wall, 0.5 * diameter) * Math.max(diameter - wall, 0.5 * diameter);
  }

  /**
   * Load at which the body buckles as a whole.
   *
   * @param stiffness bending stiffness EI [N·m²]
   * @param length length L [m]
   * @return F_b = π²·EI / L² [N]
   */
  public static double bucklingLoad(double stiffness, double length) {
    return Math.PI * Math.PI * stiffness / (length * length);
  }

  /**
   * Margin of the body as a strut.
   *
   * @param compression load in compression F_c [N]
   * @param buckling load in buckling F_b [N]
   * @param force force of the impact F [N]
   * @return m = min(F_c, F_b) / F − 1
   */
  public static double strutMargin(double compression, double buckling, double force) {
    return Math.min(compression, buckling) / force - 1.0;
  }

  /**
   * Height of the eye above the axis.
   *
   * @param top top of the greatest section over the diameter b
   * @param diameter diameter d [m]
   * @param below eye below the top e [m]
   * @return z_e = b·d − e [m]
   */
  public static double eyeHeight(double top, double diameter, double below) {
    return top * diameter - below;
  }

  /**
   * Clearance as a part of a length.
   *
   * @param clearance least clearance c [m]
   * @param length length that it is measured by x [m]
   * @return m = c / x
   */
  public static double clearance(double clearance, double length) {
    return clearance / length;
  }

  /**
   * Height of the centre of gravity above the ground.
   *
   * @param strut height of the belly above the ground h_s [m]
   * @param belly belly below the axis over the diameter b
   * @param diameter diameter d [m]
   * @param gravity centre of gravity above the axis z_g [m]
   * @return h = max(h_s + b·d + z_g, 0.000000001) [m]
   */
  public static double gravityHeight(double strut, double belly, double diameter, double gravity) {
    return Math.max(strut + belly * diameter + gravity, 1e-9);
  }

  /**
   * Margin against falling on the tail.
   *
   * @param wheels wheels over the length s_w
   * @param gravity centre of gravity over the length s_g
   * @param length length L [m]
   * @param height height of the centre of gravity h [m]
   * @param angle tip-back angle β [rad]
   * @return m = (s_w − s_g)·L / (h·tan(β)) − 1
   */
  public static double tipBackMargin(double wheels, double gravity, double length, double height, double angle) {
    return (wheels - gravity) * length / (height * Math.tan(angle)) - 1.0;
  }

  /**
   * Margin of the closure angle.
   *
   * @param slope slope of the contour k
   * @param angle greatest angle of closure β [rad]
   * @return m = 1 − k / tan(β)
   */
  public static double closureMargin(double slope, double angle) {
    return 1.0 - slope / Math.tan(angle);
  }

  /**
   * Margin of the saddle.
   *
   * @param thick length of the thick part l [m]
   * @param chord root chord c [m]
   * @param travel travel of the wing t [m]
   * @return m = l / (c + t) − 1
   */
  public static double saddleMargin(double thick, double chord, double travel) {
    return thick / (chord + travel) - 1.0;
  }

  /**
   * Centre of gravity.
   *
   * @param moment moment about the nose in kg·m M
   * @param mass mass m [kg]
   * @return x_g = M / m [m]
   */
  public static double centre(double moment, double mass) {
    return moment / mass;
  }

  /**
   * Margin of the balance.
   *
   * @param wanted wanted centre of gravity over the length s
   * @param place centre of gravity x_g [m]
   * @param length length L [m]
   * @return m = s − x_g / L
   */
  public static double balanceMargin(double wanted, double place, double length) {
    return wanted - place / length;
  }
}
