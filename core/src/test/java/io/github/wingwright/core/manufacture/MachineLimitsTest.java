// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.mass.Materials;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Moment;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The limits of machines tried by brute force: boxes turned in every way, parts cut in every way. */
class MachineLimitsTest {
  private static final Set<Lay> FLAT = EnumSet.of(Lay.STRAIGHT, Lay.DIAGONAL, Lay.ON_EDGE, Lay.UPRIGHT);

  private static Length mm(double value) {
    return Length.millimetres(value);
  }

  private static BuildVolume box(double a, double b, double c) {
    return BuildVolume.box(mm(a), mm(b), mm(c));
  }

  private static BuildVolume round(double diameter, double height) {
    return BuildVolume.cylinder(mm(diameter), mm(height));
  }

  /** A part of some stations: place, front, rear, depth [mm], bending [N·mm]. */
  private static SlenderPart part(double[]... stations) {
    List<SlenderPart.Station> all = new ArrayList<>();
    for (double[] s : stations) {
      all.add(new SlenderPart.Station(mm(s[0]), mm(s[1]), mm(s[2]), mm(s[3]), Moment.newtonMetres(1e-3 * s[4])));
    }
    return new SlenderPart("beam", Materials.PLA, mm(0.42), all);
  }

  private static SlenderPart bar(double length, double width, double depth) {
    return part(new double[] {0, 0, width, depth, 1}, new double[] {length, 0, width, depth, 1});
  }

  /** Whether a block with one side upright fits at any of many angles on the bed, by its corners alone. */
  private static boolean fitsTurned(BuildVolume machine, double p, double w, double up) {
    if (up > machine.height().millimetres()) {
      return false;
    }
    if (machine.isRound()) {
      return Math.hypot(p, w) <= machine.bedLength().millimetres();
    }
    for (int i = 0; i <= 9000; i++) {
      double t = 0.5 * Math.PI * i / 9000;
      if (p * Math.cos(t) + w * Math.sin(t) <= machine.bedLength().millimetres()
          && p * Math.sin(t) + w * Math.cos(t) <= machine.bedWidth().millimetres()) {
        return true;
      }
    }
    return false;
  }

  private static boolean fitsSomehow(BuildVolume machine, double l, double w, double d) {
    return fitsTurned(machine, l, w, d) || fitsTurned(machine, l, d, w) || fitsTurned(machine, w, d, l);
  }

  @Test
  void a_block_fits_just_where_a_search_over_all_turns_on_the_bed_finds_room() {
    Random random = new Random(1601);
    int fitting = 0;
    for (int n = 0; n < 2000; n++) {
      double a = 50 + 250 * random.nextDouble();
      double b = n % 4 == 0 ? a : 50 + 250 * random.nextDouble();
      double c = 50 + 250 * random.nextDouble();
      BuildVolume machine = n % 3 == 0 ? round(a, c) : box(a, b, c);
      double l = 20 + 330 * random.nextDouble();
      double w = 5 + 300 * random.nextDouble() * random.nextDouble();
      double d = 2 + 200 * random.nextDouble() * random.nextDouble();
      boolean fits = machine.orientation(mm(l), mm(w), mm(d), FLAT).isPresent();
      // The search steps by 0.01°: what it finds is there, and 0.1 mm less it must find.
      if (fitsSomehow(machine, l, w, d)) {
        assertThat(fits).as("%s × %s × %s in %s", l, w, d, machine).isTrue();
      }
      if (fits) {
        fitting++;
        assertThat(fitsSomehow(machine, l - 0.1, w - 0.1, d - 0.1)).as("%s × %s × %s in %s", l, w, d, machine).isTrue();
      }
    }
    assertThat(fitting).isBetween(400, 1600);
  }

