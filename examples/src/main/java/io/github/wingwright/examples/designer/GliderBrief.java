// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import io.github.wingwright.airfoils.ComposedSection;
import io.github.wingwright.airfoils.Naca4;
import io.github.wingwright.airfoils.viscous.ComputedPolar;
import io.github.wingwright.airfoils.viscous.ViscousMethod;
import io.github.wingwright.core.ConvergenceException;
import io.github.wingwright.core.aerodynamics.EstimatedPolar;
import io.github.wingwright.core.aerodynamics.SectionPolar;
import io.github.wingwright.core.atmosphere.AirState;
import io.github.wingwright.core.atmosphere.Atmosphere;
import io.github.wingwright.core.basis.Consideration;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Sized;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.mass.MassItem;
import io.github.wingwright.core.mass.Material;
import io.github.wingwright.core.mass.Materials;
import io.github.wingwright.core.performance.GlideGoal;
import io.github.wingwright.core.performance.Hall;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Density;
import io.github.wingwright.core.quantity.Force;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.quantity.Pressure;
import io.github.wingwright.core.quantity.QuantityKind;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.core.quantity.Temperature;
import io.github.wingwright.core.quantity.Volume;
import io.github.wingwright.core.quantity.WingLoading;
import io.github.wingwright.core.sizing.BodyShell;
import io.github.wingwright.core.sizing.Considerations;
import io.github.wingwright.core.sizing.DragArea;
import io.github.wingwright.core.sizing.FuselageSizing;
import io.github.wingwright.core.sizing.ShapeConsideration;
import io.github.wingwright.core.sizing.WingConsiderations;
import io.github.wingwright.core.sizing.WingSizing;
import io.github.wingwright.examples.brief.Field;
import io.github.wingwright.stability.design.DesignBrief;
import io.github.wingwright.stability.design.Launch;
import io.github.wingwright.stability.design.Making;
import io.github.wingwright.stability.design.TailBrief;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A glider's brief as it stands in a file, made into a {@link DesignBrief}.
 *
 * @param brief what the sizing loop needs
 * @param title title of the report
 * @param purpose what the glider is for, in the words of the brief
 * @param making what dimensions are rounded to
 * @param units the units of the brief
 * @param fuselage what the fuselage is negotiated between, once the wing is known
 * @param hall where it is flown; outdoors if the brief does not say
 * @param printing the machine that prints it, and a smaller one
 */
