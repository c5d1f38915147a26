// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.mass.SkinVolume;
import io.github.wingwright.core.quantity.Length;
import org.junit.jupiter.api.Test;

/** Walls of meshes and round bodies against closed forms. */
class MeshWallTest {
  private static final Length WALL = Length.millimetres(0.84);

  /** A box of a·b·c without the box that is 2w less each way, but for the eight corners, w³ each at most. */
  @Test
  void the_wall_of_a_box_is_the_box_less_its_hollow() {
    double a = 0.04;
    double b = 0.03;
    double c = 0.02;
    double w = WALL.si();
    double exact = a * b * c - (a - 2 * w) * (b - 2 * w) * (c - 2 * w);
    MeshWall wall = MeshWall.ofStout(box(a, b, c), WALL);
    assertThat(wall.volume().si()).isCloseTo(exact, within(8.001 * w * w * w));
    assertThat(wall.x().millimetres()).isCloseTo(20, within(1e-9));
  }

  /** As a flat part its upper and lower walls and its ends count; of its upright sides the columns see nothing. */
  @Test
  void a_thin_box_is_solid_and_a_thicker_one_has_four_walls() {
    double w = WALL.si();
    assertThat(MeshWall.ofFlat(box(0.05, 0.2, 1.9 * w), WALL).volume().si()).isCloseTo(0.05 * 0.2 * 1.9 * w, withinPercentage(1e-6));
    double h = 5 * w;
    double exact = 0.05 * (0.2 * h - (0.2 - 2 * w) * (h - 2 * w));
    assertThat(MeshWall.ofFlat(box(0.05, 0.2, h), WALL).volume().si()).isCloseTo(exact, withinPercentage(1e-6));
  }

  @Test
  void the_wall_of_a_sphere_and_a_capsule_is_exact_by_formula_and_close_by_mesh() {
    BodyShape capsule = BodyShape.capsule();
    for (double length : new double[] {0.0200001, 0.2}) {
      double d = 0.02;
      double w = WALL.si();
      double exact = capsule.volume(length, d) - capsule.volume(length - 2 * w, d - 2 * w);
      double curvature = capsule.curvatureIntegral(length, d);
      assertThat(SkinVolume.ofSmoothBody(capsule.wettedArea(length, d), curvature, w)).isCloseTo(exact, withinPercentage(1e-9));
      Fuselage body = new Fuselage(capsule, Length.metres(length), Length.metres(d));
      assertThat(MeshWall.ofStout(BodySolid.of(body).mesh(Length.millimetres(0.02)), WALL).volume().si())
          .isCloseTo(exact, withinPercentage(1));
    }
    assertThat(1e9 * SkinVolume.ofSmoothBody(1256.6e-6, 125.66e-3, 1e-3)).isCloseTo(1135.2, within(0.1));
  }

  @Test
  void the_curvature_of_other_bodies_is_an_integral_over_their_outline() {
    BodyShape ellipsoid = BodyShape.prolateSpheroid();
    assertThat(ellipsoid.curvatureIntegral(0.0200001, 0.02)).isCloseTo(2 * Math.PI * 0.02, withinPercentage(0.1));
    Fuselage body = new Fuselage(ellipsoid, Length.millimetres(250), Length.millimetres(20));
    double formula =
        SkinVolume.ofSmoothBody(body.wettedArea().si(), ellipsoid.curvatureIntegral(0.25, 0.02), WALL.si());
    assertThat(SkinVolume.ofBody(body, WALL).si()).isCloseTo(formula, withinPercentage(0.5));
  }

  private static TriangleMesh box(double a, double b, double c) {
    double[] p = new double[24];
    for (int i = 0; i < 8; i++) {
      p[3 * i] = (i & 1) * a;
      p[3 * i + 1] = (i >> 1 & 1) * b;
      p[3 * i + 2] = (i >> 2 & 1) * c;
    }
    return TriangleMesh.of(
        p,
        new int[] {
          0, 2, 1, 1, 2, 3, 4, 5, 6, 5, 7, 6, 0, 1, 4, 1, 5, 4, 2, 6, 3, 3, 6, 7, 0, 4, 2, 2, 4, 6, 1, 3, 5, 3, 7, 5
        });
  }
}