  @Test
  void an_orientation_puts_every_corner_into_the_machine() {
    Random random = new Random(1602);
    int checked = 0;
    for (int n = 0; n < 300; n++) {
      BuildVolume machine =
          n % 2 == 0
              ? round(100 + 200 * random.nextDouble(), 100 + 200 * random.nextDouble())
              : box(100 + 200 * random.nextDouble(), 100 + 200 * random.nextDouble(), 100 + 200 * random.nextDouble());
      double[] size = {50 + 300 * random.nextDouble(), 5 + 120 * random.nextDouble(), 2 + 60 * random.nextDouble()};
      var found = machine.orientation(mm(size[0]), mm(size[1]), mm(size[2]));
      if (found.isPresent()) {
        checked++;
        assertThat(staysInside(machine, size, found.get())).as("%s in %s %s", mm(size[0]), machine, found.get()).isTrue();
      }
    }
    assertThat(checked).isGreaterThan(100);
  }

  /** A standing part wider than the bed is deep was not turned, so that its corners stood over the rim. */
  @Test
  void a_standing_part_is_turned_so_that_its_section_lies_on_the_bed() {
    Random random = new Random(1604);
    int turned = 0;
    for (int n = 0; n < 600; n++) {
      BuildVolume machine = box(80 + 200 * random.nextDouble(), 80 + 200 * random.nextDouble(), 200);
      double[] size = {50 + 140 * random.nextDouble(), 5 + 300 * random.nextDouble(), 2 + 60 * random.nextDouble()};
      if (n % 2 == 0) {
        size = new double[] {size[0], size[2], size[1]};
      }
      var found = machine.orientation(mm(size[0]), mm(size[1]), mm(size[2]), EnumSet.of(Lay.UPRIGHT));
      if (found.isPresent()) {
        turned += found.get().turned().si() > 0 ? 1 : 0;
        assertThat(staysInside(machine, size, found.get())).as("%s × %s in %s %s", size[1], size[2], machine, found.get()).isTrue();
      }
    }
    assertThat(turned).isGreaterThan(50);
  }

  /** Corners by rotation matrices: roll about the length, then up, then around on the bed. */
  private static boolean staysInside(BuildVolume machine, double[] size, Orientation lying) {
    double[] low = {1e9, 1e9, 1e9};
    double[] high = {-1e9, -1e9, -1e9};
    double far = 0;
    for (int corner = 0; corner < 8; corner++) {
      double x = ((corner & 1) - 0.5) * size[0];
      double y = ((corner >> 1 & 1) - 0.5) * size[1];
      double z = ((corner >> 2 & 1) - 0.5) * size[2];
      double cr = Math.cos(lying.rolled().si());
      double sr = Math.sin(lying.rolled().si());
      double[] rolled = {x, y * cr - z * sr, y * sr + z * cr};
      double ce = Math.cos(lying.raised().si());
      double se = Math.sin(lying.raised().si());
      double[] raised = {rolled[0] * ce - rolled[2] * se, rolled[1], rolled[0] * se + rolled[2] * ce};
      double ca = Math.cos(lying.turned().si());
      double sa = Math.sin(lying.turned().si());
      double[] turned = {raised[0] * ca - raised[1] * sa, raised[0] * sa + raised[1] * ca, raised[2]};
      for (int i = 0; i < 3; i++) {
        low[i] = Math.min(low[i], turned[i]);
        high[i] = Math.max(high[i], turned[i]);
      }
      far = Math.max(far, Math.hypot(turned[0], turned[1]));
    }
    double slack = 1e-5;
    double tall = machine.height().millimetres() + slack;
    if (machine.isRound()) {
      return 2 * far <= machine.bedLength().millimetres() + slack && high[2] - low[2] <= tall;
    }
    return high[0] - low[0] <= machine.bedLength().millimetres() + slack
        && high[1] - low[1] <= machine.bedWidth().millimetres() + slack
        && high[2] - low[2] <= tall;
  }

