// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import io.github.wingwright.core.mass.Material;
import io.github.wingwright.core.mass.Materials;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.Moment;
import io.github.wingwright.core.quantity.Pressure;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Chooses the lightest joint that fits into a part at a place and carries the moment there with a reserve. */
final class JointChoice {
  /** A joint shall carry this many times its moment; glue and prints scatter (choice of this library). */
  static final double RESERVE = 2.0;

  /** Outer diameters of bought tubes and their walls [m] (common practice, no source). */
  private static final double[][] TUBES = {
    {2e-3, 0.5e-3}, {3e-3, 0.5e-3}, {4e-3, 0.5e-3}, {5e-3, 0.5e-3}, {6e-3, 0.5e-3}, {8e-3, 0.5e-3}, {10e-3, 1e-3}
  };

  /** Diameters of dowels [m]: four lines and more. */
  private static final double[] DOWELS = {1.8e-3, 2e-3, 3e-3, 4e-3};

  /** Loose fit and tight fit, per side [m] (public design guides for material extrusion). */
  private static final double LOOSE = 0.2e-3;

  private static final double TIGHT = 0.1e-3;
  /** A tube in a part much deeper than itself has nothing to hold it. */
  private static final double SNUG = 4.0;

  /** A section that much wider than deep is that of a wing, whose tongue is flat. */
  private static final double FLAT = 3.0;

  /** A pin is held at least that many of its diameters deep (common practice, no source). */
  private static final double HELD = 3.0;

  private static final double SHORTEST = 5e-3;
  private static final double LONGEST_TONGUE = 10e-3;

  private final SlenderPart part;

  JointChoice(SlenderPart part) {
    this.part = part;
  }

  /** How deep a tongue goes: half the depth of the part, 5 to 10 mm (common practice, no source). */
  static double overlap(SlenderPart part) {
    return Math.min(LONGEST_TONGUE, Math.max(SHORTEST, 0.5 * part.thickest().si()));
  }

  /**
   * The lightest joint with enough reserve, else the strongest there is.
   *
   * @param place where, along the part [m]
   * @param room how deep it may go into each piece [m]: behind that the next joint begins
   */
  Joint at(double place, double room) {
    SlenderPart.Station station = part.at(Length.metres(place));
    List<Joint> joints = new ArrayList<>();
    if (part.wall().isPositive()) {
      tongue(station, room).ifPresent(joints::add);
      pinned(joints, station, room);
    } else {
      joints.add(strip(station, room));
      pinned(joints, station, room);
    }
    if (joints.isEmpty()) {
      joints.add(strip(station, room));
    }
    return joints.stream()
        .filter(j -> j.reserve() >= RESERVE)
        .min(Comparator.comparing((Joint j) -> j.added().si()))
        .orElseGet(() -> joints.stream().max(Comparator.comparing(j -> j.capacity().si())).orElseThrow());
  }

  /** What goes from one hollow piece into the next: flat in a wing, round in a body; both are bent across their layers. */
  private Optional<Joint> tongue(SlenderPart.Station s, double room) {
    return s.width().si() > FLAT * s.depth().si() ? Optional.of(flatTongue(s, room)) : sleeve(s, room);
  }

  /** The solid tongue of a wing, as {@link Pieces} makes it, for the thinnest section that it reaches. */
  private Joint flatTongue(SlenderPart.Station s, double room) {
    double overlap = Math.min(room, overlap(part));
    double thick = Tongue.THICKNESS * least(s, overlap);
    double width = (Tongue.TO - Tongue.FROM) * s.width().si();
    double moment = JointStrength.ACROSS_LAYERS * strength(part.material()) * width * thick * thick / 6.0;
    return joint(JointKind.TONGUE, s, overlap, thick, TIGHT, part.material().density().si() * width * thick * overlap, moment);
  }

