// SPDX-License-Identifier: Apache-2.0

/** JMH benchmarks of the hot paths. */
@NullMarked
package io.github.wingwright.benchmarks;

import org.jspecify.annotations.NullMarked;
