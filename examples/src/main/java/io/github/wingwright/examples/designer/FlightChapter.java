// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.drawing.FlightPicture;
import io.github.wingwright.core.drawing.Svg;
import io.github.wingwright.core.performance.Flight;
import io.github.wingwright.core.performance.FlightModel;
import io.github.wingwright.core.performance.GlideGoal;
import io.github.wingwright.core.performance.Hall;
import io.github.wingwright.core.performance.Throw;
import io.github.wingwright.core.performance.ThrowAngles;
import io.github.wingwright.core.performance.ThrowOptimum;
import io.github.wingwright.core.performance.TrackPoint;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.quantity.Time;
import io.github.wingwright.core.report.Block;
import io.github.wingwright.core.report.Chapter;
import io.github.wingwright.stability.design.Design;
import io.github.wingwright.stability.flight.PitchFlight;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The throw of the brief, simulated: as a point, and with pitch where the design has a tail that trims. */
final class FlightChapter {
  private static final String TITLE = "The flight down the hall";

  private final Design design;
  private final BriefUnits units;
  private final LaunchWords launch;
  private final String throwing;
  private final Hall hall;
  private final FlownThrow thrown;
  private final Throw level;
  private final Optional<PitchFlight> pitch;
  private final FlightModel best;
  private final Flight pointFlight;
  private final Flight flight;

  FlightChapter(Design design, GliderBrief brief) {
    this.design = design;
    units = brief.units();
    launch = new LaunchWords(design, units);
    throwing = launch.launched("throw", "launch");
    hall = brief.hall();
    thrown = new FlownThrow(design, hall);
    level = thrown.level();
    pitch = thrown.pitch();
    best = thrown.model();
    pointFlight = thrown.asPoint().thrown(level);
    flight = thrown.flight();
  }

  /** The throw that it tells of. */
  FlownThrow thrown() {
    return thrown;
  }

  Svg picture() {
    List<FlightPicture.Path> paths = new ArrayList<>();
    if (pitch.isPresent()) {
      paths.add(path("with pitch", flight, FlightPicture.Style.MAIN));
      paths.add(path("as a point", pointFlight, FlightPicture.Style.OTHER));
    } else {
      paths.add(path("as a point", flight, FlightPicture.Style.MAIN));
    }
    return new FlightPicture(
            launch.launched("Thrown", "Launched") + " level at "
                + level.speed().format(units.speed(), 3) + " from " + level.height().format(units.distance(), 3),
            units.distance(),
            new FlightPicture.Room(
                hall.wallBehind().map(Length::si).orElse(Double.NEGATIVE_INFINITY),
                hall.wallAhead().map(Length::si).orElse(Double.POSITIVE_INFINITY),
                hall.ceiling().map(Length::si).orElse(Double.POSITIVE_INFINITY)),
            paths)
        .draw();
  }

  private FlightPicture.Path path(String label, Flight flight, FlightPicture.Style style) {
    List<TrackPoint> track = flight.track();
    return new FlightPicture.Path(
        label,
        style == FlightPicture.Style.MAIN && thrown.flies()
            ? flight.distance().format(units.distance(), 3) + " in " + flight.time().format(Time.SECOND, 2)
            : "",
        track.stream().map(TrackPoint::seconds).toList(),
        track.stream().map(TrackPoint::x).toList(),
        track.stream().map(TrackPoint::h).toList(),
        track.stream().map(TrackPoint::stalled).toList(),
        style);
  }

