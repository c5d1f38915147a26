// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import io.github.wingwright.core.aerodynamics.SectionPolar;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.geometry.AirfoilSection;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.mass.MassItem;

/** What a brief, a section and a family of bodies fix, as numbers: taken once, shared by every design made from them. */
final class BriefNumbers {
  final double density;
  final double viscosity;
  final SectionPolar wingPolar;
  final SectionPolar tailPolar;
  final WingSkin wingSkin;
  final double lowest;
  final double dihedral;
  final double material;
  final double bodyWall;
  final double slotWidth;
  final BodyShape body;
  final TailBrief horizontal;
  final TailBrief vertical;
  final double tailHalfSweep;
  final double tailOutline;
  final double tailForm;
  final double plateDensity;
  final double carriedMass;
  final double carriedMoment;
  final double wanted;
  final Interval stations;
  final double leastArm;

  BriefNumbers(DesignBrief brief, Wing wing, BodyShape body) {
    AirfoilSection section = wing.section();
    density = brief.air().density().si();
    viscosity = brief.air().kinematicViscosity().si();
    wingPolar = brief.wingPolar();
    tailPolar = brief.tailPolar();
    wingSkin = WingSkin.of(brief, section, wing.planform());
    lowest = PartGeometry.lowest(section);
    dihedral = wing.planform().panels().get(0).dihedral().tangent();
    material = brief.material().density().si();
    bodyWall = brief.bodyShell().wallThickness().si();
    slotWidth = brief.tailThickness().si() + 2.0 * BodyFittings.PLAY;
    this.body = body;
    horizontal = brief.horizontalTail();
    vertical = brief.verticalTail();
    tailHalfSweep = PartGeometry.halfChordSweep(horizontal.aspectRatio(), horizontal.taperRatio());
    tailOutline = brief.tailSection().perimeter();
    tailForm = PartGeometry.TAIL_FORM.factor(brief.tailSection().maximumThickness(), PartGeometry.TAIL_THICKEST, 0.0, 0.0);
    plateDensity = material * brief.tailThickness().si();
    double mass = 0.0;
    double moment = 0.0;
    for (MassItem item : brief.carried()) {
      mass += item.mass().si();
      moment += item.mass().si() * item.centreOfGravity().x().si();
    }
    carriedMass = mass;
    carriedMoment = moment;
    wanted = brief.staticMargin();
    stations = brief.wingStations();
    leastArm = brief.leastTailArm().si();
  }
}
