// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import io.github.wingwright.core.aerodynamics.AircraftDrag;
import io.github.wingwright.core.aerodynamics.BodyDrag;
import io.github.wingwright.core.aerodynamics.CurvedPlatePolar;
import io.github.wingwright.core.aerodynamics.DragBreakdown;
import io.github.wingwright.core.aerodynamics.DragBuildUp;
import io.github.wingwright.core.aerodynamics.SectionPolar;
import io.github.wingwright.core.aerodynamics.SurfaceDrag;
import io.github.wingwright.core.aircraft.Aircraft;
import io.github.wingwright.core.atmosphere.Air;
import io.github.wingwright.core.atmosphere.FlightCondition;
import io.github.wingwright.core.basis.Band;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Guideline;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Origins;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Sized;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Workings;
import io.github.wingwright.core.geometry.AirfoilSection;
import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.geometry.TaperedPlanform;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.mass.Ballast;
import io.github.wingwright.core.mass.MassItem;
import io.github.wingwright.core.mass.MassStatement;
import io.github.wingwright.core.performance.GlideKernel;
import io.github.wingwright.core.performance.GlidePerformance;
import io.github.wingwright.core.performance.SteadyGlide;
import io.github.wingwright.core.performance.ThrowCheck;
import io.github.wingwright.core.quantity.Acceleration;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.quantity.Volume;
import io.github.wingwright.core.sizing.FuselageFormulas;
import io.github.wingwright.core.sizing.WingFormulas;
import io.github.wingwright.stability.DownwashMethod;
import io.github.wingwright.stability.FuselageMethod;
import io.github.wingwright.stability.LateralStability;
import io.github.wingwright.stability.NeutralPoint;
import io.github.wingwright.stability.PitchModel;
import io.github.wingwright.stability.StaticMargin;
import io.github.wingwright.stability.TailVolume;
import io.github.wingwright.stability.Trim;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reckons a design forward from its dimensions as they are made, and keeps a step for every number. */
final class DesignEvaluation {
  private static final Source SECTION = Source.library("shape of the section");
  private static final Source POLAR_END = Source.library("a polar that ends at the usable lift");

  private final DesignBrief brief;
  private final Making making;
  private final Sized<Wing> sizedWing;
  private final Sized<Fuselage> sizedFuselage;
  private final QuickDesign quick;
  private final QuickDesign.Balance balance;
  private final Origins origins;
  private final Map<String, Step> numbers = new LinkedHashMap<>();
  private final List<Finding> findings = new ArrayList<>();

  DesignEvaluation(
      DesignBrief brief,
      Making making,
      Sized<Wing> wing,
      Sized<Fuselage> fuselage,
      QuickDesign quick,
      QuickDesign.Balance balance) {
    this.brief = brief;
    this.making = making;
    this.sizedWing = wing;
    this.sizedFuselage = fuselage;
    this.quick = quick;
    this.balance = balance;
    this.origins = new Origins(List.of());
  }

