// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.production;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.manufacture.Joint;
import io.github.wingwright.core.manufacture.JointStrength;
import io.github.wingwright.core.manufacture.PrintList;
import io.github.wingwright.core.manufacture.SectionStrength;
import io.github.wingwright.core.manufacture.SlenderPart;
import io.github.wingwright.core.mass.MassItem;
import io.github.wingwright.core.mass.Material;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Force;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Moment;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.quantity.Pressure;
import io.github.wingwright.core.sizing.BodyShell;
import io.github.wingwright.core.sizing.NoseStrength;
import io.github.wingwright.stability.design.Design;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What the throw and the wall do to a printed glider, part by part, and whether it holds.
 *
 * <p>Two cases size a model of a few grams. In the throw the wing may lift all it can at the speed of the hand:
 *
 * <pre>{@code L = ½·ρ·V²·S·C_L,u        n = L/W}</pre>
 *
 * <p>At the nose impact the wall stops it over the stroke s by which the nose gives way; all that is behind the nose is
 * pushed forward by its own mass times the deceleration
 *
 * <pre>{@code a = V²/(2·s)}</pre>
 *
 * <p>on the mean, with peaks of twice as much. Parts printed standing are bent across their layers, where a print has about
 * half of its strength along the line ({@link JointStrength#ACROSS_LAYERS}; from memory: a third to four fifths; published ranges
 * of printed specimens give 0.57 to 0.68 for PETG and 0.7 for PLA, public data page on materials of additive manufacturing).
 * Wing and body are thin shells.
 *
 * <p>A launch by an elastic adds the pull at the hook and what lags behind it.
 */
public final class LaunchLoads {
  /** A soft cap or a crushed nose gives way by so much unless one says otherwise. */
  private static final Length USUAL_STROKE = Length.millimetres(5);

  /** The peak of an impact over its mean (common practice, no source). */
  private static final double PEAK = 2.0;

  /** What a part shall carry over its load. */
  private static final double RESERVE = 2.0;

  /** Load of a tail over the lift of the wing at launch (common practice, no source). */
  private static final double TAIL_SHARE = 0.1;

  private static final String IMPACT = "impact, ";
  private static final Source LOADS = Source.library("lift at launch, deceleration of the impact, bending of thin shells");

  private final Design design;
  private final Length stroke;
  private final List<Load> loads = new ArrayList<>();

  private LaunchLoads(Design design, Length stroke) {
    this.design = design;
    this.stroke = Door.positive(stroke, "stroke of the nose");
    reckon();
  }

  /**
   * One load on one part.
   *
   * @param place what is loaded, such as {@code "wing root"}
   * @param cause by what, such as {@code "lift at launch"}
   * @param value the load [SI]
   * @param capacity what the part carries [SI]
   * @param unit the unit of both
   */
  public record Load(String place, String cause, double value, double capacity, NamedUnit<?> unit) {
    /** Refuses null. */
    public Load {
      Objects.requireNonNull(place, "place");
      Objects.requireNonNull(cause, "cause");
      Objects.requireNonNull(unit, "unit");
    }

    /**
     * How many times the load the part carries.
     *
     * @return the reserve
     */
    public double reserve() {
      return capacity / value;
    }

    @Override
    public String toString() {
      return place + ", " + cause + ": " + unit.format(value, 2) + ", carries " + unit.format(capacity, 2);
    }
  }

  /**
   * The loads of a design, its nose giving way by 5 mm.
   *
   * @param design the design
   * @return the loads
   */
  public static LaunchLoads of(Design design) {
    Objects.requireNonNull(design, "design");
    return new LaunchLoads(design, USUAL_STROKE);
  }

  /**
   * The loads of a design.
   *
   * @param design the design
   * @param stroke by how much the nose gives way, positive
   * @return the loads
   */
  public static LaunchLoads of(Design design, Length stroke) {
    Objects.requireNonNull(design, "design");
    return new LaunchLoads(design, stroke);
  }

  /**
   * The greatest lift of the throw.
   *
   * @return L = ½·ρ·V²·S·C_L,u
   */
  public Force launchLift() {
    double v = design.launch().speed().si();
    double area = design.aircraft().airframe().wing().planform().area().si();
    return Force.newtons(0.5 * design.brief().air().density().si() * v * v * area * design.glide().usableLift());
  }

  /**
   * The mean deceleration at the impact.
   *
   * @return a = V²/(2·s) in m/s²
   */
  public double deceleration() {
    double v = design.launch().speed().si();
    return v * v / (2.0 * stroke.si());
  }

  /**
   * The mean force on the nose.
   *
   * @return F = m·V²/(2·s)
   */
  public Force impactForce() {
    return Force.newtons(
        NoseStrength.impactForce(design.aircraft().mass().si(), design.launch().speed().si(), stroke.si()));
  }

  /**
   * The moment of the throw along a half wing.
   *
   * @param station distance from the middle [m]
   * @return bending moment [N·m]
   */
  public double wingBending(double station) {
    Planform wing = design.aircraft().airframe().wing().planform();
    return SpanLoading.moment(
        launchLift().si(), wing.span().si(), wing.taperRatio(), Math.min(1.0, 2.0 * station / wing.span().si()));
  }

  /**
   * The moment of the throw along a tail, which then carries a tenth of the wing's lift (common practice, no source).
   *
   * @param tail the tail
   * @param station distance from its root [m]
   * @return bending moment [N·m]
   */
  public double tailBending(Tail tail, double station) {
    Objects.requireNonNull(tail, "tail");
    Planform p = tail.planform();
    double span = p.isMirrored() ? p.span().si() : 2.0 * p.span().si();
    double lift = TAIL_SHARE * launchLift().si() * (p.isMirrored() ? 1.0 : 2.0);
    return SpanLoading.moment(lift, span, p.taperRatio(), Math.min(1.0, 2.0 * station / span));
  }

  /**
   * The moment along the fuselage at launch: the tails are carried at the load factor behind the wing, the nose before it.
   *
   * @param station distance from the nose [m]
   * @return bending moment [N·m]
   */
  public double bodyBending(double station) {
    double factor = launchLift().si() / design.aircraft().mass().si();
    double wing = design.aircraft().airframe().wing().quarterChordX().si();
    boolean aft = station > wing;
    double moment = 0.0;
    for (MassItem item : design.aircraft().masses().items()) {
      double x = item.centreOfGravity().x().si();
      double mass = item.mass().si();
      if (item.name().equals("fuselage")) {
        double length = design.aircraft().airframe().fuselage().length().si();
        double beyond = aft ? length - station : station;
        moment += mass * beyond / length * 0.5 * beyond;
      } else if (!item.name().equals("wing") && (aft ? x > station : x < station)) {
        moment += mass * Math.abs(x - station);
      }
    }
    return moment * factor;
  }

  /**
   * All loads.
   *
   * @return wing root, boom, nose; at launch, at the impact, and in the pull of an elastic
   */
  public List<Load> loads() {
    return List.copyOf(loads);
  }

  private void reckon() {
    Airframe airframe = design.aircraft().airframe();
    Wing wing = airframe.wing();
    Fuselage body = airframe.fuselage();
    Material material = design.brief().material();
    double across = JointStrength.ACROSS_LAYERS * material.strength().map(Pressure::si).orElse(0.0);
    if (across == 0.0) {
      return;
    }
    Length chord = wing.planform().rootChord();
    Length wall = design.brief().wingShell().wallThickness();
    double span = wing.planform().span().si();
    NamedUnit<?> nm = Moment.NEWTON_METRE;
    double up = across * SectionStrength.acrossChord(wing.section(), chord, wall);
    add("wing root", "lift at launch", wingBending(0.0), up, nm);
    double half = 0.5 * mass("wing");
    double centre = span / 6.0 * (1.0 + 2.0 * wing.planform().taperRatio()) / (1.0 + wing.planform().taperRatio());
    double inPlane = across * SectionStrength.alongChord(wing.section(), chord, wall);
    add("wing root", IMPACT + "wings going forward", PEAK * half * deceleration() * centre, inPlane, nm);

    double bodyWall = design.brief().bodyShell().wallThickness().si();
    double x = wing.quarterChordX().si();
    double diameter = body.diameter().si();
    double ring = BodyShell.secondMoment(diameter, bodyWall);
    loads.addAll(BoomLoads.of(design, this::bodyBending, across));
    double middle = Math.max(diameter - bodyWall, 0.5 * diameter);
    double strut = material.strength().map(Pressure::si).orElse(0.0) * Math.PI * bodyWall * middle;
    double pushed = PEAK * massBehind(diameter) * deceleration();
    add("fuselage behind the nose", IMPACT + "crushed", pushed, strut, Force.NEWTON);
    material.elasticModulus().ifPresent(e -> {
      double free = Math.max(x - diameter, 0.5 * diameter);
      double euler = Math.PI * Math.PI * e.si() * ring / (free * free);
      add("fuselage from nose to wing", IMPACT + "buckling", pushed, euler, Force.NEWTON);
    });
    airframe.verticalTail().ifPresent(fin -> tail(fin, across));
    airframe.horizontalTail().ifPresent(tail -> tail(tail, across));
    elastic().ifPresent(pulled -> loads.addAll(pulled.loads()));
  }

  private Optional<ElasticLoads> elastic() {
    return design.brief().launch().elastic().map(pulling -> new ElasticLoads(design, pulling));
  }

  /**
   * How the loads of an elastic were reckoned.
   *
   * @return the workings of its acceleration and of what follows from it; none for a throw from the hand
   */
  public List<Step> elasticWorkings() {
    return elastic().map(ElasticLoads::workings).orElse(List.of());
  }

  /** What pushes on the body from behind at a distance from the nose: ballast and caps in the nose stop by themselves. */
  private double massBehind(double station) {
    double length = design.aircraft().airframe().fuselage().length().si();
    return design.aircraft().masses().items().stream()
        .mapToDouble(
            i -> {
              boolean spread = i.name().equals("fuselage");
              boolean behind = i.centreOfGravity().x().si() > station;
              return spread ? i.mass().si() * (1.0 - station / length) : behind ? i.mass().si() : 0.0;
            })
        .sum();
  }

  /** A plate that wants to go on at the impact: bent about its root in its own plane, printed lying, so along its lines. */
  private void tail(Tail tail, double across) {
    double strength = across / JointStrength.ACROSS_LAYERS;
    Planform p = tail.planform();
    double share = p.isMirrored() ? 0.5 : 1.0;
    double half = p.isMirrored() ? 0.5 * p.span().si() : p.span().si();
    double t = design.brief().tailThickness().si();
    double c = p.rootChord().si();
    double moment = PEAK * share * mass(tail.role().words()) * deceleration() * 0.45 * half;
    add(tail.role().words() + " root", IMPACT + "going forward", moment, strength * t * c * c / 6.0, Moment.NEWTON_METRE);
  }

  private double mass(String item) {
    return design.aircraft().masses().item(item).map(i -> i.mass().si()).orElse(0.0);
  }

  private void add(String place, String cause, double value, double capacity, NamedUnit<?> unit) {
    if (value > 0.0) {
      loads.add(new Load(place, cause, value, capacity, unit));
    }
  }

  /**
   * What to know: parts without enough reserve.
   *
   * @return serious where a part breaks at launch at its likely strength, a caution where it has little reserve or would
   *     break at an impact; a note if the strength of the material is not known
   */
  public List<Finding> findings() {
    if (loads.isEmpty()) {
      return List.of(
          Finding.of(
              Severity.NOTE,
              "launch and impact",
              "The strength of " + design.brief().material().name() + " is not known: break a test strip and enter it.",
              LOADS));
    }
    return findings(loads);
  }

  /**
   * What to know about some loads: those without enough reserve.
   *
   * @param some loads of this design
   * @return findings, heaviest first
   */
  public List<Finding> findings(List<Load> some) {
    Objects.requireNonNull(some, "some");
    List<Finding> findings = new ArrayList<>();
    for (Load load : some) {
      if (load.reserve() < RESERVE) {
        findings.add(load.cause().startsWith(IMPACT) ? hit(load) : thrown(load));
      }
    }
    return Finding.inOrderOfWeight(findings);
  }

  private static Finding thrown(Load load) {
    boolean breaks = load.reserve() < 1.0;
    boolean pulled = load.cause().startsWith(ElasticLoads.CAUSE);
    String when = pulled ? "pull" : "launch";
    String words = breaks ? "It breaks in the " + when + ": " : "It holds the " + when + " with little reserve; prints and glue scatter: ";
    return finding(breaks ? Severity.SERIOUS : Severity.CAUTION, load, words + load + (pulled ? ". Add a wall or a spar, or stretch the elastic less." : ". Add a wall or a spar."));
  }

  /** An impact may never happen, and a softer nose halves it: what stroke the part would ask for. */
  private Finding hit(Load load) {
    boolean breaks = load.reserve() < 1.0;
    String words =
        (breaks ? "It breaks when the nose hits a wall: " : "It holds a nose impact with little reserve: ")
            + load
            + ". It would hold with a nose that gives way by "
            + Length.MILLIMETRE.format(stroke.si() / load.reserve(), 2)
            + ", not "
            + stroke.format(Length.MILLIMETRE, 2)
            + ", or if the part can slide or come off.";
    return finding(breaks ? Severity.CAUTION : Severity.NOTE, load, words);
  }

  private static Finding finding(Severity severity, Load load, String words) {
    return Finding.of(
        severity,
        load.place(),
        words,
        load.reserve(),
        Interval.atLeast(RESERVE),
        NamedUnit.NUMBER,
        LOADS);
  }

  /**
   * The joint in the middle of a wing that is made in two halves.
   *
   * @param half the half wing
   * @return the lightest that carries the throw twice
   */
  public Joint rootJoint(SlenderPart half) {
    Objects.requireNonNull(half, "half");
    return Joint.lightest(half, Length.ZERO);
  }

  /**
   * What throw and impact do to the joints of a print list. In the throw a joint is bent as its part is there; at the impact
   * what lies outboard of a seam of a wing or a tail goes on forward and bends it in its plane. In a fuselage the rear is
   * pressed against the seam, which no joint has to carry.
   *
   * @param list the print list of the same design
   * @return the loads, two for each joint of a surface
   */
  public List<Load> onJoints(PrintList list) {
    return JointLoads.of(list, IMPACT, PEAK * deceleration());
  }

  @Override
  public String toString() {
    return "launch lifts " + launchLift() + ", impact " + impactForce() + " on the nose";
  }
}
