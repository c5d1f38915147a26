// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import static io.github.wingwright.core.quantity.Length.millimetres;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.sun.management.ThreadMXBean;
import io.github.wingwright.core.aerodynamics.LiftingLine;
import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.WingLoading;
import io.github.wingwright.core.sizing.WingSizing;
import java.lang.management.ManagementFactory;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The quick evaluation against the full design, the lifting line and itself. */
class QuickEvaluationTest {

  @Test
  void agreesWithTheFullDesignOfAGliderThatBalancesWithoutBallast() {
    Design design = SizingLoop.of(Briefs.balanced()).solve();
    assertThat(design.number("ballast_kg").value()).isZero();
    agrees(GliderFamily.of(design).evaluate(0.41, 5.5, 0.3, 0.022), design);
  }

  @Test
  void agreesWithTheFullDesignOfAGliderWithBallast() {
    Design design = SizingLoop.of(Briefs.ballasted()).solve();
    assertThat(design.number("ballast_kg").value()).isGreaterThan(1e-4);
    agrees(GliderFamily.of(design).evaluate(0.41, 5.5, 0.3, 0.022), design);
  }

  @Test
  void agreesWithTheFullDesignOfAGliderWhoseWingSitsAsFarForwardAsItMay() {
    DesignBrief brief = Briefs.balanced().wingBetween(millimetres(120), millimetres(150));
    Design design = SizingLoop.of(brief).solve();
    assertThat(design.number("wing.leading_edge_x_m").value()).isEqualTo(0.12);
    agrees(GliderFamily.of(design).evaluate(0.41, 5.5, 0.3, 0.022), design);
  }

  @Test
  void agreesWithTheFullDesignOfAWingThatGrowsWithTheMass() {
    WingSizing wing =
        WingSizing.open()
            .wingLoading(WingLoading.kilogramsPerSquareMetre(1.3))
            .aspectRatio(6)
            .taperRatio(0.6)
            .section(Briefs.LENS);
    Design design = SizingLoop.of(Briefs.brief(wing, Briefs.capsule(millimetres(330), millimetres(20)))).solve();
    double span = design.number("wing.span_m").value();
    agrees(GliderFamily.of(design).evaluate(span, 6, 0.33, 0.02), design);
  }

  /** Tails sit on the body where it ends, and a body that is swept up lifts them over the wing's wake. */
  @Test
  void agreesWithTheFullDesignOfABodyThatIsSweptUp() {
    WingSizing wing = WingSizing.forSpan(millimetres(410)).aspectRatio(5.5).taperRatio(0.7).section(Briefs.LENS);
    BodyShape capsule = BodyShape.capsule();
    BodyShape bent = capsule.upswept(5, Angle.degrees(6), 0.5);
    Design level = SizingLoop.of(Briefs.brief(wing, Briefs.body(capsule, millimetres(300), millimetres(22)))).solve();
    Design raised = SizingLoop.of(Briefs.brief(wing, Briefs.body(bent, millimetres(300), millimetres(22)))).solve();
    Airframe airframe = raised.aircraft().airframe();
    Tail tailplane = airframe.horizontalTail().orElseThrow();
    Length middle = tailplane.placement().x().plus(tailplane.planform().rootChord().times(0.5));
    assertThat(tailplane.placement().z().millimetres()).isBetween(2.0, 11.0);
    assertThat(tailplane.placement().z()).isEqualTo(airframe.fuselage().centreHeightAt(middle));
    assertThat(airframe.verticalTail().orElseThrow().placement().z()).isEqualTo(tailplane.placement().z());
    assertThat(level.aircraft().airframe().horizontalTail().orElseThrow().placement().z()).isEqualTo(Length.ZERO);
    assertThat(raised.number("neutral_point.x_m").value()).isNotEqualTo(level.number("neutral_point.x_m").value());
    agrees(GliderFamily.of(raised).evaluate(0.41, 5.5, 0.3, 0.022), raised);
  }