  Design design() {
    Step rho = number("air.density_kg_per_m3", brief.air().densityStep(Source.BRIEF));
    Step nu = number("air.kinematic_viscosity_m2_per_s", brief.air().kinematicViscosityStep(Source.BRIEF));
    Planform wingPlanform = wing();
    Fuselage fuselage = fuselage();
    Wing placed = station(wingPlanform, fuselage);
    Tail horizontal = horizontalTail(fuselage);
    Tail vertical = verticalTail(fuselage);
    Airframe airframe = new Airframe(fuselage, placed, List.of(horizontal, vertical));
    MassStatement masses = masses(airframe);
    Step mass = at("mass_kg");
    double trimReynolds = quick.trimReynolds(mass.value());
    PitchModel pitch = pitchModel(airframe, trimReynolds);
    NeutralPoint neutralPoint = pitch.neutralPoint();
    Step np =
        number(
            "neutral_point.x_m",
            Step.of("neutral point", "x_np", DesignFormulas.PLACE, step("x_w"), trace(neutralPoint.step()), step("c̄")));
    Step fraction = trace(Step.of(DesignFormulas.FRACTION, at("centre_of_gravity.x_m"), step("x_w"), step("c̄")));
    number("static_margin", Step.of(StaticMargin.MARGIN, trace(neutralPoint.step()), fraction));
    StaticMargin margin = StaticMargin.of(neutralPoint, masses.centreOfGravity().x(), brief.aircraftClass());
    findings.addAll(neutralPoint.findings());
    findings.addAll(margin.findings());
    GlidePerformance glide = GlidePerformance.of(drag(airframe), Mass.kilograms(mass.value()), brief.air());
    glideSteps(glide, mass, rho, nu);
    ThrowCheck throwCheck = glide.thrownAt(brief.launch().speed());
    findings.addAll(glide.findings());
    findings.addAll(throwCheck.findings());
    double trimLift = glide.usableLift() / (QuickDesign.TRIM_SPEED_RATIO * QuickDesign.TRIM_SPEED_RATIO);
    Trim trim = pitch.trim(masses.centreOfGravity().x(), trimLift);
    number("decalage_rad", trim.step());
    findings.addAll(trim.findings());
    LateralStability lateral = LateralStability.of(airframe, trimLift, brief.aircraftClass());
    number("spiral_parameter_rad", lateral.step());
    findings.addAll(lateral.findings());
    DragBreakdown build =
        glide.drag().rest().at(FlightCondition.of(brief.air(), glide.bestGlide().speed()));
    number("drag.coefficient_without_wing", build.coefficient());
    GlidePerformance alternative = alternative(airframe, mass.value());
    findings.addAll(sizedWing.findings());
    findings.addAll(sizedFuselage.findings());
    findings.addAll(Workings.of(List.copyOf(numbers.values())).findings());
    balanceFindings(np);
    return new Design(
        brief,
        sizedWing,
        sizedFuselage,
        new Aircraft(airframe, masses),
        neutralPoint,
        margin,
        glide,
        alternative,
        throwCheck,
        trim,
        lateral,
        build,
        numbers,
        findings);
  }

  private Step trace(Step step) {
    return origins.trace(step);
  }

  private Step number(String name, Step step) {
    Step traced = origins.add(trace(step));
    numbers.put(name, traced);
    return traced;
  }

  private Step at(String name) {
    Step step = numbers.get(name);
    if (step == null) {
      throw new IllegalStateException("no number \"" + name + "\" yet");
    }
    return step;
  }

  private final Map<String, Step> named = new HashMap<>();

  /** Keeps a step under its symbol, for the steps that follow. */
  private Step keep(String symbol, Step step) {
    Step traced = origins.add(trace(step));
    named.put(symbol, traced);
    return traced;
  }

  private Step step(String symbol) {
    Step step = named.get(symbol);
    if (step == null) {
      throw new IllegalStateException("no step \"" + symbol + "\" yet");
    }
    return step;
  }

  private static Step find(Workings workings, String symbol) {
    return workings.steps().stream()
        .filter(s -> s.symbol().equals(symbol))
        .reduce((first, last) -> last)
        .orElseThrow(() -> new IllegalStateException("workings have no \"" + symbol + "\""));
  }

  private Planform wing() {
    Workings w = sizedWing.workings();
    w.steps().forEach(origins::add);
    Planform sized = sizedWing.value().planform();
    Step b = keep("b", making.made(find(w, "b")));
    Step root = keep("c_r", making.made(find(w, "c_r")));
    Step tip = keep("c_t", making.made(find(w, "c_t")));
    number("wing.span_m", b);
    Step area = number("wing.area_m2", Step.of("wing reference area", "S", DesignFormulas.AREA_FROM_CHORDS, b, root, tip));
    named.put("S", area);
    named.put("A", number("wing.aspect_ratio", Step.of(TaperedPlanform.ASPECT_RATIO, b, area)));
    number("wing.root_chord_m", root);
    number("wing.tip_chord_m", tip);
    Step taper = number("wing.taper_ratio", Step.of(DesignFormulas.TAPER_RATIO, tip, root));
    named.put("c̄", number("wing.mean_aerodynamic_chord_m", Step.of(TaperedPlanform.MEAN_AERODYNAMIC_CHORD, root, taper)));
    keep("ȳ", Step.of(TaperedPlanform.MEAN_AERODYNAMIC_CHORD_POSITION, b, taper));
    AirfoilSection section = sizedWing.value().section();
    Step thickness = Step.given("thickness over chord of " + section.name(), "τ", section.maximumThickness(), SECTION);
    number("wing.maximum_thickness_m", Step.of(WingFormulas.MAXIMUM_THICKNESS, thickness, root));
    keep("Λ", Step.given("sweep of the quarter-chord line", "Λ", sized.sweepAt(0.25), Source.BRIEF));
    number("wing.dihedral_rad", Step.given("dihedral", "Γ", sized.equivalentDihedral(), Source.BRIEF));
    Planform made =
        Planform.tapered(Length.metres(b.value()), Length.metres(root.value()), Length.metres(tip.value()))
            .withSweep(0.25, sized.sweepAt(0.25))
            .withDihedral(sized.panels().get(0).dihedral());
    double washout = sized.panels().stream().mapToDouble(p -> p.washout().si()).sum();
    return washout == 0.0 ? made : made.withWashout(Angle.radians(washout));
  }