  Chapter chapter() {
    if (!thrown.flies()) {
      return Chapter.of(TITLE, new Block.Paragraph(doesNotFly()));
    }
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Block.Paragraph(
            "The " + throwing + " of the brief, level, " + place()
                + ", flown step by step. What the sheet says is a steady glide from the"
                + " launch height; a launch begins with another speed and another angle, and lands before that has died"
                + " out."));
    if (pitch.isEmpty()) {
      blocks.add(new Block.Paragraph("It is flown as a point that holds its lift, not with pitch: " + thrown.withoutPitch() + "."));
    }
    blocks.add(
        new Block.Table(
            List.of("reckoned as", "distance", "time", "highest", "at its end", "stalls", "phugoid"), rows()));
    blocks.add(
        new Block.Picture(
            picture().element(), "Circles mark the time. The line is dotted where the wing is stalled."));
    List<Finding> findings = best.advice(level);
    if (!findings.isEmpty()) {
      blocks.add(new Block.Findings(findings));
    }
    if (thrown.lasts()) {
      blocks.add(
          new Block.Paragraph("It flies so long that the " + throwing + " matters little: its glide does. So no best " + throwing + " is looked for."));
    } else {
      throwing(blocks);
    }
    blocks.add(
        new Block.Paragraph(
            "Likely values of drag, lift and trim; how deep a stall is, is a rough estimate. Nothing turns or rolls here, and the"
                + " glider leaves " + launch.launched("the hand", "the elastic") + " without nodding."));
    return new Chapter(TITLE, blocks);
  }

  private String doesNotFly() {
    return "It " + launch.verdict(design.throwCheck()) + ": it leaves the " + launch.launched("hand", "elastic") + " at "
        + level.speed().format(units.speed(), 3)
        + " and stalls below " + design.glide().stallSpeed().format(units.speed(), 3)
        + ". What it falls to the floor in is no distance and no time of a flight, so none is told.";
  }

  private void throwing(List<Block> blocks) {
    blocks.add(
        new Block.Paragraph(
            "The best " + throwing + " at this speed, " + (pitch.isPresent() ? "with pitch" : "as a point") + ", for "
                + launch.launched("a hand", "an aim") + " that is true to "
                + Angle.DEGREE.format(Math.toRadians(ThrowOptimum.CARE_DEGREES), 2) + ":"));
    blocks.add(new Block.Points(bestThrows()));
    pitch.ifPresent(model -> blocks.add(new FlightMap(design, units, throwing, level).picture(model)));
  }

  private String place() {
    String ceiling = hall.ceiling().map(c -> c.format(units.distance(), 3) + " high").orElse("");
    return hall.wallAhead()
        .map(wall -> "in a hall " + wall.format(units.distance(), 3) + " long and " + ceiling)
        .orElse(ceiling.isEmpty() ? "in a field without walls and ceiling" : "under a ceiling " + ceiling);
  }

  private List<List<String>> rows() {
    List<List<String>> rows = new ArrayList<>();
    rows.add(
        List.of(
            "steady glide, as on the sheet",
            units.distance().format(design.number("glide.distance_m").value(), 3),
            Time.SECOND.format(design.number("glide.time_s").value(), 2) + " at least sink",
            level.height().format(units.distance(), 3),
            design.glide().bestGlide().speed().format(units.speed(), 2),
            "",
            ""));
    rows.add(row("point that holds the lift of best glide", pointFlight));
    if (pitch.isPresent()) {
      rows.add(row("with pitch, decalage " + pitch.orElseThrow().decalage().format(Angle.DEGREE, 2), flight));
    }
    return rows;
  }

  private List<String> row(String name, Flight flown) {
    return List.of(
        name,
        flown.distance().format(units.distance(), 3),
        flown.time().format(Time.SECOND, 2),
        flown.highest().height().format(units.distance(), 2),
        flown.end().words() + ", " + flown.landingSpeed().format(units.speed(), 2) + ", "
            + flown.landingAngle().format(Angle.DEGREE, 2) + " down",
        flown.firstStall().map(s -> "after " + s.time().format(Time.SECOND, 2)).orElse("no"),
        flown.swings().toString());
  }

  private GlideGoal goal() {
    return design.brief().goal();
  }

  /** What the glider does when it is thrown as the brief says, for the sheet: level, and at the best angle for a hand. */
  List<String> lines() {
    if (!thrown.flies()) {
      return List.of("no: " + launch.verdict(design.throwCheck()));
    }
    List<String> lines = new ArrayList<>();
    lines.add("level at " + level.speed().format(units.speed(), 3) + ": " + told(flight));
    if (!thrown.lasts()) {
      ThrowOptimum care = thrown.angles().careful();
      if (Math.abs(care.angle().degrees()) >= 0.05) {
        lines.add(
            launch.launched("best for a hand, ", "best angle to let it go, ") + angle(care) + ": "
                + told(best.thrown(level.at(care.angle()))));
      }
    }
    return lines;
  }

  private String told(Flight flown) {
    return flown.distance().format(units.distance(), 3) + " in " + flown.time().format(Time.SECOND, 2) + ", "
        + flown.end().words()
        + flown.firstStall().map(s -> ", stalls after " + s.time().format(Time.SECOND, 2)).orElse("");
  }

  private List<String> bestThrows() {
    ThrowAngles angles = thrown.angles();
    ThrowOptimum care = angles.careful();
    List<String> points = new ArrayList<>();
    points.add(
        launch.launched("throw", "let it go") + " at " + angle(care) + ": " + value(care.value()) + ", and no less than " + value(care.nearby())
            + " if it is that much off");
    for (ThrowOptimum optimum : angles.optima()) {
      if (optimum.value() > 0.5 * angles.best().value()) {
        points.add(
            (optimum.equals(angles.best()) ? "the most is " : "also good: ") + value(optimum.value()) + " at " + angle(optimum)
                + (optimum.isDelicate() ? ", but as little as " + value(optimum.nearby()) + " beside it" : ""));
      }
    }
    return points;
  }

  private static String angle(ThrowOptimum optimum) {
    double degrees = optimum.angle().degrees();
    String size = NamedUnit.NUMBER.format(Math.abs(Math.rint(10.0 * degrees) / 10.0), 3) + "°";
    return Math.abs(degrees) < 0.05 ? "level" : size + (degrees > 0.0 ? " up" : " down");
  }

  private String value(double value) {
    return goal() == GlideGoal.DISTANCE ? units.distance().format(value, 3) : Time.SECOND.format(value, 2);
  }
}
