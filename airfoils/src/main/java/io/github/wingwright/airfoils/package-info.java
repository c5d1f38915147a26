// SPDX-License-Identifier: Apache-2.0

/** Aerofoil sections: geometry, potential flow, boundary layers and section drag. */
@NullMarked
package io.github.wingwright.airfoils;

import org.jspecify.annotations.NullMarked;
