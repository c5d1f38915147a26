// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.core.basis.FeasibleRange;
import io.github.wingwright.core.basis.Sized;
import io.github.wingwright.core.geometry.AirfoilSection;
import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import java.util.Objects;
import java.util.function.Consumer;

/**
 * Sizes a tail: area, span, chords and place, from what it must do.
 *
 * <pre>{@code
 * Sized<Tail> tail = TailSizing.horizontal(wing)
 *     .forClass(HAND_LAUNCHED_GLIDER)
 *     .arm(millimetres(190))
 *     .volumeCoefficient(0.6)
 *     .section(flatPlate)
 *     .solve();
 * }</pre>
 *
 * <p>Any two of arm, area and volume coefficient give the third; all three are refused. Instead of an arm, the place of
 * the trailing edge can be given ({@link #trailingEdgeAt}). A wanted static margin
 * ({@link #staticMargin}) asks for an area too. Where several requirements ask for an area the greatest decides: the
 * smallest tail that satisfies all, and {@link FeasibleRange#lowerBinding()} says who that was. Aspect and taper ratio
 * default to the middle of the range of the class. Positions: the tail's quarter chord lies the arm behind the wing's.
 */
public final class TailSizing {
  private final TailChoices choices;

  private TailSizing(TailChoices choices) {
    this.choices = choices;
  }

  /**
   * Begins a horizontal tail.
   *
   * @param wing the wing, in its place
   * @return the specification
   */
  public static TailSizing horizontal(Wing wing) {
    Objects.requireNonNull(wing, "wing");
    return begin(Tail.Role.HORIZONTAL, wing);
  }

  /**
   * Begins a vertical tail.
   *
   * @param wing the wing, in its place
   * @return the specification
   */
  public static TailSizing vertical(Wing wing) {
    Objects.requireNonNull(wing, "wing");
    return begin(Tail.Role.VERTICAL, wing);
  }

  private static TailSizing begin(Tail.Role role, Wing wing) {
    return new TailSizing(new TailChoices(role, wing));
  }

  private TailSizing with(Consumer<TailChoices> change) {
    TailChoices copy = new TailChoices(choices);
    change.accept(copy);
    return new TailSizing(copy);
  }

  /**
   * For a class of aircraft, whose ranges apply and give what is not asked for; at first hand-launched gliders.
   *
   * @param aircraftClass the class
   * @return the specification with it
   */
  public TailSizing forClass(AircraftClass aircraftClass) {
    Objects.requireNonNull(aircraftClass, "aircraft class");
    return with(c -> c.aircraftClass = aircraftClass);
  }

  /**
   * In an arrangement that needs a little less tail volume.
   *
   * @param arrangement how the tails stand together; at first conventional
   * @return the specification with it
   */
  public TailSizing arrangement(TailArrangement arrangement) {
    Objects.requireNonNull(arrangement, "arrangement");
    return with(c -> c.arrangement = arrangement);
  }

  /**
   * At an arm.
   *
   * @param arm distance from the wing's quarter mean aerodynamic chord to the tail's, positive
   * @return the specification with it
   */
  public TailSizing arm(Length arm) {
    Door.positive(arm, "tail arm");
    return with(c -> c.arm = arm);
  }

  /**
   * With its trailing edge at a place, such as the end of the fuselage: the arm follows from the area, and both are solved
   * together.
   *
   * @param x most aft point of the tail, aft of the nose tip
   * @return the specification with it
   */
  public TailSizing trailingEdgeAt(Length x) {
    Door.finite(x, "trailing edge of the tail");
    return with(c -> c.trailingEdge = x);
  }

  /**
   * Of an area.
   *
   * @param area tail area, positive
   * @return the specification with it
   */
  public TailSizing area(Area area) {
    Door.positive(area, "tail area");
    return with(c -> c.area = area);
  }

  /**
   * Of a volume coefficient.
   *
   * @param coefficient V_h or V_v, positive
   * @return the specification with it
   */
  public TailSizing volumeCoefficient(double coefficient) {
    Door.positive(coefficient, "tail volume coefficient");
    return with(c -> c.coefficient = coefficient);
  }

  /**
   * Of the aspect ratio; of a fin, its height squared over its area.
   *
   * @param aspectRatio positive
   * @return the specification with it
   */
  public TailSizing aspectRatio(double aspectRatio) {
    Door.positive(aspectRatio, "tail aspect ratio");
    return with(c -> c.aspectRatio = aspectRatio);
  }

  /**
   * Of the taper ratio.
   *
   * @param taperRatio tip chord over root chord, 0 to 1.5
   * @return the specification with it
   */
  public TailSizing taperRatio(double taperRatio) {
    Door.within(taperRatio, 0.0, 1.5, "tail taper ratio");
    return with(c -> c.taperRatio = taperRatio);
  }

  /**
   * Of a section.
   *
   * @param section the section
   * @return the specification with it
   */
  public TailSizing section(AirfoilSection section) {
    Objects.requireNonNull(section, "section");
    return with(c -> c.section = section);
  }

