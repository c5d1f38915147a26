// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** The program with good briefs: what it prints and what it writes. */
class DesignProgramTest {
  private static final List<String> FILES =
      List.of(
          DesignFolder.LIST, "BUILD.md", "beds", "design.json", "flight.svg", "fuselage-range.svg", "fuselage-region.svg", "glider.3mf", "parts",
          "print-list.csv", "report.html", "section.svg", "section.txt", "templates", "three-view.svg");

  /** The numbers that whoever reads the data can rely on. */
  private static final List<String> NAMES = List.of(
      "wing.span_m", "wing.area_m2", "wing.aspect_ratio", "wing.mean_aerodynamic_chord_m",
      "wing.maximum_thickness_m", "wing.root_chord_m", "wing.taper_ratio", "wing.dihedral_rad",
      "wing.leading_edge_x_m", "wing.loading_kg_per_m2", "wing.lift_coefficient_usable", "fuselage.length_m",
      "fuselage.diameter_m", "fuselage.fineness_ratio", "fuselage.volume_m3", "fuselage.wetted_area_m2",
      "horizontal_tail.area_m2", "horizontal_tail.arm_m", "horizontal_tail.volume_coefficient",
      "vertical_tail.area_m2", "vertical_tail.arm_m", "vertical_tail.volume_coefficient", "neutral_point.x_m",
      "centre_of_gravity.x_m", "static_margin", "mass_kg", "ballast_kg", "glide.best_lift_to_drag",
      "glide.best_glide_speed_m_per_s", "glide.minimum_sink_rate_m_per_s", "stall_speed_m_per_s",
      "launch_speed_m_per_s", "decalage_rad", "reynolds_number.wing");

  @TempDir
  static Path shared;

  private static ProgramRun builtIn;
  private static Path folder;
  private static JsonNode data;

  @TempDir
  Path temporary;

  @BeforeAll
  static void run() throws IOException {
    builtIn = ProgramRun.of(shared);
    folder = shared.resolve("hall-glider");
    data = new ObjectMapper().readTree(Files.readString(folder.resolve("design.json")));
  }

  private static Document xml(String text) throws Exception {
    String plain = text.replaceFirst("(?i)<!doctype html>", "");
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
    return factory.newDocumentBuilder().parse(new InputSource(new StringReader(plain)));
  }

