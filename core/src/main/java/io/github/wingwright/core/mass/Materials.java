// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.mass;

import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.Density;
import io.github.wingwright.core.quantity.Pressure;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A small catalogue of materials for models, each with its source. Weigh your own: a filament, a sheet of balsa and above
 * all a foaming polymer differ from batch to batch, the last by a factor of two with temperature and flow.
 *
 * <p>Stiffness is given along the printed line, the grain or the fibre; across printed layers it is lower. Where no
 * stiffness is given none was found that could be stood for. The ranges of PLA, PETG, ABS, PA, PC and PP were widened until they
 * hold what was found published, which disagrees: PLA of 22.9 MPa in one maker's data, of 3 to 4 GPa and 50 to 65 MPa on a page of
 * data on additive materials; PETG of up to 3 GPa and 56 MPa, PA of 2 to 3 GPa and 62 to 82 MPa dry and of 1.8 GPa and 55 to
 * 60 MPa once it has drawn water, PC of 2 to 3 GPa and 58 to 75 MPa there; ABS of 1.44 GPa in a maker's data; PP of 1.17 to
 * 1.72 GPa and 31 to 37 MPa, moulded, in a yearly report's table (Wohlers 2011, appendix E). Pultruded carbon and epoxy is as a
 * maker specifies it at least: 127 GPa and 1.37 GPa in bending, 1.5 g/cm³. For ASA nothing was found but its density. Likely
 * values, and all other ranges of stiffness and strength, are from memory, as their sources say.
 */
public final class Materials {
  private static final Source FILAMENT =
      Source.published("density tables of printing filaments, several open ones in agreement", "as printed solid");
  private static final Source FOAMING =
      Source.published("builders' records of foaming polylactide, unrefereed", "0.45 to 0.55 g/cm³ at full foaming");
  private static final Source BALSA_GRADES =
      Source.published("modelling association's questions and answers, and trade pages", "balsa grades in lb/ft³");
  private static final Source GEOFOAM =
      Source.restated("ASTM D6817, rigid cellular polystyrene geofoam", "least densities by type");
  private static final Source FOAM_PAGE = Source.published("reference pages on foams for models", "densities");
  private static final Source PLYWOOD = Source.published("a maker's data sheet of birch plywood", "650 to 710 kg/m³, 4 to 50 mm");
  private static final Source HANDBOOK = Source.fromMemory("handbooks of engineering materials", "");
  private static final Source POLYMER_STIFFNESS = Source.fromMemory("data sheets of printed polymers", "tension along the line");
  private static final Source WOOD_STIFFNESS = Source.fromMemory("Wood Handbook, USDA Forest Products Laboratory", "ch. 5");
  private static final Source FOAM_STIFFNESS =
      Source.fromMemory("Gibson & Ashby, Cellular Solids, 2nd ed. 1997", "E ∝ ρ² of the solid's modulus");

  private static final Source GEOFOAM_STIFFNESS =
      Source.fromMemory("data sheets of rigid polystyrene foams", "compression modulus and bending strength");
  private static final Source FOAM_SHEET_PRACTICE = Source.COMMON_PRACTICE;
  private static final Source FOAM_BOARD_WEIGHED =
      Source.published("builders' weighings of paper-faced foam board, public", "115 g of 20 × 30 × 3/16 in; 225 g of A1, 5 mm");
  private static final Source PULTRUDED = Source.published("a maker's specification of pultruded carbon", "1.5 g/cm³; 1.6 from memory");
  private static final Source POLYMER_STRENGTH =
      Source.fromMemory("data sheets of printed polymers", "tension along the line; across layers a third to four fifths of it");
  private static final Source WOOD_STRENGTH =
      Source.fromMemory("Wood Handbook, USDA Forest Products Laboratory", "ch. 5, modulus of rupture");
  private static final Source FOAM_STRENGTH =
      Source.fromMemory("Gibson & Ashby, Cellular Solids, 2nd ed. 1997", "strength ∝ ρ^1.5 of the solid's");

  /** Polylactide, printed. */
  public static final Material PLA =
      polymer("PLA", 1.22, 1.24, 1.26, FILAMENT).withElasticModulus(gpa(2.3), gpa(2.8), gpa(4.0), POLYMER_STIFFNESS)
          .withStrength(mpa(22), mpa(50), mpa(65), POLYMER_STRENGTH);

