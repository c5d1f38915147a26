// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

import io.github.wingwright.core.atmosphere.Air;
import io.github.wingwright.core.atmosphere.FlightCondition;
import io.github.wingwright.core.basis.Band;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.StringJoiner;
import java.util.function.Function;

/**
 * The same build-up by every method that applies: how far sources differ is how well the result is known.
 *
 * <p>Each body is reckoned by all form factors of bodies, each surface by all of surfaces, and where a layer is turbulent
 * by all turbulent laws and by both ways to reckon transition, a flat base by both forms for bases, with the other methods as
 * they were chosen. A method that is used outside its fit stays in the table, marked,
 * and does not widen the band; a polynomial that is refused there is left out. The likely value is that of the chosen
 * method, which always counts.
 *
 * @param rows one row for each component and method
 * @param coefficient C_D0 from the least to the greatest of all methods that apply, with the chosen ones as likely
 */
public record MethodComparison(List<Row> rows, Band coefficient) {

  /**
   * One component by one method.
   *
   * @param component the component
   * @param method the method, in words
   * @param dragArea D/q [m²]
   * @param chosen whether this is the method that the build-up uses
   * @param applies whether the component lies within the method's fit
   * @param source where the method comes from
   */
  public record Row(
      String component, String method, double dragArea, boolean chosen, boolean applies, Source source) {

    /** Refuses null. */
    public Row {
      Objects.requireNonNull(component, "component");
      Objects.requireNonNull(method, "method");
      Objects.requireNonNull(source, "source");
    }

    @Override
    public String toString() {
      return component + ", " + method + ": " + Area.SQUARE_CENTIMETRE.format(dragArea, 4) + (chosen ? ", chosen" : "");
    }
  }

  /** Keeps its own list. */
  public MethodComparison {
    Objects.requireNonNull(rows, "rows");
    Objects.requireNonNull(coefficient, "coefficient");
    rows = List.copyOf(rows);
  }

  /**
   * Compares methods.
   *
   * @param build the build-up with its chosen methods
   * @param flight air and airspeed, not zero
   * @return the comparison
   */
  public static MethodComparison of(DragBuildUp build, FlightCondition flight) {
    Objects.requireNonNull(build, "build");
    DragBreakdown chosen = build.at(flight);
    double speed = flight.airspeed().si();
    double viscosity = flight.air().kinematicViscosity().si();
    double mach = flight.machNumber();
    List<Row> rows = new ArrayList<>();
    double low = 0.0;
    double likely = 0.0;
    double high = 0.0;
    for (DragComponent component : build.components()) {
      double area = component.dragArea(speed, viscosity, mach);
      List<Row> own = alternatives(component, speed, viscosity, mach);
      double least = area;
      double greatest = area;
      for (Row row : own) {
        least = row.applies() ? Math.min(least, row.dragArea()) : least;
        greatest = row.applies() ? Math.max(greatest, row.dragArea()) : greatest;
      }
      low += least;
      likely += area;
      high += greatest;
      rows.addAll(own);
    }
    double value = chosen.value();
    double scale = value / likely;
    // where the chosen method is itself an end, rounding may put that end on the wrong side of it
    return new MethodComparison(rows, new Band(Math.min(low * scale, value), value, Math.max(high * scale, value)));
  }

  private static List<Row> alternatives(DragComponent component, double speed, double viscosity, double mach) {
    if (component instanceof BodyDrag body) {
      return bodies(body, speed, viscosity, mach);
    }
    if (component instanceof SurfaceDrag surface) {
      return surfaces(surface, speed, viscosity, mach);
    }
    double area = component.dragArea(speed, viscosity, mach);
    return List.of(new Row(component.name(), "as given", area, true, true, Source.BRIEF));
  }