  private Fuselage fuselage() {
    Workings w = sizedFuselage.workings();
    w.steps().forEach(origins::add);
    Fuselage sized = sizedFuselage.value();
    Step length = number("fuselage.length_m", making.made(find(w, "L")));
    Step diameter = number("fuselage.diameter_m", making.made(find(w, "d")));
    named.put("L", length);
    named.put("d", diameter);
    number("fuselage.fineness_ratio", Step.of(FuselageFormulas.FINENESS_RATIO, length, diameter));
    number("fuselage.volume_m3", sized.shape().volumeStep(length, diameter));
    number("fuselage.wetted_area_m2", sized.shape().wettedAreaStep(length, diameter));
    return new Fuselage(sized.shape(), Length.metres(length.value()), Length.metres(diameter.value()));
  }

  private Wing station(Planform planform, Fuselage fuselage) {
    Step wanted = Step.given("wanted static margin", "K_w", brief.staticMargin(), Source.BRIEF);
    double mass = balance.mass();
    boolean ballasted = balance.ballast() > 0.0;
    Step station =
        Step.solution(
            "leading edge of the wing's root, behind the nose",
            "x_r",
            Length.METRE,
            ballasted
                ? "the station at which tails and ballast are lightest, over the travel of the wing"
                : "Brent's method over the travel of the wing",
            "K_n(x_r) = K_w" + (ballasted ? ", with ballast" : ""),
            v -> balance.station(),
            v -> ballasted ? marginWithBallast() - v[0] : quick.margin(v[1], mass) - v[0],
            Source.library("wing station first, ballast second"),
            wanted);
    Step made = number("wing.leading_edge_x_m", making.madePlace(station));
    keep("x_w", Step.of(DesignFormulas.QUARTER_CHORD, made, step("c_r"), step("ȳ"), step("Λ")));
    return Wing.of(planform, sizedWing.value().section())
        .placedAt(Placement.at(Length.metres(made.value()), PartGeometry.wingHeight(fuselage)));
  }

  private double marginWithBallast() {
    double chord = sizedWing.value().planform().meanAerodynamicChord().si();
    return (balance.neutralPoint() - balance.centreOfGravity()) / chord;
  }

  private Tail horizontalTail(Fuselage fuselage) {
    TailBrief asked = brief.horizontalTail();
    Step volume = Step.given("horizontal tail volume coefficient, as asked", "V_h", asked.volumeCoefficient(), Source.BRIEF);
    Step arm = armOf("horizontal tail arm, as sized", "l_h", volume, step("c̄"), asked);
    Step area = Step.of(TailVolume.HORIZONTAL_AREA, volume, arm, step("S"), step("c̄"));
    Planform planform = tail("horizontal_tail", "h", asked, area, true);
    Step madeArm = number("horizontal_tail.arm_m", Step.of("horizontal tail arm", "l_h", DesignFormulas.TAIL_ARM, step("L"), step("c_r,h"), step("x_w")));
    Step made =
        number(
            "horizontal_tail.volume_coefficient",
            Step.of(TailVolume.HORIZONTAL, at("horizontal_tail.area_m2"), madeArm, step("S"), step("c̄")));
    check(brief.aircraftClass().tailVolume(Tail.Role.HORIZONTAL), made);
    check(brief.aircraftClass().tailAspectRatio(Tail.Role.HORIZONTAL), at("horizontal_tail.aspect_ratio"));
    Length x = fuselage.length().minus(planform.rootChord());
    return new Tail(Tail.Role.HORIZONTAL, planform, brief.tailSection(), Placement.at(x, Length.ZERO), Angle.ZERO);
  }

