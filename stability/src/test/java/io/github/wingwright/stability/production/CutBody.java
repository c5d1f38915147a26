// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.production;

import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.stability.design.Design;

/** The volume of a round body less seat and slots, by strips across it: what its mesh must have. */
final class CutBody {
  private static final int STATIONS = 1500;
  private static final int STRIPS = 60;
  private static final double PLAY = 0.1e-3;

  private final Fuselage body;
  private final Wing wing;
  private final boolean seated;
  private final double floor;
  private final double slope;
  private final double slot;
  private final double slotHeight;
  private final double tailplaneFrom;
  private final double finFrom;
  private final double mark;

  CutBody(Design design, boolean seated) {
    Airframe airframe = design.aircraft().airframe();
    body = airframe.fuselage();
    wing = airframe.wing();
    this.seated = seated;
    floor = wing.placement().z().si() + lowest(wing) * wing.planform().rootChord().si();
    slope = wing.planform().panels().get(0).dihedral().tangent();
    slot = design.brief().tailThickness().si() + 2.0 * PLAY;
    slotHeight = airframe.horizontalTail().orElseThrow().placement().z().si();
    tailplaneFrom = airframe.horizontalTail().orElseThrow().placement().x().si();
    finFrom = airframe.verticalTail().orElseThrow().placement().x().si();
    mark = design.aircraft().centreOfGravity().x().si();
  }

  private static double lowest(Wing wing) {
    double low = 0.0;
    for (int i = 0; i <= 1000; i++) {
      double x = i / 1000.0;
      low = Math.min(low, wing.section().camber(x) - 0.5 * wing.section().thickness(x));
    }
    return low;
  }

  private double halfHeight(double x) {
    return 0.5 * body.heightAt(Length.metres(x)).si();
  }

  private double halfWidth(double x) {
    return 0.5 * body.widthAt(Length.metres(x)).si();
  }

  private double centre(double x) {
    return body.centreHeightAt(Length.metres(x)).si();
  }

  private boolean hasRoom(double x) {
    return centre(x) + halfHeight(x) - floor >= 0.5e-3;
  }

  /** The least and the most it can be, with the ends of the seat and of the body known to a step, and the mark's rib. */
  double[] volumes(double step) {
    double length = body.length().si();
    Planform planform = wing.planform();
    double travel = 0.06 * planform.meanAerodynamicChord().si();
    double from = Math.max(0.0, wing.placement().x().si() - travel);
    double to = Math.min(
        Math.min(tailplaneFrom, finFrom) - 1e-3, wing.placement().x().si() + planform.rootChord().si() + travel);
    while (from < to && !hasRoom(from)) {
      from += step;
    }
    while (from < to && !hasRoom(to)) {
      to -= step;
    }
    double end = length;
    while (end > 0.0 && Math.min(halfWidth(end), halfHeight(end)) < slot + 1e-3) {
      end -= 1e-5;
    }
    double dx = length / STATIONS;
    double left = 0.0;
    double most = 0.0;
    for (int i = 0; i < STATIONS; i++) {
      double x = (i + 0.5) * dx;
      double area = x < end ? area(x, seated && x > from && x < to) : 0.0;
      most = Math.max(most, Math.PI * halfWidth(x) * halfHeight(x));
      left += area * dx;
    }
    double rib = 1.1e-3 * 0.45e-3 * 2.0 * Math.min(2.2e-3, 0.55 * halfWidth(mark));
    double unsure = 1e-3 * left + 6.0 * dx * 0.5 * most;
    return new double[] {left - unsure, left + unsure + rib};
  }

  private double area(double x, boolean inSeat) {
    double w = halfWidth(x);
    double h = halfHeight(x);
    double middle = centre(x);
    double sum = 0.0;
    for (int k = 0; k < STRIPS; k++) {
      // Strips narrower towards the side, where the outline falls off; half a body, doubled.
      double out = Math.sin(0.5 * Math.PI * (k + 1.0) / STRIPS) * w;
      double in = Math.sin(0.5 * Math.PI * k / STRIPS) * w;
      double y = 0.5 * (in + out);
      double up = h * Math.sqrt(Math.max(0.0, 1.0 - y * y / (w * w)));
      double low = middle - up;
      double high = middle + up;
      if (inSeat) {
        high = Math.min(high, floor + y * slope);
      }
      double tall = Math.max(0.0, high - low);
      if (x > tailplaneFrom) {
        tall -= overlap(low, high, slotHeight - 0.5 * slot, slotHeight + 0.5 * slot);
      }
      if (x > finFrom) {
        double cut = overlap(low, high, slotHeight + 0.5 * slot, Double.MAX_VALUE);
        tall -= cut * overlap(in, out, 0.0, 0.5 * slot) / (out - in);
      }
      sum += 2.0 * tall * (out - in);
    }
    return sum;
  }

  private static double overlap(double low, double high, double from, double to) {
    return Math.max(0.0, Math.min(high, to) - Math.max(low, from));
  }
}
