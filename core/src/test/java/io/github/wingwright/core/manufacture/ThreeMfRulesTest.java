// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.mass.Material;
import io.github.wingwright.core.mass.Materials;
import io.github.wingwright.core.quantity.Density;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.testing.PublishedValues;
import io.github.wingwright.testing.ThreeMfRules;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Our files against the rules of the core specification, and the rules against files that break them. */
class ThreeMfRulesTest {
  private static final List<String> COLUMNS = List.of("a", "b", "c");

  private static List<PublishedValues.Row> rows(String kind) {
    return PublishedValues.beside(ThreeMfRulesTest.class, "core-cube.csv").rows()
        .filter(row -> row.text("kind").equals(kind))
        .toList();
  }

  /** The worked cube of the specification. */
  private static Part cube() {
    double[] coordinates = rows("vertex").stream()
        .flatMap(row -> COLUMNS.stream().map(c -> row.number(c) / 1000.0))
        .mapToDouble(Double::doubleValue)
        .toArray();
    return Part.of("Cube", TriangleMesh.of(coordinates, corners())).of(Materials.PLA);
  }

  private static String model(byte[] file) throws IOException {
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(file))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        if (entry.getName().equals("3D/3dmodel.model")) {
          return new String(zip.readAllBytes(), StandardCharsets.UTF_8);
        }
      }
    }
    throw new AssertionError("no model");
  }

  @Test
  void the_worked_cube_is_written_as_the_specification_prints_it() throws IOException {
    String xml = model(ThreeMfFile.titled("Cube").with(cube()).bytes());
    Matcher vertices = Pattern.compile("<vertex x=\"(.*?)\" y=\"(.*?)\" z=\"(.*?)\"/>").matcher(xml);
    for (PublishedValues.Row row : rows("vertex")) {
      assertThat(vertices.find()).isTrue();
      assertThat(List.of(vertices.group(1), vertices.group(2), vertices.group(3)))
          .isEqualTo(COLUMNS.stream().map(row::text).toList());
    }
    assertThat(vertices.find()).isFalse();
    Matcher triangles = Pattern.compile("<triangle v1=\"(.*?)\" v2=\"(.*?)\" v3=\"(.*?)\"/>").matcher(xml);
    for (PublishedValues.Row row : rows("triangle")) {
      assertThat(triangles.find()).isTrue();
      assertThat(List.of(triangles.group(1), triangles.group(2), triangles.group(3)))
          .isEqualTo(COLUMNS.stream().map(row::text).toList());
    }
    assertThat(triangles.find()).isFalse();
    assertThat(ThreeMfRules.violations(ThreeMfFile.titled("Cube").with(cube()).bytes())).isEmpty();
  }

  @Test
  void what_is_written_keeps_every_rule() {
    Planform planform = Planform.tapered(Length.millimetres(400), Length.millimetres(60), Length.millimetres(30));
    TriangleMesh half = WingSolid.half(planform, new Lens(0.1, 0.02))
        .with(Bore.along(0.3, Length.millimetres(2), Length.ZERO, Length.millimetres(80)))
        .mesh(Length.millimetres(0.05));
    byte[] file = ThreeMfFile.titled("a < b & \u0001c")
        .with(Part.of("wing \"A\" <1>", half).of(Materials.FOAMING_PLA))
        .with(Part.of("wing \"A\" <2>", half.mirrored()).of(Materials.FOAMING_PLA))
        .with(cube())
        .with(Part.of("of nothing yet", cube().mesh()))
        .bytes();
    assertThat(ThreeMfRules.violations(file)).isEmpty();
  }

  @Test
  void two_materials_of_one_name_share_an_entry() throws IOException {
    Material other = Material.of(Materials.PLA.name(), Density.gramsPerCubicCentimetre(1.3), Source.BRIEF);
    byte[] file = ThreeMfFile.titled("two").with(cube()).with(Part.of("again", cube().mesh()).of(other)).bytes();
    assertThat(ThreeMfRules.violations(file)).isEmpty();
    assertThat(model(file).split("<base ", -1)).hasSize(2);
  }

  @Test
  void a_coordinate_that_rounds_to_nothing_stays_in_the_positive_octant() {
    byte[] file = ThreeMfFile.titled("shifted").with(Part.of("Cube", TriangleMesh.of(shifted(), corners()))).bytes();
    assertThat(ThreeMfRules.violations(file)).isEmpty();
  }

  private static double[] shifted() {
    // Half a step of what is written, where rounding of a number and of its opposite part.
    List<Double> all = new ArrayList<>();
    rows("vertex").forEach(row -> COLUMNS.forEach(c -> all.add(row.number(c) / 1000.0 - 0.5e-8)));
    return all.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private static int[] corners() {
    return rows("triangle").stream()
        .flatMap(row -> COLUMNS.stream().map(c -> (int) row.number(c)))
        .mapToInt(Integer::intValue)
        .toArray();
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
      unit="millimeter"            | unit="mm"                         | unit must be one of
      unit="millimeter"            | units="millimeter"                | must have no attribute units
      name="Application"           | name="Program"                    | must be one of the specification's
      name="Application"           | name="Title"                      | metadata must be given once
      <basematerials id="1">       | <basematerials id="0">            | must be a whole number from 1
      <basematerials id="1">       | <basematerials id="2">            | ids must be unique
      displaycolor="#C8CCD4"       | displaycolor="grey"               | displaycolor must be
      type="model"                 | type="solid"                      | type of an object must be one of
      type="model"                 | type="other"                      | must not build an object of type other
      pindex="0"                   | pindex="1"                        | must be less than 1
      pid="1"                      | pid="7"                           | must point to materials before it
      x="39.998"                   | x="39."                           | a number must have digits
      x="39.998"                   | x="NaN"                           | a number must have digits
      x="39.998"                   | x="0"                             | should
      x="39.998" y                 | y                                 | must have x!
      v1="0" v2="1" v3="2"         | v1="0" v2="1" v3="1"              | must differ
      v1="0" v2="1" v3="2"         | v1="1" v2="0" v3="2"              | each edge
      v1="0" v2="1" v3="2"         | v1="0" v2="1" v3="8"              | must be among 8 vertices
      v1="0" v2="1" v3="2"         | v1="0" v2="1" v3="-2"             | must be a whole number from 0
      objectid="2"                 | objectid="1"                      | must point to an object before it
      transform="1 0               | transform="1                      | must be twelve numbers
      transform="1 0 0 0 1 0 0 0 1 | transform="1 0 0 0 1 0 0 0 -1     | positive octant
      xmlns="http                  | xmlns:q="http://q" q:z="1" xmlns="http | must have no attribute q:z
      </build>                     | </build><build></build>           | children of model must be
      <build>                      | <build>text                       | must hold no text
      encoding="UTF-8"             | encoding="ISO-8859-1"             | must be UTF-8
      </model>                     | </mode>                           | must be XML
      """)
  void a_broken_rule_is_named(String right, String wrong, String words) throws IOException {
    String xml = model(ThreeMfFile.titled("Cube").with(cube()).bytes());
    assertThat(xml).contains(right);
    String broken = xml.replaceFirst(Pattern.quote(right), Matcher.quoteReplacement(wrong));
    assertThat(ThreeMfRules.modelViolations(xml.getBytes(StandardCharsets.UTF_8))).isEmpty();
    List<String> found = ThreeMfRules.modelViolations(broken.getBytes(StandardCharsets.UTF_8));
    assertThat(found).anyMatch(sentence -> sentence.contains(words));
  }

  @Test
  void a_mesh_inside_out_and_a_package_without_its_parts_are_named() throws IOException {
    String xml = model(ThreeMfFile.titled("Cube").with(cube()).bytes());
    String turned = xml.replace("v1=", "v9=").replace("v2=", "v1=").replace("v9=", "v2=");
    assertThat(ThreeMfRules.modelViolations(turned.getBytes(StandardCharsets.UTF_8)))
        .singleElement().asString().contains("must point outwards");
    assertThat(ThreeMfRules.violations(new byte[] {1, 2, 3})).anyMatch(v -> v.contains("must hold [Content_Types].xml"));
    String entity = xml.replaceFirst("<model", "<!DOCTYPE model>\n<model");
    assertThat(ThreeMfRules.modelViolations(entity.getBytes(StandardCharsets.UTF_8)))
        .anyMatch(v -> v.contains("no document type"));
  }
}
