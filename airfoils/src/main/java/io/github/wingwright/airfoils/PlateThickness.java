// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils;

/**
 * A plate of constant thickness with a semicircular nose and a blunt trailing edge: printed in one or two walls, cut
 * from sheet, or rolled to an arc.
 *
 * <pre>{@code
 * y = √(x·(t − x))     0 ≤ x ≤ t/2
 * y = t/2              t/2 ≤ x ≤ 1
 * }</pre>
 *
 * @param thickness thickness ratio t [chords], above 0, to 0.2
 */
public record PlateThickness(double thickness) implements ThicknessForm {
  public PlateThickness {
    Checks.within("thickness ratio", Checks.positive("thickness ratio", thickness), 0, 0.2);
  }

  @Override
  public String name() {
    return "plate of thickness " + Text.percent(thickness);
  }

  @Override
  public double halfThickness(double x) {
    return x < thickness / 2 ? Math.sqrt(x * (thickness - x)) : thickness / 2;
  }

  @Override
  public double slope(double x) {
    return x < thickness / 2 ? (thickness / 2 - x) / Math.sqrt(x * (thickness - x)) : 0;
  }

  @Override
  public double noseRadius() {
    return thickness / 2;
  }

  @Override
  public double[] breaks() {
    return new double[] {thickness / 2};
  }
}
