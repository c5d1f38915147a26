// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Length;

/**
 * The formulas of the straight-tapered planform, symmetric about its root.
 *
 * <p>Symbols: span b, reference area S, aspect ratio A, taper ratio λ = c_t/c_r, root chord c_r, tip chord c_t, mean
 * aerodynamic chord c̄ and its distance ȳ from the root, sweep Λ_n of the line at the fraction n of the chord. All follow
 * from S = ∫c dy and c̄ = (1/S)·∫c² dy over the span; they are exact.
 */
public final class TaperedPlanform {
  private static final Source GEOMETRY = Source.DEFINITION;

  /** Area from span and aspect ratio. */
  public static final Formula AREA =
      Formula.named("reference area")
          .gives("S", Area.SQUARE_METRE)
          .as("b² / A")
          .where("b", "span", Length.METRE, 0.01, 100)
          .where("A", "aspect ratio", 0.1, 60)
          .from(GEOMETRY)
          .computedBy(TaperedPlanform::area);

  /** Span from area and aspect ratio. */
  public static final Formula SPAN =
      Formula.named("span")
          .gives("b", Length.METRE)
          .as("√(S·A)")
          .where("S", "reference area", Area.SQUARE_METRE, 1e-4, 1000)
          .where("A", "aspect ratio", 0.1, 60)
          .from(GEOMETRY)
          .computedBy(TaperedPlanform::span);

  /** Aspect ratio from span and area. */
  public static final Formula ASPECT_RATIO =
      Formula.named("aspect ratio")
          .gives("A")
          .as("b² / S")
          .where("b", "span", Length.METRE, 0.01, 100)
          .where("S", "reference area", Area.SQUARE_METRE, 1e-4, 1000)
          .from(GEOMETRY)
          .computedBy(TaperedPlanform::aspectRatio);

  /** Root chord from area, span and taper ratio. */
  public static final Formula ROOT_CHORD =
      Formula.named("root chord")
          .gives("c_r", Length.METRE)
          .as("2·S / (b·(1 + λ))")
          .where("S", "reference area", Area.SQUARE_METRE, 1e-4, 1000)
          .where("b", "span", Length.METRE, 0.01, 100)
          .where("λ", "taper ratio", 0, 1.5)
          .from(GEOMETRY)
          .computedBy(TaperedPlanform::rootChord);

  /** Tip chord from root chord and taper ratio. */
  public static final Formula TIP_CHORD =
      Formula.named("tip chord")
          .gives("c_t", Length.METRE)
          .as("λ·c_r")
          .where("λ", "taper ratio", 0, 1.5)
          .where("c_r", "root chord", Length.METRE, 0.001, 20)
          .from(GEOMETRY)
          .computedBy(TaperedPlanform::tipChord);

  /** Mean aerodynamic chord. */
  public static final Formula MEAN_AERODYNAMIC_CHORD =
      Formula.named("mean aerodynamic chord")
          .gives("c̄", Length.METRE)
          .as("2/3·c_r·(1 + λ + λ²) / (1 + λ)")
          .where("c_r", "root chord", Length.METRE, 0.001, 20)
          .where("λ", "taper ratio", 0, 1.5)
          .from(GEOMETRY)
          .computedBy(TaperedPlanform::meanAerodynamicChord);

  /** Distance of the mean aerodynamic chord from the root. */
  public static final Formula MEAN_AERODYNAMIC_CHORD_POSITION =
      Formula.named("spanwise place of the mean aerodynamic chord")
          .gives("ȳ", Length.METRE)
          .as("b/6·(1 + 2·λ) / (1 + λ)")
          .where("b", "span", Length.METRE, 0.01, 100)
          .where("λ", "taper ratio", 0, 1.5)
          .from(GEOMETRY)
          .computedBy(TaperedPlanform::meanAerodynamicChordPosition);

