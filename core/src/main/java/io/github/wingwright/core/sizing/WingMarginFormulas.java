// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.Acceleration;
import io.github.wingwright.core.quantity.Density;
import io.github.wingwright.core.quantity.KinematicViscosity;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.core.quantity.WingLoading;

/**
 * The formulas by which considerations on a wing's chord come to their margins: what is attained over what is asked, less
 * one, or the other way round where less is asked. They are what {@code WingConsideration.workings} prints.
 *
 * <p>Here m is a margin unless it is explained as a mass; zero or more means satisfied. The chord c is the mean geometric
 * chord of a straight-tapered wing.
 */
public final class WingMarginFormulas {
  /** Mean square of the chord over its squared mean. */
  public static final Formula MEAN_SQUARE_RATIO =
      Formula.named("mean square of the chord over its squared mean")
          .gives("κ", NamedUnit.NUMBER)
          .as("4/3·(1 + λ + λ²) / (1 + λ)²")
          .where("λ", "taper ratio", 0, 1.5)
          .from(Source.DEFINITION)
          .computedBy(WingMarginFormulas::meanSquareRatio);

  /** Root chord from the mean chord. */
  public static final Formula ROOT_CHORD =
      Formula.named("root chord from the mean chord")
          .gives("c_r", Length.METRE)
          .as("2 / (1 + λ)·c")
          .where("λ", "taper ratio", 0, 1.5)
          .where("c", "mean geometric chord", Length.METRE, 1e-3, 50)
          .from(Source.DEFINITION)
          .computedBy(WingMarginFormulas::rootChord);

  /** Smallest chord from the mean chord. */
  public static final Formula LEAST_CHORD =
      Formula.named("smallest chord from the mean chord")
          .gives("c_s", Length.METRE)
          .as("min(1, λ)·2 / (1 + λ)·c")
          .where("λ", "taper ratio", 0, 1.5)
          .where("c", "mean geometric chord", Length.METRE, 1e-3, 50)
          .from(Source.DEFINITION)
          .computedBy(WingMarginFormulas::leastChord);

  /** Thickness of the section there. */
  public static final Formula LOCAL_THICKNESS =
      Formula.named("thickness of the section there")
          .gives("t", Length.METRE)
          .as("τ·c")
          .where("τ", "thickness over chord", 0, 0.5)
          .where("c", "chord there", Length.METRE, 1e-4, 100)
          .from(Source.DEFINITION)
          .computedBy(WingMarginFormulas::thickness);

  /** Margin of the thickness. */
  public static final Formula THICKNESS_MARGIN =
      Formula.named("margin of the thickness")
          .gives("m", NamedUnit.NUMBER)
          .as("t / t_min − 1")
          .where("t", "thickness", Length.METRE, 1e-6, 20)
          .where("t_min", "least thickness", Length.METRE, 1e-5, 20)
          .from(Source.DEFINITION)
          .computedBy(WingMarginFormulas::above);

  /** Reynolds number on the mean chord. */
  public static final Formula REYNOLDS_NUMBER =
      Formula.named("Reynolds number on the mean chord")
          .gives("Re", NamedUnit.NUMBER)
          .as("V·c / ν")
          .where("V", "speed", Speed.METRE_PER_SECOND, 0.5, 150)
          .where("c", "mean geometric chord", Length.METRE, 1e-3, 50)
          .where("ν", "kinematic viscosity", KinematicViscosity.SQUARE_METRE_PER_SECOND, 1e-6, 1e-3)
          .from(Source.DEFINITION)
          .computedBy(WingMarginFormulas::reynoldsNumber);

  /** Margin of the Reynolds number. */
  public static final Formula REYNOLDS_MARGIN =
      Formula.named("margin of the Reynolds number")
          .gives("m", NamedUnit.NUMBER)
          .as("Re / Re_min − 1")
          .where("Re", "Reynolds number", 100, 1e9)
          .where("Re_min", "least Reynolds number", 100, 1e9)
          .from(Source.DEFINITION)
          .computedBy(WingMarginFormulas::above);

  /** Wing loading that the launch carries. */
  public static final Formula LOADING_AT_LAUNCH =
      Formula.named("wing loading that the launch carries")
          .gives("w", WingLoading.KILOGRAM_PER_SQUARE_METRE)
          .as("0.5·ρ·(V / n)²·C_L / g")
          .where("ρ", "air density", Density.KILOGRAM_PER_CUBIC_METRE, 0.01, 2)
          .where("V", "launch speed", Speed.METRE_PER_SECOND, 0.5, 150)
          .where("n", "launch speed over stall speed", 1, 3)
          .where("C_L", "usable lift coefficient", 0.05, 4)
          .where("g", "acceleration of gravity", Acceleration.METRE_PER_SECOND_SQUARED, 9.7, 9.9)
          .from(Source.DEFINITION)
          .computedBy(WingMarginFormulas::loadingAtLaunch);

