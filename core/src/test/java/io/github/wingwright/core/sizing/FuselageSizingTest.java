// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import static io.github.wingwright.core.sizing.Considerations.bendingStiffnessAtLeast;
import static io.github.wingwright.core.sizing.Considerations.diameterAtLeast;
import static io.github.wingwright.core.sizing.Considerations.diameterAtMost;
import static io.github.wingwright.core.sizing.Considerations.diameterNear;
import static io.github.wingwright.core.sizing.Considerations.enclosing;
import static io.github.wingwright.core.sizing.Considerations.finenessWithin;
import static io.github.wingwright.core.sizing.Considerations.lengthAtMost;
import static io.github.wingwright.core.sizing.Considerations.packingFraction;
import static io.github.wingwright.core.sizing.Considerations.tailArmAtLeast;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.basis.Bound;
import io.github.wingwright.core.basis.Consideration;
import io.github.wingwright.core.basis.FeasibleRange;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Price;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Sized;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.mass.Materials;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Density;
import io.github.wingwright.core.quantity.FlexuralRigidity;
import io.github.wingwright.core.quantity.Force;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.quantity.Pressure;
import io.github.wingwright.core.quantity.Time;
import io.github.wingwright.core.quantity.Volume;
import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

class FuselageSizingTest {
  /** Skin alone drags: at a fixed length a thinner body drags less. */
  private static final DragArea SKIN = (shape, length, diameter) -> 0.008 * shape.wettedArea(length, diameter);

  private static final Consideration MACHINE = lengthAtMost(Length.millimetres(300));

  private static FuselageSizing hallGlider() {
    return FuselageSizing.of(BodyShape.capsule())
        .considering(MACHINE)
        .considering(finenessWithin(6, 10))
        .considering(diameterNear(2.5, Length.millimetres(4)))
        .considering(enclosing(Volume.cubicCentimetres(60), packingFraction(0.6)));
  }

  @Test
  void the_worked_example_is_what_a_hand_calculation_gives() {
    FeasibleRange range = hallGlider().length(Length.millimetres(300)).diameterRange();
    // Fineness 6 to 10 at 300 mm is 30 to 50 mm. 100 cm³ in a capsule needs π/4·d²·(L − d/3) = V, about 20.8 mm.
    assertThat(range.interval().lower()).isCloseTo(0.030, within(1e-15));
    assertThat(range.interval().upper()).isCloseTo(0.050, within(1e-15));
    assertThat(range.lowerBinding().map(Bound::name)).contains("fineness ratio 6 to 10");
    double d = range.bounds().get(3).interval().lower();
    assertThat(Math.PI / 4 * d * d * (0.3 - d / 3)).isCloseTo(100e-6, within(1e-16));
    assertThat(d * 1000).isCloseTo(20.84, within(0.01));
    assertThat(hallGlider().nearestToTargets().value().diameter().millimetres()).isCloseTo(30, within(1e-9));
  }

  @Test
  void several_considerations_at_once_are_the_same_as_one_after_the_other() {
    FuselageSizing atOnce =
        FuselageSizing.of(BodyShape.capsule())
            .considering(MACHINE, finenessWithin(6, 10), diameterNear(2.5, Length.millimetres(4)))
            .considering(enclosing(Volume.cubicCentimetres(60), packingFraction(0.6)));
    assertThat(atOnce.diameterRange()).hasToString(hallGlider().diameterRange().toString());
    assertThat(atOnce.considering(new Consideration[0]).diameterRange()).hasToString(atOnce.diameterRange().toString());
    assertThat(atOnce.considering(finenessWithin(6, 10), MACHINE)).as("by name").hasToString(atOnce.toString());
  }

  @Test
  void least_drag_takes_the_thin_end_at_a_fixed_length() {
    Sized<Fuselage> body = hallGlider().length(Length.millimetres(300)).leastDrag(SKIN);
    assertThat(body.value().diameter().millimetres()).isCloseTo(30, within(1e-9));
    assertThat(body.isFeasible()).isTrue();
    assertThat(body.findings()).isEmpty();
    assertThat(body.prices()).isEmpty();
  }

