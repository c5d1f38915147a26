// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.Panel;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.mass.Materials;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Moment;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

class SegmentationTest {
  private static final EnumSet<Lay> UPRIGHT = EnumSet.of(Lay.UPRIGHT);

  private static Length mm(double value) {
    return Length.millimetres(value);
  }

  private static BuildVolume cube(double side) {
    return BuildVolume.box(mm(side), mm(side), mm(side));
  }

  /** A hollow beam 80 mm wide and 6 mm deep. */
  private static SlenderPart beam(double length, DoubleUnaryOperator bending) {
    return beam(length, 80, 6, bending);
  }

  private static SlenderPart beam(double length, double width, double depth, DoubleUnaryOperator bending) {
    List<SlenderPart.Station> stations = new ArrayList<>();
    for (int i = 0; i <= 100; i++) {
      double x = length * i / 100;
      stations.add(
          new SlenderPart.Station(
              mm(x), Length.ZERO, mm(width), mm(depth), Moment.newtonMetres(bending.applyAsDouble(x / length))));
    }
    return new SlenderPart("beam", Materials.PLA, mm(0.42), stations);
  }

  @Test
  void a_part_that_fits_stays_in_one_piece_and_needs_no_change() {
    Segmentation one = Segmentation.of(beam(170, x -> 1 - x), cube(180), UPRIGHT);
    assertThat(one.segments()).hasSize(1);
    assertThat(one.joints()).isEmpty();
    assertThat(one.addedMass().si()).isZero();
    assertThat(one.changesForOnePiece()).isEmpty();
    assertThat(one.findings()).isEmpty();
  }

  @Test
  void it_takes_the_fewest_segments_with_room_for_the_tongue() {
    // 175 mm and its tongue of 5 mm just fill 180 mm: 355 mm go in two, 356 mm in three.
    assertThat(Segmentation.of(beam(354, x -> 0.01), cube(180), UPRIGHT).segments()).hasSize(2);
    assertThat(Segmentation.of(beam(356, x -> 0.01), cube(180), UPRIGHT).segments()).hasSize(3);
  }

  @Test
  void the_joint_of_a_cantilever_lies_as_far_out_as_the_machine_allows() {
    Segmentation two = Segmentation.of(beam(240, x -> 0.1 * (1 - x) * (1 - x)), cube(180), UPRIGHT);
    assertThat(two.segments()).hasSize(2);
    assertThat(two.joints().get(0).at().millimetres()).isBetween(173.0, 175.0);
    assertThat(two.segments().get(1).from()).isEqualTo(two.joints().get(0).at());
    assertThat(two.segments().get(1).to().millimetres()).isCloseTo(240, within(1e-9));
  }

