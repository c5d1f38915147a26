// SPDX-License-Identifier: Apache-2.0

/**
 * What an aircraft weighs and where: materials, printed parts, the mass statement, ballast.
 *
 * <table>
 *   <caption>The types, with an example each</caption>
 *   <tr><th>type</th><th>is</th><th>example</th></tr>
 *   <tr><td>{@link io.github.wingwright.core.mass.Material}</td><td>density, stiffness and strength, as ranges</td>
 *       <td>PLA 1240 kg/m³ (1220 to 1260), 2.8 GPa</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.mass.Materials}</td><td>a small catalogue of them</td>
 *       <td>{@code Materials.FOAMING_PLA}</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.mass.MaterialCatalogue}</td><td>that catalogue with one's own materials</td>
 *       <td>{@code MaterialCatalogue.standard().with(mine)}</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.mass.Covering}</td><td>mass over area of what a frame is covered with</td>
 *       <td>light covering film 20 to 35 g/m²</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.mass.Stock}</td><td>sheets, rods, tubes and foam cores</td>
 *       <td>carbon tube of 4 mm over 3 mm, 1 m long: 8.52 g</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.mass.SkinVolume}</td><td>the true volume of a wall, full where sides meet</td>
 *       <td>capsule 256 mm × 22 mm, wall 0.84 mm: 4 % less than area times wall</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.mass.SkinSection}</td><td>a section in strips, for its wall in a loop</td>
 *       <td>square 1 by 1, wall 0.1: 0.2 without its ends</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.mass.PrintedShell}</td><td>how a part is printed, and what it then weighs</td>
 *       <td>560 cm², 420 cm³, one wall of 0.42 mm, 3 % infill: 43.91 g</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.mass.MassItem}</td><td>a mass at a place, with its range and its own inertia</td>
 *       <td>battery 8.5 g (8 to 9 g) at x 40 mm</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.mass.MassStatement}</td><td>all items, their total and its centre</td>
 *       <td>39 g (36 to 43 g), centre of gravity at 125 mm (122.4 to 127 mm)</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.mass.MassTable}</td><td>the statement as text in units of one's choice</td>
 *       <td>a line for each item</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.mass.Inertia}</td><td>moments and products of inertia about a point</td>
 *       <td>{@code Inertia.ofBox(mass, length, width, height)}</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.mass.Ballast}</td><td>what brings the centre of gravity to a wanted place</td>
 *       <td>60 g at 145 mm, wanted at 120 mm, ballast at 10 mm: 13.64 g</td></tr>
 * </table>
 *
 * <h2>Mass from geometry</h2>
 * On a model of a few grams, fits to the masses of other aircraft mislead by factors. A printed part weighs what its walls
 * and its infill weigh, and never more than if it were solid:
 * <pre>{@code V_s = S·(1 − f)·n_w·w + S·f·n_l·h        m = ρ·(V_s + φ·(V − V_s)),   V_s at most V}</pre>
 *
 * <h2>Adding up</h2>
 * <pre>{@code m = Σ m_i     x_cg = Σ m_i·x_i/m     I = Σ (I_i + m_i·(a_i² + b_i²))}</pre>
 * with a_i and b_i the distances of an item from the centre of gravity across the axis (the parallel-axis theorem). An item
 * without inertia of its own counts as a point: right for a battery, too little for a wing in roll.
 *
 * <h2>Ranges</h2>
 * An item carries the least, the likely and the greatest mass. The statement's numbers are those of the likely masses; the
 * range of the total has all items at one end, and the range of the centre of gravity is the exact extreme over every choice
 * of masses within their ranges; the range of a moment of inertia has all items at one end, for each adds to it. All are outer
 * limits, not a probable error: of items that scatter apart the total strays as the square root of the sum of squares.
 *
 * <h2>Policies</h2>
 * <ul>
 *   <li>Axes are those of the airframe: x aft from the nose tip, y to starboard, z up. Items with names that repeat are
 *       refused, because a replacement would be a guess.</li>
 *   <li>The workings of total, centre and inertia give the numbers of the statement bit for bit, and reach down to the
 *       workings of an item where these are handed in.</li>
 *   <li>Ballast that cannot do what is asked is a result with an explanation, not an exception.</li>
 * </ul>
 *
 * <p>Sources: balance of moments and parallel-axis theorem by definition; densities as {@code Material.source()} says. Check
 * values: a teaching example (L. Leifsson, CODE Lab, Purdue AAE 451 aircraft design course book, page on the centre of
 * gravity), tables of balsa sheet masses, and evaluations apart from this library.
 */
@NullMarked
package io.github.wingwright.core.mass;

import org.jspecify.annotations.NullMarked;
