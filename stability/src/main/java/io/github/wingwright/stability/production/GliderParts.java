// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.production;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.manufacture.BodySolid;
import io.github.wingwright.core.manufacture.Bore;
import io.github.wingwright.core.manufacture.Joint;
import io.github.wingwright.core.manufacture.JointKind;
import io.github.wingwright.core.manufacture.Part;
import io.github.wingwright.core.manufacture.Pieces;
import io.github.wingwright.core.manufacture.PlateSolid;
import io.github.wingwright.core.manufacture.PrintBed;
import io.github.wingwright.core.manufacture.PrintItem;
import io.github.wingwright.core.manufacture.PrintList;
import io.github.wingwright.core.manufacture.Segmentation;
import io.github.wingwright.core.manufacture.SlenderPart;
import io.github.wingwright.core.manufacture.Solid;
import io.github.wingwright.core.manufacture.TailSlots;
import io.github.wingwright.core.manufacture.Template;
import io.github.wingwright.core.manufacture.Templates;
import io.github.wingwright.core.manufacture.TriangleMesh;
import io.github.wingwright.core.manufacture.WingSeat;
import io.github.wingwright.core.manufacture.WingSolid;
import io.github.wingwright.core.mass.MassStatement;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.stability.design.Design;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * The parts of a design as they are made: meshes for the printer, templates for those who cut by hand, and what the parts
 * weigh by their real shape.
 *
 * <pre>{@code
 * GliderParts parts = GliderParts.of(design, millimetres(0.05));
 * ThreeMfFile.titled("hall glider").with(parts.parts()).write(Path.of("glider.3mf"));
 * }</pre>
 *
 * <p>Each half of the wing has the hole of the joint in the middle, if one fits, along the panel: the pin is bent to the
 * dihedral. The body has a trough as steep as the wing's
 * dihedral in which the wing can be moved by 6 % of its mean chord either way, slots for the tails, and a rib below the
 * centre of gravity. Shims between wing and trough set the decalage: one for its likely value, one for each end of its range.
 */
public final class GliderParts {
  /** Gap to each side of a plate in its slot (public design guides for material extrusion: 0.1 mm is a tight fit). */
  private static final Length PLAY = Length.millimetres(0.1);

  /** Where the joint in the middle of the wing sits along the chord: a tube at the first, dowels at both. */
  private static final double[] ROOT_PLACES = {0.3, 0.5};

  private static final Length SHALLOWEST = Length.millimetres(3);
  private static final Source SHAPE = Source.taken("shape of the parts as they are made");

  private final Design design;
  private final Length tolerance;
  private final Airframe airframe;
  private final Tail horizontal;
  private final Tail vertical;
  private final WingSolid plain;
  private final WingSolid half;
  private final BodySolid body;
  private final PlateSolid tailplane;
  private final PlateSolid fin;
  private final Optional<WingSeat> seat;
  private final Shims shims;
  private final boolean pinned;
  private final TriangleMesh wingMesh;
  private final TriangleMesh bodyMesh;
  private final TriangleMesh tailMesh;
  private final TriangleMesh finMesh;
  private volatile @Nullable Cut last;

  private GliderParts(Design design, Length tolerance) {
    this.design = design;
    this.tolerance = tolerance;
    airframe = design.aircraft().airframe();
    Wing wing = airframe.wing();
    Length thickness = design.brief().tailThickness();
    plain = WingSolid.half(wing.planform(), wing.section()).trailingEdgeAtLeast(design.brief().lineWidth());
    half = pinned(wing.planform().span());
    pinned = half != plain;
    horizontal = airframe.horizontalTail().orElseThrow(() -> without("tailplane"));
    vertical = airframe.verticalTail().orElseThrow(() -> without("fin"));
    tailplane = PlateSolid.of(horizontal.planform(), thickness);
    fin = PlateSolid.of(vertical.planform(), thickness).startingAt(thickness.times(0.5));
    TailSlots slots =
        new TailSlots(
            horizontal.placement().x(),
            vertical.placement().x(),
            horizontal.placement().z(),
            thickness.plus(PLAY.times(2.0)));
    seat = Seating.of(wing, airframe.fuselage(), slots);
    BodySolid marked =
        BodySolid.of(airframe.fuselage()).with(slots).markedAt(design.aircraft().masses().centreOfGravity().x());
    body = seat.isPresent() ? marked.with(seat.get()) : marked;
    shims = Shims.of(design);
    wingMesh = half.mesh(tolerance);
    bodyMesh = body.mesh(tolerance);
    tailMesh = tailplane.mesh(tolerance);
    finMesh = fin.mesh(tolerance);
  }

  /**
   * The parts of a design.
   *
   * @param design the design, a glider with a tailplane and a fin
   * @param tolerance chordal tolerance of the meshes, 1 µm to 10 mm
   * @return the parts
   * @throws IllegalStateException if a part cannot be made; the message says which limit is passed, where and by how much
   */
  public static GliderParts of(Design design, Length tolerance) {
    Objects.requireNonNull(design, "design");
    return new GliderParts(design, tolerance);
  }

