// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import io.github.wingwright.core.geometry.AirfoilSection;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.Objects;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * A wing, a half of it or a piece of a half, with its sections as they are: taper, sweep, dihedral, washout, blunt trailing
 * edge, closed ends, holes for spars and pins, tongues.
 *
 * <p>Sections stand in planes parallel to the plane of symmetry, as dihedral leaves span and area of a planform; twist turns
 * them about their leading edge. Axes are those of the planform: origin at the leading edge of the root, y along the span.
 *
 * <pre>{@code
 * TriangleMesh half = WingSolid.half(planform, section).trailingEdgeAtLeast(millimetres(0.4))
 *     .with(Bore.along(0.3, millimetres(2.1), Length.ZERO, millimetres(180)))
 *     .mesh(millimetres(0.05));
 * }</pre>
 */
public final class WingSolid implements Solid {
  private final Planform planform;
  private final AirfoilSection section;
  private final double leastEdge;
  private final double from;
  private final double to;
  private final List<Bore> bores;
  private final @Nullable Tongue outer;
  private final @Nullable Tongue inner;

  private WingSolid(
      Planform planform,
      AirfoilSection section,
      double leastEdge,
      double from,
      double to,
      List<Bore> bores,
      @Nullable Tongue outer,
      @Nullable Tongue inner) {
    this.planform = planform;
    this.section = section;
    this.leastEdge = leastEdge;
    this.from = from;
    this.to = to;
    this.bores = List.copyOf(bores);
    this.outer = outer;
    this.inner = inner;
  }

  /**
   * The starboard half of a wing, or a fin.
   *
   * @param planform its outline, with a tip chord of at least 1 mm
   * @param section its section
   * @return the half
   */
  public static WingSolid half(Planform planform, AirfoilSection section) {
    Objects.requireNonNull(planform, "planform");
    Objects.requireNonNull(section, "section");
    Door.within(planform.tipChord(), Length.millimetres(1), planform.rootChord().times(100.0), "tip chord of a part");
    return new WingSolid(planform, section, 0.0, 0.0, semispan(planform), List.of(), null, null);
  }

  /**
   * A wing in one piece from tip to tip.
   *
   * @param planform its outline, mirrored, with a tip chord of at least 1 mm
   * @param section its section
   * @return the wing
   */
  public static WingSolid whole(Planform planform, AirfoilSection section) {
    Objects.requireNonNull(planform, "planform");
    Objects.requireNonNull(section, "section");
    if (!planform.isMirrored()) {
      throw new IllegalArgumentException("planform of a whole wing must have two halves, was " + planform);
    }
    WingSolid half = half(planform, section);
    return new WingSolid(planform, section, 0.0, -half.to, half.to, List.of(), null, null);
  }

  private static double semispan(Planform planform) {
    return planform.isMirrored() ? 0.5 * planform.span().si() : planform.span().si();
  }

  /**
   * The same with a trailing edge that is nowhere thinner. What the section lacks is added in proportion to the distance from
   * the nose, half above and half below.
   *
   * @param thickness least thickness of the trailing edge, not negative
   * @return the wing
   */
  public WingSolid trailingEdgeAtLeast(Length thickness) {
    return new WingSolid(
        planform, section, Door.notNegative(thickness, "trailing edge").si(), from, to, bores, outer, inner);
  }

  /**
   * The piece between two stations.
   *
   * @param begin its inner end, from the root
   * @param end its outer end
   * @return the piece
   */
  public WingSolid between(Length begin, Length end) {
    Objects.requireNonNull(begin, "begin");
    Objects.requireNonNull(end, "end");
    if (!(begin.si() >= from && end.si() <= to && begin.si() < end.si())) {
      throw new IllegalArgumentException(
          "a piece must lie between " + Length.metres(from) + " and " + Length.metres(to) + ", was " + begin + " to " + end);
    }
    return new WingSolid(planform, section, leastEdge, begin.si(), end.si(), bores, outer, inner);
  }

  /**
   * The same with one more hole.
   *
   * @param bore the hole; what lies outside the piece is cut off
   * @return the wing
   */
  public WingSolid with(Bore bore) {
    Objects.requireNonNull(bore, "bore");
    List<Bore> more = new ArrayList<>(bores);
    more.add(bore);
    return new WingSolid(planform, section, leastEdge, from, to, more, outer, inner);
  }

  /**
   * The same with a tongue at its outer end.
   *
   * @param tongue the tongue, which reaches beyond the end along the panel
   * @return the piece
   */
  public WingSolid endingWith(Tongue tongue) {
    return new WingSolid(planform, section, leastEdge, from, to, bores, tongue, inner);
  }

  /**
   * The same with a slot at its inner end for the tongue of the piece before.
   *
   * @param tongue the tongue of the other piece
   * @return the piece
   */
  public WingSolid startingOver(Tongue tongue) {
    return new WingSolid(planform, section, leastEdge, from, to, bores, outer, tongue);
  }

  /** An end that went through arithmetic may miss the tip by a rounding error. */
  Length outerEnd(Length end) {
    return Math.abs(end.si() - to) < 1e-9 ? Length.metres(to) : end;
  }

  Length semispan() {
    return Length.metres(semispan(planform));
  }

  Length thicknessAt(Length station) {
    return planform.chordAt(station).times(section.maximumThickness());
  }

  /** Where a tube finds most room, over the chord. */
  double thickestAt() {
    return Math.max(0.2, Math.min(0.5, section.maximumThicknessPosition()));
  }

