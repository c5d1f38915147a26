// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.lattice;

import io.github.wingwright.core.geometry.LiftingSurface;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.function.DoubleUnaryOperator;

/**
 * A thin lifting surface as the lattice sees it: sections from root to tip, a mean line, a number of panels.
 *
 * <p>A surface is either one half of a mirrored pair (a wing, a tailplane, twin fins), told for the starboard side, or
 * lies in the plane of symmetry (a central fin), told from its lower to its upper end. A specification is immutable;
 * each call returns a new one.
 */
public final class LatticeSurface {
  private final String name;
  private final List<LatticeStation> stations;
  private final List<LatticeControl> controls;
  private final boolean central;
  private final LatticeSection section;
  private final int chordwise;
  private final int spanwise;
  private final Spacing spacing;

  private LatticeSurface(String name, List<LatticeStation> stations, List<LatticeControl> controls, boolean central,
      LatticeSection section, int chordwise, int spanwise, Spacing spacing) {
    this.name = name;
    this.stations = stations;
    this.controls = controls;
    this.central = central;
    this.section = section;
    this.chordwise = chordwise;
    this.spanwise = spanwise;
    this.spacing = spacing;
  }

  /**
   * A mirrored surface: its starboard half is given from root to tip.
   *
   * @param name name, unique in the lattice, used in messages and results
   * @param stations two or more sections from root to tip
   */
  public static LatticeSurface mirrored(String name, LatticeStation... stations) {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(stations, "stations");
    return of(name, false, stations);
  }

  /**
   * A surface in the plane of symmetry.
   *
   * @param name name, unique in the lattice, used in messages and results
   * @param stations two or more sections from the lower to the upper end, all with y = 0
   */
  public static LatticeSurface central(String name, LatticeStation... stations) {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(stations, "stations");
    return of(name, true, stations);
  }

  private static LatticeSurface of(String name, boolean central, LatticeStation... stations) {
    if (name.isBlank()) {
      throw new IllegalArgumentException("a surface needs a name, was blank");
    }
    if (stations.length < 2) {
      throw new IllegalArgumentException(String.format(Locale.ROOT,
          "surface '%s' needs at least 2 sections, had %d", name, stations.length));
    }
    double size = 0;
    double offPlane = 0;
    for (int i = 0; i < stations.length; i++) {
      LatticeStation s = stations[i];
      if (!central && s.y() < 0) {
        throw new IllegalArgumentException(String.format(Locale.ROOT,
            "surface '%s' must be given for its starboard half, had a section at y = %.4g m", name, s.y()));
      }
      offPlane = Math.max(offPlane, Math.abs(s.y()));
      if (i > 0) {
        double step = Math.hypot(s.y() - stations[i - 1].y(), s.z() - stations[i - 1].z());
        if (!(step > 1e-9 * Math.max(s.chord(), stations[i - 1].chord()))) {
          throw new IllegalArgumentException(String.format(Locale.ROOT,
              "sections %d and %d of surface '%s' must lie apart in y or z, were at the same place", i,
              i + 1, name));
        }
        if (s.chord() + stations[i - 1].chord() == 0) {
          throw new IllegalArgumentException(String.format(Locale.ROOT,
              "sections %d and %d of surface '%s' must have a chord, had none", i, i + 1, name));
        }
        size += step;
      }
    }
    if (central && offPlane > 1e-9 * size) {
      throw new IllegalArgumentException(String.format(Locale.ROOT,
          "surface '%s' must lie in the plane of symmetry, had a section at y = %.4g m", name, offPlane));
    }
    if (!central && offPlane <= 1e-9 * size) {
      throw new IllegalArgumentException(String.format(Locale.ROOT,
          "surface '%s' would coincide with its own mirror image: give it as central", name));
    }
    return new LatticeSurface(name, List.of(stations), List.of(), central, LatticeSection.PLATE, 8, 32, Spacing.SEMICIRCLE);
  }

  /**
   * A mirrored trapezoidal surface with its root in the plane of symmetry.
   *
   * @param name name, unique in the lattice
   * @param span span from tip to tip, projected on the horizontal [m], positive
   * @param rootChord chord at the root [m], positive
   * @param tipChord chord at the tip [m], positive
   * @param quarterSweep sweep of the quarter-chord line [rad], aft positive
   * @param dihedral dihedral [rad], tips up positive
   */
  public static LatticeSurface trapezoid(String name, double span, double rootChord, double tipChord,
      double quarterSweep, double dihedral) {
    Objects.requireNonNull(name, "name");
    if (!(span > 0) || span == Double.POSITIVE_INFINITY) {
      throw new IllegalArgumentException(String.format(Locale.ROOT, "span must be positive, was %.6g m", span));
    }
    double tipX = rootChord / 4 + span / 2 * Math.tan(quarterSweep) - tipChord / 4;
    return mirrored(name, new LatticeStation(0, 0, 0, rootChord, 0),
        new LatticeStation(tipX, span / 2, span / 2 * Math.tan(dihedral), tipChord, 0));
  }

