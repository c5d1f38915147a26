// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.performance;

import io.github.wingwright.core.aerodynamics.DragLaw;
import io.github.wingwright.core.numerics.Minimum;
import io.github.wingwright.core.numerics.Tolerance;
import java.util.Objects;

/**
 * The glide of an aircraft on plain numbers, for loops: what {@link GlidePerformance} says in quantities.
 *
 * <p>The drag at a lift depends on the Reynolds number, that on the speed, and the speed a little on the drag, through the
 * cosine of the glide angle. Each evaluation repeats that circle until it closes; it contracts about two hundredfold in
 * each round.
 *
 * <p>A drag polar of a section need not be smooth or have one minimum, so an optimum is looked for by a scan over the whole
 * polar, with the cosine taken as 1. Around the best of the scan it is the place where the derivative vanishes, with the
 * circle closed and differentiated too. So the lift is good to about 1e-9 of itself, where a search for the least value,
 * which is flat there, would stop at 1e-7. An optimum within 1e-5 of the end of the polar counts as the end.
 *
 * <p>No method allocates, as long as the drag law does not and the polar is smooth near its best.
 */
public final class GlideKernel {
  /** The scan begins at this part of the usable lift: nobody glides best at less. */
  static final double LOWEST_PART = 0.1;

  private static final int SCAN_STEPS = 24;
  private static final Tolerance LIFT_TOLERANCE = Tolerance.relative(1e-9);
  private static final int MOST_ROUNDS = 25;
  private static final int MOST_CHORDS = 60;

  /** Relative width of the differences that make the derivative. */
  private static final double H = 1e-5;

  private GlideKernel() {}

  /**
   * Speed of a steady glide at a lift coefficient, with the drag at that speed.
   *
   * <pre>{@code V = √(2·P·cos γ/(ρ·C_L))        γ = atan(C_D(C_L, V)/C_L)}</pre>
   *
   * @param drag drag of the aircraft
   * @param lift C_L, positive
   * @param weightOverArea P = m·g/S [Pa], positive
   * @param density ρ [kg/m³], positive
   * @param kinematicViscosity ν [m²/s], positive
   * @return V [m/s]
   */
  public static double speed(
      DragLaw drag, double lift, double weightOverArea, double density, double kinematicViscosity) {
    Objects.requireNonNull(drag, "drag");
    return turningSpeed(drag, lift, 1.0, weightOverArea, density, kinematicViscosity);
  }

  /**
   * Speed of a steady gliding turn at a lift coefficient: as in a straight glide, with the lift's upright part alone against
   * the weight.
   *
   * <pre>{@code V = √(2·P·cos γ/(ρ·C_L·cos φ))        γ = atan(C_D(C_L, V)/(C_L·cos φ))}</pre>
   *
   * @param drag drag of the aircraft
   * @param lift C_L, positive
   * @param cosineOfBank cos φ, above 0, at most 1
   * @param weightOverArea P = m·g/S [Pa], positive
   * @param density ρ [kg/m³], positive
   * @param kinematicViscosity ν [m²/s], positive
   * @return V [m/s]
   */
  public static double turningSpeed(
      DragLaw drag,
      double lift,
      double cosineOfBank,
      double weightOverArea,
      double density,
      double kinematicViscosity) {
    Objects.requireNonNull(drag, "drag");
    double upright = lift * cosineOfBank;
    double level = SteadyGlide.levelSpeed(weightOverArea, density, upright);
    double speed = level;
    for (int i = 0; i < MOST_ROUNDS; i++) {
      double next = level * rootOfCosine(upright, drag.likelyCoefficient(lift, speed, kinematicViscosity));
      if (Math.abs(next - speed) <= 1e-12 * speed) {
        return next;
      }
      speed = next;
    }
    return speed;
  }

  /**
   * Drag coefficient in a steady glide at a lift coefficient.
   *
   * @param drag drag of the aircraft
   * @param lift C_L, positive
   * @param weightOverArea P = m·g/S [Pa], positive
   * @param density ρ [kg/m³], positive
   * @param kinematicViscosity ν [m²/s], positive
   * @return C_D
   */
  public static double dragCoefficient(
      DragLaw drag, double lift, double weightOverArea, double density, double kinematicViscosity) {
    Objects.requireNonNull(drag, "drag");
    double speed = speed(drag, lift, weightOverArea, density, kinematicViscosity);
    return drag.likelyCoefficient(lift, speed, kinematicViscosity);
  }

  /** √cos γ = (1 + (C_D/C_L)²)^−¼. */
  static double rootOfCosine(double lift, double drag) {
    double slope = drag / lift;
    return 1.0 / Math.sqrt(Math.sqrt(1.0 + slope * slope));
  }

  /**
   * Sink rate of a steady glide.
   *
   * @param lift C_L, positive
   * @param drag C_D
   * @param weightOverArea P [Pa], positive
   * @param density ρ [kg/m³], positive
   * @return w [m/s], positive down
   */
  public static double sinkRate(double lift, double drag, double weightOverArea, double density) {
    double angle = SteadyGlide.angle(drag, lift);
    return SteadyGlide.sinkRate(SteadyGlide.speed(weightOverArea, angle, density, lift), angle);
  }

  /**
   * The lift that ends the polar of a glide.
   *
   * @param drag drag of the aircraft
   * @param weightOverArea P [Pa], positive
   * @param density ρ [kg/m³], positive
   * @param kinematicViscosity ν [m²/s], positive
   * @return usable C_L
   */
  public static double usableLift(
      DragLaw drag, double weightOverArea, double density, double kinematicViscosity) {
    Objects.requireNonNull(drag, "drag");
    return drag.usableLift(SteadyGlide.levelSpeed(weightOverArea, density, 1.0), kinematicViscosity);
  }

