// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

import io.github.wingwright.core.atmosphere.Air;
import io.github.wingwright.core.atmosphere.FlightCondition;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.numerics.Minimum;
import io.github.wingwright.core.numerics.Roots;
import io.github.wingwright.core.numerics.Tolerance;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Volume;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * The price of a body: its drag against fineness ratio, while one thing stays as it is.
 *
 * <pre>{@code
 * D/q = C_f(V·L/ν)·FF(f)·S_wet(L, d)        f = L/d
 * }</pre>
 *
 * <p>A flat base adds its drag behind the body's layer.
 *
 * <p>What stays decides the advice. With the <b>section</b> fixed by the contents, every piece of length is more skin, and
 * the best body is short: f from 2 to 3. With the <b>volume</b> fixed, short means thick, and the best body is slender: f
 * from 5 to 8, the more so the more the friction falls with length. With the <b>length</b> fixed, thinner is less skin and
 * less form: the drag falls all the way, and something else (stiffness, contents) must say stop. So it is with a laminar
 * layer at fixed volume too: C_f goes with L^−½ and the skin with L^½, friction stays the same for every slenderness, and
 * only the pressure drag is left to fall. All optima depend on the form factor, so an {@link Optimum} names it, and says how
 * far one may leave it for one per cent of drag.
 *
 * <pre>{@code
 * BodyDragCurve curve = BodyDragCurve.of(BodyShape.capsule(), flight, FrictionModel.laminar(), BodyFormFactor.HOERNER_LAMINAR)
 *     .atFixedVolume(cubicCentimetres(60));
 * curve.optimum(Interval.between(2, 14));
 * }</pre>
 */
public final class BodyDragCurve {
  /** What stays as it is along a curve. */
  public enum Held {
    /** The length: the machine that makes it. */
    LENGTH,
    /** The volume: contents that fit any shape. */
    VOLUME,
    /** The greatest section: contents of one size. */
    SECTION
  }

  /** Length from fineness ratio and diameter. */
  public static final Formula LENGTH =
      Formula.named("length of a body")
          .gives("L", Length.METRE)
          .as("f·d")
          .where("f", "fineness ratio", 0.5, 100)
          .where("d", "diameter", Length.METRE, 1e-4, 20)
          .from(Source.DEFINITION)
          .computedBy(BodyDragCurve::length);

  /** Drag within this part of the least counts as the least. */
  public static final double FLAT = 0.01;

  private static final Tolerance TOLERANCE = Tolerance.relative(1e-9);
  private static final int SCAN_STEPS = 60;
  private static final Source POINT = Source.taken("a point of the curve, in the air and at the speed of the curve");

  private final BodyShape shape;
  private final FlightCondition flight;
  private final FrictionModel friction;
  private final BodyFormFactor form;
  private final Held held;
  private final double value;
  private final double speed;
  private final double viscosity;
  private final double mach;

  private BodyDragCurve(
      BodyShape shape,
      FlightCondition flight,
      FrictionModel friction,
      BodyFormFactor form,
      Held held,
      double value) {
    this.shape = shape;
    this.flight = flight;
    this.friction = friction;
    this.form = form;
    this.held = held;
    this.value = value;
    this.speed = Door.positive(flight.airspeed(), "airspeed").si();
    this.viscosity = flight.air().kinematicViscosity().si();
    this.mach = flight.machNumber();
  }

  /**
   * The curve of a family of bodies, with the length of one metre fixed until something else is said.
   *
   * @param shape family of bodies
   * @param flight air and airspeed, not zero
   * @param friction friction model
   * @param form form factor
   * @return the curve
   */
  public static BodyDragCurve of(
      BodyShape shape, FlightCondition flight, FrictionModel friction, BodyFormFactor form) {
    Objects.requireNonNull(flight, "flight");
    Objects.requireNonNull(shape, "shape");
    Objects.requireNonNull(friction, "friction");
    Objects.requireNonNull(form, "form");
    return new BodyDragCurve(shape, flight, friction, form, Held.LENGTH, 1.0);
  }

  /**
   * The curve at a fixed length.
   *
   * @param length length, positive
   * @return the curve
   */
  public BodyDragCurve atFixedLength(Length length) {
    return holding(Held.LENGTH, Door.positive(length, "length of the body").si());
  }

