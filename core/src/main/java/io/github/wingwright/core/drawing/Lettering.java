// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import io.github.wingwright.core.quantity.MinusSign;
import java.util.Objects;

/**
 * How text looks.
 *
 * @param size height of the letters [mm]
 * @param anchor where the anchor point lies in the text
 * @param colour colour
 * @param bold whether it is bold
 * @param halo colour of a rim that interrupts the lines behind the letters, empty for none
 */
public record Lettering(double size, Anchor anchor, String colour, boolean bold, String halo) {
  public Lettering {
    Objects.requireNonNull(anchor, "anchor");
    Objects.requireNonNull(colour, "colour");
    Objects.requireNonNull(halo, "halo");
  }

  /** Size of figures and notes [mm]: capitals 2.5 mm high, a standard height of lettering on drawings (ISO 3098). */
  static final double NOTE = 3.5;

  /** Size of the lesser figures on charts [mm]. */
  static final double SMALL = 3.1;

  /** Size of titles [mm]. */
  static final double TITLE = 4.4;

  private static final double ASCENT = 0.76;
  private static final double DESCENT = 0.22;

  /** Where the anchor point lies. */
  public enum Anchor {
    /** At the first letter. */
    START("start", 0.0),
    /** In the middle. */
    MIDDLE("middle", 0.5),
    /** At the last letter. */
    END("end", 1.0);

    private final String keyword;

    /** The part of the text that stands before the anchor point. */
    private final double before;

    Anchor(String keyword, double before) {
      this.keyword = keyword;
      this.before = before;
    }
  }

  /**
   * Text that begins at its anchor.
   *
   * @param size height of the letters [mm]
   * @return the lettering in ink
   */
  public static Lettering start(double size) {
    return new Lettering(size, Anchor.START, Pen.INK, false, "");
  }

  /**
   * Text that is centred on its anchor.
   *
   * @param size height of the letters [mm]
   * @return the lettering in ink
   */
  public static Lettering middle(double size) {
    return new Lettering(size, Anchor.MIDDLE, Pen.INK, false, "");
  }

  /**
   * Text that ends at its anchor.
   *
   * @param size height of the letters [mm]
   * @return the lettering in ink
   */
  public static Lettering end(double size) {
    return new Lettering(size, Anchor.END, Pen.INK, false, "");
  }

  /**
   * The same in another colour.
   *
   * @param other colour
   * @return the lettering
   */
  public Lettering in(String other) {
    return new Lettering(size, anchor, other, bold, halo);
  }

  /**
   * The same in bold.
   *
   * @return the lettering
   */
  public Lettering heavy() {
    return new Lettering(size, anchor, colour, true, halo);
  }

  /**
   * The same with a rim that interrupts the lines behind it, as figures on drawings interrupt lines (ISO 129-1).
   *
   * @param ground colour of what lies behind
   * @return the lettering
   */
  public Lettering onto(String ground) {
    return new Lettering(size, anchor, colour, bold, ground);
  }

  /** Width of a line of text [mm]. */
  double width(String text) {
    return TextWidth.of(MinusSign.in(text), size, bold);
  }

  /** The room that a line of text takes. */
  Box box(double x, double y, String text) {
    double width = width(text);
    double left = x - anchor.before * width;
    return new Box(left, y - ASCENT * size, left + width, y + DESCENT * size);
  }

  /** The room that a line of text takes that reads upwards. */
  Box upwardBox(double x, double y, String text) {
    double width = width(text);
    double foot = y + anchor.before * width;
    return new Box(x - ASCENT * size, foot - width, x + DESCENT * size, foot);
  }

  String attributes() {
    return " font-size=\""
        + Svg.number(size)
        + "\" text-anchor=\""
        + anchor.keyword
        + "\" fill=\""
        + colour
        + "\""
        + (bold ? " font-weight=\"bold\"" : "")
        + rim();
  }

  private String rim() {
    String line = " paint-order=\"stroke\" stroke-linejoin=\"round\" stroke-width=\"1\" stroke=\"";
    return halo.isEmpty() ? "" : line + halo + "\"";
  }
}
