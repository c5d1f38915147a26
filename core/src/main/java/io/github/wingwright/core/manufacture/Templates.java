// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import io.github.wingwright.core.geometry.AirfoilSection;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.manufacture.Template.Kind;
import io.github.wingwright.core.manufacture.Template.Label;
import io.github.wingwright.core.manufacture.Template.Line;
import io.github.wingwright.core.manufacture.Template.Point;
import io.github.wingwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;

/** Full-size drawings of the parts of an aircraft. */
public final class Templates {
  private static final double GAP = 8.0;
  private static final double OUTLINE = 0.01e-3;

  private Templates() {}

  /**
   * The ribs of a wing at every station at which panels meet: root, breaks, tip, one above the other.
   *
   * @param title what they are ribs of
   * @param planform the wing's outline
   * @param section its section
   * @return the drawing
   */
  public static Template ribs(String title, Planform planform, AirfoilSection section) {
    Objects.requireNonNull(planform, "planform");
    Objects.requireNonNull(section, "section");
    List<Line> lines = new ArrayList<>();
    List<Label> labels = new ArrayList<>();
    double below = 0.0;
    for (Length station : planform.stations()) {
      double chord = planform.chordAt(station).millimetres();
      if (chord <= 0.0) {
        continue;
      }
      SectionLoop loop = SectionLoop.of(section, 0.0, 1e3 * OUTLINE / chord);
      double high = 0.0;
      double low = 0.0;
      List<Point> points = new ArrayList<>();
      for (int i = 0; i < loop.size(); i++) {
        high = Math.max(high, chord * loop.z(i));
        low = Math.min(low, chord * loop.z(i));
      }
      double base = below - high;
      for (int i = 0; i < loop.size(); i++) {
        points.add(new Point(chord * loop.x(i), base + chord * loop.z(i)));
      }
      lines.add(new Line(Kind.CUT, true, points));
      lines.add(new Line(Kind.MARK, false, List.of(new Point(0.0, base), new Point(chord, base))));
      double quarter = 0.25 * chord;
      lines.add(new Line(Kind.MARK, false, List.of(new Point(quarter, base + high), new Point(quarter, base + low))));
      labels.add(new Label(
          new Point(0.0, base + low - 4.0),
          section.name() + ", " + (station.si() == 0.0 ? "root" : station.format(Length.MILLIMETRE, 4) + " from the root") + ", chord "
              + planform.chordAt(station).format(Length.MILLIMETRE, 4)));
      below = base + low - 4.0 - GAP;
    }
    return new Template(title, lines, labels);
  }

  /**
   * The outline of one half of a wing or tail, or of a fin, panels laid flat: along a panel with dihedral it is as long as
   * the panel, not as its shadow. The root is at the left, the leading edge above.
   *
   * @param title what it is
   * @param planform its outline
   * @return the drawing
   */
  public static Template panels(String title, Planform planform) {
    Objects.requireNonNull(planform, "planform");
    return flat(title, planform, false);
  }

  /**
   * The outline of a flat tail from tip to tip, the leading edge above.
   *
   * @param title what it is
   * @param planform its outline, mirrored
   * @return the drawing
   */
  public static Template whole(String title, Planform planform) {
    Objects.requireNonNull(planform, "planform");
    if (!planform.isMirrored()) {
      throw new IllegalArgumentException("planform of a whole surface must have two halves, was " + planform);
    }
    return flat(title, planform, true);
  }

  private static Template flat(String title, Planform planform, boolean whole) {
    List<Line> lines = new ArrayList<>();
    List<Label> labels = new ArrayList<>();
    List<Point> leading = new ArrayList<>();
    List<Point> trailing = new ArrayList<>();
    double along = 0.0;
    List<Length> stations = planform.stations();
    for (int i = 0; i < stations.size(); i++) {
      Length at = stations.get(i);
      if (i > 0) {
        along += stations.get(i).minus(stations.get(i - 1)).millimetres()
            / Math.cos(planform.panels().get(i - 1).dihedral().si());
      }
      double edge = -planform.leadingEdgeAt(at).millimetres();
      double chord = planform.chordAt(at).millimetres();
      leading.add(new Point(along, edge));
      trailing.add(new Point(along, edge - chord));
      if (i > 0 && i < stations.size() - 1) {
        lines.add(new Line(Kind.MARK, false, List.of(leading.get(i), trailing.get(i))));
      }
      String words = planform.chordAt(at).format(Length.MILLIMETRE, 4);
      boolean tip = i == stations.size() - 1;
      String name = i == 0 ? "root, " + words : tip ? "tip, " + words : words;
      // The words of the tip lie inside the outline: they cost no further sheet.
      double place = tip ? along - 1.0 - Template.width(name) : along + 1.0;
      labels.add(new Label(new Point(place, edge - 0.5 * chord), name));
    }
    String edge = "leading edge";
    double middle = 0.5 * (leading.get(0).x() + leading.get(1).x());
    double slope = (leading.get(1).y() - leading.get(0).y()) / (leading.get(1).x() - leading.get(0).x());
    double below = 0.5 * (leading.get(0).y() + leading.get(1).y()) + Math.min(0.0, slope * Template.width(edge));
    labels.add(new Label(new Point(middle, below - Template.LETTERS - 1.0), edge));
    if (planform.isMirrored() && !whole) {
      double under = leading.get(0).y() - 0.5 * planform.rootChord().millimetres() - 5.0;
      labels.add(new Label(new Point(1.0, under), "cut two, one mirrored"));
    }
    List<Point> outline = new ArrayList<>();
    if (whole) {
      for (int i = leading.size() - 1; i > 0; i--) {
        outline.add(new Point(-leading.get(i).x(), leading.get(i).y()));
      }
      lines.add(new Line(Kind.MARK, false, List.of(leading.get(0), trailing.get(0))));
    }
    outline.addAll(leading);
    Collections.reverse(trailing);
    outline.addAll(trailing);
    if (whole) {
      for (int i = trailing.size() - 2; i >= 0; i--) {
        outline.add(new Point(-trailing.get(i).x(), trailing.get(i).y()));
      }
    }
    lines.add(0, new Line(Kind.CUT, true, outline));
    return new Template(title, lines, labels);
  }

