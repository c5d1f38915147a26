// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils.coordinates;

import io.github.wingwright.airfoils.Contour;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * A plain x-y listing of a section, read and checked.
 *
 * <p>Accepted: text lines; the first line that is not two numbers is the title; every other line holds two numbers, separated
 * by spaces, tabs or a comma, with a decimal point. Empty lines and lines that start with {@code #} are skipped (an empty
 * line may part two surfaces). Points run round the section from the trailing edge, upper surface first or lower surface
 * first, or as two surfaces from the nose. Listings in per cent or millimetres are scaled to a chord of 1.
 *
 * <pre>{@code
 * CoordinateListing listing = CoordinateListing.parse(text);
 * Contour contour = listing.contour();
 * }</pre>
 *
 * @param title the title line; empty if there is none
 * @param order the order in which the points were listed
 * @param contour the outline, from the upper trailing edge round the nose, normalised to a chord of 1
 */
public record CoordinateListing(String title, Order order, Contour contour) {
  public CoordinateListing {
    Objects.requireNonNull(title, "title");
    Objects.requireNonNull(order, "order");
    Objects.requireNonNull(contour, "contour");
  }

  /** The orders in which sections are listed. */
  public enum Order {
    /** Round the section, from the trailing edge over the upper surface. */
    ROUND_UPPER_FIRST,
    /** Round the section, from the trailing edge over the lower surface. */
    ROUND_LOWER_FIRST,
    /** Two surfaces, each from the nose to the trailing edge. */
    TWO_SURFACES
  }

  private static final int LEAST_POINTS = 15;

  /**
   * Reads a listing.
   *
   * @throws IllegalArgumentException if it is not one; the message names the line
   */
  public static CoordinateListing parse(String text) {
    Objects.requireNonNull(text, "text");
    Reader reader = new Reader();
    String[] lines = text.split("\\R", -1);
    for (int i = 0; i < lines.length; i++) {
      reader.line(lines[i], i + 1);
    }
    return reader.finish();
  }

  /** The points of a listing with the lines they came from. */
  private static final class Reader {
    private final List<double[]> points = new ArrayList<>();
    private final List<Integer> places = new ArrayList<>();
    private String title = "";
    private int counts;

    void line(String raw, int number) {
      String line = raw.strip();
      if (line.isEmpty() || line.startsWith("#")) {
        return;
      }
      String[] parts = line.split("[\\s,]+");
      double[] pair = parts.length == 2 ? numbers(parts) : new double[0];
      if (pair.length == 0) {
        if (points.isEmpty() && title.isEmpty()) {
          title = line;
          return;
        }
        throw new IllegalArgumentException("line " + number + " must hold two numbers, was \"" + shown(line) + "\"");
      }
      if (!Double.isFinite(pair[0]) || !Double.isFinite(pair[1])) {
        throw new IllegalArgumentException(
            "line " + number + " must hold two finite numbers, was \"" + shown(line) + "\"");
      }
      boolean countsOfSurfaces = points.isEmpty() && counts == 0 && pair[0] == Math.rint(pair[0])
          && pair[1] == Math.rint(pair[1]) && pair[0] >= 5 && pair[1] >= 5;
      if (countsOfSurfaces) {
        counts = (int) pair[0];
        return;
      }
      points.add(pair);
      places.add(number);
    }

    private static double[] numbers(String[] parts) {
      try {
        return new double[] {Double.parseDouble(parts[0]), Double.parseDouble(parts[1])};
      } catch (NumberFormatException notNumbers) {
        return new double[0];
      }
    }

    CoordinateListing finish() {
      int n = points.size();
      if (n < LEAST_POINTS) {
        throw new IllegalArgumentException("a section needs at least " + LEAST_POINTS + " points, got " + n);
      }
      int nose = 0;
      double left = Double.POSITIVE_INFINITY;
      double right = Double.NEGATIVE_INFINITY;
      for (int i = 0; i < n; i++) {
        if (points.get(i)[0] < left) {
          left = points.get(i)[0];
          nose = i;
        }
        right = Math.max(right, points.get(i)[0]);
      }
      double chord = right - left;
      if (!(chord > 0)) {
        throw new IllegalArgumentException("the abscissas must differ, all were " + left);
      }
      boolean startsAtNose = points.get(0)[0] < left + 0.05 * chord;
      Order order;
      List<double[]> round = new ArrayList<>();
      List<Integer> lines = new ArrayList<>();
      if (startsAtNose) {
        order = Order.TWO_SURFACES;
        int split = counts > 0 ? counts : splitAt(chord);
        join(split, round, lines);
      } else {
        round.addAll(points);
        lines.addAll(places);
        boolean upperFirst = meanHeight(0, nose) > meanHeight(nose, n - 1);
        order = upperFirst ? Order.ROUND_UPPER_FIRST : Order.ROUND_LOWER_FIRST;
        if (!upperFirst) {
          java.util.Collections.reverse(round);
          java.util.Collections.reverse(lines);
        }
      }
      return new CoordinateListing(title, order, checked(round, lines, left, chord));
    }

    /** The second surface starts where the abscissa falls back to the nose. */
    private int splitAt(double chord) {
      for (int i = 1; i < points.size(); i++) {
        if (points.get(i)[0] < points.get(i - 1)[0] - 0.5 * chord) {
          return i;
        }
      }
      throw new IllegalArgumentException(
          "the points start at the nose, so two surfaces were expected, but the abscissas never fall back to it");
    }

