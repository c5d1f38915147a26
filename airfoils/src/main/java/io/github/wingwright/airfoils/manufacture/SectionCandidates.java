// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils.manufacture;

import io.github.wingwright.airfoils.ComposedSection;
import io.github.wingwright.airfoils.Naca4;
import io.github.wingwright.airfoils.viscous.ComputedPolar;
import io.github.wingwright.airfoils.viscous.ViscousMethod;
import io.github.wingwright.core.ConvergenceException;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.numerics.Parallel;
import io.github.wingwright.core.quantity.Density;
import io.github.wingwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/**
 * Sections side by side for one wing: polars computed at the wing's own Reynolds number, and what each is to make.
 *
 * <pre>{@code
 * SectionCandidates candidates = SectionCandidates.of(
 *     SectionCandidates.neighbours(Naca4.parse("4406")), millimetres(53), millimetres(0.8), density, 30_000);
 * System.out.println(candidates);       // a table
 * }</pre>
 *
 * <p>The first section is the chosen one. A section is judged alone: what a lighter or stiffer wing brings the aircraft, its
 * designer weighs. A polar takes some tens of milliseconds; each is computed at two Reynolds numbers about the given one, so
 * that it can serve a flight at its own speeds.
 */
public final class SectionCandidates {
  /** Polars reach from this part of the Reynolds number to its inverse: one step of the grid. */
  private static final double REACH = 0.85;

  private static final double STEP = 0.02;

  private final List<SectionCandidate> candidates;
  private final List<String> unsolved;

  private SectionCandidates(List<SectionCandidate> candidates, List<String> unsolved) {
    this.candidates = List.copyOf(candidates);
    this.unsolved = List.copyOf(unsolved);
  }

  /**
   * Compares sections.
   *
   * @param sections the sections, the chosen one first
   * @param chord chord of the wing, positive
   * @param wall thickness of its walls, positive, below half of the chord
   * @param material density of the walls
   * @param reynolds Reynolds number on the chord [1], 10⁴ to 5·10⁶
   */
  public static SectionCandidates of(
      List<? extends ComposedSection> sections, Length chord, Length wall, Density material, double reynolds) {
    Objects.requireNonNull(sections, "sections");
    if (sections.isEmpty()) {
      throw new IllegalArgumentException("a comparison needs at least one section, got none");
    }
    if (!(reynolds >= 1e4 && reynolds <= 5e6)) {
      throw new IllegalArgumentException("Reynolds number must be from 10⁴ to 5·10⁶, was " + reynolds);
    }
    // Each section by itself: on several threads, with the same result as on one.
    List<Optional<SectionCandidate>> found = new ArrayList<>(Collections.nCopies(sections.size(), Optional.empty()));
    Parallel.each(sections.size(), i -> found.set(i, candidate(sections.get(i), chord, wall, material, reynolds)));
    List<String> unsolved = new ArrayList<>();
    for (int i = 0; i < found.size(); i++) {
      if (found.get(i).isEmpty()) {
        unsolved.add(sections.get(i).name());
      }
    }
    return new SectionCandidates(found.stream().flatMap(Optional::stream).toList(), unsolved);
  }

  private static Optional<SectionCandidate> candidate(
      ComposedSection section, Length chord, Length wall, Density material, double reynolds) {
    SectionShell shell = SectionShell.of(section, chord, wall);
    try {
      ComputedPolar polar =
          ComputedPolar.of(ViscousMethod.of(section), Interval.between(REACH * reynolds, reynolds / REACH));
      return Optional.of(SectionCandidate.of(section, polar, reynolds, chord, shell, shell.massPerSpan(material)));
    } catch (ConvergenceException stalled) {
      return Optional.empty();
    }
  }

  /**
   * A 4-digit section and its neighbours: one with 2 % of the chord less camber (more, where there is less than 3 %), and one
   * with 2 % less thickness (more, where there is at most 5 %).
   *
   * @param chosen the chosen section
   * @return three sections, the chosen one first
   */
  public static List<Naca4> neighbours(Naca4 chosen) {
    Objects.requireNonNull(chosen, "chosen");
    double camber = chosen.nominalCamber();
    double thickness = chosen.nominalThickness();
    return List.of(
        chosen,
        chosen.withCamber(camber >= 0.03 ? camber - STEP : camber + STEP),
        chosen.withThickness(thickness > 0.05 ? thickness - STEP : thickness + STEP));
  }

  /** The sections that have a polar, in the order given. */
  public List<SectionCandidate> all() {
    return candidates;
  }

  /** Names of sections of which too few points have a solution. */
  public List<String> unsolved() {
    return unsolved;
  }

  /** A table of the candidates. */
  @Override
  public String toString() {
    StringBuilder table = new StringBuilder(
        "section      L/D likely    may be     at lift  usable  edge mm  spar mm    g/m");
    for (SectionCandidate c : candidates) {
      table.append(String.format(Locale.ROOT, "%n%-12s %8.1f %7.1f–%-6.1f %8.2f %7.2f %8.2f %8.2f %6.1f", c.section().name(),
          c.liftToDrag().likely(), c.liftToDrag().low(), c.liftToDrag().high(), c.bestLift(), c.greatestLift().likely(),
          c.trailingEdge().millimetres(), c.sparDepth().millimetres(), c.massPerSpan().gramsPerMetre()));
    }
    for (String name : unsolved) {
      table.append(String.format(Locale.ROOT, "%n%-12s too few points have a solution", name));
    }
    return table.toString();
  }
}
