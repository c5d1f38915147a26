// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Volume;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A body of revolution put together from parts along its axis: a nose, straight pieces, fairings, a tail. All parts but one
 * keep their proportions to the diameter; the one straight piece that is left takes up what length remains.
 *
 * <pre>{@code
 * V = Σ π/4·d²·c_i·n_i        S_wet = Σ π/4·d²·s_i + π·β·d·n        n_i = f_i·d,   n = L − Σ n_i
 * }</pre>
 *
 * <p>with the fullness c_i and the area ratio s_i of each part, plain numbers that are worked out once when the family is
 * made. A flat base, as of a boat-tail, is not counted in the wetted area.
 */
public final class AssembledBody implements BodyShape, Serializable {
  private static final long serialVersionUID = 1L;
  private static final Source CHOICE = Source.taken("proportion of the chosen body shape");

  /** Length of a part that keeps its proportion. */
  public static final Formula PART_LENGTH =
      Formula.named("length of the part")
          .gives("n_i", Length.METRE)
          .as("f_i·d")
          .where("f_i", "length over diameter", 0, 100)
          .where("d", "greatest diameter", Length.METRE, 0.001, 10)
          .from(Source.DEFINITION)
          .computedBy(AssembledBody::partLength);

  /** Length of the straight piece that takes up what is left. */
  public static final Formula STRAIGHT_LENGTH =
      Formula.named("length of the straight piece")
          .gives("n", Length.METRE)
          .as("L − f·d")
          .where("L", "body length", Length.METRE, 0.01, 100)
          .where("f", "length of all other parts over diameter", 0, 100)
          .where("d", "greatest diameter", Length.METRE, 0.001, 10)
          .from(Source.DEFINITION)
          .computedBy(AssembledBody::straightLength);

  /** Volume of a part. */
  public static final Formula PART_VOLUME =
      Formula.named("volume of the part")
          .gives("V_i", Volume.CUBIC_METRE)
          .as("π/4·d²·c_i·n_i")
          .where("d", "greatest diameter", Length.METRE, 0.001, 10)
          .where("c_i", "fullness", 0, 1)
          .where("n_i", "length of the part", Length.METRE, 0, 100)
          .from(Source.DEFINITION)
          .computedBy(AssembledBody::partVolume);

  /** Curved surface of a part that keeps its proportion. */
  public static final Formula PART_AREA =
      Formula.named("surface of the part")
          .gives("S_i", Area.SQUARE_METRE)
          .as("π/4·d²·s_i")
          .where("d", "greatest diameter", Length.METRE, 0.001, 10)
          .where("s_i", "surface over the area of the greatest section", 0, 400)
          .from(Source.DEFINITION)
          .computedBy(AssembledBody::partArea);

  /** Curved surface of the straight piece. */
  public static final Formula STRAIGHT_AREA =
      Formula.named("surface of the straight piece")
          .gives("S_i", Area.SQUARE_METRE)
          .as("π·d·β·n")
          .where("d", "greatest diameter", Length.METRE, 0.001, 10)
          .where("β", "its diameter over the greatest", 0, 1)
          .where("n", "its length", Length.METRE, 0, 100)
          .from(Source.DEFINITION)
          .computedBy(AssembledBody::straightArea);

  private final String name;
  private final BodyPart[] parts;
  private final double fixed;

  private AssembledBody(String name, BodyPart... parts) {
    this.name = name;
    this.parts = parts;
    double sum = 0.0;
    for (BodyPart part : parts) {
      sum += part.fineness();
    }
    this.fixed = sum;
  }

  static AssembledBody of(EndProfile nose, double noseFineness, EndProfile tail, double tailFineness) {
    checkNose(nose);
    Objects.requireNonNull(tail, "tail");
    return new AssembledBody(
        nose + ", cylinder, " + tail,
        BodyPart.nose(nose, noseFineness, "nose"),
        BodyPart.stretching("cylinder", 1.0),
        BodyPart.tail(tail, tailFineness, "tail"));
  }

  static AssembledBody podAndBoom(
      EndProfile nose, double noseFineness, double podFineness, double fairingFineness, double boomRatio) {
    checkNose(nose);
    Door.within(boomRatio, 0.001, 0.999, "diameter of the boom over that of the pod");
    nose.checked(noseFineness, "nose");
    EndProfile fairing = EndProfile.boatTail(boomRatio);
    fairing.checked(fairingFineness, "fairing");
    Door.within(podFineness, 0.0, 100.0, "pod fineness");
    double cylinder = podFineness - noseFineness - fairingFineness;
    if (!(cylinder >= 0.0)) {
      throw new IllegalArgumentException(
          "pod fineness must be at least that of its nose and its fairing together, "
              + (noseFineness + fairingFineness)
              + ", was "
              + podFineness);
    }
    return new AssembledBody(
        "pod and boom",
        BodyPart.nose(nose, noseFineness, "nose"),
        BodyPart.straight("cylinder of the pod", cylinder, 1.0),
        BodyPart.tail(fairing, fairingFineness, "fairing"),
        BodyPart.stretching("boom", boomRatio));
  }

  static void checkNose(EndProfile nose) {
    Objects.requireNonNull(nose, "nose");
    if (nose.tipRatio() > 0.0) {
      throw new IllegalArgumentException("a nose must come to a point or a round tip, was " + nose);
    }
  }

  /**
   * Length of a part that keeps its proportion.
   *
   * @param fineness length over diameter f_i
   * @param diameter greatest diameter d [m]
   * @return n_i = f_i·d [m]
   */
  public static double partLength(double fineness, double diameter) {
    return fineness * diameter;
  }

