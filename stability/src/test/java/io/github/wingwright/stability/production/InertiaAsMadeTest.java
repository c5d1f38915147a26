// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.production;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.manufacture.TriangleMesh;
import io.github.wingwright.core.mass.MassItem;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.stability.design.Briefs;
import io.github.wingwright.stability.design.Design;
import io.github.wingwright.stability.design.SizingLoop;
import org.junit.jupiter.api.Test;

/** The inertia of the parts against points drawn at random in the walls of their meshes. */
class InertiaAsMadeTest {
  private static final Design DESIGN = SizingLoop.of(Briefs.balanced()).solve();
  private static final GliderParts PARTS = GliderParts.of(DESIGN, Length.millimetres(0.2));

  private static MassItem item(String name) {
    return DESIGN.aircraft().masses().item(name).orElseThrow();
  }

  /** Roll, pitch and yaw per mass about the item's centre of gravity; of a half that stands for both, y is not centred. */
  private static double[] drawn(TriangleMesh mesh, double wall, boolean half) {
    double[] m = new MeshSampling(mesh, 2706).wallMeans(wall, 3000);
    double x = m[3] - m[0] * m[0];
    double y = half ? m[4] : m[4] - m[1] * m[1];
    double z = m[5] - m[2] * m[2];
    return new double[] {y + z, x + z, x + y};
  }

  private static void agrees(MassItem item, double[] drawn, double percent) {
    double mass = item.mass().si();
    assertThat(item.ownInertia().roll().si() / mass).as("%s in roll", item).isCloseTo(drawn[0], withinPercentage(percent));
    assertThat(item.ownInertia().pitch().si() / mass).as("%s in pitch", item).isCloseTo(drawn[1], withinPercentage(percent));
    assertThat(item.ownInertia().yaw().si() / mass).as("%s in yaw", item).isCloseTo(drawn[2], withinPercentage(percent));
  }

  @Test
  void a_wing_of_walls_has_the_inertia_of_its_walls() {
    double wall = DESIGN.brief().wingShell().wallThickness().si();
    TriangleMesh half = PARTS.assembled().get(0);
    // 3,000 points are good to about 2 %; along the chord the mass is taken as even, though both edges are full.
    agrees(item("wing"), drawn(half, wall, true), 6);
  }

  @Test
  void a_solid_tapered_wing_weighs_less_at_its_tips() {
    Design solid = SizingLoop.of(Briefs.balanced().wingWalls(20, 1.0)).solve();
    TriangleMesh half = GliderParts.of(solid, Length.millimetres(0.2)).assembled().get(0);
    MassItem wing = solid.aircraft().masses().item("wing").orElseThrow();
    double[] drawn = drawn(half, 1.0, true);
    assertThat(wing.ownInertia().roll().si() / wing.mass().si()).isCloseTo(drawn[0], withinPercentage(3));
  }

  @Test
  void a_body_has_the_inertia_of_its_walls() {
    double wall = DESIGN.brief().bodyShell().wallThickness().si();
    double[] drawn = drawn(PARTS.assembled().get(2), wall, false);
    // The trough of the wing and the slots of the tails, which take the outermost of the walls, are left out.
    agrees(item("fuselage"), drawn, 16);
  }

  @Test
  void plates_have_the_inertia_of_what_is_solid() {
    double thickness = DESIGN.brief().tailThickness().si();
    agrees(item("horizontal tail"), drawn(PARTS.assembled().get(3).moved(Placement.at(Length.ZERO, Length.ZERO)), thickness, true), 4);
    agrees(item("vertical tail"), drawn(PARTS.assembled().get(4), thickness, false), 6);
  }
}
