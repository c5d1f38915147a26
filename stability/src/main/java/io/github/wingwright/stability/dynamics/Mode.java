// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.dynamics;

import io.github.wingwright.core.quantity.AngularRate;
import io.github.wingwright.core.quantity.Time;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/**
 * One natural motion: a real root or a pair of complex ones.
 *
 * <pre>{@code
 * λ = n ± i·ω      ω_n = √(n² + ω²)      ζ = −n/ω_n      T = 2π/ω      t_½ or t_2 = ln 2/|n|
 * }</pre>
 *
 * @param kind which motion it is
 * @param real n [1/s], negative when it dies out
 * @param imaginary ω [rad/s], zero or positive
 */
public record Mode(ModeKind kind, double real, double imaginary) {
  public Mode {
    Objects.requireNonNull(kind, "kind");
    if (!Double.isFinite(real) || !(imaginary >= 0) || imaginary == Double.POSITIVE_INFINITY) {
      throw new IllegalArgumentException(
          "root must be finite with an imaginary part of 0 or more, was " + real + " + " + imaginary + "i");
    }
  }

  /** Whether the motion swings. */
  public boolean isOscillatory() {
    return imaginary > 0;
  }

  /** Whether the motion dies out. */
  public boolean isStable() {
    return real < 0;
  }

  /** Undamped natural frequency ω_n; for a real root its size. */
  public AngularRate naturalFrequency() {
    return AngularRate.radiansPerSecond(Math.hypot(real, imaginary));
  }

  /** Damping ratio ζ [-]: 1 or −1 for a real root, zero for a neutral one. */
  public double dampingRatio() {
    double size = Math.hypot(real, imaginary);
    return size == 0 ? 0 : -real / size;
  }

  /** Period, of a motion that swings. */
  public Optional<Time> period() {
    return imaginary > 0 ? finite(2 * Math.PI / imaginary) : Optional.empty();
  }

  /** Time to half the amplitude, of a motion that dies out. */
  public Optional<Time> timeToHalf() {
    return real < 0 ? finite(Math.log(2) / -real) : Optional.empty();
  }

  /** Time to twice the amplitude, of a motion that grows. */
  public Optional<Time> timeToDouble() {
    return real > 0 ? finite(Math.log(2) / real) : Optional.empty();
  }

  /** Time constant 1/|n|, of a motion that dies out or grows. */
  public Optional<Time> timeConstant() {
    return real == 0 ? Optional.empty() : finite(1 / Math.abs(real));
  }

  private static Optional<Time> finite(double seconds) {
    return Double.isFinite(seconds) ? Optional.of(Time.seconds(seconds)) : Optional.empty();
  }

  @Override
  public String toString() {
    String shape = isOscillatory()
        ? String.format(Locale.ROOT, "%s: period %.4g s, damping %.3f", kind.words(), 2 * Math.PI / imaginary,
            dampingRatio())
        : kind.words() + ":";
    String change = real == 0 ? " neutral"
        : String.format(Locale.ROOT, " %s in %.4g s", real < 0 ? "halves" : "doubles",
            Math.log(2) / Math.abs(real));
    return shape + (isOscillatory() ? "," : "") + change;
  }
}
