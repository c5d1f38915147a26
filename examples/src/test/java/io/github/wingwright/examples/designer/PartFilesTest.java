// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.manufacture.BuildVolume;
import io.github.wingwright.core.manufacture.Part;
import io.github.wingwright.core.manufacture.ThreeMfFile;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.report.Block;
import io.github.wingwright.core.report.Chapter;
import io.github.wingwright.examples.brief.BriefFile;
import io.github.wingwright.stability.design.Design;
import io.github.wingwright.stability.design.SizingLoop;
import io.github.wingwright.stability.production.GliderParts;
import io.github.wingwright.stability.production.PrintPlan;
import io.github.wingwright.testing.ThreeMfRules;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class PartFilesTest {
  private static Design design;
  private static GliderBrief brief;
  private static Map<String, byte[]> files;

  /** Coarser than the files: these are looked at for their names, edges and number. */
  private static GliderParts parts;

  @BeforeAll
  static void solve() throws IOException {
    brief = GliderBrief.from(BriefFile.parse("hall-glider.json", ProgramRun.builtInBrief()));
    design = SizingLoop.of(brief.brief()).madeTo(brief.making().length(), brief.making().mass()).solve();
    files = PartFiles.of(design, brief);
    parts = GliderParts.of(design, Length.millimetres(0.5));
  }

  private static Document model(String file) throws Exception {
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(files.get(file)))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        if (entry.getName().equals("3D/3dmodel.model")) {
          return DocumentBuilderFactory.newInstance().newDocumentBuilder()
              .parse(new ByteArrayInputStream(zip.readAllBytes()));
        }
      }
    }
    throw new AssertionError("no model in the package");
  }

  @Test
  void the_package_says_unit_title_and_the_names_of_the_parts() throws Exception {
    Element root = model("glider.3mf").getDocumentElement();
    assertThat(root.getAttribute("unit")).isEqualTo("millimeter");
    assertThat(root.getElementsByTagName("metadata").item(0).getTextContent()).isEqualTo(brief.title());
    List<String> names = names("glider.3mf");
    assertThat(names).startsWith("wing, starboard half", "wing, port half", "fuselage", "horizontal tail", "vertical tail");
    assertThat(names.get(5)).startsWith("shim of ");
  }

  private static List<String> names(String file) throws Exception {
    NodeList objects = model(file).getElementsByTagName("object");
    return IntStream.range(0, objects.getLength()).mapToObj(i -> ((Element) objects.item(i)).getAttribute("name")).toList();
  }

  @Test
  void each_bed_is_a_package_of_its_own_and_together_they_hold_every_part_once() throws Exception {
    List<String> beds = files.keySet().stream().filter(name -> name.startsWith("beds/")).toList();
    assertThat(beds).containsExactly("beds/bed-1.3mf", "beds/bed-2.3mf", "beds/bed-3.3mf");
    List<String> all = new ArrayList<>();
    for (String bed : beds) {
      assertThat(ThreeMfRules.violations(files.get(bed))).as(bed).isEmpty();
      all.addAll(names(bed));
    }
    assertThat(all).containsExactlyInAnyOrderElementsOf(names("glider.3mf"));
    assertThat(names("beds/bed-1.3mf")).containsExactly("wing, starboard half", "wing, port half");
    assertThat(model("beds/bed-2.3mf").getElementsByTagName("metadata").item(0).getTextContent())
        .isEqualTo(brief.title() + ", bed 2 of 3");
  }

  @Test
  void parts_that_a_joint_cannot_hold_together_are_whole_and_on_no_bed() {
    Design thin = design;
    GliderBrief small = withMachine("30 mm");
    Map<String, byte[]> whole = PartFiles.of(thin, small);
    assertThat(whole.keySet()).noneMatch(name -> name.endsWith("bed-1.3mf")).contains("glider.3mf", "print-list.csv");
    String why = whole.entrySet().stream().filter(e -> e.getKey().endsWith(".txt") && !e.getKey().startsWith("templates"))
        .map(e -> new String(e.getValue(), StandardCharsets.UTF_8)).findFirst().orElseThrow();
    assertThat(why).containsAnyOf("The parts do not go on the bed: ", "The parts are whole; cut for this machine");
  }

  @Test
  void pieces_and_a_long_shim_go_on_the_beds_of_a_machine_that_the_section_just_fits() {
    Map<String, byte[]> tight = PartFiles.of(design, withMachine("70 mm"));
    assertThat(tight).containsKey("beds/bed-1.3mf").doesNotContainKey("beds/too-large.txt");
    // At a slant the box around the shim is shorter than the shim.
    assertThat(new String(tight.get("print-list.csv"), StandardCharsets.UTF_8).lines())
        .anyMatch(line -> line.matches("shim of 0.5°,1,.*,0 to 88.5 mm,none,1,parts/shim-of-0.5-deg.stl,[0-9]+"));
  }

  private static GliderBrief withMachine(String side) {
    String volume = "{ \"width\": \"" + side + "\", \"depth\": \"" + side + "\", \"height\": \"" + side + "\" }";
    return GliderBrief.from(BriefFile.parse("small.json", ProgramRun.changed(
        "\"build_volume\": { \"width\": \"256 mm\", \"depth\": \"256 mm\", \"height\": \"256 mm\" }",
        "\"build_volume\": " + volume)));
  }

  @Test
  void the_package_keeps_the_rules_of_its_specification_whole_and_in_pieces() {
    assertThat(ThreeMfRules.violations(files.get("glider.3mf"))).isEmpty();
    Length edge = Length.millimetres(120);
    PrintPlan plan = PrintPlan.of(design, BuildVolume.cylinder(edge, edge));
    List<Part> pieces = parts.pieces(plan.list());
    assertThat(pieces).extracting(Part::name).contains("wing, port half, piece 2 of 3");
    assertThat(ThreeMfRules.violations(ThreeMfFile.titled("pieces").with(pieces).bytes())).isEmpty();
  }

  @Test
  void each_part_is_there_alone_and_each_drawing_twice() {
    assertThat(files).containsKeys(
        "parts/wing-starboard-half.stl", "parts/wing-port-half.stl", "parts/fuselage.stl", "parts/horizontal-tail.stl",
        "parts/vertical-tail.stl", "parts/shim-of-0.5-deg.stl");
    for (String name : List.of("fuselage", "wing-ribs", "wing-half", "horizontal-tail", "vertical-tail")) {
      assertThat(new String(files.get("templates/" + name + ".svg"), StandardCharsets.UTF_8)).contains("50 mm: measure");
      assertThat(new String(files.get("templates/" + name + ".pdf"), StandardCharsets.ISO_8859_1)).startsWith("%PDF-1.4");
    }
  }

  @Test
  void ribs_are_listed_in_millimetres() {
    String tip = new String(files.get("templates/rib-tip.txt"), StandardCharsets.UTF_8);
    double chord = design.aircraft().airframe().wing().planform().tipChord().millimetres();
    List<Double> x = tip.lines().skip(1).map(l -> Double.parseDouble(l.strip().split(" +")[0])).toList();
    assertThat(x).hasSize(121);
    assertThat(x.get(0)).isCloseTo(chord, within(0.1));
    assertThat(x.stream().mapToDouble(Double::doubleValue).min().orElseThrow()).isCloseTo(0.0, within(0.05 * chord));
  }

  @Test
  void a_smaller_machine_gets_pieces() {
    for (String side : List.of("100 mm", "120 mm", "180 mm", "200 mm")) {
      Length edge = Length.parse(side);
      PrintPlan plan = PrintPlan.of(design, BuildVolume.box(edge, edge, edge));
      List<Part> pieces = parts.pieces(plan.list());
      assertThat(pieces).hasSizeGreaterThan(7);
    }
  }

  @Test
  void the_print_list_names_a_file_that_is_there_for_every_piece_and_shim() {
    List<String> lines = new String(files.get("print-list.csv"), StandardCharsets.UTF_8).lines().toList();
    assertThat(lines.get(0)).endsWith(",segments,joints,pieces in all,files,bed");
    assertThat(lines.get(1)).endsWith(",none,2,parts/wing-starboard-half.stl; parts/wing-port-half.stl,1; 1");
    assertThat(lines).anyMatch(line -> line.startsWith("shim of 0.5°,1,") && line.endsWith(",1,parts/shim-of-0.5-deg.stl,3"));
    List<String> named = lines.stream().skip(1)
        .flatMap(line -> Stream.of(line.split(",")[line.split(",").length - 2].split("; "))).toList();
    List<String> there = files.keySet().stream().filter(name -> name.endsWith(".stl")).toList();
    assertThat(named).containsExactlyInAnyOrderElementsOf(there);
  }

  @Test
  void file_names_are_plain() {
    assertThat(PartFiles.fileName("wing, starboard half")).isEqualTo("wing-starboard-half");
    assertThat(PartFiles.fileName("shim of 0.5°")).isEqualTo("shim-of-0.5-deg");
  }

  @Test
  void the_chapter_lists_every_part_and_says_what_its_details_are_for() {
    Chapter chapter = new PartsChapter(design, brief.units()).chapter();
    List<Block.Table> tables =
        chapter.blocks().stream().filter(Block.Table.class::isInstance).map(Block.Table.class::cast).toList();
    assertThat(tables.get(0).rows()).extracting(r -> r.get(0)).contains("wing, port half", "fuselage", "vertical tail");
    assertThat(tables.get(1).rows().get(tables.get(1).rows().size() - 1).get(0)).isEqualTo("together");
    Block last = chapter.blocks().get(chapter.blocks().size() - 1);
    assertThat(((Block.Points) last).points()).anyMatch(p -> p.contains("rib below the body")).anyMatch(p -> p.contains("shim"));
  }
}
