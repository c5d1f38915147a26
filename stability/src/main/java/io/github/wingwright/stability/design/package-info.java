// SPDX-License-Identifier: Apache-2.0
/**
 * From a brief to a complete design: the one place where masses, loading, ballast, tails and balance are brought into
 * agreement.
 *
 * <p>Wing and fuselage weigh something, the weight needs a wing, the wing a tail, the tail a length, and all of them a place
 * for the centre of gravity that only ballast may give; ballast weighs something again. The loop goes round until nothing
 * moves any more, rounds to what can be made, and reckons forward once from the rounded values: what is on the sheet is what
 * is built.
 *
 * <pre>{@code
 * Design design = SizingLoop.of(brief).solve();
 * design.aircraft();                       // shape and masses
 * design.findings();                       // what a builder should know, heaviest first
 * design.modes();                          // the natural motions, as a table in the shell
 * }</pre>
 *
 * <h2>Map</h2>
 *
 * <table>
 *   <caption>The types, with an example each</caption>
 *   <tr><th>type</th><th>is</th><th>example</th></tr>
 *   <tr><td>{@link io.github.wingwright.stability.design.DesignBrief}</td><td>what is asked</td>
 *       <td>480 mm of span, "longest glide wins"</td></tr>
 *   <tr><td>{@link io.github.wingwright.stability.design.Launch}</td><td>how it is thrown</td>
 *       <td>at 7 m/s from 1.5 m</td></tr>
 *   <tr><td>{@link io.github.wingwright.stability.design.TailBrief}</td><td>what is asked of a tail</td>
 *       <td>V_h 0.52</td></tr>
 *   <tr><td>{@link io.github.wingwright.stability.design.Making}</td><td>what dimensions and masses can be made to</td>
 *       <td>lengths to 0.5 mm</td></tr>
 *   <tr><td>{@link io.github.wingwright.stability.design.SizingLoop}</td><td>repeats wing, fuselage, tails, masses and balance until they agree, or says what would not settle</td>
 *       <td>agreed to 1 part in 10¹⁰</td></tr>
 *   <tr><td>{@link io.github.wingwright.stability.design.Design}</td><td>what they agree on, with findings and a step for every number</td>
 *       <td>50.7 g, margin 15 %, L/D 8.2 to 13</td></tr>
 *   <tr><td>{@link io.github.wingwright.stability.design.FlightModes}</td><td>the natural motions in a trimmed glide, each beside its short formula</td>
 *       <td>phugoid of 3.5 s</td></tr>
 *   <tr><td>{@link io.github.wingwright.stability.design.FiniteWing}</td><td>slope, loading and induced drag of the wing by three methods</td>
 *       <td>lifting line, lattice, handbook</td></tr>
 *   <tr><td>{@link io.github.wingwright.stability.design.GliderFamily}</td><td>the same chain on plain numbers, for studies of thousands of gliders</td>
 *       <td>some 30 µs each</td></tr>
 *   <tr><td>{@link io.github.wingwright.stability.design.QuickEvaluation}</td><td>what the family gives for one glider</td>
 *       <td>balance, mass, glide in SI</td></tr>
 *   <tr><td>{@link io.github.wingwright.stability.design.QuickDesign}</td><td>the kernels that loop and family both repeat</td>
 *       <td>equal to the bit</td></tr>
 * </table>
 *
 * <h2>Policies</h2>
 *
 * <p>A design and everything that it gives is immutable. What costs more than the loop is reckoned when it is first asked for,
 * once, and kept: motions, finite wing, trimmed polar, lattice. Loop and family run through the same kernels, so a study ranks
 * designs as the loop would size them. A brief that cannot be met is refused with the numbers that clash.
 */
@NullMarked
package io.github.wingwright.stability.design;

import org.jspecify.annotations.NullMarked;
