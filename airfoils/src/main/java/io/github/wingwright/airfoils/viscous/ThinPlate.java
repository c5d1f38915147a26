// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils.viscous;

import io.github.wingwright.airfoils.CircularArcMeanLine;
import io.github.wingwright.airfoils.ThinAirfoil;
import io.github.wingwright.core.aerodynamics.CurvedPlatePolar;
import io.github.wingwright.core.aerodynamics.SkinFriction;
import io.github.wingwright.core.basis.Band;
import io.github.wingwright.core.quantity.Angle;

/**
 * Thin flat and circular-arc plates at Reynolds numbers from 10⁴ to 3·10⁵: the sections of the smallest gliders.
 *
 * <p>A thin plate has a sharp nose. Off its ideal angle the flow separates there and comes back as a turbulent layer, and the
 * suction that a round nose would have is mostly lost. So its lift is that of thin-airfoil theory less a little, its drag
 * is friction plus a growing part of the lift's component along the chord, and neither depends much on the Reynolds number.
 *
 * <pre>{@code
 * cl = 0.9·2π·(α − αL0)
 * }</pre>
 * with αL0 of thin-airfoil theory; the drag is that of {@link CurvedPlatePolar}, whose one set of data both share: the
 * measured flat plate of 2 % thickness at 10⁵ and 3·10⁵ (Selig, Donovan and Fraser, Airfoils at Low Speeds, 1989), arcs
 * taken to behave alike about their ideal angle.
 *
 * <p>How far that is checked: the flat plate is the data, so meeting it is no proof. The drag law was refitted once after
 * plates had ranked behind thick sections below 7·10⁴, so that ranking (Laitone, Experiments in Fluids 23, 1997, abstract:
 * a plate with 5 % circular-arc camber has the best lift-drag ratio at every Reynolds number below 7·10⁴) is no independent
 * check either; nor is Laitone's remark that thin plates change little with Reynolds number from 2·10⁴ to 7·10⁴, which guided
 * the exponent of the growth. Two statements had no part in the fit and are held by a test with it: cambered plates are
 * better than flat ones at 6·10⁴ to 2·10⁵ (Pelletier and Mueller, Journal of Aircraft 37, 2000, abstract); and no more than
 * the whole suction of the nose can be lost. No measured number of a curved plate could be read.
 *
 * @param thickness thickness ratio [chords], above 0, to 0.05
 * @param camber rise of the arc [chords], 0 to 0.12
 */
public record ThinPlate(double thickness, double camber) {
  private static final double LIFT_SHARE = 0.9;

  /** Refuses shapes that are not thin plates. */
  public ThinPlate {
    if (!(thickness > 0 && thickness <= 0.05)) {
      throw new IllegalArgumentException("thickness ratio of a thin plate must be above 0, to 0.05, was " + thickness);
    }
    if (!(camber >= 0 && camber <= 0.12)) {
      throw new IllegalArgumentException("camber of a thin plate must be from 0 to 0.12, was " + camber);
    }
  }

  private ThinAirfoil theory() {
    return ThinAirfoil.of(new CircularArcMeanLine(camber));
  }

  /**
   * Lift coefficient.
   *
   * @param angleOfAttack angle of attack, −12° to 12°
   * @return cl [1]
   */
  public double liftCoefficient(Angle angleOfAttack) {
    return LIFT_SHARE * theory().liftCoefficient(angleOfAttack);
  }

  /**
   * Angle of attack for a lift coefficient.
   *
   * @param liftCoefficient cl [1]
   * @return angle of attack
   */
  public Angle angleFor(double liftCoefficient) {
    return Angle.radians(liftCoefficient / (LIFT_SHARE * 2 * Math.PI) + theory().zeroLiftAngle().radians());
  }

  /**
   * Drag coefficient with its uncertainty: from the attached laminar plate to 30 % above the likely value.
   *
   * @param liftCoefficient cl [1]
   * @param reynolds Reynolds number on the chord [1], 10⁴ to 3·10⁵
   * @return cd [1]
   */
  public Band dragCoefficient(double liftCoefficient, double reynolds) {
    double likely = likelyDrag(liftCoefficient, reynolds);
    return new Band(Math.min(ProfileDrag.laminarPlate(reynolds), likely), likely, 1.3 * likely);
  }

  /**
   * The likely drag coefficient.
   *
   * @param liftCoefficient cl [1]
   * @param reynolds Reynolds number on the chord [1], 10⁴ to 3·10⁵
   * @return cd [1]; 0.0143 for a flat plate without lift at 10⁵
   */
  public double likelyDrag(double liftCoefficient, double reynolds) {
    return CurvedPlatePolar.likely(
        SkinFriction.laminar(reynolds), reynolds, CurvedPlatePolar.offAngle(liftCoefficient, camber));
  }

  /** Moment coefficient about the quarter chord, nose-up positive [1]. */
  public double momentAboutQuarterChord() {
    return theory().momentAboutQuarterChord();
  }
}
