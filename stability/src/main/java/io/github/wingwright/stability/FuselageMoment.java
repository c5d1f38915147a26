// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.quantity.Volume;
import java.util.Objects;

/**
 * The pitching-moment slope of a fuselage or nacelle, C_mα,f = dC_m/dα [1/rad] on S·c̄, positive: it destabilises.
 *
 * <p>A body at an angle feels no lift in ideal flow but a pure couple: suction on the upper side of the nose, on the lower
 * side of the tail. So the couple is the same about every point.
 */
public final class FuselageMoment {
  /** Munk's couple. */
  public static final Formula MUNK =
      Formula.named("moment slope of the fuselage, Munk")
          .gives("C_mα,f", NamedUnit.PER_RADIAN)
          .as("2·k·Q / (S·c̄)")
          .where("k", "apparent-mass factor k₂ − k₁", 0, 1)
          .where("Q", "volume of the fuselage", Volume.CUBIC_METRE, 1e-7, 2000)
          .where("S", "wing reference area", Area.SQUARE_METRE, 1e-4, 1000)
          .where("c̄", "mean aerodynamic chord", Length.METRE, 0.005, 20)
          .from(Sources.MUNK)
          .computedBy(FuselageMoment::munk);

  /** Gilruth and White's factor. */
  public static final Formula FACTOR =
      Formula.named("moment slope of the fuselage, by the fuselage factor")
          .gives("C_mα,f", NamedUnit.PER_RADIAN)
          .as("K_f·w²·L / (S·c̄)")
          .where("K_f", "fuselage factor", NamedUnit.PER_RADIAN, 0.1, 1.2)
          .where("w", "greatest width of the fuselage", Length.METRE, 0.003, 10)
          .where("L", "length of the fuselage", Length.METRE, 0.03, 100)
          .where("S", "wing reference area", Area.SQUARE_METRE, 1e-4, 1000)
          .where("c̄", "mean aerodynamic chord", Length.METRE, 0.005, 20)
          .from(Sources.GILRUTH_WHITE)
          .computedBy(FuselageMoment::byFactor);

  /** Multhopp's strips, summed. */
  public static final Formula STRIPS =
      Formula.named("moment slope of the fuselage, by strips")
          .gives("C_mα,f", NamedUnit.PER_RADIAN)
          .as("½·π·I / (S·c̄)")
          .where("I", "integral of width² · flow gradient over length", Volume.CUBIC_METRE, -2000, 2000)
          .where("S", "wing reference area", Area.SQUARE_METRE, 1e-4, 1000)
          .where("c̄", "mean aerodynamic chord", Length.METRE, 0.005, 20)
          .from(Sources.MULTHOPP)
          .computedBy(FuselageMoment::strips);

  static final Formula PLACE =
      Formula.named("quarter root chord along the fuselage")
          .gives("p")
          .as("(x + ¼·c_r) / L")
          .where("x", "root leading edge behind the nose", Length.METRE, 0, 100)
          .where("c_r", "root chord of the wing", Length.METRE, 0.005, 20)
          .where("L", "length of the fuselage", Length.METRE, 0.03, 100)
          .from(Source.DEFINITION)
          .computedBy((double x, double chord, double length) -> (x + 0.25 * chord) / length);

  static final int STRIPS_PER_PART = 60;
  private static final double FIRST_PLACE = 0.1;
  private static final double PLACE_STEP = 0.1;
  private static final double[] FACTORS = {0.115, 0.172, 0.344, 0.487, 0.688, 0.888, 1.146};

  private FuselageMoment() {}

  /**
   * Munk's couple of a slender body: {@code M = q·(k₂ − k₁)·Q·sin 2α}.
   *
   * <p>Example: k₂ − k₁ = 0.8719, 100 cm³ on S = 200 cm², c̄ = 50 mm give 0.1744 per radian.
   *
   * @param factor k₂ − k₁, from {@link ApparentMass#munkFactor}
   * @param volume volume Q of the body [m³]
   * @param wingArea S [m²], positive
   * @param chord c̄ [m], positive
   * @return C_mα,f [1/rad]
   */
  public static double munk(double factor, double volume, double wingArea, double chord) {
    return 2.0 * factor * volume / (wingArea * chord);
  }