  /** A sleeve of the part's own wall inside it, in the narrower of the sections at its two ends. */
  private Optional<Joint> sleeve(SlenderPart.Station seam, double room) {
    double overlap = Math.min(room, overlap(part));
    SlenderPart.Station end = part.at(Length.metres(Math.min(part.length().si(), seam.at().si() + overlap)));
    double w = part.wall().si();
    double inset = 2.0 * (w + TIGHT);
    double height = Math.min(seam.depth().si(), end.depth().si()) - inset;
    double width = Math.min(seam.width().si(), end.width().si()) - inset;
    if (height <= 2.0 * w || width <= 2.0 * w) {
      return Optional.empty();
    }
    double around = ring(width, height);
    double volume = around * w * 2.0 * overlap;
    double strength = JointStrength.ACROSS_LAYERS * strength(part.material());
    double moment = JointStrength.shellMoment(strength, w, height - w, width - w);
    return Optional.of(
        joint(JointKind.TONGUE, seam, overlap, w, TIGHT, part.material().density().si() * volume, moment));
  }

  /** A strip as thick as the plate over the seam, on both sides of it. */
  private Joint strip(SlenderPart.Station s, double room) {
    double overlap = Math.min(room, SHORTEST);
    double thick = Math.max(1e-4, s.depth().si());
    double width = s.width().si();
    double moment = strength(part.material()) * width * thick * thick / 6.0;
    double mass = part.material().density().si() * width * thick * 2.0 * overlap;
    return joint(JointKind.TONGUE, s, overlap, thick, 0.0, mass, moment);
  }

  /** Tubes that fill the depth, and in solid parts dowels, with a wall of the part around them. */
  private void pinned(List<Joint> joints, SlenderPart.Station s, double room) {
    double wall = Math.max(part.wall().si(), 0.4e-3);
    double carbon = strength(Materials.CARBON_TUBE);
    double density = Materials.CARBON_TUBE.density().si();
    for (double[] tube : TUBES) {
      double overlap = Math.min(room, Math.max(15e-3, 5.0 * tube[0]));
      double depth = least(s, overlap);
      if (overlap >= HELD * tube[0] && tube[0] <= depth - 2.0 * wall - 2.0 * TIGHT && depth <= SNUG * tube[0]) {
        double inner = tube[0] - 2.0 * tube[1];
        double area = 0.25 * Math.PI * (tube[0] * tube[0] - inner * inner);
        joints.add(
            joint(
                JointKind.TUBE,
                s,
                overlap,
                tube[0],
                TIGHT,
                density * area * 2.0 * overlap,
                JointStrength.tubeMoment(carbon, tube[0], inner)));
      }
    }
    for (double dowel : DOWELS) {
      double overlap = Math.min(room, Math.max(8e-3, 4.0 * dowel));
      double inside = least(s, overlap) - 2.0 * wall - 2.0 * TIGHT;
      if (!part.wall().isPositive() && overlap >= HELD * dowel && dowel <= inside && s.width().si() >= 6.0 * dowel) {
        double moment = 2.0 * JointStrength.tubeMoment(strength(part.material()), dowel, 0.0);
        double volume = 2.0 * 0.25 * Math.PI * dowel * dowel * 2.0 * overlap;
        joints.add(
            joint(JointKind.DOWEL, s, overlap, dowel, LOOSE, part.material().density().si() * volume, moment));
      }
    }
  }

  /** The least depth of the part within an overlap to both sides of a seam. */
  private double least(SlenderPart.Station s, double overlap) {
    double before = part.at(Length.metres(Math.max(0.0, s.at().si() - overlap))).depth().si();
    double after = part.at(Length.metres(Math.min(part.length().si(), s.at().si() + overlap))).depth().si();
    return Math.min(s.depth().si(), Math.min(before, after));
  }

  private static Joint joint(
      JointKind kind, SlenderPart.Station s, double overlap, double size, double clearance, double mass, double moment) {
    return new Joint(
        kind,
        s.at(),
        Length.metres(overlap),
        Length.metres(size),
        Length.metres(clearance),
        Mass.kilograms(mass),
        s.bending(),
        Moment.newtonMetres(moment));
  }

  /** Outline of an ellipse, by Ramanujan's first approximation (from memory), within 0.5 % for sections of 1 : 20. */
  private static double ring(double width, double height) {
    double a = 0.5 * width;
    double b = 0.5 * height;
    return Math.PI * (3.0 * (a + b) - Math.sqrt((3.0 * a + b) * (a + 3.0 * b)));
  }

  /** A material of unknown strength counts as a soft foam: 0.1 MPa. */
  private static double strength(Material material) {
    return material.strength().map(Pressure::si).orElse(1e5);
  }
}
