// SPDX-License-Identifier: Apache-2.0

/**
 * From a section to a part: walls, hollow, spars, and the questions a maker asks.
 *
 * <p>{@link io.github.wingwright.airfoils.manufacture.SectionShell} hollows a section with walls of a given thickness and
 * says what is left: wall area, mass per span, where the walls meet. {@link
 * io.github.wingwright.airfoils.manufacture.SectionChoice} turns the questions round: how large must the chord be for this
 * spar, how thick the section for a printable tail, how much camber for this lift. {@link
 * io.github.wingwright.airfoils.manufacture.SectionCandidates} sets a section beside its neighbours, in flight and in the
 * making.
 *
 * <p>Lengths at the door are quantities; inside the chord is 1.
 */
@NullMarked
package io.github.wingwright.airfoils.manufacture;

import org.jspecify.annotations.NullMarked;
