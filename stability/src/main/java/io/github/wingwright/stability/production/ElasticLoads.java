// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.production;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.manufacture.JointStrength;
import io.github.wingwright.core.manufacture.SectionStrength;
import io.github.wingwright.core.mass.MassItem;
import io.github.wingwright.core.performance.ElasticLaunch;
import io.github.wingwright.core.quantity.Acceleration;
import io.github.wingwright.core.quantity.Force;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.Moment;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.quantity.Pressure;
import io.github.wingwright.core.sizing.BodyShell;
import io.github.wingwright.stability.design.Design;
import java.util.ArrayList;
import java.util.List;

/**
 * What the pull of an elastic does to a printed glider. The hook is pulled forward by F, the whole glider is accelerated by
 *
 * <pre>{@code a = F/m}</pre>
 *
 * <p>and every part lags behind by its own mass times a: what is behind the hook is dragged along and pulls the body apart,
 * what is ahead of it is pressed back, wing and tails bend backward about their roots,
 *
 * <pre>{@code
 * N = m_a·a        M = m_p·a·y        M_h = F·d/2
 * }</pre>
 *
 * <p>with the mass m_a behind (or ahead of) a place, the mass m_p of a panel and the distance y of its centre from the root.
 * A hook below a body of diameter d bends it by M_h at most; the inertia in pitch takes up a part of that.
 *
 * <p>Validity: F is the greatest pull, felt when it is let go. Then the glider stands still and has no lift, so these loads
 * do not add to those of the throw, which it meets as it leaves the elastic. The mass of the elastic is left out of a, which
 * makes it too large. A jerk, when the elastic is let go slack or the glider is held askew, may double it all: that is in the
 * reserve of 2. Source: Newton's second law and beam statics (from memory of any textbook of mechanics); that the hook sits
 * below the body at its diameter behind the nose, on a foot of 10 mm, is common practice without a source.
 */
final class ElasticLoads {
  /** What the words of these loads begin with. */
  static final String CAUSE = "elastic, ";

  private static final Source NEWTON = Source.fromMemory("elementary mechanics", "force is mass times acceleration");
  private static final Source STATICS = Source.fromMemory("elementary mechanics", "a beam bent by its own inertia");

  /** Length of the hook's foot along the wall [m] (common practice, no source). */
  private static final double FOOT = 0.010;

  /** Shear strength over strength in tension: 1/√3 (von Mises, from memory). */
  private static final double SHEAR = 1.0 / Math.sqrt(3.0);

  /** Acceleration by the pull. */
  static final Formula ACCELERATION =
      Formula.named("acceleration by the elastic")
          .gives("a", Acceleration.METRE_PER_SECOND_SQUARED)
          .as("F / m")
          .where("F", "greatest pull of the elastic", Force.NEWTON, 0.01, 1000)
          .where("m", "mass of the glider", Mass.KILOGRAM, 0.001, 10)
          .from(NEWTON)
          .computedBy(ElasticLoads::acceleration);

  /** Force in the body between what is accelerated and the hook. */
  static final Formula DRAGGED =
      Formula.named("force by which a part lags behind")
          .gives("N", Force.NEWTON)
          .as("m_a·a")
          .where("m_a", "mass beyond the place", Mass.KILOGRAM, 0, 10)
          .where("a", "acceleration by the elastic", Acceleration.METRE_PER_SECOND_SQUARED, 0, 1e5)
          .from(NEWTON)
          .computedBy(ElasticLoads::dragged);

  /** Bending of a panel about its root by its own inertia. */
  static final Formula BACKWARD =
      Formula.named("moment of a panel that lags behind")
          .gives("M", Moment.NEWTON_METRE)
          .as("m_p·a·y")
          .where("m_p", "mass of the panel", Mass.KILOGRAM, 0, 10)
          .where("a", "acceleration by the elastic", Acceleration.METRE_PER_SECOND_SQUARED, 0, 1e5)
          .where("y", "distance of its centre from the root", Length.METRE, 0, 10)
          .from(STATICS)
          .computedBy(ElasticLoads::backward);

  /** Bending of the body by a hook below it. */
  static final Formula BELOW =
      Formula.named("moment of a hook below the body")
          .gives("M_h", Moment.NEWTON_METRE)
          .as("F·d / 2")
          .where("F", "greatest pull of the elastic", Force.NEWTON, 0.01, 1000)
          .where("d", "diameter of the body", Length.METRE, 1e-3, 1)
          .from(STATICS)
          .computedBy(ElasticLoads::below);

  private final Design design;
  private final Step pull;
  private final Step acceleration;
  private final double strength;
  private final double across;
  private final double diameter;
  private final double wall;
  private final List<LaunchLoads.Load> loads = new ArrayList<>();
  private final List<Step> steps = new ArrayList<>();

  ElasticLoads(Design design, ElasticLaunch elastic) {
    this.design = design;
    strength = design.brief().material().strength().map(Pressure::si).orElse(0.0);
    across = JointStrength.ACROSS_LAYERS * strength;
    diameter = design.aircraft().airframe().fuselage().diameter().si();
    wall = design.brief().bodyShell().wallThickness().si();
    pull = Step.given("greatest pull of the elastic", "F", elastic.greatestPull(), Source.BRIEF);
    acceleration = Step.of(ACCELERATION, pull, design.number("mass_kg"));
    steps.add(acceleration);
    body();
    surfaces(design.aircraft().airframe());
  }

