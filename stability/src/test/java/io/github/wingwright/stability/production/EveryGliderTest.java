// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.production;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.ConvergenceException;
import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.manufacture.BuildVolume;
import io.github.wingwright.core.manufacture.Joint;
import io.github.wingwright.core.manufacture.Lay;
import io.github.wingwright.core.manufacture.MeshBox;
import io.github.wingwright.core.manufacture.Part;
import io.github.wingwright.core.manufacture.PrintBed;
import io.github.wingwright.core.manufacture.PrintItem;
import io.github.wingwright.core.manufacture.TriangleMesh;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.stability.design.Design;
import io.github.wingwright.stability.design.DesignBrief;
import io.github.wingwright.stability.design.SizingLoop;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Whole gliders drawn at random: every part of each can be printed, or the reason why not is said. */
class EveryGliderTest {
  /** So many; the system property draws more. */
  private static final int MANY = Integer.getInteger("wingwright.gliders", 12);

  /** Those before it are drawn, not made: a system property begins at the one that failed. */
  private static final int FIRST = Integer.getInteger("wingwright.glider.first", 0);

  /** Stations of the seat are found in steps of so much [m], by the text of the seat's search. */
  private static final double SEAT_STEP = 0.25e-3;

  @Test
  void every_part_is_watertight_of_its_volume_and_fits_the_machine_or_is_refused_in_words() {
    RandomGliders draw = new RandomGliders(611_61L);
    TreeMap<String, Integer> refused = new TreeMap<>();
    int sized = 0;
    int made = 0;
    int cut = 0;
    for (int i = 0; i < MANY; i++) {
      DesignBrief brief = draw.brief();
      BuildVolume machine = draw.machine();
      Length tolerance = draw.tolerance();
      String what = "glider " + i + " at " + tolerance + " in " + machine;
      if (i < FIRST) {
        continue;
      }
      Design design;
      try {
        design = SizingLoop.of(brief).madeTo(Length.millimetres(0.5), Mass.grams(0.1)).solve();
      } catch (IllegalStateException | IllegalArgumentException | ConvergenceException e) {
        assertThat(e.getMessage()).as(what).containsPattern("[a-z]+ [a-z]+ [a-z]+");
        refused.merge("sizing: " + words(e), 1, Integer::sum);
        continue;
      }
      sized++;
      GliderParts parts;
      try {
        parts = GliderParts.of(design, tolerance);
      } catch (IllegalStateException | IllegalArgumentException e) {
        assertThat(e.getMessage()).as(what).containsPattern("must|leaves").doesNotContain("triangle");
        refused.merge("parts: " + words(e), 1, Integer::sum);
        continue;
      }
      made++;
      parts.parts().forEach(part -> isClosed(what + ", " + part.name(), part.mesh()));
      hasItsVolumes(what, design, parts, tolerance.si());
      PrintPlan plan = PrintPlan.of(design, machine);
      if (!plan.list().isPossible()) {
        assertThat(plan.list().findings()).as(what).anyMatch(f -> f.message().contains("machine") || f.message().contains("mm"));
        refused.merge("machine too small", 1, Integer::sum);
        continue;
      }
      try {
        List<Part> pieces = parts.pieces(plan.list());
        pieces.forEach(piece -> isClosed(what + ", " + piece.name(), piece.mesh()));
        pieces.forEach(piece -> fits(what, piece, plan, design));
        cut += pieces.size() > parts.parts().size() ? 1 : 0;
        laid(what, parts, plan);
      } catch (IllegalStateException e) {
        assertThat(e.getMessage()).as(what).containsPattern("must leave|leaves|must cut").doesNotContain("triangle");
        refused.merge("pieces: " + words(e), 1, Integer::sum);
      }
    }
    if (Boolean.getBoolean("wingwright.tell")) {
      System.out.println(MANY + " briefs, " + sized + " sized, " + made + " meshed, " + cut + " cut; refused " + refused);
    }
    assertThat(made).isGreaterThan(2 * (MANY - FIRST) / 3);
    assertThat(cut).isGreaterThan((MANY - FIRST) / 10);
  }

  private static String words(RuntimeException e) {
    String message = String.valueOf(e.getMessage()).replaceAll("[-0-9.]+", "#");
    return message.substring(0, Math.min(110, message.length()));
  }

  /** Each edge is run along once in each direction. */
  private static void isClosed(String what, TriangleMesh mesh) {
    Set<Long> edges = new HashSet<>();
    for (int t = 0; t < mesh.triangles(); t++) {
      for (int k = 0; k < 3; k++) {
        long from = mesh.corner(t, k);
        long to = mesh.corner(t, (k + 1) % 3);
        if (!edges.add(from << 32 | to)) {
          throw new AssertionError(what + ": an edge is run along twice in one direction");
        }
      }
    }
    if (edges.stream().anyMatch(edge -> !edges.contains(edge << 32 | edge >>> 32))) {
      throw new AssertionError(what + ": an edge is run along in one direction only");
    }
    assertThat(mesh.volume().si()).as(what).isPositive();
  }

  private static double volume(GliderParts parts, String name) {
    return parts.parts().stream().filter(p -> p.name().equals(name)).findFirst().orElseThrow().mesh().volume().si();
  }

