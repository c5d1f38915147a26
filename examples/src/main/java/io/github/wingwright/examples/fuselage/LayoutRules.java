// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.fuselage;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.core.sizing.BodyLayout;
import io.github.wingwright.core.sizing.Considerations;
import io.github.wingwright.examples.brief.Field;
import java.util.List;
import java.util.Optional;

/** Reads the considerations that speak of where things lie: the wing, the pilot's eye, wheels, tail and balance. */
final class LayoutRules {
  private final FuselageBrief.WingPlace wing;
  private final Optional<Inside> inside;
  private final Optional<FuselageBrief.Pilot> pilot;
  private final Optional<FuselageBrief.Wheels> wheels;

  private static final Formula IN_RADIANS =
      Formula.named("angle in radians")
          .gives("α", Angle.RADIAN)
          .as("α_d·π / 180")
          .where("α_d", "the angle in degrees", -360, 360)
          .from(Source.DEFINITION)
          .computedBy(LayoutRules::inRadians);

  private final List<Step> known;
  private Optional<Angle> overNose = Optional.empty();
  private Optional<Angle> rotation = Optional.empty();

  LayoutRules(
      FuselageBrief.WingPlace wing,
      Optional<Inside> inside,
      Optional<FuselageBrief.Pilot> pilot,
      Optional<FuselageBrief.Wheels> wheels,
      List<Step> known) {
    this.known = known;
    this.wing = wing;
    this.inside = inside;
    this.pilot = pilot;
    this.wheels = wheels;
  }

  /** Angle at which the pilot must see over the nose, once that was read. */
  Optional<Angle> overNose() {
    return overNose;
  }

  /** Angle by which the aeroplane rotates, once that was read. */
  Optional<Angle> rotation() {
    return rotation;
  }

  Rule wingThrough(Field field) {
    Length wall = Rule.length(field, "wall");
    return Rule.of(
        BodyLayout.carriesWingThrough(wing.thickness(), Math.abs(wing.heightShare()), wall),
        "(1 − |z|)·d ≥ t + 2·w, z the height of the wing's middle over the radius");
  }

  Rule saddle(Field field) {
    Length travel = Rule.length(field, "travel");
    double part = field.required("share").number(Interval.between(0.5, 1.0));
    return new Rule(
        BodyLayout.carriesSaddle(wing.rootChord(), travel, part),
        "length over which r ≥ " + Rule.number(part) + "·r_max is at least chord + travel");
  }

  Rule vision(Field field) {
    FuselageBrief.Pilot who =
        pilot.orElseThrow(() -> field.error("needs the brief to have a \"pilot\", has none"));
    Angle approach = field.required("approach").quantity(Angle.KIND, "0°", "15°");
    Speed speed = field.required("speed").quantity(Speed.KIND, "5 m/s", "150 m/s");
    Angle angle = BodyLayout.overNoseAngle(approach, speed);
    overNose = Optional.of(angle);
    Inside in = Rule.inside(inside, field);
    known.add(
        Step.of(
            "angle of view below the horizon",
            "α",
            IN_RADIANS,
            Step.of(
                "angle of view below the horizon, in degrees",
                "α_d",
                BodyLayout.OVER_NOSE_ANGLE,
                Step.given("angle of the approach, in degrees", "γ", approach.degrees(), Source.BRIEF),
                Step.given("speed of the approach, in knots", "V_a", speed.knots(), Source.BRIEF))));
    known.add(eyeStep(in, who));
    return new Rule(
        BodyLayout.seesOverNose(
            angle,
            in.contents(),
            who.seat(),
            who.eyeBehindFront(),
            eyeBelowTop(in, who),
            who.windscreenAhead()),
        "z_eye − (x_eye − x)·tan α ≥ z_top(x) from the windscreen's foot to the nose tip, α = γ +"
            + " 0.07·V");
  }

