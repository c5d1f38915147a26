// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.core.geometry.AirfoilSection;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What was asked of a tail so far. A specification copies it before it changes one field, so no two share it. */
final class TailChoices {
  final Tail.Role role;
  final Wing wing;
  AircraftClass aircraftClass = AircraftClass.HAND_LAUNCHED_GLIDER;
  TailArrangement arrangement = TailArrangement.CONVENTIONAL;
  @Nullable Length arm;
  @Nullable Length trailingEdge;
  @Nullable Area area;
  @Nullable Double coefficient;
  @Nullable Double aspectRatio;
  @Nullable Double taperRatio;
  @Nullable AirfoilSection section;
  Angle sweep = Angle.ZERO;
  Length height = Length.ZERO;
  final List<TailRequirement> requirements = new ArrayList<>();

  TailChoices(Tail.Role role, Wing wing) {
    this.role = role;
    this.wing = wing;
  }

  TailChoices(TailChoices other) {
    this(other.role, other.wing);
    aircraftClass = other.aircraftClass;
    arrangement = other.arrangement;
    arm = other.arm;
    trailingEdge = other.trailingEdge;
    area = other.area;
    coefficient = other.coefficient;
    aspectRatio = other.aspectRatio;
    taperRatio = other.taperRatio;
    section = other.section;
    sweep = other.sweep;
    height = other.height;
    requirements.addAll(other.requirements);
  }

  boolean isLevel() {
    return role == Tail.Role.HORIZONTAL;
  }

  String words() {
    return role.words();
  }
}
