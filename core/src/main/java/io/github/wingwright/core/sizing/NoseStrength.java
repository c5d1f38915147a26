// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.basis.Advised;
import io.github.wingwright.core.basis.Consideration;
import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Strength;
import io.github.wingwright.core.basis.Wording;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Force;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.quantity.Pressure;
import io.github.wingwright.core.quantity.Speed;
import java.util.Objects;
import java.util.Optional;

/**
 * The nose hitting the wall: with the throw it sizes the body of a printed model.
 *
 * <p>The wall stops the model over the stroke s by which the nose gives way; the mean force is
 *
 * <pre>{@code F = m·V²/(2·s)}</pre>
 *
 * <p>and a peak about twice that is common where the nose does not crush evenly (common practice, no source). The body
 * behind carries it as a strut: in compression σ = F/(π·w·(d − w)), and against buckling as a whole with both ends free to
 * turn, F ≤ π²·EI/L² (Euler).
 */
public final class NoseStrength {
  /** How far behind the tip its radius is looked for, in diameters. */
  static final double BEHIND = 1e-6;

  /** Mean force of the impact. */
  public static final Formula IMPACT_FORCE =
      Formula.named("mean force when the nose hits a wall")
          .gives("F", Force.NEWTON)
          .as("m·V² / (2·s)")
          .where("m", "mass", Mass.KILOGRAM, 1e-4, 1e3)
          .where("V", "speed", Speed.METRE_PER_SECOND, 0, 100)
          .where("s", "stroke by which the nose gives way", Length.METRE, 1e-4, 1)
          .from(Source.DEFINITION)
          .computedBy(NoseStrength::impactForce);

  private static final Source STRUT =
      Source.fromMemory("Timoshenko and Gere, Theory of Elastic Stability, 2nd ed., 1961", "Euler's strut");

  private NoseStrength() {}

  /**
   * Mean force of the impact.
   *
   * @param mass mass m [kg]
   * @param speed speed V [m/s]
   * @param stroke stroke s [m], positive
   * @return F [N]; 30 g at 8 m/s over 5 mm give 192 N
   */
  public static double impactForce(double mass, double speed, double stroke) {
    return mass * speed * speed / (2.0 * stroke);
  }

  /** The strut under its load. */
  private record Strut(
      Wording wording, Strength strength, Source source, double force, double wall, double modulus, double stress,
      Step impact, BodyShell shell)
      implements Worded {

    @Override
    public double margin(double length, double diameter) {
      double inCompression = MarginFormulas.compressiveLoad(stress, wall, diameter);
      return MarginFormulas.strutMargin(inCompression, buckling(length, diameter), force);
    }

    private double buckling(double length, double diameter) {
      return MarginFormulas.bucklingLoad(modulus * BodyShell.secondMoment(diameter, wall), length);
    }

    @Override
    public Interval diametersAt(double length, Interval search) {
      double ring = force / (Math.PI * wall * stress) + wall;
      double solid = Math.sqrt(4.0 * force / (Math.PI * stress));
      double inCompression = ring >= 2.0 * wall ? ring : solid;
      double needed = force * length * length / (Math.PI * Math.PI * modulus);
      return Interval.atLeast(Math.max(inCompression, BodyShell.diameterOf(needed, wall)));
    }

    @Override
    public Interval lengthsAt(double diameter, Interval search) {
      double longest = Math.sqrt(buckling(1.0, diameter) / force);
      // At a length that does not buckle only compression is left.
      return margin(Math.min(longest, 1e-6), diameter) >= 0.0 ? Interval.atMost(longest) : Interval.NONE;
    }

    @Override
    public Optional<Step> workings(Step length, Step diameter) {
      Step strong = Step.given("compressive strength", "σ", Pressure.pascals(stress), Source.BRIEF);
      return Optional.of(
          Step.of(
              MarginFormulas.STRUT_MARGIN,
              Step.of(MarginFormulas.COMPRESSIVE_LOAD, strong, shell.wallStep(), diameter),
              Step.of(MarginFormulas.BUCKLING_LOAD, shell.stiffnessStep(diameter), length),
              impact));
    }

    @Override
    public String givingWayTo(double length, double diameter, NamedUnit<Length> unit) {
      return quoted(unit) + " with " + Advised.percentDown(1.0 + margin(length, diameter)) + " of the force";
    }
  }

  /**
   * The body must not fold when the nose hits a wall: a limit.
   *
   * @param mass mass that is stopped, positive
   * @param speed speed of the impact, positive
   * @param stroke by how much the nose gives way: crushing, a rubber tip; positive
   * @param shell what the body is made of
   * @param strength compressive strength of the wall, positive
   * @return σ ≤ strength and F ≤ π²·EI/L²
   */
  public static Consideration survivesNoseImpact(
      Mass mass, Speed speed, Length stroke, BodyShell shell, Pressure strength) {
    Objects.requireNonNull(shell, "shell");
    Door.positive(mass, "mass");
    Door.positive(speed, "speed of the impact");
    Door.positive(stroke, "stroke of the nose");
    Door.positive(strength, "compressive strength");
    return new Strut(
        Wording.of("does not fold when ").and(mass, 3).and(" hit a wall at ").and(speed, 3),
        Strength.LIMIT,
        STRUT,
        impactForce(mass.si(), speed.si(), stroke.si()),
        shell.wall().si(),
        shell.modulus().si(),
        strength.si(),
        Step.of(
            IMPACT_FORCE,
            Step.given("mass that is stopped", "m", mass, Source.BRIEF),
            Step.given("speed of the impact", "V", speed, Source.BRIEF),
            Step.given("stroke of the nose", "s", stroke, Source.BRIEF)),
        shell);
  }

  /**
   * The nose must be blunt enough not to hurt: a limit. Contest rules for hand-launched gliders ask for 5 mm.
   *
   * @param least least radius of the nose tip, positive
   * @return radius of curvature r²/(2x) close to the tip ≥ least
   */
  public static ShapeConsideration noseRadiusAtLeast(Length least) {
    Door.positive(least, "least radius of the nose");
    Source rule = Source.published("FAI Sporting Code, section 4, class F3K, as restated by clubs", "nose radius 5 mm");
    return shape ->
        new Monotone(
            Wording.of("nose radius at least ").and(least),
            Strength.LIMIT,
            rule,
            true,
            (length, diameter) -> MarginFormulas.above(tipRadius(shape, length, diameter, BEHIND), least.si()),
            (length, diameter, unit) -> "with a radius of " + Advised.down(tipRadius(shape, length, diameter, BEHIND), unit, 3))
            .reckonedBy((length, diameter) -> FitSteps.noseRadius(shape, length, diameter, least));
  }

  /** Radius of curvature of the tip, from places so many and twice as many diameters behind it [m]. */
  static double tipRadius(BodyShape shape, double length, double diameter, double behind) {
    double near = radiusFrom(shape, length, diameter, behind * diameter);
    return Math.max(2.0 * near - radiusFrom(shape, length, diameter, 2.0 * behind * diameter), 0.0);
  }

  private static double radiusFrom(BodyShape shape, double length, double diameter, double x) {
    double r = shape.radius(x, length, diameter);
    return r * r / (2.0 * x);
  }
}
