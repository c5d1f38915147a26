// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.core.aerodynamics.SectionPolar;
import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What a pitch model is made of. A model copies it before it changes one field, so no two share it. */
final class PitchChoices {
  Airframe airframe;
  AircraftClass aircraftClass = AircraftClass.HAND_LAUNCHED_GLIDER;
  DownwashMethod downwashMethod = DownwashMethod.HANDBOOK;
  FuselageMethod fuselageMethod = FuselageMethod.MUNK;
  /** As given; else that of the class and the arrangement of the tails. */
  @Nullable Double givenEfficiency;
  double floatingFactor = 1.0;
  final List<Fuselage> nacelles = new ArrayList<>();
  Length propellerAhead = Length.ZERO;
  @Nullable Propeller propeller;
  Length centreOfGravityHeight = Length.ZERO;
  @Nullable Section wingSection;
  @Nullable Section tailSection;

  /** A section with the Reynolds number at which it works. */
  record Section(SectionPolar polar, double reynolds) {
    Section {
      Door.positive(reynolds, "Reynolds number");
    }
  }

  PitchChoices(Airframe airframe) {
    this.airframe = airframe;
  }

  PitchChoices(PitchChoices other) {
    airframe = other.airframe;
    aircraftClass = other.aircraftClass;
    downwashMethod = other.downwashMethod;
    fuselageMethod = other.fuselageMethod;
    givenEfficiency = other.givenEfficiency;
    floatingFactor = other.floatingFactor;
    nacelles.addAll(other.nacelles);
    propellerAhead = other.propellerAhead;
    propeller = other.propeller;
    centreOfGravityHeight = other.centreOfGravityHeight;
    wingSection = other.wingSection;
    tailSection = other.tailSection;
  }

  /** How the tails stand. */
  TailArrangement arrangement() {
    return TailArrangement.of(airframe);
  }

  double tailEfficiency() {
    return givenEfficiency != null ? givenEfficiency : arrangement().typicalTailEfficiency(aircraftClass);
  }

  /** Data of the wing's section, which trim cannot do without. */
  Section neededWingSection() {
    return needed(wingSection, "wing", "withWingSection(…)");
  }

  /** Data of the tail's section, which trim cannot do without. */
  Section neededTailSection() {
    return needed(tailSection, "horizontal tail", "withTailSection(…)");
  }

  private static Section needed(@Nullable Section section, String of, String call) {
    if (section == null) {
      throw new IllegalStateException(
          "trim needs data of the " + of + " section (its zero-lift angle cannot be guessed): give them by " + call);
    }
    return section;
  }
}
