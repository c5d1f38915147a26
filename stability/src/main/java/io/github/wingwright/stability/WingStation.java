// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.core.basis.FeasibleRange;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Workings;
import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.mass.MassStatement;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;

/**
 * Balances an aircraft for a wanted static margin: the wing's place on the fuselage first, ballast second.
 *
 * <pre>{@code
 * WingStation.Balance balance = WingStation.of(model)
 *     .massOnWing(grams(24), millimetres(118))
 *     .massElsewhere(grams(16), millimetres(105))
 *     .travel(millimetres(60), millimetres(110))
 *     .ballast(millimetres(8), grams(12))
 *     .forMargin(0.15);
 * }</pre>
 *
 * <p>Moving the wing aft takes its own mass along and the neutral point with it. The neutral point moves by nearly the
 * whole way, the centre of gravity only by the wing's share of the mass, so the margin grows. The tail stays where it is:
 * its arm and its downwash change with the wing's place, and are reckoned anew at each. Where the travel does not reach,
 * the wing goes to the end that comes nearest, and ballast does the rest as far as it may.
 */
public final class WingStation {
  /** Centre of gravity of two masses. */
  public static final Formula TWO_MASSES =
      Formula.named("centre of gravity")
          .gives("x", Length.METRE)
          .as("(m_1·x_1 + m_2·x_2) / (m_1 + m_2)")
          .where("m_1", "first mass", Mass.KILOGRAM, 0, 1e5)
          .where("x_1", "its place", Length.METRE, -1, 100)
          .where("m_2", "second mass", Mass.KILOGRAM, 1e-6, 1e5)
          .where("x_2", "its place", Length.METRE, -1, 100)
          .from(Source.DEFINITION)
          .computedBy(WingStation::centre);

  static final Formula TARGET =
      Formula.named("centre of gravity for the static margin wanted")
          .gives("x_t", Length.METRE)
          .as("x_c + (h_n − K_n)·c̄")
          .where("x_c", "leading edge of the mean aerodynamic chord", Length.METRE, -1, 100)
          .where("h_n", "neutral point, fraction of c̄", -1, 3)
          .where("K_n", "static margin wanted", -0.2, 1)
          .where("c̄", "mean aerodynamic chord", Length.METRE, 0.005, 20)
          .from(Source.DEFINITION)
          .computedBy((double x, double h, double k, double c) -> x + (h - k) * c);

  private final BalanceChoices choices;

  private WingStation(BalanceChoices choices) {
    this.choices = choices;
  }

  /**
   * Begins: the wing may not move yet, and there is no ballast.
   *
   * @param model the aircraft, its wing where the masses are given for
   * @return the specification
   */
  public static WingStation of(PitchModel model) {
    Objects.requireNonNull(model, "model");
    return new WingStation(new BalanceChoices(model));
  }

  private WingStation with(Consumer<BalanceChoices> change) {
    BalanceChoices copy = new BalanceChoices(choices);
    change.accept(copy);
    return new WingStation(copy);
  }

  /**
   * The mass that moves with the wing.
   *
   * @param mass its mass, positive
   * @param x its centre, aft of the nose tip, with the wing where the airframe has it
   * @return the specification with it
   */
  public WingStation massOnWing(Mass mass, Length x) {
    Door.positive(mass, "mass on the wing");
    Door.finite(x, "centre of the mass on the wing");
    return with(
        c -> {
          c.wingMass = mass;
          c.wingMassX = x;
        });
  }

  /**
   * The mass that moves with the wing.
   *
   * @param masses what is on it, placed with the wing where the airframe has it
   * @return the specification with it
   */
  public WingStation massOnWing(MassStatement masses) {
    Objects.requireNonNull(masses, "masses");
    return massOnWing(masses.mass(), masses.centreOfGravity().x());
  }

  /**
   * The mass that stays.
   *
   * @param mass its mass, positive
   * @param x its centre, aft of the nose tip
   * @return the specification with it
   */
  public WingStation massElsewhere(Mass mass, Length x) {
    Door.positive(mass, "mass elsewhere");
    Door.finite(x, "centre of the mass elsewhere");
    return with(
        c -> {
          c.otherMass = mass;
          c.otherMassX = x;
        });
  }

  /**
   * The mass that stays.
   *
   * @param masses what is not on the wing
   * @return the specification with it
   */
  public WingStation massElsewhere(MassStatement masses) {
    Objects.requireNonNull(masses, "masses");
    return massElsewhere(masses.mass(), masses.centreOfGravity().x());
  }

  /**
   * How far the wing may move.
   *
   * @param from foremost place of its root leading edge, aft of the nose tip
   * @param to aftmost place, not ahead of the first
   * @return the specification with it
   */
  public WingStation travel(Length from, Length to) {
    Door.finite(from, "foremost wing station");
    Door.finite(to, "aftmost wing station");
    if (from.compareTo(to) > 0) {
      throw new IllegalArgumentException("aftmost wing station must not be ahead of " + from + ", was " + to);
    }
    return with(
        c -> {
          c.foremost = from;
          c.aftmost = to;
        });
  }

