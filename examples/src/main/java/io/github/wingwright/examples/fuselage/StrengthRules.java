// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.fuselage;

import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.quantity.Force;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.Pressure;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.core.sizing.BodyShell;
import io.github.wingwright.core.sizing.Considerations;
import io.github.wingwright.core.sizing.NoseStrength;
import io.github.wingwright.examples.brief.Field;

/** Reads the considerations that speak of strength: the load at the tail, the nose against a wall, the nose against a head. */
final class StrengthRules {
  private final BodyShell shell;

  StrengthRules(BodyShell shell) {
    this.shell = shell;
  }

  Rule tailLoad(Field field) {
    Force load = field.required("load").quantity(Force.KIND, "0.001 N", "1000 kN");
    double movement = field.required("movement").number(Interval.between(0.001, 0.1));
    return new Rule(
        Considerations.tailMovesAtMost(
            load, Rule.share(field, "held_at"), Rule.share(field, "tail_at"), movement, shell),
        "F/E·∫(x_t − x)²/I(x) dx ≤ δ·(x_t − x_w), I of the ring at each place");
  }

  Rule noseImpact(Field field) {
    Mass mass = field.required("mass").quantity(Mass.KIND, "0.1 g", "1000 kg");
    Speed speed = field.required("speed").quantity(Speed.KIND, "0.1 m/s", "100 m/s");
    Pressure strength =
        field.required("wall_strength").quantity(Pressure.KIND, "0.01 MPa", "5 GPa");
    return Rule.of(
        NoseStrength.survivesNoseImpact(mass, speed, Rule.positiveLength(field, "stroke"), shell, strength),
        "F = m·V²/(2·s): F ≤ σ·π·w·(d − w) and F ≤ π²·E·I/L²");
  }

  Rule noseRadius(Field field) {
    Length least = Rule.positiveLength(field, "least");
    return new Rule(
        NoseStrength.noseRadiusAtLeast(least),
        "radius of curvature at the tip ≥ r_min: nobody is to be hurt");
  }
}