  /**
   * The curve at a fixed volume.
   *
   * @param volume volume, positive
   * @return the curve
   */
  public BodyDragCurve atFixedVolume(Volume volume) {
    return holding(Held.VOLUME, Door.positive(volume, "volume of the body").si());
  }

  /**
   * The curve at a fixed greatest section.
   *
   * @param diameter greatest diameter, positive
   * @return the curve
   */
  public BodyDragCurve atFixedSection(Length diameter) {
    return holding(Held.SECTION, Door.positive(diameter, "diameter of the body").si());
  }

  private BodyDragCurve holding(Held what, double much) {
    return new BodyDragCurve(shape, flight, friction, form, what, much);
  }

  /**
   * The same curve by another form factor.
   *
   * @param other form factor
   * @return the curve
   */
  public BodyDragCurve by(BodyFormFactor other) {
    Objects.requireNonNull(other, "other");
    return new BodyDragCurve(shape, flight, friction, other, held, value);
  }

  /**
   * Greatest diameter at a fineness ratio.
   *
   * @param fineness f, positive
   * @return d [m]
   */
  public double diameter(double fineness) {
    return switch (held) {
      case LENGTH -> value / fineness;
      // every family keeps its proportions, so volume goes with the cube of the diameter
      case VOLUME -> Math.cbrt(value / shape.volume(fineness, 1.0));
      case SECTION -> value;
    };
  }

  /**
   * Drag area at a fineness ratio, without allocation.
   *
   * @param fineness f, positive
   * @return D/q [m²]
   */
  public double dragArea(double fineness) {
    double d = diameter(fineness);
    double length = fineness * d;
    double cf = friction.coefficient(Air.reynoldsNumber(speed, length, viscosity), length, mach);
    double body = DragBuildUp.frictionDragArea(cf, form.factor(fineness, cf), 1.0, shape.wettedArea(length, d));
    double base = shape.baseArea(length, d);
    return base > 0.0 ? body + AfterbodyDrag.shieldedBase(body, base) : body;
  }

  /**
   * The body at a fineness ratio.
   *
   * @param fineness f, at least the least that the family can form
   * @return its dimensions
   */
  public Fuselage body(double fineness) {
    double d = diameter(Door.positive(fineness, "fineness ratio"));
    return new Fuselage(shape, Length.metres(fineness * d), Length.metres(d));
  }

  /**
   * The drag area at a fineness ratio as a line of the workings.
   *
   * @param fineness f
   * @return the step of D/q
   */
  public Step step(double fineness) {
    Step f = Step.given("fineness ratio", "f", Door.positive(fineness, "fineness ratio"), POINT);
    Step d =
        Step.solution(
            "diameter",
            "d",
            Length.METRE,
            "closed form: every family keeps its proportions",
            "what is held fixed: " + held.name().toLowerCase(Locale.ROOT),
            in -> diameter(in[0]),
            in -> held(in[0], in[1]) / value - 1.0,
            POINT,
            f);
    Step length = Step.of(LENGTH, f, d);
    Step wetted = shape.wettedAreaStep(length, d);
    BodyDrag component =
        new BodyDrag("the body", length.value(), fineness, wetted.value(), friction, form, 1.0)
            .withBase(Area.squareMetres(shape.baseArea(length.value(), d.value())));
    return component.step(
        Step.given("airspeed", "V", flight.airspeed(), POINT),
        Step.given("kinematic viscosity", "ν", flight.air().kinematicViscosity(), POINT),
        Step.given("Mach number", "M", mach, POINT),
        new BodyDrag.Shape(length, f, wetted));
  }

  private double held(double fineness, double d) {
    return switch (held) {
      case LENGTH -> fineness * d;
      case VOLUME -> shape.volume(fineness * d, d);
      case SECTION -> d;
    };
  }

  /**
   * Length of a body.
   *
   * <pre>{@code L = f·d}</pre>
   *
   * <p>Example: f = 8, d = 30 mm gives 240 mm.
   *
   * @param fineness f
   * @param diameter d [m]
   * @return L [m]
   */
  public static double length(double fineness, double diameter) {
    return fineness * diameter;
  }

