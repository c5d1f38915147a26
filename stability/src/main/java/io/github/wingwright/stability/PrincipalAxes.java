// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.mass.Inertia;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.MomentOfInertia;
import java.io.Serializable;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * Principal moments of inertia of an aircraft that is symmetric about its x-z plane, and how the axes lie.
 *
 * <p>Of such a body the pitch axis is a principal axis. In the plane of symmetry the principal axes are turned against the
 * fuselage by θ, from the product I_xz = ∫x·z dm with x aft and z up:
 *
 * <pre>{@code
 * tan 2θ = 2·I_xz/(I_zz − I_xx)
 * I_1,3 = ½·(I_xx + I_zz) ∓ √(¼·(I_zz − I_xx)² + I_xz²)
 * }</pre>
 *
 * <p>θ is positive where the long axis rises towards the tail, as that of a tail boom that sweeps up.
 *
 * @param roll least of the two moments in the plane of symmetry, about the long axis
 * @param pitch I_yy
 * @param yaw greatest of the two
 * @param inclination θ of the long axis against the fuselage reference line, positive if it rises aft
 * @param findings what to know: an aircraft that is not symmetric
 */
public record PrincipalAxes(
    MomentOfInertia roll, MomentOfInertia pitch, MomentOfInertia yaw, Angle inclination, List<Finding> findings)
    implements Serializable {
  private static final double HARDLY = 1e-3;

  /** Keeps its own list. */
  public PrincipalAxes {
    Objects.requireNonNull(findings, "findings");
    Objects.requireNonNull(roll, "roll");
    Objects.requireNonNull(pitch, "pitch");
    Objects.requireNonNull(yaw, "yaw");
    Objects.requireNonNull(inclination, "inclination");
    findings = List.copyOf(findings);
  }

  /**
   * The principal axes of an aircraft.
   *
   * @param inertia its inertia about its centre of gravity
   * @return the principal moments and the inclination
   */
  public static PrincipalAxes of(Inertia inertia) {
    Objects.requireNonNull(inertia, "inertia");
    double xx = inertia.roll().si();
    double zz = inertia.yaw().si();
    double xz = inertia.productXz().si();
    double half = 0.5 * (xx + zz);
    double radius = Math.hypot(0.5 * (zz - xx), xz);
    double lateral = Math.max(Math.abs(inertia.productXy().si()), Math.abs(inertia.productYz().si()));
    List<Finding> findings =
        lateral > HARDLY * zz
            ? List.of(
                Finding.of(
                    Severity.CAUTION,
                    "principal axes",
                    "The masses are not symmetric to port and starboard: pitch and roll are coupled. Balance the wing"
                        + " tips.",
                    Source.DEFINITION))
            : List.of();
    return new PrincipalAxes(
        MomentOfInertia.kilogramSquareMetres(half - radius),
        inertia.pitch(),
        MomentOfInertia.kilogramSquareMetres(half + radius),
        Angle.radians(inclination(xx, zz, xz)),
        findings);
  }

  /**
   * Inclination of the long axis.
   *
   * @param roll I_xx [kg·m²]
   * @param yaw I_zz [kg·m²]
   * @param product I_xz = ∫x·z dm [kg·m²], x aft and z up
   * @return θ [rad], positive if the long axis rises aft
   */
  public static double inclination(double roll, double yaw, double product) {
    return 0.5 * Math.atan2(2.0 * product, yaw - roll);
  }

  @Override
  public String toString() {
    return String.format(
        Locale.ROOT, "principal moments %s, %s, %s, axis at %.1f°", roll, pitch, yaw, inclination.degrees());
  }
}
