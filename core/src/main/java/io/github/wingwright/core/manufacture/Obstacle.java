// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.geometry.Inscribed;
import io.github.wingwright.core.quantity.Length;
import java.util.Comparator;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Which limit of a machine a part passes, and by how much: its length, or, where its section alone finds no room, the
 * height or the bed in the lay that comes nearest.
 *
 * @param lay the lay
 * @param what what is too large, such as {@code "deep for its height"}
 * @param size how large it is [m]
 * @param limit how large it may be [m]
 */
record Obstacle(Lay lay, String what, double size, double limit) {
  private static final Source MACHINE = Source.taken("geometry of a part in the space of the machine");

  static Finding of(BuildVolume machine, String name, Length length, Length width, Length depth, Set<Lay> lays) {
    double longest = machine.longest(width, depth, lays).si();
    if (longest > 0.0) {
      String message = "It is " + beyond(length.si() - longest) + " too long for the machine of " + machine + ".";
      return finding(name, message, length.si(), longest);
    }
    Obstacle least =
        lays.stream()
            .flatMap(lay -> ofSection(machine, lay, width.si(), depth.si()))
            .min(Comparator.comparingDouble(o -> o.size() - o.limit()))
            .orElseThrow(() -> new IllegalArgumentException("lays of " + name + " must be at least one, were none"));
    String message =
        "Its section of " + width + " × " + depth + " does not go into the machine of " + machine + ": "
            + least.lay().words() + " it is " + beyond(least.size() - least.limit()) + " too " + least.what() + " of "
            + Length.MILLIMETRE.format(least.limit(), 4) + ".";
    return finding(name, message, least.size(), least.limit());
  }

  private static Finding finding(String name, String message, double size, double limit) {
    return Finding.of(
        Severity.SERIOUS, name, message, size, Interval.between(0.0, limit), Length.MILLIMETRE, MACHINE);
  }

  /** The worst limit of the section in one lay. */
  private static Stream<Obstacle> ofSection(BuildVolume machine, Lay lay, double width, double depth) {
    double height = machine.height().si();
    double bed = machine.bedLength().si();
    double across = machine.isRound() ? bed : Math.hypot(bed, machine.bedWidth().si());
    Stream<Obstacle> all =
        switch (lay) {
          case STRAIGHT -> Stream.of(high(lay, depth, height), wide(lay, width, bed));
          case DIAGONAL -> Stream.of(high(lay, depth, height), wide(lay, width, across));
          case ON_EDGE -> Stream.of(high(lay, width, height), wide(lay, depth, across));
          case UPRIGHT, RAISED -> Stream.of(standing(machine, width, depth));
        };
    return all.max(Comparator.comparingDouble(o -> o.size() - o.limit())).stream();
  }

  private static Obstacle high(Lay lay, double size, double height) {
    return new Obstacle(lay, lay == Lay.ON_EDGE ? "wide for the height" : "deep for the height", size, height);
  }

  private static Obstacle wide(Lay lay, double size, double bed) {
    return new Obstacle(lay, lay == Lay.ON_EDGE ? "deep for the bed" : "wide for the bed", size, bed);
  }

  private static Obstacle standing(BuildVolume machine, double width, double depth) {
    if (machine.isRound()) {
      return new Obstacle(Lay.UPRIGHT, "large across its corners for the bed", Math.hypot(width, depth), machine.bedLength().si());
    }
    double less = Math.min(width, depth);
    double narrow = machine.bedWidth().si();
    if (less > narrow) {
      return new Obstacle(Lay.UPRIGHT, width < depth ? "wide for the bed" : "deep for the bed", less, narrow);
    }
    double room = Inscribed.longestRectangle(machine.bedLength().si(), narrow, less);
    return new Obstacle(Lay.UPRIGHT, width < depth ? "deep for the bed" : "wide for the bed", Math.max(width, depth), room);
  }

  private static String beyond(double metres) {
    return Length.metres(metres).format(Length.MILLIMETRE, 3);
  }
}