  /**
   * Points for a picture, evenly spaced.
   *
   * @param fineness from and to
   * @param points number of points, at least 2
   * @return drag areas, the fineness ratios even from end to end
   */
  public List<Point> points(Interval fineness, int points) {
    Objects.requireNonNull(fineness, "fineness");
    Interval range = defined(fineness);
    Door.within(points, 2, 100_000, "number of points");
    List<Point> curve = new ArrayList<>();
    for (int i = 0; i < points; i++) {
      double f = range.lower() + range.width() * i / (points - 1);
      curve.add(new Point(f, diameter(f), dragArea(f)));
    }
    return List.copyOf(curve);
  }

  /**
   * One point of the curve.
   *
   * @param fineness f
   * @param diameter d [m]
   * @param dragArea D/q [m²]
   */
  public record Point(double fineness, double diameter, double dragArea) {}

  /**
   * The body of least drag.
   *
   * @param fineness where to look
   * @return the optimum, with how flat it is
   */
  public Optimum optimum(Interval fineness) {
    Objects.requireNonNull(fineness, "fineness");
    Interval range = defined(fineness);
    Minimum least = Minimum.amongSeveral(this::dragArea, range.lower(), range.upper(), SCAN_STEPS, TOLERANCE);
    double limit = (1.0 + FLAT) * least.value();
    double lower = edge(least.argument(), range.lower(), limit);
    double upper = edge(least.argument(), range.upper(), limit);
    double margin = 1e-6 * range.width();
    boolean inside = least.argument() > range.lower() + margin && least.argument() < range.upper() - margin;
    List<Finding> findings = form.findings(least.argument());
    return new Optimum(
        least.argument(), body(least.argument()), Area.squareMetres(least.value()), Interval.between(lower, upper), inside,
        held, form, findings);
  }

  /** Where the drag crosses a limit between the optimum and an end, or the end. */
  private double edge(double optimum, double end, double limit) {
    if (dragArea(end) <= limit || optimum == end) {
      return end;
    }
    return Roots.find(f -> dragArea(f) - limit, Math.min(optimum, end), Math.max(optimum, end), TOLERANCE);
  }

  private Interval defined(Interval fineness) {
    Interval possible = Interval.atLeast(shape.leastFinenessRatio());
    Interval range =
        (form == BodyFormFactor.SHEVELL ? possible.intersect(form.domain()) : possible).intersect(fineness);
    if (!(range.width() > 0.0) || Double.isInfinite(range.upper())) {
      throw new IllegalArgumentException(
          "fineness ratios must be a finite range from " + possible.lower() + " up for a " + shape.name() + " by " + form
              + ", were " + fineness);
    }
    return range;
  }

  /**
   * A body of least drag.
   *
   * @param fineness its fineness ratio
   * @param body its dimensions
   * @param dragArea its drag area
   * @param within fineness ratios whose drag is within 1 % of it
   * @param inside false if it lies at an end of the range that was searched: the drag falls all the way
   * @param held what was kept fixed
   * @param form the form factor that it depends on
   * @param findings what the form factor says of itself there
   */
  public record Optimum(
      double fineness,
      Fuselage body,
      Area dragArea,
      Interval within,
      boolean inside,
      Held held,
      BodyFormFactor form,
      List<Finding> findings) {

    /** A range of this ratio of fineness within 1 % is called flat. */
    private static final double FLAT_FROM = 1.3;

    /** Keeps its own list. */
    public Optimum {
      Objects.requireNonNull(findings, "findings");
      Objects.requireNonNull(body, "body");
      Objects.requireNonNull(dragArea, "drag area");
      Objects.requireNonNull(within, "within");
      Objects.requireNonNull(held, "held");
      Objects.requireNonNull(form, "form");
      findings = List.copyOf(findings);
    }

    /**
     * Whether the optimum is flat: the fineness ratio can be chosen for other reasons at no price to speak of.
     *
     * @return whether the range within 1 % spans a ratio of 1.3 or more
     */
    public boolean isFlat() {
      return within.upper() >= FLAT_FROM * within.lower();
    }

    @Override
    public String toString() {
      String what = inside ? (isFlat() ? "flat optimum" : "sharp optimum") : "least at the end";
      return what + " f = " + Math.round(100.0 * fineness) / 100.0 + " (" + within + " within 1 %), " + form;
    }
  }
}
