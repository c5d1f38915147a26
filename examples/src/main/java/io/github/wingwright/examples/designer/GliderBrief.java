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
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.mass.Material;
import io.github.wingwright.core.performance.GlideGoal;
import io.github.wingwright.core.performance.Hall;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.Pressure;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.core.quantity.Temperature;
import io.github.wingwright.core.quantity.WingLoading;
import io.github.wingwright.core.sizing.FuselageSizing;
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

  /** Where the drag of the wing's section comes from. */
  private enum Polar {
    ESTIMATED,
    COMPUTED
  }

  /** Folder names are made of these. */
  private static final String NAME = "[A-Za-z0-9][A-Za-z0-9_-]{0,59}";

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
    PrinterBrief machine = PrinterBrief.from(top.required("machine"));
    Material material = top.required("material").as(BriefMaterial::from);
    Field wingField = top.required("wing");
    BriefUnits units = new BriefUnits(machine.unitFor(wingField), written.heightUnit(), written.speedUnit());
    Field tails = top.required("tails");
    Length least = tails.required("least_arm").quantity(Length.KIND, "10 mm", "10 m");
    Length plate = tails.optional("thickness").map(f -> f.quantity(Length.KIND, "0.2 mm", "50 mm")).orElse(machine.lineWidth().times(2.0));
    TailBrief horizontal = tail(tails.required("horizontal"));
    TailBrief vertical = tail(tails.required("vertical"));
    tails.refuseTheRest();
    DesignBrief brief =
        DesignBrief.named(name)
            .air(air)
            .launched(launch)
            .judgedBy(goal)
            .material(material)
            .lineWidth(machine.lineWidth())
            .tailThickness(plate)
            .tailArmAtLeast(least);
    brief = wing(brief, wingField, machine, air, launch, units);
    GliderBodyBrief body = GliderBodyBrief.from(brief.air(), top.required("fuselage"), machine, material, least, speed, units);
    brief = brief.fuselage(wing -> body.choice().apply(body.sizing().apply(wing))).bodyWalls(body.walls());
    ComposedSection section = ComposedSection.plate(0.02, 0.0);
    brief = brief.tails(section, EstimatedPolar.of(section), horizontal, vertical);
    Field balance = top.required("balance");
    brief = brief.staticMargin(balance.required("static_margin").number(Interval.between(0.01, 0.6)));
    balance.refuseTheRest();
    for (Field item : top.optional("carried").map(Field::items).orElse(List.of())) {
      brief = brief.carrying(CarriedItem.from(item));
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

  private static TailBrief tail(Field field) {
    double coefficient = field.required("volume_coefficient").number(Interval.between(0.001, 3.0));
    double aspect = field.required("aspect_ratio").number(Interval.between(0.3, 20.0));
    double taper = field.required("taper_ratio").number(Interval.between(0.1, 1.5));
    field.refuseTheRest();
    return new TailBrief(coefficient, aspect, taper);
  }

  private static DesignBrief wing(
      DesignBrief brief, Field field, PrinterBrief machine, AirState air, Launch launch, BriefUnits units) {
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
    double edge = Math.min(0.03, machine.thinnest().si() / (span.map(Length::si).orElse(0.4) / 6.0));
    Naca4 section = designation.as(f -> thin.withTrailingEdgeThickness(edge));
    WingSizing asked =
        wing.section(section)
            .considering(
                WingConsiderations.printableTrailingEdge(machine.thinnest(), 0.95),
                WingConsiderations.reynoldsNumberAtLeast(LEAST_REYNOLDS, launch.speed(), air.kinematicViscosity()),
                WingConsiderations.rootChordAtMost(machine.longest()),
                WingConsiderations.piecesOfEachHalf(machine.longest(), pieces));
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
}
