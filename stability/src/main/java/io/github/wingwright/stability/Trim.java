// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.core.basis.Band;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Guideline;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.QuantityBand;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Workings;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * How wing and tail must be set so that the aircraft holds a lift coefficient by itself.
 *
 * <p>The decalage is given as a range. It is the difference of two zero-lift angles and two angles of attack, and on a
 * small model the zero-lift angle alone is uncertain by as much as the whole decalage: shims or a trim tab must cover the
 * range. Its ends take every uncertain number (zero-lift angles, wing moment, slopes, downwash) at its worst together.
 */
public final class Trim {
  private static final double WIDE = Math.toRadians(2.0);
  private static final Guideline DECALAGE_RANGE =
      new Guideline(
          "decalage",
          Interval.between(0.0, Math.toRadians(3.0)),
          Angle.DEGREE,
          "hand-launched and free-flight gliders",
          "A large decalage means a forward centre of gravity, a negative one a centre of gravity far aft.",
          Source.fromMemory("Simons, Model Aircraft Aerodynamics", ""));

  private final Step decalage;
  private final Band band;
  private final Step tailLift;
  private final Step tailLiftCoefficient;
  private final double angleOfAttack;
  private final double liftCoefficient;
  private final Angle wingIncidence;
  private final List<Finding> findings;

  private Trim(
      Step decalage,
      Band band,
      Step tailLift,
      Step tailLiftCoefficient,
      double angleOfAttack,
      double liftCoefficient,
      Angle wingIncidence,
      List<Finding> findings) {
    this.decalage = decalage;
    this.band = band;
    this.tailLift = tailLift;
    this.tailLiftCoefficient = tailLiftCoefficient;
    this.angleOfAttack = angleOfAttack;
    this.liftCoefficient = liftCoefficient;
    this.wingIncidence = wingIncidence;
    this.findings = Finding.inOrderOfWeight(findings);
  }

  static Trim of(PitchModel model, Length centreOfGravity, double liftCoefficient) {
    Door.finite(centreOfGravity, "centre of gravity");
    Door.finite(liftCoefficient, "lift coefficient");
    if (model.airframe().pitchTail().isEmpty()) {
      throw new IllegalStateException(
          "trim by decalage needs a horizontal tail, the airframe has none: without one use TaillessTrim");
    }
    PitchTerms t = model.terms();
    TrimInputs inputs = new TrimInputs(model, t);
    PitchChoices.Section wing = inputs.wing;
    PitchChoices.Section tail = model.choices.neededTailSection();
    Angle incidence = model.airframe().wing().incidence();
    Step zeroLift = inputs.zeroLift;
    Step body = inputs.bodyAngle;
    Step moment = inputs.moment;
    Step tailZeroLift =
        TrimInputs.angle(
            "zero-lift angle of the tail", "α_h0", tail.polar().zeroLiftAngle(tail.reynolds()).likely(), tail);
    Step h = t.fraction("centre of gravity", centreOfGravity);
    Step lift = Step.given("lift coefficient", "C_L", liftCoefficient, Sources.ASKED);
    Step tailLift =
        Step.of(
            TrimFormulas.TAIL_LIFT, moment, lift, h, t.wingCentre, t.fuselageSlope, t.wingAlone, body, t.trimCentre);
    Step wingAngle = Step.of(TrimFormulas.WING_ANGLE, lift, tailLift, t.wingAlone);
    Step tailAngle = Step.of(TrimFormulas.TAIL_ANGLE, tailLift, t.efficiency, t.areaRatio, t.tailSlope);
    Step atWing = Step.of(Foreplane.DOWNWASH, tailLift, t.aspectRatio);
    Step decalage =
        t.hasForeplane
            ? Step.of(
                TrimFormulas.FOREPLANE_DECALAGE, zeroLift, tailZeroLift, t.downwash, wingAngle, tailAngle, atWing)
            : Step.of(TrimFormulas.DECALAGE, zeroLift, tailZeroLift, t.downwash, wingAngle, tailAngle);
    double alpha = wingAngle.value() + body.value() + (t.hasForeplane ? atWing.value() : 0.0);
    Step own = Step.of(TrimFormulas.TAIL_LIFT_COEFFICIENT, tailLift, t.efficiency, t.areaRatio);
    Band band = new Corners(t, inputs, tail, incidence.si(), h.value(), liftCoefficient).band(decalage.value());
    return new Trim(
        decalage,
        band,
        tailLift,
        own,
        alpha,
        liftCoefficient,
        incidence,
        findings(model, t, wing, tail, band, own.value(), liftCoefficient));
  }

