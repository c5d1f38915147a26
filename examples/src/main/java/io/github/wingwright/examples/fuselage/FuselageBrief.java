// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.fuselage;

import io.github.wingwright.core.aerodynamics.BodyFormFactor;
import io.github.wingwright.core.aerodynamics.FrictionModel;
import io.github.wingwright.core.aerodynamics.TurbulentFriction;
import io.github.wingwright.core.atmosphere.AirState;
import io.github.wingwright.core.atmosphere.Atmosphere;
import io.github.wingwright.core.atmosphere.FlightCondition;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.mass.Material;
import io.github.wingwright.core.mass.Materials;
import io.github.wingwright.core.quantity.Density;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Pressure;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.core.quantity.Temperature;
import io.github.wingwright.core.sizing.BodyShell;
import io.github.wingwright.core.sizing.DragArea;
import io.github.wingwright.core.sizing.FlightDrag;
import io.github.wingwright.core.sizing.FuselageSizing;
import io.github.wingwright.examples.brief.Field;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A fuselage's brief as it stands in a file.
 *
 * @param name name of the folder
 * @param title title of the report
 * @param purpose what the aeroplane is for
 * @param data where the figures come from, in the words of the brief
 * @param carriesPeople whether it carries people, so that the report says what that means
 * @param units units of everything that is shown
 * @param shape family of the body
 * @param flight air and speed
 * @param flow friction and form factor
 * @param shell the wall
 * @param wing where the wing sits
 * @param inside what is inside
 * @param pilot who looks out
 * @param wheels the main wheels
 * @param mission what the aeroplane is judged by
 * @param asked the considerations with their rules
 * @param choice how the body is chosen
 * @param known where values come from that other parts are handed
 */
