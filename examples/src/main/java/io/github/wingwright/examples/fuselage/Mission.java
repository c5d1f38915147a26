// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.fuselage;

import io.github.wingwright.core.atmosphere.FlightCondition;
import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Density;
import io.github.wingwright.core.quantity.Energy;
import io.github.wingwright.core.quantity.Force;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.quantity.Power;
import io.github.wingwright.core.quantity.Pressure;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.core.quantity.Time;
import io.github.wingwright.core.sizing.BodyShell;
import io.github.wingwright.core.sizing.FigureOfMerit;
import io.github.wingwright.examples.brief.Field;
import java.util.List;

/**
 * What the aeroplane is for, as far as its body matters: the rest of it is a mass, a wing and a drag area.
 *
 * <pre>{@code D = q·F + (m·g)²/(q·π·A·e·S)        m = m₀ + ρ·w·S_wet}</pre>
 *
 * @param figure what is counted
 * @param massWithoutShell mass of everything but the body's wall
 * @param wingArea area of the wing S
 * @param aspectRatio aspect ratio of the wing A
 * @param oswald span efficiency e
 * @param otherDragArea drag area of everything but the body
 * @param flight air and speed
 * @param shell the wall of the body
 * @param units units to show speeds in
 * @param amount height [m], energy [J] or power [W], as the figure needs
 * @param efficiency from battery or shaft to thrust, 1 for a glider
 */
