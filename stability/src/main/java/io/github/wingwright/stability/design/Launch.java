// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.performance.ElasticLaunch;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.Speed;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * How the glider is launched: thrown level from the hand, or pulled by an elastic.
 *
 * <p>The speed of an elastic follows from the mass of the glider, which is not known before the glider is. So a mass is
 * assumed, and the design is held against it: {@link #findings(Mass)}.
 */
public final class Launch implements Serializable {
  private static final long serialVersionUID = 1L;

  /** By how much the mass may differ from the assumed one, as a part of it: the speed changes by half as much. */
  static final double MASS_TOLERANCE = 0.05;

  private final Speed speed;
  private final Length height;
  private final @Nullable Pulled pulled;

  /** The elastic and the mass for which its speed was reckoned. */
  private record Pulled(ElasticLaunch elastic, Mass glider) implements Serializable {}

  private Launch(Speed speed, Length height, @Nullable Pulled pulled) {
    this.speed = Door.positive(speed, "launch speed");
    this.height = Door.positive(height, "launch height");
    this.pulled = pulled;
  }

  /**
   * From the hand.
   *
   * @param speed speed at which it leaves the hand, positive
   * @param height height above the ground at which it leaves the hand, positive
   * @return the launch
   */
  public static Launch thrown(Speed speed, Length height) {
    Objects.requireNonNull(speed, "speed");
    Objects.requireNonNull(height, "height");
    return new Launch(speed, height, null);
  }

  /**
   * From an elastic.
   *
   * @param elastic the elastic
   * @param glider the mass that the glider is assumed to have, positive
   * @param height height above the ground at which the elastic lets go, positive
   * @return the launch, at the speed that the elastic gives that mass
   */
  public static Launch by(ElasticLaunch elastic, Mass glider, Length height) {
    Objects.requireNonNull(elastic, "elastic");
    Objects.requireNonNull(glider, "glider");
    Objects.requireNonNull(height, "height");
    return new Launch(elastic.speed(glider), height, new Pulled(elastic, glider));
  }

  /**
   * Speed at which it leaves hand or elastic: from an elastic that of the assumed mass, before the glider's own is known.
   *
   * @return V
   */
  public Speed speed() {
    return speed;
  }

  /**
   * Speed at which a glider of a mass leaves hand or elastic.
   *
   * @param glider its mass, positive
   * @return V; from the hand the same for every mass
   */
  public Speed speed(Mass glider) {
    Objects.requireNonNull(glider, "glider");
    return pulled == null ? speed : pulled.elastic.speed(glider);
  }

  /**
   * Height above the ground at which it leaves hand or elastic.
   *
   * @return h
   */
  public Length height() {
    return height;
  }

  /**
   * The elastic.
   *
   * @return empty for a throw from the hand
   */
  public Optional<ElasticLaunch> elastic() {
    return Optional.ofNullable(pulled).map(Pulled::elastic);
  }

  /**
   * What to know of the launch of a glider as it came out.
   *
   * @param glider its mass
   * @return what the elastic asks for, and whether the glider has the mass that was assumed; nothing for a throw
   */
  public List<Finding> findings(Mass glider) {
    Objects.requireNonNull(glider, "glider");
    if (pulled == null) {
      return List.of();
    }
    List<Finding> findings = new ArrayList<>(pulled.elastic.findings(glider));
    double assumed = pulled.glider.si();
    Interval close = Interval.between((1.0 - MASS_TOLERANCE) * assumed, (1.0 + MASS_TOLERANCE) * assumed);
    if (!close.contains(glider.si())) {
      Mass off = Mass.kilograms(Math.abs(glider.si() - assumed));
      findings.add(
          Finding.of(
              Severity.CAUTION,
              "mass of the glider on the elastic",
              "The brief assumes a glider of "
                  + pulled.glider.format(Mass.GRAM, 3)
                  + ", "
                  + speed.format(Speed.METRE_PER_SECOND, 3)
                  + " off the elastic; this one is "
                  + off.format(Mass.GRAM, 3)
                  + (glider.si() > assumed ? " heavier" : " lighter")
                  + " and leaves the elastic at "
                  + pulled.elastic.speed(glider).format(Speed.METRE_PER_SECOND, 3)
                  + ", with which all else reckons. Enter "
                  + glider.format(Mass.GRAM, 3)
                  + ", so that wing and body are sized for it as well.",
              glider.si(),
              close,
              Mass.GRAM,
              Source.library("mass of the design against that of the brief")));
    }
    return List.copyOf(findings);
  }

  @Override
  public String toString() {
    return (pulled == null ? "thrown" : "pulled by an elastic") + " at " + speed + " from " + height;
  }
}