  private static void agrees(QuickEvaluation quick, Design design) {
    same(quick.mass(), design, "mass_kg");
    same(quick.ballast(), design, "ballast_kg");
    same(quick.station(), design, "wing.leading_edge_x_m");
    same(quick.horizontalArm(), design, "horizontal_tail.arm_m");
    same(quick.horizontalArea(), design, "horizontal_tail.area_m2");
    same(quick.verticalArm(), design, "vertical_tail.arm_m");
    same(quick.verticalArea(), design, "vertical_tail.area_m2");
    same(quick.centreOfGravity(), design, "centre_of_gravity.x_m");
    same(quick.neutralPoint(), design, "neutral_point.x_m");
    same(quick.staticMargin(), design, "static_margin");
    same(quick.wingLoading(), design, "wing.loading_kg_per_m2");
    same(quick.usableLift(), design, "wing.lift_coefficient_usable");
    same(quick.stallSpeed(), design, "stall_speed_m_per_s");
    same(quick.bestGlideLift(), design, "glide.best_glide_lift_coefficient");
    same(quick.bestLiftToDrag(), design, "glide.best_lift_to_drag");
    same(quick.bestGlideSpeed(), design, "glide.best_glide_speed_m_per_s");
    same(quick.leastSinkSpeed(), design, "glide.minimum_sink_speed_m_per_s");
    same(quick.leastSinkRate(), design, "glide.minimum_sink_rate_m_per_s");
  }

  private static void same(double quick, Design design, String name) {
    double full = design.number(name).value();
    assertThat(quick).as(name).isCloseTo(full, within(1e-9 * Math.abs(full)));
  }

  @Test
  void aMemberOfAFamilyIsTheSameAsTheObjectsOfItsWingAndFuselage() {
    Design design = SizingLoop.of(Briefs.ballasted()).solve();
    Wing wing = design.sizedWing().value();
    Fuselage fuselage = design.sizedFuselage().value();
    QuickEvaluation objects = new QuickDesign(design.brief(), wing, fuselage).evaluate();
    QuickEvaluation member = GliderFamily.of(design).evaluate(wing.planform().span(), 5.5, fuselage.length(), fuselage.diameter());
    assertThat(member.mass()).isCloseTo(objects.mass(), within(1e-12));
    assertThat(member.bestLiftToDrag()).isCloseTo(objects.bestLiftToDrag(), within(1e-9));
    assertThat(member.leastSinkRate()).isCloseTo(objects.leastSinkRate(), within(1e-10));
  }

  /** Whatever the four numbers, the answer is balanced: the margin is met, or the wing could sit no further forward. */
  @Test
  void everyMemberBalancesAndItsMassIsTheOneForWhichItWasReckoned() {
    Design design = SizingLoop.of(Briefs.ballasted()).solve();
    GliderFamily family = GliderFamily.of(design);
    Random random = new Random(20_261_125L);
    for (int i = 0; i < 300; i++) {
      double span = 0.3 + 0.3 * random.nextDouble();
      double aspectRatio = 4.5 + 4.0 * random.nextDouble();
      double length = (0.75 + 0.2 * random.nextDouble()) * span;
      double diameter = 0.016 + 0.01 * random.nextDouble();
      QuickEvaluation glider = family.evaluate(span, aspectRatio, length, diameter);
      if (glider.station() == diameter && glider.ballast() == 0.0) {
        assertThat(glider.staticMargin()).isGreaterThanOrEqualTo(0.15);
      } else {
        assertThat(glider.staticMargin()).as("member %d", i).isCloseTo(0.15, within(1e-9));
      }
      assertThat(glider.bestGlideLift()).isLessThanOrEqualTo(glider.usableLift());
      assertThat(glider.leastSinkRate()).isLessThanOrEqualTo(glider.bestGlideSpeed() / glider.bestLiftToDrag());
      assertThat(glider.stallSpeed()).isLessThanOrEqualTo(glider.leastSinkSpeed() * 1.02);
    }
  }

  @Test
  void theSeriesOfTheInducedLossIsTheLiftingLine() {
    for (double taper : new double[] {0.3, 0.7, 1.0}) {
      InducedLoss loss = new InducedLoss(taper);
      for (double aspectRatio : new double[] {1.0, 1.7, 4.0, 5.5, 6.2, 9.3, 20.0, 41.0, 60.0}) {
        double solved = LiftingLine.tapered(1.3, aspectRatio, taper).solve().inducedDragFactor();
        assertThat(loss.at(aspectRatio)).as("A %s, taper %s", aspectRatio, taper).isCloseTo(solved, within(1e-11));
      }
    }
  }