  @Test
  void a_bar_raised_in_a_box_is_as_long_as_random_attitudes_find() {
    Random random = new Random(1603);
    for (double[] c : new double[][] {{250, 210, 220, 20, 20}, {100, 100, 100, 15, 3}, {300, 150, 80, 10, 40}}) {
      BuildVolume machine = box(c[0], c[1], c[2]);
      double longest = machine.longest(Lay.RAISED, mm(c[3]), mm(c[4])).millimetres();
      double best = 0;
      for (int n = 0; n < 1_000_000; n++) {
        double[] q = {random.nextGaussian(), random.nextGaussian(), random.nextGaussian(), random.nextGaussian()};
        best = Math.max(best, lengthAt(new double[] {c[0], c[1], c[2]}, c[3], c[4], q));
      }
      assertThat(longest).isGreaterThan(best * (1 - 1e-4)).isLessThan(best * 1.03);
    }
  }

  /** The longest bar with axes of a random rotation, by quaternion. */
  private static double lengthAt(double[] box, double w, double d, double[] q) {
    double norm = Math.sqrt(q[0] * q[0] + q[1] * q[1] + q[2] * q[2] + q[3] * q[3]);
    double r = q[0] / norm;
    double i = q[1] / norm;
    double j = q[2] / norm;
    double k = q[3] / norm;
    double[] u = {1 - 2 * (j * j + k * k), 2 * (i * j + k * r), 2 * (i * k - j * r)};
    double[] v = {2 * (i * j - k * r), 1 - 2 * (i * i + k * k), 2 * (j * k + i * r)};
    double[] n = {2 * (i * k + j * r), 2 * (j * k - i * r), 1 - 2 * (i * i + j * j)};
    double length = Double.POSITIVE_INFINITY;
    for (int axis = 0; axis < 3; axis++) {
      length = Math.min(length, (box[axis] - w * Math.abs(v[axis]) - d * Math.abs(n[axis])) / Math.abs(u[axis]));
    }
    return length;
  }

  @Test
  void a_part_exactly_as_long_as_the_limit_fits_and_one_a_micrometre_longer_does_not() {
    for (BuildVolume machine : List.of(box(180, 180, 180), box(250, 210, 220), round(150, 200), box(0.1 * 3 * 1e3, 210, 180.1))) {
      for (Lay lay : List.of(Lay.STRAIGHT, Lay.DIAGONAL, Lay.ON_EDGE, Lay.UPRIGHT)) {
        for (double[] section : new double[][] {{30, 4}, {17.3, 8.1}, {0, 0}}) {
          double limit = machine.longest(lay, mm(section[0]), mm(section[1])).millimetres();
          EnumSet<Lay> only = EnumSet.of(lay);
          assertThat(machine.orientation(mm(limit), mm(section[0]), mm(section[1]), only)).isPresent();
          assertThat(machine.orientation(mm(limit + 1e-3), mm(section[0]), mm(section[1]), only)).isEmpty();
          Finding too = machine.obstacle("bar", mm(limit + 1e-3), mm(section[0]), mm(section[1]), only).orElseThrow();
          assertThat(too.message()).startsWith("It is 0.001 mm too long");
        }
      }
    }
    // The last bit of a sum does not decide: 0.06 m + 0.12 m is more than 0.18 m in binary.
    assertThat(Length.metres(0.06).plus(Length.metres(0.12)).si()).isGreaterThanOrEqualTo(0.18);
    assertThat(box(180, 180, 180).orientation(mm(180), Length.metres(0.1).plus(Length.metres(0.08)), mm(4))).isPresent();
  }

  @Test
  void a_part_too_wide_in_every_lay_names_the_nearest_limit_and_by_how_much() {
    assertThat(message(box(100, 100, 100), 50, 160, 120))
        .isEqualTo("Its section of 160 mm × 120 mm does not go into the machine of 100 mm × 100 mm × 100 mm: "
            + "lying across the bed at a slant it is 20 mm too deep for the height of 100 mm.");
    assertThat(message(round(150, 200), 60, 140, 110, Lay.UPRIGHT))
        .endsWith("standing on end it is 28 mm too large across its corners for the bed of 150 mm.");
    assertThat(message(box(180, 160, 200), 60, 260, 10, Lay.UPRIGHT)).contains("standing on end it is ").contains(" too wide for the bed of ");
    assertThat(message(box(180, 160, 200), 60, 200, 10, Lay.STRAIGHT))
        .endsWith("lying along a side of the bed it is 20 mm too wide for the bed of 180 mm.");
  }

