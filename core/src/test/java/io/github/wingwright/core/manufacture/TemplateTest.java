// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Length;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Element;

class TemplateTest {
  private static final Planform WING =
      Planform.tapered(mm(480), mm(88), mm(66)).withDihedral(Angle.degrees(12));
  private static final Charset PDF = Charset.forName("windows-1252");

  @TempDir
  Path temporary;

  private static Length mm(double value) {
    return Length.millimetres(value);
  }

  private static Element root(Template template) throws Exception {
    byte[] svg = template.svg().getBytes(StandardCharsets.UTF_8);
    return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new ByteArrayInputStream(svg)).getDocumentElement();
  }

  /** Least and greatest x and y of the first path. */
  private static double[] extent(Element svg, int path) {
    String d = ((Element) svg.getElementsByTagName("path").item(path)).getAttribute("d");
    double[] box = {1e9, 1e9, -1e9, -1e9};
    Matcher point = Pattern.compile("[ML](\\S+) ([-0-9.]+)").matcher(d);
    while (point.find()) {
      double x = Double.parseDouble(point.group(1));
      double y = Double.parseDouble(point.group(2));
      box = new double[] {Math.min(box[0], x), Math.min(box[1], y), Math.max(box[2], x), Math.max(box[3], y)};
    }
    return box;
  }

  @Test
  void one_unit_of_the_drawing_is_one_millimetre_of_paper() throws Exception {
    Element svg = root(Templates.panels("wing half", WING));
    String width = svg.getAttribute("width");
    String height = svg.getAttribute("height");
    assertThat(width).endsWith("mm");
    assertThat(svg.getAttribute("viewBox")).isEqualTo("0 0 " + width.replace("mm", "") + " " + height.replace("mm", ""));
    double[] outline = extent(svg, 0);
    assertThat(outline[2] - outline[0]).isCloseTo(240.0 / Math.cos(Math.toRadians(12)), within(0.002));
    assertThat(outline[3] - outline[1]).isCloseTo(88.0, within(0.002));
  }

  @Test
  void the_scale_bar_is_fifty_millimetres_long() throws Exception {
    Element svg = root(Templates.ribs("ribs", WING, new Lens(0.08, 0.03)));
    int paths = svg.getElementsByTagName("path").getLength();
    String bar = ((Element) svg.getElementsByTagName("path").item(paths - 1)).getAttribute("d");
    assertThat(bar).startsWith("M10 ").endsWith("H60");
    assertThat(svg.getTextContent()).contains("50 mm: measure it before you cut", "print at 100 %");
  }

  @Test
  void ribs_have_chord_and_thickness_of_their_station() throws Exception {
    Element svg = root(Templates.ribs("ribs", WING, new Lens(0.08, 0.0)));
    double[] rootRib = extent(svg, 0);
    double[] tipRib = extent(svg, 3);
    assertThat(rootRib[2] - rootRib[0]).isCloseTo(88.0, within(0.02));
    assertThat(rootRib[3] - rootRib[1]).isCloseTo(0.08 * 88.0, within(0.02));
    assertThat(tipRib[2] - tipRib[0]).isCloseTo(66.0, within(0.02));
    assertThat(tipRib[3] - tipRib[1]).isCloseTo(0.08 * 66.0, within(0.02));
    assertThat(tipRib[1]).isGreaterThan(rootRib[3] + 5.0);
  }

  @Test
  void a_body_shows_its_views_with_seat_slots_and_mark() throws Exception {
    BodySolid solid = BodySolid.of(new Fuselage(BodyShape.capsule(), mm(220), mm(22)))
        .with(new WingSeat(mm(40), mm(130), mm(8), Angle.ZERO))
        .with(new TailSlots(mm(170), mm(178), mm(0), mm(1)))
        .markedAt(mm(80));
    Element svg = root(Templates.body("fuselage", solid));
    for (int view = 0; view < 2; view++) {
      double[] outline = extent(svg, view);
      assertThat(outline[2] - outline[0]).isCloseTo(220.0, within(0.002));
      assertThat(outline[3] - outline[1]).isCloseTo(22.0, within(0.02));
    }
    assertThat(svg.getTextContent()).contains(
        "wing seat", "tail slots", "centre of gravity, 80 mm",
        "from the side, nose at the left, tail at the right", "from above, nose at the left, tail at the right");
  }

  @Test
  void one_half_is_cut_twice_and_a_whole_or_a_fin_once() {
    Planform fin = Planform.taperedFin(Area.squareCentimetres(30), 1.5, 0.7);
    assertThat(Templates.panels("wing half", WING).svg()).contains("cut two, one mirrored");
    assertThat(Templates.whole("tailplane", WING).svg()).doesNotContain("cut two");
    assertThat(Templates.panels("fin", fin).svg()).doesNotContain("cut two");
  }

  /** Words of 3 mm height, each letter at most 0.6 of it wide, above the foot of 16 mm and inside the margin. */
  @Test
  void no_word_leaves_its_sheet() throws Exception {
    BodySolid body = BodySolid.of(new Fuselage(BodyShape.capsule(), mm(60), mm(12))).markedAt(mm(55));
    Planform slim = Planform.tapered(mm(60), mm(9), mm(6));
    for (Template template : List.of(
        Templates.panels("half", WING), Templates.panels("slim", slim), Templates.whole("tail", WING),
        Templates.ribs("ribs", WING, new Lens(0.08, 0.03)), Templates.body("body", body))) {
      Element svg = root(template);
      double width = Double.parseDouble(svg.getAttribute("width").replace("mm", ""));
      double height = Double.parseDouble(svg.getAttribute("height").replace("mm", ""));
      for (int i = 2; i < svg.getElementsByTagName("text").getLength(); i++) {
        Element text = (Element) svg.getElementsByTagName("text").item(i);
        double x = Double.parseDouble(text.getAttribute("x"));
        double y = Double.parseDouble(text.getAttribute("y"));
        assertThat(x).as("%s of %s", text.getTextContent(), template).isGreaterThanOrEqualTo(10.0 - 1e-9);
        assertThat(x + 1.8 * text.getTextContent().length()).as("%s of %s", text.getTextContent(), template)
            .isLessThanOrEqualTo(width - 10.0 + 1e-3);
        assertThat(y).as("%s of %s", text.getTextContent(), template).isBetween(12.9, height - 26.0);
      }
      // On the sheet of the PDF the window for the drawing ends above the foot.
      Matcher window = Pattern.compile("q 10\\.000 22\\.000 \\S+ (\\S+) re W n\n1 0 0 1 \\S+ (\\S+) cm").matcher(new String(template.pdf(), PDF));
      assertThat(window.find()).isTrue();
      double up = Double.parseDouble(window.group(2));
      assertThat(template.labels()).allMatch(label -> up + label.at().y() >= 22.0);
    }
  }

  @Test
  void a_half_says_which_end_is_the_root_and_which_edge_leads() throws Exception {
    assertThat(root(Templates.panels("wing half", WING)).getTextContent()).contains("root, 88 mm", "tip, 66 mm", "leading edge");
    assertThat(root(Templates.ribs("ribs", WING, new Lens(0.08, 0.03))).getTextContent())
        .contains(", root, chord 88 mm", "240 mm from the root, chord 66 mm");
  }

  @Test
  void a_tail_is_drawn_from_tip_to_tip() throws Exception {
    Element svg = root(Templates.whole("tailplane", Planform.tapered(mm(150), mm(50), mm(40))));
    double[] outline = extent(svg, 0);
    assertThat(outline[2] - outline[0]).isCloseTo(150.0, within(0.002));
    assertThat(outline[3] - outline[1]).isCloseTo(50.0, within(0.002));
    Planform fin = Planform.taperedFin(Area.squareCentimetres(30), 1.5, 0.7);
    assertThatThrownBy(() -> Templates.whole("fin", fin)).hasMessageContaining("two halves");
  }

  /** Offsets of the cross-reference table point at the objects, and lengths of streams are true. */
  private static int checkPdf(byte[] bytes) {
    String text = new String(bytes, PDF);
    assertThat(text).startsWith("%PDF-1.4").endsWith("%%EOF\n");
    int table = Integer.parseInt(text.substring(text.indexOf("startxref\n") + 10, text.lastIndexOf("\n%%EOF")));
    assertThat(text.substring(table)).startsWith("xref\n");
    Matcher entry = Pattern.compile("(\\d{10}) 00000 n ").matcher(text.substring(table));
    int number = 0;
    while (entry.find()) {
      number++;
      assertThat(text.substring(Integer.parseInt(entry.group(1)))).startsWith(number + " 0 obj\n");
    }
    Matcher stream = Pattern.compile("/Length (\\d+) >>\nstream\n").matcher(text);
    int sheets = 0;
    while (stream.find()) {
      sheets++;
      assertThat(text.substring(stream.end() + Integer.parseInt(stream.group(1)))).startsWith("\nendstream");
    }
    assertThat(text).contains("/Count " + sheets);
    return sheets;
  }

  @Test
  void a_small_drawing_takes_one_sheet_and_a_long_one_as_many_as_it_needs() {
    assertThat(checkPdf(Templates.panels("half (starboard)", WING).pdf())).isEqualTo(1);
    Template.Line square = new Template.Line(Template.Kind.CUT, true, List.of(
        new Template.Point(0, 0), new Template.Point(500, 0), new Template.Point(500, 400), new Template.Point(0, 400)));
    // Upright: 190 and then 180 of 500 mm make 3, 265 and then 255 of 400 mm make 2; across would take 2 by 3.
    Template large = new Template("plate", List.of(square), List.of());
    assertThat(checkPdf(large.pdf())).isEqualTo(6);
    String text = new String(large.pdf(), PDF);
    assertThat(text).contains("sheet 6 of 6 (row 2, column 3\\)".replace("(row", "\\(row"));
  }

  @Test
  void the_same_drawing_gives_the_same_bytes_and_files_are_written_whole() throws IOException {
    Template half = Templates.panels("half", WING);
    assertThat(half.pdf()).isEqualTo(Templates.panels("half", WING).pdf());
    half.writeSvg(temporary.resolve("half.svg"));
    half.writePdf(temporary.resolve("half.pdf"));
    assertThat(Files.readString(temporary.resolve("half.svg"))).isEqualTo(half.svg());
    assertThatThrownBy(() -> half.writePdf(temporary.resolve("no/half.pdf"))).isInstanceOf(IOException.class);
    assertThatThrownBy(() -> new Template("empty", List.of(), List.of())).hasMessageContaining("at least one line");
  }
}
