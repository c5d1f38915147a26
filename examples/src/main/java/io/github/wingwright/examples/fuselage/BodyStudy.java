// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.fuselage;

import io.github.wingwright.core.aerodynamics.DragBuildUp;
import io.github.wingwright.core.aerodynamics.DragComponent;
import io.github.wingwright.core.aerodynamics.MethodComparison;
import io.github.wingwright.core.basis.FeasibleRegion;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Origins;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Sized;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Workings;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.sizing.BodySteps;
import io.github.wingwright.core.sizing.Contents;
import io.github.wingwright.core.sizing.DragSurvey;
import io.github.wingwright.core.sizing.FuselageSizing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What follows from a brief: the body, what is left to choose from, where everything lies, and what it costs. */
final class BodyStudy {
  private static final double MOST_SLENDER = 20.0;
  private static final double STOUTEST = 2.0;

  private final FuselageBrief brief;
  private final Sized<Fuselage> sized;
  private final FeasibleRegion region;
  private final Optional<Contents.Placing> placing;
  private final List<Alternative> alternatives;
  private final List<DragSurvey> surveys;
  private final BodySteps size;
  private final Origins origins;
  private final Step dragArea;
  private final Step figure;

  private BodyStudy(FuselageBrief brief) {
    this.brief = brief;
    FuselageSizing sizing = brief.sizing();
    this.sized = close(sizing, brief);
    this.region = sizing.region();
    this.placing = brief.inside().flatMap(in -> in.contents().placedIn(sized.value()));
    this.alternatives = alternatives(sizing);
    this.surveys = surveys();
    BodySteps lines = BodySteps.of(brief.shape(), sizedStep("L"), sizedStep("d"));
    Origins brought = new Origins(given(lines));
    this.size = traced(brought, sized.workings().steps(), lines);
    this.dragArea = brought.trace(brief.drag().step(size).orElseThrow());
    Workings.of(List.of(dragArea)).steps().stream().filter(s -> s.symbol().equals("ρ")).forEach(brought::add);
    this.figure = brought.trace(brief.mission().step(dragArea, sized.value()));
    this.origins = brought;
  }

  private Step sizedStep(String symbol) {
    return sized.workings().steps().stream().filter(s -> s.symbol().equals(symbol)).findFirst().orElseThrow();
  }

  /** What other parts of the study are handed as bare values: the size of the body, and what the brief knows. */
  private List<Step> given(BodySteps lines) {
    List<Step> given = new ArrayList<>(brief.known());
    given.add(lines.length());
    given.add(lines.diameter());
    return given;
  }

  /** The lines of the sizing where it has them, so that none is told twice. */
  private static BodySteps traced(Origins origins, List<Step> sized, BodySteps lines) {
    return new BodySteps(
        lines.shape(),
        lines.length(),
        lines.diameter(),
        of(origins, sized, lines.fineness()),
        of(origins, sized, lines.frontalArea()),
        origins.add(of(origins, sized, lines.volume())),
        origins.add(of(origins, sized, lines.wettedArea())));
  }

  private static Step of(Origins origins, List<Step> sized, Step line) {
    return origins.trace(
        sized.stream()
            .filter(s -> s.symbol().equals(line.symbol()) && s.name().equals(line.name()))
            .findFirst()
            .orElse(line));
  }

  static BodyStudy of(FuselageBrief brief) {
    return new BodyStudy(brief);
  }

  private static Sized<Fuselage> close(FuselageSizing sizing, FuselageBrief brief) {
    if (brief.choice().diameter().isPresent()) {
      return sizing.diameter(brief.choice().diameter().get());
    }
    return switch (brief.choice().rule()) {
      case NEAREST_TO_TARGETS -> sizing.nearestToTargets();
      case LEAST_DRAG -> sizing.leastDrag(brief.drag());
      case SMALLEST -> sizing.smallest();
    };
  }

  /**
   * A body to compare with.
   *
   * @param label what it is
   * @param body its dimensions
   */
  record Alternative(String label, Fuselage body) {}

  /** The chosen body, then the best of the region by drag and by size. */
  private List<Alternative> alternatives(FuselageSizing sizing) {
    List<Alternative> all = new ArrayList<>();
    all.add(
        new Alternative(region.isEmpty() ? "shown: the least bad one" : "chosen", sized.value()));
    if (!region.isEmpty()) {
      FuselageSizing free = sizing.freeLength();
      Fuselage leastDrag = free.leastDrag(brief.drag()).value();
      Fuselage smallest = free.smallest().value();
      boolean same = sameSize(leastDrag, smallest);
      all.add(
          new Alternative(
              same ? "least drag and smallest inside" : "least drag inside", leastDrag));
      if (!same) {
        all.add(new Alternative("smallest inside", smallest));
      }
    }
    return List.copyOf(all);
  }

  /** To a thousandth: nobody makes it more exactly. */
  static boolean sameSize(Fuselage a, Fuselage b) {
    return Math.abs(a.length().dividedBy(b.length()) - 1.0) < 1e-3
        && Math.abs(a.diameter().dividedBy(b.diameter()) - 1.0) < 1e-3;
  }

  private List<DragSurvey> surveys() {
    double stout = Math.max(STOUTEST, 1.02 * brief.shape().leastFinenessRatio());
    Interval fineness = Interval.between(stout, Math.max(MOST_SLENDER, 2.0 * stout));
    Fuselage body = sized.value();
    return List.of(
        DragSurvey.atFixedLength(brief.shape(), brief.drag(), body.length(), fineness),
        DragSurvey.atFixedVolume(brief.shape(), brief.drag(), body.volume(), fineness),
        DragSurvey.atFixedSection(brief.shape(), brief.drag(), body.diameter(), fineness));
  }

  FuselageBrief brief() {
    return brief;
  }

  Sized<Fuselage> sized() {
    return sized;
  }

  Fuselage body() {
    return sized.value();
  }

  FeasibleRegion region() {
    return region;
  }

  Optional<Contents.Placing> placing() {
    return placing;
  }

  List<Alternative> all() {
    return alternatives;
  }

  List<DragSurvey> dragSurveys() {
    return surveys;
  }

  /** The lines of the body's geometry, of which all others are made. */
  BodySteps size() {
    return size;
  }

  /** Where given values come from, as far as the study knows. */
  Origins origins() {
    return origins;
  }

  /** Drag area of the body with its workings. */
  Step dragArea() {
    return dragArea;
  }

  /** The figure of merit with its workings. */
  Step figure() {
    return figure;
  }

  double dragAreaOf(Fuselage other) {
    return brief.drag().dragArea(other.shape(), other.length().si(), other.diameter().si());
  }

  double figureOf(Fuselage other) {
    return brief.mission().value(other, dragAreaOf(other));
  }

  /** The body alone by every form factor and every turbulent law. */
  MethodComparison methods() {
    DragBuildUp alone =
        DragBuildUp.about(body().frontalArea())
            .with(
                DragComponent.body(
                    "fuselage", body(), brief.flow().friction(), brief.flow().form()));
    return MethodComparison.of(alone, brief.flight());
  }

  /** Everything remarkable, those of the workings included. */
  List<Finding> findings() {
    List<Finding> all = new ArrayList<>(sized.findings());
    all.addAll(figure.findings());
    if (brief.inside().isPresent() && placing.isEmpty()) {
      all.add(
          Finding.of(
              Severity.SERIOUS,
              "contents",
              "They do not fit into the body that is shown, so the side view shows it empty.",
              Source.library("placing of the contents")));
    }
    return Finding.inOrderOfWeight(all);
  }

  Length stationOf(double share) {
    return body().length().times(share);
  }
}