  /** The searches inside allocate nothing: design, search, drag and result are all there is. */
  @Test
  void anEvaluationAllocatesFourSmallObjectsWhateverItsSearchTakes() {
    Design design = SizingLoop.of(Briefs.ballasted()).solve();
    GliderFamily family = GliderFamily.of(design);
    ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    long thread = Thread.currentThread().getId();
    double sum = 0.0;
    for (int i = 0; i < 200; i++) {
      sum += family.evaluate(0.41, 5.5, 0.3, 0.022).mass();
    }
    int many = 1_000;
    long before = threads.getThreadAllocatedBytes(thread);
    for (int i = 0; i < many; i++) {
      sum += family.evaluate(0.41 + 1e-5 * i, 5.5, 0.3, 0.022).mass();
    }
    long bytes = (threads.getThreadAllocatedBytes(thread) - before) / many;
    assertThat(sum).isPositive();
    assertThat(bytes).isBetween(100L, 720L);
  }

  @Test
  void refusesWhatIsNoGlider() {
    GliderFamily family = GliderFamily.of(SizingLoop.of(Briefs.balanced()).solve());
    assertThatThrownBy(() -> family.evaluate(-0.4, 5.5, 0.3, 0.022))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("span must be 0.1 mm to 1000 m, was -400");
    assertThatThrownBy(() -> family.evaluate(0.4, Double.NaN, 0.3, 0.022))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("aspect ratio must be 1 to 60");
    assertThatThrownBy(() -> family.evaluate(0.4, 5.5, 0.02, 0.022))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("fineness ratio");
    assertThatThrownBy(() -> family.evaluate(0.4, 5.5, 0.08, 0.01))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("the fuselage must be longer for such tails");
  }

  @Test
  void aSizeThatNoGliderHasIsNamedWithWhatIsAllowed() {
    GliderFamily family = GliderFamily.of(SizingLoop.of(Briefs.balanced()).solve());
    assertThatThrownBy(() -> family.evaluate(1e-300, 5.5, 0.3, 0.022)).isInstanceOf(IllegalArgumentException.class)
        .hasMessageStartingWith("span must be 0.1 mm to 1000 m, was ");
    assertThatThrownBy(() -> family.evaluate(0.41, 5.5, Double.POSITIVE_INFINITY, 0.022))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageStartingWith("fuselage length must be 0.1 mm to 1000 m, was ");
    assertThatThrownBy(() -> family.evaluate(0.41, 5.5, 0.3, Double.NaN)).isInstanceOf(IllegalArgumentException.class)
        .hasMessageStartingWith("fuselage diameter must be 0.1 mm to 1000 m, was ");
  }

  @Test
  void aMassOrStationWithoutMeaningIsNamed() {
    Design design = SizingLoop.of(Briefs.balanced()).solve();
    QuickDesign quick = new QuickDesign(design.brief(), design.sizedWing().value(), design.sizedFuselage().value());
    for (double mass : new double[] {Double.NEGATIVE_INFINITY, 0, Double.NaN}) {
      assertThatThrownBy(() -> quick.balance(mass)).isInstanceOf(IllegalArgumentException.class)
          .hasMessageStartingWith("mass must be positive, was ");
      assertThatThrownBy(() -> quick.margin(0.1, mass)).isInstanceOf(IllegalArgumentException.class)
          .hasMessageStartingWith("mass must be positive, was ");
    }
    assertThatThrownBy(() -> quick.margin(Double.NaN, 0.03)).isInstanceOf(IllegalArgumentException.class)
        .hasMessage("station of the wing must be finite, was NaN");
  }

  @Test
  void theToolsOfAStudyShowThemselvesInOneLine() {
    SizingLoop loop = SizingLoop.of(Briefs.balanced());
    Design design = loop.solve();
    QuickDesign quick = new QuickDesign(design.brief(), design.sizedWing().value(), design.sizedFuselage().value());
    assertThat(loop).hasToString("sizing loop, exact values");
    assertThat(loop.madeTo(millimetres(0.5), Mass.grams(0.1))).hasToString("sizing loop, made to 0.5 mm and 100 mg");
    assertThat(quick).hasToString("quick design: span 410 mm, aspect ratio 5.5, body 300 mm × 22 mm");
    assertThat(GliderFamily.of(design).toString()).startsWith("gliders of taper ratio 0.").hasSizeLessThanOrEqualTo(75)
        .doesNotContain("00000");
  }
}
