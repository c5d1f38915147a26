// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.performance;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.core.quantity.Time;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a flight tells its thrower, in words. */
final class FlightFindings {
  private static final Source SIMULATED = Source.library("flight simulated step by step");

  /** A side-arm launch that reaches 90 m has left the hand at 42 m/s or more, by energy alone. */
  private static final double FASTEST_HAND = 45.0;

  private FlightFindings() {}

  static List<Finding> of(Flight flight) {
    List<Finding> findings = new ArrayList<>();
    flight.firstStall().ifPresent(stall -> findings.add(stall(flight, stall)));
    if (flight.stalledTime().si() > 0.0) {
      findings.add(
          finding(
              Severity.NOTE,
              "flight after a stall",
              "From the stall on its path is a rough estimate: within fifteen degrees behind the stall a thick"
                  + " section may have half the lift and half again the drag that are reckoned here, a thin plate up to a sixth more of both. That it stalls is sure, how far it gets then is not."));
    }
    manner(flight).ifPresent(findings::add);
    if (flight.startSpeed() > FASTEST_HAND) {
      findings.add(
          finding(
              Severity.CAUTION,
              "launch speed",
              "Nothing of this kind leaves a hand at " + Speed.METRE_PER_SECOND.format(flight.startSpeed(), 3)
                  + ": the best launches by hand have about 40 m/s. Strength, flutter and, from 100 m/s on, the compression of"
                  + " the air are left out here."));
    }
    String where = metres(flight.distance()) + " away, after " + seconds(flight.time());
    switch (flight.end()) {
      case CEILING ->
          findings.add(
              finding(
                  Severity.CAUTION,
                  "ceiling",
                  "It hits the ceiling " + where + ". Launch it slower or lower, or give it less decalage or up elevator."));
      case WALL_AHEAD ->
          findings.add(
              finding(
                  Severity.NOTE,
                  "wall",
                  "It reaches the wall ahead after " + seconds(flight.time()) + ", " + metres(flight.track().get(flight.track().size() - 1).height())
                      + " above the floor, at " + flight.landingSpeed().format(Speed.METRE_PER_SECOND, 3)
                      + ". Launch it slower, or along the diagonal of the hall."));
      case WALL_BEHIND ->
          findings.add(
              finding(
                  Severity.SERIOUS,
                  "wall",
                  "It loops back into the wall behind its launch " + where + ". Launch it much slower, or give it less decalage or up elevator."));
      case TIME ->
          findings.add(
              finding(Severity.NOTE, "flight time", "It still flies after " + seconds(flight.time()) + "; the calculation ends there."));
      case FLOOR -> landing(flight, findings);
    }
    return Finding.inOrderOfWeight(findings);
  }

  /** What a distance alone would hide. */
  private static Optional<Finding> manner(Flight flight) {
    return switch (flight.manner()) {
      case TURNS_OVER ->
          Optional.of(
              finding(
                  Severity.CAUTION,
                  "turning over",
                  "It goes upside down on its way. Launch it slower or lower, or move the centre of gravity forward."));
      case DIVES ->
          Optional.of(
              finding(
                  Severity.CAUTION,
                  "dive",
                  "It comes down " + flight.landingAngle().format(Angle.DEGREE, 2) + " steep at "
                      + flight.landingSpeed().format(Speed.METRE_PER_SECOND, 3)
                      + ". Launch it less steeply, or give it more decalage or up elevator."));
      case MEETS_CEILING, MEETS_WALL, STALLS, GLIDES -> Optional.empty();
    };
  }

  private static Finding stall(Flight flight, TrackPoint stall) {
    boolean always = flight.stalledTime().si() > 0.9 * flight.time().si();
    String message =
        always
            ? "It is stalled nearly all the way: it is trimmed for more lift than the wing can give. Give it less decalage,"
                + " or move the centre of gravity forward."
            : "It stalls " + seconds(stall.time()) + " after its launch, " + metres(stall.distance()) + " away and "
                + metres(stall.height()) + " above the floor, for " + seconds(flight.stalledTime())
                + " in all. Launch it slower or lower, or move the centre of gravity forward.";
    return finding(always ? Severity.SERIOUS : Severity.CAUTION, "stall", message);
  }

  private static void landing(Flight flight, List<Finding> findings) {
    double glide = flight.glideSpeed();
    if (!Double.isNaN(glide) && !flight.settles()) {
      findings.add(
          finding(
              Severity.NOTE,
              "settling",
              "It would not settle before landing: it lands at "
                  + flight.landingSpeed().format(Speed.METRE_PER_SECOND, 3)
                  + ", its steady glide has "
                  + Speed.METRE_PER_SECOND.format(glide, 3)
                  + ". Launch it nearer to the speed and the angle of the glide, or from higher up."));
    }
  }

  private static Finding finding(Severity severity, String subject, String message) {
    return Finding.of(severity, subject, message, SIMULATED);
  }

  private static String seconds(Time time) {
    return time.format(Time.SECOND, 2);
  }

  private static String metres(Length length) {
    return length.format(Length.METRE, 2);
  }
}
