// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils.viscous;

/**
 * Whether iterations that have not ended yet can still end well. More than half of all iterations used to be spent on
 * starts that never do, and they show it early, in one of three ways.
 *
 * <p><b>Going round</b>: the same few states come again and again, because transition flutters between stretches, or a step
 * is cut down to nothing each time. Told by residual and change that repeat with a period of up to twelve, to three parts
 * in a thousand.
 *
 * <p><b>Lost</b>: far from a solution, the steps stay short for twenty iterations.
 *
 * <p><b>Stuck</b>: the steps are cut down to a tenth and less, four in a row, and transition does not move either.
 *
 */
final class Prospect {
  private static final int LONGEST_PERIOD = 12;
  private static final double SAME = 0.003;
  private static final int LEAST_REPEATED = 4;
  /** The first iterations, in which the layers form, say nothing. */
  private static final int FIRST = 4;

  private static final double FAR = 0.5;
  private static final double SHORT = 0.3;
  private static final int MOST_LOST = 20;

  private static final double TINY = 0.1;
  /** Transition that goes further than this in a step is on its way [chords]: short steps are then its price. */
  private static final double ON_ITS_WAY = 0.01;

  private static final int MOST_STUCK = 4;

  private final double[] change;
  private final double[] residual;
  private int count;
  private int lost;
  private int stuck;

  Prospect(int most) {
    change = new double[most];
    residual = new double[most];
  }

  void startAgain() {
    count = 0;
    lost = 0;
    stuck = 0;
  }

  /**
   * Takes what an iteration came to.
   *
   * @param newChange largest relative change that the full step would make
   * @param newResidual largest residual before it
   * @param taken share of the step that was taken
   * @param moved how far transition went, on the side where it went further [chords]
   * @return whether to give up
   */
  boolean isHopeless(double newChange, double newResidual, double taken, double moved) {
    change[count] = newChange;
    residual[count] = newResidual;
    count++;
    lost = newResidual > FAR && taken < SHORT ? lost + 1 : 0;
    stuck = taken < TINY && moved < ON_ITS_WAY ? stuck + 1 : 0;
    if (lost >= MOST_LOST || stuck >= MOST_STUCK) {
      return true;
    }
    for (int period = 1; period <= LONGEST_PERIOD; period++) {
      int repeated = Math.max(LEAST_REPEATED, period);
      if (count - repeated - period < FIRST) {
        return false;
      }
      if (repeats(period, repeated)) {
        return true;
      }
    }
    return false;
  }

  private boolean repeats(int period, int repeated) {
    for (int i = count - 1; i >= count - repeated; i--) {
      if (!(Math.abs(residual[i] - residual[i - period]) <= SAME * residual[i]
          && Math.abs(change[i] - change[i - period]) <= SAME * change[i])) {
        return false;
      }
    }
    return true;
  }
}