  private static List<Row> bodies(BodyDrag body, double speed, double viscosity, double mach) {
    List<Row> rows = new ArrayList<>();
    double reynolds = Air.reynoldsNumber(speed, body.length(), viscosity);
    boolean turbulent = body.friction().isTurbulentAt(reynolds);
    for (BodyFormFactor method : BodyFormFactor.values()) {
      boolean chosen = method == body.formFactor();
      // a nacelle is no fuselage, and the laminar form is for laminar layers
      boolean kind =
          chosen
              || (method != BodyFormFactor.NACELLE && (method != BodyFormFactor.HOERNER_LAMINAR || !turbulent));
      if (kind && method.isDefinedAt(body.fineness())) {
        rows.add(
            new Row(
                body.name(),
                method.toString(),
                body.by(method).dragArea(speed, viscosity, mach),
                chosen,
                chosen || method.domain().contains(body.fineness()),
                method.formula().source()));
      }
    }
    friction(rows, body, body.friction(), reynolds, body::by, speed, viscosity, mach);
    if (body.baseArea() > 0.0) {
      double attached = body.withBase(Area.ZERO).dragArea(speed, viscosity, mach);
      double base = AfterbodyDrag.base(mach, body.baseArea());
      rows.add(
          new Row(
              body.name(),
              "base behind its layer, Hoerner",
              body.dragArea(speed, viscosity, mach),
              true,
              true,
              AfterbodyDrag.SHIELDED_BASE.source()));
      rows.add(
          new Row(
              body.name(),
              "base of a large aircraft",
              attached + base,
              false,
              ItemDrag.isLargeBase(body.baseArea(), speed, viscosity),
              AfterbodyDrag.BASE.source()));
    }
    return rows;
  }

  private static List<Row> surfaces(SurfaceDrag surface, double speed, double viscosity, double mach) {
    List<Row> rows = new ArrayList<>();
    double reynolds = Air.reynoldsNumber(speed, surface.chord(), viscosity);
    for (SurfaceFormFactor method : SurfaceFormFactor.values()) {
      boolean chosen = method == surface.formFactor();
      // Jenkinson's form for tails counts where it was chosen, his form for wings elsewhere
      boolean kind =
          method != SurfaceFormFactor.JENKINSON_TAIL && method.thickestAt().contains(surface.thicknessPosition());
      rows.add(
          new Row(
              surface.name(),
              method.toString(),
              surface.by(method).dragArea(speed, viscosity, mach),
              chosen,
              chosen || (kind && method.applies(surface.thickness())),
              method.formula().source()));
    }
    friction(rows, surface, surface.friction(), reynolds, surface::by, speed, viscosity, mach);
    return rows;
  }

  /** Where a layer is turbulent: by every turbulent law, and by both ways to reckon transition. */
  private static void friction(
      List<Row> rows,
      DragComponent component,
      FrictionModel friction,
      double reynolds,
      Function<FrictionModel, DragComponent> by,
      double speed,
      double viscosity,
      double mach) {
    if (!friction.isTurbulentAt(reynolds)) {
      return;
    }
    for (TurbulentFriction law : TurbulentFriction.values()) {
      FrictionModel other = friction.by(law);
      boolean chosen = other.equals(friction);
      rows.add(
          new Row(
              component.name(),
              law.words(),
              by.apply(other).dragArea(speed, viscosity, mach),
              chosen,
              chosen || law.domain().contains(reynolds),
              law.source()));
    }
    List<FrictionModel> transitions = friction.byEachTransition();
    for (FrictionModel other : transitions.size() > 1 ? transitions : List.<FrictionModel>of()) {
      rows.add(
          new Row(
              component.name(),
              other.transitionWords(),
              by.apply(other).dragArea(speed, viscosity, mach),
              other.equals(friction),
              true,
              other.transitionSource()));
    }
  }

  /**
   * How far the methods lie apart.
   *
   * @return (greatest − least)/likely of C_D0
   */
  public double spread() {
    return (coefficient.high() - coefficient.low()) / coefficient.likely();
  }

  @Override
  public String toString() {
    StringJoiner table = new StringJoiner(System.lineSeparator());
    for (Row row : rows) {
      table.add(
          String.format(
              Locale.ROOT,
              "%-16s %-32s %11s%s",
              row.component(),
              row.method(),
              Area.SQUARE_CENTIMETRE.format(row.dragArea(), 4),
              row.chosen() ? "  chosen" : row.applies() ? "" : "  not made for it"));
    }
    table.add(
        "C_D0 = " + NamedUnit.NUMBER.format(coefficient.likely(), 4) + ", by all methods "
            + NamedUnit.NUMBER.format(coefficient.low(), 4) + " to " + NamedUnit.NUMBER.format(coefficient.high(), 4));
    return table.toString();
  }
}
