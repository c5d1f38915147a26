// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import io.github.wingwright.core.basis.Band;
import io.github.wingwright.core.basis.Sized;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
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
  private static final Source SECTION = Source.library("shape of the section");

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
    Step k = Step.given("area of the section over its chord squared", "k", wing.section().area(), SECTION);
    Step p = Step.given("outline of the section over its chord", "p", wing.section().perimeter(), SECTION);
    Step wingVolume = numbers.trace(Step.of(DesignFormulas.WING_VOLUME, k, numbers.step("S"), numbers.step("c̄")));
    Step wingSurface = numbers.trace(Step.of(DesignFormulas.WING_SURFACE, p, numbers.step("S")));
    add(items, steps, "wing", numbers.trace(brief.wingShell().massStep(wingSurface, wingVolume)), wingCentre(wing), m -> PartInertia.surface(wing.planform(), m));
    Step bodyMass = brief.bodyShell().massStep(numbers.at("fuselage.wetted_area_m2"), numbers.at("fuselage.volume_m3"));
    double bodyX = body.shape().surfaceCentroid(body.length().si(), body.diameter().si());
    add(items, steps, "fuselage", numbers.trace(bodyMass), Placement.at(Length.metres(bodyX), Length.ZERO), m -> PartInertia.shell(body, m));
    plate(items, steps, airframe.tails().get(0), "horizontal_tail");
    plate(items, steps, airframe.tails().get(1), "vertical_tail");
    for (MassItem item : brief.carried()) {
      items.add(item);
      steps.put(item.name(), Step.given(item.name(), "m", item.mass(), Source.BRIEF));
    }
    ballast(items, steps, body);
    MassStatement statement = MassStatement.of(items);
    Step total = numbers.add("mass_kg", statement.massStep(steps));
    numbers.add("centre_of_gravity.x_m", statement.centreOfGravityStep(total));
    numbers.add("wing.loading_kg_per_m2", Step.of(DesignFormulas.LOADING, total, numbers.step("S")));
    numbers.findings().addAll(
        brief.wingShell().findings("wing", wing.wettedArea(), Volume.cubicMetres(wingVolume.value())));
    return statement;
  }

  private static Placement wingCentre(Wing wing) {
    Planform p = wing.planform();
    double chordwise = PartGeometry.outlineCentroid(wing.section(), 201) * p.meanAerodynamicChord().si();
    Length x = wing.meanAerodynamicChordX().plus(Length.metres(chordwise));
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
            .withSource(brief.material().source()));
    steps.put(name, mass);
  }

  /** The mass is uncertain as the density is; its likely value is the number of the step to the bit. */
  private Band massBand(double likely) {
    Band density = brief.material().densityBand();
    return new Band(
        Math.min(likely, likely * density.low() / density.likely()),
        likely,
        Math.max(likely, likely * density.high() / density.likely()));
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
      items.add(MassItem.of("ballast", Mass.kilograms(made.value()), Placement.at(place, Length.ZERO)));
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
