// SPDX-License-Identifier: Apache-2.0

/**
 * How a number is defended: where it comes from, what speaks for it and against it, what it costs.
 *
 * <p>A dimension on a drawing gets three questions. <em>How was it computed?</em> The workings answer. <em>Who says that
 * it must be so?</em> The feasible range answers. <em>What should I worry about?</em> The findings answer.
 *
 * <h2>Where a number comes from</h2>
 * <p>A {@link io.github.wingwright.core.basis.Source} cites a work and says how far the citation can be trusted: read,
 * restated, from memory, common practice. A {@link io.github.wingwright.core.basis.Formula} binds the text that is
 * printed, once, to the static method that computes it; a test evaluates the text of every formula with an independent
 * evaluator and compares. A {@link io.github.wingwright.core.basis.Step} applies a formula to earlier steps: it is made
 * of inputs, never of a result, so a number that is shown is the number that was used. A step that would not be finite,
 * or whose inputs have other units than the formula, is refused. {@link io.github.wingwright.core.basis.Workings} prints
 * a graph of steps, each once and after its inputs, with as many digits as the printed inputs need to give the printed
 * result:
 *
 * <pre>{@code
 * Formula weight = Formula.named("weight").gives("W", Force.NEWTON).as("m·g₀")
 *     .where("m", "mass", Mass.KILOGRAM, 0, 1000)
 *     .where("g₀", "standard gravity", Acceleration.METRE_PER_SECOND_SQUARED, 9, 10)
 *     .computedBy((m, g) -> m * g);
 * Step mass = Step.given("mass", "m", Mass.grams(30), Source.BRIEF);
 * Step gravity = Step.given("standard gravity", "g₀", Acceleration.STANDARD_GRAVITY, Source.DEFINITION);
 * Workings.of(List.of(Step.of(weight, mass, gravity)))
 *
 * m = 0.03 kg  mass
 *     = given: the brief
 * g₀ = 9.80665 m/s²  standard gravity
 *     = given: by definition
 * W = 0.2942 N  weight
 *     = m·g₀ with m = 0.03 kg, g₀ = 9.80665 m/s²
 * }</pre>
 *
 * <h2>Who says that it must be so</h2>
 * <p>A {@link io.github.wingwright.core.basis.Consideration} is a margin over the length and the diameter of a body, zero
 * or more where it is satisfied; anybody can write one. What it leaves of one variable is a
 * {@link io.github.wingwright.core.basis.Bound}: an {@link io.github.wingwright.core.basis.Interval} with a
 * {@link io.github.wingwright.core.basis.Strength} (a limit, a guideline, a target that only pulls) and a
 * {@link io.github.wingwright.core.basis.Decision} (it applies, it is set aside for a reason, it is provisional until
 * something changes). A {@link io.github.wingwright.core.basis.FeasibleRange} intersects the bounds:
 *
 * <pre>{@code
 * FeasibleRange range = FeasibleRange.of("fuselage diameter", Length.MILLIMETRE, List.of(
 *     Bound.of("what the machine makes", Strength.LIMIT, Source.BRIEF, Interval.atMost(0.040)),
 *     Bound.of("fineness ratio 6 to 10", Strength.GUIDELINE, Source.COMMON_PRACTICE, Interval.between(0.016, 0.0267)),
 *     Bound.of("room for the ballast", Strength.LIMIT, Source.BRIEF, Interval.atLeast(0.018))));
 *
 * fuselage diameter:
 *   limit  what the machine makes: at most 40 mm
 *   guideline  fineness ratio 6 to 10: 16 to 26.7 mm
 *   limit  room for the ballast: at least 18 mm
 *   feasible: 18 to 26.7 mm
 *   lower end bound by room for the ballast
 *   upper end bound by fineness ratio 6 to 10
 * }</pre>
 *
 * <p>If nothing is left, the range says which considerations clash, by how much, and which single change would end it.
 *
 * <p>Length and diameter are better negotiated together. Each consideration is {@linkplain io.github.wingwright.core.basis.Weighed
 * weighed} by its decision; a {@link io.github.wingwright.core.basis.FeasibleRegion} has the outline of what all of them
 * leave, with who binds each side, or a {@link io.github.wingwright.core.basis.Conflict}: the smallest set that clashes, and
 * for each of them the body with which it alone would give way least. A consideration without a closed form finds its
 * interval by {@link io.github.wingwright.core.basis.MarginSearch}.
 *
 * <h2>What to worry about</h2>
 * <p>Nothing is silent and nothing is withheld: a value outside a {@link io.github.wingwright.core.basis.Guideline}, a
 * broken limit, or a formula outside its domain gives a {@link io.github.wingwright.core.basis.Finding} with a
 * {@link io.github.wingwright.core.basis.Severity}, and the number all the same. Leaving a guideline is allowed and has a
 * {@link io.github.wingwright.core.basis.Price}, with its sign, in each respect that it touches. A number that nobody
 * knows better is a {@link io.github.wingwright.core.basis.Band}: least, likely, greatest; with a unit it is a
 * {@link io.github.wingwright.core.basis.QuantityBand}. With a diameter of 30 mm above:
 *
 * <pre>{@code
 * range.check(0.030)
 *     CAUTION fuselage diameter: 30 mm (range 16 to 26.7 mm)
 * new Price("drag area", 0.00050, 0.00055, Area.SQUARE_CENTIMETRE, false)
 *     drag area +10 % (5.5 cm² instead of 5 cm²), a cost
 * }</pre>
 *
 * <p>{@link io.github.wingwright.core.basis.Sized} is what sizing gives: the value, and with it the range, the workings,
 * the findings and the prices.
 *
 * <h2>What became of a number</h2>
 * <p>Workings that were made apart are joined by {@link io.github.wingwright.core.basis.Origins}: what one part of the library
 * was given becomes the step by which another computed it. {@link io.github.wingwright.core.basis.StepChange} walks two such
 * graphs together and says of a number whether it changed, and which of its inputs passed the change on.
 *
 * <h2>The types</h2>
 * <table>
 *   <caption>What each is, and whether it can be serialized</caption>
 *   <tr><th>type</th><th>is</th><th>serializable</th></tr>
 *   <tr><td>{@code Source}, {@code Guideline}, {@code Finding}, {@code Severity}</td><td>judgement</td><td>yes</td></tr>
 *   <tr><td>{@code Interval}, {@code Bound}, {@code Strength}, {@code Decision}, {@code FeasibleRange}</td>
 *       <td>negotiation</td><td>yes</td></tr>
 *   <tr><td>{@code Weighed}, {@code FeasibleRegion}, {@code Conflict}, {@code MarginSearch}, {@code MarginWords}</td>
 *       <td>negotiation over length and diameter</td><td>no: they hold considerations</td></tr>
 *   <tr><td>{@code Price}, {@code Band}, {@code QuantityBand}</td><td>cost and uncertainty</td><td>yes</td></tr>
 *   <tr><td>{@code Formula}, {@code Symbol}, {@code Kernel}, {@code Step}, {@code Workings}, {@code Origins},
 *       {@code StepChange}</td><td>computation</td>
 *       <td>no: they hold methods</td></tr>
 *   <tr><td>{@code Wording}: {@code length at most 9 in}, or 228.6 mm, as the reader likes</td><td>words</td>
 *       <td>no</td></tr>
 *   <tr><td>{@code Weighed}, {@code FeasibleRegion}, {@code Conflict}: who binds a plane of length and diameter, or who
 *       clashes and what would end it</td><td>negotiation</td><td>no</td></tr>
 *   <tr><td>{@code Consideration}, {@code Sized}</td><td>open to others, or made of the above</td><td>no</td></tr>
 * </table>
 *
 * <h2>Policies</h2>
 * <p>Values are SI {@code double}s with a unit to show them in. Null is refused, and so is NaN; an interval may have
 * infinite ends, a domain may not. All types are immutable and thread-safe; text is the same on every machine.
 */
@NullMarked
package io.github.wingwright.core.basis;

import org.jspecify.annotations.NullMarked;
