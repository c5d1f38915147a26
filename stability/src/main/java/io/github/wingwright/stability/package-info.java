// SPDX-License-Identifier: Apache-2.0

/** Tails, balance, trim, static and dynamic stability, and the loop that closes a design. */
@NullMarked
package io.github.wingwright.stability;

import org.jspecify.annotations.NullMarked;
