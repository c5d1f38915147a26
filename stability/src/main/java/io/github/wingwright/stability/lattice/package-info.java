// SPDX-License-Identifier: Apache-2.0

/**
 * Wings, tails and fins as a lattice of vortices: what the shape alone says about lift, neutral point, induced drag and
 * every derivative with angles and rates.
 *
 * <h2>The idea</h2>
 * A thin surface that lifts is a sheet of vorticity. Cut it into panels, put one horseshoe vortex on each, a quarter of
 * the panel from its front, and ask that at three quarters the air flows along the surface. That is one equation per
 * panel, linear in the strengths. What the equations are asked for, the angle of the flow, is linear too: an onset flow is
 * a sum of six basic ones (along, up, sideways, rolling, pitching, yawing). So the equations are solved six times when
 * the lattice is factored, and any flight condition after that is a sum.
 *
 * <p>Mirror symmetry halves the work twice. A symmetric flow has equal strengths left and right, an antisymmetric one has
 * opposite strengths; each needs the starboard half only. A fin in the plane of symmetry takes part in the second kind.
 * The ground is one more mirror.
 *
 * <p>Forces are ρ·Γ·U×l on every segment. They are products of strength and velocity, both sums of basic flows; a table of
 * the pairs holds everything, and derivatives come from the product rule without small differences. Induced drag is
 * better taken far behind, in the {@link io.github.wingwright.stability.lattice.TrefftzPlane}, where only the wake is left.
 *
 * <h2>What is here</h2>
 * <table>
 * <caption>Types with an example value each</caption>
 * <tr><th>type</th><th>what</th><th>example</th></tr>
 * <tr><td>{@link io.github.wingwright.stability.lattice.LatticeSurface}</td><td>sections, mean line, panels, controls</td>
 * <td>mirrored 'wing', 2 sections, 8 by 32 panels</td></tr>
 * <tr><td>{@link io.github.wingwright.stability.lattice.AirframeLattice}</td><td>all surfaces of an airframe</td><td>wing,
 * V-tail</td></tr>
 * <tr><td>{@link io.github.wingwright.stability.lattice.VortexLattice}</td><td>surfaces, reference, ground</td><td>wing,
 * tailplane and fin</td></tr>
 * <tr><td>{@link io.github.wingwright.stability.lattice.FactoredLattice}</td><td>solved for the basic flows</td><td>slope
 * 4.2146 per rad, neutral point 0.2388 chords (rectangle, aspect ratio 6)</td></tr>
 * <tr><td>{@link io.github.wingwright.stability.lattice.LatticeCondition}</td><td>angles, rates, deflections</td><td>α 4°,
 * β 2°</td></tr>
 * <tr><td>{@link io.github.wingwright.stability.lattice.LatticeSolution}</td><td>coefficients, derivatives, loads</td>
 * <td>C_lβ −0.13 per rad</td></tr>
 * </table>
 *
 * <h2>Beside the lifting line</h2>
 * {@link io.github.wingwright.stability.lattice.FiniteWingComparison} puts handbook, lifting line and lattice of a wing side
 * by side. They differ for three reasons, and each row says what it assumes. A lattice has a chord, and so lifts less at the
 * tips: its slope is lower by up to half of 1/A of itself, its induced drag factor δ is lower. Its sections lift with 2π
 * unless told otherwise ({@link io.github.wingwright.stability.lattice.LatticeSurface#sectionLiftSlope}), where small models
 * have 4 to 6. And it has dihedral: on the projected span 12° of it lower δ by 0.02, below zero if need be, since the wake
 * is longer than the span it is measured by.
 *
 * <h2>Spacing</h2>
 * With {@link io.github.wingwright.stability.lattice.Spacing#SEMICIRCLE}, the default, 4 rows of 16 strips per half are
 * within 0.1 % of the converged slope of rectangular wings of aspect ratio 2 and 6. {@link
 * io.github.wingwright.stability.lattice.Spacing#UNIFORM} panels, those of the classic examples, are 2 % high there and
 * 1 % high with 8 rows of 32.
 *
 * <h2>Notation</h2>
 * Axes x aft, y to starboard, z up. α nose up, β wind from starboard, p starboard wing down, q nose up, r nose to
 * starboard positive; rates nondimensional with b/(2V) and c̄/(2V), about the stability axes, as are C_l and C_n. C_L up,
 * C_Y to starboard, C_l starboard wing down, C_m nose up, C_n nose to starboard positive. Γ is strength over airspeed; δ is
 * the factor of induced drag, C_Di = (1 + δ)·C_L²/(π·A).
 *
 * <h2>What it leaves out</h2>
 * Thickness, bodies, viscosity, stall, compressibility. Camber, twist and deflection tilt the condition, not the panels.
 * The wake runs along the x axis and drifts sideways with a sideslip, to first order; with the angle of attack it stays. A
 * wake that meets another surface is felt through a core of half a strip's width.
 *
 * <h2>Policies</h2>
 * Plain SI doubles inside; what a user builds and asks takes quantities as well. NaN and infinity refused where values come
 * in. Surfaces that coincide are an {@code IllegalArgumentException} that names them; a singular lattice is an {@code
 * IllegalStateException} that names the surface. Everything public is immutable.
 *
 * <h2>Sources</h2>
 * J. J. Bertin and M. L. Smith, Aerodynamics for Engineers (the classic swept wing); C. E. Lan, Journal of Aircraft 11
 * (1974), from memory (spacing); M. M. Munk (far wake).
 */
@NullMarked
package io.github.wingwright.stability.lattice;

import org.jspecify.annotations.NullMarked;
