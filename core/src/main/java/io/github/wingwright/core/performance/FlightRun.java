// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.performance;

import io.github.wingwright.core.ConvergenceException;
import io.github.wingwright.core.numerics.RungeKutta;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Time;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Carries one flight from the hand to its end. Nothing is allocated from step to step unless a track is kept.
 *
 * <p>The step that would pass floor, ceiling or wall is made again, shorter, until it ends there.
 */
final class FlightRun {
  /** Longest flight [s]: nothing thrown by hand flies longer in still air. */
  static final double LONGEST = 600.0;

  /** An airspeed that changes by less than this part of that at the throw has not turned. */
  private static final double LEAST_SWING = 0.005;

  private static final int MOST_HALVINGS = 60;

  private final FlightEquations equations;
  private final RungeKutta.Rates system;
  private final RungeKutta.Work work;
  private final @Nullable List<TrackPoint> track;
  private final double[] ends = new double[4];
  private double[] state;
  private double[] rates;
  private double[] next;
  private double[] nextRates;

  FlightEnd end = FlightEnd.TIME;
  double time;
  double greatestHeight;
  double timeOfGreatestHeight;
  double distanceOfGreatestHeight;
  double slowest;
  double firstStall = Double.NaN;
  double firstStallDistance = Double.NaN;
  double firstStallHeight = Double.NaN;
  double stalledTime;
  private boolean overturned;
  private int direction;
  private double extreme;
  private double timeOfExtreme;
  private double leastSwing;
  private int turns;
  private double firstTurn;
  private double lastTurn;
  private double lastTurnSpeed;
  private double firstSwing;
  private double lastSwing;

  FlightRun(FlightEquations equations, boolean keepTrack) {
    this.equations = equations;
    system = equations::rates;
    int n = equations.size();
    work = new RungeKutta.Work(n);
    track = keepTrack ? new ArrayList<>() : null;
    state = new double[n];
    rates = new double[n];
    next = new double[n];
    nextRates = new double[n];
  }

  /** One flight on plain numbers, after a look at them. */
  static FlightRun of(FlightModel model, double speed, double angle, double height) {
    Door.positive(speed, "throw speed");
    Door.within(angle, -0.5 * Math.PI, 0.5 * Math.PI, "throw angle");
    Door.positive(height, "height of the hand");
    model.hall().holds(height);
    FlightRun run = new FlightRun(model.equations(), false);
    run.fly(model.start(speed, angle, height), model.hall(), 0);
    return run;
  }

  void fly(double[] start, Hall hall, int halvings) {
    System.arraycopy(start, 0, state, 0, state.length);
    equations.rates(state, rates);
    ends[0] = 0.0;
    ends[1] = hall.ceilingAt();
    ends[2] = hall.aheadAt();
    ends[3] = hall.behindAt();
    begin(equations.airspeed(state));
    while (time < LONGEST) {
      // A rule of the state alone, so that the order of the method stays and a flight is the same wherever it is made.
      double h = Math.scalb(equations.step(equations.airspeed(state)), -halvings);
      RungeKutta.step(system, state, rates, h, next, work);
      int passed = passed();
      double made = h;
      if (passed >= 0) {
        made = upTo(passed, h);
        end = FlightEnd.values()[passed];
      }
      equations.rates(next, nextRates);
      observe(made);
      swap();
      if (passed >= 0) {
        return;
      }
    }
  }

  private void swap() {
    double[] s = state;
    state = next;
    next = s;
    double[] r = rates;
    rates = nextRates;
    nextRates = r;
  }

  private void begin(double speed) {
    greatestHeight = state[1];
    slowest = speed;
    extreme = speed;
    leastSwing = LEAST_SWING * speed;
    if (equations.stalled(state)) {
      stall();
    }
    keep(speed);
  }