  @Test
  void a_joint_keeps_clear_of_what_else_is_cut_into_the_part_where_the_machine_leaves_a_way() {
    SlenderPart beam = beam(240, x -> 0.1 * (1 - x) * (1 - x));
    Segmentation free = Segmentation.of(beam.jointedUpTo(mm(150)), cube(180), UPRIGHT);
    Joint joint = free.joints().get(0);
    assertThat(free.segments()).hasSize(2);
    assertThat(joint.at().plus(joint.overlap()).millimetres()).isBetween(140.0, 150.0);
    // Its other piece would be too long: it is cut all the same.
    Segmentation forced = Segmentation.of(beam.jointedUpTo(mm(40)), cube(180), UPRIGHT);
    assertThat(forced.segments()).hasSize(2);
    assertThat(forced.joints().get(0).at().millimetres()).isBetween(173.0, 175.0);
    assertThatThrownBy(() -> beam.jointedUpTo(mm(241)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("end of the joints of beam");
  }

  @Test
  void no_split_into_as_many_segments_bends_its_worst_joint_less() {
    DoubleUnaryOperator bumps = x -> 0.05 * (1.2 + Math.sin(17 * x) * Math.cos(5 * x));
    SlenderPart part = beam(480, bumps);
    Segmentation three = Segmentation.of(part, cube(180), UPRIGHT);
    assertThat(three.segments()).hasSize(3);
    double worst = three.joints().stream().mapToDouble(j -> Math.abs(j.bending().si())).max().orElseThrow();
    Random random = new Random(95);
    int tried = 0;
    while (tried < 20_000) {
      double a = 480 * random.nextDouble();
      double b = a + (480 - a) * random.nextDouble();
      if (a + 5 > 180 || b - a + 5 > 180 || 480 - b > 180) {
        continue;
      }
      tried++;
      double here =
          Math.max(part.at(mm(a)).bending().si(), part.at(mm(b)).bending().si());
      // The grid is a two-hundredth of the part.
      assertThat(worst).isLessThan(here + 0.002);
    }
  }

  @Test
  void what_would_make_it_one_piece_does() {
    SlenderPart part = beam(270, x -> 0.01);
    Segmentation two = Segmentation.of(part, cube(180), EnumSet.of(Lay.UPRIGHT, Lay.DIAGONAL));
    // Across the bed of 180 mm the 80 mm wide beam has √2·180 mm − 80 mm, less than along it.
    assertThat(two.changesForOnePiece())
        .containsExactly(
            "beam shorter by 90 mm, to 180 mm",
            "a machine that is 270 mm high, 90 mm more than this one",
            "a square bed of 247.5 mm, with the part lying across it");
    BuildVolume higher = BuildVolume.box(mm(180), mm(180), mm(270));
    assertThat(Segmentation.of(part, higher, UPRIGHT).segments()).hasSize(1);
    BuildVolume wider = BuildVolume.box(mm(247.5), mm(247.5), mm(180));
    assertThat(Segmentation.of(part, wider, EnumSet.of(Lay.DIAGONAL)).segments()).hasSize(1);
    assertThat(Segmentation.of(beam(240, x -> 0.01), cube(180), UPRIGHT).changesForOnePiece())
        .contains("printed lying on edge, where it fits, not standing on end");
  }

  @Test
  void a_part_too_wide_cannot_be_made_and_says_why() {
    Segmentation none = Segmentation.of(beam(240, x -> 0.01), BuildVolume.box(mm(50), mm(50), mm(300)), UPRIGHT);
    assertThat(none.isPossible()).isFalse();
    assertThat(none.findings().get(0).severity()).isEqualTo(Severity.SERIOUS);
    assertThat(none.findings().get(0).message()).contains("section of 80 mm × 6 mm does not go into the machine");
  }

  @Test
  void a_joint_that_carries_too_little_says_how_much() {
    Segmentation weak = Segmentation.of(beam(240, x -> 20), cube(180), UPRIGHT);
    assertThat(weak.joints().get(0).reserve()).isLessThan(1);
    assertThat(weak.findings()).anySatisfy(f -> {
      assertThat(f.severity()).isEqualTo(Severity.SERIOUS);
      assertThat(f.subject()).isEqualTo("joint of the beam");
    });
  }

  @Test
  void a_stronger_bending_takes_a_heavier_joint() {
    Joint light = Segmentation.of(beam(240, x -> 0.01), cube(180), UPRIGHT).joints().get(0);
    Joint strong = Segmentation.of(beam(240, x -> 1.0), cube(180), UPRIGHT).joints().get(0);
    assertThat(strong.capacity().si()).isGreaterThan(2.0);
    assertThat(strong.added().si()).isGreaterThan(light.added().si());
  }

  @Test
  void a_body_is_as_wide_as_its_diameter_and_narrow_at_its_ends() {
    SlenderPart body =
        SlenderPart.body(
            new Fuselage(BodyShape.capsule(), mm(256), mm(22)), Materials.FOAMING_PLA, mm(0.84), x -> 0.0);
    assertThat(body.width().millimetres()).isCloseTo(22, within(1e-9));
    assertThat(body.at(Length.ZERO).width().millimetres()).isZero();
    assertThat(body.at(mm(128)).depth().millimetres()).isCloseTo(22, within(1e-9));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> body.at(mm(300)))
        .withMessageStartingWith("place on fuselage must be 0 m to 256 mm, was 300 mm");
  }

  @Test
  void the_box_of_a_twisted_wing_with_a_thick_edge_is_that_of_its_solid_everywhere_along_it() {
    Planform planform = Planform.symmetric(mm(120), List.of(
        new Panel(mm(250), mm(48), Angle.degrees(-7), Angle.ZERO, Angle.degrees(3)),
        new Panel(mm(150), mm(30), Angle.degrees(12), Angle.ZERO, Angle.degrees(2))));
    Wing wing = Wing.of(planform, new Lens(0.05, 0.02));
    SlenderPart part = SlenderPart.half("half wing", wing, Materials.PLA, mm(0.42), mm(0.6), y -> 0.0);
    WingSolid solid = WingSolid.half(planform, new Lens(0.05, 0.02)).trailingEdgeAtLeast(mm(0.6));
    assertThat(part.depth()).isGreaterThan(part.at(Length.ZERO).depth());
    for (double[] ends : new double[][] {{0, 400}, {0, 90}, {90, 250}, {180, 320}, {300, 400}}) {
      SlenderPart piece = part.between(mm(ends[0]), mm(ends[1]));
      MeshBox box = solid.between(mm(ends[0]), mm(ends[1])).mesh(mm(0.002)).box();
      // A piece has its edge thickened for its own narrowest chord, the plan for that of the half: never less.
      assertThat(box.length().millimetres()).as("from %s", ends[0]).isLessThanOrEqualTo(piece.width().millimetres() + 1e-3);
      assertThat(box.height().millimetres()).as("from %s", ends[0]).isLessThanOrEqualTo(piece.depth().millimetres() + 1e-3);
      double spare = ends[1] == 400 ? 0.01 : 0.7;
      assertThat(box.length().millimetres()).isCloseTo(piece.width().millimetres(), within(spare));
      assertThat(box.height().millimetres()).isCloseTo(piece.depth().millimetres(), within(4 * spare));
    }
  }

  /** It was reckoned along its panel, and stood over the rim of the bed by what it leans. */
  @Test
  void a_piece_of_a_wing_with_dihedral_leans_as_it_stands_on_its_end() {
    Planform planform = Planform.symmetric(mm(88.5), List.of(
        new Panel(mm(240), mm(66.5), Angle.ZERO, Angle.degrees(12), Angle.ZERO)));
    Wing wing = Wing.of(planform, new Lens(0.06, 0.02));
    SlenderPart part = SlenderPart.half("half wing", wing, Materials.PLA, mm(0.42), y -> 0.05 - 0.1 * y);
    WingSolid solid = WingSolid.half(planform, new Lens(0.06, 0.02));
    double along = 1 / Math.cos(Math.toRadians(12));
    for (double[] ends : new double[][] {{0, 240}, {0, 60}, {60, 180}, {150, 240}}) {
      SlenderPart piece = part.between(mm(along * ends[0]), mm(Math.min(along * ends[1], part.length().millimetres())));
      MeshBox box = solid.between(mm(ends[0]), mm(ends[1])).mesh(mm(0.002)).box();
      assertThat(box.height().millimetres()).as("from %s", ends[0]).isCloseTo(piece.depth().millimetres(), within(0.02));
      assertThat(box.width().millimetres()).isLessThanOrEqualTo(piece.boxLength().millimetres());
    }
    // A bed that holds the section across its corners, not the section of a piece that leans.
    Segmentation cut = Segmentation.of(part, BuildVolume.box(mm(70), mm(70), mm(70)), UPRIGHT);
    assertThat(cut.segments().get(0).to().millimetres()).isLessThan(50);
    assertThat(cut.part().lean(mm(50), 0.01).millimetres()).isCloseTo(10 * Math.sin(Math.toRadians(12)), within(0.03));
  }

  @Test
  void the_box_of_a_body_that_is_swept_up_and_marked_is_that_of_its_solid() {
    Fuselage body = new Fuselage(BodyShape.capsule().upswept(3, Angle.degrees(8), 0.5), mm(400), mm(30));
    SlenderPart part = SlenderPart.body(body, Materials.PLA, mm(0.84), x -> 0.0).markedAt(mm(150));
    BodySolid solid = BodySolid.of(body).markedAt(mm(150));
    for (double[] ends : new double[][] {{0, 400}, {100, 200}, {200, 400}, {320, 400}}) {
      SlenderPart piece = part.between(mm(ends[0]), mm(ends[1]));
      MeshBox box = solid.between(mm(ends[0]), mm(ends[1])).mesh(mm(0.01)).box();
      // Between stations 10 mm apart the plan is straight.
      assertThat(box.height().millimetres()).isCloseTo(piece.depth().millimetres(), within(0.05));
    }
    assertThat(part.between(mm(100), mm(200)).depth().millimetres()).isCloseTo(30.4, within(1e-9));
    assertThat(part.depth().millimetres()).isGreaterThan(31);
  }

  @Test
  void joints_from_both_ends_of_a_short_piece_do_not_meet_in_it() {
    // Swept by 1 : 1 over 250 mm on a bed of 90 mm: the section takes most of it, pieces are short.
    SlenderPart swept = new SlenderPart("beam", Materials.PLA, mm(0.42), List.of(
        new SlenderPart.Station(Length.ZERO, Length.ZERO, mm(80), mm(8), Moment.newtonMetres(1)),
        new SlenderPart.Station(mm(250), mm(250), mm(310), mm(6), Moment.ZERO)));
    Segmentation pieces = Segmentation.of(swept, cube(90), UPRIGHT);
    assertThat(pieces.segments()).hasSizeGreaterThan(4);
    for (int i = 0; i < pieces.joints().size(); i++) {
      double before = pieces.segments().get(i).length().si();
      double after = pieces.segments().get(i + 1).length().si();
      assertThat(pieces.joints().get(i).overlap().si()).isPositive().isLessThanOrEqualTo(0.45 * Math.min(before, after) + 1e-12);
    }
  }

  @Test
  void the_tongue_of_a_wing_carries_what_its_flat_section_does_across_its_layers() {
    Joint tongue = Joint.lightest(beam(240, 60, 2.4, x -> 1e-4), mm(100));
    assertThat(tongue.kind()).isEqualTo(JointKind.TONGUE);
    assertThat(tongue.size().millimetres()).isCloseTo(0.4 * 2.4, within(1e-12));
    double exact = 0.5 * 50e6 * 0.28 * 0.06 * Math.pow(0.4 * 2.4e-3, 2) / 6;
    assertThat(tongue.capacity().si()).isCloseTo(exact, within(1e-9 * exact));
    assertThat(tongue.added().si()).isCloseTo(1240 * 0.28 * 0.06 * 0.4 * 2.4e-3 * tongue.overlap().si(), within(1e-12));
  }

  @Test
  void the_documented_moments_hold() {
    assertThat(JointStrength.shellMoment(10e6, 1e-3, 20e-3, 20e-3)).isCloseTo(Math.PI, within(1e-12));
    assertThat(JointStrength.tubeMoment(900e6, 4e-3, 3e-3)).isCloseTo(3.8656, within(5e-5));
  }

  @Test
  void the_thin_ellipse_is_within_a_few_percent_of_its_integral() {
    // Z = (2/h)·∮ t·z² ds over the outline.
    for (double ratio : new double[] {1, 2, 5, 15}) {
      double b = 0.5 * ratio;
      double h = 0.5;
      double sum = 0;
      int n = 100_000;
      for (int i = 0; i < n; i++) {
        double a = 2 * Math.PI * (i + 0.5) / n;
        double ds = Math.hypot(b * Math.sin(a), h * Math.cos(a)) * 2 * Math.PI / n;
        sum += h * h * Math.sin(a) * Math.sin(a) * ds;
      }
      double exact = sum * 1e-3 / h;
      assertThat(JointStrength.shellMoment(1, 1e-3, 2 * h, 2 * b) / exact).isBetween(0.85, 1.15);
    }
  }
}
