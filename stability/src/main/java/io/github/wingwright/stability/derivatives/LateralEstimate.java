// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.derivatives;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Symbol;
import io.github.wingwright.core.basis.Workings;
import io.github.wingwright.stability.dynamics.LateralDerivatives;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/**
 * Handbook estimate of the nine lateral derivatives, part by part: wing, fin, body.
 *
 * <p>A specification: each call returns a new one, a part given again replaces the earlier one, and {@link #solve()}
 * adds up. A part that is missing adds nothing, so an aircraft without a fin or a body is estimated as it is.
 */
public final class LateralEstimate {
  /**
   * A wing and how it sits on the body.
   *
   * @param liftSlope lift slope of the wing a [1/rad]
   * @param sectionSlope section lift slope a₀ [1/rad]
   * @param aspectRatio aspect ratio A [-]
   * @param taper taper ratio λ [-]
   * @param dihedral equivalent dihedral Γ [rad]
   * @param sweep sweep of the quarter-chord line Λ [rad]
   * @param lift lift coefficient of the flight C_L [-]
   * @param profileDrag profile drag coefficient of the wing C_D0 [-]
   * @param height height of the wing above the body's axis over span [-]
   */
  public record WingShape(double liftSlope, double sectionSlope, double aspectRatio, double taper, double dihedral,
      double sweep, double lift, double profileDrag, double height) {
    public WingShape {
      finite("wing", liftSlope, sectionSlope, aspectRatio, taper, dihedral, sweep, lift, profileDrag, height);
      if (!(aspectRatio > 0 && taper >= 0)) {
        throw new IllegalArgumentException(String.format(Locale.ROOT,
            "aspect ratio must be positive and taper ratio not negative, were %s and %s", aspectRatio,
            taper));
      }
    }
  }

  /**
   * A fin.
   *
   * @param liftSlope lift slope on its effective aspect ratio a_v [1/rad]
   * @param areaRatio fin area over wing area S_v/S [-]
   * @param arm distance of its aerodynamic centre behind the centre of gravity over span l_g/b [-]
   * @param height height of its aerodynamic centre above the centre of gravity over span z_g/b [-]
   * @param sidewash factor of sidewash and dynamic pressure [-]; see {@link FinLateral#sidewashFactor}
   */
  public record FinShape(double liftSlope, double areaRatio, double arm, double height, double sidewash) {
    public FinShape {
      finite("fin", liftSlope, areaRatio, arm, height, sidewash);
    }
  }

  /**
   * A body.
   *
   * @param volume volume over S·b [-]
   * @param apparentMass difference of the apparent-mass factors k₂ − k₁ [-]
   * @param sectionRatio greatest section over wing area [-]
   * @param depth depth at the wing over span [-]
   * @param width width at the wing over span [-]
   */
  public record Body(double volume, double apparentMass, double sectionRatio, double depth, double width) {
    public Body {
      finite("body", volume, apparentMass, sectionRatio, depth, width);
    }
  }

  /**
   * What was estimated.
   *
   * @param total the nine derivatives
   * @param contributions what each part adds
   * @param findings formulas used outside their range
   * @param steps the formulas that were used, each with its inputs
   */
  public record Result(
      LateralDerivatives total, List<LateralContribution> contributions, List<Finding> findings, List<Step> steps) {
    public Result {
      Objects.requireNonNull(contributions, "contributions");
      Objects.requireNonNull(findings, "findings");
      Objects.requireNonNull(steps, "steps");
      Objects.requireNonNull(total, "total");
      contributions = List.copyOf(contributions);
      findings = List.copyOf(findings);
      steps = List.copyOf(steps);
    }

    @Override
    public String toString() {
      return String.format(Locale.ROOT, "lateral estimate: C_Yβ %.3f, C_lβ %.4f, C_nβ %.4f per rad",
          total.sideSideslip(), total.rollSideslip(), total.yawSideslip());
    }
  }

  private static final Source SHAPE = Source.taken("shape and flight that are estimated");

  private final Optional<WingShape> wing;
  private final List<FinShape> fins;
  private final Optional<Body> body;

  private LateralEstimate(Optional<WingShape> wing, List<FinShape> fins, Optional<Body> body) {
    this.wing = wing;
    this.fins = List.copyOf(fins);
    this.body = body;
  }

  /** The estimate of a wing; fin and body are added to it. */
  public static LateralEstimate of(WingShape wing) {
    Objects.requireNonNull(wing, "wing");
    return new LateralEstimate(Optional.of(wing), List.of(), Optional.empty());
  }

  /** With this fin. */
  public LateralEstimate fin(FinShape shape) {
    Objects.requireNonNull(shape, "shape");
    return fins(List.of(shape));
  }

  /** With these fins, each by itself: a V-tail is one, a pair is two. */
  public LateralEstimate fins(List<FinShape> shapes) {
    Objects.requireNonNull(shapes, "shapes");
    return new LateralEstimate(wing, shapes, body);
  }

