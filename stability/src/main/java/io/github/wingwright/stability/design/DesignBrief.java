// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import io.github.wingwright.core.aerodynamics.SectionPolar;
import io.github.wingwright.core.atmosphere.AirState;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Sized;
import io.github.wingwright.core.geometry.AirfoilSection;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.mass.MassItem;
import io.github.wingwright.core.mass.Material;
import io.github.wingwright.core.mass.PrintedShell;
import io.github.wingwright.core.performance.GlideGoal;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.core.sizing.WingSizing;
import io.github.wingwright.stability.AircraftClass;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * What is asked of a hand-launched glider: all that {@code SizingLoop} needs to make a {@code Design} of it.
 *
 * <p>A brief is immutable: each call returns a new one, so that a study can branch from it. The wing is asked for as a
 * {@link WingSizing}, without its mass; the fuselage as a function of the wing, because its diameter is negotiated with the
 * wing's thickness among others.
 *
 * <pre>{@code
 * DesignBrief brief = DesignBrief.named("Plover")
 *     .air(AirState.of(hectopascals(1013), degreesCelsius(19)))
 *     .thrown(metresPerSecond(7), metres(1.6))
 *     .wing(WingSizing.forSpan(millimetres(410)).aspectRatio(5.5).taperRatio(0.7).section(section))
 *     .wingPolar(EstimatedPolar.of(section))
 *     .fuselage(wing -> FuselageSizing.of(BodyShape.capsule()).considering(…).nearestToTargets())
 *     .tails(plate, EstimatedPolar.of(plate), new TailBrief(0.5, 3.5, 0.8), new TailBrief(0.035, 1.5, 0.7))
 *     .material(Materials.FOAMING_PLA);
 * }</pre>
 *
 * <p>What this example says must be said; the loop refuses a brief without it. The rest has a value until it is given:
 * a hand-launched glider judged by distance; static margin 0.15; lines of 0.42 mm, one wall and no infill in the wing, two
 * walls in the body, tail plates of 0.84 mm; a wing that may sit anywhere between nose and tail; nothing on board.
 */
public final class DesignBrief {
  private final BriefParts parts;

  private DesignBrief(BriefParts parts) {
    this.parts = parts;
  }

  /** Changes one property of a copy. */
  @FunctionalInterface
  private interface Change {
    void on(BriefParts parts);
  }

  private DesignBrief with(Change change) {
    BriefParts copy = parts.copy();
    change.on(copy);
    return new DesignBrief(copy);
  }

  /**
   * Begins a brief.
   *
   * @param name name of the design
   * @return the brief
   */
  public static DesignBrief named(String name) {
    Objects.requireNonNull(name, "name");
    if (name.isBlank()) {
      throw new IllegalArgumentException("name of a design must not be blank");
    }
    return new DesignBrief(new BriefParts()).with(p -> p.name = name);
  }

  /**
   * The air it flies in.
   *
   * @param air pressure and temperature where it flies
   * @return the new brief
   */
  public DesignBrief air(AirState air) {
    Objects.requireNonNull(air, "air");
    return with(p -> p.air = air);
  }

  /**
   * How it is launched.
   *
   * @param speed speed at which it leaves the hand, positive
   * @param height height of the hand above the floor, positive
   * @return the new brief
   */
  public DesignBrief thrown(Speed speed, Length height) {
    Objects.requireNonNull(speed, "speed");
    Objects.requireNonNull(height, "height");
    return launched(Launch.thrown(speed, height));
  }

  /**
   * How it is launched, from the hand or by an elastic.
   *
   * @param launch the launch
   * @return the new brief
   */
  public DesignBrief launched(Launch launch) {
    Objects.requireNonNull(launch, "launch");
    return with(p -> p.launch = launch);
  }

  /**
   * What it is judged by.
   *
   * @param goal distance or time
   * @return the new brief
   */
  public DesignBrief judgedBy(GlideGoal goal) {
    Objects.requireNonNull(goal, "goal");
    return with(p -> p.goal = goal);
  }

  /**
   * The class whose guidelines it is held against.
   *
   * @param aircraftClass the class
   * @return the new brief
   */
  public DesignBrief forClass(AircraftClass aircraftClass) {
    Objects.requireNonNull(aircraftClass, "aircraftClass");
    return with(p -> p.aircraftClass = aircraftClass);
  }

  /**
   * The wing that is asked for. If its area depends on the mass (a loading, a speed at a lift coefficient), the mass of the
   * whole glider is put in by the loop.
   *
   * @param wing specification without mass
   * @return the new brief
   */
  public DesignBrief wing(WingSizing wing) {
    Objects.requireNonNull(wing, "wing");
    return with(p -> p.wing = mass -> wing);
  }

  /**
   * The wing that is asked for, where its considerations need the mass of the glider.
   *
   * @param wing from the mass of the whole glider to the specification
   * @return the new brief
   */
  public DesignBrief wing(Function<Mass, WingSizing> wing) {
    Objects.requireNonNull(wing, "wing");
    return with(p -> p.wing = wing);
  }

