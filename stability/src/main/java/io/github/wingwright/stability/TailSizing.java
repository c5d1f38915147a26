// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.core.basis.Bound;
import io.github.wingwright.core.basis.FeasibleRange;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Guideline;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Sized;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Strength;
import io.github.wingwright.core.basis.Workings;
import io.github.wingwright.core.geometry.AirfoilSection;
import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.geometry.TaperedPlanform;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

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
 * <p>Any two of arm, area and volume coefficient give the third; all three are refused. A wanted static margin
 * ({@link #staticMargin}) asks for an area too. Where several requirements ask for an area the greatest decides: the
 * smallest tail that satisfies all, and {@link FeasibleRange#lowerBinding()} says who that was. Aspect and taper ratio
 * default to the middle of the range of the class. Positions: the tail's quarter chord lies the arm behind the wing's.
 */
public final class TailSizing {
  static final Formula BEHIND =
      Formula.named("root leading edge of the tail behind the nose")
          .gives("x_t", Length.METRE)
          .as("x_w + l − x_q")
          .where("x_w", "quarter mean chord of the wing behind the nose", Length.METRE, -1, 100)
          .where("l", "tail arm", Length.METRE, -60, 60)
          .where("x_q", "quarter mean chord of the tail behind its root leading edge", Length.METRE, -1, 20)
          .from(Source.DEFINITION)
          .computedBy((double wing, double arm, double quarter) -> wing + arm - quarter);

  private final Choices choices;

  /** What was asked for so far. */
  private record Choices(
      Tail.Role role,
      Wing wing,
      AircraftClass aircraftClass,
      @Nullable Length arm,
      @Nullable Area area,
      @Nullable Double coefficient,
      @Nullable Double aspectRatio,
      @Nullable Double taperRatio,
      @Nullable AirfoilSection section,
      Angle sweep,
      Length height,
      List<TailRequirement> requirements) {}

  private TailSizing(Choices choices) {
    this.choices = choices;
  }

  /**
   * Begins a horizontal tail.
   *
   * @param wing the wing, in its place
   * @return the specification
   */
  public static TailSizing horizontal(Wing wing) {
    return begin(Tail.Role.HORIZONTAL, wing);
  }

  /**
   * Begins a vertical tail.
   *
   * @param wing the wing, in its place
   * @return the specification
   */
  public static TailSizing vertical(Wing wing) {
    return begin(Tail.Role.VERTICAL, wing);
  }

  private static TailSizing begin(Tail.Role role, Wing wing) {
    return new TailSizing(
        new Choices(
            role,
            wing,
            AircraftClass.HAND_LAUNCHED_GLIDER,
            null,
            null,
            null,
            null,
            null,
            null,
            Angle.ZERO,
            Length.ZERO,
            List.of()));
  }

  private TailSizing with(UnaryOperator<Draft> change) {
    return new TailSizing(change.apply(new Draft(choices)).choices());
  }

  /**
   * For a class of aircraft, whose ranges apply and give what is not asked for; at first hand-launched gliders.
   *
   * @param aircraftClass the class
   * @return the specification with it
   */
  public TailSizing forClass(AircraftClass aircraftClass) {
    return with(d -> d.aircraftClass(aircraftClass));
  }

  /**
   * At an arm.
   *
   * @param arm distance from the wing's quarter mean aerodynamic chord to the tail's, positive
   * @return the specification with it
   */
  public TailSizing arm(Length arm) {
    Door.positive(arm, "tail arm");
    return with(d -> d.arm(arm));
  }

  /**
   * Of an area.
   *
   * @param area tail area, positive
   * @return the specification with it
   */
  public TailSizing area(Area area) {
    Door.positive(area, "tail area");
    return with(d -> d.area(area));
  }

  /**
   * Of a volume coefficient.
   *
   * @param coefficient V_h or V_v, positive
   * @return the specification with it
   */
  public TailSizing volumeCoefficient(double coefficient) {
    Door.positive(coefficient, "tail volume coefficient");
    return with(d -> d.coefficient(coefficient));
  }

  /**
   * Of the aspect ratio; of a fin, its height squared over its area.
   *
   * @param aspectRatio positive
   * @return the specification with it
   */
  public TailSizing aspectRatio(double aspectRatio) {
    Door.positive(aspectRatio, "tail aspect ratio");
    return with(d -> d.aspectRatio(aspectRatio));
  }

  /**
   * Of the taper ratio.
   *
   * @param taperRatio tip chord over root chord, 0 to 1.5
   * @return the specification with it
   */
  public TailSizing taperRatio(double taperRatio) {
    Door.within(taperRatio, 0.0, 1.5, "tail taper ratio");
    return with(d -> d.taperRatio(taperRatio));
  }

  /**
   * Of a section.
   *
   * @param section the section
   * @return the specification with it
   */
  public TailSizing section(AirfoilSection section) {
    return with(d -> d.section(section));
  }

  /**
   * Swept.
   *
   * @param sweep sweep of the quarter-chord line, positive aft
   * @return the specification with it
   */
  public TailSizing sweep(Angle sweep) {
    Door.finite(sweep, "tail sweep");
    return with(d -> d.sweep(sweep));
  }

  /**
   * At a height.
   *
   * @param height of the root above the fuselage reference line
   * @return the specification with it
   */
  public TailSizing height(Length height) {
    Door.finite(height, "tail height");
    return with(d -> d.height(height));
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
    Door.finite(margin, "static margin");
    Door.finite(centreOfGravity, "centre of gravity");
    if (choices.role() == Tail.Role.VERTICAL) {
      throw new IllegalStateException("static margin is a matter of the horizontal tail, this is a vertical tail");
    }
    return with(d -> d.requirement(new MarginRequirement(margin, centreOfGravity, model)));
  }

  /**
   * Large enough for a requirement of any other kind.
   *
   * @param requirement the requirement
   * @return the specification with it
   */
  public TailSizing satisfying(TailRequirement requirement) {
    return with(d -> d.requirement(requirement));
  }

  /**
   * Sizes the tail.
   *
   * @return the tail with its area's feasible range, workings and findings
   * @throws IllegalStateException if something is missing, or too much is given, or no area can do what is asked
   */
  public Sized<Tail> solve() {
    Choices c = choices;
    if (c.section() == null) {
      throw new IllegalStateException("a " + c.role().words() + " needs a section, none was given");
    }
    AirfoilSection section = c.section();
    Guideline aspects = c.aircraftClass().tailAspectRatio(c.role());
    Guideline tapers = c.aircraftClass().tailTaperRatio(c.role());
    Step aspect = chosen("aspect ratio of the tail", "A_t", c.aspectRatio(), aspects);
    Step taper = chosen("taper ratio of the tail", "λ_t", c.taperRatio(), tapers);
    boolean level = c.role() == Tail.Role.HORIZONTAL;
    Step wingArea = Step.given("wing reference area", "S", c.wing().planform().area(), Source.BRIEF);
    Step reference =
        level
            ? Step.given("mean aerodynamic chord", "c̄", c.wing().planform().meanAerodynamicChord(), Source.BRIEF)
            : Step.given("wing span", "b", c.wing().planform().span(), Source.BRIEF);
    Step arm = armStep(c, wingArea, reference, level);

    List<Bound> bounds = new ArrayList<>();
    Guideline volumes = c.aircraftClass().tailVolume(c.role());
    bounds.add(
        Bound.of(volumes.name() + " for " + volumes.appliesTo(), Strength.GUIDELINE, volumes.source(),
            Interval.between(
                TailVolume.area(volumes.range().lower(), arm.value(), wingArea.value(), reference.value()),
                TailVolume.area(volumes.range().upper(), arm.value(), wingArea.value(), reference.value()))));
    Step area = c.area() == null ? null : Step.given(c.role().words() + " area", level ? "S_h" : "S_v", c.area(), Source.BRIEF);
    UnaryOperator<Area> keep = a -> a;
    if (c.coefficient() != null && c.area() == null) {
      Step v = Step.given(volumes.name(), level ? "V_h" : "V_v", c.coefficient(), Source.BRIEF);
      area = Step.of(level ? TailVolume.HORIZONTAL_AREA : TailVolume.VERTICAL_AREA, v, arm, wingArea, reference);
      bounds.add(Bound.of("volume coefficient wanted", Strength.LIMIT, Source.BRIEF, Interval.atLeast(area.value())));
    }
    for (TailRequirement requirement : c.requirements()) {
      Step needed =
          requirement.area(
              a -> tail(c, section, Area.squareMetres(a), Length.metres(arm.value()), aspect.value(), taper.value()));
      bounds.add(
          Bound.of(requirement.name(), Strength.LIMIT, requirement.source(), Interval.atLeast(needed.value())));
      if (c.area() == null && (area == null || needed.value() > area.value())) {
        area = needed;
      }
    }
    if (area == null) {
      throw new IllegalStateException(
          "a " + c.role().words() + " needs an area, a volume coefficient or a static margin, none was given");
    }
    if (!(area.value() > 0.0)) {
      throw new IllegalStateException(
          "no " + c.role().words() + " is needed: the aircraft satisfies every requirement without one");
    }
    Tail value =
        tail(
            c,
            section,
            keep.apply(Area.squareMetres(area.value())),
            Length.metres(arm.value()),
            aspect.value(),
            taper.value());
    FeasibleRange range = FeasibleRange.of(c.role().words() + " area", Area.SQUARE_CENTIMETRE, bounds);
    List<Step> results = dimensions(c, value, arm, area, aspect, taper, wingArea, reference, level);
    Workings workings = Workings.of(results);
    List<Finding> findings = new ArrayList<>(workings.findings());
    findings.addAll(range.check(area.value()));
    volumes.check(TailVolume.of(value, c.wing())).ifPresent(findings::add);
    aspects.check(aspect.value()).ifPresent(findings::add);
    tapers.check(taper.value()).ifPresent(findings::add);
    return new Sized<>(value, range, workings, findings, List.of());
  }

  private static Step armStep(Choices c, Step wingArea, Step reference, boolean level) {
    Length arm = c.arm();
    if (arm != null) {
      if (c.area() != null && c.coefficient() != null) {
        throw new IllegalStateException(
            "arm (" + arm + "), area (" + c.area() + ") and volume coefficient (" + c.coefficient() + ") of a "
                + c.role().words() + " conflict: give two of them");
      }
      return Step.given(c.role().words() + " arm", level ? "l_h" : "l_v", arm, Source.BRIEF);
    }
    if (c.area() == null || c.coefficient() == null) {
      throw new IllegalStateException(
          "a " + c.role().words() + " needs an arm, or both area and volume coefficient to find it, none was given");
    }
    return Step.of(
        level ? TailVolume.HORIZONTAL_ARM : TailVolume.VERTICAL_ARM,
        Step.given("tail volume coefficient", level ? "V_h" : "V_v", c.coefficient(), Source.BRIEF),
        Step.given(c.role().words() + " area", level ? "S_h" : "S_v", c.area(), Source.BRIEF),
        wingArea,
        reference);
  }

  private static Step chosen(String name, String symbol, @Nullable Double value, Guideline range) {
    return value != null
        ? Step.given(name, symbol, value, Source.BRIEF)
        : Step.given(name, symbol, 0.5 * (range.range().lower() + range.range().upper()), range.source());
  }

  private static Tail tail(
      Choices c, AirfoilSection section, Area area, Length arm, double aspectRatio, double taperRatio) {
    boolean level = c.role() == Tail.Role.HORIZONTAL;
    Planform plain =
        level
            ? Planform.tapered(area, aspectRatio, taperRatio)
            : Planform.taperedFin(area, aspectRatio, taperRatio);
    Planform planform = c.sweep().si() == 0.0 ? plain : plain.withSweep(0.25, c.sweep());
    double x = c.wing().quarterChordX().si() + arm.si() - planform.quarterMeanAerodynamicChordX().si();
    return new Tail(c.role(), planform, section, Placement.at(Length.metres(x), c.height()), Angle.ZERO);
  }

  private static List<Step> dimensions(
      Choices c,
      Tail tail,
      Step arm,
      Step area,
      Step aspect,
      Step taper,
      Step wingArea,
      Step reference,
      boolean level) {
    String of = " of the " + c.role().words();
    Step span = Step.of((level ? "span" : "height") + of, "b_t", TaperedPlanform.SPAN, area, aspect);
    Step root = Step.of("root chord" + of, "c_r", TaperedPlanform.ROOT_CHORD, area, span, taper);
    Step tip = Step.of("tip chord" + of, "c_t", TaperedPlanform.TIP_CHORD, taper, root);
    Step mean =
        Step.of("mean aerodynamic chord" + of, "c̄_t", TaperedPlanform.MEAN_AERODYNAMIC_CHORD, root, taper);
    Step volume =
        Step.of(level ? TailVolume.HORIZONTAL : TailVolume.VERTICAL, area, arm, wingArea, reference);
    Step place =
        Step.of(
            BEHIND,
            Step.given("quarter mean chord of the wing behind the nose", "x_w", c.wing().quarterChordX(), Source.BRIEF),
            arm,
            Step.given(
                "quarter mean chord of the tail behind its root leading edge",
                "x_q",
                tail.planform().quarterMeanAerodynamicChordX(),
                Source.DEFINITION));
    return List.of(span, tip, mean, volume, place);
  }

  /** A choice being changed in one place. */
  private record Draft(Choices choices) {
    Draft aircraftClass(AircraftClass v) {
      Choices c = choices;
      return new Draft(
          new Choices(c.role, c.wing, v, c.arm, c.area, c.coefficient, c.aspectRatio, c.taperRatio, c.section, c.sweep,
              c.height, c.requirements));
    }

    Draft arm(Length v) {
      Choices c = choices;
      return new Draft(
          new Choices(c.role, c.wing, c.aircraftClass, v, c.area, c.coefficient, c.aspectRatio, c.taperRatio,
              c.section, c.sweep, c.height, c.requirements));
    }

    Draft area(Area v) {
      Choices c = choices;
      return new Draft(
          new Choices(c.role, c.wing, c.aircraftClass, c.arm, v, c.coefficient, c.aspectRatio, c.taperRatio, c.section,
              c.sweep, c.height, c.requirements));
    }

    Draft coefficient(double v) {
      Choices c = choices;
      return new Draft(
          new Choices(c.role, c.wing, c.aircraftClass, c.arm, c.area, v, c.aspectRatio, c.taperRatio, c.section,
              c.sweep, c.height, c.requirements));
    }

    Draft aspectRatio(double v) {
      Choices c = choices;
      return new Draft(
          new Choices(c.role, c.wing, c.aircraftClass, c.arm, c.area, c.coefficient, v, c.taperRatio, c.section,
              c.sweep, c.height, c.requirements));
    }

    Draft taperRatio(double v) {
      Choices c = choices;
      return new Draft(
          new Choices(c.role, c.wing, c.aircraftClass, c.arm, c.area, c.coefficient, c.aspectRatio, v, c.section,
              c.sweep, c.height, c.requirements));
    }

    Draft section(AirfoilSection v) {
      Choices c = choices;
      return new Draft(
          new Choices(c.role, c.wing, c.aircraftClass, c.arm, c.area, c.coefficient, c.aspectRatio, c.taperRatio, v,
              c.sweep, c.height, c.requirements));
    }

    Draft sweep(Angle v) {
      Choices c = choices;
      return new Draft(
          new Choices(c.role, c.wing, c.aircraftClass, c.arm, c.area, c.coefficient, c.aspectRatio, c.taperRatio,
              c.section, v, c.height, c.requirements));
    }

    Draft height(Length v) {
      Choices c = choices;
      return new Draft(
          new Choices(c.role, c.wing, c.aircraftClass, c.arm, c.area, c.coefficient, c.aspectRatio, c.taperRatio,
              c.section, c.sweep, v, c.requirements));
    }

    Draft requirement(TailRequirement v) {
      Choices c = choices;
      List<TailRequirement> all = new ArrayList<>(c.requirements);
      all.add(v);
      return new Draft(
          new Choices(c.role, c.wing, c.aircraftClass, c.arm, c.area, c.coefficient, c.aspectRatio, c.taperRatio,
              c.section, c.sweep, c.height, List.copyOf(all)));
    }
  }

  @Override
  public String toString() {
    return "sizing of a " + choices.role().words() + " for " + choices.aircraftClass().words();
  }
}
