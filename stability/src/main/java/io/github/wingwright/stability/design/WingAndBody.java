// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import io.github.wingwright.core.basis.Sized;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Workings;
import io.github.wingwright.core.geometry.AirfoilSection;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.TaperedPlanform;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.sizing.FuselageFormulas;
import io.github.wingwright.core.sizing.WingFormulas;

/** Wing and fuselage as they are made, and the station of the wing. */
final class WingAndBody {
  private static final Source SECTION = Source.taken("shape of the section");

  private final DesignBrief brief;
  private final Making making;
  private final Sized<Wing> sizedWing;
  private final Sized<Fuselage> sizedFuselage;
  private final QuickDesign quick;
  private final QuickDesign.Balance balance;
  private final DesignNumbers numbers;

  WingAndBody(SizedGlider sized, DesignNumbers numbers) {
    brief = sized.brief();
    making = sized.making();
    sizedWing = sized.wing();
    sizedFuselage = sized.fuselage();
    quick = sized.quick();
    balance = sized.balance();
    this.numbers = numbers;
  }

  Planform wing() {
    Workings w = sizedWing.workings();
    AirfoilSection section = sizedWing.value().section();
    Step thickness = Step.given("thickness over chord of " + section.name(), "τ", section.maximumThickness(), SECTION);
    numbers.origin(thickness);
    // The sizing is handed the section as its brief is; here it is known that its thickness is read from the section.
    w.steps().stream().filter(step -> !step.symbol().equals("τ")).forEach(numbers::origin);
    Planform sized = sizedWing.value().planform();
    Step b = numbers.keep("b", making.made(find(w, "b")));
    Step root = numbers.keep("c_r", making.made(find(w, "c_r")));
    Step tip = numbers.keep("c_t", making.made(find(w, "c_t")));
    numbers.add("wing.span_m", b);
    Step area = numbers.add("wing.area_m2", Step.of("wing reference area", "S", DesignFormulas.AREA_FROM_CHORDS, b, root, tip));
    numbers.name("S", area);
    numbers.name("A", numbers.add("wing.aspect_ratio", Step.of(TaperedPlanform.ASPECT_RATIO, b, area)));
    numbers.add("wing.root_chord_m", root);
    numbers.add("wing.tip_chord_m", tip);
    Step taper = numbers.add("wing.taper_ratio", Step.of(DesignFormulas.TAPER_RATIO, tip, root));
    numbers.name("c̄", numbers.add("wing.mean_aerodynamic_chord_m", Step.of(TaperedPlanform.MEAN_AERODYNAMIC_CHORD, root, taper)));
    numbers.keep("ȳ", Step.of(TaperedPlanform.MEAN_AERODYNAMIC_CHORD_POSITION, b, taper));
    numbers.add("wing.maximum_thickness_m", Step.of(WingFormulas.MAXIMUM_THICKNESS, thickness, root));
    numbers.keep("Λ", Step.given("sweep of the quarter-chord line", "Λ", sized.sweepAt(0.25), Source.BRIEF));
    numbers.add("wing.dihedral_rad", Step.given("dihedral", "Γ", sized.equivalentDihedral(), Source.BRIEF));
    numbers.keep("Λ_½", Step.of(DesignFormulas.HALF_CHORD_SWEEP, numbers.step("Λ"), numbers.step("A"), root, tip));
    Planform made =
        Planform.tapered(Length.metres(b.value()), Length.metres(root.value()), Length.metres(tip.value()))
            .withSweep(0.25, sized.sweepAt(0.25))
            .withDihedral(sized.panels().get(0).dihedral());
    double washout = sized.panels().stream().mapToDouble(p -> p.washout().si()).sum();
    return washout == 0.0 ? made : made.withWashout(Angle.radians(washout));
  }

  Fuselage fuselage() {
    Workings w = sizedFuselage.workings();
    w.steps().forEach(numbers::origin);
    Fuselage sized = sizedFuselage.value();
    Step length = numbers.add("fuselage.length_m", making.made(find(w, "L")));
    Step diameter = numbers.add("fuselage.diameter_m", making.made(find(w, "d")));
    numbers.name("L", length);
    numbers.name("d", diameter);
    numbers.add("fuselage.fineness_ratio", Step.of(FuselageFormulas.FINENESS_RATIO, length, diameter));
    numbers.add("fuselage.volume_m3", sized.shape().volumeStep(length, diameter));
    numbers.add("fuselage.wetted_area_m2", sized.shape().wettedAreaStep(length, diameter));
    return new Fuselage(sized.shape(), Length.metres(length.value()), Length.metres(diameter.value()));
  }

  Wing station(Planform planform, Fuselage fuselage) {
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
    Step made = numbers.add("wing.leading_edge_x_m", making.madePlace(station));
    numbers.keep("x_w", Step.of(DesignFormulas.QUARTER_CHORD, made, numbers.step("c_r"), numbers.step("ȳ"), numbers.step("Λ")));
    numbers.keep("x_c", Step.of(DesignFormulas.LEADING_EDGE, numbers.step("x_w"), numbers.step("c̄")));
    return Wing.of(planform, sizedWing.value().section())
        .placedAt(Placement.at(Length.metres(made.value()), PartGeometry.wingHeight(fuselage)));
  }

  private double marginWithBallast() {
    double chord = sizedWing.value().planform().meanAerodynamicChord().si();
    return (balance.neutralPoint() - balance.centreOfGravity()) / chord;
  }

  private static Step find(Workings workings, String symbol) {
    return workings.steps().stream()
        .filter(s -> s.symbol().equals(symbol))
        .reduce((first, last) -> last)
        .orElseThrow(() -> new IllegalStateException("workings have no \"" + symbol + "\""));
  }
}
