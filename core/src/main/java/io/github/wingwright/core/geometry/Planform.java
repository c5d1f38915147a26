// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.UnaryOperator;

/**
 * The outline of a lifting surface: straight-tapered panels from the root outwards.
 *
 * <p>A wing or a horizontal tail is mirrored about its root; a fin is not. Extents, span and area are projected: dihedral
 * lengthens the panels but not the span. Positions are measured from the leading edge of the root: x aft, y outwards, z
 * towards the side to which positive dihedral lifts the tip.
 *
 * <pre>{@code
 * S = ∫ c dy        c̄ = (1/S)·∫ c² dy        x̄ = (1/S)·∫ c·x_LE dy        A = b²/S
 * }</pre>
 *
 * <p>over both halves of a mirrored planform, over the one half of a fin. The integrals are exact for straight panels.
 */
public final class Planform implements Serializable {
  private static final long serialVersionUID = 1L;

  private final boolean mirrored;
  private final Length rootChord;
  private final List<Panel> panels;
  private final PanelStations half;

  private Planform(boolean mirrored, Length rootChord, List<Panel> panels) {
    Door.positive(rootChord, "root chord");
    if (panels.isEmpty()) {
      throw new IllegalArgumentException("a planform needs at least one panel, got none");
    }
    this.mirrored = mirrored;
    this.rootChord = rootChord;
    this.panels = List.copyOf(panels);
    this.half = new PanelStations(rootChord, panels);
  }

  /**
   * A wing of several panels on each side.
   *
   * @param rootChord chord in the plane of symmetry, positive
   * @param panels the panels of one half, from the root outwards
   * @return the planform
   */
  public static Planform symmetric(Length rootChord, List<Panel> panels) {
    Objects.requireNonNull(panels, "panels");
    return new Planform(true, rootChord, panels);
  }

  /**
   * A fin of several panels.
   *
   * @param rootChord chord at the root, positive
   * @param panels the panels from the root upwards
   * @return the planform
   */
  public static Planform fin(Length rootChord, List<Panel> panels) {
    Objects.requireNonNull(panels, "panels");
    return new Planform(false, rootChord, panels);
  }

  /**
   * A straight-tapered wing without sweep of its quarter-chord line.
   *
   * @param span span over both halves, positive
   * @param rootChord root chord, positive
   * @param tipChord tip chord, not negative
   * @return the planform
   */
  public static Planform tapered(Length span, Length rootChord, Length tipChord) {
    Objects.requireNonNull(rootChord, "root chord");
    Objects.requireNonNull(tipChord, "tip chord");
    Door.positive(span, "span");
    return symmetric(rootChord, List.of(panel(span.times(0.5), rootChord, tipChord)));
  }

  /**
   * A straight-tapered wing from its area, aspect and taper ratio, without sweep of its quarter-chord line.
   *
   * @param area reference area, positive
   * @param aspectRatio aspect ratio, positive
   * @param taperRatio taper ratio, 0 to 1.5
   * @return the planform
   */
  public static Planform tapered(Area area, double aspectRatio, double taperRatio) {
    Door.positive(area, "reference area");
    Door.positive(aspectRatio, "aspect ratio");
    Door.within(taperRatio, 0.0, 1.5, "taper ratio");
    double span = TaperedPlanform.span(area.si(), aspectRatio);
    double root = TaperedPlanform.rootChord(area.si(), span, taperRatio);
    return tapered(Length.metres(span), Length.metres(root), Length.metres(TaperedPlanform.tipChord(taperRatio, root)));
  }

  /**
   * A straight-tapered fin without sweep of its quarter-chord line. Its aspect ratio is its height squared over its area.
   *
   * @param area area of the fin, positive
   * @param aspectRatio height squared over area, positive
   * @param taperRatio taper ratio, 0 to 1.5
   * @return the planform
   */
  public static Planform taperedFin(Area area, double aspectRatio, double taperRatio) {
    Door.positive(area, "fin area");
    Door.positive(aspectRatio, "aspect ratio");
    Door.within(taperRatio, 0.0, 1.5, "taper ratio");
    double tall = TaperedPlanform.span(area.si(), aspectRatio);
    double root = TaperedPlanform.rootChord(area.si(), tall, taperRatio);
    Length rootChord = Length.metres(root);
    return fin(rootChord, List.of(panel(Length.metres(tall), rootChord, Length.metres(taperRatio * root))));
  }

