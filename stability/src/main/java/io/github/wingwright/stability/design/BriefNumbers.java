// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import io.github.wingwright.core.aerodynamics.SectionPolar;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.geometry.AirfoilSection;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.mass.MassItem;
import io.github.wingwright.core.mass.PrintedShell;

/** What a brief, a section and a family of bodies fix, as numbers: taken once, shared by every design made from them. */
final class BriefNumbers {
  private static final int OUTLINE_POINTS = 201;

  final double density;
  final double viscosity;
  final SectionPolar wingPolar;
  final SectionPolar tailPolar;
  final double sectionArea;
  final double sectionOutline;
  final double outlineCentroid;
  final PrintedShell wingShell;
  final PrintedShell bodyShell;
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

  BriefNumbers(DesignBrief brief, AirfoilSection section, BodyShape body) {
    density = brief.air().density().si();
    viscosity = brief.air().kinematicViscosity().si();
    wingPolar = brief.wingPolar();
    tailPolar = brief.tailPolar();
    sectionArea = section.area();
    sectionOutline = section.perimeter();
    outlineCentroid = PartGeometry.outlineCentroid(section, OUTLINE_POINTS);
    wingShell = brief.wingShell();
    bodyShell = brief.bodyShell();
    this.body = body;
    horizontal = brief.horizontalTail();
    vertical = brief.verticalTail();
    tailHalfSweep = PartGeometry.halfChordSweep(horizontal.aspectRatio(), horizontal.taperRatio());
    tailOutline = brief.tailSection().perimeter();
    tailForm = PartGeometry.TAIL_FORM.factor(brief.tailSection().maximumThickness(), PartGeometry.TAIL_THICKEST, 0.0, 0.0);
    plateDensity = brief.material().density().si() * brief.tailThickness().si();
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
