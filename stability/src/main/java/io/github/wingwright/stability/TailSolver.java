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
import io.github.wingwright.core.numerics.Minimum;
import io.github.wingwright.core.numerics.Roots;
import io.github.wingwright.core.numerics.Tolerance;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;

/** Finds arm, area and shape of a tail from what was asked of it. */
final class TailSolver {
  static final Formula BEHIND =
      Formula.named("root leading edge of the tail behind the nose")
          .gives("x_t", Length.METRE)
          .as("x_w + l − x_q")
          .where("x_w", "quarter mean chord of the wing behind the nose", Length.METRE, -1, 100)
          .where("l", "tail arm", Length.METRE, -60, 60)
          .where("x_q", "quarter mean chord of the tail behind its root leading edge", Length.METRE, -1, 20)
          .from(Source.DEFINITION)
          .computedBy((double wing, double arm, double quarter) -> wing + arm - quarter);

  private static final Tolerance TIGHT = Tolerance.relative(1e-13);
  private static final Source CLOSING = Source.library("arm and area together, so that the tail ends where it shall");

  private final TailChoices c;
  private final boolean level;
  private final AirfoilSection section;
  private final Step aspect;
  private final Step taper;
  private final Step wingArea;
  private final Step reference;
  private final Guideline volumes;

  TailSolver(TailChoices choices) {
    c = choices;
    level = c.isLevel();
    if (c.section == null) {
      throw new IllegalStateException("a " + c.words() + " needs a section, none was given");
    }
    section = c.section;
    aspect = chosen("aspect ratio of the tail", "A_t", c.aspectRatio, c.aircraftClass.tailAspectRatio(c.role));
    taper = chosen("taper ratio of the tail", "λ_t", c.taperRatio, c.aircraftClass.tailTaperRatio(c.role));
    Planform wing = c.wing.planform();
    wingArea = Step.given("wing reference area", "S", wing.area(), Sources.AIRFRAME);
    reference =
        level
            ? Step.given("mean aerodynamic chord", "c̄", wing.meanAerodynamicChord(), Sources.AIRFRAME)
            : Step.given("wing span", "b", wing.span(), Sources.AIRFRAME);
    volumes = c.arrangement.tailVolume(c.aircraftClass, c.role);
  }

  private static Step chosen(String name, String symbol, @Nullable Double value, Guideline range) {
    return value != null
        ? Step.given(name, symbol, value, Source.BRIEF)
        : Step.given(name, symbol, 0.5 * (range.range().lower() + range.range().upper()), range.source());
  }

  Sized<Tail> solve() {
    Step arm = arm();
    List<Bound> bounds = new ArrayList<>();
    bounds.add(
        Bound.of(
            volumes.name() + " for " + volumes.appliesTo(),
            Strength.GUIDELINE,
            volumes.source(),
            Interval.between(
                areaFor(volumes.range().lower(), arm.value()), areaFor(volumes.range().upper(), arm.value()))));
    Step area = area(arm, bounds);
    if (!(area.value() > 0.0)) {
      throw new IllegalStateException(
          "no " + c.words() + " is needed: the aircraft satisfies every requirement without one");
    }
    Tail tail = tail(area.value(), arm.value());
    FeasibleRange range = FeasibleRange.of(c.words() + " area", Area.SQUARE_CENTIMETRE, bounds);
    Workings workings = Workings.of(dimensions(tail, arm, area));
    List<Finding> findings = new ArrayList<>(workings.findings());
    findings.addAll(range.check(area.value()));
    volumes.check(TailVolume.of(tail, c.wing)).ifPresent(findings::add);
    c.aircraftClass.tailAspectRatio(c.role).check(aspect.value()).ifPresent(findings::add);
    c.aircraftClass.tailTaperRatio(c.role).check(taper.value()).ifPresent(findings::add);
    return new Sized<>(tail, range, workings, findings, List.of());
  }

