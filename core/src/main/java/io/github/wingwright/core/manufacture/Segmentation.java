// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.NamedUnit;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * A part split for a machine: into the fewest segments that it takes, with its joints where the part is bent least.
 *
 * <pre>{@code
 * Segmentation pieces = Segmentation.of(halfWing, BuildVolume.box(mm(180), mm(180), mm(180)), EnumSet.of(Lay.UPRIGHT));
 * pieces.segments();      // 0 mm to 175 mm, standing on end; 175 mm to 240 mm, standing on end
 * pieces.joints();        // tube of 2 mm at 175 mm, 15 mm deep each side
 * }</pre>
 *
 * <p>A segment goes into the machine with the box around it and with the tongue that sticks out of it. Because a longer
 * segment is never easier to make, taking each as long as it can be gives their least number; among all splits into that
 * number the one is taken whose most bent joint is bent least, and then the one whose joints are bent least together, on a
 * grid of a two-hundredth of the part. A stub at an end is avoided where that costs no further piece. A part raised on supports counts only in one piece.
 */
public final class Segmentation implements Serializable {
  private static final long serialVersionUID = 1L;

  private static final int GRID = 200;

  /** How deep a joint may go into a piece, over its length: another comes from the other end. */
  private static final double JOINT_SHARE = 0.45;

  private static final Source SPLIT = Source.library("fewest segments, joints where the bending is least");

  private final SlenderPart part;
  private final BuildVolume machine;
  private final EnumSet<Lay> lays;
  private final List<Segment> segments;
  private final List<Joint> joints;

  private Segmentation(
      SlenderPart part, BuildVolume machine, EnumSet<Lay> lays, List<Segment> segments, List<Joint> joints) {
    this.part = part;
    this.machine = machine;
    this.lays = lays;
    this.segments = List.copyOf(segments);
    this.joints = List.copyOf(joints);
  }

  /**
   * Splits a part for a machine.
   *
   * @param part the part
   * @param machine the machine
   * @param lays how its segments may lie in the machine; at least one
   * @return the segments; none if the part cannot be made in it at all, which {@link #findings()} then explain
   */
  public static Segmentation of(SlenderPart part, BuildVolume machine, Set<Lay> lays) {
    Objects.requireNonNull(part, "part");
    Objects.requireNonNull(lays, "lays");
    if (lays.isEmpty()) {
      throw new IllegalArgumentException("lays of " + part.name() + " must be at least one, were none");
    }
    EnumSet<Lay> allowed = EnumSet.copyOf(lays);
    Optional<Orientation> whole = machine.orientation(part.boxLength(), part.width(), part.depth(), allowed);
    if (whole.isPresent()) {
      return new Segmentation(
          part, machine, allowed, List.of(new Segment(Length.ZERO, part.length(), whole.get())), List.of());
    }
    EnumSet<Lay> unraised = EnumSet.copyOf(allowed);
    unraised.remove(Lay.RAISED);
    List<Double> seams = unraised.isEmpty() ? List.of() : new Split(part, machine, unraised, GRID).seams();
    List<Segment> segments = new ArrayList<>();
    List<Joint> joints = new ArrayList<>();
    if (!seams.isEmpty()) {
      JointChoice choice = new JointChoice(part);
      double from = 0.0;
      for (int i = 0; i <= seams.size(); i++) {
        boolean last = i == seams.size();
        double to = last ? part.length().si() : seams.get(i);
        SlenderPart piece = part.between(Length.metres(from), Length.metres(to));
        double length = to - from + part.longer().si() + (last ? 0.0 : JointChoice.overlap(part));
        Length depth = last ? piece.depth() : piece.depth().plus(part.lean(Length.metres(to), JointChoice.overlap(part)));
        Orientation lying = machine.orientation(Length.metres(length), piece.width(), depth, unraised).orElseThrow();
        segments.add(new Segment(Length.metres(from), Length.metres(to), lying));
        if (!last) {
          double next = i + 1 == seams.size() ? part.length().si() : seams.get(i + 1);
          joints.add(choice.at(to, JOINT_SHARE * Math.min(to - from, next - to)));
        }
        from = to;
      }
    }
    return new Segmentation(part, machine, allowed, segments, joints);
  }