  /** Whether the next state lies behind the floor (0), the ceiling (1) or a wall (2 ahead, 3 behind); −1 if behind none. */
  private int passed() {
    int first = -1;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < 4; i++) {
      double after = beyond(i, next);
      if (!(after <= 0.0)) {
        if (Double.isNaN(after)) {
          throw ConvergenceException.atValues("flight left the numbers", (int) Math.rint(1e3 * time), after, state);
        }
        double before = -beyond(i, state);
        double part = before / (before + after);
        if (part < least) {
          least = part;
          first = i;
        }
      }
    }
    return first;
  }

  /** How far a state lies behind an end: negative while it has not been reached. */
  private double beyond(int i, double[] at) {
    return switch (i) {
      case 0 -> -at[1];
      case 1 -> at[1] - ends[1];
      case 2 -> at[0] - ends[2];
      default -> ends[3] - at[0];
    };
  }

  /** Makes the step anew so that it ends at the floor, ceiling or wall, by chords of which the end that stays is halved. */
  private double upTo(int i, double h) {
    double a = 0.0;
    double atA = beyond(i, state);
    double b = h;
    double atB = beyond(i, next);
    double made = h;
    for (int k = 0; k < MOST_HALVINGS && Math.abs(b - a) > 1e-14 * h; k++) {
      made = atB - atA > 0.0 ? a - atA * (b - a) / (atB - atA) : 0.5 * (a + b);
      RungeKutta.step(system, state, rates, made, next, work);
      double at = beyond(i, next);
      if (Math.abs(at) <= 1e-13) {
        break;
      }
      if (at > 0.0) {
        b = made;
        atB = at;
        atA *= 0.5;
      } else {
        a = made;
        atA = at;
        atB *= 0.5;
      }
    }
    return made;
  }

  private void observe(double h) {
    crest(h);
    time += h;
    double speed = equations.airspeed(next);
    slowest = Math.min(slowest, speed);
    turn(speed);
    overturned |= equations.overturned(next);
    if (equations.stalled(next)) {
      stalledTime += h;
      if (Double.isNaN(firstStall)) {
        double[] s = state;
        state = next;
        stall();
        state = s;
      }
    }
    if (track != null) {
      double[] s = state;
      double[] r = rates;
      state = next;
      rates = nextRates;
      keep(speed);
      state = s;
      rates = r;
    }
  }

  private void stall() {
    firstStall = time;
    firstStallDistance = state[0];
    firstStallHeight = state[1];
  }

  private void keep(double speed) {
    if (track != null) {
      track.add(new TrackPoint(
          time, state[0], state[1], speed, Math.atan2(rates[1], rates[0]), equations.stalled(state)));
    }
  }

  /** The top of a step that goes over one: the parabola through both vertical speeds. */
  private void crest(double h) {
    double up = rates[1];
    double down = nextRates[1];
    double top = next[1];
    double part = 1.0;
    if (up > 0.0 && down < 0.0) {
      part = up / (up - down);
      top = Math.max(top, state[1] + 0.5 * up * part * h);
    }
    if (top > greatestHeight) {
      greatestHeight = top;
      timeOfGreatestHeight = time + part * h;
      distanceOfGreatestHeight = state[0] + part * (next[0] - state[0]);
    }
  }

  /** Follows the airspeed to its greatest and least values; one counts when the speed has come back from it by a little. */
  private void turn(double speed) {
    if (direction == 0) {
      if (Math.abs(speed - extreme) > leastSwing) {
        direction = speed > extreme ? 1 : -1;
        lastTurnSpeed = extreme;
        extreme = speed;
        timeOfExtreme = time;
      }
      return;
    }
    if ((speed - extreme) * direction > 0.0) {
      extreme = speed;
      timeOfExtreme = time;
    } else if (Math.abs(speed - extreme) > leastSwing) {
      double swing = Math.abs(extreme - lastTurnSpeed);
      if (turns == 0) {
        firstTurn = timeOfExtreme;
      } else {
        if (turns == 1) {
          firstSwing = swing;
        }
        lastSwing = swing;
      }
      turns++;
      lastTurn = timeOfExtreme;
      lastTurnSpeed = extreme;
      direction = -direction;
      extreme = speed;
      timeOfExtreme = time;
    }
  }

  Swings swings() {
    double decrement = turns > 2 ? Math.log(firstSwing / lastSwing) / (turns - 2) : 0.0;
    return new Swings(turns, Time.seconds(firstTurn), Time.seconds(lastTurn), decrement);
  }

  FlightManner manner() {
    return FlightManner.of(overturned, end, stalledTime > 0.0 || !Double.isNaN(firstStall), -Math.atan2(rates[1], rates[0]));
  }

  double distance() {
    return state[0];
  }

  double groundSpeed() {
    return Math.hypot(rates[0], rates[1]);
  }

  List<TrackPoint> track() {
    return track == null ? List.of() : track;
  }
}
