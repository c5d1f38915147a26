// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * What is printed at one time: parts that are made alike, each where it lies on the bed of a machine.
 *
 * <pre>{@code
 * List<PrintBed> beds = PrintBed.fill(machine, "one wall, no infill", List.of(half.lying(Orientation.UPRIGHT, 1), otherHalf));
 * beds.get(0).file("wing halves").write(Path.of("bed-1.3mf"));
 * }</pre>
 *
 * <p>The origin is the corner of the bed, or that of the square around a round one; x runs along the first side that the
 * machine was given, z up. Parts lie in rows with 5 mm between them, deepest first, each in the first place that takes it,
 * and all together in the middle of the bed, where they leave the most room for a brim. On a round bed rows lie in the square
 * that it holds; a part too long for that has a bed of its own.
 *
 * @param machine the machine
 * @param making how its parts are made, the same for all, such as {@code "1 wall of 0.42 mm, infill 0 %"}
 * @param parts the parts where they lie, at least one
 */
public record PrintBed(BuildVolume machine, String making, List<Part> parts) {
  /** What a part may be beyond the limit [m]: the rounding of turned coordinates. */
  private static final double SLACK = 1e-8;

  /** Refuses an empty bed. */
  public PrintBed {
    Objects.requireNonNull(parts, "parts");
    Objects.requireNonNull(machine, "machine");
    Door.said(making, "making of a bed");
    parts = List.copyOf(parts);
    if (parts.isEmpty()) {
      throw new IllegalArgumentException("parts of a bed must be at least one, were none");
    }
  }

  /** A row of parts along the longer side. */
  private static final class Row {
    private final double at;
    private final double depth;
    private double filled;

    Row(double at, double depth) {
      this.at = at;
      this.depth = depth;
    }
  }

  /** A part with the place of its least corner. */
  private record Place(Part part, double along, double across) {}

  /** A bed in the making: its rows and what lies in them, counted from the corner of the first part. */
  private static final class Rows {
    private final double length;
    private final double width;
    private final List<Row> rows = new ArrayList<>();
    private final List<Place> places = new ArrayList<>();

    Rows(double length, double width) {
      this.length = length;
      this.width = width;
    }

    /** Puts a part behind the last of a row that is deep enough, or into a new row; false if there is no room. */
    boolean take(Part part) {
      double along = part.check().box().length().si();
      double deep = part.check().box().width().si();
      for (Row row : rows) {
        if (deep <= row.depth + SLACK && row.filled + along <= length + SLACK) {
          put(row, part, along);
          return true;
        }
      }
      Row last = rows.isEmpty() ? null : rows.get(rows.size() - 1);
      double at = last == null ? 0.0 : last.at + last.depth + PartRows.GAP;
      if (at + deep > width + SLACK) {
        return false;
      }
      Row row = new Row(at, deep);
      rows.add(row);
      put(row, part, along);
      return true;
    }

    private void put(Row row, Part part, double along) {
      places.add(new Place(part, row.filled, row.at));
      row.filled += along + PartRows.GAP;
    }

    /** All parts together in the middle of the bed. */
    List<Part> inTheMiddleOf(BuildVolume machine) {
      Row last = rows.get(rows.size() - 1);
      double longest = rows.stream().mapToDouble(row -> row.filled - PartRows.GAP).max().orElseThrow();
      double right = 0.5 * (machine.bedLength().si() - longest);
      double back = 0.5 * (machine.bedWidth().si() - last.at - last.depth);
      return places.stream().map(p -> at(machine, p.part(), right + p.along(), back + p.across())).toList();
    }
  }

  /**
   * Lays parts on beds.
   *
   * @param machine the machine
   * @param making how all of them are made
   * @param laid the parts as they lie, see {@link Part#lying}
   * @return the beds, as many as it takes; none for no parts
   * @throws IllegalStateException if a part goes on no bed; the message names it, the limit and by how much it is passed
   */
  public static List<PrintBed> fill(BuildVolume machine, String making, List<Part> laid) {
    Objects.requireNonNull(making, "making");
    Objects.requireNonNull(machine, "machine");
    Objects.requireNonNull(laid, "laid");
    List<Part> deepest = new ArrayList<>(laid);
    deepest.sort(Comparator.comparingDouble((Part part) -> part.check().box().width().si()).reversed());
    double turn = machine.isRound() ? Math.sqrt(0.5) : 1.0;
    double length = turn * machine.bedLength().si();
    double width = turn * machine.bedWidth().si();
    List<Rows> filled = new ArrayList<>();
    List<PrintBed> alone = new ArrayList<>();
    for (Part part : deepest) {
      MeshBox box = part.check().box();
      within(machine, part, "tall", box.height().si(), machine.height().si());
      if (box.length().si() > length + SLACK || box.width().si() > width + SLACK) {
        alone.add(new PrintBed(machine, making, List.of(inTheMiddle(machine, part))));
      } else if (filled.stream().noneMatch(rows -> rows.take(part))) {
        Rows rows = new Rows(length, width);
        rows.take(part);
        filled.add(rows);
      }
    }
    List<PrintBed> beds = new ArrayList<>();
    filled.forEach(rows -> beds.add(new PrintBed(machine, making, rows.inTheMiddleOf(machine))));
    beds.addAll(alone);
    return beds;
  }

  /** A part alone on a round bed: its corners, not those of its box, must lie on it. */
  private static Part inTheMiddle(BuildVolume machine, Part part) {
    MeshBox box = part.check().box();
    double length = machine.bedLength().si();
    if (!machine.isRound()) {
      within(machine, part, "long", box.length().si(), length);
      within(machine, part, "wide", box.width().si(), machine.bedWidth().si());
    }
    double x = 0.5 * (box.least().x().si() + box.most().x().si());
    double y = 0.5 * (box.least().y().si() + box.most().y().si());
    double farthest = 0.0;
    TriangleMesh mesh = part.mesh();
    for (int v = 0; v < mesh.vertices(); v++) {
      farthest = Math.max(farthest, Math.hypot(mesh.coordinate(v, 0) - x, mesh.coordinate(v, 1) - y));
    }
    within(machine, part, "across", 2.0 * farthest, length);
    return at(machine, part, 0.5 * (length - box.length().si()), 0.5 * (length - box.width().si()));
  }

  private static void within(BuildVolume machine, Part part, String way, double size, double limit) {
    if (size > limit + SLACK) {
      throw new IllegalStateException(
          part.name() + " must be at most " + Length.metres(limit).format(Length.MILLIMETRE, 5) + " " + way + " for the machine of "
              + machine + ", is " + Length.metres(size - limit).format(Length.MILLIMETRE, 3) + " more");
    }
  }

  /** The part with the least corner of its box at a place, counted along the longer side and across it. */
  private static Part at(BuildVolume machine, Part part, double along, double across) {
    Placement least = part.check().box().least();
    TriangleMesh moved =
        part.mesh()
            .moved(
                new Placement(
                    Length.metres(along - least.x().si()), Length.metres(across - least.y().si()), least.z().negated()));
    if (machine.isDeep()) {
      moved = moved.turned(2, Angle.degrees(90)).moved(new Placement(machine.bedWidth(), Length.ZERO, Length.ZERO));
    }
    return part.with(moved);
  }

  /**
   * The bed as a 3MF file.
   *
   * @param title what it holds, not blank
   * @return the file, with every part where it lies
   */
  public ThreeMfFile file(String title) {
    return ThreeMfFile.titled(title).with(parts).asTheyLie();
  }

  @Override
  public String toString() {
    return parts.stream().map(Part::name).collect(Collectors.joining("; ")) + ": " + making;
  }
}
