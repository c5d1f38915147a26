// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Length;
import java.io.Serializable;
import java.util.Objects;

/**
 * Two fins that share the work of one, at the tips of the horizontal tail.
 *
 * <p>Each takes half of the area, so it is 1/√2 as high: lower, stiffer, and out of the wake of the fuselage, for which a
 * handbook takes 5 % off the tail volume coefficient. As end plates they also make the horizontal tail work as one of
 * greater aspect ratio; that gain is left out, on the safe side.
 *
 * @param port the port fin
 * @param starboard the starboard fin
 */
public record TwinFins(Tail port, Tail starboard) implements Serializable {
  public TwinFins {
    Objects.requireNonNull(port, "port");
    Objects.requireNonNull(starboard, "starboard");
  }

  /** What a pair of fins needs of the volume coefficient of one (from memory, as in the handbook's table). */
  public static final double COEFFICIENT_FACTOR = 0.95;

  /**
   * Two fins instead of one.
   *
   * @param single the single fin that has the area wanted
   * @param horizontal the horizontal tail at whose tips they stand
   * @return the pair, their quarter chords where that of the single fin was
   */
  public static TwinFins replacing(Tail single, Tail horizontal) {
    Objects.requireNonNull(single, "single");
    Objects.requireNonNull(horizontal, "horizontal");
    if (single.role() != Tail.Role.VERTICAL || horizontal.role() != Tail.Role.HORIZONTAL) {
      throw new IllegalArgumentException(
          "twin fins need a vertical and a horizontal tail, were " + single.role().words() + " and "
              + horizontal.role().words());
    }
    Area half = single.planform().area().times(0.5);
    Planform plain =
        Planform.taperedFin(half, single.planform().aspectRatio(), single.planform().taperRatio());
    Planform planform = plain.withSweep(0.25, single.planform().sweepAt(0.25));
    Length x = single.quarterChordX().minus(planform.quarterMeanAerodynamicChordX());
    Length tip = horizontal.planform().span().times(0.5);
    Length z = horizontal.placement().z().plus(horizontal.planform().heightAt(tip));
    return new TwinFins(
        new Tail(Tail.Role.VERTICAL, planform, single.section(), new Placement(x, tip.negated(), z), single.incidence()),
        new Tail(Tail.Role.VERTICAL, planform, single.section(), new Placement(x, tip, z), single.incidence()));
  }

  /**
   * Area of both.
   *
   * @return the area of the single fin that they replace
   */
  public Area area() {
    return port.planform().area().plus(starboard.planform().area());
  }

  @Override
  public String toString() {
    return "twin fins, each " + port.planform();
  }
}
