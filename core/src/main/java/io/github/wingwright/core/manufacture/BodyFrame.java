// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.quantity.Length;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Supplier;

/** The sections of a body, and where lines meet their outline; angles run from starboard upwards. */
final class BodyFrame {
  private static final double POINT = 1e-6;

  private final BodyShape shape;
  private final double length;
  private final double diameter;

  BodyFrame(Fuselage body) {
    shape = body.shape();
    length = body.length().si();
    diameter = body.diameter().si();
  }

  double halfWidth(double x) {
    return 0.5 * shape.width(x, length, diameter);
  }

  double halfHeight(double x) {
    return 0.5 * shape.height(x, length, diameter);
  }

  double centre(double x) {
    return shape.centreHeight(x, length, diameter);
  }

  boolean isPoint(double x) {
    return (x <= 0.0 || x >= length) && halfWidth(x) < POINT;
  }

  /** The last station with some room around the middle of a plane of some height. */
  double lastWithRoom(double room, double height) {
    double inside = 0.0;
    double outside = length;
    if (room(length, height) >= room) {
      return length;
    }
    for (int i = 0; i <= 400; i++) {
      double x = length * i / 400.0;
      inside = room(x, height) >= room ? x : inside;
    }
    for (int i = 0; i < 60; i++) {
      double middle = 0.5 * (inside + outside);
      if (room(middle, height) >= room) {
        inside = middle;
      } else {
        outside = middle;
      }
    }
    return inside;
  }

  /** How far the section reaches from the middle of a plane of some height, aside, above and below: the least of them. */
  double room(double x, double height) {
    return Math.min(halfWidth(x), halfHeight(x) - Math.abs(height - centre(x)));
  }

  /** The outline at an angle: y and z. */
  void at(double x, double angle, double[] yz) {
    double rho = shape.sectionRadial(angle, x, length, diameter);
    yz[0] = halfWidth(x) * rho * Math.cos(angle);
    yz[1] = centre(x) + halfHeight(x) * rho * Math.sin(angle);
  }

  /**
   * The angle to starboard at which the outline crosses z = height + slope·|y|.
   *
   * @throws IllegalStateException if it does not
   */
  double crossing(double x, double height, double slope, String what) {
    double[] yz = new double[2];
    return root(
        angle -> {
          at(x, angle, yz);
          return yz[1] - height - slope * yz[0];
        },
        -0.5 * Math.PI,
        () ->
            cuts(what, x, "reaches from " + mm(centre(x) - halfHeight(x)) + " to " + mm(centre(x) + halfHeight(x)))
                + " above the reference line, where that cut would lie at "
                + mm(height));
  }

  /** The angle to starboard in the upper half at which the outline is so far from the plane of symmetry. */
  double beside(double x, double y, String what) {
    double[] yz = new double[2];
    return root(
        angle -> {
          at(x, angle, yz);
          return y - yz[0];
        },
        0.0,
        () -> cuts(what, x, "is " + mm(2.0 * halfWidth(x)) + " wide, the cut " + mm(2.0 * y)));
  }

  private static String cuts(String what, double x, String outline) {
    return what + " must cut the outline of the body, which at " + mm(x) + " from the nose " + outline;
  }

  private static Length mm(double metres) {
    return Length.millimetres(Math.rint(1e5 * metres) / 100.0 + 0.0);
  }

  private static double root(DoubleUnaryOperator rising, double from, Supplier<String> refusal) {
    double low = from;
    double high = 0.5 * Math.PI;
    if (!(rising.applyAsDouble(low) < 0.0 && rising.applyAsDouble(high) > 0.0)) {
      throw new IllegalStateException(refusal.get());
    }
    for (int i = 0; i < 52; i++) {
      double middle = 0.5 * (low + high);
      if (rising.applyAsDouble(middle) < 0.0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return 0.5 * (low + high);
  }
}