  private Tail verticalTail(Fuselage fuselage) {
    TailBrief asked = brief.verticalTail();
    Step volume = Step.given("vertical tail volume coefficient, as asked", "V_v", asked.volumeCoefficient(), Source.BRIEF);
    Step arm = armOf("vertical tail arm, as sized", "l_v", volume, step("b"), asked);
    Step area = Step.of(TailVolume.VERTICAL_AREA, volume, arm, step("S"), step("b"));
    Planform planform = tail("vertical_tail", "v", asked, area, false);
    Step madeArm = number("vertical_tail.arm_m", Step.of("vertical tail arm", "l_v", DesignFormulas.TAIL_ARM, step("L"), step("c_r,v"), step("x_w")));
    Step made =
        number(
            "vertical_tail.volume_coefficient",
            Step.of(TailVolume.VERTICAL, at("vertical_tail.area_m2"), madeArm, step("S"), step("b")));
    check(brief.aircraftClass().tailVolume(Tail.Role.VERTICAL), made);
    check(brief.aircraftClass().tailAspectRatio(Tail.Role.VERTICAL), at("vertical_tail.aspect_ratio"));
    Length x = fuselage.length().minus(planform.rootChord());
    return new Tail(Tail.Role.VERTICAL, planform, brief.tailSection(), Placement.at(x, Length.ZERO), Angle.ZERO);
  }

  /** The arm between the wing as made and the end of the fuselage as made. */
  private Step armOf(String name, String symbol, Step volume, Step reference, TailBrief asked) {
    return Step.solution(
        name,
        symbol,
        Length.METRE,
        "Newton's method",
        "l + ¾·c_r(V·S·r/l) + x_w = L, with r = " + reference.symbol(),
        v -> arm(name, v, asked),
        v -> {
          double root = TailGeometry.rootChord(v[0] * v[1] * v[2] / v[5], asked.aspectRatio(), asked.taperRatio());
          return v[5] + 0.75 * root + v[4] - v[3];
        },
        Source.library("a tail that ends with the fuselage"),
        volume,
        step("S"),
        reference,
        step("L"),
        step("x_w"));
  }

  private static double arm(String name, double[] v, TailBrief asked) {
    double arm = TailGeometry.arm(v[3] - v[4], v[0] * v[1] * v[2], asked.aspectRatio(), asked.taperRatio());
    if (Double.isNaN(arm)) {
      throw new IllegalStateException(
          name + " must exist after rounding, but rounded to what can be made the tail no longer fits: make the steps"
              + " smaller, or the least tail arm greater");
    }
    return arm;
  }

  private Planform tail(String key, String index, TailBrief asked, Step area, boolean mirrored) {
    Step ratio = Step.given("aspect ratio of the tail, as asked", "A_" + index, asked.aspectRatio(), Source.BRIEF);
    Step taper = Step.given("taper ratio of the tail, as asked", "λ_" + index, asked.taperRatio(), Source.BRIEF);
    String what = mirrored ? "horizontal tail " : "fin ";
    Step b = making.made(Step.of(what + (mirrored ? "span" : "height"), "b_" + index, TaperedPlanform.SPAN, area, ratio));
    Step rootSized = Step.of(what + "root chord", "c_r," + index, TailGeometry.ROOT_CHORD, area, ratio, taper);
    Step root = keep("c_r," + index, making.made(rootSized));
    Step tip = making.made(Step.of(what + "tip chord", "c_t," + index, TaperedPlanform.TIP_CHORD, taper, rootSized));
    number(key + ".span_m", b);
    Step made = number(key + ".area_m2", Step.of(what + "area", "S_" + index, DesignFormulas.AREA_FROM_CHORDS, b, root, tip));
    number(key + ".aspect_ratio", Step.of(what + "aspect ratio", "A_" + index, TaperedPlanform.ASPECT_RATIO, b, made));
    number(key + ".root_chord_m", root);
    number(key + ".tip_chord_m", tip);
    Length span = Length.metres(b.value());
    Length rootChord = Length.metres(root.value());
    Length tipChord = Length.metres(tip.value());
    return mirrored ? Planform.tapered(span, rootChord, tipChord) : PartGeometry.fin(span, rootChord, tipChord);
  }

