// SPDX-License-Identifier: Apache-2.0
/** Why a number is what it is: sources, guidelines, findings, formulas, workings, considerations and feasible ranges. */
@NullMarked
package io.github.wingwright.core.basis;

import org.jspecify.annotations.NullMarked;
