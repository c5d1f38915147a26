// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A NACA 4-digit section, by its designation or by any real parameters.
 *
 * <p>The digits of "2412": camber 2 % of the chord, at 4 tenths of the chord, thickness 12 % of the chord.
 *
 * <pre>{@code
 * Naca4 section = Naca4.parse("2412");                       // published trailing edge
 * Naca4 sharp = section.withTrailingEdge(TrailingEdge.CLOSED);
 * Naca4 printable = section.withTrailingEdgeThickness(0.01); // 0.4 mm on a 40 mm chord
 * Naca4 between = Naca4.of(0.025, 0.41, 0.083);
 * }</pre>
 *
 * <p>Source: NACA Report 460, 1933; see {@link FourDigitThickness} and {@link FourDigitMeanLine}.
 */
public final class Naca4 extends ComposedSection {
  private static final long serialVersionUID = 1L;
  private static final Pattern DESIGNATION =
      Pattern.compile("(?:NACA[ -]?)?([0-9])([0-9])([0-9]{2})", Pattern.CASE_INSENSITIVE);
  private static final String DIGITS =
      "a 4-digit designation is camber in % of chord, its position in tenths of chord, and two digits of"
          + " thickness in % of chord, such as \"2412\" or \"NACA 2412\"";

  private final FourDigitMeanLine line;
  private final FourDigitThickness form;

  private Naca4(FourDigitMeanLine line, FourDigitThickness form, Construction construction) {
    super(line, form, construction);
    this.line = line;
    this.form = form;
  }

  /**
   * A section by real-valued parameters, with the published trailing edge and construction.
   *
   * @param camber greatest camber [chords], 0 to 0.1
   * @param position its position [chords], 0.05 to 0.95 (any value in the range for a section without camber)
   * @param thickness thickness ratio [chords], above 0, to 0.5
   */
  public static Naca4 of(double camber, double position, double thickness) {
    return new Naca4(new FourDigitMeanLine(camber, position),
        FourDigitThickness.of(thickness, TrailingEdge.OPEN), Construction.PERPENDICULAR);
  }

  /** A symmetric section of this thickness ratio [chords]. */
  public static Naca4 symmetric(double thickness) {
    return of(0, 0.4, thickness);
  }

  /**
   * The section of a designation such as "2412" or "NACA 2412".
   *
   * @throws IllegalArgumentException for anything else; the message explains the digits
   */
  public static Naca4 parse(String designation) {
    Objects.requireNonNull(designation, "designation");
    Matcher digits = DESIGNATION.matcher(designation.strip());
    if (!digits.matches()) {
      throw new IllegalArgumentException(DIGITS + ", was \"" + shown(designation) + "\"");
    }
    int camber = Integer.parseInt(digits.group(1));
    int position = Integer.parseInt(digits.group(2));
    int thickness = Integer.parseInt(digits.group(3));
    if (thickness == 0 || thickness > 50) {
      throw new IllegalArgumentException(
          DIGITS + "; the thickness must be 01 to 50, was \"" + shown(designation) + "\"");
    }
    if ((camber == 0) != (position == 0)) {
      throw new IllegalArgumentException(DIGITS + "; the first two digits are both zero for a symmetric section"
          + " or both from 1 to 9, was \"" + shown(designation) + "\"");
    }
    return camber == 0
        ? symmetric(thickness / 100.0)
        : of(camber / 100.0, position / 10.0, thickness / 100.0);
  }

  private static String shown(String text) {
    return text.length() <= 30 ? text : text.substring(0, 30) + "…";
  }

  /** The same section with one of the two published trailing edges. */
  public Naca4 withTrailingEdge(TrailingEdge trailingEdge) {
    Objects.requireNonNull(trailingEdge, "trailingEdge");
    return new Naca4(line, FourDigitThickness.of(form.thickness(), trailingEdge), construction());
  }

  /** The same section with a trailing edge of this full thickness [chords], zero to half the thickness ratio. */
  public Naca4 withTrailingEdgeThickness(double trailingEdge) {
    return new Naca4(line, form.withTrailingEdgeThickness(trailingEdge), construction());
  }

  /** The same section with its thickness laid off in another way. */
  public Naca4 withConstruction(Construction construction) {
    Objects.requireNonNull(construction, "construction");
    return new Naca4(line, form, construction);
  }

  /** The same section with another camber [chords]. */
  public Naca4 withCamber(double camber) {
    return new Naca4(new FourDigitMeanLine(camber, line.position()), form, construction());
  }

  /**
   * The same section with another thickness ratio [chords]; its trailing edge keeps its share of the thickness.
   */
  public Naca4 withThickness(double thickness) {
    return new Naca4(line, new FourDigitThickness(thickness, form.coefficient()), construction());
  }

