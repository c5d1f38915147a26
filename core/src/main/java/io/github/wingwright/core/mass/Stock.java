// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.mass;

import io.github.wingwright.core.basis.Band;
import io.github.wingwright.core.basis.QuantityBand;
import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.Volume;
import java.util.Objects;

/**
 * Masses of what is bought by the sheet, the rod or the tube, and of solid cores of foam: the material's density times the
 * true volume.
 *
 * <pre>{@code
 * sheet: m = ρ·S·t        rod: m = ρ·¼·π·d²·l        tube: m = ρ·¼·π·(D² − d²)·l        core: m = ρ·V
 * }</pre>
 */
public final class Stock {
  private Stock() {}

  /**
   * Mass of a tube, or of a rod without a bore.
   *
   * <pre>{@code m = ρ·¼·π·(D² − d²)·l}</pre>
   *
   * @param density ρ [kg/m³]
   * @param outer outer diameter D [m]
   * @param inner inner diameter d [m], 0 for a rod
   * @param length length l [m]
   * @return m [kg]; carbon of 1550 kg/m³, 4 mm over 3 mm, 1 m long: 8.5216 g
   */
  public static double tubeMass(double density, double outer, double inner, double length) {
    return density * 0.25 * Math.PI * (outer * outer - inner * inner) * length;
  }

  /**
   * A plate cut from a sheet.
   *
   * @param name what it is
   * @param material what it is made of
   * @param area its area, positive
   * @param thickness thickness of the sheet, positive
   * @param centreOfGravity centroid of its area
   * @return the item with the range of the density
   */
  public static MassItem sheet(
      String name, Material material, Area area, Length thickness, Placement centreOfGravity) {
    Objects.requireNonNull(material, "material");
    Door.positive(area, "area of " + name);
    Door.positive(thickness, "thickness of " + name);
    return item(name, material, area.si() * thickness.si(), centreOfGravity);
  }

  /**
   * A tube, or a rod without a bore, along the x axis.
   *
   * @param name what it is
   * @param material what it is made of
   * @param outer outer diameter, positive
   * @param inner inner diameter, less than the outer; zero for a rod
   * @param length its length, positive
   * @param centreOfGravity its middle
   * @return the item with the range of the density and its own inertia
   */
  public static MassItem tube(
      String name, Material material, Length outer, Length inner, Length length, Placement centreOfGravity) {
    Door.positive(outer, "outer diameter of " + name);
    Door.notNegative(inner, "inner diameter of " + name);
    Door.positive(length, "length of " + name);
    if (inner.si() >= outer.si()) {
      throw new IllegalArgumentException(
          "inner diameter of " + name + " must be less than the outer of " + outer + ", was " + inner);
    }
    double volume = tubeMass(1.0, outer.si(), inner.si(), length.si());
    MassItem item = item(name, material, volume, centreOfGravity);
    // The ring of mean square radius (D² + d²)/8 as a thin tube.
    Length ring = Length.metres(Math.sqrt(0.5 * (outer.si() * outer.si() + inner.si() * inner.si())));
    return item.withOwnInertia(Inertia.ofTube(item.mass(), length, ring));
  }

  /**
   * A tube, or a rod without a bore, along the y axis: a spar through both halves of a wing, a joiner.
   *
   * @param name what it is
   * @param material what it is made of
   * @param outer outer diameter, positive
   * @param inner inner diameter, less than the outer; zero for a rod
   * @param length its length, positive
   * @param centreOfGravity its middle
   * @return the item with the range of the density and its own inertia
   */
  public static MassItem tubeAcross(
      String name, Material material, Length outer, Length inner, Length length, Placement centreOfGravity) {
    MassItem along = tube(name, material, outer, inner, length, centreOfGravity);
    return along.withOwnInertia(along.ownInertia().turnedAcross());
  }

  /**
   * A solid part, such as a wing cut from foam.
   *
   * @param name what it is
   * @param material what it is made of
   * @param volume its volume, positive
   * @param centreOfGravity centroid of its volume
   * @return the item with the range of the density
   */
  public static MassItem core(String name, Material material, Volume volume, Placement centreOfGravity) {
    Objects.requireNonNull(material, "material");
    return item(name, material, Door.positive(volume, "volume of " + name).si(), centreOfGravity);
  }

  private static MassItem item(String name, Material material, double volume, Placement place) {
    Band mass = material.densityBand().si().times(volume);
    return MassItem.of(name, QuantityBand.of(mass, Mass::kilograms), place).withSource(material.source());
  }

  /**
   * Likely mass of a plate cut from a sheet.
   *
   * @param material what it is made of
   * @param area its area
   * @param thickness thickness of the sheet
   * @return ρ·S·t
   */
  public static Mass sheetMass(Material material, Area area, Length thickness) {
    Objects.requireNonNull(material, "material");
    Objects.requireNonNull(area, "area");
    Objects.requireNonNull(thickness, "thickness");
    return Mass.kilograms(material.density().si() * area.si() * thickness.si());
  }
}
