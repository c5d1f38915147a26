// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.production;

import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.manufacture.TailSlots;
import io.github.wingwright.core.manufacture.WingSeat;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import java.util.Optional;

/** The trough under a wing and its travel, as far as the body reaches up to it. */
final class Seating {
  /** Travel of the wing in its seat either way, over the mean chord: it moves the static margin by about as much. */
  private static final double TRAVEL = 0.06;

  private static final double STEP = 0.25e-3;

  /** A trough is at least so deep [m]. */
  private static final double DEPTH = 0.5e-3;

  /** And stops so far before the slots of the tails [m]. */
  private static final double CLEAR = 1e-3;

  private Seating() {}

  /** The trough; none where the body does not reach up to half of the chord, or the halves hang down. */
  static Optional<WingSeat> of(Wing wing, Fuselage body, TailSlots slots) {
    Planform planform = wing.planform();
    double chord = planform.rootChord().si();
    double floor = wing.placement().z().si() + lowest(wing) * chord;
    double travel = TRAVEL * planform.meanAerodynamicChord().si();
    double slotStart = Math.min(slots.tailplaneFrom().si(), slots.finFrom().si());
    double from = Math.max(0.0, wing.placement().x().si() - travel);
    double to = Math.min(slotStart - CLEAR, wing.placement().x().si() + chord + travel);
    while (from < to && room(body, from, floor) < DEPTH) {
      from += STEP;
    }
    while (from < to && room(body, to, floor) < DEPTH) {
      to -= STEP;
    }
    Angle dihedral = planform.panels().get(0).dihedral();
    if (to - from < 0.5 * chord || dihedral.si() < 0.0) {
      return Optional.empty();
    }
    return Optional.of(new WingSeat(Length.metres(from), Length.metres(to), Length.metres(floor), dihedral));
  }

  private static double lowest(Wing wing) {
    double[] x = new double[401];
    double[] y = new double[401];
    wing.section().outline(x, y);
    double low = 0.0;
    for (double height : y) {
      low = Math.min(low, height);
    }
    return low;
  }

  private static double room(Fuselage body, double x, double floor) {
    Length at = Length.metres(x);
    return body.centreHeightAt(at).si() + 0.5 * body.heightAt(at).si() - floor;
  }
}
