// SPDX-License-Identifier: Apache-2.0
/**
 * From a brief to a complete design: the one place where masses, loading, ballast, tails and balance are brought into
 * agreement.
 *
 * <p>A {@link io.github.wingwright.stability.design.DesignBrief} says what is asked.
 * {@code SizingLoop} repeats wing, fuselage, tails, masses and balance until they agree, or says what would not settle.
 * The {@code Design} is what they agree on: the aircraft, its stability, trim and glide, the findings, and a step for every
 * number. {@code GliderFamily} evaluates the same chain on plain numbers, in some 30 µs, for studies of thousands of gliders.
 */
@NullMarked
package io.github.wingwright.stability.design;

import org.jspecify.annotations.NullMarked;
