// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.core.aerodynamics.LiftSlope;
import io.github.wingwright.core.aerodynamics.LiftingLine;
import io.github.wingwright.core.aerodynamics.LiftingLineSolution;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Workings;
import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.stability.derivatives.FinLateral;
import io.github.wingwright.stability.derivatives.LateralEstimate;
import io.github.wingwright.stability.derivatives.LateralGuidelines;
import io.github.wingwright.stability.derivatives.LatticeDerivatives;
import io.github.wingwright.stability.derivatives.TailPitchRate;
import io.github.wingwright.stability.derivatives.WingLateral;
import io.github.wingwright.stability.derivatives.WingPitchRate;
import io.github.wingwright.stability.dynamics.LongitudinalDerivatives;
import io.github.wingwright.stability.lattice.LatticeSolution;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * The derivatives of an aircraft by the handbook, from its shape, whatever its layout: what the equations of motion need.
 *
 * <pre>{@code
 * AirframeDerivatives d = AirframeDerivatives.of(model, centreOfGravity, 0.6, 0.04);
 * LongitudinalForces.of(flight, mass, d.longitudinal());
 * LateralForces.of(flight, d.lateral().total());
 * }</pre>
 *
 * <p>In pitch they are those of the {@link PitchModel}: C_Lα = a_w + t, C_mα = −K_n·C_Lα, and the rates
 *
 * <pre>{@code
 * C_mq = C_mq,w − 2·η_h·V_g·a_h·l_c        C_mα̇ = −2·η_h·V_g·a_h·l_c·ε_α
 * }</pre>
 *
 * <p>with the tail's arm l_c = l_g/c̄ = h_h − h and volume coefficient V_g = (S_h/S)·l_c from the centre of gravity, and the
 * wing's own part from {@link WingPitchRate}. C_mα̇ comes from the time the downwash needs to reach the tail; a lattice in
 * steady flow does not have it, and takes this one ({@link #longitudinal(LatticeSolution)}). A foreplane stands ahead of the
 * wing's wake: none.
 *
 * <p>In roll and yaw each fin is a fin, and so is each of two; a V-tail is a fin of its area whose slope is
 * K·a_N·sin²Γ and whose force acts at the height z_r + s/sin Γ, with z_r the height of its root and s the distance of its
 * panels' mean chord from it along the panel: the same moment as that of two forces normal to the panels.
 */
public final class AirframeDerivatives {
  private static final Source NO_FIN = Source.library("a layout without a tail that works in yaw");

  private final PitchModel model;
  private final PitchTerms terms;
  private final Placement centreOfGravity;
  private final double lift;
  private final double profileDrag;
  private final Step pitchDamping;
  private final Step downwashLag;

  private AirframeDerivatives(PitchModel model, Placement centreOfGravity, double lift, double profileDrag) {
    this.model = model;
    this.centreOfGravity = centreOfGravity;
    this.lift = lift;
    this.profileDrag = profileDrag;
    terms = model.terms();
    Step h = terms.fraction("centre of gravity", centreOfGravity.x());
    Step arm = Step.of(TailPitchRate.ARM, terms.tailCentre, h);
    Step volume = Step.of(TailPitchRate.VOLUME, terms.areaRatio, arm);
    pitchDamping = Step.of(TailPitchRate.PITCH_DAMPING, terms.efficiency, volume, terms.tailSlope, arm);
    Step behind =
        terms.hasForeplane
            ? Step.given("downwash gradient, ahead of the wing's wake", "ε_α", 0.0, Source.DEFINITION)
            : terms.downwash;
    downwashLag = Step.of(TailPitchRate.DOWNWASH_LAG, terms.efficiency, volume, terms.tailSlope, arm, behind);
  }

  /**
   * The derivatives of an aircraft.
   *
   * @param model the aircraft in pitch
   * @param centreOfGravity its centre of gravity
   * @param liftCoefficient C_L of the steady flight
   * @param profileDrag drag coefficient without induced drag
   * @return the derivatives
   */
  public static AirframeDerivatives of(
      PitchModel model, Placement centreOfGravity, double liftCoefficient, double profileDrag) {
    Objects.requireNonNull(model, "model");
    Objects.requireNonNull(centreOfGravity, "centre of gravity");
    Door.finite(centreOfGravity.x(), "centre of gravity");
    Door.finite(liftCoefficient, "lift coefficient");
    Door.within(profileDrag, 0.0, 2.0, "profile drag coefficient");
    return new AirframeDerivatives(model, centreOfGravity, liftCoefficient, profileDrag);
  }

  /**
   * Longitudinal derivatives, power off.
   *
   * @return derivatives in stability axes
   */
  public LongitudinalDerivatives longitudinal() {
    Planform p = model.airframe().wing().planform();
    double a = terms.wingSlope.value() + terms.tailOnWing.value();
    LiftingLineSolution line = LiftingLine.of(p).sectionLiftSlope(sectionSlope(true)).solve();
    double drag = profileDrag + line.at(lift).inducedDragCoefficient();
    // Induced drag is a parabola over lift: the difference over any distance is its slope in the middle.
    double dragSlope =
        a * (line.at(lift + 0.5).inducedDragCoefficient() - line.at(lift - 0.5).inducedDragCoefficient());
    double margin = model.staticMargin(centreOfGravity.x()).value();
    double behindRoot = centreOfGravity.x().minus(model.airframe().wing().placement().x()).si();
    double wing = terms.wingSlope.value();
    return LongitudinalDerivatives.ofLiftAndDrag(
        lift,
        drag,
        0.0,
        a,
        dragSlope,
        -margin * a,
        WingPitchRate.lift(p, wing, behindRoot) + tailRate(1.0),
        WingPitchRate.moment(p, wing, behindRoot) + pitchDamping.value(),
        angleRateLift(),
        downwashLag.value());
  }

  /**
   * Longitudinal derivatives of a lattice, completed with what a lattice in steady flow does not have: C_Lα̇ and C_mα̇ of the
   * downwash that reaches the tail late.
   *
   * @param solution the lattice at the angle of the steady flight, with moments about the centre of gravity
   * @return derivatives in stability axes
   */
  public LongitudinalDerivatives longitudinal(LatticeSolution solution) {
    return LatticeDerivatives.longitudinal(solution, profileDrag, 0.0, angleRateLift(), downwashLag.value());
  }

  private double angleRateLift() {
    return terms.hasForeplane ? 0.0 : tailRate(terms.downwash.value());
  }

  /** Lift of the tail due to pitch rate, or with the gradient of the downwash as factor due to the rate of angle. */
  private double tailRate(double factor) {
    double arm = terms.tailCentre.value() - terms.fraction("centre of gravity", centreOfGravity.x()).value();
    double volume = terms.areaRatio.value() * arm;
    return TailPitchRate.liftDueToPitchRate(terms.efficiency.value(), volume, terms.tailSlope.value()) * factor;
  }

  /**
   * Pitch damping of the tail.
   *
   * @return the step of its C_mq; zero without a tail
   */
  public Step tailPitchDamping() {
    return pitchDamping;
  }

  /**
   * Pitching moment due to the rate of angle of attack.
   *
   * @return the step of C_mα̇; zero without a tail behind the wing
   */
  public Step downwashLag() {
    return downwashLag;
  }

  /**
   * Lateral derivatives, part by part.
   *
   * @return the nine derivatives with the contribution of each part and its findings
   */
  public LateralEstimate.Result lateral() {
    Airframe airframe = model.airframe();
    Wing wing = airframe.wing();
    Planform p = wing.planform();
    double span = p.span().si();
    LateralEstimate estimate =
        LateralEstimate.of(
            new LateralEstimate.WingShape(
                terms.wingSlope.value(),
                sectionSlope(true),
                p.aspectRatio(),
                p.taperRatio(),
                p.equivalentDihedral().si(),
                p.sweepAt(0.25).si(),
                lift,
                profileDrag,
                wing.placement().z().si() / span));
    Fuselage body = airframe.fuselage();
    double section = 0.25 * Math.PI * body.diameter().si() * body.diameter().si();
    estimate =
        estimate.body(
            new LateralEstimate.Body(
                body.volume().si() / (p.area().si() * span),
                ApparentMass.munkFactor(Math.max(1.0, body.finenessRatio())),
                section / p.area().si(),
                body.diameter().si() / span,
                body.diameter().si() / span));
    return estimate.fins(fins(airframe)).solve();
  }

  private List<LateralEstimate.FinShape> fins(Airframe airframe) {
    List<LateralEstimate.FinShape> shapes = new ArrayList<>();
    for (Tail tail : airframe.yawTails()) {
      shapes.add(tail.role() == Tail.Role.V ? vShape(airframe, tail) : finShape(airframe, tail));
    }
    return shapes;
  }

  private LateralEstimate.FinShape finShape(Airframe airframe, Tail fin) {
    Wing wing = airframe.wing();
    Planform p = fin.planform();
    double ratio = p.area().si() / wing.planform().area().si();
    double aspect = FinLateral.BODY_REFLECTION * p.aspectRatio();
    if (TailArrangement.of(airframe) == TailArrangement.T_TAIL) {
      double plate = airframe.horizontalTail().map(t -> t.planform().span().si()).orElse(0.0);
      aspect = FinLateral.endPlateAspectRatio(aspect, plate / p.span().si());
    }
    double height = fin.placement().z().plus(p.meanAerodynamicChordY()).minus(centreOfGravity.z()).si();
    return shape(airframe, fin, LiftSlope.helmbold(sectionSlope(false), aspect), ratio, height, ratio);
  }

  private LateralEstimate.FinShape vShape(Airframe airframe, Tail tail) {
    Wing wing = airframe.wing();
    double angle = tail.planform().equivalentDihedral().si();
    double along = tail.planform().meanAerodynamicChordY().si() / Math.cos(angle);
    double height = tail.placement().z().minus(centreOfGravity.z()).si() + along / Math.sin(angle);
    double slope = -VTail.sideForceSlope(VTail.ANTISYMMETRIC_FACTOR, terms.panelSlope(tail).value(), angle);
    double ratio = tail.areaInOwnPlane().si() / wing.planform().area().si();
    return shape(airframe, tail, slope, ratio, height, ratio * Math.sin(angle) * Math.sin(angle));
  }

  /** Sidewash and dynamic pressure as the handbook has them for one fin of this upright area over the wing's. */
  private LateralEstimate.FinShape shape(
      Airframe airframe, Tail tail, double slope, double ratio, double height, double upright) {
    Planform wing = airframe.wing().planform();
    double span = wing.span().si();
    double low = -airframe.wing().placement().z().si() / airframe.fuselage().diameter().si();
    double sidewash =
        FinLateral.sidewashFactor(
            upright, wing.sweepAt(0.25).si(), Math.max(-0.5, Math.min(0.5, low)), wing.aspectRatio());
    double arm = tail.quarterChordX().minus(centreOfGravity.x()).si();
    return new LateralEstimate.FinShape(slope, ratio, arm / span, height / span, sidewash);
  }

  private double sectionSlope(boolean ofWing) {
    PitchChoices.Section section = ofWing ? model.choices.wingSection : model.choices.tailSection;
    return section == null ? 2.0 * Math.PI : section.polar().liftSlope(section.reynolds()).likely();
  }

  /**
   * The workings of the rates.
   *
   * @return pitch damping of the tail and downwash lag
   */
  public Workings workings() {
    return Workings.of(List.of(pitchDamping, downwashLag));
  }

  /**
   * The lateral derivatives held against guidelines, each with how much to change: the fin's area in numbers, dihedral in
   * degrees.
   *
   * @param guidelines the ranges
   * @return findings, heaviest first
   */
  public List<Finding> findings(LateralGuidelines guidelines) {
    Objects.requireNonNull(guidelines, "guidelines");
    LateralEstimate.Result estimate = lateral();
    return guidelines.check(estimate.total()).stream().map(f -> withAmount(f, guidelines, estimate)).toList();
  }

  private Finding withAmount(Finding finding, LateralGuidelines guidelines, LateralEstimate.Result estimate) {
    boolean yaw = finding.subject().startsWith("directional");
    String amount =
        yaw
            ? finAmount(guidelines.guidelines().get(0).range(), estimate)
            : dihedralAmount(guidelines.guidelines().get(1).range(), estimate);
    String message = finding.message() + amount;
    return finding.range().isPresent()
        ? Finding.of(finding.severity(), finding.subject(), message, finding.value().orElse(0.0),
            finding.range().get(), finding.unit(), finding.source())
        : Finding.of(finding.severity(), finding.subject(), message, finding.source());
  }

  /** Yaw due to sideslip grows with the fin's area; the rest stays. */
  private String finAmount(Interval range, LateralEstimate.Result estimate) {
    double total = estimate.total().yawSideslip();
    double fins =
        estimate.contributions().stream()
            .filter(c -> c.part().startsWith("fin"))
            .mapToDouble(c -> c.values().yawSideslip())
            .sum();
    double area = model.airframe().yawTails().stream().mapToDouble(t -> t.areaInOwnPlane().si()).sum();
    double wanted = range.clamp(total);
    double factor = (wanted - (total - fins)) / fins;
    return fins > 0.0 && factor > 0.0
        ? String.format(
            Locale.ROOT,
            " From %s to %s of fin at this arm reaches the range.",
            Area.SQUARE_CENTIMETRE.format(area, 3),
            Area.SQUARE_CENTIMETRE.format(area * factor, 3))
        : "";
  }

  private String dihedralAmount(Interval range, LateralEstimate.Result estimate) {
    double missing = range.clamp(estimate.total().rollSideslip()) - estimate.total().rollSideslip();
    double perRadian =
        WingLateral.dihedralEffect(terms.wingSlope.value(), 1.0, model.airframe().wing().planform().taperRatio());
    double change = Math.toDegrees(missing / perRadian);
    return String.format(
        Locale.ROOT, " %.1f° %s reaches the range.", Math.abs(change), change > 0.0 ? "more dihedral" : "less dihedral");
  }

  /**
   * What to know about them.
   *
   * @return findings, heaviest first
   */
  public List<Finding> findings() {
    List<Finding> findings = new ArrayList<>(lateral().findings());
    if (model.airframe().yawTails().isEmpty()) {
      findings.add(
          Finding.of(
              Severity.SERIOUS,
              "directional stability",
              "There is no fin and no V-tail: nothing turns the nose into the wind but sweep. Add a fin, or fins at the tips.",
              NO_FIN));
    }
    if (!terms.hasTail) {
      findings.add(
          Finding.of(
              Severity.NOTE,
              "pitch damping",
              "Without a tail only the wing damps pitch, by strips. Hold it against the lattice.",
              Source.library("strips of thin aerofoils")));
    }
    return Finding.inOrderOfWeight(findings);
  }

  @Override
  public String toString() {
    return String.format(
        Locale.ROOT, "derivatives at C_L %.2f: C_mq,h %.2f, C_mα̇ %.2f", lift, pitchDamping.value(), downwashLag.value());
  }
}
