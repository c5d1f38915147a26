// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import java.io.ByteArrayOutputStream;
import java.nio.charset.Charset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A template as PDF on sheets of A4. Only lines and words in a font that every reader has are needed, which takes four kinds of
 * object; the file is plain text, without time or number of its own, so that the same drawing gives the same bytes.
 *
 * <p>Source: ISO 32000-1, clauses 7.5 (file structure), 8.4 and 8.5 (graphics), 9.6.2 (the standard fonts).
 */
final class TemplatePdf {
  private static final double SHORT = 210.0;
  private static final double LONG = 297.0;
  private static final double MARGIN = 10.0;
  private static final double FOOT = 12.0;
  private static final double OVERLAP = 10.0;
  private static final double BAR = 50.0;
  private static final double POINTS = 72.0 / 25.4;

  /** The encoding of the standard fonts, WinAnsiEncoding. */
  private static final Charset ENCODING = Charset.forName("windows-1252");

  private final Template template;
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final List<Integer> places = new ArrayList<>();

  TemplatePdf(Template template) {
    this.template = template;
  }

  byte[] bytes() {
    double[] box = template.sheet();
    double width = box[2] - box[0];
    double height = box[3] - box[1];
    boolean upright = sheets(width, SHORT - 2.0 * MARGIN) * sheets(height, LONG - 2.0 * MARGIN - FOOT)
        <= sheets(width, LONG - 2.0 * MARGIN) * sheets(height, SHORT - 2.0 * MARGIN - FOOT);
    double pageWidth = upright ? SHORT : LONG;
    double pageHeight = upright ? LONG : SHORT;
    double across = pageWidth - 2.0 * MARGIN;
    double up = pageHeight - 2.0 * MARGIN - FOOT;
    int columns = sheets(width, across);
    int rows = sheets(height, up);
    int pages = columns * rows;
    put("%PDF-1.4\n%âãÏÓ\n");
    object("<< /Type /Catalog /Pages 2 0 R >>");
    StringBuilder kids = new StringBuilder();
    for (int i = 0; i < pages; i++) {
      kids.append(4 + 2 * i).append(" 0 R ");
    }
    object("<< /Type /Pages /Count " + pages + " /Kids [ " + kids + "] >>");
    object("<< /Type /Font /Subtype /Type1 /BaseFont /Helvetica /Encoding /WinAnsiEncoding >>");
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        int page = places.size() + 1;
        object(String.format(Locale.ROOT,
            "<< /Type /Page /Parent 2 0 R /MediaBox [ 0 0 %.3f %.3f ] /Resources << /Font << /F 3 0 R >> >> /Contents %d 0 R >>",
            pageWidth * POINTS, pageHeight * POINTS, page + 1));
        double left = box[0] + column * (across - OVERLAP);
        double bottom = box[3] - height - row * (up - OVERLAP) + Math.max(0.0, height - up);
        // A single row keeps the drawing at the bottom of the sheet, several are counted from the top.
        double base = rows == 1 ? box[1] : bottom;
        String words = pages == 1 ? "" : String.format(Locale.ROOT, ", sheet %d of %d (row %d, column %d)",
            row * columns + column + 1, pages, row + 1, column + 1);
        String content = sheet(left, base, across, up, words, pages > 1);
        object("<< /Length " + content.getBytes(ENCODING).length + " >>\nstream\n" + content + "\nendstream");
      }
    }
    int table = out.size();
    put("xref\n0 " + (places.size() + 1) + "\n0000000000 65535 f \n");
    places.forEach(place -> put(String.format(Locale.ROOT, "%010d 00000 n \n", place)));
    put("trailer\n<< /Size " + (places.size() + 1) + " /Root 1 0 R >>\nstartxref\n" + table + "\n%%EOF\n");
    return out.toByteArray();
  }

  private static int sheets(double extent, double room) {
    return extent <= room ? 1 : 1 + (int) Math.ceil((extent - room) / (room - OVERLAP));
  }

  private void put(String text) {
    out.writeBytes(text.getBytes(ENCODING));
  }

  private void object(String body) {
    places.add(out.size());
    put(places.size() + " 0 obj\n" + body + "\nendobj\n");
  }

  private String sheet(double left, double bottom, double across, double up, String words, boolean joined) {
    StringBuilder c = new StringBuilder();
    double foot = MARGIN + FOOT;
    c.append(String.format(Locale.ROOT, "%.6f 0 0 %.6f 0 0 cm 0.2 w 1 j\nq ", POINTS, POINTS));
    c.append(String.format(Locale.ROOT, "%.3f %.3f %.3f %.3f re W n\n", MARGIN, foot, across, up));
    c.append(String.format(Locale.ROOT, "1 0 0 1 %.3f %.3f cm\n", MARGIN - left, foot - bottom));
    for (Template.Line line : template.lines()) {
      c.append(line.kind() == Template.Kind.MARK ? "[2 1] 0 d 0.15 w\n" : "[] 0 d 0.2 w\n");
      String step = "m";
      for (Template.Point p : line.points()) {
        c.append(String.format(Locale.ROOT, "%.3f %.3f %s\n", p.x(), p.y(), step));
        step = "l";
      }
      c.append(line.closed() ? "s\n" : "S\n");
    }
    template.labels().forEach(label -> text(c, label.at().x(), label.at().y(), label.text()));
    c.append("Q\n");
    if (joined) {
      for (double x : new double[] {MARGIN, MARGIN + OVERLAP, MARGIN + across - OVERLAP, MARGIN + across}) {
        for (double y : new double[] {foot, foot + OVERLAP, foot + up - OVERLAP, foot + up}) {
          c.append(String.format(Locale.ROOT, "%.3f %.3f m %.3f %.3f l %.3f %.3f m %.3f %.3f l S\n",
              x - 2.0, y, x + 2.0, y, x, y - 2.0, x, y + 2.0));
        }
      }
    }
    for (int i = 0; i <= 5; i++) {
      c.append(String.format(Locale.ROOT, "%.3f %.3f m %.3f %.3f l S\n",
          MARGIN + 10.0 * i, MARGIN, MARGIN + 10.0 * i, MARGIN + (i % 5 == 0 ? 4.0 : 2.0)));
    }
    c.append(String.format(Locale.ROOT, "%.3f %.3f m %.3f %.3f l S\n", MARGIN, MARGIN, MARGIN + BAR, MARGIN));
    text(c, MARGIN + BAR + 2.0, MARGIN, "50 mm: measure it before you cut");
    text(c, MARGIN, MARGIN + 6.0, template.title() + ", full size: print at 100 %" + words);
    return c.toString();
  }

  private static void text(StringBuilder c, double x, double y, String text) {
    String escaped = text.replace("\\", "\\\\").replace("(", "\\(").replace(")", "\\)");
    c.append(String.format(Locale.ROOT, "BT /F %.0f Tf %.3f %.3f Td (%s) Tj ET\n", Template.LETTERS, x, y, escaped));
  }
}
