// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import io.github.wingwright.core.aerodynamics.AircraftDrag;
import io.github.wingwright.core.aerodynamics.InducedDrag;
import io.github.wingwright.core.aircraft.Aircraft;
import io.github.wingwright.core.atmosphere.AirState;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Workings;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.performance.GlidePerformance;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.core.quantity.Time;
import io.github.wingwright.stability.AirframeDerivatives;
import io.github.wingwright.stability.PitchModel;
import io.github.wingwright.stability.Trim;
import io.github.wingwright.stability.TrimmedPolar;
import io.github.wingwright.stability.derivatives.LateralContribution;
import io.github.wingwright.stability.derivatives.LateralEstimate;
import io.github.wingwright.stability.derivatives.LateralGuidelines;
import io.github.wingwright.stability.dynamics.BodyInertia;
import io.github.wingwright.stability.dynamics.FlyingQualities;
import io.github.wingwright.stability.dynamics.LateralDerivatives;
import io.github.wingwright.stability.dynamics.LateralForces;
import io.github.wingwright.stability.dynamics.LongitudinalDerivatives;
import io.github.wingwright.stability.dynamics.LongitudinalForces;
import io.github.wingwright.stability.dynamics.Mode;
import io.github.wingwright.stability.dynamics.ModeKind;
import io.github.wingwright.stability.dynamics.Modes;
import io.github.wingwright.stability.dynamics.StateMatrix;
import io.github.wingwright.stability.dynamics.SteadyFlight;
import io.github.wingwright.stability.dynamics.TimeResponse;
import io.github.wingwright.stability.dynamics.WingApparentMass;
import io.github.wingwright.stability.lattice.FactoredLattice;
import io.github.wingwright.stability.lattice.LatticeCondition;
import io.github.wingwright.stability.lattice.LatticeSolution;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/**
 * How an aircraft in a trimmed glide moves after a disturbance: derivatives by the handbook, the natural motions with the
 * air that the wing carries along and without, the classical approximations beside them, and the motion itself.
 *
 * <p>Lift and moment slopes are those of the {@link PitchModel}, so the motions belong to the neutral point that the
 * balance was made for. Drag changes with the angle of attack and, at the Reynolds numbers of models, with the speed.
 *
 * <pre>{@code
 * design.modes()                                   // a table, in the shell
 * design.modes().gust(metresPerSecond(0.5), seconds(6))
 * }</pre>
 */
public final class FlightModes {
  private final TrimmedPolar.Point point;
  private final SteadyFlight flight;
  private final BodyInertia body;
  private final WingApparentMass air;
  private final LongitudinalTerms along;
  private final LateralEstimate.Result across;
  private final LongitudinalForces forces;
  private final StateMatrix longitudinal;
  private final StateMatrix lateral;
  private final List<Row> rows;
  private final List<Finding> plain;
  private final Lazy<List<Finding>> findings;
  private final Workings workings;

