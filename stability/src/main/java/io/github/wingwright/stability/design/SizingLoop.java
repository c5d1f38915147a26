// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import io.github.wingwright.core.ConvergenceException;
import io.github.wingwright.core.basis.Sized;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.WingLoading;
import io.github.wingwright.core.sizing.WingSizing;
import java.util.Objects;

/**
 * Brings the mass, the loading, the ballast and the balance of a design into agreement.
 *
 * <pre>{@code
 * Design design = SizingLoop.of(brief).madeTo(millimetres(0.5), grams(0.1)).solve();
 * }</pre>
 *
 * <p>From a mass the wing is sized, from the wing the fuselage; then the wing finds its station, the tails their arms and
 * areas, the nose its ballast, and all of it has a mass again. This is repeated until the mass is the one it began with. The
 * result is rounded to what can be made and reckoned forward once more from the rounded values.
 */
public final class SizingLoop {
  /** Relative change of the mass at which it counts as settled. */
  private static final double SETTLED = 1e-10;

  /** A step of the secant is taken if it changes the mass by less than this factor. */
  private static final double WILDEST_STEP = 2.0;

  private static final int MOST_ROUNDS = 100;

  /** A mass that grows beyond this one will not come back [kg]. */
  private static final double HOPELESS = 1e6;

  /** A glider of a brief without any hint of its mass begins with this one [kg]. */
  private static final double FIRST_MASS = 0.03;

  private final DesignBrief brief;
  private final Making making;

  private SizingLoop(DesignBrief brief, Making making) {
    this.brief = brief;
    this.making = making;
  }

  /**
   * A loop for a brief.
   *
   * @param brief the brief
   * @return the loop, which leaves the sized values as they are
   */
  public static SizingLoop of(DesignBrief brief) {
    Objects.requireNonNull(brief, "brief");
    return new SizingLoop(brief, Making.EXACT);
  }

  /**
   * Rounds the sized values to what can be made.
   *
   * @param length step of lengths
   * @param mass step of the ballast
   * @return the new loop
   */
  public SizingLoop madeTo(Length length, Mass mass) {
    Objects.requireNonNull(length, "length");
    Objects.requireNonNull(mass, "mass");
    return new SizingLoop(brief, new Making(length, mass));
  }

  /**
   * Runs the loop.
   *
   * @return the design
   * @throws ConvergenceException if the mass would not settle; the message names it with its last values
   * @throws IllegalStateException if the brief is incomplete, or no arrangement satisfies it
   */
  public Design solve() {
    double mass = FIRST_MASS;
    double before = mass;
    double changeBefore = Double.NaN;
    double cameOut = mass;
    double lightest = Double.POSITIVE_INFINITY;
    double massOfLightest = mass;
    boolean alwaysHeavier = true;
    int round = 0;
    while (round < MOST_ROUNDS && mass < HOPELESS) {
      round++;
      WingSizing asked = brief.wing().apply(Mass.kilograms(mass)).mass(Mass.kilograms(mass));
      Sized<Wing> wing = asked.solve();
      Sized<Fuselage> fuselage = brief.fuselage().apply(wing.value());
      QuickDesign quick = new QuickDesign(brief, wing.value(), fuselage.value());
      QuickDesign.Balance balance = quick.balance(mass);
      cameOut = balance.mass();
      double change = cameOut - mass;
      // This very wing, asked for by the loading that it came out with, would have settled at once.
      double loading = cameOut / wing.value().planform().area().si();
      if (loading < lightest) {
        lightest = loading;
        massOfLightest = cameOut;
      }
      alwaysHeavier &= change > 0.0;
      if (Math.abs(change) <= SETTLED * mass) {
        return new DesignEvaluation(new SizedGlider(brief, making, wing, fuselage, quick, balance)).design();
      }
      double next = next(before, changeBefore, mass, change);
      before = mass;
      changeBefore = change;
      mass = next;
    }
    throw ConvergenceException.atValues(
        "the mass of the design would not settle"
            + (alwaysHeavier ? tooHeavy(lightest, massOfLightest) : "")
            + " (kg: the mass a round began with, and the one that came out)",
        round,
        changeBefore,
        before,
        cameOut);
  }

  /** What is in the way where every glider came out heavier than the mass its wing was made for. */
  private static String tooHeavy(double lightest, double mass) {
    double reachable = Math.ceil(100.0 * lightest) / 100.0;
    return ", because every glider tried came out heavier than the mass its wing was made for: a larger wing weighs more than it may"
        + " carry. The lightest wing loading that came out was "
        + WingLoading.KILOGRAM_PER_SQUARE_METRE.format(reachable, 4)
        + ", of a glider of "
        + Mass.kilograms(mass).format(3)
        + "; ask for more than that, or for thinner walls or a lighter material";
  }

  /**
   * The mass to try next: where the change would vanish on the straight line through the last two rounds, if that is no wild
   * step; else simply the mass that came out. A wing whose area follows the mass settles slowly by repetition alone.
   */
  private static double next(double before, double changeBefore, double mass, double change) {
    double secant = mass - change * (mass - before) / (change - changeBefore);
    boolean tame = secant > mass / WILDEST_STEP && secant < mass * WILDEST_STEP;
    return tame ? secant : mass + change;
  }

  @Override
  public String toString() {
    return making.equals(Making.EXACT)
        ? "sizing loop, exact values"
        : "sizing loop, made to " + making.length() + " and " + making.mass();
  }
}
