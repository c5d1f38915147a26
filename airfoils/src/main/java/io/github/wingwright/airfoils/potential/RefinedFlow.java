// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils.potential;

import io.github.wingwright.airfoils.ComposedSection;
import io.github.wingwright.core.quantity.Angle;
import java.util.Locale;
import java.util.Objects;

/**
 * Lift and moment from two grids, extrapolated to no panel length at all, with an estimate of the error.
 *
 * <p>The method converges with the square of the panel length, so with values F(n) and F(2n)
 * <pre>{@code
 * F = F(2n) + (F(2n) − F(n))/3,   error of F(2n) ≈ |F(2n) − F(n)|/3
 * }</pre>
 * The estimate belongs to the finer grid and is kept for the extrapolated value, where it is on the safe side by a
 * factor of ten or more. Source: Richardson, Phil. Trans. A 210, 1911.
 *
 * @param angleOfAttack angle of attack from the chord line
 * @param liftCoefficient extrapolated lift coefficient
 * @param liftError estimate of its error, on the safe side
 * @param momentAboutQuarterChord extrapolated moment coefficient, nose-up positive
 * @param momentError estimate of its error, on the safe side
 */
public record RefinedFlow(
    Angle angleOfAttack,
    double liftCoefficient,
    double liftError,
    double momentAboutQuarterChord,
    double momentError) {
  public RefinedFlow {
    Objects.requireNonNull(angleOfAttack, "angleOfAttack");
  }

  /**
   * Two grids about a section.
   *
   * @param section any section
   * @param panels panels of the coarser grid, at least 19; the finer one has twice as many
   * @param angleOfAttack angle of attack
   */
  public static RefinedFlow of(ComposedSection section, int panels, Angle angleOfAttack) {
    Objects.requireNonNull(angleOfAttack, "angle of attack");
    double angle = angleOfAttack.radians();
    PanelMethod coarse = PanelMethod.of(section, panels);
    PanelMethod fine = PanelMethod.of(section, 2 * panels);
    double lift = fine.liftCoefficient(angle);
    double liftStep = (lift - coarse.liftCoefficient(angle)) / 3;
    double moment = fine.momentAboutQuarterChord(angle);
    double momentStep = (moment - coarse.momentAboutQuarterChord(angle)) / 3;
    return new RefinedFlow(angleOfAttack, lift + liftStep, Math.abs(liftStep), moment + momentStep,
        Math.abs(momentStep));
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "cl %.6f ± %.0e, cm %.6f ± %.0e at %.2f°", liftCoefficient, liftError,
        momentAboutQuarterChord, momentError, angleOfAttack.degrees());
  }
}
