// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.fuselage;

import io.github.wingwright.core.basis.Consideration;
import io.github.wingwright.core.basis.Decision;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Strength;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Force;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.quantity.Pressure;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.core.quantity.Volume;
import io.github.wingwright.core.sizing.BodyLayout;
import io.github.wingwright.core.sizing.BodyShell;
import io.github.wingwright.core.sizing.BuildSpace;
import io.github.wingwright.core.sizing.Considerations;
import io.github.wingwright.core.sizing.FinenessContext;
import io.github.wingwright.core.sizing.FuselageSizing;
import io.github.wingwright.core.sizing.NoseStrength;
import io.github.wingwright.core.sizing.PackingFraction;
import io.github.wingwright.core.sizing.ShapeConsideration;
import io.github.wingwright.examples.brief.Field;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * Reads the considerations of a brief. Each may carry {@code "strength"}, {@code "set_aside_because"} or {@code
 * "provisional_until"}; names are in the units of the brief, and short enough for a picture.
 */
final class ConsiderationReader {
  private static final Interval SHARE = Interval.between(0.0, 1.0);

  private final Field fields;
  private final Units units;
  private final FuselageBrief.WingPlace wing;
  private final BodyShell shell;
  private final Optional<Inside> inside;
  private final Optional<FuselageBrief.Pilot> pilot;
  private final Optional<FuselageBrief.Wheels> wheels;
  private final Map<String, String> rules = new LinkedHashMap<>();

  private FuselageSizing sizing = FuselageSizing.of(BodyShape.capsule());
  private Optional<Angle> overNose = Optional.empty();
  private Optional<Angle> rotation = Optional.empty();

  ConsiderationReader(
      Field fields,
      Units units,
      FuselageBrief.WingPlace wing,
      BodyShell shell,
      Optional<Inside> inside,
      Optional<FuselageBrief.Pilot> pilot,
      Optional<FuselageBrief.Wheels> wheels) {
    this.fields = fields;
    this.units = units;
    this.wing = wing;
    this.shell = shell;
    this.inside = inside;
    this.pilot = pilot;
    this.wheels = wheels;
  }

  /** What is asked, called by a name, with its rule in words. */
  private record Rule(String name, ShapeConsideration consideration, String formula) {
    static Rule of(String name, Consideration consideration, String formula) {
      return new Rule(name, shape -> consideration, formula);
    }
  }

  Asked read(FuselageSizing plain) {
    sizing = plain;
    add("longest_part", this::longestPart);
    add("machine", this::machine);
    add("length", this::length);
    add("diameter", this::diameter);
    add("fineness", this::fineness);
    add("contents", this::contents);
    add("volume", this::volume);
    add("wing_thickness", this::wingThickness);
    add("wing_through", this::wingThrough);
    add("saddle", this::saddle);
    add("vision", this::vision);
    add("rotation", this::rotation);
    add("tip_back", this::tipBack);
    add("closure", this::closure);
    add("tail_arm", this::tailArm);
    add("balance", this::balance);
    add("tail_load", this::tailLoad);
    add("nose_impact", this::noseImpact);
    add("nose_radius", this::noseRadius);
    fields.refuseTheRest();
    return new Asked(sizing, rules, overNose, rotation);
  }

  private void add(String key, Function<Field, Rule> reader) {
    Optional<Field> given = fields.optional(key);
    if (given.isEmpty()) {
      return;
    }
    Field field = given.get();
    Rule rule = field.as(reader);
    Optional<Strength> strength = field.optional("strength").map(f -> strength(f));
    Optional<String> aside = field.optional("set_aside_because").map(Field::text);
    Optional<String> until = field.optional("provisional_until").map(Field::text);
    if (aside.isPresent() && until.isPresent()) {
      throw field.error("can be set aside or provisional, not both");
    }
    field.refuseTheRest();
    ShapeConsideration called =
        shape ->
            rated(Considerations.called(rule.name(), rule.consideration().on(shape)), strength);
    rules.put(rule.name(), rule.formula());
    Decision decision =
        aside
            .map(Decision::notApplicable)
            .orElseGet(() -> until.map(Decision::provisional).orElse(Decision.chosen()));
    sizing =
        switch (decision.kind()) {
          case CHOSEN -> sizing.considering(called);
          case PROVISIONAL -> sizing.provisionally(called, decision.reason());
          case NOT_APPLICABLE -> sizing.settingAside(called, decision.reason());
        };
  }

