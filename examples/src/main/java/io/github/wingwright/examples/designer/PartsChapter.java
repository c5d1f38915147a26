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
      blocks.add(new Block.Paragraph("What the parts weigh by their real shape, against the statement that the design reckons with:"));
      blocks.add(new Block.Table(List.of("part", "as made", "in the statement", "as made, behind the nose"), masses(parts.asMade())));
      List<Finding> findings = parts.findings();
      if (!findings.isEmpty()) {
        blocks.add(new Block.Findings(findings));
      }
      blocks.add(new Block.Paragraph("From the parts to the first flight:"));
      blocks.add(new Block.Points(steps(parts)));
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

  private List<String> steps(GliderParts parts) {
    List<String> shims = parts.parts().stream().map(Part::name).filter(n -> n.startsWith("shim")).toList();
    List<String> steps = new ArrayList<>();
    steps.add("Glue the two halves of the wing together at their roots; the roots stand upright, so that the dihedral comes by itself.");
    steps.add("Push the tailplane into the level slot from behind, then the fin into the upright one until it stands on the"
        + " tailplane; look from behind that they are square, and glue them.");
    steps.add("Hold the wing in its seat with a rubber band or a strip of tape, its leading edge "
        + design.aircraft().airframe().wing().placement().x().format(units.length(), 4) + " behind the nose.");
    steps.add("Balance the model on two fingers under the rib below the body, "
        + design.aircraft().centreOfGravity().x().format(units.length(), 4)
        + " behind the nose: put weight into the nose until it is level; a little can be mended by moving the wing in its seat.");
    steps.add("Trim by test glides over soft ground. The design expects a decalage of "
        + Angle.radians(design.trim().decalageBand().likely()).format(Angle.DEGREE, 2)
        + (shims.isEmpty() ? "." : ": begin with the shim nearest to it under the wing (" + String.join(", ", shims) + ")."));
    steps.add("If it dives, use a thicker shim or bend the tail's trailing edge up; if it rears up and drops, a thinner one, or"
        + " bend it down. Change one thing at a time, by half a degree.");
    steps.add("Throw level and away from people, never at full strength before it glides straight.");
    return steps;
  }
}