  /** Foaming polylactide, printed hot so that it foams fully. */
  public static final Material FOAMING_PLA =
      polymer("foaming PLA", 0.45, 0.50, 0.55, FOAMING).withElasticModulus(gpa(0.3), gpa(0.45), gpa(0.9), FOAM_STIFFNESS)
          .withStrength(mpa(7), mpa(12), mpa(16), FOAM_STRENGTH);

  /** Foaming polylactide, printed so that it foams in part. */
  public static final Material FOAMING_PLA_PARTLY =
      polymer("partly foamed PLA", 0.70, 0.78, 0.85, FOAMING)
          .withElasticModulus(gpa(0.8), gpa(1.1), gpa(1.7), FOAM_STIFFNESS)
          .withStrength(mpa(16), mpa(22), mpa(28), FOAM_STRENGTH);

  /** Glycol-modified polyester, printed. */
  public static final Material PETG =
      polymer("PETG", 1.25, 1.27, 1.29, FILAMENT).withElasticModulus(gpa(1.6), gpa(1.9), gpa(3.0), POLYMER_STIFFNESS)
          .withStrength(mpa(35), mpa(45), mpa(56), POLYMER_STRENGTH);

  /** Acrylonitrile butadiene styrene, printed. */
  public static final Material ABS =
      polymer("ABS", 1.03, 1.04, 1.05, FILAMENT).withElasticModulus(gpa(1.4), gpa(2.0), gpa(2.4), POLYMER_STIFFNESS)
          .withStrength(mpa(28), mpa(35), mpa(42), POLYMER_STRENGTH);

  /** Acrylonitrile styrene acrylate, printed. */
  public static final Material ASA =
      polymer("ASA", 1.05, 1.06, 1.07, FILAMENT).withElasticModulus(gpa(1.6), gpa(1.9), gpa(2.3), POLYMER_STIFFNESS)
          .withStrength(mpa(30), mpa(38), mpa(45), POLYMER_STRENGTH);

  /** Polyamide 6 and 66 blends, printed, dry. */
  public static final Material PA =
      polymer("PA", 1.14, 1.145, 1.15, FILAMENT).withElasticModulus(gpa(1.2), gpa(2.0), gpa(3.0), POLYMER_STIFFNESS)
          .withStrength(mpa(40), mpa(55), mpa(70), POLYMER_STRENGTH);

  /** Polyamide 12, printed, dry. */
  public static final Material PA12 =
      handbook("PA12", 1.01, 1.015, 1.02).withElasticModulus(gpa(1.1), gpa(1.4), gpa(1.8), POLYMER_STIFFNESS)
          .withStrength(mpa(35), mpa(45), mpa(55), POLYMER_STRENGTH);

  /** Polycarbonate, printed. */
  public static final Material PC =
      polymer("PC", 1.19, 1.20, 1.21, FILAMENT).withElasticModulus(gpa(1.9), gpa(2.2), gpa(3.0), POLYMER_STIFFNESS)
          .withStrength(mpa(45), mpa(58), mpa(75), POLYMER_STRENGTH);

  /** Polypropylene, printed. */
  public static final Material PP =
      polymer("PP", 0.89, 0.90, 0.91, FILAMENT).withElasticModulus(gpa(0.8), gpa(1.1), gpa(1.75), POLYMER_STIFFNESS)
          .withStrength(mpa(18), mpa(22), mpa(37), POLYMER_STRENGTH);

  /** Thermoplastic polyurethane, printed; soft, for noses. */
  public static final Material TPU = polymer("TPU", 1.20, 1.21, 1.22, FILAMENT);

  /** Balsa, light: 4 to 6 lb/ft³. */
  public static final Material BALSA_LIGHT =
      balsa("light balsa", 4, 5, 6).withElasticModulus(gpa(0.9), gpa(1.5), gpa(2.2), WOOD_STIFFNESS)
          .withStrength(mpa(7), mpa(10), mpa(14), WOOD_STRENGTH);