  /** Mass that the wing carries. */
  public static final Formula MASS_CARRIED =
      Formula.named("mass that the wing carries")
          .gives("m_w", Mass.KILOGRAM)
          .as("w·b·c")
          .where("w", "wing loading", WingLoading.KILOGRAM_PER_SQUARE_METRE, 0.01, 10_000)
          .where("b", "span", Length.METRE, 0.01, 100)
          .where("c", "mean geometric chord", Length.METRE, 1e-3, 50)
          .from(Source.DEFINITION)
          .computedBy(WingMarginFormulas::massCarried);

  /** Mass of a wing that is solid. */
  public static final Formula SOLID_WING =
      Formula.named("mass of a wing that is solid")
          .gives("m_s", Mass.KILOGRAM)
          .as("ρ_w·a·κ·b·c²")
          .where("ρ_w", "density of the wing", Density.KILOGRAM_PER_CUBIC_METRE, 1, 20_000)
          .where("a", "area of the section over the chord squared", 1e-3, 0.5)
          .where("κ", "mean square of the chord over its squared mean", 1, 1.34)
          .where("b", "span", Length.METRE, 0.01, 100)
          .where("c", "mean geometric chord", Length.METRE, 1e-3, 50)
          .from(Source.DEFINITION)
          .computedBy(WingMarginFormulas::solidWing);

  /** Mass with the wing. */
  public static final Formula MASS_WITH_WING =
      Formula.named("mass with the wing")
          .gives("m_t", Mass.KILOGRAM)
          .as("m_r + m_s")
          .where("m_r", "mass of all but the wing", Mass.KILOGRAM, 0, 1e6)
          .where("m_s", "mass of the wing", Mass.KILOGRAM, 1e-6, 1e6)
          .from(Source.DEFINITION)
          .computedBy(WingMarginFormulas::massWithWing);

  /** Margin of the mass that is carried. */
  public static final Formula MASS_MARGIN =
      Formula.named("margin of the mass that is carried")
          .gives("m", NamedUnit.NUMBER)
          .as("m_w / m_t − 1")
          .where("m_w", "mass that the wing carries", Mass.KILOGRAM, 1e-5, 1e7)
          .where("m_t", "mass", Mass.KILOGRAM, 1e-5, 1e7)
          .from(Source.DEFINITION)
          .computedBy(WingMarginFormulas::above);

  /** Margin below the longest chord. */
  public static final Formula ROOT_CHORD_BELOW =
      Formula.named("margin below the longest chord")
          .gives("m", NamedUnit.NUMBER)
          .as("1 − c_r / c_max")
          .where("c_r", "root chord", Length.METRE, 1e-3, 100)
          .where("c_max", "longest chord", Length.METRE, 1e-3, 100)
          .from(Source.DEFINITION)
          .computedBy(WingMarginFormulas::below);

  /** Greatest span in pieces. */
  public static final Formula SPAN_IN_PIECES =
      Formula.named("greatest span in pieces")
          .gives("b_max", Length.METRE)
          .as("2·n·p")
          .where("n", "pieces of each half", 1, 50)
          .where("p", "longest part", Length.METRE, 0.01, 10)
          .from(Source.DEFINITION)
          .computedBy(WingMarginFormulas::spanInPieces);

  /** Margin below the greatest span. */
  public static final Formula SPAN_BELOW =
      Formula.named("margin below the greatest span")
          .gives("m", NamedUnit.NUMBER)
          .as("1 − b / b_max")
          .where("b", "span", Length.METRE, 0.01, 100)
          .where("b_max", "greatest span", Length.METRE, 0.01, 1000)
          .from(Source.DEFINITION)
          .computedBy(WingMarginFormulas::below);

  /** Aspect ratio from span and mean chord. */
  public static final Formula ASPECT_RATIO =
      Formula.named("aspect ratio from span and mean chord")
          .gives("A", NamedUnit.NUMBER)
          .as("b / c")
          .where("b", "span", Length.METRE, 0.01, 100)
          .where("c", "mean geometric chord", Length.METRE, 1e-3, 50)
          .from(Source.DEFINITION)
          .computedBy(WingMarginFormulas::aspectRatio);

  /** Margin of the aspect ratio. */
  public static final Formula ASPECT_RATIO_MARGIN =
      Formula.named("margin of the aspect ratio")
          .gives("m", NamedUnit.NUMBER)
          .as("min(A / A_min − 1, 1 − A / A_max)")
          .where("A", "aspect ratio", 0.5, 60)
          .where("A_min", "least aspect ratio", 0.5, 60)
          .where("A_max", "greatest aspect ratio", 0.5, 60)
          .from(Source.DEFINITION)
          .computedBy(WingMarginFormulas::between);

  private WingMarginFormulas() {}