  /**
   * By the fuselage factor of Gilruth and White.
   *
   * <p>Example: the light twin of the checks, K_f = 0.015 per degree, w = 5 ft, L = 31.6 ft, S = 134 ft², c̄ = 4.3 ft, has
   * 1.178 per radian.
   *
   * @param factor K_f [1/rad], from {@link #factor}
   * @param width greatest width w [m]
   * @param length length L [m]
   * @param wingArea S [m²], positive
   * @param chord c̄ [m], positive
   * @return C_mα,f [1/rad]
   */
  public static double byFactor(double factor, double width, double length, double wingArea, double chord) {
    return factor * width * width * length / (wingArea * chord);
  }

  /**
   * The fuselage factor, interpolated on the straight between its tabulated points; held at the ends.
   *
   * @param place quarter point of the root chord over the length of the body
   * @return K_f [1/rad]; at 0.3 it is 0.344
   */
  public static double factor(double place) {
    double t = (place - FIRST_PLACE) / PLACE_STEP;
    if (t <= 0.0) {
      return FACTORS[0];
    }
    int i = (int) t;
    if (i >= FACTORS.length - 1) {
      return FACTORS[FACTORS.length - 1];
    }
    return FACTORS[i] + (t - i) * (FACTORS[i + 1] - FACTORS[i]);
  }

  /**
   * Multhopp's strips, summed already.
   *
   * <p>Example: a strip sum of 85.1 ft³ on S = 184 ft², c̄ = 5.7 ft gives 0.1275 per radian.
   *
   * @param integral I = ∫ w²·(∂ε_u/∂α) dx [m³]
   * @param wingArea S [m²], positive
   * @param chord c̄ [m], positive
   * @return C_mα,f [1/rad]
   */
  public static double strips(double integral, double wingArea, double chord) {
    return 0.5 * Math.PI * integral / (wingArea * chord);
  }

  /**
   * The strip integral over a body of revolution.
   *
   * <p>Ahead of the wing the flow turns up more than the aircraft does: {@code 1 − F(−x)·2·a_w/(π·A)}, with the upwash
   * of an elliptic lifting line at x semispans ahead of the root quarter chord. Along the root chord the wing straightens
   * the flow: nothing. Behind it the gradient grows from nothing to that of the tail: {@code (x/l)·(1 − ε_α)}.
   *
   * @param shape family of the body
   * @param length length L [m]
   * @param diameter greatest diameter d [m]
   * @param rootLeadingEdge x of the wing's root leading edge [m] behind the nose
   * @param rootChord root chord [m]
   * @param semispan b/2 [m]
   * @param farDownwash 2·a_w/(π·A)
   * @param tailGradient 1 − ε_α, 1 for an aircraft without a tail
   * @param tailArm distance from the root trailing edge to the tail's quarter chord [m], positive
   * @param strips how many strips ahead of the wing, and as many behind it, 1 to 1,000,000
   * @return I [m³]
   */
  public static double stripIntegral(
      BodyShape shape,
      double length,
      double diameter,
      double rootLeadingEdge,
      double rootChord,
      double semispan,
      double farDownwash,
      double tailGradient,
      double tailArm,
      int strips) {
    Objects.requireNonNull(shape, "shape");
    Door.within(strips, 1, 1_000_000, "number of strips");
    double ahead = 0.0;
    double front = Math.max(0.0, Math.min(rootLeadingEdge, length));
    double step = front / strips;
    for (int i = 0; i < strips; i++) {
      double x = (i + 0.5) * step;
      double width = 2.0 * shape.radius(x, length, diameter);
      double distance = -(rootLeadingEdge + 0.25 * rootChord - x) / semispan;
      double upwash =
          DownwashFormulas.ellipticFactor(distance, DownwashFormulas.ellipticIntegral(distance)) * farDownwash;
      ahead += width * width * (1.0 - upwash);
    }
    double behind = 0.0;
    double trailing = Math.max(0.0, Math.min(rootLeadingEdge + rootChord, length));
    double rear = (length - trailing) / strips;
    for (int i = 0; i < strips; i++) {
      double x = trailing + (i + 0.5) * rear;
      double width = 2.0 * shape.radius(x, length, diameter);
      behind += width * width * Math.min(1.0, (x - trailing) / tailArm) * tailGradient;
    }
    return ahead * step + behind * rear;
  }
}
