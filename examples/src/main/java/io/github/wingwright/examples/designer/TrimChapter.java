// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.QuantityBand;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Workings;
import io.github.wingwright.core.drawing.CurvePicture;
import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.performance.GlidePoint;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Force;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.core.report.Block;
import io.github.wingwright.core.report.Chapter;
import io.github.wingwright.stability.ControlSurface;
import io.github.wingwright.stability.ElevatorRange;
import io.github.wingwright.stability.PitchModel;
import io.github.wingwright.stability.Trim;
import io.github.wingwright.stability.TrimmedPolar;
import io.github.wingwright.stability.design.Design;
import java.util.ArrayList;
import java.util.List;

/** How wing and tail are set for each speed, what the tail carries, and what trim costs. */
final class TrimChapter {
  private static final int POINTS = 41;
  private static final Angle TAB_TRAVEL = Angle.degrees(4);

  private final Design design;
  private final BriefUnits units;
  private final TrimmedPolar polar;
  private final Trim built;

  TrimChapter(Design design, BriefUnits units) {
    this.design = design;
    this.units = units;
    this.polar = design.trimmedPolar();
    this.built = design.trim();
    if (!polar.lifts().contains(built.liftCoefficient())) {
      throw new IllegalStateException(
          polar.findings().isEmpty() ? "the tail stalls first" : polar.findings().get(0).message());
    }
  }

  Chapter chapter() {
    List<Block> blocks = new ArrayList<>();
    QuantityBand<Angle> decalage = built.decalageBand();
    blocks.add(
        new Block.Paragraph(
            "A glider without a pilot flies at the one speed for which wing and tail are set. The decalage, wing over tail, is "
                + degrees(built.decalage().si())
                + " for "
                + speed(polar.at(built.liftCoefficient()).speed())
                + ", and known only between "
                + degrees(decalage.low().si())
                + " and "
                + degrees(decalage.high().si())
                + ": shims and test glides find it."));
    blocks.add(
        new Block.Table(
            List.of(
                "speed",
                "C_L",
                "decalage",
                "tail incidence",
                "tail C_L",
                "tail lift",
                "trim tab",
                "L/D"),
            rows()));
    blocks.add(
        new Block.Paragraph(
            steady()
                + "Incidences are against the fuselage's axis, leading edge up positive, with the"
                + " wing as it is set. Trim tab: how far the rear "
                + number(100.0 * tab().chordFraction(), 2)
                + " % of a tail set for the trimmed glide must be bent, trailing edge down positive, to hold the speed of the row."));
    blocks.add(
        new Block.Picture(
            picture(),
            "Drag against lift with the tail holding the trim, and without: wing and friction alone. The dashed line from the origin touches the polar at the best glide."));
    TrimmedPolar.Point best = polar.bestGlide();
    GlidePoint untrimmed = design.glide().bestGlide();
    blocks.add(
        new Block.Table(
            List.of("", "L/D", "speed", "sink rate", "C_L", "more drag by trim"),
            List.of(
                row(
                    "best glide, trimmed",
                    best.liftToDrag(),
                    best.speed(),
                    best.sinkRate(),
                    best.liftCoefficient(),
                    share(best)),
                row(
                    "best glide, tail only rubbing",
                    untrimmed.liftToDrag(),
                    untrimmed.speed(),
                    untrimmed.sinkRate(),
                    untrimmed.liftCoefficient(),
                    ""),
                least())));
    blocks.add(new Block.Points(List.of(polar.price().toString(), tabRange())));
    List<Finding> findings = new ArrayList<>(built.findings());
    findings.addAll(polar.findings());
    blocks.add(new Block.Findings(findings));
    List<Step> steps = new ArrayList<>(built.workings().steps());
    steps.addAll(elevator().workings().steps());
    blocks.add(new Block.Steps(Workings.of(steps).computedBeyond(design.workings())));
    return new Chapter("Trim, and what it costs", blocks);
  }

  private ControlSurface tab() {
    return ControlSurface.usual(ControlSurface.Kind.ELEVATOR, design.brief().aircraftClass());
  }

  private ElevatorRange elevator() {
    Airframe frame = design.aircraft().airframe();
    List<Tail> tails =
        frame.tails().stream()
            .map(t -> t.role() == Tail.Role.HORIZONTAL ? t.withIncidence(built.tailIncidence()) : t)
            .toList();
    PitchModel set =
        design.pitchModel().withAirframe(new Airframe(frame.fuselage(), frame.wing(), tails));
    return ElevatorRange.of(
        set, cg(), tab(), TAB_TRAVEL, TAB_TRAVEL, design.aircraft().mass(), design.glide().air());
  }

  private String tabRange() {
    ElevatorRange range = elevator();
    return "bent by "
        + TAB_TRAVEL.format(Angle.DEGREE, 2)
        + " up or down the tab holds "
        + speed(range.slowest())
        + " to "
        + speed(range.fastest());
  }

  private Length cg() {
    return design.aircraft().centreOfGravity().x();
  }

