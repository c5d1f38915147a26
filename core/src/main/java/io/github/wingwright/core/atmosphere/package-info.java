// SPDX-License-Identifier: Apache-2.0

/**
 * Air: the standard atmosphere, the air of a place, and a flight through it.
 *
 * <table>
 *   <caption>The types, with an example each</caption>
 *   <tr><th>type</th><th>is</th><th>example</th></tr>
 *   <tr><td>{@link io.github.wingwright.core.atmosphere.Atmosphere}</td><td>air by altitude, standard or offset</td>
 *       <td>{@code Atmosphere.standard().at(metres(2000))}</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.atmosphere.AirState}</td><td>air at rest, as found or measured</td>
 *       <td>1013.25 hPa, 20 °C, 1.2041 kg/m³</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.atmosphere.FlightCondition}</td><td>air and an airspeed</td>
 *       <td>6 m/s in 1013.25 hPa, 15 °C, 1.225 kg/m³</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.atmosphere.Air}</td><td>the gas: formulas on SI numbers</td>
 *       <td>{@code Air.dynamicPressure(1.225, 6)} is 22.05</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.atmosphere.StandardAtmosphere}</td><td>the layers: formulas on SI numbers</td>
 *       <td>{@code StandardAtmosphere.temperature(11_000)} is 216.65</td></tr>
 * </table>
 *
 * <h2>Four altitudes</h2>
 * <ul>
 *   <li><em>Geometric</em> altitude Z is the surveyed height above mean sea level.</li>
 *   <li><em>Geopotential</em> altitude H measures it in energy: H = r₀·Z/(r₀ + Z), 16 m less at 10 km. The standard is
 *       defined in H.</li>
 *   <li><em>Pressure</em> altitude is the H at which the standard day has the pressure of the place.</li>
 *   <li><em>Density</em> altitude is the H at which it has the density; wings and propellers notice this one.</li>
 * </ul>
 *
 * <h2>Policies</h2>
 * <ul>
 *   <li>An altitude, pressure or density that the standard does not have is refused, with the range in the message. A
 *       temperature outside the range of the viscosity law is a finding.</li>
 *   <li>Air is dry. At 20 °C saturated air is 0.9 % lighter, less than a change of the weather.</li>
 *   <li>A hall is not a standard day: give its own pressure and temperature to
 *       {@link io.github.wingwright.core.atmosphere.AirState#of}.</li>
 * </ul>
 *
 * <h2>Sources</h2>
 * ISO 2533:1975, ICAO Doc 7488/3 and U.S. Standard Atmosphere, 1976 (constants and formulas from memory; layer table and
 * printed values read in public restatements; values computed independently from the definition for the tests).
 */
@NullMarked
package io.github.wingwright.core.atmosphere;

import org.jspecify.annotations.NullMarked;
