// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.flighttest;

import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.mass.Ballast;
import io.github.wingwright.core.performance.GlidePoint;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.stability.ControlSurface;
import io.github.wingwright.stability.LateralStability;
import io.github.wingwright.stability.design.Design;
import java.util.Optional;

/**
 * The amounts of trim advice, from the derivatives of the design itself.
 *
 * <p><b>Pitch.</b> With i_t(x, C_L) the incidence of the tail at which the design trims C_L with its centre of gravity at x, a
 * glider that flies at C_L,1 and shall fly at C_L,2 needs the tail turned by i_t(x, C_L,2) − i_t(x, C_L,1), or its centre of
 * gravity moved to the x′ at which i_t(x′, C_L,2) = i_t(x, C_L,1). Because i_t is a straight line in x, two values of it give
 * x′, and the balance of moments the mass on the nose.
 *
 * <p><b>Turns.</b> In a turn of the radius R the air meets the fin, l_v behind the centre of gravity, at an angle of l_v/R:
 * with the yaw rate r̂ = b/(2·R), the damping C_nr = 2·(l_v/b)²·C_Yβ of the fin and its power C_nδ = (l_v/b)·C_Yβ,
 *
 * <pre>{@code δ = C_nr·r̂/C_nδ = l_v/R}</pre>
 *
 * <p>A fin that is bent by as much lets the glider turn so without sideslip. A glider that turns by itself is bent somewhere
 * by about as much; the same angle the other way straightens it.
 */
final class Trimming {
  /** Of a glider whose turn was not measured. */
  private static final double USUAL_RADIUS = 6.0;

  /** Below this margin the nose weight is not taken out. */
  private static final double LEAST_MARGIN = 0.05;

  private static final double TAB = 0.25;

  /** A spiral shall be a fifth beyond neutral (choice of this library). */
  private static final double BEYOND_NEUTRAL = 1.2;

  private final Design design;
  private final double place;
  private final double mass;
  private final double target;

  Trimming(Design design, double centreOfGravity, double mass) {
    this.design = design;
    this.place = centreOfGravity;
    this.mass = mass;
    this.target = design.trim().liftCoefficient();
  }

  /** What to do about something seen. */
  TrimAdvice advice(Behaviour behaviour, FlightTest flight, Optional<Double> flownLift) {
    return switch (behaviour) {
      case STALLS -> pitch(behaviour, design.glide().usableLift());
      case DIVES -> pitch(behaviour, Math.min(0.8 * target, flownLift.orElse(0.5 * target)));
      case BOUNCES -> bounces();
      case TURNS_LEFT, TURNS_RIGHT -> turn(behaviour, flight.turnRadius().map(Measured::value).orElse(USUAL_RADIUS));
      case SPIRALS -> spiral();
    };
  }

  private double incidence(double x, double lift) {
    return design.pitchModel().trim(Length.metres(x), lift).tailIncidence().si();
  }

  /** From the lift that is flown to that which the design trims at. */
  private TrimAdvice pitch(Behaviour behaviour, double flown) {
    double set = incidence(place, flown);
    double turn = incidence(place, target) - set;
    double there = moved(set);
    double noseX = design.aircraft().masses().item("ballast").map(i -> i.centreOfGravity().x().si())
        .orElse(0.25 * design.aircraft().airframe().fuselage().diameter().si());
    double nose = Ballast.ballastMass(mass, place, there, noseX);
    double chord = design.aircraft().airframe().wing().planform().meanAerodynamicChord().si();
    double margin = (design.neutralPoint().x().si() - there) / chord;
    double inNose = design.aircraft().masses().item("ballast").map(i -> i.mass().si()).orElse(0.0);
    boolean byNose = there > noseX && margin >= LEAST_MARGIN && nose > -inNose;
    Angle angle = Angle.radians(turn);
    String tail =
        "turn the tailplane's leading edge "
            + (turn > 0.0 ? "up" : "down")
            + " by "
            + angle.magnitude().format(Angle.DEGREE, 2)
            + " (a shim of "
            + Length.MILLIMETRE.format(Math.abs(turn) * tailChord(), 2)
            + " under its "
            + (turn > 0.0 ? "leading" : "trailing")
            + " edge)";
    String weight =
        (nose > 0.0 ? "add " : "take ")
            + Mass.GRAM.format(Math.abs(nose), 2)
            + (nose > 0.0 ? " to the nose" : " out of the nose");
    String words =
        capital(behaviour.words())
            + ": it flies at C_L "
            + NamedUnit.NUMBER.format(flown, 2)
            + " and shall fly at "
            + NamedUnit.NUMBER.format(target, 2)
            + ". "
            + (byNose ? capital(weight) + ", or " + tail : capital(tail))
            + (byNose ? ". The nose makes it steadier with the same setting." : "; the nose is no remedy here: the margin would be "
                + NamedUnit.NUMBER.format(margin, 2) + ".");
    if (behaviour == Behaviour.DIVES && byNose) {
      words = words.replace(" The nose makes it steadier with the same setting.", " Try the tailplane first: it keeps the margin.");
    }
    return new TrimAdvice(behaviour, byNose ? Mass.kilograms(nose) : null, angle, null, words);
  }

