// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.Optional;

/**
 * How much of its skin a full-size aircraft keeps laminar, as parts of the wetted area: what to give to
 * {@link FrictionModel#partlyLaminar}. Behind a propeller take 0.8 to 0.9 of it.
 *
 * <p>Not for models: below a Reynolds number of about 5·10⁵ the layer is laminar throughout, see
 * {@link FrictionModel#mixed}.
 */
public enum AttainableLaminar {
  /** A light aircraft of smooth metal. */
  METAL_LIGHT_AIRCRAFT(0.10, 0.35),
  /** A light aircraft of smooth moulded composite. */
  MOULDED_LIGHT_AIRCRAFT(0.25, 0.50),
  /** A sailplane of smooth moulded composite. */
  MOULDED_SAILPLANE(0.35, 0.70),
  /** A helicopter of the usual make. */
  HELICOPTER(0.0, 0.0),
  /** A smooth helicopter. */
  SMOOTH_HELICOPTER(0.20, 0.20),
  /** A jet transport of metal. */
  JET_TRANSPORT(0.05, 0.10),
  /** A jet transport shaped for laminar flow, under research. */
  SHAPED_JET_TRANSPORT(0.25, 0.50),
  /** A jet transport with suction, under research. */
  SUCTION_JET_TRANSPORT(0.50, 0.80),
  /** A military aircraft in camouflage paint. */
  CAMOUFLAGED(0.0, 0.0),
  /** A supersonic aircraft. */
  SUPERSONIC(0.0, 0.0),
  /** A supersonic aircraft with suction, under research. */
  SUCTION_SUPERSONIC(0.20, 0.40);

  /** Reynolds number above which a layer does not stay laminar by being small. */
  private static final double FULL_SIZE = 3e6;

  private static final Source SOURCE = Sources.raymer("table 12.4");

  private final double body;
  private final double surface;

  AttainableLaminar(double body, double surface) {
    this.body = body;
    this.surface = surface;
  }

  /**
   * Of a fuselage.
   *
   * @return part of the wetted area
   */
  public double ofBody() {
    return body;
  }

  /**
   * Of wings and tails.
   *
   * @return part of the wetted area
   */
  public double ofSurface() {
    return surface;
  }

  /**
   * Where it comes from.
   *
   * @return the source
   */
  public Source source() {
    return SOURCE;
  }

  /** Says so where a body is meant to keep more than any without suction. */
  static Optional<Finding> checkBody(double part, double reynolds) {
    return check("laminar part of a body", part, reynolds, MOULDED_SAILPLANE.body);
  }

  /** Says so where a wing or tail is meant to keep more than any without suction. */
  static Optional<Finding> checkSurface(double part, double reynolds) {
    return check("laminar part of a surface", part, reynolds, MOULDED_SAILPLANE.surface);
  }

  private static Optional<Finding> check(String what, double part, double reynolds, double most) {
    return reynolds > FULL_SIZE && part > most
        ? Optional.of(
            Finding.of(
                Severity.CAUTION,
                what,
                "No aircraft of this size keeps so much of its skin laminar, but by suction.",
                part,
                Interval.between(0.0, most),
                NamedUnit.NUMBER,
                SOURCE))
        : Optional.empty();
  }
}