  private static List<Finding> findings(
      PitchModel model,
      PitchTerms t,
      PitchChoices.Section wing,
      PitchChoices.Section tail,
      Band band,
      double tailLiftCoefficient,
      double liftCoefficient) {
    List<Finding> findings = new ArrayList<>();
    if (model.aircraftClass().isModel() && !t.hasForeplane) {
      DECALAGE_RANGE.check(band.likely(), Severity.NOTE).ifPresent(findings::add);
    }
    if (band.high() - band.low() > WIDE) {
      findings.add(
          Finding.of(
              Severity.CAUTION,
              "decalage",
              String.format(
                  Locale.ROOT,
                  "It is known only from %.1f° to %.1f°. Build in shims or a trim tab that cover this, and trim by"
                      + " test glides.",
                  Math.toDegrees(band.low()),
                  Math.toDegrees(band.high())),
              wing.polar().source()));
    }
    Band usable = tail.polar().usableLift(tail.reynolds()).times(t.tailUpright);
    if (Math.abs(tailLiftCoefficient) > usable.likely()) {
      findings.add(
          Finding.of(
              Severity.SERIOUS,
              "tail lift",
              String.format(
                  Locale.ROOT,
                  "The tail would stall before it can hold this trim. Move the centre of gravity %s by %s, or enlarge the"
                      + " tail by %.0f %%.",
                  // Behind the wing download comes from a centre of gravity too far forward; ahead of it, lift does.
                  (tailLiftCoefficient > 0.0) == t.hasForeplane ? "aft" : "forward",
                  t.relief(tailLiftCoefficient, usable.likely(), liftCoefficient).format(Length.MILLIMETRE, 2),
                  100.0 * (Math.abs(tailLiftCoefficient) / usable.likely() - 1.0)),
              tailLiftCoefficient,
              Interval.between(-usable.likely(), usable.likely()),
              NamedUnit.NUMBER,
              tail.polar().source()));
    }
    Band wingLift = wing.polar().usableLift(wing.reynolds());
    if (liftCoefficient > wingLift.likely()) {
      findings.add(
          Finding.of(
              Severity.SERIOUS,
              "lift coefficient",
              String.format(
                  Locale.ROOT,
                  "The wing stalls below the lift coefficient to trim at. Trim for %.2f or less.",
                  wingLift.likely()),
              liftCoefficient,
              Interval.atMost(wingLift.likely()),
              NamedUnit.NUMBER,
              wing.polar().source()));
    }
    return findings;
  }

