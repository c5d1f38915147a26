// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.core.atmosphere.AirState;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Workings;
import io.github.wingwright.core.performance.SteadyGlide;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.quantity.Speed;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * The speeds that an elevator, or a trim tab, can hold.
 *
 * <p>The decalage for trim is a straight line over the lift coefficient, δ(C_L) = δ_0 + δ_1·C_L, and an elevator angle δ_e
 * (trailing edge down positive) takes τ·δ_e away from the decalage that was built. So
 *
 * <pre>{@code
 * C_L = (δ_built − τ·δ_e − δ_0)/δ_1        V = √(2·m·g/(ρ·S·C_L))
 * }</pre>
 *
 * <p>Trailing edge up slows down. δ_1 is positive for a stable aircraft and vanishes at the neutral point, where the
 * elevator would hold any speed and none.
 */
public final class ElevatorRange {
  private static final double GRAVITY = 9.80665;

  /** Lift coefficient that an elevator angle trims. */
  public static final Formula TRIMMED_LIFT =
      Formula.named("lift coefficient that the elevator trims")
          .gives("C_L")
          .as("(δ_b − τ·δ_e − δ_0) / δ_1")
          .where("δ_b", "decalage as built", Angle.RADIAN, -0.3, 0.3)
          .where("τ", "elevator effectiveness", 0.05, 1)
          .where("δ_e", "elevator angle, trailing edge down positive", Angle.RADIAN, -0.8, 0.8)
          .where("δ_0", "decalage for trim at no lift", Angle.RADIAN, -0.5, 0.5)
          .where("δ_1", "more decalage for each unit of lift coefficient", Angle.RADIAN, 0.002, 1)
          .from(Sources.MOMENT_EQUATION)
          .computedBy(ElevatorRange::trimmedLift);

  private final Step fast;
  private final Step slow;
  private final Interval lifts;
  private final double unitSpeed;
  private final List<Finding> findings;

  private ElevatorRange(Step fast, Step slow, Interval lifts, double unitSpeed, List<Finding> findings) {
    this.fast = fast;
    this.slow = slow;
    this.lifts = lifts;
    this.unitSpeed = unitSpeed;
    this.findings = Finding.inOrderOfWeight(findings);
  }

  /**
   * Lift coefficient that an elevator angle trims.
   *
   * @param built decalage as built [rad]
   * @param effectiveness τ
   * @param elevator δ_e, trailing edge down positive [rad]
   * @param atNoLift δ_0 [rad]
   * @param perLift δ_1 [rad], positive
   * @return C_L
   */
  public static double trimmedLift(
      double built, double effectiveness, double elevator, double atNoLift, double perLift) {
    return (built - effectiveness * elevator - atNoLift) / perLift;
  }

