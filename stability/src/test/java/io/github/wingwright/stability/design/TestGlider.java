// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import static io.github.wingwright.core.quantity.Length.metres;
import static io.github.wingwright.core.quantity.Length.millimetres;

import io.github.wingwright.core.aerodynamics.EstimatedPolar;
import io.github.wingwright.core.atmosphere.AirState;
import io.github.wingwright.core.basis.Sized;
import io.github.wingwright.core.geometry.AirfoilSection;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.mass.MassItem;
import io.github.wingwright.core.mass.Materials;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.Pressure;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.core.quantity.Temperature;
import io.github.wingwright.core.sizing.Considerations;
import io.github.wingwright.core.sizing.FuselageSizing;
import io.github.wingwright.core.sizing.WingSizing;
import java.util.function.Function;

/** A glider for the tests of the loop: invented, of usual proportions. */
public final class TestGlider {
  public static final AirfoilSection WEDGE = new Wedge(0.06);
  static final AirfoilSection PLATE = new Wedge(0.02);
  static final TailBrief LEVEL = new TailBrief(0.5, 3.5, 0.8);
  static final TailBrief FIN = new TailBrief(0.035, 1.5, 0.7);

  private TestGlider() {}

  static WingSizing wing() {
    return WingSizing.forSpan(millimetres(410)).aspectRatio(6.5).taperRatio(0.7).dihedral(Angle.degrees(11)).section(WEDGE);
  }

  static Function<Wing, Sized<Fuselage>> body(double millimetres) {
    return wing ->
        FuselageSizing.of(BodyShape.capsule())
            .considering(Considerations.lengthAtMost(metres(2)))
            .length(millimetres(millimetres))
            .diameter(millimetres(18));
  }

  /** It needs ballast. */
  public static DesignBrief brief() {
    return DesignBrief.named("plover")
        .air(AirState.of(Pressure.pascals(100_900), Temperature.degreesCelsius(18)))
        .thrown(Speed.metresPerSecond(7), metres(1.6))
        .wing(wing())
        .wingPolar(EstimatedPolar.of(WEDGE))
        .fuselage(body(290))
        .tails(PLATE, EstimatedPolar.of(PLATE), LEVEL, FIN)
        .material(Materials.FOAMING_PLA);
  }

  /** A weight in the nose lets the wing find a station without ballast. */
  public static DesignBrief noseHeavy() {
    return brief().carrying(MassItem.of("nose clip", Mass.grams(14), Placement.at(millimetres(6), Length.ZERO)));
  }

  /** A section of four straight lines, thickest at 0.4: its area, outline and centroid are exact. */
  private record Wedge(double thickness) implements AirfoilSection {
    private static final double PEAK = 0.4;

    @Override
    public String name() {
      return "double wedge";
    }

    @Override
    public double maximumThickness() {
      return thickness;
    }

    @Override
    public double maximumThicknessPosition() {
      return PEAK;
    }

    @Override
    public double maximumCamber() {
      return 0.0;
    }

    @Override
    public double trailingEdgeThickness() {
      return 0.0;
    }

    @Override
    public double area() {
      return 0.5 * thickness;
    }

    @Override
    public double perimeter() {
      return 2.0 * (Math.hypot(PEAK, 0.5 * thickness) + Math.hypot(1.0 - PEAK, 0.5 * thickness));
    }

    @Override
    public double thickness(double x) {
      return thickness * (x < PEAK ? x / PEAK : (1.0 - x) / (1.0 - PEAK));
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
      int last = x.length - 1;
      for (int i = 0; i <= last; i++) {
        double turn = 2.0 * Math.PI * i / last;
        x[i] = 0.5 * (1.0 + Math.cos(turn));
        y[i] = Math.copySign(0.5 * thickness(x[i]), Math.PI - turn);
      }
    }
  }
}
