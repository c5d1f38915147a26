// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.quantity.Door;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * Parts as one 3MF file: an open package that says its unit, the name of every object and what it is made of.
 *
 * <pre>{@code
 * ThreeMfFile.titled("hall glider").with(wing).with(body).write(Path.of("glider.3mf"));
 * }</pre>
 *
 * <p>The package holds its content types, its relationships and one model in millimetres, with an object and a build item
 * for each part. Build items lie in rows beside each other, on the plane z = 0, so that nothing overlaps and no coordinate of
 * what is built is negative. With a bed the rows are no longer than it is; what its depth does not hold follows in further
 * rows behind it; {@link PrintBed} spreads parts over several beds instead. Without one they make up about a square. Entries carry one fixed time, so that the same parts give the same bytes.
 *
 * <p>Names are the caller's, so the language of the file is said to be undetermined. Materials of one name share one entry,
 * as names of materials should differ in a file.
 *
 * <p>Source: 3MF Consortium, 3D Manufacturing Format, Core Specification, chapters 1 to 5 and appendices B and C; its worked
 * cube comes out as it is printed there.
 */
public final class ThreeMfFile {
  private static final String CORE = "http://schemas.microsoft.com/3dmanufacturing/core/2015/02";
  private static final String PACKAGE = "http://schemas.openxmlformats.org/package/2006/";
  private static final String HEAD = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n";
  private static final String MODEL = "3D/3dmodel.model";
  /** Not the first day of 1980, which the JDK takes for "before 1980" and writes with the time zone of the machine. */
  private static final LocalDateTime WRITTEN = LocalDateTime.of(1980, 2, 1, 0, 0);

  /** Coordinates are written in steps of 10 nm: so many to a metre. */
  private static final double STEPS = 1e8;

  private final String title;
  private final List<Part> parts;

  /** Longest row [m]; not a number without a bed. */
  private final double bed;

  private final boolean placed;

  private ThreeMfFile(String title, List<Part> parts, double bed, boolean placed) {
    this.title = title;
    this.parts = List.copyOf(parts);
    this.bed = bed;
    this.placed = placed;
  }

  /**
   * A file without parts yet.
   *
   * @param title what it holds, not blank
   * @return the file
   */
  public static ThreeMfFile titled(String title) {
    return new ThreeMfFile(Door.said(title, "title of a file"), List.of(), Double.NaN, false);
  }

  /**
   * The same file with one more part.
   *
   * @param part the part; each needs a name of its own
   * @return the file
   */
  public ThreeMfFile with(Part part) {
    Objects.requireNonNull(part, "part");
    if (parts.stream().anyMatch(p -> p.name().equals(part.name()))) {
      throw new IllegalArgumentException("parts must have names of their own, there is already a " + part.name());
    }
    List<Part> more = new ArrayList<>(parts);
    more.add(part);
    return new ThreeMfFile(title, more, bed, placed);
  }

  /**
   * The same file with its parts in rows that fit a bed, its longer side along y. A part longer than the bed has a row of its
   * own.
   *
   * @param machine the machine; a row goes into the square that its round bed holds
   * @return the file
   */
  public ThreeMfFile laidOn(BuildVolume machine) {
    Objects.requireNonNull(machine, "machine");
    double side = machine.bedLength().si();
    return new ThreeMfFile(title, parts, machine.isRound() ? side * Math.sqrt(0.5) : side, false);
  }

  /**
   * The same file with each part built where its coordinates have it, in no rows: for parts that were laid on a bed.
   *
   * @return the file
   */
  public ThreeMfFile asTheyLie() {
    return new ThreeMfFile(title, parts, bed, true);
  }

  /**
   * The same file with more parts.
   *
   * @param more the parts
   * @return the file
   */
  public ThreeMfFile with(List<Part> more) {
    Objects.requireNonNull(more, "more");
    ThreeMfFile file = this;
    for (Part part : more) {
      file = file.with(part);
    }
    return file;
  }