    private void join(int split, List<double[]> round, List<Integer> lines) {
      int n = points.size();
      if (split < 4 || split > n - 4) {
        throw new IllegalArgumentException(
            "each surface needs at least 4 points, got " + split + " and " + (n - split));
      }
      boolean upperFirst = meanHeight(0, split - 1) > meanHeight(split, n - 1);
      int upperFrom = upperFirst ? 0 : split;
      int upperTo = upperFirst ? split : n;
      int lowerFrom = upperFirst ? split : 0;
      int lowerTo = upperFirst ? n : split;
      for (int i = upperTo - 1; i >= upperFrom; i--) {
        round.add(points.get(i));
        lines.add(places.get(i));
      }
      double[] nose = points.get(upperFrom);
      double[] other = points.get(lowerFrom);
      boolean shared = nose[0] == other[0] && nose[1] == other[1];
      for (int i = lowerFrom + (shared ? 1 : 0); i < lowerTo; i++) {
        round.add(points.get(i));
        lines.add(places.get(i));
      }
    }

    private double meanHeight(int from, int to) {
      double area = 0;
      double length = 0;
      for (int i = from; i < to; i++) {
        double dx = Math.abs(points.get(i + 1)[0] - points.get(i)[0]);
        area += 0.5 * (points.get(i + 1)[1] + points.get(i)[1]) * dx;
        length += dx;
      }
      return length > 0 ? area / length : 0;
    }

    private static Contour checked(List<double[]> round, List<Integer> lines, double left, double chord) {
      int n = round.size();
      double[] x = new double[n];
      double[] y = new double[n];
      for (int i = 0; i < n; i++) {
        x[i] = (round.get(i)[0] - left) / chord;
        y[i] = round.get(i)[1] / chord;
        if (i > 0 && x[i] == x[i - 1] && y[i] == y[i - 1]) {
          throw new IllegalArgumentException("the points of lines " + Math.min(lines.get(i - 1), lines.get(i))
              + " and " + Math.max(lines.get(i - 1), lines.get(i)) + " are the same");
        }
      }
      if (x[0] < 0.9 || x[n - 1] < 0.9) {
        throw new IllegalArgumentException("the outline must end at the trailing edge on both sides, line "
            + lines.get(x[0] < 0.9 ? 0 : n - 1) + " is at " + shownNumber(Math.min(x[0], x[n - 1]))
            + " of the chord");
      }
      for (int i = 1; i < n; i++) {
        if (Math.hypot(x[i] - x[i - 1], y[i] - y[i - 1]) > 0.25) {
          throw new IllegalArgumentException("the points of lines " + lines.get(i - 1) + " and " + lines.get(i)
              + " are more than a quarter of the chord apart: a point or the nose is missing");
        }
      }
      noCrossing(x, y, lines);
      closedNose(x, y, lines);
      return Contour.of(x, y);
    }

    /** The points next to the nose do not span most of the height: that would be a section cut off behind its nose. */
    private static void closedNose(double[] x, double[] y, List<Integer> lines) {
      double high = Double.NEGATIVE_INFINITY;
      double low = Double.POSITIVE_INFINITY;
      int nose = 0;
      for (int i = 0; i < y.length; i++) {
        high = Math.max(high, y[i]);
        low = Math.min(low, y[i]);
        nose = x[i] < x[nose] ? i : nose;
      }
      for (int i = Math.max(nose, 1); i <= Math.min(nose + 1, y.length - 1); i++) {
        if (Math.abs(y[i] - y[i - 1]) > 0.7 * (high - low)) {
          throw new IllegalArgumentException("the points of lines " + lines.get(i - 1) + " and " + lines.get(i)
              + " span most of the height of the section: the nose is missing");
        }
      }
    }

    private static void noCrossing(double[] x, double[] y, List<Integer> lines) {
      int n = x.length;
      for (int i = 0; i < n - 1; i++) {
        for (int j = i + 2; j < n - 1; j++) {
          if (i == 0 && j == n - 2) {
            continue; // both end at the trailing edge
          }
          double a = turn(x, y, i, i + 1, j);
          double b = turn(x, y, i, i + 1, j + 1);
          double c = turn(x, y, j, j + 1, i);
          double d = turn(x, y, j, j + 1, i + 1);
          if (a * b < 0 && c * d < 0) {
            throw new IllegalArgumentException("the outline crosses itself between lines " + lines.get(i)
                + " and " + lines.get(i + 1) + " and between lines " + lines.get(j) + " and "
                + lines.get(j + 1));
          }
        }
      }
    }

    private static double turn(double[] x, double[] y, int a, int b, int c) {
      return (x[b] - x[a]) * (y[c] - y[a]) - (y[b] - y[a]) * (x[c] - x[a]);
    }

    private static String shown(String line) {
      return line.length() <= 40 ? line : line.substring(0, 40) + "…";
    }

    private static String shownNumber(double value) {
      return String.format(Locale.ROOT, "%.3f", value);
    }
  }

  /**
   * Writes an outline as a plain listing: a title, then x and y in seven decimals, round the section from the upper
   * trailing edge.
   */
  public static String write(String title, Contour contour) {
    Objects.requireNonNull(title, "title");
    Objects.requireNonNull(contour, "contour");
    StringBuilder text = new StringBuilder(title.strip().replaceAll("\\R", " ")).append('\n');
    for (int i = 0; i < contour.size(); i++) {
      text.append(String.format(Locale.ROOT, "%10.7f %10.7f%n", contour.x(i), contour.y(i)).replace("\r", ""));
    }
    return text.toString();
  }

  @Override
  public String toString() {
    return (title.isEmpty() ? "untitled" : title) + ": " + contour;
  }
}
