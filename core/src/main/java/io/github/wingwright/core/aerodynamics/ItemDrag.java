// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

import io.github.wingwright.core.atmosphere.Air;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.ArrayList;
import java.util.List;

/** A drag area that does not depend on friction: a protuberance, a gap, an upswept or blunt end, anything measured. */
public final class ItemDrag implements DragComponent {
  private static final long serialVersionUID = 1L;

  /** Drag area of something that stands in the flow. */
  public static final Formula PROTUBERANCE =
      Formula.named("drag area of a protuberance")
          .gives("D/q", Area.SQUARE_METRE)
          .as("C_D·A")
          .where("C_D", "drag coefficient on the frontal area", 0, 3)
          .where("A", "frontal area", Area.SQUARE_METRE, 0, 100)
          .from(Source.DEFINITION)
          .computedBy(ItemDrag::dragAreaOf);

  /** Reynolds number on the side of a square base below which it counts as small. */
  private static final double LARGE_BASE = 1e5;

  private enum Kind {
    GIVEN,
    PROTUBERANCE,
    UPSWEEP,
    BASE
  }

  private final Kind kind;
  private final String name;
  private final double measure;
  private final double area;
  private final Source source;
  private final double width;
  private final Interval reynoldsNumbers;

  private ItemDrag(Kind kind, String name, double measure, double area, Source source) {
    this(kind, name, measure, area, source, 0.0, Interval.ALL);
  }

  private ItemDrag(
      Kind kind, String name, double measure, double area, Source source, double width, Interval reynoldsNumbers) {
    this.width = Door.notNegative(width, "width of " + name + " in metres");
    this.reynoldsNumbers = reynoldsNumbers;
    this.kind = kind;
    this.name = name;
    this.measure = Door.notNegative(measure, kind == Kind.UPSWEEP ? "upsweep in radians" : "coefficient of " + name);
    this.area = Door.notNegative(area, "area of " + name + " in square metres");
    this.source = source;
  }

  static ItemDrag given(String name, Area dragArea, Source source) {
    return new ItemDrag(Kind.GIVEN, name, 1.0, dragArea.si(), source);
  }

  static ItemDrag protuberance(String name, double coefficient, Area frontalArea, Source source) {
    return new ItemDrag(Kind.PROTUBERANCE, name, coefficient, frontalArea.si(), source);
  }

  static ItemDrag protuberance(
      String name, double coefficient, Area frontalArea, Source source, Length width, Interval reynoldsNumbers) {
    return new ItemDrag(Kind.PROTUBERANCE, name, coefficient, frontalArea.si(), source, width.si(), reynoldsNumbers);
  }

  static ItemDrag upsweep(Angle upsweep, Area greatestSection) {
    return new ItemDrag(
        Kind.UPSWEEP, "upsweep", upsweep.si(), greatestSection.si(), AfterbodyDrag.UPSWEEP.source());
  }

  static ItemDrag base(Area baseArea) {
    return new ItemDrag(Kind.BASE, "base", 0.0, baseArea.si(), AfterbodyDrag.BASE.source());
  }

  /** D/q = C_D·A. */
  static double dragAreaOf(double coefficient, double area) {
    return coefficient * area;
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public double dragArea(double speed, double kinematicViscosity, double mach) {
    return switch (kind) {
      case GIVEN -> area;
      case PROTUBERANCE -> dragAreaOf(measure, area);
      case UPSWEEP -> AfterbodyDrag.upsweep(measure, area);
      case BASE -> AfterbodyDrag.base(mach, area);
    };
  }

  @Override
  public Step step(Step speed, Step kinematicViscosity, Step mach) {
    String title = "drag area of " + name;
    return switch (kind) {
      case GIVEN -> Step.given(title, "F", Area.squareMetres(area), source);
      case PROTUBERANCE ->
          Step.of(
              title,
              "F",
              PROTUBERANCE,
              Step.given("drag coefficient of " + name, "C_D", measure, source),
              areaStep("frontal area of " + name, "A"));
      case UPSWEEP ->
          Step.of(
              title,
              "F",
              AfterbodyDrag.UPSWEEP,
              Step.given("upsweep of the afterbody", "u", Angle.radians(measure), Source.taken("geometry")),
              areaStep("greatest cross-section", "A_max"));
      case BASE -> Step.of(title, "F", AfterbodyDrag.BASE, mach, areaStep("area of the base", "A_b"));
    };
  }

  private Step areaStep(String title, String symbol) {
    return Step.given(title, symbol, Area.squareMetres(area), Source.taken("geometry"));
  }

  @Override
  public List<Finding> findings(double speed, double kinematicViscosity, double mach) {
    return switch (kind) {
      case GIVEN -> List.of();
      case PROTUBERANCE -> outsideReynolds(speed, kinematicViscosity);
      case UPSWEEP -> AfterbodyDrag.UPSWEEP.outsideDomain(measure, Math.max(area, 1e-6));
      case BASE -> ofBase(speed, kinematicViscosity, mach);
    };
  }

  private List<Finding> outsideReynolds(double speed, double kinematicViscosity) {
    if (width == 0.0) {
      return List.of();
    }
    double reynolds = Air.reynoldsNumber(speed, width, kinematicViscosity);
    if (reynoldsNumbers.contains(reynolds)) {
      return List.of();
    }
    return List.of(
        Finding.of(
            Severity.CAUTION,
            "drag coefficient of " + name,
            "It holds for other Reynolds numbers on the width across the flow.",
            reynolds,
            reynoldsNumbers,
            NamedUnit.NUMBER,
            source));
  }

  /** The formula was made for large aircraft: behind the thick layer of a small body a base drags less. */
  private List<Finding> ofBase(double speed, double kinematicViscosity, double mach) {
    List<Finding> findings = new ArrayList<>(AfterbodyDrag.BASE.outsideDomain(mach, area));
    double reynolds = Air.reynoldsNumber(speed, Math.sqrt(area), kinematicViscosity);
    if (area > 0.0 && !isLargeBase(area, speed, kinematicViscosity)) {
      findings.add(
          Finding.of(
              Severity.NOTE,
              "base drag",
              "The formula is for large aircraft. Give the base to its body, whose layer lessens its drag.",
              reynolds,
              Interval.atLeast(LARGE_BASE),
              NamedUnit.NUMBER,
              Source.library("a base this small lies in the layer of its body")));
    }
    return findings;
  }

  /** Whether the formula for the base of a large aircraft counts. */
  static boolean isLargeBase(double area, double speed, double kinematicViscosity) {
    return Air.reynoldsNumber(speed, Math.sqrt(area), kinematicViscosity) >= LARGE_BASE;
  }

  @Override
  public String toString() {
    return name + " " + (kind == Kind.GIVEN ? Area.squareMetres(area) : NamedUnit.NUMBER.format(measure, 4) + " on "
        + Area.squareMetres(area));
  }
}
