// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils;

/**
 * The modified 4-digit thickness form, with a choice of nose radius and of the station of greatest thickness: the two
 * figures after the dash in a designation such as 0012-34.
 *
 * <pre>{@code
 * y = 5·t·(a0·√x + a1·x + a2·x² + a3·x³)                      0 ≤ x ≤ m
 * y = 5·t·(d0 + d1·(1−x) + d2·(1−x)² + d3·(1−x)³)             m ≤ x ≤ 1
 * }</pre>
 * The coefficients are those that give y = t/2 with zero slope at m from both sides, equal curvature there, the wanted
 * nose radius 1.1019·t²·(I/6)² (three times the normal radius for I = 9), a trailing edge of 0.02·t and
 * the tabulated trailing-edge slope. An index of 6 and a station of 0.3 nearly give the plain 4-digit form.
 *
 * <p>Source: Stack and von Doenhoff, NACA Report 492, 1934; trailing-edge slopes 1.000, 1.170, 1.575, 2.325, 3.500
 * times t for m = 0.2 … 0.6 (from memory). The coefficients are solved here from the conditions, and a test checks
 * those conditions.
 *
 * @param thickness thickness ratio t [chords], above 0, to 0.5
 * @param noseIndex nose index I, 0 (sharp) to 9
 * @param position station m of greatest thickness [chords], 0.2 to 0.6; the slope is interpolated between tenths
 */
public record ModifiedFourDigitThickness(double thickness, int noseIndex, double position) implements ThicknessForm {
  /** d1 for m = 0.2, 0.3, 0.4, 0.5, 0.6. */
  private static final double[] TAIL_SLOPE = {0.200, 0.234, 0.315, 0.465, 0.700};

  public ModifiedFourDigitThickness {
    Checks.within("thickness ratio", Checks.positive("thickness ratio", thickness), 0, 0.5);
    Checks.within("nose index", noseIndex, 0, 9);
    Checks.within("position of greatest thickness", position, 0.2, 0.6);
  }

  @Override
  public String name() {
    return "modified 4-digit thickness " + Text.percent(thickness) + ", nose index " + noseIndex + ", thickest at "
        + Text.percent(position);
  }

  private double a0() {
    return 0.2969 * (noseIndex == 9 ? Math.sqrt(3) : noseIndex / 6.0);
  }

  private double d1() {
    double place = (position - 0.2) / 0.1;
    int low = Math.min(3, (int) Math.floor(place + 1e-9));
    double part = place - low;
    return TAIL_SLOPE[low] + part * (TAIL_SLOPE[low + 1] - TAIL_SLOPE[low]);
  }

  /** Values and slopes of the form for t = 0.2, {@code {y, dy/dx}}. */
  private double evaluate(double x, boolean derivative) {
    double m = position;
    double aft = 1 - m;
    double d1 = d1();
    double d2 = (0.294 - 2 * aft * d1) / (aft * aft);
    double d3 = (-0.196 + aft * d1) / (aft * aft * aft);
    if (x > m) {
      double s = 1 - x;
      return derivative ? -(d1 + s * (2 * d2 + 3 * s * d3)) : 0.002 + s * (d1 + s * (d2 + s * d3));
    }
    double a0 = a0();
    double bend = 2 * d2 + 6 * d3 * aft;
    double root = Math.sqrt(m);
    // Three conditions at m: ordinate 0.1, slope 0, second derivative "bend".
    double y = 0.1 - a0 * root;
    double slope = -a0 / (2 * root);
    double second = bend + a0 / (4 * m * root);
    double a3 = (y - slope * m + second * m * m / 2) / (m * m * m);
    double a2 = (second - 6 * a3 * m) / 2;
    double a1 = slope - 2 * a2 * m - 3 * a3 * m * m;
    return derivative
        ? a0 / (2 * Math.sqrt(x)) + a1 + x * (2 * a2 + 3 * x * a3)
        : a0 * Math.sqrt(x) + x * (a1 + x * (a2 + x * a3));
  }

  @Override
  public double halfThickness(double x) {
    return 5 * thickness * evaluate(x, false);
  }

  @Override
  public double slope(double x) {
    return 5 * thickness * evaluate(x, true);
  }

  @Override
  public double noseRadius() {
    return 0.5 * Math.pow(5 * thickness * a0(), 2);
  }

  @Override
  public double[] breaks() {
    return new double[] {position};
  }
}
