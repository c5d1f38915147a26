// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.BodyStation;
import io.github.wingwright.core.geometry.CrossSection;
import io.github.wingwright.core.geometry.EndProfile;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.LoftedBody;
import io.github.wingwright.core.mass.Materials;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.testing.Seeded;
import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.Test;

class BodySolidTest {
  private static final Fuselage CAPSULE = new Fuselage(BodyShape.capsule(), mm(220), mm(22));
  private static final WingSeat SEAT = new WingSeat(mm(40), mm(130), mm(8), Angle.ZERO);
  private static final TailSlots SLOTS = new TailSlots(mm(170), mm(178), mm(0), mm(1));
  private static final Length FINE = Length.micrometres(10);

  private static Length mm(double value) {
    return Length.millimetres(value);
  }

  private static double volume(Solid solid, Length tolerance) {
    return MeshCheck.of(solid.mesh(tolerance)).volume().cubicMillimetres();
  }

  /** Area of the part of a circle above a chord. */
  private static double segment(double r, double height) {
    double half = Math.acos(height / r);
    return r * r * (half - Math.sin(half) * Math.cos(half));
  }

  @Test
  void bodies_of_every_kind_are_closed_and_have_their_volume_within_the_tolerance() {
    List<Fuselage> bodies = List.of(
        CAPSULE,
        new Fuselage(BodyShape.prolateSpheroid(), mm(200), mm(30)),
        new Fuselage(BodyShape.searsHaack(), mm(200), mm(20)),
        new Fuselage(BodyShape.noseCylinderCone(1.5, 3), mm(200), mm(20)),
        new Fuselage(BodyShape.of(EndProfile.tangentOgive(), 2, EndProfile.boatTail(0.4), 1.5), mm(180), mm(24)),
        new Fuselage(BodyShape.podAndBoom(EndProfile.tangentOgive(), 1.5, 4, 1, 0.3), mm(300), mm(30)),
        new Fuselage(BodyShape.capsule().upswept(3, Angle.degrees(8), 0.5), mm(220), mm(22)),
        lofted().fuselage());
    for (Fuselage body : bodies) {
      double exact = body.volume().cubicMillimetres();
      double skin = body.wettedArea().squareMillimetres();
      for (double tolerance : new double[] {0.2, 0.05, 0.01}) {
        MeshCheck check = MeshCheck.of(BodySolid.of(body).mesh(mm(tolerance)));
        double volume = check.volume().cubicMillimetres();
        assertThat(Math.abs(exact - volume)).as("%s at %s mm", body, tolerance).isLessThan(skin * tolerance);
        assertThat(check.box().length().millimetres()).isCloseTo(body.length().millimetres(), within(1e-9));
      }
    }
  }

  @Test
  void every_cross_section_is_closed_and_of_its_volume_at_extreme_tolerances() {
    for (CrossSection section : List.of(
        CrossSection.ellipse(),
        CrossSection.roundedRectangle(0.15),
        CrossSection.roundedRectangle(0.8),
        CrossSection.superellipse(2.5),
        CrossSection.superellipse(4.0))) {
      Fuselage body = LoftedBody.withBase(
              EndProfile.tangentOgive(),
              List.of(
                  new BodyStation(mm(15), mm(12), mm(16), mm(0), section),
                  new BodyStation(mm(40), mm(12), mm(15), mm(1), section),
                  new BodyStation(mm(70), mm(5), mm(7), mm(3), CrossSection.ellipse())))
          .fuselage();
      double exact = body.volume().cubicMillimetres();
      double skin = body.wettedArea().squareMillimetres();
      for (double tolerance : new double[] {0.001, 0.01, 0.05, 0.5, 5.0}) {
        double volume = volume(BodySolid.of(body), mm(tolerance));
        assertThat(Math.abs(exact - volume))
            .as("%s at %s mm", section, tolerance)
            .isLessThan(Math.min(0.9 * exact, skin * tolerance + 1e-6 * exact));
      }
    }
  }

  /** Points stand close together only in the corners: evenly apart they made 65,950 triangles of this body. */
  @Test
  void flat_sides_take_few_triangles() {
    CrossSection box = CrossSection.roundedRectangle(0.15);
    Fuselage body = LoftedBody.withBase(
            EndProfile.tangentOgive(),
            List.of(
                new BodyStation(mm(15), mm(12), mm(16), mm(0), box),
                new BodyStation(mm(40), mm(12), mm(15), mm(1), box),
                new BodyStation(mm(70), mm(5), mm(7), mm(3), CrossSection.ellipse())))
        .fuselage();
    assertThat(BodySolid.of(body).mesh(FINE).triangles()).isLessThan(20_000);
  }

