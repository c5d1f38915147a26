// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.geometry.AirfoilSection;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.mass.Materials;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Moment;
import java.util.List;
import org.junit.jupiter.api.Test;

class PrintGuidelinesTest {
  private static Length mm(double value) {
    return Length.millimetres(value);
  }

  /** A straight part whose rear edge leans. */
  private static SlenderPart part(double wall, double lean) {
    return new SlenderPart(
        "panel",
        Materials.PLA,
        mm(wall),
        List.of(
            new SlenderPart.Station(Length.ZERO, Length.ZERO, mm(80), mm(6), Moment.ZERO),
            new SlenderPart.Station(mm(100), Length.ZERO, mm(80 + 100 * Math.tan(Math.toRadians(lean))), mm(6), Moment.ZERO)));
  }

  @Test
  void a_part_within_all_guidelines_has_no_finding() {
    assertThat(PrintGuidelines.check(part(0.84, 30), Orientation.UPRIGHT)).isEmpty();
    assertThat(PrintGuidelines.check(part(0.42, 30), Orientation.UPRIGHT)).isEmpty();
  }

  @Test
  void a_wall_between_one_line_and_two_and_one_thinner_than_a_line_are_found() {
    assertThat(PrintGuidelines.check(part(0.3, 0), Orientation.UPRIGHT))
        .singleElement()
        .satisfies(f -> assertThat(f.subject()).isEqualTo("panel: single wall of a closed shell"));
    assertThat(PrintGuidelines.check(part(0.75, 0), Orientation.UPRIGHT)).hasSize(1);
  }

  @Test
  void the_lean_is_the_angle_of_the_edge_and_counts_only_standing() {
    assertThat(PrintGuidelines.lean(part(0.84, 55), 0).degrees()).isCloseTo(55, within(1e-9));
    assertThat(PrintGuidelines.check(part(0.84, 55), Orientation.UPRIGHT))
        .singleElement()
        .satisfies(f -> assertThat(f.value().orElseThrow()).isCloseTo(Math.toRadians(55), within(1e-12)));
    assertThat(PrintGuidelines.check(part(0.84, 55), Orientation.STRAIGHT)).isEmpty();
  }

  @Test
  void a_slim_capsule_on_end_is_a_caution_and_a_thin_one_a_bridge() {
    SlenderPart thick = SlenderPart.body(new Fuselage(BodyShape.capsule(), mm(256), mm(40)), Materials.PLA, mm(0.84), x -> 0);
    assertThat(PrintGuidelines.check(thick, Orientation.UPRIGHT)).anySatisfy(f -> assertThat(f.severity()).isEqualTo(Severity.CAUTION));
    SlenderPart thin = SlenderPart.body(new Fuselage(BodyShape.capsule(), mm(256), mm(9)), Materials.PLA, mm(0.84), x -> 0);
    assertThat(PrintGuidelines.check(thin, Orientation.UPRIGHT))
        .extracting(f -> f.subject())
        .contains("fuselage: height over the width of the foot", "fuselage: overhang from the vertical");
  }

  @Test
  void the_modulus_of_a_skin_is_that_of_the_figure_its_outline_draws() {
    // A rectangle 1 × 0.1: I = 2·(0.05² · 1) + 2·(0.1³/12), Z = I/0.05.
    AirfoilSection box = new Box();
    double across = SectionStrength.acrossChord(box, Length.metres(2), mm(1));
    double exact = 1e-3 * 4 * (2 * 0.0025 + 2 * 0.001 / 12) / 0.05;
    assertThat(across).isCloseTo(exact, within(0.02 * exact));
    double along = SectionStrength.alongChord(box, Length.metres(2), mm(1));
    double plane = 1e-3 * 4 * (2.0 / 12 + 2 * 0.1 * 0.25) / 0.5;
    assertThat(along).isCloseTo(plane, within(0.02 * plane));
  }

  /** A rectangle as a section, its outline from one corner of the rear edge around. */
  private static final class Box implements AirfoilSection {
    @Override
    public String name() {
      return "box";
    }

    @Override
    public double maximumThickness() {
      return 0.1;
    }

    @Override
    public double maximumThicknessPosition() {
      return 0.5;
    }

    @Override
    public double maximumCamber() {
      return 0;
    }

    @Override
    public double trailingEdgeThickness() {
      return 0.1;
    }

    @Override
    public double area() {
      return 0.1;
    }

    @Override
    public double perimeter() {
      return 2.2;
    }

    @Override
    public double thickness(double x) {
      return 0.1;
    }

    @Override
    public double camber(double x) {
      return 0;
    }

    @Override
    public double camberSlope(double x) {
      return 0;
    }

    @Override
    public void outline(double[] x, double[] y) {
      int n = x.length;
      for (int i = 0; i < n; i++) {
        double s = 2.2 * i / (n - 1);
        if (s <= 1) {
          x[i] = 1 - s;
          y[i] = 0.05;
        } else if (s <= 1.1) {
          x[i] = 0;
          y[i] = 0.05 - (s - 1);
        } else if (s <= 2.1) {
          x[i] = s - 1.1;
          y[i] = -0.05;
        } else {
          x[i] = 1;
          y[i] = -0.05 + (s - 2.1);
        }
      }
    }
  }

  @Test
  void a_step_that_the_part_has_not_is_refused() {
    for (int step : new int[] {-1, 1}) {
      assertThatIllegalArgumentException().isThrownBy(() -> PrintGuidelines.lean(part(0.84, 30), step))
          .withMessage("number of the step must be 0 to 0, was " + step);
    }
  }
}
