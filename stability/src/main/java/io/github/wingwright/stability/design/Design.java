// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import io.github.wingwright.core.aerodynamics.AircraftDrag;
import io.github.wingwright.core.aerodynamics.DragBreakdown;
import io.github.wingwright.core.aerodynamics.SectionPolar;
import io.github.wingwright.core.aircraft.Aircraft;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Sized;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Workings;
import io.github.wingwright.core.geometry.AirfoilSection;
import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.performance.GlidePerformance;
import io.github.wingwright.core.performance.Throw;
import io.github.wingwright.core.performance.ThrowCheck;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.sizing.FuselageSizing;
import io.github.wingwright.stability.CentreOfGravityRange;
import io.github.wingwright.stability.LateralStability;
import io.github.wingwright.stability.NeutralPoint;
import io.github.wingwright.stability.PitchModel;
import io.github.wingwright.stability.StaticMargin;
import io.github.wingwright.stability.Trim;
import io.github.wingwright.stability.TrimmedPolar;
import io.github.wingwright.stability.lattice.AirframeLattice;
import io.github.wingwright.stability.lattice.FactoredLattice;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * A complete design: what {@link SizingLoop} arrives at.
 *
 * <p>Every number of it is a step under a name, such as {@code "wing.span_m"}: flat, in SI, the unit in the name. The value
 * of the step is the number that the design was reckoned with.
 */
public final class Design {
  private static final int LATTICE_ROWS = 4;
  private static final int LATTICE_STRIPS = 16;

  private final DesignBrief brief;
  private final Sized<Wing> wing;
  private final Sized<Fuselage> fuselage;
  private final Aircraft aircraft;
  private final PitchModel pitchModel;
  private final NeutralPoint neutralPoint;
  private final StaticMargin staticMargin;
  private final GlidePerformance glide;
  private final GlidePerformance alternative;
  private final ThrowCheck throwCheck;
  private final Trim trim;
  private final LateralStability lateral;
  private final DragBreakdown drag;
  private final Map<String, Step> numbers;
  private final List<Finding> findings;
  private final Lazy<FlightModes> modes = new Lazy<>(this::reckonModes);
  private final Lazy<FiniteWing> finiteWing = new Lazy<>(this::reckonFiniteWing);
  private final Lazy<TrimmedPolar> trimmedPolar = new Lazy<>(this::reckonTrimmedPolar);
  private final Lazy<FactoredLattice> lattice = new Lazy<>(this::factoredLattice);

  Design(
      DesignBrief brief,
      Sized<Wing> wing,
      Sized<Fuselage> fuselage,
      Aircraft aircraft,
      PitchModel pitchModel,
      NeutralPoint neutralPoint,
      StaticMargin staticMargin,
      GlidePerformance glide,
      GlidePerformance alternative,
      ThrowCheck throwCheck,
      Trim trim,
      LateralStability lateral,
      DragBreakdown drag,
      Map<String, Step> numbers,
      List<Finding> findings) {
    this.brief = brief;
    this.wing = wing;
    this.fuselage = fuselage;
    this.aircraft = aircraft;
    this.pitchModel = pitchModel;
    this.neutralPoint = neutralPoint;
    this.staticMargin = staticMargin;
    this.glide = glide;
    this.alternative = alternative;
    this.throwCheck = throwCheck;
    this.trim = trim;
    this.lateral = lateral;
    this.drag = drag;
    this.numbers = Collections.unmodifiableMap(new LinkedHashMap<>(numbers));
    this.findings = Finding.inOrderOfWeight(findings);
  }

  /**
   * What was asked.
   *
   * @return the brief
   */
  public DesignBrief brief() {
    return brief;
  }

  /**
   * The wing as it was sized, before rounding, with the feasible range of its chord.
   *
   * @return the sized wing
   */
  public Sized<Wing> sizedWing() {
    return wing;
  }

  /**
   * The fuselage as it was sized, before rounding, with the feasible range of its diameter and the price of the choice.
   *
   * @return the sized fuselage
   */
  public Sized<Fuselage> sizedFuselage() {
    return fuselage;
  }