  /** The worst together: every uncertain number at both ends. */
  private record Corners(
      PitchTerms t,
      TrimInputs inputs,
      PitchChoices.Section tail,
      double incidence,
      double h,
      double lift) {

    Band band(double likely) {
      PitchChoices.Section wing = inputs.wing;
      double twistMoment = inputs.moment.value() - wing.polar().moment(wing.reynolds()).likely();
      Band zeroLift = wing.polar().zeroLiftAngle(wing.reynolds());
      Band moment = wing.polar().moment(wing.reynolds()).plus(Band.exactly(twistMoment));
      Band tailZeroLift = tail.polar().zeroLiftAngle(tail.reynolds());
      Band wingSlope = scaled(t.wingAlone.value(), wing);
      Band tailSlope = scaled(t.tailSlope.value(), tail);
      Band downwash = t.methods == null ? Band.exactly(t.downwash.value()) : t.methods.band();
      double low = likely;
      double high = likely;
      for (int corner = 0; corner < 64; corner++) {
        double d =
            decalage(
                end(zeroLift, corner),
                end(moment, corner >> 1),
                end(tailZeroLift, corner >> 2),
                end(wingSlope, corner >> 3),
                end(tailSlope, corner >> 4),
                end(downwash, corner >> 5));
        low = Math.min(low, d);
        high = Math.max(high, d);
      }
      return new Band(low, likely, high);
    }

    /** The slope of the surface scaled as that of its section: a little more than the surface really follows. */
    private static Band scaled(double slope, PitchChoices.Section section) {
      Band a = section.polar().liftSlope(section.reynolds());
      return new Band(slope * (a.low() / a.likely()), slope, slope * (a.high() / a.likely()));
    }

    private static double end(Band band, int bit) {
      return (bit & 1) == 0 ? band.low() : band.high();
    }

    private double decalage(
        double section, double moment, double tailZeroLift, double wingSlope, double tailSlope, double downwash) {
      double zeroLift = section - inputs.twist;
      double tailLift =
          TrimFormulas.tailLift(
              moment,
              lift,
              h,
              t.wingCentre.value(),
              t.fuselageSlope.value(),
              wingSlope,
              zeroLift - incidence,
              t.trimCentre.value());
      double atWing = t.hasForeplane ? Foreplane.downwash(tailLift, t.aspectRatio.value()) : 0.0;
      return TrimFormulas.foreplaneDecalage(
          zeroLift,
          tailZeroLift,
          downwash,
          TrimFormulas.wingAngle(lift, tailLift, wingSlope),
          TrimFormulas.tailAngle(tailLift, t.efficiency.value(), t.areaRatio.value(), tailSlope),
          atWing);
    }
  }

  /**
   * The decalage to build.
   *
   * @return incidence of the wing less that of the tail, positive: the tail is set leading edge down against the wing
   */
  public Angle decalage() {
    return Angle.radians(decalage.value());
  }

  /**
   * The range in which the right decalage lies.
   *
   * @return least, likely, greatest
   */
  public QuantityBand<Angle> decalageBand() {
    return QuantityBand.of(band, Angle::radians);
  }

  /**
   * The incidence of the tail that trims, for the wing's incidence of the airframe.
   *
   * @return i_h against the fuselage reference line, leading edge up positive
   */
  public Angle tailIncidence() {
    return wingIncidence.minus(decalage());
  }

  /**
   * The range in which the right tail incidence lies.
   *
   * @return least, likely, greatest
   */
  public QuantityBand<Angle> tailIncidenceBand() {
    return QuantityBand.of(band.times(-1.0).plus(Band.exactly(wingIncidence.si())), Angle::radians);
  }

  /**
   * The lift coefficient that is trimmed.
   *
   * @return C_L
   */
  public double liftCoefficient() {
    return liftCoefficient;
  }

  /**
   * What the tail lifts, on the wing area.
   *
   * @return T, positive up
   */
  public double tailLift() {
    return tailLift.value();
  }

  /**
   * Lift coefficient of the tail on its own area.
   *
   * @return C_Lh, positive up
   */
  public double tailLiftCoefficient() {
    return tailLiftCoefficient.value();
  }

  /**
   * Lift coefficient of the wing.
   *
   * @return C_L − T
   */
  public double wingLiftCoefficient() {
    return liftCoefficient - tailLift.value();
  }

  /**
   * Angle of attack of the fuselage reference line.
   *
   * @return α
   */
  public Angle angleOfAttack() {
    return Angle.radians(angleOfAttack);
  }

  /**
   * How the decalage came about.
   *
   * @return its step
   */
  public Step step() {
    return decalage;
  }

  /**
   * The workings.
   *
   * @return all steps
   */
  public Workings workings() {
    return Workings.of(List.of(decalage, tailLiftCoefficient));
  }

  /**
   * What to know about it.
   *
   * @return findings, heaviest first
   */
  public List<Finding> findings() {
    return findings;
  }

  @Override
  public String toString() {
    return String.format(
        Locale.ROOT,
        "trim at C_L %.2f: decalage %.1f° (%.1f° to %.1f°), tail C_L %.2f",
        liftCoefficient,
        Math.toDegrees(band.likely()),
        Math.toDegrees(band.low()),
        Math.toDegrees(band.high()),
        tailLiftCoefficient());
  }
}
