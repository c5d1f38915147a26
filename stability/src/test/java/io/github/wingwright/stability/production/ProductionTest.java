// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.production;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.EndProfile;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.manufacture.BuildVolume;
import io.github.wingwright.core.manufacture.PrintItem;
import io.github.wingwright.core.manufacture.PrintList;
import io.github.wingwright.core.mass.MassItem;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.sizing.Considerations;
import io.github.wingwright.core.sizing.FuselageSizing;
import io.github.wingwright.stability.design.Briefs;
import io.github.wingwright.stability.design.Design;
import io.github.wingwright.stability.design.SizingLoop;
import io.github.wingwright.stability.design.TestGlider;
import io.github.wingwright.testing.Seeded;
import org.junit.jupiter.api.Test;

class ProductionTest {
  private static final Design DESIGN = SizingLoop.of(TestGlider.brief()).madeTo(Length.millimetres(0.5), Mass.grams(0.1)).solve();

  private static BuildVolume cube(double millimetres) {
    Length side = Length.millimetres(millimetres);
    return BuildVolume.box(side, side, side);
  }

  @Test
  void the_documented_root_moment_holds() {
    assertThat(SpanLoading.rootMoment(1, 0.48, 0.75)).isCloseTo(0.054036, within(5e-7));
  }

  @Test
  void the_moment_along_a_half_wing_is_that_of_an_integral_of_both_loadings() {
    Seeded.points(96, 40, new double[] {0.2, 1.2}, new double[] {0, 0.95})
        .forEach(
            p -> {
              double taper = p[0];
              double eta = p[1];
              int n = 200_000;
              double chord = 0;
              double ellipse = 0;
              double allChord = 0;
              double allEllipse = 0;
              for (int i = 0; i < n; i++) {
                double x = (i + 0.5) / n;
                double c = 1 - (1 - taper) * x;
                double e = Math.sqrt(1 - x * x);
                allChord += c / n;
                allEllipse += e / n;
                if (x > eta) {
                  chord += c * (x - eta) / n;
                  ellipse += e * (x - eta) / n;
                }
              }
              double expected = 0.5 * 0.5 * 3 * (0.5 * chord / allChord + 0.5 * ellipse / allEllipse);
              assertThat(SpanLoading.moment(1, 3, taper, eta)).isCloseTo(expected, within(2e-5));
            });
    assertThat(SpanLoading.moment(1, 0.48, 0.75, 0)).isCloseTo(SpanLoading.rootMoment(1, 0.48, 0.75), within(1e-15));
    assertThat(SpanLoading.moment(1, 0.48, 0.75, 1)).isCloseTo(0, within(1e-15));
  }

  @Test
  void the_list_holds_every_printed_part_once_with_its_mass() {
    PrintList list = PrintPlan.of(DESIGN, cube(300)).list();
    assertThat(list.items()).extracting(PrintItem::name)
        .containsExactly("half wing", "fuselage", "horizontal tail", "vertical tail");
    double printed =
        DESIGN.aircraft().masses().items().stream()
            .filter(i -> !i.name().equals("ballast"))
            .map(MassItem::mass)
            .mapToDouble(Mass::si)
            .sum();
    assertThat(list.mass().si()).isCloseTo(printed, within(1e-12));
    assertThat(list.pieces()).isEqualTo(5);
    assertThat(list.addedMass().si()).isZero();
  }

  @Test
  void a_smaller_machine_takes_more_pieces_and_adds_mass() {
    PrintList here = PrintPlan.of(DESIGN, cube(300)).list();
    PrintList there = PrintPlan.of(DESIGN, cube(150)).list();
    assertThat(there.pieces()).isGreaterThan(here.pieces());
    assertThat(there.addedMass().si()).isPositive();
    assertThat(here.beside(there)).hasSize(5);
    assertThat(here.beside(there).get(0).get(0)).isEqualTo("2 × half wing");
    assertThat(here.beside(there).get(4).get(1)).isEqualTo("5");
  }

  @Test
  void the_table_as_text_quotes_what_holds_commas() {
    String csv = PrintPlan.of(DESIGN, cube(300)).list().toCsv();
    assertThat(csv.lines()).hasSize(5);
    assertThat(csv).startsWith("part,count,material,making,mass of one,lay in the machine,segments,joints\n");
    assertThat(csv).contains("\"1 wall of 0.42 mm, infill 0 %\"").doesNotContain("\r");
  }

  @Test
  void throw_and_impact_are_the_textbook_values() {
    LaunchLoads loads = LaunchLoads.of(DESIGN, Length.millimetres(10));
    double v = DESIGN.brief().launch().speed().si();
    assertThat(loads.deceleration()).isCloseTo(v * v / 0.02, within(1e-9));
    assertThat(loads.impactForce().si()).isCloseTo(DESIGN.aircraft().mass().si() * v * v / 0.02, within(1e-9));
    double stall = DESIGN.glide().stallSpeed().si();
    double weight = DESIGN.aircraft().mass().si() * 9.80665;
    // The load factor of the throw is the square of its speed over the stall speed.
    assertThat(loads.launchLift().si() / weight).isCloseTo(v * v / (stall * stall), within(2e-3));
  }

