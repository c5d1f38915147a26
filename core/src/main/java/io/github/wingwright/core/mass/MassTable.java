// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.mass;

import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.StringJoiner;

/**
 * A mass statement as text, in units of one's choice: a line for each item, the total, and how far it may be off. No line
 * is longer than 75 characters.
 *
 * <pre>{@code System.out.println(statement.table(Mass.OUNCE, Length.INCH));}</pre>
 */
public final class MassTable {
  private static final int NAME = 28;
  private static final int NUMBER = 11;
  private static final int DIGITS = 4;

  private final MassStatement statement;
  private final NamedUnit<Mass> massUnit;
  private final NamedUnit<Length> lengthUnit;

  MassTable(MassStatement statement, NamedUnit<Mass> massUnit, NamedUnit<Length> lengthUnit) {
    this.statement = statement;
    this.massUnit = massUnit;
    this.lengthUnit = lengthUnit;
  }

  @Override
  public String toString() {
    StringJoiner lines = new StringJoiner(System.lineSeparator());
    lines.add(
        left("item")
            + right("mass [" + massUnit + "]")
            + right("x [" + lengthUnit + "]")
            + right("y [" + lengthUnit + "]")
            + right("z [" + lengthUnit + "]"));
    for (MassItem item : statement.items()) {
      lines.add(line(item.name(), item.mass(), item.centreOfGravity()));
    }
    lines.add(line("total", statement.mass(), statement.centreOfGravity()));
    if (!statement.massBand().isExact()) {
      lines.add(
          left("may lie within")
              + statement.massBand().si().interval().format(massUnit)
              + ", x "
              + statement.centreOfGravityBand().si().interval().format(lengthUnit));
    }
    return lines.toString();
  }

  private String line(String name, Mass mass, Placement at) {
    return left(name)
        + right(number(massUnit.fromSi(mass.si())))
        + right(number(lengthUnit.fromSi(at.x().si())))
        + right(number(lengthUnit.fromSi(at.y().si())))
        + right(number(lengthUnit.fromSi(at.z().si())));
  }

  private static String number(double value) {
    return NamedUnit.NUMBER.format(value, DIGITS);
  }

  private static String left(String text) {
    String cut = text.length() < NAME ? text : text.substring(0, NAME - 2) + "…";
    return cut + " ".repeat(NAME - cut.length());
  }

  private static String right(String text) {
    return text.length() >= NUMBER ? " " + text : " ".repeat(NUMBER - text.length()) + text;
  }
}
