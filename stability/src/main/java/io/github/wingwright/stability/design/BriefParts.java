// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import io.github.wingwright.core.aerodynamics.SectionPolar;
import io.github.wingwright.core.atmosphere.AirState;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Sized;
import io.github.wingwright.core.geometry.AirfoilSection;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.mass.MassItem;
import io.github.wingwright.core.mass.Material;
import io.github.wingwright.core.performance.GlideGoal;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.sizing.WingSizing;
import io.github.wingwright.stability.AircraftClass;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** The properties of a brief; those without a useful default are null until they are given. */
final class BriefParts {
  String name = "";
  @Nullable AirState air;
  @Nullable Launch launch;
  GlideGoal goal = GlideGoal.DISTANCE;
  AircraftClass aircraftClass = AircraftClass.HAND_LAUNCHED_GLIDER;
  @Nullable Function<Mass, WingSizing> wing;
  @Nullable SectionPolar wingPolar;
  @Nullable Function<Wing, Sized<Fuselage>> fuselage;
  @Nullable TailBrief horizontalTail;
  @Nullable TailBrief verticalTail;
  @Nullable AirfoilSection tailSection;
  @Nullable SectionPolar tailPolar;
  @Nullable Material material;
  int wingWalls = 1;
  double wingInfill;
  int bodyWalls = 2;
  Length lineWidth = Length.millimetres(0.42);
  Length tailThickness = Length.millimetres(0.84);
  double staticMargin = 0.15;
  Interval wingStations = Interval.ALL;
  Length leastTailArm = Length.ZERO;
  List<MassItem> carried = List.of();

  BriefParts copy() {
    BriefParts copy = new BriefParts();
    copy.name = name;
    copy.air = air;
    copy.launch = launch;
    copy.goal = goal;
    copy.aircraftClass = aircraftClass;
    copy.wing = wing;
    copy.wingPolar = wingPolar;
    copy.fuselage = fuselage;
    copy.horizontalTail = horizontalTail;
    copy.verticalTail = verticalTail;
    copy.tailSection = tailSection;
    copy.tailPolar = tailPolar;
    copy.material = material;
    copy.wingWalls = wingWalls;
    copy.wingInfill = wingInfill;
    copy.bodyWalls = bodyWalls;
    copy.lineWidth = lineWidth;
    copy.tailThickness = tailThickness;
    copy.staticMargin = staticMargin;
    copy.wingStations = wingStations;
    copy.leastTailArm = leastTailArm;
    copy.carried = carried;
    return copy;
  }
}
