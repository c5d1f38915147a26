// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.basis.Advised;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Strength;
import io.github.wingwright.core.basis.Wording;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Real things inside a body, one behind the other along its axis, with a wall, a clearance around each and a gap between.
 *
 * <p>Each goes as far forward as it fits. A body of these families is thickest somewhere and thinner to both ends, so in a
 * given order nothing is gained by leaving room in front; where the order is free all orders are tried.
 *
 * <p>A section that is not round counts as the ellipse of its width and height, which lies inside the boxier ones. A thing is
 * stiff and straight: where the middle line of the body bends, it lies level with the line at its own middle, and both its
 * ends must find room there.
 *
 * <p>Immutable: each call returns a new one.
 */
public final class Contents {
  /** All orders of seven things are 5,040. */
  public static final int MOST_IN_ANY_ORDER = 7;

  /** What is longer is counted and not named: the name stands in tables, pictures and advice. */
  private static final int LONGEST_NAMES = 24;

  private final List<Thing> things;
  private final double wall;
  private final double clearance;
  private final double gap;
  private final boolean anyOrder;
  private final Stowage stowage;

  private Contents(List<Thing> things, double wall, double clearance, double gap, boolean anyOrder) {
    this.things = List.copyOf(things);
    this.wall = wall;
    this.clearance = clearance;
    this.gap = gap;
    this.anyOrder = anyOrder;
    this.stowage = new Stowage(this.things, wall, clearance, gap, anyOrder);
    if (things.isEmpty()) {
      throw new IllegalArgumentException("contents need at least one thing, got none");
    }
    if (anyOrder && things.size() > MOST_IN_ANY_ORDER) {
      throw new IllegalArgumentException(
          "things in any order must be at most " + MOST_IN_ANY_ORDER + ", were " + things.size());
    }
  }

  /**
   * Things from the nose aft.
   *
   * @param things the things, at least one
   * @return the contents, without wall, clearance or gap
   */
  public static Contents of(Thing... things) {
    Objects.requireNonNull(things, "things");
    return new Contents(List.of(things), 0.0, 0.0, 0.0, false);
  }

  /**
   * Inside a wall.
   *
   * @param thickness thickness of the wall, not negative
   * @return the new contents
   */
  public Contents insideWall(Length thickness) {
    return new Contents(things, Door.notNegative(thickness, "wall").si(), clearance, gap, anyOrder);
  }

  /**
   * With room around each thing.
   *
   * @param room least distance from the inside of the wall, not negative
   * @return the new contents
   */
  public Contents withClearance(Length room) {
    return new Contents(things, wall, Door.notNegative(room, "clearance").si(), gap, anyOrder);
  }

  /**
   * With room between one thing and the next.
   *
   * @param room least distance, not negative
   * @return the new contents
   */
  public Contents withGap(Length room) {
    return new Contents(things, wall, clearance, Door.notNegative(room, "gap").si(), anyOrder);
  }

  /**
   * In whatever order fits.
   *
   * @return the new contents
   * @throws IllegalArgumentException if there are more than {@value #MOST_IN_ANY_ORDER} things
   */
  public Contents inAnyOrder() {
    return new Contents(things, wall, clearance, gap, true);
  }

  /**
   * Where everything lies.
   *
   * @param places the things from the nose aft, with the distance of each one's front from the nose tip
   */
  public record Placing(List<Place> places) {
    /** Keeps a copy. */
    public Placing {
      Objects.requireNonNull(places, "places");
      places = List.copyOf(places);
    }

    /**
     * The mass of all things.
     *
     * @return the sum
     */
    public Mass mass() {
      return Mass.kilograms(places.stream().mapToDouble(p -> p.thing().mass().si()).sum());
    }

    /**
     * The centre of gravity of the contents.
     *
     * @return its distance from the nose tip; of things without mass the mean of their middles
     */
    public Length centreOfGravity() {
      double mass = mass().si();
      double moment = 0.0;
      for (Place p : places) {
        double weight = mass > 0.0 ? p.thing().mass().si() / mass : 1.0 / places.size();
        moment += weight * (p.front().si() + 0.5 * p.thing().length().si());
      }
      return Length.metres(moment);
    }
  }

  /**
   * Where one thing lies.
   *
   * @param thing the thing
   * @param front distance of its front from the nose tip
   */
  public record Place(Thing thing, Length front) {

    /** Refuses null. */
    public Place {
      Objects.requireNonNull(thing, "thing");
      Objects.requireNonNull(front, "front");
    }
}

  /**
   * Places everything in a body.
   *
   * @param body the body
   * @return where everything lies, empty if it does not fit
   */
  public Optional<Placing> placedIn(Fuselage body) {
    Objects.requireNonNull(body, "body");
    double[] fronts = new double[things.size()];
    double length = body.length().si();
    double diameter = body.diameter().si();
    for (int[] order : stowage.orders()) {
      if (stowage.fits(body.shape(), length, diameter, order, fronts)) {
        List<Place> places = new ArrayList<>();
        for (int i = 0; i < order.length; i++) {
          places.add(new Place(things.get(order[i]), Length.metres(fronts[i])));
        }
        return Optional.of(new Placing(places));
      }
    }
    return Optional.empty();
  }

