// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

/** A template as SVG 1.1 in millimetres. */
final class TemplateSvg {
  private static final double MARGIN = 10.0;
  private static final double FOOT = 16.0;
  private static final double BAR = 50.0;

  private TemplateSvg() {}

  static String of(Template template) {
    double[] box = template.sheet();
    double width = Math.max(box[2] - box[0], BAR + 60.0) + 2.0 * MARGIN;
    double height = box[3] - box[1] + 2.0 * MARGIN + FOOT;
    double left = MARGIN - box[0];
    double top = MARGIN + box[3];
    StringBuilder svg = new StringBuilder();
    svg.append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"");
    number(svg, width).append("mm\" height=\"");
    number(svg, height).append("mm\" viewBox=\"0 0 ");
    number(svg, width).append(' ');
    number(svg, height).append("\">\n<title>").append(ThreeMfFile.escape(template.title())).append("</title>\n");
    svg.append("<g fill=\"none\" stroke=\"#000\" stroke-width=\"0.2\" stroke-linejoin=\"round\">\n");
    for (Template.Line line : template.lines()) {
      svg.append("<path d=\"");
      char step = 'M';
      for (Template.Point p : line.points()) {
        svg.append(step);
        number(svg, left + p.x()).append(' ');
        number(svg, top - p.y());
        step = 'L';
      }
      svg.append(line.closed() ? "Z\"" : "\"");
      svg.append(line.kind() == Template.Kind.MARK ? " stroke-dasharray=\"2 1\" stroke-width=\"0.15\"/>\n" : "/>\n");
    }
    double foot = height - MARGIN;
    svg.append("<path d=\"");
    for (int i = 0; i <= 5; i++) {
      svg.append('M');
      number(svg, MARGIN + 10.0 * i).append(' ');
      number(svg, foot).append("V");
      number(svg, foot - (i % 5 == 0 ? 4.0 : 2.0));
    }
    svg.append('M');
    number(svg, MARGIN).append(' ');
    number(svg, foot).append('H');
    number(svg, MARGIN + BAR).append("\"/>\n</g>\n");
    svg.append("<g font-family=\"Helvetica, Arial, 'Liberation Sans', sans-serif\" font-size=\"" + (int) Template.LETTERS + "\" fill=\"#000\">\n");
    text(svg, MARGIN + BAR + 2.0, foot, "50 mm: measure it before you cut");
    text(svg, MARGIN, foot - 6.0, template.title() + ", full size: print at 100 %");
    for (Template.Label label : template.labels()) {
      text(svg, left + label.at().x(), top - label.at().y(), label.text());
    }
    return svg.append("</g>\n</svg>\n").toString();
  }

  private static void text(StringBuilder svg, double x, double y, String text) {
    svg.append("<text x=\"");
    number(svg, x).append("\" y=\"");
    number(svg, y).append("\">").append(ThreeMfFile.escape(text)).append("</text>\n");
  }

  private static StringBuilder number(StringBuilder svg, double millimetres) {
    ThreeMfFile.number(svg, 1e-3 * Math.rint(millimetres * 1e3) / 1e3);
    return svg;
  }
}
