// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.basis.Advised;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Strength;
import io.github.wingwright.core.basis.Wording;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.Optional;

/**
 * A volume that must be inside.
 *
 * <p>At a fixed length the volume grows with the diameter, up to the stoutest body that the family can form; there it stops
 * growing, because a stouter one does not exist.
 *
 * @param needed how the volume that it asks for comes about
 */
record Enclosing(Wording wording, Strength strength, Source source, BodyShape shape, double volume, Step needed)
    implements Worded {
  private static final int MOST_ITERATIONS = 60;

  @Override
  public double margin(double length, double diameter) {
    return enclosed(length, diameter) / volume - 1.0;
  }

  private double enclosed(double length, double diameter) {
    return shape.volume(length, Math.min(diameter, length / shape.leastFinenessRatio()));
  }

  @Override
  public Interval diametersAt(double length, Interval search) {
    double stoutest = length / shape.leastFinenessRatio();
    double most = shape.volume(length, stoutest);
    if (most < volume) {
      return Interval.NONE;
    }
    // V/d² changes slowly with d, so d ← d·√(V₀/V) homes in fast; Newton's step from there on, kept inside the bracket.
    double d = stoutest * Math.sqrt(volume / most);
    double low = 0.0;
    double high = stoutest;
    for (int i = 0; i < MOST_ITERATIONS; i++) {
      double v = shape.volume(length, d);
      if (v >= volume) {
        high = d;
      } else {
        low = d;
      }
      double ratio = volume / v;
      if (Math.abs(ratio - 1.0) < 1e-14) {
        break;
      }
      double next = d * Math.sqrt(ratio);
      d = next > low && next < high ? next : 0.5 * (low + high);
    }
    return Interval.atLeast(d);
  }

  @Override
  public Interval lengthsAt(double diameter, Interval search) {
    // V = 0 at length 0 and without end as the length grows, so one bisection in log L finds the only crossing.
    double low = 1e-9;
    double high = 1e9;
    while (high / low > 1.0 + 1e-14) {
      double middle = Math.sqrt(low * high);
      if (middle <= low || middle >= high) {
        break;
      }
      if (enclosed(middle, diameter) >= volume) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return Interval.atLeast(high);
  }

  @Override
  public Optional<Step> workings(Step length, Step diameter) {
    Step stoutest = Step.given("least fineness ratio of the family", "f_s", shape.leastFinenessRatio(), Source.DEFINITION);
    Step formed =
        diameter.value() * shape.leastFinenessRatio() <= length.value()
            ? diameter
            : Step.of(MarginFormulas.STOUTEST_DIAMETER, diameter, length, stoutest);
    return Optional.of(Step.of(MarginFormulas.VOLUME_MARGIN, shape.volumeStep(length, formed), needed));
  }

  @Override
  public String givingWayTo(double length, double diameter, NamedUnit<Length> unit) {
    return quoted(unit) + " with " + Advised.percentDown(enclosed(length, diameter) / volume) + " of the contents";
  }
}
