// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.flighttest;

import io.github.wingwright.core.aerodynamics.SectionPolar;
import io.github.wingwright.core.basis.Band;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.Door;
import java.util.List;
import java.util.Objects;

/**
 * The polar of a wing section with the drag that flight tests found: what the whole glider drags more or less than was
 * reckoned is put on the wing, as the same addition at every lift. The rest of the polar stays.
 */
public final class CorrectedPolar implements SectionPolar {
  /** Two uncertainties on each side: nineteen out of twenty. */
  private static final double COVERAGE = 2.0;

  private final SectionPolar polar;
  private final Measured addition;

  private CorrectedPolar(SectionPolar polar, Measured addition) {
    this.polar = polar;
    this.addition = addition;
  }

  /**
   * Corrects a polar.
   *
   * @param polar as it was reckoned
   * @param addition drag coefficient found beyond it, on the wing area; negative for less
   * @return the corrected polar
   */
  public static CorrectedPolar of(SectionPolar polar, Measured addition) {
    Objects.requireNonNull(polar, "polar");
    Objects.requireNonNull(addition, "addition");
    return new CorrectedPolar(polar, addition);
  }

  @Override
  public String name() {
    return polar.name() + ", corrected by flights";
  }

  @Override
  public Source source() {
    return Source.library("flight tests of the glider: drag " + (addition.value() < 0.0 ? "less" : "more") + " than reckoned");
  }

  @Override
  public Interval reynoldsRange() {
    return polar.reynoldsRange();
  }

  @Override
  public Band profileDrag(double cl, double reynolds) {
    Door.finite(cl, "lift coefficient");
    Door.positive(reynolds, "Reynolds number");
    double likely = likelyProfileDrag(cl, reynolds);
    double spread = COVERAGE * addition.uncertainty();
    return new Band(Math.max(0.0, likely - spread), likely, likely + spread);
  }

  /** Never below a tenth of what was reckoned: no flight test makes a section without drag. */
  @Override
  public double likelyProfileDrag(double cl, double reynolds) {
    double reckoned = polar.likelyProfileDrag(cl, reynolds);
    return Math.max(0.1 * reckoned, reckoned + addition.value());
  }

  @Override
  public Band zeroLiftAngle(double reynolds) {
    return polar.zeroLiftAngle(reynolds);
  }

  @Override
  public Band liftSlope(double reynolds) {
    return polar.liftSlope(reynolds);
  }

  @Override
  public Band moment(double reynolds) {
    return polar.moment(reynolds);
  }

  @Override
  public Band usableLift(double reynolds) {
    return polar.usableLift(reynolds);
  }

  @Override
  public List<Finding> findings(double cl, double reynolds) {
    return polar.findings(cl, reynolds);
  }

  @Override
  public String toString() {
    return name() + ": c_d " + (addition.value() < 0.0 ? "" : "+") + addition;
  }
}
