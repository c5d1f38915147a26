// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.mass;

import static io.github.wingwright.core.quantity.Length.metres;
import static io.github.wingwright.core.quantity.Length.millimetres;
import static io.github.wingwright.core.quantity.Mass.grams;
import static io.github.wingwright.core.quantity.Mass.kilograms;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.basis.Band;
import io.github.wingwright.core.basis.QuantityBand;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.testing.PublishedValues;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

class MassStatementTest {
  private static final MassItem WING =
      MassItem.of("wing", grams(22), Placement.at(millimetres(95), millimetres(10)))
          .withMassBetween(grams(20), grams(25))
          .withOwnInertia(Inertia.ofBox(grams(22), millimetres(45), millimetres(400), millimetres(3)));
  private static final MassItem BODY =
      MassItem.of("fuselage", grams(14), Placement.at(millimetres(140), Length.ZERO)).withMassBetween(grams(13), grams(15));
  private static final MassItem TAIL = MassItem.of("tail", grams(3), Placement.at(millimetres(275), millimetres(5)));
  private static final MassStatement GLIDER = MassStatement.of(WING, BODY, TAIL);

  @Test
  void the_course_example_balances_where_it_prints() {
    List<MassItem> items = new ArrayList<>();
    double moment = 0;
    for (PublishedValues.Row row : PublishedValues.beside(MassStatementTest.class, "six-seat-twin.csv")) {
      items.add(
          MassItem.of(
              row.text("component"),
              Mass.pounds(row.number("weight_lb")),
              Placement.at(Length.feet(row.number("arm_ft")), Length.ZERO)));
      moment += row.number("moment_lb_ft");
    }
    MassStatement twin = MassStatement.of(items);
    assertThat(twin.mass().pounds()).isCloseTo(3114, within(1e-9));
    double x = twin.centreOfGravity().x().feet();
    assertThat(x * 3114).isCloseTo(44214.7, within(0.05)); // as printed
    assertThat(x).isCloseTo(moment / 3114, within(1e-9)).isCloseTo(14.2, within(0.05));
    assertThat((x - 13.85) / 4.3).isCloseTo(0.08, within(0.005)); // printed as 8 %
  }

  @Test
  void a_dumb_bell_has_the_inertia_of_its_reduced_mass() {
    // Two points of masses m and M, d apart: I = m·M/(m + M)·d² about the common centre.
    MassStatement bell =
        MassStatement.of(
            MassItem.of("a", kilograms(2), Placement.at(metres(1), Length.ZERO)),
            MassItem.of("b", kilograms(3), Placement.at(metres(4), Length.ZERO)));
    double reduced = 2.0 * 3.0 / 5.0 * 9.0;
    assertThat(bell.centreOfGravity().x().metres()).isCloseTo(2.8, within(1e-15));
    assertThat(bell.inertia().pitch().si()).isCloseTo(reduced, within(1e-14));
    assertThat(bell.inertia().yaw().si()).isCloseTo(reduced, within(1e-14));
    assertThat(bell.inertia().roll().si()).isZero();
  }

