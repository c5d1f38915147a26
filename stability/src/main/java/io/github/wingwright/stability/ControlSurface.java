// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Guideline;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * A hinged part of a surface: elevator, rudder or aileron, with the chord and the span that such parts usually have.
 *
 * @param kind what it is
 * @param chordFraction its chord over that of the surface, hinge to trailing edge, 0 to 1
 * @param from where it begins, fraction of the semispan (of a fin: of the height)
 * @param to where it ends
 */
public record ControlSurface(Kind kind, double chordFraction, double from, double to) implements Serializable {
  private static final Source SIZES =
      Source.fromMemory("Raymer, Aircraft Design: A Conceptual Approach", "table 6.5 and section 6.6");
  private static final Source THIN =
      Source.fromMemory("Glauert, The Elements of Aerofoil and Airscrew Theory, 2nd ed., 1947", "hinged flap");

  /** What a hinged part is for. */
  public enum Kind {
    /** Pitch. */
    ELEVATOR("elevator"),
    /** Yaw. */
    RUDDER("rudder"),
    /** Roll. */
    AILERON("aileron");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    /**
     * The kind in words.
     *
     * @return for example {@code "elevator"}
     */
    public String words() {
      return words;
    }
  }

  /** Effectiveness of a hinged flap in thin-aerofoil theory. */
  public static final Formula EFFECTIVENESS =
      Formula.named("effectiveness of a hinged flap")
          .gives("τ")
          .as("1 − (acos(2·E − 1) − sin(acos(2·E − 1))) / π")
          .where("E", "flap chord over chord", 0.02, 0.98)
          .from(THIN)
          .computedBy(ControlSurface::effectiveness);

  /** Refuses a part that is not on its surface. */
  public ControlSurface {
    Objects.requireNonNull(kind, "kind");
    Door.within(chordFraction, 0.0, 1.0, kind.words + " chord fraction");
    Door.within(from, 0.0, 1.0, kind.words + " inner end");
    Door.within(to, from, 1.0, kind.words + " outer end");
  }

  /**
   * The usual size.
   *
   * @param kind what it is for
   * @param aircraftClass class of aircraft
   * @return the part that handbooks give to begin with
   */
  public static ControlSurface usual(Kind kind, AircraftClass aircraftClass) {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(aircraftClass, "aircraftClass");
    return switch (kind) {
      case ELEVATOR -> new ControlSurface(kind, elevatorChord(aircraftClass), 0.0, 0.9);
      case RUDDER -> new ControlSurface(kind, rudderChord(aircraftClass), 0.0, 0.9);
      case AILERON -> new ControlSurface(kind, 0.2, 0.5, 0.9);
    };
  }

  private static double elevatorChord(AircraftClass one) {
    return switch (one) {
      case TWIN_ENGINE -> 0.36;
      case SAILPLANE -> 0.43;
      case HAND_LAUNCHED_GLIDER, RADIO_CONTROLLED_MODEL -> 0.35;
      default -> 0.45;
    };
  }

  private static double rudderChord(AircraftClass one) {
    return switch (one) {
      case TWIN_ENGINE -> 0.46;
      default -> 0.40;
    };
  }

  /**
   * How much a hinged flap turns the zero-lift line, as a part of its own angle: thin-aerofoil theory.
   *
   * <pre>{@code τ = 1 − (θ − sin θ)/π        cos θ = 2·E − 1}</pre>
   *
   * <p>Real flaps with a sealed gap keep about 0.8 of it, at a small Reynolds number less (from memory). Example: E = 0.3
   * gives 0.6607.
   *
   * @param chordFraction E, flap chord over chord, 0 to 1
   * @return τ, 0 to 1
   */
  public static double effectiveness(double chordFraction) {
    double theta = Math.acos(2.0 * chordFraction - 1.0);
    return 1.0 - (theta - Math.sin(theta)) / Math.PI;
  }

  /**
   * Its effectiveness.
   *
   * @return τ of a flap over the whole span
   */
  public double effectiveness() {
    return effectiveness(chordFraction);
  }

  /**
   * Its area on a surface, both sides of a mirrored one.
   *
   * @param planform the surface
   * @return the area behind the hinge
   */
  public Area area(Planform planform) {
    Objects.requireNonNull(planform, "planform");
    double sides = planform.isMirrored() ? 2.0 : 1.0;
    double extent = planform.span().si() / sides;
    int n = 400;
    double sum = 0.0;
    double step = (to - from) * extent / n;
    for (int i = 0; i < n; i++) {
      sum += planform.chordAt(Length.metres(from * extent + (i + 0.5) * step)).si();
    }
    return Area.squareMetres(sides * chordFraction * sum * step);
  }

  /**
   * What is unusual about it.
   *
   * @return findings, none for the usual sizes
   */
  public List<Finding> findings() {
    List<Finding> findings = new ArrayList<>();
    boolean aileron = kind == Kind.AILERON;
    Guideline.ofNumber(
            kind.words + " chord fraction",
            aileron ? 0.15 : 0.25,
            aileron ? 0.25 : 0.50,
            "light aircraft and models",
            "A narrow one must be deflected far, a wide one is heavy to move and near to a tail that moves as a whole.",
            SIZES)
        .check(chordFraction)
        .ifPresent(findings::add);
    if (aileron) {
      Guideline.ofNumber(
              "aileron span fraction",
              0.25,
              0.55,
              "light aircraft",
              "Ailerons reach from about 50 to 90 % of the semispan.",
              SIZES)
          .check(to - from)
          .ifPresent(findings::add);
    }
    return Finding.inOrderOfWeight(findings);
  }

  @Override
  public String toString() {
    return String.format(
        Locale.ROOT, "%s, %.0f %% chord from %.0f to %.0f %% span", kind.words, 100 * chordFraction, 100 * from, 100 * to);
  }
}
