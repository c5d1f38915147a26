// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils.viscous;

import io.github.wingwright.airfoils.CircularArcMeanLine;
import io.github.wingwright.airfoils.ThinAirfoil;
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
 * cd = cd0 + k·cl·tan|α − αi|,   k = 1.3·|α − αi|/(|α − αi| + 0.067), at most 1
 * cd0 = the greater of the laminar plate and 0.0143
 * }</pre>
 * with αL0 and the ideal angle αi of thin-airfoil theory. The factors and 0.0143 are read from the measured flat plate of 2 %
 * thickness at 10⁵ to 3·10⁵ (Selig, Donovan and Fraser, Airfoils at Low Speeds, 1989); arcs are taken to behave alike about
 * their ideal angle. What is published about arcs at 10⁴ to 7·10⁴ is a ranking: a plate with 5 % circular-arc camber
 * has the best lift-drag ratio of all, and thin plates change little with Reynolds number (Laitone, Experiments in Fluids
 * 23, 1997, abstract).
 *
 * @param thickness thickness ratio [chords], above 0, to 0.05
 * @param camber rise of the arc [chords], 0 to 0.12
 */
public record ThinPlate(double thickness, double camber) {
  private static final double LIFT_SHARE = 0.9;
  private static final double LEAST_DRAG = 0.0143;

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
    double laminar = ProfileDrag.laminarPlate(reynolds);
    return new Band(Math.min(laminar + (likely - Math.max(laminar, LEAST_DRAG)) * 0.7, likely), likely, 1.3 * likely);
  }

  /**
   * The likely drag coefficient.
   *
   * @param liftCoefficient cl [1]
   * @param reynolds Reynolds number on the chord [1], 10⁴ to 3·10⁵
   * @return cd [1]; 0.0143 for a flat plate without lift at 10⁵
   */
  public double likelyDrag(double liftCoefficient, double reynolds) {
    double off = Math.abs(angleFor(liftCoefficient).radians() - theory().idealAngle().radians());
    return Math.max(ProfileDrag.laminarPlate(reynolds), LEAST_DRAG)
        + lostSuction(off) * Math.abs(liftCoefficient) * Math.tan(off);
  }

  /** Share of the nose suction that is lost: little while the bubble at the nose is short. */
  private static double lostSuction(double off) {
    return Math.min(1.3 * off / (off + 0.067), 1);
  }

  /** Moment coefficient about the quarter chord, nose-up positive [1]. */
  public double momentAboutQuarterChord() {
    return theory().momentAboutQuarterChord();
  }
}
