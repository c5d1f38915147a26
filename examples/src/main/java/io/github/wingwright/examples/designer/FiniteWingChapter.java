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
  private final FiniteWing wing;

  FiniteWingChapter(Design design) {
    this.design = design;
    this.wing = design.finiteWing();
  }

  Chapter chapter() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Table(List.of("method", "lift slope per rad", "δ at C_L 0.5", "neutral point", "roll damping C_lp"), rows()));
    blocks.add(
        new Block.Paragraph(
            "δ is how much more drag the lift costs than on an elliptic wing; the neutral point is that of the wing alone."
                + " A dash: the method does not know."));
    blocks.addAll(differences());
    LiftingLineStall stall = wing.stall();
    blocks.add(
        new Block.Picture(
            picture(stall),
            "Lift coefficient of the sections along the half span by the lifting line: at the trimmed glide and where the wing first"
                + " reaches what its section can carry. The limit falls towards the tip with the chord's Reynolds number."));
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
                    ? "That is inboard: the nose drops before a wing does."
                    : "That is outboard: a wing drops before the nose does.")));
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
              optional(row.rollDamping(), 1.0, "")));
    }
    return rows;
  }

  /** Why the methods differ, as far as they do. */
  private List<Block> differences() {
    List<String> points = new ArrayList<>();
    double ratio = wing.sectionSlope() / (2.0 * Math.PI);
    points.add(
        "The section's lift slope at its Reynolds number is "
            + number(wing.sectionSlope(), 3)
            + " per rad, "
            + number(100.0 * ratio, 2)
            + " % of 2π.");
    double dihedral = design.aircraft().airframe().wing().planform().equivalentDihedral().degrees();
    if (dihedral > 3.0) {
      points.add(
          "The lattice follows the dihedral of "
              + number(dihedral, 2)
              + "°, the lifting line lies flat. Raised tips lie in weaker downwash, so the lattice finds less induced drag for the"
              + " same span on the ground.");
    }
    return List.of(new Block.Points(points));
  }

  private String picture(LiftingLineStall stall) {
    List<FiniteWing.Station> trimmed = wing.loading(design.trim().wingLiftCoefficient(), POINTS);
    List<FiniteWing.Station> stalling = wing.loading(stall.wingLiftCoefficient(), POINTS);
    return new CurvePicture(
            "Lift along the half span",
            "place on the half span, 0 root, 1 tip",
            "lift coefficient of the section",
            List.of(
                curve("limit of the section", stalling, FiniteWing.Station::limit, CurvePicture.Style.LIMIT),
                curve("", stalling, FiniteWing.Station::lift, CurvePicture.Style.MAIN),
                curve("", trimmed, FiniteWing.Station::lift, CurvePicture.Style.OTHER),
                curve("", trimmed, FiniteWing.Station::load, CurvePicture.Style.EDGE)),
            List.of(
                new CurvePicture.Point("stalls first", stall.station(), stall.sectionLiftCoefficient()),
                named("at the stall, C_L " + number(stall.wingLiftCoefficient(), 2), stalling, 0.82, FiniteWing.Station::lift),
                named("in trim, C_L " + number(design.trim().wingLiftCoefficient(), 2), trimmed, 0.16, FiniteWing.Station::lift),
                named("lift per span in trim", trimmed, 0.72, FiniteWing.Station::load)))
        .draw()
        .element();
  }

  private static CurvePicture.Point named(
      String label, List<FiniteWing.Station> stations, double place, ToDoubleFunction<FiniteWing.Station> value) {
    FiniteWing.Station best = stations.get(0);
    for (FiniteWing.Station station : stations) {
      if (Math.abs(station.place() - place) < Math.abs(best.place() - place)) {
        best = station;
      }
    }
    return new CurvePicture.Point(label, best.place(), value.applyAsDouble(best));
  }

  private static CurvePicture.Curve curve(
      String label, List<FiniteWing.Station> stations, ToDoubleFunction<FiniteWing.Station> value, CurvePicture.Style style) {
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