  /**
   * Whether there is enough skin around a hole.
   *
   * @param bore the hole
   * @return true if it can be made
   */
  public boolean fits(Bore bore) {
    Objects.requireNonNull(bore, "bore");
    WingFrame frame = new WingFrame(planform);
    SectionLoop loop = loop(frame, 1e-4);
    return hole(frame, loop, bore, 0, 16).hasSkin(frame, loop);
  }

  /** Whether there is enough skin around the slot for a tongue over a cut. */
  boolean fits(Tongue tongue, Length cut) {
    WingFrame frame = new WingFrame(planform);
    SectionLoop loop = loop(frame, 1e-4);
    return WingInsert.tongue(frame, loop, tongue, cut.si(), tongue.play(), 0).hasSkin(frame, loop);
  }

  @Override
  public TriangleMesh mesh(Length tolerance) {
    double tol = 0.5 * Curves.tolerance(tolerance);
    WingFrame frame = new WingFrame(planform);
    double chord = Math.max(frame.chord(from), Math.max(frame.chord(to), planform.rootChord().si()));
    SectionLoop loop = loop(frame, tol / chord);
    List<WingInsert> inserts = inserts(frame, loop, tol);
    TreeSet<Double> changes = new TreeSet<>();
    for (Length station : planform.stations()) {
      for (double y : new double[] {0.0 - station.si(), station.si()}) {
        if (y > from && y < to) {
          changes.add(y);
        }
      }
    }
    inserts.forEach(insert -> {
      changes.add(insert.from());
      changes.add(insert.to());
    });
    NavigableSet<Double> events = SlabStack.apart(changes, from, to);
    List<SlabStack.Slab> slabs = new ArrayList<>();
    int[] outline = new int[loop.size()];
    for (int i = 0; i < outline.length; i++) {
      outline[i] = i;
    }
    double start = events.first();
    for (double end : events.tailSet(start, false)) {
      double middle = 0.5 * (start + end);
      List<int[]> loops = new ArrayList<>();
      boolean inside = middle > from && middle < to;
      if (inside) {
        loops.add(outline);
      }
      for (WingInsert insert : inserts) {
        if (insert.reaches(middle)) {
          loops.add(insert.keys(inside));
        }
      }
      slabs.add(new SlabStack.Slab(stations(frame, start, end, loop.longest(), tol), loops));
      start = end;
    }
    return SlabStack.mesh(
        1,
        slabs,
        false,
        false,
        (key, y, p) -> {
          if (key < loop.size()) {
            frame.place(y, loop.x(key), loop.z(key), p);
          } else {
            inserts.stream().filter(i -> i.has(key)).findFirst().orElseThrow().place(key, y, p);
          }
        });
  }

  /** The section with its trailing edge as thick as asked where the chord is least. */
  private SectionLoop loop(WingFrame frame, double tolerance) {
    double least = Math.min(frame.chord(from), frame.chord(to));
    for (Length station : planform.stations()) {
      for (double y : new double[] {0.0 - station.si(), station.si()}) {
        if (y > from && y < to) {
          least = Math.min(least, frame.chord(y));
        }
      }
    }
    return SectionLoop.of(section, leastEdge / least, tolerance);
  }

  /** Twist turns straight lines into curves and panels into saddles: both kept within the tolerance. */
  private static double[] stations(WingFrame frame, double start, double end, double longest, double tol) {
    double turn = Math.abs(frame.twist(end) - frame.twist(start));
    double chord = Math.max(frame.chord(start), frame.chord(end));
    int n = 1;
    while (chord * (turn / n) * (turn / n) / 8.0 > tol || chord * longest * (turn / n) / 4.0 > tol) {
      n++;
    }
    double[] stations = new double[n + 1];
    for (int i = 0; i <= n; i++) {
      stations[i] = i == n ? end : start + (end - start) * i / n;
    }
    return stations;
  }

  private List<WingInsert> inserts(WingFrame frame, SectionLoop loop, double tol) {
    List<WingInsert> inserts = new ArrayList<>();
    int key = loop.size();
    for (Bore bore : bores) {
      if (bore.from().si() >= to || bore.to().si() <= from) {
        continue;
      }
      double r = 0.5 * bore.diameter().si();
      int sides = Math.max(8, (int) Math.ceil(Math.PI / Math.acos(Math.max(0.0, 1.0 - tol / r))));
      WingInsert insert = hole(frame, loop, bore, key, sides);
      insert.check(frame, loop, "a hole of " + bore.diameter());
      inserts.add(insert);
      key += sides;
    }
    if (outer != null) {
      WingInsert insert = WingInsert.tongue(frame, loop, outer, to, Length.ZERO, key);
      insert.check(frame, loop, "a tongue of " + outer.thickness());
      inserts.add(insert);
      key += 4;
    }
    if (inner != null) {
      WingInsert insert = WingInsert.tongue(frame, loop, inner, from, inner.play(), key);
      insert.check(frame, loop, "a slot for a tongue of " + inner.thickness());
      inserts.add(insert);
    }
    return inserts;
  }

  private WingInsert hole(WingFrame frame, SectionLoop loop, Bore bore, int key, int sides) {
    double outerEnd = Math.min(bore.to().si(), semispan(planform));
    return WingInsert.hole(frame, loop, bore, outerEnd, from, to, key, sides);
  }

  @Override
  public String toString() {
    return "wing from " + Length.metres(from) + " to " + Length.metres(to) + ", " + section.name() + ", " + bores.size()
        + " holes";
  }
}
