// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.fuselage;

import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.FlexuralRigidity;
import io.github.wingwright.core.quantity.Force;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.quantity.Power;
import io.github.wingwright.core.quantity.QuantityKind;
import io.github.wingwright.core.quantity.ScalarQuantity;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.core.quantity.Volume;
import io.github.wingwright.examples.brief.Field;
import java.util.List;

/**
 * The units that a brief asks for, for everything that is shown to its reader.
 *
 * @param length unit of lengths
 * @param mass unit of masses
 * @param speed unit of speeds
 */
record Units(NamedUnit<Length> length, NamedUnit<Mass> mass, NamedUnit<Speed> speed) {

  static Units from(Field field) {
    Units units =
        new Units(
            unit(field.required("length"), Length.KIND),
            unit(field.required("mass"), Mass.KIND),
            unit(field.required("speed"), Speed.KIND));
    field.refuseTheRest();
    return units;
  }

  private static <Q extends ScalarQuantity<Q>> NamedUnit<Q> unit(
      Field field, QuantityKind<Q> kind) {
    String text = field.text();
    return kind.units().stream()
        .filter(u -> u.symbol().equals(text) || u.aliases().contains(text))
        .findFirst()
        .orElseThrow(
            () ->
                field.error(
                    "must be one of the units " + kind.unitSymbols() + ", was \"" + text + "\""));
  }

  String show(Length value) {
    return Length.show(value.si(), length, 4);
  }

  String show(Mass value) {
    return value.format(mass, 4);
  }

  String show(Speed value) {
    return value.format(speed, 4);
  }

  /** One unit for each kind of quantity that a consideration may name. */
  NamedUnit<?>[] all() {
    return inches()
        ? new NamedUnit<?>[] {length, mass, speed, volume(), Force.POUND_FORCE, Angle.DEGREE}
        : new NamedUnit<?>[] {length, mass, speed, volume(), Angle.DEGREE};
  }

  boolean large() {
    return List.of(Length.METRE, Length.FOOT).contains(length);
  }

  private boolean inches() {
    return List.of(Length.INCH, Length.FOOT).contains(length);
  }

  NamedUnit<Area> area() {
    return inches()
        ? (large() ? Area.SQUARE_FOOT : Area.SQUARE_INCH)
        : (large() ? Area.SQUARE_METRE : Area.SQUARE_CENTIMETRE);
  }

  /** Drag areas are small. */
  NamedUnit<Area> dragArea() {
    return inches() ? Area.SQUARE_INCH : Area.SQUARE_CENTIMETRE;
  }

  NamedUnit<FlexuralRigidity> stiffness() {
    return inches()
        ? (large() ? FlexuralRigidity.POUND_FORCE_SQUARE_FOOT : FlexuralRigidity.POUND_FORCE_SQUARE_INCH)
        : (large() ? FlexuralRigidity.KILONEWTON_SQUARE_METRE : FlexuralRigidity.NEWTON_SQUARE_METRE);
  }

  /** Heights and distances of flight. */
  NamedUnit<Length> distance() {
    return inches() ? Length.FOOT : Length.METRE;
  }

  NamedUnit<Power> power() {
    return inches() ? Power.HORSEPOWER : Power.KILOWATT;
  }

  NamedUnit<Volume> volume() {
    return inches()
        ? (large() ? Volume.CUBIC_FOOT : Volume.CUBIC_INCH)
        : (large() ? Volume.CUBIC_METRE : Volume.CUBIC_CENTIMETRE);
  }
}
