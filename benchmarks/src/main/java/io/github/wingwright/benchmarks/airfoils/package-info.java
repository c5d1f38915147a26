// SPDX-License-Identifier: Apache-2.0

/** What sections cost: contours, potential flow and polars with boundary layers. */
@NullMarked
package io.github.wingwright.benchmarks.airfoils;

import org.jspecify.annotations.NullMarked;
