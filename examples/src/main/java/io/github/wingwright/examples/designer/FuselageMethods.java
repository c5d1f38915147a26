// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import static io.github.wingwright.examples.designer.FuselageChapter.signed;

import io.github.wingwright.core.aerodynamics.DragBuildUp;
import io.github.wingwright.core.aerodynamics.DragComponent;
import io.github.wingwright.core.aerodynamics.MethodComparison;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.report.Block;
import io.github.wingwright.core.sizing.FlightDrag;
import java.util.ArrayList;
import java.util.List;

/** The same body by every method: how far they lie apart is how well its friction and form are known. */
final class FuselageMethods {
  private FuselageMethods() {}

  static void addTo(List<Block> blocks, Fuselage made, FlightDrag method, NamedUnit<Area> areaUnit) {
    DragBuildUp alone =
        DragBuildUp.about(made.frontalArea())
            .with(DragComponent.body("fuselage", made, method.friction(), method.form()));
    MethodComparison comparison = MethodComparison.of(alone, method.flight());
    double area = made.frontalArea().si();
    blocks.add(
        new Block.Paragraph(
            "How well friction and form of the body are known: the same body by every method, at "
                + method.flight().airspeed().format(3)
                + ". The spread of those that are made for it is the uncertainty: "
                + areaUnit.format(comparison.coefficient().low() * area, 3)
                + " to "
                + areaUnit.format(comparison.coefficient().high() * area, 3)
                + ", "
                + areaUnit.format(comparison.coefficient().likely() * area, 3)
                + " by the method that was chosen ("
                + method.form()
                + "), that is "
                + signed(comparison.coefficient().low() / comparison.coefficient().likely() - 1.0)
                + " to "
                + signed(comparison.coefficient().high() / comparison.coefficient().likely() - 1.0)
                + "."));
    List<List<String>> rows = new ArrayList<>();
    for (MethodComparison.Row row : comparison.rows()) {
      rows.add(
          List.of(
              row.method(),
              areaUnit.format(row.dragArea(), 3),
              row.chosen() ? "chosen" : row.applies() ? "" : "not made for it",
              row.source().cite()));
    }
    blocks.add(new Block.Table(List.of("method", "drag area", "", "source"), rows));
  }
}
