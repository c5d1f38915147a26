// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import io.github.wingwright.core.manufacture.Part;
import io.github.wingwright.core.manufacture.PrintItem;
import io.github.wingwright.core.manufacture.PrintList;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.Volume;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The print list as a table file: all that comes off the machine, shims too, with the number of pieces and their files. */
final class PrintListFile {
  private final PrintList list;
  private final List<Part> pieces;

  /**
   * The file of a list.
   *
   * @param list what is printed
   * @param pieces the parts as they are made, shims among them; none where they cannot be made
   */
  PrintListFile(PrintList list, List<Part> pieces) {
    this.list = list;
    this.pieces = pieces;
  }

  /** The file as comma-separated values. */
  String csv() {
    List<String> head = new ArrayList<>(PrintList.head());
    head.addAll(List.of("pieces in all", "files"));
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < list.items().size(); i++) {
      PrintItem item = list.items().get(i);
      List<Part> own = pieces.stream().filter(part -> belongs(part, item)).toList();
      int many = own.isEmpty() ? item.count() * item.pieces().segments().size() : own.size();
      List<String> row = new ArrayList<>(list.rows().get(i));
      row.addAll(List.of(Integer.toString(many), files(own)));
      rows.add(row);
    }
    pieces.stream().filter(PartsInHand::isShim).forEach(shim -> rows.add(row(shim)));
    return PrintList.toCsv(head, rows);
  }

  /** A half wing is made twice, mirrored: both are parts of the wing. */
  private static boolean belongs(Part part, PrintItem item) {
    String name = item.name().equals("half wing") ? "wing" : item.name();
    return part.name().equals(name) || part.name().startsWith(name + ", ");
  }

  private static List<String> row(Part shim) {
    Volume volume = shim.check().volume();
    String mass =
        shim.material().map(m -> Mass.kilograms(m.density().si() * volume.si()).format(Mass.GRAM, 3)).orElse("");
    String material = shim.material().map(m -> m.name()).orElse("");
    String length = "0 to " + shim.check().box().length().format(Length.MILLIMETRE, 3);
    return List.of(
        shim.name(), "1", material, "solid", mass, "lying on its flat side", length, "none", "1", files(List.of(shim)));
  }

  private static String files(List<Part> parts) {
    return parts.stream().map(PartFiles::path).collect(Collectors.joining("; "));
  }
}
