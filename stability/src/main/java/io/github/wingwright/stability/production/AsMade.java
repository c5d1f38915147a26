// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.production;

import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.manufacture.MeshWall;
import io.github.wingwright.core.manufacture.TriangleMesh;
import io.github.wingwright.core.mass.MassItem;
import io.github.wingwright.core.mass.MassStatement;
import io.github.wingwright.core.mass.PrintedShell;
import io.github.wingwright.core.quantity.Density;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.stability.design.Design;
import java.util.ArrayList;
import java.util.List;

/** What parts weigh by the true walls inside their meshes. */
final class AsMade {
  private AsMade() {}

  /** The masses of a design, with its printed parts from its meshes: half a wing twice, then body, tailplane, fin. */
  static MassStatement of(Design design, List<TriangleMesh> meshes) {
    List<MassItem> items = new ArrayList<>();
    PrintedShell wing = design.brief().wingShell();
    PrintedShell body = design.brief().bodyShell();
    Density density = design.brief().material().density();
    for (MassItem item : design.aircraft().masses().items()) {
      items.add(
          switch (item.name()) {
            case "wing" -> shell(item, wing, meshes.get(0), MeshWall.ofFlat(meshes.get(0), wing.wallThickness()), 2.0);
            case "fuselage" -> shell(item, body, meshes.get(2), MeshWall.ofStout(meshes.get(2), body.wallThickness()), 1.0);
            case "horizontal tail" -> solid(item, density, meshes.get(3));
            case "vertical tail" -> solid(item, density, meshes.get(4));
            default -> item;
          });
    }
    return MassStatement.of(items);
  }

  private static MassItem shell(MassItem item, PrintedShell shell, TriangleMesh mesh, MeshWall wall, double count) {
    double volume = mesh.volume().si();
    double mass = PrintedShell.printedMass(shell.material().density().si(), volume, wall.volume().si(), shell.infill());
    double filled = shell.infill() * (volume - wall.volume().si());
    double x = (wall.volume().si() * wall.x().si() + filled * mesh.centroid().x().si()) / (wall.volume().si() + filled);
    // One half stands for both: together they balance in the plane of symmetry.
    return MassItem.of(
        item.name(), Mass.kilograms(count * mass), Placement.at(Length.metres(x), mesh.surfaceCentroid().z()));
  }

  private static MassItem solid(MassItem item, Density density, TriangleMesh mesh) {
    Placement place = Placement.at(mesh.centroid().x(), mesh.centroid().z());
    return MassItem.of(item.name(), Mass.kilograms(density.si() * mesh.volume().si()), place);
  }
}
