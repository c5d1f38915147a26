// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Volume;

/**
 * The formulas of the bodies of revolution with a closed form: volume and wetted area.
 *
 * <p>Symbols: length L, greatest diameter d, fineness ratio f = L/d; nose and tail length n = f_n·d and t = f_t·d. They
 * follow from V = ∫ π·r² dx and S_wet = ∫ 2π·r·√(1 + r′²) dx and are exact. The wetted area is that of the closed body.
 */
public final class BodiesOfRevolution {
  private static final Source GEOMETRY = Source.DEFINITION;

  /** Fineness ratio. */
  public static final Formula FINENESS_RATIO =
      Formula.named("fineness ratio")
          .gives("f")
          .as("L / d")
          .where("L", "body length", Length.METRE, 0.01, 100)
          .where("d", "greatest diameter", Length.METRE, 0.001, 10)
          .from(GEOMETRY)
          .computedBy(BodiesOfRevolution::finenessRatio);

  /** Area of the greatest cross-section. */
  public static final Formula FRONTAL_AREA =
      Formula.named("frontal area")
          .gives("S_front", Area.SQUARE_METRE)
          .as("π/4·d²")
          .where("d", "greatest diameter", Length.METRE, 0.001, 10)
          .from(GEOMETRY)
          .computedBy(BodiesOfRevolution::frontalArea);

  /** Volume of a capsule. */
  public static final Formula CAPSULE_VOLUME =
      Formula.named("volume of a capsule")
          .gives("V", Volume.CUBIC_METRE)
          .as("π/4·d²·(L − d/3)")
          .where("L", "body length", Length.METRE, 0.01, 100)
          .where("d", "greatest diameter", Length.METRE, 0.001, 10)
          .from(GEOMETRY)
          .computedBy(BodiesOfRevolution::capsuleVolume);

  /** Wetted area of a capsule. */
  public static final Formula CAPSULE_WETTED_AREA =
      Formula.named("wetted area of a capsule")
          .gives("S_wet", Area.SQUARE_METRE)
          .as("π·d·L")
          .where("L", "body length", Length.METRE, 0.01, 100)
          .where("d", "greatest diameter", Length.METRE, 0.001, 10)
          .from(GEOMETRY)
          .computedBy(BodiesOfRevolution::capsuleWettedArea);

  /** Volume of a spheroid. */
  public static final Formula SPHEROID_VOLUME =
      Formula.named("volume of a prolate spheroid")
          .gives("V", Volume.CUBIC_METRE)
          .as("π/6·L·d²")
          .where("L", "body length", Length.METRE, 0.01, 100)
          .where("d", "greatest diameter", Length.METRE, 0.001, 10)
          .from(GEOMETRY)
          .computedBy(BodiesOfRevolution::spheroidVolume);

  /** Wetted area of a spheroid that is longer than it is thick. */
  public static final Formula SPHEROID_WETTED_AREA =
      Formula.named("wetted area of a prolate spheroid")
          .gives("S_wet", Area.SQUARE_METRE)
          .as("π/2·d²·(1 + f·asin(√(1 − 1/f²)) / √(1 − 1/f²))")
          .where("d", "greatest diameter", Length.METRE, 0.001, 10)
          .where("f", "fineness ratio", 1.001, 100)
          .from(GEOMETRY)
          .computedBy(BodiesOfRevolution::spheroidWettedArea);

  /** Volume of a half ellipsoid, cylinder and cone. */
  public static final Formula NOSE_CYLINDER_CONE_VOLUME =
      Formula.named("volume of a half ellipsoid, cylinder and cone")
          .gives("V", Volume.CUBIC_METRE)
          .as("π/4·d²·(L − f_n·d/3 − 2/3·f_t·d)")
          .where("L", "body length", Length.METRE, 0.01, 100)
          .where("d", "greatest diameter", Length.METRE, 0.001, 10)
          .where("f_n", "nose length over diameter", 0.5, 20)
          .where("f_t", "tail length over diameter", 0.05, 50)
          .from(GEOMETRY)
          .computedBy(BodiesOfRevolution::noseCylinderConeVolume);

  /** Wetted area of a half ellipsoid, cylinder and cone, the nose longer than a hemisphere. */
  public static final Formula NOSE_CYLINDER_CONE_WETTED_AREA =
      Formula.named("wetted area of a half ellipsoid, cylinder and cone")
          .gives("S_wet", Area.SQUARE_METRE)
          .as(
              "π/4·d²·(1 + 2·f_n·asin(√(1 − 1/(4·f_n²))) / √(1 − 1/(4·f_n²)))"
                  + " + π·d·(L − f_n·d − f_t·d) + π/4·d²·√(1 + 4·f_t²)")
          .where("L", "body length", Length.METRE, 0.01, 100)
          .where("d", "greatest diameter", Length.METRE, 0.001, 10)
          .where("f_n", "nose length over diameter", 0.501, 20)
          .where("f_t", "tail length over diameter", 0.05, 50)
          .from(GEOMETRY)
          .computedBy(BodiesOfRevolution::noseCylinderConeWettedArea);

  /** Volume of the body of least wave drag. */
  public static final Formula SEARS_HAACK_VOLUME =
      Formula.named("volume of a Sears-Haack body")
          .gives("V", Volume.CUBIC_METRE)
          .as("3/64·π²·L·d²")
          .where("L", "body length", Length.METRE, 0.01, 100)
          .where("d", "greatest diameter", Length.METRE, 0.001, 10)
          .from(GEOMETRY)
          .computedBy(BodiesOfRevolution::searsHaackVolume);

  private BodiesOfRevolution() {}

