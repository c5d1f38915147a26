// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.mass;

import io.github.wingwright.core.basis.Band;
import io.github.wingwright.core.basis.QuantityBand;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.Density;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Pressure;
import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What a part is made of: its density as a range with a likely value, and its stiffness and strength where they are known.
 *
 * <p>{@link Materials} holds a small catalogue; a material of one's own, weighed, is better:
 *
 * <pre>{@code
 * Material mine = Material.of("my PLA, 205 °C", gramsPerCubicCentimetre(1.23), Source.BRIEF);
 * }</pre>
 */
public final class Material implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String name;
  private final Band density;
  private final @Nullable Band elasticModulus;
  private final Source source;
  private final @Nullable Source elasticModulusSource;
  private final @Nullable Band strength;
  private final @Nullable Source strengthSource;

  private Material(
      String name,
      Band density,
      @Nullable Band elasticModulus,
      Source source,
      @Nullable Source elasticModulusSource,
      @Nullable Band strength,
      @Nullable Source strengthSource) {
    this.name = Door.said(name, "name of a material");
    this.density = density;
    this.elasticModulus = elasticModulus;
    this.source = source;
    this.elasticModulusSource = elasticModulusSource;
    this.strength = strength;
    this.strengthSource = strengthSource;
  }

  /**
   * A material whose density is known.
   *
   * @param name what it is
   * @param density its density, positive
   * @param source where the density comes from
   * @return the material
   */
  public static Material of(String name, Density density, Source source) {
    Objects.requireNonNull(source, "source");
    return of(name, density, density, density, source);
  }

  /**
   * A material whose density is known within a range.
   *
   * @param name what it is
   * @param low least density, positive
   * @param likely the density to reckon with
   * @param high greatest density
   * @param source where the range comes from
   * @return the material
   */
  public static Material of(String name, Density low, Density likely, Density high, Source source) {
    Objects.requireNonNull(likely, "likely");
    Objects.requireNonNull(source, "source");
    Door.positive(low, "density of " + name);
    Door.positive(high, "density of " + name);
    return new Material(name, new Band(low.si(), likely.si(), high.si()), null, source, null, null, null);
  }

  /**
   * The same material with its stiffness.
   *
   * @param low least modulus of elasticity, positive
   * @param likely the modulus to reckon with
   * @param high greatest modulus
   * @param from where the range comes from
   * @return the material
   */
  public Material withElasticModulus(Pressure low, Pressure likely, Pressure high, Source from) {
    Objects.requireNonNull(likely, "likely");
    Objects.requireNonNull(from, "source");
    Door.positive(low, "elastic modulus of " + name);
    Door.positive(high, "elastic modulus of " + name);
    return new Material(name, density, new Band(low.si(), likely.si(), high.si()), source, from, strength, strengthSource);
  }

  /**
   * The same material with its strength in bending.
   *
   * @param low least stress at which it breaks or yields, positive
   * @param likely the stress to reckon with
   * @param high greatest stress
   * @param from where the range comes from
   * @return the material
   */
  public Material withStrength(Pressure low, Pressure likely, Pressure high, Source from) {
    Objects.requireNonNull(likely, "likely");
    Objects.requireNonNull(from, "source");
    Door.positive(low, "strength of " + name);
    Door.positive(high, "strength of " + name);
    Band stress = new Band(low.si(), likely.si(), high.si());
    return new Material(name, density, elasticModulus, source, elasticModulusSource, stress, from);
  }

  /**
   * The same material as it was weighed: its name, stiffness and strength stay.
   *
   * @param low least density, positive
   * @param likely the density to reckon with
   * @param high greatest density
   * @param from who weighed it
   * @return the material
   */
  public Material withDensity(Density low, Density likely, Density high, Source from) {
    Objects.requireNonNull(likely, "likely");
    Objects.requireNonNull(from, "source");
    Door.positive(low, "density of " + name);
    Door.positive(high, "density of " + name);
    Band weighed = new Band(low.si(), likely.si(), high.si());
    return new Material(name, weighed, elasticModulus, from, elasticModulusSource, strength, strengthSource);
  }

  /**
   * What it is.
   *
   * @return for example {@code "PLA"}
   */
  public String name() {
    return name;
  }

  /**
   * The density to reckon with.
   *
   * @return the likely density
   */
  public Density density() {
    return Density.kilogramsPerCubicMetre(density.likely());
  }

  /**
   * The density with its range.
   *
   * @return the band
   */
  public QuantityBand<Density> densityBand() {
    return QuantityBand.of(density, Density::kilogramsPerCubicMetre);
  }

  /**
   * The modulus of elasticity to reckon with, along the grain, the fibre or the printed line.
   *
   * @return the likely modulus, empty if it is not known
   */
  public Optional<Pressure> elasticModulus() {
    return Optional.ofNullable(elasticModulus).map(e -> Pressure.pascals(e.likely()));
  }

  /**
   * The modulus of elasticity with its range.
   *
   * @return the band [Pa], empty if it is not known
   */
  public Optional<Band> elasticModulusBand() {
    return Optional.ofNullable(elasticModulus);
  }

  /**
   * The stress at which it breaks or yields in bending, along the grain, the fibre or the printed line.
   *
   * @return the likely strength, empty if it is not known
   */
  public Optional<Pressure> strength() {
    return Optional.ofNullable(strength).map(s -> Pressure.pascals(s.likely()));
  }

  /**
   * The strength with its range.
   *
   * @return the band [Pa], empty if it is not known
   */
  public Optional<Band> strengthBand() {
    return Optional.ofNullable(strength);
  }

  /**
   * Where the strength comes from.
   *
   * @return the source, empty if the strength is not known
   */
  public Optional<Source> strengthSource() {
    return Optional.ofNullable(strengthSource);
  }

  /**
   * Where the density comes from.
   *
   * @return the source
   */
  public Source source() {
    return source;
  }

  /**
   * Where the stiffness comes from.
   *
   * @return the source, empty if the stiffness is not known
   */
  public Optional<Source> elasticModulusSource() {
    return Optional.ofNullable(elasticModulusSource);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Material that
        && name.equals(that.name)
        && density.equals(that.density)
        && source.equals(that.source)
        && elasticModulusBand().equals(that.elasticModulusBand())
        && elasticModulusSource().equals(that.elasticModulusSource())
        && strengthBand().equals(that.strengthBand())
        && strengthSource().equals(that.strengthSource());
  }

  @Override
  public int hashCode() {
    return name.hashCode() * 31 + density.hashCode();
  }

  @Override
  public String toString() {
    String range = density.isExact() ? "" : " (" + density.interval().format(Density.KILOGRAM_PER_CUBIC_METRE) + ")";
    return name + " " + density().format(Density.KILOGRAM_PER_CUBIC_METRE, 4) + range;
  }
}
