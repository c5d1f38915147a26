// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Guideline;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.geometry.LiftingSurface;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * What a printer that lays plastic line by line can make, as guidelines: the values that public design guides agree on for a
 * nozzle of 0.4 mm. No standard has them; ISO/ASTM 52910 says that it gives no data of a process.
 */
public final class PrintGuidelines {
  private static final Source GUIDES =
      Source.published("public design guides for material extrusion, three in agreement", "nozzle of 0.4 mm");
  private static final Source RECORDS =
      Source.published("public records of hobby prints, unrefereed", "shells of a single line, solid and foamed");
  private static final String PRINTS = "printed parts";

  /** Walls that stand by themselves: two lines. */
  public static final Guideline WALL =
      length("standing wall", 0.8e-3, Double.POSITIVE_INFINITY, "Print two lines, or close the wall to a shell.", GUIDES);

  /** Shells of a single line. */
  public static final Guideline SINGLE_WALL =
      length("single wall of a closed shell", 0.40e-3, 0.65e-3, "Lay one line as wide as the nozzle allows.", RECORDS);

  /** The smallest feature that comes out. */
  public static final Guideline FEATURE = length("smallest feature", 0.8e-3, Double.POSITIVE_INFINITY, "Make it larger, or cut it from sheet.", GUIDES);

  /** Round pins. */
  public static final Guideline PIN = length("pin", 1.8e-3, Double.POSITIVE_INFINITY, "Use a rod, or a pin of four lines.", GUIDES);

  /** Holes come out narrower than drawn. */
  public static final Guideline HOLE = length("hole", 2.0e-3, Double.POSITIVE_INFINITY, "Print it at 2 mm or more and drill it to size.", GUIDES);

  /** An edge is at least one line thick. */
  public static final Guideline TRAILING_EDGE =
      length("trailing edge", 0.4e-3, Double.POSITIVE_INFINITY, "Cut the section off where it is one line thick.", GUIDES);

  /** How far a wall may lean from the vertical without support. */
  public static final Guideline OVERHANG =
      new Guideline(
          "overhang from the vertical",
          Interval.between(0.0, Math.toRadians(50.0)),
          Angle.DEGREE,
          PRINTS + " without support",
          "Turn the part, add support, or cut the end off flat.",
          GUIDES);

  /** How far a line hangs free between two supports. */
  public static final Guideline BRIDGE = length("bridge", 0.0, 10e-3, "Put infill or a rib under it.", GUIDES);

  /** How high a part stands over its foot. */
  public static final Guideline SLENDERNESS =
      Guideline.ofNumber(
          "height over the width of the foot",
          0.0,
          12.0,
          PRINTS + " that stand on end",
          "Print it with a brim, slowly towards the top.",
          Source.COMMON_PRACTICE);

  /** A section that much wider than deep is that of a wing. */
  private static final double FLAT = 3.0;

  private PrintGuidelines() {}

  private static Guideline length(String name, double lower, double upper, String advice, Source source) {
    return new Guideline(name, Interval.between(lower, upper), Length.MILLIMETRE, PRINTS, advice, source);
  }

  /**
   * What to know about a part in its lay: wall, thinnest section, overhang, foot.
   *
   * @param part the part in one piece, or a piece of it by {@link SlenderPart#between}
   * @param orientation how it lies
   * @return findings, each under the name of the part
   */
  public static List<Finding> check(SlenderPart part, Orientation orientation) {
    Objects.requireNonNull(part, "part");
    Objects.requireNonNull(orientation, "orientation");
    List<Finding> findings = new ArrayList<>();
    double wall = part.wall().si();
    if (wall > 0.0) {
      Guideline guideline = wall < WALL.range().lower() ? SINGLE_WALL : WALL;
      guideline.check(wall).ifPresent(f -> findings.add(named(part.name(), f)));
      thinnest(part).flatMap(FEATURE::check).ifPresent(f -> findings.add(named(part.name(), f)));
    } else {
      FEATURE.check(part.thickest().si()).ifPresent(f -> findings.add(named(part.name(), f)));
    }
    if (orientation.lay() == Lay.UPRIGHT) {
      overhang(part, findings);
      double foot = Math.min(part.width().si(), part.thickest().si());
      if (wall > 0.0 && part.width().si() < 4.0 * part.thickest().si()) {
        SLENDERNESS.check(part.length().si() / foot).ifPresent(f -> findings.add(named(part.name(), f)));
      }
    }
    return findings;
  }

