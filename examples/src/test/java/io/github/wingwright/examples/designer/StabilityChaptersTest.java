// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.wingwright.core.report.Block;
import io.github.wingwright.core.report.Chapter;
import io.github.wingwright.examples.brief.BriefFile;
import io.github.wingwright.stability.design.Design;
import io.github.wingwright.stability.design.SizingLoop;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The chapters on balance, trim and motion say what they promise, for good gliders and for bad ones. */
class StabilityChaptersTest {
  private static final List<String> TITLES =
      List.of(
          "Balance, stability, trim",
          "Downwash at the tail",
          "The finite wing",
          "Trim, and what it costs",
          "Across the plane of symmetry",
          "Natural motions",
          "After a disturbance");

  private static List<Chapter> chapters;

  @BeforeAll
  static void hallGlider() {
    chapters = chapters(ProgramRun.builtInBrief());
  }

  private static List<Chapter> chapters(String text) {
    GliderBrief brief = GliderBrief.from(BriefFile.parse("brief.json", text));
    Design design = SizingLoop.of(brief.brief()).madeTo(brief.making().length(), brief.making().mass()).solve();
    return new DesignReport(design, brief).stability();
  }

  private static Chapter chapter(List<Chapter> of, String title) {
    return of.stream().filter(c -> c.title().equals(title)).findFirst().orElseThrow();
  }

  private static Stream<String> words(Chapter chapter) {
    return chapter.blocks().stream()
        .flatMap(
            block ->
                block instanceof Block.Paragraph p
                    ? Stream.of(p.text())
                    : block instanceof Block.Points points
                        ? points.points().stream()
                        : block instanceof Block.Picture picture
                            ? Stream.of(picture.svg())
                            : block instanceof Block.Table table
                                ? Stream.concat(table.header().stream(), table.rows().stream().flatMap(List::stream))
                                : Stream.<String>empty());
  }

  private static String text(String title) {
    return words(chapter(chapters, title)).collect(Collectors.joining("\n"));
  }

  @Test
  void the_chapters_stand_in_the_order_of_a_lecture() {
    assertThat(chapters).extracting(Chapter::title).isEqualTo(TITLES);
  }

  @Test
  void the_balance_names_who_sets_each_limit_and_what_happens_without_ballast() {
    assertThat(text("Balance, stability, trim"))
        .contains("limit, static margin of 5 %", "limit, trim at a lift coefficient", "first flights", "travel of the centre of gravity")
        .contains("stick fixed", "with a free elevator", "does not fly: behind the neutral point");
  }

  @Test
  void seven_methods_of_downwash_each_say_where_they_hold() {
    Block.Table table =
        chapter(chapters, "Downwash at the tail").blocks().stream()
            .filter(Block.Table.class::isInstance)
            .map(Block.Table.class::cast)
            .findFirst()
            .orElseThrow();
    assertThat(table.rows()).hasSize(7).allSatisfy(row -> assertThat(row.get(5)).isNotBlank());
  }

  @Test
  void the_finite_wing_is_reckoned_by_three_methods_and_shows_where_it_stalls() {
    assertThat(text("The finite wing")).contains("handbook", "lifting line", "lattice", "stalls first", "limit of the section");
  }

  @Test
  void trim_shows_the_polar_with_the_flights_on_it() {
    assertThat(text("Trim, and what it costs")).contains("best glide, ", "least sink, ", "as set, ", "tail only rubbing", "trim tab");
  }

  @Test
  void every_motion_is_named_on_a_map_with_its_approximation_and_without_apparent_mass() {
    assertThat(text("Natural motions"))
        .contains("short period", "phugoid", "roll", "spiral", "Dutch roll", "ζ 0.7", "without apparent mass", "by lattice");
  }

  @Test
  void the_disturbances_show_speed_pitch_load_bank_slip_and_yaw() {
    assertThat(text("After a disturbance"))
        .contains("airspeed in m/s", "pitch in °", "load factor", "bank in °", "sideslip in °", "yaw rate in °/s", "lands after");
  }

  @Test
  void a_tail_that_stalls_before_it_trims_leaves_an_explanation_in_place_of_the_motions() {
    List<Chapter> bad = chapters(ProgramRun.changed("\"volume_coefficient\": 0.52", "\"volume_coefficient\": 0.25", "\"static_margin\": 0.15", "\"static_margin\": 0.4"));
    assertThat(words(chapter(bad, "Natural motions")).collect(Collectors.joining()))
        .startsWith("This cannot be reckoned for this glider: no steady glide")
        .contains("Enlarge the tail");
  }

  @Test
  void gliders_of_all_kinds_get_all_chapters() {
    for (long seed = 1; seed <= 25; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      String brief =
          ProgramRun.changed(
              "\"static_margin\": 0.15", "\"static_margin\": " + number(random, 0.02, 0.4),
              "\"volume_coefficient\": 0.52", "\"volume_coefficient\": " + number(random, 0.2, 1.0),
              "\"volume_coefficient\": 0.035", "\"volume_coefficient\": " + number(random, 0.005, 0.08),
              "\"dihedral\": \"12°\"", "\"dihedral\": \"" + number(random, 0.0, 20.0) + "°\"");
      assertThat(chapters(brief)).as("seed %s", seed).extracting(Chapter::title).isEqualTo(TITLES);
    }
  }

  private static String number(SplittableRandom random, double from, double to) {
    return String.format(Locale.ROOT, "%.3f", random.nextDouble(from, to));
  }
}
