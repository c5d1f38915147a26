// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.core.aerodynamics.LiftSlope;
import io.github.wingwright.core.aerodynamics.SectionPolar;
import io.github.wingwright.core.basis.Band;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.LiftingSurface;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Lift and pitching moment of an airframe as straight lines over the angle of attack: what the neutral point and trim are
 * made of.
 *
 * <pre>{@code
 * NeutralPoint np = PitchModel.of(airframe).forClass(HAND_LAUNCHED_GLIDER).neutralPoint();
 * Trim trim = PitchModel.of(airframe)
 *     .withWingSection(wingPolar, 35_000)
 *     .withTailSection(tailPolar, 25_000)
 *     .trim(centreOfGravity, 0.6);
 * }</pre>
 *
 * <p>It is a specification: each {@code with…} gives a new one. Without section data the sections lift as in potential
 * flow, 2π per radian; trim needs section data, because a zero-lift angle cannot be guessed.
 */
public final class PitchModel {
  static final Formula AREA_RATIO =
      Formula.named("tail area over wing area")
          .gives("s_h", NamedUnit.NUMBER)
          .as("S_h / S")
          .where("S_h", "horizontal tail area", Area.SQUARE_METRE, 1e-5, 200)
          .where("S", "wing reference area", Area.SQUARE_METRE, 1e-4, 1000)
          .from(Source.DEFINITION)
          .computedBy((double tail, double wing) -> tail / wing);
  static final Formula TAIL_CENTRE =
      Formula.named("aerodynamic centre of the tail, fraction of c̄")
          .gives("h_h", NamedUnit.NUMBER)
          .as("h_w + l_h/c̄")
          .where("h_w", "aerodynamic centre of the wing", 0.1, 0.6)
          .where("l_h", "tail arm", Length.METRE, -60, 60)
          .where("c̄", "mean aerodynamic chord", Length.METRE, 0.005, 20)
          .from(Source.DEFINITION)
          .computedBy((double centre, double arm, double chord) -> centre + arm / chord);
  static final Formula FREE_SLOPE =
      Formula.named("lift-curve slope of the tail with a floating elevator")
          .gives("a_h", NamedUnit.PER_RADIAN)
          .as("F·a")
          .where("F", "floating factor", 0, 1.5)
          .where("a", "lift-curve slope of the tail", NamedUnit.PER_RADIAN, 0, 7)
          .from(Sources.MOMENT_EQUATION)
          .computedBy((double factor, double slope) -> factor * slope);

  static final Formula SECTION_FACTOR =
      Formula.named("section slope over 2π")
          .gives("κ", NamedUnit.NUMBER)
          .as("a_0 / (2·π)")
          .where("a_0", "lift-curve slope of the section", NamedUnit.PER_RADIAN, 2, 8)
          .from(Source.DEFINITION)
          .computedBy((double slope) -> slope / (2.0 * Math.PI));

  private static final double POTENTIAL_SLOPE = 2.0 * Math.PI;
  private static final Source POTENTIAL = Source.library("2π, potential flow: no section data were given");
  private static final Source QUARTER_CHORD = Source.library("the quarter chord of thin sections in potential flow");

  private final Airframe airframe;
  private final AircraftClass aircraftClass;
  private final DownwashMethod downwashMethod;
  private final FuselageMethod fuselageMethod;
  private final double tailEfficiency;
  private final double floatingFactor;
  private final @Nullable Section wingSection;
  private final @Nullable Section tailSection;

  /** A section with the Reynolds number at which it works. */
  record Section(SectionPolar polar, double reynolds) {
    Section {
      Door.positive(reynolds, "Reynolds number");
    }
  }

  private PitchModel(
      Airframe airframe,
      AircraftClass aircraftClass,
      DownwashMethod downwashMethod,
      FuselageMethod fuselageMethod,
      double tailEfficiency,
      double floatingFactor,
      @Nullable Section wingSection,
      @Nullable Section tailSection) {
    this.airframe = airframe;
    this.aircraftClass = aircraftClass;
    this.downwashMethod = downwashMethod;
    this.fuselageMethod = fuselageMethod;
    this.tailEfficiency = tailEfficiency;
    this.floatingFactor = floatingFactor;
    this.wingSection = wingSection;
    this.tailSection = tailSection;
  }

