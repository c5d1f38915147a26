// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Guideline;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Workings;
import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * The balance of dihedral against fin that decides whether a bank grows into a spiral.
 *
 * <p>Yaw speeds up the outer wing, which rolls the aircraft further in; dihedral rolls it out of the sideslip that comes
 * with the bank. The fin keeps the sideslip small, so a large fin at a short arm is bad for the spiral, a long arm good.
 *
 * <pre>{@code
 * B = (l_v/b)·(Γ/C_L)        B > 5° spirally stable, 5° neutral, below it diverges
 * Γ_least = 5°·C_L·b/l_v
 * }</pre>
 *
 * <p>Γ is the equivalent dihedral: of a polyhedral wing the mean of the panels' angles weighted with area times arm. The
 * rule holds for unswept wings without much rudder coupling; circling flight at the greatest C_L used is the hard case.
 */
public final class LateralStability {
  /** B at which the spiral is neutral [rad]. */
  public static final double NEUTRAL = Math.toRadians(5.0);

  /** Spiral parameter. */
  public static final Formula SPIRAL_PARAMETER =
      Formula.named("spiral parameter")
          .gives("B", Angle.RADIAN)
          .as("l_v/b·Γ/C_L")
          .where("l_v", "vertical tail arm", Length.METRE, 0.01, 60)
          .where("b", "wing span", Length.METRE, 0.05, 100)
          .where("Γ", "equivalent dihedral", Angle.RADIAN, -0.3, 0.7)
          .where("C_L", "lift coefficient", 0.05, 3)
          .from(Sources.SPIRAL_RULE)
          .computedBy(LateralStability::parameter);

  /** Equivalent dihedral at which the spiral is neutral. */
  public static final Formula NEEDED_DIHEDRAL =
      Formula.named("equivalent dihedral for a neutral spiral")
          .gives("Γ_n", Angle.RADIAN)
          .as("B·C_L·b / l_v")
          .where("B", "spiral parameter wanted", Angle.RADIAN, 0.01, 0.5)
          .where("C_L", "lift coefficient", 0.05, 3)
          .where("b", "wing span", Length.METRE, 0.05, 100)
          .where("l_v", "vertical tail arm", Length.METRE, 0.01, 60)
          .from(Sources.SPIRAL_RULE)
          .computedBy(LateralStability::dihedral);

  private static final Guideline MODEL_DIHEDRAL =
      new Guideline(
          "equivalent dihedral",
          Interval.between(Math.toRadians(8), Math.toRadians(15)),
          Angle.DEGREE,
          "hand-launched gliders without ailerons",
          "Less lets a bank grow; more wallows and costs lift.",
          Source.COMMON_PRACTICE);
  private static final Guideline RUDDER_ROLL =
      new Guideline(
          "vertical tail volume coefficient times spiral parameter",
          Interval.between(Math.toRadians(0.10), Math.toRadians(0.20)),
          Angle.DEGREE,
          "models that are rolled by the rudder",
          "Below it the rudder hardly rolls the model: add dihedral or fin.",
          Sources.SMALL_AIRCRAFT_RULES);

  private final Step parameter;
  private final Step needed;
  private final Angle dihedral;
  private final List<Finding> findings;

  private LateralStability(Step parameter, Step needed, Angle dihedral, List<Finding> findings) {
    this.parameter = parameter;
    this.needed = needed;
    this.dihedral = dihedral;
    this.findings = Finding.inOrderOfWeight(findings);
  }

  /**
   * Spiral parameter.
   *
   * <p>Example: l_v = 30 in, b = 78.4 in, Γ = 12.1°, C_L = 0.75 give 6.17°.
   *
   * @param arm vertical tail arm l_v [m]
   * @param span wing span b [m], positive
   * @param dihedral equivalent dihedral Γ [rad]
   * @param liftCoefficient C_L, positive
   * @return B [rad]
   */
  public static double parameter(double arm, double span, double dihedral, double liftCoefficient) {
    return arm / span * dihedral / liftCoefficient;
  }

  /**
   * Equivalent dihedral for a wanted spiral parameter.
   *
   * <p>Example: B = 5°, C_L = 0.75, b = 78.4 in, l_v = 30 in take 9.8°.
   *
   * @param parameter B [rad]
   * @param liftCoefficient C_L
   * @param span wing span b [m]
   * @param arm vertical tail arm l_v [m], positive
   * @return Γ [rad]
   */
  public static double dihedral(double parameter, double liftCoefficient, double span, double arm) {
    return parameter * liftCoefficient * span / arm;
  }