  /**
   * Fineness ratio.
   *
   * <pre>{@code f = L/d}</pre>
   *
   * @param length length L [m]
   * @param diameter greatest diameter d [m], positive
   * @return f
   */
  public static double finenessRatio(double length, double diameter) {
    return length / diameter;
  }

  /**
   * Area of the greatest cross-section.
   *
   * <pre>{@code S_front = π/4·d²}</pre>
   *
   * @param diameter greatest diameter d [m]
   * @return S_front [m²]
   */
  public static double frontalArea(double diameter) {
    return 0.25 * Math.PI * diameter * diameter;
  }

  /**
   * Volume of a cylinder between two hemispheres.
   *
   * <pre>{@code V = π/4·d²·(L − d) + π/6·d³ = π/4·d²·(L − d/3)}</pre>
   *
   * @param length length over all L [m], at least d
   * @param diameter diameter d [m]
   * @return V [m³]; with L = 300 mm and d = 60 mm it is 791.681 cm³
   */
  public static double capsuleVolume(double length, double diameter) {
    return 0.25 * Math.PI * diameter * diameter * (length - diameter / 3.0);
  }

  /**
   * Area of a cylinder between two hemispheres: that of a cylinder of the whole length.
   *
   * <pre>{@code S_wet = π·d·(L − d) + π·d² = π·d·L}</pre>
   *
   * @param length length over all L [m], at least d
   * @param diameter diameter d [m]
   * @return S_wet [m²]; with L = 300 mm and d = 60 mm it is 565.487 cm²
   */
  public static double capsuleWettedArea(double length, double diameter) {
    return Math.PI * diameter * length;
  }

  /**
   * Volume of an ellipse turned about its long axis.
   *
   * <pre>{@code V = π/6·L·d²}</pre>
   *
   * @param length length L [m]
   * @param diameter greatest diameter d [m]
   * @return V [m³]; with L = 300 mm and d = 60 mm it is 565.487 cm³
   */
  public static double spheroidVolume(double length, double diameter) {
    return Math.PI / 6.0 * length * diameter * diameter;
  }

  /**
   * Area of an ellipse turned about its long axis.
   *
   * <pre>{@code S_wet = π/2·d²·(1 + f·asin e/e),   e = √(1 − 1/f²)}</pre>
   *
   * @param diameter greatest diameter d [m]
   * @param fineness fineness ratio f, at least 1; for the sphere, f = 1, the limit π·d² is returned
   * @return S_wet [m²]; with d = 60 mm and f = 5 it is 451.733 cm²
   */
  public static double spheroidWettedArea(double diameter, double fineness) {
    return 0.5 * Math.PI * diameter * diameter * (1.0 + Ellipse.arcFactor(1.0 / fineness));
  }

  /**
   * Volume of a half ellipsoid, a cylinder and a cone.
   *
   * <pre>{@code V = π/4·d²·(2/3·n + (L − n − t) + 1/3·t) = π/4·d²·(L − 1/3·n − 2/3·t),   n = f_n·d,   t = f_t·d}</pre>
   *
   * @param length length L [m], at least n + t
   * @param diameter greatest diameter d [m]
   * @param noseFineness nose length over diameter f_n
   * @param tailFineness tail length over diameter f_t
   * @return V [m³]; with L = 300 mm, d = 30 mm, f_n = 1.5 and f_t = 3 it is 159.043 cm³
   */
  public static double noseCylinderConeVolume(
      double length, double diameter, double noseFineness, double tailFineness) {
    return 0.25
        * Math.PI
        * diameter
        * diameter
        * (length - noseFineness * diameter / 3.0 - 2.0 / 3.0 * tailFineness * diameter);
  }

  /**
   * Area of a half ellipsoid, a cylinder and a cone.
   *
   * <pre>{@code
   * S_wet = π/4·d²·(1 + 2·f_n·asin e/e) + π·d·(L − n − t) + π/4·d²·√(1 + 4·f_t²),   e = √(1 − 1/(4·f_n²))
   * }</pre>
   *
   * @param length length L [m], at least n + t
   * @param diameter greatest diameter d [m]
   * @param noseFineness nose length over diameter f_n, at least 0.5; for the hemisphere, 0.5, the limit is returned
   * @param tailFineness tail length over diameter f_t
   * @return S_wet [m²]; with L = 300 mm, d = 30 mm, f_n = 1.5 and f_t = 3 it is 233.261 cm²
   */
  public static double noseCylinderConeWettedArea(
      double length, double diameter, double noseFineness, double tailFineness) {
    double cylinder = Math.PI * diameter * (length - noseFineness * diameter - tailFineness * diameter);
    return halfEllipsoidArea(diameter, noseFineness) + cylinder + coneArea(diameter, tailFineness);
  }

  /**
   * Volume of the closed body of least wave drag for its length and volume.
   *
   * <pre>{@code V = 3/64·π²·L·d²}</pre>
   *
   * @param length length L [m]
   * @param diameter greatest diameter d [m]
   * @return V [m³]; with L = 300 mm and d = 60 mm it is 499.649 cm³
   */
  public static double searsHaackVolume(double length, double diameter) {
    return 3.0 / 64.0 * Math.PI * Math.PI * length * diameter * diameter;
  }

  /** Curved surface of a half ellipsoid whose length is a multiple of its diameter. */
  static double halfEllipsoidArea(double diameter, double fineness) {
    return 0.25 * Math.PI * diameter * diameter * (1.0 + Ellipse.arcFactor(0.5 / fineness));
  }

  /** Curved surface of a cone whose length is a multiple of its diameter. */
  static double coneArea(double diameter, double fineness) {
    return 0.25 * Math.PI * diameter * diameter * Math.sqrt(1.0 + 4.0 * fineness * fineness);
  }
}