  @Test
  void a_thinner_body_than_the_guideline_gains_drag_and_pays_in_stiffness_and_volume() {
    Sized<Fuselage> body =
        hallGlider()
            .length(Length.millimetres(300))
            .draggingAs(SKIN)
            .madeOf(ConsiderationsTest.PLA)
            .judgedBy(new FigureOfMerit("glide time", Time.SECOND, true, (b, drag) -> 0.02 / drag))
            .diameter(Length.millimetres(24));
    assertThat(body.findings()).extracting(Finding::severity).containsExactly(Severity.CAUTION);
    assertThat(body.findings().get(0).message())
        .isEqualTo(
            "The guideline \"fineness ratio 6 to 10\" does not hold for this choice. It would with a diameter of 30 to"
                + " 50 mm.");
    assertThat(body.isFeasible()).isTrue();
    assertThat(price(body, "drag area").relativeChange()).isCloseTo(-0.2, within(1e-9));
    assertThat(price(body, "drag area").isGain()).isTrue();
    assertThat(price(body, "glide time").relativeChange()).isCloseTo(0.25, within(1e-9));
    assertThat(price(body, "glide time").isGain()).isTrue();
    Price stiffness = price(body, "bending stiffness");
    assertThat(stiffness.isGain()).isFalse();
    assertThat(stiffness.relativeChange())
        .as("(24/30)³ for a thin tube, less half a per cent for the wall")
        .isCloseTo(0.8 * 0.8 * 0.8 - 1, within(0.02));
    assertThat(price(body, "volume").isGain()).isFalse();
    assertThat(price(body, "shell mass").isGain()).isTrue();
  }

  private static Price price(Sized<?> sized, String what) {
    return sized.prices().stream().filter(p -> p.what().equals(what)).findFirst().orElseThrow();
  }

  @Test
  void breaking_a_limit_is_allowed_and_serious() {
    Sized<Fuselage> body = hallGlider().length(Length.millimetres(300)).diameter(Length.millimetres(18));
    assertThat(body.isFeasible()).isFalse();
    assertThat(body.findings()).extracting(Finding::severity).containsExactly(Severity.SERIOUS, Severity.CAUTION);
    assertThat(body.findings().get(0).message()).contains("encloses 60 cm³ packed to 0.6");
  }

  @Test
  void a_length_that_the_machine_cannot_make_is_said_in_terms_of_length() {
    Sized<Fuselage> body = hallGlider().length(Length.millimetres(360)).diameter(Length.millimetres(40));
    assertThat(body.isFeasible()).isFalse();
    Finding finding = body.findings().get(0);
    assertThat(finding.subject()).isEqualTo("fuselage length");
    assertThat(finding.message()).endsWith("It would with a length of at most 300 mm.");
    assertThat(body.range().impossible()).extracting(Bound::name).containsExactly("length at most 300 mm");
    assertThat(body.range().toString()).contains("impossible: no value satisfies \"length at most 300 mm\"");
  }

  @Test
  void a_free_length_becomes_the_longest_that_is_feasible() {
    Sized<Fuselage> body = hallGlider().nearestToTargets();
    assertThat(body.value().length().millimetres()).isEqualTo(300);
    assertThat(hallGlider().lengthRange().interval().upper()).isEqualTo(0.3);
    assertThat(hallGlider().considering(tailArmAtLeast(Length.millimetres(120), 0.4)).lengthRange().lowerBinding())
        .map(Bound::name)
        .contains("tail arm at least 120 mm with 40 % of the length outside it");
  }

