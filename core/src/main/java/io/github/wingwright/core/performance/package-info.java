// SPDX-License-Identifier: Apache-2.0
/** How it flies: the steady glide. */
@NullMarked
package io.github.wingwright.core.performance;

import org.jspecify.annotations.NullMarked;
