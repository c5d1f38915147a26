// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import io.github.wingwright.core.aerodynamics.DragLaw;
import io.github.wingwright.core.aerodynamics.LiftSlope;
import io.github.wingwright.core.aerodynamics.SectionPolar;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.TaperedPlanform;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.performance.GlideKernel;
import io.github.wingwright.core.performance.SteadyGlide;
import io.github.wingwright.core.quantity.Acceleration;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.stability.ApparentMass;
import io.github.wingwright.stability.DownwashMethod;
import io.github.wingwright.stability.FuselageMoment;
import io.github.wingwright.stability.NeutralPoint;
import org.jspecify.annotations.Nullable;

/**
 * Tails, masses, balance and glide of one wing and one fuselage by the quick methods, on doubles: what {@code SizingLoop}
 * repeats and what a study calls.
 *
 * <p>The unknown is the station of the wing. With it come the tail arms, the tail areas, the masses, the centre of gravity
 * and the neutral point; it is moved until the static margin is the wanted one. Where no station within its travel gives it,
 * ballast in the nose does the rest, at the station at which the whole is lightest: station first, ballast second.
 *
 * <p>Stability is reckoned at 1.2 times the stall speed, the slowest speed at which one would trim a glider.
 */
public final class QuickDesign {
  /** Speed over stall speed at which stability and trim are reckoned (common practice, no source). */
  public static final double TRIM_SPEED_RATIO = 1.2;

  private static final double GRAVITY = Acceleration.STANDARD_GRAVITY.si();
  private static final double FIT = 1.001;

  /** A first mass is this many times what is known before the tails are. */
  private static final double FIRST_MASS_RATIO = 1.2;

  final BriefNumbers numbers;
  final double area;
  final double span;
  final double chord;
  final double aspectRatio;
  final double taperRatio;
  final double quarterSweep;
  final double halfSweep;
  final double quarterX;
  final double wingMass;
  final double wingCentroid;
  final double length;
  final double diameter;
  final double fineness;
  final double wetted;
  /** Volume of the walls of the body without slots and trough, and of the trough [m³]. */
  final double bodyWalls;

  final double seat;
  final double seatCentre;
  final double bodyCentroid;
  final double bodySlopeTerm;
  final double wingHeight;
  final double ballastPlace;
  final double horizontalVolume;
  final double verticalVolume;
  final double foremost;
  final double rearmost;
  private final @Nullable Planform planform;

  /**
   * Takes a wing and a fuselage for a brief; conversions happen here, once.
   *
   * @param brief the brief
   * @param wing the wing; its place does not matter
   * @param fuselage the fuselage
   */
  public QuickDesign(DesignBrief brief, Wing wing, Fuselage fuselage) {
    this(
        new BriefNumbers(brief, wing, fuselage.shape()),
        wing.planform(),
        wing.planform().area().si(),
        wing.planform().span().si(),
        wing.planform().meanAerodynamicChord().si(),
        wing.planform().taperRatio(),
        wing.planform().sweepAt(0.25).si(),
        wing.planform().sweepAt(0.5).si(),
        wing.planform().quarterMeanAerodynamicChordX().si(),
        fuselage.length().si(),
        fuselage.diameter().si());
  }

