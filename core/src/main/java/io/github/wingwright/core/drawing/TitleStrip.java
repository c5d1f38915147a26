// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.List;

/** The strip at the foot of a drawing: title, scale, unit, projection, and a bar that stays true at any size. */
final class TitleStrip {
  private static final double LONGEST_BAR = 60.0;
  private static final double SYMBOL = 20.0;
  private static final double NOTE_ROW = 5.5;
  private static final int MOST_TITLE_LINES = 3;

  private TitleStrip() {}

  static Sketch of(String title, SheetScale scale, double width) {
    Sketch sketch = new Sketch();
    sketch.line(0.0, 0.0, width, 0.0, Pen.THIN);
    Lettering large = Lettering.start(Lettering.TITLE).heavy();
    double y = 0.0;
    for (String line : TextWidth.wrap(title, width, large, MOST_TITLE_LINES)) {
      y += 6.2;
      sketch.text(0.0, y, line, large);
    }
    y += 6.5;
    Lettering note = Lettering.start(Lettering.NOTE);
    String dimensions = "dimensions in " + unitInWords(scale.unit());
    String words = "scale " + scale.words() + " · " + dimensions + " · third-angle projection";
    List<String> lines = TextWidth.wrap(words, width - SYMBOL, note, MOST_TITLE_LINES);
    for (String line : lines) {
      sketch.text(0.0, y, line, note);
      y += NOTE_ROW;
    }
    y -= NOTE_ROW;
    double used = note.width(lines.get(lines.size() - 1)) + SYMBOL;
    projectionSymbol(sketch, used - SYMBOL + 5.0, y - 1.2);
    if (used + LONGEST_BAR + 20.0 > width) {
      y += NOTE_ROW;
    }
    bar(sketch, scale, width, y);
    return sketch;
  }

  /** "in in" would not read well. */
  private static String unitInWords(NamedUnit<Length> unit) {
    return unit.equals(Length.INCH) ? "inches" : unit.symbol();
  }

  /** A truncated cone from the front and, at its right, from the side (ISO 5456-2). */
  private static void projectionSymbol(Sketch sketch, double x, double y) {
    Pen line = Pen.stroke(Pen.INK, 0.25);
    sketch.circle(x + 2.2, y, 2.2, line);
    sketch.circle(x + 2.2, y, 1.1, line);
    double start = x + 6.4;
    sketch.polygon(
        new double[] {start, start + 5.0, start + 5.0, start}, new double[] {y - 1.1, y - 2.2, y + 2.2, y + 1.1}, line);
    sketch.line(x - 0.8, y, start + 5.8, y, Pen.CENTRE);
  }

  /** The longest round length that the bar may have. */
  private static void bar(Sketch sketch, SheetScale scale, double width, double y) {
    NamedUnit<Length> unit = scale.unit();
    double most = LONGEST_BAR / (1000.0 * scale.ratio());
    double power = Math.pow(10.0, Math.floor(Math.log10(unit.fromSi(most))));
    double mantissa = unit.fromSi(most) / power;
    double round = power * (mantissa >= 5.0 ? 5.0 : mantissa >= 2.0 ? 2.0 : 1.0);
    double length = scale.paper(unit.toSi(round));
    String figure = NamedUnit.NUMBER.format(round, 4) + " " + unit.symbol();
    Lettering lettering = Lettering.end(Lettering.NOTE);
    double right = width - lettering.width(figure) - 2.0;
    for (int i = 0; i < 4; i++) {
      Pen pen = new Pen(Pen.INK, 0.18, i % 2 == 0 ? Pen.INK : Pen.PAPER, "");
      sketch.rectangle(right - length + 0.25 * length * i, y - 2.0, 0.25 * length, 1.6, pen);
    }
    sketch.text(width, y, figure, lettering);
  }
}
