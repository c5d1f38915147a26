// SPDX-License-Identifier: Apache-2.0

/**
 * Boundary layers and profile drag of a section, down to the Reynolds numbers of hand-launched gliders.
 *
 * <h2>What happens on a small wing</h2>
 * Air sticks to the surface. The slowed layer is laminar at first, and on a small wing it stays laminar past the suction
 * peak, where pressure rises; a laminar layer cannot climb far, and it separates. What follows decides everything. In the
 * separated layer small waves grow fast; if it turns turbulent soon enough it mixes, comes back to the surface and encloses
 * a laminar separation bubble (Reynolds numbers from about 7·10⁴). If not, it stays separated to the trailing edge: drag
 * doubles and lift drops (the collapse that wind tunnels show near 6·10⁴). Further down only thin cambered plates remain
 * good, because their separation does not depend on such luck.
 *
 * <h2>How it is computed</h2>
 * <ul>
 * <li>{@link io.github.wingwright.airfoils.viscous.ViscousMethod}: layers, wake and outer flow solved together. The
 *     displacement of the layers changes the outer flow; without that the zero-lift angle below 10⁵ is off by degrees.
 * <li>{@link io.github.wingwright.airfoils.viscous.ComputedPolar}: many such points as the polar that a design asks for; one
 *     point is a {@link io.github.wingwright.airfoils.viscous.ViscousPoint} with a {@link
 *     io.github.wingwright.airfoils.viscous.SurfaceLayer} above and below.
 * <li>{@link io.github.wingwright.airfoils.viscous.SimilarLayers}: laminar layers, attached and reversed.
 * <li>{@link io.github.wingwright.airfoils.viscous.Transition}: two criteria of transition.
 * <li>{@link io.github.wingwright.airfoils.viscous.Entrainment}: turbulent layers.
 * <li>{@link io.github.wingwright.airfoils.viscous.Thwaites}: the classical quadrature, for a laminar layer in a given
 *     flow; a check, and the start of the iteration.
 * <li>{@link io.github.wingwright.airfoils.viscous.ProfileDrag}: drag from the layer at the trailing edge.
 * <li>{@link io.github.wingwright.airfoils.viscous.ThinPlate}: flat and cambered plates from 10⁴.
 * </ul>
 *
 * <h2>Policies</h2>
 * A point carries what its layers do ({@link io.github.wingwright.airfoils.viscous.Regime}) and findings where the method is
 * outside its validity. A point without a solution is an exception, or is missing from a polar; it is never a NaN.
 * Compare drag at equal lift: the angle of attack of a tunnel is not that of free air.
 *
 * <p>Notation: chord 1, stream speed 1, θ momentum thickness, δ* displacement thickness, H = δ* / θ, Reθ = V·θ/ν.
 */
@NullMarked
package io.github.wingwright.airfoils.viscous;

import org.jspecify.annotations.NullMarked;
