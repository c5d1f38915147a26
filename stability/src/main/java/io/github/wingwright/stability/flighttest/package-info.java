// SPDX-License-Identifier: Apache-2.0

/**
 * Flight tests back into the design: from what was weighed, paced out and timed to lift-to-drag, drag, trim and the next
 * print.
 *
 * <table>
 *   <caption>The types, with an example each</caption>
 *   <tr><th>type</th><th>is</th><th>example</th></tr>
 *   <tr><td>{@link io.github.wingwright.stability.flighttest.Measured}</td><td>a value with its standard uncertainty</td>
 *       <td>11.9 m ± 0.2 m</td></tr>
 *   <tr><td>{@link io.github.wingwright.stability.flighttest.FlightTest}</td><td>one flight: distance, height, time</td>
 *       <td>11.9 m from 1.5 m in 1.9 s, straight</td></tr>
 *   <tr><td>{@link io.github.wingwright.stability.flighttest.WeighedPart}</td><td>a part on the scales</td>
 *       <td>wing 16.9 g ± 0.1 g</td></tr>
 *   <tr><td>{@link io.github.wingwright.stability.flighttest.GlideResult}</td><td>what one flight says</td>
 *       <td>lift to drag 7.9 ± 0.4 at C_L 0.55</td></tr>
 *   <tr><td>{@link io.github.wingwright.stability.flighttest.FlightEvaluation}</td><td>all of it against the design</td>
 *       <td>drag 0.011 ± 0.004 more than reckoned</td></tr>
 *   <tr><td>{@link io.github.wingwright.stability.flighttest.CorrectedPolar}</td><td>a section polar, corrected</td>
 *       <td>NACA 4406 with 0.011 more drag</td></tr>
 *   <tr><td>{@link io.github.wingwright.stability.flighttest.TrimAdvice}</td><td>what to change, and by how much</td>
 *       <td>2.1 g on the nose, or 0.8° on the tail</td></tr>
 * </table>
 *
 * <h2>Uncertainties</h2>
 * An uncertainty is a standard one: two measurements out of three lie within it. It goes through each formula to first order,
 * from independent inputs (JCGM 100:2008, eq. 10, from memory), with the slopes taken numerically:
 * <pre>{@code u² = Σ (∂f/∂x_i·u_i)²}</pre>
 * Flights are averaged with the weights 1/u²; the mean is as uncertain as these weights say, or as the flights scatter,
 * whichever is more. The weights are those of the clock, the tape and the scales at the mean speeds of all flights: if each flight
 * were weighed by what was read of it, those that err to the steep side would count more. Lift to drag is averaged as its
 * reciprocal, and what all flights share, the mass, stays as uncertain as it is. So a stated uncertainty holds the truth in 65 to
 * 78 % of repetitions and twice of it in 92 to 98 % (a test draws 2,000), of flights that glide steadily from hand to floor. Flown as
 * points and launched up to 3 % off their speed and 1° off their path they are held as often; launched 5 % and 2° off, ten of them
 * timed by film tell 6 % too much of the drag beyond what was reckoned, and an uncertainty holds it in 54 %.
 */
@NullMarked
package io.github.wingwright.stability.flighttest;

import org.jspecify.annotations.NullMarked;