  @Test
  void a_length_that_only_the_pair_of_two_considerations_bounds_is_found() {
    // Fineness at least 6 and diameter at most 30 mm leave lengths without end; at most 10 stops them at 300 mm.
    FuselageSizing pair =
        FuselageSizing.of(BodyShape.capsule())
            .considering(finenessWithin(6, 10))
            .considering(diameterAtMost(Length.millimetres(30)))
            .considering(diameterAtLeast(Length.millimetres(20)));
    assertThat(pair.lengthRange().interval().lower()).isCloseTo(0.12, within(1e-9));
    assertThat(pair.lengthRange().interval().upper()).isCloseTo(0.3, within(1e-9));
    assertThat(pair.leastDrag(SKIN).value().length().millimetres()).isCloseTo(120, within(1e-3));
  }

  @Test
  void a_length_without_bound_is_asked_for() {
    assertThatIllegalStateException()
        .isThrownBy(() -> FuselageSizing.of(BodyShape.capsule()).considering(finenessWithin(6, 10)).diameterRange())
        .withMessage(
            "fuselage length must be fixed or bounded: give length(…), or consider lengthAtMost(…), was neither");
    assertThatIllegalStateException()
        .isThrownBy(() -> FuselageSizing.of(BodyShape.capsule()).considering(MACHINE).nearestToTargets())
        .withMessageStartingWith("targets must be given");
    assertThatIllegalStateException()
        .isThrownBy(
            () ->
                hallGlider()
                    .judgedBy(new FigureOfMerit("glide time", Time.SECOND, true, (b, drag) -> 1 / drag))
                    .nearestToTargets())
        .withMessage("a figure of merit needs the drag of a body, has none: give draggingAs(…)");
  }

  @Test
  void guidelines_that_clash_give_the_body_that_misses_both_alike_inside_the_limits() {
    FuselageSizing clashing =
        FuselageSizing.of(BodyShape.capsule())
            .considering(lengthAtMost(Length.millimetres(300)))
            .considering(finenessWithin(10, 12))
            .considering(Considerations.asGuideline(diameterAtLeast(Length.millimetres(40))));
    Sized<Fuselage> body = clashing.length(Length.millimetres(300)).leastDrag(SKIN);
    assertThat(body.range().isEmpty()).isTrue();
    assertThat(body.value().diameter().millimetres()).isCloseTo(Math.sqrt(30 * 40), within(1e-9));
    assertThat(body.isFeasible()).isFalse();
    assertThat(body.findings())
        .extracting(Finding::message)
        .contains(
            "\"diameter at least 40 mm\" needs at least 40 mm, \"fineness ratio 10 to 12\" allows 25 to 30 mm: they miss"
                + " each other by 10 mm. To agree, the first comes down to 30 mm or the second goes up to 40 mm. The body"
                + " shown is the least bad one.");
  }

  @Test
  void limits_go_before_guidelines_when_they_clash() {
    Sized<Fuselage> body =
        FuselageSizing.of(BodyShape.capsule())
            .considering(finenessWithin(10, 12))
            .considering(diameterAtLeast(Length.millimetres(40)))
            .length(Length.millimetres(300))
            .leastDrag(SKIN);
    assertThat(body.value().diameter().millimetres()).isCloseTo(40, within(1e-9));
    assertThat(body.findings()).extracting(Finding::severity).doesNotContain(Severity.SERIOUS);
  }

  @Test
  void limits_that_clash_are_serious_and_no_exception() {
    Sized<Fuselage> body =
        FuselageSizing.of(BodyShape.capsule())
            .considering(lengthAtMost(Length.millimetres(100)))
            .considering(enclosing(Volume.litres(2), packingFraction(0.5)))
            .leastDrag(SKIN);
    assertThat(body.isFeasible()).isFalse();
    assertThat(body.findings().get(0).severity()).isEqualTo(Severity.SERIOUS);
    assertThat(body.value().diameter().si()).isPositive();
  }