  /**
   * The range of an elevator.
   *
   * @param model the aircraft with section data; its incidences are those that were built
   * @param centreOfGravity centre of gravity, aft of the nose tip
   * @param elevator the elevator
   * @param up greatest deflection trailing edge up, as a positive angle
   * @param down greatest deflection trailing edge down, as a positive angle
   * @param mass mass
   * @param air the air it flies in
   * @return the range of lift coefficients and speeds
   * @throws IllegalStateException if the aircraft is not stable: no elevator angle holds a speed then
   */
  public static ElevatorRange of(
      PitchModel model,
      Length centreOfGravity,
      ControlSurface elevator,
      Angle up,
      Angle down,
      Mass mass,
      AirState air) {
    Objects.requireNonNull(elevator, "elevator");
    Objects.requireNonNull(up, "up");
    Objects.requireNonNull(air, "air");
    Objects.requireNonNull(model, "model");
    Door.positive(mass, "mass");
    Trim none = model.trim(centreOfGravity, 0.0);
    Trim one = model.trim(centreOfGravity, 1.0);
    double slope = one.decalage().si() - none.decalage().si();
    if (!(slope > 1e-6)) {
      throw new IllegalStateException(
          "no elevator angle holds a speed: the static margin is "
              + String.format(Locale.ROOT, "%.1f %%", 100.0 * model.staticMargin(centreOfGravity).value())
              + ". Move the centre of gravity forward first");
    }
    Angle built =
        model
            .airframe()
            .wing()
            .incidence()
            .minus(
                model
                    .airframe()
                    .pitchTail()
                    .orElseThrow(() -> new IllegalStateException("an elevator needs a horizontal tail"))
                    .incidence());
    Step[] common = {
      Step.given("decalage as built", "δ_b", built, Sources.AIRFRAME),
      effectiveness(model, elevator),
      none.step(),
      new Step.Given(
          "more decalage for each unit of lift coefficient", "δ_1", Angle.RADIAN, slope, Sources.MOMENT_EQUATION)
    };
    Step fast = lift("lift coefficient with the elevator down", common, down);
    Step slow = lift("lift coefficient with the elevator up", common, up.negated());
    double pressure = SteadyGlide.weightOverArea(mass.si(), GRAVITY, model.airframe().wing().planform().area().si());
    double unitSpeed = SteadyGlide.levelSpeed(pressure, air.density().si(), 1.0);
    PitchChoices.Section wing = model.choices.neededWingSection();
    double usable = wing.polar().usableLift(wing.reynolds()).likely();
    List<Finding> findings = new ArrayList<>();
    if (slow.value() < usable) {
      findings.add(
          Finding.of(
              Severity.CAUTION,
              "elevator",
              String.format(
                  Locale.ROOT,
                  "Full up elevator does not reach the greatest lift of the wing: the slowest flight is out of reach."
                      + " Give it more travel or more chord: %.1f° of travel up reaches it; or move the centre of gravity aft.",
                  Math.toDegrees(slope * usable + none.decalage().si() - built.si()) / effectiveness(model, elevator).value()),
              slow.value(),
              Interval.atLeast(usable),
              NamedUnit.NUMBER,
              Sources.MOMENT_EQUATION));
    }
    if (fast.value() > 0.3 * usable) {
      findings.add(
          Finding.of(
              Severity.NOTE,
              "elevator",
              String.format(
                  Locale.ROOT,
                  "Full down elevator leaves it slow. To fly it fast, build in %.1f° less decalage.",
                  Math.toDegrees((fast.value() - 0.3 * usable) * slope)),
              fast.value(),
              Interval.atMost(0.3 * usable),
              NamedUnit.NUMBER,
              Sources.MOMENT_EQUATION));
    }
    Interval lifts = Interval.between(Math.min(fast.value(), usable), Math.min(slow.value(), usable));
    return new ElevatorRange(fast, slow, lifts, unitSpeed, findings);
  }

  /** Both halves of a V-tail down turn it by τ, and its incidence by cos Γ: per incidence they do τ/cos Γ. */
  private static Step effectiveness(PitchModel model, ControlSurface elevator) {
    Step flap =
        Step.of(
            ControlSurface.EFFECTIVENESS,
            Step.given("elevator chord over tail chord", "E", elevator.chordFraction(), Source.BRIEF));
    return model
        .airframe()
        .pitchTail()
        .filter(t -> t.role() == Tail.Role.V)
        .map(
            t ->
                Step.of(
                    VTail.ELEVATOR_EFFECTIVENESS,
                    flap,
                    Step.given("dihedral of each half", "Γ", PitchTerms.dihedral(t), Sources.AIRFRAME)))
        .orElse(flap);
  }

  private static Step lift(String name, Step[] common, Angle deflection) {
    return Step.of(
        name,
        "C_L",
        TRIMMED_LIFT,
        common[0],
        common[1],
        Step.given("elevator angle", "δ_e", deflection, Source.BRIEF),
        common[2],
        common[3]);
  }

  /**
   * The lift coefficients that the elevator holds, up to the usable lift of the wing.
   *
   * @return from full down to full up
   */
  public Interval lifts() {
    return lifts;
  }

  /**
   * The slowest speed that the elevator holds.
   *
   * @return the speed with the elevator up, or the stall speed if that comes first
   */
  public Speed slowest() {
    return Speed.metresPerSecond(unitSpeed / Math.sqrt(lifts.upper()));
  }

  /**
   * The fastest speed that the elevator holds.
   *
   * @return the speed with the elevator down; very great where that would trim to no lift or less
   */
  public Speed fastest() {
    return Speed.metresPerSecond(unitSpeed / Math.sqrt(Math.max(lifts.lower(), 1e-3)));
  }

  /**
   * The workings.
   *
   * @return the steps of both ends
   */
  public Workings workings() {
    return Workings.of(List.of(fast, slow));
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
    return "elevator holds " + slowest() + " to " + fastest();
  }
}