  /**
   * The model of an airframe, with the usual methods: handbook downwash, Munk's fuselage, the tail efficiency of a
   * hand-launched glider.
   *
   * @param airframe the airframe
   * @return the model
   */
  public static PitchModel of(Airframe airframe) {
    AircraftClass glider = AircraftClass.HAND_LAUNCHED_GLIDER;
    return new PitchModel(
        airframe,
        glider,
        DownwashMethod.HANDBOOK,
        FuselageMethod.MUNK,
        glider.typicalTailEfficiency(),
        1.0,
        null,
        null);
  }

  /**
   * For a class of aircraft: its tail efficiency, and the ranges that results are held against.
   *
   * @param other the class
   * @return the model for it
   */
  public PitchModel forClass(AircraftClass other) {
    return new PitchModel(
        airframe,
        other,
        downwashMethod,
        fuselageMethod,
        other.typicalTailEfficiency(),
        floatingFactor,
        wingSection,
        tailSection);
  }

  /**
   * With another airframe and all else the same.
   *
   * @param other the airframe
   * @return the model of it
   */
  public PitchModel withAirframe(Airframe other) {
    return new PitchModel(
        other,
        aircraftClass,
        downwashMethod,
        fuselageMethod,
        tailEfficiency,
        floatingFactor,
        wingSection,
        tailSection);
  }

  /**
   * With another way to reckon the downwash.
   *
   * @param method the method
   * @return the model with it
   */
  public PitchModel withDownwash(DownwashMethod method) {
    return new PitchModel(
        airframe,
        aircraftClass,
        method,
        fuselageMethod,
        tailEfficiency,
        floatingFactor,
        wingSection,
        tailSection);
  }

  /**
   * With another way to reckon the moment of the fuselage.
   *
   * @param method the method
   * @return the model with it
   */
  public PitchModel withFuselageMoment(FuselageMethod method) {
    return new PitchModel(
        airframe,
        aircraftClass,
        downwashMethod,
        method,
        tailEfficiency,
        floatingFactor,
        wingSection,
        tailSection);
  }

  /**
   * With another tail efficiency.
   *
   * @param efficiency dynamic pressure at the tail over that of flight, 0.3 to 1.2
   * @return the model with it
   */
  public PitchModel withTailEfficiency(double efficiency) {
    return new PitchModel(
        airframe,
        aircraftClass,
        downwashMethod,
        fuselageMethod,
        Door.within(efficiency, 0.3, 1.2, "tail efficiency"),
        floatingFactor,
        wingSection,
        tailSection);
  }

  /**
   * Stick free: with an elevator that floats.
   *
   * @param factor how much of the tail's slope is left, 0 to 1.5, from {@link NeutralPoint#floatingFactor}; 1 is stick
   *     fixed
   * @return the model with it
   */
  public PitchModel withFloatingFactor(double factor) {
    return new PitchModel(
        airframe,
        aircraftClass,
        downwashMethod,
        fuselageMethod,
        tailEfficiency,
        Door.within(factor, 0.0, 1.5, "floating factor"),
        wingSection,
        tailSection);
  }

  /**
   * With data of the wing's section.
   *
   * @param polar the data
   * @param reynolds Reynolds number on the mean aerodynamic chord, positive
   * @return the model with it
   */
  public PitchModel withWingSection(SectionPolar polar, double reynolds) {
    return new PitchModel(
        airframe,
        aircraftClass,
        downwashMethod,
        fuselageMethod,
        tailEfficiency,
        floatingFactor,
        new Section(polar, reynolds),
        tailSection);
  }

  /**
   * With data of the tail's section.
   *
   * @param polar the data
   * @param reynolds Reynolds number on the tail's mean aerodynamic chord, positive
   * @return the model with it
   */
  public PitchModel withTailSection(SectionPolar polar, double reynolds) {
    return new PitchModel(
        airframe,
        aircraftClass,
        downwashMethod,
        fuselageMethod,
        tailEfficiency,
        floatingFactor,
        wingSection,
        new Section(polar, reynolds));
  }