  /**
   * What to know about a part as a machine makes it: each piece in its own lay, which stands on its own foot and is as high as
   * itself, and what its joints ask of the machine.
   *
   * @param made the part and its pieces
   * @return findings, of each guideline the piece that leaves it farthest; none if the part cannot be made
   */
  public static List<Finding> check(Segmentation made) {
    Objects.requireNonNull(made, "made");
    Map<String, Finding> worst = new LinkedHashMap<>();
    int pieces = made.segments().size();
    for (int i = 0; i < pieces; i++) {
      Segment segment = made.segments().get(i);
      SlenderPart piece = made.part().between(segment.from(), segment.to());
      String name = pieces == 1 ? piece.name() : piece.name() + ", piece " + (i + 1) + " of " + pieces;
      for (Finding finding : check(piece, segment.orientation())) {
        String what = finding.subject().substring(piece.name().length() + 2);
        worst.merge(what, under(name, what, finding), (a, b) -> excess(b) > excess(a) ? b : a);
      }
    }
    List<Finding> findings = new ArrayList<>(worst.values());
    for (Joint joint : made.joints()) {
      // A sleeve is as thick as the wall, which has been looked at.
      if (joint.kind() != JointKind.TONGUE || !joint.size().equals(made.part().wall())) {
        findings.addAll(check("joint of the " + made.part().name(), joint));
      }
    }
    return findings;
  }

  /**
   * What a joint asks of the machine: a pin or a tongue thick enough, a hole wide enough.
   *
   * @param name what the findings are about, such as {@code "joint of the half wing"}
   * @param joint the joint
   * @return findings
   */
  public static List<Finding> check(String name, Joint joint) {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(joint, "joint");
    List<Finding> findings = new ArrayList<>();
    double size = joint.size().si();
    double hole = size + 2.0 * joint.clearance().si();
    switch (joint.kind()) {
      case TONGUE -> FEATURE.check(size).ifPresent(f -> findings.add(named(name, f)));
      case DOWEL -> {
        PIN.check(size).ifPresent(f -> findings.add(named(name, f)));
        HOLE.check(hole).ifPresent(f -> findings.add(named(name, f)));
      }
      case TUBE -> HOLE.check(hole).ifPresent(f -> findings.add(named(name, f)));
    }
    return findings;
  }

  /**
   * What a hole asks of the machine.
   *
   * @param name what the findings are about
   * @param bore the hole
   * @return a finding if it comes out too narrow
   */
  public static Optional<Finding> check(String name, Bore bore) {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(bore, "bore");
    return HOLE.check(bore.diameter().si()).map(f -> named(name, f));
  }

  /**
   * The trailing edge of a surface: how thin its section leaves it, where that is thinnest.
   *
   * @param surface the surface, with the section as it is
   * @param made least thickness of the edge as it is made
   * @return a note where the edge is thickened to what a machine can lay, a caution where it is not; empty where the section is
   *     thick enough all along
   */
  public static Optional<Finding> trailingEdge(LiftingSurface surface, Length made) {
    Objects.requireNonNull(surface, "surface");
    Objects.requireNonNull(made, "made");
    Planform planform = surface.planform();
    double blunt = surface.section().trailingEdgeThickness();
    Length thinnest = planform.stations().stream().min(Comparator.comparing(planform::chordAt)).orElseThrow();
    double edge = blunt * planform.chordAt(thinnest).si();
    double least = TRAILING_EDGE.range().lower();
    if (edge >= least) {
      return Optional.empty();
    }
    boolean enough = made.si() >= least * (1.0 - 1e-9);
    String where =
        blunt == 0.0 ? "all along" : "at " + Length.MILLIMETRE.format(thinnest.si(), 3) + " from the root, where it is thinnest";
    String words =
        "The section leaves it " + Length.MILLIMETRE.format(edge, 2) + " thick " + where + "; the parts make it "
            + Length.MILLIMETRE.format(Math.max(edge, made.si()), 2)
            + (enough ? ", a line wide." : ", which a line does not fill. " + TRAILING_EDGE.advice());
    return Optional.of(
        Finding.of(
            enough ? Severity.NOTE : Severity.CAUTION,
            "trailing edge",
            words,
            edge,
            TRAILING_EDGE.range(),
            Length.MILLIMETRE,
            GUIDES));
  }

