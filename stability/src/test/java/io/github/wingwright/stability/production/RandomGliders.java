// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.production;

import io.github.wingwright.core.aerodynamics.EstimatedPolar;
import io.github.wingwright.core.atmosphere.Atmosphere;
import io.github.wingwright.core.geometry.AirfoilSection;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.EndProfile;
import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.manufacture.BuildVolume;
import io.github.wingwright.core.mass.MassItem;
import io.github.wingwright.core.mass.Material;
import io.github.wingwright.core.mass.Materials;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.core.sizing.Considerations;
import io.github.wingwright.core.sizing.FuselageSizing;
import io.github.wingwright.core.sizing.WingSizing;
import io.github.wingwright.stability.design.Briefs;
import io.github.wingwright.stability.design.DesignBrief;
import io.github.wingwright.stability.design.TailBrief;
import java.util.List;
import java.util.Random;

/** Briefs, machines and tolerances drawn at random from all that the loop can size: the same seed draws the same. */
final class RandomGliders {
  private final Random random;

  RandomGliders(long seed) {
    random = new Random(seed);
  }

  private double between(double low, double high) {
    return low + random.nextDouble() * (high - low);
  }

  private double magnitude(double low, double high) {
    return Math.exp(between(Math.log(low), Math.log(high)));
  }

  private <T> T oneOf(List<T> all) {
    return all.get(random.nextInt(all.size()));
  }

  DesignBrief brief() {
    double span = magnitude(150, 1500);
    AirfoilSection section = Briefs.lens(between(0.03, 0.13), between(0.0, 0.06));
    AirfoilSection plate = Briefs.lens(0.02, 0.0);
    WingSizing wing = WingSizing.forSpan(Length.millimetres(span))
        .aspectRatio(between(4, 14))
        .taperRatio(between(0.3, 1.0))
        .quarterChordSweep(Angle.degrees(between(-10, 20)))
        .dihedral(Angle.degrees(between(0, 20)))
        .washout(Angle.degrees(between(0, 4)))
        .section(section);
    double length = span * between(0.55, 1.0);
    Length diameter = Length.millimetres(length * between(0.04, 0.1));
    BodyShape shape = shape();
    Material material = oneOf(List.of(Materials.FOAMING_PLA, Materials.PLA));
    return DesignBrief.named("drawn")
        .air(Atmosphere.standard().at(Length.metres(between(0, 1500))))
        .thrown(Speed.metresPerSecond(between(5, 12)), Length.metres(1.7))
        .wing(wing)
        .wingPolar(EstimatedPolar.of(section))
        .fuselage(w -> FuselageSizing.of(shape)
            .considering(Considerations.lengthAtMost(Length.metres(3)))
            .length(Length.millimetres(length))
            .diameter(diameter))
        .tails(
            plate,
            EstimatedPolar.of(plate),
            new TailBrief(between(0.35, 0.6), between(2.5, 5), between(0.5, 1)),
            new TailBrief(between(0.02, 0.045), between(1, 2), between(0.4, 1)))
        .material(material)
        .lineWidth(Length.millimetres(between(0.3, 0.8)))
        .wingWalls(1 + random.nextInt(2), random.nextBoolean() ? 0.0 : between(0.02, 0.2))
        .bodyWalls(1 + random.nextInt(3))
        .tailThickness(Length.millimetres(between(0.6, 2)))
        .carrying(MassItem.of(
            "nose", Mass.grams(magnitude(0.05, 0.6) * span * span * 1e-4),
            Placement.at(Length.millimetres(0.05 * length), Length.ZERO)));
  }

  private BodyShape shape() {
    EndProfile nose = oneOf(List.of(
        EndProfile.hemisphere(), EndProfile.halfEllipsoid(), EndProfile.tangentOgive(), EndProfile.cone(),
        EndProfile.power(0.6), EndProfile.parabolic(0.5), EndProfile.haack(0.0)));
    EndProfile tail = oneOf(List.of(
        EndProfile.hemisphere(), EndProfile.cone(), EndProfile.boatTail(between(0.2, 0.8)), EndProfile.tangentOgive(),
        EndProfile.haack(1.0 / 3.0)));
    double noseFineness = nose.equals(EndProfile.hemisphere()) ? 0.5 : between(0.8, 3);
    double tailFineness = tail.equals(EndProfile.hemisphere()) ? 0.5 : between(0.8, 4);
    BodyShape shape = switch (random.nextInt(5)) {
      case 0 -> BodyShape.capsule();
      case 1 -> BodyShape.noseCylinderCone(between(0.8, 3), between(0.8, 4));
      case 2 -> BodyShape.podAndBoom(EndProfile.tangentOgive(), between(1, 2), between(4, 6), between(0.5, 2), between(0.3, 0.6));
      default -> BodyShape.of(nose, noseFineness, tail, tailFineness);
    };
    return random.nextInt(4) == 0 ? shape.upswept(3, Angle.degrees(between(2, 8)), 0.5) : shape;
  }

  BuildVolume machine() {
    Length bed = Length.millimetres(magnitude(100, 450));
    Length height = Length.millimetres(magnitude(100, 450));
    return random.nextInt(3) == 0
        ? BuildVolume.cylinder(bed, height)
        : BuildVolume.box(bed, bed.times(between(0.7, 1.0)), height);
  }

  Length tolerance() {
    return Length.millimetres(magnitude(0.005, 2));
  }
}
