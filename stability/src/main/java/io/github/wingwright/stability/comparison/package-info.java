// SPDX-License-Identifier: Apache-2.0

/**
 * Two designs line by line: what changed, which step passed it on, what got better or worse, which findings came or went.
 *
 * <table>
 *   <caption>The types, with an example each</caption>
 *   <tr><th>type</th><th>is</th><th>example</th></tr>
 *   <tr><td>{@link io.github.wingwright.stability.comparison.DesignComparison}</td><td>both designs</td>
 *       <td>31 of 45 numbers changed, 4 better, 2 worse</td></tr>
 *   <tr><td>{@link io.github.wingwright.stability.comparison.ChangedNumber}</td><td>one number before and after</td>
 *       <td>mass 50.7 g to 46.2 g, better</td></tr>
 *   <tr><td>{@link io.github.wingwright.stability.comparison.ComparisonTable}</td><td>both designs as text</td>
 *       <td>{@code mass_kg   50.7 g to 46.2 g   -8.9 %  better}</td></tr>
 *   <tr><td>{@link io.github.wingwright.stability.comparison.Judgement}</td><td>better, worse, or neither</td>
 *       <td>{@code BETTER}</td></tr>
 * </table>
 *
 * <p>Why a number changed is read from the steps of both designs, see {@link io.github.wingwright.core.basis.StepChange}.
 */
@NullMarked
package io.github.wingwright.stability.comparison;

import org.jspecify.annotations.NullMarked;
