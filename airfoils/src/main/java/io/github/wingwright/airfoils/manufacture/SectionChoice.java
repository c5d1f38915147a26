// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils.manufacture;

import io.github.wingwright.airfoils.ComposedSection;
import io.github.wingwright.airfoils.FourDigitThickness;
import io.github.wingwright.airfoils.Naca4;
import io.github.wingwright.airfoils.ThinAirfoil;
import io.github.wingwright.core.quantity.Length;
import java.util.Objects;

/** Questions turned round: from what a part needs to the section or chord that gives it. */
public final class SectionChoice {
  private SectionChoice() {}

  /**
   * The chord at which a spar of a given depth just fits at a station, walls included.
   *
   * <p>Example: a 4 mm spar within walls of 0.4 mm at 30 % of the chord of the 2412 needs a chord of 40.0 mm.
   *
   * @param section the section
   * @param station chord station of the spar [chords], above 0, below 1
   * @param depth depth of the spar
   * @param wall thickness of each wall; zero for a solid section
   */
  public static Length chordForSparDepth(ComposedSection section, double station, Length depth, Length wall) {
    Objects.requireNonNull(section, "section");
    Objects.requireNonNull(depth, "depth");
    Objects.requireNonNull(wall, "wall");
    if (!(station > 0 && station < 1)) {
      throw new IllegalArgumentException("station of the spar must be above 0 and below 1, was " + station);
    }
    positive("depth of the spar", depth);
    notNegative("wall thickness", wall);
    return Length.metres((depth.metres() + 2 * wall.metres()) / section.depth(station));
  }

  /**
   * The smallest chord at which the trailing edge of a section is thick enough to be made.
   *
   * @param section a section with an open trailing edge
   * @param least least thickness that can be made
   */
  public static Length chordForTrailingEdge(ComposedSection section, Length least) {
    Objects.requireNonNull(section, "section");
    Objects.requireNonNull(least, "least");
    positive("least thickness", least);
    if (!(section.trailingEdgeThickness() > 0)) {
      throw new IllegalArgumentException("a sharp trailing edge cannot be made at any chord: " + section.name());
    }
    return Length.metres(least.metres() / section.trailingEdgeThickness());
  }

  /**
   * The thickness ratio at which a 4-digit section with its published trailing edge has a given thickness at a station.
   *
   * <p>Example: 0.8 mm at 90 % of a 50 mm chord needs a thickness ratio of 0.0663.
   *
   * @param chord chord
   * @param station chord station [chords], above 0, to 1
   * @param least thickness wanted there
   */
  public static double thicknessRatioFor(Length chord, double station, Length least) {
    Objects.requireNonNull(chord, "chord");
    Objects.requireNonNull(least, "least");
    positive("chord", chord);
    positive("least thickness", least);
    if (!(station > 0 && station <= 1)) {
      throw new IllegalArgumentException("station must be above 0, to 1, was " + station);
    }
    double ratio = least.metres() / chord.metres() / (2 * FourDigitThickness.halfThickness(1, 0.1015, station));
    if (!(ratio <= 0.5)) {
      throw new IllegalArgumentException("this needs a thickness ratio of " + ratio
          + ", more than 0.5: make the chord longer or the wanted thickness smaller");
    }
    return ratio;
  }

  /**
   * The camber at which a 4-digit mean line has a given design lift coefficient in thin-airfoil theory, where it is
   * proportional to the camber.
   *
   * <p>Example: a design lift of 0.512 with the greatest camber at 0.4 needs 4 % camber.
   *
   * @param designLift design lift coefficient [1], 0 or more
   * @param position position of the greatest camber [chords], 0.05 to 0.95
   * @return camber [chords]
   */
  public static double camberForDesignLift(double designLift, double position) {
    if (!(designLift >= 0 && designLift < 10)) {
      throw new IllegalArgumentException("design lift must be from 0 to 10, was " + designLift);
    }
    double camber = designLift / ThinAirfoil.fourDigit(1, position).designLiftCoefficient();
    // The mean line itself says whether that is still in the family.
    return Naca4.of(camber, position, 0.1).nominalCamber();
  }

  private static void positive(String what, Length length) {
    if (!(length.metres() > 0)) {
      throw new IllegalArgumentException(what + " must be positive, was " + length);
    }
  }

  private static void notNegative(String what, Length length) {
    if (!(length.metres() >= 0)) {
      throw new IllegalArgumentException(what + " must not be negative, was " + length);
    }
  }
}
