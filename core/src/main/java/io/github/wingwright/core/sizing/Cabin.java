// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;

/**
 * People in a round body: rows of seats, the smallest circle around a row, and the length that the rows take.
 *
 * <p>A row is held by three points on each side, from the floor up: the feet, the shoulders at 62 % of the height, and the
 * head. The body must enclose all three; the circle's middle is set where the circle is smallest. Handbook sizes to start
 * from: seat 16 to 18 in wide and pitch 30 to 32 in close together, 20 to 28 in and 38 to 40 in at ease; head 10 in around
 * the eye; wall of a small aeroplane about 1 in. These are dimensions to start a drawing with; whatever carries people is
 * for licensed practice to judge.
 *
 * @param rows rows of seats, at least 1
 * @param abreast seats in a row, at least 1
 * @param seatWidth width of a seat
 * @param aisle width of the aisle, zero for none
 * @param height from the floor to the top of the head's room
 * @param pitch distance from row to row
 * @param station length of the crew station ahead of the first row: pedals and panel
 */
public record Cabin(
    int rows, int abreast, Length seatWidth, Length aisle, Length height, Length pitch, Length station) {
  /** Where the dimensions to start from come from. */
  public static final Source HANDBOOK =
      Source.restated("Raymer, Aircraft Design: A Conceptual Approach, 6th ed., 2018", "table 9.1, pp. 261 to 274");

  private static final double FEET_INSIDE = 0.10;
  private static final double SHOULDER_HEIGHT = 0.62;
  private static final double HEAD_ROOM = 0.127;
  private static final double HEAD_ROOM_AROUND_EYE = 0.254;

  /** Refuses a cabin without seats or size. */
  public Cabin {
    if (rows < 1 || abreast < 1) {
      throw new IllegalArgumentException(
          "cabin must have at least one row of one seat, had " + rows + " rows of " + abreast);
    }
    Door.positive(seatWidth, "width of a seat");
    Door.notNegative(aisle, "width of the aisle");
    Door.positive(height, "height of the cabin");
    Door.positive(pitch, "pitch of the seats");
    Door.notNegative(station, "length of the crew station");
  }

  /**
   * A small cabin by handbook: seats 18 in wide at a pitch of 32 in, 42 in high, without an aisle, 24 in for the feet of
   * the first row.
   *
   * @param rows rows of seats, at least 1
   * @param abreast seats in a row, at least 1
   * @return the cabin
   */
  public static Cabin small(int rows, int abreast) {
    return new Cabin(
        rows,
        abreast,
        Length.inches(18),
        Length.ZERO,
        Length.inches(42),
        Length.inches(32),
        Length.inches(24));
  }

  /**
   * Width inside, at the shoulders.
   *
   * @return seats and aisle
   */
  public Length width() {
    return seatWidth.times(abreast).plus(aisle);
  }

  /**
   * Length of the rows and the crew station.
   *
   * @return station + rows·pitch
   */
  public Length length() {
    return station.plus(pitch.times(rows));
  }

  /**
   * Radius of the smallest circle around a row.
   *
   * @return the radius inside the wall
   */
  public Length innerRadius() {
    return Length.metres(circle()[0]);
  }

  /**
   * How far the pilot's eye lies below the top of that circle: 10 in of room around it end at the height of the cabin.
   *
   * @return distance from the inside of the wall down to the eye
   */
  public Length eyeBelowRoof() {
    double[] circle = circle();
    double eye = height.si() - HEAD_ROOM_AROUND_EYE - circle[1];
    return Length.metres(circle[0] - eye);
  }

  /** Radius of the smallest circle, and the height of its middle above the floor. */
  private double[] circle() {
    double half = 0.5 * width().si();
    double h = height.si();
    double[] wide = {
      Math.max(half - FEET_INSIDE, 0.0), half, Math.max(half - 0.5 * seatWidth.si() + HEAD_ROOM, 0.0)
    };
    double[] high = {0.0, SHOULDER_HEIGHT * h, h};
    // The greatest of three convex functions is convex: a ternary search finds its least.
    double low = 0.0;
    double top = h;
    for (int i = 0; i < 200; i++) {
      double a = low + (top - low) / 3.0;
      double b = top - (top - low) / 3.0;
      if (around(wide, high, a) <= around(wide, high, b)) {
        top = b;
      } else {
        low = a;
      }
    }
    double middle = 0.5 * (low + top);
    return new double[] {around(wide, high, middle), middle};
  }

  private static double around(double[] wide, double[] high, double middle) {
    double r = 0.0;
    for (int i = 0; i < wide.length; i++) {
      r = Math.max(r, Math.hypot(wide[i], high[i] - middle));
    }
    return r;
  }

  /**
   * The cabin as something that goes inside a body, with everybody in it.
   *
   * @param occupant mass of one person with seat, not negative
   * @return a cylinder around all rows
   */
  public Thing asThing(Mass occupant) {
    Mass all = Door.notNegative(occupant, "mass of a person").times(rows * abreast);
    return Thing.cylinder("cabin of " + rows + " × " + abreast, length(), innerRadius().times(2.0), all);
  }

  @Override
  public String toString() {
    return "cabin " + rows + " × " + abreast + ", " + width() + " wide, " + length() + " long";
  }
}
