// SPDX-License-Identifier: Apache-2.0

/**
 * The flight of a thrown glider with pitch: from the hand, over the top, to the floor.
 *
 * <h2>The idea</h2>
 *
 * <p>A point that holds its lift coefficient flies Lanchester's phugoid. A glider has to turn its nose for that, and its tail
 * has to turn it. Thrown hard it climbs, slows down, and if the nose does not come down soon enough the wing stalls and the
 * glider drops. So the motion in the plane of symmetry is carried from step to step at any speed and angle: forward, heave,
 * pitch. The numbers are those of the design: lift and moment of wing, fuselage and tail, drag at its Reynolds number, pitch
 * damping and downwash lag of the tail, inertia, and the air that the wing carries along.
 *
 * <pre>{@code
 * Flight flight = PitchFlight.of(design).in(hall).thrown(Throw.level(metresPerSecond(6.5), metres(1.5)));
 * }</pre>
 *
 * <h2>What is here</h2>
 *
 * <table>
 * <caption>Types with an example value each</caption>
 * <tr><th>type</th><th>what</th><th>example</th></tr>
 * <tr><td>{@link io.github.wingwright.stability.flight.PitchFlight}</td><td>a design to be thrown</td>
 *     <td>8 m/s, 10° up: stalls after 0.9 s</td></tr>
 * <tr><td>{@link io.github.wingwright.stability.flight.StalledPlate}</td><td>a wing behind its stall</td>
 *     <td>broadside C_D 1.22 for A = 6</td></tr>
 * </table>
 *
 * <p>Flights, throws, halls and best angles are those of {@code core.performance}.
 *
 * <h2>What is modelled, and how well</h2>
 *
 * <ul>
 *   <li>In attached flow lift and moment are straight lines, those of the neutral point and of trim. Linearised about the
 *       glide the equations are those of {@link io.github.wingwright.stability.dynamics}; a test holds the roots to 1e-4.
 *   <li>The drag is the polar's at the speed of the glide and at twice that, and A + B/√V at others: within 4 % of the polar
 *       from 0.8 to 2.3 times the speed of the glide, 7 % too much at two thirds of it. Against flights with the polar itself at
 *       every speed, 160 throws at random went at most 2 % too far or too short, half of the attached ones less than 0.05 %.
 *   <li>The stall is at the usable lift of the section, upside down at the same. Behind it the wing is a plate; how deep and
 *       how far it falls is a rough estimate, that it falls is not. The bend of the curves at the stall is told within the 0.3°
 *       of a cell of the table, which moves the end of a stalled flight by up to 2 %.
 *   <li>The apparent mass of the wing acts across the axis of the glide. It is 5 to 6 % of a model's mass.
 *   <li>Pitch damping is that of the tail and a tenth more for the wing (Nelson, from memory).
 *   <li>The glider leaves the hand without turning, held at the angle of attack of its glide unless told otherwise. Nothing
 *       rolls or yaws: spirals, turns and gusts are outside.
 *   <li>The step of the calculation is 0.35 of the quickest time of the nod at the airspeed of the moment, or at that of the
 *       glide if it is faster. With half the step
 *       distances change by less than a millimetre if nothing stalls.
 * </ul>
 *
 * <h2>Notation</h2>
 *
 * <p>u, w along axes of the body that are the stability axes of the glide, z down; θ the angle of x above the horizon; q pitch
 * rate. Decalage is the incidence of the wing less that of the tail.
 *
 * <h2>Sources</h2>
 *
 * <p>B. Etkin and L. D. Reid, Dynamics of Flight (equations, from memory); Viterna and Corrigan (stalled plate, from memory);
 * R. C. Nelson, Flight Stability and Automatic Control (damping of the wing, from memory); H. Lamb, Hydrodynamics (apparent
 * mass, from memory).
 */
@NullMarked
package io.github.wingwright.stability.flight;

import org.jspecify.annotations.NullMarked;