  /**
   * The aircraft as it is made: shape and masses.
   *
   * @return the aircraft
   */
  public Aircraft aircraft() {
    return aircraft;
  }

  /**
   * How it leaves hand or elastic, as the brief asks and with its own mass: level.
   *
   * @return the throw to be flown
   */
  public Throw launch() {
    return Throw.level(brief.launch().speed(aircraft.mass()), brief.launch().height());
  }

  /**
   * With what its balance and trim are reckoned: airframe, methods and section data.
   *
   * @return the model
   */
  public PitchModel pitchModel() {
    return pitchModel;
  }

  /**
   * The stick-fixed neutral point.
   *
   * @return the neutral point with its contributions
   */
  public NeutralPoint neutralPoint() {
    return neutralPoint;
  }

  /**
   * The static margin.
   *
   * @return the margin with its findings
   */
  public StaticMargin staticMargin() {
    return staticMargin;
  }

  /**
   * How it glides.
   *
   * @return the glide
   */
  public GlidePerformance glide() {
    return glide;
  }

  /**
   * How it would glide with a curved plate as its wing, lighter by the difference of the wings' masses.
   *
   * @return the glide of the alternative
   */
  public GlidePerformance alternative() {
    return alternative;
  }

  /**
   * Whether it flies for this thrower.
   *
   * @return the verdict
   */
  public ThrowCheck throwCheck() {
    return throwCheck;
  }

  /**
   * Trim at 1.2 times the stall speed.
   *
   * @return the decalage as a range
   */
  public Trim trim() {
    return trim;
  }

  /**
   * Spiral stability.
   *
   * @return spiral parameter and dihedral
   */
  public LateralStability lateral() {
    return lateral;
  }

  /**
   * The drag of everything but the wing, at best glide.
   *
   * @return the build-up
   */
  public DragBreakdown drag() {
    return drag;
  }

  /**
   * All numbers of the design.
   *
   * @return a step under each name, in the order of the design
   */
  public Map<String, Step> numbers() {
    return numbers;
  }

  /**
   * One number of the design.
   *
   * @param name its name, such as {@code "wing.span_m"}
   * @return its step
   * @throws IllegalArgumentException if there is none of that name
   */
  public Step number(String name) {
    Step step = numbers.get(name);
    if (step == null) {
      throw new IllegalArgumentException("number must be one of " + numbers.keySet() + ", was " + name);
    }
    return step;
  }

  /**
   * The workings of all numbers.
   *
   * @return the steps, inputs first
   */
  public Workings workings() {
    return Workings.of(new ArrayList<>(numbers.values()));
  }

  /**
   * What the designer should know.
   *
   * @return findings, heaviest first
   */
  public List<Finding> findings() {
    return findings;
  }

  /**
   * How it moves after a disturbance, in the glide that it is trimmed for. Reckoned when it is first asked for.
   *
   * @return the natural motions; in the shell a table
   */
  public FlightModes modes() {
    return modes.get();
  }

  /**
   * The finite wing by handbook, lifting line and lattice, and where it stalls first. Reckoned when it is first asked for.
   *
   * @return the wing; in the shell a table
   */
  public FiniteWing finiteWing() {
    return finiteWing.get();
  }

  /**
   * The glide with the tail holding the trim at every lift coefficient. Reckoned when it is first asked for.
   *
   * @return the trimmed polar
   */
  public TrimmedPolar trimmedPolar() {
    return trimmedPolar.get();
  }

  /**
   * Wing, tailplane and fin as a vortex lattice about the centre of gravity, the tailplane set for trim, the sections with
   * their own lift slope. Factored when it is first asked for.
   *
   * @return the lattice, ready for any condition
   */
  public FactoredLattice lattice() {
    return lattice.get();
  }

  /**
   * Where the centre of gravity may lie: aft by a least static margin, forward by trim at the usable lift.
   *
   * @param leastMargin least static margin, fraction of c̄
   * @return the range with who sets each end
   */
  public CentreOfGravityRange centreOfGravityRange(double leastMargin) {
    double tailLift = brief.tailPolar().likelyUsableLift(tailReynolds());
    return CentreOfGravityRange.of(pitchModel, leastMargin, glide.usableLift(), tailLift);
  }