  private FlightModes(
      PitchModel model, Aircraft aircraft, GlidePerformance glide, double liftCoefficient) {
    AircraftDrag drag = glide.drag();
    AirState state = glide.air();
    double viscosity = state.kinematicViscosity().si();
    Planform wing = aircraft.airframe().wing().planform();
    Trim trim = model.trim(aircraft.centreOfGravity().x(), liftCoefficient);
    TrimmedPolar polar =
        TrimmedPolar.of(model, aircraft.centreOfGravity().x(), drag, aircraft.mass(), state);
    if (!polar.lifts().contains(liftCoefficient)) {
      throw new IllegalStateException(
          String.format(
              Locale.ROOT,
              "no steady glide at a lift coefficient of %.2f to be disturbed: the tail trims %.2f to %.2f. Enlarge the tail,"
                  + " or move the centre of gravity towards the neutral point",
              liftCoefficient,
              polar.lifts().lower(),
              polar.lifts().upper()));
    }
    point = polar.at(liftCoefficient);
    flight =
        SteadyFlight.of(
            point.speed(),
            state.density(),
            point.angle().negated(),
            wing.area(),
            wing.meanAerodynamicChord(),
            wing.span());
    body = BodyInertia.of(aircraft.mass(), aircraft.inertia(), trim.angleOfAttack());
    air =
        WingApparentMass.of(
            state.density(), aircraft.airframe().wing(), aircraft.centreOfGravity().x());
    double induced =
        InducedDrag.coefficient(liftCoefficient, drag.inducedLoss(), drag.aspectRatio());
    AirframeDerivatives shape =
        AirframeDerivatives.of(
            model,
            aircraft.centreOfGravity(),
            liftCoefficient,
            Math.max(0.0, point.dragCoefficient() - induced));
    along = new LongitudinalTerms(model, shape, aircraft.centreOfGravity(), drag, point, viscosity);
    across = shape.lateral();
    LongitudinalForces bare = LongitudinalForces.of(flight, body.mass(), along.derivatives);
    LateralForces sideways = LateralForces.of(flight, across.total());
    BodyInertia heavier = air.addedTo(body);
    forces = bare.with(air);
    longitudinal = forces.stateMatrix(flight, heavier);
    lateral = sideways.stateMatrix(flight, heavier);
    List<Mode> without = new ArrayList<>(bare.stateMatrix(flight, body).modes().all());
    without.addAll(sideways.stateMatrix(flight, body).modes().all());
    Modes first = longitudinal.modes();
    Modes second = lateral.modes();
    rows = new ModeRows(longitudinal, lateral, without, flight.gravity()).all(first, second);
    boolean small = model.aircraftClass().isModel();
    FlyingQualities qualities =
        small ? FlyingQualities.freeFlightModel() : FlyingQualities.lightAeroplane();
    LateralGuidelines guidelines =
        small ? LateralGuidelines.handLaunchedModel() : LateralGuidelines.lightAeroplane();
    List<Finding> motions = new ArrayList<>(qualities.check(first));
    motions.addAll(qualities.check(second));
    List<Finding> found = new ArrayList<>(motions);
    found.addAll(guidelines.check(across.total()));
    found.addAll(shape.findings());
    plain = Finding.inOrderOfWeight(found);
    findings =
        new Lazy<>(
            () -> {
              ModeAmounts amounts = new ModeAmounts(model, aircraft, glide, liftCoefficient, plain);
              List<Finding> told = new ArrayList<>(shape.findings(guidelines));
              motions.forEach(f -> told.add(amounts.withAmounts(f)));
              told.addAll(shape.findings());
              return Finding.inOrderOfWeight(told);
            });
    workings = Workings.of(new ModeSteps(this, along, across, heavier).steps());
  }

  /**
   * The motions of an aircraft in a trimmed glide.
   *
   * @param model wing, tail and fuselage, with section data; there must be a horizontal tail
   * @param aircraft shape and masses; the inertia of its parts counts
   * @param glide drag, and the air it flies in
   * @param liftCoefficient lift coefficient of the glide, one that can be trimmed
   * @return the motions
   * @throws IllegalStateException if there is no horizontal tail, section data are missing, or the tail stalls before it
   *     trims that lift
   */
  public static FlightModes of(
      PitchModel model, Aircraft aircraft, GlidePerformance glide, double liftCoefficient) {
    Objects.requireNonNull(model, "model");
    Objects.requireNonNull(aircraft, "aircraft");
    Objects.requireNonNull(glide, "glide");
    return new FlightModes(model, aircraft, glide, liftCoefficient);
  }

  /**
   * One motion.
   *
   * @param mode the motion, with the air that the wing carries along
   * @param approximation what the classical short formula gives, where there is one
   * @param withoutApparentMass the same motion without that air, where it is of the same kind
   */
  public record Row(Mode mode, Optional<Mode> approximation, Optional<Mode> withoutApparentMass) {
    public Row {
      Objects.requireNonNull(mode, "mode");
      Objects.requireNonNull(approximation, "approximation");
      Objects.requireNonNull(withoutApparentMass, "withoutApparentMass");
    }

    @Override
    public String toString() {
      return mode.toString();
    }
  }

  /**
   * All motions, those in the plane of symmetry first, each quickest first.
   *
   * @return the motions with what stands beside them
   */
  public List<Row> rows() {
    return rows;
  }

  /**
   * The motions with the derivatives of a lattice instead of the handbook's: of wing and tails alone, without body. Drag,
   * mass and the rate of angle of attack stay.
   *
   * @param lattice lattice with its moments about the centre of gravity
   * @return the motions, those in the plane of symmetry first
   */
  public List<Mode> by(FactoredLattice lattice) {
    Objects.requireNonNull(lattice, "lattice");
    LatticeSolution flow = lattice.solve(LatticeCondition.at(angle(lattice)));
    return LatticeMotions.of(flow, along.derivatives, point.dragCoefficient(), flight, body, air);
  }

  /**
   * The angle of attack at which a lattice has the lift of this glide.
   *
   * @param lattice the lattice
   * @return α of the axes of the geometry [rad]
   */
  public double angle(FactoredLattice lattice) {
    Objects.requireNonNull(lattice, "lattice");
    double zero = lattice.solve(LatticeCondition.at(0.0)).coefficients().lift();
    return (point.liftCoefficient() - zero) / lattice.liftSlope();
  }

