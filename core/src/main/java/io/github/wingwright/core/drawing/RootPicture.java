// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * A map of roots: where the natural motions of a system lie, real part against imaginary part.
 *
 * <p>Left of the upright axis a motion dies out, right of it it grows; the height is how quickly it swings. Rays from the
 * origin are lines of one damping ratio. Pairs are shown by their upper half. Where a root lies so close to the origin that
 * it would be lost, a second map beside the first shows its neighbourhood enlarged.
 *
 * @param title what is shown
 * @param roots the roots
 */
public record RootPicture(String title, List<Root> roots) {
  private static final double WIDTH = 170.0;
  private static final double HEIGHT = 112.0;
  private static final double RIGHT = WIDTH - 6.0;
  private static final double TOP = 15.0;
  private static final double BOTTOM = HEIGHT - 17.0;
  private static final double[] RATIOS = {0.1, 0.2, 0.3, 0.5, 0.7, 0.9};

  /** A root this much smaller than the largest gets a map of its own neighbourhood. */
  private static final double LOST = 0.25;

  private static final int FIGURES = 6;

  /** Keeps its own list and refuses an empty map. */
  public RootPicture {
    Objects.requireNonNull(roots, "roots");
    roots = List.copyOf(roots);
    if (roots.isEmpty()) {
      throw new IllegalArgumentException("a map needs at least one root, got none");
    }
  }

  /**
   * One root, or the upper one of a pair.
   *
   * @param label name of the motion; may be empty
   * @param real n [1/s], finite
   * @param imaginary ω [rad/s], finite, 0 or more
   * @param approximate whether it is only an approximation, drawn hollow
   */
  public record Root(String label, double real, double imaginary, boolean approximate) {
    /** Refuses what cannot be drawn. */
    public Root {
      Objects.requireNonNull(label, "label");
      if (!Double.isFinite(real) || !(imaginary >= 0.0) || imaginary == Double.POSITIVE_INFINITY) {
        throw new IllegalArgumentException(
            "root must be finite with an imaginary part of 0 or more, was "
                + real
                + " + "
                + imaginary
                + "i");
      }
    }

    double size() {
      return Math.hypot(real, imaginary);
    }
  }

  /**
   * Draws the map.
   *
   * @return the picture
   */
  public Svg draw() {
    Svg svg = Sheet.titled(WIDTH, HEIGHT, title);
    double largest = roots.stream().mapToDouble(Root::size).max().orElse(1.0);
    List<Root> slow = roots.stream().filter(r -> r.size() < LOST * largest).toList();
    boolean both = slow.stream().anyMatch(r -> !r.approximate()) && slow.size() < roots.size();
    if (both) {
      double middle = 0.56 * WIDTH;
      List<Root> quick = roots.stream().filter(r -> !slow.contains(r)).toList();
      panel(svg, roots, quick, Sheet.MARGIN, middle - 4.0, true);
      panel(svg, slow, slow, middle + 2.0, RIGHT, false);
      Lettering note = Lettering.start(Lettering.SMALL).in(Pen.QUIET);
      svg.text(middle + 2.0, HEIGHT - 5.5, "near the origin, enlarged", note);
    } else {
      panel(svg, roots, roots, Sheet.MARGIN, RIGHT, true);
    }
    return svg;
  }