  private static void hasItsVolumes(String what, Design design, GliderParts parts, double tolerance) {
    Airframe airframe = design.aircraft().airframe();
    Wing wing = airframe.wing();
    Planform planform = wing.planform();
    double squares = 0.5 * planform.area().si() * planform.meanAerodynamicChord().si();
    double lacking = Math.max(
        0.0, design.brief().lineWidth().dividedBy(planform.tipChord()) - wing.section().trailingEdgeThickness());
    double exact = (wing.section().area() + 0.5 * lacking) * squares;
    Joint joint = PrintPlan.of(design, BuildVolume.cylinder(Length.metres(5), Length.metres(5))).rootJoint();
    double hole = joint.size().plus(joint.clearance().times(2.0)).si();
    double holes = 0.5 * Math.PI * hole * hole * joint.overlap().si();
    double stray = 1.1 * planform.area().si() * tolerance + 1e-6 * exact;
    assertThat(volume(parts, "wing, starboard half")).as(what + ", wing").isBetween(exact - holes - stray, exact + stray);

    Length thickness = design.brief().tailThickness();
    Tail level = airframe.horizontalTail().orElseThrow();
    double plate = level.planform().area().si() * thickness.si();
    assertThat(volume(parts, "horizontal tail")).as(what + ", tailplane").isCloseTo(plate, within(1e-9 * plate));
    Planform fin = airframe.verticalTail().orElseThrow().planform();
    double strip = 0.5 * thickness.si();
    double chord = 0.5 * (fin.rootChord().si() + fin.chordAt(Length.metres(strip)).si());
    double upright = (fin.area().si() - strip * chord) * thickness.si();
    assertThat(volume(parts, "vertical tail")).as(what + ", fin").isCloseTo(upright, within(1e-9 * upright));

    Fuselage body = airframe.fuselage();
    boolean seated = parts.findings().stream().noneMatch(f -> f.subject().equals("wing seat"));
    double[] left = new CutBody(design, seated).volumes(SEAT_STEP);
    double skin = 1.5 * body.wettedArea().si() * tolerance;
    assertThat(volume(parts, "fuselage")).as(what + ", fuselage").isBetween(left[0] - skin, left[1] + skin);
  }

  /** All that the plan says fits goes on a bed; only a shim, which it does not know, may be too long. */
  private static void laid(String what, GliderParts parts, PrintPlan plan) {
    try {
      parts.beds(plan.list()).forEach(bed -> liesOn(what, bed, plan.list().machine()));
    } catch (IllegalStateException e) {
      assertThat(e.getMessage()).as(what).startsWith("shim").contains("must be at most");
    }
  }

  /** What the plan says fits lies inside the machine as it is built. */
  private static void liesOn(String what, PrintBed bed, BuildVolume machine) {
    double middle = 0.5 * machine.bedLength().si();
    for (Part part : bed.parts()) {
      MeshBox box = part.mesh().box();
      assertThat(box.least().z().si()).as("%s, %s", what, part).isCloseTo(0, within(1e-9));
      assertThat(box.height()).as("%s, %s", what, part).isLessThanOrEqualTo(machine.height().plus(Length.micrometres(0.1)));
      for (int v = 0; v < part.mesh().vertices(); v++) {
        double x = part.mesh().coordinate(v, 0);
        double y = part.mesh().coordinate(v, 1);
        if (machine.isRound()) {
          assertThat(Math.hypot(x - middle, y - middle)).as("%s, %s", what, part).isLessThanOrEqualTo(middle + 1e-7);
        } else {
          assertThat(x).as("%s, %s", what, part).isBetween(-1e-7, machine.bedLength().si() + 1e-7);
          assertThat(y).as("%s, %s", what, part).isBetween(-1e-7, machine.bedWidth().si() + 1e-7);
        }
      }
    }
  }

  /** A piece as it goes into the machine: along its panel, which dihedral raises. */
  private static void fits(String what, Part piece, PrintPlan plan, Design design) {
    boolean wing = piece.name().startsWith("wing");
    String name = piece.name().replaceAll(", piece.*", "");
    Optional<PrintItem> item = plan.list().items().stream()
        .filter(i -> wing ? i.name().equals("half wing") : i.name().equals(name))
        .findFirst();
    if (item.isEmpty()) {
      assertThat(piece.name()).as(what).startsWith("shim");
      return;
    }
    Angle dihedral = design.aircraft().airframe().wing().planform().panels().get(0).dihedral();
    Angle down = wing ? piece.name().contains("port") ? dihedral : dihedral.negated() : Angle.ZERO;
    MeshBox box = piece.mesh().turned(0, down).box();
    boolean body = name.equals("fuselage");
    Length along = body ? box.length() : box.width();
    Length across = body ? box.width() : box.length();
    boolean plate = name.endsWith("tail");
    BuildVolume machine = plan.list().machine();
    EnumSet<Lay> lays = plate ? EnumSet.of(Lay.STRAIGHT, Lay.DIAGONAL) : EnumSet.of(Lay.UPRIGHT);
    Optional<?> fits = machine.orientation(along, across, box.height(), lays);
    assertThat(fits).as("%s, %s is %s × %s × %s", what, piece.name(), along, across, box.height()).isPresent();
  }
}
