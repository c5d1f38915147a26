// SPDX-License-Identifier: Apache-2.0

/**
 * Wing sections: their shape, and what their mean line says about lift.
 *
 * <p>A section is a mean line, the curve half-way between the surfaces, clothed with a thickness form. The mean line makes
 * lift and moment; the thickness makes room for structure and a nose that forgives. This package builds both, lays one
 * off on the other, and measures the result.
 *
 * <table>
 * <caption>The types</caption>
 * <tr><th>type</th><th>is</th><th>for example</th></tr>
 * <tr><td>{@link io.github.wingwright.airfoils.Naca4}</td><td>a 4-digit section</td>
 *     <td>{@code Naca4.parse("2412")}</td></tr>
 * <tr><td>{@link io.github.wingwright.airfoils.ComposedSection}</td><td>any mean line with any thickness form</td>
 *     <td>{@code ComposedSection.plate(0.03, 0.05)}</td></tr>
 * <tr><td>{@link io.github.wingwright.airfoils.MeanLine}</td><td>4-digit, circular arc, polynomial, yours</td>
 *     <td>{@code new FourDigitMeanLine(0.02, 0.4)}</td></tr>
 * <tr><td>{@link io.github.wingwright.airfoils.ThicknessForm}</td><td>4-digit, modified 4-digit, plate, yours</td>
 *     <td>{@code FourDigitThickness.of(0.12, TrailingEdge.OPEN)}</td></tr>
 * <tr><td>{@link io.github.wingwright.airfoils.Contour}</td><td>the outline as points</td>
 *     <td>{@code section.contour(201)}</td></tr>
 * <tr><td>{@link io.github.wingwright.airfoils.SectionProperties}</td><td>area, centroid, second moments, lengths</td>
 *     <td>{@code section.properties().area()}</td></tr>
 * <tr><td>{@link io.github.wingwright.airfoils.ThinAirfoil}</td><td>lift and moment of the mean line</td>
 *     <td>{@code ThinAirfoil.of(section).zeroLiftAngle()}</td></tr>
 * </table>
 *
 * <h2>What is around it</h2>
 * {@code airfoils.potential} computes the flow of an ideal fluid about a section, {@code airfoils.viscous} its boundary
 * layers and drag, {@code airfoils.coordinates} reads and writes listings of points, and {@code airfoils.manufacture} hollows
 * a section and answers a maker's questions. How far the numbers can be trusted is measured in the module's
 * {@code VALIDATION.md}.
 *
 * <h2>Notation</h2>
 * The chord is 1 from the nose (0, 0) to the trailing edge (1, 0); x aft, y up; angles in radians from the chord line;
 * moments nose-up positive. A <em>parameter</em> is a station of the mean line at which thickness is laid off; a
 * <em>station</em> is an abscissa of the surface itself. With the published, perpendicular construction they differ, and
 * tables list stations.
 *
 * <h2>What surprises</h2>
 * <ul>
 * <li>The published trailing edge is open by 0.021 of the thickness.
 * <li>The greatest thickness is not quite the nominal one nor quite at 30 %: 1.000288·t at 0.299828.
 * <li>A cambered section reaches a little ahead of x = 0, and its surface has a tiny true corner over the station of
 *     greatest camber, because the curvature of the mean line jumps there.
 * <li>Published ordinates of cambered sections were computed by hand and are off by up to 0.0002 chord.
 * </ul>
 *
 * <h2>Policies</h2>
 * Everything is immutable and safe to share. NaN and infinity are refused. Parameters outside the family are refused
 * with an explanation. Kernels that a study calls in a loop write into the caller's arrays.
 *
 * <p>Sources: Jacobs, Ward and Pinkerton, NACA Report 460, 1933; Stack and von Doenhoff, NACA Report 492, 1934; Abbott,
 * von Doenhoff and Stivers, NACA Report 824, 1945; Glauert, The Elements of Aerofoil and Airscrew Theory, 1926.
 */
@NullMarked
package io.github.wingwright.airfoils;

import org.jspecify.annotations.NullMarked;
