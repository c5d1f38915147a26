// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils.coordinates;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.airfoils.Contour;
import io.github.wingwright.airfoils.Naca4;
import io.github.wingwright.airfoils.TrailingEdge;
import io.github.wingwright.airfoils.potential.PanelMethod;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class CoordinatesTest {
  private static final Naca4 SECTION = Naca4.parse("2412");

  private static List<String> lines() {
    Contour contour = SECTION.contour(41);
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < contour.size(); i++) {
      lines.add(String.format(Locale.ROOT, "%.7f %.7f", contour.x(i), contour.y(i)));
    }
    return lines;
  }

  @Test
  void a_listing_survives_writing_and_reading() {
    Contour contour = SECTION.contour(81);
    CoordinateListing read = CoordinateListing.parse(CoordinateListing.write("a section", contour));
    assertThat(read.title()).isEqualTo("a section");
    assertThat(read.order()).isEqualTo(CoordinateListing.Order.ROUND_UPPER_FIRST);
    assertThat(read.contour().size()).isEqualTo(81);
    for (int i = 0; i < 81; i++) {
      // The abscissas are moved and scaled by the tiny nose overhang and the open edge.
      assertThat(read.contour().y(i)).isCloseTo(contour.y(i), within(3e-5));
    }
  }

  @Test
  void the_published_ordinates_of_the_2412_are_read_as_two_surfaces() {
    // NACA Report 824 table, public copy, per cent of chord.
    String text = "2412 in per cent\n"
        + "0 0\n1.25 2.15\n2.5 2.99\n5 4.13\n10 5.63\n20 7.26\n30 7.88\n40 7.80\n50 7.24\n60 6.36\n70 5.18\n"
        + "80 3.75\n90 2.08\n95 1.14\n100 0.13\n\n"
        + "0 0\n1.25 -1.65\n2.5 -2.27\n5 -3.01\n10 -3.75\n20 -4.23\n30 -4.12\n40 -3.80\n50 -3.34\n60 -2.76\n"
        + "70 -2.14\n80 -1.50\n90 -0.82\n95 -0.48\n100 -0.13\n";
    CoordinateListing read = CoordinateListing.parse(text);
    assertThat(read.order()).isEqualTo(CoordinateListing.Order.TWO_SURFACES);
    assertThat(read.contour().size()).isEqualTo(29);
    FourDigitFit fit = FourDigitFit.to(read.contour());
    assertThat(fit.section().nominalCamber()).isCloseTo(0.02, within(3e-4));
    assertThat(fit.section().nominalCamberPosition()).isCloseTo(0.4, within(0.01));
    assertThat(fit.section().nominalThickness()).isCloseTo(0.12, within(3e-4));
    assertThat(fit.rootMeanSquare()).isLessThan(1e-4);
  }

  @Test
  void lower_surface_first_and_commas_and_comments_are_understood() {
    List<String> lines = lines();
    Collections.reverse(lines);
    String text = "# made by hand\ntitle\n" + String.join("\n", lines).replace(" ", ", ");
    CoordinateListing read = CoordinateListing.parse(text);
    assertThat(read.order()).isEqualTo(CoordinateListing.Order.ROUND_LOWER_FIRST);
    assertThat(read.contour().y(5)).isPositive();
  }

  @Test
  void counts_of_points_before_two_surfaces_are_understood() {
    StringBuilder text = new StringBuilder("section\n 21. 21.\n");
    Contour contour = SECTION.contour(41);
    for (int i = 20; i >= 0; i--) {
      text.append(contour.x(i)).append(' ').append(contour.y(i)).append('\n');
    }
    text.append('\n');
    for (int i = 20; i < 41; i++) {
      text.append(contour.x(i)).append(' ').append(contour.y(i)).append('\n');
    }
    CoordinateListing read = CoordinateListing.parse(text.toString());
    assertThat(read.order()).isEqualTo(CoordinateListing.Order.TWO_SURFACES);
    assertThat(read.contour().size()).isEqualTo(41);
  }

  @Test
  void everything_wrong_names_its_line() {
    List<String> lines = lines();
    assertThatThrownBy(() -> CoordinateListing.parse("t\n1 0\n0 0\n1 0")).hasMessageContaining("at least 15 points, got 3");
    assertRefused(lines, 7, "0.5 abc", "line 8 must hold two numbers");
    assertRefused(lines, 7, "0.5 0.1 0.2", "line 8 must hold two numbers");
    assertRefused(lines, 7, "NaN 0.1", "line 8 must hold two finite numbers");
    assertRefused(lines, 7, lines.get(6), "lines 7 and 8 are the same");
    assertRefused(lines, 7, "0.73 -0.06", "crosses itself");
    List<String> open = new ArrayList<>(lines);
    for (int i = 28; i > 12; i--) {
      open.remove(i);
    }
    assertThatThrownBy(() -> CoordinateListing.parse(String.join("\n", open))).hasMessageContaining("nose is missing");
    List<String> half = lines.subList(0, 25);
    assertThatThrownBy(() -> CoordinateListing.parse(String.join("\n", half))).hasMessageContaining("trailing edge on both sides");
  }

  private static void assertRefused(List<String> lines, int at, String instead, String message) {
    List<String> changed = new ArrayList<>(lines);
    changed.set(at, instead);
    assertThatThrownBy(() -> CoordinateListing.parse(String.join("\n", changed)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining(message);
  }

  @Test
  void a_spline_through_a_listing_gives_the_same_flow() {
    Contour exact = SECTION.withTrailingEdge(TrailingEdge.CLOSED).contour(81);
    Contour smooth = SmoothOutline.through(exact).points(201, 0);
    double lift = PanelMethod.of(SECTION.withTrailingEdge(TrailingEdge.CLOSED), 200).liftCoefficient(0.07);
    assertThat(PanelMethod.of(smooth).liftCoefficient(0.07)).isCloseTo(lift, within(5e-4));
    assertThat(SmoothOutline.through(exact).noseX()).isCloseTo(-7.793e-5, within(1e-5));
  }

  @Test
  void fits_recover_real_valued_parameters() {
    Naca4 section = Naca4.of(0.033, 0.37, 0.091).withTrailingEdgeThickness(0.008);
    FourDigitFit fit = FourDigitFit.to(section.contour(101));
    assertThat(fit.section().nominalCamber()).isCloseTo(0.033, within(1e-5));
    assertThat(fit.section().nominalCamberPosition()).isCloseTo(0.37, within(1e-4));
    assertThat(fit.section().nominalThickness()).isCloseTo(0.091, within(1e-5));
    assertThat(fit.section().trailingEdgeThickness()).isCloseTo(0.008, within(1e-5));
    assertThat(fit.largest()).isLessThan(1e-4);
    assertThat(FourDigitFit.to(Naca4.parse("0010").contour(81)).section().nominalCamber()).isCloseTo(0, within(1e-6));
  }

  @Test
  void a_turned_and_scaled_outline_is_put_straight() {
    Contour contour = Naca4.parse("0012").contour(61);
    double[] x = new double[61];
    double[] y = new double[61];
    for (int i = 0; i < 61; i++) {
      x[i] = 3 * (contour.x(i) * Math.cos(0.1) - contour.y(i) * Math.sin(0.1)) + 7;
      y[i] = 3 * (contour.x(i) * Math.sin(0.1) + contour.y(i) * Math.cos(0.1)) - 2;
    }
    Contour straight = SmoothOutline.normalised(Contour.of(x, y));
    for (int i = 0; i < 61; i++) {
      assertThat(straight.x(i)).isCloseTo(contour.x(i), within(1e-12));
      assertThat(straight.y(i)).isCloseTo(contour.y(i), within(1e-12));
    }
  }
}