  private List<List<String>> rows() {
    List<List<String>> rows = new ArrayList<>();
    double top = Math.floor(10.0 * polar.lifts().upper()) / 10.0;
    double effect = tab().effectiveness();
    for (double lift = 0.2; lift <= top + 1e-9; lift += 0.1) {
      TrimmedPolar.Point point = polar.at(lift);
      Trim trim = design.pitchModel().trim(cg(), lift);
      double q =
          0.5 * design.glide().air().density().si() * point.speed().si() * point.speed().si();
      double tailForce =
          point.tailLift() * q * design.aircraft().airframe().wing().planform().area().si();
      rows.add(
          List.of(
              speed(point.speed()),
              number(lift, 2),
              degrees(trim.decalage().si()),
              degrees(trim.tailIncidence().si()),
              number(point.tailLiftCoefficient(), 2),
              force(tailForce),
              degrees((built.decalage().si() - trim.decalage().si()) / effect),
              number(point.liftToDrag(), 3)));
    }
    return rows;
  }

  /** A force in the weight of what the reader can put onto the tail. */
  private String force(double newtons) {
    return units.mass().format(newtons / 9.80665, 2).replace(Mass.GRAM.symbol(), "g")
        + " weight ("
        + Force.newtons(newtons).format(Force.NEWTON, 2)
        + ")";
  }

  private String picture() {
    List<TrimmedPolar.Point> points = polar.points(POINTS);
    List<GlidePoint> bare =
        design.glide().polar(POINTS).stream()
            .filter(p -> p.liftCoefficient() >= polar.lifts().lower())
            .toList();
    TrimmedPolar.Point best = polar.bestGlide();
    TrimmedPolar.Point sink = polar.leastSink();
    TrimmedPolar.Point trim = polar.at(built.liftCoefficient());
    double reach = polar.lifts().upper() / best.liftToDrag();
    return new CurvePicture(
            "Trimmed polar",
            "drag coefficient",
            "lift coefficient",
            List.of(
                new CurvePicture.Curve(
                    "",
                    List.of(0.0, reach),
                    List.of(0.0, polar.lifts().upper()),
                    CurvePicture.Style.EDGE),
                new CurvePicture.Curve(
                    "tail only rubbing",
                    bare.stream().map(GlidePoint::dragCoefficient).toList(),
                    bare.stream().map(GlidePoint::liftCoefficient).toList(),
                    CurvePicture.Style.OTHER),
                new CurvePicture.Curve(
                    "trimmed",
                    points.stream().map(TrimmedPolar.Point::dragCoefficient).toList(),
                    points.stream().map(TrimmedPolar.Point::liftCoefficient).toList(),
                    CurvePicture.Style.MAIN)),
            List.of(
                mark("best glide, " + speed(best.speed()), best),
                mark("least sink, " + speed(sink.speed()), sink),
                mark("as set, " + speed(trim.speed()), trim)))
        .draw()
        .element();
  }

  private static CurvePicture.Point mark(String label, TrimmedPolar.Point point) {
    return new CurvePicture.Point(label, point.dragCoefficient(), point.liftCoefficient());
  }

  private List<String> least() {
    TrimmedPolar.Point sink = polar.leastSink();
    return row(
        "least sink, trimmed",
        sink.liftToDrag(),
        sink.speed(),
        sink.sinkRate(),
        sink.liftCoefficient(),
        share(sink));
  }

  private List<String> row(
      String name, double ratio, Speed speed, Speed sink, double lift, String trim) {
    return List.of(
        name, number(ratio, 3), speed(speed), sink.format(units.speed(), 2), number(lift, 2), trim);
  }

  /** How much more it drags than a wing that carries all of the same lift with a tail that only rubs. */
  private String share(TrimmedPolar.Point point) {
    double bare =
        design
            .glide()
            .drag()
            .likelyCoefficient(
                point.liftCoefficient(),
                point.speed().si(),
                design.glide().air().kinematicViscosity().si());
    return number(100.0 * (point.dragCoefficient() / bare - 1.0), 2) + " %";
  }

  /** Where the centre of gravity lies close to the wing's aerodynamic centre, the tail's coefficient hardly changes. */
  private String steady() {
    double slow = polar.at(polar.lifts().upper()).tailLiftCoefficient();
    double quick = polar.at(0.2).tailLiftCoefficient();
    String sign = slow < 0.0 ? "The tail pushes down. " : "The tail lifts. ";
    return Math.abs(slow - quick) < 0.05
        ? sign
            + "Its lift coefficient hardly changes with speed, because the centre of gravity lies close to the aerodynamic centre of wing"
            + " and body: the tail then only balances the moment of the wing's camber. "
        : sign;
  }

  private String speed(Speed speed) {
    return speed.format(units.speed(), 3);
  }

  private static String degrees(double radians) {
    return Angle.DEGREE.format(radians, 2);
  }

  private static String number(double value, int digits) {
    return NamedUnit.NUMBER.format(value, digits);
  }
}
