// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.performance;

import io.github.wingwright.core.aerodynamics.AircraftDrag;
import io.github.wingwright.core.numerics.Minimum;
import io.github.wingwright.core.numerics.Tolerance;
import java.util.function.DoubleUnaryOperator;

/**
 * The glide of an aircraft on plain numbers, for loops: what {@link GlidePerformance} says in quantities.
 *
 * <p>The drag at a lift depends on the Reynolds number, that on the speed, and the speed a little on the drag, through the
 * cosine of the glide angle. Each evaluation repeats that circle until it closes; it contracts about two hundredfold in
 * each round.
 *
 * <p>A drag polar of a section need not be smooth or have one minimum, so an optimum is looked for by a scan over the whole
 * polar, with the cosine taken as 1, and then refined around the best of the scan. At the end of the polar it may be the end.
 */
public final class GlideKernel {
  /** The scan begins at this part of the usable lift: nobody glides best at less. */
  static final double LOWEST_PART = 0.1;

  private static final int SCAN_STEPS = 24;
  private static final Tolerance LIFT_TOLERANCE = Tolerance.relative(1e-7);
  private static final int MOST_ROUNDS = 25;

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
      AircraftDrag drag, double lift, double weightOverArea, double density, double kinematicViscosity) {
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
      AircraftDrag drag,
      double lift,
      double cosineOfBank,
      double weightOverArea,
      double density,
      double kinematicViscosity) {
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
      AircraftDrag drag, double lift, double weightOverArea, double density, double kinematicViscosity) {
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
      AircraftDrag drag, double weightOverArea, double density, double kinematicViscosity) {
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
      AircraftDrag drag, double weightOverArea, double density, double kinematicViscosity) {
    double usable = usableLift(drag, weightOverArea, density, kinematicViscosity);
    return refined(
        cl -> drag.likelyCoefficient(cl, SteadyGlide.levelSpeed(weightOverArea, density, cl), kinematicViscosity) / cl,
        cl -> dragCoefficient(drag, cl, weightOverArea, density, kinematicViscosity) / cl,
        usable);
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
      AircraftDrag drag, double weightOverArea, double density, double kinematicViscosity) {
    double usable = usableLift(drag, weightOverArea, density, kinematicViscosity);
    return refined(
        cl -> {
          double speed = SteadyGlide.levelSpeed(weightOverArea, density, cl);
          return speed * drag.likelyCoefficient(cl, speed, kinematicViscosity) / cl;
        },
        cl ->
            sinkRate(
                cl, dragCoefficient(drag, cl, weightOverArea, density, kinematicViscosity), weightOverArea, density),
        usable);
  }

  /** Scans the whole polar with the quick function and refines around the best with the exact one. */
  static double refined(DoubleUnaryOperator quick, DoubleUnaryOperator exact, double usable) {
    double step = (1.0 - LOWEST_PART) * usable / SCAN_STEPS;
    int best = 0;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i <= SCAN_STEPS; i++) {
      double value = quick.applyAsDouble(usable - i * step);
      if (value < least) {
        least = value;
        best = i;
      }
    }
    double upper = best == 0 ? usable : usable - (best - 1) * step;
    double lower = usable - Math.min(SCAN_STEPS, best + 1) * step;
    return Minimum.within(exact, lower, upper, LIFT_TOLERANCE).argument();
  }
}
