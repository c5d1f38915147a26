// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Guideline;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import java.util.Objects;

/**
 * Drag of the end of a body that form factors do not know: swept up, or cut off.
 *
 * <p>As drag areas D/q [m²].
 */
public final class AfterbodyDrag {
  /** Angle at which a tail closes, against separation. */
  public static final Guideline CLOSURE =
      new Guideline(
          "half-angle at which the tail closes",
          Interval.between(0.0, Math.toRadians(12.0)),
          Angle.DEGREE,
          "attached afterbodies",
          "A steeper tail separates; from about 20° on, count its end as a base.",
          Sources.raymer("p. 215, fig. 8.2; p. 428"));

  /** Drag area of an upswept afterbody. */
  public static final Formula UPSWEEP =
      Formula.named("drag area of the upsweep")
          .gives("D/q", Area.SQUARE_METRE)
          .as("3.83·u^2.5·A_max")
          .where("u", "upsweep of the afterbody's centre line", Angle.RADIAN, 0, 0.45)
          .where("A_max", "greatest cross-section", Area.SQUARE_METRE, 1e-6, 100)
          .from(Sources.raymer("eq. 12.36"))
          .computedBy(AfterbodyDrag::upsweep);

  /** Drag area of a base. */
  public static final Formula BASE =
      Formula.named("drag area of the base")
          .gives("D/q", Area.SQUARE_METRE)
          .as("(0.139 + 0.419·(M − 0.161)²)·A_b")
          .where("M", "Mach number", 0, 0.9)
          .where("A_b", "area of the base", Area.SQUARE_METRE, 0, 100)
          .from(Sources.raymer("eq. 12.37"))
          .computedBy(AfterbodyDrag::base);

  /** Drag area of a base behind a layer that shields it. */
  public static final Formula SHIELDED_BASE =
      Formula.named("drag area of the base behind a thick layer")
          .gives("D/q", Area.SQUARE_METRE)
          .as("0.029 / √(F/A_b)·A_b")
          .where("F", "drag area of the body in front of the base", Area.SQUARE_METRE, 1e-7, 100)
          .where("A_b", "area of the base", Area.SQUARE_METRE, 1e-7, 100)
          .from(Sources.hoerner("ch. 3, blunt-based bodies of revolution"))
          .computedBy(AfterbodyDrag::shieldedBase);

  /** Half-angle from which a tail is taken as separated, and its end counted as a base. */
  public static final double SEPARATES_FROM = Math.toRadians(20.0);

  /** Diameter of the base of a boat-tail. */
  public static final Formula BASE_DIAMETER =
      Formula.named("diameter of the base of a boat-tail")
          .gives("d_b", Length.METRE)
          .as("max(0, d − 2·n·tan(β))")
          .where("d", "greatest diameter", Length.METRE, 0.001, 10)
          .where("n", "length of the boat-tail", Length.METRE, 0, 10)
          .where("β", "half-angle of closure", Angle.RADIAN, 0, 0.35)
          .from(Source.DEFINITION)
          .computedBy(AfterbodyDrag::baseDiameter);

  private AfterbodyDrag() {}

  /**
   * Diameter of the base that a conical boat-tail leaves.
   *
   * <pre>{@code d_b = max(0, d − 2·n·tan β)}</pre>
   *
   * <p>Example: d = 24 mm, n = 30 mm, β = 8° gives 15.5675 mm.
   *
   * @param diameter greatest diameter d [m]
   * @param length length of the boat-tail n [m]
   * @param halfAngle half-angle of closure β [rad], 0 to 20°
   * @return d_b [m]
   */
  public static double baseDiameter(double diameter, double length, double halfAngle) {
    return Math.max(0.0, diameter - 2.0 * length * Math.tan(halfAngle));
  }

  /**
   * Area of the base of a body with a conical tail. A tail that closes at 20° or more is taken as separated from its
   * beginning: its base is the whole section.
   *
   * @param diameter greatest diameter, positive
   * @param tailLength length of the tail, not negative
   * @param halfAngle half-angle at which it closes, 0 to 90°
   * @return the base: of the cut-off cone, or the whole section if the tail separates
   */
  public static Area baseArea(Length diameter, Length tailLength, Angle halfAngle) {
    Door.positive(diameter, "diameter");
    Door.notNegative(tailLength, "length of the tail");
    Door.within(halfAngle, Angle.ZERO, Angle.degrees(90), "half-angle of closure");
    double base =
        halfAngle.si() >= SEPARATES_FROM
            ? diameter.si()
            : baseDiameter(diameter.si(), tailLength.si(), halfAngle.si());
    return Area.squareMetres(0.25 * Math.PI * base * base);
  }

  /**
   * Drag area of an upswept afterbody.
   *
   * <pre>{@code D/q = 3.83·u^2.5·A_max}</pre>
   *
   * <p>Example: u = 10°, A_max = 1 m² gives 0.0487408 m².
   *
   * @param upsweep upsweep of the centre line u [rad], not negative
   * @param greatestSection greatest cross-section A_max [m²]
   * @return D/q [m²]
   */
  public static double upsweep(double upsweep, double greatestSection) {
    return 3.83 * upsweep * upsweep * Math.sqrt(upsweep) * greatestSection;
  }

  /**
   * Drag area of a base, below the speed of sound.
   *
   * <pre>{@code D/q = [0.139 + 0.419·(M − 0.161)²]·A_b}</pre>
   *
   * <p>Example: M = 0.1, A_b = 1 m² gives 0.140559 m².
   *
   * @param mach Mach number M
   * @param baseArea area of the base A_b [m²]
   * @return D/q [m²]
   */
  public static double base(double mach, double baseArea) {
    double over = mach - 0.161;
    return (0.139 + 0.419 * over * over) * baseArea;
  }

  /**
   * Drag area of a base behind a body whose layer is thick: the thicker, the less suction on the base. For small bodies of
   * revolution.
   *
   * <pre>{@code C_D,b = 0.029/√C_fB        C_fB = F/A_b}</pre>
   *
   * <p>Example: F = 4 cm², A_b = 4 cm² gives 0.116 cm².
   *
   * @param forebodyDragArea drag area of the body in front of the base F [m²], positive
   * @param baseArea area of the base A_b [m²], positive
   * @return D/q [m²]
   */
  public static double shieldedBase(double forebodyDragArea, double baseArea) {
    return 0.029 / Math.sqrt(forebodyDragArea / baseArea) * baseArea;
  }
}