  /**
   * The airframe.
   *
   * @return the airframe
   */
  public Airframe airframe() {
    return airframe;
  }

  /**
   * The class of aircraft.
   *
   * @return the class whose ranges apply
   */
  public AircraftClass aircraftClass() {
    return aircraftClass;
  }

  Optional<Section> wingSection() {
    return Optional.ofNullable(wingSection);
  }

  Optional<Section> tailSection() {
    return Optional.ofNullable(tailSection);
  }

  /**
   * The neutral point: stick fixed, or stick free if a floating factor was given.
   *
   * @return the neutral point with the contribution of each part
   */
  public NeutralPoint neutralPoint() {
    return terms().neutralPoint();
  }

  /**
   * The static margin.
   *
   * @param centreOfGravity aft of the nose tip
   * @return the margin with its findings
   */
  public StaticMargin staticMargin(Length centreOfGravity) {
    return StaticMargin.of(neutralPoint(), centreOfGravity, aircraftClass);
  }

  /**
   * The downwash at the horizontal tail, by every method.
   *
   * @return the downwash
   * @throws IllegalStateException if there is no horizontal tail
   */
  public Downwash downwash() {
    Tail tail =
        airframe
            .horizontalTail()
            .orElseThrow(() -> new IllegalStateException("downwash needs a horizontal tail, the airframe has none"));
    return Downwash.at(airframe.wing(), tail, wingSlope(), downwashMethod);
  }

  /**
   * How tail and wing must be set for trim.
   *
   * @param centreOfGravity aft of the nose tip
   * @param liftCoefficient lift coefficient to trim at
   * @return the trim, with the decalage as a range
   * @throws IllegalStateException if there is no horizontal tail, or section data are missing
   */
  public Trim trim(Length centreOfGravity, double liftCoefficient) {
    return Trim.of(this, centreOfGravity, liftCoefficient);
  }

  /** The numbers of the model, as steps. */
  Terms terms() {
    return new Terms(this);
  }

  private Step wingSlope() {
    return slope("lift-curve slope of the wing", "a_w", airframe.wing(), wingSection);
  }

  private static Step slope(String name, String symbol, LiftingSurface surface, @Nullable Section section) {
    Planform p = surface.planform();
    double sectionSlope = section == null ? POTENTIAL_SLOPE : section.polar().liftSlope(section.reynolds()).likely();
    Source source = section == null ? POTENTIAL : section.polar().source();
    return Step.of(
        name,
        symbol,
        LiftSlope.HANDBOOK,
        Step.given("aspect ratio", "A", p.aspectRatio(), Source.BRIEF),
        Step.given("compressibility factor", "β", 1.0, Source.library("slow flight, no compressibility")),
        Step.of(
            SECTION_FACTOR,
            new Step.Given("lift-curve slope of the section", "a_0", NamedUnit.PER_RADIAN, sectionSlope, source)),
        Step.given("sweep of the half-chord line", "Λ", p.sweepAt(0.5), Source.BRIEF));
  }

  /** The numbers of the model, each as a step. */
  static final class Terms {
    final PitchModel model;
    final Step area;
    final Step chord;
    final Step wingSlope;
    final Step wingCentre;
    final Step fuselageSlope;
    final Step efficiency;
    final Step areaRatio;
    final Step tailSlope;
    final Step downwash;
    final Step tailCentre;
    final @Nullable Downwash methods;

