// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.fuselage;

import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.sizing.FuselageSizing;
import io.github.wingwright.examples.brief.Field;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The considerations of a brief.
 *
 * @param sizing the specification with all of them
 * @param rules what each asks, as a formula in words, by the name of the consideration
 * @param entries where each stands in the brief, by the name of the consideration
 * @param overNose angle at which the pilot must see over the nose
 * @param rotation angle by which the aeroplane rotates
 * @param known where values come from that the considerations are handed
 */
record Asked(
    FuselageSizing sizing,
    Map<String, String> rules,
    Map<String, Field> entries,
    Optional<Angle> overNose,
    Optional<Angle> rotation,
    List<Step> known) {
  Asked {
    rules = Map.copyOf(rules);
    entries = Map.copyOf(entries);
    known = List.copyOf(known);
  }
}
