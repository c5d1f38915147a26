// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.quantity;

import java.io.Serializable;

/**
 * The exponents of the base units of a kind of quantity.
 *
 * @param kilogram exponent of mass
 * @param metre exponent of length
 * @param second exponent of time
 * @param kelvin exponent of temperature
 * @param radian exponent of plane angle, which SI counts as a number and this library does not
 */
record Dimension(int kilogram, int metre, int second, int kelvin, int radian) implements Serializable {}