  private static Strength strength(Field field) {
    Strength strength = field.choice(Strength.class);
    if (strength == Strength.TARGET) {
      throw field.error("must be limit or guideline, was \"target\"");
    }
    return strength;
  }

  private static Consideration rated(Consideration consideration, Optional<Strength> strength) {
    if (strength.isEmpty()) {
      return consideration;
    }
    return strength.get() == Strength.LIMIT
        ? Considerations.asLimit(consideration)
        : Considerations.asGuideline(consideration);
  }

  private static Length length(Field field, String name) {
    return field.required(name).quantity(Length.KIND, "0 mm", "100 m");
  }

  private static double share(Field field, String name) {
    return field.required(name).number(SHARE);
  }

  private static String number(double value) {
    return NamedUnit.NUMBER.format(value, 4);
  }

  private static String percent(double share) {
    return NamedUnit.NUMBER.format(100.0 * share, 3) + " %";
  }

  private static int segments(Field field) {
    return field
        .optional("segments")
        .map(f -> (int) Math.rint(f.number(Interval.between(1.0, 100.0))))
        .orElse(1);
  }

  private static Length joint(Field field) {
    return field
        .optional("joint")
        .map(f -> f.quantity(Length.KIND, "0 mm", "1 m"))
        .orElse(Length.ZERO);
  }

  private static String pieces(int segments) {
    return segments == 1 ? "one piece" : segments + " segments";
  }

  private Rule longestPart(Field field) {
    Length longest = length(field, "length");
    int segments = segments(field);
    return Rule.of(
        "longest part " + units.show(longest) + ", " + pieces(segments),
        Considerations.lengthAtMost(longest, segments, joint(field)),
        "L ≤ n·p − (n − 1)·j, n pieces of length p that overlap by j");
  }

  private Rule machine(Field field) {
    List<Field> bed = field.required("bed").items();
    if (bed.size() != 2) {
      throw field.required("bed").error("must be a list of two sides, had " + bed.size());
    }
    Length a = bed.get(0).quantity(Length.KIND, "10 mm", "50 m");
    Length b = bed.get(1).quantity(Length.KIND, "10 mm", "50 m");
    Length height = length(field, "height");
    int segments = segments(field);
    return Rule.of(
        "machine: "
            + pieces(segments)
            + " from "
            + units.show(a)
            + " × "
            + units.show(b)
            + " × "
            + units.show(height),
        BuildSpace.fitsInto(a, b, height, segments, joint(field)),
        "L ≤ n·p(d) − (n − 1)·j, p the longest tube of width d that stands in the space or lies in"
            + " it at a slant");
  }

  private Rule length(Field field) {
    Optional<Length> least =
        field.optional("least").map(f -> f.quantity(Length.KIND, "1 mm", "100 m"));
    Optional<Length> most =
        field.optional("most").map(f -> f.quantity(Length.KIND, "1 mm", "100 m"));
    if (least.isPresent() == most.isPresent()) {
      throw field.error("needs either a \"least\" or a \"most\"");
    }
    return least.isPresent()
        ? Rule.of(
            "length at least " + units.show(least.get()),
            Considerations.lengthAtLeast(least.get()),
            "L ≥ L_min")
        : Rule.of(
            "length at most " + units.show(most.get()),
            Considerations.lengthAtMost(most.get()),
            "L ≤ L_max");
  }

  private Rule diameter(Field field) {
    Optional<Length> least =
        field.optional("least").map(f -> f.quantity(Length.KIND, "1 mm", "20 m"));
    Optional<Length> most =
        field.optional("most").map(f -> f.quantity(Length.KIND, "1 mm", "20 m"));
    if (least.isPresent() == most.isPresent()) {
      throw field.error("needs either a \"least\" or a \"most\"");
    }
    return least.isPresent()
        ? Rule.of(
            "diameter at least " + units.show(least.get()),
            Considerations.diameterAtLeast(least.get()),
            "d ≥ d_min")
        : Rule.of(
            "diameter at most " + units.show(most.get()),
            Considerations.diameterAtMost(most.get()),
            "d ≤ d_max");
  }

