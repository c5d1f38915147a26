// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import io.github.wingwright.core.basis.Band;
import io.github.wingwright.core.basis.QuantityBand;
import io.github.wingwright.core.basis.Sized;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.geometry.AirfoilSection;
import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.mass.Ballast;
import io.github.wingwright.core.mass.Inertia;
import io.github.wingwright.core.mass.MassItem;
import io.github.wingwright.core.mass.MassStatement;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.Volume;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleFunction;

/** The masses of the parts as they are made, the ballast, and the balance of all. */
final class PartMasses {
  private static final Source SECTION = Source.taken("shape of the section");

  private static final Source SHAPE = Source.taken("shape of the part and density of its material");

  private static final Source NOSE = Source.library("ballast in the tip of the nose");

  private static final Source WALLS = Source.library("true walls: all of the section where they meet");

  private final DesignBrief brief;
  private final Making making;
  private final Sized<Wing> sizedWing;
  private final Sized<Fuselage> sizedFuselage;
  private final QuickDesign.Balance balance;
  private final DesignNumbers numbers;

  PartMasses(SizedGlider sized, DesignNumbers numbers) {
    brief = sized.brief();
    making = sized.making();
    sizedWing = sized.wing();
    sizedFuselage = sized.fuselage();
    balance = sized.balance();
    this.numbers = numbers;
  }

  MassStatement masses(Airframe airframe) {
    Wing wing = airframe.wing();
    Fuselage body = airframe.fuselage();
    Map<String, Step> steps = new LinkedHashMap<>();
    List<MassItem> items = new ArrayList<>();
    Step wingVolume = wingVolume(wing);
    Step wingShell = wingShell(wing);
    Step wingMass = numbers.trace(brief.wingShell().shellMassStep(wingShell, wingVolume));
    WingSkin skin = WingSkin.of(brief, wing.section(), wing.planform());
    double tip = Math.max(wing.planform().tipChord().si(), 1e-3 * wing.planform().rootChord().si());
    add(items, steps, "wing", wingMass, wingCentre(wing),
        m -> PartInertia.surface(wing.planform(), m, c -> skin.printedArea(c, tip)));
    BodyMasses fitted = new BodyMasses(brief, numbers, wing, body);
    Step bodyMass = fitted.mass();
    add(items, steps, "fuselage", bodyMass, Placement.at(Length.metres(fitted.centre()), body.surfaceCentroidHeight()),
        m -> PartInertia.shell(body, m, brief.bodyShell().wallThickness().si()));
    plate(items, steps, airframe.tails().get(0), "horizontal_tail");
    plate(items, steps, airframe.tails().get(1), "vertical_tail");
    for (MassItem item : brief.carried()) {
      items.add(item);
      steps.put(item.name(), Step.given(item.name(), "m", item.mass(), item.source()));
    }
    ballast(items, steps, body);
    MassStatement statement = MassStatement.of(items);
    Step total = numbers.add("mass_kg", statement.massStep(steps));
    numbers.add("centre_of_gravity.x_m", statement.centreOfGravityStep(total));
    numbers.add("wing.loading_kg_per_m2", Step.of(DesignFormulas.LOADING, total, numbers.step("S")));
    numbers.findings().addAll(
        brief.wingShell().findings("wing", Volume.cubicMetres(wingShell.value()), Volume.cubicMetres(wingVolume.value())));
    return statement;
  }

  private Step wingVolume(Wing wing) {
    AirfoilSection section = wing.section();
    Step k = Step.given("area of the section over its chord squared", "k", section.area(), SECTION);
    Step edge = Step.given("thickness of the trailing edge over the chord", "t_e", section.trailingEdgeThickness(), SECTION);
    Step line = Step.given("line width", "w_l", brief.lineWidth(), Source.BRIEF);
    Step lacks = numbers.trace(Step.of(DesignFormulas.TRAILING_EDGE, line, numbers.at("wing.tip_chord_m"), edge));
    return numbers.trace(Step.of(DesignFormulas.WING_VOLUME, k, lacks, numbers.step("S"), numbers.step("c̄")));
  }