  /** The thinnest section of a wing [m]; the ends of a body close to a point, which is no feature. */
  private static Optional<Double> thinnest(SlenderPart part) {
    return part.stations().stream()
        .filter(s -> s.width().si() > FLAT * s.depth().si())
        .map(s -> s.depth().si())
        .min(Comparator.naturalOrder());
  }

  /** By how much a finding leaves its range, over the limit that it passes: to tell the worst of several. */
  private static double excess(Finding finding) {
    double value = finding.value().orElse(0.0);
    Interval range = finding.range().orElse(Interval.ALL);
    double below = (range.lower() - value) / Math.max(Math.abs(range.lower()), Double.MIN_NORMAL);
    double above = (value - range.upper()) / Math.max(Math.abs(range.upper()), Double.MIN_NORMAL);
    return Math.max(below, above) + (finding.severity() == Severity.NOTE ? 0.0 : 1e3);
  }

  private static Finding named(String name, Finding finding) {
    return under(name, finding.subject(), finding);
  }

  private static Finding under(String name, String what, Finding finding) {
    return Finding.of(
        finding.severity(),
        name + ": " + what,
        finding.message(),
        finding.value().orElse(0.0),
        finding.range().orElse(Interval.ALL),
        finding.unit(),
        finding.source());
  }

  /**
   * How much the walls of a part lean when it stands on its first end.
   *
   * <pre>{@code tan φ = max(|front′|, |rear′|, ½·|depth′|)}</pre>
   *
   * @param part the part
   * @param index number of the step between two stations, from 0
   * @return angle from the vertical φ
   */
  public static Angle lean(SlenderPart part, int index) {
    Objects.requireNonNull(part, "part");
    Door.within(index, 0, part.stations().size() - 2, "number of the step");
    SlenderPart.Station a = part.stations().get(index);
    SlenderPart.Station b = part.stations().get(index + 1);
    double up = b.at().si() - a.at().si();
    double front = Math.abs(b.front().si() - a.front().si());
    double rear = Math.abs(b.rear().si() - a.rear().si());
    double deep = 0.5 * Math.abs(b.depth().si() - a.depth().si());
    return Angle.radians(Math.atan2(Math.max(Math.max(front, rear), deep), up));
  }

  private static void overhang(SlenderPart part, List<Finding> findings) {
    double limit = OVERHANG.range().upper();
    int steps = part.stations().size() - 1;
    double greatest = 0.0;
    double opening = 0.0;
    for (int i = 0; i < steps; i++) {
      double lean = lean(part, i).si();
      greatest = Math.max(greatest, lean);
      if (lean > limit) {
        opening = Math.max(opening, part.stations().get(i + (i < steps / 2 ? 1 : 0)).depth().si());
      }
    }
    if (greatest <= limit) {
      return;
    }
    boolean closes = BRIDGE.range().contains(opening);
    findings.add(
        Finding.of(
            closes ? Severity.NOTE : Severity.CAUTION,
            part.name() + ": overhang from the vertical",
            "Its rounded ends lean further than a line holds, where they are still "
                + Length.MILLIMETRE.format(opening, 2)
                + " wide"
                + (closes ? ": the line bridges that." : ". Support them from inside, or print the ends as caps, open end down."),
            greatest,
            OVERHANG.range(),
            Angle.DEGREE,
            GUIDES));
  }
}