  /** The area that decides: the one given, else the greatest of those required. Each requirement becomes a bound. */
  private Step area(Step arm, List<Bound> bounds) {
    Step greatest = null;
    if (c.coefficient != null && c.area == null) {
      greatest =
          Step.of(
              level ? TailVolume.HORIZONTAL_AREA : TailVolume.VERTICAL_AREA,
              coefficient(),
              arm,
              wingArea,
              reference);
      bounds.add(
          Bound.of("volume coefficient wanted", Strength.LIMIT, Source.BRIEF, Interval.atLeast(greatest.value())));
    }
    for (TailRequirement requirement : c.requirements) {
      Step needed = requirement.area(a -> tail(a, arm.value()));
      bounds.add(
          Bound.of(requirement.name(), Strength.LIMIT, requirement.source(), Interval.atLeast(needed.value())));
      if (greatest == null || needed.value() > greatest.value()) {
        greatest = needed;
      }
    }
    if (c.area != null) {
      return givenArea(c.area);
    }
    if (greatest == null) {
      throw new IllegalStateException(
          "a " + c.words() + " needs an area, a volume coefficient or a requirement to satisfy, none was given");
    }
    return greatest;
  }

  private Step arm() {
    if (c.arm != null && c.trailingEdge != null) {
      throw new IllegalStateException(
          "arm (" + c.arm + ") and trailing edge (" + c.trailingEdge + ") of a " + c.words() + " conflict: give one");
    }
    boolean placed = c.arm != null || c.trailingEdge != null;
    if (placed && c.area != null && c.coefficient != null) {
      throw new IllegalStateException(
          "arm, area (" + c.area + ") and volume coefficient (" + c.coefficient + ") of a " + c.words()
              + " conflict: give two of them");
    }
    if (c.arm != null) {
      return Step.given(c.words() + " arm", armSymbol(), c.arm, Source.BRIEF);
    }
    if (c.trailingEdge != null) {
      return armToTrailingEdge(c.trailingEdge);
    }
    if (c.area == null || c.coefficient == null) {
      throw new IllegalStateException(
          "a " + c.words() + " needs an arm, a place of its trailing edge, or area and volume coefficient together");
    }
    return Step.of(
        level ? TailVolume.HORIZONTAL_ARM : TailVolume.VERTICAL_ARM,
        coefficient(),
        givenArea(c.area),
        wingArea,
        reference);
  }

  /**
   * The arm at which the tail ends at x_te: l + k·√S_t(l) = x_te − x_w, with k the overhang of a tail of unit area behind
   * its quarter chord. Of two solutions the longer arm with the smaller tail.
   */
  private Step armToTrailingEdge(Length trailingEdge) {
    double distance = trailingEdge.minus(c.wing.quarterChordX()).si();
    if (!(distance > 0.0)) {
      throw new IllegalStateException(
          "trailing edge of the " + c.words() + " must lie behind the wing's quarter chord at "
              + c.wing.quarterChordX() + ", was " + trailingEdge);
    }
    return Step.solution(
        c.words() + " arm",
        armSymbol(),
        Length.METRE,
        "Brent's method on the longer of two solutions",
        "x_te = x_w + l + k·√S_t(l)",
        v -> longestArm(v[0] - v[1]),
        v -> v[1] + v[2] + overhang() * Math.sqrt(areaAt(v[2])) - v[0],
        CLOSING,
        Step.given("trailing edge of the tail behind the nose", "x_te", trailingEdge, Source.BRIEF),
        Step.given("quarter mean chord of the wing behind the nose", "x_w", c.wing.quarterChordX(), Sources.AIRFRAME));
  }

  private double longestArm(double distance) {
    double k = overhang();
    // At the full distance a requirement that no tail can meet says so itself; nearer than that it only means too near.
    areaAt(distance);
    DoubleUnaryOperator excess = l -> tooNear(l) ? distance : l + k * Math.sqrt(areaAt(l)) - distance;
    Minimum shortest = Minimum.within(excess, 0.02 * distance, distance, Tolerance.relative(1e-9));
    if (shortest.value() > 0.0) {
      throw new IllegalStateException(
          String.format(
              Locale.ROOT,
              "no %s ends %s behind the wing's quarter chord and does what is asked: at best it is %s too long."
                  + " Lengthen the fuselage, move the wing forward, or ask for less tail volume",
              c.words(),
              Length.metres(distance),
              Length.metres(shortest.value())));
    }
    return shortest.value() == 0.0
        ? shortest.argument()
        : Roots.find(excess, shortest.argument(), distance, TIGHT);
  }

