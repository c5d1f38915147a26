// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.Objects;

/**
 * The moment that twist makes on a swept wing: with it a wing without a tail can be trimmed.
 *
 * <p>At zero lift a twisted wing still lifts inboard and presses down outboard. On a swept-back wing the outer part lies
 * aft, so washout makes a nose-up moment, as a tail would. By strips:
 *
 * <pre>{@code
 * C_m,θ = −a_3·J        J = ∫ c·(θ − θ̄)·(x_c/4 − x̄_c/4) dy/(S·c̄)        over both halves
 * a_3 = a_w/(1 + 2·a_w/(π·A))
 * }</pre>
 *
 * <p>θ̄ and x̄_c/4 are means over the area. A load that changes sign along each half is mostly the third harmonic of the
 * lifting line, sin 3θ; on an elliptic wing it lifts with the slope a_3, less than the a_w of the first. On a straight wing
 * of 25° sweep and aspect ratio 9 this is a fifth above a vortex lattice.
 */
public final class SweptTwist {
  private static final Source STRIPS = Source.library("strips with the slope of the third harmonic of the lifting line");

  /** Moment coefficient of a wing with sweep and twist. */
  static final Formula MOMENT =
      Formula.named("moment coefficient of the wing about its aerodynamic centre")
          .gives("C_m")
          .as("c_m − a_w / (1 + 2·a_w/(π·A))·J")
          .where("c_m", "moment coefficient of the section", -0.5, 0.2)
          .where("a_w", "lift-curve slope of the wing", NamedUnit.PER_RADIAN, 0.5, 7)
          .where("A", "aspect ratio", 2, 40)
          .where("J", "mean product of twist and place aft, over c̄", Angle.RADIAN, -0.2, 0.2)
          .from(STRIPS)
          .computedBy(SweptTwist::coefficient);

  private SweptTwist() {}

  /** The wing's moment: the section's own for a wing without sweep or twist. */
  static Step moment(Step section, Planform planform, PitchTerms terms) {
    Objects.requireNonNull(planform, "planform");
    double product = product(planform);
    if (product == 0.0) {
      return section;
    }
    return Step.of(
        MOMENT,
        section,
        terms.wingAlone,
        terms.aspectRatio,
        Step.given("mean product of twist and place aft", "J", Angle.radians(product), Source.DEFINITION));
  }

  /**
   * The moment that twist makes at zero lift.
   *
   * @param planform the wing
   * @param liftSlope lift-curve slope of the wing a_w [1/rad]
   * @return C_m,θ about the aerodynamic centre, nose-up positive; positive for washout on a swept-back wing
   */
  public static double moment(Planform planform, double liftSlope) {
    Objects.requireNonNull(planform, "planform");
    return coefficient(0.0, liftSlope, planform.aspectRatio(), product(planform));
  }

  private static double coefficient(double section, double slope, double aspectRatio, double product) {
    return section - slope / (1.0 + 2.0 * slope / (Math.PI * aspectRatio)) * product;
  }

  /** ∫ c·(θ − θ̄)·(x − x̄) dy/(S·c̄): covariance of twist and place, weighted with chord [rad]. */
  static double product(Planform planform) {
    double meanTwist = TrimInputs.meanTwist(planform);
    double meanPlace = planform.quarterMeanAerodynamicChordX().si();
    double sum = 0.0;
    double area = 0.0;
    var stations = planform.stations();
    for (int i = 1; i < stations.size(); i++) {
      Length a = stations.get(i - 1);
      Length b = stations.get(i);
      double dy = b.si() - a.si();
      // The integrand is a cubic on a straight panel: Simpson's rule is exact.
      double ends = value(planform, a, meanTwist, meanPlace) + value(planform, b, meanTwist, meanPlace);
      double middle = value(planform, a.plus(b).times(0.5), meanTwist, meanPlace);
      sum += dy / 6.0 * (ends + 4.0 * middle);
      area += 0.5 * dy * (planform.chordAt(a).si() + planform.chordAt(b).si());
    }
    double product = sum / (area * planform.meanAerodynamicChord().si());
    return Math.abs(product) < 1e-15 ? 0.0 : product;
  }

  private static double value(Planform planform, Length y, double meanTwist, double meanPlace) {
    double c = planform.chordAt(y).si();
    double x = planform.leadingEdgeAt(y).si() + 0.25 * c;
    return c * (planform.twistAt(y).si() - meanTwist) * (x - meanPlace);
  }
}
