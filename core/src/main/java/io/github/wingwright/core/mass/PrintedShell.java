// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.mass;

import io.github.wingwright.core.basis.Band;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.QuantityBand;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Density;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.quantity.Volume;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * How a part is printed, and what it then weighs: walls of some lines of the nozzle, flat layers above and below where the
 * part has level faces, and infill in what is left.
 *
 * <pre>{@code
 * V_s = S·(1 − f)·n_w·w + S·f·n_l·h        m = ρ·(V_s + φ·(V − V_s)),   V_s at most V
 * }</pre>
 *
 * <p>The thin-shell volume S·t is too large where the surface is strongly curved (for a tube of radius r by t/(2r)) and where
 * walls meet, as at a trailing edge; it is cut off at the volume of the part, for a part is never heavier than solid. On a
 * wing section 3 mm thick the four lines of two walls on each face nearly fill it.
 *
 * <pre>{@code
 * PrintedShell skin = PrintedShell.of(Materials.PLA, 1, millimetres(0.42)).infill(0.03);
 * Mass halfWing = skin.mass(squareCentimetres(560), cubicCentimetres(420));      // 43.91 g
 * }</pre>
 *
 * <p>Source: geometry; the thin-shell approximation is common practice.
 */
public final class PrintedShell implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Volume of walls and flat layers. */
  public static final Formula SHELL_VOLUME =
      Formula.named("volume of walls and flat layers")
          .gives("V_s", Volume.CUBIC_METRE)
          .as("S·(1 − f)·n_w·w + S·f·n_l·h")
          .where("S", "surface of the part", Area.SQUARE_METRE, 1e-5, 10)
          .where("f", "part of the surface that is level", 0, 1)
          .where("n_w", "number of walls", 0, 20)
          .where("w", "line width", Length.METRE, 1e-4, 2e-3)
          .where("n_l", "number of flat layers", 0, 50)
          .where("h", "layer height", Length.METRE, 0, 1e-3)
          .from(Source.library("thin shell: area times thickness"))
          .computedBy(PrintedShell::thinShellVolume);

  /** Mass of a printed part. */
  public static final Formula MASS =
      Formula.named("mass of a printed part")
          .gives("m", Mass.KILOGRAM)
          .as("ρ·(min(V_s, V) + φ·(V − min(V_s, V)))")
          .where("ρ", "density of the material", Density.KILOGRAM_PER_CUBIC_METRE, 5, 25000)
          .where("V", "volume of the part", Volume.CUBIC_METRE, 1e-9, 1)
          .where("V_s", "volume of walls and flat layers", Volume.CUBIC_METRE, 0, 1)
          .where("φ", "infill", 0, 1)
          .from(Source.library("walls, and infill in what they leave; never heavier than solid"))
          .computedBy(PrintedShell::printedMass);

  private final Material material;
  private final int walls;
  private final Length lineWidth;
  private final int flatLayers;
  private final Length layerHeight;
  private final double levelPart;
  private final double infill;

  private PrintedShell(
      Material material,
      int walls,
      Length lineWidth,
      int flatLayers,
      Length layerHeight,
      double levelPart,
      double infill) {
    Objects.requireNonNull(material, "material");
    this.material = material;
    this.walls = Door.within(walls, 0, 20, "number of walls");
    this.lineWidth = Door.positive(lineWidth, "line width");
    this.flatLayers = Door.within(flatLayers, 0, 50, "number of flat layers");
    this.layerHeight = Door.notNegative(layerHeight, "layer height");
    this.levelPart = Door.within(levelPart, 0.0, 1.0, "level part of the surface");
    this.infill = Door.within(infill, 0.0, 1.0, "infill");
  }

  /**
   * A shell of walls alone.
   *
   * @param material what it is printed with
   * @param walls lines side by side, 0 to 20; a single wall is 1
   * @param lineWidth width of a line, positive
   * @return the shell, hollow
   */
  public static PrintedShell of(Material material, int walls, Length lineWidth) {
    return new PrintedShell(material, walls, lineWidth, 0, Length.ZERO, 0.0, 0.0);
  }

  /**
   * The same shell with flat layers on the level part of its surface.
   *
   * @param layers how many layers lie above one another, 0 to 50
   * @param height height of a layer, not negative
   * @param part part of the surface that is level, 0 to 1
   * @return the shell
   */
  public PrintedShell flatLayers(int layers, Length height, double part) {
    return new PrintedShell(material, walls, lineWidth, layers, height, part, infill);
  }

  /**
   * The same shell with infill.
   *
   * @param fraction part of the inside that is filled, 0 to 1
   * @return the shell
   */
  public PrintedShell infill(double fraction) {
    return new PrintedShell(material, walls, lineWidth, flatLayers, layerHeight, levelPart, fraction);
  }

  /**
   * The same shell in another material.
   *
   * @param other what it is printed with
   * @return the shell
   */
  public PrintedShell in(Material other) {
    return new PrintedShell(other, walls, lineWidth, flatLayers, layerHeight, levelPart, infill);
  }

  /**
   * Volume of walls and flat layers as a thin shell.
   *
   * <pre>{@code V_s = S·(1 − f)·n_w·w + S·f·n_l·h}</pre>
   *
   * @param surface surface of the part S [m²]
   * @param levelPart part of the surface that is level f, 0 to 1
   * @param walls number of walls n_w
   * @param lineWidth line width w [m]
   * @param flatLayers number of flat layers n_l
   * @param layerHeight layer height h [m]
   * @return V_s [m³]; 300 cm², 10 % level, two walls of 0.45 mm, four layers of 0.2 mm give 26.7 cm³
   */
  public static double thinShellVolume(
      double surface, double levelPart, double walls, double lineWidth, double flatLayers, double layerHeight) {
    return surface * (1.0 - levelPart) * walls * lineWidth + surface * levelPart * flatLayers * layerHeight;
  }

  /**
   * Mass of a printed part.
   *
   * <pre>{@code m = ρ·(V_s + φ·(V − V_s)),   V_s at most V}</pre>
   *
   * @param density density of the material ρ [kg/m³]
   * @param volume volume of the part V [m³]
   * @param shellVolume volume of walls and flat layers V_s [m³]; more than V counts as V
   * @param infill infill φ, 0 to 1
   * @return m [kg]; 1270 kg/m³, 260 cm³, 26.7 cm³ and 10 % give 63.538 g
   */
  public static double printedMass(double density, double volume, double shellVolume, double infill) {
    double shell = Math.min(shellVolume, volume);
    return density * (shell + infill * (volume - shell));
  }

  /**
   * What it is printed with.
   *
   * @return the material
   */
  public Material material() {
    return material;
  }

  /**
   * Thickness of the walls together.
   *
   * @return number of walls times line width
   */
  public Length wallThickness() {
    return lineWidth.times(walls);
  }

  /**
   * What a part weighs.
   *
   * @param surface its surface, positive
   * @param volume its volume, positive
   * @return its likely mass
   */
  public Mass mass(Area surface, Volume volume) {
    return Mass.kilograms(mass(material.density().si(), surface, volume));
  }

  /**
   * What a part weighs, with the range of the density.
   *
   * @param surface its surface, positive
   * @param volume its volume, positive
   * @return its mass
   */
  public QuantityBand<Mass> massBand(Area surface, Volume volume) {
    Band density = material.densityBand().si();
    Band mass =
        new Band(
            mass(density.low(), surface, volume),
            mass(density.likely(), surface, volume),
            mass(density.high(), surface, volume));
    return QuantityBand.of(mass, Mass::kilograms);
  }

  /**
   * Mass of a part, for loops.
   *
   * @param surface surface [m²], positive
   * @param volume volume [m³], positive
   * @return m [kg]
   */
  public double mass(double surface, double volume) {
    double shell = thinShellVolume(surface, levelPart, walls, lineWidth.si(), flatLayers, layerHeight.si());
    return printedMass(material.density().si(), volume, shell, infill);
  }

  /**
   * How much of the inside is filled.
   *
   * @return infill, 0 to 1
   */
  public double infill() {
    return infill;
  }

  private double mass(double density, Area surface, Volume volume) {
    double shell = shellVolume(surface, volume);
    return printedMass(density, volume.si(), shell, infill);
  }

  private double shellVolume(Area surface, Volume volume) {
    Door.positive(surface, "surface of the part");
    Door.positive(volume, "volume of the part");
    return thinShellVolume(surface.si(), levelPart, walls, lineWidth.si(), flatLayers, layerHeight.si());
  }

  /**
   * How the mass of a part comes about.
   *
   * @param surface a step that gives its surface
   * @param volume a step that gives its volume
   * @return the step, equal to {@link #mass(Area, Volume)} bit for bit
   */
  public Step massStep(Step surface, Step volume) {
    Objects.requireNonNull(surface, "surface");
    Source printer = Source.taken("how the part is printed");
    Step shell =
        Step.of(
            SHELL_VOLUME,
            surface,
            Step.given("level part of the surface", "f", levelPart, printer),
            Step.given("number of walls", "n_w", walls, printer),
            Step.given("line width", "w", lineWidth, printer),
            Step.given("number of flat layers", "n_l", flatLayers, printer),
            Step.given("layer height", "h", layerHeight, printer));
    return shellMassStep(shell, volume);
  }

  /**
   * How the mass of a part comes about whose walls are known by their true volume.
   *
   * @param shell a step that gives the volume of walls and layers
   * @param volume a step that gives the volume of the part
   * @return the step, equal to {@link #printedMass} bit for bit
   */
  public Step shellMassStep(Step shell, Step volume) {
    Objects.requireNonNull(volume, "volume");
    Objects.requireNonNull(shell, "shell");
    Source printer = Source.taken("how the part is printed");
    return Step.of(
        MASS,
        Step.given("density of " + material.name(), "ρ", material.density(), material.source()),
        volume,
        shell,
        Step.given("infill", "φ", infill, printer));
  }

  /**
   * A part as an item of a mass statement.
   *
   * @param name what it is
   * @param surface its surface, positive
   * @param volume its volume, positive
   * @param centreOfGravity where its centre of gravity sits
   * @return the item, with the range of its mass and the source of the density
   */
  public MassItem item(String name, Area surface, Volume volume, Placement centreOfGravity) {
    return MassItem.of(name, massBand(surface, volume), centreOfGravity).withSource(material.source());
  }

  /**
   * What is remarkable about a part printed so.
   *
   * @param name what it is
   * @param surface its surface, positive
   * @param volume its volume, positive
   * @return a note if its walls alone fill it, or nearly
   */
  public List<Finding> findings(String name, Area surface, Volume volume) {
    return findings(name, Volume.cubicMetres(shellVolume(surface, volume)), volume);
  }

  /**
   * What is remarkable about a part whose walls are known by their true volume.
   *
   * @param name what it is
   * @param shell volume of its walls, not negative
   * @param volume its volume, positive
   * @return a note if its walls alone fill it, or nearly
   */
  public List<Finding> findings(String name, Volume shell, Volume volume) {
    double full = Door.notNegative(shell, "volume of the walls").si() / Door.positive(volume, "volume of the part").si();
    if (full < 0.8) {
      return List.of();
    }
    String words =
        full >= 0.999
            ? "The walls alone fill the part: it is reckoned as solid."
            : "The walls take up " + NamedUnit.NUMBER.format(100.0 * full, 2) + " % of the part.";
    return List.of(
        Finding.of(
            Severity.NOTE,
            name,
            words + " Fewer walls, or a plate with one wall, would be lighter.",
            Source.library("walls against volume")));
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof PrintedShell that
        && material.equals(that.material)
        && walls == that.walls
        && lineWidth.equals(that.lineWidth)
        && flatLayers == that.flatLayers
        && layerHeight.equals(that.layerHeight)
        && levelPart == that.levelPart
        && infill == that.infill;
  }

  @Override
  public int hashCode() {
    return material.hashCode() * 31 + walls;
  }

  @Override
  public String toString() {
    return material.name()
        + ", "
        + walls
        + (walls == 1 ? " wall of " : " walls of ")
        + lineWidth
        + ", infill "
        + NamedUnit.NUMBER.format(100.0 * infill, 3)
        + " %";
  }
}
