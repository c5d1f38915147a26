// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

import io.github.wingwright.core.atmosphere.FlightCondition;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.StringJoiner;

/**
 * A drag build-up at one speed.
 *
 * @param lines the components, in their order
 * @param coefficient C_D0 as a step, with all that it comes from
 * @param findings what the methods say about themselves, heaviest first
 */
public record DragBreakdown(List<Part> lines, Step coefficient, List<Finding> findings) {

  /**
   * One component.
   *
   * @param name what it is
   * @param dragArea D/q
   * @param share its share of the sum
   */
  public record Part(String name, Area dragArea, double share) {

    /** Refuses null. */
    public Part {
      Objects.requireNonNull(name, "name");
      Objects.requireNonNull(dragArea, "drag area");
    }

    @Override
    public String toString() {
      return name + " " + dragArea + ", " + Math.round(100.0 * share) + " %";
    }
  }

  private static final Source FLIGHT = Source.taken("the air and the speed of the build-up");

  /** Keeps its own lists. */
  public DragBreakdown {
    Objects.requireNonNull(lines, "lines");
    Objects.requireNonNull(findings, "findings");
    Objects.requireNonNull(coefficient, "coefficient");
    lines = List.copyOf(lines);
    findings = Finding.inOrderOfWeight(findings);
  }

  static DragBreakdown of(DragBuildUp build, FlightCondition flight) {
    double mach = flight.machNumber();
    Step v = Step.given("airspeed", "V", flight.airspeed(), FLIGHT);
    Step nu = Step.given("kinematic viscosity", "ν", flight.air().kinematicViscosity(), FLIGHT);
    Step m = Step.given("Mach number", "M", mach, FLIGHT);
    Step coefficient = build.step(v, nu, m);
    Step sum = coefficient.inputs().get(0);
    List<Part> lines = new ArrayList<>();
    List<Finding> findings = new ArrayList<>(build.findings(mach));
    for (int i = 0; i < build.components().size(); i++) {
      DragComponent component = build.components().get(i);
      double area = sum.inputs().get(i).value();
      lines.add(new Part(component.name(), Area.squareMetres(area), area / sum.value()));
      findings.addAll(component.findings(v.value(), nu.value(), mach));
    }
    return new DragBreakdown(lines, coefficient, findings);
  }

  /**
   * The coefficient.
   *
   * @return C_D0
   */
  public double value() {
    return coefficient.value();
  }

  @Override
  public String toString() {
    StringJoiner table = new StringJoiner(System.lineSeparator());
    for (Part line : lines) {
      table.add(
          String.format(
              Locale.ROOT, "%-24s %12s %5.1f %%", line.name(), line.dragArea().format(Area.SQUARE_CENTIMETRE, 4),
              100.0 * line.share()));
    }
    table.add("C_D0 = " + NamedUnit.NUMBER.format(value(), 4));
    return table.toString();
  }
}
