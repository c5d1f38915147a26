// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

/**
 * How text looks.
 *
 * @param size height of the letters [mm]
 * @param anchor where the anchor point lies in the text
 * @param colour colour
 * @param bold whether it is bold
 */
public record Lettering(double size, Anchor anchor, String colour, boolean bold) {

  /** Where the anchor point lies. */
  public enum Anchor {
    /** At the first letter. */
    START("start"),
    /** In the middle. */
    MIDDLE("middle"),
    /** At the last letter. */
    END("end");

    private final String keyword;

    Anchor(String keyword) {
      this.keyword = keyword;
    }
  }

  /**
   * Text that begins at its anchor.
   *
   * @param size height of the letters [mm]
   * @return the lettering in ink
   */
  public static Lettering start(double size) {
    return new Lettering(size, Anchor.START, Pen.INK, false);
  }

  /**
   * Text that is centred on its anchor.
   *
   * @param size height of the letters [mm]
   * @return the lettering in ink
   */
  public static Lettering middle(double size) {
    return new Lettering(size, Anchor.MIDDLE, Pen.INK, false);
  }

  /**
   * Text that ends at its anchor.
   *
   * @param size height of the letters [mm]
   * @return the lettering in ink
   */
  public static Lettering end(double size) {
    return new Lettering(size, Anchor.END, Pen.INK, false);
  }

  /**
   * The same in another colour.
   *
   * @param other colour
   * @return the lettering
   */
  public Lettering in(String other) {
    return new Lettering(size, anchor, other, bold);
  }

  /**
   * The same in bold.
   *
   * @return the lettering
   */
  public Lettering heavy() {
    return new Lettering(size, anchor, colour, true);
  }

  String attributes() {
    return " font-size=\""
        + Svg.number(size)
        + "\" text-anchor=\""
        + anchor.keyword
        + "\" fill=\""
        + colour
        + "\""
        + (bold ? " font-weight=\"bold\"" : "");
  }
}
