// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.basis.Advised;
import io.github.wingwright.core.basis.Consideration;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Strength;
import io.github.wingwright.core.basis.Wording;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.FlexuralRigidity;
import io.github.wingwright.core.quantity.Force;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.core.quantity.Volume;
import java.util.Objects;

/**
 * The considerations on a fuselage that come with the library, each with the strength that it usually has.
 *
 * <p>All have closed forms, so a range of eight of them costs about a microsecond. Another strength is a matter of
 * {@link #asLimit} and {@link #asGuideline}; another consideration altogether is a matter of
 * implementing {@link Consideration}.
 */
public final class Considerations {
  private static final Source TAPERED_TUBE =
      Source.library("the body as a tube of even wall that gets thinner as its outline does");
  private static final Source SLENDER_TUBE =
      Source.library("the body as a tube of even wall, its greatest section all along the free part");

  private Considerations() {}

  /**
   * What the machine can make in one piece: a limit on the length.
   *
   * @param longestPart longest part, straight or on the diagonal, positive
   * @return length ≤ longest part
   */
  public static Consideration lengthAtMost(Length longestPart) {
    Door.positive(longestPart, "longest part");
    return new LengthWithin(
        Wording.of("length at most ").and(longestPart), Strength.LIMIT, Source.BRIEF, Interval.atMost(longestPart.si()),
        Step.given("greatest length", "L_max", longestPart, Source.BRIEF));
  }

  /**
   * What the machine can make in several pieces: a limit on the length.
   *
   * @param longestPart longest piece, positive
   * @param segments greatest number of pieces, at least 1
   * @param joint length by which two pieces overlap in a joint, not negative
   * @return length ≤ segments·part − (segments − 1)·joint
   */
  public static Consideration lengthAtMost(Length longestPart, int segments, Length joint) {
    Door.positive(longestPart, "longest part");
    Door.notNegative(joint, "overlap of a joint");
    if (segments < 1) {
      throw new IllegalArgumentException("segments must be at least 1, was " + segments);
    }
    double longest = segments * longestPart.si() - (segments - 1) * joint.si();
    if (!(longest > 0.0)) {
      throw new IllegalArgumentException(
          "overlap of a joint must leave something of a part of " + longestPart + ", was " + joint);
    }
    return new LengthWithin(
        segments == 1
            ? Wording.of("length at most ").and(longestPart).and(" in one piece")
            : Wording.of("length at most ")
                .and(Length.metres(longest))
                .and(" in " + segments + " segments of ")
                .and(longestPart),
        Strength.LIMIT,
        Source.BRIEF,
        Interval.atMost(longest),
        Step.of(
            MarginFormulas.SEGMENTED_LENGTH,
            Step.given("pieces", "n", segments, Source.BRIEF),
            Step.given("longest part", "p", longestPart, Source.BRIEF),
            Step.given("overlap of a joint", "j", joint, Source.BRIEF)));
  }

  /**
   * A least length: a limit.
   *
   * @param least least length, positive
   * @return length ≥ least
   */
  public static Consideration lengthAtLeast(Length least) {
    Door.positive(least, "least length");
    return new LengthWithin(
        Wording.of("length at least ").and(least),
        Strength.LIMIT,
        Source.BRIEF,
        Interval.atLeast(least.si()),
        Step.given("least length", "L_min", least, Source.BRIEF));
  }

  /**
   * A fineness ratio: a guideline of the designer's own.
   *
   * @param least least length over diameter, positive
   * @param most greatest length over diameter, at least the least
   * @return least ≤ L/d ≤ most
   */
  public static Consideration finenessWithin(double least, double most) {
    return finenessWithin(least, most, Source.BRIEF);
  }

  /**
   * A fineness ratio: a guideline.
   *
   * @param least least length over diameter, positive
   * @param most greatest length over diameter, at least the least
   * @param source who says so
   * @return least ≤ L/d ≤ most
   */
  public static Consideration finenessWithin(double least, double most, Source source) {
    return fineness(least, most, "", source);
  }

