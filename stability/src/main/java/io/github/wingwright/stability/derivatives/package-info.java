// SPDX-License-Identifier: Apache-2.0

/**
 * Estimates of the derivatives that the equations of motion need, part by part.
 *
 * <h2>The idea</h2>
 * A derivative says how much a force or moment changes when the aircraft does a little of one thing: slip, roll, pitch,
 * yaw. In slow flight almost all of them come from three places, and each of them is a force times an arm. The fin feels
 * an angle and pushes sideways; its arm back makes yaw, its height makes roll, and both arms come in a second time when
 * the angle itself is made by a rate. The wing is thought of as strips, each with the speed and angle it meets. The body
 * pushes its nose away from the wind. So every formula here can be guessed before it is looked up, sign included, and the
 * tests ask exactly that.
 *
 * <h2>What is here</h2>
 * <table>
 * <caption>Types with an example value each</caption>
 * <tr><th>type</th><th>what</th><th>example</th></tr>
 * <tr><td>{@link io.github.wingwright.stability.derivatives.WingLateral}</td><td>dihedral, sweep, height on the body,
 * damping</td><td>5° of dihedral on a rectangle: C_lβ −0.098</td></tr>
 * <tr><td>{@link io.github.wingwright.stability.derivatives.FinLateral}</td><td>one force, nine derivatives</td>
 * <td>C_Yβ −0.3 on an arm of half a span: C_nβ +0.15, C_nr −0.15</td></tr>
 * <tr><td>{@link io.github.wingwright.stability.derivatives.BodyLateral}</td><td>the couple of a slender body</td>
 * <td>C_nβ −0.04</td></tr>
 * <tr><td>{@link io.github.wingwright.stability.derivatives.TailPitchRate}</td><td>pitch damping, downwash lag</td>
 * <td>C_mq −8.6, C_mα̇ −3.5</td></tr>
 * <tr><td>{@link io.github.wingwright.stability.derivatives.WingPitchRate}</td><td>pitch damping of the wing itself</td>
 * <td>C_mq −π/4 for a rectangle</td></tr>
 * <tr><td>{@link io.github.wingwright.stability.derivatives.LateralEstimate}</td><td>all parts added up, each named</td>
 * <td>nine derivatives</td></tr>
 * <tr><td>{@link io.github.wingwright.stability.derivatives.LateralGuidelines}</td><td>ranges, and what to change</td>
 * <td>C_nβ 0.01: enlarge the fin</td></tr>
 * <tr><td>{@link io.github.wingwright.stability.derivatives.RudderDemand}</td><td>crosswind, one engine out</td>
 * <td>15° of rudder</td></tr>
 * <tr><td>{@link io.github.wingwright.stability.derivatives.LatticeDerivatives}</td><td>the same from the vortex
 * lattice</td><td>nine derivatives</td></tr>
 * </table>
 *
 * {@link io.github.wingwright.stability.AirframeDerivatives} fills all of them from an airframe, whatever its layout.
 *
 * <h2>The rate of angle of attack</h2>
 * A lattice in steady flow knows what a pitch rate does, since the tail is swung through the air, but not what a changing
 * angle of attack does: the wing's downwash needs the time l/V to reach the tail, so the tail still flies in that of a
 * moment ago. The estimate is C_mα̇ = C_mq,h·ε_α, with the C_mq,h of the tail ({@link
 * io.github.wingwright.stability.derivatives.TailPitchRate#DOWNWASH_LAG}); it enters the derivatives of the lattice as well.
 * A tail ahead of the wing, and a wing alone, have none of it; apparent mass, which works with the same rate, is in
 * {@link io.github.wingwright.stability.dynamics.WingApparentMass}.
 *
 * <h2>The spiral</h2>
 * The spiral parameter of dihedral against fin is {@link io.github.wingwright.stability.LateralStability}.
 *
 * <h2>Notation</h2>
 * C_l rolling moment, starboard wing down positive; C_m pitching moment, nose up positive; C_n yawing moment, nose to
 * starboard positive; C_Y side force, to starboard positive; β sideslip, wind from starboard positive; p̂ = p·b/(2V),
 * q̂ = q·c̄/(2V), r̂ = r·b/(2V). Arms and heights from the centre of gravity have the index g (l_g, z_g, V_g), and
 * l_c = l_g/c̄. S wing area, b span, c̄ mean aerodynamic chord, A aspect ratio, λ taper ratio, Γ
 * dihedral (of a wing with bends, {@code Planform.equivalentDihedral()}), Λ sweep of the quarter-chord line. Angles in radians, slopes per radian.
 *
 * <h2>Policies</h2>
 * Kernels take plain doubles and trust them. Every {@code Formula} states the range it was made for; {@code
 * LateralEstimate} reports a finding when it is used outside, and never withholds the number. Estimates of this kind are
 * good to a third; where the lattice and the handbook differ by more, the lattice is the better witness for wing and
 * tails, and neither knows the body well.
 *
 * <h2>Sources</h2>
 * R. C. Nelson, Flight Stability and Automatic Control (from memory); USAF stability and control handbook (from memory);
 * M. M. Munk, NACA Report 184 (from memory); L. Leifsson, AAE 451 course book, Purdue University; strip integrals by
 * definition.
 */
@NullMarked
package io.github.wingwright.stability.derivatives;

import org.jspecify.annotations.NullMarked;
