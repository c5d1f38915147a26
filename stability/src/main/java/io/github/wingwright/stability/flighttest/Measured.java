// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.flighttest;

import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.quantity.ScalarQuantity;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.function.ToDoubleFunction;

/**
 * A measured value with its standard uncertainty: two measurements out of three lie within it.
 *
 * @param value the value [SI], finite
 * @param uncertainty its standard uncertainty [SI], not negative
 */
public record Measured(double value, double uncertainty) implements Serializable {
  /** Step of the numerical slopes, over the uncertainty. */
  private static final double STEP = 0.1;

  /** Refuses what is no measurement. */
  public Measured {
    Door.finite(value, "measured value");
    Door.notNegative(uncertainty, "uncertainty");
  }

  /**
   * A measured quantity.
   *
   * @param value what was read
   * @param uncertainty its standard uncertainty
   * @param <Q> the kind of quantity
   * @return the measurement
   */
  public static <Q extends ScalarQuantity<Q>> Measured of(Q value, Q uncertainty) {
    Objects.requireNonNull(value, "value");
    Objects.requireNonNull(uncertainty, "uncertainty");
    return new Measured(value.si(), uncertainty.si());
  }

  /**
   * A function of measured values, to first order in their uncertainties.
   *
   * <pre>{@code u² = Σ (∂f/∂x_i·u_i)²}</pre>
   *
   * @param function the function
   * @param inputs its independent inputs
   * @return its value and uncertainty
   */
  public static Measured propagated(ToDoubleFunction<double[]> function, Measured... inputs) {
    Objects.requireNonNull(function, "function");
    Objects.requireNonNull(inputs, "inputs");
    double[] x = new double[inputs.length];
    for (int i = 0; i < x.length; i++) {
      x[i] = inputs[i].value();
    }
    double value = function.applyAsDouble(x.clone());
    double square = 0.0;
    for (int i = 0; i < x.length; i++) {
      double u = inputs[i].uncertainty();
      if (u > 0.0) {
        double[] low = x.clone();
        double[] high = x.clone();
        low[i] -= STEP * u;
        high[i] += STEP * u;
        double slope = (function.applyAsDouble(high) - function.applyAsDouble(low)) / (high[i] - low[i]);
        square += slope * slope * u * u;
      }
    }
    return new Measured(value, Math.sqrt(square));
  }

  /**
   * The weighted mean of several measurements of one thing.
   *
   * <pre>{@code x̄ = Σ x_i/u_i²/Σ 1/u_i²     u = max(1/√Σ 1/u_i², √(Σ (x_i − x̄)²/u_i²/((n − 1)·Σ 1/u_i²)))}</pre>
   *
   * @param all the measurements, at least one, each with an uncertainty
   * @return the mean; as uncertain as the measurements say, or as they scatter, whichever is more
   */
  public static Measured mean(List<Measured> all) {
    Objects.requireNonNull(all, "all");
    if (all.isEmpty()) {
      throw new IllegalArgumentException("measurements must be at least one, were none");
    }
    double weights = 0.0;
    double sum = 0.0;
    for (Measured m : all) {
      double w = m.weight();
      weights += w;
      sum += w * m.value();
    }
    double mean = sum / weights;
    double squares = 0.0;
    for (Measured m : all) {
      squares += m.weight() * (m.value() - mean) * (m.value() - mean);
    }
    double scatter = all.size() > 1 ? Math.sqrt(squares / ((all.size() - 1) * weights)) : 0.0;
    return new Measured(mean, Math.max(1.0 / Math.sqrt(weights), scatter));
  }

  private double weight() {
    Door.positive(uncertainty, "uncertainty of a measurement that is averaged");
    return 1.0 / (uncertainty * uncertainty);
  }

  /**
   * How far a value lies off, in uncertainties.
   *
   * @param other the value [SI]
   * @return the distance over the uncertainty
   */
  public double distanceTo(double other) {
    return Math.abs(other - value) / uncertainty;
  }

  /**
   * The measurement in words.
   *
   * @param unit the unit to show it in
   * @return for example {@code "7.9 ± 0.4"}, the uncertainty with two digits
   */
  public String format(NamedUnit<?> unit) {
    Objects.requireNonNull(unit, "unit");
    return NamedUnit.NUMBER.format(unit.fromSi(value), 3) + " ± " + unit.format(uncertainty, 2);
  }

  @Override
  public String toString() {
    return format(NamedUnit.NUMBER);
  }
}
