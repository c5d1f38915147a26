// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import io.github.wingwright.core.ConvergenceException;
import io.github.wingwright.core.mass.Ballast;
import io.github.wingwright.stability.TailVolume;

/**
 * The search for the station of the wing, the ballast and the mass of one design: its trial and all that follows from it.
 *
 * <p>This is the working memory of a search, changed by every step and seen by nobody else; it is why a search allocates
 * nothing.
 */
final class BalanceSearch {
  private static final int SCAN_STEPS = 16;
  private static final int MOST_CHORDS = 60;
  private static final int MOST_ROUNDS = 100;
  private static final double STATION = 1e-13;

  /** The rise is a difference of nearly equal masses: its zero is not better known than this part of the travel. */
  private static final double LIGHTEST = 1e-10;

  private static final double SETTLED = 1e-10;

  /** Step of the differences, and width of a search close to the last answer, over the travel. */
  private static final double H = 1e-4;

  private static final double NEAR = 2e-3;

  /** A glider that takes more than this many times its own mass in ballast is no design. */
  private static final double HOPELESS = 10.0;

  private enum Answer {
    FOREMOST,
    BALANCED,
    BALLASTED
  }

  private final QuickDesign design;
  private final BriefNumbers n;
  private final double h;
  private double speed;
  private double wingSlope;
  private Answer answer = Answer.FOREMOST;

  double station;
  double arm;
  double tail;
  double finArm;
  double fin;
  double empty;
  double emptyCentre;
  double neutralPoint;

  BalanceSearch(QuickDesign design) {
    this.design = design;
    this.n = design.numbers;
    this.h = H * (design.rearmost - design.foremost);
  }

  /** Fixes the mass for which stability is reckoned. */
  void reckonFor(double mass) {
    speed = design.trimSpeed(mass);
    wingSlope = design.wingSlope(speed);
  }

  /** Puts the wing at a station. */
  void place(double x) {
    station = x;
    double room = design.length - x - design.quarterX;
    arm = TailGeometry.arm(room, design.horizontalVolume, n.horizontal.aspectRatio(), n.horizontal.taperRatio());
    tail = TailVolume.area(n.horizontal.volumeCoefficient(), arm, design.area, design.chord);
    finArm = TailGeometry.arm(room, design.verticalVolume, n.vertical.aspectRatio(), n.vertical.taperRatio());
    fin = TailVolume.area(n.vertical.volumeCoefficient(), finArm, design.area, design.span);
    double tailChord = PartGeometry.meanChord(tail, n.horizontal);
    // a plate's centre lies a quarter of its mean chord behind its quarter chord
    double tailX = x + design.quarterX + arm + 0.25 * tailChord;
    double finX = x + design.quarterX + finArm + 0.25 * PartGeometry.meanChord(fin, n.vertical);
    double tailMass = n.plateDensity * tail;
    double finMass = n.plateDensity * fin;
    double tailRoot = TailGeometry.rootChord(tail, n.horizontal.aspectRatio(), n.horizontal.taperRatio());
    double finRoot = TailGeometry.rootChord(fin, n.vertical.aspectRatio(), n.vertical.taperRatio());
    double tailSlot = slot(tailRoot, true);
    double finSlot = slot(finRoot, false);
    double bodyMass = n.material * (design.bodyWalls + design.seat + tailSlot + finSlot);
    double bodyMoment =
        n.material
            * (design.bodyWalls * design.bodyCentroid
                + design.seat * (x + design.seatCentre)
                + tailSlot * (design.length - 0.5 * tailRoot)
                + finSlot * (design.length - 0.5 * finRoot));
    empty = design.wingMass + bodyMass + tailMass + finMass + n.carriedMass;
    double moment =
        design.wingMass * (x + design.wingCentroid)
            + bodyMoment
            + tailMass * tailX
            + finMass * finX
            + n.carriedMoment;
    emptyCentre = moment / empty;
    neutralPoint = design.neutralPoint(x, arm, tail, tailChord, speed, wingSlope);
  }

  private double slot(double chord, boolean level) {
    return BodyFittings.slot(n.body, design.length, design.diameter, chord, n.slotWidth, n.bodyWall, level);
  }

  /** The static margin without ballast. */
  double margin() {
    return (neutralPoint - emptyCentre) / design.chord;
  }

  private double target() {
    return neutralPoint - n.wanted * design.chord;
  }

  /** How far the centre of gravity lies behind where it is wanted [m]. */
  private double lack() {
    return emptyCentre - target();
  }

  /** Ballast that the answer carries [kg]. */
  double ballast() {
    return answer == Answer.BALLASTED
        ? Ballast.ballastMass(empty, emptyCentre, target(), design.ballastPlace)
        : 0.0;
  }

  /** The mass with the ballast that the wanted margin takes, infinite where none can give it. */
  private double ballastedMass() {
    return target() > design.ballastPlace
        ? empty + Ballast.ballastMass(empty, emptyCentre, target(), design.ballastPlace)
        : Double.POSITIVE_INFINITY;
  }