  private QuickDesign(
      BriefNumbers numbers,
      @Nullable Planform planform,
      double area,
      double span,
      double chord,
      double taperRatio,
      double quarterSweep,
      double halfSweep,
      double quarterX,
      double length,
      double diameter) {
    this.numbers = numbers;
    this.planform = planform;
    this.area = area;
    this.span = span;
    this.chord = chord;
    this.aspectRatio = TaperedPlanform.aspectRatio(span, area);
    this.taperRatio = taperRatio;
    this.quarterSweep = quarterSweep;
    this.halfSweep = halfSweep;
    this.quarterX = quarterX;
    this.length = length;
    double root = TaperedPlanform.rootChord(area, span, taperRatio);
    wingMass = numbers.material * numbers.wingSkin.volume(span, root, taperRatio);
    wingCentroid = quarterX + numbers.wingSkin.centre(span, root, taperRatio, quarterSweep);
    fineness = length / diameter;
    wetted = numbers.body.wettedArea(length, diameter);
    double volume = numbers.body.volume(length, diameter);
    bodyWalls = BodyFittings.walls(numbers.body, length, diameter, numbers.bodyWall);
    seat =
        BodyFittings.seat(
            0.5 * diameter,
            PartGeometry.WING_HEIGHT * diameter + numbers.lowest * root,
            numbers.dihedral,
            numbers.bodyWall,
            root + 2.0 * BodyFittings.TRAVEL * chord);
    seatCentre = 0.5 * root;
    this.diameter = diameter;
    bodyCentroid = numbers.body.surfaceCentroid(length, diameter);
    bodySlopeTerm = FuselageMoment.munk(ApparentMass.munkFactor(fineness), volume, area, chord);
    wingHeight = PartGeometry.WING_HEIGHT * diameter;
    ballastPlace = PartGeometry.BALLAST_PLACE * diameter;
    horizontalVolume = numbers.horizontal.volumeCoefficient() * area * chord;
    verticalVolume = numbers.vertical.volumeCoefficient() * area * span;
    Interval asked = numbers.stations;
    double room = leastRoom();
    foremost = Double.isInfinite(asked.lower()) ? diameter : asked.lower();
    rearmost = Math.min(asked.upper(), length - quarterX - room);
    if (!(rearmost > foremost)) {
      throw tooShort(room);
    }
  }

  /** A straight-tapered wing and a body from their numbers. */
  static QuickDesign of(
      BriefNumbers numbers,
      double taperRatio,
      double quarterSweep,
      double span,
      double aspectRatio,
      double length,
      double diameter) {
    double area = TaperedPlanform.area(span, aspectRatio);
    double root = TaperedPlanform.rootChord(area, span, taperRatio);
    double tangent = Math.tan(quarterSweep);
    return new QuickDesign(
        numbers,
        null,
        area,
        span,
        TaperedPlanform.meanAerodynamicChord(root, taperRatio),
        taperRatio,
        quarterSweep,
        Math.atan(TaperedPlanform.sweepTangent(tangent, 0.25, 0.5, aspectRatio, taperRatio)),
        0.25 * root + TaperedPlanform.meanAerodynamicChordPosition(span, taperRatio) * tangent,
        length,
        diameter);
  }

  /** The room behind the wing's quarter chord in which both tails fit and the horizontal tail has the arm it must have. */
  private double leastRoom() {
    TailBrief h = numbers.horizontal;
    TailBrief v = numbers.vertical;
    // A hair's breadth more than the least room, so that the arm exists at the end of the travel.
    double room =
        FIT
            * Math.max(
                TailGeometry.leastRoom(horizontalVolume, h.aspectRatio(), h.taperRatio()),
                TailGeometry.leastRoom(verticalVolume, v.aspectRatio(), v.taperRatio()));
    double longestFitting = TailGeometry.arm(room, horizontalVolume, h.aspectRatio(), h.taperRatio());
    if (numbers.leastArm > longestFitting) {
      double root = TailGeometry.rootChord(horizontalVolume / numbers.leastArm, h.aspectRatio(), h.taperRatio());
      room = Math.max(room, numbers.leastArm + 0.75 * root);
    }
    return room;
  }

  private NoArrangementException tooShort(double room) {
    return new NoArrangementException(
        NoArrangementException.Matter.LENGTH,
        "the fuselage must be longer for such tails, or the tails smaller: with the wing as far forward as it may sit ("
            + mm(foremost)
            + " behind the nose) the tails need "
            + mm(room)
            + " behind the wing's quarter chord, and "
            + mm(length)
            + " leaves "
            + mm(length - quarterX - foremost));
  }

