// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.basis.Consideration;
import io.github.wingwright.core.basis.Decision;
import io.github.wingwright.core.basis.FeasibleRegion;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Strength;
import io.github.wingwright.core.basis.Weighed;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.FlexuralRigidity;
import io.github.wingwright.core.quantity.Force;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.Pressure;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.core.quantity.Volume;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleFunction;

/**
 * Random wishes for a fuselage over length and diameter, of all strengths and decisions, each of which can be asked for
 * more mildly: the tests of the region as a whole draw from here.
 */
final class RandomBriefs {
  static final Interval LENGTHS = Interval.between(0.06, 0.6);
  static final Interval DIAMETERS = Interval.between(0.003, 0.2);

  private static final BodyShell SHELL = ConsiderationsTest.PLA;
  private static final BodyShape[] SHAPES = {
    BodyShape.capsule(), BodyShape.prolateSpheroid(), BodyShape.noseCylinderCone(1.5, 2.5)
  };

  private RandomBriefs() {}

  /**
   * One wish.
   *
   * @param milder the same wish, milder by a ratio of 1 and more
   * @param weighed the wish as it stands in the brief
   */
  record Wish(DoubleFunction<Consideration> milder, Weighed weighed) {
    Weighed milderBy(double ratio) {
      return new Weighed(rated(milder.apply(ratio), weighed.consideration().strength()), weighed.decision());
    }

    @Override
    public String toString() {
      return weighed.toString();
    }
  }

  /**
   * A family of bodies and what is wished of it.
   *
   * @param shape the family
   * @param wishes from three wishes to ten, the last of them a target
   */
  record Brief(BodyShape shape, List<Wish> wishes) {
    List<Weighed> weighed() {
      return wishes.stream().map(Wish::weighed).toList();
    }

    FeasibleRegion region() {
      return region(weighed());
    }

    /** What is left of the family by wishes, through the public door. */
    FeasibleRegion region(List<Weighed> weighed) {
      FuselageSizing sizing = FuselageSizing.of(shape);
      for (Weighed one : weighed) {
        Consideration c = one.consideration();
        String reason = one.decision().reason();
        sizing =
            switch (one.decision().kind()) {
              case CHOSEN -> sizing.considering(c);
              case NOT_APPLICABLE -> sizing.settingAside(c, reason);
              case PROVISIONAL -> sizing.provisionally(c, reason);
            };
      }
      return sizing.region(LENGTHS, DIAMETERS);
    }
  }

  static Brief draw(Random random) {
    BodyShape shape = SHAPES[random.nextInt(SHAPES.length)];
    List<DoubleFunction<Consideration>> kinds = new ArrayList<>(kinds(random, shape));
    Collections.shuffle(kinds, random);
    List<Wish> wishes = new ArrayList<>();
    for (DoubleFunction<Consideration> kind : kinds.subList(0, 2 + random.nextInt(8))) {
      Strength strength = random.nextInt(3) == 0 ? Strength.GUIDELINE : Strength.LIMIT;
      int lot = random.nextInt(10);
      Decision decision =
          lot == 0 ? Decision.notApplicable("drawn so") : lot == 1 ? Decision.provisional("drawn again") : Decision.chosen();
      wishes.add(new Wish(kind, new Weighed(rated(kind.apply(1.0), strength), decision)));
    }
    wishes.add(target(0.01 + 0.05 * random.nextDouble()));
    return new Brief(shape, wishes);
  }

  private static Wish target(double diameter) {
    Consideration near = Considerations.diameterNear(Length.metres(diameter));
    return new Wish(ratio -> near, new Weighed(near, Decision.chosen()));
  }

  private static Consideration rated(Consideration one, Strength strength) {
    return switch (strength) {
      case TARGET -> one;
      case LIMIT -> Considerations.asLimit(one);
      case GUIDELINE -> Considerations.asGuideline(one);
    };
  }

  private static List<DoubleFunction<Consideration>> kinds(Random random, BodyShape shape) {
    double f = 3 + 7 * random.nextDouble();
    double span = 1.2 + random.nextDouble();
    double longest = 0.12 + 0.4 * random.nextDouble();
    double thickest = 0.02 + 0.06 * random.nextDouble();
    double thinnest = 0.008 + 0.03 * random.nextDouble();
    double arm = 0.03 + 0.2 * random.nextDouble();
    double volume = 5e-6 + 200e-6 * random.nextDouble();
    double stiffness = 0.2 + 20 * random.nextDouble();
    double load = 0.1 + 5 * random.nextDouble();
    double speed = 4 + 10 * random.nextDouble();
    double wing = 0.003 + 0.012 * random.nextDouble();
    double chord = 0.03 + 0.12 * random.nextDouble();
    double closure = 6 + 14 * random.nextDouble();
    double bed = 0.12 + 0.2 * random.nextDouble();
    double hand = 0.08 + 0.25 * random.nextDouble();
    double nose = 0.001 + 0.004 * random.nextDouble();
    return List.of(
        m -> Considerations.finenessWithin(f / m, f * span * m),
        m -> Considerations.lengthAtMost(Length.metres(longest * m)),
        m -> Considerations.lengthAtMost(Length.metres(0.45 * longest * m), 3, Length.metres(0.05 * longest)),
        m -> Considerations.lengthAtLeast(Length.metres(0.6 * longest / m)),
        m -> Considerations.diameterAtMost(Length.metres(thickest * m)),
        m -> Considerations.diameterAtLeast(Length.metres(thinnest / m)),
        m -> Considerations.tailArmAtLeast(Length.metres(arm / m), 0.4),
        m -> Considerations.enclosing(Volume.cubicMetres(volume / m), new PackingFraction(0.6)).on(shape),
        m -> Considerations.bendingStiffnessAtLeast(FlexuralRigidity.newtonSquareMetres(stiffness / m), SHELL),
        m -> Considerations.tailDeflectionAtMost(Force.newtons(load / m), 0.6, 0.02, SHELL),
        m ->
            NoseStrength.survivesNoseImpact(
                Mass.grams(40 / m), Speed.metresPerSecond(speed), Length.millimetres(2), SHELL, Pressure.pascals(4e7)),
        m -> NoseStrength.noseRadiusAtLeast(Length.metres(nose / m)).on(shape),
        m -> BodyLayout.carriesWingThrough(Length.metres(wing / m), 0.2, Length.ZERO),
        m -> BodyLayout.carriesSaddle(Length.metres(chord / m), Length.ZERO, 0.8).on(shape),
        m -> BodyLayout.afterbodyClosesWithin(Angle.degrees(Math.min(80, closure * m))).on(shape),
        m ->
            BuildSpace.fitsInto(
                Length.metres(bed * m), Length.metres(0.8 * bed * m), Length.metres(bed * m), 1, Length.ZERO),
        m -> new OwnMargin("a hand goes around it", (length, diameter) -> 1 - Math.PI * diameter / (hand * m)));
  }

  /** The worst margin of all that binds. */
  static double worst(List<Weighed> all, double length, double diameter) {
    double worst = Double.MAX_VALUE;
    for (Weighed one : all) {
      worst = one.binds() ? Math.min(worst, one.consideration().margin(length, diameter)) : worst;
    }
    return worst;
  }
}