  /** Mass of the answer [kg]. */
  double mass() {
    return empty + ballast();
  }

  /** Centre of gravity of the answer [m]. */
  double centreOfGravity() {
    double ballast = ballast();
    return (empty * emptyCentre + ballast * design.ballastPlace) / (empty + ballast);
  }

  /**
   * Looks at the whole travel. The margin need not rise all the way aft, because the arm shrinks: the first station that
   * reaches it serves. Where none does, that at which the whole with its ballast is lightest.
   */
  void find() {
    place(design.foremost);
    if (lack() <= 0.0) {
      answer = Answer.FOREMOST;
      return;
    }
    int lightest = 0;
    double least = ballastedMass();
    for (int i = 1; i <= SCAN_STEPS; i++) {
      place(scanned(i));
      if (lack() <= 0.0) {
        answer = Answer.BALANCED;
        place(balanced(scanned(i - 1), scanned(i)));
        return;
      }
      double mass = ballastedMass();
      if (mass < least) {
        least = mass;
        lightest = i;
      }
    }
    answer = Answer.BALLASTED;
    place(lightest(scanned(Math.max(0, lightest - 1)), scanned(Math.min(SCAN_STEPS, lightest + 1))));
    if (!(ballast() >= 0.0 && mass() < HOPELESS * empty)) {
      throw design.hopeless(neutralPoint);
    }
  }

  private double scanned(int i) {
    return i == SCAN_STEPS
        ? design.rearmost
        : design.foremost + (design.rearmost - design.foremost) * i / SCAN_STEPS;
  }

  /** Looks close to the last answer, and everywhere if it is not there. */
  private void findAgain() {
    double width = NEAR * (design.rearmost - design.foremost);
    double lower = Math.max(design.foremost, station - width);
    double upper = Math.min(design.rearmost, station + width);
    if (answer == Answer.BALANCED) {
      place(lower);
      boolean before = lack() > 0.0;
      place(upper);
      if (before && lack() <= 0.0) {
        place(balanced(lower, upper));
        return;
      }
    } else if (answer == Answer.BALLASTED) {
      double x = lightest(lower, upper);
      if (x == design.foremost || x == design.rearmost || (x > lower && x < upper)) {
        place(x);
        return;
      }
    }
    find();
  }

  /** Repeats the search until the mass that comes out is the mass for which stability was reckoned. */
  void settle(double first) {
    double mass = first;
    reckonFor(mass);
    find();
    boolean everywhere = false;
    for (int i = 0; i < MOST_ROUNDS; i++) {
      double before = mass;
      mass = mass();
      if (Math.abs(mass - before) <= SETTLED * mass) {
        if (everywhere) {
          return;
        }
        // what was followed from round to round must also be what a look at the whole travel finds
        everywhere = true;
        find();
      } else {
        reckonFor(mass);
        if (everywhere) {
          find();
        } else {
          findAgain();
        }
      }
    }
    throw ConvergenceException.atValues(
        "the mass of the design would not settle (kg, last two)", MOST_ROUNDS, mass() - mass, mass, mass());
  }

  private double lackAt(double x) {
    place(x);
    return lack();
  }

  /** By how much the mass with ballast rises over two steps of the differences. */
  private double riseAt(double x) {
    place(x + h);
    double after = ballastedMass();
    place(x - h);
    return after - ballastedMass();
  }

  private double balanced(double lower, double upper) {
    return zero(false, lower, lackAt(lower), upper, lackAt(upper));
  }

  private double lightest(double lower, double upper) {
    double a = lower == design.foremost ? lower + h : lower;
    double b = upper == design.rearmost ? upper - h : upper;
    double atA = riseAt(a);
    if (!(atA < 0.0)) {
      return lower;
    }
    double atB = riseAt(b);
    if (!(atB > 0.0)) {
      return upper;
    }
    return zero(true, a, atA, b, atB);
  }

  /** Where the lack or the rise changes its sign, by chords of which the end that stays is weighted down. */
  private double zero(boolean rise, double lower, double atLower, double upper, double atUpper) {
    double a = lower;
    double atA = atLower;
    double b = upper;
    double atB = atUpper;
    double x = b;
    double tolerance = rise ? LIGHTEST * (design.rearmost - design.foremost) : STATION * Math.max(1.0, Math.abs(b));
    for (int i = 0; i < MOST_CHORDS && atB != 0.0; i++) {
      double before = x;
      x = b - atB * (b - a) / (atB - atA);
      if (Math.abs(x - before) <= tolerance) {
        break;
      }
      double at = rise ? riseAt(x) : lackAt(x);
      if ((at > 0.0) == (atB > 0.0)) {
        double weight = 1.0 - at / atB;
        atA *= weight > 0.0 ? weight : 0.5;
      } else {
        a = b;
        atA = atB;
      }
      b = x;
      atB = at;
    }
    return x;
  }

  /** The answer. */
  QuickDesign.Balance balance() {
    return new QuickDesign.Balance(
        station, arm, tail, finArm, fin, mass(), ballast(), centreOfGravity(), neutralPoint);
  }
}
