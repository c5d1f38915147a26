// SPDX-License-Identifier: Apache-2.0

/**
 * Making a part: its mesh and its templates, whether it fits the machine, how it lies there, into what segments it is split
 * and how these are joined.
 *
 * <table>
 *   <caption>The types, with an example each</caption>
 *   <tr><th>type</th><th>is</th><th>example</th></tr>
 *   <tr><td>{@link io.github.wingwright.core.manufacture.BuildVolume}</td><td>the space of the machine, box or cylinder</td>
 *       <td>250 mm × 210 mm × 220 mm takes 297.1 mm of 30 mm width</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.manufacture.Lay}, {@link io.github.wingwright.core.manufacture.Orientation}</td>
 *       <td>how a part lies in it</td><td>lying across the bed at a slant of 38.9°</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.manufacture.SlenderPart}</td><td>a long part: section and bending along it</td>
 *       <td>half wing 240 mm × 89 mm × 5.3 mm</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.manufacture.Segmentation}</td><td>the part in the fewest pieces</td>
 *       <td>half wing in 2 segments</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.manufacture.Segment}, {@link io.github.wingwright.core.manufacture.Joint}</td>
 *       <td>one piece, one joint</td><td>tube of 2 mm at 170 mm, 15 mm deep each side</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.manufacture.JointStrength}</td><td>what shells, tubes and dowels carry</td>
 *       <td>tube of 4 mm over 3 mm: 3.87 N·m</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.manufacture.WingSolid}, {@link io.github.wingwright.core.manufacture.BodySolid},
 *       {@link io.github.wingwright.core.manufacture.PlateSolid}</td><td>a part as it is made, with what is cut into it</td>
 *       <td>starboard half with a {@link io.github.wingwright.core.manufacture.Bore} of 2 mm; a body with its
 *       {@link io.github.wingwright.core.manufacture.WingSeat}</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.manufacture.ShimSolid}, {@link io.github.wingwright.core.manufacture.TubeSolid}</td>
 *       <td>small parts</td><td>shim of 1°, 90 mm long</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.manufacture.TriangleMesh}, {@link io.github.wingwright.core.manufacture.MeshCheck}</td>
 *       <td>its surface as triangles, and that it is watertight</td><td>172 triangles, 59.06 cm³</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.manufacture.Part}</td><td>a name, a mesh that passed, a material</td>
 *       <td>half wing of PLA</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.manufacture.ThreeMfFile}, {@link io.github.wingwright.core.manufacture.StlFile}</td>
 *       <td>parts as files</td><td>{@code ThreeMfFile.titled("glider").with(parts)}</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.manufacture.Template}, {@link io.github.wingwright.core.manufacture.Templates}</td>
 *       <td>full-size drawings to cut by</td><td>ribs, 88 × 24 mm</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.manufacture.Solid}</td><td>any shape that can be meshed to a tolerance</td><td>{@code solid.mesh(millimetres(0.05))}</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.manufacture.TailSlots},
 *       {@link io.github.wingwright.core.manufacture.Tongue},
 *       {@link io.github.wingwright.core.manufacture.Spigot}</td>
 *       <td>what is cut into a body for its tails, and what reaches from one piece into the next</td>
 *       <td>slots as wide as the plates and some play</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.manufacture.JointKind},
 *       {@link io.github.wingwright.core.manufacture.Pieces}</td>
 *       <td>how segments are put together, and a part cut so</td><td>tongue, dowels or tube</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.manufacture.SectionStrength}</td><td>stiffness and strength of the skin of a section</td>
 *       <td>M = σ·Z</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.manufacture.PrintGuidelines}</td>
 *       <td>what a printer can make, with findings</td><td>a trailing edge of at least 0.4 mm</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.manufacture.PrintItem},
 *       {@link io.github.wingwright.core.manufacture.PrintList}</td>
 *       <td>everything that is to be printed on one machine</td><td>half wing, twice, standing on end</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.manufacture.PrintBed}</td><td>what is printed at one time, each part in its place</td>
 *       <td>both half wings standing, 1 wall of 0.42 mm</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.manufacture.MeshBox}</td><td>the box around a mesh</td><td>from its least to its greatest corner</td></tr>
 * </table>
 *
 * <h2>From a shape to a mesh</h2>
 * A part is meshed as a stack of slabs along its axis. Within a slab each section has the same loops of points; where it
 * changes at once, a flat face closes the difference. Every vertex is made once and every edge has its two triangles by
 * construction, so no repair and no tolerance is needed for a mesh to be watertight; it is checked all the same. The chordal
 * tolerance is the user's: half of it goes to the points around a section (the fewest whose chords stay as close, by the
 * method of Douglas and Peucker), half to the stations along the part. Vertices lie on the surface, so that a convex part
 * comes out a little small, by less than its surface times the tolerance.
 *
 * <p>Meshes are solid: walls and infill are the business of the program that prepares the print, with the numbers that
 * {@code PrintedShell} reckons with.
 *
 * <h2>Policies</h2>
 * <ul>
 *   <li>What cannot be made is a finding that names the limit and by how much it is passed; it is no exception.</li>
 *   <li>A part is as long as it is printed: the tongue that sticks out of a segment counts.</li>
 *   <li>Joints carry twice what bends them, or a finding says what they carry.</li>
 *   <li>A mesh that would leak, or a hole that leaves its section, is an error that names the place.</li>
 *   <li>Files are written under a temporary name and then moved; the same parts give the same bytes.</li>
 * </ul>
 *
 * <p>Sources: 3MF Consortium, 3MF Core Specification (chapters 1 to 5, appendices B and C); D. H. Douglas and T. K. Peucker, "Algorithms for the reduction of
 * the number of points required to represent a digitized line or its caricature", The Canadian Cartographer 10 (1973); C. L.
 * Lawson, "Software for C¹ surface interpolation", Mathematical Software III (1977), for turning edges (both from memory);
 * ISO 32000-1 for PDF, W3C SVG 1.1.
 */
@NullMarked
package io.github.wingwright.core.manufacture;

import org.jspecify.annotations.NullMarked;
