// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import java.io.Serializable;
import org.jspecify.annotations.Nullable;

/**
 * One part of a body of revolution along its axis: an end, a fairing or a straight piece. All lengths are multiples of the
 * body's diameter, so each part has its integrals as plain numbers, worked out once.
 *
 * @param name what it is
 * @param profile its outline, null for a straight piece
 * @param reversed whether the profile's tip points aft
 * @param fineness length over diameter of the body; zero for the piece that takes up what length is left
 * @param stretches whether it is that piece
 * @param ratio diameter of a straight piece over that of the body
 * @param fullness volume over π/4·d² times its length
 * @param volumeCentroid distance from its fore end over its length
 * @param areaRatio curved surface over π/4·d², of a part of fixed length
 * @param surfaceCentroid distance from its fore end over its length
 * @param sideFullness side view over d times its length
 */
record BodyPart(
    String name,
    @Nullable EndProfile profile,
    boolean reversed,
    double fineness,
    boolean stretches,
    double ratio,
    double fullness,
    double volumeCentroid,
    double areaRatio,
    double surfaceCentroid,
    double sideFullness)
    implements Serializable {
  private static final Source CHOICE = Source.taken("proportion of the chosen body shape");

  static BodyPart nose(EndProfile profile, double fineness, String where) {
    double f = profile.checked(fineness, where);
    return new BodyPart(
        where + " (" + profile + ")",
        profile,
        false,
        f,
        false,
        1.0,
        profile.fullness(f),
        profile.volumeCentroid(f),
        profile.curvedArea(f),
        profile.surfaceCentroid(f),
        profile.sideFullness(f));
  }

  static BodyPart tail(EndProfile profile, double fineness, String where) {
    BodyPart fore = nose(profile, fineness, where);
    return new BodyPart(
        fore.name,
        profile,
        true,
        fore.fineness,
        false,
        1.0,
        fore.fullness,
        1.0 - fore.volumeCentroid,
        fore.areaRatio,
        1.0 - fore.surfaceCentroid,
        fore.sideFullness);
  }

  static BodyPart straight(String name, double fineness, double ratio) {
    return new BodyPart(
        name, null, false, fineness, false, ratio, ratio * ratio, 0.5, 4.0 * ratio * fineness, 0.5, ratio);
  }

  static BodyPart stretching(String name, double ratio) {
    return new BodyPart(name, null, false, 0.0, true, ratio, ratio * ratio, 0.5, 0.0, 0.5, ratio);
  }

  /** How the fullness comes about: that of the profile, or the square of the ratio of a straight piece. */
  Step fullnessStep() {
    return profile == null
        ? Step.given("fullness of the " + name, "c", fullness, CHOICE)
        : profile.fullnessStep(fineness);
  }

  /** How the area ratio of a part of fixed length comes about. */
  Step areaStep() {
    return profile == null
        ? Step.given("area ratio of the " + name, "s", areaRatio, CHOICE)
        : profile.areaStep(fineness);
  }

  /** Length; {@code left} is what the parts of fixed length leave. */
  double length(double diameter, double left) {
    return stretches ? left : fineness * diameter;
  }

  double area(double diameter, double length) {
    return stretches
        ? AssembledBody.straightArea(diameter, ratio, length)
        : AssembledBody.partArea(diameter, areaRatio);
  }

  /** Radius over half the diameter of the body, at a part of the length from the fore end. */
  double radius(double t) {
    if (profile == null) {
      return ratio;
    }
    return profile.radius(reversed ? 1.0 - t : t, fineness);
  }
}