  NoArrangementException hopeless(double neutralPoint) {
    return new NoArrangementException(
        NoArrangementException.Matter.BALANCE,
        "no ballast in the nose gives a static margin of "
            + numbers.wanted
            + ": the neutral point lies at "
            + mm(neutralPoint)
            + ", the centre of gravity would have to lie "
            + mm(numbers.wanted * chord)
            + " ahead of it, and the ballast sits at "
            + mm(ballastPlace));
  }

  private static void positiveMass(double mass) {
    if (!(mass > 0.0 && mass <= Double.MAX_VALUE)) {
      throw new IllegalArgumentException("mass must be positive, was " + Mass.GRAM.format(mass, 4));
    }
  }

  private static String mm(double metres) {
    return Length.MILLIMETRE.format(metres, 4);
  }

  /**
   * What a station of the wing leads to.
   *
   * @param station leading edge of the root, aft of the nose tip [m]
   * @param horizontalArm l_h [m]
   * @param horizontalArea S_h [m²]
   * @param verticalArm l_v [m]
   * @param verticalArea S_v [m²]
   * @param mass mass with ballast [kg]
   * @param ballast ballast in the nose [kg]
   * @param centreOfGravity x_cg with ballast [m]
   * @param neutralPoint x_np [m]
   */
  public record Balance(
      double station,
      double horizontalArm,
      double horizontalArea,
      double verticalArm,
      double verticalArea,
      double mass,
      double ballast,
      double centreOfGravity,
      double neutralPoint) {}

  /**
   * Where the wing may sit.
   *
   * @return leading edge of the root, aft of the nose tip [m]
   */
  public Interval travel() {
    return new Interval(foremost, rearmost);
  }

  /**
   * Reynolds number of the wing at 1.2 times the stall speed.
   *
   * @param mass mass of the glider [kg], positive
   * @return on the mean aerodynamic chord
   */
  public double trimReynolds(double mass) {
    return trimSpeed(mass) * chord / numbers.viscosity;
  }

  /**
   * 1.2 times the stall speed.
   *
   * @param mass mass of the glider [kg], positive
   * @return V [m/s]
   */
  public double trimSpeed(double mass) {
    double pressure = SteadyGlide.weightOverArea(mass, GRAVITY, area);
    double unit = SteadyGlide.levelSpeed(pressure, numbers.density, 1.0);
    double lift = DragLaw.usableLift(numbers.wingPolar, unit * chord / numbers.viscosity);
    return TRIM_SPEED_RATIO * SteadyGlide.levelSpeed(pressure, numbers.density, lift);
  }

  /**
   * Static margin without ballast at a station of the wing.
   *
   * @param station leading edge of the root, aft of the nose tip [m]
   * @param mass mass for which stability is reckoned [kg], positive
   * @return (x_np − x_cg)/c̄
   */
  public double margin(double station, double mass) {
    Door.finite(station, "station of the wing");
    positiveMass(mass);
    BalanceSearch search = new BalanceSearch(this);
    search.reckonFor(mass);
    search.place(station);
    return search.margin();
  }

  /**
   * Finds the station of the wing, or the ballast, that gives the wanted static margin.
   *
   * @param mass mass for which stability is reckoned [kg], positive; the loop repeats until it is the mass that comes out
   * @return the balance
   * @throws IllegalStateException if no ballast gives the margin
   */
  public Balance balance(double mass) {
    positiveMass(mass);
    BalanceSearch search = new BalanceSearch(this);
    search.reckonFor(mass);
    search.find();
    return search.balance();
  }

  /**
   * The complete evaluation: the balance with its mass settled, and the glide. For many designs see {@link GliderFamily}.
   *
   * @return what it weighs, where it balances and how it glides
   * @throws IllegalStateException if no ballast gives the margin
   */
  public QuickEvaluation evaluate() {
    if (planform == null) {
      throw new IllegalStateException("a member of a family is evaluated by its family");
    }
    return evaluate(InducedLoss.of(planform));
  }

