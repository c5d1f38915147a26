// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.mass.Materials;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.testing.Seeded;
import io.github.wingwright.testing.ThreeMfRules;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class PrintBedTest {
  private static final Orientation ON_EDGE = new Orientation(Lay.ON_EDGE, Angle.ZERO, Angle.ZERO, Angle.degrees(90));

  private static Length mm(double value) {
    return Length.millimetres(value);
  }

  /** A plate, long along y: its chord across, its thickness up. */
  private static Part plate(String name, double length, double chord, double tip) {
    Planform planform = Planform.tapered(mm(2.0 * length), mm(chord), mm(tip));
    return Part.of(name, PlateSolid.of(planform, mm(2)).between(mm(length), mm(2.0 * length)).mesh(mm(0.05)));
  }

  private static double[] size(Part part) {
    MeshBox box = part.check().box();
    return new double[] {box.length().millimetres(), box.width().millimetres(), box.height().millimetres()};
  }

  @Test
  void a_part_lies_as_its_orientation_says() {
    Part plate = plate("plate", 60, 20, 20);
    assertThat(size(plate.lying(Orientation.STRAIGHT, 1))).containsExactly(new double[] {60, 20, 2}, within(1e-9));
    assertThat(size(plate.lying(Orientation.UPRIGHT, 1))).containsExactly(new double[] {2, 20, 60}, within(1e-9));
    assertThat(size(plate.lying(ON_EDGE, 1))).containsExactly(new double[] {60, 2, 20}, within(1e-9));
    Orientation across = new Orientation(Lay.STRAIGHT, Angle.degrees(90), Angle.ZERO, Angle.ZERO);
    assertThat(size(plate.lying(across, 1))).containsExactly(new double[] {20, 60, 2}, within(1e-9));
    Orientation slant = new Orientation(Lay.DIAGONAL, Angle.degrees(30), Angle.ZERO, Angle.ZERO);
    double cos = Math.cos(Math.PI / 6.0);
    assertThat(size(plate.lying(slant, 1))).containsExactly(new double[] {60 * cos + 10, 30 + 20 * cos, 2}, within(1e-9));
    Orientation raised = new Orientation(Lay.RAISED, Angle.ZERO, Angle.degrees(30), Angle.ZERO);
    assertThat(size(plate.lying(raised, 1))).containsExactly(new double[] {60 * cos + 1, 20, 30 + 2 * cos}, within(1e-9));
    assertThat(size(plate.lying(Orientation.STRAIGHT, 0))).containsExactly(new double[] {20, 60, 2}, within(1e-9));
    assertThat(size(plate.lying(Orientation.STRAIGHT, 2))).containsExactly(new double[] {2, 60, 20}, within(1e-9));
    assertThatThrownBy(() -> plate.lying(Orientation.STRAIGHT, 3)).isInstanceOf(IndexOutOfBoundsException.class);
    for (Part laid : List.of(plate.lying(slant, 1), plate.lying(raised, 1), plate.lying(Orientation.UPRIGHT, 1))) {
      MeshBox box = laid.check().box();
      assertThat(List.of(box.least().x().si(), box.least().y().si(), box.least().z().si())).allMatch(x -> Math.abs(x) < 1e-12);
      assertThat(laid.check().volume().si()).isCloseTo(plate.check().volume().si(), within(1e-18));
    }
  }

  @Test
  void what_stands_stands_on_its_flatter_end() {
    Part half = plate("half", 60, 30, 20);
    Part port = Part.of("port", half.mesh().mirrored());
    for (Part standing : List.of(half.lying(Orientation.UPRIGHT, 1), port.lying(Orientation.UPRIGHT, 1))) {
      assertThat(chordAt(standing, 0.0)).isCloseTo(30.0, within(1e-9));
      assertThat(chordAt(standing, 60.0)).isCloseTo(20.0, within(1e-9));
    }
    // Both ends round: the nose down. Cut, it stands on the cut.
    BodySolid capsule = BodySolid.of(new Fuselage(BodyShape.noseCylinderCone(1, 3), mm(200), mm(20)));
    Part whole = Part.of("body", capsule.mesh(mm(0.05))).lying(Orientation.UPRIGHT, 0);
    assertThat(chordAt(whole, 20.0)).isGreaterThan(chordAt(whole, 180.0));
    Part fore = Part.of("nose", capsule.between(Length.ZERO, mm(100)).mesh(mm(0.05))).lying(Orientation.UPRIGHT, 0);
    assertThat(chordAt(fore, 0.0)).isGreaterThan(19.0);
  }

  /** Extent along y of the vertices within 3 mm of a height [mm]. */
  private static double chordAt(Part part, double height) {
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (int v = 0; v < part.mesh().vertices(); v++) {
      if (Math.abs(1e3 * part.mesh().coordinate(v, 2) - height) < 3.0) {
        least = Math.min(least, 1e3 * part.mesh().coordinate(v, 1));
        most = Math.max(most, 1e3 * part.mesh().coordinate(v, 1));
      }
    }
    return most - least;
  }

  @Test
  void nothing_is_laid_outside_the_bed_or_on_another_part() {
    Seeded.points(61206, 40, new double[] {60, 300}, new double[] {60, 300}, new double[] {0, 1}, new double[] {1, 20}, new double[] {0, 1e6})
        .forEach(p -> {
          boolean round = p[2] < 0.3;
          BuildVolume machine = round ? BuildVolume.cylinder(mm(p[0]), mm(200)) : BuildVolume.box(mm(p[0]), mm(p[1]), mm(200));
          double limit = round ? p[0] * 0.8 : Math.min(p[0], p[1]);
          List<Part> parts = new ArrayList<>();
          Random random = new Random((long) p[4]);
          for (int i = 0; i < p[3]; i++) {
            double length = limit * (0.1 + 0.89 * random.nextDouble());
            Part plate = plate("plate " + i, length, limit * (0.05 + 0.5 * random.nextDouble()), 4 + 4 * random.nextDouble());
            parts.add(plate.lying(random.nextBoolean() ? Orientation.STRAIGHT : ON_EDGE, 1).of(Materials.PLA));
          }
          List<PrintBed> beds = PrintBed.fill(machine, "solid", parts);
          assertThat(beds.stream().flatMap(bed -> bed.parts().stream()).map(Part::name).toList())
              .containsExactlyInAnyOrderElementsOf(parts.stream().map(Part::name).toList());
          beds.forEach(bed -> inside(bed, p[0], round ? p[0] : p[1], round));
        });
  }

  private static void inside(PrintBed bed, double width, double depth, boolean round) {
    for (int i = 0; i < bed.parts().size(); i++) {
      Part part = bed.parts().get(i);
      assertThat(part.material()).isPresent();
      TriangleMesh mesh = part.mesh();
      for (int v = 0; v < mesh.vertices(); v++) {
        double x = 1e3 * mesh.coordinate(v, 0);
        double y = 1e3 * mesh.coordinate(v, 1);
        assertThat(x).as("%s", part).isBetween(-1e-4, width + 1e-4);
        assertThat(y).as("%s", part).isBetween(-1e-4, depth + 1e-4);
        assertThat(mesh.coordinate(v, 2)).isBetween(-1e-9, 0.2);
        assertThat(round ? Math.hypot(x - 0.5 * width, y - 0.5 * width) : 0.0).isLessThan(0.5 * width + 1e-4);
      }
      for (int j = 0; j < i; j++) {
        assertThat(apart(part.check().box(), bed.parts().get(j).check().box())).as("%s", bed).isGreaterThan(4.9999);
      }
    }
  }

  /** The wider of the gaps along x and y between two boxes [mm]. */
  private static double apart(MeshBox a, MeshBox b) {
    double x = Math.max(b.least().x().minus(a.most().x()).millimetres(), a.least().x().minus(b.most().x()).millimetres());
    double y = Math.max(b.least().y().minus(a.most().y()).millimetres(), a.least().y().minus(b.most().y()).millimetres());
    return Math.max(x, y);
  }

  @Test
  void a_long_part_lies_along_the_longer_side_whichever_was_given_first() {
    Part plate = plate("plate", 90, 20, 20).lying(Orientation.STRAIGHT, 1);
    Part wide = PrintBed.fill(BuildVolume.box(mm(100), mm(50), mm(50)), "solid", List.of(plate)).get(0).parts().get(0);
    assertThat(size(wide)).containsExactly(new double[] {90, 20, 2}, within(1e-9));
    assertThat(wide.check().box().least().x().millimetres()).isCloseTo(5.0, within(1e-9));
    Part deep = PrintBed.fill(BuildVolume.box(mm(50), mm(100), mm(50)), "solid", List.of(plate)).get(0).parts().get(0);
    assertThat(size(deep)).containsExactly(new double[] {20, 90, 2}, within(1e-9));
    assertThat(deep.check().box().least().x().millimetres()).isCloseTo(15.0, within(1e-9));
    assertThat(deep.check().box().least().y().millimetres()).isCloseTo(5.0, within(1e-9));
  }

  @Test
  void what_goes_on_no_bed_is_named_with_the_limit_and_by_how_much() {
    Part plate = plate("long plate", 90, 20, 20).lying(Orientation.STRAIGHT, 1);
    assertThatThrownBy(() -> PrintBed.fill(BuildVolume.box(mm(80), mm(50), mm(50)), "solid", List.of(plate)))
        .isInstanceOf(IllegalStateException.class)
        .hasMessage("long plate must be at most 80 mm long for the machine of 80 mm × 50 mm × 50 mm, is 10 mm more");
    Part tall = plate("tall plate", 90, 20, 20).lying(Orientation.UPRIGHT, 1);
    assertThatThrownBy(() -> PrintBed.fill(BuildVolume.box(mm(80), mm(50), mm(50)), "solid", List.of(tall)))
        .hasMessage("tall plate must be at most 50 mm tall for the machine of 80 mm × 50 mm × 50 mm, is 40 mm more");
    // 90 by 20 mm: 92.2 mm from corner to corner.
    assertThatThrownBy(() -> PrintBed.fill(BuildVolume.cylinder(mm(92), mm(50)), "solid", List.of(plate)))
        .hasMessage("long plate must be at most 92 mm across for the machine of ⌀ 92 mm × 50 mm, is 0.195 mm more");
    assertThat(PrintBed.fill(BuildVolume.cylinder(mm(92.3), mm(50)), "solid", List.of(plate))).hasSize(1);
    assertThatThrownBy(() -> new PrintBed(BuildVolume.cylinder(mm(92), mm(50)), "solid", List.of()))
        .hasMessageContaining("parts of a bed must be at least one");
    assertThat(PrintBed.fill(BuildVolume.cylinder(mm(92), mm(50)), "solid", List.of())).isEmpty();
  }

  @Test
  void the_file_of_a_bed_has_its_parts_where_they_lie() {
    List<Part> parts = List.of(
        plate("first", 40, 20, 20).lying(Orientation.STRAIGHT, 1), plate("second", 30, 10, 10).lying(Orientation.STRAIGHT, 1));
    PrintBed bed = PrintBed.fill(BuildVolume.box(mm(80), mm(50), mm(50)), "solid", parts).get(0);
    assertThat(bed).hasToString("first; second: solid");
    byte[] file = bed.file("bed").bytes();
    assertThat(ThreeMfRules.violations(file)).isEmpty();
    assertThat(bed.parts().get(0).check().box().least().x().millimetres()).isCloseTo(0.5 * (80 - 75), within(1e-9));
  }
}
