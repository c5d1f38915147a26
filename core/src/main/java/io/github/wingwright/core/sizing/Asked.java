// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.basis.Decision;
import io.github.wingwright.core.basis.Weighed;
import io.github.wingwright.core.geometry.BodyShape;

/**
 * A consideration as it was asked for, and as it is weighed for the family at hand.
 *
 * @param consideration as it was asked for
 * @param weighed for the family at hand
 */
record Asked(ShapeConsideration consideration, Weighed weighed) {

  static Asked of(ShapeConsideration consideration, BodyShape shape, Decision decision) {
    return new Asked(consideration, new Weighed(consideration.on(shape), decision));
  }

  Asked on(BodyShape shape) {
    return of(consideration, shape, weighed.decision());
  }

  String name() {
    return weighed.consideration().name();
  }
}