  /**
   * Acceleration by the pull.
   *
   * @param pull F [N]
   * @param mass m [kg], positive
   * @return a [m/s²]; 8 N on 25 g are 320 m/s²
   */
  static double acceleration(double pull, double mass) {
    return pull / mass;
  }

  /**
   * Force by which what lies beyond a place lags behind.
   *
   * @param mass m_a [kg]
   * @param acceleration a [m/s²]
   * @return N [N]; 4 g at 320 m/s² pull with 1.28 N
   */
  static double dragged(double mass, double acceleration) {
    return mass * acceleration;
  }

  /**
   * Moment about its root of a panel that lags behind.
   *
   * @param mass m_p [kg]
   * @param acceleration a [m/s²]
   * @param centre y [m]
   * @return M [N·m]; half a wing of 6 g, its centre 0.1 m out, at 320 m/s²: 0.192 N·m
   */
  static double backward(double mass, double acceleration, double centre) {
    return mass * acceleration * centre;
  }

  /**
   * Moment of a hook below the body.
   *
   * @param pull F [N]
   * @param diameter d [m]
   * @return M_h [N·m]; 8 N below 22 mm: 0.088 N·m
   */
  static double below(double pull, double diameter) {
    return 0.5 * pull * diameter;
  }

  /** The loads; none carries anything where the strength of the material is not known. */
  List<LaunchLoads.Load> loads() {
    return List.copyOf(loads);
  }

  /** The workings of every load, in the order of the loads, after that of the acceleration. */
  List<Step> workings() {
    return List.copyOf(steps);
  }

  private void body() {
    double middle = Math.max(diameter - wall, 0.5 * diameter);
    double ring = Math.PI * wall * middle;
    double hook = diameter;
    add("hook", "torn out along the wall", pull, 2.0 * SHEAR * strength * wall * FOOT, Force.NEWTON);
    lagging("nose ahead of the hook", "pressed back", massBeyond(hook, false), strength * ring);
    lagging("fuselage behind the hook", "pulled apart", massBeyond(hook, true), across * ring);
    Wing wing = design.aircraft().airframe().wing();
    double trailingEdge = wing.placement().x().si() + wing.planform().rootChord().si();
    lagging("boom behind the wing", "pulled apart", massBeyond(trailingEdge, true), across * ring);
    Step bent = Step.of(BELOW, pull, Step.given("diameter of the body", "d", Length.metres(diameter), Source.taken("fuselage as sized")));
    double modulus = BodyShell.secondMoment(diameter, wall) / (0.5 * diameter);
    keep("fuselage at the hook", "hook below the body", bent, across * modulus, Moment.NEWTON_METRE);
  }

  private void lagging(String place, String cause, double mass, double capacity) {
    Step beyond = Step.given("mass of: " + place, "m_a", Mass.kilograms(mass), Source.taken("mass statement"));
    keep(place, cause, Step.of(DRAGGED, beyond, acceleration), capacity, Force.NEWTON);
  }

  private void surfaces(Airframe airframe) {
    Planform wing = airframe.wing().planform();
    Length thickness = design.brief().wingShell().wallThickness();
    double inPlane = across * SectionStrength.alongChord(airframe.wing().section(), wing.rootChord(), thickness);
    double t = wing.taperRatio();
    panel("wing root", 0.5 * mass("wing"), wing.span().si() / 6.0 * (1.0 + 2.0 * t) / (1.0 + t), inPlane);
    for (Tail tail : airframe.tails()) {
      Planform p = tail.planform();
      boolean two = p.isMirrored();
      double half = two ? 0.5 * p.span().si() : p.span().si();
      double taper = p.taperRatio();
      double c = p.rootChord().si();
      double plate = strength * design.brief().tailThickness().si() * c * c / 6.0;
      double centre = half / 3.0 * (1.0 + 2.0 * taper) / (1.0 + taper);
      panel(tail.role().words() + " root", (two ? 0.5 : 1.0) * mass(tail.role().words()), centre, plate);
    }
  }

  private void panel(String place, double mass, double centre, double capacity) {
    Step panel = Step.given("mass of the panel at the " + place, "m_p", Mass.kilograms(mass), Source.taken("mass statement"));
    Step at = Step.given("its centre from the root", "y", Length.metres(centre), Source.library("trapezoid of even thickness"));
    keep(place, "lagging behind", Step.of(BACKWARD, panel, acceleration, at), capacity, Moment.NEWTON_METRE);
  }

  private void keep(String place, String cause, Step step, double capacity, NamedUnit<?> unit) {
    add(place, cause, step, capacity, unit);
    steps.add(step);
  }

  private void add(String place, String cause, Step step, double capacity, NamedUnit<?> unit) {
    if (step.value() > 0.0) {
      loads.add(new LaunchLoads.Load(place, CAUSE + cause, step.value(), capacity, unit));
    }
  }

  private double mass(String item) {
    return design.aircraft().masses().item(item).map(i -> i.mass().si()).orElse(0.0);
  }

  /** Mass behind a place, or ahead of it; the fuselage is spread evenly along its length. */
  private double massBeyond(double station, boolean behind) {
    double length = design.aircraft().airframe().fuselage().length().si();
    double sum = 0.0;
    for (MassItem item : design.aircraft().masses().items()) {
      double aft = item.name().equals("fuselage")
          ? Math.max(0.0, 1.0 - station / length)
          : item.centreOfGravity().x().si() > station ? 1.0 : 0.0;
      sum += item.mass().si() * (behind ? aft : 1.0 - aft);
    }
    return sum;
  }
}
