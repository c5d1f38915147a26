// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.mass.SkinVolume;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Volume;

/** The steps of the mass of a body: its walls, the trough of the wing, the slots of the tails; and where it balances. */
final class BodyMasses {
  private static final Source FITTINGS = Source.library("walls along slots and trough, less the skin that they take");

  private final DesignBrief brief;
  private final DesignNumbers numbers;
  private final BodyShape shape;
  private final double length;
  private final double diameter;
  private final double wall;
  private final double width;
  private final Step walls;
  private final Step seat;
  private final Step tailSlot;
  private final Step finSlot;
  private final double seatCentre;

  BodyMasses(DesignBrief brief, DesignNumbers numbers, Wing wing, Fuselage body) {
    this.brief = brief;
    this.numbers = numbers;
    shape = body.shape();
    length = body.length().si();
    diameter = body.diameter().si();
    wall = brief.bodyShell().wallThickness().si();
    width = brief.tailThickness().si() + 2.0 * BodyFittings.PLAY;
    walls = numbers.trace(walls());
    seat = numbers.trace(seat(wing));
    tailSlot = numbers.trace(slot("tailplane", "h", true));
    finSlot = numbers.trace(slot("fin", "v", false));
    seatCentre = wing.placement().x().si() + 0.5 * wing.planform().rootChord().si();
  }

  /** The mass, in the order of the quick evaluation. */
  Step mass() {
    Step density = Step.given("density of " + brief.material().name(), "ρ_m", brief.material().density(), brief.material().source());
    return numbers.trace(
        Step.of(DesignFormulas.BODY_MASS, density, walls, numbers.at("fuselage.volume_m3"), seat, tailSlot, finSlot));
  }

  /** Where it balances, aft of the nose tip [m]. */
  double centre() {
    double plain = Math.min(walls.value(), numbers.at("fuselage.volume_m3").value());
    double tailRoot = numbers.step("c_r,h").value();
    double finRoot = numbers.step("c_r,v").value();
    double moment =
        plain * shape.surfaceCentroid(length, diameter)
            + seat.value() * seatCentre
            + tailSlot.value() * (length - 0.5 * tailRoot)
            + finSlot.value() * (length - 0.5 * finRoot);
    return moment / (plain + seat.value() + tailSlot.value() + finSlot.value());
  }

  private Step walls() {
    if (2.0 * wall >= diameter) {
      return numbers.at("fuselage.volume_m3");
    }
    Step base = Step.given("area of the flat end", "S_e", Area.squareMetres(shape.baseArea(length, diameter)), Source.DEFINITION);
    Step surface = numbers.trace(Step.of(DesignFormulas.BODY_SURFACE, numbers.at("fuselage.wetted_area_m2"), base));
    Step curvature = numbers.trace(shape.curvatureIntegralStep(numbers.step("L"), numbers.step("d")));
    return Step.of(SkinVolume.BODY_WALL, surface, curvature, wallStep());
  }

  private Step wallStep() {
    return Step.given("wall of the fuselage", "w", brief.bodyShell().wallThickness(), Source.BRIEF);
  }

  private Step seat(Wing wing) {
    double lowest = PartGeometry.lowest(wing.section());
    double slope = wing.planform().panels().get(0).dihedral().tangent();
    return Step.solution(
        "what the seat of the wing adds",
        "V_t",
        Volume.CUBIC_METRE,
        "the area of a circle above two lines",
        "V_t = ℓ·(A(R − w, f − w/cos Γ) − A(R, f)) + 2·w·A(R − w, f), f = 0.4·d − lowest point of the root",
        v -> BodyFittings.seat(0.5 * v[0], floor(v, lowest), slope, v[1], run(v)),
        v -> v[4] - BodyFittings.seatFinely(0.5 * v[0], floor(v, lowest), slope, v[1], run(v)),
        FITTINGS,
        numbers.step("d"),
        wallStep(),
        numbers.step("c_r"),
        numbers.step("c̄"));
  }

  private static double floor(double[] v, double lowest) {
    return PartGeometry.WING_HEIGHT * v[0] + lowest * v[2];
  }

  private static double run(double[] v) {
    return v[2] + 2.0 * BodyFittings.TRAVEL * v[3];
  }

  private Step slot(String what, String index, boolean level) {
    Step slot = Step.given("width of the slots of the tails", "h", Length.metres(width), Source.library("plate and play"));
    return Step.solution(
        "what the slot of the " + what + " adds",
        "V_" + index,
        Volume.CUBIC_METRE,
        "three places along the slot",
        level
            ? "V_h = ∫ 4·(a·r_i − ½·h·r) dx + 2·r_i·w·(h + ½·π·w), a = ½·h + w"
            : "V_v = ∫ 2·(a·(r_i − a) − ½·h·(r − ½·h)) dx + r_i·w·(h + ½·π·w), a = ½·h + w",
        v -> BodyFittings.slot(shape, v[0], v[1], v[2], v[3], v[4], level),
        v -> v[5] - BodyFittings.slotFinely(shape, v[0], v[1], v[2], v[3], v[4], level),
        FITTINGS,
        numbers.step("L"),
        numbers.step("d"),
        numbers.step("c_r," + index),
        slot,
        wallStep());
  }
}