  private static IllegalStateException without(String what) {
    return new IllegalStateException("parts of a glider must include a " + what + ", the design has none");
  }

  /**
   * The half with the holes of the joint in the middle, no deeper than so much, along the panel for a pin bent to the dihedral;
   * without, if there is no room.
   */
  private WingSolid pinned(Length deepest) {
    LaunchLoads loads = LaunchLoads.of(design);
    Length wall = design.brief().wingShell().wallThickness();
    Joint joint =
        loads.rootJoint(
            SlenderPart.half("half wing", airframe.wing(), design.brief().material(), wall, loads::wingBending));
    if (joint.kind() == JointKind.TONGUE) {
      return plain;
    }
    Length hole = joint.size().plus(joint.clearance().times(2.0));
    WingSolid bored = plain;
    for (int i = 0; i < (joint.kind() == JointKind.TUBE ? 1 : 2); i++) {
      Length depth = joint.overlap().compareTo(deepest) < 0 ? joint.overlap() : deepest;
      while (depth.compareTo(SHALLOWEST) >= 0 && !plain.fits(Bore.along(ROOT_PLACES[i], hole, Length.ZERO, depth))) {
        depth = depth.minus(Length.millimetres(0.5));
      }
      if (depth.compareTo(SHALLOWEST) >= 0) {
        bored = bored.with(Bore.along(ROOT_PLACES[i], hole, Length.ZERO, depth));
      }
    }
    return bored;
  }

  /**
   * All parts in one piece each, shims last.
   *
   * @return the parts, every mesh watertight
   */
  public List<Part> parts() {
    List<Part> parts = new ArrayList<>();
    parts.add(part("wing, starboard half", wingMesh));
    parts.add(part("wing, port half", wingMesh.mirrored()));
    parts.add(part("fuselage", bodyMesh));
    parts.add(part(Tail.Role.HORIZONTAL.words(), tailMesh));
    parts.add(part(Tail.Role.VERTICAL.words(), finMesh));
    shims.meshes(tolerance).forEach((name, mesh) -> parts.add(part(name, mesh)));
    return parts;
  }

  /**
   * All parts as a machine can make them: cut where its print list says, with their joints.
   *
   * @param list the print list of this design
   * @return the parts, every mesh watertight
   * @throws IllegalStateException if a joint does not fit into its part
   */
  public List<Part> pieces(PrintList list) {
    return cut(list).stream().map(PrintPiece::part).toList();
  }

  /**
   * The same pieces as they lie in the machine: turned as its print list says, on z = 0. A piece that stands on end stands on
   * its flatter end; shims lie on one of their flat sides.
   *
   * @param list the print list of this design
   * @return the parts, in the order of {@link #pieces}
   * @throws IllegalStateException if a joint does not fit into its part
   */
  public List<Part> laid(PrintList list) {
    return cut(list).stream().map(PrintPiece::laid).toList();
  }

  /**
   * The same pieces on the beds of the machine, those on one bed made alike: wing halves with their walls, the body with its
   * own, what is solid.
   *
   * @param list the print list of this design
   * @return the beds, in the order in which the list names what lies on them
   * @throws IllegalStateException if a joint does not fit into its part, or a piece on no bed; the message says which limit is
   *     passed and by how much
   */
  public List<PrintBed> beds(PrintList list) {
    Map<String, List<Part>> alike = new LinkedHashMap<>();
    cut(list).forEach(piece -> alike.computeIfAbsent(piece.making(), making -> new ArrayList<>()).add(piece.laid()));
    List<PrintBed> beds = new ArrayList<>();
    alike.forEach((making, laid) -> beds.addAll(PrintBed.fill(list.machine(), making, laid)));
    return beds;
  }

  /** What was cut last: pieces, their lay and their beds are asked for one after the other. */
  private record Cut(PrintList list, List<PrintPiece> pieces) {}

  private List<PrintPiece> cut(PrintList list) {
    Cut before = last;
    if (before == null || !before.list().equals(list)) {
      before = new Cut(list, cutAnew(list));
      last = before;
    }
    return before.pieces();
  }

  private List<PrintPiece> cutAnew(PrintList list) {
    List<PrintPiece> pieces = new ArrayList<>();
    for (Part part : parts()) {
      Optional<PrintItem> item =
          list.items().stream()
              .filter(i -> part.name().endsWith("half") ? i.name().equals("half wing") : i.name().equals(part.name()))
              .findFirst();
      if (item.isEmpty()) {
        pieces.add(PrintPiece.shim(part, list.machine()));
      } else if (item.get().pieces().segments().size() < 2) {
        pieces.add(PrintPiece.whole(part, item.get()));
      } else {
        boolean port = part.name().contains("port");
        List<? extends Solid> solids = cut(part.name(), item.get().pieces());
        for (int i = 0; i < solids.size(); i++) {
          TriangleMesh mesh = solids.get(i).mesh(tolerance);
          String name = part.name() + ", piece " + (i + 1) + " of " + solids.size();
          pieces.add(PrintPiece.of(part(name, port ? mesh.mirrored() : mesh), item.get(), i));
        }
      }
    }
    return pieces;
  }

