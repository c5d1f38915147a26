// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.mass.Materials;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.testing.PublishedValues;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TimeZone;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Reads the files with what the JDK has for zip, XML and bytes, and measures again what they hold. */
class MeshFilesTest {
  private static final String CORE = "http://schemas.microsoft.com/3dmanufacturing/core/2015/02";

  @TempDir
  Path temporary;

  private static Part box() {
    List<Double> coordinates = new ArrayList<>();
    List<Integer> corners = new ArrayList<>();
    PublishedValues.beside(MeshFilesTest.class, "sample-box.csv").rows().forEach(row ->
        Stream.of("a", "b", "c").forEach(column -> {
          if (row.text("kind").equals("vertex")) {
            coordinates.add(row.number(column) / 1000.0);
          } else {
            corners.add((int) row.number(column));
          }
        }));
    return Part.of("box", TriangleMesh.of(
        coordinates.stream().mapToDouble(Double::doubleValue).toArray(),
        corners.stream().mapToInt(Integer::intValue).toArray()));
  }

  private static Part wing() {
    Planform planform = Planform.tapered(Length.millimetres(400), Length.millimetres(60), Length.millimetres(30));
    return Part.of("wing \"A\" <left & right>, 5°", WingSolid.half(planform, new Lens(0.1, 0.02)).mesh(Length.millimetres(0.05)))
        .of(Materials.PLA);
  }

