// SPDX-License-Identifier: Apache-2.0

/**
 * Quantities that know what they are: each is one {@code double} in the coherent SI unit of its kind, and a type.
 *
 * <pre>{@code
 * Length span = millimetres(400);                    // static import of Length.millimetres
 * Area area = span.times(span).dividedBy(8.0);       // aspect ratio 8
 * WingLoading loading = WingLoading.of(grams(30), area);
 * loading.toString();                                // "1.5 kg/m²"
 * loading.plus(pascals(3));                          // does not compile
 * }</pre>
 *
 * <h2>The types</h2>
 * <table>
 *   <caption>Every kind, with a value as it is printed</caption>
 *   <tr><th>type</th><th>of</th><th>example</th></tr>
 *   <tr><td>{@link io.github.wingwright.core.quantity.Length}</td><td>a chord, a span, an altitude</td><td>400 mm</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.quantity.Area}</td><td>a wing, a wetted skin</td><td>200 cm²</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.quantity.Volume}</td><td>what a body encloses</td><td>60 cm³</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.quantity.SecondMomentOfArea}</td><td>a cross-section in bending</td>
 *       <td>125 mm⁴</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.quantity.Angle}</td><td>an incidence, a sweep</td><td>8°</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.quantity.Time}</td><td>a duration</td><td>2.5 s</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.quantity.Frequency}</td><td>a periodic event</td><td>2 Hz</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.quantity.Speed}</td><td>an airspeed, a sink rate</td><td>6 m/s</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.quantity.Acceleration}</td><td>free fall, a throw</td><td>9.80665 m/s²</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.quantity.AngularRate}</td><td>pitch, roll, yaw, a shaft</td><td>90 °/s</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.quantity.Mass}</td><td>a part, an aircraft</td><td>30 g</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.quantity.Density}</td><td>a material, air</td><td>1.225 kg/m³</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.quantity.ArealDensity}</td><td>a sheet, a covering</td><td>80 g/m²</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.quantity.LinearDensity}</td><td>a rod, a tube</td><td>4.5 g/m</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.quantity.WingLoading}</td><td>mass over wing area</td><td>1.5 kg/m²</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.quantity.MomentOfInertia}</td><td>mass about an axis</td><td>850 g·cm²</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.quantity.Force}</td><td>a lift, a weight</td><td>294.2 mN</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.quantity.Moment}</td><td>a pitching moment</td><td>12 N·mm</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.quantity.Pressure}</td><td>a stress, a modulus, air</td><td>22.05 Pa</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.quantity.FlexuralRigidity}</td><td>EI of a beam</td><td>0.25 N·m²</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.quantity.Energy}</td><td>of a throw, in a battery</td><td>540 mJ</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.quantity.Power}</td><td>of a motor, of drag</td><td>120 mW</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.quantity.DynamicViscosity}</td><td>μ of air</td><td>17.8938 µPa·s</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.quantity.KinematicViscosity}</td><td>ν of air</td><td>14.6072 mm²/s</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.quantity.Temperature}</td><td>a point of the scale</td><td>20 °C</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.quantity.TemperatureDifference}</td><td>a distance on it</td><td>15 K</td></tr>
 * </table>
 * Each type has a {@link io.github.wingwright.core.quantity.QuantityKind}, its name and units as a value, for code that
 * serves all kinds alike, and its {@link io.github.wingwright.core.quantity.NamedUnit}s as constants.
 *
 * <h2>Policies</h2>
 * <ul>
 *   <li>Null is refused everywhere, with a {@link java.lang.NullPointerException}.</li>
 *   <li>NaN and infinity are refused by the named factories, by {@code parse} and by {@code from}: "length must be a finite
 *       number of m, was NaN". A temperature below absolute zero is refused there too.</li>
 *   <li>Division by zero is an {@link java.lang.ArithmeticException} that names the divisor. Other arithmetic trusts its
 *       operands; a result that overflows is refused at the next public method that takes it.</li>
 *   <li>Values are equal if their SI {@code double}s are, bit by bit, except that −0.0 is 0.0. Quantities of two kinds are
 *       never equal. Order, equality and hash code agree.</li>
 *   <li>A factor that is an exact ratio converts with one rounding or two, so that {@code inches(12)} equals
 *       {@code feet(1)}; there and back may still differ in the last bit.</li>
 *   <li>Text knows no locale: a decimal point, ASCII digits, no group marks. {@code toString} rounds to six significant
 *       digits; {@code toExactText} can be read back to the same bits.</li>
 *   <li>All values are immutable, thread-safe and serializable.</li>
 * </ul>
 *
 * <h2>Design notes</h2>
 * <p><em>Why types of our own.</em> Measured on Java 17: ½·ρ·V² through these types takes the time of plain
 * {@code double}s and allocates nothing once compiled (a test holds that); through the reference implementation of
 * JSR-385 it takes microseconds and kilobytes. That interface also gives torque and energy, angle and number, frequency
 * and angular rate one type; its implementation reads "1e-3 m" as 1 m, and under a German default locale "1234.5 m" as
 * 12,345 m. So it is the bridge to others, in both directions, and not the ground under the formulas.
 *
 * <p><em>What the bridge cannot tell.</em> The standard treats 1 Hz as 1 rad/s and 1 J as 1 N·m: whoever calls
 * {@code AngularRate.from} or {@code Moment.from} vouches for the meaning. A temperature and a difference are told apart
 * by the scale that the standard's quantity carries.
 *
 * <p><em>What was rejected.</em> Records: a record's constructor cannot be private, and {@code new Length(300)} would be
 * 300 m. A finite check on each operation: it doubles the time of a chain of five and stops the compiler from
 * vectorising. One type with a dimension at run time: a unit mistake would compile. Pressure for wing loading: a loading
 * is a mass over an area, and needs a gravity to become a pressure
 * ({@link io.github.wingwright.core.quantity.WingLoading#weight}). {@code Length.times(Force)}: nobody could say whether
 * it is a moment or an energy, so {@link io.github.wingwright.core.quantity.Force#moment} and
 * {@link io.github.wingwright.core.quantity.Force#work} are asked for by name.
 *
 * <p><em>In loops.</em> A quantity that a loop keeps is an object. Accumulate in {@code double}s:
 * {@code sum += part.kilograms()}, and make a quantity of the sum.
 *
 * <h2>Names of methods</h2>
 * <table>
 *   <caption>What a name promises</caption>
 *   <tr><th>name</th><th>does</th><th>example</th></tr>
 *   <tr><td>a unit, static</td><td>makes a quantity</td><td>{@code Length.millimetres(300)}</td></tr>
 *   <tr><td>a unit</td><td>reads the number of that unit</td><td>{@code span.inches()}</td></tr>
 *   <tr><td>{@code of}, {@code ofSi}</td><td>make one of parts, or of an SI number</td>
 *       <td>{@code WingLoading.of(mass, area)}</td></tr>
 *   <tr><td>{@code parse}</td><td>reads text</td><td>{@code Length.parse("5 ft 3 in")}</td></tr>
 *   <tr><td>{@code from}, {@code toQuantity}</td><td>cross the bridge to JSR-385</td><td>{@code Mass.from(quantity)}</td></tr>
 *   <tr><td>{@code in}</td><td>reads the number of a unit that is a value</td><td>{@code span.in(Length.INCH)}</td></tr>
 *   <tr><td>{@code plus}, {@code minus}, {@code times}, {@code dividedBy}</td><td>compute</td>
 *       <td>{@code area.dividedBy(span)} is a length</td></tr>
 *   <tr><td>{@code atLeast}, {@code atMost}</td><td>give the larger, the smaller of two</td>
 *       <td>{@code wall.atLeast(nozzle)}</td></tr>
 *   <tr><td>{@code is…}</td><td>ask</td><td>{@code a.isCloseTo(b, micrometres(1))}</td></tr>
 *   <tr><td>{@code format}, {@code toExactText}</td><td>write text</td><td>{@code span.format(Length.INCH, 4)}</td></tr>
 * </table>
 *
 * <h2>Sources</h2>
 * Unit factors: A. Thompson and B. N. Taylor, Guide for the Use of the International System of Units, NIST Special
 * Publication 811, 2008 edition, appendix B (from memory; every factor is also compared with an independent library).
 */
@NullMarked
package io.github.wingwright.core.quantity;

import org.jspecify.annotations.NullMarked;
