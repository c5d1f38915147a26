// SPDX-License-Identifier: Apache-2.0
/** Shape, without any opinion: planforms, sections, bodies, and the airframe they make. */
@NullMarked
package io.github.wingwright.core.geometry;

import org.jspecify.annotations.NullMarked;