    private Terms(PitchModel model) {
      this.model = model;
      Wing wing = model.airframe.wing();
      Planform p = wing.planform();
      area = Step.given("wing reference area", "S", p.area(), Source.BRIEF);
      chord = Step.given("mean aerodynamic chord", "c̄", p.meanAerodynamicChord(), Source.BRIEF);
      wingSlope = model.wingSlope();
      wingCentre = Step.given("aerodynamic centre of the wing, fraction of c̄", "h_w", 0.25, QUARTER_CHORD);
      efficiency =
          Step.given("tail efficiency", "η_h", model.tailEfficiency, model.aircraftClass.tailEfficiency().source());
      Optional<Tail> tail = model.airframe.horizontalTail();
      if (tail.isPresent()) {
        Tail h = tail.get();
        methods = Downwash.at(wing, h, wingSlope, model.downwashMethod);
        downwash = methods.step(model.downwashMethod);
        areaRatio =
            Step.of(AREA_RATIO, Step.given("horizontal tail area", "S_h", h.planform().area(), Source.BRIEF), area);
        Step slope = slope("lift-curve slope of the tail", "a_h", h, model.tailSection);
        tailSlope =
            model.floatingFactor == 1.0
                ? slope
                : Step.of(
                    FREE_SLOPE,
                    Step.given("floating factor", "F", model.floatingFactor, Source.BRIEF),
                    slope);
        tailCentre =
            Step.of(
                TAIL_CENTRE, wingCentre, Step.given("tail arm", "l_h", h.armFrom(wing), Source.BRIEF), chord);
      } else {
        methods = null;
        Source none = Source.library("the airframe has no horizontal tail");
        downwash = Step.given("downwash gradient", "ε_α", 0.0, none);
        areaRatio = Step.given("tail area over wing area", "s_h", 0.0, none);
        tailSlope = new Step.Given("lift-curve slope of the tail", "a_h", NamedUnit.PER_RADIAN, 0.0, none);
        tailCentre = Step.given("aerodynamic centre of the tail", "h_h", 0.25, none);
      }
      double arm = tail.map(t -> t.armFrom(wing).si()).orElse(0.0);
      fuselageSlope =
          model.fuselageMethod.step(
              new FuselageMethod.Context(
                  model.airframe.fuselage(),
                  wing,
                  area,
                  chord,
                  Step.of(
                      DownwashFormulas.FAR_ELLIPTIC,
                      wingSlope,
                      Step.given("aspect ratio", "A", p.aspectRatio(), Source.BRIEF)),
                  downwash,
                  arm));
    }

    NeutralPoint neutralPoint() {
      Step position =
          Step.of(
              NeutralPoint.POSITION,
              wingSlope,
              wingCentre,
              fuselageSlope,
              efficiency,
              areaRatio,
              tailSlope,
              downwash,
              tailCentre);
      Step t = Step.of(NeutralPoint.TAIL_SLOPE, efficiency, areaRatio, tailSlope, downwash);
      List<Step> contributions = new ArrayList<>();
      contributions.add(wingCentre);
      if (methods != null) {
        contributions.add(Step.of(NeutralPoint.TAIL_SHIFT, t, tailCentre, wingCentre, wingSlope));
      }
      contributions.add(Step.of(NeutralPoint.FUSELAGE_SHIFT, fuselageSlope, wingSlope, t));
      Band band = methods == null ? Band.exactly(position.value()) : band(methods.band(), position.value());
      List<Finding> findings = new ArrayList<>();
      if (methods == null) {
        findings.add(
            Finding.of(
                Severity.NOTE,
                "horizontal tail",
                "There is none: the neutral point is that of wing and fuselage, and the wing alone must balance."
                    + " Use sweep with washout or a section with reflex.",
                Source.library("a layout without a tail")));
      } else {
        findings.addAll(methods.findings());
        model.aircraftClass.tailEfficiency().check(efficiency.value()).ifPresent(findings::add);
      }
      Wing wing = model.airframe.wing();
      return new NeutralPoint(
          position, wing.meanAerodynamicChordX(), wing.planform().meanAerodynamicChord(), contributions, band, findings);
    }

    private Band band(Band epsilon, double likely) {
      double atLeast = fraction(epsilon.high());
      double atMost = fraction(epsilon.low());
      return new Band(Math.min(likely, Math.min(atLeast, atMost)), likely, Math.max(likely, Math.max(atLeast, atMost)));
    }

    private double fraction(double epsilon) {
      return NeutralPoint.position(
          wingSlope.value(),
          wingCentre.value(),
          fuselageSlope.value(),
          efficiency.value(),
          areaRatio.value(),
          tailSlope.value(),
          epsilon,
          tailCentre.value());
    }
  }

  @Override
  public String toString() {
    return String.format(
        Locale.ROOT, "pitch model, %s, η %.2f", downwashMethod.words(), tailEfficiency);
  }
}