  /** Balsa, medium: 8 to 12 lb/ft³. */
  public static final Material BALSA_MEDIUM =
      balsa("medium balsa", 8, 10, 12).withElasticModulus(gpa(2.3), gpa(3.4), gpa(4.5), WOOD_STIFFNESS)
          .withStrength(mpa(15), mpa(20), mpa(25), WOOD_STRENGTH);

  /** Balsa, hard: 14 to 16 lb/ft³. */
  public static final Material BALSA_HARD =
      balsa("hard balsa", 14, 15, 16).withElasticModulus(gpa(4.0), gpa(5.5), gpa(7.0), WOOD_STIFFNESS)
          .withStrength(mpa(25), mpa(33), mpa(40), WOOD_STRENGTH);

  /** Spruce. */
  public static final Material SPRUCE =
      handbook("spruce", 0.36, 0.40, 0.45).withElasticModulus(gpa(9.0), gpa(10.5), gpa(12), WOOD_STIFFNESS)
          .withStrength(mpa(60), mpa(70), mpa(80), WOOD_STRENGTH);

  /** Birch plywood. */
  public static final Material BIRCH_PLYWOOD =
      polymer("birch plywood", 0.65, 0.68, 0.71, PLYWOOD).withElasticModulus(gpa(7), gpa(9), gpa(12), WOOD_STIFFNESS)
          .withStrength(mpa(40), mpa(60), mpa(80), WOOD_STRENGTH);

  /** Expanded polystyrene; builders cut wings of the lighter types. */
  public static final Material EPS = foam("EPS foam", 11, 18, 30, GEOFOAM)
          .withElasticModulus(mpa(2), mpa(5), mpa(10), GEOFOAM_STIFFNESS)
          .withStrength(mpa(0.07), mpa(0.2), mpa(0.4), GEOFOAM_STIFFNESS);

  /** Extruded polystyrene. */
  public static final Material XPS = foam("XPS foam", 28, 33, 45, FOAM_PAGE)
          .withElasticModulus(mpa(8), mpa(14), mpa(25), GEOFOAM_STIFFNESS)
          .withStrength(mpa(0.3), mpa(0.45), mpa(0.7), GEOFOAM_STIFFNESS);

  /** Extruded polystyrene in thin sheets of 2 to 6 mm, for plates and folded wings. */
  public static final Material FOAM_SHEET = foam("foam sheet", 33, 36, 40, FOAM_SHEET_PRACTICE);

  /** Polystyrene foam of 4 to 5 mm between two papers, of the whole board: the papers are half of its mass or more. */
  public static final Material FOAM_BOARD = foam("foam board", 62, 75, 90, FOAM_BOARD_WEIGHED);

  /** Expanded polypropylene, 1.3 to 1.9 lb/ft³. */
  public static final Material EPP = foam("EPP foam", 20.8, 20.8, 30.4, FOAM_PAGE);

  /** Balsa plywood, three thin veneers: light ribs and plates. */
  public static final Material BALSA_PLYWOOD = polymer("balsa plywood", 0.20, 0.26, 0.32, Source.COMMON_PRACTICE);

  /** Cardboard and drawing paper, as sheet. */
  public static final Material CARD = handbook("card", 0.65, 0.80, 1.0);

  /** Pultruded carbon and epoxy, as rod or tube, of the wall itself. */
  public static final Material CARBON_TUBE =
      polymer("carbon tube", 1.5, 1.55, 1.6, PULTRUDED).withElasticModulus(gpa(100), gpa(120), gpa(150), HANDBOOK)
          .withStrength(mpa(600), mpa(900), mpa(1400), HANDBOOK);

  /** Glass and epoxy laminate. */
  public static final Material GLASS_LAMINATE =
      handbook("glass laminate", 1.8, 1.9, 2.0).withElasticModulus(gpa(12), gpa(20), gpa(40), HANDBOOK)
          .withStrength(mpa(200), mpa(300), mpa(450), HANDBOOK);

  /** Steel, also as piano wire and nuts. */
  public static final Material STEEL =
      handbook("steel", 7.80, 7.85, 7.90).withElasticModulus(gpa(195), gpa(205), gpa(212), HANDBOOK);

  /** Brass. */
  public static final Material BRASS =
      handbook("brass", 8.4, 8.5, 8.7).withElasticModulus(gpa(97), gpa(103), gpa(115), HANDBOOK);

