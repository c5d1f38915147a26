// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import io.github.wingwright.core.aerodynamics.BodyFormFactor;
import io.github.wingwright.core.aerodynamics.FrictionModel;
import io.github.wingwright.core.aerodynamics.SurfaceFormFactor;
import io.github.wingwright.core.aerodynamics.TurbulentFriction;
import io.github.wingwright.core.geometry.AirfoilSection;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.Panel;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.TaperedPlanform;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import java.util.List;

/** Where the parts of a glider sit and what they measure, for the quick and the full evaluation alike. */
final class PartGeometry {
  /** Tail efficiency of small models: the middle of the usual 0.7 to 0.9 (common practice, no source). */
  static final double TAIL_EFFICIENCY = 0.8;

  /** Friction of body and tails: laminar up to the Reynolds number at which a plate in quiet air turns turbulent. */
  static final FrictionModel FRICTION = FrictionModel.mixed(5e5, TurbulentFriction.PRANDTL_SCHLICHTING);

  static final BodyFormFactor BODY_FORM = BodyFormFactor.HOERNER_LAMINAR;
  static final SurfaceFormFactor TAIL_FORM = SurfaceFormFactor.HOERNER;

  /** Where a tail plate is thickest, over its chord. */
  static final double TAIL_THICKEST = 0.3;

  /** Interference of a tail with the body. */
  static final double TAIL_INTERFERENCE = 1.05;

  private PartGeometry() {}

  /** Lowest point of a section below its chord line, over the chord, not positive: it lies on the floor of the seat. */
  static double lowest(AirfoilSection section) {
    double[] x = new double[401];
    double[] y = new double[401];
    section.outline(x, y);
    double low = 0.0;
    for (double height : y) {
      low = Math.min(low, height);
    }
    return low;
  }

  /** Height of the wing's root chord over the axis, over the diameter: on top of the body, sunk in by a tenth of it. */
  static final double WING_HEIGHT = 0.4;

  /** Where ballast goes, over the diameter: a quarter of it behind the nose tip. */
  static final double BALLAST_PLACE = 0.25;

  /** Height of the wing's root chord over the axis. */
  static Length wingHeight(Fuselage fuselage) {
    return fuselage.diameter().times(WING_HEIGHT);
  }

  /**
   * Height of the tails over the reference line [m]: that of the middle of the body in the middle of the tailplane's root,
   * which ends with the body. On a straight body that is the line itself.
   */
  static double tailHeight(BodyShape shape, double length, double diameter, double rootChord) {
    return shape.centreHeight(Math.max(0.0, length - 0.5 * rootChord), length, diameter);
  }

  /** Where ballast goes. */
  static Length ballastPlace(Fuselage fuselage) {
    return fuselage.diameter().times(BALLAST_PLACE);
  }

  /** Mean aerodynamic chord of a tail of some area. */
  static double meanChord(double area, TailBrief tail) {
    return TaperedPlanform.meanAerodynamicChord(
        TailGeometry.rootChord(area, tail.aspectRatio(), tail.taperRatio()), tail.taperRatio());
  }

  /** A fin without sweep of its quarter-chord line. */
  static Planform fin(Length height, Length rootChord, Length tipChord) {
    double tangent = 0.25 * (rootChord.si() - tipChord.si()) / height.si();
    Panel panel = new Panel(height, tipChord, Angle.radians(Math.atan(tangent)), Angle.ZERO, Angle.ZERO);
    return Planform.fin(rootChord, List.of(panel));
  }

  /** Sweep of the half-chord line of a surface whose quarter-chord line is not swept [rad]. */
  static double halfChordSweep(double aspectRatio, double taperRatio) {
    return Math.atan(TaperedPlanform.sweepTangent(0.0, 0.25, 0.5, aspectRatio, taperRatio));
  }
}