  private static List<String> texts(Document document, String element) {
    NodeList nodes = document.getElementsByTagName(element);
    List<String> texts = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      texts.add(nodes.item(i).getTextContent().strip());
    }
    return texts;
  }

  private static String line(String sheet, String label) {
    return sheet.lines().filter(l -> l.contains(label)).findFirst().orElseThrow(() -> new AssertionError(label));
  }

  @Test
  void the_sheet_has_under_fifty_lines_and_ends_with_the_files() {
    assertThat(builtIn.status()).isZero();
    assertThat(builtIn.err()).isEmpty();
    List<String> lines = builtIn.out().lines().toList();
    assertThat(lines).hasSizeLessThan(50).allMatch(l -> l.length() <= 120);
    List<String> tail = lines.stream().dropWhile(l -> !l.endsWith("hall-glider:")).skip(1).toList();
    assertThat(String.join(" ", tail).strip().split(" +"))
        .contains("report.html", "BUILD.md", "design.json", "glider.3mf", "beds/", "parts/", "templates/");
  }

  @Test
  void the_folder_holds_its_files_and_nothing_else_is_left() {
    assertThat(ProgramRun.contents(folder)).isEqualTo(FILES);
    assertThat(ProgramRun.contents(shared)).containsExactly("hall-glider");
  }

  @Test
  void the_data_are_flat_and_finite_with_every_promised_name() {
    NAMES.forEach(name -> assertThat(data.path(name).isNumber()).as(name).isTrue());
    data.properties().forEach(field -> {
      if (field.getValue().isNumber()) {
        assertThat(field.getValue().doubleValue()).as(field.getKey()).isFinite();
      } else {
        assertThat(field.getValue().isTextual() || field.getKey().equals("findings")).as(field.getKey()).isTrue();
      }
    });
  }

  @Test
  void every_finding_says_how_grave_about_what_with_what_value_range_and_source() {
    JsonNode findings = data.path("findings");
    assertThat(findings).isNotEmpty();
    int ranged = 0;
    for (JsonNode finding : findings) {
      assertThat(finding.path("severity").asText()).isIn("note", "caution", "serious");
      assertThat(finding.path("guideline").asText()).isNotBlank();
      assertThat(finding.path("message").asText()).isNotBlank();
      assertThat(finding.path("source").asText()).isNotBlank();
      if (finding.has("value")) {
        ranged++;
        assertThat(finding.path("value").isNumber()).isTrue();
        assertThat(finding.has("range_lower") || finding.has("range_upper")).as(finding.toString()).isTrue();
      }
    }
    assertThat(ranged).isPositive();
  }

  @Test
  void the_data_agree_with_one_another() {
    double s = data.path("wing.area_m2").doubleValue();
    double b = data.path("wing.span_m").doubleValue();
    double c = data.path("wing.mean_aerodynamic_chord_m").doubleValue();
    assertThat(data.path("wing.aspect_ratio").doubleValue()).isCloseTo(b * b / s, within(1e-12));
    assertThat(data.path("mass_kg").doubleValue() / s)
        .isCloseTo(data.path("wing.loading_kg_per_m2").doubleValue(), within(1e-12));
    double margin = (data.path("neutral_point.x_m").doubleValue() - data.path("centre_of_gravity.x_m").doubleValue()) / c;
    assertThat(data.path("static_margin").doubleValue()).isCloseTo(margin, within(1e-12));
    assertThat(data.path("horizontal_tail.area_m2").doubleValue() * data.path("horizontal_tail.arm_m").doubleValue() / (s * c))
        .isCloseTo(data.path("horizontal_tail.volume_coefficient").doubleValue(), within(1e-12));
    assertThat(data.path("glide.best_lift_to_drag.low").doubleValue())
        .isLessThanOrEqualTo(data.path("glide.best_lift_to_drag").doubleValue());
    assertThat(data.path("glide.best_lift_to_drag.high").doubleValue())
        .isGreaterThanOrEqualTo(data.path("glide.best_lift_to_drag").doubleValue());
  }

  @Test
  void the_report_is_one_page_of_well_formed_text_with_every_chapter_and_no_network() throws Exception {
    String html = Files.readString(folder.resolve("report.html"));
    Document page = xml(html);
    assertThat(texts(page, "h2")).containsSubsequence(
        "The brief", "Sheet of dimensions", "Three views", "Cautions", "Findings", "The fuselage, negotiated", "The wing's chord, negotiated",
        "Wing section", "Mass statement", "Balance, stability, trim", "Downwash at the tail", "The finite wing",
        "Trim, and what it costs", "Across the plane of symmetry", "Natural motions", "After a disturbance",
        "Drag build-up at best glide", "Glide", "The flight down the hall", "Workings", "Symbols");
    assertThat(html.replaceAll("xmlns=\"http://www\\.w3\\.org/(2000/svg|1999/xhtml)\"", "")).doesNotContain("http:", "https:", "<script", "<link", "@import", "src=");
    assertThat(page.getElementsByTagName("svg").getLength()).isGreaterThanOrEqualTo(6);
    assertThat(html).doesNotContain("NaN", "Infinity", "null");
  }

  @Test
  void every_link_of_the_report_leads_to_a_place_in_it() throws Exception {
    String html = Files.readString(folder.resolve("report.html"));
    NodeList links = xml(html).getElementsByTagName("a");
    assertThat(links.getLength()).isGreaterThan(30);
    for (int i = 0; i < links.getLength(); i++) {
      String target = links.item(i).getAttributes().getNamedItem("href").getTextContent();
      assertThat(target).startsWith("#");
      assertThat(html).contains("id=\"" + target.substring(1) + "\"");
    }
  }

  @Test
  void the_dimensions_on_the_drawing_are_those_of_the_sheet() throws Exception {
    List<String> drawn = texts(xml(Files.readString(folder.resolve("three-view.svg"))), "text");
    for (String name : List.of(
        "wing.span_m", "wing.root_chord_m", "wing.tip_chord_m", "wing.leading_edge_x_m", "fuselage.length_m",
        "horizontal_tail.span_m", "vertical_tail.span_m")) {
      double millimetres = Math.round(1e6 * data.path(name).doubleValue()) / 1e3;
      String text = String.format(Locale.ROOT, "%.1f", millimetres).replaceFirst("\\.0$", "");
      assertThat(drawn).as(name).contains(text);
      assertThat(builtIn.out()).as(name).contains(" " + text + " mm");
    }
    assertThat(drawn).contains("Ø 22", "12°");
  }

  @Test
  void the_coordinates_are_a_closed_outline_on_a_chord_of_one() throws IOException {
    List<String> lines = Files.readAllLines(folder.resolve("section.txt"));
    assertThat(lines.get(0)).contains("4406");
    double[][] points = lines.stream().skip(1)
        .map(l -> Arrays.stream(l.strip().split(" +")).mapToDouble(Double::parseDouble).toArray())
        .toArray(double[][]::new);
    assertThat(points.length).isGreaterThan(100);
    assertThat(Arrays.asList(points)).allMatch(p -> p.length == 2 && p[0] >= -0.01 && p[0] <= 1.01);
    assertThat(points[0][0]).isCloseTo(1.0, within(0.01));
    assertThat(points[0][1]).isGreaterThan(points[points.length - 1][1]);
    assertThat(Arrays.stream(points).mapToDouble(p -> p[0]).min().orElseThrow()).isCloseTo(0.0, within(0.002));
  }

  @Test
  void two_runs_write_the_same_bytes_whatever_the_locale_and_the_time_zone() throws IOException {
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Chatham"));
      ProgramRun second = ProgramRun.of(temporary);
      assertThat(second.out().replace(temporary.toString(), shared.toString())).isEqualTo(builtIn.out());
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Path other = temporary.resolve("hall-glider").resolve(folder.relativize(file));
        assertThat(other).as(file.toString()).hasSameBinaryContentAs(file);
      }
    }
  }

  @Test
  void the_brief_in_the_file_gives_the_design_of_the_built_in_one() throws IOException {
    ProgramRun run = ProgramRun.of(temporary, ProgramRun.write(temporary, ProgramRun.builtInBrief()));
    assertThat(run.status()).isZero();
    assertThat(temporary.resolve("hall-glider/design.json")).hasSameBinaryContentAs(folder.resolve("design.json"));
  }

  @Test
  void a_brief_in_inches_and_feet_gets_its_sheet_in_inches_and_feet() {
    String brief = ProgramRun.changed(
        "\"480 mm\"", "\"19 in\"", "\"7 m/s\"", "\"23 ft/s\"", "\"1.5 m\"", "\"5 ft\"", "\"0.5 mm\"", "\"0.0625 in\"");
    ProgramRun run = ProgramRun.of(temporary, ProgramRun.write(temporary, brief));
    assertThat(run.err()).isEmpty();
    assertThat(line(run.out(), "span")).endsWith(" 19 in");
    assertThat(line(run.out(), "area")).endsWith(" in²");
    assertThat(line(run.out(), "volume")).endsWith(" in³");
    assertThat(line(run.out(), "mass")).endsWith(" oz");
    assertThat(line(run.out(), "stall speed")).endsWith(" ft/s");
    assertThat(line(run.out(), "distance")).endsWith(" ft");
    assertThat(run.out()).doesNotContain(" mm", " cm", " g/dm");
    double chord = Double.parseDouble(line(run.out(), "root chord").strip().split(" +")[2]);
    assertThat(chord * 16.0).as("whole sixteenths of an inch").isCloseTo(Math.rint(chord * 16.0), within(0.01));
  }

  @Test
  void centimetres_and_kilometres_an_hour_are_kept() {
    String brief = ProgramRun.changed("\"480 mm\"", "\"48 cm\"", "\"7 m/s\"", "\"25.2 km/h\"");
    ProgramRun run = ProgramRun.of(temporary, ProgramRun.write(temporary, brief));
    assertThat(line(run.out(), "span")).endsWith(" 48 cm");
    assertThat(line(run.out(), "launch speed")).endsWith(" 25.2 km/h");
  }

  @Test
  void a_wing_by_area_or_by_loading_needs_no_span() {
    for (String wing : List.of(
        "\"area\": \"370 cm²\"", "\"loading\": \"1.5 kg/m²\"",
        "\"target_speed\": { \"speed\": \"6.5 m/s\", \"lift_coefficient\": 0.6 }")) {
      ProgramRun run = ProgramRun.of(temporary, ProgramRun.write(temporary, ProgramRun.changed("\"span\": \"480 mm\"", wing)));
      assertThat(run.err()).as(wing).isEmpty();
      assertThat(run.status()).as(wing).isZero();
    }
  }

  @Test
  void a_tail_arm_that_rounding_makes_too_short_is_a_finding() throws Exception {
    assertThat(Files.readString(folder.resolve("design.json"))).contains("\"guideline\" : \"tail arm\"", "\"range_lower\" : 0.115");
  }
}
