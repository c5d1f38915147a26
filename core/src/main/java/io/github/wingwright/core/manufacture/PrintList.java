// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.quantity.Mass;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * Everything that is to be printed for a design on one machine: part, material, mass, orientation, segments, joints.
 *
 * @param machine the machine
 * @param items the parts
 */
public record PrintList(BuildVolume machine, List<PrintItem> items) implements Serializable {
  private static final List<String> HEAD =
      List.of("part", "count", "material", "making", "mass of one", "lay in the machine", "segments", "joints");

  /** Keeps the items as they are. */
  public PrintList {
    Objects.requireNonNull(items, "items");
    items = List.copyOf(items);
    if (items.isEmpty()) {
      throw new IllegalArgumentException("items of a print list must be at least one, were none");
    }
  }

  /**
   * How many pieces come off the machine.
   *
   * @return segments of all parts
   */
  public int pieces() {
    return items.stream().mapToInt(i -> i.count() * i.pieces().segments().size()).sum();
  }

  /**
   * Mass of the parts without joints.
   *
   * @return the sum
   */
  public Mass mass() {
    return Mass.kilograms(items.stream().mapToDouble(i -> i.count() * i.mass().si()).sum());
  }

  /**
   * What the joints between segments add.
   *
   * @return the sum
   */
  public Mass addedMass() {
    return Mass.kilograms(items.stream().mapToDouble(i -> i.count() * i.pieces().addedMass().si()).sum());
  }

  /**
   * Whether every part can be made.
   *
   * @return true if each fits, in one piece or more
   */
  public boolean isPossible() {
    return items.stream().allMatch(i -> i.pieces().isPossible());
  }

  /**
   * What to know about the parts and their joints on this machine.
   *
   * @return findings, heaviest first
   */
  public List<Finding> findings() {
    List<Finding> findings = new ArrayList<>();
    for (PrintItem item : items) {
      findings.addAll(item.pieces().findings());
      findings.addAll(PrintGuidelines.check(item.pieces()));
    }
    return Finding.inOrderOfWeight(findings);
  }

  /**
   * The heads of the table.
   *
   * @return as many as a row has cells
   */
  public static List<String> head() {
    return HEAD;
  }

  /**
   * The list as a table.
   *
   * @return one row of text for each part
   */
  public List<List<String>> rows() {
    return items.stream()
        .map(
            i ->
                List.of(
                    i.name(),
                    Integer.toString(i.count()),
                    i.material().name(),
                    i.making(),
                    i.mass().format(Mass.GRAM, 3),
                    i.lying(),
                    i.segmentWords(),
                    i.jointWords()))
        .toList();
  }

  /**
   * The list as comma-separated values (RFC 4180, with line feeds), a head line first.
   *
   * @return the text
   */
  public String toCsv() {
    return toCsv(HEAD, rows());
  }

  /**
   * Rows as comma-separated values (RFC 4180, with line feeds): this list with what else belongs to it, such as files.
   *
   * @param head the head line
   * @param rows the rows, each as long as the head
   * @return the text
   */
  public static String toCsv(List<String> head, List<List<String>> rows) {
    Objects.requireNonNull(head, "head");
    Objects.requireNonNull(rows, "rows");
    StringBuilder text = new StringBuilder();
    line(text, head);
    for (List<String> row : rows) {
      if (row.size() != head.size()) {
        throw new IllegalArgumentException("a row must have " + head.size() + " cells, had " + row.size());
      }
      line(text, row);
    }
    return text.toString();
  }

  private static void line(StringBuilder text, List<String> cells) {
    text.append(cells.stream().map(PrintList::quoted).collect(Collectors.joining(","))).append('\n');
  }

  private static String quoted(String cell) {
    boolean plain = cell.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
    return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
  }

  /**
   * The list beside that for another machine: how many pieces each takes, which joints the other needs, what they add.
   *
   * @param other the list of the same parts for the other machine
   * @return one row for each part: name, pieces here, pieces there, joints there, mass that they add
   */
  public List<List<String>> beside(PrintList other) {
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < Math.min(items.size(), other.items.size()); i++) {
      PrintItem here = items.get(i);
      PrintItem there = other.items.get(i);
      rows.add(
          List.of(
              here.count() == 1 ? here.name() : here.count() + " × " + here.name(),
              pieces(here),
              pieces(there),
              there.jointWords(),
              Mass.kilograms(there.count() * there.pieces().addedMass().si()).format(Mass.GRAM, 2)));
    }
    rows.add(
        List.of(
            "together",
            Integer.toString(pieces()),
            Integer.toString(other.pieces()),
            "",
            other.addedMass().format(Mass.GRAM, 2)));
    return rows;
  }

  private static String pieces(PrintItem item) {
    return item.pieces().isPossible() ? Integer.toString(item.count() * item.pieces().segments().size()) : "cannot be made";
  }

  @Override
  public String toString() {
    return items.size() + " parts in " + pieces() + " pieces, " + mass() + ", on " + machine;
  }
}