  /**
   * The motion of one kind.
   *
   * @param kind the kind
   * @return the motion, if it is there
   */
  public Optional<Mode> find(ModeKind kind) {
    Objects.requireNonNull(kind, "kind");
    return rows.stream().map(Row::mode).filter(m -> m.kind() == kind).findFirst();
  }

  /**
   * The glide that is disturbed.
   *
   * @return the point of the trimmed polar
   */
  public TrimmedPolar.Point glide() {
    return point;
  }

  /**
   * The same glide as the equations take it.
   *
   * @return speed, density, path and reference lengths
   */
  public SteadyFlight flight() {
    return flight;
  }

  /**
   * Mass and inertia in stability axes, without the air that is carried along.
   *
   * @return mass and inertia
   */
  public BodyInertia body() {
    return body;
  }

  /**
   * The air that the wing carries along.
   *
   * @return apparent mass and inertia
   */
  public WingApparentMass apparentMass() {
    return air;
  }

  /**
   * The longitudinal derivatives.
   *
   * @return nondimensional, in stability axes
   */
  public LongitudinalDerivatives longitudinalDerivatives() {
    return along.derivatives;
  }

  /**
   * The lateral derivatives.
   *
   * @return nondimensional, in stability axes
   */
  public LateralDerivatives lateralDerivatives() {
    return across.total();
  }

  /**
   * What each part adds to the lateral derivatives.
   *
   * @return the parts
   */
  public List<LateralContribution> lateralContributions() {
    return across.contributions();
  }

  /**
   * The equations of motion in the plane of symmetry.
   *
   * @return state matrix of [u, w, q, θ]
   */
  public StateMatrix longitudinal() {
    return longitudinal;
  }

  /**
   * The equations of motion across it.
   *
   * @return state matrix of [v, p, r, φ]
   */
  public StateMatrix lateral() {
    return lateral;
  }

  /**
   * Flight into air that rises all at once.
   *
   * @param rising speed of the air, upwards positive
   * @param duration how long to follow the motion
   * @return motion against the rising air
   */
  public TimeResponse gust(Speed rising, Time duration) {
    Objects.requireNonNull(rising, "rising");
    Objects.requireNonNull(duration, "duration");
    return longitudinal.response(new double[] {0.0, rising.si(), 0.0, 0.0}, duration.si(), STEPS);
  }

  /**
   * Flight that begins faster than trim, as after a throw that was too hard.
   *
   * @param faster how much faster, slower negative
   * @param duration how long to follow the motion
   * @return the motion
   */
  public TimeResponse thrownFaster(Speed faster, Time duration) {
    Objects.requireNonNull(faster, "faster");
    Objects.requireNonNull(duration, "duration");
    return longitudinal.response(new double[] {faster.si(), 0.0, 0.0, 0.0}, duration.si(), STEPS);
  }

  /**
   * Flight that begins in a bank, as after a throw with a low wing.
   *
   * @param bank angle of bank, starboard wing down positive
   * @param duration how long to follow the motion
   * @return the motion
   */
  public TimeResponse banked(Angle bank, Time duration) {
    Objects.requireNonNull(bank, "bank");
    Objects.requireNonNull(duration, "duration");
    return lateral.response(new double[] {0.0, 0.0, 0.0, bank.si()}, duration.si(), STEPS);
  }

  private static final int STEPS = 240;

  /**
   * Lift over weight during a longitudinal motion.
   *
   * @param motion a motion of this aircraft in the plane of symmetry
   * @param i instant, from 0
   * @return load factor n, 1 in the steady glide
   */
  public double loadFactor(TimeResponse motion, int i) {
    double z =
        forces.zu() * motion.state(i, 0)
            + forces.zw() * motion.state(i, 1)
            + forces.zq() * motion.state(i, 2);
    return 1.0 - z / (body.mass() * flight.gravity());
  }

  /**
   * The workings: derivatives, what they are per mass and inertia, and the approximations from them.
   *
   * @return all steps
   */
  public Workings workings() {
    return workings;
  }

  /**
   * What a builder should know, with how much of one change alone would mend it. Reckoned when it is first asked for.
   *
   * @return findings against guidelines for such aircraft, heaviest first
   */
  public List<Finding> findings() {
    return findings.get();
  }

  /** The same without amounts. */
  List<Finding> plainFindings() {
    return plain;
  }

  /**
   * A table: a line for each motion.
   *
   * @return several lines of text
   */
  @Override
  public String toString() {
    return MotionTable.of(point, rows);
  }
}