  @Test
  void a_consideration_can_be_set_aside_kept_provisional_or_taken_away() {
    Consideration stiff = bendingStiffnessAtLeast(FlexuralRigidity.newtonSquareMetres(1e4), ConsiderationsTest.PLA);
    FuselageSizing base = hallGlider().considering(stiff);
    assertThat(base.diameterRange().isEmpty()).isTrue();
    FuselageSizing aside = base.settingAside(stiff, "the first ones are thrown gently");
    assertThat(aside.diameterRange().isEmpty()).isFalse();
    assertThat(aside.diameterRange().toString()).contains("set aside because the first ones are thrown gently");
    assertThat(aside.nearestToTargets().findings())
        .extracting(Finding::message)
        .containsExactly("The consideration is set aside because the first ones are thrown gently.");
    FuselageSizing provisional = hallGlider().provisionally(MACHINE, "the larger machine arrives");
    assertThat(provisional.diameterRange().toString()).contains("provisional until the larger machine arrives");
    assertThat(base.without(stiff.name()).diameterRange().isEmpty()).isFalse();
    assertThatIllegalArgumentException()
        .isThrownBy(() -> base.without("colour"))
        .withMessageContaining("was \"colour\"");
    assertThatIllegalArgumentException().isThrownBy(() -> base.settingAside(stiff, " "));
  }

  @Test
  void another_family_is_weighed_by_its_own_volume_and_its_own_stoutest_body() {
    FuselageSizing capsule = hallGlider().length(Length.millimetres(300));
    FuselageSizing spheroid = capsule.shapedAs(BodyShape.prolateSpheroid());
    double ofCapsule = capsule.diameterRange().bounds().get(3).interval().lower();
    double ofSpheroid = spheroid.diameterRange().bounds().get(3).interval().lower();
    assertThat(ofSpheroid).isGreaterThan(ofCapsule);
    assertThat(ofSpheroid).isCloseTo(Math.sqrt(100e-6 * 6 / Math.PI / 0.3), within(1e-14));
    assertThat(spheroid.diameterRange().toString()).contains("for the shape prolate spheroid");
  }

  @Test
  void the_workings_show_fineness_and_stiffness_from_the_chosen_dimensions() {
    Sized<Fuselage> body = hallGlider().madeOf(ConsiderationsTest.PLA).nearestToTargets();
    List<String> symbols = body.workings().steps().stream().map(Step::symbol).toList();
    assertThat(symbols).contains("L", "d", "f", "S_f", "w", "E", "I", "EI");
    double stiffness =
        body.workings().steps().stream().filter(s -> s.symbol().equals("EI")).findFirst().orElseThrow().value();
    assertThat(stiffness)
        .isCloseTo(ConsiderationsTest.PLA.bendingStiffness(body.value().diameter()).si(), within(1e-15));
    assertThat(body.workings().steps())
        .filteredOn(s -> s instanceof Step.Solution)
        .allSatisfy(s -> assertThat(((Step.Solution) s).residual()).isCloseTo(0, within(1e-9)));
  }

