// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

import io.github.wingwright.core.basis.Band;
import io.github.wingwright.core.basis.Guideline;
import io.github.wingwright.core.basis.Source;

/**
 * Interference factors Q: what a part drags more because it sits next to another.
 *
 * <pre>{@code F = C_f·FF·Q·S_wet}</pre>
 *
 * <p>The likely value is the middle of the printed range.
 */
public enum Interference {
  /** A fuselage, which is the part that the others are counted against. */
  FUSELAGE(1.0, 1.0),
  /** A high, mid or well-filleted low wing. */
  FILLETED_WING(1.0, 1.0),
  /** A low wing without fillets. */
  UNFILLETED_LOW_WING(1.1, 1.4),
  /** A conventional tail. */
  CONVENTIONAL_TAIL(1.04, 1.05),
  /** A V tail. */
  V_TAIL(1.03, 1.03),
  /** A tail with twin fins at its tips. */
  H_TAIL(1.08, 1.08),
  /** A T tail. */
  T_TAIL(1.04, 1.04),
  /** A cruciform tail. */
  CRUCIFORM_TAIL(1.06, 1.06),
  /** A nacelle or store directly on fuselage or wing. */
  NACELLE_ATTACHED(1.5, 1.5),
  /** A nacelle or store less than about a diameter away. */
  NACELLE_NEAR(1.3, 1.3),
  /** A nacelle or store more than a diameter away. */
  NACELLE_FAR(1.0, 1.0),
  /** A store at the wing tip. */
  TIP_STORE(1.25, 1.25),
  /** A winglet. */
  WINGLET(1.0, 1.04),
  /** A strut where it enters wing or fuselage. */
  STRUT(1.1, 1.1);

  /** What the tables hold. */
  public static final Guideline PRINTED =
      Guideline.ofNumber(
          "interference factor",
          1.0,
          1.5,
          "the printed tables",
          "A factor that none of them holds needs a measurement of its own.",
          Sources.raymer("sec. 12.6.5"));

  private final double least;
  private final double greatest;

  Interference(double least, double greatest) {
    this.least = least;
    this.greatest = greatest;
  }

  /**
   * The factor with its range.
   *
   * @return Q
   */
  public Band band() {
    return new Band(least, factor(), greatest);
  }

  /**
   * The likely factor.
   *
   * @return the middle of the range
   */
  public double factor() {
    return 0.5 * (least + greatest);
  }

  /**
   * Where it comes from.
   *
   * @return the source
   */
  public Source source() {
    return switch (this) {
      case T_TAIL, CRUCIFORM_TAIL, WINGLET, STRUT -> Sources.gudmundsson("table of interference factors");
      default -> Sources.raymer("sec. 12.6.5");
    };
  }
}
