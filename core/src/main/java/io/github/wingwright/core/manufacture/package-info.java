// SPDX-License-Identifier: Apache-2.0

/**
 * Making a part: whether it fits the machine, how it lies there, into what segments it is split and how these are joined.
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
 * </table>
 *
 * <h2>Policies</h2>
 * <ul>
 *   <li>What cannot be made is a finding that names the limit and by how much it is passed; it is no exception.</li>
 *   <li>A part is as long as it is printed: the tongue that sticks out of a segment counts.</li>
 *   <li>Joints carry twice what bends them, or a finding says what they carry.</li>
 * </ul>
 */
@NullMarked
package io.github.wingwright.core.manufacture;

import org.jspecify.annotations.NullMarked;