  /** Sweep at another fraction of the chord. */
  public static final Formula SWEEP_TANGENT =
      Formula.named("tangent of the sweep at another fraction of the chord")
          .gives("t_n")
          .as("t_m − 4/A·(n − m)·(1 − λ) / (1 + λ)")
          .where("t_m", "tangent of the sweep at the fraction m", -6, 6)
          .where("m", "chord fraction where it is known", 0, 1)
          .where("n", "chord fraction where it is asked for", 0, 1)
          .where("A", "aspect ratio", 0.1, 60)
          .where("λ", "taper ratio", 0, 1.5)
          .from(GEOMETRY)
          .computedBy(TaperedPlanform::sweepTangent);

  private TaperedPlanform() {}

  /**
   * Reference area.
   *
   * <pre>{@code S = b²/A}</pre>
   *
   * @param span span b [m]
   * @param aspectRatio aspect ratio A
   * @return S [m²]
   */
  public static double area(double span, double aspectRatio) {
    return span * span / aspectRatio;
  }

  /**
   * Span.
   *
   * <pre>{@code b = √(S·A)}</pre>
   *
   * @param area reference area S [m²]
   * @param aspectRatio aspect ratio A
   * @return b [m]
   */
  public static double span(double area, double aspectRatio) {
    return Math.sqrt(area * aspectRatio);
  }

  /**
   * Aspect ratio.
   *
   * <pre>{@code A = b²/S}</pre>
   *
   * @param span span b [m]
   * @param area reference area S [m²]
   * @return A
   */
  public static double aspectRatio(double span, double area) {
    return span * span / area;
  }

  /**
   * Root chord.
   *
   * <pre>{@code c_r = 2·S/(b·(1 + λ))}</pre>
   *
   * @param area reference area S [m²]
   * @param span span b [m]
   * @param taperRatio taper ratio λ
   * @return c_r [m]
   */
  public static double rootChord(double area, double span, double taperRatio) {
    return 2.0 * area / (span * (1.0 + taperRatio));
  }

  /**
   * Tip chord.
   *
   * <pre>{@code c_t = λ·c_r}</pre>
   *
   * @param taperRatio taper ratio λ
   * @param rootChord root chord c_r [m]
   * @return c_t [m]
   */
  public static double tipChord(double taperRatio, double rootChord) {
    return taperRatio * rootChord;
  }

  /**
   * Mean aerodynamic chord.
   *
   * <pre>{@code c̄ = 2/3·c_r·(1 + λ + λ²)/(1 + λ)}</pre>
   *
   * @param rootChord root chord c_r [m]
   * @param taperRatio taper ratio λ
   * @return c̄ [m]; with c_r = 60 mm and λ = 0.5 it is 46.6667 mm
   */
  public static double meanAerodynamicChord(double rootChord, double taperRatio) {
    return 2.0 / 3.0 * rootChord * (1.0 + taperRatio + taperRatio * taperRatio) / (1.0 + taperRatio);
  }

  /**
   * Distance of the mean aerodynamic chord from the plane of symmetry.
   *
   * <pre>{@code ȳ = b/6·(1 + 2λ)/(1 + λ)}</pre>
   *
   * @param span span b [m]
   * @param taperRatio taper ratio λ
   * @return ȳ [m]
   */
  public static double meanAerodynamicChordPosition(double span, double taperRatio) {
    return span / 6.0 * (1.0 + 2.0 * taperRatio) / (1.0 + taperRatio);
  }

  /**
   * Tangent of the sweep at another fraction of the chord.
   *
   * <pre>{@code tan Λ_n = tan Λ_m − 4/A·(n − m)·(1 − λ)/(1 + λ)}</pre>
   *
   * @param tangent tan Λ_m
   * @param from chord fraction m
   * @param to chord fraction n
   * @param aspectRatio aspect ratio A
   * @param taperRatio taper ratio λ
   * @return tan Λ_n; from 0 at the quarter chord to the leading edge, A = 8 and λ = 0.5: 0.0416667
   */
  public static double sweepTangent(double tangent, double from, double to, double aspectRatio, double taperRatio) {
    return tangent - 4.0 / aspectRatio * (to - from) * (1.0 - taperRatio) / (1.0 + taperRatio);
  }
}
