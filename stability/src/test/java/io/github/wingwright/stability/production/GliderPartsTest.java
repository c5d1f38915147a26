// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.production;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import io.github.wingwright.core.basis.Band;
import io.github.wingwright.core.basis.QuantityBand;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.manufacture.BodySolid;
import io.github.wingwright.core.manufacture.BuildVolume;
import io.github.wingwright.core.manufacture.Joint;
import io.github.wingwright.core.manufacture.MeshBox;
import io.github.wingwright.core.manufacture.MeshCheck;
import io.github.wingwright.core.manufacture.Part;
import io.github.wingwright.core.manufacture.PrintBed;
import io.github.wingwright.core.manufacture.PrintList;
import io.github.wingwright.core.manufacture.Template;
import io.github.wingwright.core.manufacture.TriangleMesh;
import io.github.wingwright.core.mass.MassItem;
import io.github.wingwright.core.mass.MassStatement;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.stability.design.Design;
import io.github.wingwright.stability.design.SizingLoop;
import io.github.wingwright.stability.design.TestGlider;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class GliderPartsTest {
  static final Design DESIGN = SizingLoop.of(TestGlider.brief()).madeTo(Length.millimetres(0.5), Mass.grams(0.1)).solve();
  private static final Length TOLERANCE = Length.millimetres(0.05);
  static final GliderParts PARTS = GliderParts.of(DESIGN, TOLERANCE);

  private static Part part(String name) {
    return PARTS.parts().stream().filter(p -> p.name().equals(name)).findFirst().orElseThrow();
  }

  private static BuildVolume cube(double millimetres) {
    Length side = Length.millimetres(millimetres);
    return BuildVolume.box(side, side, side);
  }

  @Test
  void every_part_of_the_glider_is_there_and_of_its_material() {
    assertThat(PARTS.parts()).extracting(Part::name)
        .startsWith("wing, starboard half", "wing, port half", "fuselage", "horizontal tail", "vertical tail");
    assertThat(PARTS.parts()).allMatch(p -> p.material().orElseThrow().equals(DESIGN.brief().material()));
    assertThat(PARTS.parts()).filteredOn(p -> p.name().startsWith("shim of ")).isNotEmpty();
  }

  @Test
  void the_halves_are_mirror_images() {
    assertThat(part("wing, port half").mesh()).isEqualTo(part("wing, starboard half").mesh().mirrored());
  }

  @Test
  void a_half_wing_has_the_volume_of_its_sections_and_a_little_more_for_its_edge() {
    Planform planform = DESIGN.aircraft().airframe().wing().planform();
    var section = DESIGN.aircraft().airframe().wing().section();
    double squares = 0.5 * planform.area().si() * planform.meanAerodynamicChord().si();
    double missing = DESIGN.brief().lineWidth().dividedBy(planform.tipChord()) - section.trailingEdgeThickness();
    assertThat(missing).isPositive();
    // A wedge of half the missing thickness times the chord; the holes at the root take a little again.
    double expected = (section.area() + 0.5 * missing) * squares;
    assertThat(part("wing, starboard half").check().volume().si()).isCloseTo(expected, withinPercentage(1));
  }

  @Test
  void the_body_has_its_volume_less_seat_and_slots() {
    double whole = DESIGN.aircraft().airframe().fuselage().volume().si();
    double made = part("fuselage").check().volume().si();
    assertThat(made).isBetween(0.85 * whole, 0.99 * whole);
    double plain = MeshCheck.of(BodySolid.of(DESIGN.aircraft().airframe().fuselage()).mesh(TOLERANCE)).volume().si();
    assertThat(plain).isCloseTo(whole, withinPercentage(1));
  }

  @Test
  void the_masses_by_mesh_are_those_of_the_statement() {
    MassStatement design = DESIGN.aircraft().masses();
    MassStatement made = PARTS.asMade();
    for (String part : List.of("wing", "fuselage")) {
      MassItem reckoned = design.item(part).orElseThrow();
      MassItem meshed = made.item(part).orElseThrow();
      assertThat(meshed.mass().si()).as(part).isCloseTo(reckoned.mass().si(), withinPercentage(2));
      assertThat(meshed.centreOfGravity().x().millimetres())
          .as(part)
          .isCloseTo(reckoned.centreOfGravity().x().millimetres(), within(1.5));
    }
    assertThat(made.item("horizontal tail").orElseThrow().mass().si())
        .isCloseTo(design.item("horizontal tail").orElseThrow().mass().si(), withinPercentage(1e-6));
    // The fin stands on the tailplane: its lowest 0.42 mm are the plate's.
    assertThat(made.item("vertical tail").orElseThrow().mass().si())
        .isCloseTo(design.item("vertical tail").orElseThrow().mass().si(), withinPercentage(1));
    assertThat(made.item("wing").orElseThrow().centreOfGravity().x().millimetres())
        .isCloseTo(design.item("wing").orElseThrow().centreOfGravity().x().millimetres(), within(0.5));
    assertThat(made.centreOfGravity().y().si()).isZero();
  }

  @Test
  void a_shift_of_the_balance_is_a_finding_with_the_grams_that_mend_it() {
    double moved = PARTS.asMade().centreOfGravity().x().minus(DESIGN.aircraft().centreOfGravity().x()).si();
    double chord = DESIGN.aircraft().airframe().wing().planform().meanAerodynamicChord().si();
    List<Finding> balance = PARTS.findings().stream().filter(f -> f.subject().equals("balance as made")).toList();
    assertThat(balance).hasSize(Math.abs(moved) > 0.01 * chord ? 1 : 0);
    assertThat(balance).allSatisfy(f -> assertThat(f.message()).contains("balances on the mark"));
  }

  @Test
  void next_to_nothing_is_missing_in_the_nose_of_the_parts_as_made() {
    Mass missing = PARTS.missingNoseMass();
    assertThat(missing.grams()).isBetween(0.0, 0.3);
    assertThat(PARTS.findings()).noneMatch(f -> f.subject().equals("balance as made"));
  }

  /** A part is hollow where a point in it is farther than the wall from every triangle: points at random, seeded. */
  @Test
  void the_walls_by_points_at_random_are_those_of_the_masses() {
    double density = DESIGN.brief().material().density().si();
    walls("wing, starboard half", DESIGN.brief().wingShell().wallThickness().si(), 0.5 * mass("wing") / density);
    walls("fuselage", DESIGN.brief().bodyShell().wallThickness().si(), mass("fuselage") / density);
  }

  private static double mass(String item) {
    return DESIGN.aircraft().masses().item(item).orElseThrow().mass().si();
  }

  private static void walls(String name, double wall, double expected) {
    TriangleMesh mesh = GliderParts.of(DESIGN, Length.millimetres(0.1)).parts().stream()
        .filter(p -> p.name().equals(name))
        .findFirst()
        .orElseThrow()
        .mesh();
    MeshSampling sampling = new MeshSampling(mesh, 20_261_125L);
    int many = 12_000;
    double part = sampling.wallPart(wall, many);
    // Three standard deviations of the count, and 2 % for what the formulas leave out.
    double scatter = 3.0 * Math.sqrt((1.0 - part) / (part * many));
    assertThat(part * mesh.volume().si()).as(name).isCloseTo(expected, within((scatter + 0.02) * expected));
  }

  @Test
  void assembled_the_parts_lie_where_the_airframe_has_them() {
    Airframe airframe = DESIGN.aircraft().airframe();
    List<TriangleMesh> meshes = PARTS.assembled();
    MeshBox wing = meshes.get(0).box();
    assertThat(wing.most().y().millimetres()).isCloseTo(airframe.wing().planform().span().millimetres() / 2.0, within(1e-6));
    MeshBox fin = meshes.get(4).box();
    assertThat(fin.most().z().millimetres()).isCloseTo(airframe.tails().get(1).planform().span().millimetres(), within(1e-6));
    assertThat(fin.width().millimetres()).isCloseTo(DESIGN.brief().tailThickness().millimetres(), within(1e-9));
    double end = airframe.fuselage().length().millimetres();
    assertThat(meshes.get(3).box().most().x().millimetres()).isCloseTo(end, within(1e-6));
    // The wing sits in its seat: the lowest line of its root lies on the floor, which lies within the body.
    assertThat(wing.least().z().millimetres()).isBetween(0.0, 0.5 * airframe.fuselage().diameter().millimetres());
  }

  @Test
  void a_smaller_machine_gets_pieces_that_fit_it() {
    PrintList list = PrintPlan.of(DESIGN, cube(120)).list();
    List<Part> pieces = PARTS.pieces(list);
    assertThat(pieces.size()).isGreaterThan(PARTS.parts().size());
    assertThat(pieces).filteredOn(p -> p.name().contains("piece"))
        .allSatisfy(p -> {
          MeshBox box = p.check().box();
          double longest = Math.max(box.length().si(), box.width().si());
          assertThat(longest).as(p.name()).isLessThan(0.12 * Math.sqrt(2.0));
        });
    double whole = part("wing, starboard half").check().volume().si();
    double sum =
        pieces.stream().filter(p -> p.name().startsWith("wing, starboard")).mapToDouble(p -> p.check().volume().si()).sum();
    assertThat(sum).isCloseTo(whole, withinPercentage(3));
  }

  @Test
  void every_piece_lies_on_a_bed_turned_as_the_list_says_beside_what_is_made_alike() {
    for (BuildVolume machine : List.of(
        cube(256), cube(180), cube(120), BuildVolume.cylinder(Length.millimetres(170), Length.millimetres(200)))) {
      PrintList list = PrintPlan.of(DESIGN, machine).list();
      List<Part> pieces = PARTS.pieces(list);
      List<PrintBed> beds = PARTS.beds(list);
      assertThat(beds.stream().flatMap(bed -> bed.parts().stream()).map(Part::name))
          .containsExactlyInAnyOrderElementsOf(pieces.stream().map(Part::name).toList());
      assertThat(beds.get(0).making()).isEqualTo(list.items().get(0).making());
      assertThat(beds.get(0).parts()).allMatch(p -> p.name().startsWith("wing, "));
      assertThat(beds).extracting(PrintBed::making).containsSubsequence(list.items().get(1).making(), "all layers solid");
      for (PrintBed bed : beds) {
        for (Part part : bed.parts()) {
          MeshBox box = part.check().box();
          double height = box.height().si();
          if (bed.making().equals("all layers solid")) {
            assertThat(height).as(part.name()).isLessThan(DESIGN.aircraft().airframe().fuselage().diameter().si());
          } else {
            assertThat(height).as(part.name()).isLessThanOrEqualTo(machine.height().si() + 1e-8);
          }
          Part piece = pieces.stream().filter(p -> p.name().equals(part.name())).findFirst().orElseThrow();
          assertThat(part.check().volume().si()).isCloseTo(piece.check().volume().si(), withinPercentage(1e-6));
        }
      }
    }
  }

  @Test
  void a_body_is_not_cut_where_its_slots_would_leave_loose_strips() {
    // In 250 mm of height the seam would go behind the slots' beginning, where the bending is least.
    BuildVolume machine = BuildVolume.cylinder(Length.millimetres(170), Length.millimetres(250));
    PrintList list = PrintPlan.of(DESIGN, machine).list();
    double slots =
        DESIGN.aircraft().airframe().tails().stream().mapToDouble(t -> t.placement().x().millimetres()).min().orElseThrow();
    Joint joint = list.items().get(1).pieces().joints().get(0);
    assertThat(joint.at().plus(joint.overlap()).millimetres()).isLessThan(slots);
    assertThat(PARTS.pieces(list)).filteredOn(p -> p.name().startsWith("fuselage")).allMatch(p -> inOne(p.mesh()));
  }

  /** Whether every triangle hangs together with the first by their corners. */
  private static boolean inOne(TriangleMesh mesh) {
    int[] group = IntStream.range(0, mesh.vertices()).toArray();
    boolean changed = true;
    while (changed) {
      changed = false;
      for (int t = 0; t < mesh.triangles(); t++) {
        int least = Math.min(group[mesh.corner(t, 0)], Math.min(group[mesh.corner(t, 1)], group[mesh.corner(t, 2)]));
        for (int k = 0; k < 3; k++) {
          changed |= group[mesh.corner(t, k)] != least;
          group[mesh.corner(t, k)] = least;
        }
      }
    }
    return IntStream.of(group).allMatch(g -> g == 0);
  }

  @Test
  void halves_stand_on_their_root_face() {
    double root = DESIGN.aircraft().airframe().wing().planform().rootChord().si();
    List<Part> laid = PARTS.laid(PrintPlan.of(DESIGN, cube(256)).list());
    for (Part half : laid.subList(0, 2)) {
      TriangleMesh mesh = half.mesh();
      double least = Double.POSITIVE_INFINITY;
      double most = Double.NEGATIVE_INFINITY;
      for (int v = 0; v < mesh.vertices(); v++) {
        if (mesh.coordinate(v, 2) < 1e-9) {
          least = Math.min(least, mesh.coordinate(v, 1));
          most = Math.max(most, mesh.coordinate(v, 1));
        }
      }
      assertThat(most - least).as(half.name()).isCloseTo(root, within(0.02 * root));
    }
  }

  @Test
  void in_a_machine_that_holds_everything_nothing_is_cut() {
    assertThat(PARTS.pieces(PrintPlan.of(DESIGN, cube(400)).list())).hasSameSizeAs(PARTS.parts());
  }

  @Test
  void templates_are_there_for_every_part() {
    assertThat(PARTS.templates()).extracting(Template::title)
        .containsExactly("fuselage", "wing ribs", "wing half", "horizontal tail", "vertical tail");
    assertThatThrownBy(() -> GliderParts.of(DESIGN, Length.ZERO)).hasMessageContaining("chordal tolerance");
  }

  @Test
  void a_trim_may_ask_for_less_than_is_built_and_for_more_than_a_shim_gives() {
    QuantityBand<Angle> band = QuantityBand.of(new Band(-3.1, 1.2, 14.4), Angle::degrees);
    assertThat(Shims.angles(band, 2.0)).containsExactly(-5.0, -1.0, 12.5);
    assertThat(Shims.angles(QuantityBand.exactly(Angle.degrees(2.1)), 2.0)).isEmpty();
    assertThat(Shims.steepTrim(Shims.angles(band, 2.0)).orElseThrow().message())
        .contains("12.5° more").contains("2.5° beyond the steepest shim");
    assertThat(Shims.steepTrim(Shims.angles(band, 5.0))).isEmpty();
  }
}