  /**
   * A mirrored trapezoidal surface with its root in the plane of symmetry.
   *
   * @param name name, unique in the lattice
   * @param span span from tip to tip, projected on the horizontal, positive
   * @param rootChord chord at the root, positive
   * @param tipChord chord at the tip, positive
   * @param quarterSweep sweep of the quarter-chord line, aft positive
   * @param dihedral dihedral, tips up positive
   */
  public static LatticeSurface trapezoid(String name, Length span, Length rootChord, Length tipChord, Angle quarterSweep,
      Angle dihedral) {
    Objects.requireNonNull(span, "span");
    Objects.requireNonNull(rootChord, "root chord");
    Objects.requireNonNull(tipChord, "tip chord");
    Objects.requireNonNull(quarterSweep, "sweep of the quarter-chord line");
    Objects.requireNonNull(dihedral, "dihedral");
    return trapezoid(name, span.si(), rootChord.si(), tipChord.si(), quarterSweep.si(), dihedral.si());
  }

  /**
   * A wing, tailplane or fin of an airframe, with its section's mean line, twist and incidence.
   *
   * <p>A fin on the plane of symmetry is central; a fin beside it is one of a mirrored pair.
   *
   * @param name name, unique in the lattice
   * @param surface the surface
   */
  public static LatticeSurface of(String name, LiftingSurface surface) {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(surface, "surface");
    Planform planform = surface.planform();
    double x = surface.placement().x().si();
    double y = surface.placement().y().si();
    double z = surface.placement().z().si();
    LatticeStation[] sections = planform.stations().stream().map(station -> {
      double out = station.si();
      double lifted = planform.heightAt(station).si();
      boolean upright = !planform.isMirrored();
      return new LatticeStation(x + planform.leadingEdgeAt(station).si(), upright ? y + lifted : y + out,
          upright ? z + out : z + lifted, planform.chordAt(station).si(),
          planform.twistAt(station).si() + (upright ? surface.incidence().si() : 0.0));
    }).toArray(LatticeStation[]::new);
    boolean inPlane = !planform.isMirrored() && Arrays.stream(sections).allMatch(s -> s.y() == 0);
    LatticeSurface shape = of(name, inPlane, sections).meanLine(surface.section()::camberSlope);
    return planform.isMirrored() ? shape.incidence(surface.incidence().si()) : shape;
  }

  /**
   * Moved bodily.
   *
   * @param dx aft [m]
   * @param dy to starboard [m]
   * @param dz up [m]
   */
  public LatticeSurface movedBy(double dx, double dy, double dz) {
    LatticeStation[] moved = stations.stream()
        .map(s -> new LatticeStation(s.x() + dx, s.y() + dy, s.z() + dz, s.chord(), s.twist()))
        .toArray(LatticeStation[]::new);
    LatticeSurface at = of(name, central, moved);
    return new LatticeSurface(name, at.stations, controls, central, section, chordwise, spanwise, spacing);
  }

  /**
   * Moved bodily.
   *
   * @param aft how far aft
   * @param starboard how far to starboard
   * @param up how far up
   */
  public LatticeSurface movedBy(Length aft, Length starboard, Length up) {
    Objects.requireNonNull(aft, "aft");
    Objects.requireNonNull(starboard, "starboard");
    Objects.requireNonNull(up, "up");
    return movedBy(aft.si(), starboard.si(), up.si());
  }

  /**
   * With linear twist added from the first section to the last.
   *
   * @param root angle added at the first section, nose up positive
   * @param tip angle added at the last section, nose up positive
   */
  public LatticeSurface twisted(Angle root, Angle tip) {
    Objects.requireNonNull(root, "twist at the root");
    Objects.requireNonNull(tip, "twist at the tip");
    return twisted(root.si(), tip.si());
  }

  /**
   * With linear twist added from the first section to the last.
   *
   * @param root angle added at the first section [rad], nose up positive
   * @param tip angle added at the last section [rad], nose up positive
   */
  public LatticeSurface twisted(double root, double tip) {
    LatticeStation first = stations.get(0);
    double[] along = new double[stations.size()];
    for (int i = 1; i < along.length; i++) {
      LatticeStation a = stations.get(i - 1);
      LatticeStation b = stations.get(i);
      along[i] = along[i - 1] + Math.hypot(b.y() - a.y(), b.z() - a.z());
    }
    List<LatticeStation> twisted = new ArrayList<>();
    twisted.add(new LatticeStation(first.x(), first.y(), first.z(), first.chord(), first.twist() + root));
    for (int i = 1; i < along.length; i++) {
      LatticeStation s = stations.get(i);
      double here = root + (tip - root) * along[i] / along[along.length - 1];
      twisted.add(new LatticeStation(s.x(), s.y(), s.z(), s.chord(), s.twist() + here));
    }
    return new LatticeSurface(name, List.copyOf(twisted), controls, central, section, chordwise, spanwise,
        spacing);
  }

