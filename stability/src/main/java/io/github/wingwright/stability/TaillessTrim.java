// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.core.basis.Band;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Workings;
import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Trim of an aircraft without a horizontal tail: the wing alone must hold its nose up.
 *
 * <p>With the centre of gravity ahead of the neutral point every lift pitches the nose down, so the wing needs a moment of
 * its own that is nose-up:
 *
 * <pre>{@code C_m,needed = −C_L·(h − h_w) − C_mα,f·(C_L/a_w + α_b)}</pre>
 *
 * <p>A section with reflex has it, or a swept-back wing with washout ({@link SweptTwist}). What the section lacks is given
 * as the washout of the swept wing that would supply it.
 */
public final class TaillessTrim {
  /** Moment that the wing needs. */
  public static final Formula NEEDED_MOMENT =
      Formula.named("moment coefficient that the wing needs for trim")
          .gives("C_m,n", NamedUnit.NUMBER)
          .as("−C_L·(h − h_w) − C_f·(C_L/a_w + α_b)")
          .where("C_L", "lift coefficient", -1, 3)
          .where("h", "centre of gravity, fraction of c̄", -1, 2)
          .where("h_w", "aerodynamic centre of the wing", 0.1, 0.6)
          .where("C_f", "moment slope of the fuselage C_mα,f", NamedUnit.PER_RADIAN, -1, 3)
          .where("a_w", "lift-curve slope of the wing", NamedUnit.PER_RADIAN, 0.5, 7)
          .where("α_b", "angle of the fuselage when the wing has no lift", Angle.RADIAN, -0.4, 0.4)
          .from(Sources.MOMENT_EQUATION)
          .computedBy(TaillessTrim::momentNeeded);

  private final Step needed;
  private final Step own;
  private final Band ownBand;
  private final double washoutPerMoment;
  private final List<Finding> findings;

  private TaillessTrim(Step needed, Step own, Band ownBand, double washoutPerMoment, List<Finding> findings) {
    this.needed = needed;
    this.own = own;
    this.ownBand = ownBand;
    this.washoutPerMoment = washoutPerMoment;
    this.findings = Finding.inOrderOfWeight(findings);
  }

  /**
   * Moment that the wing needs.
   *
   * <p>Example: C_L 0.5 at h = 0.15, h_w = 0.25, no fuselage: +0.05, a section with reflex.
   *
   * @param liftCoefficient C_L
   * @param centreOfGravity h
   * @param wingCentre h_w
   * @param fuselageSlope C_mα,f [1/rad]
   * @param wingSlope a_w [1/rad]
   * @param bodyAngle angle of the fuselage when the wing has no lift [rad]
   * @return C_m about the aerodynamic centre, nose-up positive
   */
  public static double momentNeeded(
      double liftCoefficient,
      double centreOfGravity,
      double wingCentre,
      double fuselageSlope,
      double wingSlope,
      double bodyAngle) {
    return -liftCoefficient * (centreOfGravity - wingCentre)
        - fuselageSlope * (liftCoefficient / wingSlope + bodyAngle);
  }

  /**
   * The trim of an aircraft without a horizontal tail.
   *
   * @param model the aircraft with data of its wing's section
   * @param centreOfGravity centre of gravity, aft of the nose tip
   * @param liftCoefficient lift coefficient to trim at
   * @return what the wing needs and what it has
   * @throws IllegalStateException if there is a horizontal tail, or section data are missing
   */
  public static TaillessTrim of(PitchModel model, Length centreOfGravity, double liftCoefficient) {
    Door.finite(centreOfGravity, "centre of gravity");
    Door.finite(liftCoefficient, "lift coefficient");
    Airframe airframe = model.airframe();
    if (airframe.pitchTail().isPresent()) {
      throw new IllegalStateException("tailless trim is for an airframe without a horizontal tail, this one has one");
    }
    PitchTerms t = model.terms();
    TrimInputs inputs = new TrimInputs(model, t);
    Step needed =
        Step.of(
            NEEDED_MOMENT,
            Step.given("lift coefficient", "C_L", liftCoefficient, Source.BRIEF),
            t.fraction("centre of gravity", centreOfGravity),
            t.wingCentre,
            t.fuselageSlope,
            t.wingAlone,
            inputs.bodyAngle);
    Band section = inputs.wing.polar().moment(inputs.wing.reynolds());
    Band own = section.plus(Band.exactly(inputs.moment.value() - section.likely()));
    Planform p = airframe.wing().planform();
    double perRadian = SweptTwist.moment(p.withWashout(Angle.radians(1.0)), t.wingAlone.value());
    double missing = needed.value() - own.likely();
    return new TaillessTrim(needed, inputs.moment, own, perRadian, findings(missing, perRadian, inputs));
  }

  private static List<Finding> findings(double missing, double perRadian, TrimInputs inputs) {
    List<Finding> findings = new ArrayList<>();
    if (missing > 0.005) {
      double washout = Math.toDegrees(missing / perRadian);
      String remedy =
          perRadian > 0.0 && washout < 12.0
              ? String.format(Locale.ROOT, "%.1f° more washout on this sweep", washout)
              : "more sweep with washout";
      findings.add(
          Finding.of(
              Severity.SERIOUS,
              "trim without a tail",
              "The wing's own moment is too nose-down to hold this lift. Use a section with reflex, "
                  + remedy
                  + ", or move the centre of gravity aft as far as the static margin allows.",
              missing,
              Interval.atMost(0.005),
              NamedUnit.NUMBER,
              inputs.wing.polar().source()));
    } else if (missing < -0.02) {
      findings.add(
          Finding.of(
              Severity.CAUTION,
              "trim without a tail",
              "The wing's own moment is nose-up for this lift: it will fly slower than asked. Take off reflex or washout,"
                  + " or move the centre of gravity forward.",
              missing,
              Interval.atLeast(-0.02),
              NamedUnit.NUMBER,
              inputs.wing.polar().source()));
    }
    return findings;
  }

  /**
   * The moment coefficient that the wing needs.
   *
   * @return C_m about its aerodynamic centre, nose-up positive
   */
  public double neededMoment() {
    return needed.value();
  }

  /**
   * The moment coefficient that the wing has: its section's, and what sweep and twist make.
   *
   * @return least, likely and greatest C_m
   */
  public Band ownMoment() {
    return ownBand;
  }

  /**
   * How much more linear washout would trim it.
   *
   * @return the angle from root to tip; empty for a wing without sweep, on which washout makes no moment
   */
  public Optional<Angle> washoutMissing() {
    return Math.abs(washoutPerMoment) < 1e-9
        ? Optional.empty()
        : Optional.of(Angle.radians((needed.value() - own.value()) / washoutPerMoment));
  }

  /**
   * The workings.
   *
   * @return all steps
   */
  public Workings workings() {
    return Workings.of(List.of(needed, own));
  }

  /**
   * What to know about it.
   *
   * @return findings
   */
  public List<Finding> findings() {
    return findings;
  }

  @Override
  public String toString() {
    return String.format(
        Locale.ROOT, "tailless trim: the wing needs C_m %.3f and has %.3f", needed.value(), own.value());
  }
}
