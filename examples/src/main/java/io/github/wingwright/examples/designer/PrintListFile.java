// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import io.github.wingwright.core.manufacture.Part;
import io.github.wingwright.core.manufacture.PrintBed;
import io.github.wingwright.core.manufacture.PrintItem;
import io.github.wingwright.core.manufacture.PrintList;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.Volume;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** The print list as a table file: all that comes off the machine, shims too, with the number of pieces, their files and beds. */
final class PrintListFile {
  private final PrintList list;
  private final List<Part> pieces;
  private final List<PrintBed> beds;

  /**
   * The file of a list.
   *
   * @param list what is printed
   * @param pieces the parts as they are made, shims among them; none where they cannot be made
   * @param beds what is printed together; none where it does not go on a bed
   */
  PrintListFile(PrintList list, List<Part> pieces, List<PrintBed> beds) {
    this.list = list;
    this.pieces = pieces;
    this.beds = beds;
  }

  /** The file as comma-separated values. */
  String csv() {
    List<String> head = new ArrayList<>(PrintList.head());
    head.addAll(List.of("pieces in all", "files", "bed"));
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < list.items().size(); i++) {
      PrintItem item = list.items().get(i);
      List<Part> own = pieces.stream().filter(part -> belongs(part, item)).toList();
      int many = own.isEmpty() ? item.count() * item.pieces().segments().size() : own.size();
      List<String> row = new ArrayList<>(list.rows().get(i));
      row.addAll(List.of(Integer.toString(many), files(own), beds(own)));
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

  private List<String> row(Part shim) {
    Volume volume = shim.check().volume();
    String mass =
        shim.material().map(m -> Mass.kilograms(m.density().si() * volume.si()).format(Mass.GRAM, 3)).orElse("");
    String material = shim.material().map(m -> m.name()).orElse("");
    String length = "0 to " + shim.check().box().length().format(Length.MILLIMETRE, 3);
    return List.of(
        shim.name(), "1", material, "solid", mass, "lying on a flat side", length, "none", "1", files(List.of(shim)),
        beds(List.of(shim)));
  }

  /** The number of the bed of each piece, in the order of its files. */
  private String beds(List<Part> parts) {
    return parts.stream()
        .flatMap(part -> IntStream.range(0, beds.size()).filter(i -> holds(beds.get(i), part)).mapToObj(i -> Integer.toString(i + 1)))
        .collect(Collectors.joining("; "));
  }

  private static boolean holds(PrintBed bed, Part part) {
    return bed.parts().stream().anyMatch(p -> p.name().equals(part.name()));
  }

  private static String files(List<Part> parts) {
    return parts.stream().map(PartFiles::path).collect(Collectors.joining("; "));
  }
}