  /**
   * Lift coefficient of the best glide on the polar that ends at the usable lift.
   *
   * @param drag drag of the aircraft
   * @param weightOverArea P [Pa], positive
   * @param density ρ [kg/m³], positive
   * @param kinematicViscosity ν [m²/s], positive
   * @return C_L
   */
  public static double bestGlideLift(
      DragLaw drag, double weightOverArea, double density, double kinematicViscosity) {
    Objects.requireNonNull(drag, "drag");
    return optimum(drag, true, weightOverArea, density, kinematicViscosity);
  }

  /**
   * Lift coefficient of least sink on the polar that ends at the usable lift.
   *
   * @param drag drag of the aircraft
   * @param weightOverArea P [Pa], positive
   * @param density ρ [kg/m³], positive
   * @param kinematicViscosity ν [m²/s], positive
   * @return C_L
   */
  public static double leastSinkLift(
      DragLaw drag, double weightOverArea, double density, double kinematicViscosity) {
    Objects.requireNonNull(drag, "drag");
    return optimum(drag, false, weightOverArea, density, kinematicViscosity);
  }

  private static double optimum(DragLaw drag, boolean range, double p, double rho, double nu) {
    double usable = usableLift(drag, p, rho, nu);
    double unitSpeed = SteadyGlide.levelSpeed(p, rho, 1.0);
    double step = (1.0 - LOWEST_PART) * usable / SCAN_STEPS;
    int best = 0;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i <= SCAN_STEPS; i++) {
      double cl = usable - i * step;
      double speed = unitSpeed / Math.sqrt(cl);
      double cost = drag.likelyCoefficient(cl, speed, nu) / cl;
      if (!range) {
        cost *= speed;
      }
      if (cost < least) {
        least = cost;
        best = i;
      }
    }
    double upper = best == 0 ? usable * (1.0 - H) : usable - (best - 1) * step;
    double lower = usable - Math.min(SCAN_STEPS, best + 1) * step;
    double above = slope(drag, range, upper, p, rho, nu);
    if (best == 0 && above <= 0.0) {
      return usable;
    }
    double below = slope(drag, range, lower, p, rho, nu);
    if (best == SCAN_STEPS && below >= 0.0) {
      return lower;
    }
    if (!(below < 0.0 && above > 0.0)) {
      // A polar with a corner or a ripple here: no derivative to go by.
      return Minimum.within(cl -> cost(drag, range, cl, p, rho, nu), lower, upper, LIFT_TOLERANCE).argument();
    }
    return flat(drag, range, lower, below, upper, above, p, rho, nu);
  }

  /** Where the derivative vanishes between two places, by chords of which the end that stays is weighted down. */
  private static double flat(
      DragLaw drag, boolean range, double lower, double below, double upper, double above, double p, double rho, double nu) {
    double a = lower;
    double atA = below;
    double b = upper;
    double atB = above;
    double x = b;
    for (int i = 0; i < MOST_CHORDS; i++) {
      double before = x;
      x = b - atB * (b - a) / (atB - atA);
      if (Math.abs(x - before) <= 1e-11 * x) {
        break;
      }
      double at = slope(drag, range, x, p, rho, nu);
      if (at == 0.0) {
        break;
      }
      if ((at > 0.0) == (atB > 0.0)) {
        double weight = 1.0 - at / atB;
        atA *= weight > 0.0 ? weight : 0.5;
      } else {
        a = b;
        atA = atB;
      }
      b = x;
      atB = at;
    }
    return x;
  }

  /**
   * The logarithmic derivative of drag over lift, or of the sink rate, by the lift.
   *
   * <pre>{@code
   * V = √(2·P·cos γ/(ρ·C_L))      tan γ = t = C_D/C_L      s = sin² γ
   * dV/V = −½·dC_L/C_L − ½·s·dt/t
   * dC_D·(1 + ½·s·D_V) = C_D·(D_L − ½·D_V·(1 − s))·dC_L/C_L
   * }</pre>
   *
   * <p>with D_L and D_V the logarithmic derivatives of the drag by lift and by speed.
   */
  private static double slope(DragLaw drag, boolean range, double cl, double p, double rho, double nu) {
    double v = speed(drag, cl, p, rho, nu);
    double cd = drag.likelyCoefficient(cl, v, nu);
    double byLift =
        (drag.likelyCoefficient(cl * (1.0 + H), v, nu) - drag.likelyCoefficient(cl * (1.0 - H), v, nu)) / (2.0 * H * cd);
    double bySpeed =
        (drag.likelyCoefficient(cl, v * (1.0 + H), nu) - drag.likelyCoefficient(cl, v * (1.0 - H), nu)) / (2.0 * H * cd);
    double tangent = cd / cl;
    double s = tangent * tangent / (1.0 + tangent * tangent);
    double ofDrag = (byLift - 0.5 * bySpeed * (1.0 - s)) / (1.0 + 0.5 * s * bySpeed);
    double ofTangent = ofDrag - 1.0;
    return range ? ofTangent : -0.5 + (1.0 - 1.5 * s) * ofTangent;
  }

  private static double cost(DragLaw drag, boolean range, double cl, double p, double rho, double nu) {
    double cd = dragCoefficient(drag, cl, p, rho, nu);
    return range ? cd / cl : sinkRate(cl, cd, p, rho);
  }
}