  /**
   * The things must fit: a limit. The smallest body that holds them is found by {@link FuselageSizing#smallest()}.
   *
   * @return the consideration
   */
  public ShapeConsideration asConsideration() {
    String names = things.stream().map(Thing::name).collect(Collectors.joining(", "));
    String what = names.length() <= LONGEST_NAMES ? names : "the " + things.size() + " things listed";
    return shape -> new Holding(Wording.of("holds " + what), this, shape, stowage.leastLength(shape));
  }

  /**
   * The contents and the rest must balance: a guideline. It asks for a nose long enough, or a body wide enough for the
   * contents to go far forward.
   *
   * <pre>{@code
   * (m_r·s_r·L + m_c·x_c + m_b·x_b)/(m_r + m_c + m_b) ≤ s·L
   * }</pre>
   *
   * @param rest mass of all that is not among the contents, positive
   * @param restShare where its centre of gravity lies, as a share of the length, 0 to 1
   * @param wantedShare where the centre of gravity of everything is wanted, as a share of the length, 0 to 1
   * @param ballast most ballast, not negative
   * @param ballastFromNose distance of the ballast from the nose tip, not negative
   * @return centre of gravity ≤ wanted
   * @throws IllegalArgumentException if the order of the things is free: it would jump as lengths change
   */
  public ShapeConsideration balancing(
      Mass rest, double restShare, double wantedShare, Mass ballast, Length ballastFromNose) {
    double mr = Door.positive(rest, "mass of the rest").si();
    double mb = Door.notNegative(ballast, "ballast").si();
    double xb = Door.notNegative(ballastFromNose, "distance of the ballast from the nose").si();
    Door.within(restShare, 0.0, 1.0, "place of the centre of gravity of the rest");
    Door.within(wantedShare, 0.0, 1.0, "wanted place of the centre of gravity");
    if (anyOrder) {
      throw new IllegalArgumentException("contents that balance must be in a given order, were in any order");
    }
    // In the order of the workings, so that they end in the same bits.
    double mass = mr + mb;
    for (Thing thing : things) {
      mass += thing.mass().si();
    }
    double all = mass;
    Wording start =
        Wording.of("balances at "
            + Considerations.number(100.0 * wantedShare)
            + " % of the length");
    Wording name = mb > 0.0 ? start.and(" with at most ").and(ballast).and(" of ballast") : start.and(" without ballast");
    return shape ->
        new BodyMargin(
            name,
            Strength.GUIDELINE,
            Source.DEFINITION,
            (length, diameter) -> {
              double moment = moment(mr * (restShare * length) + mb * xb, shape, length, diameter);
              return MarginFormulas.balanceMargin(wantedShare, moment / all, length);
            },
            (length, diameter, unit) -> {
              double moment = moment(mr * (restShare * length) + mb * xb, shape, length, diameter);
              double at = moment / (all * length);
              return "with the centre of gravity at " + Advised.percentUp(at);
            })
            .reckonedBy(
                (length, diameter) ->
                    LayoutSteps.balance(
                        this, things, shape, length, diameter, rest, restShare, wantedShare, ballast, ballastFromNose));
  }

  /** A moment about the nose tip and that of the contents, whether or not everything fits. */
  private double moment(double rest, BodyShape shape, double length, double diameter) {
    double[] fronts = stowage.fronts(shape, length, diameter);
    double moment = rest;
    for (int i = 0; i < fronts.length; i++) {
      Thing thing = things.get(i);
      moment += thing.mass().si() * (fronts[i] + 0.5 * thing.length().si());
    }
    return moment;
  }

  /** Where the things go. */
  Stowage stowage() {
    return stowage;
  }

  Thing thing(int at) {
    return things.get(at);
  }

  /** The same things with other room around them [m]. */
  Contents spaced(double otherWall, double otherClearance, double otherGap) {
    return new Contents(things, otherWall, otherClearance, otherGap, anyOrder);
  }

  Step wallStep() {
    return Step.given("wall around the contents", "w", Length.metres(wall), Source.BRIEF);
  }

  Step clearanceStep() {
    return Step.given("clearance around each thing", "c", Length.metres(clearance), Source.BRIEF);
  }

  Step gapStep() {
    return Step.given("gap from one thing to the next", "g", Length.metres(gap), Source.BRIEF);
  }

  /** Which of the things has a name, in a given order. */
  int indexOf(String name) {
    for (int i = 0; i < things.size(); i++) {
      if (things.get(i).name().equals(name) && !anyOrder) {
        return i;
      }
    }
    List<String> names = things.stream().map(Thing::name).toList();
    throw new IllegalArgumentException(
        anyOrder
            ? "contents must be in a given order, were in any order"
            : "thing must be one of " + names + ", was \"" + name + "\"");
  }

  @Override
  public String toString() {
    String line = things.stream().map(Thing::name).collect(Collectors.joining(", ", "contents: ", ""));
    return line.length() <= 75 ? line : line.substring(0, 74) + "…";
  }
}
