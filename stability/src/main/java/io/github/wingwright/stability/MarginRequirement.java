// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleFunction;

/** The area that brings the neutral point far enough aft: closed form, since the neutral point is a quotient in it. */
record MarginRequirement(double margin, Length centreOfGravity, PitchModel model) implements TailRequirement {
  /** Any area will do to begin with: slope, arm and downwash do not depend on it. */
  private static final double PART_OF_WING = 0.2;

  static final Formula AREA_RATIO =
      Formula.named("tail area over wing area for a neutral point")
          .gives("s_h")
          .as("(a_w·(h_n − h_w) + C_f) / (η_h·a_h·(1 − ε_α)·(h_h − h_n))")
          .where("a_w", "lift-curve slope of the wing", NamedUnit.PER_RADIAN, 0.5, 7)
          .where("h_n", "neutral point wanted", 0, 1.5)
          .where("h_w", "aerodynamic centre of the wing", 0.1, 0.6)
          .where("C_f", "moment slope of the fuselage C_mα,f", NamedUnit.PER_RADIAN, -1, 3)
          .where("η_h", "tail efficiency", 0.3, 1.2)
          .where("a_h", "lift-curve slope of the tail", NamedUnit.PER_RADIAN, 0.5, 7)
          .where("ε_α", "downwash gradient at the tail", -1, 0.95)
          .where("h_h", "aerodynamic centre of the tail", 1.6, 20)
          .from(Sources.NEUTRAL_POINT)
          .computedBy(MarginRequirement::areaRatio);

  static final Formula WANTED =
      Formula.named("neutral point wanted, fraction of c̄")
          .gives("h_n")
          .as("h + K_n")
          .where("h", "most aft centre of gravity, fraction of c̄", -1, 2)
          .where("K_n", "static margin wanted", -0.2, 1)
          .from(Source.DEFINITION)
          .computedBy((double h, double margin) -> h + margin);

  static final Formula AREA =
      Formula.named("horizontal tail area for a static margin")
          .gives("S_h", Area.SQUARE_METRE)
          .as("s_h·S")
          .where("s_h", "tail area over wing area", -1, 3)
          .where("S", "wing reference area", Area.SQUARE_METRE, 1e-4, 1000)
          .from(Source.DEFINITION)
          .computedBy((double ratio, double area) -> ratio * area);

  static double areaRatio(
      double wingSlope,
      double neutralPoint,
      double wingCentre,
      double fuselageSlope,
      double tailEfficiency,
      double tailSlope,
      double downwash,
      double tailCentre) {
    return (wingSlope * (neutralPoint - wingCentre) + fuselageSlope)
        / (tailEfficiency * tailSlope * (1.0 - downwash) * (tailCentre - neutralPoint));
  }

  @Override
  public String name() {
    return String.format(Locale.ROOT, "static margin of %.0f %% at the most aft centre of gravity", 100.0 * margin);
  }

  @Override
  public Source source() {
    return Source.BRIEF;
  }

  @Override
  public Step area(DoubleFunction<Tail> tailOfArea) {
    PitchTerms t = with(tailOfArea, model).terms();
    Step h = t.fraction("most aft centre of gravity", centreOfGravity);
    Step wanted = Step.of(WANTED, h, Step.given("static margin wanted", "K_n", margin, Source.BRIEF));
    if (wanted.value() >= t.tailCentre.value()) {
      throw new IllegalStateException(
          String.format(
              Locale.ROOT,
              "no tail area gives a static margin of %.0f %%: the neutral point would have to lie at %.2f c̄, behind the"
                  + " tail at %.2f c̄. Move the centre of gravity forward or the tail aft",
              100.0 * margin,
              wanted.value(),
              t.tailCentre.value()));
    }
    Step ratio =
        Step.of(
            AREA_RATIO,
            t.wingSlope,
            wanted,
            t.wingCentre,
            t.fuselageSlope,
            t.efficiency,
            t.tailSlope,
            t.downwash,
            t.tailCentre);
    return Step.of(AREA, ratio, t.area);
  }

  /** The model with the tail to be sized instead of its own, at a provisional area. */
  static PitchModel with(DoubleFunction<Tail> tailOfArea, PitchModel model) {
    Airframe airframe = model.airframe();
    List<Tail> tails = new ArrayList<>();
    tails.add(tailOfArea.apply(PART_OF_WING * airframe.wing().planform().area().si()));
    airframe.tails().stream().filter(t -> t.role() == Tail.Role.VERTICAL).forEach(tails::add);
    return model.withAirframe(new Airframe(airframe.fuselage(), airframe.wing(), tails));
  }
}
