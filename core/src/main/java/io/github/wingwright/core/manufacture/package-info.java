// SPDX-License-Identifier: Apache-2.0

/** Making it. */
@NullMarked
package io.github.wingwright.core.manufacture;

import org.jspecify.annotations.NullMarked;
