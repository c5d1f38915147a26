// SPDX-License-Identifier: Apache-2.0
/** Choosing dimensions. */
@NullMarked
package io.github.wingwright.core.sizing;

import org.jspecify.annotations.NullMarked;
