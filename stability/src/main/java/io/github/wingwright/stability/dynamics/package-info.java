// SPDX-License-Identifier: Apache-2.0

/**
 * How an aircraft moves after a disturbance: from nondimensional derivatives to natural motions with names.
 *
 * <h2>The idea</h2>
 * Steady flight is disturbed a little. Forces and moments change in proportion, so the motion is ẋ = A·x with four states
 * for the motions in the plane of symmetry, speed u, heave w, pitch rate q, attitude θ, and four across it, sideslip
 * velocity v, roll rate p, yaw rate r, bank φ. The roots of A are the natural motions: a real root creeps, a pair swings.
 * <pre>{@code
 * nondimensional ──(ρ, u₀, S, c̄, b)──▶ dimensional ──(m, I)──▶ state matrix ──▶ roots ──▶ named motions ──▶ findings
 * }</pre>
 * In code, for a lattice solved at the angle of the glide with its moments about the centre of gravity:
 * <pre>{@code
 * LongitudinalDerivatives d = LatticeDerivatives.longitudinal(solution, profileDrag, 0, liftAngleRate, momentAngleRate);
 * LongitudinalForces.of(flight, mass, d).with(air).stateMatrix(flight, air.addedTo(body)).modes();
 * }</pre>
 * A stable aircraft of the usual kind has a quick nod (short period), a slow rise and fall (phugoid), a roll that dies
 * out, a slow spiral and a tail that wags (Dutch roll). Other aircraft have others: move the centre of gravity aft and
 * the short period comes apart into two creeping motions, one of which begins to grow while the other half joins the
 * phugoid as a third oscillation; take away the fin and the Dutch roll comes apart; add much dihedral and roll and spiral
 * join. {@link io.github.wingwright.stability.dynamics.ModeKind} names them all.
 *
 * <h2>What is here</h2>
 * <table>
 * <caption>Types with an example value each</caption>
 * <tr><th>type</th><th>what</th><th>example</th></tr>
 * <tr><td>{@link io.github.wingwright.stability.dynamics.SteadyFlight}, {@link
 * io.github.wingwright.stability.dynamics.BodyInertia}</td><td>the flight and the body</td><td>5 m/s, 20 g</td></tr>
 * <tr><td>{@link io.github.wingwright.stability.dynamics.LongitudinalDerivatives}, {@link
 * io.github.wingwright.stability.dynamics.LateralDerivatives}</td><td>nondimensional</td><td>C_mα −0.7</td></tr>
 * <tr><td>{@link io.github.wingwright.stability.dynamics.LongitudinalForces}, {@link
 * io.github.wingwright.stability.dynamics.LateralForces}</td><td>dimensional</td><td>M_w −156,300 N·s</td></tr>
 * <tr><td>{@link io.github.wingwright.stability.dynamics.StateMatrix}</td><td>A, its polynomial, Routh's
 * discriminant</td><td>λ⁴ + 0.7505λ³ + …</td></tr>
 * <tr><td>{@link io.github.wingwright.stability.dynamics.Modes}, {@link
 * io.github.wingwright.stability.dynamics.Mode}</td><td>the motions</td><td>phugoid: period 93.46 s, damping 0.049</td></tr>
 * <tr><td>{@link io.github.wingwright.stability.dynamics.ModeApproximations}</td><td>short formulas beside them</td>
 * <td>Lanchester: 107 s</td></tr>
 * <tr><td>{@link io.github.wingwright.stability.dynamics.WingApparentMass}</td><td>air carried along</td><td>1.0 g on a model
 * of 20 g</td></tr>
 * <tr><td>{@link io.github.wingwright.stability.dynamics.FlyingQualities}</td><td>guidelines, full-size and model</td>
 * <td>spiral doubles in 1 s: add dihedral</td></tr>
 * <tr><td>{@link io.github.wingwright.stability.dynamics.TimeResponse}</td><td>the motion itself</td><td>u, w, q, θ at 100
 * instants</td></tr>
 * </table>
 *
 * <h2>Notation</h2>
 * That of B. Etkin and L. D. Reid, Dynamics of Flight, 3rd ed.: stability axes, x forward along the flight path, y to
 * starboard, z <em>down</em>. This is the geometry's system (x aft, y to starboard, z up) turned about y, so pitching
 * moments keep their sign, and rolling and yawing moments are positive starboard wing down and nose to starboard. Rates
 * are nondimensional with c̄/(2u₀) and b/(2u₀). R. C. Nelson's text divides its dimensional derivatives by mass or
 * inertia, and leaves out Z_q and Z_ẇ; set C_zq and C_zα̇ to zero to follow it.
 *
 * <h2>Very light models</h2>
 * A model of 20 g moves 1 g of air with it when it heaves. {@code forces.with(apparentMass)} and {@code
 * apparentMass.addedTo(body)} put it into the equations. Its motions are quick, its flight is short, and nobody steers:
 * {@code FlyingQualities.freeFlightModel()} asks less of it than the full-size ranges do.
 *
 * <h2>Policies</h2>
 * Plain doubles in one consistent set of units inside (a matrix may be in feet); quantities at the doors. Roots are
 * verified (trace, residual); a failure is a {@code ConvergenceException}. Everything public is immutable.
 *
 * <h2>Sources</h2>
 * Etkin and Reid (definitions and the large jet transport); R. C. Nelson, Flight Stability and Automatic Control, from
 * memory (the light aeroplane); MIL-F-8785C, from memory (full-size limits); common practice for models, no source.
 */
@NullMarked
package io.github.wingwright.stability.dynamics;

import org.jspecify.annotations.NullMarked;