  private static Panel panel(Length extent, Length rootChord, Length tipChord) {
    double tangent = 0.25 * (rootChord.si() - tipChord.si()) / extent.si();
    return new Panel(extent, tipChord, Angle.radians(Math.atan(tangent)), Angle.ZERO, Angle.ZERO);
  }

  /**
   * The same planform with every panel swept by one angle at one fraction of the chord.
   *
   * @param chordFraction 0 for the leading edge, 0.25 for the quarter-chord line, 1 for the trailing edge
   * @param sweep sweep of that line, positive aft
   * @return the swept planform
   */
  public Planform withSweep(double chordFraction, Angle sweep) {
    Objects.requireNonNull(sweep, "sweep");
    Door.within(chordFraction, 0.0, 1.0, "chord fraction");
    List<Panel> swept = new ArrayList<>();
    for (int i = 0; i < panels.size(); i++) {
      Panel p = panels.get(i);
      double tangent = sweep.tangent() + chordFraction * (half.chord(i) - half.chord(i + 1)) / p.extent().si();
      swept.add(new Panel(p.extent(), p.tipChord(), Angle.radians(Math.atan(tangent)), p.dihedral(), p.washout()));
    }
    return new Planform(mirrored, rootChord, swept);
  }

  /**
   * The same planform with one dihedral for every panel.
   *
   * @param dihedral dihedral, positive up
   * @return the planform
   */
  public Planform withDihedral(Angle dihedral) {
    return withPanels(p -> new Panel(p.extent(), p.tipChord(), p.leadingEdgeSweep(), dihedral, p.washout()));
  }

  /**
   * The same planform with washout spread linearly over the semispan.
   *
   * @param washout how much less incidence the tip has than the root
   * @return the planform
   */
  public Planform withWashout(Angle washout) {
    Objects.requireNonNull(washout, "washout");
    UnaryOperator<Panel> washedOut =
        p -> {
          Angle share = washout.times(p.extent().si() / half.semispan());
          return new Panel(p.extent(), p.tipChord(), p.leadingEdgeSweep(), p.dihedral(), share);
        };
    return withPanels(washedOut);
  }

  private Planform withPanels(UnaryOperator<Panel> change) {
    return new Planform(mirrored, rootChord, panels.stream().map(change).toList());
  }

  private double halves() {
    return mirrored ? 2.0 : 1.0;
  }

  /**
   * Whether it has two halves.
   *
   * @return true for a wing, false for a fin
   */
  public boolean isMirrored() {
    return mirrored;
  }

  /**
   * The panels of one half, from the root outwards.
   *
   * @return the panels
   */
  public List<Panel> panels() {
    return panels;
  }

  /**
   * Root chord.
   *
   * @return c_r
   */
  public Length rootChord() {
    return rootChord;
  }

  /**
   * Tip chord.
   *
   * @return c_t
   */
  public Length tipChord() {
    return panels.get(panels.size() - 1).tipChord();
  }

  /**
   * Taper ratio.
   *
   * @return c_t/c_r
   */
  public double taperRatio() {
    return tipChord().si() / rootChord.si();
  }

  /**
   * Span: over both halves of a wing, the height of a fin.
   *
   * @return b
   */
  public Length span() {
    return Length.metres(halves() * half.semispan());
  }

  /**
   * Projected area.
   *
   * @return S
   */
  public Area area() {
    return Area.squareMetres(halves() * half.area());
  }

  /**
   * Aspect ratio.
   *
   * @return b²/S
   */
  public double aspectRatio() {
    double b = span().si();
    return b * b / area().si();
  }