  /**
   * The part that was split.
   *
   * @return the part
   */
  public SlenderPart part() {
    return part;
  }

  /**
   * The machine that it was split for.
   *
   * @return its build volume
   */
  public BuildVolume machine() {
    return machine;
  }

  /**
   * The pieces, from the first end on.
   *
   * @return the segments; none if the part cannot be made in the machine
   */
  public List<Segment> segments() {
    return segments;
  }

  /**
   * The joints between them.
   *
   * @return one fewer than segments
   */
  public List<Joint> joints() {
    return joints;
  }

  /**
   * Whether the part can be made in the machine.
   *
   * @return true if it fits in one or more pieces
   */
  public boolean isPossible() {
    return !segments.isEmpty();
  }

  /**
   * What the joints add.
   *
   * @return their mass together
   */
  public Mass addedMass() {
    return Mass.kilograms(joints.stream().mapToDouble(j -> j.added().si()).sum());
  }

  /**
   * What would have to change so that the part comes out in one piece.
   *
   * @return one line for each change that would do alone; none if it already is in one piece
   */
  public List<String> changesForOnePiece() {
    return segments.size() == 1 ? List.of() : new OnePiece(part, machine, lays).changes();
  }

  /**
   * What the designer should know.
   *
   * @return a serious finding if it cannot be made, or if a joint cannot carry its moment; a note if it is in pieces
   */
  public List<Finding> findings() {
    List<Finding> findings = new ArrayList<>();
    if (segments.isEmpty()) {
      findings.add(obstacle());
      return findings;
    }
    if (segments.size() > 1) {
      findings.add(
          Finding.of(
              Severity.NOTE,
              part.name(),
              "It is made in "
                  + segments.size()
                  + " segments. In one piece with: "
                  + String.join("; or ", changesForOnePiece())
                  + ".",
              SPLIT));
    }
    for (Joint joint : joints) {
      if (joint.reserve() < JointChoice.RESERVE) {
        boolean breaks = joint.reserve() < 1.0;
        findings.add(
            Finding.of(
                breaks ? Severity.SERIOUS : Severity.CAUTION,
                "joint of the " + part.name(),
                "The "
                    + joint
                    + " carries "
                    + NamedUnit.NUMBER.format(joint.reserve(), 2)
                    + " times what bends it; add a spar, or a deeper section.",
                joint.reserve(),
                Interval.atLeast(JointChoice.RESERVE),
                NamedUnit.NUMBER,
                SPLIT));
      }
    }
    return findings;
  }

  /** Why not even pieces can be made: the first place whose section is too large, or no room beside a tongue. */
  private Finding obstacle() {
    EnumSet<Lay> unraised = EnumSet.copyOf(lays);
    unraised.remove(Lay.RAISED);
    if (unraised.isEmpty()) {
      return machine.obstacle(part.name(), part.boxLength(), part.width(), part.depth(), lays).orElseThrow();
    }
    Length shortest = Length.metres(JointChoice.overlap(part)).plus(part.longer());
    Optional<SlenderPart.Station> tooLarge =
        part.stations().stream().filter(s -> !machine.longest(s.width(), s.height(), unraised).isPositive()).findFirst();
    if (tooLarge.isPresent()) {
      SlenderPart.Station s = tooLarge.get();
      String place = part.name() + " at " + s.at().format(Length.MILLIMETRE, 3) + " from its first end";
      return machine.obstacle(place, shortest, s.width(), s.height(), unraised).orElseThrow();
    }
    return Finding.of(
        Severity.SERIOUS,
        part.name(),
        "No piece of it goes into the machine of " + machine + " with a tongue of " + shortest.format(Length.MILLIMETRE, 3)
            + " for its joint; it is " + part.length() + " long.",
        SPLIT);
  }

  @Override
  public String toString() {
    String pieces =
        segments.isEmpty() ? "cannot be made" : segments.size() == 1 ? "in one piece" : "in " + segments.size() + " segments";
    return part.name() + " " + pieces + " in " + machine;
  }
}
