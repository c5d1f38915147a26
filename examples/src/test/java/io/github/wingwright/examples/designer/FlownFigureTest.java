// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.sizing.FigureOfMerit;
import io.github.wingwright.examples.brief.BriefFile;
import io.github.wingwright.stability.design.Design;
import io.github.wingwright.stability.design.SizingLoop;
import org.junit.jupiter.api.Test;

/** A price is the difference of two flown distances: it must say something of a millimetre of body. */
class FlownFigureTest {
  @Test
  void over_a_sweep_of_the_diameter_by_tenths_of_a_millimetre_it_changes_smoothly() {
    GliderBrief brief = GliderBrief.from(BriefFile.parse("brief.json", ProgramRun.changed()));
    Design design = SizingLoop.of(brief.brief()).madeTo(brief.making().length(), brief.making().mass()).solve();
    FlownThrow thrown = new FlownThrow(design, brief.hall());
    FigureOfMerit figure = FlownFigure.of(design, brief, thrown);
    assertThat(figure.name()).isEqualTo("distance flown, thrown at 7 m/s and the best angle for a hand");
    Fuselage body = design.aircraft().airframe().fuselage();
    double[] values = new double[21];
    for (int i = 0; i < values.length; i++) {
      Length diameter = body.diameter().plus(Length.millimetres(0.1 * (i - 10)));
      values[i] = figure.value().of(new Fuselage(body.shape(), body.length(), diameter), Double.NaN);
    }
    double perStep = (values[20] - values[0]) / 20;
    double noise = 0;
    for (int i = 0; i < values.length; i++) {
      noise = Math.max(noise, Math.abs(values[i] - values[0] - i * perStep));
    }
    assertThat(noise).as("off a straight line").isLessThan(2 * FlownFigure.RESOLUTION * values[10]);
  }

  @Test
  void the_body_as_it_is_made_has_the_number_of_the_sheet_and_so_has_the_same_body_reckoned_anew() {
    GliderBrief brief = GliderBrief.from(BriefFile.parse("brief.json", ProgramRun.changed()));
    Design design = SizingLoop.of(brief.brief()).madeTo(brief.making().length(), brief.making().mass()).solve();
    FlownThrow thrown = new FlownThrow(design, brief.hall());
    Fuselage body = design.aircraft().airframe().fuselage();
    double priced = FlownFigure.of(design, brief, thrown).value().of(body, Double.NaN);
    String told = brief.units().distance().format(priced, 3);
    assertThat(new FlightChapter(design, brief).lines().get(1)).contains("best for a hand", ": " + told + " in ");
    // Reckoned anew it is not rounded, which is all that differs.
    double anew = new FlownThrow(design.withFuselage(body), brief.hall()).value(true);
    assertThat(anew).isCloseTo(priced, withinPercentage(0.3));
  }

  @Test
  void a_body_too_short_for_its_tails_flies_no_distance() {
    GliderBrief brief = GliderBrief.from(BriefFile.parse("brief.json", ProgramRun.changed()));
    Design design = SizingLoop.of(brief.brief()).madeTo(brief.making().length(), brief.making().mass()).solve();
    Fuselage body = design.aircraft().airframe().fuselage();
    FigureOfMerit figure = FlownFigure.of(design, brief, new FlownThrow(design, brief.hall()));
    assertThat(figure.value().of(new Fuselage(body.shape(), body.length().times(0.4), body.diameter()), Double.NaN)).isZero();
  }
}
