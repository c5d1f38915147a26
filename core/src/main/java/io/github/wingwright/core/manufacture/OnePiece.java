// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import io.github.wingwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * What would have to change so that a part comes out of a machine in one piece: the part shorter, another machine of the
 * same kind, or another lay. Sizes are rounded to a tenth of a millimetre to the side on which the change does what it says.
 */
final class OnePiece {
  private static final double TENTH = 1e4;
  private static final double ROUNDING = 1e-6;

  private final SlenderPart part;
  private final BuildVolume machine;
  private final Set<Lay> lays;

  /** A machine that would do, and how it differs. */
  record Other(BuildVolume machine, Lay lay, String words) {}

  OnePiece(SlenderPart part, BuildVolume machine, Set<Lay> lays) {
    this.part = part;
    this.machine = machine;
    this.lays = lays;
  }

  /** One line for each change that would do alone. */
  List<String> changes() {
    List<String> changes = new ArrayList<>();
    double longest = Math.floor(machine.longest(part.width(), part.depth(), lays).si() * TENTH + ROUNDING) / TENTH;
    if (longest > 0.0) {
      changes.add(part.name() + " shorter by " + mm(up(part.length().si() - longest)) + ", to " + mm(longest));
    }
    machines().forEach(other -> changes.add(other.words()));
    for (Lay lay : List.of(Lay.STRAIGHT, Lay.DIAGONAL, Lay.ON_EDGE, Lay.UPRIGHT)) {
      boolean across = lay == Lay.DIAGONAL && (machine.isRound() || fits(machine, Lay.STRAIGHT));
      if (!lays.contains(lay) && !across && fits(machine, lay)) {
        changes.add("printed " + lay.words() + ", where it fits, not " + lays.iterator().next().words());
      }
    }
    if (!lays.contains(Lay.RAISED) && fits(machine, Lay.RAISED)) {
      changes.add("printed raised towards the far upper corner, where it fits, on supports all along");
    }
    return changes;
  }

  /** Machines of the same kind in which the part would fit as it may lie. */
  List<Other> machines() {
    List<Other> others = new ArrayList<>();
    if (lays.contains(Lay.UPRIGHT)) {
      others.add(standing());
    }
    if (lays.contains(Lay.STRAIGHT) && !lays.contains(Lay.DIAGONAL) && !machine.isRound()) {
      others.add(lyingAlong());
    }
    if (lays.contains(Lay.DIAGONAL) || machine.isRound() && lays.contains(Lay.STRAIGHT)) {
      others.add(lyingAcross(lays.contains(Lay.DIAGONAL) ? Lay.DIAGONAL : Lay.STRAIGHT, part.width().si(), part.depth().si()));
    }
    if (lays.contains(Lay.ON_EDGE)) {
      others.add(lyingAcross(Lay.ON_EDGE, part.depth().si(), part.width().si()));
    }
    return others;
  }

  private Other standing() {
    double tall = Math.max(up(part.length().si()), machine.height().si());
    String high = "a machine that is " + mm(tall) + " high, " + mm(tall - machine.height().si()) + " more than this one";
    BuildVolume same = with(machine.bedLength().si(), machine.bedWidth().si(), tall);
    if (fits(same, Lay.UPRIGHT)) {
      return new Other(same, Lay.UPRIGHT, high);
    }
    String isHigh = tall > machine.height().si() ? high + ", with " : "a machine with ";
    double w = part.width().si();
    double d = part.depth().si();
    double side = up(machine.isRound() ? Math.hypot(w, d) : square(w, d));
    return new Other(with(side, side, tall), Lay.UPRIGHT, isHigh + bed(side) + ", with the part standing on end");
  }

  private Other lyingAlong() {
    double longer = up(Math.max(part.length().si(), part.width().si()));
    double shorter = Math.max(machine.bedWidth().si(), up(Math.min(part.length().si(), part.width().si())));
    double tall = Math.max(machine.height().si(), up(part.depth().si()));
    String words = "a bed of " + mm(longer) + " × " + mm(shorter) + also(tall);
    return new Other(with(longer, shorter, tall), Lay.STRAIGHT, words);
  }

  private Other lyingAcross(Lay lay, double level, double standing) {
    double length = part.length().si();
    double side = up(machine.isRound() ? Math.hypot(length, level) : square(length, level));
    double tall = Math.max(machine.height().si(), up(standing));
    String lying = lay == Lay.ON_EDGE ? ", with the part lying on edge" : ", with the part lying across it";
    return new Other(with(side, side, tall), lay, bed(side) + also(tall) + lying);
  }

  /** Side of the smallest square around a rectangle: along it, or at 45° with (p + w)/√2. */
  private static double square(double p, double w) {
    return Math.min(Math.max(p, w), (p + w) / Math.sqrt(2.0));
  }

  private String bed(double side) {
    return (machine.isRound() ? "a round bed of ⌀ " : "a square bed of ") + mm(side);
  }

  private String also(double tall) {
    return tall > machine.height().si() ? " under a height of " + mm(tall) : "";
  }

  private BuildVolume with(double length, double width, double tall) {
    return machine.isRound()
        ? BuildVolume.cylinder(Length.metres(length), Length.metres(tall))
        : BuildVolume.box(Length.metres(length), Length.metres(width), Length.metres(tall));
  }

  private boolean fits(BuildVolume space, Lay lay) {
    return space.orientation(part.length(), part.width(), part.depth(), EnumSet.of(lay)).isPresent();
  }

  private static double up(double metres) {
    return Math.ceil(metres * TENTH - ROUNDING) / TENTH;
  }

  private static String mm(double metres) {
    return Length.MILLIMETRE.format(metres, metres < 1.0 ? 4 : 5);
  }
}