  private void check(Guideline guideline, Step value) {
    guideline.check(value.value()).ifPresent(findings::add);
  }

  private MassStatement masses(Airframe airframe) {
    Wing wing = airframe.wing();
    Fuselage body = airframe.fuselage();
    Map<String, Step> steps = new LinkedHashMap<>();
    List<MassItem> items = new ArrayList<>();
    Step k = Step.given("area of the section over its chord squared", "k", wing.section().area(), SECTION);
    Step p = Step.given("outline of the section over its chord", "p", wing.section().perimeter(), SECTION);
    Step wingVolume = trace(Step.of(DesignFormulas.WING_VOLUME, k, step("S"), step("c̄")));
    Step wingSurface = trace(Step.of(DesignFormulas.WING_SURFACE, p, step("S")));
    add(items, steps, "wing", trace(brief.wingShell().massStep(wingSurface, wingVolume)), wingCentre(wing));
    Step bodyMass = brief.bodyShell().massStep(at("fuselage.wetted_area_m2"), at("fuselage.volume_m3"));
    double bodyX = body.shape().surfaceCentroid(body.length().si(), body.diameter().si());
    add(items, steps, "fuselage", trace(bodyMass), Placement.at(Length.metres(bodyX), Length.ZERO));
    plate(items, steps, airframe.tails().get(0), "horizontal_tail");
    plate(items, steps, airframe.tails().get(1), "vertical_tail");
    for (MassItem item : brief.carried()) {
      items.add(item);
      steps.put(item.name(), Step.given(item.name(), "m", item.mass(), Source.BRIEF));
    }
    ballast(items, steps, body);
    MassStatement statement = MassStatement.of(items);
    Step total = number("mass_kg", statement.massStep(steps));
    number("centre_of_gravity.x_m", statement.centreOfGravityStep(total));
    number("wing.loading_kg_per_m2", Step.of(DesignFormulas.LOADING, total, step("S")));
    findings.addAll(
        brief.wingShell().findings("wing", wing.wettedArea(), Volume.cubicMetres(wingVolume.value())));
    return statement;
  }

  private static Placement wingCentre(Wing wing) {
    Planform p = wing.planform();
    double chordwise = PartGeometry.outlineCentroid(wing.section(), 201) * p.meanAerodynamicChord().si();
    Length x = wing.meanAerodynamicChordX().plus(Length.metres(chordwise));
    return Placement.at(x, wing.placement().z().plus(p.meanAerodynamicChordZ()));
  }

