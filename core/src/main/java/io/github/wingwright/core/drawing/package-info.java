// SPDX-License-Identifier: Apache-2.0
/**
 * Pictures of shapes and decisions, as SVG, without any toolkit.
 *
 * <h2>What is here</h2>
 *
 * <table>
 * <caption>Pictures</caption>
 * <tr><th>type</th><th>shows</th></tr>
 * <tr><td>{@link io.github.wingwright.core.drawing.ThreeView}</td>
 *     <td>an airframe in three views with its main dimensions, such as a 460 mm glider at 1 : 5</td></tr>
 * <tr><td>{@link io.github.wingwright.core.drawing.OverlaidViews}</td>
 *     <td>two airframes on each other, the first in dashes: what 40 mm less span does</td></tr>
 * <tr><td>{@link io.github.wingwright.core.drawing.SectionPicture}</td>
 *     <td>a wing section: 6 % thick, 3.2 mm at a chord of 53.2 mm</td></tr>
 * <tr><td>{@link io.github.wingwright.core.drawing.RangePicture}</td>
 *     <td>who binds a dimension: feasible 24 to 36 mm, chosen 28 mm</td></tr>
 * <tr><td>{@link io.github.wingwright.core.drawing.RegionPicture}</td>
 *     <td>what is left of length and diameter together, who binds each side, who clashes</td></tr>
 * <tr><td>{@link io.github.wingwright.core.drawing.DragCurvePicture}</td>
 *     <td>the drag of a body against its diameter at a fixed volume: flat from 26 to 34 mm</td></tr>
 * <tr><td>{@link io.github.wingwright.core.drawing.ContentsPicture}</td>
 *     <td>a body with its battery and camera, the sight over its nose, the ground as it rotates</td></tr>
 * <tr><td>{@link io.github.wingwright.core.drawing.BodyProfile}</td>
 *     <td>what the picture before draws its contents into: contour, wall of 0.8 mm, upsweep</td></tr>
 * <tr><td>{@link io.github.wingwright.core.drawing.BalancePicture}</td>
 *     <td>centre of gravity at 85 mm, neutral point at 87 mm, what is allowed, and who sets each limit</td></tr>
 * <tr><td>{@link io.github.wingwright.core.drawing.CurvePicture}</td>
 *     <td>curves over two axes with marked points and bands, such as a glide polar</td></tr>
 * <tr><td>{@link io.github.wingwright.core.drawing.StripPicture}</td>
 *     <td>several quantities over one axis, such as speed, angle and load factor after a gust</td></tr>
 * <tr><td>{@link io.github.wingwright.core.drawing.RootPicture}</td>
 *     <td>a map of roots with the motions named: Dutch roll at −0.7 ± 8.5 i</td></tr>
 * <tr><td>{@link io.github.wingwright.core.drawing.FlightPicture}</td>
 *     <td>flights from the side in their hall: 12.6 m in 2.2 s, stalled pieces dotted</td></tr>
 * <tr><td>{@link io.github.wingwright.core.drawing.MapPicture}</td>
 *     <td>a value over two others in tones with a key, such as distance over throw speed and decalage</td></tr>
 * <tr><td>{@link io.github.wingwright.core.drawing.Svg}, {@link io.github.wingwright.core.drawing.Pen},
 *     {@link io.github.wingwright.core.drawing.Lettering}</td>
 *     <td>what all of them are drawn with, for pictures of your own</td></tr>
 * </table>
 *
 * <h2>How a drawing is laid out</h2>
 *
 * <p>Coordinates are millimetres on paper, x to the right and y down. A view is first sketched in coordinates of its own,
 * with the nose tip or the reference line at zero, then measured, then put onto the sheet: views that share a coordinate
 * are aligned by it, and no room is guessed. The three views stand in third-angle projection: plan above the side view,
 * front view at its left. Scales are the recommended ones (1, 2 and 5 times a power of ten). Text is measured with a table
 * of advance widths, so that labels can keep clear of each other; a label that finds no room near its point moves away on a
 * leader.
 *
 * <p>Every chart stands on one kind of sheet, with its title in the first line, and between one kind of axes: as many round
 * figures as keep apart, names at the ends. Curves, marks and labels are sketched between them, and find room there.
 *
 * <p>One small palette serves every picture: ink for what is, the accent for what the picture is about, a warm tone for
 * what needs attention.
 *
 * <h2>What stays the same</h2>
 *
 * <p>The same arguments give the same bytes, whatever the locale. Text stays text: it can be searched, selected and read
 * aloud. Coordinates are rounded to a hundredth of a millimetre. Null is refused; so is a coordinate that is not finite.
 *
 * <h2>Sources</h2>
 *
 * <p>ISO 128-2 (lines), ISO 129-1 (dimensions), ISO 3098 (lettering), ISO 5455 (scales), ISO 5456-2 (projection), all from
 * memory. The quartered circle for the centre of gravity is common practice, no source.
 */
@NullMarked
package io.github.wingwright.core.drawing;

import org.jspecify.annotations.NullMarked;
