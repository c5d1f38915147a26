// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.core.basis.Source;

/** The works that this package draws on, each with how far its numbers were verified. */
final class Sources {
  private static final String RAYMER = "Raymer, Aircraft Design: A Conceptual Approach, 6th ed., 2018";

  /** What is read from a finished airframe; a design joins it to the step that made it. */
  static final Source AIRFRAME = Source.taken("shape of the airframe");

  /** What the caller asks a method about: a lift coefficient, a centre of gravity. */
  static final Source ASKED = Source.taken("the state that is asked about");

  static final Source TAIL_VOLUMES =
      Source.restated(RAYMER, "table 6.4; a spread of ±20 % about its value is a choice of this library");
  static final Source TAIL_SHAPES = Source.fromMemory(RAYMER, "table 4.3");
  static final Source TAIL_ARMS = Source.fromMemory(RAYMER, "section 6.5.3");
  static final Source SMALL_AIRCRAFT_RULES =
      Source.fromMemory("MIT Unified Engineering course note, Basic Aircraft Design Rules, 2006", "");
  static final Source SPIRAL_RULE =
      Source.published("M. Drela, letter to a soaring mailing list on dihedral, about 2003", "EDA = 5·C_L·b/l");
  static final Source NEUTRAL_POINT =
      Source.restated(RAYMER, "eq. 16.9, as used in Purdue AAE 451 course notes");
  static final Source TAIL_EFFICIENCY = Source.restated(RAYMER, "chapter 16, as used in Purdue AAE 451 course notes");
  static final Source GENERAL_MARGINS =
      Source.fromMemory("Perkins and Hage, Airplane Performance, Stability and Control, 1949", "general guidance");
  static final Source TRANSPORT_MARGINS = Source.fromMemory(RAYMER, "chapter 16");
  static final Source MOMENT_EQUATION =
      Source.published("H. Smith, Aircraft Flight Mechanics, course notes", "longitudinal static stability");
  static final Source MUNK =
      Source.fromMemory("Munk, The Aerodynamic Forces on Airship Hulls, NACA Report 184, 1924", "");
  static final Source LAMB = Source.fromMemory("Lamb, Hydrodynamics, 6th ed., 1932", "articles 114 and 115");
  static final Source MULTHOPP =
      Source.fromMemory("Multhopp, Aerodynamics of the Fuselage, NACA TM 1036, 1942", "");
  static final Source GILRUTH_WHITE =
      Source.fromMemory(
          "Gilruth and White, Analysis and Prediction of Longitudinal Stability, NACA Report 711, 1941",
          "the fuselage factor");
  static final Source HANDBOOK = Source.fromMemory("USAF Stability and Control DATCOM, 1978", "section 4.4.1");
  static final Source TORENBEEK =
      Source.fromMemory("Torenbeek, Synthesis of Subsonic Airplane Design, 1976", "appendix E");
  static final Source DIEHL =
      Source.fromMemory("Diehl's downwash formula in Perkins and Hage, 1949", "chapter 5");
  static final Source ELLIPTIC_WAKE =
      Source.library("exact integral over an elliptically loaded lifting line with a plane wake");
  static final Source HORSESHOE =
      Source.library("the law of Biot and Savart for one horseshoe vortex of span π·b/4, in the wake's own plane or off it");

  private Sources() {}
}