  private static LoftedBody lofted() {
    return LoftedBody.withBase(
        EndProfile.tangentOgive(),
        List.of(
            new BodyStation(mm(30), mm(24), mm(30), mm(0), CrossSection.roundedRectangle(0.4)),
            new BodyStation(mm(120), mm(24), mm(32), mm(1), CrossSection.roundedRectangle(0.4)),
            new BodyStation(mm(220), mm(12), mm(14), mm(6), CrossSection.ellipse())));
  }

  @Test
  void no_point_of_the_mesh_of_a_capsule_strays_from_it() {
    for (double tolerance : new double[] {0.2, 0.05, 0.01}) {
      TriangleMesh mesh = BodySolid.of(CAPSULE).mesh(mm(tolerance));
      double worst = 0.0;
      for (int t = 0; t < mesh.triangles(); t++) {
        double[] p = new double[3];
        for (int axis = 0; axis < 3; axis++) {
          for (int k = 0; k < 3; k++) {
            p[axis] += 1e3 / 3.0 * mesh.coordinate(mesh.corner(t, k), axis);
          }
        }
        double x = p[0] - Math.max(11.0, Math.min(209.0, p[0]));
        worst = Math.max(worst, Math.abs(11.0 - Math.sqrt(x * x + p[1] * p[1] + p[2] * p[2])));
      }
      assertThat(worst).as("at %s mm", tolerance).isLessThan(tolerance);
    }
  }

  @Test
  void a_coarse_piece_does_not_cut_into_its_own_socket() {
    // Sides of a round body of 22 mm at 1.6 mm cut off 0.8 mm, more than the skin of half a millimetre around the socket.
    BodySolid whole = BodySolid.of(new Fuselage(BodyShape.capsule(), mm(310.5), mm(22)));
    Spigot spigot = new Spigot(mm(20.8), mm(10), mm(0.1));
    for (double tolerance : new double[] {0.05, 0.4, 1.6, 5}) {
      BodySolid aft = whole.between(mm(74.52), mm(204.93)).startingOver(spigot, Length.ZERO).endingWith(spigot);
      // Refused with the place if an edge were not shared by two.
      assertThat(MeshCheck.of(aft.mesh(mm(tolerance))).volume().cubicCentimetres()).as("at %s mm", tolerance).isBetween(43.0, 50.0);
    }
  }

  @Test
  void a_spigot_finds_room_at_the_bottom_of_its_socket_where_a_boom_gets_thinner() {
    Fuselage boom = new Fuselage(BodyShape.podAndBoom(EndProfile.tangentOgive(), 2, 5, 1, 0.35), mm(2000), mm(70));
    SlenderPart part = SlenderPart.body(boom, Materials.PLA, mm(1), x -> 1);
    Segmentation cut = Segmentation.of(part, BuildVolume.box(mm(120), mm(120), mm(120)), EnumSet.of(Lay.UPRIGHT));
    assertThat(cut.segments()).hasSizeGreaterThan(15);
    List<BodySolid> pieces = Pieces.ofBody(BodySolid.of(boom), cut);
    assertThat(pieces).hasSameSizeAs(cut.segments());
    pieces.forEach(piece -> assertThat(MeshCheck.of(piece.mesh(mm(0.2))).volume().si()).as("%s", piece).isPositive());
  }

  /** Where the seat goes below the middle of the body, the diameter of the spigot was a negative number. */
  @Test
  void a_joint_without_room_is_refused_with_its_place() {
    SlenderPart part = SlenderPart.body(CAPSULE, Materials.FOAMING_PLA, mm(0.84), x -> 1e-9);
    Segmentation cut = Segmentation.of(part, BuildVolume.box(mm(150), mm(150), mm(150)), EnumSet.of(Lay.UPRIGHT));
    assertThat(cut.joints()).hasSize(1);
    assertThat(cut.joints().get(0).kind()).isEqualTo(JointKind.TONGUE);
    for (double floor : new double[] {-2, 0, 1.2}) {
      BodySolid low = BodySolid.of(CAPSULE).with(new WingSeat(mm(20), mm(200), mm(floor), Angle.ZERO));
      assertThatThrownBy(() -> Pieces.ofBody(low, cut))
          .isInstanceOf(IllegalStateException.class)
          .hasMessageMatching("a joint at [0-9.]+ mm from the nose must leave room for a tongue of 0.84 mm inside a wall as"
              + " thick, leaves [-0-9.]+ mm around the middle of the body");
    }
    BodySolid high = BodySolid.of(CAPSULE).with(new WingSeat(mm(20), mm(200), mm(1.6), Angle.ZERO));
    assertThat(Pieces.ofBody(high, cut)).hasSize(2);
  }

  @Test
  void a_flat_seat_takes_a_segment_of_the_circle_along_its_length() {
    double cut = volume(BodySolid.of(CAPSULE), FINE) - volume(BodySolid.of(CAPSULE).with(SEAT), FINE);
    assertThat(cut).isCloseTo(90.0 * segment(11.0, 8.0), withinPercentage(0.3));
  }