  @Test
  void a_boom_thinner_than_its_pod_is_held_where_it_has_least_to_spare() {
    int boom = 0;
    for (double pod : new double[] {3, 5, 8}) {
      Design design = SizingLoop.of(Briefs.balanced().fuselage(w ->
          FuselageSizing.of(BodyShape.podAndBoom(EndProfile.tangentOgive(), 2, pod, 1, 0.3))
              .considering(Considerations.lengthAtMost(Length.millimetres(400)))
              .length(Length.millimetres(320)).diameter(Length.millimetres(24)))).solve();
      LaunchLoads loads = LaunchLoads.of(design);
      Fuselage body = design.aircraft().airframe().fuselage();
      double from = design.aircraft().airframe().wing().quarterChordX().si();
      double to = design.aircraft().airframe().tails().stream().mapToDouble(t -> t.placement().x().si()).min().orElseThrow();
      double wall = design.brief().bodyShell().wallThickness().si();
      double least = Double.POSITIVE_INFINITY;
      for (int i = 0; i <= 400; i++) {
        double x = from + (to - from) * i / 400;
        double d = body.widthAt(Length.metres(x)).si();
        // A thin ring of its middle line: I = π·t·d_m³/8, outermost at d/2; half of 12 MPa across the layers.
        double mean = d - wall;
        double carries = 6e6 * Math.PI * wall * mean * mean * mean / 8 / (0.5 * d);
        least = Math.min(least, carries / loads.bodyBending(x + 1e-9));
      }
      double said = loads.loads().stream().filter(l -> l.cause().equals("tails and nose at launch"))
          .mapToDouble(LaunchLoads.Load::reserve).min().orElseThrow();
      assertThat(said).as("pod of %s", pod).isBetween(0.85 * least, 1.15 * least);
      boom += loads.loads().stream().anyMatch(l -> l.place().startsWith("boom at")) ? 1 : 0;
    }
    assertThat(boom).isPositive();
  }

  @Test
  void a_softer_nose_asks_less_of_the_wing_root() {
    LaunchLoads hard = LaunchLoads.of(DESIGN, Length.millimetres(0.5));
    LaunchLoads soft = LaunchLoads.of(DESIGN, Length.millimetres(20));
    assertThat(hard.findings()).anySatisfy(f -> {
      assertThat(f.severity()).isEqualTo(Severity.CAUTION);
      assertThat(f.message()).contains("It would hold with a nose that gives way by");
    });
    assertThat(soft.findings()).isEmpty();
    assertThat(hard.loads()).hasSameSizeAs(soft.loads());
  }

  @Test
  void the_joints_of_surfaces_are_held_against_throw_and_impact() {
    PrintPlan small = PrintPlan.of(DESIGN, cube(150));
    long joints =
        small.list().items().stream()
            .filter(i -> !i.name().equals("fuselage"))
            .mapToLong(i -> i.pieces().joints().size())
            .sum();
    assertThat(joints).isPositive();
    assertThat(small.loads().onJoints(small.list()))
        .filteredOn(l -> l.cause().contains("outer piece"))
        .hasSize((int) joints)
        .allSatisfy(l -> assertThat(l.value()).isPositive());
    assertThat(PrintPlan.of(DESIGN, cube(300)).loads().onJoints(PrintPlan.of(DESIGN, cube(300)).list())).isEmpty();
    // Half a wing with its mass spread like its width: beyond the middle of a rectangle lies an eighth of mass times length.
    PrintItem half = small.list().items().get(0);
    double seam = half.pieces().joints().get(0).at().si();
    double rest = half.pieces().part().length().si() - seam;
    double rough = 0.5 * half.mass().si() * rest * rest / half.pieces().part().length().si();
    double forward =
        small.loads().onJoints(small.list()).stream().filter(l -> l.cause().contains("outer")).findFirst().orElseThrow().value();
    assertThat(forward / (2 * small.loads().deceleration())).isBetween(0.7 * rough, 1.1 * rough);
  }

  @Test
  void the_cautions_carry_the_numbers_of_the_design() {
    Cautions cautions = Cautions.of(DESIGN);
    double v = DESIGN.brief().launch().speed().si();
    assertThat(cautions.kineticEnergy().si()).isCloseTo(0.5 * DESIGN.aircraft().mass().si() * v * v, within(1e-12));
    assertThat(cautions.noseRadius().millimetres()).isCloseTo(9, within(1e-4));
    assertThat(cautions.findings()).isEmpty();
    assertThat(cautions.lines()).hasSize(6);
    assertThat(cautions.lines().get(0)).startsWith("Thrown at 7 m/s, this glider carries ").contains("9 mm radius");
    assertThat(cautions.lines().get(5)).contains("licensed engineers");
  }
}