  /** One pair of axes; all roots that it shows take part in its size, only some are named. */
  private static void panel(
      Svg svg, List<Root> shown, List<Root> named, double from, double to, boolean labelled) {
    double reach = shown.stream().mapToDouble(Root::size).max().orElse(1.0);
    reach = reach > 0.0 ? reach : 1.0;
    double low =
        Math.min(-0.08 * reach, 1.12 * shown.stream().mapToDouble(Root::real).min().orElse(-1.0));
    double high =
        Math.max(0.12 * reach, 1.25 * shown.stream().mapToDouble(Root::real).max().orElse(0.0));
    double tall =
        Math.max(0.3 * reach, 1.15 * shown.stream().mapToDouble(Root::imaginary).max().orElse(1.0));
    Axis vertical = new Axis(-0.06 * tall, tall, BOTTOM, TOP);
    double left = Plot.left(from, vertical, FIGURES);
    Axis horizontal = new Axis(low, high, left, to);
    Plot plot = new Plot(svg, horizontal, vertical);
    // where nothing swings there is no height to read off
    boolean swings = shown.stream().anyMatch(r -> r.imaginary() > 0.0);
    plot.grid(swings ? FIGURES : 1, true);
    List<double[]> rays = new ArrayList<>();
    if (swings) {
      for (double ratio : RATIOS) {
        ray(plot, horizontal, vertical, ratio, rays);
      }
    }
    svg.line(
        horizontal.at(0.0), vertical.at(0.0), horizontal.at(0.0), TOP, Pen.stroke(Pen.INK, 0.35));
    svg.line(left, vertical.at(0.0), to, vertical.at(0.0), Pen.stroke(Pen.INK, 0.35));
    for (Root root : shown) {
      Pen pen =
          new Pen(
              root.approximate() ? Pen.QUIET : Pen.ACCENT,
              0.4,
              root.approximate() ? Pen.PAPER : Pen.ACCENT,
              "");
      plot.mark(horizontal.at(root.real()), vertical.at(root.imaginary()), pen);
    }
    names(plot, named, horizontal, vertical, new Box(left + 0.5, TOP, to, BOTTOM - 0.5));
    ratios(plot.sketch(), rays, left);
    if (labelled) {
      plot.names("real part in 1/s", HEIGHT - 5.5, "imaginary part in rad/s", from + 2.5);
    }
    plot.finish();
  }

  private static void ray(
      Plot plot, Axis horizontal, Axis vertical, double ratio, List<double[]> rays) {
    // along a ray −n = ζ·ω_n and ω = √(1 − ζ²)·ω_n
    double reach =
        Math.min(-horizontal.low() / ratio, vertical.high() / Math.sqrt(1.0 - ratio * ratio));
    double x = horizontal.at(-ratio * reach);
    double y = vertical.at(Math.sqrt(1.0 - ratio * ratio) * reach);
    plot.line(
        horizontal.at(0.0), vertical.at(0.0), x, y, Pen.stroke(Pen.SHADOW, 0.18).dashed("1 1"));
    rays.add(new double[] {ratio, x, y});
  }

  private static void names(Plot plot, List<Root> named, Axis horizontal, Axis vertical, Box room) {
    LabelPlacer placer = new LabelPlacer(plot.sketch(), room);
    named.forEach(r -> placer.expect(horizontal.at(r.real()), vertical.at(r.imaginary())));
    for (boolean approximate : new boolean[] {false, true}) {
      Lettering lettering =
          approximate
              ? Lettering.start(Lettering.SMALL).in(Pen.QUIET).onto(Pen.PAPER)
              : Lettering.start(Lettering.NOTE).in(Pen.ACCENT).heavy().onto(Pen.PAPER);
      for (Root root : named) {
        if (root.approximate() == approximate && !root.label().isEmpty()) {
          placer.place(
              horizontal.at(root.real()), vertical.at(root.imaginary()), root.label(), lettering);
        }
      }
    }
  }

  /** The damping ratio of each ray at its far end, where there is room for it. */
  private static void ratios(Sketch sketch, List<double[]> rays, double left) {
    Lettering lettering = Lettering.start(Lettering.SMALL).in(Pen.QUIET).onto(Pen.PAPER);
    for (double[] ray : rays) {
      String label = String.format(Locale.ROOT, "ζ %.1f", ray[0]);
      double width = lettering.width(label);
      boolean atLeft = ray[1] < left + 0.5;
      double x = atLeft ? left + 0.8 : ray[1] - 0.5 * width;
      double y = atLeft ? ray[2] + 1.0 : TOP + 3.4;
      Box box = lettering.box(x, y, label);
      if (box.left() >= left && box.bottom() <= BOTTOM && sketch.isFree(box.grownBy(0.4))) {
        sketch.text(x, y, label, lettering);
      }
    }
  }
}
