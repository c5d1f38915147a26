// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import io.github.wingwright.core.drawing.ContentsPicture.Form;
import io.github.wingwright.core.drawing.ContentsPicture.Item;
import io.github.wingwright.core.drawing.ContentsPicture.Mark;
import io.github.wingwright.core.drawing.ContentsPicture.SightLine;
import io.github.wingwright.core.drawing.ContentsPicture.Style;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.List;

/** Lays out one {@link ContentsPicture}. */
final class ContentsSheet {
  private static final double MOST_WIDTH = 165.0;
  private static final double MOST_HEIGHT = 120.0;
  private static final double LEAST_WIDTH = 120.0;
  private static final int POINTS = 129;
  private static final Pen BODY = new Pen(Pen.INK, 0.4, Pen.PALE, "");
  private static final Pen WALL = new Pen(Pen.SHADOW, 0.2, Pen.PAPER, "");
  private static final Lettering INSIDE = Lettering.middle(Lettering.SMALL);

  private final ContentsPicture picture;
  private final SheetScale scale;
  private final Sketch sketch = new Sketch();

  private ContentsSheet(ContentsPicture picture, SheetScale scale) {
    this.picture = picture;
    this.scale = scale;
    body();
    picture.items().forEach(this::item);
    picture.lines().forEach(this::line);
  }

  static Svg draw(ContentsPicture picture) {
    ContentsSheet sheet = null;
    for (double ratio : SheetScale.standardRatios()) {
      sheet = new ContentsSheet(picture, new SheetScale(ratio, picture.unit()));
      if (sheet.sketch.bounds().width() <= MOST_WIDTH
          && sheet.sketch.bounds().height() <= MOST_HEIGHT) {
        break;
      }
    }
    if (sheet == null) {
      throw new IllegalStateException("there are no scales");
    }
    sheet.dimensions();
    sheet.labels();
    return sheet.assemble();
  }

  private double x(double metres) {
    return scale.paper(metres);
  }

  /** Up is less on paper. */
  private double y(double metres) {
    return -scale.paper(metres);
  }

  private void body() {
    double[][] outer = contour(0.0);
    sketch.polygon(outer[0], outer[1], BODY);
    sketch.avoid(outer[0], outer[1]);
    double wall = picture.body().wall().si();
    if (wall > 0.0) {
      double[][] inner = contour(wall);
      sketch.polygon(inner[0], inner[1], WALL);
    }
    double[] cx = new double[POINTS];
    double[] cy = new double[POINTS];
    for (int i = 0; i < POINTS; i++) {
      double station = picture.body().body().length().si() * i / (POINTS - 1);
      cx[i] = x(station);
      cy[i] = y(picture.body().centre(station));
    }
    // The axis helps reading; labels may cover it.
    for (int i = 1; i < POINTS; i += 2) {
      sketch.tick(cx[i - 1], cy[i - 1], cx[i], cy[i], Pen.stroke(Pen.SHADOW, 0.18));
    }
  }

  /** The contour, or the inside of a wall, over the top to the tail and back under the belly. */
  private double[][] contour(double wall) {
    BodyProfile profile = picture.body();
    double length = profile.body().length().si();
    double[] px = new double[2 * POINTS];
    double[] py = new double[2 * POINTS];
    for (int i = 0; i < POINTS; i++) {
      // Drawn together towards both ends, where the outline bends most.
      double part = 0.5 * (1.0 - Math.cos(Math.PI * i / (POINTS - 1)));
      double station = Math.min(wall, 0.5 * length) + part * Math.max(0.0, length - 2.0 * wall);
      double half = Math.max(0.0, profile.half(station) - wall);
      int mirror = 2 * POINTS - 1 - i;
      px[i] = x(station);
      px[mirror] = px[i];
      py[i] = y(profile.centre(station) + half);
      py[mirror] = y(profile.centre(station) - half);
    }
    return new double[][] {px, py};
  }

  private void item(Item item) {
    double left = x(item.front().si());
    double width = x(item.length().si());
    double top = y(item.middle().si() + 0.5 * item.height().si());
    double height = x(item.height().si());
    double room = x(item.clearance().si());
    if (room > 0.0) {
      Pen dashed = Pen.stroke(Pen.ACCENT, 0.2).dashed("0.8 0.8");
      outline(
          item.form(), left - room, top - room, width + 2.0 * room, height + 2.0 * room, dashed);
    }
    switch (item.form()) {
      case SEAT -> SeatFigure.draw(sketch, left, top, width, height);
      case WHEEL -> {
        outline(Form.SPHERE, left, top, width, height, new Pen(Pen.INK, 0.4, Pen.QUIET, ""));
        sketch.circle(left + 0.5 * width, top + 0.5 * height, 0.18 * width, Pen.fill(Pen.PAPER));
      }
      default ->
          outline(
              item.form(),
              left,
              top,
              width,
              height,
              new Pen(Pen.ACCENT, 0.35, Pen.ACCENT_TINT, ""));
    }
    if (item.form() == Form.CYLINDER) {
      sketch.tick(
          left - 1.0, top + 0.5 * height, left + width + 1.0, top + 0.5 * height, Pen.CENTRE);
    }
  }

  private Box box(Item item) {
    double left = x(item.front().si());
    double top = y(item.middle().si() + 0.5 * item.height().si());
    return new Box(left, top, left + x(item.length().si()), top + x(item.height().si()));
  }

  private void outline(Form form, double left, double top, double width, double height, Pen pen) {
    if (form == Form.SPHERE || form == Form.WHEEL) {
      sketch.circle(left + 0.5 * width, top + 0.5 * height, 0.5 * width, pen);
    } else {
      sketch.rectangle(left, top, width, height, pen);
    }
  }