  /** Eye below the outside of the roof: room for the head inside, then clearance and wall. */
  static Length eyeBelowTop(Inside in, FuselageBrief.Pilot who) {
    if (!in.cabins().containsKey(who.seat())) {
      throw new IllegalArgumentException(
          "pilot must sit in a cabin, one of "
              + in.cabins().keySet()
              + ", was \""
              + who.seat()
              + "\"");
    }
    return in.cabins().get(who.seat()).eyeBelowRoof().plus(in.wall()).plus(in.clearance());
  }

  private static Step eyeStep(Inside in, FuselageBrief.Pilot who) {
    Source circle = Source.taken("smallest circle around feet, shoulders and heads of a row");
    Length inRoom = eyeBelowTop(in, who).minus(in.wall()).minus(in.clearance());
    return Step.sum(
        "eye below the top",
        "e",
        List.of(
            Step.given("eye below the roof of the cabin", "e_r", inRoom, circle),
            Step.given("clearance around each thing", "c", in.clearance(), Source.BRIEF),
            Step.given("wall", "w", in.wall(), Source.BRIEF)));
  }

  private static double inRadians(double degrees) {
    return Math.toRadians(degrees);
  }

  private FuselageBrief.Wheels wheels(Field field) {
    return wheels.orElseThrow(
        () -> field.error("needs the brief to have an \"undercarriage\", has none"));
  }

  Rule rotation(Field field) {
    FuselageBrief.Wheels on = wheels(field);
    Angle angle = field.required("angle").quantity(Angle.KIND, "1°", "30°");
    rotation = Optional.of(angle);
    Source drawn = Source.taken("the body as drawn, which has its own upsweep");
    known.add(Step.given("start of the upsweep over the length", "s_u", 1.0, drawn));
    known.add(Step.given("upsweep", "u", Angle.ZERO, drawn));
    return new Rule(
        BodyLayout.clearsGroundAtRotation(angle, on.at(), on.strut(), 1.0, Angle.ZERO),
        "height of the belly above the ground ≥ (x − x_w)·tan θ, all the way aft of the wheels");
  }

  Rule tipBack(Field field) {
    FuselageBrief.Wheels on = wheels(field);
    Angle angle = field.required("angle").quantity(Angle.KIND, "1°", "40°");
    return new Rule(
        BodyLayout.standsOnMainWheels(
            angle, on.at(), on.strut(), on.gravityAt(), on.gravityHeight()),
        "(s_w − s_g)·L ≥ h_g·tan β, wheels behind the aft centre of gravity");
  }

  Rule closure(Field field) {
    Angle top = field.required("top").quantity(Angle.KIND, "1°", "45°");
    Angle under = field.required("underside").quantity(Angle.KIND, "1°", "45°");
    return new Rule(
        BodyLayout.afterbodyClosesWithin(top, under),
        "slope of top line and underside where the section is half as high as the greatest");
  }

  Rule tailArm(Field field) {
    Length arm = Rule.positiveLength(field, "arm");
    double outside = field.required("outside_share").number(Interval.between(0.0, 0.95));
    return Rule.of(
        Considerations.tailArmAtLeast(arm, outside),
        "(1 − s)·L ≥ l_t, s = " + Rule.percent(outside) + " of the length outside the arm");
  }

  Rule balance(Field field) {
    Inside in = Rule.inside(inside, field);
    Mass rest = field.required("rest_mass").quantity(Mass.KIND, "0.1 g", "100000 kg");
    Mass ballast = field.required("ballast").quantity(Mass.KIND, "0 g", "10000 kg");
    double wanted = Rule.share(field, "wanted_at");
    return new Rule(
        in.contents()
            .balancing(
                rest, Rule.share(field, "rest_at"), wanted, ballast, Rule.length(field, "ballast_from_nose")),
        "(m_r·s_r·L + Σ m·x + m_b·x_b)/Σ m ≤ s·L, the contents as far forward as they fit");
  }
}
