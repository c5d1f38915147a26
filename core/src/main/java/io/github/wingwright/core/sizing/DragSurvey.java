// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.numerics.Minimum;
import io.github.wingwright.core.numerics.Tolerance;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.quantity.Volume;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;

/**
 * How the drag of a body goes with its fineness ratio while something else is held fixed, where it is least, and how much
 * that matters.
 *
 * <p>What is held fixed decides the answer: around a given section a body of f = 2 to 3 drags least, around a given volume
 * one of 5 to 10, and at a given length the thinnest. The place of the least depends much on the form factor; the drag
 * there hardly does, because a minimum is flat: {@link #withinOnePercent} says how flat.
 *
 * <p>The least is looked for where the method holds ({@link DragArea#fit}) and among the fineness ratios that were asked for;
 * where these do not meet, among those alone. A form factor that is held at the end of its fit has a kink there, and a kink is
 * no optimum.
 *
 * @param held what is held fixed, in words
 * @param points the survey, from stout to slender
 * @param best where the drag is least
 * @param withinOnePercent fineness ratios around the best whose drag is at most 1 % above the least
 * @param atEnd whether the least is at an end of where it was looked for, so that it is no optimum
 */
public record DragSurvey(
    String held, List<Point> points, Point best, Interval withinOnePercent, boolean atEnd) {
  private static final int STEPS = 80;
  private static final double PERCENT = 1.01;
  /** The ratio of fineness within 1 % from which a least is called flat; also that of the curves by form factor. */
  private static final double FLAT_FROM = 1.3;

  /** Keeps a copy. */
  public DragSurvey {
    Objects.requireNonNull(points, "points");
    Objects.requireNonNull(held, "held");
    Objects.requireNonNull(best, "best");
    Objects.requireNonNull(withinOnePercent, "within one percent");
    points = List.copyOf(points);
  }

  /**
   * One body of the survey.
   *
   * @param fineness fineness ratio
   * @param length length [m]
   * @param diameter diameter [m]
   * @param dragArea D/q [m²]
   */
  public record Point(double fineness, double length, double diameter, double dragArea) {
    /** Refuses what is no body, and a drag that is no number. */
    public Point {
      Door.positive(fineness, "fineness ratio");
      Door.positive(length, "length");
      Door.positive(diameter, "diameter");
      Door.finite(dragArea, "drag area");
    }

    @Override
    public String toString() {
      return "f "
          + NamedUnit.NUMBER.format(fineness, 4)
          + ", "
          + Length.metres(length)
          + " × "
          + Length.metres(diameter)
          + ", D/q "
          + Area.squareMetres(dragArea);
    }
  }

  /**
   * At a fixed length: a more slender body is a thinner one.
   *
   * @param shape family of the body
   * @param drag its drag
   * @param length the length, positive
   * @param fineness fineness ratios to look at, at least the family's least
   * @return the survey
   */
  public static DragSurvey atFixedLength(BodyShape shape, DragArea drag, Length length, Interval fineness) {
    Objects.requireNonNull(drag, "drag");
    Objects.requireNonNull(shape, "shape");
    Objects.requireNonNull(fineness, "fineness");
    double l = Door.positive(length, "fuselage length").si();
    return of("length " + length.format(4), shape, drag, fineness, f -> new double[] {l, l / f});
  }

  /**
   * At a fixed volume: a more slender body is longer and thinner.
   *
   * @param shape family of the body
   * @param drag its drag
   * @param volume the volume, positive
   * @param fineness fineness ratios to look at, at least the family's least
   * @return the survey
   */
  public static DragSurvey atFixedVolume(BodyShape shape, DragArea drag, Volume volume, Interval fineness) {
    Objects.requireNonNull(drag, "drag");
    Objects.requireNonNull(shape, "shape");
    Objects.requireNonNull(fineness, "fineness");
    double v = Door.positive(volume, "volume").si();
    return of(
        "volume " + volume.format(4),
        shape,
        drag,
        fineness,
        f -> {
          // Bodies of one family and one fineness ratio are similar: volume goes with the cube of the length.
          double l = Math.cbrt(v / shape.volume(1.0, 1.0 / f));
          return new double[] {l, l / f};
        });
  }

  /**
   * At a fixed section: a more slender body is a longer one.
   *
   * @param shape family of the body
   * @param drag its drag
   * @param diameter the diameter, positive
   * @param fineness fineness ratios to look at, at least the family's least
   * @return the survey
   */
  public static DragSurvey atFixedSection(BodyShape shape, DragArea drag, Length diameter, Interval fineness) {
    Objects.requireNonNull(drag, "drag");
    Objects.requireNonNull(shape, "shape");
    Objects.requireNonNull(fineness, "fineness");
    double d = Door.positive(diameter, "fuselage diameter").si();
    return of("diameter " + diameter.format(4), shape, drag, fineness, f -> new double[] {f * d, d});
  }

  private static DragSurvey of(
      String held, BodyShape shape, DragArea drag, Interval fineness, DoubleFunction<double[]> size) {
    double low = fineness.lower();
    double high = fineness.upper();
    if (!(low >= shape.leastFinenessRatio() * (1.0 - 1e-12)) || !(high > low) || Double.isInfinite(high)) {
      throw new IllegalArgumentException(
          "fineness ratios must rise from at least "
              + shape.leastFinenessRatio()
              + " for a "
              + shape.name()
              + ", were "
              + low
              + " to "
              + high);
    }
    DoubleUnaryOperator cost =
        f -> {
          double[] body = size.apply(f);
          return drag.dragArea(shape, body[0], body[1]);
        };
    List<Point> points = new ArrayList<>();
    for (int i = 0; i <= STEPS; i++) {
      points.add(point(i == STEPS ? high : low * Math.pow(high / low, (double) i / STEPS), size, cost));
    }
    Interval both = fineness.intersect(drag.fit());
    Interval where = both.upper() > both.lower() ? both : fineness;
    double from = where.lower();
    double to = where.upper();
    double at = Minimum.amongSeveral(cost, from, to, STEPS, Tolerance.relative(1e-8)).argument();
    Point best = point(at, size, cost);
    double most = PERCENT * best.dragArea();
    Interval flat = Interval.between(edge(cost, at, from, most), edge(cost, at, to, most));
    boolean atEnd = at <= from * (1.0 + 1e-6) || at >= to * (1.0 - 1e-6);
    return new DragSurvey(held, points, best, flat, atEnd);
  }

  private static Point point(double f, DoubleFunction<double[]> size, DoubleUnaryOperator cost) {
    double[] body = size.apply(f);
    return new Point(f, body[0], body[1], cost.applyAsDouble(f));
  }

  /** From the least towards an end: the first crossing of the level in small steps, then bisection. */
  private static double edge(DoubleUnaryOperator cost, double from, double to, double most) {
    double in = from;
    for (int i = 1; i <= STEPS; i++) {
      double next = i == STEPS ? to : from + (to - from) * i / STEPS;
      if (cost.applyAsDouble(next) > most) {
        double out = next;
        for (int k = 0; k < 60; k++) {
          double middle = 0.5 * (in + out);
          if (cost.applyAsDouble(middle) > most) {
            out = middle;
          } else {
            in = middle;
          }
        }
        return in;
      }
      in = next;
    }
    return to;
  }

  /**
   * Whether the least is flat: the fineness ratio can be chosen for other reasons at no price to speak of.
   *
   * @return whether the bodies within 1 % span a ratio of fineness of 1.3 or more
   */
  public boolean isFlat() {
    return withinOnePercent.upper() >= FLAT_FROM * withinOnePercent.lower();
  }

  /**
   * The part of an aircraft's drag that a body is.
   *
   * @param drag drag of the body
   * @param body the body
   * @param whole drag area of the whole aircraft, positive
   * @return 0 to 1
   */
  public static double shareOf(DragArea drag, Fuselage body, Area whole) {
    Objects.requireNonNull(drag, "drag");
    Objects.requireNonNull(body, "body");
    Door.positive(whole, "drag area of the aircraft");
    return drag.dragArea(body.shape(), body.length().si(), body.diameter().si()) / whole.si();
  }

  @Override
  public String toString() {
    String flat = NamedUnit.NUMBER.format(withinOnePercent.lower(), 3) + " to " + NamedUnit.NUMBER.format(withinOnePercent.upper(), 3);
    String place = atEnd ? "falls to the end at f " : "least at f ";
    return held + ": " + place + NamedUnit.NUMBER.format(best.fineness(), 3) + ", within 1 % from " + flat;
  }
}
