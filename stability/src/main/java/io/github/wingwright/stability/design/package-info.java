// SPDX-License-Identifier: Apache-2.0
/**
 * From a brief to a complete design: the one place where masses, loading, ballast, tails and balance are brought into
 * agreement.
 *
 * <p>A {@link io.github.wingwright.stability.design.DesignBrief} says what is asked.
 * {@code SizingLoop} repeats wing, fuselage, tails, masses and balance until they agree, or says what would not settle.
 * The {@code Design} is what they agree on: the aircraft, its stability, trim and glide, the findings, and a step for every
 * number. What costs more is reckoned when it is first asked for: {@code design.modes()} has the natural motions with their
 * approximations, {@code design.finiteWing()} the wing by three methods and its stall, {@code design.trimmedPolar()} the
 * glide with the tail in trim, {@code design.lattice()} the vortex lattice. In the shell each of them is a table.
 *
 * <p>{@code GliderFamily} evaluates the same chain on plain numbers, in some 30 µs, for studies of thousands of gliders.
 */
@NullMarked
package io.github.wingwright.stability.design;

import org.jspecify.annotations.NullMarked;
