// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.production;

import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Moment;
import io.github.wingwright.core.sizing.BodyShell;
import io.github.wingwright.stability.design.Design;
import io.github.wingwright.stability.production.LaunchLoads.Load;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * Bending of a fuselage at launch: at the wing, where it is greatest, and behind it, where a boom that is thinner than its
 * pod may have less to spare.
 */
final class BoomLoads {
  private static final int STEPS = 50;

  /** A boom counts apart once its reserve is less than so much of that at the wing (choice of this library). */
  private static final double WORSE = 0.95;

  private static final String CAUSE = "tails and nose at launch";

  private BoomLoads() {}

  /** One or two loads; {@code bending} is the moment over the distance from the nose, {@code strength} that across the layers. */
  static List<Load> of(Design design, DoubleUnaryOperator bending, double strength) {
    Airframe airframe = design.aircraft().airframe();
    Fuselage body = airframe.fuselage();
    double wall = design.brief().bodyShell().wallThickness().si();
    double wing = airframe.wing().quarterChordX().si();
    // Between its two sides the moment jumps: the nose ahead of the wing, the tails behind it.
    double greater = Math.max(bending.applyAsDouble(wing + 1e-9), bending.applyAsDouble(wing - 1e-9));
    Load atWing = load("fuselage at the wing", greater, strength * modulus(body, wing, wall));
    // Behind the roots of the tails their plates stiffen the body.
    double end = airframe.tails().stream().mapToDouble(t -> t.placement().x().si()).min().orElse(body.length().si());
    Load worst = atWing;
    for (int i = 1; i <= STEPS; i++) {
      double x = wing + (end - wing) * i / STEPS;
      String place = "boom at " + Length.MILLIMETRE.format(x, 3) + " from the nose";
      Load here = load(place, bending.applyAsDouble(x), strength * modulus(body, x, wall));
      if (here.value() > 0.0 && here.reserve() < worst.reserve()) {
        worst = here;
      }
    }
    List<Load> loads = new ArrayList<>();
    if (atWing.value() > 0.0) {
      loads.add(atWing);
    }
    if (worst.reserve() < WORSE * atWing.reserve()) {
      loads.add(worst);
    }
    return loads;
  }

  private static Load load(String place, double moment, double capacity) {
    return new Load(place, CAUSE, moment, capacity, Moment.NEWTON_METRE);
  }

  private static double modulus(Fuselage body, double x, double wall) {
    Length at = Length.metres(x);
    double thin = Math.min(body.widthAt(at).si(), body.heightAt(at).si());
    return BodyShell.secondMoment(thin, Math.min(wall, 0.5 * thin)) / (0.5 * thin);
  }
}