record Mission(
    Figure figure,
    Mass massWithoutShell,
    Area wingArea,
    double aspectRatio,
    double oswald,
    Area otherDragArea,
    FlightCondition flight,
    BodyShell shell,
    Units units,
    double amount,
    double efficiency) {

  private static final double GRAVITY = 9.80665;
  private static final Source BALANCE = Source.library("level flight: thrust equals drag");

  /** What may be counted. */
  enum Figure {
    /** How far it glides from a height, in still air. */
    GLIDE_DISTANCE,
    /** How long it flies on its battery at the speed of the brief. */
    ENDURANCE,
    /** How fast it flies level. */
    LEVEL_SPEED
  }

  private static final Formula SHELL_MASS =
      Formula.named("mass of the body's wall")
          .gives("m_w", Mass.KILOGRAM)
          .as("ρ_w·w·S_wet")
          .where("ρ_w", "density of the wall", Density.KILOGRAM_PER_CUBIC_METRE, 10, 10_000)
          .where("w", "wall thickness", Length.METRE, 1e-5, 0.1)
          .where("S_wet", "wetted area", Area.SQUARE_METRE, 1e-5, 1e3)
          .from(Source.DEFINITION)
          .computedBy(Mission::shellMass);

  private static final Formula PRESSURE =
      Formula.named("dynamic pressure")
          .gives("q", Pressure.PASCAL)
          .as("½·ρ·V²")
          .where("ρ", "density of the air", Density.KILOGRAM_PER_CUBIC_METRE, 0.1, 2)
          .where("V", "airspeed", Speed.METRE_PER_SECOND, 0.1, 200)
          .from(Source.DEFINITION)
          .computedBy(Mission::pressure);

  private static final Formula DRAG =
      Formula.named("drag in level flight")
          .gives("D", Force.NEWTON)
          .as("q·F_all + (m·9.80665)²/(q·π·A·e·S)")
          .where("q", "dynamic pressure", Pressure.PASCAL, 0.1, 1e5)
          .where("F_all", "drag area of the whole aeroplane", Area.SQUARE_METRE, 1e-6, 100)
          .where("m", "mass", Mass.KILOGRAM, 1e-3, 1e5)
          .where("A", "aspect ratio", 0.5, 40)
          .where("e", "span efficiency", 0.3, 1)
          .where("S", "wing area", Area.SQUARE_METRE, 1e-4, 1e3)
          .from(Source.DEFINITION)
          .computedBy(Mission::drag);

  private static final Formula ENDURANCE =
      Formula.named("endurance")
          .gives("t", Time.SECOND)
          .as("E·η/(D·V)")
          .where("E", "usable energy of the battery", Energy.JOULE, 1, 1e10)
          .where("η", "efficiency from battery to thrust", 0.05, 1)
          .where("D", "drag", Force.NEWTON, 1e-4, 1e6)
          .where("V", "airspeed", Speed.METRE_PER_SECOND, 0.1, 200)
          .from(Source.DEFINITION)
          .computedBy(Mission::endurance);

  private static final Formula GLIDE =
      Formula.named("distance of the best glide")
          .gives("x", Length.METRE)
          .as("½·h·√(π·A·e·S/F_all)")
          .where("h", "height", Length.METRE, 0.1, 1e4)
          .where("A", "aspect ratio", 0.5, 40)
          .where("e", "span efficiency", 0.3, 1)
          .where("S", "wing area", Area.SQUARE_METRE, 1e-4, 1e3)
          .where("F_all", "drag area of the whole aeroplane", Area.SQUARE_METRE, 1e-6, 100)
          .from(
              Source.restated(
                  "Raymer, Aircraft Design: A Conceptual Approach, 6th ed., 2018",
                  "eqs 17.13 and 17.62, times the height"))
          .computedBy(Mission::glide);

  static Mission from(
      Field aircraft, Field judged, FlightCondition flight, BodyShell shell, Units units) {
    Figure figure = judged.required("figure").choice(Figure.class);
    double amount =
        switch (figure) {
          case GLIDE_DISTANCE ->
              judged.required("height").quantity(Length.KIND, "0.1 m", "10 km").si();
          case ENDURANCE ->
              judged.required("battery_energy").quantity(Energy.KIND, "1 J", "1000000 Wh").si();
          case LEVEL_SPEED -> judged.required("power").quantity(Power.KIND, "1 W", "5000 kW").si();
        };
    double efficiency =
        figure == Figure.GLIDE_DISTANCE
            ? 1.0
            : judged.required("efficiency").number(Interval.between(0.05, 1.0));
    judged.refuseTheRest();
    Mission mission =
        new Mission(
            figure,
            aircraft.required("mass_without_shell").quantity(Mass.KIND, "0.1 g", "100000 kg"),
            aircraft.required("wing_area").quantity(Area.KIND, "1 cm²", "1000 m²"),
            aircraft.required("aspect_ratio").number(Interval.between(0.5, 40.0)),
            aircraft.required("oswald").number(Interval.between(0.3, 1.0)),
            aircraft.required("drag_area_without_body").quantity(Area.KIND, "0.01 cm²", "100 m²"),
            flight,
            shell,
            units,
            amount,
            efficiency);
    aircraft.refuseTheRest();
    return mission;
  }

  static double shellMass(double density, double wall, double wetted) {
    return density * wall * wetted;
  }

  static double pressure(double density, double speed) {
    return 0.5 * density * speed * speed;
  }

  static double drag(
      double q, double dragArea, double mass, double aspect, double oswald, double area) {
    double weight = mass * GRAVITY;
    return q * dragArea + weight * weight / (q * Math.PI * aspect * oswald * area);
  }

  static double endurance(double energy, double efficiency, double drag, double speed) {
    return energy * efficiency / (drag * speed);
  }

  static double glide(double height, double aspect, double oswald, double area, double dragArea) {
    return 0.5 * height * Math.sqrt(Math.PI * aspect * oswald * area / dragArea);
  }

  FigureOfMerit asFigure() {
    return new FigureOfMerit(name(), unit(), true, this::value);
  }

  String name() {
    return switch (figure) {
      case GLIDE_DISTANCE -> "glide from " + units.distance().format(amount, 3) + ", still air";
      case ENDURANCE ->
          "endurance on "
              + Energy.WATT_HOUR.format(amount, 3)
              + " at "
              + units.show(flight.airspeed());
      case LEVEL_SPEED -> "level speed on " + units.power().format(amount, 3);
    };
  }

  NamedUnit<?> unit() {
    return switch (figure) {
      case GLIDE_DISTANCE -> units.distance();
      case ENDURANCE -> Time.MINUTE;
      case LEVEL_SPEED -> units.speed();
    };
  }

  Mass massOfShell(Fuselage body) {
    return Mass.kilograms(
        shellMass(shell.density().si(), shell.wall().si(), body.wettedArea().si()));
  }

  Mass mass(Fuselage body) {
    return massWithoutShell.plus(massOfShell(body));
  }

  /** What a body leads to, in SI. */
  double value(Fuselage body, double dragArea) {
    double all = dragArea + otherDragArea.si();
    if (figure == Figure.GLIDE_DISTANCE) {
      return glide(amount, aspectRatio, oswald, wingArea.si(), all);
    }
    double mass = mass(body).si();
    double v = flight.airspeed().si();
    return figure == Figure.ENDURANCE
        ? endurance(amount, efficiency, dragAt(v, all, mass), v)
        : levelSpeed(amount * efficiency, all, mass);
  }

  private double dragAt(double speed, double dragArea, double mass) {
    double q = pressure(flight.air().density().si(), speed);
    return drag(q, dragArea, mass, aspectRatio, oswald, wingArea.si());
  }

  /** The faster of the two speeds at which the power is just enough. */
  private double levelSpeed(double power, double dragArea, double mass) {
    double low = speedOfLeastPower(dragArea, mass);
    double high = 10.0 * low;
    if (dragAt(low, dragArea, mass) * low > power) {
      return low;
    }
    for (int i = 0; i < 100; i++) {
      double middle = 0.5 * (low + high);
      if (dragAt(middle, dragArea, mass) * middle > power) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return low;
  }

  /** Where 3·q·F equals the induced drag. */
  private double speedOfLeastPower(double dragArea, double mass) {
    double weight = mass * GRAVITY;
    double q = weight / Math.sqrt(3.0 * dragArea * Math.PI * aspectRatio * oswald * wingArea.si());
    return Math.sqrt(2.0 * q / flight.air().density().si());
  }

  /** The figure with its workings. */
  Step step(Step bodyDragArea, Fuselage body) {
    Step other =
        Step.given("drag area of everything but the body", "F_o", otherDragArea, Source.BRIEF);
    Step all = Step.sum("drag area of the whole aeroplane", "F_all", List.of(bodyDragArea, other));
    Step aspect = Step.given("aspect ratio", "A", aspectRatio, Source.BRIEF);
    Step e = Step.given("span efficiency", "e", oswald, Source.BRIEF);
    Step area = Step.given("wing area", "S", wingArea, Source.BRIEF);
    if (figure == Figure.GLIDE_DISTANCE) {
      return Step.of(
          GLIDE,
          Step.given("height", "h", Length.metres(amount), Source.BRIEF),
          aspect,
          e,
          area,
          all);
    }
    Step wall =
        Step.of(
            SHELL_MASS,
            Step.given("density of the wall", "ρ_w", shell.density(), Source.BRIEF),
            Step.given("wall thickness", "w", shell.wall(), Source.BRIEF),
            Step.given(
                "wetted area", "S_wet", body.wettedArea(), Source.taken("geometry of the body")));
    Step mass =
        Step.sum(
            "mass",
            "m",
            List.of(
                Step.given(
                    "mass of everything but the wall", "m_0", massWithoutShell, Source.BRIEF),
                wall));
    Step density =
        Step.given(
            "density of the air", "ρ", flight.air().density(), Source.taken("air of the brief"));
    Step eta = Step.given("efficiency", "η", efficiency, Source.BRIEF);
    if (figure == Figure.ENDURANCE) {
      Step speed = Step.given("airspeed", "V", flight.airspeed(), Source.BRIEF);
      Step drag = Step.of(DRAG, Step.of(PRESSURE, density, speed), all, mass, aspect, e, area);
      return Step.of(
          ENDURANCE,
          Step.given("usable energy", "E", Energy.joules(amount), Source.BRIEF),
          eta,
          drag,
          speed);
    }
    Step power = Step.given("power", "P", Power.watts(amount), Source.BRIEF);
    return Step.solution(
        "level speed",
        "V_max",
        Speed.METRE_PER_SECOND,
        "bisection above the speed of least power",
        "η·P = V·(q·F_all + (m·g)²/(q·π·A·e·S)) with q = ½·ρ·V²",
        in -> levelSpeed(in[0] * in[1], in[2], in[3]),
        in -> dragAt(in[8], in[2], in[3]) * in[8] / (in[0] * in[1]) - 1.0,
        BALANCE,
        power,
        eta,
        all,
        mass,
        density,
        aspect,
        e,
        area);
  }
}
