// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import io.github.wingwright.core.manufacture.Part;
import io.github.wingwright.core.manufacture.PrintBed;
import io.github.wingwright.core.manufacture.PrintList;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.report.Block;
import io.github.wingwright.stability.design.Design;
import io.github.wingwright.stability.production.GliderParts;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;
import java.util.stream.Collectors;

/** What a newcomer asks with the files and then the parts in hand: which is which, and what goes where. */
final class PartsInHand {
  private static final String SHIM = "shim of ";

  private final Design design;
  private final List<Part> parts;
  private final List<PrintBed> beds;
  private final boolean seated;
  private final NamedUnit<Length> unit;

  /**
   * The words for the parts of a design.
   *
   * @param design the design
   * @param parts its parts
   * @param list how they are printed
   * @param unit the unit to show lengths in
   */
  PartsInHand(Design design, GliderParts parts, PrintList list, NamedUnit<Length> unit) {
    this.design = design;
    this.parts = parts.parts();
    this.beds = beds(parts, list);
    this.seated = parts.findings().stream().noneMatch(f -> f.subject().equals("wing seat"));
    this.unit = unit;
  }

  /** None where a joint finds no room or a part goes on no bed; a text in the folder then says why. */
  private static List<PrintBed> beds(GliderParts parts, PrintList list) {
    try {
      return parts.beds(list);
    } catch (IllegalStateException e) {
      return List.of();
    }
  }

  /** What is printed at one time and with which settings, one row for each bed; nothing where the parts go on none. */
  Optional<Block.Table> bedTable() {
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < beds.size(); i++) {
      PrintBed bed = beds.get(i);
      String names = bed.parts().stream().map(Part::name).collect(Collectors.joining("; "));
      rows.add(List.of(PartFiles.bed(i), names, bed.making()));
    }
    return rows.isEmpty() ? Optional.empty() : Optional.of(new Block.Table(List.of("print this file", "it holds", "set"), rows));
  }

  /** Which file is which, and what else the folder holds. */
  List<String> files() {
    StringJoiner names = new StringJoiner(", ");
    parts.stream().filter(part -> !isShim(part)).forEach(part -> names.add(PartFiles.fileName(part.name())));
    List<String> points = new ArrayList<>();
    points.add(
        beds.isEmpty()
            ? "The parts go on no bed of this machine as they are; a text in the folder beds or parts says why. The file glider.3mf"
                + " holds them side by side."
            : "Each file in the folder beds is one print: its parts lie in place, turned as they are printed, and all take the same"
                + " settings. The file glider.3mf holds all parts side by side, turned alike, for those who arrange them on their own.");
    points.add(
        "The files in the folder parts are in millimetres, one for each part or, where it is split, for each piece: "
            + names
            + (hasShims() ? ", and the shims that set the wing's angle." : "."));
    points.add(
        "To cut by hand instead, print the pages of the folder templates at 100 %, measure their bar, and cut along the outer"
            + " lines; the two files rib-root.txt and rib-tip.txt give the section point by point.");
    return points;
  }

  /** How the tails and the wing sit in the printed body. */
  List<String> seats() {
    List<String> points = new ArrayList<>();
    points.add(
        "The printed body has slots that are open to the rear: push the tailplane into the level one and the fin into the"
            + " upright one above it, see that they are square, and only then glue them. Cut by hand, saw the slots where the"
            + " template of the fuselage shows them.");
    if (seated && hasShims()) {
      Part first = first();
      points.add(
          "It has a trough for the wing too, in which the wing can be moved a little either way. The shim of "
              + words(first)
              + " goes between the two, its thick end "
              + (angle(first) < 0.0 ? "aft" : "forward")
              + (shims().size() > 2 ? "; the others, " + others() + ", are there to try" : "")
              + (shims().size() == 2 ? "; the other, " + others() + ", is there to try" : "")
              + ".");
    }
    return points;
  }

  /** What to turn instead of a tailplane that is fixed. */
  String turningTheWing() {
    double degree = Math.tan(Math.toRadians(1.0)) * design.aircraft().airframe().wing().planform().rootChord().si();
    return "Where the table turns the tailplane and yours is fast in its slot, turn the wing by the same angle the other way:"
        + " the tailplane's leading edge up is the wing's leading edge down, "
        + Length.metres(degree).format(unit, 2)
        + " over its root chord for each degree.";
  }

  static boolean isShim(Part part) {
    return part.name().startsWith(SHIM);
  }

  private boolean hasShims() {
    return parts.stream().anyMatch(PartsInHand::isShim);
  }

  private List<Part> shims() {
    return parts.stream().filter(PartsInHand::isShim).toList();
  }

  private static String words(Part shim) {
    return shim.name().substring(SHIM.length());
  }

  /** What a shim adds to the wing's incidence [rad]: its name ends with its angle, or says that it lies under the trailing edge. */
  private static double angle(Part shim) {
    String words = words(shim);
    int end = words.indexOf('°') + 1;
    double size = Angle.parse(words.substring(0, end)).si();
    return end == words.length() ? size : -size;
  }

  /** The shim nearest to the likely decalage, beyond what is built in. */
  private Part first() {
    var airframe = design.aircraft().airframe();
    double tail = airframe.horizontalTail().map(t -> t.incidence().si()).orElse(0.0);
    double wanted = design.trim().decalage().si() - (airframe.wing().incidence().si() - tail);
    return shims().stream().min(Comparator.comparingDouble(shim -> Math.abs(angle(shim) - wanted))).orElseThrow();
  }

  private String others() {
    StringJoiner names = new StringJoiner(" and ");
    Part first = first();
    shims().stream().filter(shim -> !shim.name().equals(first.name())).forEach(shim -> names.add(words(shim)));
    return names.toString();
  }
}
