// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.basis.Bound;
import io.github.wingwright.core.basis.Consideration;
import io.github.wingwright.core.basis.Decision;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Strength;
import io.github.wingwright.core.geometry.BodyShape;

/**
 * A consideration on one family of bodies, and what the designer decided about it.
 *
 * @param asked as it was asked for
 * @param consideration for the family at hand
 * @param decision whether it applies
 */
record Weighed(ShapeConsideration asked, Consideration consideration, Decision decision) {

  static Weighed of(ShapeConsideration asked, BodyShape shape, Decision decision) {
    return new Weighed(asked, asked.on(shape), decision);
  }

  Weighed on(BodyShape shape) {
    return of(asked, shape, decision);
  }

  Weighed under(Decision other) {
    return new Weighed(asked, consideration, other);
  }

  boolean isTarget() {
    return consideration.strength() == Strength.TARGET;
  }

  boolean isLimit() {
    return consideration.strength() == Strength.LIMIT;
  }

  boolean binds() {
    return decision.applies() && !isTarget();
  }

  Bound onDiameter(double length, Interval search) {
    Interval interval = isTarget() ? Interval.ALL : consideration.diametersAt(length, search);
    double preferred = isTarget() ? consideration.preferredDiameter(length).orElse(Double.NaN) : Double.NaN;
    return new Bound(
        consideration.name(), consideration.strength(), consideration.source(), interval, preferred, decision);
  }

  Bound onLength(Interval lengths) {
    return new Bound(
        consideration.name(), consideration.strength(), consideration.source(), lengths, Double.NaN, decision);
  }
}
