// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.geometry;

import io.github.wingwright.core.numerics.Quadrature;
import io.github.wingwright.core.numerics.Tolerance;
import java.io.Serializable;

/**
 * The shape of a section across a body, drawn between its width and its height: convex, and symmetric left to right and top
 * to bottom.
 *
 * <p>A section is described by one function. With half width a, half height b and an angle φ that runs from starboard
 * upwards, the outline is
 *
 * <pre>{@code y = a·ρ(φ)·cos φ        z = b·ρ(φ)·sin φ}</pre>
 *
 * <p>ρ is 1 all around for an ellipse, and reaches √2 in the corner of a rectangle. A section of one's own needs only its
 * name and ρ; area and perimeter are then integrals along the outline.
 */
public interface CrossSection extends Serializable {

  /**
   * An ellipse; where width and height are equal, a circle.
   *
   * @return the section
   */
  static CrossSection ellipse() {
    return EllipticSection.INSTANCE;
  }

  /**
   * A rectangle with corners rounded by quarter circles.
   *
   * @param rounding radius of the corners over half the shorter side, 0 (sharp) to 1 (the shorter sides are half circles)
   * @return the section
   */
  static CrossSection roundedRectangle(double rounding) {
    return new RoundedRectangle(rounding);
  }

  /**
   * A superellipse |y/a|^n + |z/b|^n = 1: 2 is an ellipse, more is boxier, less is leaner.
   *
   * @param exponent n, 1.2 to 12
   * @return the section
   */
  static CrossSection superellipse(double exponent) {
    return new Superellipse(exponent);
  }

  /**
   * The name of the section.
   *
   * @return for example {@code "ellipse"}
   */
  String name();

  /**
   * Distance of the outline from the middle, on axes scaled with half width and half height.
   *
   * @param angle φ [rad], from starboard upwards
   * @param width width [m], positive
   * @param height height [m], positive
   * @return ρ, positive; 1 at 0 and at π/2
   */
  double radial(double angle, double width, double height);

  /**
   * Area of the section.
   *
   * @param width width [m], positive
   * @param height height [m], positive
   * @return A [m²]
   */
  default double area(double width, double height) {
    double quarter =
        Quadrature.integrate(
                angle -> {
                  double rho = radial(angle, width, height);
                  return 0.5 * rho * rho;
                },
                0.0,
                0.5 * Math.PI,
                Tolerance.relative(1e-10))
            .value();
    return width * height * quarter;
  }

  /**
   * Length of the outline.
   *
   * @param width width [m], positive
   * @param height height [m], positive
   * @return U [m], by a polygon if the section does not say better, short by less than 1 part in 10⁶
   */
  default double perimeter(double width, double height) {
    int sides = 2000;
    double sum = 0.0;
    double y1 = 0.5 * width * radial(0.0, width, height);
    double z1 = 0.0;
    for (int i = 1; i <= sides; i++) {
      double angle = 0.5 * Math.PI * i / sides;
      double rho = radial(angle, width, height);
      double y2 = 0.5 * width * rho * Math.cos(angle);
      double z2 = 0.5 * height * rho * Math.sin(angle);
      sum += Math.hypot(y2 - y1, z2 - z1);
      y1 = y2;
      z1 = z2;
    }
    return 4.0 * sum;
  }
}
