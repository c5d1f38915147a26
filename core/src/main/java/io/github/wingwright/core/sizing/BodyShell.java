// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.mass.Material;
import io.github.wingwright.core.quantity.Density;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.FlexuralRigidity;
import io.github.wingwright.core.quantity.Force;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.quantity.Pressure;
import io.github.wingwright.core.quantity.SecondMomentOfArea;
import java.io.Serializable;
import java.util.Objects;

/**
 * The wall that a body is made of: how thick, how dense, how stiff.
 *
 * <p>The section of the body is a ring of outer diameter d and wall w; with the diameter of its middle line d_m = d − w its
 * second moment of area is exactly
 *
 * <pre>{@code
 * I = π/64·(d⁴ − (d − 2w)⁴) = π/8·w·d_m·(d_m² + w²)
 * }</pre>
 *
 * <p>and close to π/8·w·d³ for a thin wall. Where the wall would be thicker than the radius the section is solid.
 *
 * @param wall thickness of the wall, positive
 * @param density density of the wall, positive
 * @param modulus modulus of elasticity along the body, positive; across printed layers it is lower than in them
 * @param wallSource where the thickness comes from
 * @param modulusSource where the modulus comes from
 */
public record BodyShell(Length wall, Density density, Pressure modulus, Source wallSource, Source modulusSource)
    implements Serializable {

  /** Second moment of area of a ring. */
  public static final Formula SECOND_MOMENT =
      Formula.named("second moment of area of the body's ring")
          .gives("I", SecondMomentOfArea.METRE_TO_THE_FOURTH)
          .as("π/64·(d^4 − (max(d − 2·w, 0))^4)")
          .where("d", "outer diameter", Length.METRE, 1e-4, 10)
          .where("w", "wall thickness", Length.METRE, 1e-5, 0.1)
          .from(Source.DEFINITION)
          .computedBy(BodyShell::secondMoment);

  /** Bending stiffness. */
  public static final Formula BENDING_STIFFNESS =
      Formula.named("bending stiffness")
          .gives("EI", FlexuralRigidity.NEWTON_SQUARE_METRE)
          .as("E·I")
          .where("E", "modulus of elasticity", Pressure.PASCAL, 1e6, 1e12)
          .where("I", "second moment of area", SecondMomentOfArea.METRE_TO_THE_FOURTH, 1e-18, 1)
          .from(Source.DEFINITION)
          .computedBy(BodyShell::bendingStiffness);

  /** Bending stiffness that keeps the slope of a cantilever's tip down. */
  public static final Formula NEEDED_STIFFNESS =
      Formula.named("bending stiffness needed for the tail load")
          .gives("EI_min", FlexuralRigidity.NEWTON_SQUARE_METRE)
          .as("F·a² / (3·δ)")
          .where("F", "load at the tail", Force.NEWTON, 0, 1e6)
          .where("a", "free length from wing to tail", Length.METRE, 1e-3, 50)
          .where("δ", "deflection over free length", NamedUnit.NUMBER, 1e-4, 0.1)
          .from(Source.fromMemory("Timoshenko, Strength of Materials, part I", "cantilever with a load at its end"))
          .computedBy(BodyShell::neededStiffness);

  /** Refuses what is no wall. */
  public BodyShell {
    Objects.requireNonNull(wallSource, "wall source");
    Objects.requireNonNull(modulusSource, "modulus source");
    Door.positive(wall, "wall thickness");
    Door.positive(density, "density of the wall");
    Door.positive(modulus, "modulus of elasticity");
  }

  /**
   * The wall of a body, all of it from the brief.
   *
   * @param wall thickness of the wall, positive
   * @param density density of the wall, positive
   * @param modulus modulus of elasticity along the body, positive
   * @return the wall
   */
  public static BodyShell of(Length wall, Density density, Pressure modulus) {
    return new BodyShell(wall, density, modulus, Source.BRIEF, Source.BRIEF);
  }

  /**
   * The wall of a body of a material whose stiffness is known.
   *
   * @param material what it is made of
   * @param wall thickness of the wall, positive
   * @return the wall, of the likely density and modulus
   * @throws IllegalArgumentException if the modulus of the material is not known
   */
  public static BodyShell of(Material material, Length wall) {
    Objects.requireNonNull(material, "material");
    Pressure modulus =
        material
            .elasticModulus()
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        "material must have a known modulus of elasticity, was " + material.name()));
    Source source = material.elasticModulusSource().orElse(material.source());
    return new BodyShell(wall, material.density(), modulus, Source.BRIEF, source);
  }

  /**
   * The same wall with another word on where its thickness comes from.
   *
   * @param source where the thickness comes from, such as the machine's line width
   * @return the wall
   */
  public BodyShell withWallFrom(Source source) {
    return new BodyShell(wall, density, modulus, source, modulusSource);
  }

  /**
   * The thickness as a line of the workings.
   *
   * @return the step of w
   */
  public Step wallStep() {
    return Step.given("wall thickness", "w", wall, wallSource);
  }

  /**
   * The modulus as a line of the workings.
   *
   * @return the step of E
   */
  public Step modulusStep() {
    return Step.given("modulus of elasticity", "E", modulus, modulusSource);
  }

  /**
   * The bending stiffness of the greatest section as a line of the workings.
   *
   * @param diameter step of the diameter
   * @return the step of EI
   */
  public Step stiffnessStep(Step diameter) {
    Objects.requireNonNull(diameter, "diameter");
    return Step.of(BENDING_STIFFNESS, modulusStep(), Step.of(SECOND_MOMENT, diameter, wallStep()));
  }

  /**
   * Second moment of area of a ring.
   *
   * <pre>{@code I = π/64·(d⁴ − (d − 2w)⁴)}</pre>
   *
   * @param diameter outer diameter d [m]
   * @param wall wall thickness w [m]; at d/2 and more the section is solid
   * @return I [m⁴]; 20 mm and 0.8 mm give 2 227.44 mm⁴
   */
  public static double secondMoment(double diameter, double wall) {
    double inner = Math.max(diameter - 2.0 * wall, 0.0);
    double outerSquare = diameter * diameter;
    double innerSquare = inner * inner;
    return Math.PI / 64.0 * (outerSquare * outerSquare - innerSquare * innerSquare);
  }

  /**
   * The diameter of a ring that has a second moment of area: the inverse of {@link #secondMoment}, in closed form.
   *
   * <p>The middle line's diameter solves d_m³ + w²·d_m = 8·I/(π·w), which has one real root.
   *
   * @param secondMoment I [m⁴], positive
   * @param wall wall thickness w [m], positive
   * @return d [m]
   */
  public static double diameterOf(double secondMoment, double wall) {
    double solid = Math.pow(64.0 * secondMoment / Math.PI, 0.25);
    if (solid <= 2.0 * wall) {
      return solid;
    }
    double q = 8.0 * secondMoment / (Math.PI * wall);
    double argument = 1.5 * Math.sqrt(3.0) * q / (wall * wall * wall);
    double asinh = Math.log(argument + Math.sqrt(argument * argument + 1.0));
    return 2.0 * wall / Math.sqrt(3.0) * Math.sinh(asinh / 3.0) + wall;
  }

  /**
   * Bending stiffness.
   *
   * <pre>{@code EI = E·I}</pre>
   *
   * @param modulus modulus of elasticity E [Pa]
   * @param secondMoment second moment of area I [m⁴]
   * @return EI [N·m²]
   */
  public static double bendingStiffness(double modulus, double secondMoment) {
    return modulus * secondMoment;
  }

  /**
   * The bending stiffness that keeps the tip of a cantilever from moving more than a part of its length.
   *
   * <pre>{@code EI_min = F·a²/(3·δ),   from the tip deflection F·a³/(3·EI) = δ·a}</pre>
   *
   * @param load load at the tip F [N]
   * @param arm length of the cantilever a [m]
   * @param deflection tip deflection over length δ
   * @return EI [N·m²]; 0.2 N, 0.18 m and 0.02 give 0.108 N·m²
   */
  public static double neededStiffness(double load, double arm, double deflection) {
    return load * arm * arm / (3.0 * deflection);
  }

  /**
   * Bending stiffness of a body at its greatest section.
   *
   * @param diameter its diameter
   * @return EI
   */
  public FlexuralRigidity bendingStiffness(Length diameter) {
    Objects.requireNonNull(diameter, "diameter");
    return FlexuralRigidity.newtonSquareMetres(modulus.si() * secondMoment(diameter.si(), wall.si()));
  }

  @Override
  public String toString() {
    return "wall " + wall + ", " + density + ", E " + modulus;
  }
}