  @Test
  void a_seat_as_steep_as_the_wing_takes_less() {
    WingSeat steep = new WingSeat(mm(40), mm(130), mm(8), Angle.degrees(12));
    double flat = volume(BodySolid.of(CAPSULE).with(SEAT), FINE);
    double bent = volume(BodySolid.of(CAPSULE).with(steep), FINE);
    // The seat meets the circle of 11 mm at the half width w with w² + (8 + w·tan 12°)² = 11²: sector less triangle.
    double tan = Angle.degrees(12).tangent();
    double w = (-8.0 * tan + Math.sqrt(64.0 * tan * tan + (1.0 + tan * tan) * (121.0 - 64.0))) / (1.0 + tan * tan);
    double area = 121.0 * Math.asin(w / 11.0) - 8.0 * w;
    assertThat(volume(BodySolid.of(CAPSULE), FINE) - bent).isCloseTo(90.0 * area, withinPercentage(0.3));
    assertThat(bent).isGreaterThan(flat);
  }

  @Test
  void slots_take_their_width_and_the_end_behind_them() {
    double before = volume(BodySolid.of(CAPSULE), FINE);
    MeshCheck check = MeshCheck.of(BodySolid.of(CAPSULE).with(SLOTS).mesh(FINE));
    // Level: 39 mm of 22 × 1 and a half circle of 11 mm; upright: 31 mm of 10.5 × 1 and a quarter circle.
    double level = 39.0 * 22.0 + 0.5 * Math.PI * 121.0;
    double upright = 31.0 * 10.5 + 0.25 * Math.PI * 110.25;
    assertThat(before - check.volume().cubicMillimetres()).isCloseTo(level + upright, withinPercentage(0.5));
    assertThat(check.box().length().millimetres()).isBetween(219.7, 219.9);
  }

  @Test
  void the_mark_stands_out_below() {
    MeshCheck plain = MeshCheck.of(BodySolid.of(CAPSULE).mesh(FINE));
    MeshCheck marked = MeshCheck.of(BodySolid.of(CAPSULE).markedAt(mm(80)).mesh(FINE));
    assertThat(marked.box().least().z().minus(plain.box().least().z()).millimetres()).isCloseTo(-0.4, within(0.005));
    assertThat(marked.box().most().z()).isEqualTo(plain.box().most().z());
  }

  @Test
  void pieces_with_spigot_and_socket_make_up_the_body() {
    Spigot spigot = new Spigot(mm(10), mm(12), mm(0.15));
    BodySolid body = BodySolid.of(CAPSULE).with(SEAT).with(SLOTS).markedAt(mm(80));
    double fore = volume(body.between(mm(0), mm(150)).endingWith(spigot), FINE);
    double rear = volume(body.between(mm(150), mm(220)).startingOver(spigot, Length.ZERO), FINE);
    double plug = Math.PI * 25.0 * 12.0;
    double hole = Math.PI * 5.15 * 5.15 * 12.15;
    assertThat(fore + rear).isCloseTo(volume(body, FINE) + plug - hole, withinPercentage(0.02));
    double tubed = volume(body.between(mm(0), mm(150)).endingOver(spigot, Length.ZERO), FINE);
    assertThat(fore - tubed).isCloseTo(plug + hole, withinPercentage(0.3));
  }

  @Test
  void what_does_not_fit_is_an_error_that_says_where() {
    WingSeat high = new WingSeat(mm(40), mm(130), mm(12), Angle.ZERO);
    assertThatThrownBy(() -> BodySolid.of(CAPSULE).with(high).mesh(mm(0.05)))
        .isInstanceOf(IllegalStateException.class)
        .hasMessage(
            "the wing seat must cut the outline of the body, which at 40 mm from the nose reaches from -11 mm to 11 mm above"
                + " the reference line, where that cut would lie at 12 mm");
    WingSeat far = new WingSeat(mm(40), mm(175), mm(8), Angle.ZERO);
    assertThatThrownBy(() -> BodySolid.of(CAPSULE).with(far).with(SLOTS).mesh(mm(0.05)))
        .hasMessageContaining("must end ahead of the tail slots");
    Spigot wide = new Spigot(mm(17), mm(12), mm(0.1));
    assertThatThrownBy(() -> BodySolid.of(CAPSULE).with(SEAT).between(mm(0), mm(100)).endingWith(wide).mesh(mm(0.05)))
        .hasMessageContaining("a joint of 17 mm must leave a skin")
        .hasMessageContaining("at x 100 mm");
    Fuselage thin = new Fuselage(BodyShape.capsule(), mm(220), mm(3.2));
    assertThatThrownBy(() -> BodySolid.of(thin).with(SLOTS).mesh(mm(0.05)))
        .isInstanceOf(IllegalStateException.class)
        .hasMessage("a body must reach 2 mm from the middle of its tail slots aside, above and below, at 170 mm from the nose it reaches 1.6 mm");
    assertThatThrownBy(() -> BodySolid.of(CAPSULE).markedAt(mm(300))).hasMessageContaining("place of the mark");
    assertThatThrownBy(() -> BodySolid.of(CAPSULE).between(mm(100), mm(90))).hasMessageContaining("piece");
  }

