// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.atmosphere.FlightCondition;
import io.github.wingwright.core.basis.Consideration;
import io.github.wingwright.core.basis.Decision;
import io.github.wingwright.core.basis.FeasibleRange;
import io.github.wingwright.core.basis.FeasibleRegion;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Price;
import io.github.wingwright.core.basis.Sized;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * The length and the diameter of a fuselage, negotiated between considerations.
 *
 * <p>A specification is immutable: each call returns a new one. It is complete as soon as the length is fixed or bounded;
 * then it can be asked what it leaves ({@link #diameterRange()}, {@link #lengthRange()}), and be closed by a choice: the
 * diameter of the designer ({@link #diameter}), the one nearest to the targets ({@link #nearestToTargets}), or the one of
 * least drag ({@link #leastDrag(DragArea)}).
 *
 * <p>Rules that a choice follows:
 *
 * <ul>
 *   <li>A length that was not fixed is the longest at which some diameter satisfies everything; only least drag looks for
 *       the length as well.
 *   <li>A choice outside a guideline is allowed: it carries a finding, and its price against the best body inside the
 *       guidelines at the same length (the one of best figure of merit, else of least drag, else of least skin).
 *   <li>Considerations that clash are a result and not an exception. The range is then empty and says who clashes, and the
 *       body is the least bad one: inside the limits if they leave anything, missing by the same ratio the two that clash
 *       most. {@link Sized#isFeasible()} is false and the findings say so.
 * </ul>
 */
public final class FuselageSizing {
  private final BodyShape shape;
  private final List<Asked> asked;
  private final Optional<Length> length;
  private final Pricing pricing;
  private final NamedUnit<Length> unit;
  private final Negotiation negotiation;

  private FuselageSizing(
      BodyShape shape,
      List<Asked> asked,
      Optional<Length> length,
      Pricing pricing,
      NamedUnit<Length> unit,
      Negotiation negotiation) {
    this.shape = shape;
    this.asked = List.copyOf(asked);
    this.length = length;
    this.pricing = pricing;
    this.unit = unit;
    this.negotiation = negotiation;
  }

  private static FuselageSizing of(
      BodyShape shape, List<Asked> asked, Optional<Length> length, Pricing pricing, NamedUnit<Length> unit) {
    Negotiation negotiation = new Negotiation(shape, asked.stream().map(Asked::weighed).toList(), unit);
    return new FuselageSizing(shape, asked, length, pricing, unit, negotiation);
  }

  /** With other things than considerations changed: what has been found of these stays. */
  private FuselageSizing with(Optional<Length> otherLength, Pricing otherPricing) {
    return new FuselageSizing(shape, asked, otherLength, otherPricing, unit, negotiation);
  }

  /**
   * Begins with a family of bodies and no consideration.
   *
   * @param shape family of the body
   * @return the specification
   */
  public static FuselageSizing of(BodyShape shape) {
    Objects.requireNonNull(shape, "shape");
    return of(shape, List.of(), Optional.empty(), Pricing.NONE, Length.MILLIMETRE);
  }

  /**
   * The same considerations on another family of bodies.
   *
   * @param other family of the body
   * @return the new specification
   */
  public FuselageSizing shapedAs(BodyShape other) {
    Objects.requireNonNull(other, "other");
    return of(other, asked.stream().map(a -> a.on(other)).toList(), length, pricing, unit);
  }

  /**
   * Adds considerations. One of a name that is there already takes its place.
   *
   * @param considerations what is considered; none adds nothing
   * @return the new specification
   */
  public FuselageSizing considering(Consideration... considerations) {
    Objects.requireNonNull(considerations, "considerations");
    return with(Arrays.stream(considerations).map(FuselageSizing::onAnyShape).toList(), Decision.chosen());
  }

  /**
   * Adds considerations that depend on the family of the body. One of a name that is there already takes its place.
   *
   * @param considerations what is considered; none adds nothing
   * @return the new specification
   */
  public FuselageSizing considering(ShapeConsideration... considerations) {
    Objects.requireNonNull(considerations, "considerations");
    return with(Arrays.asList(considerations), Decision.chosen());
  }

  /**
   * Sets a consideration aside: it stays on the sheet with the reason and takes no part.
   *
   * @param consideration one that was added, or a new one
   * @param because why it does not apply
   * @return the new specification
   * @throws IllegalArgumentException if no reason is given
   */
  public FuselageSizing settingAside(Consideration consideration, String because) {
    return settingAside(onAnyShape(consideration), because);
  }

  /**
   * Sets a consideration aside: it stays on the sheet with the reason and takes no part.
   *
   * @param consideration one that was added, or a new one
   * @param because why it does not apply
   * @return the new specification
   * @throws IllegalArgumentException if no reason is given
   */
  public FuselageSizing settingAside(ShapeConsideration consideration, String because) {
    return with(Collections.singletonList(consideration), Decision.notApplicable(because));
  }

  /**
   * Takes a consideration into account for the time being.
   *
   * @param consideration one that was added, or a new one
   * @param until what would reopen it
   * @return the new specification
   * @throws IllegalArgumentException if it is not said what would reopen it
   */
  public FuselageSizing provisionally(Consideration consideration, String until) {
    return provisionally(onAnyShape(consideration), until);
  }

  /**
   * Takes a consideration into account for the time being.
   *
   * @param consideration one that was added, or a new one
   * @param until what would reopen it
   * @return the new specification
   * @throws IllegalArgumentException if it is not said what would reopen it
   */
  public FuselageSizing provisionally(ShapeConsideration consideration, String until) {
    return with(Collections.singletonList(consideration), Decision.provisional(until));
  }

  /**
   * Takes a consideration away without a trace, as a study does that compares with and without.
   *
   * @param name its name
   * @return the new specification
   * @throws IllegalArgumentException if there is none of that name
   */
  public FuselageSizing without(String name) {
    List<Asked> rest = asked.stream().filter(a -> !a.name().equals(name)).toList();
    if (rest.size() == asked.size()) {
      throw new IllegalArgumentException(
          "consideration must be one of "
              + asked.stream().map(Asked::name).toList()
              + ", was \""
              + name
              + "\"");
    }
    return of(shape, rest, length, pricing, unit);
  }

  private static ShapeConsideration onAnyShape(Consideration consideration) {
    Objects.requireNonNull(consideration, "consideration");
    return shape -> consideration;
  }

  /** Adds considerations, or replaces the decisions about those that are there by their names. */
  private FuselageSizing with(List<ShapeConsideration> added, Decision decision) {
    Map<String, Asked> all = new LinkedHashMap<>();
    asked.forEach(a -> all.put(a.name(), a));
    for (ShapeConsideration consideration : added) {
      Asked one = Asked.of(Objects.requireNonNull(consideration, "consideration"), shape, decision);
      all.put(one.name(), one);
    }
    return of(shape, List.copyOf(all.values()), length, pricing, unit);
  }

  /**
   * Fixes the length.
   *
   * @param fixed length of the body, positive
   * @return the new specification
   */
  public FuselageSizing length(Length fixed) {
    return with(Optional.of(Door.positive(fixed, "fuselage length")), pricing);
  }

  /**
   * Leaves the length to the considerations.
   *
   * @return the new specification
   */
  public FuselageSizing freeLength() {
    return with(Optional.empty(), pricing);
  }

  /**
   * Says how the body drags, for the price of a choice.
   *
   * @param drag drag area of a body
   * @return the new specification
   */
  public FuselageSizing draggingAs(DragArea drag) {
    Objects.requireNonNull(drag, "drag");
    return with(length, pricing.withDrag(drag));
  }

  /**
   * Says what the body is made of, for the price of a choice in stiffness and mass.
   *
   * @param shell the wall
   * @return the new specification
   */
  public FuselageSizing madeOf(BodyShell shell) {
    Objects.requireNonNull(shell, "shell");
    return with(length, pricing.withShell(shell));
  }

  /**
   * Says what the mission is judged by, so that a price is told in that as well. Needs {@link #draggingAs}.
   *
   * @param figure the figure of merit
   * @return the new specification
   */
  public FuselageSizing judgedBy(FigureOfMerit figure) {
    Objects.requireNonNull(figure, "figure");
    return with(length, pricing.withFigure(figure));
  }

  /**
   * Chooses the unit in which ranges and findings are shown.
   *
   * @param shown unit of length
   * @return the new specification
   */
  public FuselageSizing showing(NamedUnit<Length> shown) {
    Objects.requireNonNull(shown, "shown");
    return of(shape, asked, length, pricing, shown);
  }

  /**
   * What the considerations leave of the diameter, at the length that is fixed or follows from the rule.
   *
   * @return the range; where the length is free its variable says at which length it was taken
   * @throws IllegalStateException if the length is neither fixed nor bounded
   */
  public FeasibleRange diameterRange() {
    double at = lengthOf();
    FeasibleRange range = negotiation.diameterRange(at);
    return length.isPresent()
        ? range
        : FeasibleRange.of(range.variable() + " at length " + unit.format(at, 4), unit, range.bounds());
  }

  /**
   * What the considerations leave of the diameter at a length.
   *
   * @param at length of the body, positive
   * @return the range
   */
  public FeasibleRange diameterRange(Length at) {
    return negotiation.diameterRange(Door.positive(at, "fuselage length").si());
  }

  /**
   * What limits and guidelines leave of the diameter at a length, without telling who binds: for loops.
   *
   * @param at length of the body [m], positive
   * @return the interval [m], empty if they clash
   */
  public Interval feasibleDiameters(double at) {
    return negotiation.diameters(at, false);
  }

  /**
   * What the considerations leave of the length while the diameter is free.
   *
   * @return the range
   */
  public FeasibleRange lengthRange() {
    return negotiation.lengthRange();
  }

  /**
   * What the considerations leave of the length at a diameter.
   *
   * @param at diameter of the body, positive
   * @return the range
   */
  public FeasibleRange lengthRange(Length at) {
    return negotiation.lengthRange(Door.positive(at, "fuselage diameter").si());
  }

  /**
   * What the considerations leave of length and diameter together, in a window around the length that is fixed or follows
   * from the rule: from a quarter of it to one and a half, and diameters down to a hundredth of it; further where a
   * consideration is met only there, so that one which asks for much is not taken for one that nothing satisfies.
   *
   * @return the region; a length that was fixed does not narrow it
   * @throws IllegalStateException if the length is neither fixed nor bounded
   */
  public FeasibleRegion region() {
    Negotiation.Window window = negotiation.windowAround(lengthOf());
    return region(window.lengths(), window.diameters());
  }

  /**
   * What the considerations leave of length and diameter together in a window.
   *
   * @param lengths the lengths to look at [m], positive and finite
   * @param diameters the diameters to look at [m], positive and finite
   * @return the region
   */
  public FeasibleRegion region(Interval lengths, Interval diameters) {
    Objects.requireNonNull(lengths, "lengths");
    Objects.requireNonNull(diameters, "diameters");
    return FeasibleRegion.of(negotiation.all(), lengths, diameters, shape.leastFinenessRatio(), unit);
  }

  /**
   * Closes with a diameter of the designer's choice. It may lie outside guidelines and even limits: the findings say so,
   * and leaving a guideline has its price.
   *
   * @param chosen greatest diameter, positive
   * @return the body with its range, workings, findings and prices
   * @throws IllegalStateException if the length is neither fixed nor bounded
   * @throws IllegalArgumentException if the family cannot form such a body
   */
  public Sized<Fuselage> diameter(Length chosen) {
    Door.positive(chosen, "fuselage diameter");
    return FuselageChoice.of(this, chosen);
  }

  /**
   * Closes with the diameter that is nearest to the targets, by ratio, inside the feasible range. Several targets pull
   * alike: the diameter goes to their geometric mean.
   *
   * @return the body with its range, workings, findings and prices
   * @throws IllegalStateException if there is no target, or the length is neither fixed nor bounded
   */
  public Sized<Fuselage> nearestToTargets() {
    return FuselageChoice.nearestToTargets(this);
  }

  /**
   * Closes with the body of least drag in the feasible range.
   *
   * @param drag drag area of a body
   * @return the body with its range, workings, findings and prices
   * @throws IllegalStateException if the length is neither fixed nor bounded
   */
  public Sized<Fuselage> leastDrag(DragArea drag) {
    return FuselageChoice.leastDrag(draggingAs(drag), drag);
  }

  /**
   * Closes with the body of least drag in flight, by the library's own estimate.
   *
   * @param flight air and speed
   * @return the body with its range, workings, findings and prices
   * @throws IllegalStateException if the length is neither fixed nor bounded
   */
  public Sized<Fuselage> leastDrag(FlightCondition flight) {
    return leastDrag(FlightDrag.of(flight, Length.metres(lengthOf())));
  }

  /**
   * Closes with the best body in the feasible range: of the best figure of merit if there is one, else of least drag if that
   * is known, else of least skin. It is what the price of another choice is told against.
   *
   * @return the body with its range, workings, findings and prices
   * @throws IllegalStateException if the length is neither fixed nor bounded
   */
  public Sized<Fuselage> best() {
    return FuselageChoice.least(this, "best " + pricing.judge() + " in the feasible range", pricing::badness);
  }

  /**
   * What one body costs and gains against another: in drag, figures of merit, stiffness and mass as far as they are known,
   * and in volume.
   *
   * @param reference the body to compare with, such as the {@link #best()}
   * @param chosen the body to price
   * @return the prices
   */
  public List<Price> prices(Fuselage reference, Fuselage chosen) {
    Objects.requireNonNull(reference, "reference");
    Objects.requireNonNull(chosen, "chosen");
    return pricing.prices(reference, chosen, unit);
  }

  /**
   * Closes with the smallest body in the feasible range, by volume.
   *
   * @return the body with its range, workings, findings and prices
   * @throws IllegalStateException if the length is neither fixed nor bounded
   */
  public Sized<Fuselage> smallest() {
    return FuselageChoice.least(this, "least volume in the feasible range", BodyShape::volume);
  }

  Negotiation negotiation() {
    return negotiation;
  }

  BodyShape shape() {
    return shape;
  }

  Pricing pricing() {
    return pricing;
  }

  Optional<Length> fixedLength() {
    return length;
  }

  NamedUnit<Length> unit() {
    return unit;
  }

  /** The length that is fixed, or the longest that is feasible, or the least bad one. */
  double lengthOf() {
    if (length.isPresent()) {
      return length.get().si();
    }
    Interval feasible = negotiation.lengths(false);
    if (feasible.isEmpty()) {
      return negotiation.leastBadLength();
    }
    return Negotiation.bounded(feasible).upper();
  }

  @Override
  public String toString() {
    return "fuselage sizing: "
        + shape.name()
        + ", "
        + length.map(Length::toString).orElse("length free")
        + ", "
        + asked.size()
        + " considerations";
  }
}
