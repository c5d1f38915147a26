// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Guideline;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.report.Block;
import io.github.wingwright.core.report.Chapter;
import io.github.wingwright.stability.LateralStability;
import io.github.wingwright.stability.derivatives.LateralContribution;
import io.github.wingwright.stability.derivatives.LateralGuidelines;
import io.github.wingwright.stability.derivatives.LatticeDerivatives;
import io.github.wingwright.stability.design.Design;
import io.github.wingwright.stability.design.FlightModes;
import io.github.wingwright.stability.dynamics.LateralDerivatives;
import io.github.wingwright.stability.lattice.LatticeCondition;
import java.util.ArrayList;
import java.util.List;

/** The lateral derivatives part by part, the lattice beside them, and the ranges that such models keep to. */
final class LateralChapter {
  private final Design design;
  private final FlightModes modes;

  LateralChapter(Design design) {
    this.design = design;
    this.modes = design.modes();
  }

  Chapter chapter() {
    LateralDerivatives total = modes.lateralDerivatives();
    LateralGuidelines guidelines = guidelines();
    List<List<String>> rows = new ArrayList<>();
    for (LateralContribution part : modes.lateralContributions()) {
      List<String> row = row(part.part(), part.values());
      if (row.stream().skip(1).anyMatch(cell -> !cell.isEmpty())) {
        rows.add(row);
      }
    }
    rows.add(row("handbook, all", total));
    rows.add(row("lattice", lattice()));
    List<List<String>> ranges = new ArrayList<>();
    double[] values = {total.yawSideslip(), total.rollSideslip()};
    for (int i = 0; i < guidelines.guidelines().size(); i++) {
      Guideline one = guidelines.guidelines().get(i);
      ranges.add(
          List.of(
              one.name(),
              number(values[i]),
              one.range().toString(),
              one.range().contains(values[i]) ? "within" : one.advice()));
    }
    LateralStability spiral = design.lateral();
    ranges.add(
        List.of(
            "spiral parameter, a rule for models",
            number(spiral.spiralParameter().degrees()) + "°",
            "above " + number(Math.toDegrees(LateralStability.NEUTRAL)) + "°",
            spiral.isSpirallyStable()
                ? "stable"
                : "needs " + spiral.neededDihedral().format(Angle.DEGREE, 2) + " of dihedral"));
    List<String> measures = guidelines.check(total).stream().map(Finding::subject).toList();
    List<Finding> findings =
        new ArrayList<>(modes.findings().stream().filter(f -> measures.contains(f.subject())).toList());
    findings.addAll(spiral.findings());
    return Chapter.of(
        "Across the plane of symmetry",
        new Block.Paragraph(
            "Derivatives about the centre of gravity at C_L "
                + NamedUnit.NUMBER.format(modes.glide().liftCoefficient(), 2)
                + ", per radian, rates as p·b/(2V) and r·b/(2V): side force C_Y, roll C_l and yaw C_n with sideslip β, roll rate p and yaw"
                + " rate r. C_lβ negative rolls away from the wind, C_nβ positive turns into it."),
        new Block.Table(
            List.of("part", "C_Yβ", "C_lβ", "C_nβ", "C_Yp", "C_lp", "C_np", "C_Yr", "C_lr", "C_nr"),
            rows),
        new Block.Paragraph(
            "The lattice has wing, tailplane and fin with the slopes of their sections, but no body and no friction. The handbook's"
                + " dihedral takes the wing's lift slope for a twist that is opposite on both sides; such a load loses more at the tips"
                + ", which is why the lattice finds less. Where both agree, trust the number; where not, take it as a range."),
        new Block.Table(List.of("measure", "this glider", "range", "verdict"), ranges),
        new Block.Findings(findings));
  }

  private LateralGuidelines guidelines() {
    return design.brief().aircraftClass().isModel()
        ? LateralGuidelines.handLaunchedModel()
        : LateralGuidelines.lightAeroplane();
  }

  private LateralDerivatives lattice() {
    return LatticeDerivatives.lateral(
        design.lattice().solve(LatticeCondition.at(modes.angle(design.lattice()))));
  }

  private static List<String> row(String name, LateralDerivatives d) {
    List<String> row = new ArrayList<>(List.of(name));
    double[] values = {
      d.sideSideslip(),
      d.rollSideslip(),
      d.yawSideslip(),
      d.sideRollRate(),
      d.rollRollRate(),
      d.yawRollRate(),
      d.sideYawRate(),
      d.rollYawRate(),
      d.yawYawRate()
    };
    for (double value : values) {
      row.add(value == 0.0 ? "" : number(value));
    }
    return row;
  }

  private static String number(double value) {
    return NamedUnit.NUMBER.format(value, 3);
  }
}