  @Test
  void nonsense_is_refused_by_name() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> hallGlider().length(Length.millimetres(-3)))
        .withMessage("fuselage length must be positive, was -3 mm");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> hallGlider().diameter(Length.millimetres(0)))
        .withMessage("fuselage diameter must be positive, was 0 m");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> hallGlider().length(Length.millimetres(30)).diameter(Length.millimetres(31)))
        .withMessageContaining("capsule");
  }

  @Test
  void a_clash_at_a_free_length_is_explained_over_length_and_diameter() {
    Sized<Fuselage> body =
        FuselageSizing.of(BodyShape.capsule())
            .considering(MACHINE)
            .considering(finenessWithin(6, 14))
            .considering(enclosing(Volume.cubicCentimetres(400), packingFraction(0.6)))
            .leastDrag(SKIN);
    assertThat(body.findings().stream().map(Finding::message))
        .anySatisfy(
            message ->
                assertThat(message)
                    .startsWith("\"length at most 300 mm\", \"fineness ratio 6 to 14\" and \"encloses")
                    .contains("relaxed to 318.7 mm")
                    .endsWith("The body shown is the least bad one."));
  }

  @Test
  void a_clash_at_a_fixed_length_says_at_which_lengths_there_is_none() {
    Sized<Fuselage> body =
        FuselageSizing.of(BodyShape.capsule())
            .considering(finenessWithin(6, 10))
            .considering(diameterAtLeast(Length.millimetres(30)))
            .length(Length.millimetres(150))
            .leastDrag(SKIN);
    assertThat(body.findings().stream().map(Finding::message))
        .anySatisfy(message -> assertThat(message).contains("With the length free they agree: lengths of 180 to 225 mm"));
  }

  @Test
  void a_volume_is_met_by_length_where_the_diameter_is_fixed_and_by_the_cheaper_of_both_where_it_is_free() {
    FuselageSizing base =
        FuselageSizing.of(BodyShape.capsule())
            .considering(enclosing(Volume.cubicCentimetres(60), packingFraction(0.6)))
            .considering(lengthAtMost(Length.millimetres(600)));
    Sized<Fuselage> byLength =
        base.considering(diameterAtLeast(Length.millimetres(25)))
            .considering(diameterAtMost(Length.millimetres(25)))
            .leastDrag(SKIN);
    assertThat(byLength.value().diameter().millimetres()).isCloseTo(25, within(1e-9));
    assertThat(byLength.value().volume().cubicCentimetres()).isCloseTo(100, within(1e-3));
    Sized<Fuselage> byBoth = base.leastDrag(SKIN);
    assertThat(SKIN.dragArea(BodyShape.capsule(), byBoth.value().length().si(), byBoth.value().diameter().si()))
        .as("least skin around a volume is a sphere")
        .isLessThan(SKIN.dragArea(BodyShape.capsule(), byLength.value().length().si(), 0.025));
    assertThat(byBoth.value().finenessRatio()).isCloseTo(1, within(1e-3));
  }

  @Test
  void what_no_body_of_the_family_can_do_is_said_and_does_not_spoil_the_rest() {
    // The hemisphere at the end of every capsule closes at 60°.
    FuselageSizing impossible =
        hallGlider()
            .considering(BodyLayout.afterbodyClosesWithin(Angle.degrees(15)));
    Sized<Fuselage> body = impossible.leastDrag(SKIN);
    assertThat(body.value()).isEqualTo(hallGlider().leastDrag(SKIN).value());
    assertThat(body.isFeasible()).isFalse();
    assertThat(body.findings().stream().map(Finding::message))
        .anySatisfy(m -> assertThat(m).contains("\"tail closes at no more than 15°\" is satisfied by no body"))
        .anySatisfy(m -> assertThat(m).contains("neither with another length nor with another diameter alone"));
    assertThat(impossible.nearestToTargets().value()).isEqualTo(hallGlider().nearestToTargets().value());
    assertThat(impossible.diameter(Length.millimetres(20)).value().length().millimetres()).isEqualTo(300);
  }

  @Test
  void lengths_that_clash_give_a_body_between_them() {
    Sized<Fuselage> body =
        FuselageSizing.of(BodyShape.capsule())
            .considering(MACHINE)
            .considering(Considerations.lengthAtLeast(Length.millimetres(340)))
            .considering(finenessWithin(6, 10))
            .leastDrag(SKIN);
    assertThat(body.value().length().millimetres()).isBetween(300.0, 340.0);
    assertThat(body.value().finenessRatio()).isBetween(6 - 1e-9, 10 + 1e-9);
  }

  @Test
  void the_best_body_is_that_of_the_figure_of_merit_and_a_price_is_told_against_it() {
    FuselageSizing sizing = hallGlider().length(Length.millimetres(300)).draggingAs(SKIN);
    assertThat(sizing.best().value().diameter().millimetres()).isCloseTo(30, within(1e-6));
    // A mission that wants a thick body has its best at the other end: fineness 6 at 300 mm.
    FigureOfMerit thick = new FigureOfMerit("room", Length.METRE, true, (b, drag) -> b.diameter().si());
    Fuselage best = sizing.judgedBy(thick).best().value();
    assertThat(best.diameter().millimetres()).isCloseTo(50, within(1e-4));
    Fuselage chosen = new Fuselage(BodyShape.capsule(), Length.millimetres(300), Length.millimetres(40));
    List<Price> prices = sizing.judgedBy(thick).prices(best, chosen);
    assertThat(prices).extracting(Price::what).containsExactly("drag area", "room", "volume");
    assertThat(prices.get(1).change()).isCloseTo(-0.010, within(1e-7));
    assertThat(prices.get(1).isGain()).isFalse();
  }

  @Test
  void the_workings_cite_the_modulus_of_the_catalogue_and_the_wall_of_the_brief() {
    BodyShell shell = BodyShell.of(Materials.PLA, Length.millimetres(0.8));
    Sized<Fuselage> body = hallGlider().madeOf(shell).nearestToTargets();
    Step modulus = body.workings().steps().stream().filter(s -> s.symbol().equals("E")).findFirst().orElseThrow();
    Step wall = body.workings().steps().stream().filter(s -> s.symbol().equals("w")).findFirst().orElseThrow();
    assertThat(modulus.source()).isEqualTo(Materials.PLA.elasticModulusSource().orElseThrow()).isNotEqualTo(Source.BRIEF);
    assertThat(wall.source()).isEqualTo(Source.BRIEF);
    Source machine = Source.library("two passes of a nozzle");
    assertThat(shell.withWallFrom(machine).wallStep().source()).isEqualTo(machine);
  }

  @Test
  void names_of_considerations_are_rounded_for_reading() {
    Consideration tail = Considerations.tailDeflectionAtMost(Force.newtons(0.0753631), 0.5, 0.02, ConsiderationsTest.PLA);
    assertThat(tail.name()).isEqualTo("tail moves at most 2 % of its arm under 75.4 mN");
    assertThat(lengthAtMost(Length.inches(14.3333333)).name()).isEqualTo("length at most 364.1 mm");
  }

  @Test
  void what_cannot_be_had_leaves_the_longest_length_and_the_range_says_at_which_length_it_is() {
    FuselageSizing sizing =
        FuselageSizing.of(BodyShape.capsule())
            .considering(Considerations.lengthAtMost(Length.millimetres(256)))
            .considering(Considerations.finenessWithin(6, 10))
            .considering(Considerations.enclosing(Volume.cubicCentimetres(60), new PackingFraction(0.6)))
            .considering(new OwnMargin("fills the hoop", (length, diameter) -> diameter / 0.3 - 1.0));

    assertThat(sizing.diameterRange().variable()).isEqualTo("fuselage diameter at length 256 mm");
    assertThat(sizing.diameterRange().impossible()).extracting(Bound::name).containsExactly("fills the hoop");
    assertThat(sizing.length(Length.millimetres(200)).diameterRange().variable()).isEqualTo("fuselage diameter");
    assertThat(sizing.showing(Length.INCH).diameterRange().variable()).endsWith("at length 10.08 in");
  }

  @Test
  void prices_are_told_in_units_of_the_size_of_the_body() {
    Function<NamedUnit<Length>, String> stiffness =
        unit ->
            FuselageSizing.of(BodyShape.capsule())
                .showing(unit)
                .madeOf(BodyShell.of(Length.millimetres(2), Density.kilogramsPerCubicMetre(1900), Pressure.gigapascals(20)))
                .considering(Considerations.finenessWithin(6, 10))
                .length(Length.metres(6))
                .diameter(Length.metres(0.5))
                .prices()
                .stream()
                .filter(price -> price.what().equals("bending stiffness"))
                .findFirst()
                .orElseThrow()
                .toString();
    assertThat(stiffness.apply(Length.METRE)).contains(" kN·m² instead of ");
    assertThat(stiffness.apply(Length.MILLIMETRE)).contains(" N·m² instead of ");
    assertThat(stiffness.apply(Length.FOOT)).contains(" lbf·ft² instead of ");
    assertThat(stiffness.apply(Length.INCH)).contains(" lbf·in² instead of ");
  }
}
