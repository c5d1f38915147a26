// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import io.github.wingwright.core.drawing.CurvePicture;
import io.github.wingwright.core.drawing.MapPicture;
import io.github.wingwright.core.performance.FlightManner;
import io.github.wingwright.core.performance.GlideGoal;
import io.github.wingwright.core.performance.RangeMap;
import io.github.wingwright.core.performance.Throw;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.report.Block;
import io.github.wingwright.stability.design.Design;
import io.github.wingwright.stability.flight.PitchFlight;
import java.util.List;
import java.util.stream.IntStream;

/** How far or how long level launches go, over speed and decalage, with what was no glide hatched. */
final class FlightMap {
  private static final int COLUMNS = 40;
  private static final int ROWS = 24;

  /** How far the map goes to either side of the decalage of the design. */
  private static final double DECALAGES = Math.toRadians(5.0);

  /** The kinds of flight that the map tells from a glide; a wall does not make one less of it. */
  private static final List<FlightManner> HATCHED =
      List.of(FlightManner.STALLS, FlightManner.DIVES, FlightManner.TURNS_OVER, FlightManner.MEETS_CEILING);

  private final Design design;
  private final BriefUnits units;
  private final String throwing;
  private final Throw level;

  FlightMap(Design design, BriefUnits units, String throwing, Throw level) {
    this.design = design;
    this.units = units;
    this.throwing = throwing;
    this.level = level;
  }

  Block.Picture picture(PitchFlight model) {
    return new Block.Picture(
        drawn(model).draw().element(),
        "Each cell is one flight with pitch; the numbers are some of the values. What is hatched is no plain glide, as the key says;"
            + " a dive comes down more steeply than " + NamedUnit.NUMBER.format(FlightManner.DIVE_DEGREES, 2)
            + "°. A flight that meets ceiling or wall counts up to there. More decalage lifts more and flies slower.");
  }

  private MapPicture drawn(PitchFlight model) {
    double stall = design.glide().stallSpeed().si();
    double thrown = level.speed().si();
    double[] speeds = RangeMap.evenly(0.8 * Math.min(stall, thrown), 1.8 * Math.max(stall, thrown), COLUMNS);
    double set = model.decalage().si();
    double[] decalages = RangeMap.evenly(set - DECALAGES, set + DECALAGES, ROWS);
    List<RangeMap> maps =
        RangeMap.several(speeds, decalages, 4, setting -> {
          PitchFlight row = model.withDecalage(Angle.radians(setting));
          return (speed, into) -> row.fly(speed, 0.0, level.height().si(), into);
        });
    boolean distance = design.brief().goal() == GlideGoal.DISTANCE;
    RangeMap map = maps.get(distance ? 0 : 1);
    double per = distance ? units.distance().fromSi(1.0) : 1.0;
    MapPicture picture =
        new MapPicture(
            (distance ? "Distance" : "Time") + " of a level " + throwing,
            throwing + " speed in " + units.speed().symbol(),
            "decalage in °",
            distance ? "distance in " + units.distance().symbol() : "time in s",
            map.speeds().stream().map(v -> units.speed().fromSi(v)).toList(),
            map.settings().stream().map(Math::toDegrees).toList(),
            IntStream.range(0, ROWS).mapToObj(i -> map.row(i).stream().map(v -> per * v).toList()).toList(),
            List.of(new CurvePicture.Point("the " + throwing + " of the brief", level.speed().in(units.speed()), Math.toDegrees(set))));
    return hatched(picture, maps.get(3));
  }

  private static MapPicture hatched(MapPicture plain, RangeMap manners) {
    MapPicture picture = plain;
    for (FlightManner manner : HATCHED) {
      List<List<Boolean>> cells =
          IntStream.range(0, ROWS)
              .mapToObj(i -> manners.row(i).stream().map(m -> FlightManner.numbered(m) == manner).toList())
              .toList();
      if (cells.stream().anyMatch(row -> row.contains(true))) {
        picture = picture.withHatching(cells, manner == FlightManner.MEETS_CEILING ? "ceiling" : manner.words());
      }
    }
    return picture;
  }
}