  private Rule fineness(Field field) {
    Optional<Field> range = field.optional("range");
    Optional<Field> context = field.optional("context");
    if (range.isPresent() == context.isPresent()) {
      throw field.error("needs either a \"range\" or a \"context\"");
    }
    String rule = "f₁ ≤ L/d ≤ f₂";
    if (context.isPresent()) {
      FinenessContext c = context.get().choice(FinenessContext.class);
      return Rule.of(
          "fineness " + number(c.least()) + " to " + number(c.most()),
          Considerations.finenessFor(c),
          rule);
    }
    List<Field> ends = range.get().items();
    if (ends.size() != 2) {
      throw range
          .get()
          .error("must be a list of two numbers, least and greatest, had " + ends.size());
    }
    double least = ends.get(0).number(Interval.between(1.0, 40.0));
    double most = ends.get(1).number(Interval.between(least, 60.0));
    return Rule.of(
        "fineness " + number(least) + " to " + number(most),
        Considerations.finenessWithin(least, most),
        rule);
  }

  private Inside inside(Field field) {
    return inside.orElseThrow(
        () -> field.error("needs the brief to have \"contents\" with things, has none"));
  }

  private Rule contents(Field field) {
    Inside in = inside(field);
    return new Rule(
        "holds its contents",
        in.contents().asConsideration(),
        "each thing w × h in the section W × H inside wall and clearance: (w/W)² + (h/H)² ≤ 1, one"
            + " behind the other");
  }

  private Rule volume(Field field) {
    Volume volume = field.required("volume").quantity(Volume.KIND, "0.1 cm³", "1000 m³");
    PackingFraction packing =
        new PackingFraction(field.required("packing_fraction").number(Interval.between(0.05, 1.0)));
    return new Rule(
        "encloses " + volume.format(units.volume(), 3) + " " + packing,
        Considerations.enclosing(volume, packing),
        "V(L, d) ≥ V_c/p, the contents over the packing fraction");
  }

  private Rule wingThickness(Field field) {
    double multiple = field.required("multiple").number(Interval.between(0.5, 30.0));
    return Rule.of(
        "near " + number(multiple) + " times the wing",
        Considerations.diameterNear(multiple, wing.thickness()),
        "d near n·t, t the thickness of the wing: the eye's rule");
  }

  private Rule wingThrough(Field field) {
    Length wall = length(field, "wall");
    return Rule.of(
        "carries the wing through",
        BodyLayout.carriesWingThrough(wing.thickness(), Math.abs(wing.heightShare()), wall),
        "(1 − |z|)·d ≥ t + 2·w, z the height of the wing's middle over the radius");
  }

  private Rule saddle(Field field) {
    Length travel = length(field, "travel");
    double part = field.required("share").number(Interval.between(0.5, 1.0));
    return new Rule(
        "saddle of " + units.show(wing.rootChord()) + " with travel " + units.show(travel),
        BodyLayout.carriesSaddle(wing.rootChord(), travel, part),
        "length over which r ≥ " + number(part) + "·r_max is at least chord + travel");
  }

  private Rule vision(Field field) {
    FuselageBrief.Pilot who =
        pilot.orElseThrow(() -> field.error("needs the brief to have a \"pilot\", has none"));
    Angle approach = field.required("approach").quantity(Angle.KIND, "0°", "15°");
    Speed speed = field.required("speed").quantity(Speed.KIND, "5 m/s", "150 m/s");
    Angle angle = BodyLayout.overNoseAngle(approach, speed);
    overNose = Optional.of(angle);
    Inside in = inside(field);
    return new Rule(
        "sees " + angle.format(Angle.DEGREE, 2) + " over the nose",
        BodyLayout.seesOverNose(
            angle,
            in.contents(),
            who.seat(),
            who.eyeBehindFront(),
            eyeBelowTop(in, who),
            who.windscreenAhead()),
        "z_eye − (x_eye − x)·tan α ≥ z_top(x) from the windscreen's foot to the nose tip, α = γ +"
            + " 0.07·V");
  }

  /** Eye below the outside of the roof: room for the head inside, then clearance and wall. */
  static Length eyeBelowTop(Inside in, FuselageBrief.Pilot who) {
    if (!in.cabins().containsKey(who.seat())) {
      throw new IllegalArgumentException(
          "pilot must sit in a cabin, one of "
              + in.cabins().keySet()
              + ", was \""
              + who.seat()
              + "\"");
    }
    return in.cabins().get(who.seat()).eyeBelowRoof().plus(in.wall()).plus(in.clearance());
  }