  private static String message(BuildVolume machine, double l, double w, double d, Lay... lays) {
    Set<Lay> allowed = lays.length == 0 ? FLAT : Set.of(lays);
    Finding finding = machine.obstacle("pod", mm(l), mm(w), mm(d), allowed).orElseThrow();
    double by = finding.value().orElseThrow() - finding.range().orElseThrow().upper();
    assertThat(by).isPositive();
    return finding.message();
  }

  @Test
  void where_no_piece_fits_the_place_is_named_and_a_wing_swept_beyond_the_bed_goes_in_pieces() {
    SlenderPart bulge = part(new double[] {0, 0, 40, 6, 1}, new double[] {300, 0, 140, 6, 0}, new double[] {400, 0, 40, 6, 0});
    Segmentation none = Segmentation.of(bulge, box(100, 100, 100), EnumSet.of(Lay.STRAIGHT));
    assertThat(none.isPossible()).isFalse();
    assertThat(none.findings().get(0).subject()).isEqualTo("beam at 300 mm from its first end");
    assertThat(none.findings().get(0).message()).endsWith("it is 40 mm too wide for the bed of 100 mm.");
    Segmentation flat = Segmentation.of(bar(50, 20, 4), box(60, 60, 4.5), EnumSet.of(Lay.UPRIGHT));
    assertThat(flat.findings().get(0).message()).startsWith("No piece of it goes into the machine");
    SlenderPart swept = part(new double[] {0, 0, 60, 6, 9}, new double[] {260, 260, 320, 6, 0});
    Segmentation pieces = Segmentation.of(swept, box(100, 100, 150), EnumSet.of(Lay.UPRIGHT));
    assertThat(pieces.segments()).hasSizeGreaterThan(2);
    assertThat(pieces.changesForOnePiece()).isNotEmpty();
    assertThat(pieces.findings().get(0).message()).contains("In one piece with: a machine that is 260 mm high, 110 mm more than this one, with a square bed of ");
  }

  @Test
  void what_would_make_it_one_piece_is_of_the_kind_of_the_machine_and_does() {
    assertThat(Segmentation.of(bar(300, 40, 4), round(150, 200), EnumSet.of(Lay.STRAIGHT, Lay.DIAGONAL)).changesForOnePiece())
        .containsExactly("beam shorter by 155.5 mm, to 144.5 mm", "a round bed of ⌀ 302.7 mm, with the part lying across it");
    Random random = new Random(1604);
    int machines = 0;
    for (int n = 0; n < 400; n++) {
      double side = 80 + 200 * random.nextDouble();
      BuildVolume machine = n % 2 == 0 ? round(side, 60 + 200 * random.nextDouble()) : box(side, 0.7 * side, 60 + 200 * random.nextDouble());
      SlenderPart part = bar(100 + 500 * random.nextDouble(), 5 + 120 * random.nextDouble(), 2 + 70 * random.nextDouble());
      EnumSet<Lay> lays = EnumSet.noneOf(Lay.class);
      for (Lay lay : FLAT) {
        if (random.nextBoolean()) {
          lays.add(lay);
        }
      }
      if (lays.isEmpty() || Segmentation.of(part, machine, lays).segments().size() == 1) {
        continue;
      }
      List<OnePiece.Other> others = new OnePiece(part, machine, lays).machines();
      assertThat(others).isNotEmpty();
      for (OnePiece.Other other : others) {
        machines++;
        assertThat(other.machine().isRound()).isEqualTo(machine.isRound());
        assertThat(other.words()).contains(machine.isRound() && !other.words().startsWith("a machine that is") ? "round" : "");
        assertThat(Segmentation.of(part, other.machine(), lays).segments()).as("%s: %s", part, other).hasSize(1);
        double l = other.machine().bedLength().millimetres() - 0.2;
        double h = other.machine().height().millimetres() - 0.2;
        BuildVolume less = machine.isRound() ? round(l, h) : box(l, other.machine().bedWidth().millimetres() - 0.2, h);
        assertThat(less.orientation(part.length(), part.width(), part.depth(), EnumSet.of(other.lay()))).isEmpty();
      }
    }
    assertThat(machines).isGreaterThan(200);
  }

