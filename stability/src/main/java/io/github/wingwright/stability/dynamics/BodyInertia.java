// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.dynamics;

import io.github.wingwright.core.mass.Inertia;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.MomentOfInertia;
import java.util.Locale;
import java.util.Objects;

/**
 * Mass and moments of inertia about the centre of gravity, in stability axes (x forward along the flight path, y to
 * starboard, z down).
 *
 * @param mass mass m [kg], positive
 * @param roll I_x [kg·m²], positive
 * @param pitch I_y [kg·m²], positive
 * @param yaw I_z [kg·m²], positive
 * @param product I_zx = ∫ z·x dm [kg·m²]; positive when the heavy nose hangs below the flight path. The same number in
 *     the axes of the geometry (x aft, z up), because both axes turn round
 */
public record BodyInertia(double mass, double roll, double pitch, double yaw, double product) {
  public BodyInertia {
    positive("mass", mass, "kg");
    positive("roll inertia", roll, "kg·m²");
    positive("pitch inertia", pitch, "kg·m²");
    positive("yaw inertia", yaw, "kg·m²");
    if (!(product * product < roll * yaw)) {
      throw new IllegalArgumentException(String.format(Locale.ROOT,
          "product of inertia must be smaller than √(roll·yaw) = %.6g kg·m², was %.6g kg·m²",
          Math.sqrt(roll * yaw), product));
    }
  }

  /**
   * From quantities.
   *
   * @param mass mass
   * @param roll I_x
   * @param pitch I_y
   * @param yaw I_z
   * @param product I_zx
   */
  public static BodyInertia of(Mass mass, MomentOfInertia roll, MomentOfInertia pitch, MomentOfInertia yaw,
      MomentOfInertia product) {
    Objects.requireNonNull(mass, "mass");
    Objects.requireNonNull(roll, "roll");
    Objects.requireNonNull(pitch, "pitch");
    Objects.requireNonNull(yaw, "yaw");
    Objects.requireNonNull(product, "product");
    return new BodyInertia(mass.kilograms(), roll.kilogramSquareMetres(), pitch.kilogramSquareMetres(),
        yaw.kilogramSquareMetres(), product.kilogramSquareMetres());
  }

  /**
   * From the inertia about the centre of gravity in the axes of the fuselage, turned into stability axes.
   *
   * @param mass mass
   * @param inertia inertia about the centre of gravity, x aft and z up
   * @param angleOfAttack angle of attack of the fuselage's axis in the steady flight
   */
  public static BodyInertia of(Mass mass, Inertia inertia, Angle angleOfAttack) {
    Objects.requireNonNull(mass, "mass");
    Objects.requireNonNull(inertia, "inertia");
    return of(mass, inertia.roll(), inertia.pitch(), inertia.yaw(), inertia.productXz())
        .turnedBy(angleOfAttack.radians());
  }

  /**
   * The same body with its axes turned: from body axes to stability axes, say.
   *
   * <pre>{@code
   * I_x′ = I_x·cos²ε + I_z·sin²ε − I_zx·sin 2ε
   * I_z′ = I_x·sin²ε + I_z·cos²ε + I_zx·sin 2ε
   * I_zx′ = ½·(I_x − I_z)·sin 2ε + I_zx·cos 2ε
   * }</pre>
   * Source: B. Etkin and L. D. Reid, <i>Dynamics of Flight</i>, 3rd ed., from memory; the signs are held by a test
   * with point masses.
   *
   * @param angle ε [rad], angle by which the new x axis points below the old one: the angle of attack of the old axis
   */
  public BodyInertia turnedBy(double angle) {
    double c = Math.cos(angle);
    double s = Math.sin(angle);
    return new BodyInertia(mass, roll * c * c + yaw * s * s - 2 * product * s * c, pitch,
        roll * s * s + yaw * c * c + 2 * product * s * c,
        (roll - yaw) * s * c + product * (c * c - s * s));
  }

  private static void positive(String name, double value, String unit) {
    if (!(value > 0) || value == Double.POSITIVE_INFINITY) {
      throw new IllegalArgumentException(
          String.format(Locale.ROOT, "%s must be positive, was %.6g %s", name, value, unit));
    }
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "%.4g kg, I_x %.4g, I_y %.4g, I_z %.4g, I_zx %.4g kg·m²", mass, roll, pitch,
        yaw, product);
  }
}
