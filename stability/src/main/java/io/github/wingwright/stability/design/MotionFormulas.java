// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Density;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.MomentOfInertia;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.quantity.Speed;

/** What turns nondimensional derivatives into those per mass and inertia that the approximations of the modes take. */
final class MotionFormulas {
  private static final Source TABLE_4_4 =
      Source.fromMemory(
          "B. Etkin and L. D. Reid, Dynamics of Flight, 3rd ed.", "tables 4.4 and 4.5");

  /** Heave damping per mass. */
  static final Formula HEAVE =
      Formula.named("heave damping over mass")
          .gives("z_w")
          .as("−ρ·V·S·(C_Lα + C_D) / (2·m)")
          .where("ρ", "air density", Density.KILOGRAM_PER_CUBIC_METRE, 0.1, 1.6)
          .where("V", "airspeed", Speed.METRE_PER_SECOND, 1, 300)
          .where("S", "wing reference area", Area.SQUARE_METRE, 1e-4, 1000)
          .where("C_Lα", "lift slope of the aircraft", NamedUnit.PER_RADIAN, 0.5, 10)
          .where("C_D", "drag coefficient", 0, 0.5)
          .where("m", "mass", Mass.KILOGRAM, 1e-3, 5e5)
          .from(TABLE_4_4)
          .computedBy(MotionFormulas::heave);

  /** A moment with an angle of the flow, per inertia and speed across. */
  static final Formula BY_SPEED =
      Formula.named("moment due to a speed across, over inertia")
          .gives("m_w")
          .as("ρ·V·S·r·C / (2·I)")
          .where("ρ", "air density", Density.KILOGRAM_PER_CUBIC_METRE, 0.1, 1.6)
          .where("V", "airspeed", Speed.METRE_PER_SECOND, 1, 300)
          .where("S", "wing reference area", Area.SQUARE_METRE, 1e-4, 1000)
          .where("r", "mean chord in pitch, span in roll and yaw", Length.METRE, 0.005, 100)
          .where("C", "derivative with the angle", NamedUnit.PER_RADIAN, -10, 10)
          .where("I", "moment of inertia", MomentOfInertia.KILOGRAM_SQUARE_METRE, 1e-7, 1e8)
          .from(TABLE_4_4)
          .computedBy(MotionFormulas::bySpeed);

  /** A moment with a rate of turning, per inertia. */
  static final Formula BY_RATE =
      Formula.named("moment due to a rate, over inertia")
          .gives("m_q")
          .as("ρ·V·S·r²·C / (4·I)")
          .where("ρ", "air density", Density.KILOGRAM_PER_CUBIC_METRE, 0.1, 1.6)
          .where("V", "airspeed", Speed.METRE_PER_SECOND, 1, 300)
          .where("S", "wing reference area", Area.SQUARE_METRE, 1e-4, 1000)
          .where("r", "mean chord in pitch, span in roll and yaw", Length.METRE, 0.005, 100)
          .where("C", "derivative with the nondimensional rate", -100, 10)
          .where("I", "moment of inertia", MomentOfInertia.KILOGRAM_SQUARE_METRE, 1e-7, 1e8)
          .from(TABLE_4_4)
          .computedBy(MotionFormulas::byRate);

  /** A moment with the rate of angle of attack, per inertia. */
  static final Formula BY_LAG =
      Formula.named("moment due to the downwash lag, over inertia")
          .gives("m_wdot")
          .as("ρ·S·c̄²·C / (4·I)")
          .where("ρ", "air density", Density.KILOGRAM_PER_CUBIC_METRE, 0.1, 1.6)
          .where("S", "wing reference area", Area.SQUARE_METRE, 1e-4, 1000)
          .where("c̄", "mean aerodynamic chord", Length.METRE, 0.005, 20)
          .where("C", "derivative with the rate of angle of attack", -100, 10)
          .where("I", "moment of inertia", MomentOfInertia.KILOGRAM_SQUARE_METRE, 1e-7, 1e8)
          .from(TABLE_4_4)
          .computedBy(MotionFormulas::byLag);

  private MotionFormulas() {}

  static double heave(
      double density, double speed, double area, double slope, double drag, double mass) {
    return -density * speed * area * (slope + drag) / (2.0 * mass);
  }

  static double bySpeed(
      double density, double speed, double area, double length, double c, double inertia) {
    return density * speed * area * length * c / (2.0 * inertia);
  }

  static double byRate(
      double density, double speed, double area, double length, double c, double inertia) {
    return density * speed * area * length * length * c / (4.0 * inertia);
  }

  static double byLag(double density, double area, double chord, double c, double inertia) {
    return density * area * chord * chord * c / (4.0 * inertia);
  }
}
