// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.fuselage;

import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.drawing.BodyProfile;
import io.github.wingwright.core.drawing.ContentsPicture;
import io.github.wingwright.core.drawing.ContentsPicture.Item;
import io.github.wingwright.core.drawing.ContentsPicture.Mark;
import io.github.wingwright.core.drawing.ContentsPicture.SightLine;
import io.github.wingwright.core.drawing.CurvePicture;
import io.github.wingwright.core.drawing.DragCurvePicture;
import io.github.wingwright.core.drawing.RegionPicture;
import io.github.wingwright.core.drawing.Svg;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.sizing.Cabin;
import io.github.wingwright.core.sizing.Contents;
import io.github.wingwright.core.sizing.DragSurvey;
import io.github.wingwright.core.sizing.Thing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The pictures of a study. */
final class FuselagePictures {
  private final BodyStudy study;
  private final FuselageBrief brief;
  private final Units units;
  private final Fuselage body;

  FuselagePictures(BodyStudy study) {
    this.study = study;
    this.brief = study.brief();
    this.units = brief.units();
    this.body = study.body();
  }

  /** The region over length and diameter. */
  Svg region() {
    List<RegionPicture.Mark> marks = new ArrayList<>();
    BodyStudy.Alternative shown = study.all().get(0);
    marks.add(RegionPicture.Mark.choice(shown.label(), body.length().si(), body.diameter().si()));
    for (BodyStudy.Alternative one : study.all().subList(1, study.all().size())) {
      if (!BodyStudy.sameSize(one.body(), body)) {
        marks.add(RegionPicture.Mark.best(one.label(), one.body().length().si(), one.body().diameter().si()));
      }
    }
    return new RegionPicture("Length and diameter: who leaves what", study.region(), marks).draw();
  }

  /** Drag against diameter, with length, volume or section held. */
  Svg drag() {
    List<DragCurvePicture.Curve> curves = new ArrayList<>();
    DragSurvey length = study.dragSurveys().get(0);
    DragSurvey volume = study.dragSurveys().get(1);
    curves.add(curve("at this length", length));
    curves.add(curve("at this volume", volume));
    return new DragCurvePicture(
            "Drag of the body against its diameter",
            "friction " + brief.flow().friction() + "; form factor of " + brief.flow().form(),
            "diameter in " + units.length().symbol(),
            "drag area in " + units.dragArea().symbol(),
            curves,
            List.of(
                new CurvePicture.Point(
                    study.region().isEmpty() ? "shown" : "chosen",
                    body.diameter().in(units.length()),
                    units.dragArea().fromSi(study.dragArea().value()))))
        .draw();
  }

  private DragCurvePicture.Curve curve(String label, DragSurvey survey) {
    // Around the choice; far away the curves are steep and say nothing about it.
    double d = body.diameter().si();
    Interval fit = brief.drag().fit();
    boolean fitted = fit.contains(body.finenessRatio());
    List<DragSurvey.Point> near =
        survey.points().stream()
            .filter(p -> p.diameter() > 0.5 * d && p.diameter() < 1.8 * d)
            .filter(p -> !fitted || fit.contains(p.fineness()))
            .toList();
    List<Double> x = near.stream().map(p -> units.length().fromSi(p.diameter())).toList();
    List<Double> y = near.stream().map(p -> units.dragArea().fromSi(p.dragArea())).toList();
    DragSurvey.Point least = near.get(0);
    for (DragSurvey.Point p : near) {
      least = p.dragArea() < least.dragArea() ? p : least;
    }
    boolean inside =
        !survey.atEnd() && survey.best().diameter() < 1.8 * d && survey.best().diameter() > 0.5 * d;
    DragSurvey.Point best = inside ? survey.best() : least;
    double most = 1.01 * best.dragArea();
    double low =
        near.stream()
            .filter(p -> p.dragArea() <= most)
            .mapToDouble(DragSurvey.Point::diameter)
            .min()
            .orElse(best.diameter());
    double high =
        near.stream()
            .filter(p -> p.dragArea() <= most)
            .mapToDouble(DragSurvey.Point::diameter)
            .max()
            .orElse(best.diameter());
    Interval within = Interval.between(units.length().fromSi(low), units.length().fromSi(high));
    DragCurvePicture.Shape shape =
        !inside
            ? DragCurvePicture.Shape.AT_END
            : DragChapter.isFlat(survey)
                ? DragCurvePicture.Shape.FLAT
                : DragCurvePicture.Shape.SHARP;
    return new DragCurvePicture.Curve(
        label,
        x,
        y,
        new DragCurvePicture.Least(
            units.length().fromSi(best.diameter()),
            units.dragArea().fromSi(best.dragArea()),
            within,
            shape));
  }

