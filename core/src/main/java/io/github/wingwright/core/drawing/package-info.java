// SPDX-License-Identifier: Apache-2.0
/**
 * Pictures as SVG, without any toolkit: the three-view drawing, the outline of a section, the picture of a feasible range,
 * the balance, and curves.
 *
 * <p>All coordinates are millimetres on paper. Text stays text, and the same design gives the same bytes. One small
 * palette serves every picture: ink for what is, the accent for what the picture is about, a warm tone for what needs
 * attention.
 */
@NullMarked
package io.github.wingwright.core.drawing;

import org.jspecify.annotations.NullMarked;