  /**
   * Mean geometric chord.
   *
   * @return S/b
   */
  public Length meanGeometricChord() {
    return Length.metres(area().si() / span().si());
  }

  /**
   * Mean aerodynamic chord.
   *
   * @return c̄
   */
  public Length meanAerodynamicChord() {
    return Length.metres(half.meanChord());
  }

  /**
   * Where the mean aerodynamic chord lies along the span.
   *
   * @return ȳ from the root
   */
  public Length meanAerodynamicChordY() {
    return Length.metres(half.meanChordY());
  }

  /**
   * Where the leading edge of the mean aerodynamic chord lies.
   *
   * @return x from the leading edge of the root, positive aft
   */
  public Length meanAerodynamicChordX() {
    return Length.metres(half.meanChordX());
  }

  /**
   * How high the mean aerodynamic chord lies.
   *
   * @return z from the root, positive towards the tip of positive dihedral
   */
  public Length meanAerodynamicChordZ() {
    return Length.metres(half.meanChordZ());
  }

  /**
   * Where the quarter point of the mean aerodynamic chord lies.
   *
   * @return x from the leading edge of the root, positive aft
   */
  public Length quarterMeanAerodynamicChordX() {
    return Length.metres(half.meanChordX() + 0.25 * half.meanChord());
  }

  /**
   * Sweep of the straight line from root to tip at a fraction of the chord: of the one panel, or over several panels the
   * angle whose tangent is their mean tangent, weighted with their extent.
   *
   * @param chordFraction 0 for the leading edge, 1 for the trailing edge
   * @return Λ, positive aft
   */
  public Angle sweepAt(double chordFraction) {
    Door.within(chordFraction, 0.0, 1.0, "chord fraction");
    return Angle.radians(Math.atan(half.sweepTangent(chordFraction)));
  }

  /**
   * The one dihedral that rolls the wing as the panels together do: their dihedral weighted with the strip area times its
   * distance from the root.
   *
   * <pre>{@code Γ_eq = ∫ Γ·c·y dy / ∫ c·y dy}</pre>
   *
   * @return the equivalent dihedral Γ_eq, for strips of one lift-curve slope
   */
  public Angle equivalentDihedral() {
    return Angle.radians(half.equivalentDihedral(panels));
  }

  /**
   * Chord at a station.
   *
   * @param station distance from the root, 0 to the semispan (of a fin: its height)
   * @return the chord
   */
  public Length chordAt(Length station) {
    Objects.requireNonNull(station, "station");
    return Length.metres(half.chordAt(station));
  }

  /**
   * Leading edge at a station.
   *
   * @param station distance from the root
   * @return x from the leading edge of the root
   */
  public Length leadingEdgeAt(Length station) {
    Objects.requireNonNull(station, "station");
    return Length.metres(half.leadingEdgeAt(station));
  }

  /**
   * Height at a station.
   *
   * @param station distance from the root
   * @return z from the root
   */
  public Length heightAt(Length station) {
    Objects.requireNonNull(station, "station");
    return Length.metres(half.heightAt(station));
  }

  /**
   * Twist at a station.
   *
   * @param station distance from the root
   * @return incidence of the station against the root, negative for washout
   */
  public Angle twistAt(Length station) {
    Objects.requireNonNull(station, "station");
    return Angle.radians(half.twistAt(station));
  }

  /**
   * The stations at which panels begin and end, from the root to the tip.
   *
   * @return distances from the root
   */
  public List<Length> stations() {
    return half.stations();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Planform that
        && mirrored == that.mirrored
        && rootChord.equals(that.rootChord)
        && panels.equals(that.panels);
  }

  @Override
  public int hashCode() {
    return panels.hashCode() * 31 + rootChord.hashCode();
  }

  @Override
  public String toString() {
    return (mirrored ? "planform " : "fin ")
        + span()
        + " span, "
        + area()
        + ", A "
        + Math.round(aspectRatio() * 100.0) / 100.0
        + ", λ "
        + Math.round(taperRatio() * 100.0) / 100.0;
  }
}
