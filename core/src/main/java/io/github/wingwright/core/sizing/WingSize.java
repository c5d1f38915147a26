// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.geometry.TaperedPlanform;
import io.github.wingwright.core.quantity.Acceleration;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.quantity.WingLoading;
import java.util.ArrayList;
import java.util.List;

/** Span, area and aspect ratio from whatever sufficient set was given, as steps. */
final class WingSize {
  /** Numbers written to three figures agree this well; what differs by more was meant differently. */
  static final double AGREEMENT = 0.005;

  private static final double EXACT = 1e-9;

  private final WingInputs in;
  private final Step span;
  private final Step area;
  private final Step aspectRatio;
  private final List<Finding> findings = new ArrayList<>();

  /** One way to the area: what it uses, and the step. */
  private record Way(String uses, Step area) {}

  private WingSize(WingInputs in) {
    this.in = in;
    List<Way> ways = ways(in);
    if (in.span().isPresent() && in.aspectRatio().isPresent()) {
      span = givenSpan();
      aspectRatio = givenAspectRatio();
      area = Step.of(TaperedPlanform.AREA, span, aspectRatio);
      ways.forEach(way -> compare("span and aspect ratio", way));
    } else if (ways.isEmpty() || (in.span().isEmpty() && in.aspectRatio().isEmpty())) {
      throw new IllegalStateException(missing(ways.isEmpty()));
    } else {
      Way first = ways.get(0);
      area = first.area();
      ways.subList(1, ways.size()).forEach(way -> compare(first.uses(), way));
      span = in.span().isPresent() ? givenSpan() : Step.of(TaperedPlanform.SPAN, area, givenAspectRatio());
      aspectRatio = in.span().isPresent() ? Step.of(TaperedPlanform.ASPECT_RATIO, span, area) : span.inputs().get(1);
    }
    compareLoadingWithSpeed();
  }

  static WingSize solve(WingInputs in) {
    return new WingSize(in);
  }

  Step span() {
    return span;
  }

  Step area() {
    return area;
  }

  Step aspectRatio() {
    return aspectRatio;
  }

  List<Finding> findings() {
    return List.copyOf(findings);
  }

  private Step givenSpan() {
    return Step.given("span", "b", in.span().orElseThrow(), Source.BRIEF);
  }

  private Step givenAspectRatio() {
    return Step.given("aspect ratio", "A", in.aspectRatio().orElseThrow(), Source.BRIEF);
  }

  /** All ways to the area that do not go through span and aspect ratio, the most direct first. */
  private static List<Way> ways(WingInputs in) {
    List<Way> ways = new ArrayList<>();
    in.area().ifPresent(s -> ways.add(new Way("area", Step.given("reference area", "S", s, Source.BRIEF))));
    if (in.mass().isPresent()) {
      Step mass = Step.given("mass", "m", in.mass().get(), Source.BRIEF);
      in.loading()
          .ifPresent(
              w ->
                  ways.add(
                      new Way(
                          "mass and wing loading",
                          Step.of(
                              "reference area",
                              "S",
                              WingFormulas.AREA_FROM_LOADING,
                              mass,
                              Step.given("wing loading", "w", w, Source.BRIEF)))));
      in.speed().ifPresent(v -> ways.add(new Way("mass and speed at a lift coefficient", areaFrom(mass, v))));
    }
    return ways;
  }

  private static Step areaFrom(Step mass, WingInputs.SpeedAtLift v) {
    return Step.of(
        "reference area",
        "S",
        WingFormulas.AREA_FROM_SPEED,
        mass,
        gravity(),
        Step.given("air density", "ρ", v.density(), Source.BRIEF),
        Step.given("speed", "V", v.speed(), Source.BRIEF),
        Step.given("lift coefficient", "C_L", v.liftCoefficient(), Source.BRIEF));
  }