  /** Where the centre of gravity must be for the target, with the tail as it is set. */
  private double moved(double set) {
    double step = 1e-3;
    double here = incidence(place, target);
    double slope = (incidence(place + step, target) - here) / step;
    return place + (set - here) / slope;
  }

  private double tailChord() {
    return design.aircraft().airframe().horizontalTail().map(t -> t.planform().rootChord().si()).orElse(0.0);
  }

  private TrimAdvice bounces() {
    GlidePoint steady = design.glide().at(target);
    String words =
        capital(Behaviour.BOUNCES.words())
            + ": it was launched at another speed than it is trimmed for. Launch it at "
            + steady.speed().format(Speed.METRE_PER_SECOND, 2)
            + ", nose down by "
            + Angle.DEGREE.format(Math.atan(1.0 / steady.liftToDrag()), 2)
            + ".";
    return new TrimAdvice(Behaviour.BOUNCES, null, null, null, words);
  }

  private TrimAdvice turn(Behaviour behaviour, double radius) {
    Airframe airframe = design.aircraft().airframe();
    Optional<Tail> fin = airframe.verticalTail();
    boolean left = behaviour == Behaviour.TURNS_LEFT;
    if (fin.isEmpty()) {
      return new TrimAdvice(
          behaviour, null, null, null, capital(behaviour.words()) + ": look for a twisted wing, and warp it straight.");
    }
    double angle = (fin.get().quarterChordX().si() - place) / radius;
    Angle signed = Angle.radians(left ? angle : -angle);
    double tab = angle / ControlSurface.effectiveness(TAB);
    String words =
        capital(behaviour.words())
            + " with a radius of about "
            + Length.METRE.format(radius, 2)
            + ": look for a twisted wing first. Else turn the fin's trailing edge to the "
            + (left ? "right" : "left")
            + " by "
            + Angle.DEGREE.format(angle, 2)
            + ", or bend its rear quarter by "
            + Angle.DEGREE.format(tab, 2)
            + ".";
    return new TrimAdvice(behaviour, null, null, signed, words);
  }

  private TrimAdvice spiral() {
    String words = capital(Behaviour.SPIRALS.words()) + ": " + dihedral();
    return new TrimAdvice(Behaviour.SPIRALS, null, null, null, words);
  }

  private String dihedral() {
    Airframe airframe = design.aircraft().airframe();
    double now = airframe.wing().planform().equivalentDihedral().si();
    double arm = airframe.verticalTail().map(t -> t.armFrom(airframe.wing()).si()).orElse(Double.NaN);
    double span = airframe.wing().planform().span().si();
    double needed = BEYOND_NEUTRAL * LateralStability.dihedral(LateralStability.NEUTRAL, target, span, arm);
    if (!(needed > now)) {
      return "by the rule it is well stable as trimmed, with "
          + Angle.DEGREE.format(now, 3)
          + " of dihedral: look for a twisted wing or a fin that is not straight.";
    }
    return "give it "
        + Angle.DEGREE.format(needed, 3)
        + " of dihedral, "
        + Angle.DEGREE.format(needed - now, 2)
        + " more, or a fin smaller by "
        + NamedUnit.NUMBER.format(100.0 * (1.0 - now / needed), 2)
        + " %.";
  }

  private static String capital(String words) {
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }
}
