// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils.viscous;

import io.github.wingwright.airfoils.ComposedSection;
import io.github.wingwright.airfoils.Contour;
import io.github.wingwright.airfoils.potential.DisplacedFlow;
import io.github.wingwright.airfoils.potential.PanelMethod;
import io.github.wingwright.core.ConvergenceException;
import io.github.wingwright.core.numerics.TriangularFactors;
import io.github.wingwright.core.quantity.Angle;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Lift, drag and moment of a section with its boundary layers, displacement fed back to the outer flow.
 *
 * <p>Laminar layers follow the family of similar layers through separation ({@link SimilarLayers}); waves grow in them
 * until transition ({@link Transition}); turbulent layers grow by entrainment ({@link Entrainment}); all of it is solved
 * together with the outer flow and a wake. The drag is Squire and Young's at the trailing edge
 * ({@link ProfileDrag#squireYoung}), with the shape factor taken as 2.5 where it is greater, and the
 * drag of a blunt base ({@link ProfileDrag#base}).
 *
 * <p>Valid for subsonic sections at Reynolds numbers from about 5·10⁴ to some millions up to the beginning of stall.
 * Below 5·10⁴ a separated laminar layer hardly ever comes back (Carmichael, NASA CR-165803, 1981, from memory); results
 * there carry a finding. How it compares with wind tunnels is measured in the module's validation page: at equal lift the
 * drag of two sections is within about 15 % at 2·10⁵ and 10⁵. Lift at a given angle is 0.1 to 0.2 above the measured one
 * on a section with 6 % camber.
 *
 * <pre>{@code
 * ViscousMethod method = ViscousMethod.of(Naca4.parse("4406"));
 * ViscousPoint point = method.at(Angle.degrees(3), 60_000);
 * List<ViscousPoint> polar = method.polar(60_000, Angle.degrees(-2), Angle.degrees(8), Angle.degrees(0.5));
 * }</pre>
 * Instances are immutable and may be shared between threads; each call works on its own memory.
 */
public final class ViscousMethod {
  /** Nodes on the section. */
  static final int POINTS = 121;
  /** Share of linear spacing, which keeps panels at the trailing edge as long as a boundary layer is thick. */
  static final double LINEAR_SHARE = 0.08;

  private static final int WAKE = 24;
  /** Nearly all starts that end well need fewer iterations: a warm one, a cold one, a cold one at a gentle pace. */
  private static final int MOST_WARM = 60;

  private static final int MOST_COLD = 70;
  /** The most iterations of any start. */
  static final int MOST_GENTLE = 130;

  /** Steps of angle over which a second solution is followed. */
  private static final int FURTHEST_BACK = 8;

  private final String name;
  private final DisplacedFlow flow;
  private final Disturbance disturbance;

  private ViscousMethod(String name, DisplacedFlow flow, Disturbance disturbance) {
    this.name = name;
    this.flow = flow;
    this.disturbance = disturbance;
  }

  /** The method for a section, in quiet air. */
  public static ViscousMethod of(ComposedSection section) {
    Objects.requireNonNull(section, "section");
    return new ViscousMethod(section.name(), flow(section.contour(POINTS, LINEAR_SHARE)), Disturbance.QUIET);
  }

  /**
   * The method for any outline of 60 to 300 points that crowd at the nose.
   *
   * @param name what to call it
   * @param contour the outline
   */
  public static ViscousMethod of(String name, Contour contour) {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(contour, "contour");
    if (contour.size() < 60 || contour.size() > 300) {
      throw new IllegalArgumentException(
          "an outline for boundary layers must have 60 to 300 points, had " + contour.size());
    }
    return new ViscousMethod(name, flow(contour), Disturbance.QUIET);
  }

  private static DisplacedFlow flow(Contour contour) {
    return new DisplacedFlow(PanelMethod.of(contour), WAKE);
  }

  /** The same section in other air, or with trips. */
  public ViscousMethod with(Disturbance disturbance) {
    return new ViscousMethod(name, flow, disturbance);
  }

  /** The section's name. */
  public String name() {
    return name;
  }

  /** How disturbed the flow is. */
  public Disturbance disturbance() {
    return disturbance;
  }

  /**
   * The section at one angle of attack.
   *
   * @param angleOfAttack angle of attack from the chord line, −20° to 20°
   * @param reynolds Reynolds number on the chord [1], 5000 to 10⁷
   * @throws ConvergenceException if the layers and the outer flow do not come to agree, as happens past stall
   */
  public ViscousPoint at(Angle angleOfAttack, double reynolds) {
    Objects.requireNonNull(angleOfAttack, "angle of attack");
    check(angleOfAttack, reynolds);
    CoupledSolver solver = new CoupledSolver(flow);
    return solve(solver, angleOfAttack.radians(), reynolds, false)
        .orElseThrow(() -> ConvergenceException.atValues(
            name + ": boundary layers and outer flow did not come to agree", solver.iterations,
            Double.NaN, angleOfAttack.radians(), reynolds));
  }

  /**
   * A polar: points at equal steps of rising angle of attack, each started from the one before, without those that have no
   * solution (past stall).
   *
   * <p>Where the lift jumps from one angle to the next, the computation starts afresh there and goes back with falling angle;
   * a point at which it then finds other layers carries a finding "two solutions": there a wind tunnel is likely to find
   * hysteresis.
   *
   * @param reynolds Reynolds number on the chord [1], 5000 to 10⁷
   * @param from first angle
   * @param to last angle
   * @param step positive
   */
  public List<ViscousPoint> polar(double reynolds, Angle from, Angle to, Angle step) {
    Objects.requireNonNull(from, "from");
    check(from, reynolds);
    check(to, reynolds);
    if (!(step.radians() > 0)) {
      throw new IllegalArgumentException("step must be positive, was " + step);
    }
    int count = (int) Math.floor((to.radians() - from.radians()) / step.radians() + 1e-9);
    return sweep(reynolds, from.radians(), step.radians(), count, false);
  }

  /**
   * Points at equal steps of angle, in the order of the march.
   *
   * @param reynolds Reynolds number on the chord [1]
   * @param from first angle [rad]
   * @param step step, rising or falling [rad]
   * @param count number of steps
   * @param toStall whether to end where the lift turns back, or where points have no solution: one going down, two in a
   *     row going up, where a gap is more often bridged; second solutions are not looked for then: they change no number
   */
  List<ViscousPoint> sweep(double reynolds, double from, double step, int count, boolean toStall) {
    List<ViscousPoint> points = new ArrayList<>();
    CoupledSolver solver = new CoupledSolver(flow);
    boolean warm = false;
    int missing = 0;
    for (int i = 0; i <= count; i++) {
      double angle = from + i * step;
      Optional<ViscousPoint> point = solve(solver, angle, reynolds, warm);
      if (warm && point.isPresent()) {
        ViscousPoint before = points.get(points.size() - 1);
        if (jumps(before, point.get())) {
          if (!solver.startedAfresh) {
            point = Optional.of(nearer(solver, before, point.get()));
          }
          if (!toStall) {
            lookBack(solver, points);
          }
        }
      }
      point.ifPresent(points::add);
      warm = point.isPresent();
      if (warm) {
        solver.extrapolate();
      }
      missing = warm ? 0 : missing + 1;
      if (toStall && (missing > (step > 0 ? 1 : 0) || stalled(points, step))) {
        break;
      }
    }
    return points;
  }

  private static boolean stalled(List<ViscousPoint> points, double step) {
    int n = points.size();
    return n > 1 && Math.abs(points.get(n - 1).angleOfAttack().degrees()) > 3
        && (points.get(n - 1).liftCoefficient() - points.get(n - 2).liftCoefficient()) * step < 0;
  }

  /** Of the solution found and one from a fresh start, if that is another one, the one that goes on from the point before. */
  private ViscousPoint nearer(CoupledSolver solver, ViscousPoint before, ViscousPoint found) {
    double angle = found.angleOfAttack().radians();
    CoupledSolver fresh = new CoupledSolver(flow);
    fresh.start(angle, found.reynolds());
    if (!attempt(fresh, angle, found.reynolds(), MOST_COLD)) {
      return found;
    }
    ViscousPoint other = Assessment.of(fresh, flow.method(), angle, found.reynolds());
    if (alike(found, other)) {
      return found;
    }
    double expected = before.liftCoefficient() + 2 * Math.PI * (angle - before.angleOfAttack().radians());
    if (Math.abs(other.liftCoefficient() - expected) < Math.abs(found.liftCoefficient() - expected)) {
      solver.take(fresh);
      return Assessment.withSecond(other, found);
    }
    return Assessment.withSecond(found, other);
  }

  private static boolean alike(ViscousPoint a, ViscousPoint b) {
    return Math.abs(a.liftCoefficient() - b.liftCoefficient()) < 0.03
        && Math.abs(a.dragCoefficient() / b.dragCoefficient() - 1) < 0.1;
  }

  /** Whether the lift between two points changes quite unlike that of an attached flow. */
  private static boolean jumps(ViscousPoint a, ViscousPoint b) {
    double expected = 2 * Math.PI * (b.angleOfAttack().radians() - a.angleOfAttack().radians());
    return Math.abs(b.liftCoefficient() - a.liftCoefficient() - expected) > 0.08 + 0.3 * Math.abs(expected);
  }

  /** Goes back from the solver's present solution, and marks the points at which it finds another one. */
  private void lookBack(CoupledSolver solver, List<ViscousPoint> points) {
    CoupledSolver back = new CoupledSolver(flow);
    back.take(solver);
    for (int i = points.size() - 1; i >= 0 && i >= points.size() - FURTHEST_BACK; i--) {
      ViscousPoint up = points.get(i);
      double angle = up.angleOfAttack().radians();
      if (!attempt(back, angle, up.reynolds(), MOST_WARM)) {
        return;
      }
      ViscousPoint down = Assessment.of(back, flow.method(), angle, up.reynolds());
      if (alike(up, down)) {
        return;
      }
      points.set(i, Assessment.withSecond(up, down));
    }
  }

  private Optional<ViscousPoint> solve(CoupledSolver solver, double angle, double reynolds, boolean warm) {
    boolean done = false;
    solver.startedAfresh = false;
    if (!solver.isGentle()) {
      done = warm && attempt(solver, angle, reynolds, MOST_WARM);
      if (!done) {
        solver.startedAfresh = true;
        solver.start(angle, reynolds);
        done = attempt(solver, angle, reynolds, MOST_COLD);
      }
    } else if (warm) {
      // The neighbour needed a gentle pace: this one probably does, too.
      done = attempt(solver, angle, reynolds, MOST_COLD);
      solver.gentle(!done || solver.iterations > MOST_COLD / 2);
    }
    if (!done) {
      solver.gentle(true);
      solver.start(angle, reynolds);
      done = attempt(solver, angle, reynolds, MOST_GENTLE);
      solver.gentle(done);
    }
    return done ? Optional.of(Assessment.of(solver, flow.method(), angle, reynolds)) : Optional.empty();
  }

  private boolean attempt(CoupledSolver solver, double angle, double reynolds, int most) {
    try {
      return solver.solve(angle, reynolds, disturbance, most);
    } catch (TriangularFactors.Singular singular) {
      // A singular system far from the solution: the caller starts afresh or gives up.
      return false;
    }
  }

  private static void check(Angle angle, double reynolds) {
    if (!(Math.abs(angle.degrees()) <= 20)) {
      throw new IllegalArgumentException("angle of attack must be from −20° to 20°, was " + angle);
    }
    if (!(reynolds >= 5e3 && reynolds <= 1e7)) {
      throw new IllegalArgumentException("Reynolds number must be from 5000 to 10⁷, was " + reynolds);
    }
  }

  @Override
  public String toString() {
    return "boundary layers of " + name;
  }
}
