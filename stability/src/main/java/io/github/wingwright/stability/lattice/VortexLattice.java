// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.lattice;

import io.github.wingwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * A vortex lattice: a specification of surfaces, reference and ground that {@link #factor()} turns into something that
 * answers for any condition of flight.
 *
 * <p>Model: thin surfaces in incompressible flow. Every panel carries a horseshoe vortex whose legs run aft along the
 * chord, and behind the trailing edge with the wind; at its control point the flow must follow the cambered and twisted
 * surface. Camber, twist and control deflection enter through that condition only, so everything is linear in them and in
 * the components of the onset flow, and one factorisation serves all angles, sideslips and rates.
 *
 * <p>Symmetry: only the starboard half and the surfaces in the plane of symmetry are unknowns. Symmetric conditions
 * (angle of attack, pitch rate, twist) and antisymmetric ones (sideslip, roll and yaw rate) are two separate systems of
 * half the size.
 *
 * <p>Validity: attached flow, small angles, low Mach number, no bodies, no thickness. The wake keeps to the body axis, and
 * drifts sideways with the sideslip to first order: good below about 10° of angle of attack and sideslip.
 */
public final class VortexLattice {
  private final LatticeReference reference;
  private final List<LatticeSurface> surfaces;
  private final double ground;

  private VortexLattice(LatticeReference reference, List<LatticeSurface> surfaces, double ground) {
    this.reference = reference;
    this.surfaces = surfaces;
    this.ground = ground;
  }

  /**
   * A lattice of these surfaces, far from the ground.
   *
   * @param reference area, chord, span and moment point of the coefficients
   * @param surfaces one or more surfaces with different names
   */
  public static VortexLattice of(LatticeReference reference, LatticeSurface... surfaces) {
    Objects.requireNonNull(surfaces, "surfaces");
    Objects.requireNonNull(reference, "reference");
    if (surfaces.length == 0) {
      throw new IllegalArgumentException("a lattice needs at least 1 surface, had none");
    }
    List<String> names = new ArrayList<>();
    List<String> controls = new ArrayList<>();
    for (LatticeSurface s : surfaces) {
      if (names.contains(s.name())) {
        throw new IllegalArgumentException("surfaces need different names, two were '" + s.name() + "'");
      }
      names.add(s.name());
      for (LatticeControl c : s.controls()) {
        if (controls.contains(c.name())) {
          throw new IllegalArgumentException("controls need different names, two were '" + c.name() + "'");
        }
        controls.add(c.name());
      }
    }
    return new VortexLattice(reference, List.of(surfaces), Double.NEGATIVE_INFINITY);
  }

  /**
   * Over flat ground, parallel to the x axis.
   *
   * @param z height of the ground above the datum [m]: negative, and below every surface
   */
  public VortexLattice groundAt(double z) {
    for (LatticeSurface s : surfaces) {
      for (LatticeStation station : s.stations()) {
        if (!(station.z() > z)) {
          throw new IllegalArgumentException(String.format(Locale.ROOT,
              "ground must lie below surface '%s' at z = %.4g m, was at z = %.4g m", s.name(),
              station.z(), z));
        }
      }
    }
    return new VortexLattice(reference, surfaces, z);
  }

  /**
   * Over flat ground, parallel to the x axis.
   *
   * @param z height of the ground above the datum: negative, and below every surface
   */
  public VortexLattice groundAt(Length z) {
    Objects.requireNonNull(z, "height of the ground");
    return groundAt(z.si());
  }

  public LatticeReference reference() {
    return reference;
  }

  public List<LatticeSurface> surfaces() {
    return surfaces;
  }

  /** Height of the ground above the datum [m], negative infinity when there is none. */
  public double ground() {
    return ground;
  }

  /**
   * Builds and factors the two systems, and solves them for each component of the onset flow and each control.
   *
   * @throws IllegalArgumentException if two surfaces coincide
   * @throws IllegalStateException if the lattice is singular; the message names the surface
   */
  public FactoredLattice factor() {
    return new LatticeAssembly(this).assemble();
  }

  @Override
  public String toString() {
    int panels = surfaces.stream().mapToInt(s -> s.chordwisePanels() * s.spanwisePanels()).sum();
    return String.format(Locale.ROOT, "vortex lattice of %d surfaces, %d panels per half", surfaces.size(), panels);
  }
}
