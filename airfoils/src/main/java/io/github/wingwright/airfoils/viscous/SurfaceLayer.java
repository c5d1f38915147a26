// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils.viscous;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * The boundary layer of one surface.
 *
 * @param regime what it does
 * @param separation chord station of the first separation [chords]; NaN if none
 * @param reattachment chord station where it comes back [chords]; NaN if it does not
 * @param transition chord station where it turns turbulent [chords]; 1 if it stays laminar
 * @param stations the layer from the stagnation point to the trailing edge
 */
public record SurfaceLayer(
    Regime regime, double separation, double reattachment, double transition, List<LayerStation> stations)
    implements Serializable {
  /** Copies the stations. */
  public SurfaceLayer {
    Objects.requireNonNull(stations, "stations");
    Objects.requireNonNull(regime, "regime");
    stations = List.copyOf(stations);
  }

  /** Roughness Reynolds number from which a roughness trips the layer. */
  private static final double TRIPPING = 600;

  /**
   * The least height of a trip that works at a station: its roughness Reynolds number, on its height k and the speed of
   * the layer at that height, reaches 600.
   *
   * <pre>{@code u(k) = V·S·k/θ near the wall, at most V;   k = √(600·θ/(V·S·Re)), at least 600/(V·Re)}</pre>
   * Source: Braslow and Knox, NACA TN 4363, 1958 (from memory). On a glider of 50 mm chord this is a millimetre: print
   * layers do not trip it.
   *
   * @param x chord station [chords], where the layer is laminar and attached
   * @param reynolds Reynolds number on the chord [1], of this layer
   * @return height [chords]
   */
  public double leastTripHeight(double x, double reynolds) {
    for (int i = 1; i < stations.size(); i++) {
      LayerStation s = stations.get(i);
      if (s.x() >= x && i > 3) {
        if (s.turbulent() || !(s.frictionCoefficient() > 0)) {
          throw new IllegalArgumentException(
              "a trip must lie where the layer is laminar and attached, it is not at " + x);
        }
        double shear = 0.5 * s.frictionCoefficient() * s.speed() * s.momentumThickness() * reynolds;
        double inside = Math.sqrt(TRIPPING * s.momentumThickness() / (s.speed() * shear * reynolds));
        return Math.max(inside, TRIPPING / (s.speed() * reynolds));
      }
    }
    throw new IllegalArgumentException("the station of a trip must lie on the section, was " + x);
  }
}