  private List<? extends Solid> cut(String name, Segmentation segments) {
    if (name.equals("fuselage")) {
      return Pieces.ofBody(body, segments);
    }
    if (name.equals(Tail.Role.HORIZONTAL.words())) {
      return Pieces.ofPlate(tailplane, segments);
    }
    if (name.equals(Tail.Role.VERTICAL.words())) {
      return Pieces.ofPlate(fin, segments);
    }
    // From the other end of the first piece comes the hole of its seam.
    return Pieces.ofWing(pinned(segments.segments().get(0).length().times(0.5)), segments);
  }

  private Part part(String name, TriangleMesh mesh) {
    return Part.of(name, mesh).of(design.brief().material());
  }

  /**
   * The parts where they sit on the aircraft, without shims: for a picture of the whole.
   *
   * @return meshes in the axes of the airframe
   */
  public List<TriangleMesh> assembled() {
    Placement wing = airframe.wing().placement();
    return List.of(
        wingMesh.moved(wing),
        wingMesh.mirrored().moved(wing),
        bodyMesh,
        tailMesh.moved(horizontal.placement()),
        finMesh.turned(0, Angle.degrees(90)).moved(vertical.placement()));
  }

  /**
   * Full-size drawings for those who cut by hand: body, ribs, wing half, tailplane, fin.
   *
   * @return the drawings
   */
  public List<Template> templates() {
    Wing wing = airframe.wing();
    return List.of(
        Templates.body("fuselage", body),
        Templates.ribs("wing ribs", wing.planform(), wing.section()),
        Templates.panels("wing half", wing.planform()),
        Templates.whole(Tail.Role.HORIZONTAL.words(), horizontal.planform()),
        Templates.panels(Tail.Role.VERTICAL.words(), vertical.planform()));
  }

  /**
   * What the aircraft weighs and where, with the printed parts reckoned once more from the true walls inside their meshes: the
   * check on the statement of the design, which has the walls, seat, slots and ends from formulas.
   *
   * @return the statement; what is carried and the ballast are as in the design
   */
  public MassStatement asMade() {
    return AsMade.of(design, assembled());
  }

  /**
   * What the parts as made lack in the nose, beyond the ballast of the design, to balance on the design's mark.
   *
   * <pre>{@code m_n = m·(x_made − x_mark)/(x_mark − d/4)}</pre>
   *
   * @return m_n, a quarter of the diameter behind the tip of the nose; zero where they balance ahead of the mark
   */
  public Mass missingNoseMass() {
    return Mass.kilograms(Math.max(0.0, missingNoseMass(asMade())));
  }

  private double missingNoseMass(MassStatement made) {
    double mark = design.aircraft().masses().centreOfGravity().x().si();
    double moved = made.centreOfGravity().x().si() - mark;
    return made.mass().si() * moved / (mark - 0.25 * airframe.fuselage().diameter().si());
  }

  /**
   * What to know before making them.
   *
   * @return findings, heaviest first
   */
  public List<Finding> findings() {
    List<Finding> findings = new ArrayList<>();
    double chord = airframe.wing().planform().meanAerodynamicChord().si();
    MassStatement made = asMade();
    double moved = made.centreOfGravity().x().si() - design.aircraft().masses().centreOfGravity().x().si();
    if (Math.abs(moved) > 0.01 * chord) {
      Mass nose = Mass.kilograms(Math.abs(missingNoseMass(made)));
      findings.add(
          Finding.of(
              Severity.CAUTION,
              "balance as made",
              "By the walls inside the meshes of the parts it balances "
                  + Length.metres(Math.abs(moved)).format(Length.MILLIMETRE, 2)
                  + (moved > 0.0 ? " aft" : " forward")
                  + " of the mark: "
                  + (moved > 0.0 ? "put " + nose.format(Mass.GRAM, 2) + " into the nose" : "take weight from the nose")
                  + " until it balances on the mark.",
              moved,
              Interval.between(-0.01 * chord, 0.01 * chord),
              Length.MILLIMETRE,
              SHAPE));
    }
    if (seat.isEmpty()) {
      findings.add(
          Finding.of(
              Severity.CAUTION, "wing seat", "The body does not reach up to the wing: it has no seat. Make a pylon.", SHAPE));
    }
    if (!pinned) {
      findings.add(
          Finding.of(
              Severity.NOTE,
              "joint in the middle of the wing",
              "There is no room for a hole: glue the halves together at their dihedral and put a strip across.",
              SHAPE));
    }
    shims.steepTrim().ifPresent(findings::add);
    return Finding.inOrderOfWeight(findings);
  }

  @Override
  public String toString() {
    return "parts of " + design.brief().name() + ", " + asMade().mass();
  }
}