  private void line(SightLine line) {
    double[][] ends = ends(line);
    Pen pen = pen(line.style());
    sketch.polyline(ends[0], ends[1], pen);
    if (line.style() == Style.GROUND) {
      double from = Math.min(ends[0][0], ends[0][1]);
      double to = Math.max(ends[0][0], ends[0][1]);
      for (double at = from + 1.0; at < to; at += 2.4) {
        sketch.tick(at, ends[1][0], at - 1.0, ends[1][0] + 1.2, Pen.stroke(Pen.QUIET, 0.18));
      }
    }
  }

  private double[][] ends(SightLine line) {
    return new double[][] {
      {x(line.fromX().si()), x(line.toX().si())}, {y(line.fromZ().si()), y(line.toZ().si())}
    };
  }

  private static Pen pen(Style style) {
    return switch (style) {
      case SIGHT -> Pen.stroke(Pen.ACCENT, 0.35).dashed("3 1");
      case GROUND -> Pen.stroke(Pen.INK, 0.4);
      case ROTATION -> Pen.stroke(Pen.WARM, 0.35).dashed("3 1");
    };
  }

  private void dimensions() {
    Fuselage body = picture.body().body();
    Box shapes = sketch.bounds();
    double widest = body.greatestSectionX().si();
    double half = picture.body().half(widest);
    double centre = picture.body().centre(widest);
    String height = scale.figure(body.heightAt(body.greatestSectionX()));
    new DimensionStack(DimensionLine.Direction.VERTICAL, shapes.left(), -1.0)
        .add(y(centre + half), y(centre - half), x(widest), x(widest), height)
        .draw(sketch);
    double tail = y(picture.body().centre(body.length().si()));
    new DimensionStack(DimensionLine.Direction.HORIZONTAL, shapes.bottom(), 1.0)
        .add(
            0.0,
            x(body.length().si()),
            y(picture.body().centre(0.0)),
            tail,
            scale.figure(body.length()))
        .draw(sketch);
  }

  /** Marks first, for they cannot be anywhere else; then names inside where they fit; then those that stand beside. */
  private void labels() {
    Box drawn = sketch.bounds();
    Box room =
        new Box(
            drawn.left(),
            drawn.top() - 40.0,
            Math.max(drawn.right(), drawn.left() + LEAST_WIDTH),
            drawn.bottom() + 25.0);
    picture.marks().forEach(this::mark);
    List<Item> beside =
        picture.items().stream()
            .filter(item -> !item.name().isEmpty() && !labelledInside(item))
            .toList();
    picture.items().forEach(item -> sketch.reserve(box(item)));
    LabelPlacer placer = new LabelPlacer(sketch, room);
    for (Mark mark : picture.marks()) {
      Lettering lettering = Lettering.start(Lettering.SMALL).heavy().in(Pen.WARM).onto(Pen.PAPER);
      placer.place(x(mark.x().si()), y(mark.z().si()), cut(mark.label(), lettering), lettering);
    }
    LineLabels names = new LineLabels(sketch, room);
    for (SightLine line : picture.lines()) {
      Lettering lettering =
          Lettering.start(Lettering.SMALL).in(pen(line.style()).stroke()).onto(Pen.PAPER);
      String label = cut(line.label(), lettering);
      names.place(List.<double[][]>of(ends(line)), label, label, lettering);
    }
    for (Item item : beside) {
      double middle = x(item.front().si() + 0.5 * item.length().si());
      double top = y(item.middle().si() + 0.5 * item.height().si());
      Lettering lettering = Lettering.start(Lettering.SMALL).in(Pen.ACCENT).onto(Pen.PAPER);
      placer.place(middle, top, cut(item.name(), lettering), lettering);
    }
  }

  private static String cut(String label, Lettering lettering) {
    return TextWidth.cut(label, 70.0, lettering);
  }

  private boolean labelledInside(Item item) {
    if (item.form() == Form.SEAT || item.form() == Form.WHEEL) {
      return false;
    }
    double usable = item.form() == Form.SPHERE ? 0.85 : 1.0;
    boolean wide = INSIDE.width(item.name()) + 2.0 <= usable * x(item.length().si());
    boolean high = x(item.height().si()) >= 4.2;
    double x = x(item.front().si() + 0.5 * item.length().si());
    double y = y(item.middle().si()) + 1.1;
    if (!wide || !high || !sketch.isFree(INSIDE.box(x, y, item.name()).grownBy(0.3))) {
      return false;
    }
    sketch.text(x, y, item.name(), INSIDE.onto(Pen.ACCENT_TINT));
    return true;
  }

  private void mark(Mark mark) {
    double x = x(mark.x().si());
    double y = y(mark.z().si());
    if (mark.centreOfGravity()) {
      GravitySymbol.draw(sketch, x, y);
    } else {
      sketch.circle(x, y, 0.8, new Pen(Pen.WARM, 0.4, Pen.PAPER, ""));
    }
    sketch.reserve(new Box(x - 1.5, y - 1.5, x + 1.5, y + 1.5));
  }

  private Svg assemble() {
    Box box = sketch.bounds();
    double width = Math.max(box.width(), LEAST_WIDTH) + 2.0 * Sheet.MARGIN;
    Lettering note = Lettering.start(Lettering.SMALL).in(Pen.QUIET);
    double head = 19.0;
    Svg svg = Sheet.titled(width, head + box.height() + Sheet.MARGIN, picture.title());
    NamedUnit<?> unit = picture.unit();
    svg.text(
        Sheet.MARGIN,
        13.6,
        "side view, scale " + scale.words() + ", dimensions in " + unit.symbol(),
        note);
    sketch.onto(svg, Sheet.MARGIN - box.left(), head - box.top());
    return svg;
  }
}
