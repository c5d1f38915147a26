// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.quantity.Volume;

/**
 * A way to reckon the pitching-moment slope of the fuselage.
 *
 * <p>Munk's body flies alone. Strips and factor know the wing: where it stands far forward most of the body lies in its
 * downwash, and they give a third to a fifth of Munk's couple. So Munk is the careful choice, and the usual one for a
 * first flight; with a long nose ahead of the wing the strips may give more.
 */
public enum FuselageMethod {
  /** Munk's couple with Lamb's exact apparent-mass factors of the ellipsoid of the same fineness. */
  MUNK("slender body with apparent mass") {
    @Override
    Step step(Context c) {
      Step fineness = Step.given("fineness ratio", "f", c.fuselage().finenessRatio(), Sources.AIRFRAME);
      Step e = Step.of(ApparentMass.ECCENTRICITY, fineness);
      Step factor =
          Step.of(ApparentMass.DIFFERENCE, Step.of(ApparentMass.ALONG, e), Step.of(ApparentMass.ACROSS, e));
      Step volume = Step.given("volume of the fuselage", "V", c.fuselage().volume(), Sources.AIRFRAME);
      return Step.of(FuselageMoment.MUNK, factor, volume, c.area(), c.chord());
    }
  },
  /** Multhopp's strips, with the upwash ahead of the wing and the downwash behind it. */
  STRIPS("strips in the wing's upwash and downwash") {
    @Override
    Step step(Context c) {
      Fuselage f = c.fuselage();
      Wing w = c.wing();
      double root = w.planform().rootChord().si();
      Step integral =
          Step.solution(
              "strip integral",
              "I",
              Volume.CUBIC_METRE,
              "midpoint rule, 60 strips ahead of the wing and 60 behind",
              "I = ∫w²·∂ε_u/∂α dx",
              v -> c.stripIntegral(f, w, root, v[0], v[1], FuselageMoment.STRIPS_PER_PART),
              v -> v[2] - c.stripIntegral(f, w, root, v[0], v[1], 8 * FuselageMoment.STRIPS_PER_PART),
              Sources.MULTHOPP,
              c.farDownwash(),
              c.downwash());
      return Step.of(FuselageMoment.STRIPS, integral, c.area(), c.chord());
    }
  },
  /** The fuselage factor of Gilruth and White. */
  FACTOR("fuselage factor") {
    @Override
    Step step(Context c) {
      Fuselage f = c.fuselage();
      Step length = Step.given("length of the fuselage", "L", f.length(), Sources.AIRFRAME);
      Step width = Step.given("greatest width of the fuselage", "w", f.diameter(), Sources.AIRFRAME);
      Step place =
          Step.of(
              FuselageMoment.PLACE,
              Step.given("root leading edge behind the nose", "x", c.wing().placement().x(), Sources.AIRFRAME),
              Step.given("root chord of the wing", "c_r", c.wing().planform().rootChord(), Sources.AIRFRAME),
              length);
      Step factor =
          Step.solution(
              "fuselage factor",
              "K_f",
              NamedUnit.PER_RADIAN,
              "straight lines between tabulated points",
              "K_f = table(p)",
              v -> FuselageMoment.factor(v[0]),
              v -> v[1] - FuselageMoment.factor(v[0]),
              Sources.GILRUTH_WHITE,
              place);
      return Step.of(FuselageMoment.FACTOR, factor, width, length, c.area(), c.chord());
    }
  };

  private final String words;

  FuselageMethod(String words) {
    this.words = words;
  }

  /**
   * The method in words.
   *
   * @return for example {@code "slender body with apparent mass"}
   */
  public String words() {
    return words;
  }

  abstract Step step(Context context);

  /** What the methods work from: the shapes, and the numbers that earlier steps gave. */
  record Context(
      Fuselage fuselage,
      Wing wing,
      Step area,
      Step chord,
      Step farDownwash,
      Step downwash,
      double tailArm) {
    double stripIntegral(Fuselage f, Wing w, double rootChord, double farDownwash, double downwash, int strips) {
      double toTail = tailArm - 0.75 * rootChord;
      return FuselageMoment.stripIntegral(
          f.shape(),
          f.length().si(),
          f.diameter().si(),
          w.placement().x().si(),
          rootChord,
          0.5 * w.planform().span().si(),
          farDownwash,
          1.0 - downwash,
          toTail > 0.0 ? toTail : Double.MAX_VALUE,
          strips);
    }
  }
}
