// SPDX-License-Identifier: Apache-2.0

/**
 * The few numerical tools the library needs, with guard rails.
 *
 * <table>
 *   <caption>The types, with an example each</caption>
 *   <tr><th>type</th><th>is</th><th>example</th></tr>
 *   <tr><td>{@link io.github.wingwright.core.numerics.Tolerance}</td><td>how close is close enough</td>
 *       <td>{@code Tolerance.relative(1e-12)}</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.numerics.Roots}</td><td>where a function is zero, where a condition ends</td>
 *       <td>{@code Roots.find(x -> x * x - 2, 1, 2, tolerance)} is √2</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.numerics.Minimum}</td><td>where a function is least</td>
 *       <td>{@code Minimum.within(x -> (x - 3) * (x - 3), 0, 10, tolerance)} is at 3</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.numerics.GoldenSection}</td><td>where it is greatest, inside of other searches</td>
 *       <td>{@code GoldenSection.greatest(x -> -Math.abs(x - 3), 0, 10, 50)} is 3</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.numerics.Quadrature}</td><td>the integral of a function</td>
 *       <td>{@code Quadrature.integrate(Math::sin, 0, Math.PI, tolerance)} is 2</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.numerics.TriangularFactors}</td><td>many equations, solved for many right sides</td>
 *       <td>{@code new TriangularFactors(matrix, 1e-14).solve(right)}</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.numerics.Parallel}</td><td>works on all cores that fail in their own words</td>
 *       <td>{@code Parallel.each(rows, row -> fly(row))}</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.ConvergenceException}</td><td>a method that did not converge</td>
 *       <td>"no root after 100 evaluations: …"</td></tr>
 * </table>
 *
 * <h2>Policies</h2>
 * <ul>
 *   <li>A tolerance is always given by the caller; no method has a default one.</li>
 *   <li>What the caller passes wrongly is an {@link IllegalArgumentException} that says the requirement and what came.
 *       What a method cannot reach is a {@link io.github.wingwright.core.ConvergenceException}.
 *       NaN and infinity go neither in nor out.</li>
 *   <li>A function passed here must be pure: the same argument gives the same value.</li>
 *   <li>Nothing keeps a state that changes, so all of it is safe from any number of threads.</li>
 * </ul>
 *
 * <h2>Why a wall</h2>
 * Commons Math 3.6.1 does the work of {@code Roots} and {@code Minimum} but does not appear in a signature. Its defaults
 * are not ours: the solver accepts a root 1e-6 away in absolute terms, which for a wall thickness in metres is a fair
 * part of the wall, and it stops early where the function value is below 1e-15 whatever its scale.
 */
@NullMarked
package io.github.wingwright.core.numerics;

import org.jspecify.annotations.NullMarked;
