// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.dynamics;

import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.quantity.Density;
import io.github.wingwright.core.quantity.Length;
import java.util.Locale;
import java.util.Objects;
import java.util.function.DoubleUnaryOperator;

/**
 * The air that a light aircraft has to move along when it accelerates across its wings.
 *
 * <p>A long flat plate of chord c that accelerates broadside carries the air of a cylinder on its chord:
 * <pre>{@code
 * per span       m′ = π·ρ·c²/4
 * heave          m_a = k·∫ m′ dy
 * roll           I_a = k·∫ m′·y² dy
 * pitch          I_a = k·∫ (π·ρ·c⁴/128 + m′·(x_½ − x_cg)²) dy     about the centre of gravity
 * }</pre>
 * and k takes the finite span into account. For an elliptic plate it is exact,
 * <pre>{@code
 * k = 1/E(e)       e² = 1 − (4/(π·A))²
 * }</pre>
 * with E the complete elliptic integral of the second kind: 2/π for a disk, towards one for a long wing. It is used here
 * for other planforms too.
 *
 * <p>For a model of 20 g with a wing of 0.4 m by 53 mm it is 1.0 g, 5 % of the mass; for a light aeroplane less than
 * 1 %.
 *
 * <p>Source: H. Lamb, <i>Hydrodynamics</i>, art. 71 (plate) and 114 (ellipsoid), from memory.
 *
 * @param heave apparent mass in heave [kg]
 * @param rollInertia apparent inertia in roll [kg·m²]
 * @param pitchInertia apparent inertia in pitch about the centre of gravity [kg·m²]
 * @param centreBehind how far the centre of the apparent mass lies behind the centre of gravity [m]
 */
public record WingApparentMass(double heave, double rollInertia, double pitchInertia, double centreBehind) {
  /** No apparent mass: for aircraft that are heavy for their size. */
  public static final WingApparentMass NONE = new WingApparentMass(0, 0, 0, 0);

  private static final int STATIONS = 200;

  /**
   * Apparent mass of a wing.
   *
   * @param density air density [kg/m³], positive
   * @param span span [m], positive
   * @param chord chord [m] at η = |2y/b| from 0 to 1
   * @param middleBehind how far the middle of the chord lies behind the centre of gravity [m], at η
   */
  public static WingApparentMass ofWing(double density, double span, DoubleUnaryOperator chord,
      DoubleUnaryOperator middleBehind) {
    Objects.requireNonNull(chord, "chord");
    Objects.requireNonNull(middleBehind, "middle behind");
    if (!(density > 0) || !(span > 0)) {
      throw new IllegalArgumentException(String.format(Locale.ROOT,
          "density and span must be positive, were %.6g kg/m³ and %.6g m", density, span));
    }
    double area = 0;
    double mass = 0;
    double roll = 0;
    double pitch = 0;
    double moment = 0;
    double width = span / (2 * STATIONS);
    for (int i = 0; i < STATIONS; i++) {
      double eta = (i + 0.5) / STATIONS;
      double c = chord.applyAsDouble(eta);
      double x = middleBehind.applyAsDouble(eta);
      double y = eta * span / 2;
      double strip = Math.PI * density * c * c / 4 * 2 * width;
      area += 2 * c * width;
      mass += strip;
      roll += strip * y * y;
      moment += strip * x;
      pitch += strip * (x * x + c * c / 32);
    }
    double k = finiteSpanFactor(span * span / area);
    return new WingApparentMass(k * mass, k * roll, k * pitch, moment / mass);
  }

  /**
   * Apparent mass of a wing.
   *
   * @param density air density
   * @param wing the wing
   * @param centreOfGravity centre of gravity aft of the nose tip
   */
  public static WingApparentMass of(Density density, Wing wing, Length centreOfGravity) {
    Objects.requireNonNull(density, "density");
    Objects.requireNonNull(wing, "wing");
    Objects.requireNonNull(centreOfGravity, "centre of gravity");
    Planform planform = wing.planform();
    Length half = planform.span().times(0.5);
    double ahead = wing.placement().x().si() - centreOfGravity.si();
    return ofWing(density.si(), planform.span().si(), eta -> planform.chordAt(half.times(eta)).si(),
        eta -> ahead + planform.leadingEdgeAt(half.times(eta)).si() + planform.chordAt(half.times(eta)).si() / 2);
  }

  /**
   * Apparent mass of an elliptic plate over that of its strips.
   *
   * @param aspectRatio aspect ratio b²/S [-], positive
   * @return k = 1/E [-], between 0 and 1: 0.637 at 4/π (a disk), 0.933 at 6
   */
  public static double finiteSpanFactor(double aspectRatio) {
    double ratio = 4 / (Math.PI * aspectRatio);
    if (ratio > 1) {
      return 1 / (ratio * ellipticE(1 / ratio));
    }
    return 1 / ellipticE(ratio);
  }

  /** Complete elliptic integral of the second kind, E(√(1 − ratio²)), by the arithmetic-geometric mean. */
  private static double ellipticE(double ratio) {
    double a = 1;
    double g = ratio;
    double c2 = 1 - ratio * ratio;
    double sum = c2 / 2;
    double weight = 1;
    for (int i = 0; i < 40 && Math.abs(a - g) > 1e-15 * a; i++) {
      double difference = (a - g) / 2;
      double mean = (a + g) / 2;
      g = Math.sqrt(a * g);
      a = mean;
      sum += weight * difference * difference;
      weight *= 2;
    }
    return Math.PI / (2 * a) * (1 - sum);
  }

  /** The inertia of a body with the apparent inertia in roll and pitch added. */
  public BodyInertia addedTo(BodyInertia body) {
    return new BodyInertia(body.mass(), body.roll() + rollInertia, body.pitch() + pitchInertia, body.yaw(),
        body.product());
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "apparent mass %.3g kg heave, %.3g kg·m² roll, %.3g pitch", heave, rollInertia, pitchInertia);
  }
}