  /**
   * What is known of the wing's section in the air.
   *
   * @param polar measured, computed or estimated
   * @return the new brief
   */
  public DesignBrief wingPolar(SectionPolar polar) {
    Objects.requireNonNull(polar, "polar");
    return with(p -> p.wingPolar = polar);
  }

  /**
   * How the fuselage is negotiated, once the wing is known.
   *
   * @param sizing from the wing to the sized fuselage
   * @return the new brief
   */
  public DesignBrief fuselage(Function<Wing, Sized<Fuselage>> sizing) {
    Objects.requireNonNull(sizing, "sizing");
    return with(p -> p.fuselage = sizing);
  }

  /**
   * The tails: plates whose trailing edges end with the fuselage.
   *
   * @param section section of both
   * @param polar what is known of it in the air
   * @param horizontal what is asked of the horizontal tail
   * @param vertical what is asked of the fin
   * @return the new brief
   */
  public DesignBrief tails(AirfoilSection section, SectionPolar polar, TailBrief horizontal, TailBrief vertical) {
    Objects.requireNonNull(section, "section");
    Objects.requireNonNull(polar, "polar");
    Objects.requireNonNull(horizontal, "horizontal");
    Objects.requireNonNull(vertical, "vertical");
    return with(
        p -> {
          p.tailSection = section;
          p.tailPolar = polar;
          p.horizontalTail = horizontal;
          p.verticalTail = vertical;
        });
  }

  /**
   * What it is printed of.
   *
   * @param material the material of all printed parts
   * @return the new brief
   */
  public DesignBrief material(Material material) {
    Objects.requireNonNull(material, "material");
    return with(p -> p.material = material);
  }

  /**
   * How wide a line the nozzle lays.
   *
   * @param width line width, positive
   * @return the new brief
   */
  public DesignBrief lineWidth(Length width) {
    Door.positive(width, "line width");
    return with(p -> p.lineWidth = width);
  }

  /**
   * How the wing is printed.
   *
   * @param walls lines side by side, 1 to 20
   * @param infill share of the inside that is filled, 0 to 1
   * @return the new brief
   */
  public DesignBrief wingWalls(int walls, double infill) {
    checkWalls(walls);
    if (!(infill >= 0.0 && infill <= 1.0)) {
      throw new IllegalArgumentException("infill must be 0 to 1, was " + infill);
    }
    return with(
        p -> {
          p.wingWalls = walls;
          p.wingInfill = infill;
        });
  }

  /**
   * How the fuselage is printed: walls, and nothing inside.
   *
   * @param walls lines side by side, 1 to 20
   * @return the new brief
   */
  public DesignBrief bodyWalls(int walls) {
    checkWalls(walls);
    return with(p -> p.bodyWalls = walls);
  }

  private static void checkWalls(int walls) {
    if (walls < 1 || walls > 20) {
      throw new IllegalArgumentException("number of walls must be 1 to 20, was " + walls);
    }
  }

  /**
   * Thickness of the tail plates.
   *
   * @param thickness thickness, positive
   * @return the new brief
   */
  public DesignBrief tailThickness(Length thickness) {
    Door.positive(thickness, "tail thickness");
    return with(p -> p.tailThickness = thickness);
  }

  /**
   * The static margin that is wanted.
   *
   * @param margin in mean aerodynamic chords, 0.01 to 0.6
   * @return the new brief
   */
  public DesignBrief staticMargin(double margin) {
    if (!(margin >= 0.01 && margin <= 0.6)) {
      throw new IllegalArgumentException("static margin must be 0.01 to 0.6, was " + margin);
    }
    return with(p -> p.staticMargin = margin);
  }

  /**
   * Where the wing may sit on the fuselage. Without this the wing may sit from one diameter behind the nose to where the
   * tails begin.
   *
   * @param forward foremost leading edge of the root, aft of the nose tip
   * @param aft rearmost leading edge of the root
   * @return the new brief
   */
  public DesignBrief wingBetween(Length forward, Length aft) {
    Objects.requireNonNull(forward, "forward");
    Objects.requireNonNull(aft, "aft");
    if (!(aft.si() > forward.si())) {
      throw new IllegalArgumentException(
          "rearmost wing station must lie behind the foremost, " + forward + ", was " + aft);
    }
    return with(p -> p.wingStations = Interval.between(forward.si(), aft.si()));
  }

  /**
   * How long the arm of the horizontal tail must be at least: it keeps the wing from moving too far aft.
   *
   * @param least least arm, not negative
   * @return the new brief
   */
  public DesignBrief tailArmAtLeast(Length least) {
    Door.notNegative(least, "least tail arm");
    return with(p -> p.leastTailArm = least);
  }