  /** The standard gravity as a line of workings. */
  static Step gravity() {
    return Step.given(
        "acceleration of gravity",
        "g",
        Acceleration.STANDARD_GRAVITY,
        Source.fromMemory("3rd General Conference on Weights and Measures, 1901", "standard gravity"));
  }

  private void compare(String uses, Way other) {
    compare(uses, area.value(), other.uses(), other.area().value(), "a reference area of", Area.SQUARE_CENTIMETRE);
  }

  /** Loading and speed at lift say the same thing without the mass. */
  private void compareLoadingWithSpeed() {
    if (in.mass().isEmpty() && in.loading().isPresent() && in.speed().isPresent()) {
      WingInputs.SpeedAtLift v = in.speed().get();
      double fromSpeed =
          1.0
              / WingFormulas.areaFromSpeed(
                  1.0, Acceleration.STANDARD_GRAVITY.si(), v.density().si(), v.speed().si(), v.liftCoefficient());
      compare(
          "wing loading",
          in.loading().get().si(),
          "speed at a lift coefficient",
          fromSpeed,
          "a loading of",
          WingLoading.KILOGRAM_PER_SQUARE_METRE);
    }
  }

  private void compare(
      String uses, double value, String otherUses, double other, String what, NamedUnit<?> unit) {
    double apart = Math.abs(other / value - 1.0);
    String both =
        uses + " give " + what + " " + unit.format(value, 5) + ", " + otherUses + " " + unit.format(other, 5);
    if (apart > AGREEMENT) {
      throw new IllegalStateException(
          "wing specification must agree with itself to "
              + NamedUnit.NUMBER.format(100.0 * AGREEMENT, 2)
              + " %, but "
              + both
              + " ("
              + NamedUnit.NUMBER.format(100.0 * apart, 3)
              + " % apart): leave out one of them");
    }
    if (apart > EXACT) {
      findings.add(
          Finding.of(
              Severity.NOTE,
              "wing specification",
              "More was given than is needed, and it agrees after rounding: " + both + ". The first was used.",
              Source.BRIEF));
    }
  }

  private String missing(boolean noArea) {
    List<String> have = new ArrayList<>();
    in.span().ifPresent(b -> have.add("span"));
    in.area().ifPresent(s -> have.add("area"));
    in.aspectRatio().ifPresent(a -> have.add("aspect ratio"));
    in.mass().ifPresent(m -> have.add("mass"));
    in.loading().ifPresent(w -> have.add("wing loading"));
    in.speed().ifPresent(v -> have.add("speed at a lift coefficient"));
    List<String> enough = new ArrayList<>();
    boolean line = in.span().isPresent() || in.aspectRatio().isPresent();
    for (String toArea : noArea ? waysToArea() : List.of("")) {
      if (line) {
        enough.add(toArea);
      } else {
        enough.add(join(toArea, "span"));
        enough.add(join(toArea, "aspect ratio"));
      }
    }
    if (in.span().isPresent()) {
      enough.add("aspect ratio");
    } else if (in.aspectRatio().isPresent()) {
      enough.add("span");
    } else if (noArea) {
      enough.add("span and aspect ratio");
    }
    return "wing needs two of span, aspect ratio and reference area, has "
        + (have.isEmpty() ? "nothing" : String.join(", ", have))
        + "; enough would be, in addition: "
        + String.join("; or ", enough);
  }

  private List<String> waysToArea() {
    List<String> ways = new ArrayList<>();
    ways.add("area");
    boolean mass = in.mass().isPresent();
    ways.add(mass ? "wing loading" : in.loading().isPresent() ? "mass" : "mass and wing loading");
    if (!in.loading().isPresent() || mass) {
      ways.add(
          mass
              ? "speed at a lift coefficient"
              : in.speed().isPresent() ? "mass" : "mass and speed at a lift coefficient");
    }
    return ways;
  }

  private static String join(String first, String second) {
    return first.isEmpty() ? second : first + " and " + second;
  }
}
