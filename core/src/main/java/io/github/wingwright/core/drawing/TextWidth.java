// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * How wide a line of text is in the upright sans-serif that the pictures ask for.
 *
 * <p>A table of advance widths in thousandths of the letter size stands for the font: the three families that the pictures
 * name share these widths (common practice, from memory; compared with a browser's own measure). What the table does not
 * hold counts as a wide letter, so a label takes rather too much room than too little.
 */
final class TextWidth {
  /** Advance widths of the characters from the blank to the tilde. */
  private static final int[] ASCII = {
    278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, // blank to /
    556, 556, 556, 556, 556, 556, 556, 556, 556, 556, 278, 278, 584, 584, 584, 556, // 0 to ?
    1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667, 556, 833, 722, 778, // @ to O
    667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, 556, // P to _
    333, 556, 556, 500, 556, 556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556, // ` to o
    556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334, 260, 334, 584 // p to ~
  };

  private static final String MARKS = "·²³°¹";
  private static final String SIGNS = "×−–±";
  private static final int NARROW = 400;
  private static final int MEDIUM = 600;
  private static final int WIDE = 1000;

  /** Bold letters are wider, the narrow ones most. */
  private static final double BOLD = 1.09;

  private static final Pattern BLANKS = Pattern.compile("\\s+");

  private TextWidth() {}

  /** Width of one line [mm] in letters of a size [mm]. */
  static double of(String text, double size, boolean bold) {
    long thousandths = text.codePoints().mapToLong(TextWidth::advance).sum();
    return size * thousandths / 1000.0 * (bold ? BOLD : 1.0);
  }

  private static int advance(int c) {
    if (c >= ' ' && c <= '~') {
      return ASCII[c - ' '];
    }
    if (MARKS.indexOf(c) >= 0) {
      return NARROW;
    }
    boolean letter = (c >= 0xDF && c < 0x250) || (c >= 0x3B1 && c < 0x3CA);
    return letter || SIGNS.indexOf(c) >= 0 ? MEDIUM : WIDE;
  }

  /** Breaks a text into lines no wider than a width; the last of too many lines ends in an ellipsis. */
  static List<String> wrap(String text, double width, Lettering lettering, int mostLines) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : BLANKS.split(text.strip(), -1)) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (line.isEmpty() || lettering.width(longer) <= width) {
        line = longer;
      } else {
        lines.add(line);
        line = word;
      }
    }
    lines.add(line);
    if (lines.size() > mostLines) {
      String rest = String.join(" ", lines.subList(mostLines - 1, lines.size()));
      lines = new ArrayList<>(lines.subList(0, mostLines - 1));
      lines.add(rest);
    }
    return lines.stream().map(l -> cut(l, width, lettering)).toList();
  }

  /** The text itself if it fits, else as much of it as fits before an ellipsis. */
  static String cut(String text, double width, Lettering lettering) {
    if (lettering.width(text) <= width) {
      return text;
    }
    int end = text.length();
    while (end > 0 && lettering.width(text.substring(0, end) + "…") > width) {
      end = text.offsetByCodePoints(end, -1);
    }
    return text.substring(0, end).stripTrailing() + "…";
  }
}