  /**
   * Swept.
   *
   * @param sweep sweep of the quarter-chord line, positive aft
   * @return the specification with it
   */
  public TailSizing sweep(Angle sweep) {
    Door.finite(sweep, "tail sweep");
    return with(c -> c.sweep = sweep);
  }

  /**
   * At a height.
   *
   * @param height of the root above the fuselage reference line
   * @return the specification with it
   */
  public TailSizing height(Length height) {
    Door.finite(height, "tail height");
    return with(c -> c.height = height);
  }

  /**
   * Large enough for a static margin at the most aft centre of gravity.
   *
   * @param margin K_n wanted, fraction of the mean aerodynamic chord
   * @param centreOfGravity most aft centre of gravity, aft of the nose tip
   * @param model the aircraft's methods and fuselage; a horizontal tail in it is replaced by the one to be sized
   * @return the specification with it
   * @throws IllegalStateException if this is a vertical tail
   */
  public TailSizing staticMargin(double margin, Length centreOfGravity, PitchModel model) {
    Objects.requireNonNull(model, "model");
    Door.finite(margin, "static margin");
    Door.finite(centreOfGravity, "centre of gravity");
    if (choices.role == Tail.Role.VERTICAL) {
      throw new IllegalStateException("static margin is a matter of the horizontal tail, this is a vertical tail");
    }
    return with(c -> c.requirements.add(new MarginRequirement(margin, centreOfGravity, model)));
  }

  /**
   * Large enough to hold the nose up at the greatest lift with the most forward centre of gravity.
   *
   * @param liftCoefficient greatest lift coefficient of the aircraft, positive
   * @param centreOfGravity most forward centre of gravity, aft of the nose tip
   * @param tailDownload greatest download of the tail as a lift coefficient on its own area, positive
   * @param model the aircraft with data of its wing's section; its horizontal tail is replaced by the one to be sized
   * @return the specification with it
   * @throws IllegalStateException if this is a vertical tail
   */
  public TailSizing trimAt(double liftCoefficient, Length centreOfGravity, double tailDownload, PitchModel model) {
    Objects.requireNonNull(model, "model");
    if (choices.role == Tail.Role.VERTICAL) {
      throw new IllegalStateException("trim in pitch is a matter of the horizontal tail, this is a vertical tail");
    }
    return satisfying(new ForwardLimitRequirement(liftCoefficient, tailDownload, centreOfGravity, model));
  }

  /**
   * Large enough to lift the nose wheel at take-off with the most forward centre of gravity.
   *
   * @param groundLift lift coefficient of the wing on the ground run
   * @param weightRatio weight over dynamic pressure and wing area at the speed of rotation: the lift coefficient that would
   *     carry the aircraft there
   * @param tailDownload greatest download of the tail as a lift coefficient on its own area, positive
   * @param wheels where the main wheels touch the ground, aft of the nose tip
   * @param centreOfGravity most forward centre of gravity, aft of the nose tip
   * @param model the aircraft with data of its wing's section; its horizontal tail is replaced by the one to be sized
   * @return the specification with it
   * @throws IllegalStateException if this is a vertical tail
   */
  public TailSizing rotation(
      double groundLift,
      double weightRatio,
      double tailDownload,
      Length wheels,
      Length centreOfGravity,
      PitchModel model) {
    Objects.requireNonNull(wheels, "wheels");
    Objects.requireNonNull(centreOfGravity, "centre of gravity");
    if (choices.role == Tail.Role.VERTICAL) {
      throw new IllegalStateException("rotation is a matter of the horizontal tail, this is a vertical tail");
    }
    return satisfying(
        new RotationRequirement(groundLift, weightRatio, tailDownload, wheels, centreOfGravity, model));
  }

  /**
   * Large enough for weathercock stability.
   *
   * @param yawStiffness C_nβ wanted of the whole aircraft [1/rad], positive
   * @param airframe wing and fuselage; a vertical tail in it is replaced by the one to be sized
   * @param centreOfGravity centre of gravity, aft of the nose tip
   * @return the specification with it
   * @throws IllegalStateException if this is a horizontal tail
   */
  public TailSizing directionalStability(double yawStiffness, Airframe airframe, Length centreOfGravity) {
    if (choices.role == Tail.Role.HORIZONTAL) {
      throw new IllegalStateException("directional stability is a matter of the fin, this is a horizontal tail");
    }
    return satisfying(new DirectionalRequirement(yawStiffness, airframe, centreOfGravity));
  }

  /**
   * Large enough for a requirement of any other kind.
   *
   * @param requirement the requirement
   * @return the specification with it
   */
  public TailSizing satisfying(TailRequirement requirement) {
    Objects.requireNonNull(requirement, "requirement");
    return with(c -> c.requirements.add(requirement));
  }

  /**
   * Sizes the tail.
   *
   * @return the tail with its area's feasible range, workings and findings
   * @throws IllegalStateException if something is missing, or too much is given, or no area can do what is asked
   */
  public Sized<Tail> solve() {
    return new TailSolver(new TailChoices(choices)).solve();
  }

  @Override
  public String toString() {
    return "sizing of a " + choices.role.words() + " for " + choices.aircraftClass.words();
  }
}
