// SPDX-License-Identifier: Apache-2.0

/**
 * How it flies: the steady glide, and the flight from the hand to the floor.
 *
 * <h2>The glide</h2>
 *
 * <p>A glider has no engine but its height. In a steady glide the weight is carried by lift and drag together,
 *
 * <pre>{@code L = W·cos γ        D = W·sin γ        tan γ = C_D/C_L}</pre>
 *
 * <p>so the angle of descent γ depends on nothing but the ratio of lift to drag: ballast makes a glider faster, not
 * flatter. Two glides matter. The flattest, at the greatest C_L/C_D, goes farthest; the slowest descent, at the least
 * C_D/(C_L² + C_D²)^¾, lasts longest. On a parabolic polar C_D0 + K·C_L² both have a closed form: √(C_D0/K), and √3 times
 * that if cos γ is taken as 1.
 *
 * <p>On a model of thirty grams the closed forms mislead twice. They know no stall: with C_D0 = 0.05, A = 7.5 and e = 0.75
 * they ask for C_L 0.94 and 1.63 where the wing stalls at 0.8. And they take C_D0 as fixed, while in a glide the slow flight
 * is the one with the high lift: Re·√C_L stays the same, and friction goes with it. So here the polar ends at the usable
 * lift, each point's drag is that of its own speed, and the optimum is searched for; the closed forms remain for the
 * workings.
 *
 * <p>Whether it flies at all is asked first: the hand must give it more than its stall speed.
 *
 * <h2>The flight</h2>
 *
 * <p>A flight down a hall lasts about one phugoid: what happens between the hand and the steady glide is most of it. Thrown
 * faster than its glide a glider climbs, slows down, comes down faster, and so on; a flight is carried from step to step until
 * it meets the floor, the ceiling or a wall. {@link io.github.wingwright.core.performance.LaunchTrajectory} does so for a
 * point that holds its lift coefficient, which is Lanchester's phugoid with the drag of the design. How far it goes over the
 * angle of the throw has several tops and has jumps, so a best angle is searched for over all of them, and the angle to tell
 * a thrower is the one that forgives two degrees.
 *
 * <p>A step takes a fortieth of the time in which the path would curve by one radian at the airspeed of the moment, or at that
 * of the glide if it is faster; the method is of fourth order. With half the step the distances of the tests change by less
 * than 10 µm.
 *
 * <h2>Map</h2>
 *
 * <table>
 *   <caption>The types, with an example each</caption>
 *   <tr><th>type</th><th>is</th><th>example</th></tr>
 *   <tr><td>{@link io.github.wingwright.core.performance.SteadyGlide}</td><td>the formulas of one glide, exact</td>
 *       <td>{@code angle(0.1, 0.7)} is 8.13°</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.performance.ParabolicGlide}</td><td>the optima in closed form</td>
 *       <td>C_D0 = 0.035, K = 0.071: C_L 0.70, L/D 10.0</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.performance.GlidePerformance}</td><td>one aircraft, one mass, one air</td>
 *       <td>28 g, 0.4 m: L/D 8.4 to 14, stall 5.2 m/s</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.performance.GlidePoint}</td><td>one glide of it</td>
 *       <td>L/D 9.4 at 6.1 m/s, sink 0.65 m/s</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.performance.GlideTurn}</td><td>a steady turn of it</td>
 *       <td>30° at 5.2 m/s: radius 5.5 m</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.performance.GlideKernel}</td><td>the same on doubles, for loops</td>
 *       <td>some 10 µs for an optimum</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.performance.GlideWorkings}</td><td>how its numbers come about</td>
 *       <td>stall speed, best glide, least sink as steps</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.performance.ThrowCheck}</td><td>does it fly for this thrower</td>
 *       <td>throw 5 m/s, stall 5.2 m/s: does not fly</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.performance.LaunchTrajectory}</td><td>the flight of a point</td>
 *       <td>6.5 m/s, level, from 1.5 m: 13 m in 2.1 s</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.performance.Throw}, {@link io.github.wingwright.core.performance.Hall}</td>
 *       <td>how and where it is thrown</td><td>27 m long, 7 m high</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.performance.Flight}, {@link
 *       io.github.wingwright.core.performance.TrackPoint}, {@link io.github.wingwright.core.performance.Swings}</td>
 *       <td>one flight, its instants, its phugoid</td><td>hits the ceiling after 0.9 s</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.performance.FlightManner}</td><td>what kind of flight it was</td>
 *       <td>glides, stalls, dives, turns over, meets ceiling or wall</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.performance.ThrowAngles}, {@link
 *       io.github.wingwright.core.performance.ThrowOptimum}</td><td>the best angles</td>
 *       <td>−24.7°: 15.9 m, but 4.6 m two degrees off</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.performance.BestThrow}</td><td>the best over trim and angle</td>
 *       <td>a figure of merit: 16.7 m at 6.5 m/s</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.performance.ElasticLaunch}</td><td>a bungee or catapult as source of speed</td>
 *       <td>8 N at 0.5 m, 25 g: 10.3 m/s</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.performance.RangeMap}</td><td>many flights over speed and trim</td>
 *       <td>10,000 flights</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.performance.FlightModel}, {@link
 *       io.github.wingwright.core.performance.FlightEquations}</td><td>what can be thrown</td>
 *       <td>a model with pitch as well</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.performance.GlideGoal}</td><td>what choices are priced in</td>
 *       <td>{@code DISTANCE}, in metres</td></tr>
 * </table>
 *
 * <h2>Policies</h2>
 *
 * <ul>
 *   <li>The cosine of the glide angle is kept: at L/D 7.7 leaving it out overstates the sink rate by 1.7 %.
 *   <li>Still air, standard gravity. Distance and duration of a glide are those of the steady glide from the launch height;
 *       what the throw adds is in the flight. A flight may have a steady wind.
 *   <li>A flight ends where it first meets floor, ceiling or wall, and is not followed further.
 *   <li>The likely numbers come with a band where the section's drag is a band.
 * </ul>
 *
 * <h2>Notation</h2>
 *
 * <p>γ angle of descent, positive down; V airspeed along the path; w sink rate, positive down; P = m·g/S weight over wing area
 * [Pa]; E = L/D; φ bank; V_s stall speed; the rest as in {@link io.github.wingwright.core.aerodynamics}.
 *
 * <h2>Sources</h2>
 *
 * <p>Raymer, Aircraft Design, 6th ed., 2018, ch. 17 (as restated in study notes). The exact least sink in closed form is this
 * library's own derivation, checked against a search. The phugoid without drag: F. W. Lanchester, Aerodonetics, 1908, as
 * restated in L. A. Barba and G. F. Forsyth, Practical Numerical Methods with Python, module 1. The margin of a hand launch over the stall, 1.2, is common practice
 * without a source.
 */
@NullMarked
package io.github.wingwright.core.performance;

import org.jspecify.annotations.NullMarked;
