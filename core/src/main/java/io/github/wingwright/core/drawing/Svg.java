// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import io.github.wingwright.core.quantity.MinusSign;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Objects;

/**
 * Writes one picture as SVG 1.1: text stays text, numbers are rounded to a hundredth of a millimetre, and the same calls
 * give the same bytes. Coordinates are millimetres on paper, x to the right and y down.
 */
public final class Svg {
  private static final String FONT = "Helvetica, Arial, 'Liberation Sans', sans-serif";

  private final double width;
  private final double height;
  private final StringBuilder body = new StringBuilder();

  /**
   * An empty picture.
   *
   * @param width width [mm], positive
   * @param height height [mm], positive
   * @param title what it shows, for readers who cannot see it
   */
  public Svg(double width, double height, String title) {
    if (!(width > 0.0) || !(height > 0.0)) {
      throw new IllegalArgumentException("picture must have a size, was " + width + " × " + height + " mm");
    }
    this.width = width;
    this.height = height;
    body.append("<title>").append(escape(title)).append("</title>\n");
  }

  /**
   * Width of the picture.
   *
   * @return width [mm]
   */
  public double width() {
    return width;
  }

  /**
   * Height of the picture.
   *
   * @return height [mm]
   */
  public double height() {
    return height;
  }

  /**
   * A straight line.
   *
   * @param x1 start [mm]
   * @param y1 start [mm]
   * @param x2 end [mm]
   * @param y2 end [mm]
   * @param style how it looks
   */
  public void line(double x1, double y1, double x2, double y2, Pen style) {
    Objects.requireNonNull(style, "style");
    body.append("<line x1=\"").append(number(x1)).append("\" y1=\"").append(number(y1));
    body.append("\" x2=\"").append(number(x2)).append("\" y2=\"").append(number(y2)).append('"');
    body.append(style.attributes()).append("/>\n");
  }

  /**
   * A polygon.
   *
   * @param x abscissae [mm]
   * @param y ordinates [mm], as many
   * @param style how it looks
   */
  public void polygon(double[] x, double[] y, Pen style) {
    Objects.requireNonNull(x, "x");
    Objects.requireNonNull(y, "y");
    Objects.requireNonNull(style, "style");
    points("polygon", x, y, style);
  }

  /**
   * An open run of straight lines.
   *
   * @param x abscissae [mm]
   * @param y ordinates [mm], as many
   * @param style how it looks
   */
  public void polyline(double[] x, double[] y, Pen style) {
    Objects.requireNonNull(x, "x");
    Objects.requireNonNull(y, "y");
    Objects.requireNonNull(style, "style");
    points("polyline", x, y, style);
  }

  private void points(String element, double[] x, double[] y, Pen style) {
    if (x.length != y.length) {
      throw new IllegalArgumentException("points need as many x as y, got " + x.length + " and " + y.length);
    }
    body.append('<').append(element).append(" points=\"");
    for (int i = 0; i < x.length; i++) {
      body.append(i == 0 ? "" : " ").append(number(x[i])).append(',').append(number(y[i]));
    }
    body.append('"').append(style.attributes()).append("/>\n");
  }

  /**
   * A circle.
   *
   * @param x centre [mm]
   * @param y centre [mm]
   * @param radius radius [mm]
   * @param style how it looks
   */
  public void circle(double x, double y, double radius, Pen style) {
    Objects.requireNonNull(style, "style");
    body.append("<circle cx=\"").append(number(x)).append("\" cy=\"").append(number(y));
    body.append("\" r=\"").append(number(radius)).append('"').append(style.attributes()).append("/>\n");
  }

  /**
   * A rectangle.
   *
   * @param x left edge [mm]
   * @param y upper edge [mm]
   * @param w width [mm]
   * @param h height [mm]
   * @param style how it looks
   */
  public void rectangle(double x, double y, double w, double h, Pen style) {
    Objects.requireNonNull(style, "style");
    body.append("<rect x=\"").append(number(x)).append("\" y=\"").append(number(y));
    body.append("\" width=\"").append(number(w)).append("\" height=\"").append(number(h)).append('"');
    body.append(style.attributes()).append("/>\n");
  }

  /**
   * A line of text.
   *
   * @param x anchor [mm]
   * @param y baseline [mm]
   * @param text the text
   * @param lettering size, place and colour
   */
  public void text(double x, double y, String text, Lettering lettering) {
    Objects.requireNonNull(text, "text");
    Objects.requireNonNull(lettering, "lettering");
    body.append("<text x=\"").append(number(x)).append("\" y=\"").append(number(y)).append('"');
    body.append(lettering.attributes()).append('>').append(escape(text)).append("</text>\n");
  }

  /**
   * A line of text that reads upwards.
   *
   * @param x anchor [mm]
   * @param y anchor [mm]
   * @param text the text
   * @param lettering size, place and colour
   */
  public void upwardText(double x, double y, String text, Lettering lettering) {
    Objects.requireNonNull(text, "text");
    Objects.requireNonNull(lettering, "lettering");
    String place = number(x) + " " + number(y);
    body.append("<text transform=\"translate(").append(place).append(") rotate(-90)\"");
    body.append(lettering.attributes()).append('>').append(escape(text)).append("</text>\n");
  }

  /**
   * The picture as it stands inside a page.
   *
   * @return an {@code svg} element
   */
  public String element() {
    return "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\""
        + number(width)
        + "mm\" height=\""
        + number(height)
        + "mm\" viewBox=\"0 0 "
        + number(width)
        + " "
        + number(height)
        + "\" role=\"img\" font-family=\""
        + FONT
        + "\">\n"
        + body
        + "</svg>\n";
  }

  /**
   * The picture as a file of its own.
   *
   * @return an XML document
   */
  public String document() {
    return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + element();
  }

  /** A coordinate to a hundredth of a millimetre, without trailing zeros. */
  static String number(double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("coordinate must be finite, was " + value);
    }
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_EVEN).stripTrailingZeros();
    return rounded.signum() == 0 ? "0" : rounded.toPlainString();
  }

  /** Text as it may stand in an element; characters that no document may hold are replaced. */
  static String escape(String text) {
    StringBuilder out = new StringBuilder(text.length());
    MinusSign.in(text).codePoints().forEach(c -> escape(out, c));
    return out.toString();
  }

  private static void escape(StringBuilder out, int c) {
    switch (c) {
      case '&' -> out.append("&amp;");
      case '<' -> out.append("&lt;");
      case '>' -> out.append("&gt;");
      case '"' -> out.append("&quot;");
      default -> out.appendCodePoint(isLegal(c) ? c : 0xFFFD);
    }
  }

  private static boolean isLegal(int c) {
    return c >= ' ' && (c < 0xD800 || c > 0xDFFF) && c != 0xFFFE && c != 0xFFFF;
  }
}
