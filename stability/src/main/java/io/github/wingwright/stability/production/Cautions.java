// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.production;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.mass.MassItem;
import io.github.wingwright.core.performance.ElasticLaunch;
import io.github.wingwright.core.quantity.Energy;
import io.github.wingwright.core.quantity.Force;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.stability.design.Design;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * What can hurt, where this design can say it in numbers: the energy of what is thrown, the radius of its nose, its mass
 * against the limits of rules; and what goes with making and launching any model. Local law and the rules of club and hall
 * come first; for anything that carries people the numbers are a first estimate for licensed practice.
 */
public final class Cautions {
  private static final Source NOSE_RULE =
      Source.published("FAI Sporting Code, section 4, class F3K, as restated by clubs", "nose radius 5 mm");
  private static final Interval BLUNT = Interval.atLeast(5e-3);

  /** The mass from which rules for unmanned aircraft in the EU and the USA ask more [kg] (EASA FAQ 116513; 14 CFR 107.110). */
  private static final double RULES_MASS = 0.25;

  private final Design design;

  private Cautions(Design design) {
    this.design = design;
  }

  /**
   * The cautions that go with a design.
   *
   * @param design the design
   * @return the cautions
   */
  public static Cautions of(Design design) {
    Objects.requireNonNull(design, "design");
    return new Cautions(design);
  }

  /**
   * Energy of the glider as it leaves the hand.
   *
   * @return ½·m·V²
   */
  public Energy kineticEnergy() {
    return Energy.joules(design.number("launch.kinetic_energy_j").value());
  }

  /**
   * Radius of curvature of the nose tip, from r² = 2·R·x close to it.
   *
   * @return R
   */
  public Length noseRadius() {
    Fuselage body = design.aircraft().airframe().fuselage();
    double x = 1e-6 * body.diameter().si();
    double r = body.shape().radius(x, body.length().si(), body.diameter().si());
    return Length.metres(r * r / (2.0 * x));
  }

  /**
   * What is known to be beyond a rule.
   *
   * @return a serious finding for a nose that is too sharp
   */
  public List<Finding> findings() {
    double radius = noseRadius().si();
    if (BLUNT.contains(radius)) {
      return List.of();
    }
    return List.of(
        Finding.of(
            Severity.SERIOUS,
            "nose radius",
            "A nose so sharp can injure an eye. Round it, or put a soft cap on it.",
            radius,
            BLUNT,
            Length.MILLIMETRE,
            NOSE_RULE));
  }

  /**
   * The cautions in words.
   *
   * @return one or two sentences each
   */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    Speed launch = design.launch().speed();
    lines.add(
        (design.brief().launch().elastic().isPresent() ? "Leaving the elastic at " : "Thrown at ")
            + launch.format(Speed.METRE_PER_SECOND, 3)
            + ", this glider carries "
            + kineticEnergy().format(Energy.JOULE, 2)
            + " behind a nose of "
            + noseRadius().format(Length.MILLIMETRE, 2)
            + " radius. Never launch it towards people or faces; keep the flight path clear; give it a soft cap and a nose of at least 5 mm radius.");
    lines.add(design.brief().launch().elastic().map(this::pulled).orElseGet(this::ifPulled));
    lines.add(
        "Hot nozzles and beds burn, and printing gives off fumes and fine particles"
            + (styrene() ? ", styrene among them with this material" : "")
            + ": air the room, let nobody reach into a running machine, and do not leave it alone. Blades, cyanoacrylate and sanding dust want gloves, goggles and a mask.");
    lines.add(
        "If a battery is added: the charger made for its kind, never unattended, in a bag or box that stands fire, and none that is dented or swollen. Lead ballast is poisonous: wrap it, wash hands, and keep it from small children.");
    double mass = design.aircraft().mass().si();
    lines.add(
        "Follow the rules of the hall, the club and the country. It weighs "
            + Mass.GRAM.format(mass, 3)
            + (mass < RULES_MASS
                ? ", below the 250 g from which several countries ask for registration of unmanned aircraft; ask locally what holds where it flies."
                : ", above the 250 g from which several countries ask for registration of unmanned aircraft: ask the authority before it flies outdoors."));
    lines.add(
        "All numbers are a first estimate for a model; where a value is a range, plan for both of its ends. For anything that carries people they are no more than a beginning for licensed engineers and inspectors.");
    return lines;
  }

  private String ifPulled() {
    return "From an elastic or a catapult it leaves faster than from the hand, and its energy grows with the square: twice the speed is "
        + Energy.JOULE.format(4.0 * kineticEnergy().si(), 2)
        + ". Wear eye protection, all who stand near as well; inspect the rubber, and never aim at anybody.";
  }

  /** An elastic is a weapon before it is a launch: what it holds, and where its pull goes. */
  private String pulled(ElasticLaunch elastic) {
    Mass nose = design.aircraft().masses().item("ballast").map(MassItem::mass).orElse(Mass.ZERO);
    double forward = elastic.greatestPull().si() / design.aircraft().mass().si();
    return "The stretched elastic holds "
        + elastic.energy().format(Energy.JOULE, 2)
        + " and pulls with "
        + elastic.greatestPull().format(Force.NEWTON, 2)
        + ", "
        + NamedUnit.NUMBER.format(elastic.loadFactor(design.aircraft().mass()), 2)
        + " times the weight. Wear eye protection, all who stand near as well; nobody stands in line with it, before or behind;"
        + " never aim at anybody, and let nobody stretch it alone. Look over rubber, knots and hook for cracks before each"
        + " launch, and throw away rubber that has any. The hook must open to the rear, so that the loop drops off by itself once it is slack."
        + (nose.isPositive()
            ? " The ballast presses back with " + Force.NEWTON.format(forward * nose.si(), 2) + ": it must sit against a wall, not hang in glue."
            : "");
  }

  private boolean styrene() {
    String name = design.brief().material().name();
    return name.startsWith("ABS") || name.startsWith("ASA");
  }

  @Override
  public String toString() {
    return "cautions: " + kineticEnergy() + ", nose radius " + noseRadius();
  }
}