  /** With this body. */
  public LateralEstimate body(Body shape) {
    Objects.requireNonNull(shape, "shape");
    return new LateralEstimate(wing, fins, Optional.of(shape));
  }

  /** Adds up the parts. */
  public Result solve() {
    List<LateralContribution> parts = new ArrayList<>();
    List<Step> steps = new ArrayList<>();
    wing.ifPresent(w -> addWing(w, parts, steps));
    body.ifPresent(b -> addBody(b, parts, steps));
    for (int i = 0; i < fins.size(); i++) {
      addFin(i == 0 ? "fin" : "fin " + (i + 1), fins.get(i), parts, steps);
    }
    double[] sum = new double[9];
    for (LateralContribution part : parts) {
      LateralDerivatives v = part.values();
      double[] add = {v.sideSideslip(), v.rollSideslip(), v.yawSideslip(), v.sideRollRate(), v.rollRollRate(),
        v.yawRollRate(), v.sideYawRate(), v.rollYawRate(), v.yawYawRate()};
      for (int i = 0; i < 9; i++) {
        sum[i] += add[i];
      }
    }
    return new Result(new LateralDerivatives(sum[0], sum[1], sum[2], sum[3], sum[4], sum[5], sum[6], sum[7],
        sum[8]), parts, Workings.of(steps).findings(), steps);
  }

  private void addWing(WingShape w, List<LateralContribution> parts, List<Step> steps) {
    parts.add(roll("wing, dihedral", use(steps, WingLateral.DIHEDRAL_EFFECT, w.liftSlope, w.dihedral, w.taper)));
    parts.add(roll("wing, sweep", use(steps, WingLateral.SWEEP_EFFECT, w.lift, w.sweep, w.taper)));
    if (body.isPresent()) {
      Body b = body.get();
      parts.add(roll("wing, height on the body",
          use(steps, WingLateral.POSITION_EFFECT, w.aspectRatio, w.height, b.depth, b.width)));
    }
    parts.add(new LateralContribution("wing, lift and damping", new LateralDerivatives(0, 0,
        use(steps, WingLateral.YAW_DUE_TO_SIDESLIP, w.lift, w.aspectRatio), 0,
        use(steps, WingLateral.ROLL_DAMPING_WITH_LOSS, w.sectionSlope, w.aspectRatio, w.taper),
        use(steps, WingLateral.YAW_DUE_TO_ROLL_RATE, w.lift, w.aspectRatio), 0,
        use(steps, WingLateral.ROLL_DUE_TO_YAW_RATE, w.lift, w.taper),
        use(steps, WingLateral.YAW_DAMPING, w.profileDrag, w.taper))));
  }

  private static void addBody(Body b, List<LateralContribution> parts, List<Step> steps) {
    parts.add(new LateralContribution("body", new LateralDerivatives(
        use(steps, BodyLateral.SIDE_FORCE, b.sectionRatio), 0,
        use(steps, BodyLateral.YAW_DUE_TO_SIDESLIP, b.apparentMass, b.volume), 0, 0, 0, 0, 0, 0)));
  }

  private static void addFin(String name, FinShape f, List<LateralContribution> parts, List<Step> steps) {
    double y = use(steps, FinLateral.SIDE_FORCE, f.liftSlope, f.sidewash, f.areaRatio);
    parts.add(new LateralContribution(name, new LateralDerivatives(y,
        FinLateral.rollDueToSideslip(y, f.height), FinLateral.yawDueToSideslip(y, f.arm),
        FinLateral.sideForceDueToRollRate(y, f.height), FinLateral.rollDamping(y, f.height),
        FinLateral.yawDueToRollRate(y, f.arm, f.height), FinLateral.sideForceDueToYawRate(y, f.arm),
        FinLateral.rollDueToYawRate(y, f.arm, f.height), FinLateral.yawDamping(y, f.arm))));
  }

  private static LateralContribution roll(String part, double rollSideslip) {
    return new LateralContribution(part, new LateralDerivatives(0, rollSideslip, 0, 0, 0, 0, 0, 0, 0));
  }

  /** What a formula gives, with its step kept for the workings. */
  private static double use(List<Step> steps, Formula formula, double... inputs) {
    Step[] given = new Step[inputs.length];
    for (int i = 0; i < given.length; i++) {
      Symbol symbol = formula.inputs().get(i);
      given[i] = new Step.Given(symbol.meaning(), symbol.symbol(), symbol.unit(), inputs[i], SHAPE);
    }
    Step step = Step.of(formula, given);
    steps.add(step);
    return step.value();
  }

  private static void finite(String part, double... values) {
    for (double v : values) {
      if (!Double.isFinite(v)) {
        throw new IllegalArgumentException("numbers of the " + part + " must be finite, one was " + v);
      }
    }
  }

  @Override
  public String toString() {
    return "lateral estimate of a wing" + (fins.isEmpty() ? "" : ", fin") + (body.isPresent() ? ", body" : "");
  }
}
