// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.performance;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.Speed;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * Whether a glider flies for a thrower: the speed at which it leaves the hand against the speeds that it needs.
 *
 * <p>Below its stall speed it drops. Up to {@value #MARGIN} times the stall speed it flies only if thrown level and true.
 * Well above its best-glide speed it climbs and may stall on top: a thrower then releases nose-down or banks it.
 *
 * @param throwSpeed speed at which it leaves the hand
 * @param stallSpeed stall speed
 * @param bestGlideSpeed speed of the best glide
 * @param verdict the answer
 * @param findings the answer in words, heaviest first
 */
public record ThrowCheck(
    Speed throwSpeed, Speed stallSpeed, Speed bestGlideSpeed, Verdict verdict, List<Finding> findings)
    implements Serializable {

  /** Speed over stall speed from which a hand launch is safe (common practice, no source). */
  public static final double MARGIN = 1.2;

  /** Speed over best-glide speed from which a launch balloons (common practice, no source). */
  public static final double BALLOONING = 1.5;

  /** The answer. */
  public enum Verdict {
    /** The throw is slower than the stall. */
    DOES_NOT_FLY("does not fly for %s"),
    /** The throw is above the stall speed, but not by the usual margin. */
    MARGINAL("flies for %s with too little margin"),
    /** The throw has the usual margin over the stall speed. */
    FLIES("flies for %s");

    private final String words;

    Verdict(String words) {
      this.words = words;
    }

    /**
     * The answer in words.
     *
     * @return for example {@code "does not fly for this thrower"}
     */
    public String words() {
      return words("this thrower");
    }

    /**
     * The answer in words, for who or what launches it.
     *
     * @param launcher for example {@code "this elastic"}
     * @return for example {@code "flies for this elastic"}
     */
    public String words(String launcher) {
      Objects.requireNonNull(launcher, "launcher");
      return String.format(Locale.ROOT, words, launcher);
    }
  }

  /** Keeps the findings in order of weight. */
  public ThrowCheck {
    Objects.requireNonNull(findings, "findings");
    Objects.requireNonNull(throwSpeed, "throwSpeed");
    Objects.requireNonNull(stallSpeed, "stallSpeed");
    Objects.requireNonNull(bestGlideSpeed, "bestGlideSpeed");
    Objects.requireNonNull(verdict, "verdict");
    findings = Finding.inOrderOfWeight(findings);
  }

  static ThrowCheck of(Speed throwSpeed, Speed stallSpeed, Speed bestGlideSpeed) {
    double v = throwSpeed.si();
    if (!(v > 0.0 && v <= Double.MAX_VALUE)) {
      throw new IllegalArgumentException("throw speed must be positive, was " + throwSpeed);
    }
    double stall = stallSpeed.si();
    double best = bestGlideSpeed.si();
    Verdict verdict = verdict(v, stall);
    List<Finding> findings = new ArrayList<>();
    if (verdict == Verdict.DOES_NOT_FLY) {
      findings.add(
          finding(
              Severity.SERIOUS,
              "It leaves hand or elastic slower than it stalls, and drops. Make it lighter or larger, or use a curved plate of one or "
                  + "two walls as the wing.",
              v,
              Interval.atLeast(MARGIN * stall)));
    } else if (verdict == Verdict.MARGINAL) {
      findings.add(
          finding(
              Severity.CAUTION,
              "The launch is above the stall speed by less than the usual margin of a fifth.",
              v,
              Interval.atLeast(MARGIN * stall)));
    }
    if (v > BALLOONING * best) {
      findings.add(
          finding(
              Severity.NOTE,
              "The launch is much faster than the glide: it will climb and may stall on top. Launch it slower, slightly nose-down, or "
                  + "banked.",
              v,
              Interval.atMost(BALLOONING * best)));
    }
    return new ThrowCheck(throwSpeed, stallSpeed, bestGlideSpeed, verdict, findings);
  }

  /**
   * The answer on plain numbers.
   *
   * @param throwSpeed speed at which it leaves the hand [m/s]
   * @param stallSpeed stall speed [m/s]
   * @return the verdict
   */
  public static Verdict verdict(double throwSpeed, double stallSpeed) {
    if (throwSpeed < stallSpeed) {
      return Verdict.DOES_NOT_FLY;
    }
    return throwSpeed < MARGIN * stallSpeed ? Verdict.MARGINAL : Verdict.FLIES;
  }

  private static Finding finding(Severity severity, String message, double value, Interval range) {
    return Finding.of(
        severity, "launch speed", message, value, range, Speed.METRE_PER_SECOND, Source.COMMON_PRACTICE);
  }

  /**
   * How much the wing is loaded if it is pulled to its usable lift at throw speed.
   *
   * @return lift over weight, (V/V_s)²
   */
  public double loadFactor() {
    double ratio = throwSpeed.si() / stallSpeed.si();
    return ratio * ratio;
  }

  @Override
  public String toString() {
    return verdict.words() + ": launch " + throwSpeed.format(Speed.METRE_PER_SECOND, 3) + ", stall "
        + stallSpeed.format(Speed.METRE_PER_SECOND, 3);
  }
}
