// SPDX-License-Identifier: Apache-2.0
/** Units-safe quantities, one SI {@code double} each. */
@NullMarked
package io.github.wingwright.core.quantity;

import org.jspecify.annotations.NullMarked;