  private FuselageBrief.Wheels wheels(Field field) {
    return wheels.orElseThrow(
        () -> field.error("needs the brief to have an \"undercarriage\", has none"));
  }

  private Rule rotation(Field field) {
    FuselageBrief.Wheels on = wheels(field);
    Angle angle = field.required("angle").quantity(Angle.KIND, "1°", "30°");
    rotation = Optional.of(angle);
    return new Rule(
        "clears the ground at " + angle.format(Angle.DEGREE, 3),
        BodyLayout.clearsGroundAtRotation(angle, on.at(), on.strut(), 1.0, Angle.ZERO),
        "height of the belly above the ground ≥ (x − x_w)·tan θ, all the way aft of the wheels");
  }

  private Rule tipBack(Field field) {
    FuselageBrief.Wheels on = wheels(field);
    Angle angle = field.required("angle").quantity(Angle.KIND, "1°", "40°");
    return new Rule(
        "tips back only beyond " + angle.format(Angle.DEGREE, 3),
        BodyLayout.standsOnMainWheels(
            angle, on.at(), on.strut(), on.gravityAt(), on.gravityHeight()),
        "(s_w − s_g)·L ≥ h_g·tan β, wheels behind the aft centre of gravity");
  }

  private Rule closure(Field field) {
    Angle top = field.required("top").quantity(Angle.KIND, "1°", "45°");
    Angle under = field.required("underside").quantity(Angle.KIND, "1°", "45°");
    return new Rule(
        "tail closes within "
            + top.format(Angle.DEGREE, 3)
            + " above, "
            + under.format(Angle.DEGREE, 3)
            + " below",
        BodyLayout.afterbodyClosesWithin(top, under),
        "slope of top line and underside where the section is half as high as the greatest");
  }

  private Rule tailArm(Field field) {
    Length arm = length(field, "arm");
    double outside = field.required("outside_share").number(Interval.between(0.0, 0.95));
    return Rule.of(
        "tail arm " + units.show(arm),
        Considerations.tailArmAtLeast(arm, outside),
        "(1 − s)·L ≥ l_t, s = " + percent(outside) + " of the length outside the arm");
  }

  private Rule balance(Field field) {
    Inside in = inside(field);
    Mass rest = field.required("rest_mass").quantity(Mass.KIND, "0.1 g", "100000 kg");
    Mass ballast = field.required("ballast").quantity(Mass.KIND, "0 g", "10000 kg");
    double wanted = share(field, "wanted_at");
    return new Rule(
        "balances at "
            + percent(wanted)
            + (ballast.si() > 0.0
                ? " with " + units.show(ballast) + " of ballast"
                : " without ballast"),
        in.contents()
            .balancing(
                rest, share(field, "rest_at"), wanted, ballast, length(field, "ballast_from_nose")),
        "(m_r·s_r·L + Σ m·x + m_b·x_b)/Σ m ≤ s·L, the contents as far forward as they fit");
  }

  private Rule tailLoad(Field field) {
    Force load = field.required("load").quantity(Force.KIND, "0.001 N", "1000 kN");
    double movement = field.required("movement").number(Interval.between(0.001, 0.1));
    return new Rule(
        "tail moves at most " + percent(movement) + " under " + load,
        Considerations.tailMovesAtMost(
            load, share(field, "held_at"), share(field, "tail_at"), movement, shell),
        "F/E·∫(x_t − x)²/I(x) dx ≤ δ·(x_t − x_w), I of the ring at each place");
  }

  private Rule noseImpact(Field field) {
    Mass mass = field.required("mass").quantity(Mass.KIND, "0.1 g", "1000 kg");
    Speed speed = field.required("speed").quantity(Speed.KIND, "0.1 m/s", "100 m/s");
    Pressure strength =
        field.required("wall_strength").quantity(Pressure.KIND, "0.01 MPa", "5 GPa");
    return Rule.of(
        "nose hits a wall at " + units.show(speed),
        NoseStrength.survivesNoseImpact(mass, speed, length(field, "stroke"), shell, strength),
        "F = m·V²/(2·s): F ≤ σ·π·w·(d − w) and F ≤ π²·E·I/L²");
  }

  private Rule noseRadius(Field field) {
    Length least = length(field, "least");
    return new Rule(
        "nose radius " + units.show(least),
        NoseStrength.noseRadiusAtLeast(least),
        "radius of curvature at the tip ≥ r_min: nobody is to be hurt");
  }
}