  @Test
  void bodies_with_everything_drawn_at_random_are_watertight() {
    Seeded.points(
            61125,
            30,
            new double[] {8, 40},
            new double[] {6, 14},
            new double[] {0.35, 0.85},
            new double[] {0, 20},
            new double[] {0.02, 0.1},
            new double[] {0.02, 0.2},
            new double[] {0, 1})
        .forEach(p -> {
          double d = p[0];
          double length = d * p[1];
          BodyShape shape = p[6] < 0.4 ? BodyShape.capsule() : p[6] < 0.7 ? BodyShape.noseCylinderCone(1, 2) : BodyShape.prolateSpheroid();
          WingSeat seat =
              new WingSeat(mm(0.3 * length), mm(0.6 * length), mm(0.5 * d * p[2]), Angle.degrees(p[3]));
          TailSlots slots = new TailSlots(mm((0.75 + 0.3 * p[4]) * length), mm(0.78 * length), mm(0), mm(p[4] * d));
          Fuselage body = new Fuselage(shape, mm(length), mm(d));
          BodySolid solid = BodySolid.of(body).with(seat).with(slots).markedAt(mm(0.4 * length));
          double whole = volume(solid, mm(p[5]));
          assertThat(whole).isBetween(0.5 * body.volume().cubicMillimetres(), body.volume().cubicMillimetres());
          double fore = volume(solid.between(mm(0), mm(0.5 * length)), mm(p[5]));
          double rear = volume(solid.between(mm(0.5 * length), mm(length)), mm(p[5]));
          assertThat(fore + rear).isCloseTo(whole, withinPercentage(3));
        });
  }

  /** The end of a socket, reckoned from its bottom, missed the seam by a rounding error and left needles there. */
  @Test
  void a_feature_that_ends_at_a_seam_or_less_than_a_hair_from_it_leaves_no_needles() {
    Spigot tube = new Spigot(mm(4), mm(13.7), mm(0.1));
    BodySolid body = BodySolid.of(CAPSULE);
    Seeded.doubles(129, 60, 60, 150).forEach(seam ->
        assertThat(volume(body.between(Length.ZERO, mm(seam)).endingOver(tube, Length.ZERO), mm(0.5))).isPositive());
    for (double hair : new double[] {0.0, 1e-12, 1e-8, 1e-6, 1e-4, 9e-4}) {
      for (double edge : new double[] {0.5, -0.5}) {
        BodySolid marked = body.markedAt(mm(90 + edge + hair));
        double whole = volume(marked, mm(0.5));
        double fore = volume(marked.between(Length.ZERO, mm(90)), mm(0.5));
        double aft = volume(marked.between(mm(90), mm(220)), mm(0.5));
        assertThat(fore + aft).as("mark %s mm from the seam", edge + hair).isCloseTo(whole, withinPercentage(2));
      }
    }
  }

  /** The break of the rib kept its angle and came within micrometres of the slot's where a tail rises. */
  @Test
  void a_tail_that_rises_above_its_slot_ends_where_it_leaves_it() {
    TailSlots slots = new TailSlots(mm(144.5), mm(155), mm(0), mm(2.145));
    for (double rise = 4.0; rise < 5.2; rise += 0.02) {
      assertThat(volume(BodySolid.of(rising(rise)).with(slots).markedAt(mm(83.4)), mm(0.05))).isPositive();
    }
    // At 144.5 mm the middle is 0.1 mm up and the body 10.5 mm thick; towards the end it rises round the slot.
    TailSlots high = new TailSlots(mm(144.5), mm(155), mm(6.7), mm(2.145));
    assertThatThrownBy(() -> BodySolid.of(rising(14)).with(high).mesh(mm(0.05)))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageMatching(
            "the tailplane's slot must leave a skin of 0.2 mm of the body, leaves [-0-9.]+ mm above it at 144.5 mm from the nose");
  }

  private static Fuselage rising(double degrees) {
    BodyShape shape = BodyShape.of(EndProfile.tangentOgive(), 1.5, EndProfile.hemisphere(), 0.5);
    return new Fuselage(shape.upswept(3, Angle.degrees(degrees), 0.5), mm(172), mm(10.5));
  }
}
