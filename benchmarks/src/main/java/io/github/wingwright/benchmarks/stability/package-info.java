// SPDX-License-Identifier: Apache-2.0

/** What the finite wing, the lattice and the motions cost; the figures are in the module's README. */
@NullMarked
package io.github.wingwright.benchmarks.stability;

import org.jspecify.annotations.NullMarked;