  /**
   * The published fineness ratios for a context: a guideline.
   *
   * @param context what is held fixed
   * @return least ≤ L/d ≤ most
   */
  public static Consideration finenessFor(FinenessContext context) {
    Objects.requireNonNull(context, "context");
    return fineness(context.least(), context.most(), " (" + context.words() + ")", context.source());
  }

  private static Consideration fineness(double least, double most, String context, Source source) {
    Objects.requireNonNull(source, "source");
    Door.positive(least, "least fineness ratio");
    Door.positive(most, "greatest fineness ratio");
    if (least > most) {
      throw new IllegalArgumentException(
          "least fineness ratio must not exceed the greatest, was " + least + " and " + most);
    }
    Wording name = Wording.of("fineness ratio " + number(least) + " to " + number(most) + context);
    return new FinenessWithin(name, Strength.GUIDELINE, source, least, most);
  }

  /**
   * A diameter that goes with the wing it carries: a target.
   *
   * @param multiple how many times the thickness, positive
   * @param wingThickness greatest thickness of the wing, positive
   * @return diameter near multiple·thickness
   */
  public static Consideration diameterNear(double multiple, Length wingThickness) {
    Door.positive(multiple, "multiple of the wing's thickness");
    Door.positive(wingThickness, "thickness of the wing");
    Length diameter = wingThickness.times(multiple);
    return new DiameterNear(
        Wording.of("diameter near " + number(multiple) + " times the wing's thickness"),
        Source.COMMON_PRACTICE,
        diameter.si(),
        Step.of(
            MarginFormulas.WANTED_DIAMETER,
            Step.given("multiple of the thickness", "n", multiple, Source.COMMON_PRACTICE),
            Step.given("thickness of the wing", "t", wingThickness, Source.BRIEF)));
  }

  /**
   * A diameter to be near to: a target.
   *
   * @param diameter the diameter, positive
   * @return diameter near that
   */
  public static Consideration diameterNear(Length diameter) {
    Door.positive(diameter, "target diameter");
    return new DiameterNear(
        Wording.of("diameter near ").and(diameter),
        Source.BRIEF,
        diameter.si(),
        Step.given("diameter that is wanted", "d_0", diameter, Source.BRIEF));
  }

  /**
   * The thickest thing that must fit through: a limit.
   *
   * @param least least outer diameter, positive
   * @return diameter ≥ least
   */
  public static Consideration diameterAtLeast(Length least) {
    Door.positive(least, "least diameter");
    return new DiameterWithin(
        Wording.of("diameter at least ").and(least),
        Strength.LIMIT,
        Source.BRIEF,
        Interval.atLeast(least.si()),
        Step.given("least diameter", "d_min", least, Source.BRIEF));
  }

  /**
   * The greatest diameter that the machine, the box or the hand takes: a limit.
   *
   * @param most greatest outer diameter, positive
   * @return diameter ≤ most
   */
  public static Consideration diameterAtMost(Length most) {
    Door.positive(most, "greatest diameter");
    return new DiameterWithin(
        Wording.of("diameter at most ").and(most),
        Strength.LIMIT,
        Source.BRIEF,
        Interval.atMost(most.si()),
        Step.given("greatest diameter", "d_max", most, Source.BRIEF));
  }

  /**
   * What it carries: a limit on the volume inside.
   *
   * @param contents volume of the things, positive
   * @param packing how much of the space they really fill
   * @return volume of the body ≥ contents/packing
   */
  public static ShapeConsideration enclosing(Volume contents, PackingFraction packing) {
    Objects.requireNonNull(packing, "packing");
    Door.positive(contents, "volume of the contents");
    double needed = contents.si() / packing.value();
    Wording name = Wording.of("encloses ").and(contents).and(" " + packing);
    Step asked =
        Step.of(
            MarginFormulas.VOLUME_NEEDED,
            Step.given("volume of the contents", "V_c", contents, Source.BRIEF),
            Step.given("packing fraction", "φ", packing.value(), Source.BRIEF));
    return shape -> new Enclosing(name, Strength.LIMIT, Source.BRIEF, shape, needed, asked);
  }

