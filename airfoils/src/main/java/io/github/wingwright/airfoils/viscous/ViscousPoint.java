// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils.viscous;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.quantity.Angle;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * A section at one angle of attack and Reynolds number, boundary layers included.
 *
 * @param angleOfAttack angle of attack from the chord line
 * @param reynolds Reynolds number on the chord [1]
 * @param liftCoefficient lift coefficient from the surface pressures [1]
 * @param dragCoefficient profile drag coefficient [1]
 * @param momentAboutQuarterChord moment coefficient, nose-up positive [1]
 * @param upper the upper layer
 * @param lower the lower layer
 * @param findings where the method is outside its validity
 */
public record ViscousPoint(
    Angle angleOfAttack,
    double reynolds,
    double liftCoefficient,
    double dragCoefficient,
    double momentAboutQuarterChord,
    SurfaceLayer upper,
    SurfaceLayer lower,
    List<Finding> findings) {
  /** Copies the findings. */
  public ViscousPoint {
    Objects.requireNonNull(findings, "findings");
    Objects.requireNonNull(angleOfAttack, "angleOfAttack");
    Objects.requireNonNull(upper, "upper");
    Objects.requireNonNull(lower, "lower");
    findings = List.copyOf(findings);
  }

  /** Lift over drag [1]. */
  public double liftToDrag() {
    return liftCoefficient / dragCoefficient;
  }

  /** Whether both layers end attached to the surface: the points at which the drag can be trusted. */
  public boolean attached() {
    return upper.regime().compareTo(Regime.BUBBLE) <= 0 && lower.regime().compareTo(Regime.BUBBLE) <= 0;
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "%.2f°, Re %.0f: cl %.3f, cd %.4f, cm %.3f, %s", angleOfAttack.degrees(),
        reynolds, liftCoefficient, dragCoefficient, momentAboutQuarterChord, upper.regime().words());
  }
}
