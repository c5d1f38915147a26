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
import java.util.Objects;
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
          .gives("C_m,n")
          .as("−C_L·(h − h_w) − C_f·(C_L/a_w + α_b)")
          .where("C_L", "lift coefficient", -1, 3)
          .where("h", "centre of gravity, fraction of c̄", -1, 2)
          .where("h_w", "aerodynamic centre of the wing", 0.1, 0.6)
          .where("C_f", "moment slope of the fuselage C_mα,f", NamedUnit.PER_RADIAN, -1, 3)
          .where("a_w", "lift-curve slope of the wing", NamedUnit.PER_RADIAN, 0.5, 7)
          .where("α_b", "angle of the fuselage when the wing has no lift", Angle.RADIAN, -0.4, 0.4)
          .from(Sources.MOMENT_EQUATION)
          .computedBy(TaillessTrim::momentNeeded);

  /** Where the centre of gravity must lie for the moment that the wing has. */
  public static final Formula BALANCE_POINT =
      Formula.named("centre of gravity at which the wing trims itself, fraction of c̄")
          .gives("h")
          .as("h_w − (C_m + C_f·(C_L/a_w + α_b)) / C_L")
          .where("h_w", "aerodynamic centre of the wing", 0.1, 0.6)
          .where("C_m", "moment coefficient of the wing about its aerodynamic centre", -0.5, 0.2)
          .where("C_f", "moment slope of the fuselage C_mα,f", NamedUnit.PER_RADIAN, -1, 3)
          .where("C_L", "lift coefficient", 0.05, 3)
          .where("a_w", "lift-curve slope of the wing", NamedUnit.PER_RADIAN, 0.5, 7)
          .where("α_b", "angle of the fuselage when the wing has no lift", Angle.RADIAN, -0.4, 0.4)
          .from(Sources.MOMENT_EQUATION)
          .computedBy(
              (double wingCentre, double moment, double body, double lift, double slope, double angle) ->
                  wingCentre - (moment + body * (lift / slope + angle)) / lift);

  private final Step needed;
  private final Step own;
  private final Step balance;
  private final StaticMargin margin;
  private final Band ownBand;
  private final double washoutPerMoment;
  private final List<Finding> findings;

  private TaillessTrim(
      Step needed, Step own, Step balance, StaticMargin margin, Band ownBand, double washoutPerMoment, List<Finding> findings) {
    this.needed = needed;
    this.own = own;
    this.balance = balance;
    this.margin = margin;
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
    Objects.requireNonNull(model, "model");
    Door.finite(centreOfGravity, "centre of gravity");
    Door.positive(liftCoefficient, "lift coefficient");
    Airframe airframe = model.airframe();
    if (airframe.pitchTail().isPresent()) {
      throw new IllegalStateException("tailless trim is for an airframe without a horizontal tail, this one has one");
    }
    PitchTerms t = model.terms();
    TrimInputs inputs = new TrimInputs(model, t);
    Step lift = Step.given("lift coefficient", "C_L", liftCoefficient, Sources.ASKED);
    Step needed =
        Step.of(
            NEEDED_MOMENT,
            lift,
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
    Step fraction =
        Step.of(BALANCE_POINT, t.wingCentre, inputs.moment, t.fuselageSlope, lift, t.wingAlone, inputs.bodyAngle);
    Step balance =
        Step.of(
            "centre of gravity at which the wing trims itself",
            "x",
            CentreOfGravityRange.PLACE,
            Step.given(
                "leading edge of the mean aerodynamic chord", "x_c", airframe.wing().meanAerodynamicChordX(), Sources.AIRFRAME),
            fraction,
            t.chord);
    StaticMargin margin = model.staticMargin(Length.metres(balance.value()));
    double aft = balance.value() - centreOfGravity.si();
    List<Finding> findings = findings(missing, perRadian, aft, margin.value(), inputs);
    return new TaillessTrim(needed, inputs.moment, balance, margin, own, perRadian, findings);
  }

  private static List<Finding> findings(
      double missing, double perRadian, double aft, double margin, TrimInputs inputs) {
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
                  + move(aft, margin),
              missing,
              Interval.atMost(0.005),
              NamedUnit.NUMBER,
              inputs.wing.polar().source()));
    } else if (missing < -0.02) {
      findings.add(
          Finding.of(
              Severity.CAUTION,
              "trim without a tail",
              "The wing's own moment is nose-up for this lift: it will fly slower than asked. Take off reflex or washout"
                  + move(aft, margin),
              missing,
              Interval.atLeast(-0.02),
              NamedUnit.NUMBER,
              inputs.wing.polar().source()));
    }
    return findings;
  }

  /** What moving the centre of gravity would do, and whether the margin allows it. */
  private static String move(double aft, double margin) {
    return String.format(
        Locale.ROOT,
        margin > 0.0
            ? ", or move the centre of gravity %s by %s, which leaves a static margin of %.0f %%."
            : "; moving the centre of gravity %s by %s would trim it, but with a static margin of %.0f %%: unstable.",
        aft > 0.0 ? "aft" : "forward",
        Length.metres(Math.abs(aft)).format(Length.MILLIMETRE, 2),
        Math.rint(100.0 * margin) + 0.0);
  }

  /**
   * Where the centre of gravity would have to lie for the wing, as it is, to trim at this lift.
   *
   * @return aft of the nose tip
   */
  public Length balancePoint() {
    return Length.metres(balance.value());
  }

  /**
   * The static margin with the centre of gravity there: a tailless aircraft that is trimmed has no other.
   *
   * @return the margin; negative if the wing can be trimmed or stable but not both
   */
  public StaticMargin marginInTrim() {
    return margin;
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
    return Workings.of(List.of(needed, own, balance));
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
