// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Workings;
import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.manufacture.BuildVolume;
import io.github.wingwright.core.manufacture.Joint;
import io.github.wingwright.core.manufacture.PrintList;
import io.github.wingwright.core.quantity.Force;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.Moment;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.report.Block;
import io.github.wingwright.core.report.Chapter;
import io.github.wingwright.stability.design.Design;
import io.github.wingwright.stability.production.LaunchLoads;
import io.github.wingwright.stability.production.PrintPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is printed, how it lies in the machine, what a smaller machine would ask for, and what the parts must stand. */
final class PrintChapter {
  private final PrintPlan plan;
  private final Optional<PrintPlan> smaller;
  private final BriefUnits units;
  private final Design design;

  PrintChapter(Design design, GliderBrief brief) {
    plan = PrintPlan.of(design, brief.printing().machine());
    Optional<BuildVolume> other = brief.printing().smaller();
    smaller = other.map(machine -> PrintPlan.of(design, machine));
    units = brief.units();
    this.design = design;
  }

  PrintPlan plan() {
    return plan;
  }

  Chapter chapter() {
    List<Block> blocks = new ArrayList<>();
    PrintList list = plan.list();
    blocks.add(
        new Block.Paragraph(
            "On a machine of "
                + list.machine()
                + " it comes out in "
                + list.pieces()
                + " pieces of "
                + list.mass().format(units.mass(), 3)
                + " together. Hollow parts stand on end, because a thin skin over an empty inside cannot be printed lying; plates lie flat."));
    blocks.add(table(list));
    blocks.add(new Block.Paragraph(trueWalls()));
    Joint middle = plan.rootJoint();
    blocks.add(
        new Block.Paragraph(
            "The halves of the wing meet in the middle at the angle of the dihedral. Lightest joint there that carries the launch: a "
                + middle.kind().words()
                + " of "
                + middle.size().format(units.length(), 2)
                + ", "
                + middle.overlap().format(units.length(), 2)
                + " deep each side, made to the dihedral; it carries "
                + middle.capacity().format(Moment.NEWTON_METRE, 2)
                + " against "
                + middle.bending().format(Moment.NEWTON_METRE, 2)
                + "."));
    smaller.ifPresent(other -> blocks.addAll(besides(other)));
    blocks.addAll(loads());
    List<Step> elastic = plan.loads().elasticWorkings();
    if (!elastic.isEmpty()) {
      blocks.add(
          new Block.Paragraph(
              "The elastic accelerates the glider by its hook; every part lags behind by its own mass. This is felt as it is let go, before there is any lift, so it does not add to the loads of the lift:"));
      blocks.add(new Block.Steps(Workings.of(elastic)));
    }
    blocks.add(new Block.Paragraph("What to know about making it:"));
    blocks.add(new Block.Findings(plan.findings()));
    return new Chapter("Printing", blocks);
  }

  /** Where the masses come from: the walls that meet at an edge or bend round a body hold less than area times wall. */
  private String trueWalls() {
    Airframe airframe = design.aircraft().airframe();
    double density = design.brief().material().density().si();
    double wing = density * design.brief().wingShell().wallThickness().si() * airframe.wing().wettedArea().si();
    double body = density * design.brief().bodyShell().wallThickness().si() * airframe.fuselage().wettedArea().si();
    return "Masses here are those of the mass statement: from the true volume between the surface and its offset, all of the part where walls meet, with the closed ends of the wing, the walls of its seat and those along the slots of the tails. Area times wall alone would give "
        + Mass.kilograms(wing).format(units.mass(), 3)
        + " for the wing and "
        + Mass.kilograms(body).format(units.mass(), 3)
        + " for the fuselage.";
  }

  static Block.Table table(PrintList list) {
    return new Block.Table(PrintList.head(), list.rows());
  }

  private List<Block> besides(PrintPlan other) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Block.Paragraph(
            "On a smaller machine, of "
                + other.list().machine()
                + ": "
                + (other.list().isPossible()
                    ? other.list().pieces()
                        + " pieces, and joints of "
                        + other.list().addedMass().format(units.mass(), 2)
                        + " more. Joints lie where the parts are bent least."
                    : "it cannot be made.")));
    blocks.add(
        new Block.Table(
            List.of("part", "pieces here", "pieces there", "joints there, each part", "joints weigh"),
            plan.list().beside(other.list())));
    List<String> changes =
        other.list().items().stream()
            .filter(i -> !i.pieces().changesForOnePiece().isEmpty())
            .map(i -> "The " + i.name() + " would come off it in one piece with: " + String.join("; or ", i.pieces().changesForOnePiece()) + ".")
            .toList();
    if (!changes.isEmpty()) {
      blocks.add(new Block.Points(changes));
    }
    return blocks;
  }

  private List<Block> loads() {
    LaunchLoads loads = plan.loads();
    List<List<String>> rows = new ArrayList<>();
    List<LaunchLoads.Load> all = new ArrayList<>(loads.loads());
    all.addAll(loads.onJoints(plan.list()));
    smaller.ifPresent(other -> all.addAll(loads.onJoints(other.list())));
    for (LaunchLoads.Load load : all) {
      rows.add(
          List.of(
              load.place(),
              load.cause(),
              load.unit().format(load.value(), 2),
              load.unit().format(load.capacity(), 2),
              NamedUnit.NUMBER.format(load.reserve(), 2)));
    }
    return List.of(
        new Block.Paragraph(
            "At launch the wing may lift "
                + loads.launchLift().format(Force.NEWTON, 2)
                + "; a wall that stops it over 5 mm of a soft nose pushes with "
                + loads.impactForce().format(Force.NEWTON, 2)
                + " on the mean, and with twice as much for a moment. Strength is that of the material, half of it across the layers."),
        new Block.Table(List.of("where", "by what", "load", "carries", "times"), rows));
  }
}
