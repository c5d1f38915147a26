// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.geometry.Inscribed;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import java.io.Serializable;
import java.util.EnumSet;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The space in which a machine makes a part: a box, or a cylinder on a round bed. It says how long a part of a width and a
 * depth can be in each {@link Lay}, and how a given part has to lie to fit.
 *
 * <pre>{@code
 * BuildVolume small = BuildVolume.box(millimetres(250), millimetres(210), millimetres(220));
 * small.longest(Lay.DIAGONAL, millimetres(30), millimetres(4));     // 297.1 mm
 * small.orientation(millimetres(290), millimetres(30), millimetres(4));   // across the bed at a slant of 38.9°
 * }</pre>
 *
 * <p>Width and depth are those of the box around the part across its length; a part lies on its width, or on edge on its depth.
 * Standing, its section may be turned on the bed as well. In a cylinder one of the two sides stays level, which leaves the
 * rectangle of √(D² − w²) by H for the length and the other side. What skirts, clips and brims take is subtracted by
 * {@link #keepingClear}. A part exactly as long, wide or deep as the limit fits: sizes are held to a part in 10⁹, so that
 * the last bit of a sum does not decide. Only raised in a box the limit itself is found to no more than a part in 10⁴.
 */
public final class BuildVolume implements Serializable {
  private static final long serialVersionUID = 1L;

  /** What a size may be beyond its limit, over the limit: the rounding of sums, far below a micrometre. */
  private static final double SLACK = 1e-9;

  private static final int HALVINGS = 60;
  private static final Angle RIGHT = Angle.degrees(90);

  /** Sides of the box [m], the longer side of the bed first; of a cylinder its diameter twice. */
  private final double a;

  private final double b;
  private final double height;
  private final boolean round;

  /** Whether the second side that was given is the longer one. */
  private final boolean deep;

  private BuildVolume(double a, double b, double height, boolean round, boolean deep) {
    this.a = a;
    this.b = b;
    this.height = height;
    this.round = round;
    this.deep = deep;
  }

  /**
   * A box.
   *
   * @param width one side of the bed, positive
   * @param depth the other side of the bed, positive
   * @param height height above the bed, positive
   * @return the volume
   */
  public static BuildVolume box(Length width, Length depth, Length height) {
    Door.positive(width, "width of the bed");
    Door.positive(depth, "depth of the bed");
    Door.positive(height, "height of the build volume");
    return new BuildVolume(
        Math.max(width.si(), depth.si()),
        Math.min(width.si(), depth.si()),
        height.si(),
        false,
        depth.compareTo(width) > 0);
  }

  /**
   * A cylinder on a round bed.
   *
   * @param diameter diameter of the bed, positive
   * @param height height above the bed, positive
   * @return the volume
   */
  public static BuildVolume cylinder(Length diameter, Length height) {
    Door.positive(diameter, "diameter of the bed");
    Door.positive(height, "height of the build volume");
    return new BuildVolume(diameter.si(), diameter.si(), height.si(), true, false);
  }

  /**
   * The same machine with a margin along the rim of its bed, for skirts, brims and clips.
   *
   * @param margin what is lost at each edge of the bed, not negative
   * @return the smaller volume
   * @throws IllegalArgumentException if nothing would be left
   */
  public BuildVolume keepingClear(Length margin) {
    double lost = 2.0 * Door.notNegative(margin, "margin").si();
    if (lost >= b) {
      throw new IllegalArgumentException("margin must leave some of the bed of " + Length.metres(b) + ", was " + margin);
    }
    return new BuildVolume(a - lost, b - lost, height, round, deep);
  }

  /**
   * Whether it is a cylinder.
   *
   * @return true if the bed is round
   */
  public boolean isRound() {
    return round;
  }

  /** Whether the longer side of its bed is the second one, from front to back. */
  boolean isDeep() {
    return deep;
  }

  /**
   * The longer side of the bed, or its diameter.
   *
   * @return the length
   */
  public Length bedLength() {
    return Length.metres(a);
  }

  /**
   * The shorter side of the bed, or its diameter.
   *
   * @return the length
   */
  public Length bedWidth() {
    return Length.metres(b);
  }

  /**
   * Height above the bed.
   *
   * @return the height
   */
  public Length height() {
    return Length.metres(height);
  }

  /**
   * The longest part of a width and a depth in one lay.
   *
   * @param lay how it lies
   * @param width its width, not negative
   * @param depth its depth, not negative
   * @return its length; zero if its section alone does not fit
   */
  public Length longest(Lay lay, Length width, Length depth) {
    Objects.requireNonNull(lay, "lay");
    Door.notNegative(width, "width of the part");
    Door.notNegative(depth, "depth of the part");
    return Length.metres(longest(lay, width.si(), depth.si()));
  }

  /**
   * The longest part of a width and a depth in one lay, for loops.
   *
   * @param lay how it lies
   * @param width its width [m], not negative
   * @param depth its depth [m], not negative
   * @return its length [m]; 0 if its section alone does not fit
   */
  public double longest(Lay lay, double width, double depth) {
    Objects.requireNonNull(lay, "lay");
    return switch (lay) {
      case STRAIGHT -> straight(width, depth);
      case DIAGONAL -> diagonal(width, depth);
      case ON_EDGE -> diagonal(depth, width);
      case UPRIGHT -> standsOnBed(width, depth) ? height : 0.0;
      case RAISED -> raised(width, depth);
    };
  }

  /** Lying along a side, the depth up. */
  private double straight(double width, double depth) {
    if (!within(depth, height)) {
      return 0.0;
    }
    if (round) {
      return within(width, a) ? Math.sqrt(Math.max(0.0, a * a - width * width)) : 0.0;
    }
    return within(width, b) ? a : within(width, a) ? b : 0.0;
  }

  private double diagonal(double width, double depth) {
    if (round || !within(depth, height)) {
      return straight(width, depth);
    }
    return within(width, b) ? Inscribed.longestRectangle(a, b, Math.min(width, b)) : shortAndWide(width);
  }

  /** A part wider than the bed is deep: the same rectangle with its sides exchanged, by halving. */
  private double shortAndWide(double width) {
    if (within(width, a)) {
      return b;
    }
    double fits = 0.0;
    double beyond = b;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = 0.5 * (fits + beyond);
      if (Inscribed.longestRectangle(a, b, middle) >= width) {
        fits = middle;
      } else {
        beyond = middle;
      }
    }
    return fits;
  }

  private boolean standsOnBed(double width, double depth) {
    if (round) {
      return within(Math.hypot(width, depth), a);
    }
    double less = Math.min(width, depth);
    return within(less, b) && within(Math.max(width, depth), Inscribed.longestRectangle(a, b, Math.min(less, b)));
  }

  private static boolean within(double size, double limit) {
    return size <= limit * (1.0 + SLACK);
  }

  private double raised(double width, double depth) {
    return round ? Math.max(raisedInCylinder(width, depth), raisedInCylinder(depth, width))
        : Inscribed.longestBar(a, b, height, width, depth);
  }

  /** The width stays level: a rectangle of length and depth in one of chord and height. */
  private double raisedInCylinder(double level, double other) {
    return level >= a ? 0.0 : Inscribed.longestRectangle(Math.sqrt(a * a - level * level), height, other);
  }

  /**
   * The simplest way in which a part fits, raised on supports only if nothing else does.
   *
   * @param length its length, positive
   * @param width its width, not negative
   * @param depth its depth, not negative
   * @return the orientation, empty if it does not fit
   */
  public Optional<Orientation> orientation(Length length, Length width, Length depth) {
    return orientation(length, width, depth, EnumSet.allOf(Lay.class));
  }

  /**
   * The simplest way among some in which a part fits.
   *
   * @param length its length, positive
   * @param width its width, not negative
   * @param depth its depth, not negative
   * @param lays how it may lie
   * @return the orientation, empty if it does not fit
   */
  public Optional<Orientation> orientation(Length length, Length width, Length depth, Set<Lay> lays) {
    Objects.requireNonNull(lays, "lays");
    Door.positive(length, "length of the part");
    Door.notNegative(width, "width of the part");
    Door.notNegative(depth, "depth of the part");
    double w = width.si();
    double d = depth.si();
    for (Lay lay : Lay.values()) {
      if (lays.contains(lay) && within(length.si(), longest(lay, w, d))) {
        return Optional.of(lying(lay, length.si(), w, d));
      }
    }
    return Optional.empty();
  }

  private Orientation lying(Lay lay, double length, double w, double d) {
    return switch (lay) {
      case STRAIGHT -> {
        boolean across = !round && !within(w, b);
        yield new Orientation(lay, across ? RIGHT : Angle.ZERO, Angle.ZERO, Angle.ZERO);
      }
      case DIAGONAL -> new Orientation(lay, slant(w), Angle.ZERO, Angle.ZERO);
      case ON_EDGE -> {
        boolean straight = within(length, straight(d, w));
        Angle turned = straight ? Angle.ZERO : slant(d);
        yield new Orientation(lay, turned, Angle.ZERO, RIGHT);
      }
      case UPRIGHT -> {
        // Standing, its depth is along the longer side of the bed and its width across it.
        double turned = 0.5 * Math.PI;
        if (round || within(w, b) && within(d, a)) {
          turned = 0.0;
        } else if (!(within(w, a) && within(d, b))) {
          double slant = Inscribed.slant(a, b, Math.min(w, d));
          turned = w > d ? 0.5 * Math.PI - slant : slant;
        }
        yield new Orientation(lay, Angle.radians(turned), RIGHT, Angle.ZERO);
      }
      case RAISED -> {
        if (round) {
          boolean onEdge = !within(length, raisedInCylinder(w, d));
          double level = onEdge ? d : w;
          double chord = Math.sqrt(a * a - level * level);
          double up = Inscribed.slant(chord, height, onEdge ? w : d);
          Angle angle = Angle.radians(height > chord ? 0.5 * Math.PI - up : up);
          yield new Orientation(lay, Angle.ZERO, angle, onEdge ? RIGHT : Angle.ZERO);
        }
        Inscribed.Bar bar = Inscribed.bar(a, b, height, w, d);
        double roll = bar.roll() - Math.PI * Math.floor(bar.roll() / Math.PI);
        yield new Orientation(lay, Angle.radians(bar.azimuth()), Angle.radians(bar.elevation()), Angle.radians(roll));
      }
    };
  }

  private Angle slant(double width) {
    if (round) {
      return Angle.ZERO;
    }
    return within(width, b)
        ? Angle.radians(Inscribed.slant(a, b, Math.min(width, b)))
        : Angle.radians(0.5 * Math.PI - Inscribed.slant(a, b, shortAndWide(width)));
  }

  /**
   * The longest part of a width and a depth, in the best of some lays.
   *
   * @param width its width, not negative
   * @param depth its depth, not negative
   * @param lays how it may lie
   * @return its length; zero if its section alone does not fit
   */
  public Length longest(Length width, Length depth, Set<Lay> lays) {
    Objects.requireNonNull(width, "width");
    Objects.requireNonNull(depth, "depth");
    Objects.requireNonNull(lays, "lays");
    double longest = 0.0;
    for (Lay lay : lays) {
      longest = Math.max(longest, longest(lay, width, depth).si());
    }
    return Length.metres(longest);
  }

  /**
   * What stands in the way of making a part in one piece, and by how much.
   *
   * @param name what the part is
   * @param length its length, positive
   * @param width its width, not negative
   * @param depth its depth, not negative
   * @param lays how it may lie; at least one
   * @return a serious finding that names the limit passed and by how much, empty if it fits
   */
  public Optional<Finding> obstacle(String name, Length length, Length width, Length depth, Set<Lay> lays) {
    Objects.requireNonNull(lays, "lays");
    if (orientation(length, width, depth, lays).isPresent()) {
      return Optional.empty();
    }
    return Optional.of(Obstacle.of(this, name, length, width, depth, lays));
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof BuildVolume that
        && a == that.a
        && b == that.b
        && height == that.height
        && round == that.round
        && deep == that.deep;
  }

  @Override
  public int hashCode() {
    return Double.hashCode(a) * 31 + Double.hashCode(b) * 7 + Double.hashCode(height);
  }

  @Override
  public String toString() {
    String tall = height().format(Length.MILLIMETRE, 4);
    return round
        ? "⌀ " + bedLength().format(Length.MILLIMETRE, 4) + " × " + tall
        : bedLength().format(Length.MILLIMETRE, 4) + " × " + bedWidth().format(Length.MILLIMETRE, 4) + " × " + tall;
  }
}
