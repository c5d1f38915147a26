// SPDX-License-Identifier: Apache-2.0

/** What the tests of all modules share: published values as data, and seeded points for properties. */
@NullMarked
package io.github.wingwright.testing;

import org.jspecify.annotations.NullMarked;