  /**
   * Where ballast can go, and how much.
   *
   * @param x its place, aft of the nose tip
   * @param most the most that there is room for, not negative
   * @return the specification with it
   */
  public WingStation ballast(Length x, Mass most) {
    return ballast(x, x, most);
  }

  /**
   * Between which places ballast can go, and how much: it goes where least of it does.
   *
   * @param from foremost place, aft of the nose tip
   * @param to aftmost place
   * @param most the most that there is room for, not negative
   * @return the specification with it
   */
  public WingStation ballast(Length from, Length to, Mass most) {
    Objects.requireNonNull(most, "most");
    Door.finite(from, "foremost place of the ballast");
    Door.finite(to, "aftmost place of the ballast");
    if (!(most.si() >= 0.0) || Double.isInfinite(most.si())) {
      throw new IllegalArgumentException("most ballast must not be negative, was " + most);
    }
    return with(
        c -> {
          c.ballastFrom = from;
          c.ballastTo = to;
          c.mostBallast = most;
        });
  }

  /**
   * Changes the aircraft at every place of the wing: to size the tail anew for the arm that is left, for example with
   * {@link TailSizing}, so that wing station, tail and ballast are found together. Masses are not changed by it.
   *
   * @param change gives the aircraft for one whose wing has been moved
   * @return the specification with it
   */
  public WingStation refitting(UnaryOperator<Airframe> change) {
    Objects.requireNonNull(change, "change");
    return with(c -> c.refit = change);
  }

  /**
   * Centre of gravity of two masses.
   *
   * @param mass1 first mass [kg]
   * @param x1 its place [m]
   * @param mass2 second mass [kg]
   * @param x2 its place [m]
   * @return x [m]
   */
  public static double centre(double mass1, double x1, double mass2, double x2) {
    return (mass1 * x1 + mass2 * x2) / (mass1 + mass2);
  }

  /**
   * How far the wing must move where the downwash does not change with it: the closed form, for quick studies.
   *
   * <pre>{@code Δ = (K_n,wanted − K_n)·c̄/(a_w/(a_w + t) − m_w/m)}</pre>
   *
   * <p>The neutral point follows the wing by its share a_w/(a_w + t) of the lift slope, the centre of gravity by the
   * share m_w/m of the mass.
   *
   * @param missing margin wanted less margin now, fraction of c̄
   * @param chord c̄ [m]
   * @param liftShare a_w/(a_w + t), the wing's share of the lift slope
   * @param massShare m_w/m, the wing's share of the mass
   * @return Δ [m], aft positive
   */
  public static double shift(double missing, double chord, double liftShare, double massShare) {
    return missing * chord / (liftShare - massShare);
  }

  /**
   * Balances.
   *
   * @param margin static margin wanted, fraction of c̄
   * @return where the wing goes, how much ballast, and what it leads to; with a serious finding if it cannot be reached
   * @throws IllegalStateException if no mass was given
   */
  public Balance forMargin(double margin) {
    Door.finite(margin, "static margin");
    if (!choices.wingMass.isPositive() || !choices.otherMass.isPositive()) {
      throw new IllegalStateException(
          "balance needs the mass on the wing and the mass elsewhere, were " + choices.wingMass + " and " + choices.otherMass);
    }
    return new BalanceSolver(choices).solve(margin);
  }

  /**
   * An aircraft in balance, or as near as it gets.
   *
   * @param airframe the airframe with the wing in its place
   * @param station root leading edge of the wing, aft of the nose tip
   * @param ballast ballast, zero if none
   * @param mass mass with ballast
   * @param centreOfGravity centre of gravity with ballast, aft of the nose tip
   * @param staticMargin the margin that is reached
   * @param range where the wing may stand
   * @param workings the steps
   * @param findings what to know, heaviest first; serious if the margin is not reached
   */
  public record Balance(
      Airframe airframe,
      Length station,
      Mass ballast,
      Mass mass,
      Length centreOfGravity,
      StaticMargin staticMargin,
      FeasibleRange range,
      Workings workings,
      List<Finding> findings) {
    public Balance {
      Objects.requireNonNull(airframe, "airframe");
      Objects.requireNonNull(station, "station");
      Objects.requireNonNull(ballast, "ballast");
      Objects.requireNonNull(mass, "mass");
      Objects.requireNonNull(centreOfGravity, "centreOfGravity");
      Objects.requireNonNull(staticMargin, "staticMargin");
      Objects.requireNonNull(range, "range");
      Objects.requireNonNull(workings, "workings");
      Objects.requireNonNull(findings, "findings");
    }

    @Override
    public String toString() {
      return String.format(
          Locale.ROOT,
          "wing at %s, ballast %s, centre of gravity %s, margin %.1f %%",
          station,
          ballast,
          centreOfGravity,
          100.0 * staticMargin.value());
    }
  }
}
