// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import static io.github.wingwright.core.quantity.Length.metres;
import static io.github.wingwright.core.quantity.Length.millimetres;

import io.github.wingwright.core.aerodynamics.EstimatedPolar;
import io.github.wingwright.core.atmosphere.Atmosphere;
import io.github.wingwright.core.basis.Sized;
import io.github.wingwright.core.basis.Source;
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
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.core.sizing.Considerations;
import io.github.wingwright.core.sizing.FuselageSizing;
import io.github.wingwright.core.sizing.WingSizing;
import java.util.function.Function;

/** Briefs of invented gliders of usual proportions. */
public final class Briefs {
  /** A lens 6 % thick about a parabola of 4 % camber. */
  static final AirfoilSection LENS = new Lens(0.06, 0.04);

  static final AirfoilSection PLATE = new Lens(0.02, 0.0);

  private Briefs() {}

  /** Two parabolas about a parabola: its area is two thirds of its thickness whatever its camber. */
  public static AirfoilSection lens(double thickness, double camber) {
    return new Lens(thickness, camber);
  }

  /** A glider of 410 mm span with a heavy nose: no ballast is needed. */
  public static DesignBrief balanced() {
    return withNose(Mass.grams(12));
  }

  /** The same without the nose: ballast is needed. */
  static DesignBrief ballasted() {
    return withNose(Mass.grams(0.5));
  }

  private static DesignBrief withNose(Mass nose) {
    return brief(
            WingSizing.forSpan(millimetres(410)).aspectRatio(5.5).taperRatio(0.7).section(LENS).dihedral(Angle.degrees(8)),
            capsule(millimetres(300), millimetres(22)))
        .carrying(MassItem.of("nose cap", nose, Placement.at(millimetres(5), Length.ZERO)));
  }

  static DesignBrief brief(WingSizing wing, Function<Wing, Sized<Fuselage>> fuselage) {
    return DesignBrief.named("test-glider")
        .air(Atmosphere.standard().at(metres(300)))
        .thrown(Speed.metresPerSecond(7), metres(1.6))
        .wing(wing)
        .wingPolar(EstimatedPolar.of(LENS))
        .fuselage(fuselage)
        .tails(PLATE, EstimatedPolar.of(PLATE), new TailBrief(0.5, 3.5, 0.8), new TailBrief(0.035, 1.5, 0.7))
        .material(Materials.FOAMING_PLA);
  }

  static Function<Wing, Sized<Fuselage>> capsule(Length length, Length diameter) {
    return body(BodyShape.capsule(), length, diameter);
  }

  static Function<Wing, Sized<Fuselage>> body(BodyShape shape, Length length, Length diameter) {
    return wing ->
        FuselageSizing.of(shape)
            .considering(Considerations.finenessWithin(5, 20, Source.COMMON_PRACTICE))
            .length(length)
            .diameter(diameter);
  }

  /** Two parabolas about a parabola. */
  private record Lens(double thickness, double camberMost) implements AirfoilSection {
    @Override
    public String name() {
      return "lens";
    }

    @Override
    public double maximumThickness() {
      return thickness;
    }

    @Override
    public double maximumThicknessPosition() {
      return 0.5;
    }

    @Override
    public double maximumCamber() {
      return camberMost;
    }

    @Override
    public double trailingEdgeThickness() {
      return 0.0;
    }

    @Override
    public double area() {
      return 2.0 / 3.0 * thickness;
    }

    @Override
    public double perimeter() {
      return 2.0 + 8.0 / 3.0 * (0.5 * thickness * thickness + 2.0 * camberMost * camberMost);
    }

    @Override
    public double thickness(double x) {
      return 4.0 * thickness * x * (1.0 - x);
    }

    @Override
    public double camber(double x) {
      return 4.0 * camberMost * x * (1.0 - x);
    }

    @Override
    public double camberSlope(double x) {
      return 4.0 * camberMost * (1.0 - 2.0 * x);
    }

    @Override
    public void outline(double[] x, double[] y) {
      int last = x.length - 1;
      for (int i = 0; i <= last; i++) {
        double s = 2.0 * i / last;
        x[i] = Math.abs(1.0 - s);
        y[i] = camber(x[i]) + (s < 1.0 ? 0.5 : -0.5) * thickness(x[i]);
      }
    }
  }
}
