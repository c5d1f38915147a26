// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.geometry.AirfoilSection;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.Panel;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.mass.Materials;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.Moment;
import java.util.EnumSet;
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
  void a_body_in_pieces_is_held_by_the_height_of_each_piece_not_by_its_whole_length() {
    SlenderPart tall = SlenderPart.body(new Fuselage(BodyShape.capsule(), mm(600), mm(20)), Materials.PLA, mm(0.84), x -> 0);
    Segmentation three = Segmentation.of(tall, BuildVolume.box(mm(200), mm(200), mm(230)), EnumSet.of(Lay.UPRIGHT));
    assertThat(three.segments()).hasSize(3);
    assertThat(PrintGuidelines.check(tall, Orientation.UPRIGHT)).anySatisfy(f -> assertThat(f.subject()).contains("foot"));
    assertThat(PrintGuidelines.check(three)).noneSatisfy(f -> assertThat(f.subject()).contains("foot"));
    // Of 600 mm in pieces of up to 290 mm the longest stands 14 times as high as wide.
    Segmentation slim = Segmentation.of(tall, BuildVolume.box(mm(200), mm(200), mm(300)), EnumSet.of(Lay.UPRIGHT));
    double longest = slim.segments().stream().mapToDouble(s -> s.length().millimetres()).max().orElseThrow();
    assertThat(PrintGuidelines.check(slim))
        .filteredOn(f -> f.subject().contains("foot"))
        .singleElement()
        .satisfies(f -> {
          assertThat(f.subject()).matches("fuselage, piece . of 3: height over the width of the foot");
          assertThat(f.value().orElseThrow()).isCloseTo(longest / 20, within(1e-9));
        });
    // The round ends lean in the first and the last piece, not in between: said once.
    assertThat(PrintGuidelines.check(three)).filteredOn(f -> f.subject().contains("overhang")).hasSize(1);
  }

  private static Joint joint(JointKind kind, double size, double clearance) {
    return new Joint(kind, mm(50), mm(8), mm(size), mm(clearance), Mass.ZERO, Moment.ZERO, Moment.newtonMetres(1));
  }

  @Test
  void pins_holes_and_tongues_of_joints_are_held_against_the_machine() {
    assertThat(PrintGuidelines.check("seam", joint(JointKind.DOWEL, 1.8, 0.2))).isEmpty();
    assertThat(PrintGuidelines.check("seam", joint(JointKind.DOWEL, 1.5, 0.2)))
        .extracting(f -> f.subject())
        .containsExactly("seam: pin", "seam: hole");
    assertThat(PrintGuidelines.check("seam", joint(JointKind.TUBE, 1.5, 0.1))).extracting(f -> f.subject()).containsExactly("seam: hole");
    assertThat(PrintGuidelines.check("seam", joint(JointKind.TUBE, 2.0, 0.1))).isEmpty();
    assertThat(PrintGuidelines.check("seam", joint(JointKind.TONGUE, 0.84, 0.1))).isEmpty();
    assertThat(PrintGuidelines.check("seam", joint(JointKind.TONGUE, 0.6, 0.1)))
        .extracting(f -> f.subject())
        .containsExactly("seam: smallest feature");
    assertThat(PrintGuidelines.check("rod", Bore.along(0.3, mm(1.2), Length.ZERO, mm(30))))
        .hasValueSatisfying(f -> assertThat(f.value().orElseThrow()).isCloseTo(1.2e-3, within(1e-15)));
    assertThat(PrintGuidelines.check("rod", Bore.along(0.3, mm(2.2), Length.ZERO, mm(30)))).isEmpty();
  }

  @Test
  void a_wing_thinner_at_its_tip_than_the_smallest_feature_is_found_a_pointed_body_is_not() {
    SlenderPart thin = new SlenderPart("panel", Materials.PLA, mm(0.42), List.of(
        new SlenderPart.Station(Length.ZERO, Length.ZERO, mm(40), mm(2), Moment.ZERO),
        new SlenderPart.Station(mm(100), Length.ZERO, mm(20), mm(0.7), Moment.ZERO)));
    assertThat(PrintGuidelines.check(thin, Orientation.UPRIGHT)).extracting(f -> f.subject()).containsExactly("panel: smallest feature");
    SlenderPart body = SlenderPart.body(new Fuselage(BodyShape.capsule(), mm(100), mm(20)), Materials.PLA, mm(0.84), x -> 0);
    assertThat(PrintGuidelines.check(body, Orientation.UPRIGHT)).noneSatisfy(f -> assertThat(f.subject()).contains("feature"));
  }

  @Test
  void the_trailing_edge_is_looked_at_where_the_chord_is_least_wherever_that_is() {
    // An edge of 1 % of the chord: 0.5 mm at the root of 50 mm, 0.9 mm at 90 mm, 0.3 mm at the waist of 30 mm.
    Planform waisted = Planform.symmetric(mm(50), List.of(
        new Panel(mm(100), mm(30), Angle.ZERO, Angle.ZERO, Angle.ZERO),
        new Panel(mm(100), mm(90), Angle.ZERO, Angle.ZERO, Angle.ZERO)));
    AirfoilSection blunt = new Box() {
      @Override
      public double trailingEdgeThickness() {
        return 0.01;
      }
    };
    Wing wing = Wing.of(waisted, blunt);
    assertThat(PrintGuidelines.trailingEdge(wing, mm(0.42))).hasValueSatisfying(f -> {
      assertThat(f.severity()).isEqualTo(Severity.NOTE);
      assertThat(f.value().orElseThrow()).isCloseTo(0.3e-3, within(1e-12));
      assertThat(f.message()).contains("0.3 mm thick at 100 mm from the root").contains("0.42 mm, a line wide");
    });
    assertThat(PrintGuidelines.trailingEdge(wing, mm(0.2)))
        .hasValueSatisfying(f -> assertThat(f.severity()).isEqualTo(Severity.CAUTION));
    Wing stout = Wing.of(Planform.tapered(mm(200), mm(50), mm(40)), blunt);
    assertThat(PrintGuidelines.trailingEdge(stout, mm(0.2))).isEmpty();
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
  private static class Box implements AirfoilSection {
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
