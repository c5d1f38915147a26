// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Length;
import java.io.Serializable;
import java.util.Objects;

/**
 * A tail surface.
 *
 * <p>A V-tail is one tail of two halves, with dihedral. As of any mirrored planform its span and area are those seen from
 * above; {@link #areaInOwnPlane()} is that of its panels.
 *
 * @param role what it is for
 * @param planform its outline: mirrored for a horizontal tail and a V-tail, one half for a fin
 * @param section its section
 * @param placement where the leading edge of its root sits
 * @param incidence angle of its root chord against the fuselage reference line; zero for a fin
 */
public record Tail(Role role, Planform planform, AirfoilSection section, Placement placement, Angle incidence)
    implements LiftingSurface, Serializable {

  /** What a tail is for. */
  public enum Role {
    /** Longitudinal stability and trim. */
    HORIZONTAL("horizontal tail"),
    /** Directional stability. */
    VERTICAL("vertical tail"),
    /** Both together: two halves that rise to a V. */
    V("V-tail");

    private final String words;

    Role(String words) {
      this.words = words;
    }

    /**
     * The role in words.
     *
     * @return for example {@code "horizontal tail"}
     */
    public String words() {
      return words;
    }

    /**
     * Whether it has a port and a starboard half.
     *
     * @return false for a fin
     */
    public boolean isMirrored() {
      return this != VERTICAL;
    }
  }

  /** Refuses a planform that does not go with the role. */
  public Tail {
    Objects.requireNonNull(role, "role");
    Objects.requireNonNull(planform, "planform");
    Objects.requireNonNull(section, "section");
    Objects.requireNonNull(placement, "placement");
    Objects.requireNonNull(incidence, "incidence");
    if (planform.isMirrored() != role.isMirrored()) {
      throw new IllegalArgumentException(
          "planform of a " + role.words + " must have " + (role.isMirrored() ? "two halves" : "one half")
              + ", was " + planform);
    }
    if (role == Role.V && !(Math.abs(planform.equivalentDihedral().degrees()) >= 5.0)) {
      throw new IllegalArgumentException(
          "dihedral of a V-tail must be 5° or more, up or down, was " + planform.equivalentDihedral());
    }
  }

  /**
   * Its area as its panels have it: that of a V-tail is larger than seen from above.
   *
   * @return the area in the panels' own planes
   */
  public Area areaInOwnPlane() {
    return role == Role.V ? planform.area().times(1.0 / Math.cos(planform.equivalentDihedral().si())) : planform.area();
  }

  @Override
  public Area wettedArea() {
    return areaInOwnPlane().times(section.perimeter());
  }

  /**
   * The distance from the wing's quarter mean aerodynamic chord to that of this tail.
   *
   * @param wing the wing
   * @return the tail arm l, positive aft
   */
  public Length armFrom(Wing wing) {
    Objects.requireNonNull(wing, "wing");
    return quarterChordX().minus(wing.quarterChordX());
  }

  /**
   * The same tail at another incidence.
   *
   * @param angle angle of its root chord against the fuselage reference line
   * @return the tail
   */
  public Tail withIncidence(Angle angle) {
    return new Tail(role, planform, section, placement, angle);
  }

  @Override
  public String toString() {
    return role.words + " " + planform.span() + " × " + planform.meanGeometricChord() + ", " + section.name();
  }
}