  private BalanceSearch settledSearch() {
    BalanceSearch search = new BalanceSearch(this);
    search.settle(FIRST_MASS_RATIO * (wingMass + numbers.material * bodyWalls + numbers.carriedMass));
    return search;
  }

  /** The balance with its mass settled. */
  Balance settled() {
    return settledSearch().balance();
  }

  QuickEvaluation evaluate(double loss) {
    BalanceSearch search = settledSearch();
    double mass = search.mass();
    double rho = numbers.density;
    double nu = numbers.viscosity;
    QuickDrag drag = drag(search, loss);
    double p = SteadyGlide.weightOverArea(mass, GRAVITY, area);
    double usable = GlideKernel.usableLift(drag, p, rho, nu);
    double best = GlideKernel.bestGlideLift(drag, p, rho, nu);
    double bestSpeed = GlideKernel.speed(drag, best, p, rho, nu);
    double bestDrag = drag.likelyCoefficient(best, bestSpeed, nu);
    double slow = GlideKernel.leastSinkLift(drag, p, rho, nu);
    double slowSpeed = GlideKernel.speed(drag, slow, p, rho, nu);
    double slowAngle = SteadyGlide.angle(drag.likelyCoefficient(slow, slowSpeed, nu), slow);
    double centreOfGravity = search.centreOfGravity();
    return new QuickEvaluation(
        search.station,
        search.arm,
        search.tail,
        search.finArm,
        search.fin,
        mass,
        search.ballast(),
        centreOfGravity,
        search.neutralPoint,
        (search.neutralPoint - centreOfGravity) / chord,
        mass / area,
        usable,
        SteadyGlide.levelSpeed(p, rho, usable),
        best,
        SteadyGlide.liftToDrag(best, bestDrag),
        bestSpeed,
        slowSpeed,
        SteadyGlide.sinkRate(slowSpeed, slowAngle));
  }

  private QuickDrag drag(BalanceSearch search, double loss) {
    double factor = numbers.tailOutline * numbers.tailForm * PartGeometry.TAIL_INTERFERENCE;
    return new QuickDrag(
        numbers.wingPolar,
        area,
        chord,
        aspectRatio,
        loss,
        length,
        fineness,
        wetted,
        PartGeometry.meanChord(search.tail, numbers.horizontal),
        factor * search.tail,
        PartGeometry.meanChord(search.fin, numbers.vertical),
        factor * search.fin);
  }

  double wingSlope(double speed) {
    return slope(numbers.wingPolar, speed * chord / numbers.viscosity, aspectRatio, halfSweep);
  }

  double neutralPoint(double station, double arm, double tail, double tailChord, double speed, double wingSlope) {
    double tailSlope =
        slope(
            numbers.tailPolar,
            speed * tailChord / numbers.viscosity,
            numbers.horizontal.aspectRatio(),
            numbers.tailHalfSweep);
    double root = TailGeometry.rootChord(tail, numbers.horizontal.aspectRatio(), numbers.horizontal.taperRatio());
    double height = PartGeometry.tailHeight(numbers.body, length, diameter, root) - wingHeight;
    double downwash =
        DownwashMethod.HANDBOOK.gradient(wingSlope, aspectRatio, taperRatio, quarterSweep, arm / span, height / span);
    double fraction =
        NeutralPoint.position(
            wingSlope,
            0.25,
            bodySlopeTerm,
            PartGeometry.TAIL_EFFICIENCY,
            tail / area,
            tailSlope,
            downwash,
            0.25 + arm / chord);
    return station + quarterX - 0.25 * chord + fraction * chord;
  }

  private static double slope(SectionPolar polar, double reynolds, double aspectRatio, double halfSweep) {
    return LiftSlope.handbook(aspectRatio, 1.0, polar.likelyLiftSlope(reynolds) / (2.0 * Math.PI), halfSweep);
  }

  @Override
  public String toString() {
    return "quick design: span " + mm(span) + ", aspect ratio " + NamedUnit.NUMBER.format(aspectRatio, 4) + ", body "
        + mm(length) + " × " + mm(diameter);
  }
}