  private Step wingShell(Wing wing) {
    WingSkin skin = WingSkin.of(brief, wing.section(), wing.planform());
    Step b = numbers.step("b");
    Step root = numbers.step("c_r");
    Step taper = numbers.at("wing.taper_ratio");
    Step walls =
        Step.solution(
            "volume of the walls of the sections",
            "V_f",
            Volume.CUBIC_METRE,
            "strips of the section at five places along the half",
            "V_f = ∫ min(t, w·(√(1 + z_u′² + tan²Γ) + √(1 + z_l′² + tan²Γ))) dx dy over both halves",
            v -> skin.walls(v[0], v[1], v[2]),
            v -> v[3] - skin.wallsFinely(v[0], v[1], v[2]),
            WALLS,
            b,
            root,
            taper);
    Step ends =
        Step.solution(
            "volume of the closed ends of both halves",
            "V_e",
            Volume.CUBIC_METRE,
            "strips of the section at root and tip",
            "V_e = 2·w·Σ (A − A_w) over root and tip",
            v -> skin.ends(v[0], v[1]),
            v -> v[2] - skin.ends(v[0], v[1]),
            WALLS,
            root,
            taper);
    return numbers.trace(Step.of(DesignFormulas.WING_SHELL, numbers.trace(walls), numbers.trace(ends)));
  }

  private Placement wingCentre(Wing wing) {
    Planform p = wing.planform();
    double aft =
        WingSkin.of(brief, wing.section(), p)
            .centre(p.span().si(), p.rootChord().si(), p.taperRatio(), p.sweepAt(0.25).si());
    Length x = wing.placement().x().plus(p.quarterMeanAerodynamicChordX()).plus(Length.metres(aft));
    return Placement.at(x, wing.placement().z().plus(p.meanAerodynamicChordZ()));
  }

  private void add(
      List<MassItem> items,
      Map<String, Step> steps,
      String name,
      Step mass,
      Placement place,
      DoubleFunction<Inertia> own) {
    items.add(
        MassItem.of(name, massBand(mass.value()), place)
            .withOwnInertia(own.apply(mass.value()))
            .withSource(SHAPE));
    steps.put(name, mass);
  }

  /** The mass is uncertain as the density is; its likely value is the number of the step to the bit. */
  private QuantityBand<Mass> massBand(double likely) {
    Band density = brief.material().densityBand().si();
    Band mass =
        new Band(
            Math.min(likely, likely * density.low() / density.likely()),
            likely,
            Math.max(likely, likely * density.high() / density.likely()));
    return QuantityBand.of(mass, Mass::kilograms);
  }

  private void plate(List<MassItem> items, Map<String, Step> steps, Tail tail, String key) {
    Step density = Step.given("density of " + brief.material().name(), "ρ_m", brief.material().density(), brief.material().source());
    Step thickness = Step.given("thickness of the tail plates", "t", brief.tailThickness(), Source.BRIEF);
    Step mass = numbers.trace(Step.of("mass of the " + tail.role().words(), "m", DesignFormulas.PLATE_MASS, density, thickness, numbers.at(key + ".area_m2")));
    Planform p = tail.planform();
    Length x = tail.meanAerodynamicChordX().plus(p.meanAerodynamicChord().times(0.5));
    Length z = tail.role() == Tail.Role.VERTICAL ? tail.placement().z().plus(p.meanAerodynamicChordY()) : tail.placement().z();
    add(items, steps, tail.role().words(), mass, Placement.at(x, z), m -> PartInertia.surface(p, m));
  }

  private void ballast(List<MassItem> items, Map<String, Step> steps, Fuselage body) {
    Step sized =
        Step.solution(
            "ballast in the nose, as sized",
            "m_b",
            Mass.KILOGRAM,
            balance.ballast() > 0.0 ? "balance of moments about the wanted centre of gravity" : "none is needed: the wing's station does it",
            "m_b = m·(x_cg − x_t)/(x_t − x_b)",
            v -> balance.ballast(),
            v -> residualBallast(),
            Source.library("wing station first, ballast second"),
            Step.given("wanted static margin", "K_w", brief.staticMargin(), Source.BRIEF));
    Step made = numbers.add("ballast_kg", making.madeMass(sized));
    if (made.value() > 0.0) {
      Length place = PartGeometry.ballastPlace(body);
      items.add(MassItem.of("ballast", Mass.kilograms(made.value()), Placement.at(place, Length.ZERO)).withSource(NOSE));
      steps.put("ballast", made);
    }
  }

  /** What is left of the balance of moments at the sized values. */
  private double residualBallast() {
    if (balance.ballast() == 0.0) {
      return 0.0;
    }
    double x = PartGeometry.ballastPlace(sizedFuselage.value()).si();
    double empty = balance.mass() - balance.ballast();
    double emptyCg = (balance.mass() * balance.centreOfGravity() - balance.ballast() * x) / empty;
    double target = balance.neutralPoint() - brief.staticMargin() * sizedWing.value().planform().meanAerodynamicChord().si();
    return balance.ballast() - Ballast.ballastMass(empty, emptyCg, target, x);
  }
}
