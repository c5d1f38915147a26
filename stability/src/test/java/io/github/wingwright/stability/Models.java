// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import static io.github.wingwright.core.quantity.Length.feet;
import static io.github.wingwright.core.quantity.Length.millimetres;

import io.github.wingwright.core.aerodynamics.SectionPolar;
import io.github.wingwright.core.basis.Band;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.geometry.AirfoilSection;
import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Length;
import java.util.List;

/** Aircraft and section data for the tests. */
final class Models {
  private Models() {}

  /** A flat plate, 3 % thick. */
  static final AirfoilSection PLATE = new Plate();

  /** A hand-launched glider of 400 mm span: invented, of usual proportions. */
  static Airframe glider() {
    return glider(8.0);
  }

  static Airframe glider(double dihedralDegrees) {
    Planform planform =
        Planform.tapered(millimetres(400), millimetres(60), millimetres(40)).withDihedral(Angle.degrees(dihedralDegrees));
    Wing wing =
        new Wing(planform, PLATE, Placement.at(millimetres(80), millimetres(8)), Angle.degrees(1.0));
    Tail level =
        new Tail(
            Tail.Role.HORIZONTAL,
            Planform.tapered(Area.squareCentimetres(45), 3.5, 0.8),
            PLATE,
            Placement.at(millimetres(285), Length.ZERO),
            Angle.degrees(-1.0));
    Tail fin =
        new Tail(
            Tail.Role.VERTICAL,
            Planform.taperedFin(Area.squareCentimetres(16), 1.5, 0.7),
            PLATE,
            Placement.at(millimetres(285), Length.ZERO),
            Angle.ZERO);
    Fuselage fuselage = new Fuselage(BodyShape.capsule(), millimetres(320), millimetres(20));
    return new Airframe(fuselage, wing, List.of(level, fin));
  }

  /** The light twin of the Purdue AAE 451 notes: areas, chord and arm as there; the rest does not matter to the tests. */
  static Wing lightTwinWing() {
    // A rectangular wing of S = 134 ft² would have the chord S/b = 4.06 ft: the notes round c̄ to 4.3 ft, which a taper
    // ratio of 0.466 gives for b = 33 ft.
    double taper = 0.4663;
    double root = 2.0 * 134.0 / (33.0 * (1.0 + taper));
    return new Wing(
        Planform.tapered(feet(33), feet(root), feet(taper * root)),
        PLATE,
        Placement.at(feet(11), Length.ZERO),
        Angle.degrees(2));
  }

  /** Section data without uncertainty. */
  static SectionPolar exact(double slope, double zeroLiftAngle, double moment, double usableLift) {
    return new Data(
        Band.exactly(slope), Band.exactly(zeroLiftAngle), Band.exactly(moment), Band.exactly(usableLift));
  }

  /** A symmetric section in potential flow. */
  static SectionPolar symmetric() {
    return exact(2.0 * Math.PI, 0.0, 0.0, 0.8);
  }

  /** A cambered section at a low Reynolds number: theory says −6°, tunnels −3° to −4°. */
  static SectionPolar uncertain() {
    double degree = Math.toRadians(1);
    return new Data(
        new Band(4.6, 5.2, 6.0),
        new Band(-6 * degree, -3.5 * degree, -2.5 * degree),
        new Band(-0.14, -0.10, -0.06),
        new Band(0.7, 0.8, 0.95));
  }

  private record Data(Band slope, Band zeroLift, Band cm, Band usable) implements SectionPolar {
    @Override
    public String name() {
      return "test data";
    }

    @Override
    public Source source() {
      return Source.library("invented for a test");
    }

    @Override
    public Interval reynoldsRange() {
      return Interval.between(1e4, 1e7);
    }

    @Override
    public Band profileDrag(double cl, double reynolds) {
      return Band.exactly(likelyProfileDrag(cl, reynolds));
    }

    @Override
    public double likelyProfileDrag(double cl, double reynolds) {
      return 0.02 + 0.01 * cl * cl;
    }

    @Override
    public Band zeroLiftAngle(double reynolds) {
      return zeroLift;
    }

    @Override
    public Band liftSlope(double reynolds) {
      return slope;
    }

    @Override
    public Band moment(double reynolds) {
      return cm;
    }

    @Override
    public Band usableLift(double reynolds) {
      return usable;
    }

    @Override
    public List<Finding> findings(double cl, double reynolds) {
      return List.of();
    }
  }

  private static final class Plate implements AirfoilSection {
    @Override
    public String name() {
      return "flat plate";
    }

    @Override
    public double maximumThickness() {
      return 0.03;
    }

    @Override
    public double maximumThicknessPosition() {
      return 0.5;
    }

    @Override
    public double maximumCamber() {
      return 0.0;
    }

    @Override
    public double trailingEdgeThickness() {
      return 0.03;
    }

    @Override
    public double area() {
      return 0.03;
    }

    @Override
    public double perimeter() {
      return 2.06;
    }

    @Override
    public double thickness(double x) {
      return 0.03;
    }

    @Override
    public double camber(double x) {
      return 0.0;
    }

    @Override
    public double camberSlope(double x) {
      return 0.0;
    }

    @Override
    public void outline(double[] x, double[] y) {
      throw new UnsupportedOperationException("the outline is not looked at");
    }
  }
}
