// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import io.github.wingwright.core.aerodynamics.LiftingLineStall;
import io.github.wingwright.core.drawing.CurvePicture;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.report.Block;
import io.github.wingwright.core.report.Chapter;
import io.github.wingwright.stability.design.Design;
import io.github.wingwright.stability.design.FiniteWing;
import io.github.wingwright.stability.lattice.FiniteWingComparison;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/** The wing as a wing of finite span: three methods beside each other, the lift along the span, and where it stalls. */
final class FiniteWingChapter {
  private static final int POINTS = 61;

  private final Design design;
  private final BriefUnits units;
  private final FiniteWing wing;

  FiniteWingChapter(Design design, BriefUnits units) {
    this.design = design;
    this.units = units;
    this.wing = design.finiteWing();
  }

  Chapter chapter() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Block.Table(
            List.of("method", "lift slope", "δ at C_L 0.5", "neutral point", "C_lp", "assumes"),
            rows()));
    blocks.add(
        new Block.Paragraph(
            "Lift slope per radian and roll damping of the wing alone. δ is how much more drag the lift costs than on an elliptic wing of the"
                + " same projected span. A dash: the method does not know."));
    blocks.add(new Block.Paragraph(differences()));
    LiftingLineStall stall = wing.stall();
    blocks.add(
        new Block.Picture(
            picture(stall),
            "Lift coefficient of the sections along the half span by the lifting line: in the trimmed glide, and where the wing first"
                + " reaches what its section can carry. Dashed: lift per span in the trimmed glide, c_l·c over the mean chord."));
    blocks.add(
        new Block.Paragraph(
            "The section gives out first at "
                + number(100.0 * stall.station(), 2)
                + " % of the half span, when the wing as a whole has a lift coefficient of "
                + number(stall.wingLiftCoefficient(), 3)
                + "; the polar that the glide is reckoned with ends at "
                + number(design.glide().usableLift(), 3)
                + ". "
                + (stall.station() < 0.5
                    ? "It begins inboard: the nose drops before a wing does. "
                    : "It begins outboard: a wing drops before the nose does. ")
                + "Taken at its word the line stalls the glider at "
                + stallSpeed(stall)
                + " instead of "
                + design.glide().stallSpeed().format(units.speed(), 3)
                + "; in truth the sections beside the first one carry on for a while."));
    blocks.add(new Block.Findings(wing.findings()));
    return new Chapter("The finite wing", blocks);
  }

  private List<List<String>> rows() {
    List<List<String>> rows = new ArrayList<>();
    for (FiniteWingComparison.Row row : wing.comparison().methods()) {
      rows.add(
          List.of(
              row.method(),
              number(row.liftSlope(), 4),
              optional(row.inducedDragFactor(), 1.0, ""),
              optional(row.neutralPoint(), 100.0, " % of c̄"),
              optional(row.rollDamping(), 1.0, ""),
              row.assumes()));
    }
    return rows;
  }

  /** Why the methods differ, as far as they do. */
  private String differences() {
    return "All methods have the section's own lift slope, "
        + number(wing.sectionSlope(), 3)
        + " per rad at its Reynolds number, "
        + number(100.0 * wing.sectionSlope() / (2.0 * Math.PI), 2)
        + " % of 2π. The lifting line puts the chord on one line; the lattice has a chord, loses a little more at the tips, and so has"
        + " the lower slope: by less than half of 1/A on a straight wing. Handbook and lifting line lie flat; the last row is the wing"
        + " as it is built.";
  }

  private String stallSpeed(LiftingLineStall stall) {
    double ratio = Math.sqrt(design.glide().usableLift() / stall.wingLiftCoefficient());
    return design.glide().stallSpeed().times(ratio).format(units.speed(), 3);
  }

  private String picture(LiftingLineStall stall) {
    List<FiniteWing.Station> trimmed = wing.loading(design.trim().wingLiftCoefficient(), POINTS);
    List<FiniteWing.Station> stalling = wing.loading(stall.wingLiftCoefficient(), POINTS);
    return new CurvePicture(
            "Lift along the half span",
            "place on the half span, 0 root, 1 tip",
            "lift coefficient of the section",
            List.of(
                curve(
                    "limit of the section",
                    stalling,
                    FiniteWing.Station::limit,
                    CurvePicture.Style.LIMIT),
                curve("", stalling, FiniteWing.Station::lift, CurvePicture.Style.MAIN),
                curve("", trimmed, FiniteWing.Station::lift, CurvePicture.Style.OTHER),
                curve("", trimmed, FiniteWing.Station::load, CurvePicture.Style.EDGE)),
            List.of(
                new CurvePicture.Point(
                    "stalls first", stall.station(), stall.sectionLiftCoefficient()),
                named(
                    "at the stall, C_L " + number(stall.wingLiftCoefficient(), 2),
                    stalling,
                    0.82,
                    FiniteWing.Station::lift),
                named(
                    "in trim, C_L " + number(design.trim().wingLiftCoefficient(), 2),
                    trimmed,
                    0.16,
                    FiniteWing.Station::lift),
                named("lift per span", trimmed, 0.72, FiniteWing.Station::load)))
        .draw()
        .element();
  }

  private static CurvePicture.Point named(
      String label,
      List<FiniteWing.Station> stations,
      double place,
      ToDoubleFunction<FiniteWing.Station> value) {
    FiniteWing.Station best = stations.get(0);
    for (FiniteWing.Station station : stations) {
      if (Math.abs(station.place() - place) < Math.abs(best.place() - place)) {
        best = station;
      }
    }
    return new CurvePicture.Point(label, best.place(), value.applyAsDouble(best));
  }

  private static CurvePicture.Curve curve(
      String label,
      List<FiniteWing.Station> stations,
      ToDoubleFunction<FiniteWing.Station> value,
      CurvePicture.Style style) {
    return new CurvePicture.Curve(
        label,
        stations.stream().map(FiniteWing.Station::place).toList(),
        stations.stream().map(value::applyAsDouble).toList(),
        style);
  }

  private static String optional(OptionalDouble value, double factor, String unit) {
    return value.isPresent() ? number(factor * value.getAsDouble(), 3) + unit : "–";
  }

  private static String number(double value, int digits) {
    return NamedUnit.NUMBER.format(value, digits);
  }
}