  /**
   * Adds things that are on board and not printed with the rest: a clip, glue, a camera.
   *
   * @param items the things with their places; none adds nothing
   * @return the new brief
   */
  public DesignBrief carrying(MassItem... items) {
    Objects.requireNonNull(items, "items");
    List<MassItem> more = new ArrayList<>(parts.carried);
    for (MassItem item : items) {
      more.add(Objects.requireNonNull(item, "item"));
    }
    return with(p -> p.carried = List.copyOf(more));
  }

  private <T> T given(@Nullable T value, String what) {
    if (value == null) {
      throw new IllegalStateException("the brief \"" + parts.name + "\" does not say " + what);
    }
    return value;
  }

  /**
   * Name of the design.
   *
   * @return the name
   */
  public String name() {
    return parts.name;
  }

  /**
   * The air it flies in.
   *
   * @return pressure and temperature
   * @throws IllegalStateException if it was not given
   */
  public AirState air() {
    return given(parts.air, "in what air it flies: air(…)");
  }

  /**
   * How it is launched.
   *
   * @return speed and height
   * @throws IllegalStateException if it was not given
   */
  public Launch launch() {
    return given(parts.launch, "how it is launched: thrown(…)");
  }

  /**
   * What it is judged by.
   *
   * @return distance or time
   */
  public GlideGoal goal() {
    return parts.goal;
  }

  /**
   * The class whose guidelines it is held against.
   *
   * @return the class
   */
  public AircraftClass aircraftClass() {
    return parts.aircraftClass;
  }

  /**
   * The wing that is asked for.
   *
   * @return from the mass of the whole glider to the specification
   * @throws IllegalStateException if it was not given
   */
  public Function<Mass, WingSizing> wing() {
    return given(parts.wing, "what wing it has: wing(…)");
  }

  /**
   * What is known of the wing's section.
   *
   * @return the polar
   * @throws IllegalStateException if it was not given
   */
  public SectionPolar wingPolar() {
    return given(parts.wingPolar, "what is known of the wing's section in the air: wingPolar(…)");
  }

  /**
   * How the fuselage is negotiated.
   *
   * @return from the wing to the sized fuselage
   * @throws IllegalStateException if it was not given
   */
  public Function<Wing, Sized<Fuselage>> fuselage() {
    return given(parts.fuselage, "how the fuselage is sized: fuselage(…)");
  }

  /**
   * What is asked of the horizontal tail.
   *
   * @return coefficient, aspect and taper ratio
   * @throws IllegalStateException if it was not given
   */
  public TailBrief horizontalTail() {
    return given(parts.horizontalTail, "what tails it has: tails(…)");
  }

  /**
   * What is asked of the fin.
   *
   * @return coefficient, aspect and taper ratio
   * @throws IllegalStateException if it was not given
   */
  public TailBrief verticalTail() {
    return given(parts.verticalTail, "what tails it has: tails(…)");
  }

  /**
   * Section of both tails.
   *
   * @return the section
   * @throws IllegalStateException if it was not given
   */
  public AirfoilSection tailSection() {
    return given(parts.tailSection, "what tails it has: tails(…)");
  }

  /**
   * What is known of the tails' section.
   *
   * @return the polar
   * @throws IllegalStateException if it was not given
   */
  public SectionPolar tailPolar() {
    return given(parts.tailPolar, "what tails it has: tails(…)");
  }

  /**
   * What it is printed of.
   *
   * @return the material
   * @throws IllegalStateException if it was not given
   */
  public Material material() {
    return given(parts.material, "what it is made of: material(…)");
  }

  /**
   * Width of a printed line.
   *
   * @return the width
   */
  public Length lineWidth() {
    return parts.lineWidth;
  }

  /**
   * How the wing is printed.
   *
   * @return walls and infill
   * @throws IllegalStateException if the material was not given
   */
  public PrintedShell wingShell() {
    return PrintedShell.of(material(), parts.wingWalls, parts.lineWidth).infill(parts.wingInfill);
  }

  /**
   * How the fuselage is printed.
   *
   * @return walls
   * @throws IllegalStateException if the material was not given
   */
  public PrintedShell bodyShell() {
    return PrintedShell.of(material(), parts.bodyWalls, parts.lineWidth);
  }

  /**
   * Thickness of the tail plates.
   *
   * @return thickness
   */
  public Length tailThickness() {
    return parts.tailThickness;
  }

  /**
   * The static margin that is wanted.
   *
   * @return in mean aerodynamic chords
   */
  public double staticMargin() {
    return parts.staticMargin;
  }

  /**
   * Where the leading edge of the wing's root may sit.
   *
   * @return interval [m] aft of the nose tip; all values if it was not given
   */
  public Interval wingStations() {
    return parts.wingStations;
  }

  /**
   * How long the arm of the horizontal tail must be at least.
   *
   * @return the least arm, zero if it was not given
   */
  public Length leastTailArm() {
    return parts.leastTailArm;
  }

  /**
   * What is on board and not printed with the rest.
   *
   * @return the things
   */
  public List<MassItem> carried() {
    return parts.carried;
  }

  @Override
  public String toString() {
    return "brief " + parts.name;
  }
}