  /**
   * A packing fraction.
   *
   * @param value the fraction, above 0 and at most 1
   * @return the fraction
   */
  public static PackingFraction packingFraction(double value) {
    return new PackingFraction(value);
  }

  /**
   * The tail arm that the length must give: a guideline, because a larger tail on a shorter arm does the same work.
   *
   * @param arm from the wing's quarter chord to the tail's, positive
   * @param outsideShare the part of the length ahead of the wing's quarter chord and behind the tail's, 0 to less than 1
   * @return (1 − share)·length ≥ arm
   */
  public static Consideration tailArmAtLeast(Length arm, double outsideShare) {
    Door.positive(arm, "tail arm");
    if (!(outsideShare >= 0.0 && outsideShare < 1.0)) {
      throw new IllegalArgumentException("share of the length outside the arm must be 0 to 1, was " + outsideShare);
    }
    return new LengthWithin(
        Wording.of("tail arm at least ")
            .and(arm)
            .and(" with " + number(100.0 * outsideShare) + " % of the length outside it"),
        Strength.GUIDELINE,
        Source.BRIEF,
        Interval.atLeast(arm.si() / (1.0 - outsideShare)),
        (length, diameter, unit) -> "relaxed to " + Advised.down((1.0 - outsideShare) * length, unit, 4),
        Step.of(
            MarginFormulas.LENGTH_FOR_ARM,
            Step.given("tail arm", "a", arm, Source.BRIEF),
            Step.given("share of the length outside the arm", "k", outsideShare, Source.BRIEF)));
  }

  /**
   * A bending stiffness that the body must not fall below: a limit.
   *
   * @param least least bending stiffness EI, positive
   * @param shell what the body is made of
   * @return EI of the ring ≥ least
   */
  public static Consideration bendingStiffnessAtLeast(FlexuralRigidity least, BodyShell shell) {
    Objects.requireNonNull(shell, "shell");
    Door.positive(least, "least bending stiffness");
    return new StiffnessFloor(
        Wording.of("bending stiffness at least ").and(least, 3),
        Strength.LIMIT,
        SLENDER_TUBE,
        least.si(),
        shell);
  }

  /**
   * The tail must not bend the body too far: a limit. A tail that has swung by 2 % of its arm has turned by 3 % of a
   * radian, 1.7°: as much as the whole usual decalage.
   *
   * @param load load at the tail, positive
   * @param freeShare the part of the length from the wing to the tail, above 0 to 1
   * @param deflection most that the tail may move, as a part of that, 0.001 to 0.1
   * @param shell what the body is made of
   * @return EI ≥ F·a²/(3·δ) with a = share·length
   */
  public static Consideration tailDeflectionAtMost(
      Force load, double freeShare, double deflection, BodyShell shell) {
    Door.positive(load, "load at the tail");
    Door.positive(freeShare, "share of the length from wing to tail");
    Door.within(freeShare, 0.0, 1.0, "share of the length from wing to tail");
    Door.within(deflection, 0.001, 0.1, "deflection");
    return new TailDeflection(
        Wording.of("tail moves at most " + number(100.0 * deflection) + " % of its arm under ").and(load, 3),
        Strength.LIMIT,
        SLENDER_TUBE,
        load.si(),
        freeShare,
        deflection,
        shell,
        shell.wall().si(),
        shell.modulus().si());
  }

