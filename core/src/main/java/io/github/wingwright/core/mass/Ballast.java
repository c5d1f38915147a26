// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.mass;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Guideline;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The ballast that brings the centre of gravity where it is wanted, and what could be moved instead.
 *
 * <pre>{@code
 * m_b = m·(x_cg − x_t)/(x_t − x_b)
 * }</pre>
 *
 * <p>from the balance of moments about the wanted place x_t, for ballast at x_b. Ballast is the second tool: where the wing
 * sits on the body, and the mass of what sits far from it, come first. A wanted place that ballast at x_b cannot bring about
 * is a result like any other: {@link #mass()} is empty, and {@link #findings()} and {@link #moves()} say what would do it.
 */
public final class Ballast implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Mass of the ballast. */
  public static final Formula MASS =
      Formula.named("ballast")
          .gives("m_b", Mass.KILOGRAM)
          .as("m·(x_cg − x_t) / (x_t − x_b)")
          .where("m", "mass without ballast", Mass.KILOGRAM, 1e-4, 1e5)
          .where("x_cg", "centre of gravity without ballast", Length.METRE, -1, 100)
          .where("x_t", "wanted centre of gravity", Length.METRE, -1, 100)
          .where("x_b", "place of the ballast", Length.METRE, -2, 99)
          .from(Source.DEFINITION)
          .computedBy(Ballast::ballastMass);

  /** How far one item would have to move. */
  public static final Formula MOVE =
      Formula.named("move of one item instead of ballast")
          .gives("Δx_i", Length.METRE)
          .as("m·(x_t − x_cg) / m_i")
          .where("m", "total mass", Mass.KILOGRAM, 1e-4, 1e5)
          .where("x_t", "wanted centre of gravity", Length.METRE, -1, 100)
          .where("x_cg", "centre of gravity", Length.METRE, -1, 100)
          .where("m_i", "mass of the item", Mass.KILOGRAM, 1e-6, 1e5)
          .from(Source.DEFINITION)
          .computedBy(Ballast::move);

  /** How much ballast is usual. */
  public static final Guideline USUAL_SHARE =
      Guideline.ofNumber(
          "ballast over mass without it",
          0.0,
          0.25,
          "small gliders",
          "Move the wing aft or lengthen the nose first.",
          Source.COMMON_PRACTICE);

  /** Closer than this to the wanted place [m] no ballast is asked for: less than anybody can measure. */
  private static final double CLOSE = 1e-9;

  private static final Source BALANCE = Source.library("balance of moments about the wanted place");

  private final MassStatement statement;
  private final Length wanted;
  private final Length place;
  private final double mass;

  private Ballast(MassStatement statement, Length wanted, Length place) {
    this.statement = statement;
    this.wanted = Door.finite(wanted, "wanted centre of gravity");
    this.place = Door.finite(place, "place of the ballast");
    this.mass =
        isNeeded() ? ballastMass(statement.mass().si(), current(), wanted.si(), place.si()) : 0.0;
  }

  /**
   * The ballast for a wanted centre of gravity.
   *
   * @param statement what is there without ballast
   * @param wanted where the centre of gravity shall be, x aft of the nose tip
   * @param place where the ballast would sit, x aft of the nose tip
   * @return the ballast, or why there can be none
   */
  public static Ballast forCentreOfGravity(MassStatement statement, Length wanted, Length place) {
    Objects.requireNonNull(statement, "statement");
    return new Ballast(statement, wanted, place);
  }

  /**
   * Mass of the ballast.
   *
   * <pre>{@code m_b = m·(x_cg − x_t)/(x_t − x_b)}</pre>
   *
   * @param mass mass without ballast m [kg]
   * @param centreOfGravity centre of gravity without ballast x_cg [m]
   * @param wanted wanted centre of gravity x_t [m]
   * @param place place of the ballast x_b [m]
   * @return m_b [kg], negative or infinite if ballast there cannot do it; 60 g at 145 mm, wanted at 120 mm, ballast at 10 mm:
   *     13.6364 g
   */
  public static double ballastMass(double mass, double centreOfGravity, double wanted, double place) {
    return mass * (centreOfGravity - wanted) / (wanted - place);
  }

  /**
   * How far one item would have to move to do it alone.
   *
   * <pre>{@code Δx_i = m·(x_t − x_cg)/m_i}</pre>
   *
   * @param mass total mass m [kg]
   * @param wanted wanted centre of gravity x_t [m]
   * @param centreOfGravity centre of gravity x_cg [m]
   * @param itemMass mass of the item m_i [kg]
   * @return Δx_i [m], positive aft; for 60 g, from 145 mm to 120 mm, an item of 20 g moves 75 mm forward
   */
  public static double move(double mass, double wanted, double centreOfGravity, double itemMass) {
    return mass * (wanted - centreOfGravity) / itemMass;
  }

  private double current() {
    return statement.centreOfGravity().x().si();
  }

  /**
   * Whether the centre of gravity is not yet where it is wanted.
   *
   * @return true if it lies elsewhere
   */
  public boolean isNeeded() {
    return Math.abs(current() - wanted.si()) > CLOSE;
  }

  /**
   * Whether ballast at the place can do it.
   *
   * @return false if the place lies on the wrong side of the wanted centre of gravity, or at it
   */
  public boolean isPossible() {
    return mass >= 0.0 && mass < Double.POSITIVE_INFINITY;
  }

  /**
   * The mass of the ballast.
   *
   * @return m_b, zero if none is needed, empty if ballast at the place cannot do it
   */
  public Optional<Mass> mass() {
    return isPossible() ? Optional.of(Mass.kilograms(mass)) : Optional.empty();
  }

  /**
   * Where the ballast would sit.
   *
   * @return x aft of the nose tip
   */
  public Length place() {
    return place;
  }

  /**
   * Where the centre of gravity is wanted.
   *
   * @return x aft of the nose tip
   */
  public Length wanted() {
    return wanted;
  }

  /**
   * What could be moved instead, each alone, in the order of how little it has to move. Where the wing moves the wanted place
   * moves with it, so for the wing the true move is shorter or longer.
   *
   * @return one move for each item that has a mass; none if the centre of gravity is where it is wanted
   */
  public List<Move> moves() {
    if (!isNeeded()) {
      return List.of();
    }
    List<Move> moves = new ArrayList<>();
    for (MassItem item : statement.items()) {
      if (item.mass().isPositive()) {
        moves.add(
            new Move(
                item.name(),
                Length.metres(move(statement.mass().si(), wanted.si(), current(), item.mass().si()))));
      }
    }
    moves.sort(Comparator.comparing(m -> m.distance().magnitude()));
    return List.copyOf(moves);
  }

  /**
   * The statement with the ballast in it.
   *
   * @param name name of the ballast's item, such as {@code "nose ballast"}
   * @param height how high it sits
   * @return a statement whose centre of gravity is where it is wanted; the same statement if none is needed
   * @throws IllegalStateException if ballast at the place cannot do it
   */
  public MassStatement applied(String name, Length height) {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(height, "height");
    if (!isPossible()) {
      throw new IllegalStateException("ballast must be possible to be applied, was not: " + explanation());
    }
    if (!isNeeded()) {
      return statement;
    }
    return statement.with(MassItem.of(name, Mass.kilograms(mass), Placement.at(place, height)).withSource(BALANCE));
  }

  /**
   * What the designer should know.
   *
   * @return a serious finding if it is impossible, a caution if it is much
   */
  public List<Finding> findings() {
    if (!isPossible()) {
      return List.of(Finding.of(Severity.SERIOUS, "ballast", explanation(), BALANCE));
    }
    return USUAL_SHARE.check(mass / statement.mass().si()).map(List::of).orElse(List.of());
  }

  private String explanation() {
    boolean forward = current() > wanted.si();
    StringBuilder words = new StringBuilder();
    words
        .append("To bring the centre of gravity from ")
        .append(statement.centreOfGravity().x())
        .append(forward ? " forward to " : " aft to ")
        .append(wanted)
        .append(", ballast must sit ")
        .append(forward ? "ahead of " : "behind ")
        .append(wanted)
        .append("; the place given is ")
        .append(place)
        .append(".");
    List<Move> moves = moves();
    for (int i = 0; i < Math.min(2, moves.size()); i++) {
      words.append(i == 0 ? " Instead, move " : " or ").append(moves.get(i));
    }
    return words.append(".").toString();
  }

  /**
   * How the mass of the ballast comes about.
   *
   * @param total a step that gives the mass without ballast
   * @param centreOfGravity a step that gives the centre of gravity without ballast
   * @param target a step that gives the wanted centre of gravity
   * @return the step, empty if no ballast is needed or possible
   */
  public Optional<Step> massStep(Step total, Step centreOfGravity, Step target) {
    Objects.requireNonNull(total, "total");
    Objects.requireNonNull(centreOfGravity, "centre of gravity");
    Objects.requireNonNull(target, "target");
    if (!isPossible() || !isNeeded()) {
      return Optional.empty();
    }
    return Optional.of(
        Step.of(
            MASS, total, centreOfGravity, target, Step.given("place of the ballast", "x_b", place, Source.BRIEF)));
  }

  @Override
  public String toString() {
    String what = !isNeeded() ? "no ballast needed" : isPossible() ? "ballast " + Mass.kilograms(mass) : "no ballast possible";
    return what + " at x " + place + " for centre of gravity at " + wanted;
  }

  /**
   * One item moved instead of ballast.
   *
   * @param item name of the item
   * @param distance how far, positive aft
   */
  public record Move(String item, Length distance) implements Serializable {

    /** Refuses null. */
    public Move {
      Objects.requireNonNull(item, "item");
      Objects.requireNonNull(distance, "distance");
    }

    @Override
    public String toString() {
      return item + " by " + distance.magnitude() + (distance.isNegative() ? " forward" : " aft");
    }
  }
}
