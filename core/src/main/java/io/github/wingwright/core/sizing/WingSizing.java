// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.basis.Decision;
import io.github.wingwright.core.basis.FeasibleRange;
import io.github.wingwright.core.basis.Sized;
import io.github.wingwright.core.geometry.AirfoilSection;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Density;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.core.quantity.WingLoading;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * The dimensions of a straight-tapered wing, from any set that is enough.
 *
 * <p>Two of span b, aspect ratio A and reference area S fix a wing. The area may be given as such, as a mass with a wing
 * loading, or as a mass with a speed at a lift coefficient in air of a density:
 *
 * <pre>{@code
 * A = b²/S        S = m/w        S = 2·m·g/(ρ·V²·C_L)
 * }</pre>
 *
 * <p>A set that is not enough is refused with a list of what would be. A set that says more than is needed is accepted if
 * it agrees with itself to 0.5 %, as numbers written to three figures do (the most direct values are used, and a note says
 * so), and refused otherwise with the names of what conflicts.
 *
 * <p>A specification is immutable: each call returns a new one, and saying a property again replaces it. Where nothing is
 * said the wing is rectangular, its quarter-chord line unswept, flat and without twist.
 *
 * <pre>{@code
 * Sized<Wing> wing = WingSizing.forSpan(millimetres(400))
 *     .aspectRatio(7.5)
 *     .taperRatio(0.6)
 *     .section(section)
 *     .dihedral(degrees(8))
 *     .solve();
 * }</pre>
 */
public final class WingSizing {
  private static final Shape RECTANGULAR = new Shape(1.0, Angle.ZERO, Angle.ZERO, Angle.ZERO, Optional.empty());

  private final WingInputs inputs;
  private final Shape shape;
  private final List<WeighedWing> weighed;
  private final NamedUnit<Length> unit;

  /** What is said about the form, apart from size. */
  record Shape(double taperRatio, Angle sweep, Angle dihedral, Angle washout, Optional<AirfoilSection> section) {}

  /** A consideration and what was decided about it. */
  record WeighedWing(WingConsideration consideration, Decision decision) {
    WeighedWing {
      Objects.requireNonNull(consideration, "consideration");
    }
  }

  private WingSizing(WingInputs inputs, Shape shape, List<WeighedWing> weighed, NamedUnit<Length> unit) {
    this.inputs = inputs;
    this.shape = shape;
    this.weighed = List.copyOf(weighed);
    this.unit = unit;
  }

  /**
   * Begins with nothing said.
   *
   * @return the specification
   */
  public static WingSizing open() {
    return new WingSizing(WingInputs.NONE, RECTANGULAR, List.of(), Length.MILLIMETRE);
  }

  /**
   * Begins with a span.
   *
   * @param span span, positive
   * @return the specification
   */
  public static WingSizing forSpan(Length span) {
    return open().span(span);
  }

  /**
   * Begins with an area.
   *
   * @param area reference area, positive
   * @return the specification
   */
  public static WingSizing forArea(Area area) {
    return open().area(area);
  }

  /**
   * Begins with the mass that the wing carries.
   *
   * @param mass mass of the aircraft, positive
   * @return the specification
   */
  public static WingSizing forMass(Mass mass) {
    return open().mass(mass);
  }

  /**
   * States the span.
   *
   * @param span span over both halves, positive
   * @return the new specification
   */
  public WingSizing span(Length span) {
    return with(inputs.withSpan(Door.positive(span, "span")));
  }

  /**
   * States the area.
   *
   * @param area reference area, positive
   * @return the new specification
   */
  public WingSizing area(Area area) {
    return with(inputs.withArea(Door.positive(area, "reference area")));
  }

  /**
   * States the aspect ratio.
   *
   * @param aspectRatio b²/S, positive
   * @return the new specification
   */
  public WingSizing aspectRatio(double aspectRatio) {
    return with(inputs.withAspectRatio(Door.positive(aspectRatio, "aspect ratio")));
  }

  /**
   * States the mass.
   *
   * @param mass mass of the aircraft, positive
   * @return the new specification
   */
  public WingSizing mass(Mass mass) {
    return with(inputs.withMass(Door.positive(mass, "mass")));
  }

  /**
   * States the wing loading; with a mass it gives the area.
   *
   * @param loading mass over reference area, positive
   * @return the new specification
   */
  public WingSizing wingLoading(WingLoading loading) {
    return with(inputs.withLoading(Door.positive(loading, "wing loading")));
  }

  /**
   * States a speed of level flight at a lift coefficient; with a mass it gives the area.
   *
   * @param speed the speed, positive
   * @param liftCoefficient lift coefficient of the wing at that speed, positive
   * @param density air density, positive
   * @return the new specification
   */
  public WingSizing speedAtLift(Speed speed, double liftCoefficient, Density density) {
    return with(
        inputs.withSpeed(
            new WingInputs.SpeedAtLift(
                Door.positive(speed, "speed"),
                Door.positive(liftCoefficient, "lift coefficient"),
                Door.positive(density, "air density"))));
  }

  /**
   * States the taper ratio.
   *
   * @param ratio tip chord over root chord, 0 to 1.5
   * @return the new specification
   */
  public WingSizing taperRatio(double ratio) {
    Door.within(ratio, 0.0, 1.5, "taper ratio");
    return with(new Shape(ratio, shape.sweep, shape.dihedral, shape.washout, shape.section));
  }