  @Test
  void no_search_over_all_cuts_finds_fewer_segments() {
    Random random = new Random(1605);
    int split = 0;
    for (int n = 0; n < 60; n++) {
      BuildVolume machine = n % 2 == 0 ? round(90 + 80 * random.nextDouble(), 80 + 80 * random.nextDouble()) : box(100, 80 + 40 * random.nextDouble(), 80 + 60 * random.nextDouble());
      double length = 150 + 250 * random.nextDouble();
      double root = 30 + 40 * random.nextDouble();
      double sweep = 80 * random.nextDouble();
      SlenderPart part = part(
          new double[] {0, 0, root, 6, 5},
          new double[] {0.4 * length, 0.3 * sweep, 0.3 * sweep + root, 6, 2},
          new double[] {length, sweep, sweep + 0.5 * root, 4, 0});
      EnumSet<Lay> lays = n % 3 == 0 ? EnumSet.of(Lay.UPRIGHT) : EnumSet.of(Lay.STRAIGHT, Lay.DIAGONAL, Lay.UPRIGHT);
      int pieces = Segmentation.of(part, machine, lays).segments().size();
      if (pieces == 0) {
        continue;
      }
      split += pieces > 1 ? 1 : 0;
      assertThat(pieces).as("%s in %s", part, machine).isLessThanOrEqualTo(fewest(part, machine, lays));
    }
    assertThat(split).isGreaterThan(30);
  }

  /** Fewest pieces by trying every cut on a grid of a millimetre or so: shortest way from end to end. */
  private static int fewest(SlenderPart part, BuildVolume machine, EnumSet<Lay> lays) {
    int grid = 150;
    double length = part.length().millimetres();
    double tongue = Math.min(10, Math.max(5, 0.5 * part.depth().millimetres()));
    int[] count = new int[grid + 1];
    Arrays.fill(count, 1000);
    count[0] = 0;
    for (int i = 0; i < grid; i++) {
      for (int j = i + 1; j <= grid && count[i] < 1000; j++) {
        Length end = j == grid ? part.length() : part.length().times((double) j / grid);
        SlenderPart box = part.between(part.length().times((double) i / grid), end);
        double piece = length * (j - i) / grid + (j == grid ? 0 : tongue);
        if (machine.orientation(mm(piece), box.width(), box.depth(), lays).isPresent()) {
          count[j] = Math.min(count[j], count[i] + 1);
        }
      }
    }
    return count[grid];
  }

  @Test
  void a_wing_of_a_metre_and_a_half_and_a_body_of_two_metres_go_into_a_tiny_machine() {
    BuildVolume tiny = box(100, 100, 100);
    Segmentation wing = Segmentation.of(part(new double[] {0, 0, 90, 9, 2000}, new double[] {750, 30, 90, 6, 0}), tiny, EnumSet.of(Lay.UPRIGHT));
    assertThat(wing.segments()).hasSize(8);
    assertThat(wing.joints()).hasSize(7).allSatisfy(j -> assertThat(j.at().millimetres()).isBetween(60.0, 690.0));
    Segmentation body = Segmentation.of(bar(2000, 60, 60), tiny, EnumSet.of(Lay.UPRIGHT));
    // 90 mm and a tongue of 10 mm in each piece but the last: 21 · 90 mm + 100 mm < 2 m.
    assertThat(body.segments()).hasSize(23);
    double sum = body.segments().stream().mapToDouble(s -> s.length().millimetres()).sum();
    assertThat(sum).isCloseTo(2000, within(1e-6));
  }
}
