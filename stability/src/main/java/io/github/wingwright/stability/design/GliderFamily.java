// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.Objects;

/**
 * The gliders of one brief that share a wing section, a taper and a family of bodies, and differ in four numbers: what the
 * inner loop of a study calls.
 *
 * <pre>{@code
 * GliderFamily family = GliderFamily.of(design);
 * QuickEvaluation glider = family.evaluate(0.41, 5.5, 0.256, 0.022);   // span, aspect ratio, length and diameter
 * }</pre>
 *
 * <p>An evaluation goes all the way: wing, body, tails with their arms, masses, the wing's station or ballast for the wanted
 * margin, mass settled, drag, best glide, least sink and stall. It takes some 25 to 30 microseconds and allocates four small
 * objects, of which the result is one, whatever the searches inside take. What does not depend on the four numbers (shape
 * numbers of the section, loss of the lifting line against taper, what is carried) was taken once, when the family was made.
 *
 * <p>Immutable: many threads may share one.
 */
public final class GliderFamily {
  /** Beyond these no glider is built, and far beyond them its numbers leave what a double can hold [m]. */
  private static final double LEAST_SIZE = 1e-4;

  private static final double GREATEST_SIZE = 1e3;

  private final BriefNumbers numbers;
  private final double taperRatio;
  private final double sweep;
  private final InducedLoss loss;

  private GliderFamily(BriefNumbers numbers, double taperRatio, double sweep) {
    this.numbers = numbers;
    this.taperRatio = taperRatio;
    this.sweep = sweep;
    this.loss = new InducedLoss(taperRatio);
  }

  /**
   * The family of a wing and a fuselage.
   *
   * @param brief what is asked
   * @param wing gives section, taper ratio and sweep of the quarter-chord line; straight-tapered
   * @param fuselage gives the family of bodies
   * @return the family
   */
  public static GliderFamily of(DesignBrief brief, Wing wing, Fuselage fuselage) {
    Objects.requireNonNull(brief, "brief");
    Objects.requireNonNull(wing, "wing");
    Objects.requireNonNull(fuselage, "fuselage");
    Planform p = wing.planform();
    if (p.panels().size() != 1) {
      throw new IllegalArgumentException("wing of a family must be straight-tapered, had " + p.panels().size() + " panels");
    }
    BriefNumbers numbers = new BriefNumbers(brief, wing, fuselage.shape());
    return new GliderFamily(numbers, p.taperRatio(), p.sweepAt(0.25).si());
  }

  /**
   * The family of a design.
   *
   * @param design a design with a straight-tapered wing
   * @return the family of its sized wing and fuselage
   */
  public static GliderFamily of(Design design) {
    Objects.requireNonNull(design, "design");
    return of(design.brief(), design.sizedWing().value(), design.sizedFuselage().value());
  }

  /**
   * A complete evaluation of one member.
   *
   * @param span b [m], 0.1 mm to 1000 m
   * @param aspectRatio A, 1 to 60
   * @param length length of the fuselage [m], 0.1 mm to 1000 m
   * @param diameter its greatest diameter [m], 0.1 mm to 1000 m
   * @return what it weighs, where it balances and how it glides
   * @throws IllegalStateException if the fuselage is too short for the tails, or no ballast balances it
   */
  public QuickEvaluation evaluate(double span, double aspectRatio, double length, double diameter) {
    size(span, "span");
    size(length, "fuselage length");
    size(diameter, "fuselage diameter");
    if (!(aspectRatio >= InducedLoss.LEAST_ASPECT_RATIO && aspectRatio <= InducedLoss.GREATEST_ASPECT_RATIO)) {
      throw new IllegalArgumentException("aspect ratio must be 1 to 60, was " + aspectRatio);
    }
    if (!(length >= numbers.body.leastFinenessRatio() * diameter)) {
      throw new IllegalArgumentException(
          "fineness ratio of a " + numbers.body.name() + " must be at least " + numbers.body.leastFinenessRatio() + ", was "
              + length / diameter);
    }
    return QuickDesign.of(numbers, taperRatio, sweep, span, aspectRatio, length, diameter).evaluate(loss.at(aspectRatio));
  }

  /**
   * A complete evaluation of one member.
   *
   * @param span b
   * @param aspectRatio A, 1 to 60
   * @param length length of the fuselage
   * @param diameter its greatest diameter
   * @return what it weighs, where it balances and how it glides
   */
  public QuickEvaluation evaluate(Length span, double aspectRatio, Length length, Length diameter) {
    Objects.requireNonNull(span, "span");
    Objects.requireNonNull(length, "length");
    Objects.requireNonNull(diameter, "diameter");
    return evaluate(span.si(), aspectRatio, length.si(), diameter.si());
  }

  private static void size(double value, String name) {
    if (!(value >= LEAST_SIZE && value <= GREATEST_SIZE)) {
      throw new IllegalArgumentException(
          name + " must be 0.1 mm to 1000 m, was " + Length.MILLIMETRE.format(value, 4));
    }
  }

  @Override
  public String toString() {
    return "gliders of taper ratio " + NamedUnit.NUMBER.format(taperRatio, 4) + " with " + numbers.body.name() + " bodies";
  }
}
