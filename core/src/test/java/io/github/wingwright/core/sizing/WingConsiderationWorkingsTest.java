// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.basis.Bound;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Strength;
import io.github.wingwright.core.basis.Workings;
import io.github.wingwright.core.quantity.Density;
import io.github.wingwright.core.quantity.KinematicViscosity;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.Speed;
import java.lang.reflect.Method;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The printed workings of a consideration on a wing end in the margin that it is weighed by. */
class WingConsiderationWorkingsTest {
  private static final Density AIR = Density.kilogramsPerCubicMetre(1.2);
  private static final WingFrame FRAME = new WingFrame(0.4, 0.6, new BiconvexSection(0.06));

  /** One consideration of each factory of the library, by class, method and number of arguments. */
  private static Map<String, WingConsideration> ofEveryFactory() {
    Speed throwing = Speed.metresPerSecond(8.0);
    Map<String, WingConsideration> all = new TreeMap<>();
    all.put(
        "WingConsiderations.printableTrailingEdge/2",
        WingConsiderations.printableTrailingEdge(Length.millimetres(0.45), 0.95));
    all.put(
        "WingConsiderations.reynoldsNumberAtLeast/3",
        WingConsiderations.reynoldsNumberAtLeast(30_000, throwing, KinematicViscosity.squareMetresPerSecond(1.5e-5)));
    all.put(
        "WingConsiderations.fliesWhenThrown/5",
        WingConsiderations.fliesWhenThrown(throwing, 1.2, 0.8, AIR, Mass.grams(50.0)));
    all.put(
        "WingConsiderations.fliesWhenThrown/6",
        WingConsiderations.fliesWhenThrown(
            throwing, 1.2, 0.8, AIR, Mass.grams(10.0), Density.kilogramsPerCubicMetre(900.0)));
    all.put("WingConsiderations.rootChordAtMost/1", WingConsiderations.rootChordAtMost(Length.inches(4.0)));
    all.put("WingConsiderations.piecesOfEachHalf/2", WingConsiderations.piecesOfEachHalf(Length.millimetres(180.0), 1));
    all.put("WingConsiderations.aspectRatioWithin/3", WingConsiderations.aspectRatioWithin(5.0, 9.0, Source.BRIEF));
    all.put(
        "WingConsiderations.rootThicknessAtLeast/1", WingConsiderations.rootThicknessAtLeast(Length.millimetres(5.0)));
    return all;
  }

  static Collection<WingConsideration> all() {
    return ofEveryFactory().values();
  }

  /** What the library offers, found in its classes: a factory that nobody thought of here fails the test. */
  static Set<String> factories() {
    Set<String> found = new TreeSet<>();
    for (Class<?> type : List.of(WingConsiderations.class, WingSizing.class, WingFrame.class)) {
      for (Method method : type.getMethods()) {
        if (WingConsideration.class.isAssignableFrom(method.getReturnType())) {
          found.add(type.getSimpleName() + "." + method.getName() + "/" + method.getParameterCount());
        }
      }
    }
    return found;
  }

  @Test
  void every_factory_is_here() {
    assertThat(ofEveryFactory().keySet()).isEqualTo(factories());
  }

  @ParameterizedTest
  @MethodSource("all")
  void the_workings_end_in_the_margin_and_its_sign_is_that_of_the_interval(WingConsideration one) {
    Random random = new Random(20_261_126L);
    int kept = 0;
    int missed = 0;
    for (int i = 0; i < 400; i++) {
      WingFrame frame =
          new WingFrame(
              0.2 + 0.4 * random.nextDouble(),
              1.4 * random.nextDouble(),
              new BiconvexSection(0.04 + 0.08 * random.nextDouble()));
      double chord = 0.01 + 0.14 * random.nextDouble();
      double margin = one.margin(frame, chord);
      assertThat(one.workings(frame, chord(chord)).orElseThrow().value()).isEqualTo(margin);
      if (Math.abs(margin) > 1e-9) {
        assertThat(one.meanChords(frame).contains(chord)).as("%s, c %s, margin %s", frame, chord, margin)
            .isEqualTo(margin > 0.0);
      }
      kept += margin > 0.0 ? 1 : 0;
      missed += margin < 0.0 ? 1 : 0;
    }
    assertThat(kept).isGreaterThan(10);
    assertThat(missed).isGreaterThan(10);
  }

  @ParameterizedTest
  @MethodSource("all")
  void the_margin_is_nothing_at_the_ends_of_the_interval(WingConsideration one) {
    Interval chords = one.meanChords(FRAME);
    for (double end : new double[] {chords.lower(), chords.upper()}) {
      if (Double.isFinite(end)) {
        assertThat(one.margin(FRAME, end)).isCloseTo(0.0, within(1e-12));
      }
    }
  }

  @ParameterizedTest
  @MethodSource("all")
  void the_workings_of_a_usual_wing_are_within_the_validity_of_their_formulas(WingConsideration one) {
    assertThat(Workings.of(List.of(one.workings(FRAME, chord(0.06)).orElseThrow())).findings()).isEmpty();
  }

  @Test
  void names_and_ranges_are_told_in_the_unit_of_choice() {
    WingConsideration root = WingConsiderations.rootChordAtMost(Length.inches(4.0));

    assertThat(root.name()).isEqualTo("root chord at most 101.6 mm");
    assertThat(root.nameIn(Length.INCH)).isEqualTo("root chord at most 4 in");
    assertThat(
            WingConsiderations.fliesWhenThrown(Speed.metresPerSecond(6.096), 1.2, 0.8, AIR, Mass.grams(30.0))
                .nameIn(Speed.FOOT_PER_SECOND))
        .isEqualTo("flies when launched at 20 ft/s with 30 g");
    assertThat(
            WingSizing.forSpan(Length.inches(16.0)).section(FRAME.section()).considering(root).showing(Length.INCH)
                .meanChordRange()
                .bounds())
        .extracting(Bound::name)
        .containsExactly("root chord at most 4 in");
  }

  @Test
  void an_interval_of_chords_is_enough_to_write_one() {
    WingConsideration own = new OnlyAnInterval(Interval.between(0.05, 0.10));

    assertThat(own.nameIn(Length.INCH)).isEqualTo("fits the box");
    assertThat(own.margin(FRAME, 0.06)).isCloseTo(0.2, within(1e-12));
    assertThat(own.margin(FRAME, 0.11)).isCloseTo(-0.1, within(1e-12));
    assertThat(own.workings(FRAME, chord(0.06))).isEmpty();
    assertThat(new OnlyAnInterval(Interval.NONE).margin(FRAME, 0.06)).isEqualTo(-1.0);
  }

  private record OnlyAnInterval(Interval chords) implements WingConsideration {
    @Override
    public String name() {
      return "fits the box";
    }

    @Override
    public Strength strength() {
      return Strength.LIMIT;
    }

    @Override
    public Source source() {
      return Source.BRIEF;
    }

    @Override
    public Interval meanChords(WingFrame frame) {
      return chords;
    }
  }

  private static Step chord(double chord) {
    return Step.given("mean geometric chord", "c", Length.metres(chord), Source.BRIEF);
  }
}