record GliderBrief(
    DesignBrief brief,
    String title,
    String purpose,
    Making making,
    BriefUnits units,
    Function<Wing, FuselageSizing> fuselage,
    Hall hall,
    PrintingBrief printing) {

  /** What fuselages a brief may ask for. */
  private enum Shape {
    CAPSULE,
    SPHEROID,
    NOSE_CYLINDER_CONE
  }

  /** Where the drag of the wing's section comes from. */
  private enum Polar {
    ESTIMATED,
    COMPUTED
  }

  /** How the diameter is chosen if the brief does not give it. */
  private enum Choice {
    NEAREST_TO_TARGETS,
    LEAST_DRAG
  }

  private static final Source WALLS = Source.taken("walls of the brief at the line width of its machine");

  /** Folder names are made of these. */
  private static final String NAME = "[A-Za-z0-9][A-Za-z0-9_-]{0,59}";

  /** Load at the tail in flight at the stall: this part of the weight (common practice, no source). */
  static final double TAIL_LOAD_AT_STALL = 0.1;

  /** Half of the body lies between wing and tail, half ahead and behind, until both are placed. */
  static final double FREE_SHARE = 0.5;

  static final double SPEED_RATIO = 1.2;
  private static final double LEAST_REYNOLDS = 20_000.0;
  /** What a small glider's wing meets from its stall to its throw. */
  private static final Interval COMPUTED_RANGE = Interval.between(15_000.0, 200_000.0);
  static final double USABLE_LIFT = 0.8;

  /**
   * Reads a brief.
   *
   * @param top its top object
   * @return the brief
   * @throws io.github.wingwright.examples.brief.BriefException if it cannot be used; the message says where and why
   */
  static GliderBrief from(Field top) {
    String name = top.required("name").as(GliderBrief::name);
    String title = top.optional("title").map(Field::text).orElse(name);
    String purpose = top.optional("purpose").map(Field::text).orElse("");
    GlideGoal goal = top.required("figure_of_merit").choice(GlideGoal.class);
    AirState air = air(top.required("conditions"));
    LaunchBrief written = top.required("launch").as(LaunchBrief::from);
    Launch launch = written.launch();
    Speed speed = launch.speed();
    PrintingBrief printing = top.required("machine").as(PrintingBrief::from);
    Machine machine = Machine.from(top.required("machine"));
    Material material = top.required("material").as(GliderBrief::material);
    Field wingField = top.required("wing");
    BriefUnits units = new BriefUnits(machine.unitFor(wingField), written.heightUnit(), written.speedUnit());
    Field tails = top.required("tails");
    Length least = tails.required("least_arm").quantity(Length.KIND, "10 mm", "10 m");
    Length plate = tails.optional("thickness").map(f -> f.quantity(Length.KIND, "0.2 mm", "50 mm")).orElse(machine.lineWidth.times(2.0));
    TailBrief horizontal = tail(tails.required("horizontal"));
    TailBrief vertical = tail(tails.required("vertical"));
    tails.refuseTheRest();
    DesignBrief brief =
        DesignBrief.named(name)
            .air(air)
            .launched(launch)
            .judgedBy(goal)
            .material(material)
            .lineWidth(machine.lineWidth)
            .tailThickness(plate)
            .tailArmAtLeast(least);
    brief = wing(brief, wingField, machine, air, launch, units);
    Negotiated body = fuselage(brief.air(), top.required("fuselage"), machine, material, least, speed, units);
    brief = brief.fuselage(wing -> body.choice().apply(body.sizing().apply(wing))).bodyWalls(body.walls());
    ComposedSection section = ComposedSection.plate(0.02, 0.0);
    brief = brief.tails(section, EstimatedPolar.of(section), horizontal, vertical);
    Field balance = top.required("balance");
    brief = brief.staticMargin(balance.required("static_margin").number(Interval.between(0.01, 0.6)));
    balance.refuseTheRest();
    for (Field item : top.optional("carried").map(Field::items).orElse(List.of())) {
      brief = brief.carrying(carried(item));
    }
    Hall hall = top.optional("hall").map(f -> hall(f, launch.height())).orElse(Hall.OUTDOORS);
    top.refuseTheRest();
    return new GliderBrief(brief, title, purpose, machine.making(), units, body.sizing(), hall, printing);
  }

  /** A hall with the thrower at its end; one without a length has no walls. */
  private static Hall hall(Field field, Length hand) {
    Length ceiling = field.required("height").quantity(Length.KIND, "1 m", "200 m");
    if (!(ceiling.si() > hand.si())) {
      throw field.error("must be higher than the hand at launch, " + hand + ", was " + ceiling + " high");
    }
    Optional<Length> length = field.optional("length").map(f -> f.quantity(Length.KIND, "2 m", "1000 m"));
    field.refuseTheRest();
    return length.map(l -> Hall.of(l, ceiling)).orElseGet(() -> Hall.OUTDOORS.withCeiling(ceiling));
  }

  private static String name(Field field) {
    String text = field.text();
    if (!text.matches(NAME)) {
      throw field.error(
          "must be 1 to 60 letters, digits, hyphens and underscores, because a folder is named so; was \"" + text + "\"");
    }
    return text;
  }

  /** What the machine that prints it can do. */
  private record Machine(Length longest, NamedUnit<Length> unit, Length lineWidth, Length thinnest, Making making) {
    static Machine from(Field field) {
      QuantityKind.Written<Length> longest =
          field.required("longest_straight_part").written(Length.KIND, "20 mm", "10 m");
      Length line = field.required("line_width").quantity(Length.KIND, "0.1 mm", "2 mm");
      Length thinnest = field.required("thinnest_edge").quantity(Length.KIND, "0.1 mm", "10 mm");
      Length rounding = field.optional("rounding").map(f -> f.quantity(Length.KIND, "0.01 mm", "20 mm")).orElse(Length.millimetres(0.5));
      field.refuseTheRest();
      return new Machine(longest.value(), longest.unit(), line, thinnest, new Making(rounding, Mass.grams(0.1)));
    }

    /** Lengths are shown in the unit of the span; a wing without a given span in that of the machine. */
    NamedUnit<Length> unitFor(Field wing) {
      return wing.optional("span").map(f -> f.written(Length.KIND, "50 mm", "20 m").unit()).orElse(unit);
    }
  }

  private static AirState air(Field field) {
    AirState air;
    Optional<Field> altitude = field.optional("altitude");
    Temperature temperature = field.required("temperature").quantity(Temperature.KIND, "-40 °C", "60 °C");
    Optional<Field> pressure = field.optional("pressure");
    if (altitude.isPresent() == pressure.isPresent()) {
      throw field.error("needs either a \"pressure\" or an \"altitude\", has " + (altitude.isPresent() ? "both" : "neither"));
    }
    Pressure p =
        pressure
            .map(f -> f.quantity(Pressure.KIND, "200 hPa", "1100 hPa"))
            .orElseGet(() -> Atmosphere.standard().at(altitude.orElseThrow().quantity(Length.KIND, "-500 m", "9000 m")).pressure());
    air = AirState.of(p, temperature);
    field.refuseTheRest();
    return air;
  }

  private static Material material(Field field) {
    if (field.isObject()) {
      return OwnMaterial.from(field);
    }
    String text = field.text();
    return Materials.all().stream()
        .filter(m -> m.name().equals(text))
        .findFirst()
        .orElseThrow(
            () ->
                field.error(
                    "must be one of the materials of the library: "
                        + String.join("; ", Materials.all().stream().map(Material::name).toList())
                        + "; was \""
                        + text
                        + "\""));
  }

  private static TailBrief tail(Field field) {
    double coefficient = field.required("volume_coefficient").number(Interval.between(0.001, 3.0));
    double aspect = field.required("aspect_ratio").number(Interval.between(0.3, 20.0));
    double taper = field.required("taper_ratio").number(Interval.between(0.1, 1.5));
    field.refuseTheRest();
    return new TailBrief(coefficient, aspect, taper);
  }

  private static MassItem carried(Field field) {
    String name = field.required("name").text();
    Mass mass = field.required("mass").quantity(Mass.KIND, "0.01 g", "100 kg");
    Length place = field.required("at").quantity(Length.KIND, "-1 m", "20 m");
    field.refuseTheRest();
    return MassItem.of(name, mass, Placement.at(place, Length.ZERO));
  }

  private static DesignBrief wing(
      DesignBrief brief, Field field, Machine machine, AirState air, Launch launch, BriefUnits units) {
    WingSizing wing = WingSizing.open().showing(units.length());
    Optional<Length> span = field.optional("span").map(f -> f.quantity(Length.KIND, "50 mm", "20 m"));
    if (span.isPresent()) {
      wing = wing.span(span.get());
    }
    Optional<Field> area = field.optional("area");
    if (area.isPresent()) {
      wing = wing.area(area.get().quantity(Area.KIND, "5 cm²", "50 m²"));
    }
    Optional<Field> aspect = field.optional("aspect_ratio");
    if (aspect.isPresent()) {
      wing = wing.aspectRatio(aspect.get().number(Interval.between(1.0, 40.0)));
    }
    Optional<Field> loading = field.optional("loading");
    if (loading.isPresent()) {
      wing = wing.wingLoading(loading.get().quantity(WingLoading.KIND, "0.1 kg/m²", "100 kg/m²"));
    }
    Optional<Field> target = field.optional("target_speed");
    if (target.isPresent()) {
      Field t = target.get();
      Speed speed = t.required("speed").quantity(Speed.KIND, "1 m/s", "100 m/s");
      double lift = t.required("lift_coefficient").number(Interval.between(0.05, 2.0));
      t.refuseTheRest();
      wing = wing.speedAtLift(speed, lift, air.density());
    }
    wing = wing.taperRatio(field.required("taper_ratio").number(Interval.between(0.2, 1.2)));
    Field designation = field.required("section");
    Naca4 thin = designation.as(f -> Naca4.parse(f.text()));
    wing = wing.dihedral(field.required("dihedral").quantity(Angle.KIND, "-20°", "40°"));
    Optional<Field> sweep = field.optional("sweep");
    if (sweep.isPresent()) {
      wing = wing.quarterChordSweep(sweep.get().quantity(Angle.KIND, "-20°", "30°"));
    }
    Optional<Field> polarField = field.optional("polar");
    Polar polar = polarField.map(f -> f.choice(Polar.class)).orElse(Polar.ESTIMATED);
    int walls = field.optional("walls").map(f -> f.whole(1, 20)).orElse(1);
    double infill = field.optional("infill").map(f -> f.number(Interval.between(0.0, 1.0))).orElse(0.0);
    int pieces = field.optional("pieces_of_each_half").map(f -> f.whole(1, 10)).orElse(1);
    field.refuseTheRest();
    // The edge that the machine can make, on the root chord that the wing will have, to begin with a tenth of the span.
    double edge = Math.min(0.03, machine.thinnest.si() / (span.map(Length::si).orElse(0.4) / 6.0));
    Naca4 section = designation.as(f -> thin.withTrailingEdgeThickness(edge));
    WingSizing asked =
        wing.section(section)
            .considering(WingConsiderations.printableTrailingEdge(machine.thinnest, 0.95))
            .considering(WingConsiderations.reynoldsNumberAtLeast(LEAST_REYNOLDS, launch.speed(), air.kinematicViscosity()))
            .considering(WingConsiderations.rootChordAtMost(machine.longest))
            .considering(WingConsiderations.piecesOfEachHalf(machine.longest, pieces));
    // A wing that lacks something is refused here, at its place in the file.
    field.as(f -> asked.mass(Mass.grams(30)).solve());
    Function<Mass, WingSizing> byMass =
        mass ->
            asked.considering(
                WingConsiderations.fliesWhenThrown(launch.speed(mass), SPEED_RATIO, USABLE_LIFT, air.density(), mass));
    SectionPolar known =
        polar == Polar.ESTIMATED ? EstimatedPolar.of(section) : polarField.orElseThrow().as(f -> computed(f, section));
    return brief.wing(byMass).wingPolar(known).wingWalls(walls, infill);
  }

  private static SectionPolar computed(Field field, Naca4 section) {
    try {
      return ComputedPolar.of(ViscousMethod.of(section), COMPUTED_RANGE);
    } catch (ConvergenceException none) {
      throw field.error("must be estimated for this section, because the computation fails: " + none.getMessage());
    }
  }

  /** What a fuselage is negotiated between, and how it is then chosen. */
  private record Negotiated(
      Function<Wing, FuselageSizing> sizing, Function<FuselageSizing, Sized<Fuselage>> choice, int walls) {}

  private static Negotiated fuselage(
      AirState air, Field field, Machine machine, Material material, Length leastArm, Speed launch, BriefUnits units) {
    BodyShape shape = shape(field);
    int walls = field.optional("walls").map(f -> f.whole(1, 20)).orElse(2);
    Optional<Interval> fineness = field.optional("fineness_range").map(GliderBrief::fineness);
    double multiple = field.required("diameter_over_wing_thickness").number(Interval.between(0.5, 30.0));
    Optional<Contents> contents = field.optional("contents").map(Contents::from);
    double movement = field.required("largest_tail_movement").number(Interval.between(0.001, 0.1));
    Optional<Length> diameter = field.optional("diameter").map(f -> f.quantity(Length.KIND, "2 mm", "2 m"));
    Optional<Length> length = field.optional("length").map(f -> f.quantity(Length.KIND, "20 mm", "20 m"));
    Choice choice = field.optional("choose").map(f -> f.choice(Choice.class)).orElse(Choice.NEAREST_TO_TARGETS);
    field.refuseTheRest();
    BodyShell shell =
        material.elasticModulus().map(known -> BodyShell.of(material, machine.lineWidth.times(walls)).withWallFrom(WALLS))
            .orElseThrow(() -> field.error("needs a material whose elastic modulus is known, \"" + material.name() + "\" has none"));
    DragArea drag = BodyDragArea.at(launch, air);
    Function<Wing, FuselageSizing> sizing =
        wing -> {
          FuselageSizing sized =
              FuselageSizing.of(shape)
                  .showing(units.length())
                  .madeOf(shell)
                  .draggingAs(drag)
                  .considering(Considerations.lengthAtMost(machine.longest));
          if (fineness.isPresent()) {
            Interval range = fineness.get();
            sized = sized.considering(Considerations.finenessWithin(range.lower(), range.upper(), Source.COMMON_PRACTICE));
          }
          sized =
              sized
                  .considering(Considerations.diameterNear(multiple, wing.maximumThickness()))
                  .considering(Considerations.tailArmAtLeast(leastArm, 1.0 - FREE_SHARE))
                  .considering(tailMovement(wing, movement, shell, launch, air.density()));
          if (contents.isPresent()) {
            sized = contents.get().on(sized);
          }
          return length.isPresent() ? sized.length(length.get()) : sized;
        };
    Function<FuselageSizing, Sized<Fuselage>> close =
        asked ->
            diameter.isPresent()
                ? asked.diameter(diameter.get())
                : choice == Choice.LEAST_DRAG ? asked.leastDrag(drag) : asked.nearestToTargets();
    return new Negotiated(sizing, close, walls);
  }

  /** Least and greatest fineness; a brief without them lets the other considerations decide. */
  private static Interval fineness(Field field) {
    List<Field> range = field.items();
    if (range.size() != 2) {
      throw field.error("must be a list of two numbers, least and greatest, had " + range.size());
    }
    double least = range.get(0).number(Interval.between(1.0, 40.0));
    return Interval.between(least, range.get(1).number(Interval.between(least, 60.0)));
  }

  /** The tail load of the throw: a tenth of the weight at the stall, times (V/V_s)² with the usual ratio squared. */
  private static Consideration tailMovement(
      Wing wing, double movement, BodyShell shell, Speed launch, Density air) {
    double lift = 0.5 * air.si() * launch.si() * launch.si() * USABLE_LIFT * wing.planform().area().si();
    Force load = Force.newtons(lift * TAIL_LOAD_AT_STALL);
    return Considerations.tailDeflectionAtMost(load, FREE_SHARE, movement, shell);
  }

  private static BodyShape shape(Field field) {
    return switch (field.required("shape").choice(Shape.class)) {
      case CAPSULE -> BodyShape.capsule();
      case SPHEROID -> BodyShape.prolateSpheroid();
      case NOSE_CYLINDER_CONE -> BodyShape.noseCylinderCone(1.0, 3.0);
    };
  }

  /** What the fuselage carries, and whether that counts. */
  private record Contents(Volume volume, double packing, Optional<String> aside, Optional<String> until) {
    static Contents from(Field field) {
      Volume volume = field.required("volume").quantity(Volume.KIND, "0.1 cm³", "1 m³");
      double packing = field.required("packing_fraction").number(Interval.between(0.05, 1.0));
      Optional<String> aside = field.optional("set_aside_because").map(Field::text);
      Optional<String> until = field.optional("provisional_until").map(Field::text);
      if (aside.isPresent() && until.isPresent()) {
        throw field.error("can be set aside or provisional, not both");
      }
      field.refuseTheRest();
      return new Contents(volume, packing, aside, until);
    }

    FuselageSizing on(FuselageSizing sizing) {
      ShapeConsideration enclosing = Considerations.enclosing(volume, Considerations.packingFraction(packing));
      if (aside.isPresent()) {
        return sizing.settingAside(enclosing, aside.get());
      }
      return until.isPresent() ? sizing.provisionally(enclosing, until.get()) : sizing.considering(enclosing);
    }
  }
}