  /**
   * The bytes of the file.
   *
   * @return the same bytes for the same parts
   * @throws IllegalStateException if there are no parts
   */
  public byte[] bytes() {
    if (parts.isEmpty()) {
      throw new IllegalStateException("a file of parts needs at least one part: with(part)");
    }
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes, StandardCharsets.UTF_8)) {
      entry(zip, "[Content_Types].xml", HEAD
          + "<Types xmlns=\"" + PACKAGE + "content-types\">\n"
          + " <Default Extension=\"rels\" ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/>\n"
          + " <Default Extension=\"model\" ContentType=\"application/vnd.ms-package.3dmanufacturing-3dmodel+xml\"/>\n"
          + "</Types>\n");
      entry(zip, "_rels/.rels", HEAD
          + "<Relationships xmlns=\"" + PACKAGE + "relationships\">\n"
          + " <Relationship Id=\"model\" Target=\"/" + MODEL + "\""
          + " Type=\"http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel\"/>\n"
          + "</Relationships>\n");
      entry(zip, MODEL, model());
    } catch (IOException e) {
      throw new UncheckedIOException("an array in memory can always be written", e);
    }
    return bytes.toByteArray();
  }

  private static void entry(ZipOutputStream zip, String name, String text) throws IOException {
    ZipEntry entry = new ZipEntry(name);
    entry.setTimeLocal(WRITTEN);
    zip.putNextEntry(entry);
    zip.write(text.getBytes(StandardCharsets.UTF_8));
    zip.closeEntry();
  }

  /**
   * Writes the file; what was there before is replaced only when all is written.
   *
   * @param file where
   * @throws IOException if it cannot be written; then nothing has changed
   */
  public void write(Path file) throws IOException {
    WholeFile.write(file, bytes());
  }

  private String model() {
    Map<String, Integer> materials = new LinkedHashMap<>();
    parts.forEach(part -> part.material().ifPresent(m -> materials.putIfAbsent(m.name(), materials.size())));
    StringBuilder xml = new StringBuilder(1 << 16);
    xml.append(HEAD)
        .append("<model unit=\"millimeter\" xml:lang=\"und\" xmlns=\"" + CORE + "\">\n")
        .append(" <metadata name=\"Title\">").append(escape(title)).append("</metadata>\n")
        .append(" <metadata name=\"Application\">Wingwright</metadata>\n")
        .append(" <resources>\n");
    int id = 1;
    if (!materials.isEmpty()) {
      xml.append("  <basematerials id=\"1\">\n");
      materials.keySet().forEach(m ->
          xml.append("   <base name=\"").append(escape(m)).append("\" displaycolor=\"#C8CCD4\"/>\n"));
      xml.append("  </basematerials>\n");
      id = 2;
    }
    StringBuilder build = new StringBuilder(" <build>\n");
    double[][] places = new PartRows(parts, bed).places();
    for (int i = 0; i < parts.size(); i++) {
      Part part = parts.get(i);
      xml.append("  <object id=\"").append(id).append("\" type=\"model\" name=\"").append(escape(part.name())).append('"');
      part.material().ifPresent(m -> xml.append(" pid=\"1\" pindex=\"").append(materials.get(m.name())).append('"'));
      xml.append(">\n");
      mesh(xml, part.mesh());
      xml.append("  </object>\n");
      build.append("  <item objectid=\"").append(id).append('"');
      if (!placed) {
        Placement least = part.check().box().least();
        number(build.append(" transform=\"1 0 0 0 1 0 0 0 1 "), places[i][0] + opposite(least.x().si()));
        number(build.append(' '), places[i][1] + opposite(least.y().si()));
        number(build.append(' '), opposite(least.z().si()));
        build.append('"');
      }
      build.append("/>\n");
      id++;
    }
    return xml.append(" </resources>\n").append(build).append(" </build>\n</model>\n").toString();
  }

  private static void mesh(StringBuilder xml, TriangleMesh mesh) {
    xml.append("   <mesh>\n    <vertices>\n");
    for (int v = 0; v < mesh.vertices(); v++) {
      number(xml.append("     <vertex x=\""), mesh.coordinate(v, 0));
      number(xml.append("\" y=\""), mesh.coordinate(v, 1));
      number(xml.append("\" z=\""), mesh.coordinate(v, 2));
      xml.append("\"/>\n");
    }
    xml.append("    </vertices>\n    <triangles>\n");
    for (int t = 0; t < mesh.triangles(); t++) {
      xml.append("     <triangle v1=\"").append(mesh.corner(t, 0));
      xml.append("\" v2=\"").append(mesh.corner(t, 1));
      xml.append("\" v3=\"").append(mesh.corner(t, 2)).append("\"/>\n");
    }
    xml.append("    </triangles>\n   </mesh>\n");
  }

  /** What takes a coordinate to zero as it is written, also where rounding up and down part. */
  private static double opposite(double metres) {
    return -Math.round(metres * STEPS) / STEPS;
  }

  /** A length in metres as millimetres, in whole steps of 10 nm without zeros at the end. */
  static void number(StringBuilder out, double metres) {
    long steps = Math.round(metres * STEPS);
    long whole = Math.abs(steps) / 100_000;
    long part = Math.abs(steps) % 100_000;
    if (steps < 0) {
      out.append('-');
    }
    out.append(whole);
    if (part > 0) {
      String digits = Long.toString(100_000 + part);
      int end = digits.length();
      while (digits.charAt(end - 1) == '0') {
        end--;
      }
      out.append('.').append(digits, 1, end);
    }
  }

  /** Text in XML 1.0: markup escaped, and what the format has no room for left out. */
  static String escape(String text) {
    StringBuilder out = new StringBuilder();
    text.codePoints().forEach(c -> {
      switch (c) {
        case '&' -> out.append("&amp;");
        case '<' -> out.append("&lt;");
        case '>' -> out.append("&gt;");
        case '"' -> out.append("&quot;");
        case '\t', '\n', '\r' -> out.append(' ');
        default -> {
          boolean allowed = c >= 0x20 && c < 0xD800 || c > 0xDFFF && c < 0xFFFE || c > 0xFFFF;
          if (allowed) {
            out.appendCodePoint(c);
          }
        }
      }
    });
    return out.toString();
  }

  /**
   * The names of the parts.
   *
   * @return the names, in the order of the file
   */
  public Set<String> names() {
    Set<String> names = new LinkedHashSet<>();
    parts.forEach(part -> names.add(part.name()));
    return names;
  }

  @Override
  public String toString() {
    return title + ", " + parts.size() + " parts";
  }
}
