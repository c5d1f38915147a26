// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.performance;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.Acceleration;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Energy;
import io.github.wingwright.core.quantity.Force;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.Speed;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A stretched elastic that launches a glider: a bungee on the ground, or a rubber loop on a stick held in the hand.
 *
 * <pre>{@code
 * E = ½·F·x       or the area under a measured curve of force over stretch
 * V = √(2·η·E/(m + m_e/3))        n = F/(m·g)
 * }</pre>
 *
 * <p>F is the pull at the full stretch x, as a spring balance shows it; with a stiffness k it is k·x. The part η of the
 * energy reaches the glider: rubber gives back less than was put in, and it has to be let go at once. A third of the
 * elastic's mass m_e moves along (a uniform spring fixed at one end, textbook mechanics, from memory). Drag and weight
 * during the pull are left out: the pull is many times the weight.
 *
 * <pre>{@code
 * ElasticLaunch catapult = ElasticLaunch.pulling(newtons(8), metres(0.5)).withElasticMass(grams(4));
 * catapult.speed(grams(25));                              // 10.3 m/s
 * model.thrown(catapult.thrown(grams(25), metres(1.5)));
 * }</pre>
 *
 * <p>It is a specification: each {@code with…} gives a new one.
 */
public final class ElasticLaunch implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Part of the energy that reaches the glider unless told otherwise (common practice, no source). */
  public static final double USUAL_EFFICIENCY = 0.7;

  /** What rubber can store for its mass at most [J/kg]: good strip, close to breaking (from memory). */
  public static final double RUBBER_ENERGY = 10_000.0;

  private static final Source MECHANICS = Source.fromMemory("elementary mechanics", "energy of a spring");
  private static final double GRAVITY = Acceleration.STANDARD_GRAVITY.si();

  /** Energy of an elastic that pulls in proportion to its stretch. */
  public static final Formula ENERGY =
      Formula.named("energy of a stretched elastic")
          .gives("E", Energy.JOULE)
          .as("½·F·x")
          .where("F", "pull at full stretch", Force.NEWTON, 0.01, 1000)
          .where("x", "stretch", Length.METRE, 0.01, 100)
          .from(MECHANICS)
          .computedBy(ElasticLaunch::storedEnergy);

  /** Speed at which it leaves the elastic. */
  public static final Formula SPEED =
      Formula.named("speed from an elastic")
          .gives("V", Speed.METRE_PER_SECOND)
          .as("√(2·η·E / (m + m_e/3))")
          .where("η", "efficiency", 0.05, 1)
          .where("E", "energy of the stretched elastic", Energy.JOULE, 0.01, 1000)
          .where("m", "mass of the glider", Mass.KILOGRAM, 0.001, 10)
          .where("m_e", "mass of the elastic", Mass.KILOGRAM, 0, 2)
          .from(MECHANICS)
          .computedBy(ElasticLaunch::releaseSpeed);

  private final double[] stretches;
  private final double[] pulls;
  private final double efficiency;
  private final boolean usual;
  private final double elasticMass;

  private ElasticLaunch(double[] stretches, double[] pulls, double efficiency, boolean usual, double elasticMass) {
    this.stretches = stretches;
    this.pulls = pulls;
    this.efficiency = efficiency;
    this.usual = usual;
    this.elasticMass = elasticMass;
  }

  /**
   * An elastic that pulls in proportion to its stretch.
   *
   * @param pull force at full stretch, positive
   * @param stretch how much longer than at rest it is pulled, positive
   * @return the launch, without mass of the elastic, with the usual efficiency
   */
  public static ElasticLaunch pulling(Force pull, Length stretch) {
    return new ElasticLaunch(
        new double[] {0.0, Door.positive(stretch, "stretch of the elastic").si()},
        new double[] {0.0, Door.positive(pull, "pull of the elastic").si()},
        USUAL_EFFICIENCY,
        true,
        0.0);
  }

  /**
   * An elastic of known stiffness.
   *
   * @param stiffness pull over stretch [N/m], positive
   * @param atRest its length at rest, positive
   * @param stretched its length when it is let go, more than at rest
   * @return the launch
   */
  public static ElasticLaunch ofStiffness(double stiffness, Length atRest, Length stretched) {
    Door.positive(stiffness, "stiffness of the elastic");
    Door.positive(atRest, "length of the elastic at rest");
    Door.finite(stretched, "stretched length");
    if (!(stretched.si() > atRest.si())) {
      throw new IllegalArgumentException(
          "stretched length must be more than the length at rest, " + atRest + ", was " + stretched);
    }
    Length stretch = stretched.minus(atRest);
    return pulling(Force.newtons(stiffness * stretch.si()), stretch);
  }

  /**
   * An elastic whose pull was measured: rubber is stiff at first, then soft, then stiff again, but pulls never less the
   * further it is stretched.
   *
   * @param stretches stretches over the length at rest, rising; the first may be none
   * @param pulls the pull at each, not falling; at no stretch there is none
   * @return the launch from the last stretch
   * @throws IllegalArgumentException if a row cannot be; the message says which
   */
  public static ElasticLaunch measured(List<Length> stretches, List<Force> pulls) {
    Objects.requireNonNull(stretches, "stretches");
    Objects.requireNonNull(pulls, "pulls");
    if (stretches.isEmpty() || stretches.size() != pulls.size()) {
      throw new IllegalArgumentException(
          "stretches and pulls must be as many of each, at least one, were " + stretches.size() + " and " + pulls.size());
    }
    boolean fromRest = stretches.get(0).si() == 0.0;
    int rows = stretches.size();
    double[] x = new double[fromRest ? rows : rows + 1];
    double[] f = new double[x.length];
    for (int row = 1; row <= rows; row++) {
      int at = fromRest ? row - 1 : row;
      x[at] = Door.notNegative(stretches.get(row - 1), "stretch of the elastic in row " + row).si();
      f[at] = Door.notNegative(pulls.get(row - 1), "pull of the elastic in row " + row).si();
      if (at == 0 && f[0] > 0.0) {
        throw new IllegalArgumentException("pull of the elastic must be 0 N without stretch, was " + pulls.get(0) + " in row 1");
      }
      if (at > 0 && !(x[at] > x[at - 1])) {
        throw new IllegalArgumentException(
            "stretches must rise, were " + Length.metres(x[at - 1]) + " then " + stretches.get(row - 1) + " in row " + row);
      }
      if (at > 0 && f[at] < f[at - 1]) {
        throw new IllegalArgumentException(
            "pulls must not fall while it is stretched, were " + Force.newtons(f[at - 1]) + " then " + pulls.get(row - 1)
                + " in row " + row + ": enter what was measured on the way out");
      }
    }
    Door.positive(pulls.get(rows - 1), "pull at full stretch");
    return new ElasticLaunch(x, f, USUAL_EFFICIENCY, true, 0.0);
  }

  /**
   * With another efficiency.
   *
   * @param other part of the energy that reaches the glider, 0.05 to 1
   * @return the launch with it
   */
  public ElasticLaunch withEfficiency(double other) {
    return new ElasticLaunch(stretches, pulls, Door.within(other, 0.05, 1.0, "efficiency of the launch"), false, elasticMass);
  }

  /**
   * With the mass of the elastic.
   *
   * @param other mass of all that is stretched, not negative
   * @return the launch with it
   */
  public ElasticLaunch withElasticMass(Mass other) {
    return new ElasticLaunch(stretches, pulls, efficiency, usual, Door.notNegative(other, "mass of the elastic").si());
  }

  /**
   * Energy of an elastic that pulls in proportion to its stretch.
   *
   * <p>Example: 8 N at 0.5 m are 2 J.
   *
   * @param pull F at full stretch [N]
   * @param stretch x [m]
   * @return E [J]
   */
  public static double storedEnergy(double pull, double stretch) {
    return 0.5 * pull * stretch;
  }

  /**
   * Speed at which a glider leaves the elastic.
   *
   * <p>Example: 0.7 of 2 J, 25 g, an elastic of 4 g: 10.3 m/s.
   *
   * @param efficiency η
   * @param energy E [J]
   * @param mass m of the glider [kg], positive
   * @param elasticMass m_e [kg]
   * @return V [m/s]
   */
  public static double releaseSpeed(double efficiency, double energy, double mass, double elasticMass) {
    return Math.sqrt(2.0 * efficiency * energy / (mass + elasticMass / 3.0));
  }

  /**
   * Energy of the stretched elastic.
   *
   * @return E, by straight lines between what was measured
   */
  public Energy energy() {
    double sum = 0.0;
    for (int i = 1; i < stretches.length; i++) {
      sum += 0.5 * (pulls[i] + pulls[i - 1]) * (stretches[i] - stretches[i - 1]);
    }
    return Energy.joules(sum);
  }

  /**
   * Speed at which a glider leaves it.
   *
   * @param glider mass of the glider, positive
   * @return V
   */
  public Speed speed(Mass glider) {
    return Speed.metresPerSecond(releaseSpeed(efficiency, energy().si(), Door.positive(glider, "mass").si(), elasticMass));
  }

  /**
   * Part of the energy that reaches the glider.
   *
   * @return η
   */
  public double efficiency() {
    return efficiency;
  }

  /**
   * Whether nobody told the efficiency.
   *
   * @return true if it is the usual one for want of a better
   */
  public boolean isUsualEfficiency() {
    return usual;
  }

  /**
   * Mass of all that is stretched.
   *
   * @return m_e, zero if none was given
   */
  public Mass elasticMass() {
    return Mass.kilograms(elasticMass);
  }

  /**
   * How far it is pulled back.
   *
   * @return x, how much longer than at rest it is when it is let go
   */
  public Length stretch() {
    return Length.metres(stretches[stretches.length - 1]);
  }

  /**
   * How hard it pulls on the way.
   *
   * @param stretch how much longer than at rest it is, not negative and no more than {@link #stretch()}
   * @return F, by a straight line between what was measured
   */
  public Force pullAt(Length stretch) {
    double x = Door.within(Door.notNegative(stretch, "stretch").si(), 0.0, stretch().si(), "stretch [m]");
    int i = 1;
    while (x > stretches[i]) {
      i++;
    }
    double share = (x - stretches[i - 1]) / (stretches[i] - stretches[i - 1]);
    return Force.newtons(pulls[i - 1] + share * (pulls[i] - pulls[i - 1]));
  }

  /**
   * How far it must be pulled back for a glider to leave it at a speed.
   *
   * <p>Example: an elastic that pulls 8 N at 0.5 m gives half of the speed from 0.25 m.
   *
   * @param wanted the speed, positive
   * @param glider mass of the glider, positive
   * @return the stretch over the length at rest; empty if the full stretch gives less
   */
  public Optional<Length> stretchFor(Speed wanted, Mass glider) {
    double v = Door.positive(wanted, "speed").si();
    double moved = Door.positive(glider, "mass").si() + elasticMass / 3.0;
    double left = 0.5 * moved * v * v / efficiency;
    for (int i = 1; i < stretches.length; i++) {
      double width = stretches[i] - stretches[i - 1];
      double area = 0.5 * (pulls[i] + pulls[i - 1]) * width;
      if (left <= area) {
        // f·s + ½·k·s² = E over the part of this strip, in the form that bears k = 0.
        double slope = (pulls[i] - pulls[i - 1]) / width;
        double part = left == 0.0 ? 0.0 : 2.0 * left / (pulls[i - 1] + Math.sqrt(pulls[i - 1] * pulls[i - 1] + 2.0 * slope * left));
        return Optional.of(Length.metres(stretches[i - 1] + Math.min(width, part)));
      }
      left -= area;
    }
    return Optional.empty();
  }

  /**
   * The greatest pull on the way.
   *
   * @return F
   */
  public Force greatestPull() {
    double most = 0.0;
    for (double pull : pulls) {
      most = Math.max(most, pull);
    }
    return Force.newtons(most);
  }

  /**
   * How hard it pulls at the hook of a glider, over the weight of it.
   *
   * @param glider mass of the glider, positive
   * @return n, the load factor along the body
   */
  public double loadFactor(Mass glider) {
    return greatestPull().si() / (Door.positive(glider, "mass").si() * GRAVITY);
  }

  /**
   * The greatest acceleration of a glider on it.
   *
   * @param glider mass of the glider, positive
   * @return a = F/(m + m_e/3)
   */
  public Acceleration greatestAcceleration(Mass glider) {
    double moved = Door.positive(glider, "mass").si() + elasticMass / 3.0;
    return Acceleration.metresPerSecondSquared(greatestPull().si() / moved);
  }

  /**
   * The throw that it makes, level.
   *
   * @param glider mass of the glider, positive
   * @param height height of the hook above the floor when it lets go, positive
   * @return the throw
   */
  public Throw thrown(Mass glider, Length height) {
    return Throw.level(speed(glider), height);
  }

  /**
   * The throw that it makes at an angle.
   *
   * @param glider mass of the glider, positive
   * @param angle angle above the horizon
   * @param height height of the hook above the floor when it lets go, positive
   * @return the throw
   */
  public Throw thrown(Mass glider, Angle angle, Length height) {
    return thrown(glider, height).at(angle);
  }

  /**
   * What to know before it is let go.
   *
   * @param glider mass of the glider, positive
   * @return findings, heaviest first
   */
  public List<Finding> findings(Mass glider) {
    return ElasticFindings.of(this, Door.positive(glider, "mass"));
  }

  @Override
  public String toString() {
    return "elastic pulling " + greatestPull().format(Force.NEWTON, 3) + " with " + energy().format(Energy.JOULE, 3);
  }
}