  /**
   * Length of the straight piece that takes up what is left.
   *
   * @param length body length L [m]
   * @param fineness length of all other parts over diameter f
   * @param diameter greatest diameter d [m]
   * @return n = L − f·d [m]
   */
  public static double straightLength(double length, double fineness, double diameter) {
    return length - fineness * diameter;
  }

  /**
   * Volume of a part.
   *
   * @param diameter greatest diameter d [m]
   * @param fullness volume over that of a cylinder of diameter d and the same length c_i
   * @param length length of the part n_i [m]
   * @return V_i = π/4·d²·c_i·n_i [m³]
   */
  public static double partVolume(double diameter, double fullness, double length) {
    return 0.25 * Math.PI * diameter * diameter * fullness * length;
  }

  /**
   * Curved surface of a part that keeps its proportion.
   *
   * @param diameter greatest diameter d [m]
   * @param ratio surface over the area of the greatest section s_i
   * @return S_i = π/4·d²·s_i [m²]
   */
  public static double partArea(double diameter, double ratio) {
    return 0.25 * Math.PI * diameter * diameter * ratio;
  }

  /**
   * Curved surface of the straight piece.
   *
   * @param diameter greatest diameter d [m]
   * @param ratio its diameter over the greatest β
   * @param length its length n [m]
   * @return S_i = π·d·β·n [m²]
   */
  public static double straightArea(double diameter, double ratio, double length) {
    return Math.PI * diameter * ratio * length;
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public double leastFinenessRatio() {
    return fixed;
  }

  @Override
  public double volume(double length, double diameter) {
    double left = straightLength(length, fixed, diameter);
    double sum = 0.0;
    for (BodyPart part : parts) {
      sum += partVolume(diameter, part.fullness(), part.length(diameter, left));
    }
    return sum;
  }

  @Override
  public double wettedArea(double length, double diameter) {
    double left = straightLength(length, fixed, diameter);
    double sum = 0.0;
    for (BodyPart part : parts) {
      sum += part.area(diameter, left);
    }
    return sum;
  }

  @Override
  public double sideArea(double length, double diameter) {
    double left = straightLength(length, fixed, diameter);
    double sum = 0.0;
    for (BodyPart part : parts) {
      sum += part.sideFullness() * diameter * part.length(diameter, left);
    }
    return sum;
  }

  @Override
  public double volumeCentroid(double length, double diameter) {
    double left = straightLength(length, fixed, diameter);
    double at = 0.0;
    double sum = 0.0;
    double moment = 0.0;
    for (BodyPart part : parts) {
      double n = part.length(diameter, left);
      double volume = part.fullness() * n;
      sum += volume;
      moment += volume * (at + part.volumeCentroid() * n);
      at += n;
    }
    return moment / sum;
  }

  @Override
  public double surfaceCentroid(double length, double diameter) {
    double left = straightLength(length, fixed, diameter);
    double at = 0.0;
    double sum = 0.0;
    double moment = 0.0;
    for (BodyPart part : parts) {
      double n = part.length(diameter, left);
      double area = part.area(diameter, left);
      sum += area;
      moment += area * (at + part.surfaceCentroid() * n);
      at += n;
    }
    return moment / sum;
  }

  /** Every body begins with its nose, and no part is thicker than the nose at its base. */
  @Override
  public double greatestSection(double length, double diameter) {
    return parts[0].fineness() * diameter;
  }

  @Override
  public double radius(double x, double length, double diameter) {
    double left = straightLength(length, fixed, diameter);
    double at = 0.0;
    for (int i = 0; i < parts.length; i++) {
      double n = parts[i].length(diameter, left);
      if (n > 0.0 && (x <= at + n || i == parts.length - 1)) {
        return 0.5 * diameter * parts[i].radius(Math.min(1.0, Math.max(0.0, (x - at) / n)));
      }
      at += n;
    }
    return 0.5 * diameter * parts[parts.length - 1].radius(1.0);
  }

  @Override
  public double relativeError() {
    return EndProfile.QUADRATURE_ERROR;
  }

  @Override
  public Step volumeStep(Step length, Step diameter) {
    List<Step> terms = new ArrayList<>();
    for (BodyPart part : parts) {
      Step fullness = part.fullnessStep();
      terms.add(
          Step.of("volume of the " + part.name(), "V_i", PART_VOLUME, diameter, fullness, lengthStep(part, length, diameter)));
    }
    return Step.sum("volume", "V", terms);
  }

  @Override
  public Step wettedAreaStep(Step length, Step diameter) {
    List<Step> terms = new ArrayList<>();
    for (BodyPart part : parts) {
      String what = "surface of the " + part.name();
      if (part.stretches()) {
        Step ratio = Step.given("diameter of the " + part.name() + " over the greatest", "β", part.ratio(), CHOICE);
        terms.add(Step.of(what, "S_i", STRAIGHT_AREA, diameter, ratio, lengthStep(part, length, diameter)));
      } else {
        terms.add(Step.of(what, "S_i", PART_AREA, diameter, part.areaStep()));
      }
    }
    return Step.sum("wetted area", "S_wet", terms);
  }

  private Step lengthStep(BodyPart part, Step length, Step diameter) {
    String what = "length of the " + part.name();
    if (part.stretches()) {
      Step rest = Step.given("length of all other parts over diameter", "f", fixed, CHOICE);
      return Step.of(what, "n", STRAIGHT_LENGTH, length, rest, diameter);
    }
    Step fineness = Step.given(what + " over diameter", "f_i", part.fineness(), CHOICE);
    return Step.of(what, "n_i", PART_LENGTH, fineness, diameter);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof AssembledBody that && java.util.Arrays.equals(parts, that.parts);
  }

  @Override
  public int hashCode() {
    return java.util.Arrays.hashCode(parts);
  }

  @Override
  public String toString() {
    return name;
  }
}
