// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

class MeshCheckTest {
  /** A box 1 × 2 × 3 mm. */
  static final double[] CORNERS = {
    0, 0, 0, 1e-3, 0, 0, 1e-3, 2e-3, 0, 0, 2e-3, 0, 0, 0, 3e-3, 1e-3, 0, 3e-3, 1e-3, 2e-3, 3e-3, 0, 2e-3, 3e-3
  };

  static final int[] FACES = {
    3, 2, 1, 1, 0, 3, 4, 5, 6, 6, 7, 4, 0, 1, 5, 5, 4, 0, 1, 2, 6, 6, 5, 1, 2, 3, 7, 7, 6, 2, 3, 0, 4, 4, 7, 3
  };

  private static TriangleMesh box() {
    return TriangleMesh.of(CORNERS, FACES);
  }

  @Test
  void a_box_is_watertight_and_measures_what_it_should() {
    MeshCheck check = MeshCheck.of(box());
    assertThat(check.volume().cubicMillimetres()).isCloseTo(6.0, within(1e-12));
    assertThat(check.surface().squareMillimetres()).isCloseTo(22.0, within(1e-12));
    assertThat(check.box().length()).isEqualTo(Length.millimetres(1));
    assertThat(check.box().width()).isEqualTo(Length.millimetres(2));
    assertThat(check.box().height()).isEqualTo(Length.millimetres(3));
    Placement centroid = box().centroid();
    assertThat(centroid.x().millimetres()).isCloseTo(0.5, within(1e-12));
    assertThat(centroid.y().millimetres()).isCloseTo(1.0, within(1e-12));
    assertThat(centroid.z().millimetres()).isCloseTo(1.5, within(1e-12));
  }

  @Test
  void moving_turning_and_mirroring_keep_it_so() {
    TriangleMesh there = box().moved(new Placement(Length.metres(7), Length.metres(-3), Length.metres(1)));
    assertThat(MeshCheck.of(there).volume().cubicMillimetres()).isCloseTo(6.0, within(1e-9));
    assertThat(MeshCheck.of(box().mirrored()).volume().cubicMillimetres()).isCloseTo(6.0, within(1e-12));
    for (int axis = 0; axis < 3; axis++) {
      TriangleMesh turned = box().turned(axis, Angle.degrees(37));
      assertThat(MeshCheck.of(turned).volume().cubicMillimetres()).isCloseTo(6.0, within(1e-12));
    }
    MeshBox upright = box().turned(0, Angle.degrees(90)).box();
    assertThat(upright.height()).isEqualTo(Length.millimetres(2));
    assertThat(upright.width()).isEqualTo(Length.millimetres(3));
  }

  @Test
  void a_missing_triangle_is_reported_with_its_place() {
    TriangleMesh open = TriangleMesh.of(CORNERS, Arrays.copyOf(FACES, FACES.length - 3));
    assertThatThrownBy(() -> MeshCheck.of(open))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("must belong to two triangles")
        .hasMessageContaining("belongs to 1")
        .hasMessageContaining("(0.000, 0.000, 3.000) mm");
  }

  @Test
  void a_triangle_that_faces_inwards_is_reported() {
    int[] faces = FACES.clone();
    faces[0] = 2;
    faces[1] = 3;
    assertThatThrownBy(() -> MeshCheck.of(TriangleMesh.of(CORNERS, faces)))
        .hasMessageContaining("twice in one direction");
  }

  @Test
  void a_surface_turned_inside_out_is_reported() {
    int[] faces = FACES.clone();
    for (int i = 0; i < faces.length; i += 3) {
      faces[i] = FACES[i + 1];
      faces[i + 1] = FACES[i];
    }
    assertThatThrownBy(() -> MeshCheck.of(TriangleMesh.of(CORNERS, faces))).hasMessageContaining("must face outwards");
  }

  @Test
  void a_degenerate_triangle_is_reported_with_its_place() {
    double[] corners = CORNERS.clone();
    corners[6] = 1e-3;
    corners[7] = 1e-8;
    assertThatThrownBy(() -> MeshCheck.of(TriangleMesh.of(corners, FACES)))
        .hasMessageContaining("0.0001 mm high")
        .hasMessageContaining("at (0.000, 2.000, 0.000) mm");
  }

  @Test
  void a_part_says_its_name_when_its_mesh_leaks() {
    TriangleMesh open = TriangleMesh.of(CORNERS, Arrays.copyOf(FACES, FACES.length - 3));
    assertThatThrownBy(() -> Part.of("wing", open)).isInstanceOf(IllegalStateException.class).hasMessageStartingWith("wing: ");
    assertThatThrownBy(() -> MeshCheck.of(TriangleMesh.of(CORNERS, new int[0]))).hasMessageContaining("has none");
  }

  @Test
  void numbers_that_make_no_mesh_are_refused() {
    assertThatThrownBy(() -> TriangleMesh.of(new double[] {0, 0, Double.NaN}, new int[0]))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("finite");
    assertThatThrownBy(() -> TriangleMesh.of(CORNERS, new int[] {0, 1, 8})).isInstanceOf(IndexOutOfBoundsException.class);
    assertThatThrownBy(() -> TriangleMesh.of(CORNERS, new int[] {0, 1})).hasMessageContaining("in threes");
  }
}
