// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

import io.github.wingwright.core.basis.Source;

/** The works that this package cites more than once. */
final class Sources {
  private static final String RAYMER = "Raymer, Aircraft Design: A Conceptual Approach, 6th ed., AIAA 2018";
  private static final String GUDMUNDSSON = "Gudmundsson, General Aviation Aircraft Design, 2013";
  private static final String HOERNER = "Hoerner, Fluid-Dynamic Drag, 1965";
  private static final String SCHLICHTING = "Schlichting, Boundary-Layer Theory, 7th ed., 1979";

  /** Friction laws printed in several open lists. */
  static final Source FRICTION_LIST =
      Source.published("CFD-Wiki, Skin friction coefficient, list of correlations", "Prandtl-Schlichting");

  static final Source FIFTH_ROOT =
      Source.published("Anderson, Introduction to Flight, worked examples 4.23 to 4.26 (open companion)", "0.074 law");

  static final Source BLASIUS =
      Source.published("Anderson, Introduction to Flight, worked examples 4.23 to 4.26 (open companion)", "1.328 law");

  private Sources() {}

  static Source raymer(String place) {
    return Source.restated(RAYMER, place);
  }

  static Source gudmundsson(String place) {
    return Source.restated(GUDMUNDSSON, place);
  }

  static Source hoerner(String place) {
    return Source.fromMemory(HOERNER, place);
  }

  static Source schlichting(String place) {
    return Source.fromMemory(SCHLICHTING, place);
  }
}
