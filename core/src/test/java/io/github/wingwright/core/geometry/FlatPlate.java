// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

/** A section for tests that need one but do not look at it closely. */
public final class FlatPlate {
  private FlatPlate() {}

  /** A flat plate of even thickness with square edges. */
  public static AirfoilSection thick(double thickness) {
    return new AirfoilSection() {
      @Override
      public String name() {
        return "flat plate";
      }

      @Override
      public double maximumThickness() {
        return thickness;
      }

      @Override
      public double maximumThicknessPosition() {
        return 0.5;
      }

      @Override
      public double maximumCamber() {
        return 0.0;
      }

      @Override
      public double trailingEdgeThickness() {
        return thickness;
      }

      @Override
      public double area() {
        return thickness;
      }

      @Override
      public double perimeter() {
        return 2.0 + 2.0 * thickness;
      }

      @Override
      public double thickness(double x) {
        return thickness;
      }

      @Override
      public double camber(double x) {
        return 0.0;
      }

      @Override
      public double camberSlope(double x) {
        return 0.0;
      }

      @Override
      public void outline(double[] x, double[] y) {
        throw new UnsupportedOperationException("the outline is not looked at");
      }
    };
  }
}