  private static Map<String, byte[]> unzip(byte[] bytes) throws IOException {
    Map<String, byte[]> entries = new LinkedHashMap<>();
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(bytes))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        assertThat(entry.getTimeLocal().getYear()).isEqualTo(1980);
        entries.put(entry.getName(), zip.readAllBytes());
      }
    }
    return entries;
  }

  private static Document parse(byte[] xml) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setNamespaceAware(true);
    return factory.newDocumentBuilder().parse(new ByteArrayInputStream(xml));
  }

  private static Element element(NodeList nodes, int i) {
    return (Element) nodes.item(i);
  }

  /** Volume of an object by signed tetrahedra, from what the file says [mm³]. */
  private static double volume(Element object) {
    NodeList vertices = object.getElementsByTagNameNS(CORE, "vertex");
    NodeList triangles = object.getElementsByTagNameNS(CORE, "triangle");
    double sum = 0.0;
    for (int t = 0; t < triangles.getLength(); t++) {
      double[][] p = new double[3][3];
      for (int k = 0; k < 3; k++) {
        Element vertex = element(vertices, Integer.parseInt(element(triangles, t).getAttribute("v" + (k + 1))));
        p[k] = new double[] {number(vertex, "x"), number(vertex, "y"), number(vertex, "z")};
      }
      sum += p[0][0] * (p[1][1] * p[2][2] - p[1][2] * p[2][1])
          - p[0][1] * (p[1][0] * p[2][2] - p[1][2] * p[2][0])
          + p[0][2] * (p[1][0] * p[2][1] - p[1][1] * p[2][0]);
    }
    return sum / 6.0;
  }

  private static double number(Element element, String attribute) {
    return Double.parseDouble(element.getAttribute(attribute));
  }

  @Test
  void the_published_sample_comes_back_vertex_by_vertex() throws Exception {
    Document model = parse(unzip(ThreeMfFile.titled("sample").with(box()).bytes()).get("3D/3dmodel.model"));
    assertThat(model.getDocumentElement().getAttribute("unit")).isEqualTo("millimeter");
    NodeList vertices = model.getElementsByTagNameNS(CORE, "vertex");
    NodeList triangles = model.getElementsByTagNameNS(CORE, "triangle");
    List<PublishedValues.Row> rows = PublishedValues.beside(MeshFilesTest.class, "sample-box.csv").rows().toList();
    assertThat(vertices.getLength()).isEqualTo(8);
    assertThat(triangles.getLength()).isEqualTo(12);
    IntStream.range(0, 20).forEach(i -> {
      Element found = i < 8 ? element(vertices, i) : element(triangles, i - 8);
      String[] names = i < 8 ? new String[] {"x", "y", "z"} : new String[] {"v1", "v2", "v3"};
      String[] columns = {"a", "b", "c"};
      for (int k = 0; k < 3; k++) {
        assertThat(number(found, names[k]))
            .as("row %s", i)
            .isCloseTo(rows.get(i).number(columns[k]), within(rows.get(i).number("tolerance") + 1e-12));
      }
    });
    // 10 × 20 × 30 mm.
    assertThat(volume(element(model.getElementsByTagNameNS(CORE, "object"), 0))).isCloseTo(6000.0, within(1e-6));
    assertThat(box().check().volume().cubicMillimetres()).isCloseTo(6000.0, within(1e-6));
  }

  @Test
  void the_package_is_laid_out_as_the_specification_says() throws Exception {
    Map<String, byte[]> entries = unzip(ThreeMfFile.titled("two").with(wing()).with(box()).bytes());
    assertThat(entries.keySet()).containsExactly("[Content_Types].xml", "_rels/.rels", "3D/3dmodel.model");
    NodeList types = parse(entries.get("[Content_Types].xml")).getElementsByTagNameNS("*", "Default");
    assertThat(element(types, 1).getAttribute("Extension")).isEqualTo("model");
    assertThat(element(types, 1).getAttribute("ContentType")).isEqualTo("application/vnd.ms-package.3dmanufacturing-3dmodel+xml");
    Element relation = element(parse(entries.get("_rels/.rels")).getElementsByTagNameNS("*", "Relationship"), 0);
    assertThat(relation.getAttribute("Target")).isEqualTo("/3D/3dmodel.model");
    assertThat(relation.getAttribute("Type")).isEqualTo("http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel");
  }

  @Test
  void objects_keep_their_names_materials_volumes_and_places() throws Exception {
    Document model = parse(unzip(ThreeMfFile.titled("a & b").with(wing()).with(box()).bytes()).get("3D/3dmodel.model"));
    NodeList objects = model.getElementsByTagNameNS(CORE, "object");
    assertThat(element(objects, 0).getAttribute("name")).isEqualTo(wing().name());
    assertThat(element(objects, 1).getAttribute("name")).isEqualTo("box");
    assertThat(volume(element(objects, 0)))
        .isCloseTo(wing().check().volume().cubicMillimetres(), within(18_000 * 1e-5));
    Element base = element(model.getElementsByTagNameNS(CORE, "base"), 0);
    assertThat(base.getAttribute("name")).isEqualTo(Materials.PLA.name());
    assertThat(element(objects, 0).getAttribute("pid")).isEqualTo("1");
    assertThat(element(objects, 1).hasAttribute("pid")).isFalse();
    NodeList items = model.getElementsByTagNameNS(CORE, "item");
    assertThat(items.getLength()).isEqualTo(2);
    for (int i = 0; i < 2; i++) {
      assertThat(element(items, i).getAttribute("objectid")).isEqualTo(element(objects, i).getAttribute("id"));
      String[] transform = element(items, i).getAttribute("transform").split(" ");
      assertThat(transform).hasSize(12).startsWith("1", "0", "0", "0", "1", "0", "0", "0", "1");
      MeshBox box = (i == 0 ? wing() : box()).check().box();
      assertThat(box.least().z().millimetres() + Double.parseDouble(transform[11])).isCloseTo(0.0, within(1e-4));
    }
    assertThat(model.getElementsByTagNameNS(CORE, "metadata").item(0).getTextContent()).isEqualTo("a & b");
  }

  /** Boxes 10 × 20 mm, 1 to 8: least x, least y of each as the file has it built [mm]. */
  private static List<double[]> built(ThreeMfFile file) throws Exception {
    NodeList items = parse(unzip(file.bytes()).get("3D/3dmodel.model")).getElementsByTagNameNS(CORE, "item");
    return IntStream.range(0, items.getLength())
        .mapToObj(i -> element(items, i).getAttribute("transform").split(" "))
        .map(t -> new double[] {
          Double.parseDouble(t[9]) + box().check().box().least().x().millimetres(),
          Double.parseDouble(t[10]) + box().check().box().least().y().millimetres()})
        .toList();
  }

  private static ThreeMfFile boxes(int many) {
    ThreeMfFile file = ThreeMfFile.titled("boxes");
    for (int i = 1; i <= many; i++) {
      file = file.with(Part.of("box " + i, box().mesh()));
    }
    return file;
  }

  @Test
  void parts_lie_in_rows_that_fit_the_bed_with_a_gap() throws Exception {
    // 20 + 5 + 20 + 5 + 20 mm fill a side of 70 mm: three in a row, the next row 10 + 5 mm behind.
    BuildVolume machine = BuildVolume.box(Length.millimetres(70), Length.millimetres(50), Length.millimetres(50));
    List<double[]> places = built(boxes(8).laidOn(machine));
    for (int i = 0; i < 8; i++) {
      assertThat(places.get(i)).containsExactly(new double[] {15.0 * (i / 3), 25.0 * (i % 3)}, within(1e-9));
    }
    // A round bed of 70 mm holds a square of 49.5 mm: two in a row.
    BuildVolume round = BuildVolume.cylinder(Length.millimetres(70), Length.millimetres(50));
    assertThat(built(boxes(8).laidOn(round)).get(2)).containsExactly(new double[] {15.0, 0.0}, within(1e-9));
    // A part longer than the bed does not keep the others from it.
    BuildVolume tiny = BuildVolume.cylinder(Length.millimetres(10), Length.millimetres(50));
    assertThat(built(boxes(3).laidOn(tiny)).get(2)).containsExactly(new double[] {30.0, 0.0}, within(1e-9));
  }

  @Test
  void without_a_bed_rows_make_up_about_a_square() throws Exception {
    // Eight boxes of 15 × 25 mm with their gaps fill a square of 54.8 mm: two in a row, four rows.
    List<double[]> places = built(boxes(8));
    assertThat(places.get(7)).containsExactly(new double[] {45.0, 25.0}, within(1e-9));
  }

  @Test
  void the_same_parts_give_the_same_bytes() {
    assertThat(ThreeMfFile.titled("a").with(wing()).bytes()).isEqualTo(ThreeMfFile.titled("a").with(wing()).bytes());
    assertThat(StlFile.bytes(wing())).isEqualTo(StlFile.bytes(wing()));
    byte[] here = ThreeMfFile.titled("a").with(box()).bytes();
    TimeZone zone = TimeZone.getDefault();
    try {
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Auckland"));
      assertThat(ThreeMfFile.titled("a").with(box()).bytes()).isEqualTo(here);
    } finally {
      TimeZone.setDefault(zone);
    }
  }

  @Test
  void stl_holds_the_same_triangles_with_unit_normals() {
    ByteBuffer in = ByteBuffer.wrap(StlFile.bytes(box())).order(ByteOrder.LITTLE_ENDIAN);
    assertThat(in.remaining()).isEqualTo(84 + 12 * 50);
    assertThat(new String(in.array(), 0, 5, StandardCharsets.US_ASCII)).isNotEqualTo("solid");
    in.position(80);
    assertThat(in.getInt()).isEqualTo(12);
    double sum = 0.0;
    for (int t = 0; t < 12; t++) {
      double[] v = new double[12];
      for (int k = 0; k < 12; k++) {
        v[k] = in.getFloat();
      }
      assertThat(in.getShort()).isZero();
      assertThat(v[0] * v[0] + v[1] * v[1] + v[2] * v[2]).isCloseTo(1.0, within(1e-6));
      // A face of a box lies along the normal at one distance, and its outside is away from the middle (40, 43, 31.92).
      double out = v[0] * (v[3] - 40.0) + v[1] * (v[4] - 43.0) + v[2] * (v[5] - 31.92);
      assertThat(out).isGreaterThan(4.9);
      sum += (v[3] * (v[7] * v[11] - v[8] * v[10]) + v[4] * (v[8] * v[9] - v[6] * v[11]) + v[5] * (v[6] * v[10] - v[7] * v[9])) / 6.0;
    }
    assertThat(sum).isCloseTo(6000.0, within(0.01));
  }

  @Test
  void numbers_are_written_in_steps_of_ten_nanometres_without_exponents() {
    Map<Double, String> expected = Map.of(
        0.0, "0", -1e-12, "0", 1e-8, "0.00001", -0.0012345678, "-1.23457", 0.25, "250", 12.3, "12300", 1e-5, "0.01");
    expected.forEach((metres, text) -> {
      StringBuilder out = new StringBuilder();
      ThreeMfFile.number(out, metres);
      assertThat(out).hasToString(text);
    });
  }

  @Test
  void a_file_is_there_whole_or_not_at_all() throws IOException {
    Path file = temporary.resolve("box.3mf");
    ThreeMfFile.titled("box").with(box()).write(file);
    StlFile.write(box(), temporary.resolve("box.stl"));
    assertThat(Files.readAllBytes(file)).isEqualTo(ThreeMfFile.titled("box").with(box()).bytes());
    ThreeMfFile.titled("again").with(box()).write(file);
    Path missing = temporary.resolve("no/such/box.stl");
    assertThatThrownBy(() -> StlFile.write(box(), missing)).isInstanceOf(IOException.class);
    // A folder stands where the file should be, with something in it: it cannot be replaced by a file.
    Path folder = Files.createDirectories(temporary.resolve("taken"));
    Files.writeString(folder.resolve("mine"), "mine");
    assertThatThrownBy(() -> StlFile.write(box(), folder)).isInstanceOf(IOException.class);
    try (Stream<Path> left = Files.list(temporary)) {
      assertThat(left.map(p -> p.getFileName().toString())).containsExactlyInAnyOrder("box.3mf", "box.stl", "taken");
    }
  }

  @Test
  void files_without_parts_or_with_one_name_twice_are_refused() {
    assertThatThrownBy(() -> ThreeMfFile.titled("none").bytes()).isInstanceOf(IllegalStateException.class);
    assertThatThrownBy(() -> ThreeMfFile.titled("a").with(box()).with(box()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("box");
    assertThatThrownBy(() -> ThreeMfFile.titled(" ")).isInstanceOf(IllegalArgumentException.class);
    assertThat(ThreeMfFile.titled("b").with(List.of(box(), wing())).names()).containsExactly("box", wing().name());
  }
}
