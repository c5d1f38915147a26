// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils.viscous;

import java.io.Serializable;
import java.util.List;

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
        stations = List.copyOf(stations);
    }
}