  /**
   * The spiral parameter of an airframe.
   *
   * @param airframe the airframe, with a fin, twin fins or a V-tail behind the wing
   * @param liftCoefficient lift coefficient to hold it at, positive: the greatest in circling flight
   * @param aircraftClass the class whose ranges it is held against
   * @return the parameter with its findings
   * @throws IllegalStateException if there is no vertical tail
   */
  public static LateralStability of(Airframe airframe, double liftCoefficient, AircraftClass aircraftClass) {
    Objects.requireNonNull(airframe, "airframe");
    Objects.requireNonNull(aircraftClass, "aircraftClass");
    Door.positive(liftCoefficient, "lift coefficient");
    Tail fin =
        airframe.yawTails().stream()
            .findFirst()
            .orElseThrow(
                () -> new IllegalStateException("spiral parameter needs a vertical tail, the airframe has none"));
    Length arm = Door.positive(fin.armFrom(airframe.wing()), "vertical tail arm");
    Angle dihedral = airframe.wing().planform().equivalentDihedral();
    Step lv = Step.given("vertical tail arm", "l_v", arm, Sources.AIRFRAME);
    Step b = Step.given("wing span", "b", airframe.wing().planform().span(), Sources.AIRFRAME);
    Step cl = Step.given("lift coefficient", "C_L", liftCoefficient, Sources.ASKED);
    Step gamma = Step.given("equivalent dihedral", "Γ", dihedral, Sources.AIRFRAME);
    Step parameter = Step.of(SPIRAL_PARAMETER, lv, b, gamma, cl);
    Step neutral = Step.given("spiral parameter of a neutral spiral", "B", Angle.radians(NEUTRAL), Sources.SPIRAL_RULE);
    Step needed = Step.of(NEEDED_DIHEDRAL, neutral, cl, b, lv);
    return new LateralStability(
        parameter, needed, dihedral, findings(airframe, parameter.value(), needed.value(), dihedral, aircraftClass));
  }

  private static List<Finding> findings(
      Airframe airframe, double parameter, double needed, Angle dihedral, AircraftClass aircraftClass) {
    List<Finding> findings = new ArrayList<>();
    if (parameter < NEUTRAL) {
      findings.add(
          Finding.of(
              aircraftClass == AircraftClass.HAND_LAUNCHED_GLIDER ? Severity.CAUTION : Severity.NOTE,
              "spiral parameter",
              String.format(
                  Locale.ROOT,
                  "A bank will grow into a spiral. Add dihedral, to %.1f° at least, or move the fin aft.",
                  Math.toDegrees(needed)),
              parameter,
              Interval.atLeast(NEUTRAL),
              Angle.DEGREE,
              Sources.SPIRAL_RULE));
    }
    if (aircraftClass == AircraftClass.HAND_LAUNCHED_GLIDER) {
      MODEL_DIHEDRAL.check(dihedral.si(), Severity.NOTE).ifPresent(findings::add);
    }
    if (aircraftClass == AircraftClass.RADIO_CONTROLLED_MODEL) {
      RUDDER_ROLL
          .check(parameter * TailVolume.verticalOf(airframe), Severity.NOTE)
          .ifPresent(findings::add);
    }
    return findings;
  }

  /**
   * The spiral parameter.
   *
   * @return B as an angle; above 5° the spiral is stable
   */
  public Angle spiralParameter() {
    return Angle.radians(parameter.value());
  }

  /**
   * Whether a bank dies out by the rule.
   *
   * @return B is 5° or more
   */
  public boolean isSpirallyStable() {
    return parameter.value() >= NEUTRAL;
  }

  /**
   * The equivalent dihedral of the wing.
   *
   * @return Γ
   */
  public Angle equivalentDihedral() {
    return dihedral;
  }

  /**
   * The equivalent dihedral at which the spiral is neutral.
   *
   * @return the least dihedral for spiral stability
   */
  public Angle neededDihedral() {
    return Angle.radians(needed.value());
  }

  /**
   * How the parameter came about.
   *
   * @return its step
   */
  public Step step() {
    return parameter;
  }

  /**
   * The workings.
   *
   * @return all steps
   */
  public Workings workings() {
    return Workings.of(List.of(parameter, needed));
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
        "spiral parameter %.1f°, dihedral %.1f° (%.1f° for a neutral spiral)",
        Math.toDegrees(parameter.value()),
        dihedral.degrees(),
        Math.toDegrees(needed.value()));
  }
}