  /**
   * The same wing, as it is made, with another fuselage: tails, masses, ballast, balance, glide and trim are reckoned anew and
   * not rounded. What a change of the fuselage alone is worth.
   *
   * @param other the fuselage; it is not held against the considerations of the brief
   * @return the design with it
   * @throws IllegalStateException if it is too short for the tails, or no ballast balances it
   */
  public Design withFuselage(Fuselage other) {
    Objects.requireNonNull(other, "other");
    return reckoned(brief, aircraft.airframe().wing(), other);
  }

  /**
   * The same planform and fuselage, as they are made, with another section of the wing: tails, masses, ballast, balance, glide and
   * trim are reckoned anew and not rounded. What the choice of the section alone is worth.
   *
   * @param section the section; it is not held against the considerations of the brief
   * @param polar its polar
   * @return the design with it
   * @throws IllegalStateException if no ballast balances it
   */
  public Design withSection(AirfoilSection section, SectionPolar polar) {
    Objects.requireNonNull(section, "section");
    Objects.requireNonNull(polar, "polar");
    Wing made = aircraft.airframe().wing();
    Wing other = new Wing(made.planform(), section, made.placement(), made.incidence());
    return reckoned(brief.wingPolar(polar), other, aircraft.airframe().fuselage());
  }

  private Design reckoned(DesignBrief asked, Wing made, Fuselage other) {
    List<Step> lengths = List.of(number("wing.span_m"), number("wing.root_chord_m"), number("wing.tip_chord_m"));
    Sized<Wing> same = new Sized<>(made, wing.range(), Workings.of(lengths), wing.findings(), wing.prices());
    Sized<Fuselage> body = FuselageSizing.of(other.shape()).length(other.length()).diameter(other.diameter());
    QuickDesign quick = new QuickDesign(asked, made, other);
    return new DesignEvaluation(new SizedGlider(asked, Making.EXACT, same, body, quick, quick.settled())).design();
  }

  private double tailReynolds() {
    AircraftDrag law = glide.drag();
    double wing = law.reynolds(glide.stallSpeed().si(), glide.air().kinematicViscosity().si());
    Length chord = aircraft.airframe().wing().planform().meanAerodynamicChord();
    return wing * aircraft.airframe().tails().get(0).planform().meanAerodynamicChord().dividedBy(chord);
  }

  private FlightModes reckonModes() {
    return FlightModes.of(pitchModel, aircraft, glide, trim.liftCoefficient());
  }

  private FiniteWing reckonFiniteWing() {
    double reynolds = glide.drag().reynolds(glide.stallSpeed().si(), glide.air().kinematicViscosity().si());
    return FiniteWing.of(aircraft.airframe().wing(), brief.wingPolar(), reynolds);
  }

  private TrimmedPolar reckonTrimmedPolar() {
    return TrimmedPolar.of(pitchModel, aircraft.centreOfGravity().x(), glide.drag(), aircraft.mass(), glide.air());
  }

  private FactoredLattice factoredLattice() {
    AircraftDrag law = glide.drag();
    double reynolds = law.reynolds(glide.at(trim.liftCoefficient()).speed().si(), glide.air().kinematicViscosity().si());
    double tails = reynolds * tailReynolds() / law.reynolds(glide.stallSpeed().si(), glide.air().kinematicViscosity().si());
    Airframe frame = aircraft.airframe();
    List<Tail> set =
        frame.tails().stream()
            .map(t -> t.role() == Tail.Role.HORIZONTAL ? t.withIncidence(trim.tailIncidence()) : t)
            .toList();
    return AirframeLattice.of(new Airframe(frame.fuselage(), frame.wing(), set))
        .panels(LATTICE_ROWS, LATTICE_STRIPS)
        .sectionLiftSlopes(brief.wingPolar().likelyLiftSlope(reynolds), brief.tailPolar().likelyLiftSlope(tails))
        .about(aircraft.centreOfGravity().x(), aircraft.centreOfGravity().z())
        .factor();
  }

  @Override
  public String toString() {
    return "design " + brief.name() + ": " + aircraft.mass() + ", " + glide.bestGlide();
  }
}
