// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Guideline;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Force;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.quantity.Pressure;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * A running propeller as stability sees it: where it is, how hard it pulls and how much of the tail its slipstream meets.
 *
 * <pre>{@code
 * Propeller p = Propeller.of(millimetres(200), Placement.at(millimetres(-15), millimetres(10)))
 *     .blades(2, millimetres(18), degrees(15))
 *     .thrust(newtons(1.5), pascals(60), 0.5)
 *     .immersing(0.6);
 * NeutralPoint withPower = model.withPropeller(p, centreOfGravityHeight).neutralPoint();
 * }</pre>
 *
 * <p>Power off is a propeller without thrust: its normal force is left. What is not here, and said in a finding: the
 * downwash that the slipstream itself has, its swirl, and what it does to the lift of the wing.
 */
public final class Propeller {
  private static final Guideline DISC_THRUST =
      new Guideline(
          "thrust over dynamic pressure and disc area",
          Interval.between(0.0, 1.0),
          NamedUnit.NUMBER,
          "propellers in flight",
          "Above it, as in a steep climb or on the ground, the terms are only a direction. Fly the power-on trim with the"
              + " centre of gravity forward first.",
          Source.library("small changes of speed through the disc"));

  final Length diameter;
  final Placement hub;
  final int blades;
  final Length bladeChord;
  final Angle bladeAngle;
  final Area thrust;
  final double liftCoefficient;
  final double immersed;

  private Propeller(
      Length diameter,
      Placement hub,
      int blades,
      Length bladeChord,
      Angle bladeAngle,
      Area thrust,
      double liftCoefficient,
      double immersed) {
    this.diameter = diameter;
    this.hub = hub;
    this.blades = blades;
    this.bladeChord = bladeChord;
    this.bladeAngle = bladeAngle;
    this.thrust = thrust;
    this.liftCoefficient = liftCoefficient;
    this.immersed = immersed;
  }

  /**
   * A propeller that does not pull yet: two blades with a chord of a twelfth of the diameter at 18°, usual for models.
   *
   * @param diameter its diameter, positive
   * @param hub its centre; its axis runs along x
   * @return the propeller
   */
  public static Propeller of(Length diameter, Placement hub) {
    Objects.requireNonNull(hub, "hub");
    Door.positive(diameter, "diameter of the propeller");
    Door.finite(hub.x(), "place of the propeller");
    Door.finite(hub.z(), "height of the propeller");
    return new Propeller(
        diameter, hub, 2, diameter.times(1.0 / 12.0), Angle.degrees(18.0), Area.squareMetres(0.0), 0.5, 0.0);
  }

  /**
   * With these blades.
   *
   * @param number how many, 2 to 6
   * @param chord chord at three quarters of the radius, positive
   * @param angle angle to the disc at three quarters of the radius, 0° to 60°
   * @return the propeller with them
   */
  public Propeller blades(int number, Length chord, Angle angle) {
    if (number < 2 || number > 6) {
      throw new IllegalArgumentException("number of blades must be 2 to 6, was " + number);
    }
    Door.positive(chord, "blade chord");
    Door.within(angle, Angle.ZERO, Angle.degrees(60), "blade angle");
    return new Propeller(diameter, hub, number, chord, angle, thrust, liftCoefficient, immersed);
  }

  /**
   * With this thrust.
   *
   * @param force thrust, not negative
   * @param pressure dynamic pressure of the flight, positive
   * @param lift lift coefficient of that flight, positive
   * @return the propeller that pulls
   */
  public Propeller thrust(Force force, Pressure pressure, double lift) {
    Door.positive(pressure, "dynamic pressure");
    Door.positive(lift, "lift coefficient");
    Door.notNegative(force, "thrust");
    return new Propeller(
        diameter, hub, blades, bladeChord, bladeAngle, Area.squareMetres(force.si() / pressure.si()), lift, immersed);
  }

  /**
   * With part of the tail in its slipstream.
   *
   * @param part part of the tail's area, 0 to 1: the span of the slipstream, about 0.8 of the diameter, over that of the tail
   * @return the propeller with it
   */
  public Propeller immersing(double part) {
    Door.within(part, 0.0, 1.0, "part of the tail in the slipstream");
    return new Propeller(diameter, hub, blades, bladeChord, bladeAngle, thrust, liftCoefficient, part);
  }

  /** What to know about the neutral point with power, given what it moved. */
  List<Finding> findings(double shift, Length chord, double discThrust) {
    List<Finding> findings = new ArrayList<>();
    DISC_THRUST.check(discThrust, Severity.CAUTION).ifPresent(findings::add);
    if (shift < 0.0) {
      findings.add(
          Finding.of(
              -shift > 0.02 ? Severity.CAUTION : Severity.NOTE,
              "power",
              String.format(
                  Locale.ROOT,
                  "Power moves the neutral point forward by %s, %.1f %% of c̄. Keep that much more margin without power: the"
                      + " centre of gravity forward by as much, or raise the thrust line.",
                  chord.times(-shift).format(Length.MILLIMETRE, 2),
                  -100.0 * shift),
              Source.library("the sum of the terms of the propeller")));
    }
    findings.add(
        Finding.of(
            Severity.NOTE,
            "power",
            "Left out: downwash and swirl of the slipstream, and what it adds to the wing's lift. They move the neutral point"
                + " forward as a rule: begin with margin in hand.",
            Source.library("what the terms of the propeller do not have")));
    return findings;
  }

  @Override
  public String toString() {
    return "propeller of " + diameter + ", " + blades + " blades, T/q " + thrust;
  }
}