  /**
   * States the sweep of the quarter-chord line.
   *
   * @param angle positive aft, −60° to 60°
   * @return the new specification
   */
  public WingSizing quarterChordSweep(Angle angle) {
    Objects.requireNonNull(angle, "angle");
    within(angle, 60.0, "quarter-chord sweep");
    return with(new Shape(shape.taperRatio, angle, shape.dihedral, shape.washout, shape.section));
  }

  /**
   * States the dihedral.
   *
   * @param angle positive up, −45° to 45°
   * @return the new specification
   */
  public WingSizing dihedral(Angle angle) {
    Objects.requireNonNull(angle, "angle");
    within(angle, 45.0, "dihedral");
    return with(new Shape(shape.taperRatio, shape.sweep, angle, shape.washout, shape.section));
  }

  /**
   * States the washout.
   *
   * @param angle how much less incidence the tip has than the root, −15° to 15°
   * @return the new specification
   */
  public WingSizing washout(Angle angle) {
    Objects.requireNonNull(angle, "angle");
    within(angle, 15.0, "washout");
    return with(new Shape(shape.taperRatio, shape.sweep, shape.dihedral, angle, shape.section));
  }

  /**
   * States the section.
   *
   * @param section the section, the same along the span
   * @return the new specification
   */
  public WingSizing section(AirfoilSection section) {
    Objects.requireNonNull(section, "section");
    return with(new Shape(shape.taperRatio, shape.sweep, shape.dihedral, shape.washout, Optional.of(section)));
  }

  /**
   * Adds considerations on the chord. One of a name that is there already takes its place.
   *
   * @param considerations what is considered; none adds nothing
   * @return the new specification
   */
  public WingSizing considering(WingConsideration... considerations) {
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
  public WingSizing settingAside(WingConsideration consideration, String because) {
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
  public WingSizing provisionally(WingConsideration consideration, String until) {
    return with(Collections.singletonList(consideration), Decision.provisional(until));
  }

  /**
   * Chooses the unit in which ranges and findings are shown.
   *
   * @param shown unit of length
   * @return the new specification
   */
  public WingSizing showing(NamedUnit<Length> shown) {
    Objects.requireNonNull(shown, "unit");
    return new WingSizing(inputs, shape, weighed, shown);
  }

  /**
   * What counts for the chord, without what was set aside.
   *
   * @return the considerations in the order in which they were added
   */
  public List<WingConsideration> considerations() {
    return weighed.stream().filter(one -> one.decision().applies()).map(WeighedWing::consideration).toList();
  }

  /**
   * What the considerations leave of the mean geometric chord at the span.
   *
   * @return the range
   * @throws IllegalStateException if span or section are missing
   */
  public FeasibleRange meanChordRange() {
    if (inputs.span().isEmpty()) {
      throw new IllegalStateException("wing needs a span for the range of its chord, has none");
    }
    return WingChoice.range(frame(inputs.span().get().si()), weighed, unit);
  }

  /**
   * Solves for the wing.
   *
   * @return the wing with the feasible range of its chord, workings and findings
   * @throws IllegalStateException if the set is not enough or in conflict with itself, or there is no section
   */
  public Sized<Wing> solve() {
    WingSize size = WingSize.solve(inputs);
    return WingChoice.of(size, shape, frame(size.span().value()), weighed, unit);
  }

  private WingFrame frame(double span) {
    AirfoilSection section =
        shape.section.orElseThrow(() -> new IllegalStateException("wing needs a section, has none: give section(…)"));
    return new WingFrame(span, shape.taperRatio, section);
  }

  private WingSizing with(WingInputs other) {
    return new WingSizing(other, shape, weighed, unit);
  }

  private WingSizing with(Shape other) {
    return new WingSizing(inputs, other, weighed, unit);
  }

  private WingSizing with(List<WingConsideration> added, Decision decision) {
    Map<String, WeighedWing> all = new LinkedHashMap<>();
    weighed.forEach(one -> all.put(one.consideration().name(), one));
    for (WingConsideration consideration : added) {
      Objects.requireNonNull(consideration, "consideration");
      all.put(consideration.name(), new WeighedWing(consideration, decision));
    }
    return new WingSizing(inputs, shape, List.copyOf(all.values()), unit);
  }

  private static void within(Angle angle, double degrees, String name) {
    // Half a millionth of a degree beyond the end is rounding in a conversion.
    if (!(Math.abs(angle.degrees()) <= degrees + 5e-7)) {
      throw new IllegalArgumentException(
          name + " must be " + Angle.degrees(-degrees) + " to " + Angle.degrees(degrees) + ", was " + angle);
    }
  }

  @Override
  public String toString() {
    List<String> said = new ArrayList<>();
    inputs.span().ifPresent(b -> said.add("span " + b));
    inputs.area().ifPresent(s -> said.add("area " + s));
    inputs.aspectRatio().ifPresent(a -> said.add("A " + NamedUnit.NUMBER.format(a, 4)));
    inputs.mass().ifPresent(m -> said.add(m.toString()));
    String line = "wing sizing: " + (said.isEmpty() ? "nothing said" : String.join(", ", said));
    return line.length() <= 75 ? line : line.substring(0, 74) + "…";
  }
}
