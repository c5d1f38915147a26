// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import io.github.wingwright.core.basis.Sized;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.Wing;

/**
 * What the loop settled on, before rounding.
 *
 * @param brief what was asked
 * @param making what it is rounded to
 * @param wing the sized wing
 * @param fuselage the sized fuselage
 * @param quick its quick evaluation
 * @param balance where everything sits
 */
record SizedGlider(
  DesignBrief brief,
  Making making,
  Sized<Wing> wing,
  Sized<Fuselage> fuselage,
  QuickDesign quick,
  QuickDesign.Balance balance) {}
