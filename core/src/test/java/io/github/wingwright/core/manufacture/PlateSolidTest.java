// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import io.github.wingwright.core.geometry.Panel;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

class PlateSolidTest {
  private static final Length FINE = Length.micrometres(10);

  private static Length mm(double value) {
    return Length.millimetres(value);
  }

  private static double volume(PlateSolid plate) {
    return MeshCheck.of(plate.mesh(FINE)).volume().cubicMillimetres();
  }

  @Test
  void a_plate_bent_to_a_v_is_as_thick_across_its_panels_as_a_flat_one() {
    Planform flat = Planform.tapered(mm(200), mm(60), mm(40)).withSweep(0.0, Angle.degrees(15));
    for (double dihedral : new double[] {0, 12, 35, -20}) {
      Planform bent = flat.withDihedral(Angle.degrees(dihedral));
      double area = 200.0 * 50.0 / Math.cos(Math.toRadians(dihedral));
      PlateSolid whole = PlateSolid.of(bent, mm(1.2));
      // At a mitre the edge of one face begins a little further out than that of the other: a saddle, not a plane.
      double saddle = dihedral == 0 ? 1e-9 : 0.05;
      assertThat(volume(whole)).as("%s°", dihedral).isCloseTo(1.2 * area, withinPercentage(saddle));
      // Each half alone: it ends upright in the plane of symmetry, where the other is glued to it.
      PlateSolid half = whole.between(mm(100), mm(200));
      assertThat(volume(half)).isCloseTo(0.6 * area, withinPercentage(saddle));
      assertThat(half.mesh(FINE).box().least().y().millimetres())
          .isCloseTo(0.0, within(1e-9));
    }
  }

  @Test
  void every_face_of_a_plate_with_folds_lies_half_its_thickness_from_the_middle() {
    Planform folded = Planform.symmetric(mm(50), List.of(
        new Panel(mm(60), mm(45), Angle.degrees(3), Angle.degrees(5), Angle.ZERO),
        new Panel(mm(40), mm(30), Angle.degrees(10), Angle.degrees(30), Angle.ZERO)));
    TriangleMesh mesh = PlateSolid.of(folded, mm(2)).mesh(FINE);
    double inner = 60.0 * 47.5 / Math.cos(Math.toRadians(5));
    double outer = 40.0 * 37.5 / Math.cos(Math.toRadians(30));
    assertThat(MeshCheck.of(mesh).volume().cubicMillimetres()).isCloseTo(2.0 * 2.0 * (inner + outer), withinPercentage(0.05));
    int faces = 0;
    for (int t = 0; t < mesh.triangles(); t++) {
      double[] c = new double[3];
      for (int k = 0; k < 9; k++) {
        c[k % 3] += 1e3 / 3.0 * mesh.coordinate(mesh.corner(t, k / 3), k % 3);
      }
      double y = Math.abs(c[1]);
      double angle = Math.toRadians(y < 60.0 ? 5 : 30);
      double root = y < 60.0 ? 0.0 : 60.0 * Math.tan(Math.toRadians(5)) - 60.0 * Math.tan(Math.toRadians(30));
      double across = (c[2] - root - y * Math.tan(angle)) * Math.cos(angle);
      if (Math.abs(across) > 0.9) {
        assertThat(Math.abs(across)).isCloseTo(1.0, within(1e-9));
        faces++;
      }
    }
    assertThat(faces).isEqualTo(16);
  }

  @Test
  void a_fin_leans_as_its_panels_do() {
    Planform fin = Planform.fin(mm(50), List.of(new Panel(mm(60), mm(30), Angle.degrees(10), Angle.degrees(10), Angle.ZERO)));
    assertThat(volume(PlateSolid.of(fin, mm(1)))).isCloseTo(60.0 * 40.0 / Math.cos(Math.toRadians(10)), withinPercentage(1e-9));
  }
}