  @Test
  void a_box_in_pieces_has_the_inertia_of_the_box() {
    List<MassItem> pieces = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      for (int j = 0; j < 5; j++) {
        for (int k = 0; k < 3; k++) {
          pieces.add(
              MassItem.of(
                      "piece " + i + j + k,
                      kilograms(0.1),
                      new Placement(metres(7 + 0.5 * i), metres(0.4 * j), metres(-1 + 0.2 * k)))
                  .withOwnInertia(Inertia.ofBox(kilograms(0.1), metres(0.5), metres(0.4), metres(0.2))));
        }
      }
    }
    Inertia whole = Inertia.ofBox(kilograms(6), metres(2), metres(2), metres(0.6));
    Inertia sum = MassStatement.of(pieces).inertia();
    assertThat(sum.roll().si()).isCloseTo(whole.roll().si(), within(1e-12));
    assertThat(sum.pitch().si()).isCloseTo(whole.pitch().si(), within(1e-12));
    assertThat(sum.yaw().si()).isCloseTo(whole.yaw().si(), within(1e-12));
    assertThat(sum.productXy().si()).isCloseTo(0, within(1e-12));
    assertThat(sum.productXz().si()).isCloseTo(0, within(1e-12));
    assertThat(sum.productYz().si()).isCloseTo(0, within(1e-12));
  }

  @Test
  void a_cloud_of_points_gives_the_defining_sums() {
    Random random = new Random(42);
    double[][] points = new double[50][4];
    List<MassItem> items = new ArrayList<>();
    double m = 0;
    double[] centre = new double[3];
    for (int i = 0; i < points.length; i++) {
      points[i] = new double[] {random.nextDouble(), random.nextDouble() * 2, random.nextGaussian(), random.nextDouble()};
      items.add(
          MassItem.of(
              "point " + i,
              kilograms(points[i][3]),
              new Placement(metres(points[i][0]), metres(points[i][1]), metres(points[i][2]))));
      m += points[i][3];
      for (int k = 0; k < 3; k++) {
        centre[k] += points[i][3] * points[i][k];
      }
    }
    double[] sums = new double[6];
    for (double[] p : points) {
      double x = p[0] - centre[0] / m;
      double y = p[1] - centre[1] / m;
      double z = p[2] - centre[2] / m;
      double[] parts = {y * y + z * z, x * x + z * z, x * x + y * y, x * y, x * z, y * z};
      for (int k = 0; k < 6; k++) {
        sums[k] += p[3] * parts[k];
      }
    }
    Inertia inertia = MassStatement.of(items).inertia();
    double[] got = {
      inertia.roll().si(), inertia.pitch().si(), inertia.yaw().si(), inertia.productXy().si(), inertia.productXz().si(),
      inertia.productYz().si()
    };
    for (int k = 0; k < 6; k++) {
      assertThat(got[k]).isCloseTo(sums[k], within(1e-11));
    }
  }

  @Test
  void the_centre_of_gravity_band_is_the_extreme_over_all_corners_of_the_masses() {
    Random random = new Random(7);
    for (int trial = 0; trial < 50; trial++) {
      List<MassItem> items = new ArrayList<>();
      for (int i = 0; i < 6; i++) {
        double low = random.nextDouble();
        items.add(
            MassItem.of(
                "item " + i,
                QuantityBand.of(
                    new Band(low, low + 0.3 * random.nextDouble(), low + 0.3 + random.nextDouble()), Mass::kilograms),
                Placement.at(metres(random.nextDouble()), Length.ZERO)));
      }
      double least = Double.POSITIVE_INFINITY;
      double greatest = Double.NEGATIVE_INFINITY;
      for (int corner = 0; corner < 64; corner++) {
        double mass = 0;
        double moment = 0;
        for (int i = 0; i < 6; i++) {
          Band band = items.get(i).massBand().si();
          double m = (corner >> i & 1) == 0 ? band.low() : band.high();
          mass += m;
          moment += m * items.get(i).centreOfGravity().x().si();
        }
        least = Math.min(least, moment / mass);
        greatest = Math.max(greatest, moment / mass);
      }
      Band band = MassStatement.of(items).centreOfGravityBand().si();
      assertThat(band.low()).isCloseTo(least, within(1e-14));
      assertThat(band.high()).isCloseTo(greatest, within(1e-14));
    }
  }

  @Test
  void masses_drawn_from_their_ranges_stay_within_all_bands_and_come_near_their_ends() {
    List<MassItem> items = List.of(
        item("wing", 15, 13, 18, 110, 30).withOwnInertia(Inertia.ofBox(grams(15), millimetres(80), millimetres(480), millimetres(5))),
        item("body", 8, 7, 10, 130, 0).withOwnInertia(Inertia.ofTube(grams(8), millimetres(256), millimetres(22))),
        item("tail", 5, 4, 6, 240, 5).withOwnInertia(Inertia.ofBox(grams(5), millimetres(50), millimetres(150), millimetres(1))),
        item("ballast", 20, 16, 24, 6, -2));
    MassStatement statement = MassStatement.of(items);
    Band[] bands = {
      statement.massBand().si(), statement.centreOfGravityBand().si(), statement.rollInertiaBand().si(),
      statement.pitchInertiaBand().si(), statement.yawInertiaBand().si()
    };
    double[] least = {9, 9, 9, 9, 9};
    double[] most = new double[5];
    Random random = new Random(2617);
    for (int n = 0; n < 20_000; n++) {
      double[] m = new double[4];
      double[] sums = new double[4];
      for (int i = 0; i < 4; i++) {
        Band band = items.get(i).massBand().si();
        // Half of them at the corners of the ranges, the others within.
        double u = n % 2 == 0 ? random.nextInt(2) : random.nextDouble();
        m[i] = band.low() + u * (band.high() - band.low());
        sums[0] += m[i];
        sums[1] += m[i] * items.get(i).centreOfGravity().x().si();
        sums[2] += m[i] * items.get(i).centreOfGravity().z().si();
      }
      double cx = sums[1] / sums[0];
      double cz = sums[2] / sums[0];
      double[] got = {sums[0], cx, 0, 0, 0};
      for (int i = 0; i < 4; i++) {
        MassItem item = items.get(i);
        double x = Math.pow(item.centreOfGravity().x().si() - cx, 2);
        double z = Math.pow(item.centreOfGravity().z().si() - cz, 2);
        double own = m[i] / item.mass().si();
        got[2] += m[i] * z + own * item.ownInertia().roll().si();
        got[3] += m[i] * (x + z) + own * item.ownInertia().pitch().si();
        got[4] += m[i] * x + own * item.ownInertia().yaw().si();
      }
      for (int k = 0; k < 5; k++) {
        least[k] = Math.min(least[k], got[k]);
        most[k] = Math.max(most[k], got[k]);
      }
    }
    for (int k = 0; k < 5; k++) {
      double slack = 1e-12 * most[k];
      // The corners are drawn, so that the ends are met, not only kept.
      assertThat(least[k]).as("band %s", k).isCloseTo(bands[k].low(), within(slack));
      assertThat(most[k]).as("band %s", k).isCloseTo(bands[k].high(), within(slack));
      assertThat(bands[k].likely()).isBetween(bands[k].low(), bands[k].high());
    }
  }

  private static MassItem item(String name, double likely, double low, double high, double x, double z) {
    return MassItem.of(name, grams(likely), Placement.at(millimetres(x), millimetres(z))).withMassBetween(grams(low), grams(high));
  }

  @Test
  void an_item_that_may_weigh_nothing_leaves_no_inertia_at_the_low_end() {
    MassStatement statement = MassStatement.of(
        MassItem.of("trim", grams(1), Placement.at(millimetres(10), Length.ZERO)).withMassBetween(Mass.ZERO, grams(2)),
        MassItem.of("tab", grams(1), Placement.at(millimetres(30), Length.ZERO)).withMassBetween(Mass.ZERO, grams(2)));
    assertThat(statement.pitchInertiaBand().low().si()).isZero();
    assertThat(statement.pitchInertiaBand().high().si()).isCloseTo(2 * statement.pitchInertiaBand().likely().si(), within(1e-18));
  }

  @Test
  void masses_add_up_with_their_ranges() {
    assertThat(GLIDER.mass().grams()).isCloseTo(39, within(1e-12));
    assertThat(GLIDER.massBand().low().si()).isCloseTo(0.036, within(1e-15));
    assertThat(GLIDER.massBand().high().si()).isCloseTo(0.043, within(1e-15));
    assertThat(GLIDER.massBand().likely()).isEqualTo(GLIDER.mass());
    assertThat(MassStatement.of(TAIL).massBand().isExact()).isTrue();
    assertThat(MassStatement.of(TAIL).centreOfGravityBand().isExact()).isTrue();
  }

  @Test
  void the_workings_give_the_numbers_bit_for_bit() {
    Step total = GLIDER.massStep();
    assertThat(total.value()).isEqualTo(GLIDER.mass().si());
    assertThat(GLIDER.centreOfGravityStep(total).value()).isEqualTo(GLIDER.centreOfGravity().x().si());
    assertThat(GLIDER.pitchInertiaStep(total).value()).isEqualTo(GLIDER.inertia().pitch().si());
    assertThat(GLIDER.rollInertiaStep(total).value()).isEqualTo(GLIDER.inertia().roll().si());
    assertThat(GLIDER.yawInertiaStep(total).value()).isEqualTo(GLIDER.inertia().yaw().si());
  }

  @Test
  void the_workings_reach_down_to_how_an_items_mass_came_about() {
    Step origin = Step.given("weighed wing", "m_w", grams(22), Source.BRIEF);
    Step total = GLIDER.massStep(Map.of("wing", origin));
    assertThat(total.inputs().get(0)).isSameAs(origin);
    assertThat(GLIDER.centreOfGravityStep(total).inputs().get(0).inputs().get(0)).isSameAs(origin);
    refuses(() -> GLIDER.massStep(Map.of("wing", total)), "origin of wing must give its mass 22 g, gave m = 0.039 kg");
    refuses(() -> GLIDER.massStep(Map.of("keel", origin)), "origin must be of one of [wing, fuselage, tail], was \"keel\"");
    refuses(() -> GLIDER.centreOfGravityStep(origin), "total must be a step of this statement's mass, was m_w");
  }

  @Test
  void items_are_added_replaced_and_taken_out() {
    MassItem lead = MassItem.of("nose ballast", grams(5), Placement.at(millimetres(8), Length.ZERO));
    MassStatement heavier = GLIDER.with(lead);
    assertThat(heavier.items()).hasSize(4);
    assertThat(GLIDER.items()).hasSize(3);
    assertThat(heavier.with(lead.movedAft(millimetres(4))).item("nose ballast").orElseThrow().centreOfGravity().x())
        .isEqualTo(millimetres(8).plus(millimetres(4)));
    assertThat(heavier.without("nose ballast")).isEqualTo(GLIDER).hasSameHashCodeAs(GLIDER);
    refuses(() -> GLIDER.without("keel"), "item must be one of [wing, fuselage, tail], was \"keel\"");
  }

  @Test
  void it_prints_as_a_table() {
    assertThat(GLIDER.toString().lines())
        .containsExactly(
            "item                           mass [g]     x [mm]     y [mm]     z [mm]",
            "wing                                 22         95          0         10",
            "fuselage                             14        140          0          0",
            "tail                                  3        275          0          5",
            "total                                39        125          0      6.026",
            "may lie within              36 to 43 g, x 122.4 to 127 mm");
    assertThat(GLIDER.table(Mass.OUNCE, Length.INCH).toString()).startsWith("item                          mass [oz]     x [in]");
    assertThat(GLIDER.with(MassItem.of("a name that is much too long for its column", grams(1), Placement.at(Length.ZERO, Length.ZERO)))
            .toString().lines())
        .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(75));
  }

  @Test
  void what_is_no_statement_is_refused() {
    refuses(() -> MassStatement.of(), "a mass statement needs at least one item, got none");
    refuses(() -> MassStatement.of(TAIL, TAIL), "names of mass items must differ, \"tail\" came twice");
    refuses(
        () -> MassStatement.of(MassItem.of("air", Mass.ZERO, Placement.at(Length.ZERO, Length.ZERO))),
        "total mass must be positive, was 0 kg");
    refuses(() -> MassItem.of("tail", grams(-1), TAIL.centreOfGravity()), "mass of tail must not be negative, was -1 g");
    refuses(
        () -> MassItem.of("tail", QuantityBand.of(new Band(-1, 0, 1), Mass::kilograms), TAIL.centreOfGravity()),
        "mass of tail must not be negative, was -1 kg");
    refuses(() -> MassItem.of("", grams(1), TAIL.centreOfGravity()), "name of a mass item must be said, was blank");
    refuses(
        () -> MassItem.of("tail", grams(1), Placement.at(metres(1).times(Double.POSITIVE_INFINITY), Length.ZERO)),
        "x of tail must be finite, was ∞");
  }

  private static void refuses(org.assertj.core.api.ThrowableAssert.ThrowingCallable call, String start) {
    assertThatIllegalArgumentException().isThrownBy(call).withMessageStartingWith(start);
  }
}
