// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.LiftingSurface;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.mass.Material;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Moment;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.Objects;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;

/**
 * A long part as far as making it is concerned: its section from station to station, what bends it there, and its wall. A
 * half wing lies along its span, a fuselage along its axis.
 *
 * @param name what it is
 * @param material what it is made of
 * @param wall thickness of its wall; zero for a part that is solid, such as a plate
 * @param stations at least two, in order, the first at zero; in between all is linear
 * @param longer by how much the box around each piece is longer than the piece: slanting ends stick out, not negative
 * @param jointed how far from the first end it holds a joint: beyond, something else is cut into it
 */
public record SlenderPart(
    String name, Material material, Length wall, List<Station> stations, Length longer, Length jointed)
    implements Serializable {
  private static final int STATIONS = 60;

  /** The end of a panel nearer to a station than that part of the length is that station. */
  private static final double KINK = 1e-6;


  /**
   * One station of the part.
   *
   * @param at how far from the first end, not negative
   * @param front where its section begins across the length
   * @param rear where it ends
   * @param depth how thick the section is there, which is what carries bending; not negative
   * @param bending bending moment there
   * @param bottom where the box around the section begins in depth, over the line on which the part stands upright: camber
   *     and twist move it, dihedral and the upsweep of a body move it as a whole
   * @param top where it ends
   */
  public record Station(
      Length at, Length front, Length rear, Length depth, Moment bending, Length bottom, Length top)
      implements Serializable {
    /** Refuses a section of negative size. */
    public Station {
      Objects.requireNonNull(top, "top");
      Objects.requireNonNull(depth, "depth");
      Objects.requireNonNull(front, "front");
      Objects.requireNonNull(rear, "rear");
      Door.notNegative(at, "place of the station");
      Door.notNegative(rear.minus(front), "width of the section");
      Door.notNegative(depth, "depth of the section");
      Door.finite(bending, "bending moment");
      Door.notNegative(top.minus(bottom), "depth of the box around the section");
    }

    /**
     * A station whose section is as deep as the box around it, half above and half below the line of the part.
     *
     * @param at how far from the first end, not negative
     * @param front where its section begins across the length
     * @param rear where it ends
     * @param depth how deep it is there, not negative
     * @param bending bending moment there
     */
    public Station(Length at, Length front, Length rear, Length depth, Moment bending) {
      this(at, front, rear, depth, bending, Objects.requireNonNull(depth, "depth").times(-0.5), depth.times(0.5));
    }

    private Station movedBy(Length first) {
      return new Station(at.minus(first), front, rear, depth, bending, bottom, top);
    }

    /**
     * Depth of the box around it.
     *
     * @return from bottom to top
     */
    public Length height() {
      return top.minus(bottom);
    }

    /**
     * Its width.
     *
     * @return from front to rear
     */
    public Length width() {
      return rear.minus(front);
    }
  }

  /** Refuses a part without length. */
  public SlenderPart {
    Objects.requireNonNull(stations, "stations");
    Door.said(name, "name of the part");
    Door.notNegative(wall, "wall of " + name);
    Door.notNegative(longer, "what slanting ends add to " + name);
    stations = List.copyOf(stations);
    if (stations.size() < 2 || stations.get(0).at().si() != 0.0) {
      throw new IllegalArgumentException(
          "stations of " + name + " must be at least two, the first at zero, were " + stations.size());
    }
    for (int i = 1; i < stations.size(); i++) {
      Door.positive(stations.get(i).at().minus(stations.get(i - 1).at()), "distance of stations of " + name);
    }
    Door.within(jointed, Length.ZERO, stations.get(stations.size() - 1).at(), "end of the joints of " + name);
  }

  /**
   * A part whose ends are square to its length and whose sections are as deep as their box.
   *
   * @param name what it is
   * @param material what it is made of
   * @param wall thickness of its wall; zero for a part that is solid
   * @param stations at least two, in order, the first at zero
   */
  public SlenderPart(String name, Material material, Length wall, List<Station> stations) {
    this(name, material, wall, stations, Length.ZERO);
  }

  private SlenderPart(String name, Material material, Length wall, List<Station> stations, Length longer) {
    this(name, material, wall, stations, longer, end(stations));
  }

  private static Length end(List<Station> stations) {
    Objects.requireNonNull(stations, "stations");
    return stations.isEmpty() ? Length.ZERO : stations.get(stations.size() - 1).at();
  }

  /**
   * One half of a wing or a horizontal tail, or a fin: from the root outward along its panels, which dihedral makes longer
   * than the half span. A piece stands on one of its ends, which are upright in flight, so that dihedral makes it lean.
   *
   * @param name what it is
   * @param surface the surface
   * @param material what it is made of
   * @param wall thickness of its wall, zero for a solid one
   * @param bending bending moment [N·m] over the distance from the root, across the span [m]
   * @return the part
   */
  public static SlenderPart half(
      String name, LiftingSurface surface, Material material, Length wall, DoubleUnaryOperator bending) {
    Objects.requireNonNull(surface, "surface");
    Objects.requireNonNull(material, "material");
    Objects.requireNonNull(bending, "bending");
    return half(name, surface, material, wall, Length.ZERO, bending);
  }

  /**
   * One half of a wing whose trailing edge is made no thinner than a line, as {@link WingSolid#trailingEdgeAtLeast} does:
   * the boxes around its pieces are those of the thickened and twisted sections.
   *
   * @param name what it is
   * @param surface the surface
   * @param material what it is made of
   * @param wall thickness of its wall, zero for a solid one
   * @param edge least thickness of its trailing edge, not negative
   * @param bending bending moment [N·m] over the distance from the root, across the span [m]
   * @return the part
   */
  public static SlenderPart half(
      String name, LiftingSurface surface, Material material, Length wall, Length edge, DoubleUnaryOperator bending) {
    Objects.requireNonNull(surface, "surface");
    Objects.requireNonNull(material, "material");
    Objects.requireNonNull(bending, "bending");
    Planform planform = surface.planform();
    double length = planform.isMirrored() ? 0.5 * planform.span().si() : planform.span().si();
    SectionBox box = new SectionBox(surface, Door.notNegative(edge, "trailing edge of " + name));
    List<Station> stations = new ArrayList<>();
    double along = 0.0;
    double before = 0.0;
    double height = 0.0;
    double low = 0.0;
    double high = 0.0;
    for (double y : alongSpan(planform, length)) {
      Length out = Length.metres(y);
      double up = planform.isMirrored() ? planform.heightAt(out).si() : 0.0;
      along += Math.hypot(y - before, up - height);
      before = y;
      height = up;
      box.moveTo(out);
      low = Math.min(low, box.bottom());
      high = Math.max(high, box.top());
      Length leading = planform.leadingEdgeAt(out);
      stations.add(
          new Station(
              Length.metres(along),
              leading.plus(Length.metres(box.front())),
              leading.plus(Length.metres(box.rear())),
              planform.chordAt(out).times(surface.section().maximumThickness()),
              Moment.newtonMetres(bending.applyAsDouble(y)),
              Length.metres(up + box.bottom()),
              Length.metres(up + box.top())));
    }
    double slope = planform.isMirrored() ? Math.abs(planform.panels().get(0).dihedral().si()) : 0.0;
    return new SlenderPart(name, material, wall, stations, Length.metres((high - low) * Math.sin(slope)));
  }

  /** Equal steps and the ends of the panels, where outline and twist have their kinks. */
  private static NavigableSet<Double> alongSpan(Planform planform, double length) {
    TreeSet<Double> stations = new TreeSet<>();
    for (int i = 0; i < STATIONS; i++) {
      stations.add(length * i / STATIONS);
    }
    stations.add(length);
    planform.stations().stream()
        .mapToDouble(Length::si)
        .filter(y -> stations.subSet(y - KINK * length, y + KINK * length).isEmpty() && y < length)
        .forEach(stations::add);
    return stations;
  }

  /**
   * A wing or a horizontal tail made over its whole span, from tip to tip: fit for a plate without dihedral.
   *
   * @param name what it is
   * @param surface the surface, mirrored
   * @param material what it is made of
   * @param wall thickness of its wall, zero for a solid one
   * @param depth how deep it lies: its thickness, and the height of its tips if it is not flat
   * @param bending bending moment [N·m] over the distance from the middle [m]
   * @return the part
   */
  public static SlenderPart whole(
      String name, LiftingSurface surface, Material material, Length wall, Length depth, DoubleUnaryOperator bending) {
    Objects.requireNonNull(depth, "depth");
    Objects.requireNonNull(surface, "surface");
    Objects.requireNonNull(material, "material");
    Objects.requireNonNull(bending, "bending");
    Planform planform = surface.planform();
    double half = 0.5 * planform.span().si();
    List<Station> stations = new ArrayList<>();
    NavigableSet<Double> out = alongSpan(planform, half);
    TreeSet<Double> across = new TreeSet<>(out);
    out.forEach(y -> across.add(0.0 - y));
    for (double place : across) {
      double y = Math.abs(place);
      Length front = planform.leadingEdgeAt(Length.metres(y));
      Length chord = planform.chordAt(Length.metres(y));
      stations.add(
          new Station(
              Length.metres(half + place),
              front,
              front.plus(chord),
              depth,
              Moment.newtonMetres(bending.applyAsDouble(y))));
    }
    return new SlenderPart(name, material, wall, stations);
  }

  /**
   * A fuselage along its axis.
   *
   * @param fuselage the fuselage
   * @param material what it is made of
   * @param wall thickness of its wall
   * @param bending bending moment [N·m] over the distance from the nose [m]
   * @return the part
   */
  public static SlenderPart body(Fuselage fuselage, Material material, Length wall, DoubleUnaryOperator bending) {
    Objects.requireNonNull(fuselage, "fuselage");
    Objects.requireNonNull(material, "material");
    Objects.requireNonNull(bending, "bending");
    List<Station> stations = new ArrayList<>();
    for (int i = 0; i <= STATIONS; i++) {
      // Drawn together towards both ends, where the outline bends most.
      double x = fuselage.length().si() * 0.5 * (1.0 - Math.cos(Math.PI * i / STATIONS));
      Length at = Length.metres(x);
      Length half = fuselage.widthAt(at).times(0.5);
      Length high = fuselage.heightAt(at);
      Length middle = fuselage.centreHeightAt(at);
      stations.add(
          new Station(
              at,
              half.times(-1.0),
              half,
              high,
              Moment.newtonMetres(bending.applyAsDouble(x)),
              middle.minus(high.times(0.5)),
              middle.plus(high.times(0.5))));
    }
    return new SlenderPart("fuselage", material, wall, stations);
  }

  /**
   * The same part with the small rib below it by which it is balanced, as {@link BodySolid#markedAt} makes it: the box around
   * the stations on both sides of it is deeper by that.
   *
   * @param mark where the rib is, 0 to the length
   * @return the part
   */
  public SlenderPart markedAt(Length mark) {
    Door.within(mark, Length.ZERO, length(), "place of the mark on " + name);
    Length rib = Length.metres(BodyRing.RIB_HEIGHT);
    List<Station> marked = new ArrayList<>(stations);
    for (int i = 0; i < marked.size(); i++) {
      boolean before = i + 1 < stations.size() && stations.get(i + 1).at().compareTo(mark) >= 0;
      boolean after = i > 0 && stations.get(i - 1).at().compareTo(mark) <= 0;
      Station s = stations.get(i);
      if (s.at().compareTo(mark) <= 0 ? before : after) {
        marked.set(i, new Station(s.at(), s.front(), s.rear(), s.depth(), s.bending(), s.bottom().minus(rib), s.top()));
      }
    }
    return new SlenderPart(name, material, wall, marked, longer, jointed);
  }

  /**
   * The same part with seams and joints up to a place only, if the machine leaves a way: a body whose tail slots begin there
   * would fall into loose strips.
   *
   * @param end how far from the first end, 0 to the length
   * @return the part
   */
  public SlenderPart jointedUpTo(Length end) {
    return new SlenderPart(name, material, wall, stations, longer, end);
  }

  /**
   * The same part as deep all along: a plate.
   *
   * @param depth its thickness, positive
   * @return the plate
   */
  public SlenderPart withDepth(Length depth) {
    Door.positive(depth, "thickness of " + name);
    List<Station> plate =
        stations.stream().map(s -> new Station(s.at(), s.front(), s.rear(), depth, s.bending())).toList();
    return new SlenderPart(name, material, wall, plate);
  }

  /**
   * Its length.
   *
   * @return from the first station to the last
   */
  public Length length() {
    return stations.get(stations.size() - 1).at();
  }

  /**
   * Length of the box around it.
   *
   * @return its length and what slanting ends add
   */
  public Length boxLength() {
    return length().plus(longer);
  }

  /**
   * Width of the box around it.
   *
   * @return from the foremost front to the rearmost rear
   */
  public Length width() {
    double front = stations.stream().mapToDouble(s -> s.front().si()).min().orElseThrow();
    double rear = stations.stream().mapToDouble(s -> s.rear().si()).max().orElseThrow();
    return Length.metres(rear - front);
  }

  /**
   * Depth of the box around it.
   *
   * @return from the lowest bottom to the highest top
   */
  public Length depth() {
    double bottom = stations.stream().mapToDouble(s -> s.bottom().si()).min().orElseThrow();
    double top = stations.stream().mapToDouble(s -> s.top().si()).max().orElseThrow();
    return Length.metres(top - bottom);
  }

  /** How thick its thickest section is. */
  Length thickest() {
    return Length.metres(stations.stream().mapToDouble(s -> s.depth().si()).max().orElseThrow());
  }

  /** By how much a tongue that sticks out of an end leans beyond that end, where the part leans. */
  Length lean(Length at, double tongue) {
    if (!longer.isPositive()) {
      return Length.ZERO;
    }
    Station end = at(at);
    Station beyond = at(Length.metres(Math.min(length().si(), at.si() + tongue)));
    double up = beyond.bottom().plus(beyond.top()).minus(end.bottom()).minus(end.top()).si();
    return Length.metres(0.5 * Math.abs(up));
  }

  /**
   * A piece of it: between stations all is linear, so its stations are those in between and its two ends.
   *
   * @param from where the piece begins
   * @param to where it ends, farther along
   * @return the piece, its first end at zero
   */
  public SlenderPart between(Length from, Length to) {
    Station last = at(to).movedBy(from);
    List<Station> inside = new ArrayList<>();
    inside.add(at(from).movedBy(from));
    // Compared after the subtraction, whose rounding may bring a station onto an end.
    stations.stream()
        .filter(s -> s.at().minus(from).isPositive() && s.at().minus(from).compareTo(last.at()) < 0)
        .forEach(s -> inside.add(s.movedBy(from)));
    inside.add(last);
    return new SlenderPart(name, material, wall, inside, longer);
  }

  /**
   * The part at a place.
   *
   * @param at distance from the first end, 0 to the length
   * @return the station there
   */
  public Station at(Length at) {
    Door.within(at, Length.ZERO, length(), "place on " + name);
    int i = 1;
    while (i < stations.size() - 1 && stations.get(i).at().si() < at.si()) {
      i++;
    }
    Station before = stations.get(i - 1);
    Station after = stations.get(i);
    double t = (at.si() - before.at().si()) / (after.at().si() - before.at().si());
    return new Station(
        at,
        Length.metres(between(before.front().si(), after.front().si(), t)),
        Length.metres(between(before.rear().si(), after.rear().si(), t)),
        Length.metres(between(before.depth().si(), after.depth().si(), t)),
        Moment.newtonMetres(between(before.bending().si(), after.bending().si(), t)),
        Length.metres(between(before.bottom().si(), after.bottom().si(), t)),
        Length.metres(between(before.top().si(), after.top().si(), t)));
  }

  private static double between(double before, double after, double t) {
    return before + t * (after - before);
  }

  @Override
  public String toString() {
    return name + " " + length() + " × " + width() + " × " + depth();
  }
}