  /** The body from the side with what is inside and the lines that it is judged by. */
  Svg side() {
    List<Item> items = new ArrayList<>();
    List<Mark> marks = new ArrayList<>();
    List<SightLine> lines = new ArrayList<>();
    Length wall = brief.inside().map(Inside::wall).orElse(brief.shell().wall());
    study.placing().ifPresent(p -> p.places().forEach(place -> items.add(item(place))));
    study
        .placing()
        .ifPresent(
            p ->
                marks.add(
                    Mark.centreOfGravity(
                        "contents", p.centreOfGravity(), level(p.centreOfGravity()))));
    vision(lines, marks);
    wheels(lines, items);
    Length quarter = study.stationOf(brief.wing().at());
    Length wingHeight =
        level(quarter).plus(body.heightAt(quarter).times(0.5 * brief.wing().heightShare()));
    marks.add(Mark.point("wing, quarter chord", quarter, wingHeight));
    if (brief.inside().isEmpty()) {
      // Where nothing else fills the body, the wing that goes through it is what the picture is about.
      Length chord = brief.wing().rootChord();
      items.add(
          Item.box("wing root", quarter.minus(chord.times(0.25)), wingHeight, chord, brief.wing().thickness()));
    }
    return new ContentsPicture(
            brief.title(), BodyProfile.of(body).withWall(wall), items, lines, marks, units.length())
        .draw();
  }

  private Length level(Length x) {
    return body.centreHeightAt(x);
  }

  private Item item(Contents.Place place) {
    Thing thing = place.thing();
    Length clearance = brief.inside().orElseThrow().clearance();
    Length middle = level(place.front().plus(thing.length().times(0.5)));
    Cabin cabin = brief.inside().orElseThrow().cabins().get(thing.name());
    if (cabin != null) {
      // The circle around the row rests on the wall; the floor lies where the eye's height says.
      Length top = middle.plus(thing.height().times(0.5));
      Length floor = top.minus(cabin.eyeBelowRoof()).plus(Length.inches(10)).minus(cabin.height());
      // Half of the room around the eye is head, the other half is left to move.
      Length sitting = cabin.height().minus(Length.inches(5));
      return Item.seat(thing.name(), place.front(), floor, thing.length(), sitting)
          .withClearance(clearance);
    }
    return (switch (thing.form()) {
          case BOX -> Item.box(thing.name(), place.front(), middle, thing.length(), thing.height());
          case CYLINDER ->
              Item.cylinder(thing.name(), place.front(), middle, thing.length(), thing.height());
          case SPHERE -> Item.sphere(thing.name(), place.front(), middle, thing.length());
        })
        .withClearance(clearance);
  }

  /** Where the pilot's eye lies, if there is a pilot who fits. */
  Optional<Length[]> eye() {
    if (brief.pilot().isEmpty()
        || study.placing().isEmpty()
        || brief.asked().overNose().isEmpty()) {
      return Optional.empty();
    }
    FuselageBrief.Pilot pilot = brief.pilot().get();
    return study.placing().get().places().stream()
        .filter(p -> p.thing().name().equals(pilot.seat()))
        .findFirst()
        .map(
            seat ->
                new Length[] {
                  seat.front().plus(pilot.eyeBehindFront()),
                  roof().minus(LayoutRules.eyeBelowTop(brief.inside().orElseThrow(), pilot))
                });
  }

  /** Height of the top of the greatest section. */
  Length roof() {
    Length x = body.greatestSectionX();
    return level(x).plus(body.heightAt(x).times(0.5));
  }

  /** Height of the ground below the reference line. */
  Optional<Length> ground() {
    Length x = body.greatestSectionX();
    return brief.wheels().map(w -> level(x).minus(body.heightAt(x).times(0.5)).minus(w.strut()));
  }

  private void vision(List<SightLine> lines, List<Mark> marks) {
    eye()
        .ifPresent(
            at -> {
              Angle down = brief.asked().overNose().orElseThrow();
              marks.add(Mark.point("eye", at[0], at[1]));
              lines.add(
                  SightLine.vision(
                      down.format(Angle.DEGREE, 2) + " over the nose",
                      at[0],
                      at[1],
                      down,
                      body.length().times(-0.06)));
            });
  }

  private void wheels(List<SightLine> lines, List<Item> items) {
    if (ground().isEmpty()) {
      return;
    }
    Length ground = ground().get();
    FuselageBrief.Wheels wheels = brief.wheels().orElseThrow();
    Length axle = study.stationOf(wheels.at());
    items.add(Item.wheel("wheel", axle, ground, wheels.diameter()));
    lines.add(
        SightLine.ground("ground", ground, body.length().times(0.02), body.length().times(1.04)));
    brief
        .asked()
        .rotation()
        .ifPresent(
            angle ->
                lines.add(
                    SightLine.rotation(
                        "rotation " + angle.format(Angle.DEGREE, 3),
                        axle,
                        ground,
                        angle,
                        body.length().times(1.03))));
  }
}