  private void add(List<MassItem> items, Map<String, Step> steps, String name, Step mass, Placement place) {
    items.add(
        MassItem.of(name, massBand(mass.value()), place)
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
    Step mass = trace(Step.of("mass of the " + tail.role().words(), "m", DesignFormulas.PLATE_MASS, density, thickness, at(key + ".area_m2")));
    Planform p = tail.planform();
    Length x = tail.meanAerodynamicChordX().plus(p.meanAerodynamicChord().times(0.5));
    Length z = tail.role() == Tail.Role.VERTICAL ? tail.placement().z().plus(p.meanAerodynamicChordY()) : tail.placement().z();
    add(items, steps, tail.role().words(), mass, Placement.at(x, z));
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
    Step made = number("ballast_kg", making.madeMass(sized));
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

  private PitchModel pitchModel(Airframe airframe, double wingReynolds) {
    double ratio =
        airframe.tails().get(0).planform().meanAerodynamicChord().dividedBy(airframe.wing().planform().meanAerodynamicChord());
    return PitchModel.of(airframe)
        .forClass(brief.aircraftClass())
        .withDownwash(DownwashMethod.HANDBOOK)
        .withFuselageMoment(FuselageMethod.MUNK)
        .withTailEfficiency(PartGeometry.TAIL_EFFICIENCY)
        .withWingSection(brief.wingPolar(), wingReynolds)
        .withTailSection(brief.tailPolar(), wingReynolds * ratio);
  }

  private AircraftDrag drag(Airframe airframe) {
    return drag(airframe, brief.wingPolar());
  }

  private static AircraftDrag drag(Airframe airframe, SectionPolar polar) {
    Planform wing = airframe.wing().planform();
    Fuselage body = airframe.fuselage();
    DragBuildUp rest =
        DragBuildUp.about(wing.area())
            .with(
                new BodyDrag(
                    "fuselage",
                    body.length().si(),
                    body.finenessRatio(),
                    body.wettedArea().si(),
                    PartGeometry.FRICTION,
                    PartGeometry.BODY_FORM,
                    1.0));
    for (Tail tail : airframe.tails()) {
      Planform p = tail.planform();
      rest =
          rest.with(
              new SurfaceDrag(
                  tail.role().words(),
                  p.meanAerodynamicChord().si(),
                  tail.section().maximumThickness(),
                  PartGeometry.TAIL_THICKEST,
                  p.sweepAt(0.25).si(),
                  tail.wettedArea().si(),
                  PartGeometry.FRICTION,
                  PartGeometry.TAIL_FORM,
                  PartGeometry.TAIL_INTERFERENCE));
    }
    return AircraftDrag.of(wing, polar, InducedLoss.of(wing), rest);
  }

  private void glideSteps(GlidePerformance glide, Step mass, Step rho, Step nu) {
    Step gravity = Step.given("acceleration of gravity", "g", Acceleration.STANDARD_GRAVITY, Source.DEFINITION);
    Step pressure = keep("P", Step.of(SteadyGlide.WEIGHT_OVER_AREA, mass, gravity, step("S")));
    AircraftDrag drag = glide.drag();
    Step usable =
        number(
            "wing.lift_coefficient_usable",
            Step.solution(
                "usable lift coefficient",
                "C_L,u",
                NamedUnit.NUMBER,
                "repetition, because it depends on the Reynolds number at the stall",
                "C_L,u = usable lift of " + drag.section().name() + " at R(V(C_L,u))",
                v -> GlideKernel.usableLift(drag, v[0], v[1], v[2]),
                v -> v[3] - drag.section().usableLift(drag.reynolds(SteadyGlide.levelSpeed(v[0], v[1], v[3]), v[2])).likely(),
                drag.section().source(),
                pressure,
                rho,
                nu));
    number("stall_speed_m_per_s", Step.of("stall speed", "V_s", SteadyGlide.LEVEL_SPEED, pressure, rho, usable));
    number("launch_speed_m_per_s", Step.given("launch speed", "V_l", brief.launch().speed(), Source.BRIEF));
    Step best = optimum(glide, "lift coefficient of the best glide", "C_L,g", "C_D/C_L is least", pressure, rho, nu, true);
    Step bestDrag = dragAt(glide, "drag coefficient at best glide", "C_D,g", best, pressure, rho, nu);
    Step ratio = number("glide.best_lift_to_drag", Step.of("best lift to drag", "E", SteadyGlide.LIFT_TO_DRAG, best, bestDrag));
    Step angle = number("glide.best_glide_angle_rad", Step.of("angle of the best glide", "γ_g", SteadyGlide.ANGLE, bestDrag, best));
    Step speed = number("glide.best_glide_speed_m_per_s", Step.of("speed of the best glide", "V_g", SteadyGlide.SPEED, pressure, angle, rho, best));
    number("glide.best_glide_lift_coefficient", best);
    number(
        "reynolds_number.wing",
        Step.of("Reynolds number of the wing at best glide", "R", Air.REYNOLDS_NUMBER, speed, step("c̄"), nu));
    Step sink = optimum(glide, "lift coefficient of least sink", "C_L,s", "sink rate is least", pressure, rho, nu, false);
    Step sinkDrag = dragAt(glide, "drag coefficient at least sink", "C_D,s", sink, pressure, rho, nu);
    Step sinkAngle = Step.of("angle at least sink", "γ_s", SteadyGlide.ANGLE, sinkDrag, sink);
    Step sinkSpeed = number("glide.minimum_sink_speed_m_per_s", Step.of("speed of least sink", "V_m", SteadyGlide.SPEED, pressure, sinkAngle, rho, sink));
    Step rate = number("glide.minimum_sink_rate_m_per_s", Step.of("least sink rate", "w_m", SteadyGlide.SINK_RATE, sinkSpeed, sinkAngle));
    Step height = Step.given("launch height", "h", brief.launch().height(), Source.BRIEF);
    number("glide.distance_m", Step.of("distance from the launch height in still air", "D", SteadyGlide.DISTANCE, height, ratio));
    number("glide.time_s", Step.of(DesignFormulas.DURATION, height, rate));
    number("launch.kinetic_energy_j", Step.of(DesignFormulas.KINETIC_ENERGY, mass, at("launch_speed_m_per_s")));
  }

  private static Step optimum(
      GlidePerformance glide, String name, String symbol, String what, Step pressure, Step rho, Step nu, boolean range) {
    AircraftDrag drag = glide.drag();
    return Step.solution(
        name,
        symbol,
        NamedUnit.NUMBER,
        "a scan of the whole polar, then refinement",
        what + ", up to the usable lift; residual: by what part a dense scan finds less",
        v ->
            range
                ? GlideKernel.bestGlideLift(drag, v[0], v[1], v[2])
                : GlideKernel.leastSinkLift(drag, v[0], v[1], v[2]),
        v -> excess(drag, v, range),
        POLAR_END,
        pressure,
        rho,
        nu);
  }

  /** By what part the best of a dense scan is better than the solution; not positive for a true optimum. */
  private static double excess(AircraftDrag drag, double[] v, boolean range) {
    double usable = GlideKernel.usableLift(drag, v[0], v[1], v[2]);
    double found = cost(drag, v[3], v, range);
    double least = found;
    for (int i = 1; i <= 400; i++) {
      least = Math.min(least, cost(drag, usable * i / 400.0, v, range));
    }
    return found / least - 1.0;
  }

  private static double cost(AircraftDrag drag, double lift, double[] v, boolean range) {
    double cd = GlideKernel.dragCoefficient(drag, lift, v[0], v[1], v[2]);
    return range ? cd / lift : GlideKernel.sinkRate(lift, cd, v[0], v[1]);
  }

  private static Step dragAt(
      GlidePerformance glide, String name, String symbol, Step lift, Step pressure, Step rho, Step nu) {
    AircraftDrag drag = glide.drag();
    return Step.solution(
        name,
        symbol,
        NamedUnit.NUMBER,
        "repetition, because the drag depends on the speed and the speed on the glide angle",
        "C_D = c_d(C_L, R) + (1 + δ)·C_L²/(π·A) + C_D0,rest at V(C_L, C_D)",
        v -> GlideKernel.dragCoefficient(drag, v[0], v[1], v[2], v[3]),
        v -> drag.likelyCoefficient(v[0], SteadyGlide.speed(v[1], SteadyGlide.angle(v[4], v[0]), v[2], v[0]), v[3]) - v[4],
        Source.library("drag of section, lift, tails and fuselage added"),
        lift,
        pressure,
        rho,
        nu);
  }

  /** The same glider with a curved plate of one or two walls for a wing. */
  private GlidePerformance alternative(Airframe airframe, double mass) {
    Wing wing = airframe.wing();
    double wall = brief.wingShell().wallThickness().si();
    double chord = wing.planform().meanAerodynamicChord().si();
    double plate = brief.material().density().si() * wall * wing.planform().area().si();
    double now = brief.wingShell().mass(wing.wettedArea(), PartGeometry.wingVolume(wing)).si();
    double thickness = Math.min(0.05, Math.max(0.005, wall / chord));
    CurvedPlatePolar polar = CurvedPlatePolar.of(0.05, thickness);
    return GlidePerformance.of(drag(airframe, polar), Mass.kilograms(mass - now + plate), brief.air());
  }

  private void balanceFindings(Step neutralPoint) {
    double station = at("wing.leading_edge_x_m").value();
    Interval travel = quick.travel();
    if (balance.ballast() > 0.0) {
      findings.add(
          Finding.of(
              Severity.NOTE,
              "ballast",
              "No station of the wing balances it; the nose carries ballast. A longer nose or lighter tails save some of it.",
              at("ballast_kg").value(),
              Interval.atMost(0.1 * at("mass_kg").value()),
              Mass.GRAM,
              Source.COMMON_PRACTICE));
    } else if (balance.station() <= travel.lower()) {
      findings.add(
          Finding.of(
              Severity.CAUTION,
              "wing station",
              "The wing sits as far forward as it may and the margin is still more than was asked: the neutral point is at "
                  + neutralPoint.unit().format(neutralPoint.value(), 4)
                  + ". Let it sit further forward, or make the tail smaller.",
              station,
              travel,
              Length.MILLIMETRE,
              Source.library("wing station first, ballast second")));
    }
  }
}