  /**
   * The tail must not bend a body too far that gets thinner towards it: a limit. A pointed tail counts up to where the load
   * acts, and the thin end counts most.
   *
   * @param load load at the tail, positive
   * @param heldShare where the wing holds the body, as a share of the length
   * @param tailShare where the load acts, as a share of the length, behind that and ahead of a pointed end
   * @param deflection most that the tail may move, as a part of the length between the two, 0.001 to 0.1
   * @param shell what the body is made of
   * @return F/E·∫(x_t − x)²/I dx ≤ δ·(x_t − x_w)
   */
  public static ShapeConsideration tailMovesAtMost(
      Force load, double heldShare, double tailShare, double deflection, BodyShell shell) {
    Door.positive(load, "load at the tail");
    Door.within(tailShare, 0.0, 1.0, "place of the tail as a share of the length");
    if (!(heldShare >= 0.0 && heldShare < tailShare)) {
      throw new IllegalArgumentException("wing must hold the body ahead of the tail, was at " + heldShare + " of the length");
    }
    Door.within(deflection, 0.001, 0.1, "deflection");
    double wall = shell.wall().si();
    double modulus = shell.modulus().si();
    return shape ->
        new BodyMargin(
            Wording.of("tail moves at most " + number(100.0 * deflection) + " % of its arm under ").and(load, 3).and(", tapering"),
            Strength.LIMIT,
            TAPERED_TUBE,
            (length, diameter) ->
                deflection
                        / TaperedTail.movement(
                            shape, length, diameter, heldShare, tailShare, load.si(), wall, modulus)
                    - 1.0,
            (length, diameter, unit) ->
                "with "
                    + Advised.percentUp(
                        TaperedTail.movement(shape, length, diameter, heldShare, tailShare, load.si(), wall, modulus))
                    + " of movement")
            .reckonedBy(
                (length, diameter) ->
                    TaperedTail.marginStep(shape, length, diameter, load, heldShare, tailShare, deflection, shell));
  }

  /**
   * The load at the tail when the model leaves the hand: the load at the stall, times (V/V_s)².
   *
   * @param atStall load at the tail in flight at the stall speed
   * @param launch launch speed, positive
   * @param stall stall speed, positive
   * @return the load at launch
   */
  public static Force atLaunch(Force atStall, Speed launch, Speed stall) {
    Objects.requireNonNull(atStall, "at stall");
    Door.positive(launch, "launch speed");
    Door.positive(stall, "stall speed");
    double ratio = launch.dividedBy(stall);
    return atStall.times(ratio * ratio);
  }

  /**
   * The same consideration as a limit.
   *
   * @param consideration a consideration
   * @return it cannot be otherwise
   */
  public static Consideration asLimit(Consideration consideration) {
    Objects.requireNonNull(consideration, "consideration");
    return rated(consideration, Strength.LIMIT);
  }

  /**
   * The same consideration as a guideline.
   *
   * @param consideration a consideration
   * @return leaving it is allowed and has a price
   */
  public static Consideration asGuideline(Consideration consideration) {
    Objects.requireNonNull(consideration, "consideration");
    return rated(consideration, Strength.GUIDELINE);
  }

  private static Consideration rated(Consideration consideration, Strength strength) {
    if (consideration.strength() == Strength.TARGET) {
      throw new IllegalArgumentException("a target pulls and cannot bind, was \"" + consideration.name() + "\"");
    }
    return consideration instanceof Worded worded
        ? rated(worded.wording(), consideration, strength)
        : rated(Wording.of(consideration.name()), consideration, strength);
  }

  /** What a negotiation knows in closed form stays so. */
  private static Consideration rated(Wording name, Consideration consideration, Strength strength) {
    return consideration instanceof LengthWithin length
        ? new LengthWithin(name, strength, length.source(), length.lengths(), length.concession(), length.reckoning())
        : new Rated(name, consideration, strength);
  }

  /**
   * The same consideration in the designer's own words: in the units of a brief, or short enough for a picture.
   *
   * @param name what it is to be called
   * @param consideration a consideration
   * @return the consideration by that name
   */
  public static Consideration called(String name, Consideration consideration) {
    Objects.requireNonNull(consideration, "consideration");
    return rated(Wording.of(Door.said(name, "name of the consideration")), consideration, consideration.strength());
  }

  /**
   * The same consideration in the designer's own words, whatever the family.
   *
   * @param name what it is to be called
   * @param consideration a consideration that depends on the family of the body
   * @return the consideration by that name
   */
  public static ShapeConsideration called(String name, ShapeConsideration consideration) {
    Objects.requireNonNull(consideration, "consideration");
    Door.said(name, "name of the consideration");
    return shape -> called(name, consideration.on(shape));
  }

  static String number(double value) {
    return NamedUnit.NUMBER.format(value, 4);
  }
}
