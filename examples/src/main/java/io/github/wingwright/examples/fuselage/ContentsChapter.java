// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.fuselage;

import io.github.wingwright.core.drawing.Svg;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.report.Block;
import io.github.wingwright.core.report.Chapter;
import io.github.wingwright.core.sizing.Cabin;
import io.github.wingwright.core.sizing.Contents;
import io.github.wingwright.core.sizing.Thing;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** What is inside and where it lies; the body from the side. */
final class ContentsChapter {
  private final BodyStudy study;
  private final Units units;
  private final FuselagePictures pictures;

  ContentsChapter(BodyStudy study, FuselagePictures pictures) {
    this.study = study;
    this.units = study.brief().units();
    this.pictures = pictures;
  }

  Chapter chapter(Svg side) {
    List<Block> blocks = new ArrayList<>();
    study.placing().ifPresent(p -> table(blocks, p));
    blocks.add(new Block.Picture(side.element(), caption()));
    if (study.brief().inside().isEmpty()) {
      blocks.add(new Block.Paragraph("Nothing is inside."));
    } else if (study.placing().isEmpty()) {
      blocks.add(new Block.Paragraph("The contents do not fit into this body."));
    }
    study.brief().inside().ifPresent(in -> people(blocks, in));
    return new Chapter("Inside and from the side", blocks);
  }

  private String caption() {
    String lines = pictures.eye().isPresent() ? " The line of sight must pass above the nose." : "";
    String ground =
        pictures.ground().isPresent() ? " The belly must stay above the line of rotation." : "";
    return "To scale."
        + (study.placing().isPresent()
            ? " Dashed around each thing is the clearance it needs."
            : "")
        + lines
        + ground;
  }

  private void table(List<Block> blocks, Contents.Placing placing) {
    List<List<String>> rows = new ArrayList<>();
    for (Contents.Place place : placing.places()) {
      Thing t = place.thing();
      String across =
          t.form() == Thing.Form.BOX
              ? units.show(t.width()) + " × " + units.show(t.height())
              : "⌀ " + units.show(t.width());
      rows.add(
          List.of(
              t.name(),
              units.show(t.length()) + " × " + across,
              units.show(t.mass()),
              Length.show(place.front().si(), units.length(), 3),
              Length.show(place.front().plus(t.length().times(0.5)).si(), units.length(), 3),
              Length.show(place.front().plus(t.length()).si(), units.length(), 3)));
    }
    rows.add(
        List.of(
            "all together",
            "",
            units.show(placing.mass()),
            "",
            Length.show(placing.centreOfGravity().si(), units.length(), 3),
            ""));
    blocks.add(
        new Block.Table(
            List.of("thing", "size", "mass", "begins", "middle, centre of gravity", "ends"), rows));
    Length aft = study.body().length();
    blocks.add(
        new Block.Paragraph(
            "Distances from the nose tip; each thing lies as far forward as it fits. The centre of"
                + " gravity of the contents is at "
                + NamedUnit.NUMBER.format(100.0 * placing.centreOfGravity().dividedBy(aft), 3)
                + " % of the length."));
  }

  private void people(List<Block> blocks, Inside in) {
    for (Map.Entry<String, Cabin> entry : in.cabins().entrySet()) {
      Cabin cabin = entry.getValue();
      blocks.add(
          new Block.Paragraph(
              "“"
                  + entry.getKey()
                  + "”: "
                  + cabin.rows()
                  + (cabin.rows() == 1 ? " row" : " rows")
                  + " of "
                  + cabin.abreast()
                  + ", seats "
                  + Length.show(cabin.seatWidth().si(), units.length(), 3)
                  + " wide at a pitch of "
                  + Length.show(cabin.pitch().si(), units.length(), 3)
                  + ", "
                  + Length.show(cabin.height().si(), units.length(), 3)
                  + " from the floor to the end of the room for the head. The smallest circle"
                  + " around feet, shoulders and heads is "
                  + Length.show(cabin.innerRadius().times(2.0).si(), units.length(), 3)
                  + " wide; the eye lies "
                  + Length.show(cabin.eyeBelowRoof().si(), units.length(), 3)
                  + " below its top. Sizes to start from: "
                  + Cabin.HANDBOOK.cite()
                  + "."));
    }
  }
}
