// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Guideline;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.KinematicViscosity;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Speed;

/**
 * What a rough surface does to the layer on it.
 *
 * <p>Two different things. On a turbulent layer, roughness sets a floor under the friction: above a cut-off Reynolds number
 * it falls no further. On a laminar layer, a grain does nothing until it is high enough to trip the layer into turbulence:
 * the measure is the Reynolds number of the grain, with its height and the speed at its top. A printed layer of 0.1 mm at
 * 6 m/s has about 40, and trips at about 600: at model speeds the roughness of a print is hydraulically smooth, and a
 * trip must be chosen and placed.
 */
public final class Roughness {
  /** Reynolds number of a grain above which it trips a laminar layer. */
  public static final Guideline TRIPS =
      Guideline.ofNumber(
          "roughness Reynolds number",
          0,
          600,
          "a laminar layer that is to stay laminar",
          "A grain above 600 trips the layer; to trip it on purpose, make the trip higher.",
          Source.fromMemory("Braslow and Knox, NACA TN 4363, 1958", ""));

  /** Cut-off Reynolds number. */
  public static final Formula CUT_OFF =
      Formula.named("cut-off Reynolds number of a rough surface")
          .gives("Re_cut")
          .as("38.21·(L/k)^1.053")
          .where("L", "length along the flow", Length.METRE, 0.01, 100)
          .where("k", "height of the roughness", Length.METRE, 1e-7, 1e-3)
          .from(Sources.raymer("eq. 12.28"))
          .computedBy(Roughness::cutOffReynolds);

  /** Reynolds number of the turbulent law on a rough surface. */
  public static final Formula EFFECTIVE =
      Formula.named("Reynolds number of the turbulent law on a rough surface")
          .gives("Re_e")
          .as("min(Re, Re_cut)")
          .where("Re", "Reynolds number", 1e3, 1e9)
          .where("Re_cut", "cut-off Reynolds number", 1e3, 1e10)
          .from(Sources.raymer("eq. 12.28"))
          .computedBy(Roughness::effectiveReynolds);

  /** Reynolds number of transition on a surface reckoned at its cut-off. */
  public static final Formula TRANSITION_AT_CUT_OFF =
      Formula.named("Reynolds number of transition at the cut-off")
          .gives("Re_tc")
          .as("Re_t·Re_cut / Re")
          .where("Re_t", "Reynolds number of transition", 1e4, 1e7)
          .where("Re_cut", "cut-off Reynolds number", 1e4, 1e9)
          .where("Re", "Reynolds number, above the cut-off", 1e4, 1e9)
          .from(Source.library("a rough surface as a smooth one at its cut-off, transition at the same part of the length"))
          .computedBy(Roughness::transitionAtCutOff);

  /** Reynolds number of a grain in the free stream. */
  public static final Formula GRAIN_REYNOLDS =
      Formula.named("roughness Reynolds number at free-stream speed")
          .gives("Re_k")
          .as("V·k / ν")
          .where("V", "airspeed", Speed.METRE_PER_SECOND, 0.1, 300)
          .where("k", "height of the roughness", Length.METRE, 1e-7, 1e-2)
          .where("ν", "kinematic viscosity", KinematicViscosity.SQUARE_METRE_PER_SECOND, 1e-6, 1e-3)
          .from(Source.DEFINITION)
          .computedBy(Roughness::grainReynolds);

  private Roughness() {}

  /**
   * The Reynolds number above which friction on a rough surface falls no further; take the smaller of it and Re in the
   * turbulent law.
   *
   * <pre>{@code Re_cut = 38.21·(L/k)^1.053}</pre>
   *
   * <p>For turbulent layers below the speed of sound. Example: smooth paint, k = 6.34 µm, L = 1 m gives 1.13652·10⁷.
   *
   * @param length length along the flow L [m], positive
   * @param height height of the roughness k [m], positive
   * @return Re_cut
   */
  public static double cutOffReynolds(double length, double height) {
    return 38.21 * Math.pow(length / height, 1.053);
  }

  /**
   * The Reynolds number with which the turbulent law is entered on a rough surface.
   *
   * <pre>{@code Re_e = min(Re, Re_cut)}</pre>
   *
   * <p>Example: Re = 2·10⁷, Re_cut = 1.1·10⁷ give 1.1·10⁷: the surface is rough, not smooth, for the layer.
   *
   * @param reynolds Reynolds number Re
   * @param cutOff cut-off Reynolds number Re_cut
   * @return Re_e
   */
  public static double effectiveReynolds(double reynolds, double cutOff) {
    return Math.min(reynolds, cutOff);
  }

  /**
   * The Reynolds number of transition when a rough surface is reckoned as a smooth one at its cut-off, with transition at the
   * same part of the length.
   *
   * <pre>{@code Re_tc = Re_t·Re_cut/Re}</pre>
   *
   * <p>Example: Re_t = 5·10⁵, Re_cut = 6·10⁵, Re = 10⁶ give 3·10⁵.
   *
   * @param transition Reynolds number of transition Re_t
   * @param cutOff cut-off Reynolds number Re_cut
   * @param reynolds Reynolds number Re, above the cut-off
   * @return Re_tc
   */
  public static double transitionAtCutOff(double transition, double cutOff, double reynolds) {
    return transition * cutOff / reynolds;
  }

  /**
   * Reynolds number of a grain with the speed of the free stream: what it can be at most.
   *
   * <pre>{@code Re_k = V·k/ν}</pre>
   *
   * <p>Example: 6 m/s, 0.1 mm, 1.5·10⁻⁵ m²/s give 40.
   *
   * @param speed airspeed V [m/s], positive
   * @param height height of the roughness k [m], positive
   * @param kinematicViscosity ν [m²/s], positive
   * @return Re_k
   */
  public static double grainReynolds(double speed, double height, double kinematicViscosity) {
    return speed * height / kinematicViscosity;
  }

  /**
   * Reynolds number of a grain with the speed at its top inside a laminar layer, whose profile is taken as straight.
   *
   * <pre>{@code
   * u_k/V = min(1, 0.33206·(k/x)·√(V·x/ν))        Re_k = u_k·k/ν
   * }</pre>
   *
   * <p>The slope of the profile is that of Blasius; it overstates u_k by less than 3 % up to half the speed. Example:
   * 6 m/s, k = 0.1 mm, x = 10 mm, 1.5·10⁻⁵ m²/s give 8.40.
   *
   * @param speed airspeed V [m/s], positive
   * @param height height of the roughness k [m], positive
   * @param distance distance from the leading edge x [m], positive
   * @param kinematicViscosity ν [m²/s], positive
   * @return Re_k
   */
  public static double grainReynoldsInLayer(double speed, double height, double distance, double kinematicViscosity) {
    double reynolds = speed * distance / kinematicViscosity;
    double part = Math.min(1.0, 0.332057 * height / distance * Math.sqrt(reynolds));
    return part * grainReynolds(speed, height, kinematicViscosity);
  }
}