  /** The nominal camber: the first digit [chords]. */
  public double nominalCamber() {
    return line.maximumCamber();
  }

  /** The nominal position of the greatest camber: the second digit [chords]. */
  public double nominalCamberPosition() {
    return line.position();
  }

  /** The nominal thickness ratio: the last two digits [chords]. */
  public double nominalThickness() {
    return form.thickness();
  }

  /** "NACA 2412" where the parameters are those of a designation, the parameters in words otherwise. */
  @Override
  public String name() {
    long m = Math.round(100 * nominalCamber());
    long p = m == 0 ? 0 : Math.round(10 * nominalCamberPosition());
    long t = Math.round(100 * nominalThickness());
    boolean whole = Math.abs(100 * nominalCamber() - m) < 1e-9
        && (m == 0 || Math.abs(10 * nominalCamberPosition() - p) < 1e-9)
        && Math.abs(100 * nominalThickness() - t) < 1e-9
        && m <= 9
        && p <= 9;
    return whole
        ? String.format(Locale.ROOT, "NACA %d%d%02d", m, p, t)
        : "4-digit section, camber " + Text.percent(nominalCamber()) + " at "
            + Text.percent(nominalCamberPosition()) + ", thickness " + Text.percent(nominalThickness());
  }

  /** Adds what lies outside the sections that were tested as a family: thickness 6 to 25 %, camber to 7 %, at 20 to 70 %. */
  @Override
  public List<Finding> findings() {
    List<Finding> findings = new ArrayList<>(super.findings());
    note(findings, "thickness ratio", nominalThickness(), 0.06, 0.25);
    note(findings, "camber", nominalCamber(), 0, 0.07);
    if (nominalCamber() > 0) {
      note(findings, "position of greatest camber", nominalCamberPosition(), 0.2, 0.7);
    }
    return List.copyOf(findings);
  }

  private static void note(List<Finding> findings, String what, double value, double low, double high) {
    if (!(value >= low - 1e-12 && value <= high + 1e-12)) {
      findings.add(Finding.of(Severity.NOTE, "section family",
          "The " + what + " lies outside the sections that were tested as a family.", value,
          Interval.between(low, high), NamedUnit.NUMBER,
          Source.fromMemory("Jacobs, Ward and Pinkerton, NACA Report 460, 1933", "")));
    }
  }

  @Override
  public double maximumCamber() {
    return line.maximumCamber();
  }

  @Override
  public double maximumCamberPosition() {
    return line.position();
  }

  @Override
  public void outline(double[] x, double[] y) {
    Objects.requireNonNull(x, "x");
    Objects.requireNonNull(y, "y");
    outline(line.maximumCamber(), line.position(), form.thickness(), form.coefficient(),
        construction() == Construction.PERPENDICULAR, x, y);
  }

  /**
   * Writes the outline of a 4-digit section into the caller's arrays; allocates nothing.
   *
   * <p>Points run from the upper trailing edge round the nose to the lower one, at mean-line stations
   * {@code ½·(1 + cos β)} with equal steps of β.
   *
   * @param m greatest camber [chords]
   * @param p its position [chords], between 0 and 1
   * @param t thickness ratio [chords]
   * @param k coefficient of x⁴ in the thickness form, 0.1015 (published) or 0.1036 (closed)
   * @param perpendicular whether the thickness is laid off perpendicular to the mean line
   * @param x receives the abscissas [chords]; at least 5 long
   * @param y receives the ordinates [chords]; as long as {@code x}
   */
  public static void outline(
      double m, double p, double t, double k, boolean perpendicular, double[] x, double[] y) {
    Objects.requireNonNull(x, "x");
    Objects.requireNonNull(y, "y");
    int n = Contour.sizeOf(x, y);
    double front = m / (p * p);
    double rear = m / ((1 - p) * (1 - p));
    double step = Math.PI / (n - 1);
    for (int i = 0, j = n - 1; i <= j; i++, j--) {
      double s = i == j ? 0 : Math.cos(step * i);
      double u = s * s;
      double yt = 5 * t * (FourDigitThickness.A0 * s
          + u * (FourDigitThickness.A1 + u * (FourDigitThickness.A2 + u * (FourDigitThickness.A3 - k * u))));
      double yc;
      double slope;
      if (u <= p) {
        yc = front * u * (2 * p - u);
        slope = 2 * front * (p - u);
      } else {
        yc = rear * (1 - u) * (1 + u - 2 * p);
        slope = 2 * rear * (p - u);
      }
      double cos = perpendicular ? 1 / Math.sqrt(1 + slope * slope) : 1;
      double dx = perpendicular ? yt * slope * cos : 0;
      double dy = yt * cos;
      x[i] = u - dx;
      y[i] = yc + dy;
      x[j] = u + dx;
      y[j] = yc - dy;
    }
  }
}
