// SPDX-License-Identifier: Apache-2.0
/** Forces on a shape: friction, form, lift, the drag build-up and the drag polar. */
@NullMarked
package io.github.wingwright.core.aerodynamics;

import org.jspecify.annotations.NullMarked;