  private boolean tooNear(double arm) {
    try {
      return !Double.isFinite(areaAt(arm));
    } catch (IllegalStateException noAreaDoesIt) {
      return true;
    }
  }

  /** How far a tail of unit area reaches behind the quarter point of its mean aerodynamic chord. */
  private double overhang() {
    Planform unit = planform(1.0);
    double root = unit.rootChord().si();
    Length end = unit.isMirrored() ? unit.span().times(0.5) : unit.span();
    double tip = unit.leadingEdgeAt(end).si() + unit.tipChord().si();
    return Math.max(root, tip) - unit.quarterMeanAerodynamicChordX().si();
  }

  private double areaAt(double arm) {
    if (c.area != null) {
      return c.area.si();
    }
    double area = c.coefficient == null ? 0.0 : areaFor(c.coefficient, arm);
    for (TailRequirement requirement : c.requirements) {
      area = Math.max(area, requirement.area(a -> tail(a, arm)).value());
    }
    return area;
  }

  private double areaFor(double coefficient, double arm) {
    return TailVolume.area(coefficient, arm, wingArea.value(), reference.value());
  }

  private Step coefficient() {
    if (c.coefficient == null) {
      throw new IllegalStateException("a " + c.words() + " needs a volume coefficient, none was given");
    }
    return Step.given(volumes.name(), level ? "V_h" : "V_v", c.coefficient, Source.BRIEF);
  }

  private Step givenArea(Area area) {
    return Step.given(c.words() + " area", level ? "S_h" : "S_v", area, Source.BRIEF);
  }

  private String armSymbol() {
    return level ? "l_h" : "l_v";
  }

  private Planform planform(double area) {
    Area size = Area.squareMetres(area);
    Planform plain =
        level
            ? Planform.tapered(size, aspect.value(), taper.value())
            : Planform.taperedFin(size, aspect.value(), taper.value());
    return c.sweep.si() == 0.0 ? plain : plain.withSweep(0.25, c.sweep);
  }

  private Tail tail(double area, double arm) {
    Planform planform = planform(area);
    double x = c.wing.quarterChordX().si() + arm - planform.quarterMeanAerodynamicChordX().si();
    return new Tail(c.role, planform, section, Placement.at(Length.metres(x), c.height), Angle.ZERO);
  }

  private List<Step> dimensions(Tail tail, Step arm, Step area) {
    String of = " of the " + c.words();
    Step span = Step.of((level ? "span" : "height") + of, "b_t", TaperedPlanform.SPAN, area, aspect);
    Step root = Step.of("root chord" + of, "c_r", TaperedPlanform.ROOT_CHORD, area, span, taper);
    Step tip = Step.of("tip chord" + of, "c_t", TaperedPlanform.TIP_CHORD, taper, root);
    Step mean = Step.of("mean aerodynamic chord" + of, "c̄_t", TaperedPlanform.MEAN_AERODYNAMIC_CHORD, root, taper);
    Step volume = Step.of(level ? TailVolume.HORIZONTAL : TailVolume.VERTICAL, area, arm, wingArea, reference);
    Step place =
        Step.of(
            BEHIND,
            Step.given("quarter mean chord of the wing behind the nose", "x_w", c.wing.quarterChordX(), Sources.AIRFRAME),
            arm,
            Step.given(
                "quarter mean chord of the tail behind its root leading edge",
                "x_q",
                tail.planform().quarterMeanAerodynamicChordX(),
                Sources.AIRFRAME));
    return List.of(span, tip, mean, volume, place);
  }
}
