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
 * @param deeper by how much it is deeper than its sections are thick: camber and twist, not negative
 * @param jointed how far from the first end it holds a joint: beyond, something else is cut into it
 */
public record SlenderPart(
    String name, Material material, Length wall, List<Station> stations, Length longer, Length deeper, Length jointed)
    implements Serializable {
  private static final int STATIONS = 60;
  private static final int OUTLINE = 201;

  /**
   * One station of the part.
   *
   * @param at how far from the first end, not negative
   * @param front where its section begins across the length
   * @param rear where it ends
   * @param depth how deep it is there, not negative
   * @param bending bending moment there
   */
  public record Station(Length at, Length front, Length rear, Length depth, Moment bending) implements Serializable {
    /** Refuses a section of negative size. */
    public Station {
      Door.notNegative(at, "place of the station");
      Door.notNegative(rear.minus(front), "width of the section");
      Door.notNegative(depth, "depth of the section");
      Door.finite(bending, "bending moment");
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
    Door.said(name, "name of the part");
    Door.notNegative(wall, "wall of " + name);
    Door.notNegative(longer, "what slanting ends add to " + name);
    Door.notNegative(deeper, "what camber and twist add to " + name);
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
    this(name, material, wall, stations, Length.ZERO, Length.ZERO);
  }

  private SlenderPart(
      String name, Material material, Length wall, List<Station> stations, Length longer, Length deeper) {
    this(name, material, wall, stations, longer, deeper, stations.isEmpty() ? Length.ZERO : stations.get(stations.size() - 1).at());
  }

  /**
   * One half of a wing or a horizontal tail, or a fin: from the root outward along its panels, which dihedral makes longer
   * than the half span.
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
    Planform planform = surface.planform();
    double length = planform.isMirrored() ? 0.5 * planform.span().si() : planform.span().si();
    List<Station> stations = new ArrayList<>();
    double along = 0.0;
    double before = 0.0;
    double height = 0.0;
    for (int i = 0; i <= STATIONS; i++) {
      double y = length * i / STATIONS;
      Length out = Length.metres(y);
      double up = planform.isMirrored() ? planform.heightAt(out).si() : 0.0;
      along += Math.hypot(y - before, up - height);
      before = y;
      height = up;
      Length front = planform.leadingEdgeAt(out);
      Length chord = planform.chordAt(out);
      stations.add(
          new Station(
              Length.metres(along),
              front,
              front.plus(chord),
              chord.times(surface.section().maximumThickness()),
              Moment.newtonMetres(bending.applyAsDouble(y))));
    }
    double thick = planform.rootChord().si() * surface.section().maximumThickness();
    double tall = sectionHeight(surface);
    double slope = planform.isMirrored() ? Math.abs(planform.panels().get(0).dihedral().si()) : 0.0;
    Length longer = Length.metres(tall * Math.sin(slope));
    return new SlenderPart(name, material, wall, stations, longer, Length.metres(Math.max(0.0, tall - thick)));
  }

  /** Height of the box around all sections seen along the span: camber lifts them, twist tips them up. */
  private static double sectionHeight(LiftingSurface surface) {
    double[] x = new double[OUTLINE];
    double[] z = new double[OUTLINE];
    surface.section().outline(x, z);
    Planform planform = surface.planform();
    double low = 0.0;
    double high = 0.0;
    for (Length station : planform.stations()) {
      double chord = planform.chordAt(station).si();
      double twist = planform.twistAt(station).si();
      for (int i = 0; i < OUTLINE; i++) {
        double up = chord * (z[i] * Math.cos(twist) - x[i] * Math.sin(twist));
        low = Math.min(low, up);
        high = Math.max(high, up);
      }
    }
    return high - low;
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
    Planform planform = surface.planform();
    double half = 0.5 * planform.span().si();
    List<Station> stations = new ArrayList<>();
    for (int i = 0; i <= 2 * STATIONS; i++) {
      double y = Math.abs(half * (i - STATIONS) / STATIONS);
      Length front = planform.leadingEdgeAt(Length.metres(y));
      Length chord = planform.chordAt(Length.metres(y));
      stations.add(
          new Station(
              Length.metres(half * i / STATIONS),
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
    List<Station> stations = new ArrayList<>();
    for (int i = 0; i <= STATIONS; i++) {
      // Drawn together towards both ends, where the outline bends most.
      double x = fuselage.length().si() * 0.5 * (1.0 - Math.cos(Math.PI * i / STATIONS));
      Length at = Length.metres(x);
      Length half = fuselage.widthAt(at).times(0.5);
      stations.add(
          new Station(
              at,
              half.times(-1.0),
              half,
              fuselage.heightAt(at),
              Moment.newtonMetres(bending.applyAsDouble(x))));
    }
    return new SlenderPart("fuselage", material, wall, stations);
  }

  /**
   * The same part with seams and joints up to a place only, if the machine leaves a way: a body whose tail slots begin there
   * would fall into loose strips.
   *
   * @param end how far from the first end, 0 to the length
   * @return the part
   */
  public SlenderPart jointedUpTo(Length end) {
    return new SlenderPart(name, material, wall, stations, longer, deeper, end);
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
   * @return the greatest depth and what camber and twist add
   */
  public Length depth() {
    return Length.metres(deeper.si() + stations.stream().mapToDouble(s -> s.depth().si()).max().orElseThrow());
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
        Moment.newtonMetres(between(before.bending().si(), after.bending().si(), t)));
  }

  private static double between(double before, double after, double t) {
    return before + t * (after - before);
  }

  @Override
  public String toString() {
    return name + " " + length() + " × " + width() + " × " + depth();
  }
}
