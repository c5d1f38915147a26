// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import io.github.wingwright.core.performance.GlideGoal;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.core.quantity.Time;
import io.github.wingwright.core.quantity.Volume;
import io.github.wingwright.core.quantity.WingLoading;

/**
 * The units in which a brief is written, for everything that is shown to its reader.
 *
 * @param length unit of the wing's dimensions
 * @param distance unit of heights and distances
 * @param speed unit of the launch speed
 */
record BriefUnits(NamedUnit<Length> length, NamedUnit<Length> distance, NamedUnit<Speed> speed) {

  private boolean inches() {
    return length.equals(Length.INCH) || length.equals(Length.FOOT);
  }

  NamedUnit<Area> area() {
    return inches() ? Area.SQUARE_INCH : length.equals(Length.METRE) ? Area.SQUARE_METRE : Area.SQUARE_CENTIMETRE;
  }

  NamedUnit<Volume> volume() {
    return inches() ? Volume.CUBIC_INCH : length.equals(Length.METRE) ? Volume.LITRE : Volume.CUBIC_CENTIMETRE;
  }

  NamedUnit<Mass> mass() {
    return inches() ? Mass.OUNCE : length.equals(Length.METRE) ? Mass.KILOGRAM : Mass.GRAM;
  }

  NamedUnit<WingLoading> loading() {
    return inches() ? WingLoading.OUNCE_PER_SQUARE_FOOT : WingLoading.GRAM_PER_SQUARE_DECIMETRE;
  }

  NamedUnit<Angle> angle() {
    return Angle.DEGREE;
  }

  /** How far or how long something flew, from metres or seconds. */
  String flown(GlideGoal goal, double value) {
    return goal == GlideGoal.DISTANCE ? distance.format(value, 3) : Time.SECOND.format(value, 3);
  }

  /** The unit to show a number of a design in that is kept in an SI unit. */
  NamedUnit<?> shown(NamedUnit<?> si) {
    return switch (si.symbol()) {
      case "m" -> length;
      case "m²" -> area();
      case "m³" -> volume();
      case "kg" -> mass();
      case "kg/m²" -> loading();
      case "m/s" -> speed;
      case "rad" -> angle();
      default -> si;
    };
  }
}
