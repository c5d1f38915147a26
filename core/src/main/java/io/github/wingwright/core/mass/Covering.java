// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.mass;

import io.github.wingwright.core.basis.Band;
import io.github.wingwright.core.basis.QuantityBand;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.quantity.ArealDensity;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Mass;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * What a frame or a foam core is covered with: mass over area, as a range.
 *
 * <pre>{@code
 * Covering.LIGHT_FILM.mass(squareCentimetres(744));      // both sides of 372 cm²: 1.9 g
 * }</pre>
 *
 * @param name what it is
 * @param arealDensity mass over area, with what holds it on
 * @param source where the range comes from
 */
public record Covering(String name, QuantityBand<ArealDensity> arealDensity, Source source) implements Serializable {
  private static final Source TABLES =
      Source.published("model aircraft covering weight comparison, public table; Model Aviation, August 2025", "iron-on films");

  /** Condenser paper and the lightest plastic films, for indoor models. */
  public static final Covering INDOOR_FILM = grams("indoor film", 1, 2, 5, Source.COMMON_PRACTICE);

  /** Tissue, doped twice. */
  public static final Covering TISSUE = grams("doped tissue", 18, 25, 35, Source.COMMON_PRACTICE);

  /** Light plastic film with its glue. */
  public static final Covering LIGHT_FILM = grams("light covering film", 20, 26, 36, TABLES);

  /** Plastic film with its glue, for models outdoors. */
  public static final Covering FILM = grams("covering film", 50, 62, 80, TABLES);

  /** Glass cloth of 25 g/m² with as much or twice as much resin. */
  public static final Covering GLASS_25 = grams("glass cloth of 25 g/m² with resin", 50, 60, 75, Source.COMMON_PRACTICE);

  /** Writing paper of 80 g/m². */
  public static final Covering PAPER = grams("paper", 80, 80, 80, Source.fromMemory("ISO 536 grammage, as sold", "80 g/m²"));

  private static final List<Covering> ALL = List.of(INDOOR_FILM, TISSUE, LIGHT_FILM, FILM, GLASS_25, PAPER);

  /** Refuses what weighs less than nothing. */
  public Covering {
    Objects.requireNonNull(arealDensity, "areal density");
    Objects.requireNonNull(source, "source");
    Door.said(name, "name of a covering");
    Door.notNegative(arealDensity.low(), "areal density of " + name);
  }

  /**
   * A covering of one's own, weighed.
   *
   * @param name what it is
   * @param low least mass over area
   * @param likely mass over area to reckon with
   * @param high greatest mass over area
   * @param source who weighed it
   * @return the covering
   */
  public static Covering of(String name, ArealDensity low, ArealDensity likely, ArealDensity high, Source source) {
    Objects.requireNonNull(low, "low");
    Objects.requireNonNull(likely, "likely");
    Objects.requireNonNull(high, "high");
    return new Covering(name, new QuantityBand<>(low, likely, high), source);
  }

  private static Covering grams(String name, double low, double likely, double high, Source source) {
    return new Covering(name, QuantityBand.of(new Band(low, likely, high), ArealDensity::gramsPerSquareMetre), source);
  }

  /**
   * The coverings of the library.
   *
   * @return lightest first
   */
  public static List<Covering> all() {
    return ALL;
  }

  /**
   * What it weighs.
   *
   * @param area area that is covered, both sides counted, not negative
   * @return the likely mass
   */
  public Mass mass(Area area) {
    return Door.notNegative(area, "covered area").times(arealDensity.likely());
  }

  /**
   * As an item of a mass statement.
   *
   * @param part what is covered
   * @param area area that is covered, both sides counted, not negative
   * @param centreOfGravity centroid of that area
   * @return the item with the range of its mass
   */
  public MassItem item(String part, Area area, Placement centreOfGravity) {
    Objects.requireNonNull(part, "part");
    Band mass = arealDensity.si().times(Door.notNegative(area, "covered area").si());
    return MassItem.of(part + ", " + name, QuantityBand.of(mass, Mass::kilograms), centreOfGravity).withSource(source);
  }

  @Override
  public String toString() {
    return name + " " + arealDensity.si().interval().format(ArealDensity.GRAM_PER_SQUARE_METRE);
  }
}
