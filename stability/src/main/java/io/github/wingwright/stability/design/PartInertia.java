// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.mass.Inertia;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.MomentOfInertia;
import java.util.function.DoubleUnaryOperator;

/**
 * Inertia of a part about its own centre of gravity.
 *
 * <p>Plates of even thickness weigh as their chord does along the span, walls as {@link WingSkin} says of them, and along a body
 * as their radius. Without
 * it a wing would be a point on the plane of symmetry, and the aircraft would roll as if it had none.
 */
final class PartInertia {
  private static final int STRIPS = 100;

  private PartInertia() {}

  /**
   * A tailplane or fin whose mass per area is even.
   *
   * @param planform its shape
   * @param mass its mass [kg]
   * @return inertia about its own centre of gravity
   */
  static Inertia surface(Planform planform, double mass) {
    return surface(planform, mass, chord -> chord);
  }

  /**
   * A wing whose sections weigh more or less with their chord: in proportion if it is a skin, as its square if it is solid.
   *
   * @param planform its shape
   * @param mass its mass [kg]
   * @param section what a section weighs over its chord [m], to any scale
   * @return inertia about its own centre of gravity
   */
  static Inertia surface(Planform planform, double mass, DoubleUnaryOperator section) {
    boolean mirrored = planform.isMirrored();
    double reach = planform.span().si() * (mirrored ? 0.5 : 1.0);
    Sums sums = new Sums();
    for (int i = 0; i < STRIPS; i++) {
      Length out = Length.metres((i + 0.5) / STRIPS * reach);
      double chord = planform.chordAt(out).si();
      double x = planform.leadingEdgeAt(out).si() + 0.5 * chord;
      double lifted = planform.heightAt(out).si();
      // a fin stands upright: its span is height
      sums.add(
          section.applyAsDouble(chord),
          x,
          mirrored ? out.si() : lifted,
          mirrored ? lifted : out.si(),
          chord * chord / 12.0);
    }
    return sums.inertia(mass, mirrored);
  }

  /**
   * A body of revolution whose shell is even.
   *
   * @param body its shape
   * @param mass its mass [kg]
   * @param wall its wall [m], whose middle lies half of it below the surface
   * @return inertia about its own centre of gravity
   */
  static Inertia shell(Fuselage body, double mass, double wall) {
    double weight = 0.0;
    double first = 0.0;
    double second = 0.0;
    double ring = 0.0;
    for (int i = 0; i < STRIPS; i++) {
      double x = (i + 0.5) / STRIPS * body.length().si();
      double outer = body.radiusAt(Length.metres(x)).si();
      double radius = Math.max(0.5 * outer, outer - 0.5 * wall);
      weight += radius;
      first += radius * x;
      second += radius * x * x;
      ring += radius * radius * radius;
    }
    double along = mass * (second / weight - Math.pow(first / weight, 2));
    double roll = mass * ring / weight;
    return Inertia.of(moment(roll), moment(along + 0.5 * roll), moment(along + 0.5 * roll));
  }

  private static MomentOfInertia moment(double si) {
    return MomentOfInertia.kilogramSquareMetres(Math.max(0.0, si));
  }

  /** Weighted sums over strips, for moments about their common centre. */
  private static final class Sums {
    private double weight;
    private double x;
    private double y;
    private double z;
    private double xx;
    private double yy;
    private double zz;
    private double xz;
    private double chord;

    void add(double w, double atX, double atY, double atZ, double own) {
      weight += w;
      x += w * atX;
      y += w * atY;
      z += w * atZ;
      xx += w * atX * atX;
      yy += w * atY * atY;
      zz += w * atZ * atZ;
      xz += w * atX * atZ;
      chord += w * own;
    }

    Inertia inertia(double mass, boolean mirrored) {
      double m = mass / weight;
      double alongX = m * (xx - x * x / weight + chord);
      double alongZ = m * (zz - z * z / weight);
      // the other half of a mirrored surface has the opposite y: their common centre lies on the
      // plane of symmetry
      double alongY = m * (mirrored ? yy : yy - y * y / weight);
      MomentOfInertia none = MomentOfInertia.ZERO;
      return new Inertia(
          moment(alongY + alongZ),
          moment(alongX + alongZ),
          moment(alongX + alongY),
          none,
          MomentOfInertia.kilogramSquareMetres(m * (xz - x * z / weight)),
          none);
    }
  }
}
