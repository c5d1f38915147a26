// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.core.aerodynamics.LiftSlope;
import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.quantity.Volume;
import io.github.wingwright.stability.derivatives.BodyLateral;
import io.github.wingwright.stability.derivatives.FinLateral;
import java.util.Locale;
import java.util.function.DoubleFunction;

/**
 * The fin that gives the weathercock stability wanted: C_nβ = C_nβ,f + a_v·η_v·(S_v/S)·(l_cg/b), positive is stable. The
 * fuselage takes away (Munk's couple), the fin gives; the straight wing's small share is left out, on the safe side.
 */
record DirectionalRequirement(double yawStiffness, Airframe airframe, Length centreOfGravity)
    implements TailRequirement {
  /** Sidewash and loss of pressure together: the fin stands behind the fuselage. */
  private static final double FIN_EFFICIENCY = 0.9;

  static final Formula BODY_VOLUME =
      Formula.named("volume of the fuselage over wing area times span")
          .gives("v_f")
          .as("Q / (S·b)")
          .where("Q", "volume of the fuselage", Volume.CUBIC_METRE, 1e-7, 2000)
          .where("S", "wing reference area", Area.SQUARE_METRE, 1e-4, 1000)
          .where("b", "wing span", Length.METRE, 0.05, 100)
          .from(Source.DEFINITION)
          .computedBy((double volume, double area, double span) -> volume / (area * span));

  static final Formula AREA =
      Formula.named("vertical tail area for directional stability")
          .gives("S_v", Area.SQUARE_METRE)
          .as("(C_n − C_f)·S·b / (a_v·η_v·l)")
          .where("C_n", "weathercock stability wanted", NamedUnit.PER_RADIAN, 0, 0.5)
          .where("C_f", "yaw due to sideslip of the fuselage", NamedUnit.PER_RADIAN, -0.5, 0)
          .where("S", "wing reference area", Area.SQUARE_METRE, 1e-4, 1000)
          .where("b", "wing span", Length.METRE, 0.05, 100)
          .where("a_v", "lift-curve slope of the fin", NamedUnit.PER_RADIAN, 0.5, 7)
          .where("η_v", "efficiency of the fin", 0.3, 1.2)
          .where("l", "distance of the fin behind the centre of gravity", Length.METRE, 0.01, 60)
          .from(Sources.MOMENT_EQUATION)
          .computedBy(DirectionalRequirement::finArea);

  DirectionalRequirement {
    Door.positive(yawStiffness, "directional stability wanted");
    Door.finite(centreOfGravity, "centre of gravity");
  }

  static double finArea(
      double wanted, double body, double wingArea, double span, double finSlope, double efficiency, double arm) {
    return (wanted - body) * wingArea * span / (finSlope * efficiency * arm);
  }

  /**
   * A fin on a fuselage or a tailplane is reflected in it: it works as one of 1.55 times its own aspect ratio. A tailplane on
   * its top is an end plate besides; its span is held against the height of the fin that was asked about.
   */
  private Step effectiveAspectRatio(Tail fin) {
    Step reflected =
        Step.given(
            "effective aspect ratio of the fin",
            "A",
            FinLateral.BODY_REFLECTION * fin.planform().aspectRatio(),
            Source.fromMemory("Raymer, Aircraft Design: A Conceptual Approach", "chapter 16: 1.55 times its own"));
    if (TailArrangement.of(airframe) != TailArrangement.T_TAIL) {
      return reflected;
    }
    double plate = airframe.horizontalTail().map(t -> t.planform().span().si()).orElse(0.0);
    return Step.of(
        FinLateral.END_PLATE,
        reflected,
        Step.given(
            "span of the tailplane over height of the fin", "r", plate / fin.planform().span().si(), Sources.AIRFRAME));
  }

  @Override
  public String name() {
    return String.format(Locale.ROOT, "directional stability of %.3f per radian", yawStiffness);
  }

  @Override
  public Source source() {
    return Source.BRIEF;
  }

  @Override
  public Step area(DoubleFunction<Tail> tailOfArea) {
    Planform wing = airframe.wing().planform();
    Tail fin = tailOfArea.apply(0.1 * wing.area().si());
    Length arm = fin.quarterChordX().minus(centreOfGravity);
    if (!arm.isPositive()) {
      throw new IllegalStateException(
          "a fin must lie behind the centre of gravity at " + centreOfGravity + " to stabilise, was at "
              + fin.quarterChordX());
    }
    Step area = Step.given("wing reference area", "S", wing.area(), Sources.AIRFRAME);
    Step span = Step.given("wing span", "b", wing.span(), Sources.AIRFRAME);
    Step volume =
        Step.of(
            BODY_VOLUME,
            Step.given("volume of the fuselage", "Q", airframe.fuselage().volume(), Sources.AIRFRAME),
            area,
            span);
    Step factor =
        Step.given(
            "apparent-mass factor",
            "k",
            ApparentMass.munkFactor(Math.max(1.0, airframe.fuselage().finenessRatio())),
            Sources.LAMB);
    Step body = Step.of(BodyLateral.YAW_DUE_TO_SIDESLIP, factor, volume);
    Step slope =
        Step.of(
            "lift-curve slope of the fin",
            "a_v",
            LiftSlope.HELMBOLD,
            new Step.Given(
                "lift-curve slope of the section", "a_0", NamedUnit.PER_RADIAN, 2.0 * Math.PI, Source.library("2π")),
            effectiveAspectRatio(fin));
    return Step.of(
        AREA,
        Step.given("weathercock stability wanted", "C_n", yawStiffness, Source.BRIEF),
        body,
        area,
        span,
        slope,
        Step.given("efficiency of the fin", "η_v", FIN_EFFICIENCY, Source.library("as a horizontal tail's")),
        Step.given("distance of the fin behind the centre of gravity", "l", arm, Sources.AIRFRAME));
  }
}