  /** Lead: poisonous, not for children's models; wash hands. */
  public static final Material LEAD =
      handbook("lead", 11.3, 11.34, 11.35).withElasticModulus(gpa(14), gpa(16), gpa(18), HANDBOOK);

  /** Tungsten. */
  public static final Material TUNGSTEN = handbook("tungsten", 19.2, 19.3, 19.35);

  /** Tungsten powder in putty, for the last gram. */
  public static final Material TUNGSTEN_PUTTY = polymer("tungsten putty", 8, 10, 11, Source.COMMON_PRACTICE);

  /** Modelling clay. */
  public static final Material MODELLING_CLAY = polymer("modelling clay", 1.6, 1.75, 1.9, Source.COMMON_PRACTICE);

  private static final List<Material> ALL =
      List.of(
          PLA, FOAMING_PLA, FOAMING_PLA_PARTLY, PETG, ABS, ASA, PA, PA12, PC, PP, TPU, BALSA_LIGHT, BALSA_MEDIUM, BALSA_HARD,
          SPRUCE, BIRCH_PLYWOOD, BALSA_PLYWOOD, CARD, EPS, XPS, FOAM_SHEET, FOAM_BOARD, EPP, CARBON_TUBE, GLASS_LAMINATE, STEEL, BRASS,
          LEAD, TUNGSTEN, TUNGSTEN_PUTTY, MODELLING_CLAY);

  /** What is cut, glued or bought, not printed. */
  private static final Set<Material> NOT_PRINTED =
      Set.of(
          BALSA_LIGHT, BALSA_MEDIUM, BALSA_HARD, SPRUCE, BIRCH_PLYWOOD, BALSA_PLYWOOD, CARD, EPS, XPS, FOAM_SHEET, FOAM_BOARD,
          EPP, CARBON_TUBE, GLASS_LAMINATE, STEEL, BRASS, LEAD, TUNGSTEN, TUNGSTEN_PUTTY, MODELLING_CLAY);

  private Materials() {}

  /**
   * Whether a material comes out of a printer's nozzle.
   *
   * @param material of this catalogue, or one's own
   * @return false for those of this catalogue that are cut, glued or bought; true for polymers and for one's own
   */
  public static boolean isPrinted(Material material) {
    Objects.requireNonNull(material, "material");
    return NOT_PRINTED.stream().noneMatch(m -> m.name().equalsIgnoreCase(material.name()));
  }

  /**
   * The whole catalogue.
   *
   * @return all materials
   */
  public static List<Material> all() {
    return ALL;
  }

  /**
   * A material by its name.
   *
   * @param name for example {@code "PLA"}; capitals do not count
   * @return the material
   * @throws IllegalArgumentException if it is not in the catalogue
   */
  public static Material named(String name) {
    Objects.requireNonNull(name, "name");
    return ALL.stream()
        .filter(material -> material.name().equalsIgnoreCase(name.strip()))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "material must be one of "
                        + ALL.stream().map(Material::name).collect(Collectors.joining(", "))
                        + ", was "
                        + name));
  }

  private static Material polymer(String name, double low, double likely, double high, Source source) {
    return Material.of(
        name,
        Density.gramsPerCubicCentimetre(low),
        Density.gramsPerCubicCentimetre(likely),
        Density.gramsPerCubicCentimetre(high),
        source);
  }

  private static Material handbook(String name, double low, double likely, double high) {
    return polymer(name, low, likely, high, HANDBOOK);
  }

  private static Material balsa(String name, double low, double likely, double high) {
    return Material.of(
        name,
        Density.poundsPerCubicFoot(low),
        Density.poundsPerCubicFoot(likely),
        Density.poundsPerCubicFoot(high),
        BALSA_GRADES);
  }

  private static Material foam(String name, double low, double likely, double high, Source source) {
    return Material.of(
        name,
        Density.kilogramsPerCubicMetre(low),
        Density.kilogramsPerCubicMetre(likely),
        Density.kilogramsPerCubicMetre(high),
        source);
  }

  private static Pressure mpa(double value) {
    return Pressure.megapascals(value);
  }

  private static Pressure gpa(double value) {
    return Pressure.gigapascals(value);
  }
}
