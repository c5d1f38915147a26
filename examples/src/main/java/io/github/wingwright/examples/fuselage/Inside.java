// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.fuselage;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.sizing.BodyShell;
import io.github.wingwright.core.sizing.Cabin;
import io.github.wingwright.core.sizing.Contents;
import io.github.wingwright.core.sizing.Thing;
import io.github.wingwright.examples.brief.Field;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What is inside, from the nose aft.
 *
 * @param contents the things with wall, clearance and gap
 * @param things the things
 * @param cabins those of the things in which people sit, by name
 * @param wall thickness of wall and structure around them
 * @param clearance room around each
 * @param gap room between one and the next
 */
record Inside(
    Contents contents,
    List<Thing> things,
    Map<String, Cabin> cabins,
    Length wall,
    Length clearance,
    Length gap) {
  private static final int MOST = 40;

  private static final Formula OCCUPANTS =
      Formula.named("mass of the people in a cabin")
          .gives("m", Mass.KILOGRAM)
          .as("r·a·m_o")
          .where("r", "rows of seats", 1, 50)
          .where("a", "seats abreast", 1, 12)
          .where("m_o", "mass of one occupant", Mass.KILOGRAM, 0, 200)
          .from(Source.DEFINITION)
          .computedBy(Inside::occupants);

  Inside {
    things = List.copyOf(things);
    cabins = Map.copyOf(cabins);
  }

  /** Where mass and length of the cabins come from; those of other things stand in the brief. */
  List<Step> known() {
    List<Step> known = new ArrayList<>();
    for (int i = 0; i < things.size(); i++) {
      Thing thing = things.get(i);
      Cabin cabin = cabins.get(thing.name());
      if (cabin != null) {
        Source rows = Source.taken("rows of the cabin at their pitch, and the station of the crew");
        known.add(Step.given("length of " + thing.name(), "l_" + (i + 1), thing.length(), rows));
        Mass one = thing.mass().dividedBy(cabin.rows() * cabin.abreast());
        known.add(
            Step.of(
                "mass of " + thing.name(),
                "m_" + (i + 1),
                OCCUPANTS,
                Step.given("rows of seats", "r", cabin.rows(), Source.BRIEF),
                Step.given("seats abreast", "a", cabin.abreast(), Source.BRIEF),
                Step.given("mass of one occupant", "m_o", one, Source.BRIEF)));
      }
    }
    return known;
  }

  private static double occupants(double rows, double abreast, double one) {
    return rows * abreast * one;
  }

  static Inside from(Field field, BodyShell shell) {
    Length wall =
        field
            .optional("wall")
            .map(f -> f.quantity(Length.KIND, "0 mm", "1 m"))
            .orElse(shell.wall());
    Length clearance = field.required("clearance").quantity(Length.KIND, "0 mm", "1 m");
    Length gap = field.required("gap").quantity(Length.KIND, "0 mm", "5 m");
    List<Thing> things = new ArrayList<>();
    Map<String, Cabin> cabins = new LinkedHashMap<>();
    List<Field> items = field.required("things").items();
    if (items.size() > MOST) {
      throw field
          .required("things")
          .error("must be at most " + MOST + " things, were " + items.size());
    }
    for (Field item : items) {
      Thing thing = item.as(f -> thing(f, cabins));
      if (things.stream().anyMatch(t -> t.name().equals(thing.name()))) {
        throw item.error("must have a name of its own, was a second \"" + thing.name() + "\"");
      }
      things.add(thing);
    }
    Contents contents =
        Contents.of(things.toArray(new Thing[0]))
            .insideWall(wall)
            .withClearance(clearance)
            .withGap(gap);
    field.refuseTheRest();
    return new Inside(contents, things, cabins, wall, clearance, gap);
  }

  private static Thing thing(Field field, Map<String, Cabin> cabins) {
    String name = field.required("name").text();
    List<String> forms = List.of("box", "cylinder", "sphere", "cabin");
    List<String> given = forms.stream().filter(f -> field.optional(f).isPresent()).toList();
    if (given.size() != 1) {
      throw field.error(
          "needs one of "
              + String.join(", ", forms)
              + ", has "
              + (given.isEmpty() ? "none" : given));
    }
    Field form = field.required(given.get(0));
    if (given.get(0).equals("cabin")) {
      Cabin cabin = cabin(form);
      Mass occupant = form.required("occupant").quantity(Mass.KIND, "0 kg", "200 kg");
      form.refuseTheRest();
      field.refuseTheRest();
      cabins.put(name, cabin);
      Thing round = cabin.asThing(occupant);
      return new Thing(
          name, round.form(), round.length(), round.width(), round.height(), round.mass());
    }
    Mass mass = field.required("mass").quantity(Mass.KIND, "0 g", "100000 kg");
    field.refuseTheRest();
    return switch (given.get(0)) {
      case "box" -> {
        List<Length> sides = lengths(form, "length, width and height", 3);
        yield Thing.box(name, sides.get(0), sides.get(1), sides.get(2), mass);
      }
      case "cylinder" -> {
        List<Length> sides = lengths(form, "length and diameter", 2);
        yield Thing.cylinder(name, sides.get(0), sides.get(1), mass);
      }
      default -> Thing.sphere(name, form.quantity(Length.KIND, "0.1 mm", "20 m"), mass);
    };
  }

  private static List<Length> lengths(Field field, String what, int count) {
    List<Field> items = field.items();
    if (items.size() != count) {
      throw field.error("must be a list of " + count + ": " + what + ", had " + items.size());
    }
    return items.stream().map(f -> f.quantity(Length.KIND, "0.1 mm", "50 m")).toList();
  }

  private static Cabin cabin(Field field) {
    return new Cabin(
        field.required("rows").whole(1, 50),
        field.required("abreast").whole(1, 12),
        field.required("seat_width").quantity(Length.KIND, "0.2 m", "2 m"),
        field.optional("aisle").map(f -> f.quantity(Length.KIND, "0 m", "2 m")).orElse(Length.ZERO),
        field.required("height").quantity(Length.KIND, "0.4 m", "3 m"),
        field.required("pitch").quantity(Length.KIND, "0.3 m", "3 m"),
        field
            .optional("crew_station")
            .map(f -> f.quantity(Length.KIND, "0 m", "5 m"))
            .orElse(Length.ZERO));
  }
}
