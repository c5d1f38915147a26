// SPDX-License-Identifier: Apache-2.0

/**
 * Plain x-y listings of sections: reading, checking, tidying, writing.
 *
 * <p>The trade passes sections on as text: a title line and two columns of numbers. Two orders are common. Either the
 * points run once round the section from the trailing edge over the upper surface, or each surface is listed from the nose,
 * sometimes after a line with the two numbers of points. {@link io.github.wingwright.airfoils.coordinates.CoordinateListing}
 * reads both, says which it was, and names the line of whatever is wrong. Listings are rounded by hand and by machine, so
 * {@link io.github.wingwright.airfoils.coordinates.SmoothOutline} draws a spline through the points and puts new ones
 * where a panel method wants them, and {@link io.github.wingwright.airfoils.coordinates.FourDigitFit} finds the 4-digit
 * section that is nearest.
 */
@NullMarked
package io.github.wingwright.airfoils.coordinates;

import org.jspecify.annotations.NullMarked;
