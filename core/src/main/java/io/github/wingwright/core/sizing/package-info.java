// SPDX-License-Identifier: Apache-2.0
/**
 * Choosing dimensions: how a wing follows from what is given, and how a fuselage is negotiated.
 *
 * <h2>A dimension is rarely computed</h2>
 *
 * <p>The diameter of a fuselage has no formula. The machine that makes it, the air around it, the wing on it and the things
 * in it each want something, and they do not ask each other. What can be computed is what each of them leaves:
 *
 * <pre>{@code
 * longest part 300 mm          L ≤ 300 mm                          the machine, a limit
 * fineness ratio 6 to 10       L/10 ≤ d ≤ L/6                      the air, a guideline
 * 60 cm³ packed to 0.6         V(L, d) ≥ 100 cm³                   the contents, a limit
 * tail arm 150 mm              (1 − 0.4)·L ≥ 150 mm                the tail, a guideline: 0.4 of L lies outside the arm
 * EI at least 2 N·m²           E·π/64·(d⁴ − (d − 2w)⁴) ≥ 2 N·m²    the launch, a limit
 * 2.5 times the wing           d near 10 mm                        the eye, a target
 * }</pre>
 *
 * <p>So a {@link io.github.wingwright.core.basis.Consideration} is a margin over length and diameter, zero or more where it
 * is satisfied. At one length each leaves an interval of diameters; all of them together leave their intersection, or
 * clash. Three strengths keep apart what cannot be otherwise (a limit), what good designs keep to (a guideline) and what
 * merely pulls (a target).
 *
 * <h2>Then somebody chooses</h2>
 *
 * <p>Inside the range the choice is free: {@link io.github.wingwright.core.sizing.FuselageSizing#nearestToTargets() nearest
 * to the targets}, of {@link io.github.wingwright.core.sizing.FuselageSizing#leastDrag least drag}, or simply {@link
 * io.github.wingwright.core.sizing.FuselageSizing#diameter chosen}. Outside a guideline it is allowed too, and then it has a
 * price with a sign. At a fixed length a thinner body has less skin and so less drag: that is a gain. Its bending stiffness
 * falls with the cube of its diameter: that is a cost, and usually the greater one. Whoever sees only one of the two gets
 * bad advice.
 *
 * <p>A consideration may be set aside with a reason, or kept until something changes; either way it stays on the sheet.
 *
 * <p>A clash is a result and not an exception. The range is empty and names who clashes, by how much, and what would end
 * it; the body is the least bad one, inside the limits if these leave anything, so that there is something to draw and to
 * talk about; and {@link io.github.wingwright.core.basis.Sized#isFeasible()} is false.
 *
 * <h2>Length and diameter together</h2>
 *
 * <p>At a fixed length the considerations leave an interval. Over both dimensions they leave a {@link
 * io.github.wingwright.core.basis.FeasibleRegion}, each side of it bound by somebody, and an empty one is explained: by the
 * smallest set that clashes, and by what each of that set would have to give up so that a body exists.
 *
 * <p>A volume that must be inside can be met by diameter (fix the length), by length (bound the diameter from both sides),
 * or by the cheaper of the two (leave both free and ask for least drag).
 *
 * <h2>The wing</h2>
 *
 * <p>A tapered wing does have formulas: two of span, aspect ratio and area fix it, and area may come from a mass with a
 * loading or with a speed. Its chord is negotiated all the same: thick enough at the trailing edge to be printed, long
 * enough for its Reynolds number, large enough to fly at the speed it is thrown with. A solid wing can be too large for
 * that as well, because its mass grows with the square of the chord and its lift only with the chord.
 *
 * <h2>The types</h2>
 *
 * <table>
 * <caption>Types with an example</caption>
 * <tr><td>{@code FuselageSizing}</td><td>capsule, 300 mm, four considerations</td></tr>
 * <tr><td>{@code Considerations}</td><td>{@code finenessWithin(6, 10)}</td></tr>
 * <tr><td>{@code MarginFormulas}, {@code FitFormulas}</td><td>{@code m = L_max / L − 1}: how a margin comes about</td></tr>
 * <tr><td>{@code BodySteps}</td><td>length, diameter, volume and wetted area of one body as lines of the workings</td></tr>
 * <tr><td>{@code ShapeConsideration}</td><td>60 cm³ inside, whatever the family</td></tr>
 * <tr><td>{@code FinenessContext}</td><td>subsonic, volume fixed: 6 to 8</td></tr>
 * <tr><td>{@code PackingFraction}</td><td>0.6</td></tr>
 * <tr><td>{@code BodyShell}</td><td>wall 0.8 mm, 1240 kg/m³, E 2.3 GPa</td></tr>
 * <tr><td>{@code DragArea}, {@code FlightDrag}</td><td>D/q of a body in m²; the library's estimate of it</td></tr>
 * <tr><td>{@code DragSurvey}</td><td>least drag at a fixed volume: f 7.4, within 1 % from 6.4 to 8.8</td></tr>
 * <tr><td>{@code Contents}, {@code Thing}</td><td>battery, camera and receiver, one behind the other</td></tr>
 * <tr><td>{@code Cabin}</td><td>one row of two, 18 in each</td></tr>
 * <tr><td>{@code BuildSpace}</td><td>a 30 mm tube lies on 250 mm × 210 mm up to 297 mm long</td></tr>
 * <tr><td>{@code BodyLayout}</td><td>sees 10° over the nose; clears the ground at 12°; stands on its wheels</td></tr>
 * <tr><td>{@code NoseStrength}</td><td>does not fold when 30 g hit a wall at 8 m/s</td></tr>
 * <tr><td>{@code FigureOfMerit}</td><td>distance down the hall, more is better</td></tr>
 * <tr><td>{@code WingSizing}</td><td>span 400 mm, A 7.5, λ 0.6</td></tr>
 * <tr><td>{@code WingConsiderations}</td><td>{@code rootChordAtMost(millimetres(100))}</td></tr>
 * <tr><td>{@code WingMarginFormulas}</td><td>{@code m = 1 − c_r / c_max}: how a margin on the chord comes about</td></tr>
 * </table>
 *
 * <h2>Policies</h2>
 *
 * <p>A specification is immutable; each call returns a new one; a study branches from a base. Saying a property again
 * replaces it; adding a consideration of the same name replaces that. A malformed value is refused at its call with an
 * {@code IllegalArgumentException}; a specification that is not enough, or a wing in conflict with itself, at the closing
 * call with an {@code IllegalStateException} that lists what would be enough or names what conflicts. Null is refused.
 *
 * <p>Margins are relative: −0.1 misses by a tenth. Rounding of a billionth does not break a consideration.
 *
 * <p>Notation: length L, diameter d, wall w, modulus E; span b, area S, aspect ratio A, taper ratio λ, mass m, wing loading
 * w = m/S. Lengths and diameters of kernels are in metres.
 */
@NullMarked
package io.github.wingwright.core.sizing;

import org.jspecify.annotations.NullMarked;
