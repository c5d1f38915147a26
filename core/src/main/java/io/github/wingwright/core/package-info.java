// SPDX-License-Identifier: Apache-2.0
/** What every part of the library may say: that a number could not be found. */
@NullMarked
package io.github.wingwright.core;

import org.jspecify.annotations.NullMarked;
