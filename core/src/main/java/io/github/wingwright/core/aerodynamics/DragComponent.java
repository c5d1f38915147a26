// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.LiftingSurface;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Door;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * One part of the drag build-up: something with a drag area D/q.
 *
 * <p>The quick path is {@link #dragArea(double, double, double)}; the workings are the same kernels as steps.
 */
public sealed interface DragComponent extends Serializable permits BodyDrag, SurfaceDrag, ItemDrag {

  /**
   * A fuselage, pod or boom, with its flat base where it has one: the base drags behind the body's own layer, see
   * {@link BodyDrag#withBase}. Upsweep is a component of its own, {@link #upsweep(Fuselage)}.
   *
   * @param name what it is
   * @param fuselage its shape
   * @param friction friction model
   * @param formFactor form factor
   * @return the component, without interference
   */
  static BodyDrag body(String name, Fuselage fuselage, FrictionModel friction, BodyFormFactor formFactor) {
    Objects.requireNonNull(fuselage, "fuselage");
    return new BodyDrag(
        name,
        fuselage.length().si(),
        fuselage.finenessRatio(),
        fuselage.wettedArea().si(),
        friction,
        formFactor,
        1.0,
        1.0,
        fuselage.baseArea().si());
  }

  /**
   * A wing or a tail, reckoned as friction times form factor; see {@link SurfaceFormFactor} for where that misleads.
   *
   * @param name what it is
   * @param surface its shape
   * @param friction friction model
   * @param formFactor form factor
   * @return the component, without interference
   */
  static SurfaceDrag surface(
      String name, LiftingSurface surface, FrictionModel friction, SurfaceFormFactor formFactor) {
    Objects.requireNonNull(surface, "surface");
    double place = surface.section().maximumThicknessPosition();
    return new SurfaceDrag(
        name,
        surface.planform().meanAerodynamicChord().si(),
        surface.section().maximumThickness(),
        place,
        surface.planform().sweepAt(Math.max(0.0, Math.min(1.0, place))).si(),
        surface.wettedArea().si(),
        friction,
        formFactor,
        1.0);
  }

  /**
   * Anything whose drag area is known.
   *
   * @param name what it is
   * @param dragArea D/q, not negative
   * @param source where it comes from
   * @return the component
   */
  static ItemDrag item(String name, Area dragArea, Source source) {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(source, "source");
    Door.notNegative(dragArea, "drag area of " + name);
    return ItemDrag.given(name, dragArea, source);
  }

  /**
   * A thing that stands in the flow, with a drag coefficient on its frontal area.
   *
   * @param name what it is
   * @param coefficient drag coefficient on the frontal area, not negative
   * @param frontalArea frontal area
   * @param source where the coefficient comes from
   * @return the component
   */
  static ItemDrag protuberance(String name, double coefficient, Area frontalArea, Source source) {
    Objects.requireNonNull(frontalArea, "frontal area");
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(source, "source");
    Door.notNegative(Objects.requireNonNull(frontalArea, "frontal area"), "frontal area of " + name);
    return ItemDrag.protuberance(name, coefficient, frontalArea, source);
  }

  /**
   * The upsweep of an afterbody.
   *
   * @param upsweep upsweep of its centre line, not negative
   * @param greatestSection greatest cross-section of the body
   * @return the component
   */
  static ItemDrag upsweep(Angle upsweep, Area greatestSection) {
    Door.notNegative(Objects.requireNonNull(upsweep, "upsweep"), "upsweep");
    Door.notNegative(Objects.requireNonNull(greatestSection, "greatest section"), "greatest cross-section");
    return ItemDrag.upsweep(upsweep, greatestSection);
  }

  /**
   * The upsweep of a fuselage as it is.
   *
   * @param fuselage its shape, straight or swept up
   * @return the component, of no drag for a straight body
   * @throws IllegalArgumentException if it is swept down, for which there is no formula
   */
  static ItemDrag upsweep(Fuselage fuselage) {
    Objects.requireNonNull(fuselage, "fuselage");
    return upsweep(fuselage.upsweep(), fuselage.frontalArea());
  }

  /**
   * A base: an end cut off.
   *
   * @param baseArea area of the base
   * @return the component
   */
  static ItemDrag base(Area baseArea) {
    Door.notNegative(Objects.requireNonNull(baseArea, "base area"), "area of the base");
    return ItemDrag.base(baseArea);
  }

  /**
   * What it is.
   *
   * @return the name
   */
  String name();

  /**
   * Drag area.
   *
   * @param speed airspeed [m/s], positive
   * @param kinematicViscosity ν [m²/s], positive
   * @param mach Mach number, not negative
   * @return D/q [m²]
   */
  double dragArea(double speed, double kinematicViscosity, double mach);

  /**
   * The drag area as a line of the workings.
   *
   * @param speed step of the airspeed
   * @param kinematicViscosity step of ν
   * @param mach step of the Mach number
   * @return the step of D/q, its value the same as that of {@link #dragArea} to the bit
   */
  Step step(Step speed, Step kinematicViscosity, Step mach);

  /**
   * What to know about it.
   *
   * @param speed airspeed [m/s]
   * @param kinematicViscosity ν [m²/s]
   * @param mach Mach number
   * @return findings of its methods
   */
  List<Finding> findings(double speed, double kinematicViscosity, double mach);
}
