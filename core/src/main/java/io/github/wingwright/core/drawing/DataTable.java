// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;

/** What follows from the dimensions of an airframe, in the free corner of its drawing. */
final class DataTable {
  private static final double ROW = 5.4;
  private static final double WIDTH = 70.0;

  private final Sketch sketch = new Sketch();
  private double y;

  private DataTable() {}

  static Sketch of(Airframe airframe, NamedUnit<Length> unit) {
    DataTable table = new DataTable();
    Planform wing = airframe.wing().planform();
    NamedUnit<Area> areaUnit = areaUnit(unit, wing.area());
    table.row("wing area", areaUnit.format(wing.area().si(), 4));
    table.row("aspect ratio", number(wing.aspectRatio()));
    table.row("taper ratio", number(wing.taperRatio()));
    table.row("mean aerodynamic chord", unit.format(wing.meanAerodynamicChord().si(), 4));
    table.row("wing section", airframe.wing().section().name());
    for (Tail tail : airframe.tails()) {
      table.row(tail.role().words(), areaUnit.format(tail.areaInOwnPlane().si(), 4));
      if (tail.role() == Tail.Role.V) {
        table.row("dihedral of the V-tail", FrontView.figure(tail.planform().equivalentDihedral()));
      }
    }
    table.row("fuselage fineness ratio", number(airframe.fuselage().finenessRatio()));
    return table.sketch;
  }

  private static String number(double value) {
    return NamedUnit.NUMBER.format(value, 3);
  }

  /** A unit of area that goes with the unit of length and with the size of the wing. */
  private static NamedUnit<Area> areaUnit(NamedUnit<Length> unit, Area wing) {
    return switch (unit.symbol()) {
      case "mm", "cm", "µm" -> wing.si() < 1.0 ? Area.SQUARE_CENTIMETRE : Area.SQUARE_METRE;
      case "in" -> Area.SQUARE_INCH;
      case "ft", "yd" -> Area.SQUARE_FOOT;
      default -> Area.SQUARE_METRE;
    };
  }

  private void row(String what, String value) {
    Lettering left = Lettering.start(Lettering.NOTE);
    Lettering right = Lettering.end(Lettering.NOTE);
    y += ROW;
    sketch.text(0.0, y, what, left);
    sketch.text(WIDTH, y, TextWidth.cut(value, WIDTH - left.width(what) - 3.0, right), right);
    sketch.line(0.0, y + 1.5, WIDTH, y + 1.5, Pen.GRID);
  }
}
