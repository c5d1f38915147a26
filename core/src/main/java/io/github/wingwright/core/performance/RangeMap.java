// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.performance;

import io.github.wingwright.core.numerics.Parallel;
import io.github.wingwright.core.quantity.Door;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;

/**
 * What a glider does over throw speed and setting: one flight for each pair.
 *
 * <p>The rows are flown in parallel, by the threads of the common pool or of the pool that the call is made in. Each flight
 * stands for itself, so the map is the same to the bit on any number of threads.
 */
public final class RangeMap {
  private final double[] speeds;
  private final double[] settings;
  private final double[][] values;

  private RangeMap(double[] speeds, double[] settings, double[][] values) {
    this.speeds = speeds;
    this.settings = settings;
    this.values = values;
  }

  /**
   * Flies a map.
   *
   * @param speeds throw speeds [m/s], rising
   * @param settings settings: a trimmed lift coefficient, a decalage [rad], …, rising
   * @param flights for a setting, what the flight of each throw speed gives; called once for each row, from several threads
   * @return the map
   */
  public static RangeMap of(double[] speeds, double[] settings, DoubleFunction<DoubleUnaryOperator> flights) {
    Objects.requireNonNull(speeds, "speeds");
    Objects.requireNonNull(settings, "settings");
    Objects.requireNonNull(flights, "flights");
    return several(speeds, settings, 1, setting -> {
      DoubleUnaryOperator flight = flights.apply(setting);
      return (speed, into) -> into[0] = flight.applyAsDouble(speed);
    }).get(0);
  }

  /** What the flights of one setting give, several values each. */
  @FunctionalInterface
  public interface Row {
    /**
     * One flight.
     *
     * @param speed throw speed [m/s]
     * @param into where the values go
     */
    void fly(double speed, double[] into);
  }

  /**
   * Flies once and gives several maps: distance, time and stall of the same flights.
   *
   * @param speeds throw speeds [m/s], rising
   * @param settings settings, rising
   * @param count how many values each flight gives, positive
   * @param flights for a setting, its flights; called once for each row, from several threads
   * @return as many maps
   */
  public static List<RangeMap> several(double[] speeds, double[] settings, int count, DoubleFunction<Row> flights) {
    Objects.requireNonNull(speeds, "speeds");
    Objects.requireNonNull(settings, "settings");
    Objects.requireNonNull(flights, "flights");
    Door.within(count, 1, 100, "number of values for each flight");
    double[] x = rising(speeds, "launch speeds");
    double[] y = rising(settings, "settings");
    double[][][] values = new double[count][y.length][x.length];
    Parallel.each(y.length, row -> {
      Row flight = flights.apply(y[row]);
      double[] all = new double[count];
      for (int i = 0; i < x.length; i++) {
        flight.fly(x[i], all);
        for (int k = 0; k < count; k++) {
          values[k][row][i] = all[k];
        }
      }
    });
    return Arrays.stream(values).map(v -> new RangeMap(x, y, v)).toList();
  }

  /**
   * Evenly spaced numbers.
   *
   * @param from the first
   * @param to the last, above the first
   * @param count how many, at least 2
   * @return the numbers
   */
  public static double[] evenly(double from, double to, int count) {
    Door.within(count, 2, 100_000, "number of values");
    if (!(Door.finite(to, "last number") > Door.finite(from, "first number"))) {
      throw new IllegalArgumentException("last number must be above the first, was " + to + " after " + from);
    }
    double[] values = new double[count];
    for (int i = 0; i < count; i++) {
      values[i] = from + (to - from) * i / (count - 1);
    }
    return values;
  }

  private static double[] rising(double[] values, String name) {
    if (values.length < 2) {
      throw new IllegalArgumentException(name + " must be at least two, got " + values.length);
    }
    for (int i = 0; i < values.length; i++) {
      Door.finite(values[i], name);
      if (i > 0 && !(values[i] > values[i - 1])) {
        throw new IllegalArgumentException(name + " must rise, were " + values[i - 1] + " then " + values[i]);
      }
    }
    return values.clone();
  }

  /**
   * Throw speeds.
   *
   * @return speeds [m/s]
   */
  public List<Double> speeds() {
    return listed(speeds);
  }

  /**
   * Settings.
   *
   * @return settings
   */
  public List<Double> settings() {
    return listed(settings);
  }

  /**
   * What the flights of one setting give.
   *
   * @param row which setting, from 0
   * @return one value for each throw speed
   */
  public List<Double> row(int row) {
    return listed(values[Door.within(row, 0, settings.length - 1, "row")]);
  }

  /**
   * What one flight gives.
   *
   * @param row which setting, from 0
   * @param column which throw speed, from 0
   * @return the value
   */
  public double value(int row, int column) {
    return values[Door.within(row, 0, settings.length - 1, "row")][
        Door.within(column, 0, speeds.length - 1, "column")];
  }

  /**
   * The map to look at in a shell: throw speeds across, settings down, at most ten of each, evenly taken from the map with both
   * ends.
   *
   * @param setting what the settings are called, such as {@code "decalage, °"}
   * @param perSetting what a setting is multiplied with to be shown: 1, or 180/π for angles in degrees
   * @return the table
   */
  public RangeTable table(String setting, double perSetting) {
    return new RangeTable(this, Door.said(setting, "name of the settings"), Door.finite(perSetting, "factor of the settings"));
  }

  /**
   * The same with the settings as they are.
   *
   * @return the table
   */
  public RangeTable table() {
    return table("settings", 1.0);
  }

  private static List<Double> listed(double[] values) {
    return Arrays.stream(values).boxed().toList();
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "map of %d flights, %d launch speeds by %d settings",
        speeds.length * settings.length, speeds.length, settings.length);
  }
}
