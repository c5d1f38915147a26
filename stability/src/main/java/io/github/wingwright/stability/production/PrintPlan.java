// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.production;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.manufacture.BuildVolume;
import io.github.wingwright.core.manufacture.Joint;
import io.github.wingwright.core.manufacture.Lay;
import io.github.wingwright.core.manufacture.PrintGuidelines;
import io.github.wingwright.core.manufacture.PrintItem;
import io.github.wingwright.core.manufacture.PrintList;
import io.github.wingwright.core.manufacture.Segmentation;
import io.github.wingwright.core.manufacture.SlenderPart;
import io.github.wingwright.core.mass.Material;
import io.github.wingwright.core.mass.Materials;
import io.github.wingwright.core.mass.PrintedShell;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.stability.design.Design;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;

/**
 * How a design is printed on a machine: its parts, how each lies, into what it is split, and what it must stand.
 *
 * <pre>{@code
 * PrintPlan plan = PrintPlan.of(design, BuildVolume.box(millimetres(256), millimetres(256), millimetres(256)));
 * plan.list().toCsv();
 * plan.list().beside(PrintPlan.of(design, smaller).list());
 * }</pre>
 */
public final class PrintPlan {
  private static final EnumSet<Lay> HOLLOW = EnumSet.of(Lay.UPRIGHT);
  private static final EnumSet<Lay> PLATE = EnumSet.of(Lay.STRAIGHT, Lay.DIAGONAL);

  private final Design design;
  private final LaunchLoads loads;
  private final PrintList list;
  private final SlenderPart half;

  private PrintPlan(Design design, BuildVolume machine) {
    this.design = design;
    this.loads = LaunchLoads.of(design);
    Airframe airframe = design.aircraft().airframe();
    Wing wing = airframe.wing();
    Material material = design.brief().material();
    Length wingWall = design.brief().wingShell().wallThickness();
    this.half =
        SlenderPart.half("half wing", wing, material, wingWall, design.brief().lineWidth(), loads::wingBending);
    List<PrintItem> items = new ArrayList<>();
    items.add(item("half wing", 2, shell(design.brief().wingShell()), mass("wing").times(0.5), half, machine, HOLLOW));
    SlenderPart body =
        SlenderPart.body(airframe.fuselage(), material, design.brief().bodyShell().wallThickness(), loads::bodyBending)
            .markedAt(design.aircraft().masses().centreOfGravity().x())
            .jointedUpTo(slots(airframe));
    items.add(item("fuselage", 1, shell(design.brief().bodyShell()), mass("fuselage"), body, machine, HOLLOW));
    for (Tail tail : airframe.tails()) {
      Length thickness = design.brief().tailThickness();
      String name = tail.role().words();
      boolean flat = tail.planform().isMirrored() && tail.planform().equivalentDihedral().si() == 0.0;
      boolean halves = tail.planform().isMirrored() && !flat;
      SlenderPart plate =
          (flat
                  ? SlenderPart.whole(name, tail, material, Length.ZERO, thickness, y -> loads.tailBending(tail, y))
                  : SlenderPart.half(name, tail, material, Length.ZERO, y -> loads.tailBending(tail, y)))
              .withDepth(thickness);
      String making = "plate of " + thickness.format(Length.MILLIMETRE, 3) + ", solid";
      String part = halves ? "half " + name : name;
      items.add(item(part, halves ? 2 : 1, making, mass(name).times(halves ? 0.5 : 1.0), plate, machine, PLATE));
    }
    list = new PrintList(machine, items);
  }

  /**
   * Plans the printing of a design.
   *
   * @param design the design
   * @param machine the machine
   * @return the plan
   */
  public static PrintPlan of(Design design, BuildVolume machine) {
    Objects.requireNonNull(design, "design");
    Objects.requireNonNull(machine, "machine");
    return new PrintPlan(design, machine);
  }

  /** Where the slots for the tails begin. */
  private static Length slots(Airframe airframe) {
    double first = airframe.tails().stream().mapToDouble(tail -> tail.placement().x().si()).min().orElse(Double.POSITIVE_INFINITY);
    return Length.metres(Math.max(0.0, Math.min(first, airframe.fuselage().length().si())));
  }

  private Mass mass(String item) {
    return design.aircraft().masses().item(item).map(i -> i.mass()).orElse(Mass.ZERO);
  }

  private static String shell(PrintedShell shell) {
    String text = shell.toString();
    return text.substring(shell.material().name().length() + 2);
  }

  private static PrintItem item(
      String name, int count, String making, Mass mass, SlenderPart part, BuildVolume machine, EnumSet<Lay> lays) {
    return new PrintItem(name, count, making, mass, Segmentation.of(part, machine, lays));
  }

  /**
   * What is printed.
   *
   * @return the list
   */
  public PrintList list() {
    return list;
  }

  /**
   * What it must stand.
   *
   * @return loads at launch and impact
   */
  public LaunchLoads loads() {
    return loads;
  }

  /**
   * The joint in the middle of the wing, whose halves meet at an angle.
   *
   * @return the lightest that carries the throw twice, or the strongest that fits
   */
  public Joint rootJoint() {
    return loads.rootJoint(half);
  }

  /**
   * What to know about making it, on this machine.
   *
   * @return findings, heaviest first
   */
  public List<Finding> findings() {
    List<Finding> findings = new ArrayList<>(list.findings());
    Material material = design.brief().material();
    if (!Materials.isPrinted(material)) {
      findings.add(
          Finding.of(
              Severity.CAUTION,
              "material",
              "No printer lays " + material.name() + ". Masses and strength are those of walls and plates as thick as the brief"
                  + " says, cut from it by the templates; a solid part has an infill of 1.",
              Source.library("what is printed and what is cut")));
    }
    findings.addAll(loads.findings());
    findings.addAll(loads.findings(loads.onJoints(list)));
    PrintGuidelines.trailingEdge(design.aircraft().airframe().wing(), design.brief().lineWidth()).ifPresent(findings::add);
    Joint root = rootJoint();
    findings.addAll(PrintGuidelines.check("joint in the middle of the wing", root));
    if (root.reserve() < 2.0) {
      findings.add(
          Finding.of(
              root.reserve() < 1.0 ? Severity.SERIOUS : Severity.CAUTION,
              "joint in the middle of the wing",
              "The " + root + " carries too little of the launch; glue a bent wire or a strip of plywood across the middle.",
              root.reserve(),
              Interval.atLeast(2.0),
              NamedUnit.NUMBER,
              Source.library("bending at launch against the joint")));
    }
    return Finding.inOrderOfWeight(findings);
  }

  @Override
  public String toString() {
    return list.toString();
  }
}
