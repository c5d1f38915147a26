// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

import io.github.wingwright.core.basis.Step;

/** A section polar that comes from formulas and can show them. */
interface ShownPolar {
  /**
   * The likely profile drag as a line of the workings.
   *
   * @param lift step of the lift coefficient
   * @param reynolds step of the Reynolds number on the chord
   * @return the step of c_d
   */
  Step profileDragStep(Step lift, Step reynolds);
}