record FuselageBrief(
    String name,
    String title,
    String purpose,
    String data,
    boolean carriesPeople,
    Units units,
    BodyShape shape,
    FlightCondition flight,
    Flow flow,
    BodyShell shell,
    WingPlace wing,
    Optional<Inside> inside,
    Optional<Pilot> pilot,
    Optional<Wheels> wheels,
    Mission mission,
    Asked asked,
    Choice choice,
    List<Step> known) {

  /** Folder names are made of these. */
  private static final String NAME = "[A-Za-z0-9][A-Za-z0-9_-]{0,59}";

  /**
   * How the flow is reckoned.
   *
   * @param friction friction model
   * @param form form factor of the body
   */
  record Flow(FrictionModel friction, BodyFormFactor form) {}

  /**
   * Where the wing sits.
   *
   * @param at its quarter chord, as a share of the length
   * @param rootChord its chord on the body
   * @param thickness its greatest thickness there
   * @param heightShare how high its middle lies, as a share of the radius, negative below
   */
  record WingPlace(double at, Length rootChord, Length thickness, double heightShare) {
    static WingPlace from(Field field) {
      WingPlace place =
          new WingPlace(
              field.required("at").number(Interval.between(0.05, 0.95)),
              field.required("root_chord").quantity(Length.KIND, "5 mm", "20 m"),
              field.required("thickness").quantity(Length.KIND, "0.5 mm", "5 m"),
              field.required("height_share").number(Interval.between(-0.95, 0.95)));
      field.refuseTheRest();
      return place;
    }
  }

  /**
   * Who looks out.
   *
   * @param seat name of the thing the pilot sits in
   * @param eyeBehindFront distance of the eye behind its front
   * @param windscreenAhead distance of the windscreen's foot ahead of the eye
   */
  record Pilot(String seat, Length eyeBehindFront, Length windscreenAhead) {
    static Pilot from(Field field) {
      Pilot pilot =
          new Pilot(
              field.required("sits_in").text(),
              field.required("eye_behind_front").quantity(Length.KIND, "1 mm", "5 m"),
              field.required("windscreen_ahead").quantity(Length.KIND, "1 mm", "5 m"));
      field.refuseTheRest();
      return pilot;
    }
  }

  /**
   * The main wheels.
   *
   * @param at where they touch, as a share of the length
   * @param strut how far below the greatest section's belly they touch
   * @param diameter diameter of a wheel
   * @param gravityAt aft end of the centre of gravity, as a share of the length
   * @param gravityHeight how high it lies above the reference line
   */
  record Wheels(double at, Length strut, Length diameter, double gravityAt, Length gravityHeight) {
    static Wheels from(Field field) {
      double at = field.required("wheels_at").number(Interval.between(0.05, 0.95));
      Wheels wheels =
          new Wheels(
              at,
              field.required("strut").quantity(Length.KIND, "1 mm", "5 m"),
              field.required("wheel_diameter").quantity(Length.KIND, "1 mm", "3 m"),
              field.required("centre_of_gravity").number(Interval.between(0.0, at)),
              field.required("centre_of_gravity_height").quantity(Length.KIND, "-5 m", "5 m"));
      field.refuseTheRest();
      return wheels;
    }
  }

  /**
   * How the body is chosen.
   *
   * @param length fixed length, if there is one
   * @param diameter chosen diameter, if there is one
   * @param rule the rule if there is no diameter
   */
  record Choice(Optional<Length> length, Optional<Length> diameter, Rule rule) {
    /** Rules of choice. */
    enum Rule {
      /** The diameter nearest to the targets. */
      NEAREST_TO_TARGETS,
      /** The body of least drag. */
      LEAST_DRAG,
      /** The smallest body. */
      SMALLEST
    }

    static Choice from(Field field) {
      Optional<Length> length =
          field.optional("length").map(f -> f.quantity(Length.KIND, "10 mm", "100 m"));
      Optional<Length> diameter =
          field.optional("diameter").map(f -> f.quantity(Length.KIND, "1 mm", "20 m"));
      Optional<Rule> rule = field.optional("by").map(f -> f.choice(Rule.class));
      if (diameter.isPresent() == rule.isPresent()) {
        throw field.error(
            "needs either a \"diameter\" or a rule \"by\", has "
                + (rule.isPresent() ? "both" : "neither"));
      }
      field.refuseTheRest();
      return new Choice(length, diameter, rule.orElse(Rule.SMALLEST));
    }
  }

  /**
   * Reads a brief.
   *
   * @param top its top object
   * @return the brief
   * @throws io.github.wingwright.examples.brief.BriefException if it cannot be used; the message says where and why
   */
  static FuselageBrief from(Field top) {
    String name = top.required("name").as(FuselageBrief::name);
    String title = top.optional("title").map(Field::text).orElse(name);
    String purpose = top.required("purpose").text();
    String data = top.required("data").text();
    boolean people = top.optional("carries_people").map(Field::truth).orElse(false);
    Units units = top.required("units").as(Units::from);
    BodyShape shape = top.required("shape").as(ShapeReader::shape);
    List<Step> known = new ArrayList<>();
    FlightCondition flight = top.required("flight").as(f -> flight(f, known));
    Flow flow = top.required("flow").as(f -> flow(f, known));
    BodyShell shell = top.required("shell").as(f -> shell(f, known));
    WingPlace wing = top.required("wing").as(WingPlace::from);
    Optional<Inside> inside = top.optional("contents").map(f -> f.as(in -> Inside.from(in, shell)));
    Optional<Pilot> pilot = top.optional("pilot").map(f -> f.as(Pilot::from));
    Optional<Wheels> wheels = top.optional("undercarriage").map(f -> f.as(Wheels::from));
    Mission mission =
        top.required("aircraft")
            .as(f -> Mission.from(f, top.required("judged_by"), flight, shell, units));
    Choice choice = top.required("choice").as(Choice::from);
    refuseSolid(top.required("choice"), choice, shell);
    FuselageSizing plain =
        FuselageSizing.of(shape)
            .showing(units.length())
            .madeOf(shell)
            .draggingAs(drag(flight, flow))
            .judgedBy(mission.asFigure());
    Field considerations = top.required("considerations");
    if (considerations.fields().isEmpty()) {
      throw considerations.error("must hold at least one consideration that bounds the body, has none");
    }
    Asked asked =
        new ConsiderationReader(considerations, shape, units, wing, shell, inside, pilot, wheels)
            .read(plain);
    top.refuseTheRest();
    inside.ifPresent(in -> known.addAll(in.known()));
    known.addAll(asked.known());
    return new FuselageBrief(
        name, title, purpose, data, people, units, shape, flight, flow, shell, wing, inside, pilot,
        wheels, mission, asked, choice, List.copyOf(known));
  }

  /** The specification, with its length if the brief fixes one. */
  FuselageSizing sizing() {
    return choice.length().map(l -> asked.sizing().length(l)).orElse(asked.sizing());
  }

  DragArea drag() {
    return drag(flight, flow);
  }

  private static DragArea drag(FlightCondition flight, Flow flow) {
    return new FlightDrag(flight, flow.friction(), flow.form()).withUpsweepOfBody();
  }

  private static String name(Field field) {
    String text = field.text();
    if (!text.matches(NAME)) {
      throw field.error(
          "must be 1 to 60 letters, digits, hyphens and underscores, because a folder is named so;"
              + " was \""
              + text
              + "\"");
    }
    return text;
  }

  private static FlightCondition flight(Field field, List<Step> known) {
    Speed speed = field.required("speed").quantity(Speed.KIND, "1 m/s", "150 m/s");
    Temperature temperature =
        field.required("temperature").quantity(Temperature.KIND, "-60 °C", "60 °C");
    Optional<Field> altitude = field.optional("altitude");
    Optional<Field> pressure = field.optional("pressure");
    if (altitude.isPresent() == pressure.isPresent()) {
      throw field.error(
          "needs either a \"pressure\" or an \"altitude\", has "
              + (altitude.isPresent() ? "both" : "neither"));
    }
    Pressure p =
        pressure
            .map(f -> f.quantity(Pressure.KIND, "200 hPa", "1100 hPa"))
            .orElseGet(
                () ->
                    Atmosphere.standard()
                        .at(altitude.orElseThrow().quantity(Length.KIND, "-500 m", "9000 m"))
                        .pressure());
    field.refuseTheRest();
    Source source = pressure.isPresent() ? Source.BRIEF : Source.taken("standard atmosphere at the altitude of the brief");
    known.add(Step.given("airspeed", "V", speed, Source.BRIEF));
    known.add(Step.given("air temperature", "T", temperature, Source.BRIEF));
    known.add(Step.given("air pressure", "p", p, source));
    return FlightCondition.of(AirState.of(p, temperature), speed);
  }

  private static Flow flow(Field field, List<Step> known) {
    double transition = field.required("transition_reynolds").number(Interval.between(1e3, 1e8));
    Length roughness = field.required("roughness").quantity(Length.KIND, "0 µm", "5 mm");
    BodyFormFactor form = field.required("form_factor").choice(BodyFormFactor.class);
    field.refuseTheRest();
    known.add(Step.given("Reynolds number of transition", "Re_t", transition, Source.BRIEF));
    known.add(Step.given("height of the roughness", "k", roughness, Source.BRIEF));
    FrictionModel smooth = FrictionModel.mixed(transition, TurbulentFriction.PRANDTL_SCHLICHTING);
    return new Flow(smooth.withRoughness(roughness), form);
  }

  /** Mass and room of a body are those of a thin wall: one that meets itself in the middle is no wall. */
  private static void refuseSolid(Field field, Choice choice, BodyShell shell) {
    if (choice.diameter().isPresent() && !(shell.wall().si() < 0.5 * choice.diameter().get().si())) {
      throw field.required("diameter").error(
          "must be more than twice the wall of " + shell.wall() + ", was " + choice.diameter().get());
    }
  }

  private static BodyShell shell(Field field, List<Step> known) {
    Length wall = field.required("wall").quantity(Length.KIND, "0.05 mm", "100 mm");
    Optional<Material> material =
        field.optional("material").map(f -> f.as(FuselageBrief::material));
    BodyShell shell;
    if (material.isPresent()) {
      shell = BodyShell.of(material.get(), wall);
      known.add(Step.given("density of the wall", "ρ_w", shell.density(), material.get().source()));
    } else {
      shell =
          BodyShell.of(
              wall,
              field.required("density").quantity(Density.KIND, "10 kg/m³", "10000 kg/m³"),
              field.required("modulus").quantity(Pressure.KIND, "1 MPa", "500 GPa"));
    }
    field.refuseTheRest();
    return shell;
  }

  private static Material material(Field field) {
    String text = field.text();
    List<String> names = Materials.all().stream().map(Material::name).toList();
    return Materials.all().stream()
        .filter(m -> m.name().equals(text))
        .findFirst()
        .orElseThrow(
            () ->
                field.error(
                    "must be one of the materials of the library: "
                        + String.join("; ", names)
                        + "; was \""
                        + text
                        + "\""));
  }
}