  /**
   * The side view and the plan view of a body with its seat, its slots and its mark, the nose at the left.
   *
   * @param title what it is
   * @param solid the body
   * @return the drawing
   */
  public static Template body(String title, BodySolid solid) {
    Objects.requireNonNull(solid, "solid");
    Fuselage body = solid.body();
    BodyFrame frame = new BodyFrame(body);
    double length = body.length().si();
    int n = 400;
    double[] upper = new double[3 * (n + 1)];
    double[] lower = new double[3 * (n + 1)];
    double[] side = new double[3 * (n + 1)];
    for (int i = 0; i <= n; i++) {
      double x = 0.5 * length * (1.0 - Math.cos(Math.PI * i / n));
      upper[3 * i] = x;
      lower[3 * i] = x;
      side[3 * i] = x;
      upper[3 * i + 1] = frame.centre(x) + frame.halfHeight(x);
      lower[3 * i + 1] = frame.centre(x) - frame.halfHeight(x);
      side[3 * i + 1] = frame.halfWidth(x);
    }
    double down = -1e3 * (body.diameter().si() + 1e-3 * 2.0 * GAP);
    List<Line> lines = new ArrayList<>();
    lines.add(new Line(Kind.CUT, true, closed(upper, lower, 1.0, 0.0)));
    lines.add(new Line(Kind.CUT, true, closed(side, side, -1.0, down)));
    lines.add(mark(0.0, 0.0, length, 0.0, 0.0));
    lines.add(mark(0.0, 0.0, length, 0.0, down));
    List<Label> labels = new ArrayList<>();
    view(labels, "from the side, nose at the left, tail at the right", 1e3 * upperMost(upper));
    view(labels, "from above, nose at the left, tail at the right", 1e3 * upperMost(side) + down);
    solid.seat().ifPresent(seat -> {
      double floor = seat.floor().si();
      double from = seat.from().si();
      double to = seat.to().si();
      lines.add(mark(from, frame.centre(from) + frame.halfHeight(from), from, floor, 0.0));
      lines.add(mark(from, floor, to, floor, 0.0));
      lines.add(mark(to, floor, to, frame.centre(to) + frame.halfHeight(to), 0.0));
      labels.add(new Label(new Point(1e3 * from, 1e3 * floor - 3.5), "wing seat"));
    });
    solid.slots().ifPresent(slots -> {
      double height = slots.height().si();
      lines.add(mark(slots.tailplaneFrom().si(), height, length, height, 0.0));
      double fin = slots.finFrom().si();
      lines.add(mark(fin, height, fin, frame.centre(fin) + frame.halfHeight(fin), 0.0));
      lines.add(mark(fin, 0.0, length, 0.0, down));
      labels.add(new Label(new Point(1e3 * slots.tailplaneFrom().si(), 1e3 * height - 3.5), "tail slots"));
    });
    solid.mark().ifPresent(mark -> {
      double x = mark.si();
      lines.add(mark(x, frame.centre(x) - frame.halfHeight(x) - 2e-3, x, frame.centre(x) + frame.halfHeight(x) + 2e-3, 0.0));
      labels.add(new Label(
          new Point(1e3 * x + 1.0, 1e3 * (frame.centre(x) - frame.halfHeight(x)) - 3.5),
          "centre of gravity, " + mark.format(Length.MILLIMETRE, 4)));
    });
    return new Template(title, lines, labels);
  }

  /** Over the outline, where neither seat nor slots have words. */
  private static void view(List<Label> labels, String words, double top) {
    labels.add(new Label(new Point(0.0, top + 2.0), words));
  }

  private static double upperMost(double[] curve) {
    double top = Double.NEGATIVE_INFINITY;
    for (int i = 1; i < curve.length; i += 3) {
      top = Math.max(top, curve[i]);
    }
    return top;
  }

  private static List<Point> closed(double[] upper, double[] lower, double sign, double shift) {
    List<Point> points = new ArrayList<>();
    int n = upper.length / 3;
    int[] above = Curves.simplify(new double[][] {upper}, new int[] {0, n - 1}, OUTLINE);
    int[] below = Curves.simplify(new double[][] {lower}, new int[] {0, n - 1}, OUTLINE);
    for (int i : above) {
      points.add(new Point(1e3 * upper[3 * i], 1e3 * upper[3 * i + 1] + shift));
    }
    for (int k = below.length - 1; k >= 0; k--) {
      points.add(new Point(1e3 * lower[3 * below[k]], sign * 1e3 * lower[3 * below[k] + 1] + shift));
    }
    return points;
  }

  private static Line mark(double x1, double y1, double x2, double y2, double shift) {
    return new Line(
        Kind.MARK, false, List.of(new Point(1e3 * x1, 1e3 * y1 + shift), new Point(1e3 * x2, 1e3 * y2 + shift)));
  }
}
