// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import io.github.wingwright.core.aerodynamics.LiftSlope;
import io.github.wingwright.core.aerodynamics.SectionPolar;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.geometry.AirfoilSection;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.mass.Ballast;
import io.github.wingwright.core.mass.MassItem;
import io.github.wingwright.core.numerics.Minimum;
import io.github.wingwright.core.numerics.Roots;
import io.github.wingwright.core.numerics.Tolerance;
import io.github.wingwright.core.performance.SteadyGlide;
import io.github.wingwright.core.quantity.Acceleration;
import io.github.wingwright.stability.ApparentMass;
import io.github.wingwright.stability.DownwashMethod;
import io.github.wingwright.stability.FuselageMoment;
import io.github.wingwright.stability.NeutralPoint;
import io.github.wingwright.stability.TailVolume;

/**
 * Tails, masses and balance of one wing and one fuselage by the quick methods, on doubles: what {@code SizingLoop} repeats
 * and what a study calls.
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
  private static final Tolerance STATION = new Tolerance(1e-13, 1e-13);
  private static final Tolerance LEAST_MASS = Tolerance.relative(1e-9);
  private static final double FIT = 1.001;

  /** A glider that takes more than this many times its own mass in ballast is no design. */
  private static final double HOPELESS = 10.0;

  private static final int SCAN_STEPS = 16;
  private static final int OUTLINE_POINTS = 201;

  private final double density;
  private final double viscosity;
  private final SectionPolar wingPolar;
  private final SectionPolar tailPolar;
  private final double area;
  private final double span;
  private final double chord;
  private final double aspectRatio;
  private final double taperRatio;
  private final double quarterSweep;
  private final double halfSweep;
  private final double quarterX;
  private final double wingMass;
  private final double wingCentroid;
  private final double bodyLength;
  private final double bodyMass;
  private final double bodyCentroid;
  private final double bodySlopeTerm;
  private final double wingHeight;
  private final double ballastPlace;
  private final TailBrief horizontal;
  private final TailBrief vertical;
  private final double plateDensity;
  private final double carriedMass;
  private final double carriedMoment;
  private final double tailEfficiency;
  private final double wanted;
  private final Interval travel;

  /**
   * Takes a wing and a fuselage for a brief; conversions happen here, once.
   *
   * @param brief the brief
   * @param wing the wing; its place does not matter
   * @param fuselage the fuselage
   */
  public QuickDesign(DesignBrief brief, Wing wing, Fuselage fuselage) {
    Planform p = wing.planform();
    AirfoilSection section = wing.section();
    density = brief.air().density().si();
    viscosity = brief.air().kinematicViscosity().si();
    wingPolar = brief.wingPolar();
    tailPolar = brief.tailPolar();
    area = p.area().si();
    span = p.span().si();
    chord = p.meanAerodynamicChord().si();
    aspectRatio = p.aspectRatio();
    taperRatio = p.taperRatio();
    quarterSweep = p.sweepAt(0.25).si();
    halfSweep = p.sweepAt(0.5).si();
    quarterX = p.quarterMeanAerodynamicChordX().si();
    wingMass = brief.wingShell().mass(wing.wettedArea(), PartGeometry.wingVolume(wing)).si();
    wingCentroid = p.meanAerodynamicChordX().si() + PartGeometry.outlineCentroid(section, OUTLINE_POINTS) * chord;
    bodyLength = fuselage.length().si();
    bodyMass = brief.bodyShell().mass(fuselage.wettedArea(), fuselage.volume()).si();
    bodyCentroid = fuselage.shape().surfaceCentroid(bodyLength, fuselage.diameter().si());
    double e = ApparentMass.eccentricity(fuselage.finenessRatio());
    double factor = ApparentMass.difference(ApparentMass.along(e), ApparentMass.across(e));
    bodySlopeTerm = FuselageMoment.munk(factor, fuselage.volume().si(), area, chord);
    wingHeight = PartGeometry.wingHeight(fuselage).si();
    ballastPlace = PartGeometry.ballastPlace(fuselage).si();
    horizontal = brief.horizontalTail();
    vertical = brief.verticalTail();
    plateDensity = brief.material().density().si() * brief.tailThickness().si();
    double mass = 0.0;
    double moment = 0.0;
    for (MassItem item : brief.carried()) {
      mass += item.mass().si();
      moment += item.mass().si() * item.centreOfGravity().x().si();
    }
    carriedMass = mass;
    carriedMoment = moment;
    tailEfficiency = PartGeometry.TAIL_EFFICIENCY;
    wanted = brief.staticMargin();
    travel = travel(brief.wingStations(), brief.leastTailArm().si(), fuselage);
  }

  /**
   * From one diameter behind the nose, or where the brief says, to the last station at which both tails still fit and the
   * horizontal tail has the arm that it must have.
   */
  private Interval travel(Interval asked, double leastArm, Fuselage fuselage) {
    double h = horizontal.volumeCoefficient() * area * chord;
    double v = vertical.volumeCoefficient() * area * span;
    // A hair's breadth more than the least room, so that the arm exists at the end of the travel.
    double room =
        FIT
            * Math.max(
                TailGeometry.leastRoom(h, horizontal.aspectRatio(), horizontal.taperRatio()),
                TailGeometry.leastRoom(v, vertical.aspectRatio(), vertical.taperRatio()));
    double longestFitting = TailGeometry.arm(room, h, horizontal.aspectRatio(), horizontal.taperRatio());
    if (leastArm > longestFitting) {
      double root = TailGeometry.rootChord(h / leastArm, horizontal.aspectRatio(), horizontal.taperRatio());
      room = Math.max(room, leastArm + 0.75 * root);
    }
    double lower = Double.isInfinite(asked.lower()) ? fuselage.diameter().si() : asked.lower();
    double upper = Math.min(asked.upper(), bodyLength - quarterX - room);
    if (!(upper > lower)) {
      throw new IllegalStateException(
          "the fuselage must be longer for such tails, or the tails smaller: with the wing as far forward as it may sit ("
              + mm(lower)
              + " behind the nose) the tails need "
              + mm(room)
              + " behind the wing's quarter chord, and "
              + fuselage.length()
              + " leaves "
              + mm(bodyLength - quarterX - lower));
    }
    return new Interval(lower, upper);
  }

  private static String mm(double metres) {
    return io.github.wingwright.core.quantity.Length.MILLIMETRE.format(metres, 4);
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
    return travel;
  }

  /**
   * Reynolds number of the wing at 1.2 times the stall speed.
   *
   * @param mass mass of the glider [kg], positive
   * @return on the mean aerodynamic chord
   */
  public double trimReynolds(double mass) {
    return trimSpeed(mass) * chord / viscosity;
  }

  /**
   * 1.2 times the stall speed.
   *
   * @param mass mass of the glider [kg], positive
   * @return V [m/s]
   */
  public double trimSpeed(double mass) {
    double pressure = SteadyGlide.weightOverArea(mass, GRAVITY, area);
    return TRIM_SPEED_RATIO * stallSpeed(pressure);
  }

  private double stallSpeed(double pressure) {
    double lift = 0.8;
    for (int i = 0; i < 20; i++) {
      double speed = SteadyGlide.levelSpeed(pressure, density, lift);
      double next = wingPolar.usableLift(speed * chord / viscosity).likely();
      if (Math.abs(next - lift) <= 1e-12) {
        break;
      }
      lift = next;
    }
    return SteadyGlide.levelSpeed(pressure, density, lift);
  }

  /**
   * Static margin without ballast at a station of the wing.
   *
   * @param station leading edge of the root, aft of the nose tip [m]
   * @param mass mass for which stability is reckoned [kg]
   * @return (x_np − x_cg)/c̄
   */
  public double margin(double station, double mass) {
    double room = bodyLength - station - quarterX;
    double arm = horizontalArm(room);
    double tail = TailVolume.area(horizontal.volumeCoefficient(), arm, area, chord);
    double finArm = verticalArm(room);
    double fin = TailVolume.area(vertical.volumeCoefficient(), finArm, area, span);
    double empty = emptyMass(tail, fin);
    double cg = moment(station, arm, tail, finArm, fin) / empty;
    return (neutralPoint(station, arm, tail, mass) - cg) / chord;
  }

  /**
   * Finds the station of the wing, or the ballast, that gives the wanted static margin.
   *
   * @param mass mass for which stability is reckoned [kg]; the loop repeats until it is the mass that comes out
   * @return the balance
   */
  public Balance balance(double mass) {
    if (margin(travel.lower(), mass) >= wanted) {
      return at(travel.lower(), mass, false);
    }
    // The margin need not rise all the way: the arm shrinks as the wing moves aft. The first station that reaches it serves.
    double before = travel.lower();
    for (int i = 1; i <= SCAN_STEPS; i++) {
      double station = i == SCAN_STEPS ? travel.upper() : travel.lower() + travel.width() * i / SCAN_STEPS;
      if (margin(station, mass) >= wanted) {
        double root = Roots.find(x -> margin(x, mass) - wanted, before, station, STATION);
        return at(root, mass, false);
      }
      before = station;
    }
    double lightest =
        Minimum.amongSeveral(
                x -> at(x, mass, true).mass(), travel.lower(), travel.upper(), SCAN_STEPS, LEAST_MASS)
            .argument();
    Balance balance = at(lightest, mass, true);
    if (!(balance.ballast() >= 0.0 && balance.mass() < HOPELESS * (balance.mass() - balance.ballast()))) {
      throw new IllegalStateException(
          "no ballast in the nose gives a static margin of "
              + wanted
              + ": the neutral point lies at "
              + mm(balance.neutralPoint())
              + ", the centre of gravity would have to lie "
              + mm(wanted * chord)
              + " ahead of it, and the ballast sits at "
              + mm(ballastPlace));
    }
    return balance;
  }

  /** The balance at a station, with the ballast that gives the wanted margin or without any. */
  private Balance at(double station, double mass, boolean ballasted) {
    double room = bodyLength - station - quarterX;
    double arm = horizontalArm(room);
    double tail = TailVolume.area(horizontal.volumeCoefficient(), arm, area, chord);
    double finArm = verticalArm(room);
    double fin = TailVolume.area(vertical.volumeCoefficient(), finArm, area, span);
    double empty = emptyMass(tail, fin);
    double moment = moment(station, arm, tail, finArm, fin);
    double np = neutralPoint(station, arm, tail, mass);
    double ballast =
        ballasted ? Ballast.ballastMass(empty, moment / empty, np - wanted * chord, ballastPlace) : 0.0;
    double total = empty + ballast;
    double cg = (moment + ballast * ballastPlace) / total;
    return new Balance(station, arm, tail, finArm, fin, total, ballast, cg, np);
  }

  private double horizontalArm(double room) {
    return TailGeometry.arm(
        room, horizontal.volumeCoefficient() * area * chord, horizontal.aspectRatio(), horizontal.taperRatio());
  }

  private double verticalArm(double room) {
    return TailGeometry.arm(
        room, vertical.volumeCoefficient() * area * span, vertical.aspectRatio(), vertical.taperRatio());
  }

  private double emptyMass(double tail, double fin) {
    return wingMass + bodyMass + plateDensity * tail + plateDensity * fin + carriedMass;
  }

  /** Σ m·x of all but the ballast; a plate's centre lies a quarter of its mean chord behind its quarter chord. */
  private double moment(double station, double arm, double tail, double finArm, double fin) {
    double quarter = station + quarterX;
    double tailX = quarter + arm + 0.25 * PartGeometry.meanChord(tail, horizontal);
    double finX = quarter + finArm + 0.25 * PartGeometry.meanChord(fin, vertical);
    return wingMass * (station + wingCentroid)
        + bodyMass * bodyCentroid
        + plateDensity * tail * tailX
        + plateDensity * fin * finX
        + carriedMoment;
  }

  private double neutralPoint(double station, double arm, double tail, double mass) {
    double speed = trimSpeed(mass);
    double wingSlope = slope(wingPolar, speed * chord / viscosity, aspectRatio, halfSweep);
    double tailChord = PartGeometry.meanChord(tail, horizontal);
    double tailSweep =
        PartGeometry.halfChordSweep(horizontal.aspectRatio(), horizontal.taperRatio());
    double tailSlope = slope(tailPolar, speed * tailChord / viscosity, horizontal.aspectRatio(), tailSweep);
    double downwash =
        DownwashMethod.HANDBOOK.gradient(
            wingSlope, aspectRatio, taperRatio, quarterSweep, arm / span, -wingHeight / span);
    double fraction =
        NeutralPoint.position(
            wingSlope, 0.25, bodySlopeTerm, tailEfficiency, tail / area, tailSlope, downwash, 0.25 + arm / chord);
    return station + quarterX - 0.25 * chord + fraction * chord;
  }

  private static double slope(SectionPolar polar, double reynolds, double aspectRatio, double halfSweep) {
    return LiftSlope.handbook(aspectRatio, 1.0, polar.liftSlope(reynolds).likely() / (2.0 * Math.PI), halfSweep);
  }
}
