// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.manufacture.MeshBox;
import io.github.wingwright.core.manufacture.Part;
import io.github.wingwright.core.mass.MassItem;
import io.github.wingwright.core.mass.MassStatement;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.report.Block;
import io.github.wingwright.core.report.Chapter;
import io.github.wingwright.stability.design.Design;
import io.github.wingwright.stability.production.GliderParts;
import java.util.ArrayList;
import java.util.List;

/** The parts as they are made: how large, how heavy by their real shape, and how they come together. */
final class PartsChapter {
  /** Coarse enough for a picture. */
  private static final Length FOR_THE_EYE = Length.millimetres(0.7);

  private final Design design;
  private final BriefUnits units;

  PartsChapter(Design design, BriefUnits units) {
    this.design = design;
    this.units = units;
  }

  Chapter chapter() {
    List<Block> blocks = new ArrayList<>();
    try {
      GliderParts parts = GliderParts.of(design, PartFiles.TOLERANCE);
      blocks.add(
          new Block.Picture(
              PartsPicture.draw(GliderParts.of(design, FOR_THE_EYE).assembled()).element(),
              "Wing halves, body with the seat for the wing and the slots for the tails, tailplane and fin."));
      blocks.add(new Block.Paragraph(
          "All parts are in glider.3mf, which says its unit and the names of the parts, and one by one in the folder parts as"
              + " STL in millimetres. They are solid outlines: set walls, line width and infill as in the table of masses."
              + " The folder templates holds full-size drawings for those who cut by hand: print them at 100 % and measure the"
              + " bar of 50 mm first."));
      blocks.add(new Block.Table(List.of("part", "length", "width", "height", "volume"), sizes(parts.parts())));
      blocks.add(new Block.Paragraph("What the parts weigh by the walls inside their meshes, a check on the statement that the design reckons with:"));
      blocks.add(new Block.Table(List.of("part", "as made", "in the statement", "as made, behind the nose"), masses(parts.asMade())));
      List<Finding> findings = parts.findings();
      if (!findings.isEmpty()) {
        blocks.add(new Block.Findings(findings));
      }
      blocks.add(new Block.Paragraph("What the parts have for building and trimming; BUILD.md tells how:"));
      blocks.add(new Block.Points(uses(parts)));
    } catch (IllegalStateException | IllegalArgumentException e) {
      blocks.add(new Block.Paragraph("The parts cannot be made as designed: " + e.getMessage() + "."));
    }
    return new Chapter("Parts", blocks);
  }

  private List<List<String>> sizes(List<Part> parts) {
    List<List<String>> rows = new ArrayList<>();
    for (Part part : parts) {
      MeshBox box = part.check().box();
      rows.add(List.of(
          part.name(),
          box.length().format(units.length(), 4),
          box.width().format(units.length(), 4),
          box.height().format(units.length(), 3),
          part.check().volume().format(units.volume(), 3)));
    }
    return rows;
  }

  private List<List<String>> masses(MassStatement made) {
    List<List<String>> rows = new ArrayList<>();
    MassStatement reckoned = design.aircraft().masses();
    for (MassItem item : made.items()) {
      rows.add(List.of(
          item.name(),
          item.mass().format(units.mass(), 3),
          reckoned.item(item.name()).orElseThrow().mass().format(units.mass(), 3),
          item.centreOfGravity().x().format(units.length(), 4)));
    }
    rows.add(List.of(
        "together",
        made.mass().format(units.mass(), 3),
        reckoned.mass().format(units.mass(), 3),
        made.centreOfGravity().x().format(units.length(), 4)));
    return rows;
  }

  private List<String> uses(GliderParts parts) {
    List<String> shims = parts.parts().stream().map(Part::name).filter(n -> n.startsWith("shim")).toList();
    List<String> uses = new ArrayList<>();
    uses.add("The roots of the wing halves stand upright, so that the dihedral comes by itself when they meet; the hole in each"
        + " runs along its panel, for a pin bent to the dihedral. The trailing edge is made one line thick where the section"
        + " would be thinner.");
    uses.add("The trough in the body is as steep as the wing and longer than its root: the wing, its leading edge "
        + design.aircraft().airframe().wing().placement().x().format(units.length(), 4)
        + " behind the nose, can be moved a little either way.");
    uses.add("The tailplane is pushed into the level slot from behind, then the fin into the upright one until it stands on it.");
    uses.add("The rib below the body is at the centre of gravity, "
        + design.aircraft().centreOfGravity().x().format(units.length(), 4) + " behind the nose: it can be felt while balancing.");
    if (!shims.isEmpty()) {
      uses.add("The shims (" + String.join(", ", shims) + ") lie in the trough under the wing, thick end ahead: one for the"
          + " likely decalage, "
          + design.trim().decalage().format(Angle.DEGREE, 2)
          + ", the others for the ends of its range, as far as these can be shimmed.");
    }
    return uses;
  }
}