  /**
   * Mean square of the chord over its squared mean: what a solid wing weighs by.
   *
   * @param taperRatio taper ratio λ, 0 or more
   * @return κ; 4/3 of a wing that comes to a point
   */
  public static double meanSquareRatio(double taperRatio) {
    double sum = 1.0 + taperRatio;
    return 4.0 / 3.0 * (1.0 + taperRatio + taperRatio * taperRatio) / (sum * sum);
  }

  /**
   * Root chord of a straight-tapered wing.
   *
   * @param taperRatio taper ratio λ, 0 or more
   * @param chord mean geometric chord c [m]
   * @return c_r [m]; 0.1 m of 0.08 m at a taper ratio of 0.6
   */
  public static double rootChord(double taperRatio, double chord) {
    return 2.0 / (1.0 + taperRatio) * chord;
  }

  /**
   * Smallest chord of a straight-tapered wing: at the tip, or at the root of one that widens.
   *
   * @param taperRatio taper ratio λ, 0 or more
   * @param chord mean geometric chord c [m]
   * @return c_s [m]; 0.06 m of 0.08 m at a taper ratio of 0.6
   */
  public static double leastChord(double taperRatio, double chord) {
    return Math.min(1.0, taperRatio) * 2.0 / (1.0 + taperRatio) * chord;
  }

  /**
   * Thickness of a section.
   *
   * @param ratio thickness over chord τ
   * @param chord chord there [m]
   * @return t [m]
   */
  public static double thickness(double ratio, double chord) {
    return ratio * chord;
  }

  /**
   * Reynolds number.
   *
   * @param speed speed V [m/s]
   * @param chord mean geometric chord c [m]
   * @param viscosity kinematic viscosity ν [m²/s], positive
   * @return Re; 20 000 of 50 mm at 6 m/s in 1.5e-5 m²/s
   */
  public static double reynoldsNumber(double speed, double chord, double viscosity) {
    return speed * chord / viscosity;
  }

  /**
   * Wing loading with which a throw is so many times as fast as the stall.
   *
   * @param density air density ρ [kg/m³]
   * @param launch launch speed V [m/s]
   * @param speedRatio launch speed over stall speed n, positive
   * @param lift usable lift coefficient C_L
   * @param gravity acceleration of gravity g [m/s²], positive
   * @return w [kg/m²]
   */
  public static double loadingAtLaunch(double density, double launch, double speedRatio, double lift, double gravity) {
    double stall = launch / speedRatio;
    return 0.5 * density * stall * stall * lift / gravity;
  }

  /**
   * Mass that a wing carries.
   *
   * @param loading wing loading w [kg/m²]
   * @param span span b [m]
   * @param chord mean geometric chord c [m]
   * @return m_w [kg]
   */
  public static double massCarried(double loading, double span, double chord) {
    return loading * span * chord;
  }

  /**
   * Mass of a wing that is solid, or of an even infill.
   *
   * @param density mass of the wing over its volume ρ_w [kg/m³]
   * @param area area of the section over the chord squared a
   * @param meanSquare mean square of the chord over its squared mean κ
   * @param span span b [m]
   * @param chord mean geometric chord c [m]
   * @return m_s [kg]
   */
  public static double solidWing(double density, double area, double meanSquare, double span, double chord) {
    return density * area * meanSquare * span * chord * chord;
  }

  /**
   * Mass with the wing.
   *
   * @param rest mass of all but the wing [kg]
   * @param wing mass of the wing [kg]
   * @return m_t [kg]
   */
  public static double massWithWing(double rest, double wing) {
    return rest + wing;
  }

  /**
   * Greatest span of a wing with so many pieces in each half.
   *
   * @param pieces pieces of each half n
   * @param part longest part p [m]
   * @return b_max [m]; 1.5 m of three pieces of 250 mm
   */
  public static double spanInPieces(double pieces, double part) {
    return 2.0 * pieces * part;
  }

  /**
   * Aspect ratio.
   *
   * @param span span b [m]
   * @param chord mean geometric chord c [m], positive
   * @return A; 5 of 400 mm over 80 mm
   */
  public static double aspectRatio(double span, double chord) {
    return span / chord;
  }

  /**
   * Margin above a least value.
   *
   * @param value what is attained
   * @param least what is asked, positive
   * @return m
   */
  public static double above(double value, double least) {
    return MarginFormulas.above(value, least);
  }

  /**
   * Margin below a greatest value.
   *
   * @param value what is attained
   * @param most what is allowed, positive
   * @return m
   */
  public static double below(double value, double most) {
    return MarginFormulas.below(value, most);
  }

  /**
   * Margin between a least and a greatest value.
   *
   * @param value what is attained
   * @param least least value, positive
   * @param most greatest value, positive
   * @return m; negative outside
   */
  public static double between(double value, double least, double most) {
    return Math.min(above(value, least), below(value, most));
  }
}