  /**
   * With this mean line.
   *
   * @param slope slope dz/dx of the mean line at x/c from 0 to 1 [-], as the section's mean line gives it; finite
   */
  public LatticeSurface meanLine(DoubleUnaryOperator slope) {
    return with(section.meanLine(Objects.requireNonNull(slope, "slope")));
  }

  /**
   * With sections of this lift slope, where a lattice left to itself has 2π.
   *
   * <p>At small Reynolds numbers sections lift less than in potential flow. Each strip then meets an angle that is less by
   * what its own circulation says was lost, so that alone, without neighbours, it would lift with the slope asked for:
   *
   * <pre>{@code Δα = (1/a₀ − 1/(2π))·2·Γ/(V·c)}</pre>
   *
   * <p>The same at every row, so the loss acts at the quarter chord. A lifting line does the same with its a₀: the two are
   * comparable only with the same one.
   *
   * @param perRadian a₀ [1/rad], positive and at most 8
   */
  public LatticeSurface sectionLiftSlope(double perRadian) {
    if (!(perRadian > 0) || perRadian > 8) {
      throw new IllegalArgumentException(String.format(Locale.ROOT,
          "section lift slope of surface '%s' must lie within 0 and 8 per rad, was %s", name, perRadian));
    }
    return with(section.slope(perRadian));
  }

  /**
   * Set as a whole at this angle, about the y axis: what a wing on its saddle does. On a surface with dihedral Γ the air
   * meets the panels with cos Γ of it, as it does with an angle of attack.
   *
   * @param angle incidence [rad], nose up positive
   */
  public LatticeSurface incidence(double angle) {
    if (!(Math.abs(angle) < Math.PI / 4)) {
      throw new IllegalArgumentException(String.format(Locale.ROOT,
          "incidence of surface '%s' must lie within -45° and 45°, was %.4g°", name, Math.toDegrees(angle)));
    }
    return with(section.incidence(angle));
  }

  /** Set as a whole at this incidence, nose up positive, about the y axis. */
  public LatticeSurface incidence(Angle angle) {
    Objects.requireNonNull(angle, "incidence");
    return incidence(angle.si());
  }

  private LatticeSurface with(LatticeSection other) {
    return new LatticeSurface(name, stations, controls, central, other, chordwise, spanwise, spacing);
  }

  /**
   * With this number of panels.
   *
   * @param alongChord rows along the chord, 1 to 64
   * @param alongSpan strips along the given half, at least one per pair of sections, at most 256
   */
  public LatticeSurface panels(int alongChord, int alongSpan) {
    if (alongChord < 1 || alongChord > 64) {
      throw new IllegalArgumentException("rows of panels must lie within 1 and 64, were " + alongChord);
    }
    if (alongSpan < stations.size() - 1 || alongSpan > 256) {
      throw new IllegalArgumentException(String.format(Locale.ROOT,
          "strips of panels must lie within %d and 256, were %d", stations.size() - 1, alongSpan));
    }
    return new LatticeSurface(name, stations, controls, central, section, alongChord, alongSpan, spacing);
  }

  /** With this rule of spacing. */
  public LatticeSurface spacing(Spacing rule) {
    return new LatticeSurface(name, stations, controls, central, section, chordwise, spanwise,
        Objects.requireNonNull(rule, "spacing"));
  }

  /** With a control surface more. */
  public LatticeSurface control(LatticeControl added) {
    List<LatticeControl> more = new ArrayList<>(controls);
    more.add(Objects.requireNonNull(added, "control surface"));
    return new LatticeSurface(name, stations, List.copyOf(more), central, section, chordwise, spanwise,
        spacing);
  }

  public String name() {
    return name;
  }

  /** Sections from root to tip. */
  public List<LatticeStation> stations() {
    return stations;
  }

  public List<LatticeControl> controls() {
    return controls;
  }

  /** Whether the surface lies in the plane of symmetry; otherwise it has a mirror image. */
  public boolean isCentral() {
    return central;
  }

  public int chordwisePanels() {
    return chordwise;
  }

  public int spanwisePanels() {
    return spanwise;
  }

  public Spacing spacing() {
    return spacing;
  }

  /**
   * Slope of the mean line.
   *
   * @param fraction x/c [-], 0 to 1
   * @return dz/dx [-]
   */
  public double meanLineSlope(double fraction) {
    return section.meanLine().applyAsDouble(fraction);
  }

  /** Lift slope of its sections a₀ [1/rad]; 2π unless told otherwise. */
  public double sectionLiftSlope() {
    return section.slope();
  }

  /** What its sections lose against potential flow: 1/a₀ − 1/(2π). */
  double slopeLoss() {
    return section.slope() == 2 * Math.PI ? 0 : section.loss();
  }

  /** Angle at which it is set as a whole [rad], nose up positive. */
  public double incidence() {
    return section.incidence();
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "%s '%s', %d sections, %d by %d panels", central ? "central" : "mirrored",
        name, stations.size(), chordwise, spanwise);
  }
}
