// SPDX-License-Identifier: Apache-2.0

/**
 * Shape, without any opinion: planforms, sections, bodies, and the airframe they make.
 *
 * <table>
 *   <caption>The types, with an example each</caption>
 *   <tr><th>type</th><th>is</th><th>example</th></tr>
 *   <tr><td>{@link io.github.wingwright.core.geometry.Planform}</td><td>the outline of a wing, tailplane or fin</td>
 *       <td>400 mm span, root 60 mm, tip 30 mm: 180 cm², A 8.89, c̄ 46.67 mm</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.geometry.Panel}</td><td>one straight-tapered part of it</td>
 *       <td>200 mm wide, tip 30 mm, 8° dihedral</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.geometry.TaperedPlanform}</td><td>the formulas of a single panel</td>
 *       <td>{@code c̄ = 2/3·c_r·(1 + λ + λ²)/(1 + λ)}</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.geometry.AirfoilSection}</td><td>a wing section, made in another module</td>
 *       <td>12 % thick at 30 % of the chord</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.geometry.Wing}, {@link io.github.wingwright.core.geometry.Tail}</td>
 *       <td>a planform with a section, set on the airframe; both are a
 *       {@link io.github.wingwright.core.geometry.LiftingSurface}</td><td>root leading edge 70 mm behind the nose, 2°</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.geometry.BodyShape}</td><td>a family of bodies, yet without a size</td>
 *       <td>{@code BodyShape.capsule()}</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.geometry.BodiesOfRevolution}</td><td>the formulas of such families</td>
 *       <td>{@code S_wet = π·d·L} of a capsule</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.geometry.EndProfile}</td><td>the outline of a nose or a tail</td>
 *       <td>{@code EndProfile.tangentOgive()}, fullness 0.533</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.geometry.EndFormulas}</td><td>the closed forms of noses and tails</td>
 *       <td>{@code c = ½ + 3C/16} of the Haack series</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.geometry.AssembledBody}</td><td>nose, straight pieces and tail in a row</td>
 *       <td>{@code BodyShape.of(tangentOgive(), 1.5, boatTail(0.4), 1.2)}</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.geometry.CrossSection}</td><td>the shape of a section across a body</td>
 *       <td>{@code CrossSection.roundedRectangle(0.4)}</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.geometry.LoftedBody}</td><td>a body through sections at
 *       {@linkplain io.github.wingwright.core.geometry.BodyStation stations}</td><td>a box that shrinks to a round tail</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.geometry.Fuselage}</td><td>a body shape with its length and diameter</td>
 *       <td>capsule 300 mm × 25 mm: 143.2 cm³, 235.6 cm²</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.geometry.Inscribed}</td><td>the longest bar in a box or on a bed</td>
 *       <td>250 mm × 210 mm take 297.1 mm of 30 mm width</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.geometry.Placement}</td><td>where a part sits</td>
 *       <td>x 70 mm, y 0, z 10 mm</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.geometry.Airframe}</td><td>fuselage, wing and tails together</td>
 *       <td>400 mm span, 300 mm long</td></tr>
 * </table>
 *
 * <h2>Axes</h2>
 * The origin is the nose tip. x runs aft along the fuselage reference line, y to starboard, z up. Incidence is nose-up
 * positive, sweep positive aft, dihedral positive up, washout positive where the tip has less incidence. A planform has
 * axes of its own, parallel to these, from the leading edge of its root; a fin stands on end, so its y is the airframe's z.
 *
 * <h2>The integrals of a planform</h2>
 * <pre>{@code
 * S = ∫ c dy     c̄ = (1/S)·∫ c² dy     ȳ = (1/S)·∫ c·y dy     x̄ = (1/S)·∫ c·x_LE dy     A = b²/S
 * }</pre>
 * They are taken on the projection along z: dihedral lengthens the panels and leaves span and area as they are. The mean
 * aerodynamic chord c̄ is the chord of the straight wing that has the area and the pitching moment of this one if every
 * strip carries the same coefficients; x̄, ȳ and z̄ are the centroid of the leading edge in the same sense. On a straight
 * panel chord and edge are linear in y, so every integral has a closed form, and that is what is used. The aspect ratio of
 * a fin is its height squared over its area.
 *
 * <h2>The integrals of a body</h2>
 * <pre>{@code
 * V = ∫ π·r² dx        S_wet = ∫ 2π·r·√(1 + r′²) dx        S_side = ∫ 2·r dx
 * }</pre>
 * with the centroid of the volume (where contents of even density balance) and of the surface (where a thin shell does).
 * The wetted area counts no flat base; that is asked for apart. A body of ends of fixed proportion takes up length in its
 * straight piece; a family that has none, such as the spheroid, is stretched as a whole.
 *
 * <p>A body may be bent up and its sections need not be round. Then the diameter is that of the circle equal to the greatest
 * section, and sections stay upright: moved along the camber line they leave volume, side view and the place of the volume
 * as they are (Cavalieri's principle), and only the skin grows. What has a closed form uses it; the rest is quadrature:
 * <table>
 *   <caption>How good the numbers are ({@code relativeError()} says it for each shape)</caption>
 *   <tr><th>shape</th><th>volume</th><th>wetted area</th></tr>
 *   <tr><td>capsule, spheroid, half ellipsoid with cylinder and cone</td><td>closed</td><td>closed</td></tr>
 *   <tr><td>Sears-Haack body</td><td>closed</td><td>1 part in 10¹¹</td></tr>
 *   <tr><td>assembled from profiles</td><td>closed; with an ogive 1 part in 10¹¹</td><td>1 part in 10¹¹</td></tr>
 *   <tr><td>bent up</td><td>as before it is bent</td><td>1 part in 10⁶, from meshes</td></tr>
 *   <tr><td>lofted</td><td>1 part in 10⁹; between sections of two kinds 1 part in 10⁵</td><td>estimated, from meshes</td></tr>
 * </table>
 *
 * <h2>Policies</h2>
 * <ul>
 *   <li>Everything is immutable and serializable. Equality is that of all the numbers, bit by bit.</li>
 *   <li>A shape that cannot be is refused where it is made: "body length must be at least 25 mm for a capsule of diameter
 *       25 mm, was 20 mm". What is merely unwise is not refused here; this package has no opinion.</li>
 *   <li>Methods on {@code double}s are in SI, trust their arguments and allocate nothing.</li>
 * </ul>
 *
 * <p>Sources: the formulas follow from the integrals above alone. Check values: 30-digit evaluation apart from this library,
 * a teaching example (L. Leifsson, CODE Lab, Purdue AAE 451 aircraft design course book, tail sizing), and fine strips and
 * polygons in the tests.
 */
@NullMarked
package io.github.wingwright.core.geometry;

import org.jspecify.annotations.NullMarked;
