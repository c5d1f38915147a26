// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import io.github.wingwright.core.geometry.AirfoilSection;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;
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
  /** What must be left around a hole [m]: half of a usual line of print. */
  private static final double LEAST_SKIN = 0.2e-3;

  /** Steps along a hole or a tongue at which its skin is looked at. */
  private static final int CHECKS = 8;

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

  /**
   * Whether there is enough skin around a hole.
   *
   * @param bore the hole
   * @return true if it can be made
   */
  public boolean fits(Bore bore) {
    WingFrame frame = new WingFrame(planform);
    SectionLoop loop = loop(frame, 1e-4);
    Insert insert = hole(frame, loop, bore, 0, 16);
    for (int s = 0; s <= CHECKS; s++) {
      if (skin(frame, loop, insert, insert.station(s)) < LEAST_SKIN) {
        return false;
      }
    }
    return true;
  }

  @Override
  public TriangleMesh mesh(Length tolerance) {
    double tol = 0.5 * Curves.tolerance(tolerance);
    WingFrame frame = new WingFrame(planform);
    double chord = Math.max(frame.chord(from), Math.max(frame.chord(to), planform.rootChord().si()));
    SectionLoop loop = loop(frame, tol / chord);
    List<Insert> inserts = inserts(frame, loop, tol);
    TreeSet<Double> events = new TreeSet<>(List.of(from, to));
    for (Length station : planform.stations()) {
      for (double y : new double[] {0.0 - station.si(), station.si()}) {
        if (y > from && y < to) {
          events.add(y);
        }
      }
    }
    inserts.forEach(insert -> {
      events.add(insert.from);
      events.add(insert.to);
    });
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
      for (Insert insert : inserts) {
        if (middle > insert.from && middle < insert.to) {
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
    double edge = leastEdge / Math.min(frame.chord(from), frame.chord(to));
    return SectionLoop.of(section, edge, tolerance);
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

  private List<Insert> inserts(WingFrame frame, SectionLoop loop, double tol) {
    List<Insert> inserts = new ArrayList<>();
    int key = loop.size();
    for (Bore bore : bores) {
      if (bore.from().si() >= to || bore.to().si() <= from) {
        continue;
      }
      double r = 0.5 * bore.diameter().si();
      int sides = Math.max(8, (int) Math.ceil(Math.PI / Math.acos(Math.max(0.0, 1.0 - tol / r))));
      Insert insert = hole(frame, loop, bore, key, sides);
      check(frame, loop, insert, "a hole of " + bore.diameter());
      inserts.add(insert);
      key += sides;
    }
    if (outer != null) {
      Insert insert = tongue(frame, loop, outer, to, Length.ZERO, key);
      check(frame, loop, insert, "a tongue of " + outer.thickness());
      inserts.add(insert);
      key += 4;
    }
    if (inner != null) {
      Insert insert = tongue(frame, loop, inner, from, inner.play(), key);
      check(frame, loop, insert, "a slot for a tongue of " + inner.thickness());
      inserts.add(insert);
    }
    return inserts;
  }

  /** A hole as a polygon of some sides, cut off where the piece ends. */
  private Insert hole(WingFrame frame, SectionLoop loop, Bore bore, int key, int sides) {
    double r = 0.5 * bore.diameter().si();
    double[] dz = new double[sides];
    double[] dx = new double[sides];
    for (int i = 0; i < sides; i++) {
      dz[i] = r * Math.cos(2.0 * Math.PI * i / sides);
      dx[i] = r * Math.sin(2.0 * Math.PI * i / sides);
    }
    double[] first = middle(frame, loop, bore.from().si(), bore.chordPosition());
    double[] last = middle(frame, loop, Math.min(bore.to().si(), semispan(planform)), bore.chordPosition());
    double reach = last[1] - first[1];
    double slopeX = bore.level() ? 0.0 : (last[0] - first[0]) / reach;
    double slopeZ = bore.level() ? 0.0 : (last[2] - first[2]) / reach;
    double begin = Math.max(bore.from().si(), from);
    double end = Math.min(bore.to().si(), to);
    return new Insert(key, begin, end, first, slopeX, slopeZ, dx, dz);
  }

  /** The middle of the section at a station and a place along the chord. */
  private static double[] middle(WingFrame frame, SectionLoop loop, double y, double at) {
    double[] heights = loop.heights(at);
    double[] p = new double[3];
    frame.place(y, at, 0.5 * (heights[0] + heights[1]), p);
    return p;
  }

  /** A tongue along the panel that holds the cut; its slot is as much larger as the play, and deeper by it. */
  private Insert tongue(WingFrame frame, SectionLoop loop, Tongue tongue, double cut, Length play, int key) {
    double extra = play.si();
    double at = 0.5 * (tongue.chordFrom() + tongue.chordTo());
    double[] here = middle(frame, loop, cut, at);
    double[] there = middle(frame, loop, cut + 0.5 * tongue.length().si(), at);
    double reach = there[1] - here[1];
    double halfChord = 0.5 * (tongue.chordTo() - tongue.chordFrom()) * frame.chord(cut) + extra;
    double halfHeight = 0.5 * tongue.thickness().si() + extra;
    // Across the tapering panel the tongue keeps its size, and its tilt is that of the middle of the section.
    double[] fore = middle(frame, loop, cut, tongue.chordFrom());
    double[] aft = middle(frame, loop, cut, tongue.chordTo());
    double tilt = (aft[2] - fore[2]) / (aft[0] - fore[0]);
    double[] dx = {halfChord, -halfChord, -halfChord, halfChord};
    double[] dz = {
      -halfHeight + tilt * halfChord, -halfHeight - tilt * halfChord, halfHeight - tilt * halfChord, halfHeight + tilt * halfChord
    };
    return new Insert(
        key,
        cut,
        cut + tongue.length().si() + extra,
        here,
        (there[0] - here[0]) / reach,
        (there[2] - here[2]) / reach,
        dx,
        dz);
  }

  /** What is cut out or stuck in must lie inside the section, at its beginning, its end and between. */
  private static void check(WingFrame frame, SectionLoop loop, Insert insert, String what) {
    for (int s = 0; s <= CHECKS; s++) {
      double y = insert.station(s);
      double skin = skin(frame, loop, insert, y);
      if (skin < LEAST_SKIN) {
        throw new IllegalStateException(
            what
                + " must leave a skin of "
                + Length.metres(LEAST_SKIN)
                + " of the section, leaves "
                + Length.micrometres(Math.rint(1e6 * skin))
                + " at y "
                + Length.metres(y));
      }
    }
  }

  /** How much is left around it at a station [m], negative where it sticks out. */
  private static double skin(WingFrame frame, SectionLoop loop, Insert insert, double y) {
    double[] p = new double[3];
    double[] local = new double[2];
    double skin = Double.POSITIVE_INFINITY;
    for (int i = 0; i < insert.dx.length; i++) {
      insert.place(insert.first + i, y, p);
      frame.local(y, p, local);
      skin = Math.min(skin, loop.depth(local[0], local[1]) * frame.chord(y));
    }
    return skin;
  }

  /** Something of one shape along a straight axis. */
  private static final class Insert {
    private final int first;
    private final double from;
    private final double to;
    private final double[] origin;
    private final double slopeX;
    private final double slopeZ;
    private final double[] dx;
    private final double[] dz;

    Insert(int first, double from, double to, double[] origin, double slopeX, double slopeZ, double[] dx, double[] dz) {
      this.first = first;
      this.from = from;
      this.to = to;
      this.origin = origin;
      this.slopeX = slopeX;
      this.slopeZ = slopeZ;
      this.dx = dx;
      this.dz = dz;
    }

    double station(int step) {
      return from + (to - from) * step / CHECKS;
    }

    boolean has(int key) {
      return key >= first && key < first + dx.length;
    }

    void place(int key, double y, double[] p) {
      p[0] = origin[0] + slopeX * (y - origin[1]) + dx[key - first];
      p[1] = y;
      p[2] = origin[2] + slopeZ * (y - origin[1]) + dz[key - first];
    }

    /** Inside the piece it is a hole, which runs the other way round. */
    int[] keys(boolean hole) {
      int n = dx.length;
      int[] keys = new int[n];
      for (int i = 0; i < n; i++) {
        keys[i] = first + (hole ? n - 1 - i : i);
      }
      return keys;
    }
  }

  @Override
  public String toString() {
    return "wing from " + Length.metres(from) + " to " + Length.metres(to) + ", " + section.name() + ", " + bores.size()
        + " holes";
  }
}
